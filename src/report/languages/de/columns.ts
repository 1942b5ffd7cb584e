/** Why a column of a table or of samples was taken for what it is. */
export const COLUMNS: Readonly<Record<string, string>> = {
  "given in the setup": "im Setup angegeben",
  "left out by the setup": "im Setup ausgelassen",
  '"{1}" in the setup': "„{1}“ im Setup",
  'the word "{1}" is not known, so it is not certain what the column holds':
    "das Wort „{1}“ ist nicht bekannt, daher ist nicht sicher, was die Spalte enthält",
  '"{1}" is taken for a mere name': "„{1}“ gilt als bloßer Name",
  "{1}: a nominal or declared value is not a measured one":
    "{1}: ein Nennwert oder vereinbarter Wert ist kein gemessener",
  "order {1}: {2}": "Ordnung {1}: {2}",
  "marks flagged intervals: {1}": "kennzeichnet Intervalle: {1}",
  'it is named a flag, but "{1}" says neither yes nor no (1 or 0)':
    "als Kennzeichnung benannt, aber „{1}“ heißt weder ja noch nein (1 oder 0)",
  "it names two units, {1} and {2}": "nennt zwei Einheiten, {1} und {2}",
  '"{1}" in the header': "„{1}“ in der Überschrift",
  "a header of more than {1} characters is not read": "eine Überschrift mit mehr als {1} Zeichen wird nicht gelesen",
  'the unit "{1}" in the units row is not known here': "die Einheit „{1}“ in der Einheitenzeile ist hier nicht bekannt",
  "the header says {1}, but the units row {2}": "die Überschrift sagt {1}, die Einheitenzeile aber {2}",
  '"{1}" in the units row': "„{1}“ in der Einheitenzeile",
  "the setup says single-phase": "das Setup sagt einphasig",
  "it does not say which phase": "nennt nicht, welche Phase",
  "it does not say which phase, nor does column {1}, which says the same":
    "nennt nicht, welche Phase, und auch Spalte {1}, die dasselbe sagt, nennt sie nicht",
  "it does not say which phase and may be a mean over the phases; say so in the setup (connection: single)":
    "nennt nicht, welche Phase, und kann ein Mittelwert über die Phasen sein; wenn einphasig, im Setup angeben (connection: single)",
  "no column of the log names a phase, and no other column holds the same":
    "keine Spalte der Messdaten nennt eine Phase, und keine andere Spalte enthält dasselbe",
  "frequency is one for all phases; that of {1} in column {2} is used":
    "die Frequenz ist eine für alle Phasen; die von {1} in Spalte {2} wird verwendet",
  min: "min",
  max: "max",
  "orders {1} to 50 are used, not {2}": "verwendet werden die Ordnungen {1} bis 50, nicht {2}",
  "{1} names an order, but neither a harmonic nor % is named with it":
    "{1} nennt eine Ordnung, aber daneben ist weder eine Oberschwingung noch % genannt",
  "{1} names an order, which this quantity has not": "{1} nennt eine Ordnung, die diese Größe nicht hat",
  "it names more than one order: {1}": "nennt mehr als eine Ordnung: {1}",
  "it does not say which order": "nennt nicht, welche Ordnung",
  "it does not say which number is the order": "nennt nicht, welche Zahl die Ordnung ist",
  'the columns count up at "{1}"': "die Spalten zählen bei „{1}“ aufwärts",
  'the number in "{1}" is not explained': "die Zahl in „{1}“ ist nicht erklärt",
  "it names more than one phase: {1}": "nennt mehr als eine Phase: {1}",
  "one value for all phases, named at {1}": "ein Wert für alle Phasen, genannt bei {1}",
  "{1} is a voltage to earth, not to neutral": "{1} ist eine Spannung gegen Erde, nicht gegen den Neutralleiter",
  "neutral to earth: {1}": "Neutralleiter gegen Erde: {1}",
  "this quantity is not used on {1} ({2})": "diese Größe wird an {1} nicht verwendet ({2})",
  "{1} asks for a pair of phases, but {2} names one": "{1} verlangt ein Phasenpaar, {2} nennt aber eine einzelne",
  "{1} and the pair {2} contradict each other": "{1} und das Paar {2} widersprechen einander",
  "{1} and the phase {2} contradict each other": "{1} und die Phase {2} widersprechen einander",
  "all phases together, since none is named": "alle Phasen zusammen, da keine genannt ist",
  "all phases together: {1}": "alle Phasen zusammen: {1}",
  "neutral: {1}": "Neutralleiter: {1}",
  "{1}: it does not say between which conductors": "{1}: nicht genannt ist, zwischen welchen Leitern",
  "{1}: it does not say between which two phases": "{1}: nicht genannt ist, zwischen welchen zwei Phasen",
  "{1}: a value over all phases is not that of one phase": "{1}: ein Wert über alle Phasen ist nicht der einer Phase",
  "no minimum or maximum is named": "kein Minimum oder Maximum genannt",
  "{1} contradict each other": "{1} widersprechen einander",
  "positive-sequence values are not used": "Werte des Mitsystems werden nicht verwendet",
  "powers of single harmonics are not used": "Leistungen einzelner Oberschwingungen werden nicht verwendet",
  "interharmonic currents are not used": "Zwischenharmonische Ströme werden nicht verwendet",
  "unbalance of the currents is not used": "die Unsymmetrie der Ströme wird nicht verwendet",
  "it does not say whether short-term (Pst) or long-term (Plt)": "nennt nicht, ob Kurzzeit (Pst) oder Langzeit (Plt)",
  "by its unit {1}": "nach der Einheit {1}",
  "its unit {1}": "die Einheit {1}",
  "it does not say whether of the voltage or of the current": "nennt nicht, ob von der Spannung oder vom Strom",
  "a log in which no column speaks of a current": "Messdaten, in denen keine Spalte von einem Strom spricht",
  "a sequence component is used only as unbalance in %":
    "eine Komponente von Mit-, Gegen- oder Nullsystem wird nur als Unsymmetrie in % verwendet",
  "the unit %": "die Einheit %",
  "it does not say whether active, reactive or apparent power": "nennt nicht, ob Wirk-, Blind- oder Scheinleistung",
  "it does not say which quantity it holds": "nennt nicht, welche Größe enthalten ist",
  "the voltage unbalance of the standards is that of the negative sequence":
    "die Unsymmetrie der Spannung ist in den Normen die des Gegensystems",
  "the symbol {1}": "das Formelzeichen {1}",
  "{1} beside the unit %": "{1} neben der Einheit %",
  "the columns {1} … count up like harmonic orders":
    "die Spalten {1} … zählen aufwärts wie Ordnungen von Oberschwingungen",
  "the number {1} beside the phase and the unit %": "die Zahl {1} neben der Phase und der Einheit %",
  "{1} is used only as zero-sequence unbalance in %": "{1} wird nur als Nullsystem-Unsymmetrie in % verwendet",
  "the symbol {1} with the unit %": "das Formelzeichen {1} mit der Einheit %",
  "the symbol {1} in %, and no {2} or {3} in % beside it":
    "das Formelzeichen {1} in % und kein {2} oder {3} in % daneben",
  "the symbol {1}, and no {2} or {3} beside it": "das Formelzeichen {1} und kein {2} oder {3} daneben",
  'what the sign "{1}" means here is not known': "was das Zeichen „{1}“ hier bedeutet, ist nicht bekannt",
  "the ordinal {1}": "die Ordnungszahl {1}",
  "the unit {1} ({2}) does not fit the quantity": "die Einheit {1} ({2}) passt nicht zur Größe",
  "the unit {1} does not fit the quantity": "die Einheit {1} passt nicht zur Größe",
  "p.u. does not say whether of the fundamental or of the declared voltage":
    "p.u. sagt nicht, ob von der Grundschwingung oder von der vereinbarten Versorgungsspannung",
  "p.u. does not say of what; only voltages in p.u. are used":
    "p.u. sagt nicht, wovon; nur Spannungen in p.u. werden verwendet",
  "it is in {1}, but the declared voltage is given phase to neutral":
    "in {1}, aber die vereinbarte Versorgungsspannung ist gegen den Neutralleiter angegeben",
  "it is in {1}, but the declared voltage is given phase to phase":
    "in {1}, aber die vereinbarte Versorgungsspannung ist zwischen den Außenleitern angegeben",
  "of the declared voltage {1} V": "von der vereinbarten Versorgungsspannung {1} V",
  "times the voltage ratio {1}": "mal das Spannungswandlerverhältnis {1}",
  "times the current ratio {1}": "mal das Stromwandlerverhältnis {1}",
  "the quantity has no unit": "die Größe hat keine Einheit",
  "it has neither a unit nor values": "weder Einheit noch Werte vorhanden",
  "no unit is written, and its values (median {1}) may be % or a fraction of 1":
    "keine Einheit geschrieben, und die Werte (Median {1}) können % oder ein Bruchteil von 1 sein",
  "no unit is written; the median {1} is one in %":
    "keine Einheit geschrieben; der Median {1} passt zu einer Angabe in %",
  "no unit is written, and the median {1} is no power frequency in Hz":
    "keine Einheit geschrieben, und der Median {1} ist keine Netzfrequenz in Hz",
  "no unit is written; the median {1} is a power frequency in Hz":
    "keine Einheit geschrieben; der Median {1} ist eine Netzfrequenz in Hz",
  "no unit is written; the median {1} lies between 80 and 1000":
    "keine Einheit geschrieben; der Median {1} liegt zwischen 80 und 1000",
  "no unit is written; its median is 0, that of all voltages without unit {1}":
    "keine Einheit geschrieben; der eigene Median ist 0, der aller Spannungen ohne Einheit {1}",
  "no unit is written, and nothing tells % from {1}": "keine Einheit geschrieben, und nichts unterscheidet % von {1}",
  "no unit is written; say it in the setup under columns:":
    "keine Einheit geschrieben; sie im Setup angeben unter columns:",
  "as column {1}, which holds the same quantity, says": "wie Spalte {1} angibt, die dieselbe Größe enthält",
  "no unit is written; the fundamental in column {1} has the median {2}":
    "keine Einheit geschrieben; die Grundschwingung in Spalte {1} hat den Median {2}",
  "no unit is written; the fundamental in column {1} has the median {2}, like the voltage itself":
    "keine Einheit geschrieben; die Grundschwingung in Spalte {1} hat den Median {2}, wie die Spannung selbst",
  "no unit is written; the fundamental in column {1} has the median {2}, like the current itself":
    "keine Einheit geschrieben; die Grundschwingung in Spalte {1} hat den Median {2}, wie der Strom selbst",
  'the unit "{1}" does not tell milli from mega (the case of the prefix decides)':
    "die Einheit „{1}“ unterscheidet nicht Milli von Mega (die Groß- oder Kleinschreibung des Vorsatzes entscheidet)",
  'no quantity used here has the unit "{1}"': "keine hier verwendete Größe hat die Einheit „{1}“",
  "a share of the whole r.m.s. value is not a share of the fundamental":
    "ein Anteil am gesamten Effektivwert ist kein Anteil an der Grundschwingung",
  "column {1} holds the same in {2}, which is used": "Spalte {1} enthält dasselbe in {2} und wird verwendet",
  "a peak value is not an r.m.s. value": "ein Spitzenwert ist kein Effektivwert",
  "an angle is not used": "ein Winkel wird nicht verwendet",
  "energy is not power": "Energie ist keine Leistung",
  "temperature is not used": "Temperatur wird nicht verwendet",
  "humidity is not used": "Luftfeuchte wird nicht verwendet",
  "it speaks of the instrument, not of the supply": "betrifft das Messgerät, nicht die Versorgung",
  "a deviation or difference is not the value itself": "eine Abweichung oder Differenz ist nicht der Wert selbst",
  "a limit or setting is not a measured value": "ein Grenzwert oder eine Einstellung ist kein Messwert",
  "a statistic other than mean, minimum or maximum is not used":
    "eine andere Statistik als Mittelwert, Minimum oder Maximum wird nicht verwendet",
  "counts and events are read from event logs, not from series":
    "Anzahlen und Ereignisse werden aus Ereignislisten gelesen, nicht aus Reihen",
  "the displacement factor (cos phi) is not the power factor":
    "der Verschiebungsfaktor (cos phi) ist nicht der Leistungsfaktor",
  "tan phi is not used": "tan phi wird nicht verwendet",
  "a momentary value does not stand for the interval": "ein Momentanwert steht nicht für das Intervall",
  "a distortion relative to the whole r.m.s. value or to the demand is not the total harmonic distortion of EN 50160":
    "eine Verzerrung bezogen auf den gesamten Effektivwert oder auf den Bemessungsstrom ist nicht der Gesamtoberschwingungsgehalt nach EN 50160",
  "it is not used here": "wird hier nicht verwendet",
  "flags are not used with samples": "Kennzeichnungen werden mit Abtastwerten nicht verwendet",
  "{1}: no sampled voltage or current": "{1}: keine abgetastete Spannung und kein abgetasteter Strom",
  "{1}: a mean, minimum or maximum is no waveform": "{1}: ein Mittelwert, Minimum oder Maximum ist keine Kurvenform",
  "the unit {1} ({2}) is none of a sampled voltage": "die Einheit {1} ({2}) ist keine einer abgetasteten Spannung",
  "the unit {1} ({2}) is none of a sampled current": "die Einheit {1} ({2}) ist keine eines abgetasteten Stroms",
  "no unit is stated, taken as {1}": "keine Einheit angegeben, als {1} genommen",
  "V: no unit is written; the r.m.s. value {1} of the first samples lies between 80 and 1000":
    "V: keine Einheit geschrieben; der Effektivwert {1} der ersten Abtastwerte liegt zwischen 80 und 1000",
  "no unit is stated for {1}; where it is {2}, say quantity: {3} in the setup under channels:":
    "für {1} ist keine Einheit angegeben; wo es {2} ist, im Setup unter channels: quantity: {3} angeben",
};
