export const plainAndPrint: Readonly<Record<string, string>> = {
  "The rules applied are “{1}”. They say:": "Les règles appliquées sont « {1} ». Elles disent :",
  "Further rules that were broken: {1}.": "Autres règles enfreintes : {1}.",
  "some orders {1}": "certains rangs {1}",
  "Supply voltage report: the result in plain words": "Rapport sur la tension d'alimentation : le résultat en clair",
  "What was promised?": "Qu'est-ce qui était promis ?",
  "What was measured?": "Qu'est-ce qui a été mesuré ?",
  "Was the measuring sound?": "La mesure était-elle fiable ?",
  "Was a rule broken?": "Une règle a-t-elle été enfreinte ?",
  "What happens next?": "Que faire ensuite ?",
  "The other pages hold the same result for engineers, with every limit, count and source.":
    "Les autres pages contiennent le même résultat pour les ingénieurs, avec chaque limite, chaque comptage et chaque source.",
  "The place was not stated.": "Le lieu n'a pas été indiqué.",
  "Which instrument measured, and when it was last calibrated, was not stated.":
    "L'instrument de mesure et la date de son dernier étalonnage n'ont pas été indiqués.",
  "The program checked the recording for faults of its own and found none.":
    "Le programme a recherché dans l'enregistrement des défauts propres à celui-ci et n'en a trouvé aucun.",
  "No missing value could turn the result.": "Aucune valeur manquante ne pourrait faire basculer le résultat.",
  "Missing values could turn the result in part; the following pages say where.":
    "Des valeurs manquantes pourraient faire basculer une partie du résultat ; les pages suivantes disent où.",
  "No brief drop, brief rise or interruption was found.":
    "Aucune baisse brève, hausse brève ou coupure n'a été trouvée.",
  "Brief drops, brief rises and interruptions cannot be seen in a recording of this kind.":
    "Les baisses brèves, les hausses brèves et les coupures ne peuvent être vues dans un enregistrement de ce genre.",
  "The recording holds nothing that these rules set a limit for.":
    "L'enregistrement ne contient rien pour quoi ces règles fixent une limite.",
  frequency: "fréquence",
  "single distortions of the wave shape (harmonics)": "déformations isolées de la forme d'onde (harmoniques)",
  "distortion of the wave shape as a whole": "déformation de la forme d'onde dans son ensemble",
  "flicker of lamps": "papillotement des lampes",
  "flicker of lamps over ten minutes": "papillotement des lampes sur dix minutes",
  "unevenness of the three phases": "inégalité des trois phases",
  "control signals on the network": "signaux de commande sur le réseau",
  "{1} volts": "{1} volts",
  "{1} percent": "{1} pour cent",
  "{1} hertz": "{1} hertz",
  "ten-second averages": "moyennes sur dix secondes",
  "ten-minute averages": "moyennes sur dix minutes",
  "two-hour values": "valeurs sur deux heures",
  "each day": "chaque jour",
  "each week": "chaque semaine",
  "each year": "chaque année",
  "values of {1} seconds each": "valeurs sur {1} secondes chacune",
  "Of all {1} of {2}: {3} from {4} to {5}.": "Pour toutes les {1} de {2} : {3} de {4} à {5}.",
  "Of the {1} of {2} at least {3} percent: {4} from {5} to {6}.":
    "Pour au moins {3} pour cent des {1} de {2} : {4} de {5} à {6}.",
  "at most {1}": "au plus {1}",
  "Of all {1} of {2}: {3} {4}.": "Pour toutes les {1} de {2} : {3} {4}.",
  "Of the {1} of {2} at least {3} percent: {4} {5}.": "Pour au moins {3} pour cent des {1} de {2} : {4} {5}.",
  "There are limits as well for: {1}.": "Il existe aussi des limites pour : {1}.",
  "above {1}": "au-dessus de {1}",
  "below {1}": "en dessous de {1}",
  "outside {1} to {2}": "hors de la plage {1} à {2}",
  "{1}: {2} of {3} {4} were {5}; allowed are {6}.": "{1} : sur {3} {4}, {2} {5} ; nombre admis : {6}.",
  "{1} The worst one was {2}, on {3}.": "{1} La pire était de {2}, le {3}.",
  "{1}, number {2}": "{1}, rang {2}",
  "{1} on phase {2}": "{1} sur la phase {2}",
  "Yes. The supply did not keep to the rules of “{1}”.": "Oui. L'alimentation n'a pas respecté les règles de « {1} ».",
  "No. In all that could be judged, the supply kept to the rules of “{1}”.":
    "Non. Pour tout ce qui a pu être jugé, l'alimentation a respecté les règles de « {1} ».",
  "That cannot be said. The recording does not decide whether the supply kept to the rules of “{1}”.":
    "On ne peut pas le dire. L'enregistrement ne permet pas de décider si l'alimentation a respecté les règles de « {1} ».",
  "That was not judged. The recording holds nothing that decides it by the rules of “{1}”.":
    "Cela n'a pas été jugé. L'enregistrement ne contient rien qui permette de le décider d'après les règles de « {1} ».",
  "One of the rules could not be judged with this recording; it is not counted as kept.":
    "L'une des règles n'a pu être jugée avec cet enregistrement ; elle n'est pas comptée comme respectée.",
  "{1} of the rules could not be judged with this recording; they are not counted as kept.":
    "{1} des règles n'ont pu être jugées avec cet enregistrement ; elles ne sont pas comptées comme respectées.",
  "Measured was the supply at: {1}.": "Lieu où l'alimentation a été mesurée : {1}.",
  "The recording runs from {1} to {2}, in the local time of {3}.":
    "L'enregistrement va du {1} au {2}, à l'heure locale de {3}.",
  "It has {1} ten-minute intervals: {2} were left out, and of the others {3} are valid.":
    "Il contient {1} intervalles de dix minutes : {2} ont été écartés et, parmi les autres, {3} sont valides.",
  "This holds only because spans of time were left out, for reasons that somebody stated and nobody measured. With all that was recorded the verdict would be: {1}.":
    "Cela ne vaut que parce que des plages de temps ont été écartées, pour des motifs que quelqu'un a affirmés et que personne n'a mesurés. Avec tout ce qui a été enregistré, le verdict serait : {1}.",
  "Have the stated reasons for leaving out spans of time proven; the result hangs on them.":
    "Faites prouver les motifs affirmés pour écarter des plages de temps ; le résultat en dépend.",
  "It has {1} valid ten-minute intervals out of {2}.": "Il contient {1} intervalles de dix minutes valides sur {2}.",
  "No, not in all parts. Findings that kept values from being judged: {1}. What they touch is left open and counted neither as good nor as bad.":
    "Non, pas dans toutes ses parties. Constats qui ont empêché de juger des valeurs : {1}. Ce qu'ils touchent est laissé ouvert et n'est compté ni comme bon ni comme mauvais.",
  "The program checked the recording for faults of its own. Findings worth knowing: {1}. None of them kept a value from being judged.":
    "Le programme a recherché dans l'enregistrement des défauts propres à celui-ci. Constats à connaître : {1}. Aucun n'a empêché de juger une valeur.",
  "The instrument, as stated by whoever measured: {1}.":
    "L'instrument, selon l'indication de la personne qui a mesuré : {1}.",
  "Spans of time left out because somebody stated unusual conditions: {1}. The pages on exclusions say who, why, and what they change.":
    "Plages de temps écartées parce que quelqu'un a fait état de conditions inhabituelles : {1}. Les pages sur les exclusions disent qui, pourquoi, et ce qu'elles changent.",
  "interruptions: {1}": "coupures : {1}",
  "brief drops of the voltage: {1}": "baisses brèves de la tension : {1}",
  "brief rises of the voltage: {1}": "hausses brèves de la tension : {1}",
  "Recorded as well: {1}.": "Également enregistré : {1}.",
  "The voltages moved against each other as they do when the neutral conductor is broken or has come loose. That can destroy appliances, start a fire, and put metal parts of appliances under voltage.":
    "Les tensions se sont déplacées les unes par rapport aux autres comme elles le font lorsque le conducteur neutre est rompu ou s'est desserré. Cela peut détruire des appareils, provoquer un incendie et mettre sous tension des parties métalliques d'appareils.",
  "The voltage was so high for so long that it can destroy appliances and start a fire.":
    "La tension a été si élevée pendant si longtemps qu'elle peut détruire des appareils et provoquer un incendie.",
  "Give this report and the unchanged log files to the network operator and ask in writing what will be done, and by when.":
    "Remettez ce rapport et les fichiers du journal inchangés au gestionnaire du réseau et demandez par écrit ce qui sera fait, et dans quel délai.",
  "The operator can check each number: the log files have fingerprints in this report, and the same files give the same result.":
    "Le gestionnaire peut vérifier chaque nombre : les fichiers du journal ont leurs empreintes dans ce rapport, et les mêmes fichiers donnent le même résultat.",
  "After the cause has been mended, have the supply recorded again for at least a week.":
    "Une fois la cause corrigée, faites de nouveau enregistrer l'alimentation pendant au moins une semaine.",
  "Nothing has to be mended because of this recording.": "Rien n'est à corriger du fait de cet enregistrement.",
  "If the trouble goes on, write down day and time of each occurrence, and have the supply recorded again while it happens.":
    "Si les troubles continuent, notez le jour et l'heure de chaque apparition, et faites de nouveau enregistrer l'alimentation pendant qu'ils se produisent.",
  "Have the supply recorded again for at least a full week without gaps, at the point of supply.":
    "Faites de nouveau enregistrer l'alimentation pendant au moins une semaine entière sans lacunes, au point de livraison.",
  "Write down day and time of each occurrence of trouble meanwhile.":
    "En attendant, notez le jour et l'heure de chaque apparition des troubles.",
  "Have the supply recorded with an instrument that measures what the rules ask for, for at least a full week.":
    "Faites enregistrer l'alimentation avec un instrument qui mesure ce que les règles demandent, pendant au moins une semaine entière.",
  "Have the supply recorded for at least a full week, at the point of supply.":
    "Faites enregistrer l'alimentation pendant au moins une semaine entière, au point de livraison.",
  "Keep the log files as they are. A changed file can no longer be told from a forged one.":
    "Conservez les fichiers du journal tels quels. Un fichier modifié ne peut plus être distingué d'un fichier falsifié.",
  "Statement of conformity": "Déclaration de conformité",
  "Annex A: every phase and order": "Annexe A : chaque phase et chaque rang",
  "Annex B: check of the measuring chain": "Annexe B : contrôle de la chaîne de mesure",
  Glossary: "Glossaire",
  "The other events": "Les autres événements",
  "No span of time was excluded.": "Aucune plage de temps n'a été exclue.",
  "Order: limit": "Rang : limite",
  "Page {1} of {2}": "Page {1} sur {2}",
  "Report number: not stated": "Numéro du rapport : non indiqué",
  "Report number: {1}": "Numéro du rapport : {1}",
  "SHA-256 of the log begins {1}": "Le SHA-256 du journal commence par {1}",
  "SHA-256 of the first of {1} log files begins {2}":
    "Le SHA-256 du premier des {1} fichiers du journal commence par {2}",
  "Where it was measured": "Où la mesure a été faite",
  "What was measured": "Ce qui a été mesuré",
  Method: "Méthode",
  "Provided by others": "Fourni par des tiers",
  "Counting of intervals by the limits of {1}, {2}; see “{3}”":
    "Comptage des intervalles selon les limites de {1}, {2} ; voir « {3} »",
  "Voltage of the supply; connection: {1}; declared voltage: {2}":
    "Tension de l'alimentation ; raccordement : {1} ; tension déclarée : {2}",
  "The log files and all entries marked “given” were provided by whoever set up the recording; they were not checked here beyond what this report says.":
    "Les fichiers du journal et toutes les mentions marquées « indiqué » ont été fournis par la personne qui a préparé l'enregistrement ; ils n'ont pas été vérifiés ici au-delà de ce que dit ce rapport.",
  "The results relate only to the supply at the place and in the time recorded. This report may be passed on only as a whole, unless whoever authorised it agrees in writing.":
    "Les résultats ne concernent que l'alimentation au lieu et pendant le temps enregistrés. Ce rapport ne peut être transmis qu'en entier, sauf accord écrit de la personne qui l'a autorisé.",
  "Findings that name a cause are interpretations of the recorded pattern, not measured results.":
    "Les constats qui nomment une cause sont des interprétations de l'allure enregistrée, non des résultats mesurés.",
  "The whole result for programs, results.json, is attached to this file.":
    "Le résultat complet à l'usage des programmes, results.json, est joint à ce fichier.",
  "End of the report": "Fin du rapport",
  "End of report {1}": "Fin du rapport {1}",
  Type: "Type",
  "Class (IEC 61000-4-30)": "Classe (IEC 61000-4-30)",
  "Serial number": "Numéro de série",
  Firmware: "Micrologiciel",
  "Calibrated on": "Étalonné le",
  "Calibration due on": "Étalonnage à renouveler le",
  Certificate: "Certificat",
  Clock: "Horloge",
  Sensor: "Capteur",
  Ratio: "Rapport",
  Class: "Classe",
  "{1} of {2} events, worst first; results.json (attached) and events.csv hold all.":
    "{1} événements sur {2}, du plus au moins défavorable ; results.json (joint) et events.csv les contiennent tous.",
  Table: "Tableau",
  Rows: "Lignes",
  "Row with the largest deviation": "Ligne au plus grand écart",
  Expected: "Attendu",
  Computed: "Calculé",
  Tolerance: "Tolérance",
  "no, from memory": "non, de mémoire",
  "Version {1} of the program measured made signals with known values: {2} rows of published tables, of which {3} were out of tolerance. “prove” runs them on any machine. Of each table the row that came nearest to its tolerance is shown.":
    "La version {1} du programme a mesuré des signaux synthétiques de valeurs connues : {2} lignes de tableaux publiés, dont {3} hors tolérance. « prove » les exécute sur n'importe quelle machine. De chaque tableau est montrée la ligne qui s'est le plus approchée de sa tolérance.",
  "{1} stands for a character that the font of this document lacks ({2}). report.html and results.json show it.":
    "{1} remplace un caractère que la police de ce document ne possède pas ({2}). report.html et results.json le montrent.",
  aggregation: "agrégation",
  "combining short measured values into one for a longer interval, for instance ten minutes":
    "réunion de valeurs mesurées courtes en une seule pour un intervalle plus long, par exemple dix minutes",
  "declared voltage": "tension déclarée",
  "the voltage that the supply is meant to have; usually the nominal voltage of the network":
    "la tension que l'alimentation est censée avoir ; le plus souvent la tension nominale du réseau",
  "marked because a dip, swell or interruption fell into the interval (IEC 61000-4-30)":
    "marqué parce qu'un creux, une surtension temporaire ou une coupure est tombé dans l'intervalle (IEC 61000-4-30)",
  "flicker severity": "sévérité du papillotement",
  "how strongly changes of the voltage make lamps flicker, as people see it":
    "intensité avec laquelle les variations de la tension font papilloter les lampes, telle que les personnes la perçoivent",
  harmonic: "harmonique",
  "part of the voltage at a multiple of the power frequency; the order says which multiple":
    "part de la tension à un multiple de la fréquence du réseau ; le rang dit quel multiple",
  interval: "intervalle",
  "the stretch of time that one value stands for": "la portion de temps que représente une valeur",
  robust: "robuste",
  "no filling of the missing intervals could change the verdict":
    "aucune façon de combler les intervalles manquants ne pourrait changer le verdict",
  "a fingerprint of a file: change one letter and it is another one":
    "une empreinte de fichier : qu'on change une lettre et c'en est une autre",
  "total harmonic distortion": "taux de distorsion harmonique total",
  "all harmonics together, in percent of the fundamental": "tous les harmoniques ensemble, en pour cent du fondamental",
  "short drop of the voltage below a threshold": "brève baisse de la tension en dessous d'un seuil",
  "short rise of the voltage above a threshold": "brève hausse de la tension au-dessus d'un seuil",
  "how unlike the three phases are, as negative-sequence part in percent of the positive-sequence part":
    "à quel point les trois phases diffèrent, exprimé par la composante inverse en pour cent de la composante directe",
  "Measurement setup of this report, with which it can be made again.":
    "Paramétrage de mesure de ce rapport, avec lequel il peut être refait.",
};
