/** Titles and notes of the charts. */
export const charts: Readonly<Record<string, string>> = {
  "{1} % of {2}": "{1} % de {2}",
  event: "evento",
  "{1} at {2}": "{1} a {2}",
  "{1}, order {2}": "{1}, orden {2}",
  "{1} in {2}": "{1} en {2}",
  "time, {1}": "hora, {1}",
  "{1}: every value of the whole recording lay within the limit ({2}); found {3}":
    "{1}: todos los valores del registro completo quedaron dentro del límite ({2}); valores hallados: {3}",
  "{1}: every value lay within the limit ({2}); found {3}":
    "{1}: todos los valores quedaron dentro del límite ({2}); valores hallados: {3}",
  "The {1} was {2} in {3} of {4} intervals of the whole recording":
    "{1}: {2} en {3} de {4} intervalos del registro completo",
  "The {1} was {2} in {3} of {4} intervals": "{1}: {2} en {3} de {4} intervalos",
  "{1} was {2} in {3} of {4} intervals of the whole recording":
    "{1} estuvo {2} en {3} de {4} intervalos del registro completo",
  "{1} was {2} in {3} of {4} intervals": "{1} estuvo {2} en {3} de {4} intervalos",
  "{1}, mostly between {2} and {3}": "{1}, sobre todo entre las {2} y las {3}",
  "{1} to {2}": "{1} a {2}",
  "{1} for {2} ({3})": "{1} para el {2} ({3})",
  "{1} for {2} ({3}, unconfirmed)": "{1} para el {2} ({3}, sin confirmar)",
  "No limit judged.": "No se evaluó ningún límite.",
  "Limits: {1}.": "Límites: {1}.",
  "{1} for {2} ({3}), set for values of {4}": "{1} para el {2} ({3}), fijado para valores de {4}",
  "Dashed, for orientation: {1}. Values of {2} are not judged by it.":
    "A trazos, como orientación: {1}. Los valores de {2} no se evalúan con ello.",
  "Values of {1}, number of valid ones: {2}.": "Valores de {1}, número de valores válidos: {2}.",
  "{1} to {2} ({3}).": "{1} a {2} ({3}).",
  "Each point of the line is the mean of {1} intervals, the pale band their extremes.":
    "Cada punto de la línea es la media de {1} intervalos; la banda clara, sus extremos.",
  "Pale band: lowest and highest value inside each interval.":
    "Banda clara: valor mínimo y máximo dentro de cada intervalo.",
  "The band reaches from {1} to {2}; the picture cuts it off.": "La banda va de {1} a {2}; la imagen la recorta.",
  "Triangles: intervals outside the limit.": "Triángulos: intervalos fuera del límite.",
  "Grey fields: excluded spans; what lies in them is drawn but not counted.":
    "Campos grises: periodos excluidos; lo que hay en ellos se dibuja pero no se cuenta.",
  "The clock was changed in this time; the axis keeps {1} throughout.":
    "El reloj cambió en este tiempo; el eje mantiene {1} en todo momento.",
  "Dotted: complaints (C) and comments (N). {1}.": "Línea de puntos: quejas (C) y comentarios (N). {1}.",
  "{1} for values of {2}": "{1} para valores de {2}",
  "share of intervals at or below the value, in %": "intervalos con valor igual o inferior, en %",
  "How often which value occurred": "Con qué frecuencia se dio cada valor",
  "No interval of the whole recording lay outside the limit ({1})":
    "Ningún intervalo del registro completo quedó fuera del límite ({1})",
  "No interval lay outside the limit ({1})": "Ningún intervalo quedó fuera del límite ({1})",
  "On {1}, {2} of the intervals of the whole recording lay {3}":
    "En {1}, el {2} de los intervalos del registro completo quedó {3}",
  "On {1}, {2} of the intervals lay {3}": "En {1}, el {2} de los intervalos quedó {3}",
  "none may": "no se admite ninguno",
  "more than the {1} allowed": "más del {1} admitido",
  "not more than the {1} allowed": "no más del {1} admitido",
  "of a day {1} may": "de un día se admite el {1}",
  "of a week {1} may": "de una semana se admite el {1}",
  "of a year {1} may": "de un año se admite el {1}",
  "Judged is each day by itself.": "Se evalúa cada día por separado.",
  "Judged is each week by itself.": "Se evalúa cada semana por separado.",
  "Judged is each year by itself.": "Se evalúa cada año por separado.",
  "The curves must not cross the black bars: too many values would lie beyond the limit. Values too high and too low count together.":
    "Las curvas no deben cruzar las barras negras: demasiados valores quedarían más allá del límite. Los valores demasiado altos y demasiado bajos cuentan juntos.",
  "none outside": "ninguno fuera",
  "together at most\n{1} outside": "juntos como máximo\n{1} fuera",
  "none\nabove {1}": "ninguno por\nencima de {1}",
  "at most {1}\nabove {2}": "máx. {1} por\nencima de {2}",
  "none\nbelow {1}": "ninguno por\ndebajo de {1}",
  "at most {1}\nbelow {2}": "máx. {1} por\ndebajo de {2}",
  "Harmonic voltages by order": "Tensiones armónicas por orden",
  "harmonic order": "orden del armónico",
  order: "orden",
  phase: "fase",
  "limit in {1}": "límite en {1}",
  "Harmonic order {1} above the limit on {2}": "Orden armónico {1} por encima del límite en {2}",
  "Harmonic orders {1} above the limit on {2}": "Órdenes armónicos {1} por encima del límite en {2}",
  "Order {1} on {2} reached {3} of its limit, but no harmonic order could be judged to fail; the table says why":
    "El orden {1} en {2} alcanzó el {3} de su límite, pero ningún orden armónico pudo evaluarse como no conforme; la tabla dice por qué",
  "No harmonic order was judged above its limit; the nearest, order {1} on {2}, reached {3} of its limit":
    "Ningún orden armónico se evaluó por encima de su límite; el más próximo, el orden {1} en {2}, alcanzó el {3} de su límite",
  "{1} values per order and phase, {2} each, {3}.": "{1} valores por orden y fase, de {2} cada uno, {3}.",
  "Shown is the value that {1} do not exceed; the verdict comes from counting. Short bars: the limit of each order ({2}).":
    "Se muestra el valor que el {1} no supera; el veredicto procede del recuento. Barras cortas: el límite de cada orden ({2}).",
  "Limits unconfirmed for order {1}.": "Límites sin confirmar para el orden {1}.",
  "Limits unconfirmed for orders {1}.": "Límites sin confirmar para los órdenes {1}.",
  "hour of the day ({1})": "hora del día ({1})",
  "the supply": "el suministro",
  "spread over the day": "repartidos a lo largo del día",
  "mostly between {1} and {2}": "sobre todo entre las {1} y las {2}",
  "Intervals of the whole recording outside the limit on {1}: {2}":
    "Intervalos del registro completo fuera del límite en {1}: {2}",
  "Intervals outside the limit on {1}: {2}": "Intervalos fuera del límite en {1}: {2}",
  "each hour": "cada hora",
  "each {1} hours": "cada {1} horas",
  "Largest deviation of {1} of the whole recording: none outside the limit":
    "Mayor desviación de {1} en el registro completo: ninguna fuera del límite",
  "Largest deviation of {1}: none outside the limit": "Mayor desviación de {1}: ninguna fuera del límite",
  "Highest value of {1} of the whole recording on {2}: none outside the limit":
    "Valor más alto de {1} en el registro completo, en {2}: ninguno fuera del límite",
  "Highest value of {1} on {2}: none outside the limit": "Valor más alto de {1} en {2}: ninguno fuera del límite",
  "Each cell is {1} on {2} ({3}); the number is {4}.": "Cada celda es {1} ({2}, {3}); el número es {4}.",
  "Empty cells: no valid data, or no such hour (clock change).":
    "Celdas vacías: sin datos válidos, o sin tal hora (cambio de hora).",
  "Empty cells: no valid data.": "Celdas vacías: sin datos válidos.",
  "one hour of one day of the week": "una hora de un día de la semana",
  "one hour of one day": "una hora de un día",
  "{1} hours of one day of the week": "un tramo de {1} horas de un día de la semana",
  "{1} hours of one day": "un tramo de {1} horas de un día",
  "how many intervals lay outside the limit; darker is more":
    "cuántos intervalos quedaron fuera del límite; más oscuro es más",
  "the largest deviation from the nominal frequency in mHz; darker is more":
    "la mayor desviación respecto de la frecuencia nominal en mHz; más oscuro es más",
  "the highest value; darker is higher": "el valor más alto; más oscuro es más alto",
  "the highest value in {1}; darker is higher": "el valor más alto en {1}; más oscuro es más alto",
  day: "día",
  hour: "hora",
  value: "valor",
  "Harmonic voltages by order, as measured": "Tensiones armónicas por orden, tal como se midieron",
  "Interharmonic voltages by order, as measured": "Tensiones interarmónicas por orden, tal como se midieron",
  "harmonic order below the interharmonic group": "orden armónico justo por debajo del grupo interarmónico",
  "Harmonic currents by order, as measured": "Corrientes armónicas por orden, tal como se midieron",
  "harmonic order (the fundamental is left out)": "orden del armónico (sin la fundamental)",
  "The mean harmonic voltage nearest to its limit was that of order {1} on {2}: {3}, with a limit of {4}; no verdict on a week is meant":
    "La tensión armónica media más próxima a su límite fue la de orden {1} en {2}: {3}, con un límite de {4}; no implica un veredicto sobre una semana",
  "The highest mean harmonic voltage was that of order {1} on {2}: {3}":
    "La tensión armónica media más alta fue la de orden {1} en {2}: {3}",
  "The highest mean harmonic current was that of order {1} on {2}: {3}":
    "La corriente armónica media más alta fue la de orden {1} en {2}: {3}",
  "The highest mean interharmonic voltage was that below the fundamental on {1}: {2}":
    "La tensión interarmónica media más alta fue la inferior a la fundamental en {1}: {2}",
  "The highest mean interharmonic voltage was that between orders {1} and {2} on {3}: {4}":
    "La tensión interarmónica media más alta fue la situada entre los órdenes {1} y {2} en {3}: {4}",
  "Values per order and phase: {1}, {2}, from the {3} recorded.":
    "Valores por orden y fase: {1}, {2}, de los {3} registrados.",
  "Symbol: mean; thin line: up to the highest value, also during events.":
    "Símbolo: media; línea fina: hasta el valor más alto, también durante eventos.",
  "No limit is judged.": "No se evalúa ningún límite.",
  "Short bars: the limits ({1}), which hold for {2} and values of {3}; they are drawn for orientation, and nothing is counted by them here.":
    "Barras cortas: los límites ({1}), que valen para el {2} y valores de {3}; se dibujan como orientación, y aquí no se cuenta nada con ellos.",
};
