/** Titles, axes and notes of charts. */
export const CHARTS: Readonly<Record<string, string>> = {
  "{1} % of {2}": "{1} % von {2}",
  event: "Ereignis",
  "{1} at {2}": "{1} bei {2}",
  "{1}, order {2}": "{1}, Ordnung {2}",
  "{1} in {2}": "{1} in {2}",
  "time, {1}": "Zeit, {1}",
  "{1}: every value of the whole recording lay within the limit ({2}); found {3}":
    "{1}: Jeder Wert der gesamten Aufzeichnung lag innerhalb des Grenzwerts ({2}); gefunden {3}",
  "{1}: every value lay within the limit ({2}); found {3}":
    "{1}: Jeder Wert lag innerhalb des Grenzwerts ({2}); gefunden {3}",
  "The {1} was {2} in {3} of {4} intervals of the whole recording":
    "{1} lag in {3} von {4} Intervallen der gesamten Aufzeichnung {2}",
  "The {1} was {2} in {3} of {4} intervals": "{1} lag in {3} von {4} Intervallen {2}",
  "{1} was {2} in {3} of {4} intervals of the whole recording":
    "{1} lag in {3} von {4} Intervallen der gesamten Aufzeichnung {2}",
  "{1} was {2} in {3} of {4} intervals": "{1} lag in {3} von {4} Intervallen {2}",
  "{1}, mostly between {2} and {3}": "{1}, meist zwischen {2} und {3}",
  "{1} to {2}": "{1} bis {2}",
  "{1} for {2} ({3})": "{1} für {2} ({3})",
  "{1} for {2} ({3}, unconfirmed)": "{1} für {2} ({3}, unbestätigt)",
  "No limit judged.": "Kein Grenzwert beurteilt.",
  "Limits: {1}.": "Grenzwerte: {1}.",
  "{1} for {2} ({3}), set for values of {4}": "{1} für {2} ({3}), festgelegt für Werte über {4}",
  "Dashed, for orientation: {1}. Values of {2} are not judged by it.":
    "Gestrichelt, zur Orientierung: {1}. Werte über {2} werden danach nicht beurteilt.",
  "Values of {1}, number of valid ones: {2}.": "Werte über {1}, Anzahl der gültigen: {2}.",
  "{1} to {2} ({3}).": "{1} bis {2} ({3}).",
  "Each point of the line is the mean of {1} intervals, the pale band their extremes.":
    "Jeder Punkt der Linie ist der Mittelwert von {1} Intervallen, das blasse Band zeigt deren Extremwerte.",
  "Pale band: lowest and highest value inside each interval.":
    "Blasses Band: niedrigster und höchster Wert innerhalb jedes Intervalls.",
  "The band reaches from {1} to {2}; the picture cuts it off.":
    "Das Band reicht von {1} bis {2}; das Bild schneidet es ab.",
  "Triangles: intervals outside the limit.": "Dreiecke: Intervalle außerhalb des Grenzwerts.",
  "Grey fields: excluded spans; what lies in them is drawn but not counted.":
    "Graue Felder: ausgeschlossene Zeiträume; was darin liegt, ist gezeichnet, aber nicht gezählt.",
  "The clock was changed in this time; the axis keeps {1} throughout.":
    "In dieser Zeit wurde die Uhr umgestellt; die Achse behält durchgehend {1}.",
  "Dotted: complaints (C) and comments (N). {1}.": "Gepunktet: Beschwerden (C) und Bemerkungen (N). {1}.",
  "{1} for values of {2}": "{1} für Werte über {2}",
  "share of intervals at or below the value, in %": "Anteil der Intervalle bis zu diesem Wert, in %",
  "How often which value occurred": "Häufigkeit der Werte",
  "No interval of the whole recording lay outside the limit ({1})":
    "Kein Intervall der gesamten Aufzeichnung lag außerhalb des Grenzwerts ({1})",
  "No interval lay outside the limit ({1})": "Kein Intervall lag außerhalb des Grenzwerts ({1})",
  "On {1}, {2} of the intervals of the whole recording lay {3}":
    "{1}: {2} der Intervalle der gesamten Aufzeichnung lagen {3}",
  "On {1}, {2} of the intervals lay {3}": "{1}: {2} der Intervalle lagen {3}",
  "none may": "zulässig ist keines",
  "more than the {1} allowed": "mehr als die zulässigen {1}",
  "not more than the {1} allowed": "nicht mehr als die zulässigen {1}",
  "of a day {1} may": "zulässig sind {1} eines Tages",
  "of a week {1} may": "zulässig sind {1} einer Woche",
  "of a year {1} may": "zulässig sind {1} eines Jahres",
  "Judged is each day by itself.": "Beurteilt wird jeder Tag für sich.",
  "Judged is each week by itself.": "Beurteilt wird jede Woche für sich.",
  "Judged is each year by itself.": "Beurteilt wird jedes Jahr für sich.",
  "The curves must not cross the black bars: too many values would lie beyond the limit. Values too high and too low count together.":
    "Die Kurven dürfen die schwarzen Balken nicht kreuzen: Sonst lägen zu viele Werte jenseits des Grenzwerts. Zu hohe und zu niedrige Werte zählen zusammen.",
  "none outside": "keine außerhalb",
  "together at most\n{1} outside": "zusammen höchstens\n{1} außerhalb",
  "none\nabove {1}": "keine\nüber {1}",
  "at most {1}\nabove {2}": "höchstens {1}\nüber {2}",
  "none\nbelow {1}": "keine\nunter {1}",
  "at most {1}\nbelow {2}": "höchstens {1}\nunter {2}",
  "Harmonic voltages by order": "Oberschwingungsspannungen nach Ordnung",
  "harmonic order": "Ordnung der Oberschwingung",
  order: "Ordnung",
  phase: "Phase",
  "limit in {1}": "Grenzwert in {1}",
  "Harmonic order {1} above the limit on {2}": "Oberschwingung der Ordnung {1} über dem Grenzwert an {2}",
  "Harmonic orders {1} above the limit on {2}": "Oberschwingungen der Ordnungen {1} über dem Grenzwert an {2}",
  "Order {1} on {2} reached {3} of its limit, but no harmonic order could be judged to fail; the table says why":
    "Ordnung {1} an {2} erreichte {3} ihres Grenzwerts, doch keine Ordnung der Oberschwingungen konnte als nicht eingehalten beurteilt werden; die Tabelle sagt, warum",
  "No harmonic order was judged above its limit; the nearest, order {1} on {2}, reached {3} of its limit":
    "Keine Ordnung der Oberschwingungen wurde als über ihrem Grenzwert beurteilt; die nächste, Ordnung {1} an {2}, erreichte {3} ihres Grenzwerts",
  "{1} values per order and phase, {2} each, {3}.": "{1} Werte je Ordnung und Phase, über je {2}, {3}.",
  "Shown is the value that {1} do not exceed; the verdict comes from counting. Short bars: the limit of each order ({2}).":
    "Gezeigt ist der Wert, der in {1} nicht überschritten wird; die Bewertung beruht auf der Zählung. Kurze Striche: der Grenzwert jeder Ordnung ({2}).",
  "Limits unconfirmed for order {1}.": "Grenzwerte unbestätigt für Ordnung {1}.",
  "Limits unconfirmed for orders {1}.": "Grenzwerte unbestätigt für die Ordnungen {1}.",
  "hour of the day ({1})": "Stunde des Tages ({1})",
  "the supply": "Versorgung",
  "spread over the day": "über den Tag verteilt",
  "mostly between {1} and {2}": "meist zwischen {1} und {2}",
  "Intervals of the whole recording outside the limit on {1}: {2}":
    "{1}: Intervalle der gesamten Aufzeichnung außerhalb des Grenzwerts {2}",
  "Intervals outside the limit on {1}: {2}": "{1}: Intervalle außerhalb des Grenzwerts {2}",
  "each hour": "Stunde",
  "each {1} hours": "{1} Stunden",
  "Largest deviation of {1} of the whole recording: none outside the limit":
    "Größte Abweichung je {1} der gesamten Aufzeichnung: keine außerhalb des Grenzwerts",
  "Largest deviation of {1}: none outside the limit": "Größte Abweichung je {1}: keine außerhalb des Grenzwerts",
  "Highest value of {1} of the whole recording on {2}: none outside the limit":
    "{2}, höchster Wert je {1} der gesamten Aufzeichnung: keiner außerhalb des Grenzwerts",
  "Highest value of {1} on {2}: none outside the limit": "{2}, höchster Wert je {1}: keiner außerhalb des Grenzwerts",
  "Each cell is {1} on {2} ({3}); the number is {4}.": "Jedes Feld: {1}, {2} ({3}); die Zahl: {4}.",
  "Empty cells: no valid data, or no such hour (clock change).":
    "Leere Felder: keine gültigen Daten oder keine solche Stunde (Zeitumstellung).",
  "Empty cells: no valid data.": "Leere Felder: keine gültigen Daten.",
  "one hour of one day of the week": "eine Stunde eines Wochentags",
  "one hour of one day": "eine Stunde eines Tages",
  "{1} hours of one day of the week": "{1} Stunden eines Wochentags",
  "{1} hours of one day": "{1} Stunden eines Tages",
  "how many intervals lay outside the limit; darker is more":
    "Anzahl der Intervalle außerhalb des Grenzwerts; dunkler bedeutet mehr",
  "the largest deviation from the nominal frequency in mHz; darker is more":
    "größte Abweichung von der Nennfrequenz in mHz; dunkler bedeutet mehr",
  "the highest value; darker is higher": "höchster Wert; dunkler bedeutet höher",
  "the highest value in {1}; darker is higher": "höchster Wert in {1}; dunkler bedeutet höher",
  day: "Tag",
  hour: "Stunde",
  value: "Wert",
  "Harmonic voltages by order, as measured": "Oberschwingungsspannungen nach Ordnung, wie gemessen",
  "Interharmonic voltages by order, as measured": "Zwischenharmonische Spannungen nach Ordnung, wie gemessen",
  "harmonic order below the interharmonic group":
    "Ordnung der Oberschwingung unterhalb der zwischenharmonischen Gruppe",
  "Harmonic currents by order, as measured": "Oberschwingungsströme nach Ordnung, wie gemessen",
  "harmonic order (the fundamental is left out)": "Ordnung der Oberschwingung (ohne Grundschwingung)",
  "The mean harmonic voltage nearest to its limit was that of order {1} on {2}: {3}, with a limit of {4}; no verdict on a week is meant":
    "Die mittlere Oberschwingungsspannung, die ihrem Grenzwert am nächsten kam, war die der Ordnung {1} an {2}: {3}, bei einem Grenzwert von {4}; eine Bewertung einer Woche ist damit nicht gemeint",
  "The highest mean harmonic voltage was that of order {1} on {2}: {3}":
    "Die höchste mittlere Oberschwingungsspannung war die der Ordnung {1} an {2}: {3}",
  "The highest mean harmonic current was that of order {1} on {2}: {3}":
    "Der höchste mittlere Oberschwingungsstrom war der der Ordnung {1} an {2}: {3}",
  "The highest mean interharmonic voltage was that below the fundamental on {1}: {2}":
    "Die höchste mittlere zwischenharmonische Spannung war die unterhalb der Grundschwingung an {1}: {2}",
  "The highest mean interharmonic voltage was that between orders {1} and {2} on {3}: {4}":
    "Die höchste mittlere zwischenharmonische Spannung war die zwischen den Ordnungen {1} und {2} an {3}: {4}",
  "Values per order and phase: {1}, {2}, from the {3} recorded.":
    "Werte je Ordnung und Phase: {1}, über je {2}, aus den aufgezeichneten {3}.",
  "Symbol: mean; thin line: up to the highest value, also during events.":
    "Zeichen: Mittelwert; dünne Linie: bis zum höchsten Wert, auch während Ereignissen.",
  "No limit is judged.": "Kein Grenzwert wird beurteilt.",
  "Short bars: the limits ({1}), which hold for {2} and values of {3}; they are drawn for orientation, and nothing is counted by them here.":
    "Kurze Striche: die Grenzwerte ({1}), die für {2} und Werte über {3} gelten; sie sind zur Orientierung gezeichnet, und hier wird nicht danach gezählt.",
};
