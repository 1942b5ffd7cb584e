export const analysis: Readonly<Record<string, string>> = {
  "THD on {1} is computed here from the logged harmonics 2 to {2}, where it was not logged.":
    "Le THD sur {1} est calculé ici à partir des harmoniques 2 à {2} enregistrés, là où il n'a pas été enregistré.",
  "THD on {1} is computed here from the logged harmonics 2 to {2}.":
    "Le THD sur {1} est calculé ici à partir des harmoniques 2 à {2} enregistrés.",
  "THD was not logged on {1}, and it needs all harmonics from 2 to {2}; the log holds {3} of these {4}.":
    "Le THD n'a pas été enregistré sur {1} et il exige tous les harmoniques de 2 à {2} ; le journal en contient {3} sur {4}.",
  "u2 is computed here from the three phase-to-phase voltages (IEC 61000-4-30, r.m.s. formula), where it was not logged.":
    "u2 est calculé ici à partir des trois tensions entre phases (IEC 61000-4-30, formule des valeurs efficaces), là où il n'a pas été enregistré.",
  "u2 is computed here from the three phase-to-phase voltages (IEC 61000-4-30, r.m.s. formula).":
    "u2 est calculé ici à partir des trois tensions entre phases (IEC 61000-4-30, formule des valeurs efficaces).",
  "Unbalance was not logged, and it cannot be computed without all three phase-to-phase voltages.":
    "Le déséquilibre n'a pas été enregistré et il ne peut être calculé sans les trois tensions entre phases.",
  "The harmonics on {1} are in volts, and neither the fundamental (order 1) nor the voltage was logged beside them, so their share of the fundamental is not known.":
    "Les harmoniques sur {1} sont en volts, et ni le fondamental (rang 1) ni la tension n'ont été enregistrés à côté ; leur rapport au fondamental n'est donc pas connu.",
  "Harmonics on {1} are logged in volts; here in % of the logged fundamental.":
    "Les harmoniques sur {1} sont enregistrés en volts ; ici en % du fondamental enregistré.",
  "Harmonics on {1} are logged in volts; here in % of the fundamental that remains of the r.m.s. voltage without its harmonics.":
    "Les harmoniques sur {1} sont enregistrés en volts ; ici en % du fondamental, obtenu en retirant les harmoniques de la tension efficace.",
  "The waveforms of the log last {1} s of {2} d; events are taken from them, interval values only from what was logged.":
    "Les formes d'onde du journal durent {1} s sur {2} d ; les événements en sont tirés, les valeurs par intervalle proviennent uniquement de ce qui a été enregistré.",
  "Plt is computed here from the logged ten-minute Pst, over the two-hour blocks of the UTC clock.":
    "Plt est calculé ici à partir des Pst de dix minutes enregistrés, sur les blocs de deux heures de l'horloge UTC.",
  "It was logged every {1}; the standard counts values of {2}, which cannot be made from that.":
    "L'enregistrement se fait toutes les {1} ; la norme compte des valeurs sur {2}, qui ne peuvent en être tirées.",
  "Plt was logged every {1}; each two-hour block without ten-minute Pst takes the value of its last row.":
    "Plt a été enregistré toutes les {1} ; chaque bloc de deux heures sans Pst de dix minutes prend la valeur de sa dernière ligne.",
  "root of the mean square": "moyenne quadratique",
  "arithmetic mean": "moyenne arithmétique",
  "{1}: values of {2} combined to {3} on the clock ({4}).":
    "{1} : valeurs sur {2} regroupées sur {3} d'après l'horloge ({4}).",
  "No unbroken stretch of the recording holds a basic window (10 cycles at 50 Hz, 12 at 60 Hz), so nothing was measured over windows.":
    "Aucun passage ininterrompu de l'enregistrement ne contient une fenêtre de base (10 périodes à 50 Hz, 12 à 60 Hz) ; rien n'a donc été mesuré par fenêtres.",
  "Pst and Plt are for the {1} V lamp at {2} Hz. The first {3} s after the start and after each gap are left out, because the flickermeter settles.":
    "Pst et Plt valent pour la lampe de {1} V à {2} Hz. Les {3} premières secondes après le début et après chaque lacune sont écartées, le temps que le flickermètre se stabilise.",
  "No ten minutes of the clock were recorded without a gap after the first {1} s, in which the flickermeter settles.":
    "Aucune période de dix minutes de l'horloge n'a été enregistrée sans lacune après les {1} premières secondes, pendant lesquelles le flickermètre se stabilise.",
  "The highest Plt over any twelve Pst in a row is {1} on {2}, from {3}. It is for information; the two-hour blocks of the clock are judged.":
    "La valeur la plus élevée de Plt sur douze Pst consécutifs quelconques est de {1} sur {2}, à partir de {3}. Elle est donnée à titre indicatif ; ce sont les blocs de deux heures de l'horloge qui sont jugés.",
  "Harmonics are measured to order {1} only: with {2} samples per second the recording shows nothing sound above {3} Hz. Higher orders are absent, not zero.":
    "Les harmoniques ne sont mesurés que jusqu'au rang {1} : avec {2} échantillons par seconde, l'enregistrement ne montre rien de fiable au-dessus de {3} Hz. Les rangs supérieurs sont absents et non pas nuls.",
  "THD needs all harmonics from 2 to {1}; with {2} samples per second they are measured to order {3}.":
    "Le THD exige tous les harmoniques de 2 à {1} ; avec {2} échantillons par seconde, ils sont mesurés jusqu'au rang {3}.",
  "inrush currents": "courants d'appel",
  "Mains signalling at {1} Hz cannot be measured: with {2} samples per second the recording shows nothing sound above {3} Hz.":
    "La transmission de signaux sur le réseau à {1} Hz ne peut être mesurée : avec {2} échantillons par seconde, l'enregistrement ne montre rien de fiable au-dessus de {3} Hz.",
  "Reactive power is that of the fundamental (Q1 of IEEE 1459).":
    "La puissance réactive est celle du fondamental (Q1 de l'IEEE 1459).",
  "Power needs the voltage to neutral and the current of a phase, or three phase-to-phase voltages and the currents.":
    "La puissance exige la tension au neutre et le courant d'une phase, ou les trois tensions entre phases et les courants.",
  "rapid voltage changes": "variations rapides de tension",
  "{1} more transients are not listed; the first {2} are.":
    "{1} autres transitoires ne sont pas listés ; les {2} premiers le sont.",
  "Unbalance needs three voltages, phase to neutral or phase to phase.":
    "Le déséquilibre exige trois tensions, entre phase et neutre ou entre phases.",
  "The phases follow each other in the order L1, L3, L2: two voltages are exchanged, or one is inverted. Exchange them in the setup.":
    "Les phases se succèdent dans l'ordre L1, L3, L2 : deux tensions sont permutées, ou l'une est inversée. Permutez-les dans le paramétrage.",
  "The half-cycle values around them were kept for the {1} most severe of {2} {3}.":
    "Les valeurs par demi-période autour des événements ont été conservées pour les plus sévères : {1} sur {2} ({3}).",
  "The waveform around them was kept for the {1} most severe of {2} {3}.":
    "La forme d'onde autour des événements a été conservée pour les plus sévères : {1} sur {2} ({3}).",
  "dips, swells and interruptions": "creux, surtensions temporaires et coupures",
  "supply voltage": "tension d'alimentation",
  "power frequency": "fréquence du réseau",
  "total harmonic distortion of the voltage": "taux de distorsion harmonique total de la tension",
  "total harmonic distortion of the current": "taux de distorsion harmonique total du courant",
  "harmonic voltage": "tension harmonique",
  "harmonic current": "courant harmonique",
  "interharmonic voltage": "tension interharmonique",
  "mains signalling voltage": "tension de transmission de signaux sur le réseau",
  "short-term flicker severity": "sévérité du papillotement de courte durée",
  "long-term flicker severity": "sévérité du papillotement de longue durée",
  "voltage unbalance": "déséquilibre de la tension",
  "zero-sequence unbalance": "déséquilibre homopolaire",
  "active power": "puissance active",
  "reactive power": "puissance réactive",
  "apparent power": "puissance apparente",
  "power factor": "facteur de puissance",
  "voltage underdeviation": "écart négatif de la tension",
  "voltage overdeviation": "écart positif de la tension",
  "crest factor of the voltage": "facteur de crête de la tension",
  "crest factor of the current": "facteur de crête du courant",
  "interharmonic current": "courant interharmonique",
  "displacement power factor": "facteur de déplacement",
  "fundamental active power": "puissance active fondamentale",
  "fundamental apparent power": "puissance apparente fondamentale",
  "nonactive power": "puissance non active",
  "current distortion power": "puissance de distorsion du courant",
  "voltage distortion power": "puissance de distorsion de la tension",
  "harmonic apparent power": "puissance apparente harmonique",
  "active energy, import": "énergie active soutirée",
  "active energy, export": "énergie active injectée",
  "the stamps carry their own offset from UTC": "l'horodatage porte son propre décalage par rapport à l'UTC",
  "the header of the time column says so": "l'en-tête de la colonne du temps l'indique",
  "the stamps carry no zone and none was given; they are read as UTC (--zone names another)":
    "l'horodatage ne porte aucun fuseau et aucun n'a été indiqué ; il est lu comme UTC (--zone en nomme un autre)",
  "the log does not say whether a stamp marks the start or the end of its interval (setup: intervalLabel)":
    "le journal ne dit pas si l'horodatage marque le début ou la fin de son intervalle (paramétrage : intervalLabel)",
  "no limit set was named (--rules); this is the default":
    "aucun jeu de limites n'a été nommé (--rules) ; c'est celui par défaut",
  "class {1} (IEC 61000-4-30)": "classe {1} (IEC 61000-4-30)",
  "serial number {1}": "numéro de série {1}",
  "firmware {1}": "micrologiciel {1}",
  "calibrated {1}": "étalonné le {1}",
  "calibration due {1}": "étalonnage à renouveler le {1}",
  "certificate {1}": "certificat {1}",
  interconnected: "interconnecté",
  "not interconnected": "non interconnecté",
  "earthing {1}": "mise à la terre {1}",
  "harmonics by subgroups": "harmoniques par sous-groupes",
  "harmonics by groups": "harmoniques par groupes",
  "dips below {1} %, swells above {2} %, interruptions below {3} %, hysteresis {4} %":
    "creux en dessous de {1} %, surtensions temporaires au-dessus de {2} %, coupures en dessous de {3} %, hystérésis {4} %",
  "reference declared voltage": "référence : tension déclarée",
  "reference sliding voltage": "référence : tension glissante",
  "rapid voltage changes from {1} %": "variations rapides de tension à partir de {1} %",
  "transients from {1} % of the crest": "transitoires à partir de {1} % de la crête",
  "inrush currents not looked for": "courants d'appel non recherchés",
  "inrush currents from {1} A": "courants d'appel à partir de {1} A",
  "{1}, smoothed with {2} s": "{1}, lissés sur {2} s",
  "flicker for the {1} V lamp": "papillotement pour la lampe de {1} V",
  "mains signalling not measured": "transmission de signaux sur le réseau non mesurée",
  "mains signalling at {1} Hz": "transmission de signaux sur le réseau à {1} Hz",
  "the usual settings (setup: measurement)": "les réglages usuels (paramétrage : measurement)",
  "the log holds voltages between phases only": "le journal ne contient que des tensions entre phases",
  "medium and high voltage are judged between phases": "la moyenne et la haute tension sont jugées entre phases",
  "the log holds one voltage only, L1 to neutral; a three-phase supply has two more, which were not logged":
    "le journal ne contient qu'une tension, de L1 au neutre ; une alimentation triphasée en a deux autres, qui n'ont pas été enregistrées",
  "the log holds {1}": "le journal contient {1}",
  "the log holds no voltages that would show the connection":
    "le journal ne contient aucune tension qui montrerait le raccordement",
  "the nominal voltage of {1}; the log holds no voltages to compare it with":
    "la tension nominale selon {1} ; le journal ne contient aucune tension à laquelle la comparer",
  "nominal voltage of a public low-voltage supply; the median of the measured voltages is {1}":
    "tension nominale d'une alimentation publique en basse tension ; la médiane des tensions mesurées est de {1}",
  "nominal frequency of {1}": "fréquence nominale selon {1}",
  "{1} kV": "{1} kV",
  "{1} V": "{1} V",
  "rated power {1} W": "puissance assignée {1} W",
  "temperature coefficient {1} %/K": "coefficient de température {1} %/K",
  "nominal operating cell temperature {1} °C": "température nominale de fonctionnement des cellules {1} °C",
  "1 week": "1 semaine",
  "{1} weeks": "{1} semaines",
  "Only the span from {1} to {2} was asked for; the log runs from {3} to {4}.":
    "Seule la partie du {1} au {2} a été demandée ; le journal va du {3} au {4}.",
};
