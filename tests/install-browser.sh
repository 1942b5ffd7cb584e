#!/bin/sh
# The report's browser tests need Chromium. Where it is missing and Debian's may be installed, install it; where not, the
# tests say so themselves (with CI=true that is a failure).
set -u
for name in chromium chromium-browser google-chrome; do
  command -v "$name" >/dev/null 2>&1 && exit 0
done
command -v apt-get >/dev/null 2>&1 || exit 0
as_root=
if [ "$(id -u)" -ne 0 ]; then
  # -n: never ask for a password.
  sudo -n true 2>/dev/null || exit 0
  as_root="sudo -n"
fi
echo "installing Debian's chromium for the browser tests"
$as_root apt-get update -qq >/dev/null 2>&1
DEBIAN_FRONTEND=noninteractive $as_root apt-get install -y -qq --no-install-recommends chromium >/dev/null 2>&1 ||
  echo "chromium could not be installed"
exit 0
