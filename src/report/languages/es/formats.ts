/** Remarks on reading log files. */
export const formats: Readonly<Record<string, string>> = {
  "{1} of the {2} bytes of data are missing at its end.": "al final faltan {1} de los {2} bytes de datos.",
  "{1} samples at {2} per second are left out, too few for a waveform of {3} Hz.":
    "se dejan fuera {1} muestras a {2} por segundo, demasiado pocas para una forma de onda de {3} Hz.",
  "sampled {1} times a second, so it is no waveform of {2} Hz":
    "muestreado {1} veces por segundo, por lo que no es una forma de onda de {2} Hz",
  '"{1}" is brought to the primary side by {2}, unlike in the first file.':
    "«{1}» se lleva al lado primario con {2}, a diferencia del primer archivo.",
  "an r.m.s. value or mean is no waveform": "un valor eficaz o una media no es una forma de onda",
  "direct and auxiliary voltages are not used": "las tensiones continuas y auxiliares no se usan",
  "a frequency is no waveform": "una frecuencia no es una forma de onda",
  "an angle is no waveform": "un ángulo no es una forma de onda",
  "it is computed from other values": "está calculado a partir de otros valores",
  "a symmetrical component is no phase quantity": "una componente simétrica no es una magnitud de fase",
  "a residual quantity (sum of the phases) is no phase quantity":
    "una magnitud residual (suma de las fases) no es una magnitud de fase",
  "an earth quantity is no phase quantity": "una magnitud de tierra no es una magnitud de fase",
  '"{1}{2}" may be a phase, a number or a symmetrical component':
    "«{1}{2}» puede ser una fase, un número o una componente simétrica",
  '"{1}" is none of the phases {2}': "«{1}» no es ninguna de las fases {2}",
  "the edition {1} of the standard is not known; the layout of 1999 is used.":
    "no se conoce la edición {1} de la norma; se usa la disposición de 1999.",
  "the year of the standard is missing; the channel lines have the form of 1999, which is used.":
    "falta el año de la norma; las líneas de canal tienen la forma de 1999, que es la que se usa.",
  "{1} analog and {2} status channels are promised, but {3} and {4} are described; the descriptions are used.":
    "se anuncian {1} canales analógicos y {2} de estado, pero se describen {3} y {4}; se usan las descripciones.",
  "the date is written {1}, not in the order of the edition.":
    "la fecha está escrita como {1}, no en el orden de la edición.",
  "the date is read as {1}; the configuration names no edition, so state dateOrder in the setup if that is wrong.":
    "la fecha se lee como {1}; el archivo de configuración no nombra edición; indique dateOrder en la configuración si eso es erróneo.",
  "the time factor {1} cannot be used; 1 is taken.": "el factor de tiempo {1} no puede usarse; se toma 1.",
  "the time code {1} cannot be read; the stamps are taken to name no offset.":
    "el código de tiempo {1} no puede leerse; se entiende que las marcas de tiempo no indican desfase.",
  "the recorder states that its clock was right within {1} only.":
    "el registrador declara que su reloj solo era exacto dentro de {1}.",
  "the recorder states that its clock had failed; the times cannot be trusted.":
    "el registrador declara que su reloj había fallado; las horas no son de fiar.",
  "the data are text although the configuration says {1}.":
    "los datos son texto aunque el archivo de configuración dice {1}.",
  "the data are binary although the configuration says ASCII.":
    "los datos son binarios aunque el archivo de configuración dice ASCII.",
  "the rows hold {1} words of status channels, not {2} as the configuration says.":
    "las filas contienen {1} palabras de canales de estado, no {2} como dice el archivo de configuración.",
  "{1} bytes behind the last whole row are left out; the file is cut off.":
    "se dejan fuera {1} bytes tras la última fila completa; el archivo está truncado.",
  "the rows hold two bytes per value, so they are read as BINARY, not {1}.":
    "las filas contienen dos bytes por valor, por lo que se leen como BINARY, no como {1}.",
  "{1} and 1 other file: {2}": "{1} y 1 archivo más: {2}",
  "{1} and {2} other files: {3}": "{1} y {2} archivos más: {3}",
  "{1} h:m:s with {2} decimals": "{1} h:m:s con {2} decimales",
  "{1}, of the first sample of each file": "{1}, de la primera muestra de cada archivo",
  "× {1} by the setup": "× {1} según la configuración",
  "{1} in the setup states another ratio": "{1} en la configuración indica otra relación",
  currents: "corrientes",
  voltages: "tensiones",
  "The file does not say whether its {1} are primary or secondary values; they are taken as they stand ({2}).":
    "El archivo no dice si sus {1} son valores primarios o secundarios; se toman tal como están ({2}).",
  "The {1} are secondary values without a usable ratio; they are taken as they stand ({2}).":
    "Las {1} son valores secundarios sin una relación utilizable; se toman tal como están ({2}).",
  "secondary value × {1}/{2}": "valor secundario × {1}/{2}",
  "The ratio {1}/{2} of the {3} is unusual; its two sides may have different units ({4}).":
    "La relación {1}/{2} de las {3} es inusual; sus dos lados pueden tener unidades distintas ({4}).",
  "the setup leaves it out": "la configuración lo deja fuera",
  'its unit "{1}" is not one of current': "su unidad «{1}» no es de corriente",
  'its unit "{1}" is not one of voltage': "su unidad «{1}» no es de tensión",
  "the setup": "la configuración",
  "a current between phases is not used": "una corriente entre fases no se usa",
  "phase by {1}": "fase según {1}",
  "no unit stated, taken as {1}": "sin unidad indicada, se toma como {1}",
  'unit "{1}"': "unidad «{1}»",
  "written the other way round, so its sign is turned": "escrito al revés, por lo que se invierte su signo",
  "inverted by the setup": "invertido según la configuración",
  'its name speaks of a current, its unit "{1}" of a voltage':
    "su nombre habla de una corriente; su unidad «{1}», de una tensión",
  'its name speaks of a voltage, its unit "{1}" of a current':
    "su nombre habla de una tensión; su unidad «{1}», de una corriente",
  'the phase field "{1}"': "el campo de fase «{1}»",
  'the name "{1}"': "el nombre «{1}»",
  "its name speaks of more than one phase": "su nombre habla de más de una fase",
  "neither its name nor its phase field says a phase": "ni su nombre ni su campo de fase indican una fase",
  "{1} and {2} contradict each other": "{1} y {2} se contradicen",
  "{1} samples are promised, the data hold {2}; all that are there are used.":
    "se anuncian {1} muestras, los datos contienen {2}; se usan todas las que hay.",
  "its {1} status channels are not used.": "sus {1} canales de estado no se usan.",
  'the channel "{1}" has the factor 0, so all its values are {2}.':
    "el canal «{1}» tiene el factor 0, por lo que todos sus valores son {2}.",
  "the time of the first sample occurs twice in {1} (end of summer time); the first is taken. A fixed offset as zone decides it.":
    "la hora de la primera muestra se da dos veces en {1} (fin de la hora de verano); se toma la primera. Un desfase fijo como zona lo decide.",
  "line {1} is cut off or garbled and left out.": "la línea {1} está truncada o es ilegible y se deja fuera.",
  "{1} lines, the first of them line {2}, are cut off or garbled and left out.":
    "{1} líneas, la primera de ellas la línea {2}, están truncadas o son ilegibles y se dejan fuera.",
  "the sample numbers do not count the rows; each row is taken to follow the one before.":
    "los números de muestra no cuentan las filas; se entiende que cada fila sigue a la anterior.",
  "{1} samples are missing between the rows, by the sample numbers.":
    "faltan {1} muestras entre las filas, según los números de muestra.",
  "{1} sampling rates that differ by less than 0.1 % follow each other (a drifting clock); their mean, {2} per second, is used.":
    "se suceden {1} frecuencias de muestreo que difieren menos del 0,1 % (un reloj con deriva); se usa su media, {2} por segundo.",
  "no sampling rate is stated; by the time stamps it is {1} per second.":
    "no se indica frecuencia de muestreo; según las marcas de tiempo es de {1} por segundo.",
  "the rows have no time stamps; the stated sampling rate is used.":
    "las filas no tienen marcas de tiempo; se usa la frecuencia de muestreo indicada.",
  "the time stamps are cut to 16 bits; the stated sampling rate is used.":
    "las marcas de tiempo están recortadas a 16 bits; se usa la frecuencia de muestreo indicada.",
  "the time stamps speak of {1} samples per second, the configuration of {2}; the configuration is used.":
    "las marcas de tiempo hablan de {1} muestras por segundo, el archivo de configuración de {2}; se usa el archivo de configuración.",
  "no unit is stated": "no se indica unidad",
  'the unit "{1}" may be milli or mega': "la unidad «{1}» puede ser mili o mega",
  "an r.m.s. value is no waveform": "un valor eficaz no es una forma de onda",
  "direct voltage and current are not used": "la tensión y la corriente continuas no se usan",
  'the unit "{1}" is none of voltage or current': "la unidad «{1}» no es ni de tensión ni de corriente",
  "{1}: 1 sample is missing in 1 gap, by the times of the rows.":
    "{1}: falta 1 muestra en 1 laguna, según las horas de las filas.",
  "{1}: {2} samples are missing in 1 gap, by the times of the rows.":
    "{1}: faltan {2} muestras en 1 laguna, según las horas de las filas.",
  "{1}: {2} samples are missing in {3} gaps, by the times of the rows.":
    "{1}: faltan {2} muestras en {3} lagunas, según las horas de las filas.",
  "{1}: its first time occurs twice (end of summer time); the first is taken. A fixed offset as zone decides it.":
    "{1}: su primera hora se da dos veces (fin de la hora de verano); se toma la primera. Un desfase fijo como zona lo decide.",
  "a time beside the one that is used": "una hora además de la que se usa",
  "{1}: {2} samples per second are too few; waveforms are measured from {3} on.":
    "{1}: {2} muestras por segundo son demasiado pocas; las formas de onda se miden a partir de {3}.",
  "between {1} and {2} per second": "entre {1} y {2} por segundo",
  "{1}: by its times the sampling rate lies {2}; {3} is used (setup: samplesPerSecond states it).":
    "{1}: según sus horas, la frecuencia de muestreo está {2}; se usa {3} (configuración: samplesPerSecond la indica).",
  "{1}: its times are written in steps of {2}, so that a loss of a sample would not show and all times may be off by {3}.":
    "{1}: sus horas están escritas en escalones de {2}, de modo que la pérdida de una muestra no se notaría y todas las horas pueden estar desplazadas {3}.",
  "{1}: its times are written in steps of {2}, so that a loss of up to {3} samples would not show and all times may be off by {4}.":
    "{1}: sus horas están escritas en escalones de {2}, de modo que la pérdida de hasta {3} muestras no se notaría y todas las horas pueden estar desplazadas {4}.",
  "flags are not used with samples": "con muestras no se usan marcas",
  "{1}: no sampled voltage or current": "{1}: no es una tensión ni una corriente muestreada",
  "{1}: a mean, minimum or maximum is no waveform": "{1}: una media, un mínimo o un máximo no es una forma de onda",
  "the unit {1} ({2}) is none of a sampled voltage": "la unidad {1} ({2}) no es de una tensión muestreada",
  "the unit {1} ({2}) is none of a sampled current": "la unidad {1} ({2}) no es de una corriente muestreada",
  "no unit is stated, taken as {1}": "no se indica unidad, se toma como {1}",
  "V: no unit is written; the r.m.s. value {1} of the first samples lies between 80 and 1000":
    "V: no hay unidad escrita; el valor eficaz {1} de las primeras muestras está entre 80 y 1000",
  "no unit is stated for {1}; where it is {2}, say quantity: {3} in the setup under channels:":
    "no se indica unidad para {1}; si es {2}, diga quantity: {3} en la configuración en channels:",
  "The log does not say when it was recorded: its first sample is put on {1}, so all times count from there, and ten-minute intervals do not begin on the ten minutes of a clock (setup: start states it).":
    "Los datos no dicen cuándo se registraron: su primera muestra se sitúa en {1}, de modo que todas las horas cuentan desde ahí, y los intervalos de diez minutos no comienzan en las decenas de minutos de un reloj (configuración: start lo indica).",
  "The log does not say when it was recorded; the start is that of the setup, {1}.":
    "Los datos no dicen cuándo se registraron; el inicio es el de la configuración, {1}.",
  "no times: the rows follow each other evenly": "sin horas: las filas se suceden regularmente",
  "the numbers of the samples": "los números de las muestras",
  seconds: "segundos",
  milliseconds: "milisegundos",
  microseconds: "microsegundos",
  nanoseconds: "nanosegundos",
  "{1} since 1970-01-01 UTC": "{1} desde 1970-01-01 UTC",
  "{1} from the beginning of the recording": "{1} desde el comienzo del registro",
  "{1} hh:mm:ss in steps of {2} s with offset from UTC, {3}":
    "{1} hh:mm:ss en escalones de {2} s con desfase respecto de UTC, {3}",
  "{1} hh:mm:ss in steps of {2} s, {3}": "{1} hh:mm:ss en escalones de {2} s, {3}",
  'channel {1} ("{2}")': "canal {1} («{2}»)",
  "voltage {1}": "tensión {1}",
  "current {1}": "corriente {1}",
  "{1} and others": "{1} y otros",
  "it is {1} like {2}; say in the setup, under channels:, which of them is to be used":
    "es {1}, igual que {2}; diga en la configuración, en channels:, cuál de ellos debe usarse",
  "the setup uses {1} as {2}": "la configuración usa {1} como {2}",
  "The clock does not fit the sampling rate of {1} per second: {2} of {3} joined files begin up to {4} ms beside the sample that they are put on.":
    "El reloj no concuerda con la frecuencia de muestreo de {1} por segundo: {2} de {3} archivos unidos comienzan hasta a {4} ms de la muestra en la que se sitúan.",
  "The sampling rates of joined files differ by less than 0.1 % (a drifting clock); their mean, {1} per second, is used.":
    "Las frecuencias de muestreo de los archivos unidos difieren menos del 0,1 % (un reloj con deriva); se usa su media, {1} por segundo.",
  "the log holds waveforms, whose samples carry the time at which they were taken":
    "los datos contienen formas de onda, cuyas muestras llevan la hora en que se tomaron",
  "it is zero throughout": "es cero en todo momento",
  "it holds the same value throughout": "contiene el mismo valor en todo momento",
  "its values never change sign, so they are no waveform (an r.m.s. value, direct voltage or contact)":
    "sus valores nunca cambian de signo, por lo que no son una forma de onda (un valor eficaz, una tensión continua o un contacto)",
  "it changes sign {1} times a second at most, too slowly for a supply voltage or current":
    "cambia de signo como máximo {1} veces por segundo, demasiado despacio para una tensión o corriente de alimentación",
};
