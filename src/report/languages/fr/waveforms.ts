export const waveforms: Readonly<Record<string, string>> = {
  "the log holds waveforms, whose samples carry the time at which they were taken":
    "le journal contient des formes d'onde, dont les échantillons portent l'instant auquel ils ont été pris",
  "a current between phases is not used": "un courant entre phases n'est pas utilisé",
  "the setup leaves it out": "le paramétrage l'écarte",
  "{1} of the {2} bytes of data are missing at its end.": "{1} des {2} octets de données manquent à la fin.",
  "{1} samples at {2} per second are left out, too few for a waveform of {3} Hz.":
    "{1} échantillons à {2} par seconde sont écartés, trop peu pour une forme d'onde de {3} Hz.",
  "sampled {1} times a second, so it is no waveform of {2} Hz":
    "échantillonné {1} fois par seconde, donc pas une forme d'onde de {2} Hz",
  '"{1}" is brought to the primary side by {2}, unlike in the first file.':
    "« {1} » est ramené au côté primaire par {2}, contrairement au premier fichier.",
  "an r.m.s. value or mean is no waveform": "une valeur efficace ou une moyenne n'est pas une forme d'onde",
  "direct and auxiliary voltages are not used": "les tensions continues et auxiliaires ne sont pas utilisées",
  "a frequency is no waveform": "une fréquence n'est pas une forme d'onde",
  "an angle is no waveform": "un angle n'est pas une forme d'onde",
  "it is computed from other values": "calculé à partir d'autres valeurs",
  "a symmetrical component is no phase quantity": "une composante symétrique n'est pas une grandeur de phase",
  "a residual quantity (sum of the phases) is no phase quantity":
    "une grandeur résiduelle (somme des phases) n'est pas une grandeur de phase",
  "an earth quantity is no phase quantity": "une grandeur de terre n'est pas une grandeur de phase",
  '"{1}{2}" may be a phase, a number or a symmetrical component':
    "« {1}{2} » peut être une phase, un numéro ou une composante symétrique",
  '"{1}" is none of the phases {2}': "« {1} » n'est aucune des phases {2}",
  "the edition {1} of the standard is not known; the layout of 1999 is used.":
    "l'édition {1} de la norme n'est pas connue ; la disposition de 1999 est utilisée.",
  "the year of the standard is missing; the channel lines have the form of 1999, which is used.":
    "l'année de la norme manque ; les lignes des voies ont la forme de 1999, qui est utilisée.",
  "{1} analog and {2} status channels are promised, but {3} and {4} are described; the descriptions are used.":
    "{1} voies analogiques et {2} voies d'état sont annoncées, mais {3} et {4} sont décrites ; les descriptions sont utilisées.",
  "the date is written {1}, not in the order of the edition.": "la date est écrite {1}, non dans l'ordre de l'édition.",
  "the date is read as {1}; the configuration names no edition, so state dateOrder in the setup if that is wrong.":
    "la date est lue comme {1} ; la configuration ne nomme pas d'édition ; indiquez donc dateOrder dans le paramétrage si c'est faux.",
  "the time factor {1} cannot be used; 1 is taken.": "le facteur de temps {1} ne peut être utilisé ; 1 est pris.",
  "the time code {1} cannot be read; the stamps are taken to name no offset.":
    "le code horaire {1} est illisible ; l'horodatage est considéré comme sans décalage indiqué.",
  "the recorder states that its clock was right within {1} only.":
    "l'enregistreur indique que son horloge n'était juste qu'à {1} près.",
  "the recorder states that its clock had failed; the times cannot be trusted.":
    "l'enregistreur indique que son horloge était défaillante ; les heures ne sont pas fiables.",
  "the data are text although the configuration says {1}.":
    "les données sont du texte, bien que la configuration dise {1}.",
  "the data are binary although the configuration says ASCII.":
    "les données sont binaires, bien que la configuration dise ASCII.",
  "the rows hold {1} words of status channels, not {2} as the configuration says.":
    "les lignes contiennent {1} mots de voies d'état, non {2} comme le dit la configuration.",
  "{1} bytes behind the last whole row are left out; the file is cut off.":
    "{1} octets après la dernière ligne entière sont écartés ; le fichier est tronqué.",
  "the rows hold two bytes per value, so they are read as BINARY, not {1}.":
    "les lignes contiennent deux octets par valeur ; elles sont donc lues comme BINARY, non comme {1}.",
  "{1} and 1 other file: {2}": "{1} et 1 autre fichier : {2}",
  "{1} and {2} other files: {3}": "{1} et {2} autres fichiers : {3}",
  "{1} h:m:s with {2} decimals": "{1} h:m:s avec {2} décimales",
  "{1}, of the first sample of each file": "{1}, du premier échantillon de chaque fichier",
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
  'channel {1} ("{2}")': "voie {1} (« {2} »)",
  "voltage {1}": "tension {1}",
  "current {1}": "courant {1}",
};
