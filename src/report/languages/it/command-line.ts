/** What the commands say on the terminal. */
export const COMMAND_LINE: Readonly<Record<string, string>> = {
  "Report: {1}": "Rapporto: {1}",
  "SHA-256 of manifest.json: {1}": "SHA-256 di manifest.json: {1}",
  '{1} observations in {2}, "{3}" … "{4}", from {5} to {6}, {7}{8}, channels: {9} each, rows: {10} in all → {11}':
    "{1} osservazioni in {2}, «{3}» … «{4}», da {5} a {6}, {7}{8}, canali: {9} ciascuna, righe: {10} in tutto → {11}",
  "{1} (trigger {2})": "{1} (trigger {2})",
  '{1} "{2}" at {3}, {4}{5}, channels: {6}, rows: {7} → {8}': "{1} «{2}» il {3}, {4}{5}, canali: {6}, righe: {7} → {8}",
  ', category "{1}"': ", categoria «{1}»",
  "and {1} more": "e {1} in più",
  "Observations ({1})": "Osservazioni ({1})",
  "Events that the recorder listed ({1})": "Eventi elencati dal registratore ({1})",
  "--language {1} is not known; it can be {2}.": "--language {1} non è noto; può essere {2}.",
  "--format needs at least one output: {1}.": "--format richiede almeno un risultato: {1}.",
  "--format {1} is not known; it can be {2}.": "--format {1} non è noto; può essere {2}.",
  "What was checked": "Che cosa è stato verificato",
  "To compare with what the other side holds": "Da confrontare con ciò che possiede la controparte",
  "  SHA-256 of manifest.json  {1}": "  SHA-256 di manifest.json  {1}",
  "The report is untouched, and made again from the logs it is the same byte for byte.":
    "Il rapporto è intatto e, generato di nuovo dai log, è identico byte per byte.",
  "The report could not be made again from the logs.": "Non è stato possibile generare di nuovo il rapporto dai log.",
  "Signature: none. Whoever changes a file and the manifest alike is found only by making the report again, or by the hash below.":
    "Firma: nessuna. Chi modifica un file e insieme il manifesto si scopre solo generando di nuovo il rapporto, oppure con l'hash qui sotto.",
  "Signature: fits the key that the manifest names. Whose key that is shows only --key with the signer's public key.":
    "Firma: corrisponde alla chiave indicata nel manifesto. Di chi sia tale chiave lo mostra solo --key con la chiave pubblica del firmatario.",
  "Signature: fits the public key given.": "Firma: corrisponde alla chiave pubblica fornita.",
  "Signature: does not hold or could not be checked.": "Firma: non valida o non verificabile.",
  "Re-run: made again from the logs, setup and limit sets; all {1} files are the same byte for byte.":
    "Ripetizione: generato di nuovo da log, configurazione e insiemi di limiti; tutti i {1} file sono identici byte per byte.",
  "Re-run: stopped: {1}": "Ripetizione: interrotta: {1}",
  "Folder and re-run: not checked, because the manifest does not hold.":
    "Cartella e ripetizione: non verificate, perché il manifesto non è valido.",
  "Re-run: not done, because the setup or a limit set in the folder does not hold.":
    "Ripetizione: non eseguita, perché la configurazione o un insieme di limiti nella cartella non è valido.",
  "Re-run: not done, because these logs were not found unchanged: {1}. Name them after the folder.":
    "Ripetizione: non eseguita, perché questi log non sono stati trovati invariati: {1}. Indicarli dopo la cartella.",
  "Program: the report was written by {1} {2}, this is {3} {4}. A re-run that differs may come from that alone.":
    "Programma: il rapporto è stato scritto da {1} {2}, questo è {3} {4}. Una ripetizione diversa può dipendere solo da ciò.",
  "is in the folder, but the re-run does not make it": "è nella cartella, ma la ripetizione non lo genera",
  "This limit set is a file of its own, which does not come with the program.":
    "Questo insieme di limiti è un file a sé, che non è fornito con il programma.",
  "is made by the re-run, but is not in the folder": "è generato dalla ripetizione, ma non è nella cartella",
  "a signature is there, but the manifest names no signer":
    "è presente una firma, ma il manifesto non indica alcun firmatario",
  "--key was given, but the report is not signed": "è stato indicato --key, ma il rapporto non è firmato",
  "the manifest names a signer, but the signature is missing": "il manifesto indica un firmatario, ma la firma manca",
  "the signature does not fit the manifest": "la firma non corrisponde al manifesto",
  "the signature does not fit the manifest and the key given; the manifest names another key":
    "la firma non corrisponde al manifesto e alla chiave fornita; il manifesto indica un'altra chiave",
  "cannot be read as a result": "non è leggibile come risultato",
  "names another program or version than the manifest":
    "indica un programma o una versione diversi da quelli del manifesto",
  "names other logs than the manifest": "indica log diversi da quelli del manifesto",
  "names other limit sets than the manifest": "indica insiemi di limiti diversi da quelli del manifesto",
  "changed: {1}: expected SHA-256 {2}, found {3}": "modificato: {1}: SHA-256 atteso {2}, trovato {3}",
  "missing: {1}: expected SHA-256 {2}, found no file": "mancante: {1}: SHA-256 atteso {2}, nessun file trovato",
  "extra: {1}: expected no such file, found SHA-256 {2}": "in più: {1}: file non atteso, trovato SHA-256 {2}",
  "changed: {1}: it is not as the program wrote it (its own check sum does not fit); found SHA-256 {2}":
    "modificato: {1}: non è come il programma lo ha scritto (la sua somma di controllo non corrisponde); trovato SHA-256 {2}",
  "contradiction: {1} {2}": "contraddizione: {1} {2}",
  "signature: {1}: {2}": "firma: {1}: {2}",
  "log: {1} is not one of the report's logs: found SHA-256 {2}":
    "log: {1} non è uno dei log del rapporto: trovato SHA-256 {2}",
  "log changed: {1}: expected SHA-256 {2}, found {3}": "log modificato: {1}: SHA-256 atteso {2}, trovato {3}",
  "limit set: {1}: expected SHA-256 {2}, this program has no such set":
    "insieme di limiti: {1}: SHA-256 atteso {2}, questo programma non ha tale insieme",
  "limit set: {1} of this program: expected SHA-256 {2}, found {3}":
    "insieme di limiti: {1} di questo programma: SHA-256 atteso {2}, trovato {3}",
  "re-run: {1} {2}": "ripetizione: {1} {2}",
  "re-run: {1} differs from byte {2} on": "ripetizione: {1} differisce dal byte {2} in poi",
  "{1} holds no manifest.json: it is not a report folder, or the manifest was taken away.":
    "{1} non contiene manifest.json: non è la cartella di un rapporto, oppure il manifesto è stato tolto.",
  "{1} holds a public key; signing needs the private one (PEM, PKCS#8).":
    "{1} contiene una chiave pubblica; per firmare serve quella privata (PEM, PKCS#8).",
  '{1} is locked with a passphrase; unlock it with "openssl pkey -in {2} -out KEY.pem" first.':
    '{1} è protetto da una passphrase; sbloccarlo prima con "openssl pkey -in {2} -out KEY.pem".',
  '{1} holds a private key; checking needs the public one: "openssl pkey -in {2} -pubout -out PUBLIC.pem" makes it.':
    '{1} contiene una chiave privata; per verificare serve quella pubblica: la crea "openssl pkey -in {2} -pubout -out PUBLIC.pem".',
  '{1} holds no private key in PEM form (PKCS#8); "openssl genpkey -algorithm ed25519 -out KEY.pem" makes one.':
    '{1} non contiene una chiave privata in formato PEM (PKCS#8); ne crea una "openssl genpkey -algorithm ed25519 -out KEY.pem".',
  '{1} holds no public key in PEM form; "openssl pkey -in KEY.pem -pubout -out PUBLIC.pem" makes it from the private one.':
    '{1} non contiene una chiave pubblica in formato PEM; la crea da quella privata "openssl pkey -in KEY.pem -pubout -out PUBLIC.pem".',
  "{1} holds a key of the kind {2}; manifests are signed with Ed25519.":
    "{1} contiene una chiave di tipo {2}; i manifesti si firmano con Ed25519.",
  "  SHA-256 of results.json   {1} (report.html prints the one it was made with)":
    "  SHA-256 di results.json   {1} (report.html riporta quello con cui è stato generato)",
  "1 file does not hold.": "1 file non è valido.",
  "{1} files do not hold.": "{1} file non sono validi.",
  "Folder: of the {1} files that manifest.json lists, {2} have the SHA-256 that it gives.":
    "Cartella: file elencati in manifest.json: {1}; con lo SHA-256 ivi indicato: {2}.",
  "Re-run: made again from the logs, setup and limit sets; of {1} files {2} are the same byte for byte.":
    "Ripetizione: generato di nuovo da log, configurazione e insiemi di limiti; file: {1}; identici byte per byte: {2}.",
  "The report folder is untouched since it was signed. It was not made again from the logs, so its result was not checked.":
    "La cartella del rapporto è intatta da quando è stata firmata. Il rapporto non è stato generato di nuovo dai log, perciò il suo risultato non è stato verificato.",
  "The report folder fits its manifest. It was not made again from the logs, so neither its result nor the manifest itself was checked.":
    "La cartella del rapporto corrisponde al suo manifesto. Il rapporto non è stato generato di nuovo dai log, perciò non sono stati verificati né il suo risultato né il manifesto stesso.",
  "tells otherwise of logs, options, limit sets or files than the re-run":
    "riporta log, opzioni, insiemi di limiti o file diversi da quelli della ripetizione",
};
