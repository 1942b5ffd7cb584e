/** The statement, what it counts, and the uncertainty. */
export const STATEMENT: Readonly<Record<string, string>> = {
  "The one requirement with values could not be decided.":
    "Die eine Anforderung mit Werten konnte nicht entschieden werden.",
  "The one requirement judged was not met.": "Die eine beurteilte Anforderung wurde nicht eingehalten.",
  "The one requirement judged was met.": "Die eine beurteilte Anforderung wurde eingehalten.",
  "None of the {1} requirements with values could be decided.":
    "Keine der {1} Anforderungen mit Werten konnte entschieden werden.",
  "All {1} requirements judged were met.": "Alle {1} beurteilten Anforderungen wurden eingehalten.",
  "{1} of the {2} requirements judged could not be decided.":
    "Von {2} beurteilten Anforderungen konnten nicht entschieden werden: {1}.",
  "{1} of the {2} requirements judged was not met": "{1} von {2} beurteilten Anforderungen wurde nicht eingehalten",
  "{1} of the {2} requirements judged were not met": "{1} von {2} beurteilten Anforderungen wurden nicht eingehalten",
  "{1} and {2} could not be decided.": "{1}; nicht entschieden werden konnten: {2}.",
  "Of this period only what is judged by the year is counted: {1} requirement.":
    "Aus diesem Zeitraum wird nur gezählt, was nach dem Jahr beurteilt wird: {1} Anforderung.",
  "Of this period only what is judged by the year is counted: {1} requirements.":
    "Aus diesem Zeitraum wird nur gezählt, was nach dem Jahr beurteilt wird: {1} Anforderungen.",
  "Of this period only what is worse than in every consecutive week is counted: {1} requirement.":
    "Aus diesem Zeitraum wird nur gezählt, was schlechter ist als in jeder der aufeinanderfolgenden Wochen: {1} Anforderung.",
  "Of this period only what is worse than in every consecutive week is counted: {1} requirements.":
    "Aus diesem Zeitraum wird nur gezählt, was schlechter ist als in jeder der aufeinanderfolgenden Wochen: {1} Anforderungen.",
  "{1} requirement was not assessed; see below why.": "{1} Anforderung wurde nicht bewertet; warum, steht unten.",
  "{1} requirements were not assessed; see below why.": "{1} Anforderungen wurden nicht bewertet; warum, steht unten.",
  "Missing intervals could change the verdict on one requirement (“robust: no”).":
    "Fehlende Intervalle könnten die Bewertung einer Anforderung ändern („robust: nein“).",
  "Missing intervals could change the verdict on {1} requirements (“robust: no”).":
    "Fehlende Intervalle könnten die Bewertung von {1} Anforderungen ändern („robust: nein“).",
  "The one requirement judged rests, at least in part, on limits that no public document at hand confirms.":
    "Die eine beurteilte Anforderung beruht zumindest teilweise auf Grenzwerten, die kein vorliegendes öffentliches Dokument bestätigt.",
  "All {1} requirements judged rest, at least in part, on limits that no public document at hand confirms.":
    "Alle {1} beurteilten Anforderungen beruhen zumindest teilweise auf Grenzwerten, die kein vorliegendes öffentliches Dokument bestätigt.",
  "{1} of the {2} requirements judged rests, at least in part, on limits that no public document at hand confirms.":
    "{1} von {2} beurteilten Anforderungen beruht zumindest teilweise auf Grenzwerten, die kein vorliegendes öffentliches Dokument bestätigt.",
  "{1} of the {2} requirements judged rest, at least in part, on limits that no public document at hand confirms.":
    "{1} von {2} beurteilten Anforderungen beruhen zumindest teilweise auf Grenzwerten, die kein vorliegendes öffentliches Dokument bestätigt.",
  "{1} finding on the recording itself kept values from being judged.":
    "{1} Befund zur Aufzeichnung selbst verhinderte die Beurteilung von Werten.",
  "{1} findings on the recording itself kept values from being judged.":
    "{1} Befunde zur Aufzeichnung selbst verhinderten die Beurteilung von Werten.",
  "{1} conformed": "{1} eingehalten",
  "{1} did not conform": "{1} nicht eingehalten",
  "{1} could not be decided": "{1} nicht entschieden",
  "{1} could not be judged": "{1} nicht beurteilbar",
  "Of {1} consecutive weeks {2}; see the table of weeks.":
    "Von {1} aufeinanderfolgenden Wochen: {2}; siehe die Tabelle der Wochen.",
  "The recording holds nothing that {1} sets a limit for, so nothing could be judged":
    "Die Aufzeichnung enthält nichts, wofür {1} einen Grenzwert nennt; daher konnte nichts beurteilt werden",
  "It shows {1}.": "Sie zeigt {1}.",
  "It also shows {1}.": "Sie zeigt auch {1}.",
  "The recording of {1} cannot show whether a week conforms to {2}":
    "Die Aufzeichnung von {1} kann nicht zeigen, ob eine Woche die Norm einhält ({2})",
  "The recording of {1} cannot show whether a week keeps the limits of {2}":
    "Die Aufzeichnung von {1} kann nicht zeigen, ob eine Woche die Grenzwerte von {2} einhält",
  "{1}; it shows {2}.": "{1}; sie zeigt {2}.",
  "one of the {1} per phase, within {2}": "von den {1} je Phase einen, innerhalb von {2}",
  "{1} {2} per phase, none outside {3}": "je Phase keinen von {1} {2} außerhalb von {3}",
  "on phase {1} {2} of {3} {4} that lay {5}": "an Phase {1} {2} von {3} {4} {5}",
  "of the {1} of a day, {2} may": "von den {1} eines Tages sind {2} zulässig",
  "of the {1} of a week, {2} may": "von den {1} einer Woche sind {2} zulässig",
  "of the {1} of a year, {2} may": "von den {1} eines Jahres sind {2} zulässig",
  "voltages of {1} on {2} (values of {3})": "Spannungen von {1} an {2} (Werte über {3})",
  "too much of it is missing.": "Zu viel davon fehlt.",
  "{1}; not judged: {2}.": "{1}; nicht beurteilt: {2}.",
  "The values recorded {1} give information on {2} but hold nothing that decides conformance.":
    "Die {1} aufgezeichneten Werte geben zu {2} Auskunft, enthalten aber nichts, was über die Einhaltung entscheidet.",
  "The supply {1} could not be judged by {2}": "Die Versorgung {1} konnte nicht beurteilt werden (Maßstab {2})",
  "The supply voltage did not conform to {1} {2}": "Die Versorgungsspannung hat {1} {2} nicht eingehalten",
  "Whether the supply voltage conformed to {1} {2} is undecided":
    "Es ist nicht entschieden, ob die Versorgungsspannung {1} {2} eingehalten hat",
  "The supply voltage conformed to {1} {2}": "Die Versorgungsspannung hat {1} {2} eingehalten",
  "The supply did not conform to {1} {2}": "Die Versorgung hat {1} {2} nicht eingehalten",
  "Whether the supply conformed to {1} {2} is undecided":
    "Es ist nicht entschieden, ob die Versorgung {1} {2} eingehalten hat",
  "The supply conformed to {1} {2}": "Die Versorgung hat {1} {2} eingehalten",
  "In what could be judged ({1}) the supply conformed to {2} {3}":
    "Soweit beurteilbar ({1}), hat die Versorgung {2} {3} eingehalten",
  "The supply voltage did not keep the limits of {1} {2}":
    "Die Versorgungsspannung hat die Grenzwerte von {1} {2} nicht eingehalten",
  "Whether the supply voltage kept the limits of {1} {2} is undecided":
    "Es ist nicht entschieden, ob die Versorgungsspannung die Grenzwerte von {1} {2} eingehalten hat",
  "The supply voltage kept the limits of {1} {2}": "Die Versorgungsspannung hat die Grenzwerte von {1} {2} eingehalten",
  "The supply did not keep the limits of {1} {2}": "Die Versorgung hat die Grenzwerte von {1} {2} nicht eingehalten",
  "Whether the supply kept the limits of {1} {2} is undecided":
    "Es ist nicht entschieden, ob die Versorgung die Grenzwerte von {1} {2} eingehalten hat",
  "The supply kept the limits of {1} {2}": "Die Versorgung hat die Grenzwerte von {1} {2} eingehalten",
  "In what could be judged ({1}) the supply kept the limits of {2} {3}":
    "Soweit beurteilbar ({1}), hat die Versorgung die Grenzwerte von {2} {3} eingehalten",
  "harmonic voltages": "Oberschwingungsspannungen",
  "mains signalling": "Netz-Signalübertragung",
  "part of the {1}": "{1} (teilweise)",
  "Uncertainty and decision rule": "Messunsicherheit und Entscheidungsregel",
  "Comes from": "Stammt von",
  "±, with k = 2": "±, mit k = 2",
  Uncertainty: "Messunsicherheit",
  instrument: "Messgerät",
  sensor: "Sensor",
  "last digit": "letzte Stelle",
  "from the class": "aus der Klasse",
  "Included is what the last digit of the log hides, half a step either way, all values in it alike: {1}.":
    "Enthalten ist, was die letzte Stelle der Messdaten verbirgt, ein halber Schritt nach beiden Seiten, alle Werte darin gleich wahrscheinlich: {1}.",
  "Contributions to one quantity combine as the root of the sum of their squares. With k = 2 about 95 % of errors are smaller. The class of a sensor counts for the quantity it measures only.":
    "Beiträge zu einer Größe werden als Wurzel aus der Summe ihrer Quadrate zusammengefasst. Mit k = 2 sind etwa 95 % der Abweichungen kleiner. Die Klasse eines Sensors zählt nur für die Größe, die er misst.",
  "The uncertainty of the measurement was not stated: the setup gives neither the instrument's class (A or S of IEC 61000-4-30) nor a value. Whether a verdict would hold within it is not known.":
    "Die Messunsicherheit wurde nicht angegeben: Das Setup nennt weder die Klasse des Messgeräts (A oder S nach IEC 61000-4-30) noch einen Wert. Ob eine Bewertung innerhalb der Messunsicherheit Bestand hätte, ist nicht bekannt.",
  "Decision rule: simple acceptance. Values are compared with the limits as they are, and no margin is taken off for the uncertainty; a value exactly on its limit is accepted, wrongly so with a probability of up to 50 % (ILAC-G8:09/2019).":
    "Entscheidungsregel: einfache Akzeptanz. Werte werden mit den Grenzwerten verglichen, wie sie sind, ohne Abzug für die Messunsicherheit; ein Wert genau auf seinem Grenzwert wird akzeptiert, mit einer Wahrscheinlichkeit von bis zu 50 % zu Unrecht (ILAC-G8:09/2019).",
  "Decision rule: guarded acceptance with a guard band of the expanded uncertainty (ILAC-G8:09/2019, w = U). A requirement conforms only if it does so with every limit moved inwards by the uncertainty, and fails only if it does so with every limit moved outwards; in between it is undecided. A single value is wrongly accepted with a probability below 2.5 %.":
    "Entscheidungsregel: Akzeptanz mit Schutzband in Höhe der erweiterten Messunsicherheit (ILAC-G8:09/2019, w = U). Eine Anforderung ist nur eingehalten, wenn sie es auch mit jedem um die Messunsicherheit nach innen verschobenen Grenzwert ist, und nur nicht eingehalten, wenn sie es auch mit jedem nach außen verschobenen Grenzwert nicht ist; dazwischen ist sie nicht entschieden. Ein einzelner Wert wird mit einer Wahrscheinlichkeit unter 2,5 % zu Unrecht akzeptiert.",
  "None was stated; EN 50160 prescribes no guard band, so the values are taken as they are.":
    "Es wurde keine Entscheidungsregel angegeben; EN 50160 schreibt kein Schutzband vor, daher werden die Werte genommen, wie sie sind.",
  "“conditional pass”, “conditional fail”: within the uncertainty; with every limit moved by it, inwards or outwards, the verdict would be another. “near a limit”: values no further from a limit than the uncertainty.":
    "„bedingt eingehalten“, „bedingt nicht eingehalten“: innerhalb der Messunsicherheit; würde jeder Grenzwert um sie nach innen oder außen verschoben, wäre die Bewertung eine andere. „nahe einem Grenzwert“: Werte, die von einem Grenzwert nicht weiter entfernt sind als die Messunsicherheit.",
  "of the reading": "des Messwerts",
  "of the declared voltage": "der vereinbarten Versorgungsspannung",
  "{1} {2}, at least {3}": "{1} {2}, mindestens {3}",
  clear: "eindeutig",
  "conditional pass": "bedingt eingehalten",
  "conditional fail": "bedingt nicht eingehalten",
  "not known": "nicht bekannt",
  "{1}; near a limit: {2}": "{1}; nahe einem Grenzwert: {2}",
  "{1}; near a limit: {2}; {3}": "{1}; nahe einem Grenzwert: {2}; {3}",
  "Decision rule: simple acceptance; the uncertainty of the measurement was not stated.":
    "Entscheidungsregel: einfache Akzeptanz; die Messunsicherheit wurde nicht angegeben.",
  "Decision rule: simple acceptance; the uncertainty of the measurement could not turn a verdict.":
    "Entscheidungsregel: einfache Akzeptanz; die Messunsicherheit könnte keine Bewertung ändern.",
  "Decision rule: simple acceptance; the uncertainty of the measurement could turn the verdict on one requirement.":
    "Entscheidungsregel: einfache Akzeptanz; die Messunsicherheit könnte die Bewertung einer Anforderung ändern.",
  "Decision rule: simple acceptance; the uncertainty of the measurement could turn the verdict on {1} requirements.":
    "Entscheidungsregel: einfache Akzeptanz; die Messunsicherheit könnte die Bewertung von {1} Anforderungen ändern.",
  "Decision rule: guarded acceptance; no requirement lies within the uncertainty of the measurement.":
    "Entscheidungsregel: Akzeptanz mit Schutzband; keine Anforderung liegt innerhalb der Messunsicherheit.",
  "Decision rule: guarded acceptance; one requirement lies within the uncertainty of the measurement, at least in part.":
    "Entscheidungsregel: Akzeptanz mit Schutzband; eine Anforderung liegt zumindest teilweise innerhalb der Messunsicherheit.",
  "Decision rule: guarded acceptance; {1} requirements lie within the uncertainty of the measurement, at least in part.":
    "Entscheidungsregel: Akzeptanz mit Schutzband; {1} Anforderungen liegen zumindest teilweise innerhalb der Messunsicherheit.",
  "For one requirement the uncertainty is not known.": "Für eine Anforderung ist die Messunsicherheit nicht bekannt.",
  "For {1} requirements the uncertainty is not known.": "Für {1} Anforderungen ist die Messunsicherheit nicht bekannt.",
  conforms: "eingehalten",
  "does not conform": "nicht eingehalten",
  undecided: "nicht entschieden",
  "not assessed": "nicht bewertet",
  "for information": "zur Information",
  "no limit": "kein Grenzwert",
  supply: "Versorgung",
  "no values": "keine Werte",
  "{1} of the day": "{1} des Tages",
  "{1} of the week": "{1} der Woche",
  "{1} of the year": "{1} des Jahres",
  unconfirmed: "unbestätigt",
  "“unconfirmed”: no public document at hand confirms this limit. Check it in the standard itself before you rely on the verdict.":
    "„unbestätigt“: Kein vorliegendes öffentliches Dokument bestätigt diesen Grenzwert. Ihn in der Norm selbst prüfen, bevor die Bewertung verwendet wird.",
  "three-second values": "Dreisekundenwerten",
  "ten-second values": "Zehnsekundenwerten",
  "one-minute values": "Einminutenwerten",
  "ten-minute values": "Zehnminutenwerten",
  "harmonic voltage of order {1}": "Oberschwingungsspannung der Ordnung {1}",
  "harmonic current of order {1}": "Oberschwingungsstrom der Ordnung {1}",
  "interharmonic voltage of order {1}": "Zwischenharmonische Spannung der Ordnung {1}",
  "interharmonic current of order {1}": "Zwischenharmonischer Strom der Ordnung {1}",
  "{1} (order {2})": "{1} (Ordnung {2})",
  "of the power frequency": "der Netzfrequenz",
  "of the total harmonic distortion of the voltage": "des Gesamtoberschwingungsgehalts der Spannung",
  "of the mains signalling voltage": "der Netz-Signalübertragungsspannung",
  "of the short-term flicker severity": "der Kurzzeit-Flickerstärke",
  "of the long-term flicker severity": "der Langzeit-Flickerstärke",
  "of the voltage unbalance": "der Unsymmetrie der Spannung",
  "values of {1}": "Werten über {1}",
  "{1} of the harmonic voltage of order {2}": "{1} der Oberschwingungsspannung der Ordnung {2}",
  "{1} of {2} {3} lay {4}; none may.": "{1} von {2} {3} lagen {4}; zulässig ist keiner.",
  "{1} of {2} {3} lay {4}; {5} may.": "{1} von {2} {3} lagen {4}; zulässig sind {5}.",
  "on phase {1}, {2} of {3} {4} lay {5}; none may.": "An Phase {1} lagen {2} von {3} {4} {5}; zulässig ist keiner.",
  "on phase {1}, {2} of {3} {4} lay {5}; {6} may.": "An Phase {1} lagen {2} von {3} {4} {5}; zulässig sind {6}.",
  "the seven days from {1} to {2}": "sieben Tage vom {1} bis {2}",
  "the 365 days from {1} to {2}": "365 Tage vom {1} bis {2}",
  "the time from {1} to {2}, less than 365 days": "Zeitraum (weniger als 365 Tage) vom {1} bis {2}",
  "the week from {1} to {2}": "Woche vom {1} bis {2}",
  "the time from {1} to {2}, less than a week": "Zeitraum (weniger als eine Woche) vom {1} bis {2}",
  "in the seven days from {1} to {2}": "in den sieben Tagen vom {1} bis {2}",
  "in the 365 days from {1} to {2}": "in den 365 Tagen vom {1} bis {2}",
  "in the time from {1} to {2}, less than 365 days": "im Zeitraum (weniger als 365 Tage) vom {1} bis {2}",
  "in the week from {1} to {2}": "in der Woche vom {1} bis {2}",
  "in the time from {1} to {2}, less than a week": "im Zeitraum (weniger als eine Woche) vom {1} bis {2}",
};
