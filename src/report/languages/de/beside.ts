/** What stands beside the verdict. */
export const BESIDE: Readonly<Record<string, string>> = {
  "Other limit sets": "Andere Grenzwertsätze",
  "The verdict of this report comes from the first limit set alone. The others judge the same values by their own limits.":
    "Die Bewertung dieses Berichts beruht allein auf dem ersten Grenzwertsatz. Die anderen beurteilen dieselben Werte nach ihren eigenen Grenzwerten.",
  decides: "entscheidet",
  "not judged": "nicht beurteilt",
  "Limit set": "Grenzwertsatz",
  Standard: "Norm",
  "Declared voltage": "Vereinbarte Versorgungsspannung",
  Verdict: "Bewertung",
  "Other verdicts": "Andere Bewertungen",
  Requirement: "Anforderung",
  Where: "Wo",
  "First set": "Erster Satz",
  "This set": "Dieser Satz",
  Why: "Warum",
  "First: outside": "Erster: außerhalb",
  "First: verdict": "Erster: Bewertung",
  "This: outside": "Dieser: außerhalb",
  "This: verdict": "Dieser: Bewertung",
  "{1} ({2}): {3}, with the same verdict on every requirement.":
    "{1} ({2}): {3}, mit derselben Bewertung jeder Anforderung.",
  "{1} ({2}): {3}; another verdict than the first set's in one place.":
    "{1} ({2}): {3}; an einer Stelle eine andere Bewertung als der erste Satz.",
  "{1} ({2}): {3}; another verdict than the first set's in {4} places.":
    "{1} ({2}): {3}; an {4} Stellen eine andere Bewertung als der erste Satz.",
  "compared: {1}": "verglichen: {1}",
  "- {1}, {2}: {3}, by the first set {4}. {5}": "- {1}, {2}: {3}, nach dem ersten Satz {4}. {5}",
  "Complaints and what was recorded then": "Beschwerden und was dabei aufgezeichnet wurde",
  Comments: "Bemerkungen",
  "Times and words of complaints and comments were stated by whoever set up the recording. “Fixed values” are those of the intervals that it falls into; “around” is from five minutes before to five minutes after, by the shortest intervals at hand.":
    "Zeiten und Wortlaut von Beschwerden und Bemerkungen hat angegeben, wer die Aufzeichnung eingerichtet hat. „Feste Werte“ sind die der Intervalle, in die der Zeitpunkt fällt; „ringsum“ reicht von fünf Minuten davor bis fünf Minuten danach, mit den kürzesten vorhandenen Intervallen.",
  "Days of one class are Monday to Friday, Saturday, Sunday; public holidays are not known here. That a recording ought to hold such hours is derived from published complaint procedures; common practice, no source.":
    "Tage einer Klasse sind Montag bis Freitag, Samstag, Sonntag; Feiertage sind hier nicht bekannt. Dass eine Aufzeichnung solche Stunden enthalten sollte, ist aus veröffentlichten Beschwerdeverfahren abgeleitet; übliche Praxis, keine Quelle.",
  Phase: "Phase",
  "Valid data": "Gültige Daten",
  "Fixed values": "Feste Werte",
  Limit: "Grenzwert",
  "Lowest around": "Niedrigster ringsum",
  "Mean around": "Mittel ringsum",
  "Highest around": "Höchster ringsum",
  "Values of": "Werte über",
  "In charts": "In Diagrammen",
  Time: "Zeit",
  Comment: "Bemerkung",
  "No supply voltage was judged.": "Keine Versorgungsspannung wurde beurteilt.",
  "Outside the limit: {1}.": "Außerhalb des Grenzwerts: {1}.",
  "The fixed intervals that cover it lie within the limits.":
    "Die festen Intervalle, die den Zeitpunkt enthalten, liegen innerhalb der Grenzwerte.",
  "This time lies outside the recording.": "Diese Zeit liegt außerhalb der Aufzeichnung.",
  "This time lies partly outside the recording.": "Diese Zeit liegt teilweise außerhalb der Aufzeichnung.",
  "Covered by valid data.": "Durch gültige Daten abgedeckt.",
  "Not covered by valid data.": "Nicht durch gültige Daten abgedeckt.",
  "Covered by valid data on {1} only.": "Nur an {1} durch gültige Daten abgedeckt.",
  "{1} in {2} of {3} intervals ({4})": "{1} in {2} von {3} Intervallen ({4})",
  yes: "ja",
  no: "nein",
  "{1} of {2} intervals": "{1} von {2} Intervallen",
  "within {1}": "innerhalb von {1}",
  "outside {1}": "außerhalb von {1}",
  "{1} outside {2}": "{1} außerhalb von {2}",
  "{1} (inside intervals {2})": "{1} (innerhalb der Intervalle {2})",
  "{1} on {2}, {3}, {4}, {5}": "{1} an {2}, {3}, {4}, {5}",
  "Events around it: {1}.": "Ereignisse ringsum: {1}.",
  "Mondays to Fridays": "montags bis freitags",
  Saturdays: "samstags",
  Sundays: "sonntags",
  "Of {1} between {2} and {3} nothing valid was recorded either: the recording cannot speak for such times.":
    "Auch {1} zwischen {2} und {3} wurde nichts Gültiges aufgezeichnet: Über solche Zeiten kann die Aufzeichnung nichts aussagen.",
  "Of {1} between {2} and {3} the recording holds {4} valid intervals.":
    "Gültige Intervalle der Aufzeichnung {1} zwischen {2} und {3}: {4}.",
  "complaint, {1}: {2}": "Beschwerde, {1}: {2}",
  "Day by day": "Tag für Tag",
  Day: "Tag",
  "in part": "teilweise",
  "{1} of {2} outside": "{1} von {2} außerhalb",
  "on no whole day did a value lie outside {1}": "an keinem ganzen Tag lag ein Wert außerhalb von {1}",
  "values lay outside {1} on {2} of {3} whole days, from {4} ({5}) to {6} ({7})":
    "Werte außerhalb von {1} an {2} von {3} ganzen Tagen, je Tag {4} ({5}) bis {6} ({7})",
  "the value that {1} of a day's values do not exceed ran from {2} ({3}) to {4} ({5})":
    "der Wert, den {1} der Werte eines Tages nicht überschreiten, reichte von {2} ({3}) bis {4} ({5})",
  "the value that {1} of a day's values do not fall below ran from {2} ({3}) to {4} ({5})":
    "der Wert, den {1} der Werte eines Tages nicht unterschreiten, reichte von {2} ({3}) bis {4} ({5})",
  "Days of the local calendar ({1}); an interval belongs to the day it begins in. Counted against {2}; not judged by the day.":
    "Tage des örtlichen Kalenders ({1}); ein Intervall gehört zu dem Tag, an dem es beginnt. Gezählt gegen {2}; nicht tageweise beurteilt.",
  "{1} Clock change: {2}.": "{1} Zeitumstellung: {2}.",
  Exclusions: "Ausschlüsse",
  From: "Von",
  To: "Bis",
  Reason: "Grund",
  "Asserted by": "Geltend gemacht von",
  Evidence: "Nachweis",
  "Intervals left out": "Ausgelassene Intervalle",
  "Turns the verdict": "Ändert die Bewertung",
  "Left out": "Ausgelassen",
  "Outside, with": "Außerhalb, mit",
  "Outside, without": "Außerhalb, ohne",
  "Verdict with": "Bewertung mit",
  "Verdict without": "Bewertung ohne",
  "temporary supply during faults, maintenance or construction":
    "vorübergehende Versorgung bei Störungen, Instandhaltung oder Bauarbeiten",
  "a user's installation or equipment that breaks its standards or connection rules":
    "Anlage oder Betriebsmittel eines Netznutzers entgegen den Normen oder Anschlussregeln",
  "exceptional weather or another natural disaster": "außergewöhnliche Wetterbedingungen oder andere Naturkatastrophe",
  "interference by third parties": "Eingriffe Dritter",
  "acts of public authorities": "behördliche Maßnahmen",
  "industrial action": "Arbeitskampf",
  "force majeure": "höhere Gewalt",
  "power shortage from external events": "Leistungsmangel durch äußere Ereignisse",
  "That a reason applied is asserted by the party named; it was not measured. An interval that overlaps an excluded span counts neither as present nor as missing. The reasons are the list in the scope of EN 50160, read in a public catalogue entry of the 2022 edition; that it is clause 1.1, and that older editions list the same, is from memory.":
    "Dass ein Grund vorlag, macht die genannte Partei geltend; gemessen wurde es nicht. Ein Intervall, das einen ausgeschlossenen Zeitraum berührt, zählt weder als vorhanden noch als fehlend. Die Gründe sind die Liste im Anwendungsbereich von EN 50160, gelesen in einem öffentlichen Katalogeintrag der Ausgabe 2022; dass dies Abschnitt 1.1 ist und ältere Ausgaben dieselbe Liste enthalten, ist aus dem Gedächtnis angegeben.",
  "{1} of {2}": "{1} von {2}",
  "Counts with and without the exclusions": "Zählung mit und ohne die Ausschlüsse",
  "in an excluded span": "in einem ausgeschlossenen Zeitraum",
  "Without exclusions the verdict would be “{1}”.": "Ohne Ausschlüsse wäre die Bewertung „{1}“.",
  "One span was excluded; the verdict is the same without it.":
    "Ein Zeitraum wurde ausgeschlossen; die Bewertung ist ohne ihn dieselbe.",
  "{1} spans were excluded; the verdict is the same without them.":
    "{1} Zeiträume wurden ausgeschlossen; die Bewertung ist ohne sie dieselbe.",
  "The verdict hangs on the exclusion from {1} to {2} ({3}; asserted by {4}).":
    "Die Bewertung hängt am Ausschluss vom {1} bis {2} ({3}; geltend gemacht von {4}).",
  "excluded: from {1} to {2}, {3}, asserted by {4}; intervals left out: {5}":
    "ausgeschlossen: vom {1} bis {2}, {3}, geltend gemacht von {4}; ausgelassene Intervalle: {5}",
  "Verdict with the exclusions: {1}; without them: {2}.": "Bewertung mit den Ausschlüssen: {1}; ohne sie: {2}.",
  "without exclusions: {1}": "ohne Ausschlüsse: {1}",
  "What the week says about a longer time": "Was die Woche über eine längere Zeit sagt",
  "Intervals of 95 % confidence, for information": "Intervalle mit 95 % Vertrauensniveau, zur Information",
  "Of the values at the required share and of the share outside, as if the values were independent of one another. Successive intervals are not, so the truth spreads wider. The standard's verdict is about the measured week itself and rests on none of this; whether missing intervals could turn that verdict is said by “robust”. The worst phase of each requirement; results.json holds all.":
    "Für die Werte beim geforderten Anteil und für den Anteil außerhalb, als wären die Werte voneinander unabhängig. Aufeinanderfolgende Intervalle sind das nicht, daher streut die Wirklichkeit weiter. Die Bewertung nach der Norm betrifft die gemessene Woche selbst und beruht auf nichts hiervon; ob fehlende Intervalle diese Bewertung ändern könnten, sagt „robust“. Die ungünstigste Phase jeder Anforderung; results.json enthält alle.",
  "Low value": "Unterer Wert",
  "High value": "Oberer Wert",
  "Share outside": "Anteil außerhalb",
  "from {1}, open above": "ab {1}, nach oben offen",
  open: "offen",
  "up to {1}, open below": "bis {1}, nach unten offen",
  "{1} to {2} %": "{1} bis {2} %",
  "If the voltage were higher or lower": "Wenn die Spannung höher oder niedriger wäre",
  "An estimate, no part of the verdict: every value is moved by the same number of volts. In truth a tap changes the voltage in proportion and all phases about alike, loads and feed-in react to it, a regulator elsewhere may act against it, and which taps there are only the operator of the transformer knows.":
    "Eine Abschätzung, kein Teil der Bewertung: Jeder Wert wird um dieselbe Anzahl Volt verschoben. In Wirklichkeit ändert eine Transformatorstufe die Spannung verhältnisgleich und alle Phasen ungefähr gleich, Lasten und Einspeisung reagieren darauf, ein Regler an anderer Stelle kann dagegen wirken, und welche Stufen es gibt, weiß nur der Betreiber des Transformators.",
  "The steps are the usual ones of distribution transformers; common practice, no source (setup: voltageSteps names others).":
    "Die Stufen sind die üblichen von Verteiltransformatoren; übliche Praxis, keine Quelle (Setup: voltageSteps nennt andere).",
  "all phases": "alle Phasen",
  any: "beliebig",
  "too little is valid": "zu wenig ist gültig",
  "shift in V": "Verschiebung in V",
  "Shifts that keep every limit of the supply voltage":
    "Verschiebungen, die jeden Grenzwert der Versorgungsspannung einhalten",
  "as recorded": "wie aufgezeichnet",
  "up to {1}": "bis {1}",
  "from {1} up": "ab {1}",
  "The recording is shorter than a week: this is a hint, not an answer for a week.":
    "Die Aufzeichnung ist kürzer als eine Woche: Dies ist ein Hinweis, keine Antwort für eine Woche.",
  "It holds for each complete week by itself.": "Dies gilt für jede vollständige Woche für sich.",
  "Too little of the voltage from {1} is valid to say which shift would keep its limits.":
    "Zu wenig der Spannung vom {1} ist gültig, um zu sagen, welche Verschiebung ihre Grenzwerte einhalten würde.",
  "No shift of all phases together would have kept the limits of the supply voltage from {1}.":
    "Keine gemeinsame Verschiebung aller Phasen hätte die Grenzwerte der Versorgungsspannung vom {1} eingehalten.",
  "From {1} the supply voltage kept its limits as recorded; it would have kept them with all phases shifted by {2}.":
    "Vom {1} hielt die Versorgungsspannung ihre Grenzwerte wie aufgezeichnet ein; sie hätte sie auch eingehalten, wenn alle Phasen um {2} verschoben gewesen wären.",
  "The limits of the supply voltage from {1} would have been kept with all phases shifted by {2}.":
    "Die Grenzwerte der Versorgungsspannung vom {1} wären eingehalten worden, wenn alle Phasen um {2} verschoben gewesen wären.",
  "None of the steps looked at would have done.": "Keine der betrachteten Stufen hätte genügt.",
  "Of the steps looked at {1} would have done.": "Von den betrachteten Stufen hätte {1} genügt.",
  "Of the steps looked at {1} would each have done.": "Von den betrachteten Stufen hätten {1} jeweils genügt.",
  "Each phase by itself: {1}.": "Jede Phase für sich: {1}.",
  "No shift of all phases together keeps the limits of the supply voltage":
    "Keine gemeinsame Verschiebung aller Phasen hält die Grenzwerte der Versorgungsspannung ein",
  "All phases keep the limits of the supply voltage when shifted by {1}":
    "Alle Phasen halten die Grenzwerte der Versorgungsspannung ein, wenn sie verschoben werden um {1}",
  "Bars: shifts with which every limit of the supply voltage would have been kept, cut off at the edges of the picture. Dashed: the voltage as recorded and the steps looked at. An estimate.":
    "Balken: Verschiebungen, mit denen jeder Grenzwert der Versorgungsspannung eingehalten worden wäre, an den Bildrändern abgeschnitten. Gestrichelt: die Spannung wie aufgezeichnet und die betrachteten Stufen. Eine Abschätzung.",
  "Any ten minutes beside the fixed ones": "Beliebige zehn Minuten neben den festen",
  "Generators in low-voltage networks switch off when the mean over the last ten minutes, taken anew every few seconds, passes 110 % of the declared voltage (EN 50549-1, from memory). EN 50160 counts fixed intervals of the clock. So a plant can switch off at a voltage that no fixed value shows; no part of the verdict.":
    "Erzeugungsanlagen in Niederspannungsnetzen schalten ab, wenn der Mittelwert der letzten zehn Minuten, alle paar Sekunden neu gebildet, 110 % der vereinbarten Versorgungsspannung überschreitet (EN 50549-1, aus dem Gedächtnis). EN 50160 zählt feste Intervalle der Uhr. Eine Anlage kann also bei einer Spannung abschalten, die kein fester Wert zeigt; kein Teil der Bewertung.",
  "Each time above the limit": "Jede Zeit über dem Grenzwert",
  "Moves on by": "Rückt vor um",
  "Ten minutes to": "Zehn Minuten bis",
  "Times above": "Male darüber",
  Longest: "Längste Dauer",
  "Not in fixed": "Nicht in festen",
  Begins: "Beginn",
  Lasts: "Dauer",
  "A fixed value above": "Ein fester Wert darüber",
  "{1}: the log holds neither shorter intervals than ten minutes nor extremes inside them, so it cannot be told how high the mean over any other ten minutes was.":
    "{1}: Die Messdaten enthalten weder kürzere Intervalle als zehn Minuten noch Extremwerte darin; daher lässt sich nicht sagen, wie hoch der Mittelwert über andere zehn Minuten war.",
  "{1}: the mean over any ten minutes never passed {2}; it reached {3}.":
    "{1}: Der Mittelwert über beliebige zehn Minuten überschritt {2} nie; er erreichte {3}.",
  "{1}: the mean over any ten minutes passed {2} once and reached {3}":
    "{1}: Der Mittelwert über beliebige zehn Minuten überschritt {2} einmal und erreichte {3}",
  "{1}: the mean over any ten minutes passed {2} {3} times and reached {4}":
    "{1}: Der Mittelwert über beliebige zehn Minuten überschritt {2} {3}-mal und erreichte {4}",
  "{1}; a fixed value shows it each time.": "{1}; ein fester Wert zeigt es jedes Mal.",
  "{1}; one of these times no fixed value shows.": "{1}; eines dieser Male zeigt kein fester Wert.",
  "{1}; {2} of these times no fixed value shows.": "{1}; {2} dieser Male zeigt kein fester Wert.",
  "{1}: by the extremes inside the fixed intervals the mean over any ten minutes was at most {2}, so it cannot have passed {3}.":
    "{1}: Nach den Extremwerten innerhalb der festen Intervalle betrug der Mittelwert über beliebige zehn Minuten höchstens {2}; er kann {3} also nicht überschritten haben.",
  "{1}: by the extremes inside the fixed intervals the mean over any ten minutes was at most {2} (around {3})":
    "{1}: Nach den Extremwerten innerhalb der festen Intervalle betrug der Mittelwert über beliebige zehn Minuten höchstens {2} (etwa {3})",
  "{1}; beyond what the fixed values show it cannot have passed {2}.":
    "{1}; über das hinaus, was die festen Werte zeigen, kann er {2} nicht überschritten haben.",
  "{1}; once it can have passed {2} between two fixed values that did not.":
    "{1}; einmal kann er {2} zwischen zwei festen Werten überschritten haben, die selbst nicht darüber lagen.",
  "{1}; {2} times it can have passed {3} between two fixed values that did not.":
    "{1}; {2}-mal kann er {3} zwischen zwei festen Werten überschritten haben, die selbst nicht darüber lagen.",
  "any ten minutes: {1}": "beliebige zehn Minuten: {1}",
};
