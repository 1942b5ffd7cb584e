export const pqdif: Readonly<Record<string, string>> = {
  "the file states how far its times are from local time, or UTC as its zone":
    "le fichier indique l'écart entre ses heures et l'heure locale, ou UTC comme fuseau",
  'The file names the time zone "{1}", but not whether its times are in it or in UTC; they are read as UTC. If they are local times, give the zone with --zone.':
    "Le fichier nomme le fuseau horaire « {1} », mais non si ses heures y sont exprimées ou en UTC ; elles sont lues comme UTC. Si ce sont des heures locales, indiquez le fuseau avec --zone.",
  "the first row of each observation lies at the start of the observation":
    "la première ligne de chaque observation se situe au début de l'observation",
  "the first row of each observation lies one interval after the start of the observation":
    "la première ligne de chaque observation se situe un intervalle après le début de l'observation",
  "a collection announces {1} elements, which its record cannot hold":
    "une collection annonce {1} éléments, que son enregistrement ne peut contenir",
  "the element {1} holds {2}, which it cannot be, and is left out":
    "l'élément {1} contient {2}, ce qui est impossible, et est écarté",
  "the file is of version {1}, while version 1 is known here; what was found is read":
    "le fichier est de version {1}, alors que la version 1 est connue ici ; ce qui a été trouvé est lu",
  '"{1}": values times {2}, the transformer ratio of the setup':
    "« {1} » : valeurs multipliées par {2}, le rapport de transformateur du paramétrage",
  '"{1}": values times {2}/{3}, the transducer ratio that the file says to apply':
    "« {1} » : valeurs multipliées par {2}/{3}, le rapport de transducteur que le fichier demande d'appliquer",
  '"{1}": the transducer ratio {2}/{3} of the file cannot be applied':
    "« {1} » : le rapport de transducteur {2}/{3} du fichier ne peut être appliqué",
  '"{1}": calibrated as (value − {2}) × {3}, as the file says to apply; that the offset goes first is not confirmed by any document seen':
    "« {1} » : étalonné selon (valeur − {2}) × {3}, comme le fichier demande de l'appliquer ; que le décalage vienne en premier n'est confirmé par aucun document consulté",
  "a data source defines no channel that can be read": "une source de données ne définit aucune voie lisible",
  "no trigger": "sans déclenchement",
  "triggered by a channel": "déclenché par une voie",
  "by the clock": "par l'horloge",
  "triggered from outside": "déclenché de l'extérieur",
  "by the clock, for statistics": "par l'horloge, pour la statistique",
  "trigger not said": "déclenchement non indiqué",
  "trigger method {1}": "mode de déclenchement {1}",
  "its magnitude {1} ({2}) is not sure to be a voltage": "il n'est pas sûr que sa grandeur {1} ({2}) soit une tension",
  "the log does not state its magnitude": "le journal n'indique pas sa grandeur",
  "its magnitude {1} is not sure to be in percent of the declared voltage":
    "il n'est pas sûr que sa grandeur {1} soit en pour cent de la tension déclarée",
  "a series in steps announces {1} of segments or values, which its record cannot hold":
    "une série par paliers annonce {1} segments ou valeurs, que son enregistrement ne peut contenir",
  "it cannot be read: {1}": "illisible : {1}",
  '{1}: "{2}" has other numbers of times and values; the shorter one counts':
    "{1} : « {2} » n'a pas le même nombre de temps et de valeurs ; le plus court compte",
  "{1}, byte {2}: {3}": "{1}, octet {2} : {3}",
  "{1}, byte {2} and {3} times more: {4}": "{1}, octet {2} et {3} autres fois : {4}",
  "logged values and waveforms": "valeurs enregistrées et formes d'onde",
  "logged values": "valeurs enregistrées",
  waveforms: "formes d'onde",
  "an event or a list of events": "un événement ou une liste d'événements",
  "nothing: none of its channels is used, see there": "rien : aucune de ses voies n'est utilisée, voir ces voies",
  "magnitude or duration of events": "grandeur ou durée d'événements",
  "it is empty in all observations": "vide dans toutes les observations",
  "it is the largest deviation from the average of the phases, another definition than the negative sequence u2":
    "c'est le plus grand écart à la moyenne des phases, une autre définition que la composante inverse u2",
  "it is in relation to the whole r.m.s. value; total harmonic distortion is judged in relation to the fundamental":
    "rapporté à la valeur efficace totale ; le taux de distorsion harmonique total est jugé par rapport au fondamental",
  "it is a sliding Plt, one value every Pst interval; Plt is counted in blocks of two hours":
    "c'est un Plt glissant, une valeur par intervalle de Pst ; Plt est compté par blocs de deux heures",
  "it is the r.m.s. value of all harmonics together": "c'est la valeur efficace de tous les harmoniques ensemble",
  "it is the r.m.s. value of all interharmonics together":
    "c'est la valeur efficace de tous les interharmoniques ensemble",
  "it is the value that {1} % do not exceed, no mean or extreme":
    "c'est la valeur que {1} % ne dépassent pas, ni une moyenne ni un extrême",
  "it holds no mean, value, minimum or maximum": "ne contient ni moyenne, ni valeur, ni minimum, ni maximum",
  "its quantity type ({1}) is no log of values over time":
    "son type de grandeur ({1}) n'est pas un journal de valeurs dans le temps",
  "it has no characteristic, so what it holds is not said; say it in the setup under columns:":
    "sans caractéristique, si bien que son contenu n'est pas dit ; indiquez-le dans le paramétrage sous columns:",
  "its characteristic {1} is none of IEEE 1159.3, so what it holds is not known; say it in the setup under columns:":
    "sa caractéristique {1} n'est pas de l'IEEE 1159.3, si bien que son contenu n'est pas connu ; indiquez-le dans le paramétrage sous columns:",
  "its characteristic ({1}) is not used here": "sa caractéristique ({1}) n'est pas utilisée ici",
  "its characteristic ({1}) of a {2} in {3} is not used here":
    "sa caractéristique ({1}) pour « {2} » en {3} n'est pas utilisée ici",
  "its phase ({1}) is no conductor that is judged; say the phase in the setup under columns:":
    "sa phase ({1}) n'est pas un conducteur jugé ; indiquez la phase dans le paramétrage sous columns:",
  "{1} Hz is no multiple of {2} Hz, and single lines of a spectrum are no group of interharmonics":
    "{1} Hz n'est pas un multiple de {2} Hz, et des raies isolées d'un spectre ne sont pas un groupe d'interharmoniques",
  "neither a group nor a frequency says its order; say it in the setup under columns: order":
    "ni un groupe ni une fréquence n'indique son rang ; indiquez-le dans le paramétrage sous columns: order",
  "order {1} is no harmonic": "le rang {1} n'est pas un harmonique",
  "order {1} lies beyond {2}": "le rang {1} est au-delà de {2}",
  "an observation has no start that can be read and is left out":
    "une observation n'a pas de début lisible et est écartée",
  "a channel belongs to definition {1} of {2}, which there is not, and is left out":
    "une voie relève de la définition {1} sur {2}, qui n'existe pas, et est écartée",
  "a channel has {1} series where {2} are defined; the others are left out":
    "une voie a {1} séries alors que {2} sont définies ; les autres sont écartées",
  "an observation lists more than {1} series and is left out":
    "une observation liste plus de {1} séries et est écartée",
  "an observation stands before any data source that can be read, and is left out":
    "une observation précède toute source de données lisible et est écartée",
  "the file has no container record that can be read": "le fichier n'a pas d'enregistrement conteneur lisible",
  "it is defined, but no observation holds it": "défini, mais aucune observation ne le contient",
  "it marks intervals as flagged": "marque des intervalles",
  "by the setup": "d'après le paramétrage",
  "measured {1}, characteristic {2}, phase {3}": "mesuré : {1}, caractéristique : {2}, phase : {3}",
  "it holds no values that are numbers": "ne contient aucune valeur numérique",
  "{1}: by the setup": "{1} : d'après le paramétrage",
  '"{1}" holds the same in {2}, which is used': "« {1} » contient la même chose en {2} et est utilisé",
  '"{1}" holds the frequency as well, and is used': "« {1} » contient aussi la fréquence et est utilisé",
  "the compressed data of a record are damaged, so it is left out":
    "les données comprimées d'un enregistrement sont endommagées ; il est donc écarté",
  "a record inflates to more than {1} bytes and is left out":
    "un enregistrement décomprimé dépasse {1} octets et est écarté",
  "the next record lies outside the file (at byte {1}), so the rest cannot be found":
    "l'enregistrement suivant se situe hors du fichier (à l'octet {1}) ; le reste ne peut donc être trouvé",
  "the next record is one that was already read (at byte {1}), so the rest cannot be found":
    "l'enregistrement suivant en est un qui a déjà été lu (à l'octet {1}) ; le reste ne peut donc être trouvé",
  "where the next record should begin (byte {1}) there is none, so the rest cannot be found":
    "là où l'enregistrement suivant devrait commencer (octet {1}), il n'y en a pas ; le reste ne peut donc être trouvé",
  "the record gives sizes that cannot be ({1} and {2} bytes) and is left out":
    "l'enregistrement donne des tailles impossibles ({1} et {2} octets) et est écarté",
  "the file ends within a record, {1} bytes before its end: copy the file again":
    "le fichier se termine au milieu d'un enregistrement, {1} octets avant la fin de celui-ci : recopiez le fichier",
  "it holds samples of neither a voltage nor a current": "ne contient d'échantillons ni d'une tension ni d'un courant",
  "it holds no points on the wave": "ne contient pas de points de la forme d'onde",
  "its phase ({1}) is no conductor that is judged": "sa phase ({1}) n'est pas un conducteur jugé",
  "a series holds {1}, which is no real number, and is left out":
    "une série contient {1}, qui n'est pas un nombre réel, et est écartée",
  "a series shares the values of series {1} of channel {2}, which there is not":
    "une série reprend les valeurs de la série {1} de la voie {2}, qui n'existe pas",
  "series share one another's values in a circle": "des séries reprennent leurs valeurs l'une de l'autre en cercle",
  "a series has the unknown storage method {1} and is left out":
    "une série a le mode de stockage inconnu {1} et est écartée",
  "its rows follow one another at no common distance, so the length of an interval cannot be told":
    "ses lignes ne se suivent pas à distance commune, si bien que la durée d'un intervalle ne peut être établie",
  "its values every {1} s are the course of an event, no log of intervals":
    "ses valeurs toutes les {1} s sont l'évolution d'un événement, non un journal d'intervalles",
  "all its values are 0: its input was not connected": "toutes ses valeurs sont 0 : l'entrée n'était pas raccordée",
  "it repeats the mean row by row, so it is no extreme":
    "répète la moyenne ligne par ligne et n'est donc pas un extrême",
  "Minimum and maximum repeat the mean on {1}: the recorder kept one value only, so these are not used as extremes.":
    "Minimum et maximum répètent la moyenne sur {1} : l'enregistreur n'a gardé qu'une valeur ; ils ne sont donc pas utilisés comme extrêmes.",
  "it has no series of times": "sans série de temps",
  "its series of times is empty": "sa série de temps est vide",
  "its times are in cycles, and the file states no nominal frequency; give nominalFrequency in the setup":
    "ses temps sont en périodes et le fichier n'indique pas de fréquence nominale ; indiquez nominalFrequency dans le paramétrage",
  "its times have the unit {1}, which is no time": "ses temps ont l'unité {1}, qui n'est pas un temps",
  "no unit": "sans unité",
  "unit {1}": "unité {1}",
  "the unit is {1}": "l'unité est {1}",
  "the unit is %": "l'unité est %",
  "the unit is {1}, a fraction of 1": "l'unité est {1}, une fraction de 1",
  "it holds no values": "ne contient pas de valeurs",
  "the unit {1} does not fit a share in %": "l'unité {1} ne convient pas à un rapport en %",
  'it has no unit, and its values (median {1}) may be % or a fraction of 1; say the unit in the setup under columns:, "%" or "p.u."':
    'sans unité, et ses valeurs (médiane {1}) peuvent être en % ou une fraction de 1 ; indiquez l\'unité dans le paramétrage sous columns:, "%" ou "p.u."',
  "it has no unit; the median {1} is one in %": "sans unité ; la médiane {1} en est une en %",
  "per unit of {1} {2}, the base that it states": "en valeur réduite de {1} {2}, la base qu'il indique",
  "per unit of the declared voltage {1} V": "en valeur réduite de la tension déclarée {1} V",
  "it is in p.u. and states no base; give the declared voltage with --declared":
    "en p.u. sans base indiquée ; donnez la tension déclarée avec --declared",
  "it has no unit; the median {1} is one in {2}": "sans unité ; la médiane {1} en est une en {2}",
  "it has no unit, and the median {1} does not tell it; say the unit in the setup under columns:":
    "sans unité, et la médiane {1} ne la révèle pas ; indiquez l'unité dans le paramétrage sous columns:",
  "in % of the fundamental by its unit": "en % du fondamental d'après l'unité",
  "its unit says {1}, but order 1 has the median {2}, so it is taken as {3}":
    "son unité indique {1}, mais le rang 1 a la médiane {2}, prise donc en {3}",
  "order 1 is 1, so it is a fraction of the fundamental": "le rang 1 vaut 1 ; c'est donc une fraction du fondamental",
  "its unit is {1} and no order 1 shows whether it is % of the fundamental or {2}; say the unit in the setup under columns:":
    "son unité est {1} et aucun rang 1 ne montre s'il s'agit de % du fondamental ou de {2} ; indiquez l'unité dans le paramétrage sous columns:",
  "a vector announces {1} items of {2} bytes, which its record cannot hold":
    "un vecteur annonce {1} éléments de {2} octets, que son enregistrement ne peut contenir",
  "an element has the unknown physical type {1}": "un élément a le type physique inconnu {1}",
  "a link leads out of its record (to place {1} of {2})":
    "un lien mène hors de son enregistrement (à la place {1} sur {2})",
  "{1} stands where numbers are expected, and is left out": "{1} figure là où des nombres sont attendus, et est écarté",
  '{1}: "{2}" has other numbers of times and samples; the shorter one counts':
    "{1} : « {2} » n'a pas le même nombre de temps et d'échantillons ; le plus court compte",
  "all its samples are 0: its input was not connected": "tous ses échantillons sont 0 : l'entrée n'était pas raccordée",
  "it has {1} samples per second; waveforms are measured from {2} up":
    "{1} échantillons par seconde ; les formes d'onde sont mesurées à partir de {2}",
  "it is sampled apart from any voltage, and without one no cycle can be found":
    "échantillonné à l'écart de toute tension, et sans tension aucune période ne peut être trouvée",
  "{1}: the observation at {2} repeats samples of one that began before; they are counted once.":
    "{1} : l'observation du {2} répète des échantillons d'une autre commencée avant ; ils sont comptés une fois.",
  current: "courant",
  worst: "pire valeur",
  voltage: "tension",
  transient: "transitoire",
  none: "néant",
  "transient impulsive": "transitoire impulsionnel",
  "transient impulsive of nanoseconds": "transitoire impulsionnel de l'ordre de la nanoseconde",
  "transient impulsive of microseconds": "transitoire impulsionnel de l'ordre de la microseconde",
  "transient impulsive of milliseconds": "transitoire impulsionnel de l'ordre de la milliseconde",
  "transient oscillatory": "transitoire oscillatoire",
  "transient oscillatory of low frequency": "transitoire oscillatoire à basse fréquence",
  "transient oscillatory of medium frequency": "transitoire oscillatoire à moyenne fréquence",
  "transient oscillatory of high frequency": "transitoire oscillatoire à haute fréquence",
  "short duration": "courte durée",
  "short duration instantaneous": "courte durée, instantané",
  "short duration instantaneous dip": "courte durée, instantané : creux",
  "short duration instantaneous swell": "courte durée, instantané : surtension temporaire",
  "short duration momentary": "courte durée, momentané",
  "short duration momentary interruption": "courte durée, momentané : coupure",
  "short duration momentary dip": "courte durée, momentané : creux",
  "short duration momentary swell": "courte durée, momentané : surtension temporaire",
  "short duration temporary": "courte durée, temporaire",
  "short duration temporary interruption": "courte durée, temporaire : coupure",
  "short duration temporary dip": "courte durée, temporaire : creux",
  "short duration temporary swell": "courte durée, temporaire : surtension temporaire",
  "long duration": "longue durée",
  "long duration interruption": "longue durée : coupure",
  "long duration dip": "longue durée : creux",
  "long duration swell": "longue durée : surtension temporaire",
  unbalance: "déséquilibre",
  "variation of the power frequency": "variation de la fréquence du réseau",
  "voltage fluctuation": "fluctuation de tension",
  "distortion of the waveform": "distorsion de la forme d'onde",
  "distortion of the waveform direct component": "distorsion de la forme d'onde : composante continue",
  "distortion of the waveform harmonic": "distorsion de la forme d'onde : harmoniques",
  "distortion of the waveform interharmonic": "distorsion de la forme d'onde : interharmoniques",
  "distortion of the waveform notching": "distorsion de la forme d'onde : encoches",
  "distortion of the waveform noise": "distorsion de la forme d'onde : bruit",
  "times of IEEE 1159.3 (days and seconds), of the start of each observation":
    "heures de l'IEEE 1159.3 (jours et secondes), du début de chaque observation",
  "A to neutral": "A au neutre",
  "B to neutral": "B au neutre",
  "C to neutral": "C au neutre",
  "neutral to ground": "neutre à la terre",
  "A to B": "A à B",
  "B to C": "B à C",
  "C to A": "C à A",
  residual: "résiduel",
  net: "net",
  "positive sequence": "composante directe",
  "negative sequence": "composante inverse",
  "zero sequence": "composante homopolaire",
  total: "total",
  "average of phase to neutral": "moyenne des valeurs phase-neutre",
  "average of phase to phase": "moyenne des valeurs entre phases",
  plus: "plus",
  minus: "moins",
  "largest of phase to neutral": "la plus grande des valeurs phase-neutre",
  "smallest of phase to neutral": "la plus petite des valeurs phase-neutre",
  "largest of phase to phase": "la plus grande des valeurs entre phases",
  "smallest of phase to phase": "la plus petite des valeurs entre phases",
  ground: "terre",
  "general {1}": "général {1}",
  power: "puissance",
  energy: "énergie",
  temperature: "température",
  pressure: "pression",
  charge: "charge",
  "electric field": "champ électrique",
  "magnetic field": "champ magnétique",
  velocity: "vitesse",
  bearing: "orientation",
  force: "force",
  torque: "couple",
  position: "position",
  "flux linkage": "flux totalisé",
  "flux density": "induction magnétique",
  status: "état",
  humidity: "humidité",
  impedance: "impédance",
  unknown: "inconnu",
  "not said": "non indiqué",
  "samples of a voltage, phase {1}": "échantillons d'une tension, phase {1}",
  "samples of a current, phase {1}": "échantillons d'un courant, phase {1}",
  "its unit says {1}, but what is measured is {2}, so it is taken as {3}":
    "son unité indique {1}, mais la grandeur mesurée est {2}, prise donc en {3}",
  "a voltage": "une tension",
  "a current": "un courant",
  "a frequency": "une fréquence",
  "an active power": "une puissance active",
  "a reactive power": "une puissance réactive",
  "an apparent power": "une puissance apparente",
  "{1} in % does not say of what": "{1} en % ne dit pas de quoi",
  "% of the fundamental": "% du fondamental",
};
