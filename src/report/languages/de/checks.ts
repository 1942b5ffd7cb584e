/** Findings on the recording. */
export const CHECKS: Readonly<Record<string, string>> = {
  "The calibration of the instrument was due on {1}, and the recording ran until {2}; the stated uncertainty holds only if a later calibration finds the instrument unchanged.":
    "Die Kalibrierung des Messgeräts war am {1} fällig, und die Aufzeichnung lief bis {2}; die angegebene Messunsicherheit gilt nur, wenn eine spätere Kalibrierung das Messgerät unverändert findet.",
  "The instrument was calibrated on {1}, after the recording began on {2}; add an earlier certificate, or that nothing was adjusted in between.":
    "Das Messgerät wurde am {1} kalibriert, nach dem Beginn der Aufzeichnung am {2}; einen früheren Kalibrierschein ergänzen oder die Angabe, dass dazwischen nichts justiert wurde.",
  "the range of the current sensor ended there, unless an inverter or a load limits its current at just that value; true values may be higher, so repeat with a larger range":
    "dort endete der Messbereich des Stromsensors, es sei denn, ein Wechselrichter oder eine Last begrenzt den Strom genau auf diesen Wert; die wahren Werte können höher sein; mit einem größeren Messbereich wiederholen",
  "the measuring range ended there, unless a regulator holds the voltage at just that value; true values may be higher, so check the range of the input":
    "dort endete der Messbereich, es sei denn, ein Regler hält die Spannung genau auf diesem Wert; die wahren Werte können höher sein; den Messbereich des Eingangs prüfen",
  "The highest value of {1}, {2}, stands in {3} of {4} rows ({5}), first at {6}, the next {7} lower values together in {8}; {9}.":
    "{1}: Der höchste Wert, {2}, steht in {3} von {4} Zeilen ({5}), zuerst am {6}; die nächsten {7} niedrigeren Werte stehen zusammen in {8}; {9}.",
  "{1} could not be placed, as their stamps fall into the hour that the clocks of {2} repeat or leave out; they are left out and count as missing; if the recorder's clock does not follow that zone give its own with --zone, a fixed offset such as +01:00 for a clock that stays on winter time.":
    "{1} konnte nicht zugeordnet werden, weil der Zeitstempel in die Stunde fällt, die die Uhren von {2} wiederholen oder auslassen; diese Angaben sind ausgelassen und zählen als fehlend. Folgt die Uhr des Aufzeichnungsgeräts dieser Zone nicht, ihre eigene mit --zone angeben, etwa einen festen Versatz wie +01:00 für eine Uhr, die auf Winterzeit bleibt.",
  "the clocks of {1} changed by {2} at {3}": "die Uhren von {1} wurden am {3} um {2} umgestellt",
  "if the recorder's clock does not follow {1}, give its own zone with --zone, a fixed offset such as +01:00 for a clock that stays on winter time":
    "folgt die Uhr des Aufzeichnungsgeräts nicht {1}, ihre eigene Zone mit --zone angeben, etwa einen festen Versatz wie +01:00 für eine Uhr, die auf Winterzeit bleibt",
  "The log has a gap of {1} at {2}, and {3}; most likely the recorder's clock did not change and times on one side are off by as much, unless it was really without supply for just that time; {4}.":
    "Die Messdaten haben eine Lücke von {1} am {2}, und {3}; höchstwahrscheinlich wurde die Uhr des Aufzeichnungsgeräts nicht umgestellt, und die Zeiten auf einer Seite sind um ebenso viel falsch, es sei denn, das Gerät war genau in dieser Zeit wirklich ohne Versorgung; {4}.",
  "From {1} the log holds {2} twice with different values, and {3}; most likely the recorder's clock changed at another time or not at all, unless files of two recorders were mixed; {4}.":
    "Ab {1} enthalten die Messdaten {2} doppelt mit verschiedenen Werten, und {3}; höchstwahrscheinlich wurde die Uhr des Aufzeichnungsgeräts zu einer anderen Zeit oder gar nicht umgestellt, es sei denn, Dateien zweier Aufzeichnungsgeräte wurden vermischt; {4}.",
  "In the recording {1}, and the stamps follow; intervals are counted in UTC, so no hour is missing or counted twice.":
    "Während der Aufzeichnung gilt: {1}, und die Zeitstempel folgen dem; Intervalle werden in UTC gezählt, daher fehlt keine Stunde, und keine zählt doppelt.",
  "In the recording {1}, but the stamps show nothing of it; the recorder's clock may not have changed, so that times on one side are off by as much, or nothing was logged just then; {2}.":
    "Während der Aufzeichnung gilt: {1}, aber die Zeitstempel zeigen nichts davon; die Uhr des Aufzeichnungsgeräts wurde möglicherweise nicht umgestellt, sodass die Zeiten auf einer Seite um ebenso viel falsch sind, oder es wurde gerade dann nichts aufgezeichnet; {2}.",
  "The log has a gap of one hour at {1} and its zone was only assumed ({2}); this may be the change to summer time, after which all times are off by an hour, or the recorder was without supply for an hour; give --zone.":
    "Die Messdaten haben am {1} eine Lücke von einer Stunde, und ihre Zeitzone wurde nur angenommen ({2}); das kann die Umstellung auf Sommerzeit sein, nach der alle Zeiten um eine Stunde falsch sind, oder das Aufzeichnungsgerät war eine Stunde ohne Versorgung; --zone angeben.",
  "From {1} the log holds one hour twice with different values, and its zone was only assumed ({2}); this may be the change to winter time, or files of two recorders were mixed; give --zone so that the repeated hour can be placed.":
    "Ab {1} enthalten die Messdaten eine Stunde doppelt mit verschiedenen Werten, und ihre Zeitzone wurde nur angenommen ({2}); das kann die Umstellung auf Winterzeit sein, oder Dateien zweier Aufzeichnungsgeräte wurden vermischt; --zone angeben, damit die wiederholte Stunde zugeordnet werden kann.",
  "The clock of the log steps {1}, first at {2}, farthest by {3} s at {4}; a recorder that restarts or whose clock is set does that; the interval at a step is not of full length and all times on one side of it may be off by as much, so compare the clock with a reference before you rely on times.":
    "Die Uhr der Messdaten springt {1}, zuerst am {2}, am weitesten um {3} s, und zwar am {4}; das geschieht, wenn ein Aufzeichnungsgerät neu startet oder seine Uhr gestellt wird; das Intervall an einem Sprung hat nicht die volle Länge, und alle Zeiten auf einer Seite können um ebenso viel falsch sein; vor dem Verwenden von Zeiten die Uhr mit einer Referenz vergleichen.",
  "that is the factor of a wrong voltage transformer ratio or a misplaced decimal point, so give voltageRatio in the setup, or --declared":
    "das ist der Faktor eines falschen Spannungswandlerverhältnisses oder eines verschobenen Dezimalzeichens; voltageRatio im Setup oder --declared angeben",
  "that is the factor between V and kV or mV and V, so state the unit of the voltage columns in the setup, or give --declared in volts":
    "das ist der Faktor zwischen V und kV oder mV und V; die Einheit der Spannungsspalten im Setup angeben oder --declared in Volt",
  "that is √3 and the declared voltage seems to be phase to neutral, so give it phase to phase: --declared {1}":
    "das ist √3, und die vereinbarte Versorgungsspannung scheint gegen den Neutralleiter angegeben zu sein; sie zwischen den Außenleitern angeben: --declared {1}",
  "that is √3 and the log seems to hold voltages between phases, so give --connection delta and the declared voltage between phases: --declared {1}":
    "das ist √3, und die Messdaten scheinen Außenleiterspannungen zu enthalten; --connection delta und die vereinbarte Versorgungsspannung zwischen den Außenleitern angeben: --declared {1}",
  "that is 1/√3 and the log seems to hold voltages to neutral, so give --connection star and the declared voltage to neutral: --declared {1}":
    "das ist 1/√3, und die Messdaten scheinen Spannungen gegen den Neutralleiter zu enthalten; --connection star und die vereinbarte Versorgungsspannung gegen den Neutralleiter angeben: --declared {1}",
  "that is 1/√3 and the declared voltage seems to be phase to phase, so give it to neutral: --declared {1}":
    "das ist 1/√3, und die vereinbarte Versorgungsspannung scheint zwischen den Außenleitern angegeben zu sein; sie gegen den Neutralleiter angeben: --declared {1}",
  "that is near {1} V, a secondary voltage of voltage transformers, so give their ratio as voltageRatio in the setup, such as {2}/{3}":
    "das liegt nahe {1} V, einer Sekundärspannung von Spannungswandlern; deren Verhältnis als voltageRatio im Setup angeben, etwa {2}/{3}",
  "{1} s": "{1} s",
  "{1} d": "{1} d",
  "{1} h": "{1} h",
  "{1} min": "{1} min",
  "1 row": "1 Zeile",
  "{1} rows": "{1} Zeilen",
  "1 interval": "1 Intervall",
  "{1} intervals": "{1} Intervalle",
  "1 day": "1 Tag",
  "{1} days": "{1} Tagen",
  "1 time": "1-mal",
  "{1} times": "{1}-mal",
  "1 gap": "1 Lücke",
  "{1} gaps": "{1} Lücken",
  "1 run": "1 Folge",
  "{1} runs": "{1} Folgen",
  "{1} and {2}": "{1} und {2}",
  "leave any work on live parts to a licensed electrician or the network operator, under the local codes":
    "alle Arbeiten an unter Spannung stehenden Teilen einer zugelassenen Elektrofachkraft oder dem Netzbetreiber überlassen, nach den örtlichen Vorschriften",
  "{1} reads {2} V in the median, {3} of {4} V, while another phase has voltage; its lead was not connected, a fuse in it is open or the phase was not in service, so nothing measured on it is judged; check the connection and record again, and {5}.":
    "{1}: Der Median beträgt {2} V, {3} von {4} V, während eine andere Phase Spannung führt; ihre Messleitung war nicht angeschlossen, eine Sicherung darin ist offen, oder die Phase war nicht in Betrieb; daher wird nichts beurteilt, was an ihr gemessen wurde; den Anschluss prüfen und erneut aufzeichnen, und {5}.",
  "both its inputs carry the same phase, or a phase was out of supply":
    "ihre beiden Eingänge führen dieselbe Phase, oder eine Phase war ohne Versorgung",
  "this is a real outage of one phase, which counts, or a lead that came off, which should not":
    "das ist ein wirklicher Ausfall einer Phase, der zählt, oder eine abgefallene Messleitung, die nicht zählen sollte",
  "{1} lies below {2} V for {3} ({4} of {5} rows), first at {6}, while another phase has voltage; {7}; find out which, and {8}.":
    "{1} liegt {3} lang unter {2} V ({4} von {5} Zeilen), zuerst am {6}, während eine andere Phase Spannung führt; {7}; klären, was zutrifft, und {8}.",
  "The median of the measured voltages is {1} V, {2} of the declared {3} V":
    "Der Median der gemessenen Spannungen beträgt {1} V, {2} der vereinbarten {3} V",
  "that is the nominal voltage {1} V, so give it with --declared if it is the one of this supply":
    "das ist die Nennspannung {1} V; sie mit --declared angeben, wenn sie die dieser Versorgung ist",
  "give --declared, --connection or, for voltage transformers, voltageRatio in the setup":
    "--declared, --connection oder, bei Spannungswandlern, voltageRatio im Setup angeben",
  "no supply in service is there; {1}": "dort liegt keine Versorgung in Betrieb; {1}",
  "{1}; half of all values lie beyond what a supply should ever reach, so either the supply is very bad or the declared voltage is not that of this point; check it, and {2}.":
    "{1}; die Hälfte aller Werte liegt jenseits dessen, was eine Versorgung je erreichen sollte; also ist entweder die Versorgung sehr schlecht, oder die vereinbarte Versorgungsspannung ist nicht die dieser Stelle; prüfen und {2}.",
  "{1}, which is nearer to the nominal voltage {2} V; the transformer's tap may be set high or low, but if {3} V is the declared voltage of this supply its limits are others, so give it with --declared.":
    "{1}, was näher an der Nennspannung {2} V liegt; die Stufe des Transformators kann hoch oder niedrig eingestellt sein; ist aber {3} V die vereinbarte Versorgungsspannung, so gelten andere Grenzwerte; sie dann mit --declared angeben.",
  "{1}; {2}; until then the voltage is not judged.": "{1}; {2}; bis dahin wird die Spannung nicht beurteilt.",
  "1 row repeats an interval already logged, with the same values; overlapping read-outs do that, and each interval was counted once.":
    "1 Zeile wiederholt ein bereits aufgezeichnetes Intervall mit denselben Werten; das kommt von sich überschneidenden Auslesungen, und jedes Intervall wurde einmal gezählt.",
  "{1} rows repeat intervals already logged, with the same values; overlapping read-outs do that, and each interval was counted once.":
    "{1} Zeilen wiederholen bereits aufgezeichnete Intervalle mit denselben Werten; das kommt von sich überschneidenden Auslesungen, und jedes Intervall wurde einmal gezählt.",
  "For {1}, the first at {2}, the log holds rows with different values; the clock may have been set back, an hour of a clock change repeated, or files of two recorders mixed; the disagreeing values count as missing, so find out which rows are right and leave the others out.":
    "Für {1}, das erste am {2}, enthalten die Messdaten Zeilen mit verschiedenen Werten; die Uhr kann zurückgestellt, eine Stunde einer Zeitumstellung wiederholt oder Dateien zweier Aufzeichnungsgeräte vermischt worden sein; die widersprüchlichen Werte zählen als fehlend; klären, welche Zeilen richtig sind, und die anderen weglassen.",
  "The first {1} is {2} at {3}, the median of the next {4} only {5}; a flickermeter that had not settled reads too high at its start, but switching when the recorder was connected looks the same; it counts as logged, so name it if Plt of the first two hours decides.":
    "{1}: Der erste Wert am {3} beträgt {2}, der Median der nächsten {4} nur {5}; ein noch nicht eingeschwungenes Flickermeter zeigt am Anfang zu hohe Werte, aber Schalthandlungen beim Anschließen des Aufzeichnungsgeräts sehen ebenso aus; der Wert zählt wie aufgezeichnet; ihn daher nennen, wenn Plt der ersten zwei Stunden entscheidet.",
  "All {1} values of the power frequency are {2} Hz to the last digit ({3} Hz), where a large grid spreads by 10 to 25 mHz in a day; the recorder seems not to have measured it, unless the point is fed by an inverter of constant frequency, which is no public supply; the frequency is not judged, so switch its measurement on and record again.":
    "Alle {1} Werte der Netzfrequenz betragen bis auf die letzte Stelle ({3} Hz) {2} Hz, während sie in einem großen Netz an einem Tag um 10 bis 25 mHz streut; das Aufzeichnungsgerät hat sie anscheinend nicht gemessen, es sei denn, die Stelle wird von einem Wechselrichter mit fester Frequenz gespeist, was keine öffentliche Versorgung ist; die Frequenz wird nicht beurteilt; ihre Messung einschalten und erneut aufzeichnen.",
  "The power frequency is {1} Hz to the last digit for {2} ({3} values) from {4}; a grid never stands still that long, so the recorder may have held its last value or an inverter may have fed the point; look at what else was logged then.":
    "Die Netzfrequenz beträgt bis auf die letzte Stelle {1} Hz, und zwar {2} lang ({3} Werte) ab {4}; ein Netz steht nie so lange still; das Aufzeichnungsgerät kann seinen letzten Wert gehalten oder ein Wechselrichter die Stelle gespeist haben; prüfen, was damals sonst aufgezeichnet wurde.",
  "In {1} of {2} the power frequency spreads by less than 1 mHz, least with {3} mHz in the day from {4}, where a large grid spreads by 10 to 25 mHz; an inverter or an uninterruptible supply may feed the point, or the values were not measured; check what was connected.":
    "An {1} von {2} streut die Netzfrequenz um weniger als 1 mHz, am wenigsten mit {3} mHz an dem Tag ab {4}, während sie in einem großen Netz um 10 bis 25 mHz streut; ein Wechselrichter oder eine unterbrechungsfreie Stromversorgung kann die Stelle speisen, oder die Werte wurden nicht gemessen; prüfen, was angeschlossen war.",
  " ({1} of {2} series)": " ({1} von {2} Reihen)",
  "The log has {1} in {2}{3}: {4} of {5} without values ({6}), the longest {7} from {8}; the recorder may have been without supply, switched off or read out with parts left out; nothing was filled in, so look for the missing part in the recorder or record again if the verdict is undecided.":
    "Die Messdaten haben {1} bei {2}{3}: {4} von {5} ohne Werte ({6}), die längste {7} ab {8}; das Aufzeichnungsgerät kann ohne Versorgung, ausgeschaltet oder nur teilweise ausgelesen worden sein; nichts wurde aufgefüllt; den fehlenden Teil im Aufzeichnungsgerät suchen oder erneut aufzeichnen, wenn die Bewertung nicht entschieden ist.",
  "The voltage of {1} lies above 115 % of the declared {2} V in {3}, at most {4} V ({5}) on {6} at {7} and for {8} on end; if the declared voltage and the connection are right this can destroy equipment and start fires, so disconnect sensitive equipment, call the network operator at once and {9}.":
    "Die Spannung von {1} liegt in {3} über 115 % der vereinbarten {2} V, höchstens bei {4} V ({5}) an {6} am {7}, und {8} lang ohne Unterbrechung; wenn die vereinbarte Versorgungsspannung und der Anschluss stimmen, kann das Geräte zerstören und Brände auslösen; empfindliche Geräte trennen, sofort den Netzbetreiber anrufen und {9}.",
  ", {1} of them in long stretches, the first from {2}": ", {1} davon in langen Abschnitten, der erste ab {2}",
  "these phases are not judged, so check the leads and the export":
    "diese Phasen werden nicht beurteilt; die Messleitungen und den Export prüfen",
  "check the leads and the export": "die Messleitungen und den Export prüfen",
  "The {1} agree to the last digit in {2} of {3} rows ({4}) although they change{5}; one lead was on two inputs, one column was exported twice, or the inputs were bridged on purpose in a single-phase supply; {6}, and {7}.":
    "{1} stimmen in {2} von {3} Zeilen ({4}) bis auf die letzte Stelle überein, obwohl sie sich ändern{5}; eine Messleitung lag auf zwei Eingängen, eine Spalte wurde zweimal exportiert, oder die Eingänge wurden bei einer einphasigen Versorgung absichtlich gebrückt; {6}, und {7}.",
  "The {1} are all but equal: correlation {2}, mean difference {3} between {4}; a well balanced medium-voltage supply or bridged inputs look like that, and so does one lead on two inputs; make sure that each input has its own phase.":
    "{1} sind fast gleich: Korrelation {2}, mittlerer Unterschied {3} zwischen {4}; so sehen eine gut symmetrische Mittelspannungsversorgung oder gebrückte Eingänge aus, ebenso eine Messleitung auf zwei Eingängen; sicherstellen, dass jeder Eingang seine eigene Phase hat.",
  "The {1}{2} is negative in {3}, at lowest {4}, which it cannot be; the logger may mark missing values so; these rows count as missing.":
    "{1}{2}: negativ in {3}, im Tiefstwert {4}, was nicht sein kann; das Aufzeichnungsgerät kennzeichnet möglicherweise so fehlende Werte; diese Zeilen zählen als fehlend.",
  " of order {1}": " der Ordnung {1}",
  "In 1 ten-minute interval": "In 1 Zehnminutenintervall",
  "In {1} ten-minute intervals": "In {1} Zehnminutenintervallen",
  "{1}, the first from {2}, all voltages lie below 5 % of the declared {3} V: the supply, or the recorder's leads, were interrupted; they count as outside the limits of the supply voltage here, although EN 50160 leaves interruptions out of the voltage variations (from memory), so take {4} off the numbers outside if the interruption is beyond doubt.":
    "{1}, das erste ab {2}, liegen alle Spannungen unter 5 % der vereinbarten {3} V: Die Versorgung oder die Messleitungen des Aufzeichnungsgeräts waren unterbrochen; diese Intervalle zählen hier als außerhalb der Grenzwerte der Versorgungsspannung, obwohl EN 50160 Unterbrechungen von den Spannungsänderungen ausnimmt (aus dem Gedächtnis); ist die Unterbrechung zweifelsfrei, {4} von den Anzahlen außerhalb abziehen.",
  "The log holds {1} every {2}, but the standard counts values of 10 min (Plt: 2 h), and a longer mean hides short excesses; such values are shown and not judged, so set the recorder to 10 min or less and record again.":
    "Die Messdaten enthalten {1} alle {2}, die Norm zählt aber Werte über 10 min (Plt: 2 h), und ein längerer Mittelwert verbirgt kurze Überschreitungen; solche Werte werden gezeigt und nicht beurteilt; das Aufzeichnungsgerät auf 10 min oder weniger einstellen und erneut aufzeichnen.",
  "as the setup says": "wie das Setup angibt",
  "as the log suggests": "wie die Messdaten nahelegen",
  "The log also holds {1} to neutral, which are not judged: the supply voltage is judged phase to phase, {2}; if the supply has a neutral that users are connected to, assess it with --connection star.":
    "Die Messdaten enthalten auch {1} gegen den Neutralleiter; diese Spannungen werden nicht beurteilt: Die Versorgungsspannung wird zwischen den Außenleitern beurteilt, {2}; hat die Versorgung einen Neutralleiter, an den Netznutzer angeschlossen sind, mit --connection star bewerten.",
  "1 event that the recorder listed": "1 vom Aufzeichnungsgerät gelistetes Ereignis",
  "{1} events that the recorder listed": "{1} vom Aufzeichnungsgerät gelistete Ereignisse",
  "{1} s of waveforms in {2}": "{1} s an Kurvenformen in {2}",
  "The log holds {1}: only what the recorder's own thresholds caught; that no other dip, swell or interruption occurred does not follow, so the events are shown and not counted against the standard; for a count, record without a break or with thresholds that are known.":
    "Die Messdaten enthalten {1}: nur was die eigenen Schwellen des Aufzeichnungsgeräts erfasst haben; daraus folgt nicht, dass es keine weiteren Einbrüche, Überhöhungen oder Unterbrechungen gab; daher werden die Ereignisse gezeigt und nicht gegen die Norm gezählt; für eine Zählung lückenlos oder mit bekannten Schwellen aufzeichnen.",
  "its time, duration, phase or voltage is not stated so that it can be relied on":
    "Zeit, Dauer, Phase oder Spannung ist nicht so angegeben, dass darauf Verlass ist",
  "Left out of {1} events that the recorder listed: {2}, as nothing in the waveforms shows them and the log does not say enough of them; the first is at {3} ({4}): {5}.":
    "Von {1} vom Aufzeichnungsgerät gelisteten Ereignissen ausgelassen: {2}, weil nichts in den Kurvenformen sie zeigt und die Messdaten nicht genug über sie sagen; das erste ist am {3} ({4}): {5}.",
  "without category": "ohne Kategorie",
  "The one event that is both listed by the recorder and found in its waveforms is not the same in both:":
    "Das eine Ereignis, das das Aufzeichnungsgerät gelistet hat und das auch in seinen Kurvenformen gefunden wurde, ist in beiden nicht gleich:",
  "Of {1} events that are both listed by the recorder and found in its waveforms, {2} are not the same in both:":
    "Von {1} Ereignissen, die das Aufzeichnungsgerät gelistet hat und die auch in seinen Kurvenformen gefunden wurden, in beiden nicht gleich: {2};",
  "they differ by up to {1} s in duration and {2} % of the declared voltage, the first at {3};":
    "sie unterscheiden sich um bis zu {1} s in der Dauer und {2} % der vereinbarten Versorgungsspannung, das erste am {3};",
  "{1} {2} what the waveforms show is used; the recorder may go by other thresholds, another nominal voltage or another definition.":
    "{1} {2} verwendet wird, was die Kurvenformen zeigen; das Aufzeichnungsgerät kann von anderen Schwellen, einer anderen Nennspannung oder einer anderen Definition ausgehen.",
  "minimum {1}": "Minimum {1}",
  "maximum {1}": "Maximum {1}",
  "the columns of mean, minimum and maximum seem to be mixed up, so name them in the setup (columns: statistic)":
    "die Spalten für Mittelwert, Minimum und Maximum scheinen vertauscht zu sein; sie im Setup benennen (columns: statistic)",
  "so few rows may come from a fault in the recorder or from editing, so compare them with the recorder":
    "so wenige Zeilen können von einem Fehler des Aufzeichnungsgeräts oder von einer Bearbeitung kommen; sie mit dem Aufzeichnungsgerät vergleichen",
  "In {1} of {2} rows ({3}) the mean of {4} lies outside its own extremes, farthest at {5} with {6} against {7}; {8}.":
    "{4}: In {1} von {2} Zeilen ({3}) liegt der Mittelwert außerhalb der eigenen Extremwerte, am weitesten am {5} mit {6} gegenüber {7}; {8}.",
  "The median of the power frequency is {1} Hz but the nominal frequency is taken as {2} Hz; the supply seems to be one of {3} Hz; until that is settled the frequency is not judged, so give nominalFrequency in the setup and a limit set for {4} Hz.":
    "Der Median der Netzfrequenz beträgt {1} Hz, als Nennfrequenz gilt aber {2} Hz; die Versorgung scheint eine mit {3} Hz zu sein; bis das geklärt ist, wird die Frequenz nicht beurteilt; nominalFrequency im Setup und einen Grenzwertsatz für {4} Hz angeben.",
  "For {1} ({2}) the voltages to neutral lie more than 8 % of {3} V apart, most at {4} with L1 {5} V, L2 {6} V and L3 {7} V":
    "{1} lang ({2}) liegen die Spannungen gegen den Neutralleiter mehr als 8 % von {3} V auseinander, am meisten am {4} mit L1 {5} V, L2 {6} V und L3 {7} V",
  "while the voltages between the phases agree within 2 % (zero-sequence voltage {1} V, {2} times the negative-sequence voltage)":
    "während die Außenleiterspannungen auf 2 % übereinstimmen (Spannung des Nullsystems {1} V, das {2}-fache der Spannung des Gegensystems)",
  "some phases rising while others fall; no voltages between the phases were logged, so the cause cannot be confirmed":
    "wobei einige Phasen steigen, während andere fallen; es wurden keine Außenleiterspannungen aufgezeichnet, daher lässt sich die Ursache nicht bestätigen",
  "{1}, {2}; {3}; {4}, and {5}.": "{1}, {2}; {3}; {4}, und {5}.",
  "the neutral of the supply is probably loose or broken, unless it was the recorder's own neutral lead":
    "der Neutralleiter der Versorgung ist wahrscheinlich lose oder unterbrochen, es sei denn, es war die eigene Neutralleiter-Messleitung des Aufzeichnungsgeräts",
  "the neutral of the supply may be loose or broken, unless the loads are very unequal or the recorder's own neutral lead was open":
    "der Neutralleiter der Versorgung kann lose oder unterbrochen sein, es sei denn, die Lasten sind sehr ungleich, oder die eigene Neutralleiter-Messleitung des Aufzeichnungsgeräts war offen",
  "unequal loads or feed-in on a line do that, but a neutral that grows loose begins like this too":
    "das kommt von ungleichen Lasten oder Einspeisung auf einer Leitung, aber ein sich lockernder Neutralleiter beginnt ebenso",
  "this is urgent, as voltages beyond 80 to 115 % destroy equipment and metal parts may become live: switch sensitive equipment off, keep away from metal parts of the installation, call the network operator at once":
    "dies ist dringend, da Spannungen jenseits von 80 bis 115 % Geräte zerstören und Metallteile unter Spannung geraten können: empfindliche Geräte abschalten, von Metallteilen der Installation fernhalten, sofort den Netzbetreiber anrufen",
  "have the network operator or a licensed electrician check the neutral soon, as a loose joint grows worse until it breaks":
    "den Neutralleiter bald vom Netzbetreiber oder einer zugelassenen Elektrofachkraft prüfen lassen, da eine lose Verbindung schlechter wird, bis sie bricht",
  "compare with the currents, and have the neutral checked if they do not explain it":
    "mit den Strömen vergleichen und den Neutralleiter prüfen lassen, wenn sie es nicht erklären",
  "The logged {1} disagrees with the cube mean of its twelve Pst in {2} of {3} cases ({4}), most in the two hours from {5} with {6} logged and {7} from Pst; a recorder that was restarted, or that averages otherwise than IEC 61000-4-15, does that; where Pst is logged the verdict rests on Pst, so leave the logged Plt out of comparisons.":
    "{1}: Der aufgezeichnete Wert weicht in {2} von {3} Fällen ({4}) vom kubischen Mittel seiner zwölf Pst ab, am meisten in den zwei Stunden ab {5} mit {6} aufgezeichnet und {7} aus Pst; das kommt von einem neu gestarteten Aufzeichnungsgerät oder einem, das anders mittelt als IEC 61000-4-15; wo Pst aufgezeichnet ist, beruht die Bewertung auf Pst; den aufgezeichneten Plt daher nicht für Vergleiche verwenden.",
  "The recording is {1} long, {2} of the week over which the standard counts; the missing time may hide excesses or dilute those found, so record seven days without a break.":
    "Die Aufzeichnung ist {1} lang, {2} der Woche, über die die Norm zählt; die fehlende Zeit kann Überschreitungen verbergen oder die gefundenen verdünnen; sieben Tage ohne Unterbrechung aufzeichnen.",
  "The part of the recording that was asked for is {1} long, {2} of the week over which the standard counts; the missing time may hide excesses or dilute those found, so assess seven days without a break.":
    "Der verlangte Teil der Aufzeichnung ist {1} lang, {2} der Woche, über die die Norm zählt; die fehlende Zeit kann Überschreitungen verbergen oder die gefundenen verdünnen; sieben Tage ohne Unterbrechung bewerten.",
  "so many rows are not measured that the phase is not judged; compare with the recorder and record again":
    "so viele Zeilen sind nicht gemessen, dass die Phase nicht beurteilt wird; mit dem Aufzeichnungsgerät vergleichen und erneut aufzeichnen",
  "these rows count as logged; compare them with the recorder":
    "diese Zeilen zählen wie aufgezeichnet; sie mit dem Aufzeichnungsgerät vergleichen",
  "The {1} repeats one value to the last digit in {2} of rows ({3} of {4} rows, {5}), the longest {6} rows ({7}) of {8} from {9}; the recorder may have held its last value or gaps were filled, unless a regulated supply feeds the point; {10}.":
    "{1}: Ein Wert wiederholt sich bis auf die letzte Stelle in {2} von Zeilen ({3} von {4} Zeilen, {5}), die längste {6} Zeilen ({7}) mit {8} ab {9}; das Aufzeichnungsgerät kann seinen letzten Wert gehalten haben, oder Lücken wurden aufgefüllt, es sei denn, eine geregelte Versorgung speist die Stelle; {10}.",
  "1 row does not stand in the order of time; that is harmless where a file was sorted or joined by hand, but may also mean that the recorder's clock was set back; the rows were put in order by their stamps, so check against the recorder that the stamps are right.":
    "1 Zeile steht nicht in zeitlicher Reihenfolge; das ist harmlos, wo eine Datei von Hand sortiert oder zusammengefügt wurde, kann aber auch bedeuten, dass die Uhr des Aufzeichnungsgeräts zurückgestellt wurde; die Zeilen wurden nach ihren Zeitstempeln geordnet; am Aufzeichnungsgerät prüfen, ob die Zeitstempel stimmen.",
  "{1} rows do not stand in the order of time; that is harmless where a file was sorted or joined by hand, but may also mean that the recorder's clock was set back; the rows were put in order by their stamps, so check against the recorder that the stamps are right.":
    "{1} Zeilen stehen nicht in zeitlicher Reihenfolge; das ist harmlos, wo eine Datei von Hand sortiert oder zusammengefügt wurde, kann aber auch bedeuten, dass die Uhr des Aufzeichnungsgeräts zurückgestellt wurde; die Zeilen wurden nach ihren Zeitstempeln geordnet; am Aufzeichnungsgerät prüfen, ob die Zeitstempel stimmen.",
  "{1} of {2} ten-minute intervals do not begin on a full ten minutes, the first at {3} ({4} s after the tick); the recorder counts from its own start or its clock is off, or the zone is not a multiple of ten minutes from UTC; values of two recorders then cover different times, so say so when you compare them.":
    "{1} von {2} Zehnminutenintervallen beginnen nicht auf vollen zehn Minuten, das erste am {3} ({4} s nach dem Takt); das Aufzeichnungsgerät zählt ab seinem eigenen Start, seine Uhr geht falsch, oder die Zeitzone liegt nicht um ein Vielfaches von zehn Minuten von UTC; Werte zweier Aufzeichnungsgeräte gelten dann für verschiedene Zeiten; das bei einem Vergleich angeben.",
  "one of them": "eine der beiden Größen",
  "The median of {1} is {2} % but that of the root sum of the harmonics is {3} %, {4} times as much; {5} seems to be logged as a share of one instead of percent or the reverse; until that is settled it is not judged, so state the unit of these columns in the setup.":
    "Median von {1}: {2} %, Median der Wurzel aus der Summe der Oberschwingungsquadrate: {3} %, das {4}-fache; {5} scheint als Anteil von eins statt in Prozent aufgezeichnet zu sein oder umgekehrt; bis das geklärt ist, wird nicht darüber geurteilt; die Einheit dieser Spalten im Setup angeben.",
  "The logged {1} disagrees with the root sum of its harmonics{2} in {3} of {4} rows ({5}), most at {6} with {7} % logged and {8} % from the harmonics; the recorder may refer one to the declared voltage and the other to the fundamental, count other orders, or a column is not what it was taken for; check both columns in the setup before you rely on either.":
    "{1}: Der aufgezeichnete Wert weicht in {3} von {4} Zeilen ({5}) von der Wurzel aus der Summe der Oberschwingungsquadrate ab{2}, am meisten am {6} mit {7} % aufgezeichnet und {8} % aus den Oberschwingungen; das Aufzeichnungsgerät kann das eine auf die vereinbarte Versorgungsspannung und das andere auf die Grundschwingung beziehen oder andere Ordnungen zählen, oder eine Spalte ist nicht das, wofür sie gehalten wurde; beide Spalten im Setup prüfen, bevor eine davon verwendet wird.",
  " (not all orders are logged, so THD may only be higher)":
    " (nicht alle Ordnungen sind aufgezeichnet, THD darf daher nur höher sein)",
  "The log does not say which end of its intervals the stamps mark; the {1} was assumed, so every time in this report may be off by one interval ({2}); give intervalLabel in the setup if you know it.":
    "Die Messdaten sagen nicht, welches Ende ihrer Intervalle die Zeitstempel bezeichnen; angenommen wurde intervalLabel „{1}“ (start: Beginn, end: Ende), daher kann jede Zeit in diesem Bericht um ein Intervall ({2}) falsch sein; intervalLabel im Setup angeben, wenn bekannt.",
  start: "Beginn",
  end: "Ende",
  "The stamps carry no offset and no zone was given; they were read as {1}, so every time in this report may be off by whole hours and a clock change would show as a gap or a repeated hour; give --zone.":
    "Die Zeitstempel tragen keinen Versatz, und es wurde keine Zeitzone angegeben; sie wurden als {1} gelesen, daher kann jede Zeit in diesem Bericht um ganze Stunden falsch sein, und eine Zeitumstellung würde sich als Lücke oder wiederholte Stunde zeigen; --zone angeben.",
};
