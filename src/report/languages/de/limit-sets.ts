/** Titles and notes of the limit sets. */
export const LIMIT_SETS: Readonly<Record<string, string>> = {
  "EN 50160:2010, high voltage, network not interconnected":
    "EN 50160:2010, Hochspannung, Netz ohne Verbindung zum Verbundnetz",
  "EN 50160:2010, high voltage": "EN 50160:2010, Hochspannung",
  "For high voltage the standard gives no limits for the supply voltage; those for total harmonic distortion are under consideration (both from memory). Rapid voltage changes and mains signalling are left out because no values are known here.":
    "Für Hochspannung nennt die Norm keine Grenzwerte der Versorgungsspannung; die des Gesamtoberschwingungsgehalts sind in Beratung (beides aus dem Gedächtnis). Schnelle Spannungsänderungen und Netz-Signalübertragung sind ausgelassen, weil hier keine Werte bekannt sind.",
  "All limits for high voltage are from memory.": "Alle Grenzwerte für Hochspannung sind aus dem Gedächtnis angegeben.",
  "The value for high voltage is from memory.": "Der Wert für Hochspannung ist aus dem Gedächtnis angegeben.",
  "The standard gives no value for the orders 17, 19, 23 and 25.":
    "Die Norm nennt keinen Wert für die Ordnungen 17, 19, 23 und 25.",
  "EN 50160:2010, low voltage, network not interconnected":
    "EN 50160:2010, Niederspannung, Netz ohne Verbindung zum Verbundnetz",
  "The same range holds for special remote users (from memory).":
    "Derselbe Bereich gilt für besonders abgelegene Netznutzer (aus dem Gedächtnis).",
  "EN 50160:2010, low voltage": "EN 50160:2010, Niederspannung",
  "The numbers were read in public documents that quote the standard (named at each requirement as quoted second-hand); the paid text of the standard was not read. What no such document shows is marked as not confirmed.":
    "Die Zahlen wurden in öffentlichen Dokumenten gelesen, die die Norm zitieren (bei jeder Anforderung als Zitat aus zweiter Hand genannt); der kostenpflichtige Text der Norm wurde nicht gelesen. Was kein solches Dokument zeigt, ist als nicht bestätigt gekennzeichnet.",
  "The limits hold under normal operating conditions. Excluded are temporary supply, installations that do not comply with the rules for their connection, exceptional weather, third-party action, acts of public authorities, industrial action, force majeure and shortage of power.":
    "Die Grenzwerte gelten unter normalen Betriebsbedingungen. Ausgenommen sind vorübergehende Versorgung, Anlagen, die ihre Anschlussregeln nicht einhalten, außergewöhnliche Wetterbedingungen, Eingriffe Dritter, behördliche Maßnahmen, Arbeitskampf, höhere Gewalt und Leistungsmangel.",
  "Values flagged because a dip, swell or interruption fell into their interval count for supply voltage and frequency and are left out for harmonics, total harmonic distortion, unbalance, flicker and mains signalling. The standard leaves this choice open (from memory).":
    "Werte, die gekennzeichnet sind, weil ein Einbruch, eine Überhöhung oder eine Unterbrechung in ihr Intervall fiel, zählen bei Versorgungsspannung und Frequenz und sind bei Oberschwingungen, Gesamtoberschwingungsgehalt, Unsymmetrie, Flicker und Netz-Signalübertragung ausgelassen. Die Norm lässt diese Wahl offen (aus dem Gedächtnis).",
  "The standard gives no values for interharmonic voltages. Overvoltages between live conductors and earth, for which it gives indications only, are not part of this set.":
    "Die Norm nennt keine Werte für zwischenharmonische Spannungen. Überspannungen zwischen aktiven Leitern und Erde, für die sie nur Anhaltswerte nennt, sind nicht Teil dieses Satzes.",
  "Power frequency, most of the time": "Netzfrequenz, meiste Zeit",
  "One document names a week instead of the year in an overview; its running text and the others say year.":
    "Ein Dokument nennt in einer Übersicht eine Woche statt des Jahres; sein Fließtext und die anderen sagen Jahr.",
  "Power frequency, all of the time": "Netzfrequenz, gesamte Zeit",
  "Supply voltage, most of the week": "Versorgungsspannung, größter Teil der Woche",
  "Supply voltage, all of the time": "Versorgungsspannung, gesamte Zeit",
  "Rapid voltage changes": "Schnelle Spannungsänderungen",
  "An indication, not a limit. The larger changes are short and occur some times a day.":
    "Ein Anhaltswert, kein Grenzwert. Die größeren Änderungen sind kurz und treten einige Male am Tag auf.",
  "Flicker severity": "Flickerstärke",
  "Voltage unbalance": "Unsymmetrie der Spannung",
  "Where many users are connected to one or two phases, up to about 3 % occurs at some points of supply.":
    "Wo viele Netznutzer an eine oder zwei Phasen angeschlossen sind, treten an einigen Übergabestellen bis etwa 3 % auf.",
  "Harmonic voltages": "Oberschwingungsspannungen",
  "Each order is judged by itself (from memory); one of the documents counts the intervals in which any order is above its limit.":
    "Jede Ordnung wird für sich beurteilt (aus dem Gedächtnis); eines der Dokumente zählt die Intervalle, in denen irgendeine Ordnung über ihrem Grenzwert liegt.",
  "Total harmonic distortion of the voltage, up to order 40":
    "Gesamtoberschwingungsgehalt der Spannung, bis Ordnung 40",
  "Mains signalling voltages": "Netz-Signalübertragungsspannungen",
  "The points of the curve are from memory, those above 10 kHz with little confidence. The share and the 3 s interval are quoted second-hand in an energy-monitor manual of 2019; an installation-tester manual prints 2 s.":
    "Die Punkte der Kurve sind aus dem Gedächtnis angegeben, die über 10 kHz mit geringer Sicherheit. Der Anteil und das 3-s-Intervall sind Zitate aus zweiter Hand, aus der Anleitung eines Energiemonitors von 2019; die Anleitung eines Installationsprüfgeräts nennt 2 s.",
  "Voltage dips by residual voltage and duration": "Spannungseinbrüche nach Restspannung und Dauer",
  "The standard sets no limit for the counts. A cell counts events after those of several phases at one time were made one; that close events in time are made one too is from memory.":
    "Die Norm setzt keinen Grenzwert für die Anzahlen. Eine Zelle zählt Ereignisse, nachdem gleichzeitige mehrerer Phasen zu einem zusammengefasst wurden; dass auch zeitlich nahe Ereignisse zusammengefasst werden, ist aus dem Gedächtnis angegeben.",
  "Voltage swells by voltage and duration": "Spannungsüberhöhungen nach Spannung und Dauer",
  "The standard sets no limit for the counts. The document adds a column for swells above 60 s; the standard's own table has three columns (from memory).":
    "Die Norm setzt keinen Grenzwert für die Anzahlen. Das Dokument fügt eine Spalte für Überhöhungen über 60 s hinzu; die Tabelle der Norm selbst hat drei Spalten (aus dem Gedächtnis).",
  "EN 50160:2010, medium voltage, network not interconnected":
    "EN 50160:2010, Mittelspannung, Netz ohne Verbindung zum Verbundnetz",
  "EN 50160:2010, medium voltage": "EN 50160:2010, Mittelspannung",
  "Before the 2010 edition the share was 95 % (from memory).":
    "Vor der Ausgabe 2010 betrug der Anteil 95 % (aus dem Gedächtnis).",
  "may be substantially lower, depending on the design of the network":
    "kann je nach Aufbau des Netzes wesentlich niedriger sein",
  "The points of the curve are from memory and with little confidence; levels from 9 kHz to 95 kHz are under consideration (from memory). The share and the 3 s interval are quoted second-hand in an energy-monitor manual of 2019.":
    "Die Punkte der Kurve sind aus dem Gedächtnis und mit geringer Sicherheit angegeben; Pegel von 9 kHz bis 95 kHz sind in Beratung (aus dem Gedächtnis). Der Anteil und das 3-s-Intervall sind Zitate aus zweiter Hand, aus der Anleitung eines Energiemonitors von 2019.",
  "EN 50160:2022, low voltage, network not interconnected":
    "EN 50160:2022, Niederspannung, Netz ohne Verbindung zum Verbundnetz",
  "EN 50160:2022, low voltage": "EN 50160:2022, Niederspannung",
  "No public document seen prints the tables of the 2022 edition. Its values here are those of the 2010 edition, and for the harmonic orders 15 and 21 values from memory. A log with order 15 or 21 between the two may change its verdict with the edition.":
    "Kein eingesehenes öffentliches Dokument druckt die Tabellen der Ausgabe 2022 ab. Die Werte hier sind die der Ausgabe 2010 und, für die Ordnungen 15 und 21, Werte aus dem Gedächtnis. Die Bewertung von Messdaten mit Ordnung 15 oder 21 zwischen beiden kann sich mit der Ausgabe ändern.",
  "A paper of 2019 reports that amendments of the 2010 edition introduced 1-min values and 100 % of the data for the supply voltage at low voltage. No other document seen confirms it, and it is not applied here.":
    "Ein Aufsatz von 2019 berichtet, dass Änderungen der Ausgabe 2010 für die Versorgungsspannung in Niederspannung 1-min-Werte und 100 % der Daten eingeführt haben. Kein anderes eingesehenes Dokument bestätigt dies, und es wird hier nicht angewandt.",
  "This is the value of the 2010 edition; no document seen shows that of 2022.":
    "Dies ist der Wert der Ausgabe 2010; kein eingesehenes Dokument zeigt den von 2022.",
  "every document seen prints 0.5 %, but each of them quotes the 2010 edition or an earlier one":
    "jedes eingesehene Dokument nennt 0,5 %, zitiert aber die Ausgabe 2010 oder eine frühere",
  "The values are those of the 2010 edition, but for orders 15 and 21; no document seen shows those of 2022. Each order is judged by itself (from memory).":
    "Die Werte sind die der Ausgabe 2010, außer für die Ordnungen 15 und 21; kein eingesehenes Dokument zeigt die von 2022. Jede Ordnung wird für sich beurteilt (aus dem Gedächtnis).",
  "EN 50160:2022, medium voltage, network not interconnected":
    "EN 50160:2022, Mittelspannung, Netz ohne Verbindung zum Verbundnetz",
  "EN 50160:2022, medium voltage": "EN 50160:2022, Mittelspannung",
  "No public document seen prints the tables of the 2022 edition. Its values here are those of the 2010 edition.":
    "Kein eingesehenes öffentliches Dokument druckt die Tabellen der Ausgabe 2022 ab. Die Werte hier sind die der Ausgabe 2010.",
  "France, low voltage (EN 50160:2010 with the order of 24 December 2007)":
    "Frankreich, Niederspannung (EN 50160:2010 mit dem Erlass vom 24. Dezember 2007)",
  "For the consumer's point of connection the order also names a voltage gradient above 2 % for each further kW of single-phase load; a log of the supply voltage alone cannot show it, and it is not judged here.":
    "Für die Anschlussstelle des Verbrauchers nennt der Erlass auch einen Spannungsgradienten über 2 % je weiterem kW einphasiger Last; Messdaten der Versorgungsspannung allein können ihn nicht zeigen, und er wird hier nicht beurteilt.",
  "A fault is established when at least one 10-minute value lies below 90 % or above 110 %.":
    "Ein Mangel ist festgestellt, wenn mindestens ein 10-Minuten-Wert unter 90 % oder über 110 % liegt.",
  "Netherlands, low voltage (EN 50160:2010 with Netcode elektriciteit)":
    "Niederlande, Niederspannung (EN 50160:2010 mit Netcode elektriciteit)",
  "The grid code words flicker severity as a value that moves on by 10 minutes; here it is judged in the two-hour intervals of EN 50160.":
    "Der Netzkodex beschreibt die Flickerstärke als einen Wert, der um jeweils 10 Minuten vorrückt; hier wird sie in den Zweistundenintervallen von EN 50160 beurteilt.",
  "At most 10 %; at most 3 % where no loss of generation, of large users or of lines is the cause. Not judged here.":
    "Höchstens 10 %; höchstens 3 %, wo kein Ausfall von Erzeugung, Großverbrauchern oder Leitungen die Ursache ist. Hier nicht beurteilt.",
  "Flicker severity, all of the time": "Flickerstärke, gesamte Zeit",
  "Voltage unbalance, all of the time": "Unsymmetrie der Spannung, gesamte Zeit",
  "Spain, low voltage (EN 50160:2010 with Real Decreto 1955/2000)":
    "Spanien, Niederspannung (EN 50160:2010 mit Real Decreto 1955/2000)",
};
