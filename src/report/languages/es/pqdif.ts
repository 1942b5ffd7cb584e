/** Remarks on reading PQDIF. */
export const pqdif: Readonly<Record<string, string>> = {
  "the file states how far its times are from local time, or UTC as its zone":
    "el archivo indica cuánto distan sus horas de la hora local, o UTC como su zona",
  'The file names the time zone "{1}", but not whether its times are in it or in UTC; they are read as UTC. If they are local times, give the zone with --zone.':
    "El archivo nombra la zona horaria «{1}», pero no si sus horas están en ella o en UTC; se leen como UTC. Si son horas locales, indique la zona con --zone.",
  "the first row of each observation lies at the start of the observation":
    "la primera fila de cada observación está al inicio de la observación",
  "the first row of each observation lies one interval after the start of the observation":
    "la primera fila de cada observación está un intervalo después del inicio de la observación",
  "a collection announces {1} elements, which its record cannot hold":
    "una colección anuncia {1} elementos, que no caben en su bloque",
  "the element {1} holds {2}, which it cannot be, and is left out":
    "el elemento {1} contiene {2}, lo que no es posible, y se deja fuera",
  "the file is of version {1}, while version 1 is known here; what was found is read":
    "el archivo es de la versión {1}, mientras que aquí se conoce la versión 1; se lee lo que se encontró",
  '"{1}": values times {2}, the transformer ratio of the setup':
    "«{1}»: valores multiplicados por {2}, la relación de transformación de la configuración",
  '"{1}": values times {2}/{3}, the transducer ratio that the file says to apply':
    "«{1}»: valores multiplicados por {2}/{3}, la relación de transductor que el archivo dice aplicar",
  '"{1}": the transducer ratio {2}/{3} of the file cannot be applied':
    "«{1}»: la relación de transductor {2}/{3} del archivo no puede aplicarse",
  '"{1}": calibrated as (value − {2}) × {3}, as the file says to apply; that the offset goes first is not confirmed by any document seen':
    "«{1}»: calibrado como (valor − {2}) × {3}, como el archivo dice aplicar; que primero se aplique el desplazamiento no lo confirma ningún documento visto",
  "a data source defines no channel that can be read": "una fuente de datos no define ningún canal que pueda leerse",
  none: "ninguno",
  transient: "transitorio",
  "transient impulsive": "transitorio impulsivo",
  "transient impulsive of nanoseconds": "transitorio impulsivo de nanosegundos",
  "transient impulsive of microseconds": "transitorio impulsivo de microsegundos",
  "transient impulsive of milliseconds": "transitorio impulsivo de milisegundos",
  "transient oscillatory": "transitorio oscilatorio",
  "transient oscillatory of low frequency": "transitorio oscilatorio de baja frecuencia",
  "transient oscillatory of medium frequency": "transitorio oscilatorio de media frecuencia",
  "transient oscillatory of high frequency": "transitorio oscilatorio de alta frecuencia",
  "short duration": "corta duración",
  "short duration instantaneous": "corta duración, instantáneo",
  "short duration instantaneous dip": "corta duración, hueco instantáneo",
  "short duration instantaneous swell": "corta duración, sobretensión instantánea",
  "short duration momentary": "corta duración, momentáneo",
  "short duration momentary interruption": "corta duración, interrupción momentánea",
  "short duration momentary dip": "corta duración, hueco momentáneo",
  "short duration momentary swell": "corta duración, sobretensión momentánea",
  "short duration temporary": "corta duración, temporal",
  "short duration temporary interruption": "corta duración, interrupción temporal",
  "short duration temporary dip": "corta duración, hueco temporal",
  "short duration temporary swell": "corta duración, sobretensión temporal",
  "long duration": "larga duración",
  "long duration interruption": "larga duración, interrupción",
  "long duration dip": "larga duración, hueco",
  "long duration swell": "larga duración, sobretensión",
  unbalance: "desequilibrio",
  "variation of the power frequency": "variación de la frecuencia de red",
  "voltage fluctuation": "fluctuación de tensión",
  "distortion of the waveform": "distorsión de la forma de onda",
  "distortion of the waveform direct component": "distorsión de la forma de onda, componente continua",
  "distortion of the waveform harmonic": "distorsión de la forma de onda, armónica",
  "distortion of the waveform interharmonic": "distorsión de la forma de onda, interarmónica",
  "distortion of the waveform notching": "distorsión de la forma de onda, muescas de conmutación",
  "distortion of the waveform noise": "distorsión de la forma de onda, ruido",
  "no trigger": "sin disparo",
  "triggered by a channel": "disparado por un canal",
  "by the clock": "por el reloj",
  "triggered from outside": "disparado desde el exterior",
  "by the clock, for statistics": "por el reloj, para estadística",
  "trigger not said": "disparo no indicado",
  "trigger method {1}": "método de disparo {1}",
  "its magnitude {1} ({2}) is not sure to be a voltage": "no es seguro que su magnitud {1} ({2}) sea una tensión",
  "the log does not state its magnitude": "los datos no indican su magnitud",
  "its magnitude {1} is not sure to be in percent of the declared voltage":
    "no es seguro que su magnitud {1} esté en porcentaje de la tensión declarada",
  "a series in steps announces {1} of segments or values, which its record cannot hold":
    "una serie por incrementos anuncia {1} de segmentos o valores, que no caben en su bloque",
  "{1}: the observation at {2} repeats samples of one that began before; they are counted once.":
    "{1}: la observación del {2} repite muestras de otra que comenzó antes; se cuentan una vez.",
  "it cannot be read: {1}": "no puede leerse: {1}",
  '{1}: "{2}" has other numbers of times and values; the shorter one counts':
    "{1}: «{2}» tiene distinto número de horas y de valores; cuenta el menor",
  "times of IEEE 1159.3 (days and seconds), of the start of each observation":
    "tiempos de IEEE 1159.3 (días y segundos), del inicio de cada observación",
  "{1}, byte {2}: {3}": "{1}, byte {2}: {3}",
  "{1}, byte {2} and {3} times more: {4}": "{1}, byte {2} y {3} veces más: {4}",
  "it is the largest deviation from the average of the phases, another definition than the negative sequence u2":
    "es la mayor desviación respecto de la media de las fases, una definición distinta de la secuencia inversa u2",
  "it is in relation to the whole r.m.s. value; total harmonic distortion is judged in relation to the fundamental":
    "está referido al valor eficaz total; la distorsión armónica total se evalúa respecto de la fundamental",
  "it is a sliding Plt, one value every Pst interval; Plt is counted in blocks of two hours":
    "es un Plt deslizante, un valor por cada intervalo de Pst; Plt se cuenta en bloques de dos horas",
  "it is the r.m.s. value of all harmonics together": "es el valor eficaz del conjunto de todos los armónicos",
  "it is the r.m.s. value of all interharmonics together":
    "es el valor eficaz del conjunto de todos los interarmónicos",
  "it is the value that {1} % do not exceed, no mean or extreme":
    "es el valor que el {1} % no supera; no es media ni extremo",
  "it holds no mean, value, minimum or maximum": "no contiene media, valor, mínimo ni máximo",
  "its quantity type ({1}) is no log of values over time":
    "su tipo de magnitud ({1}) no es un registro de valores en el tiempo",
  "it has no characteristic, so what it holds is not said; say it in the setup under columns:":
    "no tiene característica, de modo que no consta qué contiene; indíquelo en la configuración en columns:",
  "its characteristic {1} is none of IEEE 1159.3, so what it holds is not known; say it in the setup under columns:":
    "su característica {1} no es ninguna de IEEE 1159.3, de modo que no se sabe qué contiene; indíquelo en la configuración en columns:",
  "its characteristic ({1}) is not used here": "su característica ({1}) no se usa aquí",
  "its characteristic ({1}) of a {2} in {3} is not used here": "su característica ({1}) de {2} en {3} no se usa aquí",
  "its phase ({1}) is no conductor that is judged; say the phase in the setup under columns:":
    "su fase ({1}) no es un conductor que se evalúe; indique la fase en la configuración en columns:",
  "{1} Hz is no multiple of {2} Hz, and single lines of a spectrum are no group of interharmonics":
    "{1} Hz no es múltiplo de {2} Hz, y las líneas sueltas de un espectro no son un grupo de interarmónicos",
  "neither a group nor a frequency says its order; say it in the setup under columns: order":
    "ni un grupo ni una frecuencia indican su orden; indíquelo en la configuración en columns: order",
  "order {1} is no harmonic": "el orden {1} no es un armónico",
  "order {1} lies beyond {2}": "el orden {1} está más allá de {2}",
  "A to neutral": "A-neutro",
  "B to neutral": "B-neutro",
  "C to neutral": "C-neutro",
  "neutral to ground": "neutro-tierra",
  "A to B": "A-B",
  "B to C": "B-C",
  "C to A": "C-A",
  residual: "residual",
  net: "neto",
  "positive sequence": "secuencia directa",
  "negative sequence": "secuencia inversa",
  "zero sequence": "secuencia homopolar",
  total: "total",
  "average of phase to neutral": "media fase-neutro",
  "average of phase to phase": "media entre fases",
  worst: "peor",
  plus: "más",
  minus: "menos",
  "largest of phase to neutral": "mayor fase-neutro",
  "smallest of phase to neutral": "menor fase-neutro",
  "largest of phase to phase": "mayor entre fases",
  "smallest of phase to phase": "menor entre fases",
  ground: "tierra",
  "general {1}": "general {1}",
  voltage: "tensión",
  current: "corriente",
  power: "potencia",
  energy: "energía",
  temperature: "temperatura",
  pressure: "presión",
  charge: "carga",
  "electric field": "campo eléctrico",
  "magnetic field": "campo magnético",
  velocity: "velocidad",
  bearing: "rumbo",
  force: "fuerza",
  torque: "par",
  position: "posición",
  "flux linkage": "flujo concatenado",
  "flux density": "densidad de flujo",
  status: "estado",
  humidity: "humedad",
  impedance: "impedancia",
  "an observation has no start that can be read and is left out":
    "una observación no tiene un inicio que pueda leerse y se deja fuera",
  "a channel belongs to definition {1} of {2}, which there is not, and is left out":
    "un canal pertenece a la definición {1} de {2}, que no existe, y se deja fuera",
  unknown: "desconocida",
  "a channel has {1} series where {2} are defined; the others are left out":
    "un canal tiene {1} series donde hay definidas {2}; las demás se dejan fuera",
  '"{1}" holds the same in {2}, which is used': "«{1}» contiene lo mismo en {2}, que se usa",
  '"{1}" holds the frequency as well, and is used': "«{1}» contiene también la frecuencia, y se usa",
  "an observation lists more than {1} series and is left out":
    "una observación enumera más de {1} series y se deja fuera",
  "an observation stands before any data source that can be read, and is left out":
    "una observación aparece antes de cualquier fuente de datos que pueda leerse, y se deja fuera",
  "the file has no container record that can be read": "el archivo no tiene un bloque contenedor que pueda leerse",
  "logged values and waveforms": "valores registrados y formas de onda",
  "logged values": "valores registrados",
  waveforms: "formas de onda",
  "an event or a list of events": "un evento o una lista de eventos",
  "nothing: none of its channels is used, see there": "nada: no se usa ninguno de sus canales, véase allí",
  "magnitude or duration of events": "magnitud o duración de eventos",
  "it is empty in all observations": "está vacío en todas las observaciones",
  "it is defined, but no observation holds it": "está definido, pero ninguna observación lo contiene",
  "it marks intervals as flagged": "señala intervalos como marcados",
  "not said": "no indicado",
  "by the setup": "según la configuración",
  "measured {1}, characteristic {2}, phase {3}": "medido: {1}, característica: {2}, fase: {3}",
  "it holds no values that are numbers": "no contiene valores que sean números",
  "{1}: by the setup": "{1}: según la configuración",
  "the compressed data of a record are damaged, so it is left out":
    "los datos comprimidos de un bloque están dañados, por lo que se deja fuera",
  "a record inflates to more than {1} bytes and is left out":
    "un bloque se descomprime a más de {1} bytes y se deja fuera",
  "the next record lies outside the file (at byte {1}), so the rest cannot be found":
    "el bloque siguiente está fuera del archivo (en el byte {1}), por lo que no puede encontrarse el resto",
  "the next record is one that was already read (at byte {1}), so the rest cannot be found":
    "el bloque siguiente es uno que ya se leyó (en el byte {1}), por lo que no puede encontrarse el resto",
  "where the next record should begin (byte {1}) there is none, so the rest cannot be found":
    "donde debería comenzar el bloque siguiente (byte {1}) no hay ninguno, por lo que no puede encontrarse el resto",
  "the record gives sizes that cannot be ({1} and {2} bytes) and is left out":
    "el bloque indica tamaños imposibles ({1} y {2} bytes) y se deja fuera",
  "the file ends within a record, {1} bytes before its end: copy the file again":
    "el archivo termina dentro de un bloque, {1} bytes antes del final de este: copie el archivo de nuevo",
  "it holds samples of neither a voltage nor a current":
    "contiene muestras que no son ni de una tensión ni de una corriente",
  "it holds no points on the wave": "no contiene puntos de la onda",
  "its phase ({1}) is no conductor that is judged": "su fase ({1}) no es un conductor que se evalúe",
  "samples of a voltage, phase {1}": "muestras de una tensión, fase {1}",
  "samples of a current, phase {1}": "muestras de una corriente, fase {1}",
  "its unit says {1}, but what is measured is {2}, so it is taken as {3}":
    "su unidad indica {1}, pero lo medido es {2}, por lo que se toma como {3}",
  "a series holds {1}, which is no real number, and is left out":
    "una serie contiene {1}, que no es un número real, y se deja fuera",
  "a series shares the values of series {1} of channel {2}, which there is not":
    "una serie comparte los valores de la serie {1} del canal {2}, que no existe",
  "series share one another's values in a circle": "unas series comparten sus valores entre sí en círculo",
  "a series has the unknown storage method {1} and is left out":
    "una serie tiene el método de almacenamiento desconocido {1} y se deja fuera",
  "its rows follow one another at no common distance, so the length of an interval cannot be told":
    "sus filas no se suceden a una distancia común, de modo que no puede saberse la duración de un intervalo",
  "its values every {1} s are the course of an event, no log of intervals":
    "sus valores cada {1} s son la evolución de un evento, no un registro de intervalos",
  "all its values are 0: its input was not connected": "todos sus valores son 0: su entrada no estaba conectada",
  "it repeats the mean row by row, so it is no extreme": "repite la media fila por fila, por lo que no es un extremo",
  "Minimum and maximum repeat the mean on {1}: the recorder kept one value only, so these are not used as extremes.":
    "El mínimo y el máximo repiten la media en {1}: el registrador conservó un solo valor, por lo que no se usan como extremos.",
  "it has no series of times": "no tiene serie de tiempos",
  "its series of times is empty": "su serie de tiempos está vacía",
  "its times are in cycles, and the file states no nominal frequency; give nominalFrequency in the setup":
    "sus tiempos están en ciclos, y el archivo no indica la frecuencia nominal; indique nominalFrequency en la configuración",
  "its times have the unit {1}, which is no time": "sus tiempos tienen la unidad {1}, que no es de tiempo",
  "no unit": "sin unidad",
  "unit {1}": "unidad {1}",
  "a voltage": "una tensión",
  "a current": "una corriente",
  "a frequency": "una frecuencia",
  "an active power": "una potencia activa",
  "a reactive power": "una potencia reactiva",
  "an apparent power": "una potencia aparente",
  "the unit is {1}": "la unidad es {1}",
  "{1} in % does not say of what": "{1} en % no dice de qué",
  "the unit is %": "la unidad es %",
  "the unit is {1}, a fraction of 1": "la unidad es {1}, una fracción de 1",
  "it holds no values": "no contiene valores",
  "the unit {1} does not fit a share in %": "la unidad {1} no corresponde a una proporción en %",
  'it has no unit, and its values (median {1}) may be % or a fraction of 1; say the unit in the setup under columns:, "%" or "p.u."':
    'no tiene unidad, y sus valores (mediana {1}) pueden ser % o una fracción de 1; indique la unidad en la configuración en columns:, "%" o "p.u."',
  "it has no unit; the median {1} is one in %": "no tiene unidad; la mediana {1} corresponde a un valor en %",
  "per unit of {1} {2}, the base that it states": "por unidad de {1} {2}, la base que indica",
  "per unit of the declared voltage {1} V": "por unidad de la tensión declarada {1} V",
  "it is in p.u. and states no base; give the declared voltage with --declared":
    "está en p.u. y no indica base; indique la tensión declarada con --declared",
  "it has no unit; the median {1} is one in {2}": "no tiene unidad; la mediana {1} corresponde a un valor en {2}",
  "it has no unit, and the median {1} does not tell it; say the unit in the setup under columns:":
    "no tiene unidad, y la mediana {1} no la revela; indique la unidad en la configuración en columns:",
  "in % of the fundamental by its unit": "en % de la fundamental según su unidad",
  "its unit says {1}, but order 1 has the median {2}, so it is taken as {3}":
    "su unidad indica {1}, pero el orden 1 tiene la mediana {2}, por lo que se toma como {3}",
  "% of the fundamental": "% de la fundamental",
  "order 1 is 1, so it is a fraction of the fundamental":
    "el orden 1 es 1, por lo que es una fracción de la fundamental",
  "its unit is {1} and no order 1 shows whether it is % of the fundamental or {2}; say the unit in the setup under columns:":
    "su unidad es {1} y ningún orden 1 muestra si es % de la fundamental o {2}; indique la unidad en la configuración en columns:",
  "a vector announces {1} items of {2} bytes, which its record cannot hold":
    "un vector anuncia {1} elementos de {2} bytes, que no caben en su bloque",
  "an element has the unknown physical type {1}": "un elemento tiene el tipo físico desconocido {1}",
  "a link leads out of its record (to place {1} of {2})":
    "un enlace conduce fuera de su bloque (a la posición {1} de {2})",
  "{1} stands where numbers are expected, and is left out": "{1} figura donde se esperan números, y se deja fuera",
  '{1}: "{2}" has other numbers of times and samples; the shorter one counts':
    "{1}: «{2}» tiene distinto número de tiempos y de muestras; cuenta el menor",
  "all its samples are 0: its input was not connected": "todas sus muestras son 0: su entrada no estaba conectada",
  "it has {1} samples per second; waveforms are measured from {2} up":
    "tiene {1} muestras por segundo; las formas de onda se miden a partir de {2}",
  "it is sampled apart from any voltage, and without one no cycle can be found":
    "se muestreó aparte de toda tensión, y sin una no puede encontrarse ningún ciclo",
};
