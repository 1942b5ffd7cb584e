/** Remarks of reading tables, samples and COMTRADE. */
export const FORMATS: Readonly<Record<string, string>> = {
  "{1} of the {2} bytes of data are missing at its end.": "{1} der {2} Byte Daten fehlen an ihrem Ende.",
  "{1} samples at {2} per second are left out, too few for a waveform of {3} Hz.":
    "{1} Abtastwerte mit {2} je Sekunde sind ausgelassen, zu wenige für eine Kurvenform mit {3} Hz.",
  "sampled {1} times a second, so it is no waveform of {2} Hz":
    "{1}-mal je Sekunde abgetastet, also keine Kurvenform mit {2} Hz",
  '"{1}" is brought to the primary side by {2}, unlike in the first file.':
    "„{1}“ wird anders als in der ersten Datei auf die Primärseite umgerechnet: {2}.",
  "an r.m.s. value or mean is no waveform": "ein Effektivwert oder Mittelwert ist keine Kurvenform",
  "direct and auxiliary voltages are not used": "Gleich- und Hilfsspannungen werden nicht verwendet",
  "a frequency is no waveform": "eine Frequenz ist keine Kurvenform",
  "an angle is no waveform": "ein Winkel ist keine Kurvenform",
  "it is computed from other values": "aus anderen Werten berechnet",
  "a symmetrical component is no phase quantity": "eine symmetrische Komponente ist keine Phasengröße",
  "a residual quantity (sum of the phases) is no phase quantity":
    "eine Summengröße (Summe der Phasen) ist keine Phasengröße",
  "an earth quantity is no phase quantity": "eine Erdgröße ist keine Phasengröße",
  '"{1}{2}" may be a phase, a number or a symmetrical component':
    "„{1}{2}“ kann eine Phase, eine Nummer oder eine symmetrische Komponente sein",
  '"{1}" is none of the phases {2}': "„{1}“ ist keine der Phasen {2}",
  "the edition {1} of the standard is not known; the layout of 1999 is used.":
    "die Ausgabe {1} der Norm ist nicht bekannt; verwendet wird der Aufbau von 1999.",
  "the year of the standard is missing; the channel lines have the form of 1999, which is used.":
    "das Jahr der Norm fehlt; die Kanalzeilen haben die Form von 1999, die verwendet wird.",
  "{1} analog and {2} status channels are promised, but {3} and {4} are described; the descriptions are used.":
    "angekündigt sind {1} Analog- und {2} Statuskanäle, beschrieben aber {3} und {4}; verwendet werden die Beschreibungen.",
  "the date is written {1}, not in the order of the edition.":
    "das Datum ist als {1} geschrieben, nicht in der Reihenfolge der Ausgabe.",
  "the date is read as {1}; the configuration names no edition, so state dateOrder in the setup if that is wrong.":
    "das Datum wird als {1} gelesen; die Konfiguration nennt keine Ausgabe; ist das falsch, dateOrder im Setup angeben.",
  "the time factor {1} cannot be used; 1 is taken.": "der Zeitfaktor {1} ist nicht verwendbar; genommen wird 1.",
  "the time code {1} cannot be read; the stamps are taken to name no offset.":
    "der Zeitcode {1} ist nicht lesbar; es wird angenommen, dass die Zeitstempel keinen Versatz nennen.",
  "the recorder states that its clock was right within {1} only.":
    "das Aufzeichnungsgerät gibt an, dass seine Uhr nur auf {1} genau ging.",
  "the recorder states that its clock had failed; the times cannot be trusted.":
    "das Aufzeichnungsgerät gibt an, dass seine Uhr ausgefallen war; den Zeiten ist nicht zu trauen.",
  "the data are text although the configuration says {1}.": "die Daten sind Text, obwohl die Konfiguration {1} angibt.",
  "the data are binary although the configuration says ASCII.":
    "die Daten sind binär, obwohl die Konfiguration ASCII angibt.",
  "the rows hold {1} words of status channels, not {2} as the configuration says.":
    "die Zeilen enthalten {1} Wörter mit Statuskanälen, nicht {2}, wie die Konfiguration angibt.",
  "{1} bytes behind the last whole row are left out; the file is cut off.":
    "{1} Byte hinter der letzten vollständigen Zeile sind ausgelassen; die Datei ist abgeschnitten.",
  "the rows hold two bytes per value, so they are read as BINARY, not {1}.":
    "die Zeilen enthalten zwei Byte je Wert und werden daher als BINARY gelesen, nicht als {1}.",
  "{1} and 1 other file: {2}": "{1} und 1 weitere Datei: {2}",
  "{1} and {2} other files: {3}": "{1} und {2} weitere Dateien: {3}",
  "{1} h:m:s with {2} decimals": "{1} h:m:s mit {2} Dezimalstellen",
  "{1}, of the first sample of each file": "{1}, des ersten Abtastwerts jeder Datei",
  "× {1} by the setup": "× {1} laut Setup",
  "{1} in the setup states another ratio": "{1} im Setup gibt ein anderes Verhältnis an",
  currents: "Ströme",
  voltages: "Spannungen",
  "The file does not say whether its {1} are primary or secondary values; they are taken as they stand ({2}).":
    "Die Datei gibt nicht an, ob diese Werte Primär- oder Sekundärwerte sind: {1}. Sie werden genommen, wie sie sind ({2}).",
  "The {1} are secondary values without a usable ratio; they are taken as they stand ({2}).":
    "Sekundärwerte ohne verwendbares Verhältnis: {1}. Sie werden genommen, wie sie sind ({2}).",
  "secondary value × {1}/{2}": "Sekundärwert × {1}/{2}",
  "The ratio {1}/{2} of the {3} is unusual; its two sides may have different units ({4}).":
    "Das Verhältnis {1}/{2} ist ungewöhnlich ({3}); seine beiden Seiten können verschiedene Einheiten haben ({4}).",
  "the setup leaves it out": "im Setup ausgelassen",
  'its unit "{1}" is not one of current': "die Einheit „{1}“ ist keine des Stroms",
  'its unit "{1}" is not one of voltage': "die Einheit „{1}“ ist keine der Spannung",
  "the setup": "das Setup",
  "a current between phases is not used": "ein Strom zwischen Außenleitern wird nicht verwendet",
  "phase by {1}": "Phase nach: {1}",
  "no unit stated, taken as {1}": "keine Einheit angegeben, als {1} genommen",
  'unit "{1}"': "Einheit „{1}“",
  "written the other way round, so its sign is turned": "umgekehrt geschrieben, daher mit umgekehrtem Vorzeichen",
  "inverted by the setup": "im Setup umgepolt",
  'its name speaks of a current, its unit "{1}" of a voltage':
    "der Name spricht von einem Strom, die Einheit „{1}“ von einer Spannung",
  'its name speaks of a voltage, its unit "{1}" of a current':
    "der Name spricht von einer Spannung, die Einheit „{1}“ von einem Strom",
  'the phase field "{1}"': "Phasenfeld „{1}“",
  'the name "{1}"': "Name „{1}“",
  "its name speaks of more than one phase": "der Name spricht von mehr als einer Phase",
  "neither its name nor its phase field says a phase": "weder Name noch Phasenfeld nennt eine Phase",
  "{1} and {2} contradict each other": "{1} und {2} widersprechen einander",
  "{1} samples are promised, the data hold {2}; all that are there are used.":
    "angekündigt sind {1} Abtastwerte, die Daten enthalten {2}; alle vorhandenen werden verwendet.",
  "its {1} status channels are not used.": "{1} Statuskanäle werden nicht verwendet.",
  'the channel "{1}" has the factor 0, so all its values are {2}.':
    "der Kanal „{1}“ hat den Faktor 0, daher sind alle seine Werte {2}.",
  "the time of the first sample occurs twice in {1} (end of summer time); the first is taken. A fixed offset as zone decides it.":
    "die Zeit des ersten Abtastwerts kommt in {1} zweimal vor (Ende der Sommerzeit); genommen wird die erste. Ein fester Versatz als Zeitzone entscheidet es.",
  "line {1} is cut off or garbled and left out.": "Zeile {1} ist abgeschnitten oder verstümmelt und ausgelassen.",
  "{1} lines, the first of them line {2}, are cut off or garbled and left out.":
    "{1} Zeilen, die erste davon Zeile {2}, sind abgeschnitten oder verstümmelt und ausgelassen.",
  "the sample numbers do not count the rows; each row is taken to follow the one before.":
    "die Abtastnummern zählen die Zeilen nicht; jede Zeile gilt als auf die vorige folgend.",
  "{1} samples are missing between the rows, by the sample numbers.":
    "nach den Abtastnummern fehlen {1} Abtastwerte zwischen den Zeilen.",
  "{1} sampling rates that differ by less than 0.1 % follow each other (a drifting clock); their mean, {2} per second, is used.":
    "{1} Abtastraten, die sich um weniger als 0,1 % unterscheiden, folgen aufeinander (eine driftende Uhr); verwendet wird ihr Mittel, {2} je Sekunde.",
  "no sampling rate is stated; by the time stamps it is {1} per second.":
    "keine Abtastrate angegeben; nach den Zeitstempeln beträgt sie {1} je Sekunde.",
  "the rows have no time stamps; the stated sampling rate is used.":
    "die Zeilen haben keine Zeitstempel; verwendet wird die angegebene Abtastrate.",
  "the time stamps are cut to 16 bits; the stated sampling rate is used.":
    "die Zeitstempel sind auf 16 Bit gekürzt; verwendet wird die angegebene Abtastrate.",
  "the time stamps speak of {1} samples per second, the configuration of {2}; the configuration is used.":
    "die Zeitstempel sprechen von {1} Abtastwerten je Sekunde, die Konfiguration von {2}; verwendet wird die Konfiguration.",
  "no unit is stated": "keine Einheit angegeben",
  'the unit "{1}" may be milli or mega': "die Einheit „{1}“ kann Milli oder Mega bedeuten",
  "an r.m.s. value is no waveform": "ein Effektivwert ist keine Kurvenform",
  "direct voltage and current are not used": "Gleichspannung und Gleichstrom werden nicht verwendet",
  'the unit "{1}" is none of voltage or current': "die Einheit „{1}“ ist keine von Spannung oder Strom",
  "{1}: its decimal mark was taken from the other files": "{1}: Dezimalzeichen aus den anderen Dateien übernommen",
  "{1}: its stamps mark the start of the interval": "{1}: Die Zeitstempel bezeichnen den Beginn des Intervalls",
  "{1}: its stamps mark the end of the interval": "{1}: Die Zeitstempel bezeichnen das Ende des Intervalls",
  "by the name of the month": "nach dem Namen des Monats",
  "year first": "Jahr zuerst",
  "as given": "wie angegeben",
  "by the point between the numbers": "nach dem Punkt zwischen den Zahlen",
  "all orders mean the same days here": "alle Reihenfolgen bedeuten hier dieselben Tage",
  "no other order fits all dates": "keine andere Reihenfolge passt zu allen Daten",
  "only so do the days follow one another": "nur so folgen die Tage aufeinander",
  "{1}: its column holds no value and was left out": "{1}: Die Spalte enthält keinen Wert und wurde ausgelassen",
  "{1}: logged without its mean, so it was left out": "{1}: ohne Mittelwert aufgezeichnet und daher ausgelassen",
  mean: "Mittelwert",
  minimum: "Minimum",
  maximum: "Maximum",
  "order {1}": "Ordnung {1}",
  "{1}: its newest row stands first; it was read from its end":
    "{1}: Die neueste Zeile steht zuerst; gelesen wurde vom Ende her",
  "seconds since 1970-01-01 UTC": "Sekunden seit 1970-01-01 UTC",
  "milliseconds since 1970-01-01 UTC": "Millisekunden seit 1970-01-01 UTC",
  "days since 1899-12-30, as spreadsheets count them": "Tage seit 1899-12-30, wie Tabellenkalkulationen sie zählen",
  "day, month, year": "Tag, Monat, Jahr",
  "12-hour clock": "12-Stunden-Uhr",
  "{1} {2} with offset from UTC": "{1} {2} mit Versatz zu UTC",
  "date and time in two columns": "Datum und Uhrzeit in zwei Spalten",
  "in {1} by the header": "in {1} laut Kopfzeile",
  "the time of each row": "die Zeit jeder Zeile",
  "not used: a time beside the one that is used": "nicht verwendet: eine Zeit neben der verwendeten",
  "not recognised": "nicht erkannt",
  "{1}, {2}: the last line is cut off and was left out":
    "{1}, {2}: Die letzte Zeile ist abgeschnitten und wurde ausgelassen",
  "{1}: the header is repeated {2} among the rows": "{1}: Die Kopfzeile wiederholt sich {2} unter den Zeilen",
  "{1}: a stamp without a time of day was read as midnight ({2})":
    "{1}: Ein Zeitstempel ohne Uhrzeit wurde als Mitternacht gelesen ({2})",
  once: "einmal",
  "{1}: the distance of rows is off its interval by up to {2}":
    "{1}: Der Abstand der Zeilen weicht um bis zu {2} vom Intervall ab",
  "{1}: {2} stamps beside their tick were put on it; the farthest was {3} away":
    "{1}: {2} Zeitstempel neben ihrem Takt wurden darauf gesetzt; der fernste lag {3} daneben",
  "{1} ms": "{1} ms",
  "{1}: 1 sample is missing in 1 gap, by the times of the rows.":
    "{1}: Nach den Zeiten der Zeilen fehlt 1 Abtastwert in 1 Lücke.",
  "{1}: {2} samples are missing in 1 gap, by the times of the rows.":
    "{1}: Nach den Zeiten der Zeilen fehlen {2} Abtastwerte in 1 Lücke.",
  "{1}: {2} samples are missing in {3} gaps, by the times of the rows.":
    "{1}: Nach den Zeiten der Zeilen fehlen {2} Abtastwerte in {3} Lücken.",
  "{1}: its first time occurs twice (end of summer time); the first is taken. A fixed offset as zone decides it.":
    "{1}: Die erste Zeit kommt zweimal vor (Ende der Sommerzeit); genommen wird die erste. Ein fester Versatz als Zeitzone entscheidet es.",
  "a time beside the one that is used": "eine Zeit neben der verwendeten",
  "{1}: {2} samples per second are too few; waveforms are measured from {3} on.":
    "{1}: {2} Abtastwerte je Sekunde sind zu wenig; Kurvenformen werden ab {3} gemessen.",
  "between {1} and {2} per second": "zwischen {1} und {2} je Sekunde",
  "{1}: by its times the sampling rate lies {2}; {3} is used (setup: samplesPerSecond states it).":
    "{1}: Nach den Zeiten liegt die Abtastrate {2}; verwendet wird {3} (Setup: samplesPerSecond gibt sie an).",
  "{1}: its times are written in steps of {2}, so that a loss of a sample would not show and all times may be off by {3}.":
    "{1}: Die Zeiten sind in Schritten von {2} geschrieben, sodass der Verlust eines Abtastwerts nicht zu sehen wäre und alle Zeiten um {3} falsch sein können.",
  "{1}: its times are written in steps of {2}, so that a loss of up to {3} samples would not show and all times may be off by {4}.":
    "{1}: Die Zeiten sind in Schritten von {2} geschrieben, sodass der Verlust von bis zu {3} Abtastwerten nicht zu sehen wäre und alle Zeiten um {4} falsch sein können.",
  "The log does not say when it was recorded: its first sample is put on {1}, so all times count from there, and ten-minute intervals do not begin on the ten minutes of a clock (setup: start states it).":
    "Die Messdaten geben nicht an, wann sie aufgezeichnet wurden: Ihr erster Abtastwert ist auf {1} gesetzt, alle Zeiten zählen also von dort, und Zehnminutenintervalle beginnen nicht auf den zehn Minuten einer Uhr (Setup: start gibt den Beginn an).",
  "The log does not say when it was recorded; the start is that of the setup, {1}.":
    "Die Messdaten geben nicht an, wann sie aufgezeichnet wurden; der Beginn ist der des Setups, {1}.",
  "no times: the rows follow each other evenly": "keine Zeiten: die Zeilen folgen einander gleichmäßig",
  "the numbers of the samples": "die Nummern der Abtastwerte",
  seconds: "Sekunden",
  milliseconds: "Millisekunden",
  microseconds: "Mikrosekunden",
  nanoseconds: "Nanosekunden",
  "{1} since 1970-01-01 UTC": "{1} seit 1970-01-01 UTC",
  "{1} from the beginning of the recording": "{1} ab Beginn der Aufzeichnung",
  "{1} hh:mm:ss in steps of {2} s with offset from UTC, {3}":
    "{1} hh:mm:ss in Schritten von {2} s mit Versatz zu UTC, {3}",
  "{1} hh:mm:ss in steps of {2} s, {3}": "{1} hh:mm:ss in Schritten von {2} s, {3}",
  'channel {1} ("{2}")': "Kanal {1} („{2}“)",
  "voltage {1}": "Spannung {1}",
  "current {1}": "Strom {1}",
  "{1} and others": "{1} und andere",
  "it is {1} like {2}; say in the setup, under channels:, which of them is to be used":
    "{1} wie {2}; im Setup unter channels: angeben, welcher davon zu verwenden ist",
  "the setup uses {1} as {2}": "das Setup verwendet {1} als {2}",
  "The clock does not fit the sampling rate of {1} per second: {2} of {3} joined files begin up to {4} ms beside the sample that they are put on.":
    "Die Uhr passt nicht zur Abtastrate von {1} je Sekunde: {2} von {3} verbundenen Dateien beginnen bis zu {4} ms neben dem Abtastwert, auf den sie gesetzt sind.",
  "The sampling rates of joined files differ by less than 0.1 % (a drifting clock); their mean, {1} per second, is used.":
    "Die Abtastraten der verbundenen Dateien unterscheiden sich um weniger als 0,1 % (eine driftende Uhr); verwendet wird ihr Mittel, {1} je Sekunde.",
  "the log holds waveforms, whose samples carry the time at which they were taken":
    "die Messdaten enthalten Kurvenformen, deren Abtastwerte die Zeit ihrer Aufnahme tragen",
  "it is zero throughout": "durchgehend null",
  "it holds the same value throughout": "durchgehend derselbe Wert",
  "its values never change sign, so they are no waveform (an r.m.s. value, direct voltage or contact)":
    "die Werte wechseln nie das Vorzeichen, sind also keine Kurvenform (ein Effektivwert, eine Gleichspannung oder ein Kontakt)",
  "it changes sign {1} times a second at most, too slowly for a supply voltage or current":
    "wechselt das Vorzeichen höchstens {1}-mal je Sekunde, zu langsam für eine Versorgungsspannung oder einen Strom",
};
