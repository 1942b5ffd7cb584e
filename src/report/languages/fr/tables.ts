export const tables: Readonly<Record<string, string>> = {
  "the quantity has no unit": "la grandeur n'a pas d'unité",
  mean: "moyenne",
  "order {1}": "rang {1}",
  "{1}: its decimal mark was taken from the other files": "{1} : sa marque décimale a été reprise des autres fichiers",
  "{1}: its stamps mark the start of the interval": "{1} : l'horodatage marque le début de l'intervalle",
  "{1}: its stamps mark the end of the interval": "{1} : l'horodatage marque la fin de l'intervalle",
  "by the name of the month": "d'après le nom du mois",
  "year first": "année en premier",
  "as given": "comme indiqué",
  "by the point between the numbers": "d'après le point entre les nombres",
  "all orders mean the same days here": "tous les ordres désignent ici les mêmes jours",
  "no other order fits all dates": "aucun autre ordre ne convient à toutes les dates",
  "only so do the days follow one another": "seul cet ordre fait se suivre les jours",
  "{1}: its column holds no value and was left out": "{1} : sa colonne ne contient aucune valeur et a été écartée",
  "{1}: logged without its mean, so it was left out": "{1} : enregistré sans sa moyenne, donc écarté",
  "{1}: its newest row stands first; it was read from its end":
    "{1} : sa ligne la plus récente vient en premier ; lu à partir de la fin",
  "seconds since 1970-01-01 UTC": "secondes depuis 1970-01-01 UTC",
  "milliseconds since 1970-01-01 UTC": "millisecondes depuis 1970-01-01 UTC",
  "days since 1899-12-30, as spreadsheets count them": "jours depuis 1899-12-30, comme les comptent les tableurs",
  "day, month, year": "jour, mois, année",
  "12-hour clock": "horloge de 12 heures",
  "{1} {2} with offset from UTC": "{1} {2} avec décalage par rapport à l'UTC",
  "date and time in two columns": "date et heure en deux colonnes",
  "in {1} by the header": "en {1} d'après l'en-tête",
  "the time of each row": "l'heure de chaque ligne",
  "not used: a time beside the one that is used": "non utilisé : une heure à côté de celle qui est utilisée",
  "not recognised": "non reconnu",
  "{1}, {2}: the last line is cut off and was left out": "{1}, {2} : la dernière ligne est tronquée et a été écartée",
  "{1}: the header is repeated {2} among the rows": "{1} : l'en-tête est répété {2} parmi les lignes",
  "{1}: a stamp without a time of day was read as midnight ({2})":
    "{1} : un horodatage sans heure du jour a été lu comme minuit ({2})",
  once: "une fois",
  "{1}: the distance of rows is off its interval by up to {2}":
    "{1} : l'écart entre lignes diffère de l'intervalle jusqu'à {2}",
  "{1}: {2} stamps beside their tick were put on it; the farthest was {3} away":
    "{1} : {2} horodatages à côté de leur instant y ont été placés ; le plus éloigné en était à {3}",
  "{1} ms": "{1} ms",
  "{1}: 1 sample is missing in 1 gap, by the times of the rows.":
    "{1} : 1 échantillon manque dans 1 lacune, d'après les heures des lignes.",
  "{1}: {2} samples are missing in 1 gap, by the times of the rows.":
    "{1} : {2} échantillons manquent dans 1 lacune, d'après les heures des lignes.",
  "{1}: {2} samples are missing in {3} gaps, by the times of the rows.":
    "{1} : {2} échantillons manquent dans {3} lacunes, d'après les heures des lignes.",
  "{1}: its first time occurs twice (end of summer time); the first is taken. A fixed offset as zone decides it.":
    "{1} : sa première heure existe deux fois (fin de l'heure d'été) ; la première est prise. Un décalage fixe comme fuseau tranche la question.",
  "a time beside the one that is used": "une heure à côté de celle qui est utilisée",
  "{1}: {2} samples per second are too few; waveforms are measured from {3} on.":
    "{1} : {2} échantillons par seconde sont trop peu ; les formes d'onde sont mesurées à partir de {3}.",
  "between {1} and {2} per second": "entre {1} et {2} par seconde",
  "{1}: by its times the sampling rate lies {2}; {3} is used (setup: samplesPerSecond states it).":
    "{1} : d'après ses heures, la fréquence d'échantillonnage se situe {2} ; {3} est utilisé (paramétrage : samplesPerSecond l'indique).",
  "{1}: its times are written in steps of {2}, so that a loss of a sample would not show and all times may be off by {3}.":
    "{1} : ses heures sont écrites par pas de {2}, si bien que la perte d'un échantillon ne se verrait pas et que toutes les heures peuvent être décalées de {3}.",
  "{1}: its times are written in steps of {2}, so that a loss of up to {3} samples would not show and all times may be off by {4}.":
    "{1} : ses heures sont écrites par pas de {2}, si bien que la perte d'échantillons, jusqu'à {3}, ne se verrait pas et que toutes les heures peuvent être décalées de {4}.",
  "The log does not say when it was recorded: its first sample is put on {1}, so all times count from there, and ten-minute intervals do not begin on the ten minutes of a clock (setup: start states it).":
    "Le journal ne dit pas quand il a été enregistré : son premier échantillon est placé à {1}, de sorte que toutes les heures comptent à partir de là et que les intervalles de dix minutes ne commencent pas sur les dizaines de minutes d'une horloge (paramétrage : start l'indique).",
  "The log does not say when it was recorded; the start is that of the setup, {1}.":
    "Le journal ne dit pas quand il a été enregistré ; le début est celui du paramétrage, {1}.",
  "no times: the rows follow each other evenly": "pas d'heures : les lignes se suivent régulièrement",
  "the numbers of the samples": "les numéros des échantillons",
  seconds: "secondes",
  milliseconds: "millisecondes",
  microseconds: "microsecondes",
  nanoseconds: "nanosecondes",
  "{1} since 1970-01-01 UTC": "{1} depuis 1970-01-01 UTC",
  "{1} from the beginning of the recording": "{1} depuis le début de l'enregistrement",
  "{1} hh:mm:ss in steps of {2} s with offset from UTC, {3}":
    "{1} hh:mm:ss par pas de {2} s avec décalage par rapport à l'UTC, {3}",
  "{1} hh:mm:ss in steps of {2} s, {3}": "{1} hh:mm:ss par pas de {2} s, {3}",
  minimum: "minimum",
  maximum: "maximum",
  "given in the setup": "indiqué dans le paramétrage",
  "left out by the setup": "écarté par le paramétrage",
  '"{1}" in the setup': "« {1} » dans le paramétrage",
  'the word "{1}" is not known, so it is not certain what the column holds':
    "le mot « {1} » n'est pas connu ; il n'est donc pas certain de ce que contient la colonne",
  '"{1}" is taken for a mere name': "« {1} » est pris pour un simple nom",
  "{1}: a nominal or declared value is not a measured one":
    "{1} : une valeur nominale ou déclarée n'est pas une valeur mesurée",
  "order {1}: {2}": "rang {1} : {2}",
  "marks flagged intervals: {1}": "marque des intervalles : {1}",
  'it is named a flag, but "{1}" says neither yes nor no (1 or 0)':
    "nommé marque, mais « {1} » ne dit ni oui ni non (1 ou 0)",
  "it names two units, {1} and {2}": "nomme deux unités, {1} et {2}",
  '"{1}" in the header': "« {1} » dans l'en-tête",
  "a header of more than {1} characters is not read": "un en-tête de plus de {1} caractères n'est pas lu",
  'the unit "{1}" in the units row is not known here': "l'unité « {1} » dans la ligne des unités n'est pas connue ici",
  "the header says {1}, but the units row {2}": "l'en-tête dit {1}, mais la ligne des unités {2}",
  '"{1}" in the units row': "« {1} » dans la ligne des unités",
  "the setup says single-phase": "le paramétrage dit monophasé",
  "it does not say which phase": "ne dit pas quelle phase",
  "it does not say which phase, nor does column {1}, which says the same":
    "ne dit pas quelle phase, et la colonne {1}, qui dit la même chose, non plus",
  "it does not say which phase and may be a mean over the phases; say so in the setup (connection: single)":
    "ne dit pas quelle phase et peut être une moyenne sur les phases ; précisez-le dans le paramétrage (connection: single)",
  "no column of the log names a phase, and no other column holds the same":
    "aucune colonne du journal ne nomme une phase, et aucune autre colonne ne contient la même chose",
  "frequency is one for all phases; that of {1} in column {2} is used":
    "la fréquence est la même pour toutes les phases ; celle de {1} dans la colonne {2} est utilisée",
  min: "min",
  max: "max",
  "orders {1} to 50 are used, not {2}": "les rangs {1} à 50 sont utilisés, non {2}",
  "{1} names an order, but neither a harmonic nor % is named with it":
    "{1} nomme un rang, mais ni un harmonique ni % n'est nommé avec lui",
  "{1} names an order, which this quantity has not": "{1} nomme un rang, que cette grandeur n'a pas",
  "it names more than one order: {1}": "nomme plus d'un rang : {1}",
  "it does not say which order": "ne dit pas quel rang",
  "it does not say which number is the order": "ne dit pas quel nombre est le rang",
  'the columns count up at "{1}"': "la numérotation des colonnes augmente à « {1} »",
  'the number in "{1}" is not explained': "le nombre dans « {1} » n'est pas expliqué",
  "it names more than one phase: {1}": "nomme plus d'une phase : {1}",
  "one value for all phases, named at {1}": "une seule valeur pour toutes les phases, nommée pour {1}",
  "{1} is a voltage to earth, not to neutral": "{1} est une tension à la terre, non au neutre",
  "neutral to earth: {1}": "neutre à la terre : {1}",
  "this quantity is not used on {1} ({2})": "cette grandeur n'est pas utilisée sur {1} ({2})",
  "{1} asks for a pair of phases, but {2} names one": "{1} demande une paire de phases, mais {2} en nomme une seule",
  "{1} and the pair {2} contradict each other": "{1} et la paire {2} se contredisent",
  "{1} and the phase {2} contradict each other": "{1} et la phase {2} se contredisent",
  "all phases together, since none is named": "toutes les phases ensemble, car aucune n'est nommée",
  "all phases together: {1}": "toutes les phases ensemble : {1}",
  "neutral: {1}": "neutre : {1}",
  "{1}: it does not say between which conductors": "{1} : ne dit pas entre quels conducteurs",
  "{1}: it does not say between which two phases": "{1} : ne dit pas entre quelles deux phases",
  "{1}: a value over all phases is not that of one phase":
    "{1} : une valeur sur toutes les phases n'est pas celle d'une phase",
  "no minimum or maximum is named": "ni minimum ni maximum n'est nommé",
  "{1} contradict each other": "{1} se contredisent",
  "positive-sequence values are not used": "les valeurs directes ne sont pas utilisées",
  "powers of single harmonics are not used": "les puissances d'harmoniques isolés ne sont pas utilisées",
  "interharmonic currents are not used": "les courants interharmoniques ne sont pas utilisés",
  "unbalance of the currents is not used": "le déséquilibre des courants n'est pas utilisé",
  "it does not say whether short-term (Pst) or long-term (Plt)":
    "ne dit pas si de courte durée (Pst) ou de longue durée (Plt)",
  "by its unit {1}": "d'après son unité {1}",
  "its unit {1}": "son unité {1}",
  "it does not say whether of the voltage or of the current": "ne dit pas si de la tension ou du courant",
  "a log in which no column speaks of a current": "un journal où aucune colonne ne parle d'un courant",
  "a sequence component is used only as unbalance in %":
    "une composante symétrique n'est utilisée que comme déséquilibre en %",
  "the unit %": "l'unité %",
  "it does not say whether active, reactive or apparent power": "ne dit pas si puissance active, réactive ou apparente",
  "it does not say which quantity it holds": "ne dit pas quelle grandeur la colonne contient",
  "the voltage unbalance of the standards is that of the negative sequence":
    "le déséquilibre de la tension selon les normes est celui de la composante inverse",
  "the symbol {1}": "le symbole {1}",
  "{1} beside the unit %": "{1} à côté de l'unité %",
  "the columns {1} … count up like harmonic orders":
    "la numérotation {1} … des colonnes augmente comme des rangs harmoniques",
  "the number {1} beside the phase and the unit %": "le nombre {1} à côté de la phase et de l'unité %",
  "{1} is used only as zero-sequence unbalance in %": "{1} n'est utilisé que comme déséquilibre homopolaire en %",
  "the symbol {1} with the unit %": "le symbole {1} avec l'unité %",
  "the symbol {1} in %, and no {2} or {3} in % beside it": "le symbole {1} en %, et ni {2} ni {3} en % à côté",
  "the symbol {1}, and no {2} or {3} beside it": "le symbole {1}, et ni {2} ni {3} à côté",
  'what the sign "{1}" means here is not known': "ce que signifie ici le signe « {1} » n'est pas connu",
  "the ordinal {1}": "le numéro d'ordre {1}",
  "the unit {1} ({2}) does not fit the quantity": "l'unité {1} ({2}) ne convient pas à la grandeur",
  "the unit {1} does not fit the quantity": "l'unité {1} ne convient pas à la grandeur",
  "p.u. does not say whether of the fundamental or of the declared voltage":
    "p.u. ne dit pas si c'est du fondamental ou de la tension déclarée",
  "p.u. does not say of what; only voltages in p.u. are used":
    "p.u. ne dit pas de quoi ; seules les tensions en p.u. sont utilisées",
  "it is in {1}, but the declared voltage is given phase to neutral":
    "en {1}, mais la tension déclarée est donnée entre phase et neutre",
  "it is in {1}, but the declared voltage is given phase to phase":
    "en {1}, mais la tension déclarée est donnée entre phases",
  "of the declared voltage {1} V": "de la tension déclarée {1} V",
  "times the voltage ratio {1}": "multiplié par le rapport de tension {1}",
  "times the current ratio {1}": "multiplié par le rapport de courant {1}",
  "it has neither a unit nor values": "sans unité et sans valeurs",
  "no unit is written, and its values (median {1}) may be % or a fraction of 1":
    "aucune unité n'est écrite, et les valeurs (médiane {1}) peuvent être en % ou une fraction de 1",
  "no unit is written; the median {1} is one in %": "aucune unité n'est écrite ; la médiane {1} en est une en %",
  "no unit is written, and the median {1} is no power frequency in Hz":
    "aucune unité n'est écrite, et la médiane {1} n'est pas une fréquence de réseau en Hz",
  "no unit is written; the median {1} is a power frequency in Hz":
    "aucune unité n'est écrite ; la médiane {1} est une fréquence de réseau en Hz",
  "no unit is written; the median {1} lies between 80 and 1000":
    "aucune unité n'est écrite ; la médiane {1} se situe entre 80 et 1000",
  "no unit is written; its median is 0, that of all voltages without unit {1}":
    "aucune unité n'est écrite ; sa médiane est 0, celle de toutes les tensions sans unité {1}",
  "no unit is written, and nothing tells % from {1}": "aucune unité n'est écrite, et rien ne distingue % de {1}",
  "no unit is written; say it in the setup under columns:":
    "aucune unité n'est écrite ; indiquez-la dans le paramétrage sous columns:",
  "as column {1}, which holds the same quantity, says": "comme le dit la colonne {1}, qui contient la même grandeur",
  "no unit is written; the fundamental in column {1} has the median {2}":
    "aucune unité n'est écrite ; le fondamental dans la colonne {1} a la médiane {2}",
  "no unit is written; the fundamental in column {1} has the median {2}, like the voltage itself":
    "aucune unité n'est écrite ; le fondamental dans la colonne {1} a la médiane {2}, comme la tension elle-même",
  "no unit is written; the fundamental in column {1} has the median {2}, like the current itself":
    "aucune unité n'est écrite ; le fondamental dans la colonne {1} a la médiane {2}, comme le courant lui-même",
  'the unit "{1}" does not tell milli from mega (the case of the prefix decides)':
    "l'unité « {1} » ne distingue pas milli de méga (la casse du préfixe décide)",
  'no quantity used here has the unit "{1}"': "aucune grandeur utilisée ici n'a l'unité « {1} »",
  "a share of the whole r.m.s. value is not a share of the fundamental":
    "un rapport à la valeur efficace totale n'est pas un rapport au fondamental",
  "column {1} holds the same in {2}, which is used": "la colonne {1} contient la même chose en {2} et est utilisée",
  "a peak value is not an r.m.s. value": "une valeur de crête n'est pas une valeur efficace",
  "an angle is not used": "un angle n'est pas utilisé",
  "energy is not power": "l'énergie n'est pas la puissance",
  "temperature is not used": "la température n'est pas utilisée",
  "humidity is not used": "l'humidité n'est pas utilisée",
  "it speaks of the instrument, not of the supply": "parle de l'instrument, non de l'alimentation",
  "a deviation or difference is not the value itself": "un écart ou une différence n'est pas la valeur elle-même",
  "a limit or setting is not a measured value": "une limite ou un réglage n'est pas une valeur mesurée",
  "a statistic other than mean, minimum or maximum is not used":
    "une statistique autre que moyenne, minimum ou maximum n'est pas utilisée",
  "counts and events are read from event logs, not from series":
    "les comptages et les événements sont lus dans des journaux d'événements, non dans des séries",
  "the displacement factor (cos phi) is not the power factor":
    "le facteur de déplacement (cos phi) n'est pas le facteur de puissance",
  "tan phi is not used": "tan phi n'est pas utilisé",
  "a momentary value does not stand for the interval": "une valeur momentanée ne représente pas l'intervalle",
  "a distortion relative to the whole r.m.s. value or to the demand is not the total harmonic distortion of EN 50160":
    "une distorsion rapportée à la valeur efficace totale ou à la valeur de pointe demandée n'est pas le taux de distorsion harmonique total de l'EN 50160",
  "it is not used here": "non utilisé ici",
  "flags are not used with samples": "les marques ne sont pas utilisées avec des échantillons",
  "{1}: no sampled voltage or current": "{1} : ni tension ni courant échantillonné",
  "{1}: a mean, minimum or maximum is no waveform":
    "{1} : une moyenne, un minimum ou un maximum n'est pas une forme d'onde",
  "the unit {1} ({2}) is none of a sampled voltage": "l'unité {1} ({2}) n'est pas celle d'une tension échantillonnée",
  "the unit {1} ({2}) is none of a sampled current": "l'unité {1} ({2}) n'est pas celle d'un courant échantillonné",
  "no unit is stated, taken as {1}": "aucune unité indiquée, pris comme {1}",
  "V: no unit is written; the r.m.s. value {1} of the first samples lies between 80 and 1000":
    "V : aucune unité n'est écrite ; la valeur efficace {1} des premiers échantillons se situe entre 80 et 1000",
  "no unit is stated for {1}; where it is {2}, say quantity: {3} in the setup under channels:":
    "aucune unité n'est indiquée pour {1} ; là où c'est {2}, indiquez quantity: {3} dans le paramétrage sous channels:",
};
