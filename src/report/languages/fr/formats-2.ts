export const formats2: Readonly<Record<string, string>> = {
  "× {1} by the setup": "× {1} d'après le paramétrage",
  "{1} in the setup states another ratio": "{1} dans le paramétrage indique un autre rapport",
  currents: "courants",
  voltages: "tensions",
  "The file does not say whether its {1} are primary or secondary values; they are taken as they stand ({2}).":
    "Le fichier ne dit pas si ses {1} sont des valeurs primaires ou secondaires ; les valeurs sont prises telles quelles ({2}).",
  "The {1} are secondary values without a usable ratio; they are taken as they stand ({2}).":
    "Les {1} sont des valeurs secondaires sans rapport utilisable ; ces valeurs sont prises telles quelles ({2}).",
  "secondary value × {1}/{2}": "valeur secondaire × {1}/{2}",
  "The ratio {1}/{2} of the {3} is unusual; its two sides may have different units ({4}).":
    "Le rapport {1}/{2} des {3} est inhabituel ; ses deux côtés ont peut-être des unités différentes ({4}).",
  'its unit "{1}" is not one of current': "son unité « {1} » n'est pas une unité de courant",
  'its unit "{1}" is not one of voltage': "son unité « {1} » n'est pas une unité de tension",
  "the setup": "le paramétrage",
  "phase by {1}": "phase d'après {1}",
  "no unit stated, taken as {1}": "aucune unité indiquée, pris comme {1}",
  'unit "{1}"': "unité « {1} »",
  "written the other way round, so its sign is turned": "écrit dans l'autre sens, signe donc inversé",
  "inverted by the setup": "inversé par le paramétrage",
  'its name speaks of a current, its unit "{1}" of a voltage':
    "son nom parle d'un courant, son unité « {1} » d'une tension",
  'its name speaks of a voltage, its unit "{1}" of a current':
    "son nom parle d'une tension, son unité « {1} » d'un courant",
  'the phase field "{1}"': "le champ de phase « {1} »",
  'the name "{1}"': "le nom « {1} »",
  "its name speaks of more than one phase": "son nom parle de plus d'une phase",
  "neither its name nor its phase field says a phase": "ni son nom ni son champ de phase n'indique une phase",
  "{1} and {2} contradict each other": "{1} et {2} se contredisent",
  "{1} samples are promised, the data hold {2}; all that are there are used.":
    "{1} échantillons sont annoncés, les données en contiennent {2} ; tous ceux qui sont présents sont utilisés.",
  "its {1} status channels are not used.": "ses {1} voies d'état ne sont pas utilisées.",
  'the channel "{1}" has the factor 0, so all its values are {2}.':
    "la voie « {1} » a le facteur 0, si bien que toutes ses valeurs sont {2}.",
  "the time of the first sample occurs twice in {1} (end of summer time); the first is taken. A fixed offset as zone decides it.":
    "l'heure du premier échantillon existe deux fois dans {1} (fin de l'heure d'été) ; la première est prise. Un décalage fixe comme fuseau tranche la question.",
  "line {1} is cut off or garbled and left out.": "la ligne {1} est tronquée ou altérée et est écartée.",
  "{1} lines, the first of them line {2}, are cut off or garbled and left out.":
    "{1} lignes, dont la première est la ligne {2}, sont tronquées ou altérées et sont écartées.",
  "the sample numbers do not count the rows; each row is taken to follow the one before.":
    "les numéros d'échantillon ne comptent pas les lignes ; chaque ligne est supposée suivre la précédente.",
  "{1} samples are missing between the rows, by the sample numbers.":
    "{1} échantillons manquent entre les lignes, d'après les numéros d'échantillon.",
  "{1} sampling rates that differ by less than 0.1 % follow each other (a drifting clock); their mean, {2} per second, is used.":
    "{1} fréquences d'échantillonnage différant de moins de 0,1 % se succèdent (horloge qui dérive) ; leur moyenne, {2} par seconde, est utilisée.",
  "no sampling rate is stated; by the time stamps it is {1} per second.":
    "aucune fréquence d'échantillonnage n'est indiquée ; d'après l'horodatage, elle est de {1} par seconde.",
  "the rows have no time stamps; the stated sampling rate is used.":
    "les lignes n'ont pas d'horodatage ; la fréquence d'échantillonnage indiquée est utilisée.",
  "the time stamps are cut to 16 bits; the stated sampling rate is used.":
    "l'horodatage est réduit à 16 bits ; la fréquence d'échantillonnage indiquée est utilisée.",
  "the time stamps speak of {1} samples per second, the configuration of {2}; the configuration is used.":
    "l'horodatage parle de {1} échantillons par seconde, la configuration de {2} ; la configuration est utilisée.",
  "no unit is stated": "aucune unité n'est indiquée",
  'the unit "{1}" may be milli or mega': "l'unité « {1} » peut être milli ou méga",
  "an r.m.s. value is no waveform": "une valeur efficace n'est pas une forme d'onde",
  "direct voltage and current are not used": "tension et courant continus ne sont pas utilisés",
  'the unit "{1}" is none of voltage or current': "l'unité « {1} » n'est ni de tension ni de courant",
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
  "{1} and others": "{1} et d'autres",
  "it is {1} like {2}; say in the setup, under channels:, which of them is to be used":
    "représente {1} comme {2} ; dites dans le paramétrage, sous channels:, lequel doit être utilisé",
  "the setup uses {1} as {2}": "le paramétrage utilise {1} pour {2}",
  "The clock does not fit the sampling rate of {1} per second: {2} of {3} joined files begin up to {4} ms beside the sample that they are put on.":
    "L'horloge ne s'accorde pas avec la fréquence d'échantillonnage de {1} par seconde : {2} des {3} fichiers réunis commencent jusqu'à {4} ms à côté de l'échantillon sur lequel ils sont placés.",
  "The sampling rates of joined files differ by less than 0.1 % (a drifting clock); their mean, {1} per second, is used.":
    "Les fréquences d'échantillonnage des fichiers réunis diffèrent de moins de 0,1 % (horloge qui dérive) ; leur moyenne, {1} par seconde, est utilisée.",
  "it is zero throughout": "nul d'un bout à l'autre",
  "it holds the same value throughout": "garde la même valeur d'un bout à l'autre",
  "its values never change sign, so they are no waveform (an r.m.s. value, direct voltage or contact)":
    "ses valeurs ne changent jamais de signe et ne sont donc pas une forme d'onde (valeur efficace, tension continue ou contact)",
  "it changes sign {1} times a second at most, too slowly for a supply voltage or current":
    "change de signe au plus {1} fois par seconde, trop lentement pour une tension ou un courant d'alimentation",
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
};
