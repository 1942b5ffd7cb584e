/** What commands print. */
export const CLI: Readonly<Record<string, string>> = {
  "Report: {1}": "Bericht: {1}",
  "SHA-256 of manifest.json: {1}": "SHA-256 von manifest.json: {1}",
  '{1} observations in {2}, "{3}" … "{4}", from {5} to {6}, {7}{8}, channels: {9} each, rows: {10} in all → {11}':
    "{1} Beobachtungen in {2}, „{3}“ … „{4}“, von {5} bis {6}, {7}{8}, Kanäle: je {9}, Zeilen: insgesamt {10} → {11}",
  "{1} (trigger {2})": "{1} (Auslösung {2})",
  '{1} "{2}" at {3}, {4}{5}, channels: {6}, rows: {7} → {8}':
    "{1} „{2}“ am {3}, {4}{5}, Kanäle: {6}, Zeilen: {7} → {8}",
  ', category "{1}"': ", Kategorie „{1}“",
  "and {1} more": "und {1} weitere",
  "Observations ({1})": "Beobachtungen ({1})",
  "Events that the recorder listed ({1})": "Vom Aufzeichnungsgerät gelistete Ereignisse ({1})",
  "--language {1} is not known; it can be {2}.": "--language {1} ist nicht bekannt; möglich sind {2}.",
  "--format needs at least one output: {1}.": "--format braucht mindestens eine Ausgabe: {1}.",
  "--format {1} is not known; it can be {2}.": "--format {1} ist nicht bekannt; möglich sind {2}.",
  "What was checked": "Was geprüft wurde",
  "To compare with what the other side holds": "Zum Vergleich mit dem, was die andere Seite hat",
  "  SHA-256 of manifest.json  {1}": "  SHA-256 von manifest.json  {1}",
  "  SHA-256 of results.json   {1} (report.html prints the one it was made with)":
    "  SHA-256 von results.json   {1} (report.html nennt den, mit dem es erstellt wurde)",
  "The report is untouched, and made again from the logs it is the same byte for byte.":
    "Der Bericht ist unverändert; aus den Messdaten neu erzeugt ist er Byte für Byte derselbe.",
  "The report folder is untouched since it was signed. It was not made again from the logs, so its result was not checked.":
    "Der Berichtsordner ist seit der Signatur unverändert. Der Bericht wurde nicht aus den Messdaten neu erzeugt, sein Ergebnis also nicht geprüft.",
  "The report folder fits its manifest. It was not made again from the logs, so neither its result nor the manifest itself was checked.":
    "Der Berichtsordner passt zu seinem Manifest. Der Bericht wurde nicht aus den Messdaten neu erzeugt, daher wurden weder sein Ergebnis noch das Manifest selbst geprüft.",
  "The report could not be made again from the logs.": "Der Bericht konnte aus den Messdaten nicht neu erzeugt werden.",
  "1 file does not hold.": "1 Datei stimmt nicht.",
  "{1} files do not hold.": "{1} Dateien stimmen nicht.",
  "Folder: of the {1} files that manifest.json lists, {2} have the SHA-256 that it gives.":
    "Ordner: Von den {1} Dateien, die manifest.json aufführt, haben {2} den dort angegebenen SHA-256.",
  "Signature: none. Whoever changes a file and the manifest alike is found only by making the report again, or by the hash below.":
    "Signatur: keine. Wer eine Datei und das Manifest gleichermaßen ändert, wird nur durch Neuerzeugen des Berichts oder durch den folgenden Hashwert entdeckt.",
  "Signature: fits the key that the manifest names. Whose key that is shows only --key with the signer's public key.":
    "Signatur: passt zum Schlüssel, den das Manifest nennt. Wem dieser gehört, zeigt nur --key mit dem öffentlichen Schlüssel des Unterzeichners.",
  "Signature: fits the public key given.": "Signatur: passt zum angegebenen öffentlichen Schlüssel.",
  "Signature: does not hold or could not be checked.": "Signatur: stimmt nicht oder konnte nicht geprüft werden.",
  "Re-run: made again from the logs, setup and limit sets; all {1} files are the same byte for byte.":
    "Wiederholung: aus Messdaten, Setup und Grenzwertsätzen neu erzeugt; alle {1} Dateien sind Byte für Byte gleich.",
  "Re-run: made again from the logs, setup and limit sets; of {1} files {2} are the same byte for byte.":
    "Wiederholung: aus Messdaten, Setup und Grenzwertsätzen neu erzeugt; von {1} Dateien sind {2} Byte für Byte gleich.",
  "Re-run: stopped: {1}": "Wiederholung: abgebrochen: {1}",
  "Folder and re-run: not checked, because the manifest does not hold.":
    "Ordner und Wiederholung: nicht geprüft, weil das Manifest nicht stimmt.",
  "Re-run: not done, because the setup or a limit set in the folder does not hold.":
    "Wiederholung: nicht durchgeführt, weil das Setup oder ein Grenzwertsatz im Ordner nicht stimmt.",
  "Re-run: not done, because these logs were not found unchanged: {1}. Name them after the folder.":
    "Wiederholung: nicht durchgeführt, weil diese Messdateien nicht unverändert gefunden wurden: {1}. Sie nach dem Ordner angeben.",
  "Program: the report was written by {1} {2}, this is {3} {4}. A re-run that differs may come from that alone.":
    "Programm: Der Bericht wurde von {1} {2} geschrieben, dies ist {3} {4}. Eine abweichende Wiederholung kann allein daher kommen.",
  "is in the folder, but the re-run does not make it": "liegt im Ordner, aber die Wiederholung erzeugt die Datei nicht",
  "is made by the re-run, but is not in the folder": "wird von der Wiederholung erzeugt, liegt aber nicht im Ordner",
  "tells otherwise of logs, options, limit sets or files than the re-run":
    "sagt über Messdateien, Optionen, Grenzwertsätze oder Dateien anderes aus als die Wiederholung",
  "a signature is there, but the manifest names no signer":
    "eine Signatur ist vorhanden, aber das Manifest nennt keinen Unterzeichner",
  "--key was given, but the report is not signed": "--key wurde angegeben, aber der Bericht ist nicht signiert",
  "the manifest names a signer, but the signature is missing":
    "das Manifest nennt einen Unterzeichner, aber die Signatur fehlt",
  "the signature does not fit the manifest": "die Signatur passt nicht zum Manifest",
  "the signature does not fit the manifest and the key given; the manifest names another key":
    "die Signatur passt nicht zum Manifest und zum angegebenen Schlüssel; das Manifest nennt einen anderen Schlüssel",
  "cannot be read as a result": "lässt sich nicht als Ergebnis lesen",
  "names another program or version than the manifest":
    "nennt ein anderes Programm oder eine andere Version als das Manifest",
  "names other logs than the manifest": "nennt andere Messdateien als das Manifest",
  "names other limit sets than the manifest": "nennt andere Grenzwertsätze als das Manifest",
  "changed: {1}: expected SHA-256 {2}, found {3}": "geändert: {1}: erwarteter SHA-256 {2}, gefunden {3}",
  "missing: {1}: expected SHA-256 {2}, found no file": "fehlt: {1}: erwarteter SHA-256 {2}, keine Datei gefunden",
  "extra: {1}: expected no such file, found SHA-256 {2}":
    "zusätzlich: {1}: keine solche Datei erwartet, gefundener SHA-256 {2}",
  "changed: {1}: it is not as the program wrote it (its own check sum does not fit); found SHA-256 {2}":
    "geändert: {1}: nicht so, wie das Programm die Datei schrieb (ihre eigene Prüfsumme passt nicht); gefundener SHA-256 {2}",
  "contradiction: {1} {2}": "Widerspruch: {1} {2}",
  "signature: {1}: {2}": "Signatur: {1}: {2}",
  "log: {1} is not one of the report's logs: found SHA-256 {2}":
    "Messdatei: {1} gehört nicht zu den Messdateien des Berichts: gefundener SHA-256 {2}",
  "log changed: {1}: expected SHA-256 {2}, found {3}": "Messdatei geändert: {1}: erwarteter SHA-256 {2}, gefunden {3}",
  "limit set: {1}: expected SHA-256 {2}, this program has no such set":
    "Grenzwertsatz: {1}: erwarteter SHA-256 {2}, dieses Programm hat keinen solchen Satz",
  "limit set: {1} of this program: expected SHA-256 {2}, found {3}":
    "Grenzwertsatz: {1} dieses Programms: erwarteter SHA-256 {2}, gefunden {3}",
  "re-run: {1} {2}": "Wiederholung: {1} {2}",
  "re-run: {1} differs from byte {2} on": "Wiederholung: {1} weicht ab Byte {2} ab",
  "{1} holds no manifest.json: it is not a report folder, or the manifest was taken away.":
    "{1} enthält kein manifest.json: Es ist kein Berichtsordner, oder das Manifest wurde entfernt.",
  "{1} holds a public key; signing needs the private one (PEM, PKCS#8).":
    "{1} enthält einen öffentlichen Schlüssel; zum Signieren ist der private nötig (PEM, PKCS#8).",
  '{1} is locked with a passphrase; unlock it with "openssl pkey -in {2} -out KEY.pem" first.':
    '{1} ist mit einem Kennwort verschlüsselt; zuerst mit "openssl pkey -in {2} -out KEY.pem" entsperren.',
  '{1} holds a private key; checking needs the public one: "openssl pkey -in {2} -pubout -out PUBLIC.pem" makes it.':
    '{1} enthält einen privaten Schlüssel; zum Prüfen ist der öffentliche nötig: "openssl pkey -in {2} -pubout -out PUBLIC.pem" erzeugt ihn.',
  '{1} holds no private key in PEM form (PKCS#8); "openssl genpkey -algorithm ed25519 -out KEY.pem" makes one.':
    '{1} enthält keinen privaten Schlüssel in PEM-Form (PKCS#8); "openssl genpkey -algorithm ed25519 -out KEY.pem" erzeugt einen.',
  '{1} holds no public key in PEM form; "openssl pkey -in KEY.pem -pubout -out PUBLIC.pem" makes it from the private one.':
    '{1} enthält keinen öffentlichen Schlüssel in PEM-Form; "openssl pkey -in KEY.pem -pubout -out PUBLIC.pem" erzeugt ihn aus dem privaten.',
  "{1} holds a key of the kind {2}; manifests are signed with Ed25519.":
    "{1} enthält einen Schlüssel der Art {2}; Manifeste werden mit Ed25519 signiert.",
  "This limit set is a file of its own, which does not come with the program.":
    "Dieser Grenzwertsatz ist eine eigene Datei, die nicht zum Programm gehört.",
};
