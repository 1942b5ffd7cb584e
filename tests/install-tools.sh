#!/bin/sh
# The tests of the report need Chromium, and pdftotext, pdfinfo and pdfdetach of poppler-utils. What is missing and may be
# installed with Debian's apt-get is installed; where not, the tests say so themselves (with CI=true that is a failure).
set -u
missing=
browser=
for name in chromium chromium-browser google-chrome; do
  command -v "$name" >/dev/null 2>&1 && browser=$name
done
[ -n "$browser" ] || missing=chromium
command -v pdftotext >/dev/null 2>&1 || missing="$missing poppler-utils"
[ -n "$missing" ] || exit 0
command -v apt-get >/dev/null 2>&1 || exit 0
as_root=
if [ "$(id -u)" -ne 0 ]; then
  # -n: never ask for a password.
  sudo -n true 2>/dev/null || exit 0
  as_root="sudo -n"
fi
echo "installing Debian's $missing for the tests"
$as_root apt-get update -qq >/dev/null 2>&1
DEBIAN_FRONTEND=noninteractive $as_root apt-get install -y -qq --no-install-recommends $missing >/dev/null 2>&1 ||
  echo "$missing could not be installed"
exit 0
