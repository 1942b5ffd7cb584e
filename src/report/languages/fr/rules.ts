export const rules: Readonly<Record<string, string>> = {
  "Declared voltage: {1} V for {2}, {3} V for {4}.": "Tension déclarée : {1} V pour {2}, {3} V pour {4}.",
  "Limit: {1} in {2}, {3} in {4}.": "Limite : {1} dans {2}, {3} dans {4}.",
  "Share that must lie within: {1} % in {2}, {3} % in {4}.":
    "Part qui doit se situer dans la limite : {1} % dans {2}, {3} % dans {4}.",
  "Values of {1} in {2}, of {3} in {4}.": "Valeurs sur {1} dans {2}, sur {3} dans {4}.",
  "Period that is counted: {1} in {2}, {3} in {4}.": "Période de comptage : {1} dans {2}, {3} dans {4}.",
  "Flagged intervals count in {1} and are left out in {2}.":
    "Les intervalles marqués comptent dans {1} et sont écartés dans {2}.",
  "Flagged intervals are left out in {1} and count in {2}.":
    "Les intervalles marqués sont écartés dans {1} et comptent dans {2}.",
  "For information only in {1}.": "À titre indicatif seulement dans {1}.",
  "Only {1} asks for it.": "Seul {1} l'exige.",
  "{1} sets no limit here.": "{1} ne fixe pas de limite ici.",
  "Not assessed by {1}: {2}": "Non évalué par {1} : {2}",
  year: "année",
  "{1} to {2}{3}": "{1} à {2}{3}",
  "at most {1}{2}": "au plus {1}{2}",
  "at least {1}{2}": "au moins {1}{2}",
  "All intervals are flagged by a dip, swell or interruption and left out, so none remains to be counted.":
    "Tous les intervalles sont marqués par un creux, une surtension temporaire ou une coupure et écartés ; il n'en reste donc aucun à compter.",
  "{1} of {2} intervals are valid; {3} lie outside and {4} may, so the {5} missing ones could turn the verdict either way.":
    "{1} intervalles valides sur {2} ; {3} hors limite pour {4} admis ; les {5} manquants pourraient donc faire basculer le verdict dans un sens ou dans l'autre.",
  "{1} of {2} intervals overlap an excluded span; what remains is too little of the period to be judged.":
    "{1} intervalles sur {2} chevauchent une plage exclue ; ce qui reste est une trop faible part de la période pour être jugé.",
  "Guarded acceptance needs the uncertainty of the values, which neither the setup states nor the instrument's class gives.":
    "L'acceptation avec bande de garde exige l'incertitude des valeurs, que ni le paramétrage n'indique ni la classe de l'instrument ne donne.",
  "Guarded acceptance: it conforms with the limits as they are ({1} outside), but not with the limits moved inwards by the uncertainty ({2} outside): a conditional pass.":
    "Acceptation avec bande de garde : conforme avec les limites telles quelles ({1} hors limite), mais pas avec les limites resserrées de l'incertitude ({2} hors limite) : conformité conditionnelle.",
  "Guarded acceptance: it fails with the limits as they are ({1} outside), but not with the limits moved outwards by the uncertainty ({2} outside): a conditional fail.":
    "Acceptation avec bande de garde : non conforme avec les limites telles quelles ({1} hors limite), mais pas avec les limites élargies de l'incertitude ({2} hors limite) : non-conformité conditionnelle.",
  time: "heure",
  flag: "marque",
  events: "événements",
  "lowest value": "valeur la plus basse",
  "highest value": "valeur la plus élevée",
  samples: "échantillons",
  "The rule counts over a year, in which {1} intervals may lie outside; this period alone cannot show that it is kept.":
    "La règle compte sur une année, dans laquelle {1} intervalles peuvent être hors limite ; cette période seule ne peut montrer qu'elle est respectée.",
  "The log holds mains signalling voltages, but not every 3 s or not at a frequency that is known and on the curve.":
    "Le journal contient des tensions de transmission de signaux sur le réseau, mais pas toutes les 3 s ou pas à une fréquence connue et située sur la courbe.",
  "The log holds no values of the {1}.": "Le journal ne contient aucune valeur de la grandeur « {1} ».",
  dips: "creux",
  swells: "surtensions temporaires",
  "The log holds only those {1} that the recorder was triggered by, at its own thresholds; there may be others, so they are listed but not counted against the standard.":
    "Le journal ne contient que les événements ({1}) qui ont déclenché l'enregistreur, selon ses propres seuils ; il peut y en avoir d'autres ; ils sont donc listés mais non comptés au regard de la norme.",
  "The log holds interval values only; {1} need recorded events or waveforms.":
    "Le journal ne contient que des valeurs par intervalle ; événements enregistrés ou formes d'onde nécessaires pour : {1}.",
  "Not in the log: {1}.": "Absent du journal : {1}.",
  "the standard gives none for the total; derived: as for one harmonic, all of them off by the same share":
    "la norme n'en donne pas pour le total ; déduit : comme pour un seul harmonique, tous décalés dans la même proportion",
  "class {1} of {2}: its largest error in % of the reading, taken as the expanded uncertainty":
    "classe {1} de {2} : sa plus grande erreur en % de la valeur lue, prise comme incertitude élargie",
  "stated in the setup": "indiqué dans le paramétrage",
  "{1}; stated as {2} with k = {3}, here converted to k = {4}":
    "{1} ; indiqué comme {2} avec k = {3}, converti ici à k = {4}",
  "class {1} of IEC 61000-4-30, as quoted in a public article":
    "classe {1} de l'IEC 61000-4-30, telle que citée dans un article public",
  "class {1} of IEC 61000-4-30, from memory; check it in the standard":
    "classe {1} de l'IEC 61000-4-30, de mémoire ; à vérifier dans la norme",
  "the log writes steps of {1}: half a step either way, all values in it alike":
    "le journal écrit par pas de {1} : un demi-pas dans chaque sens, toutes les valeurs y étant équiprobables",
};
