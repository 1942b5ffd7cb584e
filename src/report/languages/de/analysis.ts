/** Remarks of measuring and deriving, names of quantities, reasons of the setup. */
export const ANALYSIS: Readonly<Record<string, string>> = {
  "THD on {1} is computed here from the logged harmonics 2 to {2}, where it was not logged.":
    "THD an {1} ist hier aus den aufgezeichneten Oberschwingungen 2 bis {2} berechnet, wo THD nicht aufgezeichnet wurde.",
  "THD on {1} is computed here from the logged harmonics 2 to {2}.":
    "THD an {1} ist hier aus den aufgezeichneten Oberschwingungen 2 bis {2} berechnet.",
  "THD was not logged on {1}, and it needs all harmonics from 2 to {2}; the log holds {3} of these {4}.":
    "THD an {1} wurde nicht aufgezeichnet; für die Berechnung sind alle Oberschwingungen von 2 bis {2} nötig. Die Messdaten enthalten {3} von diesen {4}.",
  "u2 is computed here from the three phase-to-phase voltages (IEC 61000-4-30, r.m.s. formula), where it was not logged.":
    "u2 ist hier aus den drei Außenleiterspannungen berechnet (IEC 61000-4-30, Effektivwertformel), wo u2 nicht aufgezeichnet wurde.",
  "u2 is computed here from the three phase-to-phase voltages (IEC 61000-4-30, r.m.s. formula).":
    "u2 ist hier aus den drei Außenleiterspannungen berechnet (IEC 61000-4-30, Effektivwertformel).",
  "Unbalance was not logged, and it cannot be computed without all three phase-to-phase voltages.":
    "Die Unsymmetrie wurde nicht aufgezeichnet und kann nicht berechnet werden, weil dafür alle drei Außenleiterspannungen nötig sind.",
  "The harmonics on {1} are in volts, and neither the fundamental (order 1) nor the voltage was logged beside them, so their share of the fundamental is not known.":
    "Die Oberschwingungen an {1} sind in Volt angegeben, und weder die Grundschwingung (Ordnung 1) noch die Spannung wurde daneben aufgezeichnet; ihr Anteil an der Grundschwingung ist daher nicht bekannt.",
  "Harmonics on {1} are logged in volts; here in % of the logged fundamental.":
    "Die Oberschwingungen an {1} sind in Volt aufgezeichnet; hier in % der aufgezeichneten Grundschwingung.",
  "Harmonics on {1} are logged in volts; here in % of the fundamental that remains of the r.m.s. voltage without its harmonics.":
    "Die Oberschwingungen an {1} sind in Volt aufgezeichnet; hier in % der Grundschwingung, die vom Effektivwert der Spannung ohne ihre Oberschwingungen bleibt.",
  "The waveforms of the log last {1} s of {2} d; events are taken from them, interval values only from what was logged.":
    "Die Kurvenformen der Messdaten dauern {1} s von {2} d; ihnen werden nur Ereignisse entnommen, Intervallwerte nur dem, was aufgezeichnet wurde.",
  "Plt is computed here from the logged ten-minute Pst, over the two-hour blocks of the UTC clock.":
    "Plt ist hier aus den aufgezeichneten Zehnminutenwerten von Pst berechnet, über die Zweistundenblöcke der UTC-Uhr.",
  "It was logged every {1}; the standard counts values of {2}, which cannot be made from that.":
    "Aufgezeichnet wurde alle {1}; die Norm zählt Werte über {2}, die sich daraus nicht bilden lassen.",
  "Plt was logged every {1}; each two-hour block without ten-minute Pst takes the value of its last row.":
    "Plt wurde alle {1} aufgezeichnet; jeder Zweistundenblock ohne Zehnminutenwerte von Pst erhält den Wert seiner letzten Zeile.",
  "root of the mean square": "quadratischer Mittelwert",
  "arithmetic mean": "arithmetisches Mittel",
  "{1}: values of {2} combined to {3} on the clock ({4}).":
    "{1}: Werte über {2} im Takt der Uhr zu {3} zusammengefasst ({4}).",
  "No unbroken stretch of the recording holds a basic window (10 cycles at 50 Hz, 12 at 60 Hz), so nothing was measured over windows.":
    "Kein lückenloser Abschnitt der Aufzeichnung enthält ein Grundfenster (10 Perioden bei 50 Hz, 12 bei 60 Hz); daher wurde nichts über Fenster gemessen.",
  "Pst and Plt are for the {1} V lamp at {2} Hz. The first {3} s after the start and after each gap are left out, because the flickermeter settles.":
    "Pst und Plt gelten für die {1}-V-Lampe bei {2} Hz. Die ersten {3} s nach dem Beginn und nach jeder Lücke sind ausgelassen, weil das Flickermeter einschwingt.",
  "No ten minutes of the clock were recorded without a gap after the first {1} s, in which the flickermeter settles.":
    "Nach den ersten {1} s, in denen das Flickermeter einschwingt, wurden keine zehn Minuten der Uhr ohne Lücke aufgezeichnet.",
  "The highest Plt over any twelve Pst in a row is {1} on {2}, from {3}. It is for information; the two-hour blocks of the clock are judged.":
    "Der höchste Plt über zwölf beliebige aufeinanderfolgende Pst beträgt {1} an {2}, ab {3}. Er dient der Information; beurteilt werden die Zweistundenblöcke der Uhr.",
  "Harmonics are measured to order {1} only: with {2} samples per second the recording shows nothing sound above {3} Hz. Higher orders are absent, not zero.":
    "Oberschwingungen sind nur bis zur Ordnung {1} gemessen: Mit {2} Abtastwerten je Sekunde zeigt die Aufzeichnung über {3} Hz nichts Verlässliches. Höhere Ordnungen fehlen; sie sind nicht null.",
  "THD needs all harmonics from 2 to {1}; with {2} samples per second they are measured to order {3}.":
    "Für THD sind alle Oberschwingungen von 2 bis {1} nötig; mit {2} Abtastwerten je Sekunde sind sie bis zur Ordnung {3} gemessen.",
  "inrush currents": "Einschaltströme",
  "Mains signalling at {1} Hz cannot be measured: with {2} samples per second the recording shows nothing sound above {3} Hz.":
    "Die Netz-Signalübertragung bei {1} Hz kann nicht gemessen werden: Mit {2} Abtastwerten je Sekunde zeigt die Aufzeichnung über {3} Hz nichts Verlässliches.",
  "Reactive power is that of the fundamental (Q1 of IEEE 1459).":
    "Die Blindleistung ist die der Grundschwingung (Q1 nach IEEE 1459).",
  "Power needs the voltage to neutral and the current of a phase, or three phase-to-phase voltages and the currents.":
    "Für die Leistung sind Spannung gegen den Neutralleiter und Strom eines Außenleiters nötig oder drei Außenleiterspannungen und die Ströme.",
  "rapid voltage changes": "schnelle Spannungsänderungen",
  "{1} more transients are not listed; the first {2} are.":
    "Weitere {1} Transienten sind nicht aufgeführt; die ersten {2} sind es.",
  "Unbalance needs three voltages, phase to neutral or phase to phase.":
    "Für die Unsymmetrie sind drei Spannungen nötig, gegen den Neutralleiter oder zwischen den Außenleitern.",
  "The phases follow each other in the order L1, L3, L2: two voltages are exchanged, or one is inverted. Exchange them in the setup.":
    "Die Phasen folgen einander in der Reihenfolge L1, L3, L2: Zwei Spannungen sind vertauscht, oder eine ist umgepolt. Im Setup vertauschen.",
  "The half-cycle values around them were kept for the {1} most severe of {2} {3}.":
    "{3}: Die Halbperiodenwerte um das Ereignis sind für die {1} schwersten von {2} Ereignissen gespeichert.",
  "The waveform around them was kept for the {1} most severe of {2} {3}.":
    "{3}: Die Kurvenform um das Ereignis ist für die {1} schwersten von {2} Ereignissen gespeichert.",
  "dips, swells and interruptions": "Einbrüche, Überhöhungen und Unterbrechungen",
  "Only the span from {1} to {2} was asked for; the log runs from {3} to {4}.":
    "Nur der Zeitraum von {1} bis {2} war verlangt; die Messdaten reichen von {3} bis {4}.",
  "supply voltage": "Versorgungsspannung",
  "power frequency": "Netzfrequenz",
  "total harmonic distortion of the voltage": "Gesamtoberschwingungsgehalt der Spannung",
  "total harmonic distortion of the current": "Gesamtoberschwingungsgehalt des Stroms",
  "harmonic voltage": "Oberschwingungsspannung",
  "harmonic current": "Oberschwingungsstrom",
  "interharmonic voltage": "Zwischenharmonische Spannung",
  "mains signalling voltage": "Netz-Signalübertragungsspannung",
  "short-term flicker severity": "Kurzzeit-Flickerstärke",
  "long-term flicker severity": "Langzeit-Flickerstärke",
  "voltage unbalance": "Unsymmetrie der Spannung",
  "zero-sequence unbalance": "Nullsystem-Unsymmetrie",
  "active power": "Wirkleistung",
  "reactive power": "Blindleistung",
  "apparent power": "Scheinleistung",
  "power factor": "Leistungsfaktor",
  "voltage underdeviation": "Unterabweichung der Spannung",
  "voltage overdeviation": "Überabweichung der Spannung",
  "crest factor of the voltage": "Scheitelfaktor der Spannung",
  "crest factor of the current": "Scheitelfaktor des Stroms",
  "interharmonic current": "Zwischenharmonischer Strom",
  "displacement power factor": "Verschiebungsfaktor",
  "fundamental active power": "Grundschwingungs-Wirkleistung",
  "fundamental apparent power": "Grundschwingungs-Scheinleistung",
  "nonactive power": "Nichtwirkleistung",
  "current distortion power": "Stromverzerrungsleistung",
  "voltage distortion power": "Spannungsverzerrungsleistung",
  "harmonic apparent power": "Oberschwingungs-Scheinleistung",
  "active energy, import": "Wirkenergie, Bezug",
  "active energy, export": "Wirkenergie, Lieferung",
  "the stamps carry their own offset from UTC": "die Zeitstempel tragen ihren eigenen Versatz zu UTC",
  "the stamps carry no zone and none was given; they are read as UTC (--zone names another)":
    "die Zeitstempel tragen keine Zeitzone, und keine wurde angegeben; sie werden als UTC gelesen (--zone nennt eine andere)",
  "the header of the time column says so": "die Überschrift der Zeitspalte sagt es so",
  "the log does not say whether a stamp marks the start or the end of its interval (setup: intervalLabel)":
    "die Messdaten geben nicht an, ob ein Zeitstempel den Beginn oder das Ende seines Intervalls bezeichnet (Setup: intervalLabel)",
  "no limit set was named (--rules); this is the default":
    "es wurde kein Grenzwertsatz genannt (--rules); dies ist die Vorgabe",
  "class {1} (IEC 61000-4-30)": "Klasse {1} (IEC 61000-4-30)",
  "serial number {1}": "Seriennummer {1}",
  "firmware {1}": "Firmware {1}",
  "calibrated {1}": "kalibriert {1}",
  "calibration due {1}": "Kalibrierung fällig {1}",
  "certificate {1}": "Kalibrierschein {1}",
  interconnected: "mit Verbindung zum Verbundnetz",
  "not interconnected": "ohne Verbindung zum Verbundnetz",
  "earthing {1}": "Erdung {1}",
  "harmonics by subgroups": "Oberschwingungen nach Untergruppen",
  "harmonics by groups": "Oberschwingungen nach Gruppen",
  "dips below {1} %, swells above {2} %, interruptions below {3} %, hysteresis {4} %":
    "Einbrüche unter {1} %, Überhöhungen über {2} %, Unterbrechungen unter {3} %, Hysterese {4} %",
  "reference declared voltage": "Bezug vereinbarte Versorgungsspannung",
  "reference sliding voltage": "Bezug gleitende Bezugsspannung",
  "rapid voltage changes from {1} %": "schnelle Spannungsänderungen ab {1} %",
  "transients from {1} % of the crest": "Transienten ab {1} % des Scheitelwerts",
  "inrush currents not looked for": "Einschaltströme nicht gesucht",
  "inrush currents from {1} A": "Einschaltströme ab {1} A",
  "{1}, smoothed with {2} s": "{1}, geglättet mit {2} s",
  "flicker for the {1} V lamp": "Flicker für die {1}-V-Lampe",
  "mains signalling not measured": "Netz-Signalübertragung nicht gemessen",
  "mains signalling at {1} Hz": "Netz-Signalübertragung bei {1} Hz",
  "the usual settings (setup: measurement)": "die üblichen Einstellungen (Setup: measurement)",
  "the log holds voltages between phases only": "die Messdaten enthalten nur Außenleiterspannungen",
  "medium and high voltage are judged between phases":
    "Mittel- und Hochspannung werden zwischen den Außenleitern beurteilt",
  "the log holds one voltage only, L1 to neutral; a three-phase supply has two more, which were not logged":
    "die Messdaten enthalten nur eine Spannung, L1 gegen den Neutralleiter; eine dreiphasige Versorgung hat zwei weitere, die nicht aufgezeichnet wurden",
  "the log holds {1}": "die Messdaten enthalten {1}",
  "the log holds no voltages that would show the connection":
    "die Messdaten enthalten keine Spannungen, die die Anschlussart zeigen würden",
  "the nominal voltage of {1}; the log holds no voltages to compare it with":
    "die Nennspannung von {1}; die Messdaten enthalten keine Spannungen zum Vergleich",
  "nominal voltage of a public low-voltage supply; the median of the measured voltages is {1}":
    "Nennspannung einer öffentlichen Niederspannungsversorgung; der Median der gemessenen Spannungen beträgt {1}",
  "nominal frequency of {1}": "Nennfrequenz von {1}",
  "{1} kV": "{1} kV",
  "{1} V": "{1} V",
  "rated power {1} W": "Nennleistung {1} W",
  "temperature coefficient {1} %/K": "Temperaturkoeffizient {1} %/K",
  "nominal operating cell temperature {1} °C": "Nenn-Betriebstemperatur der Zelle {1} °C",
  "1 week": "1 Woche",
  "{1} weeks": "{1} Wochen",
};
