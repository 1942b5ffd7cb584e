/** Reasons of judging. */
export const REASONS: Readonly<Record<string, string>> = {
  "Declared voltage: {1} V for {2}, {3} V for {4}.": "Vereinbarte Versorgungsspannung: {1} V bei {2}, {3} V bei {4}.",
  "Limit: {1} in {2}, {3} in {4}.": "Grenzwert: {1} in {2}, {3} in {4}.",
  "Share that must lie within: {1} % in {2}, {3} % in {4}.":
    "Anteil, der innerhalb liegen muss: {1} % in {2}, {3} % in {4}.",
  "Values of {1} in {2}, of {3} in {4}.": "Werte über {1} in {2}, über {3} in {4}.",
  "Period that is counted: {1} in {2}, {3} in {4}.": "Zeitraum, über den gezählt wird: {1} in {2}, {3} in {4}.",
  "Flagged intervals count in {1} and are left out in {2}.":
    "Gekennzeichnete Intervalle zählen in {1} und sind in {2} ausgelassen.",
  "Flagged intervals are left out in {1} and count in {2}.":
    "Gekennzeichnete Intervalle sind in {1} ausgelassen und zählen in {2}.",
  "For information only in {1}.": "Nur zur Information in {1}.",
  "Only {1} asks for it.": "Nur {1} verlangt dies.",
  "{1} sets no limit here.": "{1} setzt hier keinen Grenzwert.",
  "Not assessed by {1}: {2}": "Nach {1} nicht bewertet: {2}",
  year: "Jahr",
  "{1} to {2}{3}": "{1} bis {2}{3}",
  "at most {1}{2}": "höchstens {1}{2}",
  "at least {1}{2}": "mindestens {1}{2}",
  "All intervals are flagged by a dip, swell or interruption and left out, so none remains to be counted.":
    "Alle Intervalle sind durch einen Einbruch, eine Überhöhung oder eine Unterbrechung gekennzeichnet und ausgelassen; keines bleibt zum Zählen.",
  "{1} of {2} intervals are valid; {3} lie outside and {4} may, so the {5} missing ones could turn the verdict either way.":
    "{1} von {2} Intervallen sind gültig; außerhalb liegen {3}, zulässig sind {4}; die fehlenden {5} könnten die Bewertung daher in beide Richtungen ändern.",
  "{1} of {2} intervals overlap an excluded span; what remains is too little of the period to be judged.":
    "{1} von {2} Intervallen berühren einen ausgeschlossenen Zeitraum; was bleibt, ist zu wenig des Zeitraums, um beurteilt zu werden.",
  "Guarded acceptance needs the uncertainty of the values, which neither the setup states nor the instrument's class gives.":
    "Akzeptanz mit Schutzband braucht die Messunsicherheit der Werte; weder nennt sie das Setup, noch ergibt sie sich aus der Klasse des Messgeräts.",
  "Guarded acceptance: it conforms with the limits as they are ({1} outside), but not with the limits moved inwards by the uncertainty ({2} outside): a conditional pass.":
    "Akzeptanz mit Schutzband: eingehalten mit den Grenzwerten, wie sie sind ({1} außerhalb), aber nicht mit den um die Messunsicherheit nach innen verschobenen ({2} außerhalb): bedingt eingehalten.",
  "Guarded acceptance: it fails with the limits as they are ({1} outside), but not with the limits moved outwards by the uncertainty ({2} outside): a conditional fail.":
    "Akzeptanz mit Schutzband: nicht eingehalten mit den Grenzwerten, wie sie sind ({1} außerhalb), wohl aber mit den um die Messunsicherheit nach außen verschobenen ({2} außerhalb): bedingt nicht eingehalten.",
  time: "Zeit",
  flag: "Kennzeichnung",
  events: "Ereignisse",
  "lowest value": "niedrigster Wert",
  "highest value": "höchster Wert",
  samples: "Abtastwerte",
  "The rule counts over a year, in which {1} intervals may lie outside; this period alone cannot show that it is kept.":
    "Die Regel zählt über ein Jahr, in dem {1} Intervalle außerhalb liegen dürfen; dieser Zeitraum allein kann nicht zeigen, dass sie eingehalten ist.",
  "The log holds mains signalling voltages, but not every 3 s or not at a frequency that is known and on the curve.":
    "Die Messdaten enthalten Netz-Signalübertragungsspannungen, aber nicht alle 3 s oder nicht bei einer Frequenz, die bekannt ist und auf der Kurve liegt.",
  "The log holds no values of the {1}.": "Die Messdaten enthalten keine Werte der Größe „{1}“.",
  dips: "Einbrüche",
  swells: "Überhöhungen",
  "The log holds only those {1} that the recorder was triggered by, at its own thresholds; there may be others, so they are listed but not counted against the standard.":
    "Die Messdaten enthalten nur solche {1}, durch die das Aufzeichnungsgerät nach seinen eigenen Schwellen ausgelöst wurde; es kann weitere geben, daher sind sie aufgeführt, aber nicht gegen die Norm gezählt.",
  "The log holds interval values only; {1} need recorded events or waveforms.":
    "Die Messdaten enthalten nur Intervallwerte; {1} erfordern aufgezeichnete Ereignisse oder Kurvenformen.",
  "Not in the log: {1}.": "Nicht in den Messdaten: {1}.",
  "the standard gives none for the total; derived: as for one harmonic, all of them off by the same share":
    "die Norm nennt keine für den Gesamtwert; abgeleitet: wie für eine Oberschwingung, alle um denselben Anteil falsch",
  "class {1} of {2}: its largest error in % of the reading, taken as the expanded uncertainty":
    "Klasse {1} von {2}: die größte Abweichung in % des Messwerts, als erweiterte Messunsicherheit genommen",
  "stated in the setup": "im Setup angegeben",
  "{1}; stated as {2} with k = {3}, here converted to k = {4}":
    "{1}; angegeben als {2} mit k = {3}, hier umgerechnet auf k = {4}",
  "class {1} of IEC 61000-4-30, as quoted in a public article":
    "Klasse {1} nach IEC 61000-4-30, wie in einem öffentlichen Artikel zitiert",
  "class {1} of IEC 61000-4-30, from memory; check it in the standard":
    "Klasse {1} nach IEC 61000-4-30, aus dem Gedächtnis; in der Norm prüfen",
  "the log writes steps of {1}: half a step either way, all values in it alike":
    "die Messdaten haben Schritte von {1}: ein halber Schritt nach beiden Seiten, alle Werte darin gleich wahrscheinlich",
};
