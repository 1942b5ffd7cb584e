/** Reasons of verdicts. */
export const rules: Readonly<Record<string, string>> = {
  "Declared voltage: {1} V for {2}, {3} V for {4}.": "Tensión declarada: {1} V para {2}, {3} V para {4}.",
  "Limit: {1} in {2}, {3} in {4}.": "Límite: {1} en {2}, {3} en {4}.",
  "Share that must lie within: {1} % in {2}, {3} % in {4}.":
    "Proporción que debe quedar dentro: {1} % en {2}, {3} % en {4}.",
  "Values of {1} in {2}, of {3} in {4}.": "Valores de {1} en {2}, de {3} en {4}.",
  "Period that is counted: {1} in {2}, {3} in {4}.": "Periodo que se cuenta: {1} en {2}, {3} en {4}.",
  "Flagged intervals count in {1} and are left out in {2}.":
    "Los intervalos marcados cuentan en {1} y se dejan fuera en {2}.",
  "Flagged intervals are left out in {1} and count in {2}.":
    "Los intervalos marcados se dejan fuera en {1} y cuentan en {2}.",
  "For information only in {1}.": "Solo informativo en {1}.",
  "Only {1} asks for it.": "Solo {1} lo pide.",
  "{1} sets no limit here.": "{1} no fija aquí ningún límite.",
  "Not assessed by {1}: {2}": "No evaluado según {1}: {2}",
  year: "año",
  "{1} to {2}{3}": "{1} a {2}{3}",
  "at most {1}{2}": "máximo {1}{2}",
  "at least {1}{2}": "al menos {1}{2}",
  "All intervals are flagged by a dip, swell or interruption and left out, so none remains to be counted.":
    "Todos los intervalos están marcados por un hueco, una sobretensión temporal o una interrupción y se dejan fuera, por lo que no queda ninguno que contar.",
  "{1} of {2} intervals are valid; {3} lie outside and {4} may, so the {5} missing ones could turn the verdict either way.":
    "De {2} intervalos son válidos {1}; fuera quedan {3} y el máximo admitido es {4}, por lo que los que faltan ({5}) podrían decantar el veredicto en uno u otro sentido.",
  "{1} of {2} intervals overlap an excluded span; what remains is too little of the period to be judged.":
    "{1} de {2} intervalos se solapan con un periodo excluido; lo que queda es una parte demasiado pequeña del periodo para evaluarla.",
  "Guarded acceptance needs the uncertainty of the values, which neither the setup states nor the instrument's class gives.":
    "La aceptación con banda de guarda requiere la incertidumbre de los valores, que ni la configuración indica ni la clase del instrumento da.",
  "Guarded acceptance: it conforms with the limits as they are ({1} outside), but not with the limits moved inwards by the uncertainty ({2} outside): a conditional pass.":
    "Aceptación con banda de guarda: es conforme con los límites tal como son ({1} fuera), pero no con los límites desplazados hacia dentro en la incertidumbre ({2} fuera): conforme condicionado.",
  "Guarded acceptance: it fails with the limits as they are ({1} outside), but not with the limits moved outwards by the uncertainty ({2} outside): a conditional fail.":
    "Aceptación con banda de guarda: no es conforme con los límites tal como son ({1} fuera), pero sí con los límites desplazados hacia fuera en la incertidumbre ({2} fuera): no conforme condicionado.",
  time: "hora",
  flag: "marca",
  events: "eventos",
  "lowest value": "valor mínimo",
  "highest value": "valor máximo",
  samples: "muestras",
  "The rule counts over a year, in which {1} intervals may lie outside; this period alone cannot show that it is kept.":
    "La regla cuenta sobre un año, en el que pueden quedar fuera {1} intervalos; este periodo por sí solo no puede mostrar que se cumple.",
  "The log holds mains signalling voltages, but not every 3 s or not at a frequency that is known and on the curve.":
    "Los datos contienen tensiones de señales transmitidas por la red, pero no cada 3 s o no a una frecuencia conocida y comprendida en la curva.",
  "The log holds no values of the {1}.": "Los datos no contienen valores de esta magnitud: {1}.",
  dips: "huecos de tensión",
  swells: "sobretensiones temporales",
  "The log holds only those {1} that the recorder was triggered by, at its own thresholds; there may be others, so they are listed but not counted against the standard.":
    "Los datos contienen solo los eventos de este tipo ({1}) que dispararon el registrador, con sus propios umbrales; puede haber otros, por lo que figuran en la lista pero no se cuentan frente a la norma.",
  "The log holds interval values only; {1} need recorded events or waveforms.":
    "Los datos contienen solo valores de intervalo; para este tipo de evento ({1}) se necesitan eventos registrados o formas de onda.",
  "Not in the log: {1}.": "No consta en los datos: {1}.",
  "the standard gives none for the total; derived: as for one harmonic, all of them off by the same share":
    "la norma no da ninguna para el total; deducida: como para un armónico, todos ellos desviados en la misma proporción",
  "class {1} of {2}: its largest error in % of the reading, taken as the expanded uncertainty":
    "clase {1} de {2}: su mayor error en % de la lectura, tomado como incertidumbre expandida",
  "stated in the setup": "declarada en la configuración",
  "{1}; stated as {2} with k = {3}, here converted to k = {4}":
    "{1}; declarada como {2} con k = {3}, aquí convertida a k = {4}",
  "class {1} of IEC 61000-4-30, as quoted in a public article":
    "clase {1} de IEC 61000-4-30, según la cita un artículo público",
  "class {1} of IEC 61000-4-30, from memory; check it in the standard":
    "clase {1} de IEC 61000-4-30, de memoria; compruébela en la norma",
  "the log writes steps of {1}: half a step either way, all values in it alike":
    "los datos se escriben en escalones de {1}: medio escalón en cada sentido, igual para todos los valores comprendidos",
};
