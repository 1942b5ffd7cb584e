export const commandLine: Readonly<Record<string, string>> = {
  "Report: {1}": "Rapport : {1}",
  "SHA-256 of manifest.json: {1}": "SHA-256 de manifest.json : {1}",
  '{1} observations in {2}, "{3}" … "{4}", from {5} to {6}, {7}{8}, channels: {9} each, rows: {10} in all → {11}':
    "{1} observations dans {2}, « {3} » … « {4} », du {5} au {6}, {7}{8}, voies : {9} chacune, lignes : {10} en tout → {11}",
  "{1} (trigger {2})": "{1} (déclenchement {2})",
  '{1} "{2}" at {3}, {4}{5}, channels: {6}, rows: {7} → {8}':
    "{1} « {2} » du {3}, {4}{5}, voies : {6}, lignes : {7} → {8}",
  ', category "{1}"': ", catégorie « {1} »",
  "and {1} more": "et encore {1}",
  "Observations ({1})": "Observations ({1})",
  "Events that the recorder listed ({1})": "Événements listés par l'enregistreur ({1})",
  "--language {1} is not known; it can be {2}.": "--language {1} n'est pas connu ; possibilités : {2}.",
  "--format needs at least one output: {1}.": "--format exige au moins une sortie : {1}.",
  "--format {1} is not known; it can be {2}.": "--format {1} n'est pas connu ; possibilités : {2}.",
  "What was checked": "Ce qui a été vérifié",
  "To compare with what the other side holds": "À comparer avec ce que détient l'autre partie",
  "  SHA-256 of manifest.json  {1}": "  SHA-256 de manifest.json  {1}",
  "The report is untouched, and made again from the logs it is the same byte for byte.":
    "Le rapport est intact et, refait à partir des journaux, il est identique octet par octet.",
  "The report could not be made again from the logs.": "Le rapport n'a pas pu être refait à partir des journaux.",
  "Signature: none. Whoever changes a file and the manifest alike is found only by making the report again, or by the hash below.":
    "Signature : aucune. Quiconque modifie à la fois un fichier et le manifeste n'est décelé qu'en refaisant le rapport, ou par l'empreinte ci-dessous.",
  "Signature: fits the key that the manifest names. Whose key that is shows only --key with the signer's public key.":
    "Signature : correspond à la clé que nomme le manifeste. À qui appartient cette clé, seul --key avec la clé publique du signataire le montre.",
  "Signature: fits the public key given.": "Signature : correspond à la clé publique donnée.",
  "Signature: does not hold or could not be checked.": "Signature : ne tient pas ou n'a pas pu être vérifiée.",
  "Re-run: made again from the logs, setup and limit sets; all {1} files are the same byte for byte.":
    "Nouvelle exécution : refait à partir des journaux, du paramétrage et des jeux de limites ; les {1} fichiers sont tous identiques octet par octet.",
  "Re-run: stopped: {1}": "Nouvelle exécution : arrêtée : {1}",
  "Folder and re-run: not checked, because the manifest does not hold.":
    "Dossier et nouvelle exécution : non vérifiés, car le manifeste ne tient pas.",
  "Re-run: not done, because the setup or a limit set in the folder does not hold.":
    "Nouvelle exécution : non faite, car le paramétrage ou un jeu de limites du dossier ne tient pas.",
  "Re-run: not done, because these logs were not found unchanged: {1}. Name them after the folder.":
    "Nouvelle exécution : non faite, car ces journaux n'ont pas été trouvés inchangés : {1}. Nommez-les après le dossier.",
  "Program: the report was written by {1} {2}, this is {3} {4}. A re-run that differs may come from that alone.":
    "Programme : le rapport a été écrit par {1} {2}, celui-ci est {3} {4}. Une nouvelle exécution qui diffère peut venir de cela seul.",
  "is in the folder, but the re-run does not make it":
    "est dans le dossier, mais la nouvelle exécution ne le produit pas",
  "This limit set is a file of its own, which does not come with the program.":
    "Ce jeu de limites est un fichier à part, qui n'est pas fourni avec le programme.",
  "is made by the re-run, but is not in the folder":
    "est produit par la nouvelle exécution, mais n'est pas dans le dossier",
  "a signature is there, but the manifest names no signer":
    "une signature est présente, mais le manifeste ne nomme aucun signataire",
  "--key was given, but the report is not signed": "--key a été donné, mais le rapport n'est pas signé",
  "the manifest names a signer, but the signature is missing":
    "le manifeste nomme un signataire, mais la signature manque",
  "the signature does not fit the manifest": "la signature ne correspond pas au manifeste",
  "the signature does not fit the manifest and the key given; the manifest names another key":
    "la signature ne correspond pas au manifeste et à la clé donnée ; le manifeste nomme une autre clé",
  "cannot be read as a result": "ne peut être lu comme un résultat",
  "names another program or version than the manifest":
    "nomme un autre programme ou une autre version que le manifeste",
  "names other logs than the manifest": "nomme d'autres journaux que le manifeste",
  "names other limit sets than the manifest": "nomme d'autres jeux de limites que le manifeste",
  "changed: {1}: expected SHA-256 {2}, found {3}": "modifié : {1} : SHA-256 attendu {2}, trouvé {3}",
  "missing: {1}: expected SHA-256 {2}, found no file": "manquant : {1} : SHA-256 attendu {2}, aucun fichier trouvé",
  "extra: {1}: expected no such file, found SHA-256 {2}":
    "en trop : {1} : aucun fichier de ce nom attendu, SHA-256 trouvé {2}",
  "changed: {1}: it is not as the program wrote it (its own check sum does not fit); found SHA-256 {2}":
    "modifié : {1} : n'est pas tel que le programme l'a écrit (sa propre somme de contrôle ne correspond pas) ; SHA-256 trouvé {2}",
  "contradiction: {1} {2}": "contradiction : {1} {2}",
  "signature: {1}: {2}": "signature : {1} : {2}",
  "log: {1} is not one of the report's logs: found SHA-256 {2}":
    "journal : {1} n'est pas l'un des journaux du rapport : SHA-256 trouvé {2}",
  "log changed: {1}: expected SHA-256 {2}, found {3}": "journal modifié : {1} : SHA-256 attendu {2}, trouvé {3}",
  "limit set: {1}: expected SHA-256 {2}, this program has no such set":
    "jeu de limites : {1} : SHA-256 attendu {2}, ce programme n'a pas un tel jeu",
  "limit set: {1} of this program: expected SHA-256 {2}, found {3}":
    "jeu de limites : {1} de ce programme : SHA-256 attendu {2}, trouvé {3}",
  "re-run: {1} {2}": "nouvelle exécution : {1} {2}",
  "re-run: {1} differs from byte {2} on": "nouvelle exécution : {1} diffère à partir de l'octet {2}",
  "{1} holds no manifest.json: it is not a report folder, or the manifest was taken away.":
    "{1} ne contient pas de manifest.json : ce n'est pas un dossier de rapport, ou le manifeste a été retiré.",
  "{1} holds a public key; signing needs the private one (PEM, PKCS#8).":
    "{1} contient une clé publique ; la signature exige la clé privée (PEM, PKCS#8).",
  '{1} is locked with a passphrase; unlock it with "openssl pkey -in {2} -out KEY.pem" first.':
    '{1} est verrouillé par une phrase secrète ; déverrouillez-le d\'abord avec "openssl pkey -in {2} -out KEY.pem".',
  '{1} holds a private key; checking needs the public one: "openssl pkey -in {2} -pubout -out PUBLIC.pem" makes it.':
    '{1} contient une clé privée ; la vérification exige la clé publique : "openssl pkey -in {2} -pubout -out PUBLIC.pem" la produit.',
  '{1} holds no private key in PEM form (PKCS#8); "openssl genpkey -algorithm ed25519 -out KEY.pem" makes one.':
    '{1} ne contient pas de clé privée au format PEM (PKCS#8) ; "openssl genpkey -algorithm ed25519 -out KEY.pem" en produit une.',
  '{1} holds no public key in PEM form; "openssl pkey -in KEY.pem -pubout -out PUBLIC.pem" makes it from the private one.':
    '{1} ne contient pas de clé publique au format PEM ; "openssl pkey -in KEY.pem -pubout -out PUBLIC.pem" la produit à partir de la clé privée.',
  "{1} holds a key of the kind {2}; manifests are signed with Ed25519.":
    "{1} contient une clé du type {2} ; les manifestes sont signés avec Ed25519.",
  "  SHA-256 of results.json   {1} (report.html prints the one it was made with)":
    "  SHA-256 de results.json   {1} (report.html imprime celui avec lequel il a été fait)",
  "The report folder is untouched since it was signed. It was not made again from the logs, so its result was not checked.":
    "Le dossier du rapport est intact depuis sa signature. Il n'a pas été refait à partir des journaux ; son résultat n'a donc pas été vérifié.",
  "The report folder fits its manifest. It was not made again from the logs, so neither its result nor the manifest itself was checked.":
    "Le dossier du rapport concorde avec son manifeste. Il n'a pas été refait à partir des journaux ; ni son résultat ni le manifeste lui-même n'ont donc été vérifiés.",
  "1 file does not hold.": "1 fichier ne tient pas.",
  "{1} files do not hold.": "{1} fichiers ne tiennent pas.",
  "Folder: of the {1} files that manifest.json lists, {2} have the SHA-256 that it gives.":
    "Dossier : sur les {1} fichiers que liste manifest.json, {2} ont le SHA-256 qu'il indique.",
  "Re-run: made again from the logs, setup and limit sets; of {1} files {2} are the same byte for byte.":
    "Nouvelle exécution : refait à partir des journaux, du paramétrage et des jeux de limites ; sur {1} fichiers, {2} sont identiques octet par octet.",
  "tells otherwise of logs, options, limit sets or files than the re-run":
    "indique d'autres journaux, options, jeux de limites ou fichiers que la nouvelle exécution",
};
