/** Titles and notes of the limit sets. */
export const LIMIT_SETS: Readonly<Record<string, string>> = {
  "EN 50160:2010, high voltage, network not interconnected": "EN 50160:2010, alta tensione, rete non interconnessa",
  "EN 50160:2010, high voltage": "EN 50160:2010, alta tensione",
  "For high voltage the standard gives no limits for the supply voltage; those for total harmonic distortion are under consideration (both from memory). Rapid voltage changes and mains signalling are left out because no values are known here.":
    "Per l'alta tensione la norma non fissa limiti per la tensione di alimentazione; quelli per la distorsione armonica totale sono allo studio (entrambe le cose a memoria). Le variazioni rapide della tensione e la trasmissione di segnali sono tralasciate perché qui non se ne conoscono i valori.",
  "All limits for high voltage are from memory.": "Tutti i limiti per l'alta tensione sono a memoria.",
  "The value for high voltage is from memory.": "Il valore per l'alta tensione è a memoria.",
  "The standard gives no value for the orders 17, 19, 23 and 25.":
    "La norma non indica valori per gli ordini 17, 19, 23 e 25.",
  "EN 50160:2010, low voltage, network not interconnected": "EN 50160:2010, bassa tensione, rete non interconnessa",
  "The same range holds for special remote users (from memory).":
    "Lo stesso campo vale per particolari utenti remoti (a memoria).",
  "EN 50160:2010, low voltage": "EN 50160:2010, bassa tensione",
  "The numbers were read in public documents that quote the standard (named at each requirement as quoted second-hand); the paid text of the standard was not read. What no such document shows is marked as not confirmed.":
    "I numeri sono stati letti in documenti pubblici che citano la norma (indicati a ogni requisito come citazione di seconda mano); il testo a pagamento della norma non è stato letto. Ciò che nessuno di tali documenti mostra è indicato come non confermato.",
  "The limits hold under normal operating conditions. Excluded are temporary supply, installations that do not comply with the rules for their connection, exceptional weather, third-party action, acts of public authorities, industrial action, force majeure and shortage of power.":
    "I limiti valgono in condizioni normali di esercizio. Sono esclusi: alimentazione provvisoria, impianti non conformi alle regole per la loro connessione, condizioni meteorologiche eccezionali, azioni di terzi, atti di autorità pubbliche, agitazioni sindacali, forza maggiore e carenza di potenza.",
  "Values flagged because a dip, swell or interruption fell into their interval count for supply voltage and frequency and are left out for harmonics, total harmonic distortion, unbalance, flicker and mains signalling. The standard leaves this choice open (from memory).":
    "I valori contrassegnati perché nel loro intervallo è caduto un buco di tensione, una sovratensione temporanea o un'interruzione contano per la tensione di alimentazione e la frequenza e sono esclusi per armoniche, distorsione armonica totale, dissimmetria, flicker e trasmissione di segnali. La norma lascia aperta questa scelta (a memoria).",
  "The standard gives no values for interharmonic voltages. Overvoltages between live conductors and earth, for which it gives indications only, are not part of this set.":
    "La norma non indica valori per le tensioni interarmoniche. Le sovratensioni tra conduttori attivi e terra, per le quali essa dà solo indicazioni, non fanno parte di questo insieme.",
  "Power frequency, most of the time": "Frequenza di rete, per la maggior parte del tempo",
  "One document names a week instead of the year in an overview; its running text and the others say year.":
    "Un documento, in una tabella riassuntiva, indica una settimana invece dell'anno; il suo testo e gli altri dicono anno.",
  "Power frequency, all of the time": "Frequenza di rete, per tutto il tempo",
  "Supply voltage, most of the week": "Tensione di alimentazione, per la maggior parte della settimana",
  "Supply voltage, all of the time": "Tensione di alimentazione, per tutto il tempo",
  "Rapid voltage changes": "Variazioni rapide della tensione",
  "An indication, not a limit. The larger changes are short and occur some times a day.":
    "Un'indicazione, non un limite. Le variazioni maggiori sono brevi e si verificano alcune volte al giorno.",
  "Flicker severity": "Severità del flicker",
  "Voltage unbalance": "Dissimmetria della tensione",
  "Where many users are connected to one or two phases, up to about 3 % occurs at some points of supply.":
    "Dove molti utenti sono collegati a una o due fasi, in alcuni punti di fornitura si arriva fino a circa il 3 %.",
  "Harmonic voltages": "Tensioni armoniche",
  "Each order is judged by itself (from memory); one of the documents counts the intervals in which any order is above its limit.":
    "Ogni ordine è valutato singolarmente (a memoria); uno dei documenti conta gli intervalli nei quali un ordine qualsiasi supera il proprio limite.",
  "Total harmonic distortion of the voltage, up to order 40":
    "Distorsione armonica totale della tensione, fino all'ordine 40",
  "Mains signalling voltages": "Tensioni di trasmissione di segnali sulla rete",
  "The points of the curve are from memory, those above 10 kHz with little confidence. The share and the 3 s interval are quoted second-hand in an energy-monitor manual of 2019; an installation-tester manual prints 2 s.":
    "I punti della curva sono a memoria, quelli sopra 10 kHz con scarsa certezza. La quota e l'intervallo di 3 s sono citati di seconda mano in un manuale di un monitor di energia del 2019; un manuale di uno strumento per la verifica degli impianti riporta 2 s.",
  "Voltage dips by residual voltage and duration": "Buchi di tensione per tensione residua e durata",
  "The standard sets no limit for the counts. A cell counts events after those of several phases at one time were made one; that close events in time are made one too is from memory.":
    "La norma non fissa limiti per i conteggi. Una cella conta gli eventi dopo che quelli simultanei di più fasi sono stati riuniti in uno; che siano riuniti anche eventi vicini nel tempo è a memoria.",
  "Voltage swells by voltage and duration": "Sovratensioni temporanee per tensione e durata",
  "The standard sets no limit for the counts. The document adds a column for swells above 60 s; the standard's own table has three columns (from memory).":
    "La norma non fissa limiti per i conteggi. Il documento aggiunge una colonna per le sovratensioni temporanee oltre 60 s; la tabella della norma stessa ha tre colonne (a memoria).",
  "EN 50160:2010, medium voltage, network not interconnected": "EN 50160:2010, media tensione, rete non interconnessa",
  "EN 50160:2010, medium voltage": "EN 50160:2010, media tensione",
  "Before the 2010 edition the share was 95 % (from memory).":
    "Prima dell'edizione 2010 la quota era del 95 % (a memoria).",
  "may be substantially lower, depending on the design of the network":
    "può essere sensibilmente inferiore, secondo la struttura della rete",
  "The points of the curve are from memory and with little confidence; levels from 9 kHz to 95 kHz are under consideration (from memory). The share and the 3 s interval are quoted second-hand in an energy-monitor manual of 2019.":
    "I punti della curva sono a memoria e con scarsa certezza; i livelli da 9 kHz a 95 kHz sono allo studio (a memoria). La quota e l'intervallo di 3 s sono citati di seconda mano in un manuale di un monitor di energia del 2019.",
  "EN 50160:2022, low voltage, network not interconnected": "EN 50160:2022, bassa tensione, rete non interconnessa",
  "EN 50160:2022, low voltage": "EN 50160:2022, bassa tensione",
  "No public document seen prints the tables of the 2022 edition. Its values here are those of the 2010 edition, and for the harmonic orders 15 and 21 values from memory. A log with order 15 or 21 between the two may change its verdict with the edition.":
    "Nessun documento pubblico consultato riporta le tabelle dell'edizione 2022. I valori qui indicati sono quelli dell'edizione 2010 e, per gli ordini armonici 15 e 21, valori a memoria. Un log con l'ordine 15 o 21 tra i due valori può cambiare esito secondo l'edizione.",
  "A paper of 2019 reports that amendments of the 2010 edition introduced 1-min values and 100 % of the data for the supply voltage at low voltage. No other document seen confirms it, and it is not applied here.":
    "Un articolo del 2019 riferisce che varianti dell'edizione 2010 hanno introdotto valori di 1 min e il 100 % dei dati per la tensione di alimentazione in bassa tensione. Nessun altro documento consultato lo conferma, e qui non è applicato.",
  "This is the value of the 2010 edition; no document seen shows that of 2022.":
    "È il valore dell'edizione 2010; nessun documento consultato mostra quello del 2022.",
  "every document seen prints 0.5 %, but each of them quotes the 2010 edition or an earlier one":
    "ogni documento consultato riporta 0,5 %, ma tutti citano l'edizione 2010 o una anteriore",
  "The values are those of the 2010 edition, but for orders 15 and 21; no document seen shows those of 2022. Each order is judged by itself (from memory).":
    "I valori sono quelli dell'edizione 2010, salvo per gli ordini 15 e 21; nessun documento consultato mostra quelli del 2022. Ogni ordine è valutato singolarmente (a memoria).",
  "EN 50160:2022, medium voltage, network not interconnected": "EN 50160:2022, media tensione, rete non interconnessa",
  "EN 50160:2022, medium voltage": "EN 50160:2022, media tensione",
  "No public document seen prints the tables of the 2022 edition. Its values here are those of the 2010 edition.":
    "Nessun documento pubblico consultato riporta le tabelle dell'edizione 2022. I valori qui indicati sono quelli dell'edizione 2010.",
  "France, low voltage (EN 50160:2010 with the order of 24 December 2007)":
    "Francia, bassa tensione (EN 50160:2010 con il decreto «arrêté» del 24 dicembre 2007)",
  "For the consumer's point of connection the order also names a voltage gradient above 2 % for each further kW of single-phase load; a log of the supply voltage alone cannot show it, and it is not judged here.":
    "Per il punto di connessione del consumatore il decreto indica anche un gradiente di tensione superiore al 2 % per ogni kW aggiuntivo di carico monofase; un log della sola tensione di alimentazione non può mostrarlo e qui non è valutato.",
  "A fault is established when at least one 10-minute value lies below 90 % or above 110 %.":
    "L'inosservanza è accertata quando almeno un valore di 10 minuti è sotto il 90 % o sopra il 110 %.",
  "Netherlands, low voltage (EN 50160:2010 with Netcode elektriciteit)":
    "Paesi Bassi, bassa tensione (EN 50160:2010 con Netcode elektriciteit)",
  "The grid code words flicker severity as a value that moves on by 10 minutes; here it is judged in the two-hour intervals of EN 50160.":
    "Il codice di rete definisce la severità del flicker come un valore che scorre di 10 minuti in 10 minuti; qui è valutata negli intervalli di due ore di EN 50160.",
  "At most 10 %; at most 3 % where no loss of generation, of large users or of lines is the cause. Not judged here.":
    "Al massimo 10 %; al massimo 3 % se la causa non è la perdita di generazione, di grandi utenti o di linee. Qui non valutato.",
  "Flicker severity, all of the time": "Severità del flicker, per tutto il tempo",
  "Voltage unbalance, all of the time": "Dissimmetria della tensione, per tutto il tempo",
  "Spain, low voltage (EN 50160:2010 with Real Decreto 1955/2000)":
    "Spagna, bassa tensione (EN 50160:2010 con Real Decreto 1955/2000)",
};
