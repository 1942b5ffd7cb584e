export const verdict: Readonly<Record<string, string>> = {
  "The one requirement with values could not be decided.": "La seule exigence ayant des valeurs n'a pu être tranchée.",
  "The one requirement judged was not met.": "La seule exigence jugée n'a pas été satisfaite.",
  "The one requirement judged was met.": "La seule exigence jugée a été satisfaite.",
  "None of the {1} requirements with values could be decided.":
    "Aucune des {1} exigences ayant des valeurs n'a pu être tranchée.",
  "All {1} requirements judged were met.": "Les {1} exigences jugées ont toutes été satisfaites.",
  "{1} of the {2} requirements judged could not be decided.": "Exigences indéterminées : {1} sur les {2} jugées.",
  "{1} of the {2} requirements judged was not met": "{1} des {2} exigences jugées n'a pas été satisfaite",
  "{1} of the {2} requirements judged were not met": "{1} des {2} exigences jugées n'ont pas été satisfaites",
  "{1} and {2} could not be decided.": "{1} ; indéterminées : {2}.",
  "Of this period only what is judged by the year is counted: {1} requirement.":
    "De cette période, seul ce qui est jugé à l'année est compté : {1} exigence.",
  "Of this period only what is judged by the year is counted: {1} requirements.":
    "De cette période, seul ce qui est jugé à l'année est compté : {1} exigences.",
  "Of this period only what is worse than in every consecutive week is counted: {1} requirement.":
    "De cette période, seul ce qui est pire que dans chaque semaine consécutive est compté : {1} exigence.",
  "Of this period only what is worse than in every consecutive week is counted: {1} requirements.":
    "De cette période, seul ce qui est pire que dans chaque semaine consécutive est compté : {1} exigences.",
  "{1} requirement was not assessed; see below why.": "{1} exigence n'a pas été évaluée ; voir plus bas pourquoi.",
  "{1} requirements were not assessed; see below why.":
    "{1} exigences n'ont pas été évaluées ; voir plus bas pourquoi.",
  "Missing intervals could change the verdict on one requirement (“robust: no”).":
    "Les intervalles manquants pourraient changer le verdict sur une exigence (« robuste : non »).",
  "Missing intervals could change the verdict on {1} requirements (“robust: no”).":
    "Les intervalles manquants pourraient changer le verdict sur {1} exigences (« robuste : non »).",
  "The one requirement judged rests, at least in part, on limits that no public document at hand confirms.":
    "La seule exigence jugée repose, au moins en partie, sur des limites qu'aucun document public disponible ne confirme.",
  "All {1} requirements judged rest, at least in part, on limits that no public document at hand confirms.":
    "Les {1} exigences jugées reposent toutes, au moins en partie, sur des limites qu'aucun document public disponible ne confirme.",
  "{1} of the {2} requirements judged rests, at least in part, on limits that no public document at hand confirms.":
    "{1} des {2} exigences jugées repose, au moins en partie, sur des limites qu'aucun document public disponible ne confirme.",
  "{1} of the {2} requirements judged rest, at least in part, on limits that no public document at hand confirms.":
    "{1} des {2} exigences jugées reposent, au moins en partie, sur des limites qu'aucun document public disponible ne confirme.",
  "{1} finding on the recording itself kept values from being judged.":
    "{1} constat sur l'enregistrement lui-même a empêché de juger des valeurs.",
  "{1} findings on the recording itself kept values from being judged.":
    "{1} constats sur l'enregistrement lui-même ont empêché de juger des valeurs.",
  "{1} conformed": "conformes : {1}",
  "{1} did not conform": "non conformes : {1}",
  "{1} could not be decided": "indéterminées : {1}",
  "{1} could not be judged": "n'ayant pu être jugées : {1}",
  "Of {1} consecutive weeks {2}; see the table of weeks.":
    "Sur {1} semaines consécutives, {2} ; voir le tableau des semaines.",
  "half a cycle ({1})": "une demi-période ({1})",
  "10/12 cycles ({1})": "10/12 périodes ({1})",
  "What the week says about a longer time": "Ce que la semaine dit d'un temps plus long",
  "Intervals of 95 % confidence, for information": "Intervalles de confiance à 95 %, à titre indicatif",
  "Of the values at the required share and of the share outside, as if the values were independent of one another. Successive intervals are not, so the truth spreads wider. The standard's verdict is about the measured week itself and rests on none of this; whether missing intervals could turn that verdict is said by “robust”. The worst phase of each requirement; results.json holds all.":
    "Pour les valeurs à la part exigée et pour la part hors limite, comme si les valeurs étaient indépendantes les unes des autres. Les intervalles successifs ne le sont pas, si bien que la réalité s'étale davantage. Le verdict selon la norme porte sur la semaine mesurée elle-même et ne repose sur rien de ceci ; si des intervalles manquants pourraient faire basculer ce verdict, c'est « robuste » qui le dit. La phase la plus défavorable de chaque exigence ; results.json les contient toutes.",
  "Low value": "Valeur basse",
  "High value": "Valeur haute",
  "Share outside": "Part hors limite",
  "from {1}, open above": "à partir de {1}, ouvert vers le haut",
  open: "ouvert",
  "up to {1}, open below": "jusqu'à {1}, ouvert vers le bas",
  "{1} to {2} %": "{1} à {2} %",
  "The recording holds nothing that {1} sets a limit for, so nothing could be judged":
    "L'enregistrement ne contient rien pour quoi {1} fixe une limite ; rien n'a donc pu être jugé",
  "It shows {1}.": "L'enregistrement montre {1}.",
  "It also shows {1}.": "L'enregistrement montre aussi {1}.",
  "The recording of {1} cannot show whether a week conforms to {2}":
    "L'enregistrement de {1} ne peut montrer si une semaine est conforme à la norme {2}",
  "The recording of {1} cannot show whether a week keeps the limits of {2}":
    "L'enregistrement de {1} ne peut montrer si une semaine respecte les limites de {2}",
  "{1}; it shows {2}.": "{1} ; il montre {2}.",
  "one of the {1} per phase, within {2}": "une des {1} par phase, dans la limite ({2})",
  "{1} {2} per phase, none outside {3}": "{1} {2} par phase, aucune hors limite ({3})",
  "on phase {1} {2} of {3} {4} that lay {5}": "sur la phase {1}, parmi {3} {4}, {2} {5}",
  "of the {1} of a day, {2} may": "sur les {1} d'un jour, nombre admis : {2}",
  "of the {1} of a week, {2} may": "sur les {1} d'une semaine, nombre admis : {2}",
  "of the {1} of a year, {2} may": "sur les {1} d'un an, nombre admis : {2}",
  "voltages of {1} on {2} (values of {3})": "des tensions de {1} sur {2} (valeurs sur {3})",
  "too much of it is missing.": "il en manque une trop grande partie.",
  "{1}; not judged: {2}.": "{1} ; non jugé : {2}.",
  "The values recorded {1} give information on {2} but hold nothing that decides conformance.":
    "Les valeurs enregistrées {1} renseignent au regard de {2} mais ne contiennent rien qui décide de la conformité.",
  "The supply {1} could not be judged by {2}": "L'alimentation, {1}, n'a pas pu être jugée d'après {2}",
  "The supply voltage did not conform to {1} {2}": "La tension d'alimentation n'a pas été conforme à la norme {1} {2}",
  "Whether the supply voltage conformed to {1} {2} is undecided":
    "Il n'a pu être déterminé si la tension d'alimentation a été conforme à la norme {1} {2}",
  "The supply voltage conformed to {1} {2}": "La tension d'alimentation a été conforme à la norme {1} {2}",
  "The supply did not conform to {1} {2}": "L'alimentation n'a pas été conforme à la norme {1} {2}",
  "Whether the supply conformed to {1} {2} is undecided":
    "Il n'a pu être déterminé si l'alimentation a été conforme à la norme {1} {2}",
  "The supply conformed to {1} {2}": "L'alimentation a été conforme à la norme {1} {2}",
  "In what could be judged ({1}) the supply conformed to {2} {3}":
    "Pour ce qui a pu être jugé ({1}), l'alimentation a été conforme à la norme {2} {3}",
  "The supply voltage did not keep the limits of {1} {2}":
    "La tension d'alimentation n'a pas respecté les limites de {1} {2}",
  "Whether the supply voltage kept the limits of {1} {2} is undecided":
    "Il n'a pu être déterminé si la tension d'alimentation a respecté les limites de {1} {2}",
  "The supply voltage kept the limits of {1} {2}": "La tension d'alimentation a respecté les limites de {1} {2}",
  "The supply did not keep the limits of {1} {2}": "L'alimentation n'a pas respecté les limites de {1} {2}",
  "Whether the supply kept the limits of {1} {2} is undecided":
    "Il n'a pu être déterminé si l'alimentation a respecté les limites de {1} {2}",
  "The supply kept the limits of {1} {2}": "L'alimentation a respecté les limites de {1} {2}",
  "In what could be judged ({1}) the supply kept the limits of {2} {3}":
    "Pour ce qui a pu être jugé ({1}), l'alimentation a respecté les limites de {2} {3}",
  "harmonic voltages": "tensions harmoniques",
  "mains signalling": "transmission de signaux sur le réseau",
  "part of the {1}": "{1} (en partie)",
  "Uncertainty and decision rule": "Incertitude et règle de décision",
  "Comes from": "Provient de",
  "±, with k = 2": "±, avec k = 2",
  Uncertainty: "Incertitude",
  instrument: "instrument",
  sensor: "capteur",
  "last digit": "dernier chiffre",
  "from the class": "de la classe",
  "Included is what the last digit of the log hides, half a step either way, all values in it alike: {1}.":
    "Est comprise la part que cache le dernier chiffre du journal, un demi-pas dans chaque sens, toutes les valeurs y étant équiprobables : {1}.",
  "Contributions to one quantity combine as the root of the sum of their squares. With k = 2 about 95 % of errors are smaller. The class of a sensor counts for the quantity it measures only.":
    "Les contributions à une même grandeur se composent comme la racine de la somme de leurs carrés. Avec k = 2, environ 95 % des erreurs sont plus petites. La classe d'un capteur ne compte que pour la grandeur qu'il mesure.",
  "The uncertainty of the measurement was not stated: the setup gives neither the instrument's class (A or S of IEC 61000-4-30) nor a value. Whether a verdict would hold within it is not known.":
    "L'incertitude de mesure n'a pas été indiquée : le paramétrage ne donne ni la classe de l'instrument (A ou S de l'IEC 61000-4-30) ni une valeur. On ne sait pas si un verdict resterait le même compte tenu de cette incertitude.",
  "Decision rule: simple acceptance. Values are compared with the limits as they are, and no margin is taken off for the uncertainty; a value exactly on its limit is accepted, wrongly so with a probability of up to 50 % (ILAC-G8:09/2019).":
    "Règle de décision : acceptation simple. Les valeurs sont comparées aux limites telles quelles et aucune marge n'est retranchée pour l'incertitude ; une valeur exactement égale à sa limite est acceptée, à tort avec une probabilité pouvant atteindre 50 % (ILAC-G8:09/2019).",
  "Decision rule: guarded acceptance with a guard band of the expanded uncertainty (ILAC-G8:09/2019, w = U). A requirement conforms only if it does so with every limit moved inwards by the uncertainty, and fails only if it does so with every limit moved outwards; in between it is undecided. A single value is wrongly accepted with a probability below 2.5 %.":
    "Règle de décision : acceptation avec bande de garde égale à l'incertitude élargie (ILAC-G8:09/2019, w = U). Le verdict sur une exigence n'est « conforme » que s'il l'est aussi avec chaque limite resserrée de l'incertitude, et « non conforme » que s'il l'est aussi avec chaque limite élargie de l'incertitude ; entre les deux, il est « indéterminé ». Une valeur isolée est acceptée à tort avec une probabilité inférieure à 2,5 %.",
  "None was stated; EN 50160 prescribes no guard band, so the values are taken as they are.":
    "Aucune n'a été indiquée ; l'EN 50160 ne prescrit pas de bande de garde ; les valeurs sont donc prises telles quelles.",
  "“conditional pass”, “conditional fail”: within the uncertainty; with every limit moved by it, inwards or outwards, the verdict would be another. “near a limit”: values no further from a limit than the uncertainty.":
    "« conformité conditionnelle », « non-conformité conditionnelle » : à l'intérieur de l'incertitude ; si chaque limite était resserrée ou élargie de celle-ci, le verdict serait autre. « près d'une limite » : valeurs dont l'écart à une limite ne dépasse pas l'incertitude.",
  "of the reading": "de la valeur lue",
  "of the declared voltage": "de la tension déclarée",
  "{1} {2}, at least {3}": "{1} {2}, au moins {3}",
  clear: "net",
  "conditional pass": "conformité conditionnelle",
  "conditional fail": "non-conformité conditionnelle",
  "not known": "non connue",
  "{1}; near a limit: {2}": "{1} ; près d'une limite : {2}",
  "{1}; near a limit: {2}; {3}": "{1} ; près d'une limite : {2} ; {3}",
  "Decision rule: simple acceptance; the uncertainty of the measurement was not stated.":
    "Règle de décision : acceptation simple ; l'incertitude de mesure n'a pas été indiquée.",
  "Decision rule: simple acceptance; the uncertainty of the measurement could not turn a verdict.":
    "Règle de décision : acceptation simple ; l'incertitude de mesure ne pourrait faire basculer aucun verdict.",
  "Decision rule: simple acceptance; the uncertainty of the measurement could turn the verdict on one requirement.":
    "Règle de décision : acceptation simple ; l'incertitude de mesure pourrait faire basculer le verdict sur une exigence.",
  "Decision rule: simple acceptance; the uncertainty of the measurement could turn the verdict on {1} requirements.":
    "Règle de décision : acceptation simple ; l'incertitude de mesure pourrait faire basculer le verdict sur {1} exigences.",
  "Decision rule: guarded acceptance; no requirement lies within the uncertainty of the measurement.":
    "Règle de décision : acceptation avec bande de garde ; aucune exigence ne se situe dans l'incertitude de mesure.",
  "Decision rule: guarded acceptance; one requirement lies within the uncertainty of the measurement, at least in part.":
    "Règle de décision : acceptation avec bande de garde ; une exigence se situe dans l'incertitude de mesure, au moins en partie.",
  "Decision rule: guarded acceptance; {1} requirements lie within the uncertainty of the measurement, at least in part.":
    "Règle de décision : acceptation avec bande de garde ; {1} exigences se situent dans l'incertitude de mesure, au moins en partie.",
  "For one requirement the uncertainty is not known.": "Pour une exigence, l'incertitude n'est pas connue.",
  "For {1} requirements the uncertainty is not known.": "Pour {1} exigences, l'incertitude n'est pas connue.",
  conforms: "conforme",
  "does not conform": "non conforme",
  undecided: "indéterminé",
  "not assessed": "non évalué",
  "for information": "à titre indicatif",
  "no limit": "aucune limite",
  supply: "alimentation",
  "no values": "aucune valeur",
  "{1} of the day": "{1} du jour",
  "{1} of the week": "{1} de la semaine",
  "{1} of the year": "{1} de l'année",
  unconfirmed: "non confirmé",
  "“unconfirmed”: no public document at hand confirms this limit. Check it in the standard itself before you rely on the verdict.":
    "« non confirmé » : aucun document public disponible ne confirme cette limite. Vérifiez-la dans la norme elle-même avant de vous fier au verdict.",
  "three-second values": "valeurs sur trois secondes",
  "ten-second values": "valeurs sur dix secondes",
  "one-minute values": "valeurs sur une minute",
  "ten-minute values": "valeurs sur dix minutes",
  "harmonic voltage of order {1}": "tension harmonique de rang {1}",
  "harmonic current of order {1}": "courant harmonique de rang {1}",
  "interharmonic voltage of order {1}": "tension interharmonique de rang {1}",
  "interharmonic current of order {1}": "courant interharmonique de rang {1}",
  "{1} (order {2})": "{1} (rang {2})",
  "of the power frequency": "de la fréquence du réseau",
  "of the total harmonic distortion of the voltage": "du taux de distorsion harmonique total de la tension",
  "of the mains signalling voltage": "de la tension de transmission de signaux sur le réseau",
  "of the short-term flicker severity": "de la sévérité du papillotement de courte durée",
  "of the long-term flicker severity": "de la sévérité du papillotement de longue durée",
  "of the voltage unbalance": "du déséquilibre de la tension",
  "values of {1}": "valeurs sur {1}",
  "{1} of the harmonic voltage of order {2}": "{1} de la tension harmonique de rang {2}",
  "{1} of {2} {3} lay {4}; none may.": "parmi {2} {3}, {1} {4} ; aucune n'est admise.",
  "{1} of {2} {3} lay {4}; {5} may.": "parmi {2} {3}, {1} {4} ; nombre admis : {5}.",
  "on phase {1}, {2} of {3} {4} lay {5}; none may.": "sur la phase {1}, parmi {3} {4}, {2} {5} ; aucune n'est admise.",
  "on phase {1}, {2} of {3} {4} lay {5}; {6} may.": "sur la phase {1}, parmi {3} {4}, {2} {5} ; nombre admis : {6}.",
  "the seven days from {1} to {2}": "les sept jours du {1} au {2}",
  "the 365 days from {1} to {2}": "les 365 jours du {1} au {2}",
  "the time from {1} to {2}, less than 365 days": "le temps du {1} au {2}, moins de 365 jours",
  "the week from {1} to {2}": "la semaine du {1} au {2}",
  "the time from {1} to {2}, less than a week": "le temps du {1} au {2}, moins d'une semaine",
  "in the seven days from {1} to {2}": "pendant les sept jours du {1} au {2}",
  "in the 365 days from {1} to {2}": "pendant les 365 jours du {1} au {2}",
  "in the time from {1} to {2}, less than 365 days": "pendant le temps du {1} au {2}, moins de 365 jours",
  "in the week from {1} to {2}": "pendant la semaine du {1} au {2}",
  "in the time from {1} to {2}, less than a week": "pendant le temps du {1} au {2}, moins d'une semaine",
};
