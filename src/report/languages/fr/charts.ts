export const charts: Readonly<Record<string, string>> = {
  event: "événement",
  "{1} at {2}": "{1} à {2}",
  "{1}, order {2}": "{1}, rang {2}",
  "{1} in {2}": "{1} ({2})",
  "time, {1}": "heure, {1}",
  "{1}: every value of the whole recording lay within the limit ({2}); found {3}":
    "{1} : chaque valeur de tout l'enregistrement se situait dans la limite ({2}) ; relevé : {3}",
  "{1}: every value lay within the limit ({2}); found {3}":
    "{1} : chaque valeur se situait dans la limite ({2}) ; relevé : {3}",
  "The {1} was {2} in {3} of {4} intervals of the whole recording":
    "{1} : {2} dans {3} intervalles sur {4} (tout l'enregistrement)",
  "The {1} was {2} in {3} of {4} intervals": "{1} : {2} dans {3} intervalles sur {4}",
  "{1} was {2} in {3} of {4} intervals of the whole recording":
    "{1} : {2} dans {3} intervalles sur {4} (tout l'enregistrement)",
  "{1} was {2} in {3} of {4} intervals": "{1} : {2} dans {3} intervalles sur {4}",
  "{1}, mostly between {2} and {3}": "{1}, surtout entre {2} et {3}",
  "{1} to {2}": "{1} à {2}",
  "{1} for {2} ({3})": "{1} pour {2} ({3})",
  "{1} for {2} ({3}, unconfirmed)": "{1} pour {2} ({3}, non confirmé)",
  "No limit judged.": "Aucune limite jugée.",
  "Limits: {1}.": "Limites : {1}.",
  "{1} for {2} ({3}), set for values of {4}": "{1} pour {2} ({3}), fixé pour des valeurs sur {4}",
  "Dashed, for orientation: {1}. Values of {2} are not judged by it.":
    "En tirets, pour repère : {1}. Les valeurs sur {2} ne sont pas jugées d'après cela.",
  "Values of {1}, number of valid ones: {2}.": "Valeurs sur {1}, nombre de valeurs valides : {2}.",
  "{1} to {2} ({3}).": "{1} à {2} ({3}).",
  "Each point of the line is the mean of {1} intervals, the pale band their extremes.":
    "Chaque point de la ligne est la moyenne de {1} intervalles, la bande pâle leurs extrêmes.",
  "Pale band: lowest and highest value inside each interval.":
    "Bande pâle : valeurs la plus basse et la plus élevée à l'intérieur de chaque intervalle.",
  "The band reaches from {1} to {2}; the picture cuts it off.": "La bande s'étend de {1} à {2} ; la figure la coupe.",
  "Triangles: intervals outside the limit.": "Triangles : intervalles hors limite.",
  "Grey fields: excluded spans; what lies in them is drawn but not counted.":
    "Zones grises : plages exclues ; ce qui s'y trouve est tracé mais non compté.",
  "The clock was changed in this time; the axis keeps {1} throughout.":
    "L'heure a changé pendant ce temps ; l'axe garde partout {1}.",
  "Dotted: complaints (C) and comments (N). {1}.": "En pointillé : réclamations (C) et remarques (N). {1}.",
  "{1} for values of {2}": "{1}, valeurs {2}",
  "share of intervals at or below the value, in %": "part des intervalles ≤ valeur, en %",
  "How often which value occurred": "Fréquence d'apparition de chaque valeur",
  "No interval of the whole recording lay outside the limit ({1})":
    "Aucun intervalle de tout l'enregistrement hors limite ({1})",
  "No interval lay outside the limit ({1})": "Aucun intervalle hors limite ({1})",
  "On {1}, {2} of the intervals of the whole recording lay {3}":
    "Sur {1}, {2} des intervalles de tout l'enregistrement {3}",
  "On {1}, {2} of the intervals lay {3}": "Sur {1}, {2} des intervalles {3}",
  "none may": "aucun n'est admis",
  "more than the {1} allowed": "plus que les {1} admis",
  "not more than the {1} allowed": "pas plus que les {1} admis",
  "of a day {1} may": "admis sur un jour : {1}",
  "of a week {1} may": "admis sur une semaine : {1}",
  "of a year {1} may": "admis sur un an : {1}",
  "Judged is each day by itself.": "Chaque jour est jugé pour lui-même.",
  "Judged is each week by itself.": "Chaque semaine est jugée pour elle-même.",
  "Judged is each year by itself.": "Chaque année est jugée pour elle-même.",
  "The curves must not cross the black bars: too many values would lie beyond the limit. Values too high and too low count together.":
    "Les courbes ne doivent pas franchir les barres noires : trop de valeurs se situeraient au-delà de la limite. Les valeurs trop hautes et trop basses comptent ensemble.",
  "none outside": "0 hors limite",
  "together at most\n{1} outside": "au plus {1}\nhors limite en tout",
  "none\nabove {1}": "aucun au-dessus\nde {1}",
  "at most {1}\nabove {2}": "au plus {1}\nau-dessus de {2}",
  "none\nbelow {1}": "aucun en dessous\nde {1}",
  "at most {1}\nbelow {2}": "au plus {1}\nen dessous de {2}",
  "Harmonic voltages by order": "Tensions harmoniques par rang",
  "harmonic order": "rang harmonique",
  order: "rang",
  phase: "phase",
  "limit in {1}": "limite en {1}",
  "Harmonic order {1} above the limit on {2}": "Rang harmonique {1} au-dessus de la limite sur {2}",
  "Harmonic orders {1} above the limit on {2}": "Rangs harmoniques {1} au-dessus de la limite sur {2}",
  "Order {1} on {2} reached {3} of its limit, but no harmonic order could be judged to fail; the table says why":
    "Le rang {1} sur {2} a atteint {3} de sa limite, mais aucun rang harmonique n'a pu être jugé non conforme ; le tableau dit pourquoi",
  "No harmonic order was judged above its limit; the nearest, order {1} on {2}, reached {3} of its limit":
    "Aucun rang harmonique n'a été jugé au-dessus de sa limite ; le plus proche, le rang {1} sur {2}, a atteint {3} de sa limite",
  "{1} values per order and phase, {2} each, {3}.": "{1} valeurs par rang et par phase, sur {2} chacune, {3}.",
  "Shown is the value that {1} do not exceed; the verdict comes from counting. Short bars: the limit of each order ({2}).":
    "Est montrée la valeur que {1} ne dépassent pas ; le verdict vient du comptage. Traits courts : la limite de chaque rang ({2}).",
  "Limits unconfirmed for order {1}.": "Limites non confirmées pour le rang {1}.",
  "Limits unconfirmed for orders {1}.": "Limites non confirmées pour les rangs {1}.",
  "hour of the day ({1})": "heure du jour ({1})",
  "the supply": "l'alimentation",
  "spread over the day": "réparti sur la journée",
  "mostly between {1} and {2}": "surtout entre {1} et {2}",
  "Intervals of the whole recording outside the limit on {1}: {2}":
    "Intervalles de tout l'enregistrement hors limite sur {1} : {2}",
  "Intervals outside the limit on {1}: {2}": "Intervalles hors limite sur {1} : {2}",
  "each hour": "chaque heure",
  "each {1} hours": "chaque tranche de {1} heures",
  "Largest deviation of {1} of the whole recording: none outside the limit":
    "Plus grand écart de {1} de tout l'enregistrement : aucun hors limite",
  "Largest deviation of {1}: none outside the limit": "Plus grand écart de {1} : aucun hors limite",
  "Highest value of {1} of the whole recording on {2}: none outside the limit":
    "Valeur la plus élevée de {1} de tout l'enregistrement sur {2} : aucune hors limite",
  "Highest value of {1} on {2}: none outside the limit": "Valeur la plus élevée de {1} sur {2} : aucune hors limite",
  "Each cell is {1} on {2} ({3}); the number is {4}.": "Chaque case représente {1} ({2} ; {3}) ; le nombre est {4}.",
  "Empty cells: no valid data, or no such hour (clock change).":
    "Cases vides : aucune donnée valide, ou heure inexistante (changement d'heure).",
  "Empty cells: no valid data.": "Cases vides : aucune donnée valide.",
  "one hour of one day of the week": "une heure d'un jour de la semaine",
  "one hour of one day": "une heure d'un jour",
  "{1} hours of one day of the week": "une tranche de {1} heures d'un jour de la semaine",
  "{1} hours of one day": "une tranche de {1} heures d'un jour",
  "how many intervals lay outside the limit; darker is more":
    "le nombre d'intervalles hors limite ; plus foncé : davantage",
  "the largest deviation from the nominal frequency in mHz; darker is more":
    "le plus grand écart à la fréquence nominale en mHz ; plus foncé : davantage",
  "the highest value; darker is higher": "la valeur la plus élevée ; plus foncé : plus élevé",
  "the highest value in {1}; darker is higher": "la valeur la plus élevée en {1} ; plus foncé : plus élevé",
  day: "jour",
  hour: "heure",
  value: "valeur",
  "Harmonic voltages by order, as measured": "Tensions harmoniques par rang, telles que mesurées",
  "Interharmonic voltages by order, as measured": "Tensions interharmoniques par rang, telles que mesurées",
  "harmonic order below the interharmonic group": "rang harmonique en dessous du groupe interharmonique",
  "Harmonic currents by order, as measured": "Courants harmoniques par rang, tels que mesurés",
  "harmonic order (the fundamental is left out)": "rang harmonique (fondamental omis)",
  "The mean harmonic voltage nearest to its limit was that of order {1} on {2}: {3}, with a limit of {4}; no verdict on a week is meant":
    "La tension harmonique moyenne la plus proche de sa limite était celle de rang {1} sur {2} : {3}, pour une limite de {4} ; aucun verdict sur une semaine n'est visé",
  "The highest mean harmonic voltage was that of order {1} on {2}: {3}":
    "La tension harmonique moyenne la plus élevée était celle de rang {1} sur {2} : {3}",
  "The highest mean harmonic current was that of order {1} on {2}: {3}":
    "Le courant harmonique moyen le plus élevé était celui de rang {1} sur {2} : {3}",
  "The highest mean interharmonic voltage was that below the fundamental on {1}: {2}":
    "La tension interharmonique moyenne la plus élevée était celle en dessous du fondamental sur {1} : {2}",
  "The highest mean interharmonic voltage was that between orders {1} and {2} on {3}: {4}":
    "La tension interharmonique moyenne la plus élevée était celle entre les rangs {1} et {2} sur {3} : {4}",
  "Values per order and phase: {1}, {2}, from the {3} recorded.":
    "Valeurs par rang et par phase : {1}, sur {2}, tirées de : {3} d'enregistrement.",
  "Symbol: mean; thin line: up to the highest value, also during events.":
    "Symbole : moyenne ; trait fin : jusqu'à la valeur la plus élevée, y compris pendant les événements.",
  "No limit is judged.": "Aucune limite n'est jugée.",
  "Short bars: the limits ({1}), which hold for {2} and values of {3}; they are drawn for orientation, and nothing is counted by them here.":
    "Traits courts : les limites ({1}), qui valent pour {2} et des valeurs sur {3} ; ils sont tracés pour repère et ne servent ici à aucun comptage.",
  "{1} % of {2}": "{1} % de {2}",
};
