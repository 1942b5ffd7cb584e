/** The result in plain words. */
export const PLAIN: Readonly<Record<string, string>> = {
  "Supply voltage report: the result in plain words":
    "Bericht zur Versorgungsspannung: das Ergebnis in einfachen Worten",
  "What was promised?": "Was war zugesagt?",
  "What was measured?": "Was wurde gemessen?",
  "Was the measuring sound?": "War die Messung einwandfrei?",
  "Was a rule broken?": "Wurde eine Regel verletzt?",
  "What happens next?": "Wie geht es weiter?",
  "The other pages hold the same result for engineers, with every limit, count and source.":
    "Die übrigen Seiten enthalten dasselbe Ergebnis für Fachleute, mit jedem Grenzwert, jeder Zählung und jeder Quelle.",
  "The place was not stated.": "Der Ort wurde nicht angegeben.",
  "Which instrument measured, and when it was last calibrated, was not stated.":
    "Welches Gerät gemessen hat und wann es zuletzt kalibriert wurde, ist nicht angegeben.",
  "The program checked the recording for faults of its own and found none.":
    "Das Programm hat die Aufzeichnung auf eigene Fehler geprüft und keine gefunden.",
  "No missing value could turn the result.": "Kein fehlender Wert könnte das Ergebnis ändern.",
  "Missing values could turn the result in part; the following pages say where.":
    "Fehlende Werte könnten das Ergebnis teilweise ändern; die folgenden Seiten sagen, wo.",
  "No brief drop, brief rise or interruption was found.":
    "Es wurden kein kurzer Einbruch, kein kurzer Anstieg und keine Unterbrechung gefunden.",
  "Brief drops, brief rises and interruptions cannot be seen in a recording of this kind.":
    "Kurze Einbrüche, kurze Anstiege und Unterbrechungen sind in einer Aufzeichnung dieser Art nicht zu erkennen.",
  "The recording holds nothing that these rules set a limit for.":
    "Die Aufzeichnung enthält nichts, wofür diese Regeln einen Grenzwert nennen.",
  frequency: "Frequenz",
  "single distortions of the wave shape (harmonics)": "einzelne Verzerrungen der Kurvenform (Oberschwingungen)",
  "distortion of the wave shape as a whole": "Verzerrung der Kurvenform insgesamt",
  "flicker of lamps": "Flackern von Lampen",
  "flicker of lamps over ten minutes": "Flackern von Lampen über zehn Minuten",
  "unevenness of the three phases": "Ungleichheit der drei Phasen",
  "control signals on the network": "Steuersignale im Netz",
  "{1} volts": "{1} Volt",
  "{1} percent": "{1} Prozent",
  "{1} hertz": "{1} Hertz",
  "ten-second averages": "Zehn-Sekunden-Mittelwerten",
  "ten-minute averages": "Zehn-Minuten-Mittelwerten",
  "two-hour values": "Zweistundenwerten",
  "each day": "jedes Tages",
  "each week": "jeder Woche",
  "each year": "jedes Jahres",
  "values of {1} seconds each": "Werten über je {1} Sekunden",
  "Of all {1} of {2}: {3} from {4} to {5}.": "Von allen {1} {2}: {3} von {4} bis {5}.",
  "Of the {1} of {2} at least {3} percent: {4} from {5} to {6}.":
    "Von den {1} {2} mindestens {3} Prozent: {4} von {5} bis {6}.",
  "at most {1}": "höchstens {1}",
  "Of all {1} of {2}: {3} {4}.": "Von allen {1} {2}: {3} {4}.",
  "Of the {1} of {2} at least {3} percent: {4} {5}.": "Von den {1} {2} mindestens {3} Prozent: {4} {5}.",
  "There are limits as well for: {1}.": "Grenzwerte gibt es außerdem für: {1}.",
  "above {1}": "über {1}",
  "below {1}": "unter {1}",
  "outside {1} to {2}": "außerhalb von {1} bis {2}",
  "{1}: {2} of {3} {4} were {5}; allowed are {6}.": "{1}: {2} von {3} {4} lagen {5}; zulässig sind {6}.",
  "{1} The worst one was {2}, on {3}.": "{1} Der ungünstigste Wert betrug {2}, am {3}.",
  "{1}, number {2}": "{1}, Nummer {2}",
  "{1} on phase {2}": "{1} an Phase {2}",
  "Yes. The supply did not keep to the rules of “{1}”.":
    "Ja. Die Versorgung hat die Regeln von „{1}“ nicht eingehalten.",
  "No. In all that could be judged, the supply kept to the rules of “{1}”.":
    "Nein. In allem, was beurteilt werden konnte, hat die Versorgung die Regeln von „{1}“ eingehalten.",
  "That cannot be said. The recording does not decide whether the supply kept to the rules of “{1}”.":
    "Das lässt sich nicht sagen. Die Aufzeichnung entscheidet nicht, ob die Versorgung die Regeln von „{1}“ eingehalten hat.",
  "That was not judged. The recording holds nothing that decides it by the rules of “{1}”.":
    "Das wurde nicht beurteilt. Die Aufzeichnung enthält nichts, was dies nach den Regeln von „{1}“ entscheidet.",
  "This holds only because spans of time were left out, for reasons that somebody stated and nobody measured. With all that was recorded the verdict would be: {1}.":
    "Das gilt nur, weil Zeiträume ausgelassen wurden, aus Gründen, die jemand angegeben und niemand gemessen hat. Mit allem Aufgezeichneten lautete die Bewertung: {1}.",
  "One of the rules could not be judged with this recording; it is not counted as kept.":
    "Eine Regel konnte mit dieser Aufzeichnung nicht beurteilt werden; sie zählt nicht als eingehalten.",
  "{1} of the rules could not be judged with this recording; they are not counted as kept.":
    "{1} Regeln konnten mit dieser Aufzeichnung nicht beurteilt werden; sie zählen nicht als eingehalten.",
  "Measured was the supply at: {1}.": "Gemessen wurde die Versorgung an dieser Stelle: {1}.",
  "The recording runs from {1} to {2}, in the local time of {3}.":
    "Die Aufzeichnung läuft vom {1} bis {2}, in der Ortszeit von {3}.",
  "It has {1} valid ten-minute intervals out of {2}.":
    "Sie enthält {1} von {2} Zehn-Minuten-Intervallen mit gültigen Werten.",
  "It has {1} ten-minute intervals: {2} were left out, and of the others {3} are valid.":
    "Sie enthält {1} Zehn-Minuten-Intervalle: {2} wurden ausgelassen, und von den übrigen sind {3} gültig.",
  "No, not in all parts. Findings that kept values from being judged: {1}. What they touch is left open and counted neither as good nor as bad.":
    "Nein, nicht in allen Teilen. Befunde, die die Beurteilung von Werten verhinderten: {1}. Was sie betreffen, bleibt offen und zählt weder als gut noch als schlecht.",
  "The program checked the recording for faults of its own. Findings worth knowing: {1}. None of them kept a value from being judged.":
    "Das Programm hat die Aufzeichnung auf eigene Fehler geprüft. Befunde, die man kennen sollte: {1}. Keiner davon verhinderte die Beurteilung eines Werts.",
  "The instrument, as stated by whoever measured: {1}.": "Das Messgerät, wie von der messenden Person angegeben: {1}.",
  "Spans of time left out because somebody stated unusual conditions: {1}. The pages on exclusions say who, why, and what they change.":
    "Zeiträume, die ausgelassen wurden, weil jemand außergewöhnliche Umstände angegeben hat: {1}. Die Seiten zu den Ausschlüssen sagen, wer, warum und was sie ändern.",
  "interruptions: {1}": "Unterbrechungen: {1}",
  "brief drops of the voltage: {1}": "kurze Einbrüche der Spannung: {1}",
  "brief rises of the voltage: {1}": "kurze Anstiege der Spannung: {1}",
  "Recorded as well: {1}.": "Außerdem aufgezeichnet: {1}.",
  "The voltages moved against each other as they do when the neutral conductor is broken or has come loose. That can destroy appliances, start a fire, and put metal parts of appliances under voltage.":
    "Die Spannungen bewegten sich gegeneinander, wie sie es tun, wenn der Neutralleiter unterbrochen ist oder sich gelockert hat. Das kann Geräte zerstören, einen Brand auslösen und Metallteile von Geräten unter Spannung setzen.",
  "The voltage was so high for so long that it can destroy appliances and start a fire.":
    "Die Spannung war so lange so hoch, dass sie Geräte zerstören und einen Brand auslösen kann.",
  "Give this report and the unchanged log files to the network operator and ask in writing what will be done, and by when.":
    "Diesen Bericht und die unveränderten Messdateien dem Netzbetreiber geben und schriftlich fragen, was bis wann geschehen wird.",
  "The operator can check each number: the log files have fingerprints in this report, and the same files give the same result.":
    "Der Netzbetreiber kann jede Zahl nachprüfen: Die Messdateien haben in diesem Bericht Fingerabdrücke, und dieselben Dateien ergeben dasselbe Ergebnis.",
  "After the cause has been mended, have the supply recorded again for at least a week.":
    "Nach Beheben der Ursache die Versorgung erneut mindestens eine Woche lang aufzeichnen lassen.",
  "Nothing has to be mended because of this recording.": "Wegen dieser Aufzeichnung muss nichts behoben werden.",
  "If the trouble goes on, write down day and time of each occurrence, and have the supply recorded again while it happens.":
    "Halten die Beschwerden an, Tag und Uhrzeit jedes Auftretens notieren und die Versorgung erneut aufzeichnen lassen, während sie auftreten.",
  "Have the supply recorded again for at least a full week without gaps, at the point of supply.":
    "Die Versorgung erneut mindestens eine volle Woche lang ohne Lücken an der Übergabestelle aufzeichnen lassen.",
  "Write down day and time of each occurrence of trouble meanwhile.":
    "In der Zwischenzeit Tag und Uhrzeit jeder auftretenden Störung notieren.",
  "Have the supply recorded with an instrument that measures what the rules ask for, for at least a full week.":
    "Die Versorgung mindestens eine volle Woche lang mit einem Messgerät aufzeichnen lassen, das misst, was die Regeln verlangen.",
  "Have the supply recorded for at least a full week, at the point of supply.":
    "Die Versorgung mindestens eine volle Woche lang an der Übergabestelle aufzeichnen lassen.",
  "Have the stated reasons for leaving out spans of time proven; the result hangs on them.":
    "Die angegebenen Gründe für das Auslassen von Zeiträumen nachweisen lassen; das Ergebnis hängt daran.",
  "Keep the log files as they are. A changed file can no longer be told from a forged one.":
    "Die Messdateien unverändert aufbewahren. Eine geänderte Datei ist von einer gefälschten nicht mehr zu unterscheiden.",
};
