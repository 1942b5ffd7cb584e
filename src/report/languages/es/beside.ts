/** What stands beside the verdict. */
export const beside: Readonly<Record<string, string>> = {
  "Other limit sets": "Otros conjuntos de límites",
  "The verdict of this report comes from the first limit set alone. The others judge the same values by their own limits.":
    "El veredicto de este informe procede únicamente del primer conjunto de límites. Los demás evalúan los mismos valores con sus propios límites.",
  decides: "decide",
  "not judged": "no evaluado",
  "Limit set": "Conjunto de límites",
  Standard: "Norma",
  "Declared voltage": "Tensión declarada",
  Verdict: "Veredicto",
  "Other verdicts": "Otros veredictos",
  Requirement: "Requisito",
  Where: "Dónde",
  "First set": "Primer conjunto",
  "This set": "Este conjunto",
  Why: "Por qué",
  "First: outside": "Primero: fuera",
  "First: verdict": "Primero: veredicto",
  "This: outside": "Este: fuera",
  "This: verdict": "Este: veredicto",
  "{1} ({2}): {3}, with the same verdict on every requirement.":
    "{1} ({2}): {3}, con el mismo veredicto en todos los requisitos.",
  "{1} ({2}): {3}; another verdict than the first set's in one place.":
    "{1} ({2}): {3}; un veredicto distinto del primer conjunto en un lugar.",
  "{1} ({2}): {3}; another verdict than the first set's in {4} places.":
    "{1} ({2}): {3}; un veredicto distinto del primer conjunto en {4} lugares.",
  "compared: {1}": "comparado: {1}",
  "- {1}, {2}: {3}, by the first set {4}. {5}": "- {1}, {2}: {3}; según el primer conjunto: {4}. {5}",
  "Complaints and what was recorded then": "Quejas y lo que se registró entonces",
  Comments: "Comentarios",
  "Times and words of complaints and comments were stated by whoever set up the recording. “Fixed values” are those of the intervals that it falls into; “around” is from five minutes before to five minutes after, by the shortest intervals at hand.":
    "Las horas y las palabras de las quejas y los comentarios las indicó quien preparó el registro. «Valores fijos» son los de los intervalos en los que cae la queja; «en torno» va de cinco minutos antes a cinco minutos después, con los intervalos más cortos disponibles.",
  "Days of one class are Monday to Friday, Saturday, Sunday; public holidays are not known here. That a recording ought to hold such hours is derived from published complaint procedures; common practice, no source.":
    "Los días de una misma clase son de lunes a viernes, sábado y domingo; aquí no se conocen los festivos. Que un registro deba contener tales horas se deriva de procedimientos de reclamación publicados; práctica común, sin fuente.",
  Phase: "Fase",
  "Valid data": "Datos válidos",
  "Fixed values": "Valores fijos",
  Limit: "Límite",
  "Lowest around": "Mínimo en torno",
  "Mean around": "Media en torno",
  "Highest around": "Máximo en torno",
  "Values of": "Valores de",
  "In charts": "En gráficos",
  Time: "Hora",
  Comment: "Comentario",
  "No supply voltage was judged.": "No se evaluó ninguna tensión de alimentación.",
  "Outside the limit: {1}.": "Fuera del límite: {1}.",
  "The fixed intervals that cover it lie within the limits.":
    "Los intervalos fijos que lo cubren quedan dentro de los límites.",
  "This time lies outside the recording.": "Este momento queda fuera del registro.",
  "This time lies partly outside the recording.": "Este tiempo queda en parte fuera del registro.",
  "Covered by valid data.": "Cubierto por datos válidos.",
  "Not covered by valid data.": "No cubierto por datos válidos.",
  "Covered by valid data on {1} only.": "Cubierto por datos válidos solo en {1}.",
  "{1} in {2} of {3} intervals ({4})": "{1} en {2} de {3} intervalos ({4})",
  yes: "sí",
  no: "no",
  "{1} of {2} intervals": "{1} de {2} intervalos",
  "within {1}": "dentro de {1}",
  "outside {1}": "fuera de {1}",
  "{1} outside {2}": "{1} fuera de {2}",
  "{1} (inside intervals {2})": "{1} (en los intervalos: {2})",
  "{1} on {2}, {3}, {4}, {5}": "{1} en {2}, {3}, {4}, {5}",
  "Events around it: {1}.": "Eventos alrededor: {1}.",
  "Mondays to Fridays": "lunes a viernes",
  Saturdays: "sábados",
  Sundays: "domingos",
  "Of {1} between {2} and {3} nothing valid was recorded either: the recording cannot speak for such times.":
    "En los días de esta clase ({1}), entre {2} y {3}, tampoco se registró nada válido: el registro no puede pronunciarse sobre tales horas.",
  "Of {1} between {2} and {3} the recording holds {4} valid intervals.":
    "En los días de esta clase ({1}), entre {2} y {3}, el registro contiene {4} intervalos válidos.",
  "complaint, {1}: {2}": "queja, {1}: {2}",
  "Day by day": "Día a día",
  Day: "Día",
  "in part": "parcial",
  "{1} of {2} outside": "{1} de {2} fuera",
  "on no whole day did a value lie outside {1}": "en ningún día completo quedó un valor fuera de {1}",
  "values lay outside {1} on {2} of {3} whole days, from {4} ({5}) to {6} ({7})":
    "quedaron valores fuera de {1} en {2} de {3} días completos, entre {4} ({5}) y {6} ({7})",
  "the value that {1} of a day's values do not exceed ran from {2} ({3}) to {4} ({5})":
    "el valor que el {1} de los valores de un día no supera estuvo entre {2} ({3}) y {4} ({5})",
  "the value that {1} of a day's values do not fall below ran from {2} ({3}) to {4} ({5})":
    "el valor por debajo del cual no baja el {1} de los valores de un día estuvo entre {2} ({3}) y {4} ({5})",
  "Days of the local calendar ({1}); an interval belongs to the day it begins in. Counted against {2}; not judged by the day.":
    "Días del calendario local ({1}); un intervalo pertenece al día en que comienza. Contado frente a {2}; no se evalúa por días.",
  "{1} Clock change: {2}.": "{1} Cambio de hora: {2}.",
  Exclusions: "Exclusiones",
  From: "Desde",
  To: "Hasta",
  Reason: "Motivo",
  "Asserted by": "Afirmado por",
  Evidence: "Prueba",
  "Intervals left out": "Intervalos excluidos",
  "Turns the verdict": "Cambia el veredicto",
  "Left out": "Excluidos",
  "Outside, with": "Fuera, con",
  "Outside, without": "Fuera, sin",
  "Verdict with": "Veredicto con",
  "Verdict without": "Veredicto sin",
  "temporary supply during faults, maintenance or construction":
    "alimentación provisional durante averías, mantenimiento u obras",
  "a user's installation or equipment that breaks its standards or connection rules":
    "instalación o equipo de un usuario que incumple sus normas o las reglas de conexión",
  "exceptional weather or another natural disaster":
    "condiciones meteorológicas excepcionales u otra catástrofe natural",
  "interference by third parties": "interferencia de terceros",
  "acts of public authorities": "actos de las autoridades públicas",
  "industrial action": "conflictos laborales",
  "force majeure": "fuerza mayor",
  "power shortage from external events": "escasez de potencia por acontecimientos externos",
  "That a reason applied is asserted by the party named; it was not measured. An interval that overlaps an excluded span counts neither as present nor as missing. The reasons are the list in the scope of EN 50160, read in a public catalogue entry of the 2022 edition; that it is clause 1.1, and that older editions list the same, is from memory.":
    "Que un motivo concurriera lo afirma la parte nombrada; no se midió. Un intervalo que se solapa con un periodo excluido no cuenta ni como presente ni como falta de datos. Los motivos son la lista del objeto y campo de aplicación de EN 50160, leída en una entrada pública de catálogo de la edición de 2022; que sea el apartado 1.1, y que las ediciones anteriores enumeren lo mismo, es de memoria.",
  "{1} of {2}": "{1} de {2}",
  "Counts with and without the exclusions": "Recuentos con y sin las exclusiones",
  "in an excluded span": "en un periodo excluido",
  "Without exclusions the verdict would be “{1}”.": "Sin las exclusiones el veredicto sería «{1}».",
  "One span was excluded; the verdict is the same without it.":
    "Se excluyó un periodo; sin excluirlo, el veredicto es el mismo.",
  "{1} spans were excluded; the verdict is the same without them.":
    "Se excluyeron {1} periodos; sin excluirlos, el veredicto es el mismo.",
  "The verdict hangs on the exclusion from {1} to {2} ({3}; asserted by {4}).":
    "El veredicto depende de la exclusión del {1} al {2} ({3}; afirmado por {4}).",
  "excluded: from {1} to {2}, {3}, asserted by {4}; intervals left out: {5}":
    "excluido: del {1} al {2}, {3}, afirmado por {4}; intervalos excluidos: {5}",
  "Verdict with the exclusions: {1}; without them: {2}.": "Veredicto con las exclusiones: {1}; sin ellas: {2}.",
  "without exclusions: {1}": "sin exclusiones: {1}",
  "What the week says about a longer time": "Qué dice la semana sobre un tiempo más largo",
  "Intervals of 95 % confidence, for information": "Intervalos con confianza del 95 %, a título informativo",
  "Of the values at the required share and of the share outside, as if the values were independent of one another. Successive intervals are not, so the truth spreads wider. The standard's verdict is about the measured week itself and rests on none of this; whether missing intervals could turn that verdict is said by “robust”. The worst phase of each requirement; results.json holds all.":
    "De los valores a la proporción exigida y de la proporción fuera, como si los valores fueran independientes entre sí. Los intervalos sucesivos no lo son, por lo que la dispersión real es mayor. El veredicto de la norma trata de la propia semana medida y no se basa en nada de esto; si los intervalos que faltan podrían cambiar ese veredicto lo dice «robusto». La peor fase de cada requisito; results.json los contiene todos.",
  "Low value": "Valor bajo",
  "High value": "Valor alto",
  "Share outside": "Proporción fuera",
  "from {1}, open above": "desde {1}, abierto por arriba",
  open: "abierto",
  "up to {1}, open below": "hasta {1}, abierto por abajo",
  "{1} to {2} %": "{1} a {2} %",
  "If the voltage were higher or lower": "Si la tensión fuera más alta o más baja",
  "An estimate, no part of the verdict: every value is moved by the same number of volts. In truth a tap changes the voltage in proportion and all phases about alike, loads and feed-in react to it, a regulator elsewhere may act against it, and which taps there are only the operator of the transformer knows.":
    "Una estimación, no parte del veredicto: cada valor se desplaza el mismo número de voltios. En realidad, una toma cambia la tensión en proporción y todas las fases aproximadamente por igual, las cargas y la inyección de energía reaccionan a ello, un regulador en otro lugar puede actuar en contra, y qué tomas existen solo lo sabe el gestor del transformador.",
  "The steps are the usual ones of distribution transformers; common practice, no source (setup: voltageSteps names others).":
    "Los escalones son los habituales de los transformadores de distribución; práctica común, sin fuente (configuración: voltageSteps nombra otros).",
  "all phases": "todas las fases",
  any: "cualquiera",
  "too little is valid": "muy pocos valores válidos",
  "shift in V": "desplazamiento en V",
  "Shifts that keep every limit of the supply voltage":
    "Desplazamientos que cumplen todos los límites de la tensión de alimentación",
  "as recorded": "como se registró",
  "up to {1}": "hasta {1}",
  "from {1} up": "desde {1}",
  "The recording is shorter than a week: this is a hint, not an answer for a week.":
    "El registro es más corto que una semana: esto es un indicio, no una respuesta para una semana.",
  "It holds for each complete week by itself.": "Vale para cada semana completa por separado.",
  "Too little of the voltage from {1} is valid to say which shift would keep its limits.":
    "En el periodo de {1} hay muy pocos valores válidos de la tensión para decir qué desplazamiento cumpliría sus límites.",
  "No shift of all phases together would have kept the limits of the supply voltage from {1}.":
    "En el periodo de {1}, ningún desplazamiento de todas las fases a la vez habría cumplido los límites de la tensión de alimentación.",
  "From {1} the supply voltage kept its limits as recorded; it would have kept them with all phases shifted by {2}.":
    "En el periodo de {1}, la tensión de alimentación cumplió sus límites tal como se registró; los habría cumplido con este desplazamiento de todas las fases: {2}.",
  "The limits of the supply voltage from {1} would have been kept with all phases shifted by {2}.":
    "En el periodo de {1}, los límites de la tensión de alimentación se habrían cumplido con este desplazamiento de todas las fases: {2}.",
  "None of the steps looked at would have done.": "Ninguno de los escalones considerados habría bastado.",
  "Of the steps looked at {1} would have done.": "De los escalones considerados habría bastado {1}.",
  "Of the steps looked at {1} would each have done.":
    "De los escalones considerados habría bastado cada uno de estos: {1}.",
  "Each phase by itself: {1}.": "Cada fase por separado: {1}.",
  "No shift of all phases together keeps the limits of the supply voltage":
    "Ningún desplazamiento de todas las fases a la vez cumple los límites de la tensión de alimentación",
  "All phases keep the limits of the supply voltage when shifted by {1}":
    "Todas las fases cumplen los límites de la tensión de alimentación con este desplazamiento: {1}",
  "Bars: shifts with which every limit of the supply voltage would have been kept, cut off at the edges of the picture. Dashed: the voltage as recorded and the steps looked at. An estimate.":
    "Barras: desplazamientos con los que se habrían cumplido todos los límites de la tensión de alimentación, recortados en los bordes de la imagen. A trazos: la tensión como se registró y los escalones considerados. Una estimación.",
  "Any ten minutes beside the fixed ones": "Diez minutos cualesquiera además de los fijos",
  "Generators in low-voltage networks switch off when the mean over the last ten minutes, taken anew every few seconds, passes 110 % of the declared voltage (EN 50549-1, from memory). EN 50160 counts fixed intervals of the clock. So a plant can switch off at a voltage that no fixed value shows; no part of the verdict.":
    "Los generadores de las redes de baja tensión se desconectan cuando la media de los últimos diez minutos, calculada de nuevo cada pocos segundos, supera el 110 % de la tensión declarada (EN 50549-1, de memoria). EN 50160 cuenta intervalos fijos del reloj. Por eso una instalación de generación puede desconectarse con una tensión que ningún valor fijo muestra; no es parte del veredicto.",
  "Each time above the limit": "Cada vez por encima del límite",
  "Moves on by": "Avanza cada",
  "Ten minutes to": "Diez minutos hasta",
  "Times above": "Veces por encima",
  Longest: "La más larga",
  "Not in fixed": "No en los fijos",
  Begins: "Comienza",
  Lasts: "Dura",
  "A fixed value above": "Un valor fijo por encima",
  "{1}: the log holds neither shorter intervals than ten minutes nor extremes inside them, so it cannot be told how high the mean over any other ten minutes was.":
    "{1}: los datos no contienen ni intervalos más cortos que diez minutos ni extremos dentro de ellos, por lo que no puede decirse qué altura alcanzó la media de otros diez minutos cualesquiera.",
  "{1}: the mean over any ten minutes never passed {2}; it reached {3}.":
    "{1}: la media de diez minutos cualesquiera nunca superó {2}; alcanzó {3}.",
  "{1}: the mean over any ten minutes passed {2} once and reached {3}":
    "{1}: la media de diez minutos cualesquiera superó {2} una vez y alcanzó {3}",
  "{1}: the mean over any ten minutes passed {2} {3} times and reached {4}":
    "{1}: la media de diez minutos cualesquiera superó {2} {3} veces y alcanzó {4}",
  "{1}; a fixed value shows it each time.": "{1}; un valor fijo lo muestra cada vez.",
  "{1}; one of these times no fixed value shows.": "{1}; una de estas veces no la muestra ningún valor fijo.",
  "{1}; {2} of these times no fixed value shows.": "{1}; {2} de estas veces no las muestra ningún valor fijo.",
  "{1}: by the extremes inside the fixed intervals the mean over any ten minutes was at most {2}, so it cannot have passed {3}.":
    "{1}: según los extremos dentro de los intervalos fijos, la media de diez minutos cualesquiera fue, como máximo, de {2}, por lo que no pudo superar {3}.",
  "{1}: by the extremes inside the fixed intervals the mean over any ten minutes was at most {2} (around {3})":
    "{1}: según los extremos dentro de los intervalos fijos, la media de diez minutos cualesquiera fue, como máximo, de {2} (en torno al {3})",
  "{1}; beyond what the fixed values show it cannot have passed {2}.":
    "{1}; más allá de lo que muestran los valores fijos no pudo superar {2}.",
  "{1}; once it can have passed {2} between two fixed values that did not.":
    "{1}; una vez pudo superar {2} entre dos valores fijos que no lo superaron.",
  "{1}; {2} times it can have passed {3} between two fixed values that did not.":
    "{1}; {2} veces pudo superar {3} entre dos valores fijos que no lo superaron.",
  "any ten minutes: {1}": "diez minutos cualesquiera: {1}",
};
