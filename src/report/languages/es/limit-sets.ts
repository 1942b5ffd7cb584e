/** Titles and notes of the limit sets. */
export const limitSets: Readonly<Record<string, string>> = {
  "EN 50160:2010, high voltage, network not interconnected": "EN 50160:2010, alta tensión, red no interconectada",
  "EN 50160:2010, high voltage": "EN 50160:2010, alta tensión",
  "For high voltage the standard gives no limits for the supply voltage; those for total harmonic distortion are under consideration (both from memory). Rapid voltage changes and mains signalling are left out because no values are known here.":
    "Para alta tensión la norma no da límites de la tensión de alimentación; los de la distorsión armónica total están en estudio (ambos datos, de memoria). Las variaciones rápidas de tensión y las señales transmitidas por la red se omiten porque aquí no se conocen valores.",
  "All limits for high voltage are from memory.": "Todos los límites para alta tensión son de memoria.",
  "The value for high voltage is from memory.": "El valor para alta tensión es de memoria.",
  "The standard gives no value for the orders 17, 19, 23 and 25.":
    "La norma no da ningún valor para los órdenes 17, 19, 23 y 25.",
  "EN 50160:2010, low voltage, network not interconnected": "EN 50160:2010, baja tensión, red no interconectada",
  "The same range holds for special remote users (from memory).":
    "El mismo intervalo rige para determinados usuarios alejados (de memoria).",
  "EN 50160:2010, low voltage": "EN 50160:2010, baja tensión",
  "The numbers were read in public documents that quote the standard (named at each requirement as quoted second-hand); the paid text of the standard was not read. What no such document shows is marked as not confirmed.":
    "Los números se leyeron en documentos públicos que citan la norma (indicados en cada requisito como citados de segunda mano); no se leyó el texto de pago de la norma. Lo que ninguno de esos documentos muestra está señalado como no confirmado.",
  "The limits hold under normal operating conditions. Excluded are temporary supply, installations that do not comply with the rules for their connection, exceptional weather, third-party action, acts of public authorities, industrial action, force majeure and shortage of power.":
    "Los límites valen en condiciones normales de explotación. Se excluyen la alimentación provisional, las instalaciones que no cumplen las reglas de su conexión, las condiciones meteorológicas excepcionales, la acción de terceros, los actos de las autoridades públicas, los conflictos laborales, la fuerza mayor y la escasez de potencia.",
  "Values flagged because a dip, swell or interruption fell into their interval count for supply voltage and frequency and are left out for harmonics, total harmonic distortion, unbalance, flicker and mains signalling. The standard leaves this choice open (from memory).":
    "Los valores marcados porque un hueco, una sobretensión temporal o una interrupción cayó en su intervalo cuentan para la tensión de alimentación y la frecuencia, y se dejan fuera para los armónicos, la distorsión armónica total, el desequilibrio, el parpadeo y las señales transmitidas por la red. La norma deja abierta esta elección (de memoria).",
  "The standard gives no values for interharmonic voltages. Overvoltages between live conductors and earth, for which it gives indications only, are not part of this set.":
    "La norma no da valores para las tensiones interarmónicas. Las sobretensiones entre conductores activos y tierra, para las que solo da indicaciones, no forman parte de este conjunto.",
  "Power frequency, most of the time": "Frecuencia de red, la mayor parte del tiempo",
  "One document names a week instead of the year in an overview; its running text and the others say year.":
    "Un documento nombra en un resumen una semana en lugar del año; su propio texto y los demás dicen año.",
  "Power frequency, all of the time": "Frecuencia de red, todo el tiempo",
  "Supply voltage, most of the week": "Tensión de alimentación, la mayor parte de la semana",
  "Supply voltage, all of the time": "Tensión de alimentación, todo el tiempo",
  "Rapid voltage changes": "Variaciones rápidas de tensión",
  "An indication, not a limit. The larger changes are short and occur some times a day.":
    "Una indicación, no un límite. Las variaciones mayores son breves y se producen algunas veces al día.",
  "Flicker severity": "Severidad del parpadeo (flicker)",
  "Voltage unbalance": "Desequilibrio de tensión",
  "Where many users are connected to one or two phases, up to about 3 % occurs at some points of supply.":
    "Donde muchos usuarios están conectados a una o dos fases, en algunos puntos de suministro se alcanza hasta aproximadamente el 3 %.",
  "Harmonic voltages": "Tensiones armónicas",
  "Each order is judged by itself (from memory); one of the documents counts the intervals in which any order is above its limit.":
    "Cada orden se evalúa por separado (de memoria); uno de los documentos cuenta los intervalos en los que algún orden supera su límite.",
  "Total harmonic distortion of the voltage, up to order 40":
    "Distorsión armónica total de la tensión, hasta el orden 40",
  "Mains signalling voltages": "Tensiones de señales transmitidas por la red",
  "The points of the curve are from memory, those above 10 kHz with little confidence. The share and the 3 s interval are quoted second-hand in an energy-monitor manual of 2019; an installation-tester manual prints 2 s.":
    "Los puntos de la curva son de memoria; los de más de 10 kHz, con poca certeza. La proporción y el intervalo de 3 s se citan de segunda mano en un manual de un monitor de energía de 2019; un manual de un comprobador de instalaciones imprime 2 s.",
  "Voltage dips by residual voltage and duration": "Huecos de tensión según tensión residual y duración",
  "The standard sets no limit for the counts. A cell counts events after those of several phases at one time were made one; that close events in time are made one too is from memory.":
    "La norma no fija límite para los recuentos. Una celda cuenta los eventos después de unir en uno los de varias fases en un mismo momento; que también se unan en uno los eventos próximos en el tiempo es de memoria.",
  "Voltage swells by voltage and duration": "Sobretensiones temporales según tensión y duración",
  "The standard sets no limit for the counts. The document adds a column for swells above 60 s; the standard's own table has three columns (from memory).":
    "La norma no fija límite para los recuentos. El documento añade una columna para sobretensiones temporales de más de 60 s; la tabla propia de la norma tiene tres columnas (de memoria).",
  "EN 50160:2010, medium voltage, network not interconnected": "EN 50160:2010, media tensión, red no interconectada",
  "EN 50160:2010, medium voltage": "EN 50160:2010, media tensión",
  "Before the 2010 edition the share was 95 % (from memory).":
    "Antes de la edición de 2010 la proporción era del 95 % (de memoria).",
  "may be substantially lower, depending on the design of the network":
    "puede ser considerablemente menor, según el diseño de la red",
  "The points of the curve are from memory and with little confidence; levels from 9 kHz to 95 kHz are under consideration (from memory). The share and the 3 s interval are quoted second-hand in an energy-monitor manual of 2019.":
    "Los puntos de la curva son de memoria y con poca certeza; los niveles de 9 kHz a 95 kHz están en estudio (de memoria). La proporción y el intervalo de 3 s se citan de segunda mano en un manual de un monitor de energía de 2019.",
  "EN 50160:2022, low voltage, network not interconnected": "EN 50160:2022, baja tensión, red no interconectada",
  "EN 50160:2022, low voltage": "EN 50160:2022, baja tensión",
  "No public document seen prints the tables of the 2022 edition. Its values here are those of the 2010 edition, and for the harmonic orders 15 and 21 values from memory. A log with order 15 or 21 between the two may change its verdict with the edition.":
    "Ningún documento público visto imprime las tablas de la edición de 2022. Sus valores aquí son los de la edición de 2010 y, para los órdenes armónicos 15 y 21, valores de memoria. Un registro con el orden 15 o 21 entre ambos valores puede cambiar de veredicto según la edición.",
  "A paper of 2019 reports that amendments of the 2010 edition introduced 1-min values and 100 % of the data for the supply voltage at low voltage. No other document seen confirms it, and it is not applied here.":
    "Un artículo de 2019 informa de que modificaciones de la edición de 2010 introdujeron valores de 1 min y el 100 % de los datos para la tensión de alimentación en baja tensión. Ningún otro documento visto lo confirma, y no se aplica aquí.",
  "This is the value of the 2010 edition; no document seen shows that of 2022.":
    "Este es el valor de la edición de 2010; ningún documento visto muestra el de 2022.",
  "every document seen prints 0.5 %, but each of them quotes the 2010 edition or an earlier one":
    "todos los documentos vistos imprimen 0,5 %, pero cada uno de ellos cita la edición de 2010 u otra anterior",
  "The values are those of the 2010 edition, but for orders 15 and 21; no document seen shows those of 2022. Each order is judged by itself (from memory).":
    "Los valores son los de la edición de 2010, salvo para los órdenes 15 y 21; ningún documento visto muestra los de 2022. Cada orden se evalúa por separado (de memoria).",
  "EN 50160:2022, medium voltage, network not interconnected": "EN 50160:2022, media tensión, red no interconectada",
  "EN 50160:2022, medium voltage": "EN 50160:2022, media tensión",
  "No public document seen prints the tables of the 2022 edition. Its values here are those of the 2010 edition.":
    "Ningún documento público visto imprime las tablas de la edición de 2022. Sus valores aquí son los de la edición de 2010.",
  "France, low voltage (EN 50160:2010 with the order of 24 December 2007)":
    "Francia, baja tensión (EN 50160:2010 con la orden de 24 de diciembre de 2007)",
  "For the consumer's point of connection the order also names a voltage gradient above 2 % for each further kW of single-phase load; a log of the supply voltage alone cannot show it, and it is not judged here.":
    "Para el punto de conexión del consumidor, la orden nombra además un gradiente de tensión superior al 2 % por cada kW adicional de carga monofásica; un registro de la tensión de alimentación por sí solo no puede mostrarlo, y no se evalúa aquí.",
  "A fault is established when at least one 10-minute value lies below 90 % or above 110 %.":
    "Se constata un incumplimiento cuando al menos un valor de 10 minutos está por debajo del 90 % o por encima del 110 %.",
  "Netherlands, low voltage (EN 50160:2010 with Netcode elektriciteit)":
    "Países Bajos, baja tensión (EN 50160:2010 con Netcode elektriciteit)",
  "The grid code words flicker severity as a value that moves on by 10 minutes; here it is judged in the two-hour intervals of EN 50160.":
    "El código de red formula la severidad del parpadeo como un valor que avanza cada 10 minutos; aquí se evalúa en los intervalos de dos horas de EN 50160.",
  "At most 10 %; at most 3 % where no loss of generation, of large users or of lines is the cause. Not judged here.":
    "Como máximo 10 %; como máximo 3 % donde la causa no es una pérdida de generación, de grandes usuarios o de líneas. No se evalúa aquí.",
  "Flicker severity, all of the time": "Severidad del parpadeo (flicker), todo el tiempo",
  "Voltage unbalance, all of the time": "Desequilibrio de tensión, todo el tiempo",
  "Spain, low voltage (EN 50160:2010 with Real Decreto 1955/2000)":
    "España, baja tensión (EN 50160:2010 con el Real Decreto 1955/2000)",
};
