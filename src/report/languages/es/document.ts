/** The PDF document and its plain page. */
export const document: Readonly<Record<string, string>> = {
  "The rules applied are “{1}”. They say:": "Las reglas aplicadas son «{1}». Establecen:",
  "Further rules that were broken: {1}.": "Otras reglas incumplidas: {1}.",
  "some orders {1}": "algunos órdenes: {1}",
  "About this report": "Acerca de este informe",
  "Report number": "Número de informe",
  Laboratory: "Laboratorio",
  Customer: "Cliente",
  "Requested by": "Solicitado por",
  "Measured by": "Medido por",
  "Date of issue": "Fecha de emisión",
  "Sampling plan": "Plan de muestreo",
  "Additions to and deviations from the method": "Adiciones al método y desviaciones de él",
  "Authorised by": "Autorizado por",
  "Supply voltage report: the result in plain words":
    "Informe de la tensión de alimentación: el resultado en palabras sencillas",
  "What was promised?": "¿Qué se prometió?",
  "What was measured?": "¿Qué se midió?",
  "Was the measuring sound?": "¿Fue correcta la medición?",
  "Was a rule broken?": "¿Se incumplió alguna regla?",
  "What happens next?": "¿Qué sigue ahora?",
  "The other pages hold the same result for engineers, with every limit, count and source.":
    "Las demás páginas contienen el mismo resultado para técnicos, con cada límite, recuento y fuente.",
  "The place was not stated.": "No se indicó el lugar.",
  "Which instrument measured, and when it was last calibrated, was not stated.":
    "No se indicó qué instrumento midió ni cuándo se calibró por última vez.",
  "The program checked the recording for faults of its own and found none.":
    "El programa comprobó si el registro tiene fallos propios y no encontró ninguno.",
  "No missing value could turn the result.": "Ningún valor que falta podría cambiar el resultado.",
  "Missing values could turn the result in part; the following pages say where.":
    "Los valores que faltan podrían cambiar en parte el resultado; las páginas siguientes dicen dónde.",
  "No brief drop, brief rise or interruption was found.":
    "No se encontró ningún descenso breve, ninguna subida breve ni ninguna interrupción.",
  "Brief drops, brief rises and interruptions cannot be seen in a recording of this kind.":
    "Los descensos breves, las subidas breves y las interrupciones no pueden verse en un registro de este tipo.",
  "The recording holds nothing that these rules set a limit for.":
    "El registro no contiene nada para lo que estas reglas fijen un límite.",
  frequency: "frecuencia",
  "single distortions of the wave shape (harmonics)": "deformaciones individuales de la forma de onda (armónicos)",
  "distortion of the wave shape as a whole": "deformación de la forma de onda en su conjunto",
  "flicker of lamps": "parpadeo de las lámparas",
  "flicker of lamps over ten minutes": "parpadeo de las lámparas en diez minutos",
  "unevenness of the three phases": "desigualdad de las tres fases",
  "control signals on the network": "señales de control en la red",
  "{1} volts": "{1} voltios",
  "{1} percent": "{1} por ciento",
  "{1} hertz": "{1} hercios",
  "ten-second averages": "valores medios de diez segundos",
  "ten-minute averages": "valores medios de diez minutos",
  "two-hour values": "valores de dos horas",
  "each day": "cada día",
  "each week": "cada semana",
  "each year": "cada año",
  "values of {1} seconds each": "valores de {1} segundos cada uno",
  "Of all {1} of {2}: {3} from {4} to {5}.": "De todos los {1} de {2}: {3} de {4} a {5}.",
  "Of the {1} of {2} at least {3} percent: {4} from {5} to {6}.":
    "De los {1} de {2}, al menos el {3} por ciento: {4} de {5} a {6}.",
  "at most {1}": "máximo {1}",
  "Of all {1} of {2}: {3} {4}.": "De todos los {1} de {2}: {3}, {4}.",
  "Of the {1} of {2} at least {3} percent: {4} {5}.": "De los {1} de {2}, al menos el {3} por ciento: {4}, {5}.",
  "There are limits as well for: {1}.": "También hay límites para: {1}.",
  "above {1}": "por encima de {1}",
  "below {1}": "por debajo de {1}",
  "outside {1} to {2}": "fuera de {1} a {2}",
  "{1}: {2} of {3} {4} were {5}; allowed are {6}.": "{1}: {2} de {3} {4} {5}; se admiten {6}.",
  "{1} The worst one was {2}, on {3}.": "{1} El peor fue de {2}, el {3}.",
  "{1}, number {2}": "{1}, número {2}",
  "{1} on phase {2}": "{1} en la fase {2}",
  "Yes. The supply did not keep to the rules of “{1}”.": "Sí. El suministro no cumplió las reglas de «{1}».",
  "No. In all that could be judged, the supply kept to the rules of “{1}”.":
    "No. En todo lo que pudo evaluarse, el suministro cumplió las reglas de «{1}».",
  "That cannot be said. The recording does not decide whether the supply kept to the rules of “{1}”.":
    "No puede decirse. El registro no decide si el suministro cumplió las reglas de «{1}».",
  "That was not judged. The recording holds nothing that decides it by the rules of “{1}”.":
    "No se evaluó. El registro no contiene nada que lo decida según las reglas de «{1}».",
  "This holds only because spans of time were left out, for reasons that somebody stated and nobody measured. With all that was recorded the verdict would be: {1}.":
    "Esto vale solo porque se excluyeron periodos de tiempo, por motivos que alguien declaró y nadie midió. Con todo lo registrado, el veredicto sería: {1}.",
  "One of the rules could not be judged with this recording; it is not counted as kept.":
    "Una de las reglas no pudo evaluarse con este registro; no se cuenta como cumplida.",
  "{1} of the rules could not be judged with this recording; they are not counted as kept.":
    "{1} de las reglas no pudieron evaluarse con este registro; no se cuentan como cumplidas.",
  "Measured was the supply at: {1}.": "Se midió el suministro en: {1}.",
  "The recording runs from {1} to {2}, in the local time of {3}.":
    "El registro va del {1} al {2}, en la hora local de {3}.",
  "It has {1} valid ten-minute intervals out of {2}.": "De {2} intervalos de diez minutos, válidos: {1}.",
  "It has {1} ten-minute intervals: {2} were left out, and of the others {3} are valid.":
    "Tiene {1} intervalos de diez minutos: {2} quedaron excluidos, y de los demás son válidos {3}.",
  "No, not in all parts. Findings that kept values from being judged: {1}. What they touch is left open and counted neither as good nor as bad.":
    "No, no en todas sus partes. Hallazgos que impidieron evaluar valores: {1}. Lo que afectan queda abierto y no se cuenta ni como bueno ni como malo.",
  "The program checked the recording for faults of its own. Findings worth knowing: {1}. None of them kept a value from being judged.":
    "El programa comprobó si el registro tiene fallos propios. Hallazgos que conviene conocer: {1}. Ninguno de ellos impidió evaluar un valor.",
  "The instrument, as stated by whoever measured: {1}.": "El instrumento, según lo indicado por quien midió: {1}.",
  "Spans of time left out because somebody stated unusual conditions: {1}. The pages on exclusions say who, why, and what they change.":
    "Periodos de tiempo excluidos porque alguien declaró condiciones no habituales: {1}. Las páginas sobre exclusiones dicen quién, por qué y qué cambian.",
  "interruptions: {1}": "interrupciones: {1}",
  "brief drops of the voltage: {1}": "descensos breves de la tensión: {1}",
  "brief rises of the voltage: {1}": "subidas breves de la tensión: {1}",
  "Recorded as well: {1}.": "También se registró: {1}.",
  "The voltages moved against each other as they do when the neutral conductor is broken or has come loose. That can destroy appliances, start a fire, and put metal parts of appliances under voltage.":
    "Las tensiones se movieron unas contra otras como ocurre cuando el conductor neutro está cortado o se ha aflojado. Eso puede destruir aparatos, provocar un incendio y poner en tensión las partes metálicas de los aparatos.",
  "The voltage was so high for so long that it can destroy appliances and start a fire.":
    "La tensión fue tan alta durante tanto tiempo que puede destruir aparatos y provocar un incendio.",
  "Give this report and the unchanged log files to the network operator and ask in writing what will be done, and by when.":
    "Entregue este informe y los archivos de datos sin cambios al gestor de la red y pregunte por escrito qué se hará y para cuándo.",
  "The operator can check each number: the log files have fingerprints in this report, and the same files give the same result.":
    "El gestor de la red puede comprobar cada número: las huellas digitales de los archivos de datos figuran en este informe, y los mismos archivos dan el mismo resultado.",
  "After the cause has been mended, have the supply recorded again for at least a week.":
    "Una vez subsanada la causa, haga registrar de nuevo el suministro durante al menos una semana.",
  "Nothing has to be mended because of this recording.": "A causa de este registro no hay que subsanar nada.",
  "If the trouble goes on, write down day and time of each occurrence, and have the supply recorded again while it happens.":
    "Si las molestias continúan, anote día y hora de cada ocurrencia y haga registrar de nuevo el suministro mientras ocurren.",
  "Have the supply recorded again for at least a full week without gaps, at the point of supply.":
    "Haga registrar de nuevo el suministro durante al menos una semana completa sin lagunas, en el punto de suministro.",
  "Write down day and time of each occurrence of trouble meanwhile.":
    "Entretanto, anote día y hora de cada ocurrencia de las molestias.",
  "Have the supply recorded with an instrument that measures what the rules ask for, for at least a full week.":
    "Haga registrar el suministro con un instrumento que mida lo que piden las reglas, durante al menos una semana completa.",
  "Have the supply recorded for at least a full week, at the point of supply.":
    "Haga registrar el suministro durante al menos una semana completa, en el punto de suministro.",
  "Have the stated reasons for leaving out spans of time proven; the result hangs on them.":
    "Haga que se prueben los motivos declarados para excluir periodos de tiempo; el resultado depende de ellos.",
  "Keep the log files as they are. A changed file can no longer be told from a forged one.":
    "Conserve los archivos de datos tal como están. Un archivo modificado ya no puede distinguirse de uno falsificado.",
  "Statement of conformity": "Declaración de conformidad",
  "Annex A: every phase and order": "Anexo A: todas las fases y órdenes",
  "Annex B: check of the measuring chain": "Anexo B: comprobación de la cadena de medida",
  Glossary: "Glosario",
  "The other events": "Los demás eventos",
  "No span of time was excluded.": "No se excluyó ningún periodo de tiempo.",
  "Order: limit": "Orden: límite",
  "Page {1} of {2}": "Página {1} de {2}",
  "Report number: not stated": "Número de informe: no consta",
  "Report number: {1}": "Número de informe: {1}",
  "SHA-256 of the log begins {1}": "El SHA-256 de los datos comienza por {1}",
  "SHA-256 of the first of {1} log files begins {2}":
    "El SHA-256 del primero de {1} archivos de datos comienza por {2}",
  "Where it was measured": "Dónde se midió",
  "What was measured": "Qué se midió",
  Method: "Método",
  "Provided by others": "Aportado por otros",
  "Counting of intervals by the limits of {1}, {2}; see “{3}”":
    "Recuento de intervalos según los límites de {1}, {2}; véase «{3}»",
  "Voltage of the supply; connection: {1}; declared voltage: {2}":
    "Tensión del suministro; conexión: {1}; tensión declarada: {2}",
  "The log files and all entries marked “given” were provided by whoever set up the recording; they were not checked here beyond what this report says.":
    "Los archivos de datos y todas las entradas marcadas como «indicado» los aportó quien preparó el registro; no se comprobaron aquí más allá de lo que dice este informe.",
  "The results relate only to the supply at the place and in the time recorded. This report may be passed on only as a whole, unless whoever authorised it agrees in writing.":
    "Los resultados se refieren únicamente al suministro en el lugar y el tiempo registrados. Este informe solo puede transmitirse completo, salvo acuerdo por escrito de quien lo autorizó.",
  "Findings that name a cause are interpretations of the recorded pattern, not measured results.":
    "Los hallazgos que nombran una causa son interpretaciones del patrón registrado, no resultados medidos.",
  "Measurement setup of this report, with which it can be made again.":
    "Configuración de la medición de este informe, con la que puede generarse de nuevo.",
  "The whole result for programs, results.json, is attached to this file.":
    "El resultado completo para programas, results.json, está adjunto a este archivo.",
  "End of the report": "Fin del informe",
  "End of report {1}": "Fin del informe {1}",
  Type: "Tipo",
  "Class (IEC 61000-4-30)": "Clase (IEC 61000-4-30)",
  "Serial number": "Número de serie",
  Firmware: "Firmware",
  "Calibrated on": "Calibrado el",
  "Calibration due on": "Vencimiento de la calibración",
  Certificate: "Certificado",
  Clock: "Reloj",
  Sensor: "Sensor",
  Ratio: "Relación",
  Class: "Clase",
  "{1} of {2} events, worst first; results.json (attached) and events.csv hold all.":
    "{1} de {2} eventos, primero los peores; results.json (adjunto) y events.csv los contienen todos.",
  Table: "Tabla",
  Rows: "Filas",
  "Row with the largest deviation": "Fila con la mayor desviación",
  Expected: "Esperado",
  Computed: "Calculado",
  Tolerance: "Tolerancia",
  "no, from memory": "no, de memoria",
  "Version {1} of the program measured made signals with known values: {2} rows of published tables, of which {3} were out of tolerance. “prove” runs them on any machine. Of each table the row that came nearest to its tolerance is shown.":
    "La versión {1} del programa midió señales generadas con valores conocidos: {2} filas de tablas publicadas, de las cuales {3} quedaron fuera de tolerancia. «prove» las ejecuta en cualquier equipo. De cada tabla se muestra la fila que más se acercó a su tolerancia.",
  "{1} stands for a character that the font of this document lacks ({2}). report.html and results.json show it.":
    "{1} sustituye a un carácter que falta en la fuente tipográfica de este documento ({2}). report.html y results.json lo muestran.",
  aggregation: "agregación",
  "combining short measured values into one for a longer interval, for instance ten minutes":
    "combinación de valores medidos cortos en uno para un intervalo más largo, por ejemplo diez minutos",
  "declared voltage": "tensión declarada",
  "the voltage that the supply is meant to have; usually the nominal voltage of the network":
    "la tensión que debe tener el suministro; normalmente la tensión nominal de la red",
  "marked because a dip, swell or interruption fell into the interval (IEC 61000-4-30)":
    "señalado porque un hueco, una sobretensión temporal o una interrupción cayó en el intervalo (IEC 61000-4-30)",
  "flicker severity": "severidad del parpadeo (flicker)",
  "how strongly changes of the voltage make lamps flicker, as people see it":
    "con qué intensidad los cambios de la tensión hacen parpadear las lámparas, tal como lo perciben las personas",
  harmonic: "armónico",
  "part of the voltage at a multiple of the power frequency; the order says which multiple":
    "parte de la tensión a un múltiplo de la frecuencia de red; el orden dice qué múltiplo",
  interval: "intervalo",
  "the stretch of time that one value stands for": "el tramo de tiempo que representa un valor",
  robust: "robusto",
  "no filling of the missing intervals could change the verdict":
    "ningún modo de completar los intervalos que faltan podría cambiar el veredicto",
  "a fingerprint of a file: change one letter and it is another one":
    "huella digital de un archivo: si cambia una letra, es otra",
  "total harmonic distortion": "distorsión armónica total",
  "all harmonics together, in percent of the fundamental":
    "todos los armónicos juntos, en porcentaje de la fundamental",
  "short drop of the voltage below a threshold": "descenso breve de la tensión por debajo de un umbral",
  "short rise of the voltage above a threshold": "subida breve de la tensión por encima de un umbral",
  "how unlike the three phases are, as negative-sequence part in percent of the positive-sequence part":
    "cuánto difieren las tres fases, como componente de secuencia inversa en porcentaje de la de secuencia directa",
};
