/** Remarks of reading PQDIF. */
export const PQDIF: Readonly<Record<string, string>> = {
  "the file states how far its times are from local time, or UTC as its zone":
    "die Datei gibt an, wie weit ihre Zeiten von der Ortszeit abweichen, oder UTC als ihre Zone",
  'The file names the time zone "{1}", but not whether its times are in it or in UTC; they are read as UTC. If they are local times, give the zone with --zone.':
    "Die Datei nennt die Zeitzone „{1}“, aber nicht, ob ihre Zeiten darin oder in UTC stehen; sie werden als UTC gelesen. Sind es Ortszeiten, die Zone mit --zone angeben.",
  "the first row of each observation lies at the start of the observation":
    "die erste Zeile jeder Beobachtung liegt am Beginn der Beobachtung",
  "the first row of each observation lies one interval after the start of the observation":
    "die erste Zeile jeder Beobachtung liegt ein Intervall nach dem Beginn der Beobachtung",
  "a collection announces {1} elements, which its record cannot hold":
    "eine Sammlung kündigt {1} Elemente an, die ihr Datensatz nicht fassen kann",
  "the element {1} holds {2}, which it cannot be, and is left out":
    "das Element {1} enthält {2}, was nicht sein kann, und wird ausgelassen",
  "the file is of version {1}, while version 1 is known here; what was found is read":
    "die Datei hat die Version {1}, während hier Version 1 bekannt ist; gelesen wird, was gefunden wurde",
  '"{1}": values times {2}, the transformer ratio of the setup':
    "„{1}“: Werte mal {2}, das Wandlerverhältnis aus dem Setup",
  '"{1}": values times {2}/{3}, the transducer ratio that the file says to apply':
    "„{1}“: Werte mal {2}/{3}, das Wandlerverhältnis, das laut Datei anzuwenden ist",
  '"{1}": the transducer ratio {2}/{3} of the file cannot be applied':
    "„{1}“: das Wandlerverhältnis {2}/{3} der Datei kann nicht angewendet werden",
  '"{1}": calibrated as (value − {2}) × {3}, as the file says to apply; that the offset goes first is not confirmed by any document seen':
    "„{1}“: kalibriert als (Wert − {2}) × {3}, wie es laut Datei anzuwenden ist; dass der Versatz zuerst abgezogen wird, bestätigt kein eingesehenes Dokument",
  "a data source defines no channel that can be read": "eine Datenquelle definiert keinen lesbaren Kanal",
  none: "keine",
  transient: "Transiente",
  "transient impulsive": "Transiente, impulsförmig",
  "transient impulsive of nanoseconds": "Transiente, impulsförmig, Nanosekunden",
  "transient impulsive of microseconds": "Transiente, impulsförmig, Mikrosekunden",
  "transient impulsive of milliseconds": "Transiente, impulsförmig, Millisekunden",
  "transient oscillatory": "Transiente, schwingend",
  "transient oscillatory of low frequency": "Transiente, schwingend, niedrige Frequenz",
  "transient oscillatory of medium frequency": "Transiente, schwingend, mittlere Frequenz",
  "transient oscillatory of high frequency": "Transiente, schwingend, hohe Frequenz",
  "short duration": "kurze Dauer",
  "short duration instantaneous": "kurze Dauer, augenblicklich",
  "short duration instantaneous dip": "kurze Dauer, augenblicklicher Einbruch",
  "short duration instantaneous swell": "kurze Dauer, augenblickliche Überhöhung",
  "short duration momentary": "kurze Dauer, momentan",
  "short duration momentary interruption": "kurze Dauer, momentane Unterbrechung",
  "short duration momentary dip": "kurze Dauer, momentaner Einbruch",
  "short duration momentary swell": "kurze Dauer, momentane Überhöhung",
  "short duration temporary": "kurze Dauer, vorübergehend",
  "short duration temporary interruption": "kurze Dauer, vorübergehende Unterbrechung",
  "short duration temporary dip": "kurze Dauer, vorübergehender Einbruch",
  "short duration temporary swell": "kurze Dauer, vorübergehende Überhöhung",
  "long duration": "lange Dauer",
  "long duration interruption": "lange Dauer, Unterbrechung",
  "long duration dip": "lange Dauer, Einbruch",
  "long duration swell": "lange Dauer, Überhöhung",
  unbalance: "Unsymmetrie",
  "variation of the power frequency": "Änderung der Netzfrequenz",
  "voltage fluctuation": "Spannungsschwankung",
  "distortion of the waveform": "Verzerrung der Kurvenform",
  "distortion of the waveform direct component": "Verzerrung der Kurvenform, Gleichanteil",
  "distortion of the waveform harmonic": "Verzerrung der Kurvenform, Oberschwingungen",
  "distortion of the waveform interharmonic": "Verzerrung der Kurvenform, Zwischenharmonische",
  "distortion of the waveform notching": "Verzerrung der Kurvenform, Kommutierungseinbrüche",
  "distortion of the waveform noise": "Verzerrung der Kurvenform, Rauschen",
  "no trigger": "kein Auslöser",
  "triggered by a channel": "von einem Kanal ausgelöst",
  "by the clock": "von der Uhr",
  "triggered from outside": "von außen ausgelöst",
  "by the clock, for statistics": "von der Uhr, für Statistik",
  "trigger not said": "Auslösung nicht angegeben",
  "trigger method {1}": "Auslöseverfahren {1}",
  "its magnitude {1} ({2}) is not sure to be a voltage":
    "es ist nicht sicher, dass sein Betrag {1} ({2}) eine Spannung ist",
  "the log does not state its magnitude": "die Messdaten geben seinen Betrag nicht an",
  "its magnitude {1} is not sure to be in percent of the declared voltage":
    "es ist nicht sicher, dass sein Betrag {1} in Prozent der vereinbarten Versorgungsspannung steht",
  "a series in steps announces {1} of segments or values, which its record cannot hold":
    "eine stufenweise Reihe kündigt {1} von Abschnitten oder Werten an, die ihr Datensatz nicht fassen kann",
  "{1}: the observation at {2} repeats samples of one that began before; they are counted once.":
    "{1}: Die Beobachtung am {2} wiederholt Abtastwerte einer früher begonnenen; sie werden einmal gezählt.",
  "it cannot be read: {1}": "nicht lesbar: {1}",
  '{1}: "{2}" has other numbers of times and values; the shorter one counts':
    "{1}: „{2}“ hat verschieden viele Zeiten und Werte; die kürzere Reihe zählt",
  "times of IEEE 1159.3 (days and seconds), of the start of each observation":
    "Zeiten nach IEEE 1159.3 (Tage und Sekunden), des Beginns jeder Beobachtung",
  "{1}, byte {2}: {3}": "{1}, Byte {2}: {3}",
  "{1}, byte {2} and {3} times more: {4}": "{1}, Byte {2} und {3} weitere Male: {4}",
  "it is the largest deviation from the average of the phases, another definition than the negative sequence u2":
    "größte Abweichung vom Mittelwert der Phasen, eine andere Definition als das Gegensystem u2",
  "it is in relation to the whole r.m.s. value; total harmonic distortion is judged in relation to the fundamental":
    "auf den gesamten Effektivwert bezogen; der Gesamtoberschwingungsgehalt wird bezogen auf die Grundschwingung beurteilt",
  "it is a sliding Plt, one value every Pst interval; Plt is counted in blocks of two hours":
    "gleitender Plt, ein Wert je Pst-Intervall; Plt wird in Blöcken von zwei Stunden gezählt",
  "it is the r.m.s. value of all harmonics together": "Effektivwert aller Oberschwingungen zusammen",
  "it is the r.m.s. value of all interharmonics together": "Effektivwert aller Zwischenharmonischen zusammen",
  "it is the value that {1} % do not exceed, no mean or extreme":
    "der Wert, den {1} % nicht überschreiten, kein Mittel- oder Extremwert",
  "it holds no mean, value, minimum or maximum": "enthält weder Mittelwert noch Wert, Minimum oder Maximum",
  "its quantity type ({1}) is no log of values over time":
    "die Art der Größe ({1}) ist keine Aufzeichnung von Werten über der Zeit",
  "it has no characteristic, so what it holds is not said; say it in the setup under columns:":
    "ohne Kennung der Größe, daher ist nicht angegeben, was enthalten ist; im Setup angeben unter columns:",
  "its characteristic {1} is none of IEEE 1159.3, so what it holds is not known; say it in the setup under columns:":
    "die Kennung {1} der Größe kommt in IEEE 1159.3 nicht vor, daher ist nicht bekannt, was enthalten ist; im Setup angeben unter columns:",
  "its characteristic ({1}) is not used here": "die Kennung ({1}) der Größe wird hier nicht verwendet",
  "its characteristic ({1}) of a {2} in {3} is not used here":
    "die Kennung ({1}) einer Größe ({2}) in {3} wird hier nicht verwendet",
  "its phase ({1}) is no conductor that is judged; say the phase in the setup under columns:":
    "die Phase ({1}) ist kein Leiter, der beurteilt wird; die Phase im Setup angeben unter columns:",
  "{1} Hz is no multiple of {2} Hz, and single lines of a spectrum are no group of interharmonics":
    "{1} Hz ist kein Vielfaches von {2} Hz, und einzelne Linien eines Spektrums sind keine Gruppe von Zwischenharmonischen",
  "neither a group nor a frequency says its order; say it in the setup under columns: order":
    "weder eine Gruppe noch eine Frequenz gibt die Ordnung an; im Setup angeben unter columns: order",
  "order {1} is no harmonic": "Ordnung {1} ist keine Oberschwingung",
  "order {1} lies beyond {2}": "Ordnung {1} liegt jenseits von {2}",
  "A to neutral": "A gegen Neutralleiter",
  "B to neutral": "B gegen Neutralleiter",
  "C to neutral": "C gegen Neutralleiter",
  "neutral to ground": "Neutralleiter gegen Erde",
  "A to B": "A gegen B",
  "B to C": "B gegen C",
  "C to A": "C gegen A",
  residual: "Summengröße",
  net: "netto",
  "positive sequence": "Mitsystem",
  "negative sequence": "Gegensystem",
  "zero sequence": "Nullsystem",
  total: "gesamt",
  "average of phase to neutral": "Mittel der Spannungen gegen Neutralleiter",
  "average of phase to phase": "Mittel der Außenleiterspannungen",
  worst: "äußerster Wert",
  plus: "plus",
  minus: "minus",
  "largest of phase to neutral": "größte gegen Neutralleiter",
  "smallest of phase to neutral": "kleinste gegen Neutralleiter",
  "largest of phase to phase": "größte zwischen Außenleitern",
  "smallest of phase to phase": "kleinste zwischen Außenleitern",
  ground: "Erde",
  "general {1}": "allgemein {1}",
  voltage: "Spannung",
  current: "Strom",
  power: "Leistung",
  energy: "Energie",
  temperature: "Temperatur",
  pressure: "Druck",
  charge: "Ladung",
  "electric field": "elektrisches Feld",
  "magnetic field": "magnetisches Feld",
  velocity: "Geschwindigkeit",
  bearing: "Richtung",
  force: "Kraft",
  torque: "Drehmoment",
  position: "Position",
  "flux linkage": "verketteter Fluss",
  "flux density": "Flussdichte",
  status: "Zustand",
  humidity: "Feuchte",
  impedance: "Impedanz",
  "an observation has no start that can be read and is left out":
    "eine Beobachtung hat keinen lesbaren Beginn und wird ausgelassen",
  "a channel belongs to definition {1} of {2}, which there is not, and is left out":
    "ein Kanal gehört zu Definition {1} von {2}, die es nicht gibt, und wird ausgelassen",
  unknown: "unbekannt",
  "a channel has {1} series where {2} are defined; the others are left out":
    "ein Kanal hat {1} Reihen, wo {2} definiert sind; die anderen werden ausgelassen",
  '"{1}" holds the same in {2}, which is used': "„{1}“ enthält dasselbe in {2} und wird verwendet",
  '"{1}" holds the frequency as well, and is used': "„{1}“ enthält die Frequenz ebenfalls und wird verwendet",
  "an observation lists more than {1} series and is left out":
    "eine Beobachtung führt mehr als {1} Reihen auf und wird ausgelassen",
  "an observation stands before any data source that can be read, and is left out":
    "eine Beobachtung steht vor jeder lesbaren Datenquelle und wird ausgelassen",
  "the file has no container record that can be read": "die Datei hat keinen lesbaren Container-Datensatz",
  "logged values and waveforms": "aufgezeichnete Werte und Kurvenformen",
  "logged values": "aufgezeichnete Werte",
  waveforms: "Kurvenformen",
  "an event or a list of events": "ein Ereignis oder eine Ereignisliste",
  "nothing: none of its channels is used, see there": "nichts: keiner ihrer Kanäle wird verwendet, siehe dort",
  "magnitude or duration of events": "Betrag oder Dauer von Ereignissen",
  "it is empty in all observations": "in allen Beobachtungen leer",
  "it is defined, but no observation holds it": "definiert, aber in keiner Beobachtung enthalten",
  "it marks intervals as flagged": "kennzeichnet Intervalle",
  "not said": "nicht angegeben",
  "by the setup": "laut Setup",
  "measured {1}, characteristic {2}, phase {3}": "gemessen {1}, Kennung {2}, Phase {3}",
  "it holds no values that are numbers": "enthält keine Werte, die Zahlen sind",
  "{1}: by the setup": "{1}: laut Setup",
  "the compressed data of a record are damaged, so it is left out":
    "die komprimierten Daten eines Datensatzes sind beschädigt, daher wird er ausgelassen",
  "a record inflates to more than {1} bytes and is left out":
    "ein Datensatz wächst beim Entpacken auf mehr als {1} Byte und wird ausgelassen",
  "the next record lies outside the file (at byte {1}), so the rest cannot be found":
    "der nächste Datensatz liegt außerhalb der Datei (bei Byte {1}), daher ist der Rest nicht auffindbar",
  "the next record is one that was already read (at byte {1}), so the rest cannot be found":
    "der nächste Datensatz ist einer, der schon gelesen wurde (bei Byte {1}), daher ist der Rest nicht auffindbar",
  "where the next record should begin (byte {1}) there is none, so the rest cannot be found":
    "wo der nächste Datensatz beginnen sollte (Byte {1}), ist keiner, daher ist der Rest nicht auffindbar",
  "the record gives sizes that cannot be ({1} and {2} bytes) and is left out":
    "der Datensatz nennt unmögliche Größen ({1} und {2} Byte) und wird ausgelassen",
  "the file ends within a record, {1} bytes before its end: copy the file again":
    "die Datei endet innerhalb eines Datensatzes, {1} Byte vor dessen Ende: die Datei neu kopieren",
  "it holds samples of neither a voltage nor a current": "enthält Abtastwerte weder einer Spannung noch eines Stroms",
  "it holds no points on the wave": "enthält keine Punkte der Kurvenform",
  "its phase ({1}) is no conductor that is judged": "die Phase ({1}) ist kein Leiter, der beurteilt wird",
  "samples of a voltage, phase {1}": "Abtastwerte einer Spannung, Phase {1}",
  "samples of a current, phase {1}": "Abtastwerte eines Stroms, Phase {1}",
  "its unit says {1}, but what is measured is {2}, so it is taken as {3}":
    "die Einheit lautet {1}, gemessen wird aber {2}; daher als {3} genommen",
  "a series holds {1}, which is no real number, and is left out":
    "eine Reihe enthält {1}, was keine reelle Zahl ist, und wird ausgelassen",
  "a series shares the values of series {1} of channel {2}, which there is not":
    "eine Reihe teilt die Werte der Reihe {1} von Kanal {2}, die es nicht gibt",
  "series share one another's values in a circle": "Reihen teilen ihre Werte im Kreis",
  "a series has the unknown storage method {1} and is left out":
    "eine Reihe hat das unbekannte Speicherverfahren {1} und wird ausgelassen",
  "its rows follow one another at no common distance, so the length of an interval cannot be told":
    "die Zeilen folgen einander in keinem gemeinsamen Abstand, daher lässt sich die Länge eines Intervalls nicht angeben",
  "its values every {1} s are the course of an event, no log of intervals":
    "Werte alle {1} s: der Verlauf eines Ereignisses, keine Aufzeichnung von Intervallen",
  "all its values are 0: its input was not connected": "alle Werte sind 0: der Eingang war nicht angeschlossen",
  "it repeats the mean row by row, so it is no extreme":
    "wiederholt den Mittelwert Zeile für Zeile, ist also kein Extremwert",
  "Minimum and maximum repeat the mean on {1}: the recorder kept one value only, so these are not used as extremes.":
    "Minimum und Maximum wiederholen den Mittelwert an {1}: Das Aufzeichnungsgerät hat nur einen Wert behalten, daher werden sie nicht als Extremwerte verwendet.",
  "it has no series of times": "ohne Reihe von Zeiten",
  "its series of times is empty": "die Reihe der Zeiten ist leer",
  "its times are in cycles, and the file states no nominal frequency; give nominalFrequency in the setup":
    "die Zeiten stehen in Perioden, und die Datei gibt keine Nennfrequenz an; nominalFrequency im Setup angeben",
  "its times have the unit {1}, which is no time": "die Zeiten haben die Einheit {1}, die keine Zeit ist",
  "no unit": "keine Einheit",
  "unit {1}": "Einheit {1}",
  "a voltage": "eine Spannung",
  "a current": "ein Strom",
  "a frequency": "eine Frequenz",
  "an active power": "eine Wirkleistung",
  "a reactive power": "eine Blindleistung",
  "an apparent power": "eine Scheinleistung",
  "the unit is {1}": "die Einheit ist {1}",
  "{1} in % does not say of what": "{1} in % gibt nicht an, wovon",
  "the unit is %": "die Einheit ist %",
  "the unit is {1}, a fraction of 1": "die Einheit ist {1}, ein Bruchteil von 1",
  "it holds no values": "enthält keine Werte",
  "the unit {1} does not fit a share in %": "die Einheit {1} passt nicht zu einem Anteil in %",
  'it has no unit, and its values (median {1}) may be % or a fraction of 1; say the unit in the setup under columns:, "%" or "p.u."':
    'ohne Einheit; die Werte (Median {1}) können % oder ein Bruchteil von 1 sein; die Einheit im Setup angeben unter columns:, "%" oder "p.u."',
  "it has no unit; the median {1} is one in %": "ohne Einheit; der Median {1} passt zu einer Angabe in %",
  "per unit of {1} {2}, the base that it states": "bezogen auf {1} {2}, die angegebene Bezugsgröße",
  "per unit of the declared voltage {1} V": "bezogen auf die vereinbarte Versorgungsspannung {1} V",
  "it is in p.u. and states no base; give the declared voltage with --declared":
    "in p.u. ohne angegebene Bezugsgröße; die vereinbarte Versorgungsspannung mit --declared angeben",
  "it has no unit; the median {1} is one in {2}": "ohne Einheit; der Median {1} passt zu einer Angabe in {2}",
  "it has no unit, and the median {1} does not tell it; say the unit in the setup under columns:":
    "ohne Einheit, und der Median {1} lässt sie nicht erkennen; die Einheit im Setup angeben unter columns:",
  "in % of the fundamental by its unit": "der Einheit nach in % der Grundschwingung",
  "its unit says {1}, but order 1 has the median {2}, so it is taken as {3}":
    "die Einheit lautet {1}, Ordnung 1 hat aber den Median {2}; daher als {3} genommen",
  "% of the fundamental": "% der Grundschwingung",
  "order 1 is 1, so it is a fraction of the fundamental": "Ordnung 1 ist 1, also ein Bruchteil der Grundschwingung",
  "its unit is {1} and no order 1 shows whether it is % of the fundamental or {2}; say the unit in the setup under columns:":
    "die Einheit ist {1}, und keine Ordnung 1 zeigt, ob es % der Grundschwingung oder {2} ist; die Einheit im Setup angeben unter columns:",
  "a vector announces {1} items of {2} bytes, which its record cannot hold":
    "ein Vektor kündigt {1} Einträge zu je {2} Byte an, die sein Datensatz nicht fassen kann",
  "an element has the unknown physical type {1}": "ein Element hat den unbekannten physikalischen Typ {1}",
  "a link leads out of its record (to place {1} of {2})":
    "ein Verweis führt aus seinem Datensatz hinaus (zur Stelle {1} von {2})",
  "{1} stands where numbers are expected, and is left out":
    "{1} steht, wo Zahlen erwartet werden, und wird ausgelassen",
  '{1}: "{2}" has other numbers of times and samples; the shorter one counts':
    "{1}: „{2}“ hat verschieden viele Zeiten und Abtastwerte; die kürzere Reihe zählt",
  "all its samples are 0: its input was not connected": "alle Abtastwerte sind 0: der Eingang war nicht angeschlossen",
  "it has {1} samples per second; waveforms are measured from {2} up":
    "{1} Abtastwerte je Sekunde; Kurvenformen werden ab {2} gemessen",
  "it is sampled apart from any voltage, and without one no cycle can be found":
    "getrennt von jeder Spannung abgetastet, und ohne Spannung lässt sich keine Periode finden",
};
