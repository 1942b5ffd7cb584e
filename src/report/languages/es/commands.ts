/** Answers of the commands. */
export const commands: Readonly<Record<string, string>> = {
  "Report: {1}": "Informe: {1}",
  "SHA-256 of manifest.json: {1}": "SHA-256 de manifest.json: {1}",
  '{1} observations in {2}, "{3}" … "{4}", from {5} to {6}, {7}{8}, channels: {9} each, rows: {10} in all → {11}':
    "{1} observaciones en {2}, «{3}» … «{4}», de {5} a {6}, {7}{8}, canales: {9} en cada una, filas: {10} en total → {11}",
  "{1} (trigger {2})": "{1} (disparo {2})",
  '{1} "{2}" at {3}, {4}{5}, channels: {6}, rows: {7} → {8}':
    "{1} «{2}» en {3}, {4}{5}, canales: {6}, filas: {7} → {8}",
  ', category "{1}"': ", categoría «{1}»",
  "and {1} more": "y {1} más",
  "Observations ({1})": "Observaciones ({1})",
  "Events that the recorder listed ({1})": "Eventos de la lista del registrador ({1})",
  "--language {1} is not known; it can be {2}.": "--language {1} no se conoce; puede ser {2}.",
  "--format needs at least one output: {1}.": "--format necesita al menos una salida: {1}.",
  "--format {1} is not known; it can be {2}.": "--format {1} no se conoce; puede ser {2}.",
  "This limit set is a file of its own, which does not come with the program.":
    "Este conjunto de límites es un archivo propio, que no viene con el programa.",
  "What was checked": "Qué se comprobó",
  "To compare with what the other side holds": "Para comparar con lo que tiene la otra parte",
  "  SHA-256 of manifest.json  {1}": "  SHA-256 de manifest.json  {1}",
  "  SHA-256 of results.json   {1} (report.html prints the one it was made with)":
    "  SHA-256 de results.json   {1} (report.html imprime aquel con el que se generó)",
  "The report is untouched, and made again from the logs it is the same byte for byte.":
    "El informe está intacto y, generado de nuevo a partir de los datos, es idéntico byte a byte.",
  "The report folder is untouched since it was signed. It was not made again from the logs, so its result was not checked.":
    "La carpeta del informe está intacta desde que se firmó. No se generó de nuevo a partir de los datos, por lo que su resultado no se comprobó.",
  "The report folder fits its manifest. It was not made again from the logs, so neither its result nor the manifest itself was checked.":
    "La carpeta del informe concuerda con su manifiesto. No se generó de nuevo a partir de los datos, por lo que no se comprobaron ni su resultado ni el propio manifiesto.",
  "The report could not be made again from the logs.": "El informe no pudo generarse de nuevo a partir de los datos.",
  "1 file does not hold.": "1 archivo no es válido.",
  "{1} files do not hold.": "{1} archivos no son válidos.",
  "Folder: of the {1} files that manifest.json lists, {2} have the SHA-256 that it gives.":
    "Carpeta: de los {1} archivos que enumera manifest.json, tienen el SHA-256 que este indica: {2}.",
  "Signature: none. Whoever changes a file and the manifest alike is found only by making the report again, or by the hash below.":
    "Firma: ninguna. A quien altere a la vez un archivo y el manifiesto solo se le descubre generando el informe de nuevo, o por el hash indicado abajo.",
  "Signature: fits the key that the manifest names. Whose key that is shows only --key with the signer's public key.":
    "Firma: corresponde a la clave que nombra el manifiesto. De quién es esa clave solo lo muestra --key con la clave pública del firmante.",
  "Signature: fits the public key given.": "Firma: corresponde a la clave pública indicada.",
  "Signature: does not hold or could not be checked.": "Firma: no es válida o no pudo comprobarse.",
  "Re-run: made again from the logs, setup and limit sets; all {1} files are the same byte for byte.":
    "Repetición: generado de nuevo a partir de datos, configuración y conjuntos de límites; los {1} archivos son todos idénticos byte a byte.",
  "Re-run: made again from the logs, setup and limit sets; of {1} files {2} are the same byte for byte.":
    "Repetición: generado de nuevo a partir de datos, configuración y conjuntos de límites; de {1} archivos son idénticos byte a byte: {2}.",
  "Re-run: stopped: {1}": "Repetición: detenida: {1}",
  "Folder and re-run: not checked, because the manifest does not hold.":
    "Carpeta y repetición: no comprobadas, porque el manifiesto no es válido.",
  "Re-run: not done, because the setup or a limit set in the folder does not hold.":
    "Repetición: no realizada, porque la configuración o un conjunto de límites de la carpeta no es válido.",
  "Re-run: not done, because these logs were not found unchanged: {1}. Name them after the folder.":
    "Repetición: no realizada, porque estos datos no se encontraron sin cambios: {1}. Indíquelos después de la carpeta.",
  "Program: the report was written by {1} {2}, this is {3} {4}. A re-run that differs may come from that alone.":
    "Programa: el informe lo escribió {1} {2}; este es {3} {4}. Una repetición distinta puede deberse solo a eso.",
  "is in the folder, but the re-run does not make it": "está en la carpeta, pero la repetición no lo genera",
  "is made by the re-run, but is not in the folder": "lo genera la repetición, pero no está en la carpeta",
  "tells otherwise of logs, options, limit sets or files than the re-run":
    "indica otra cosa que la repetición sobre datos, opciones, conjuntos de límites o archivos",
  "a signature is there, but the manifest names no signer": "hay una firma, pero el manifiesto no nombra firmante",
  "--key was given, but the report is not signed": "se indicó --key, pero el informe no está firmado",
  "the manifest names a signer, but the signature is missing": "el manifiesto nombra un firmante, pero falta la firma",
  "the signature does not fit the manifest": "la firma no corresponde al manifiesto",
  "the signature does not fit the manifest and the key given; the manifest names another key":
    "la firma no corresponde al manifiesto ni a la clave indicada; el manifiesto nombra otra clave",
  "cannot be read as a result": "no puede leerse como resultado",
  "names another program or version than the manifest": "nombra otro programa o versión que el manifiesto",
  "names other logs than the manifest": "nombra otros archivos de datos que el manifiesto",
  "names other limit sets than the manifest": "nombra otros conjuntos de límites que el manifiesto",
  "changed: {1}: expected SHA-256 {2}, found {3}": "alterado: {1}: SHA-256 esperado {2}, encontrado {3}",
  "missing: {1}: expected SHA-256 {2}, found no file": "falta: {1}: SHA-256 esperado {2}, no se encontró el archivo",
  "extra: {1}: expected no such file, found SHA-256 {2}":
    "sobra: {1}: no se esperaba tal archivo, SHA-256 encontrado {2}",
  "changed: {1}: it is not as the program wrote it (its own check sum does not fit); found SHA-256 {2}":
    "alterado: {1}: no está como el programa lo escribió (su propia suma de comprobación no coincide); SHA-256 encontrado {2}",
  "contradiction: {1} {2}": "contradicción: {1} {2}",
  "signature: {1}: {2}": "firma: {1}: {2}",
  "log: {1} is not one of the report's logs: found SHA-256 {2}":
    "datos: {1} no es uno de los archivos de datos del informe: SHA-256 encontrado {2}",
  "log changed: {1}: expected SHA-256 {2}, found {3}": "datos alterados: {1}: SHA-256 esperado {2}, encontrado {3}",
  "limit set: {1}: expected SHA-256 {2}, this program has no such set":
    "conjunto de límites: {1}: SHA-256 esperado {2}; este programa no tiene tal conjunto",
  "limit set: {1} of this program: expected SHA-256 {2}, found {3}":
    "conjunto de límites: {1} de este programa: SHA-256 esperado {2}, encontrado {3}",
  "re-run: {1} {2}": "repetición: {1} {2}",
  "re-run: {1} differs from byte {2} on": "repetición: {1} difiere desde el byte {2}",
  "{1} holds no manifest.json: it is not a report folder, or the manifest was taken away.":
    "{1} no contiene manifest.json: no es una carpeta de informe, o se quitó el manifiesto.",
  "{1} holds a public key; signing needs the private one (PEM, PKCS#8).":
    "{1} contiene una clave pública; para firmar se necesita la privada (PEM, PKCS#8).",
  '{1} is locked with a passphrase; unlock it with "openssl pkey -in {2} -out KEY.pem" first.':
    '{1} está protegida con una contraseña; desbloquéela antes con "openssl pkey -in {2} -out KEY.pem".',
  '{1} holds a private key; checking needs the public one: "openssl pkey -in {2} -pubout -out PUBLIC.pem" makes it.':
    '{1} contiene una clave privada; para comprobar se necesita la pública: "openssl pkey -in {2} -pubout -out PUBLIC.pem" la genera.',
  '{1} holds no private key in PEM form (PKCS#8); "openssl genpkey -algorithm ed25519 -out KEY.pem" makes one.':
    '{1} no contiene una clave privada en formato PEM (PKCS#8); "openssl genpkey -algorithm ed25519 -out KEY.pem" genera una.',
  '{1} holds no public key in PEM form; "openssl pkey -in KEY.pem -pubout -out PUBLIC.pem" makes it from the private one.':
    '{1} no contiene una clave pública en formato PEM; "openssl pkey -in KEY.pem -pubout -out PUBLIC.pem" la genera a partir de la privada.',
  "{1} holds a key of the kind {2}; manifests are signed with Ed25519.":
    "{1} contiene una clave del tipo {2}; los manifiestos se firman con Ed25519.",
};
