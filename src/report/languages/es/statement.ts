/** The statement of the result. */
export const statement: Readonly<Record<string, string>> = {
  "The one requirement with values could not be decided.": "El único requisito con valores no pudo decidirse.",
  "The one requirement judged was not met.": "El único requisito evaluado no se cumplió.",
  "The one requirement judged was met.": "El único requisito evaluado se cumplió.",
  "None of the {1} requirements with values could be decided.":
    "De los {1} requisitos con valores no pudo decidirse ninguno.",
  "All {1} requirements judged were met.": "Los {1} requisitos evaluados se cumplieron todos.",
  "{1} of the {2} requirements judged could not be decided.":
    "De los {2} requisitos evaluados no pudieron decidirse: {1}.",
  "{1} of the {2} requirements judged was not met": "De los {2} requisitos evaluados no se cumplió {1}",
  "{1} of the {2} requirements judged were not met": "De los {2} requisitos evaluados no se cumplieron {1}",
  "{1} and {2} could not be decided.": "{1}; no pudieron decidirse: {2}.",
  "Of this period only what is judged by the year is counted: {1} requirement.":
    "De este periodo solo se cuenta lo que se evalúa por años: {1} requisito.",
  "Of this period only what is judged by the year is counted: {1} requirements.":
    "De este periodo solo se cuenta lo que se evalúa por años: {1} requisitos.",
  "Of this period only what is worse than in every consecutive week is counted: {1} requirement.":
    "De este periodo solo se cuenta lo que es peor que en todas las semanas consecutivas: {1} requisito.",
  "Of this period only what is worse than in every consecutive week is counted: {1} requirements.":
    "De este periodo solo se cuenta lo que es peor que en todas las semanas consecutivas: {1} requisitos.",
  "{1} requirement was not assessed; see below why.": "{1} requisito no se evaluó; véase más abajo por qué.",
  "{1} requirements were not assessed; see below why.": "{1} requisitos no se evaluaron; véase más abajo por qué.",
  "Missing intervals could change the verdict on one requirement (“robust: no”).":
    "Los intervalos que faltan podrían cambiar el veredicto de un requisito («robusto: no»).",
  "Missing intervals could change the verdict on {1} requirements (“robust: no”).":
    "Los intervalos que faltan podrían cambiar el veredicto de {1} requisitos («robusto: no»).",
  "The one requirement judged rests, at least in part, on limits that no public document at hand confirms.":
    "El único requisito evaluado se basa, al menos en parte, en límites que no confirma ningún documento público disponible.",
  "All {1} requirements judged rest, at least in part, on limits that no public document at hand confirms.":
    "Los {1} requisitos evaluados se basan todos, al menos en parte, en límites que no confirma ningún documento público disponible.",
  "{1} of the {2} requirements judged rests, at least in part, on limits that no public document at hand confirms.":
    "{1} de los {2} requisitos evaluados se basa, al menos en parte, en límites que no confirma ningún documento público disponible.",
  "{1} of the {2} requirements judged rest, at least in part, on limits that no public document at hand confirms.":
    "{1} de los {2} requisitos evaluados se basan, al menos en parte, en límites que no confirma ningún documento público disponible.",
  "{1} finding on the recording itself kept values from being judged.":
    "{1} hallazgo sobre el propio registro impidió evaluar valores.",
  "{1} findings on the recording itself kept values from being judged.":
    "{1} hallazgos sobre el propio registro impidieron evaluar valores.",
  "{1} conformed": "conformes: {1}",
  "{1} did not conform": "no conformes: {1}",
  "{1} could not be decided": "no decididas: {1}",
  "{1} could not be judged": "no evaluables: {1}",
  "Of {1} consecutive weeks {2}; see the table of weeks.":
    "De {1} semanas consecutivas, {2}; véase la tabla de semanas.",
  "The recording holds nothing that {1} sets a limit for, so nothing could be judged":
    "El registro no contiene nada para lo que {1} fije un límite, por lo que no pudo evaluarse nada",
  "It shows {1}.": "Muestra {1}.",
  "It also shows {1}.": "También muestra {1}.",
  "The recording of {1} cannot show whether a week conforms to {2}":
    "El registro de {1} no puede mostrar si una semana es conforme con {2}",
  "The recording of {1} cannot show whether a week keeps the limits of {2}":
    "El registro de {1} no puede mostrar si una semana cumple los límites de {2}",
  "{1}; it shows {2}.": "{1}; muestra {2}.",
  "one of the {1} per phase, within {2}": "uno de los {1} por fase, dentro de {2}",
  "{1} {2} per phase, none outside {3}": "{1} {2} por fase, ninguno fuera de {3}",
  "on phase {1} {2} of {3} {4} that lay {5}": "en la fase {1}, {2} de {3} {4} {5}",
  "of the {1} of a day, {2} may": "de los {1} de un día, admitidos {2}",
  "of the {1} of a week, {2} may": "de los {1} de una semana, admitidos {2}",
  "of the {1} of a year, {2} may": "de los {1} de un año, admitidos {2}",
  "voltages of {1} on {2} (values of {3})": "tensiones de {1} en {2} (valores de {3})",
  "too much of it is missing.": "falta una parte demasiado grande.",
  "{1}; not judged: {2}.": "{1}; no evaluado: {2}.",
  "The values recorded {1} give information on {2} but hold nothing that decides conformance.":
    "Los valores registrados {1} dan información sobre {2} pero no contienen nada que decida la conformidad.",
  "The supply {1} could not be judged by {2}": "El suministro {1} no pudo evaluarse según {2}",
  "The supply voltage did not conform to {1} {2}": "La tensión de alimentación no fue conforme con {1} {2}",
  "Whether the supply voltage conformed to {1} {2} is undecided":
    "No queda decidido si la tensión de alimentación fue conforme con {1} {2}",
  "The supply voltage conformed to {1} {2}": "La tensión de alimentación fue conforme con {1} {2}",
  "The supply did not conform to {1} {2}": "El suministro no fue conforme con {1} {2}",
  "Whether the supply conformed to {1} {2} is undecided": "No queda decidido si el suministro fue conforme con {1} {2}",
  "The supply conformed to {1} {2}": "El suministro fue conforme con {1} {2}",
  "In what could be judged ({1}) the supply conformed to {2} {3}":
    "En lo que pudo evaluarse ({1}), el suministro fue conforme con {2} {3}",
  "The supply voltage did not keep the limits of {1} {2}":
    "La tensión de alimentación no cumplió los límites de {1} {2}",
  "Whether the supply voltage kept the limits of {1} {2} is undecided":
    "No queda decidido si la tensión de alimentación cumplió los límites de {1} {2}",
  "The supply voltage kept the limits of {1} {2}": "La tensión de alimentación cumplió los límites de {1} {2}",
  "The supply did not keep the limits of {1} {2}": "El suministro no cumplió los límites de {1} {2}",
  "Whether the supply kept the limits of {1} {2} is undecided":
    "No queda decidido si el suministro cumplió los límites de {1} {2}",
  "The supply kept the limits of {1} {2}": "El suministro cumplió los límites de {1} {2}",
  "In what could be judged ({1}) the supply kept the limits of {2} {3}":
    "En lo que pudo evaluarse ({1}), el suministro cumplió los límites de {2} {3}",
  "harmonic voltages": "tensiones armónicas",
  "mains signalling": "señales transmitidas por la red",
  "part of the {1}": "{1} (en parte)",
  "Uncertainty and decision rule": "Incertidumbre y regla de decisión",
  "Comes from": "Procede de",
  "±, with k = 2": "±, con k = 2",
  Uncertainty: "Incertidumbre",
  instrument: "instrumento",
  sensor: "sensor",
  "last digit": "último dígito",
  "from the class": "de la clase",
  "Included is what the last digit of the log hides, half a step either way, all values in it alike: {1}.":
    "Se incluye lo que oculta el último dígito de los datos, medio escalón en cada sentido, igual para todos los valores comprendidos: {1}.",
  "Contributions to one quantity combine as the root of the sum of their squares. With k = 2 about 95 % of errors are smaller. The class of a sensor counts for the quantity it measures only.":
    "Las contribuciones a una magnitud se combinan como la raíz de la suma de sus cuadrados. Con k = 2, aproximadamente el 95 % de los errores son menores. La clase de un sensor cuenta solo para la magnitud que mide.",
  "The uncertainty of the measurement was not stated: the setup gives neither the instrument's class (A or S of IEC 61000-4-30) nor a value. Whether a verdict would hold within it is not known.":
    "No se declaró la incertidumbre de la medición: la configuración no indica ni la clase del instrumento (A o S de IEC 61000-4-30) ni un valor. No se sabe si un veredicto se mantendría dentro de ella.",
  "Decision rule: simple acceptance. Values are compared with the limits as they are, and no margin is taken off for the uncertainty; a value exactly on its limit is accepted, wrongly so with a probability of up to 50 % (ILAC-G8:09/2019).":
    "Regla de decisión: aceptación simple. Los valores se comparan con los límites tal como son, y no se descuenta ningún margen por la incertidumbre; un valor exactamente en su límite se acepta, erróneamente con una probabilidad de hasta el 50 % (ILAC-G8:09/2019).",
  "Decision rule: guarded acceptance with a guard band of the expanded uncertainty (ILAC-G8:09/2019, w = U). A requirement conforms only if it does so with every limit moved inwards by the uncertainty, and fails only if it does so with every limit moved outwards; in between it is undecided. A single value is wrongly accepted with a probability below 2.5 %.":
    "Regla de decisión: aceptación con banda de guarda igual a la incertidumbre expandida (ILAC-G8:09/2019, w = U). Un requisito es conforme solo si lo es con todos los límites desplazados hacia dentro en la incertidumbre, y no conforme solo si lo es con todos los límites desplazados hacia fuera; entre ambos queda no decidido. Un único valor se acepta erróneamente con una probabilidad inferior al 2,5 %.",
  "None was stated; EN 50160 prescribes no guard band, so the values are taken as they are.":
    "No se declaró ninguna; EN 50160 no prescribe banda de guarda, por lo que los valores se toman tal como son.",
  "“conditional pass”, “conditional fail”: within the uncertainty; with every limit moved by it, inwards or outwards, the verdict would be another. “near a limit”: values no further from a limit than the uncertainty.":
    "«conforme condicionado», «no conforme condicionado»: dentro de la incertidumbre; con todos los límites desplazados en ella, hacia dentro o hacia fuera, el veredicto sería otro. «cerca de un límite»: valores que no distan de un límite más que la incertidumbre.",
  "of the reading": "de la lectura",
  "of the declared voltage": "de la tensión declarada",
  "{1} {2}, at least {3}": "{1} {2}, al menos {3}",
  clear: "claro",
  "conditional pass": "conforme condicionado",
  "conditional fail": "no conforme condicionado",
  "not known": "no conocida",
  "{1}; near a limit: {2}": "{1}; cerca de un límite: {2}",
  "{1}; near a limit: {2}; {3}": "{1}; cerca de un límite: {2}; {3}",
  "Decision rule: simple acceptance; the uncertainty of the measurement was not stated.":
    "Regla de decisión: aceptación simple; no se declaró la incertidumbre de la medición.",
  "Decision rule: simple acceptance; the uncertainty of the measurement could not turn a verdict.":
    "Regla de decisión: aceptación simple; la incertidumbre de la medición no podría cambiar ningún veredicto.",
  "Decision rule: simple acceptance; the uncertainty of the measurement could turn the verdict on one requirement.":
    "Regla de decisión: aceptación simple; la incertidumbre de la medición podría cambiar el veredicto de un requisito.",
  "Decision rule: simple acceptance; the uncertainty of the measurement could turn the verdict on {1} requirements.":
    "Regla de decisión: aceptación simple; la incertidumbre de la medición podría cambiar el veredicto de {1} requisitos.",
  "Decision rule: guarded acceptance; no requirement lies within the uncertainty of the measurement.":
    "Regla de decisión: aceptación con banda de guarda; ningún requisito queda dentro de la incertidumbre de la medición.",
  "Decision rule: guarded acceptance; one requirement lies within the uncertainty of the measurement, at least in part.":
    "Regla de decisión: aceptación con banda de guarda; un requisito queda, al menos en parte, dentro de la incertidumbre de la medición.",
  "Decision rule: guarded acceptance; {1} requirements lie within the uncertainty of the measurement, at least in part.":
    "Regla de decisión: aceptación con banda de guarda; {1} requisitos quedan, al menos en parte, dentro de la incertidumbre de la medición.",
  "For one requirement the uncertainty is not known.": "Para un requisito no se conoce la incertidumbre.",
  "For {1} requirements the uncertainty is not known.": "Para {1} requisitos no se conoce la incertidumbre.",
  conforms: "conforme",
  "does not conform": "no conforme",
  undecided: "no decidido",
  "not assessed": "no evaluado",
  "for information": "informativo",
  "no limit": "sin límite",
  supply: "conjunto",
  "no values": "sin valores",
  "{1} of the day": "{1} del día",
  "{1} of the week": "{1} de la semana",
  "{1} of the year": "{1} del año",
  unconfirmed: "sin confirmar",
  "“unconfirmed”: no public document at hand confirms this limit. Check it in the standard itself before you rely on the verdict.":
    "«sin confirmar»: ningún documento público disponible confirma este límite. Compruébelo en la propia norma antes de basarse en el veredicto.",
  "three-second values": "valores de tres segundos",
  "ten-second values": "valores de diez segundos",
  "one-minute values": "valores de un minuto",
  "ten-minute values": "valores de diez minutos",
  "harmonic voltage of order {1}": "tensión armónica de orden {1}",
  "harmonic current of order {1}": "corriente armónica de orden {1}",
  "interharmonic voltage of order {1}": "tensión interarmónica de orden {1}",
  "interharmonic current of order {1}": "corriente interarmónica de orden {1}",
  "{1} (order {2})": "{1} (orden {2})",
  "of the power frequency": "de la frecuencia de red",
  "of the total harmonic distortion of the voltage": "de la distorsión armónica total de la tensión",
  "of the mains signalling voltage": "de la tensión de señales transmitidas por la red",
  "of the short-term flicker severity": "de la severidad del parpadeo (flicker) de corta duración",
  "of the long-term flicker severity": "de la severidad del parpadeo (flicker) de larga duración",
  "of the voltage unbalance": "del desequilibrio de tensión",
  "values of {1}": "valores de {1}",
  "{1} of the harmonic voltage of order {2}": "{1} de la tensión armónica de orden {2}",
  "{1} of {2} {3} lay {4}; none may.": "hubo {1} de {2} {3} {4}; no se admite ninguno.",
  "{1} of {2} {3} lay {4}; {5} may.": "hubo {1} de {2} {3} {4}; el máximo admitido es {5}.",
  "on phase {1}, {2} of {3} {4} lay {5}; none may.": "en la fase {1} hubo {2} de {3} {4} {5}; no se admite ninguno.",
  "on phase {1}, {2} of {3} {4} lay {5}; {6} may.":
    "en la fase {1} hubo {2} de {3} {4} {5}; el máximo admitido es {6}.",
  "the seven days from {1} to {2}": "los siete días del {1} al {2}",
  "the 365 days from {1} to {2}": "los 365 días del {1} al {2}",
  "the time from {1} to {2}, less than 365 days": "el tiempo del {1} al {2}, menos de 365 días",
  "the week from {1} to {2}": "la semana del {1} al {2}",
  "the time from {1} to {2}, less than a week": "el tiempo del {1} al {2}, menos de una semana",
  "in the seven days from {1} to {2}": "en los siete días del {1} al {2}",
  "in the 365 days from {1} to {2}": "en los 365 días del {1} al {2}",
  "in the time from {1} to {2}, less than 365 days": "en el tiempo del {1} al {2}, menos de 365 días",
  "in the week from {1} to {2}": "en la semana del {1} al {2}",
  "in the time from {1} to {2}, less than a week": "en el tiempo del {1} al {2}, menos de una semana",
  "“{1}”": "«{1}»",
};
