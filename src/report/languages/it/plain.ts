/** The result in plain words. */
export const PLAIN: Readonly<Record<string, string>> = {
  "The rules applied are “{1}”. They say:": "Le regole applicate sono «{1}». Esse dicono:",
  "Further rules that were broken: {1}.": "Altre regole violate: {1}.",
  "Supply voltage report: the result in plain words":
    "Rapporto sulla tensione di alimentazione: il risultato in parole semplici",
  "What was promised?": "Che cosa era stato promesso?",
  "What was measured?": "Che cosa è stato misurato?",
  "Was the measuring sound?": "La misura era attendibile?",
  "Was a rule broken?": "È stata violata una regola?",
  "What happens next?": "Che cosa succede ora?",
  "The other pages hold the same result for engineers, with every limit, count and source.":
    "Le altre pagine contengono lo stesso risultato per i tecnici, con ogni limite, conteggio e fonte.",
  "The place was not stated.": "Il luogo non è stato indicato.",
  "Which instrument measured, and when it was last calibrated, was not stated.":
    "Non è stato indicato con quale strumento si è misurato né quando è stato tarato l'ultima volta.",
  "The program checked the recording for faults of its own and found none.":
    "Il programma ha cercato difetti della registrazione stessa e non ne ha trovati.",
  "No missing value could turn the result.": "Nessun valore mancante potrebbe cambiare il risultato.",
  "Missing values could turn the result in part; the following pages say where.":
    "I valori mancanti potrebbero cambiare in parte il risultato; le pagine seguenti dicono dove.",
  "No brief drop, brief rise or interruption was found.":
    "Non è stato trovato alcun breve abbassamento, breve innalzamento o interruzione.",
  "Brief drops, brief rises and interruptions cannot be seen in a recording of this kind.":
    "Brevi abbassamenti, brevi innalzamenti e interruzioni non si possono vedere in una registrazione di questo tipo.",
  "The recording holds nothing that these rules set a limit for.":
    "La registrazione non contiene nulla per cui queste regole fissino un limite.",
  frequency: "frequenza",
  "single distortions of the wave shape (harmonics)": "singole distorsioni della forma d'onda (armoniche)",
  "distortion of the wave shape as a whole": "distorsione complessiva della forma d'onda",
  "flicker of lamps": "sfarfallio delle lampade",
  "flicker of lamps over ten minutes": "sfarfallio delle lampade su dieci minuti",
  "unevenness of the three phases": "disuguaglianza delle tre fasi",
  "control signals on the network": "segnali di comando sulla rete",
  "{1} volts": "{1} volt",
  "{1} percent": "{1} percento",
  "{1} hertz": "{1} hertz",
  "ten-second averages": "valori medi di dieci secondi",
  "ten-minute averages": "valori medi di dieci minuti",
  "each day": "ogni giorno",
  "each week": "ogni settimana",
  "each year": "ogni anno",
  "values of {1} seconds each": "valori di {1} secondi ciascuno",
  "Of all {1} of {2}: {3} from {4} to {5}.": "Per tutti i {1} di {2}: {3} da {4} a {5}.",
  "Of the {1} of {2} at least {3} percent: {4} from {5} to {6}.":
    "Per almeno {3} su 100 dei {1} di {2}: {4} da {5} a {6}.",
  "Of all {1} of {2}: {3} {4}.": "Per tutti i {1} di {2}: {3} {4}.",
  "Of the {1} of {2} at least {3} percent: {4} {5}.": "Per almeno {3} su 100 dei {1} di {2}: {4} {5}.",
  "There are limits as well for: {1}.": "Vi sono limiti anche per: {1}.",
  "outside {1} to {2}": "al di fuori del campo da {1} a {2}",
  "{1}: {2} of {3} {4} were {5}; allowed are {6}.": "{1}: {2} su {3} {4} {5}; ammessi: {6}.",
  "{1} The worst one was {2}, on {3}.": "{1} Il peggiore: {2}, {3}.",
  "{1}, number {2}": "{1}, numero {2}",
  "{1} on phase {2}": "{1} sulla fase {2}",
  "Yes. The supply did not keep to the rules of “{1}”.": "Sì. L'alimentazione non ha rispettato le regole «{1}».",
  "No. In all that could be judged, the supply kept to the rules of “{1}”.":
    "No. In tutto ciò che ha potuto essere valutato, l'alimentazione ha rispettato le regole «{1}».",
  "That cannot be said. The recording does not decide whether the supply kept to the rules of “{1}”.":
    "Non si può dire. La registrazione non decide se l'alimentazione abbia rispettato le regole «{1}».",
  "That was not judged. The recording holds nothing that decides it by the rules of “{1}”.":
    "Non è stato valutato. La registrazione non contiene nulla che lo decida secondo le regole «{1}».",
  "One of the rules could not be judged with this recording; it is not counted as kept.":
    "Una delle regole non ha potuto essere valutata con questa registrazione; non è contata come rispettata.",
  "{1} of the rules could not be judged with this recording; they are not counted as kept.":
    "{1} regole non hanno potuto essere valutate con questa registrazione; non sono contate come rispettate.",
  "Measured was the supply at: {1}.": "È stata misurata l'alimentazione presso: {1}.",
  "The recording runs from {1} to {2}, in the local time of {3}.":
    "La registrazione va da {1} a {2}, nell'ora locale di {3}.",
  "It has {1} ten-minute intervals: {2} were left out, and of the others {3} are valid.":
    "Contiene {1} intervalli di dieci minuti: {2} sono stati esclusi, e degli altri {3} sono validi.",
  "This holds only because spans of time were left out, for reasons that somebody stated and nobody measured. With all that was recorded the verdict would be: {1}.":
    "Questo vale solo perché sono stati esclusi periodi di tempo, per motivi che qualcuno ha dichiarato e nessuno ha misurato. Con tutto ciò che è stato registrato, il verdetto sarebbe: {1}.",
  "Have the stated reasons for leaving out spans of time proven; the result hangs on them.":
    "Far provare i motivi dichiarati per l'esclusione di periodi di tempo; il risultato dipende da essi.",
  "It has {1} valid ten-minute intervals out of {2}.": "Contiene {1} intervalli di dieci minuti validi su {2}.",
  "No, not in all parts. Findings that kept values from being judged: {1}. What they touch is left open and counted neither as good nor as bad.":
    "No, non in tutte le parti. Rilievi che hanno impedito la valutazione di valori: {1}. Ciò che essi riguardano è lasciato aperto e non è contato né come buono né come cattivo.",
  "The program checked the recording for faults of its own. Findings worth knowing: {1}. None of them kept a value from being judged.":
    "Il programma ha cercato difetti della registrazione stessa. Rilievi da conoscere: {1}. Nessuno di essi ha impedito la valutazione di un valore.",
  "The instrument, as stated by whoever measured: {1}.": "Lo strumento, come dichiarato da chi ha misurato: {1}.",
  "Spans of time left out because somebody stated unusual conditions: {1}. The pages on exclusions say who, why, and what they change.":
    "Periodi esclusi perché qualcuno ha dichiarato condizioni insolite: {1}. Le pagine sulle esclusioni dicono chi, perché e che cosa cambiano.",
  "interruptions: {1}": "interruzioni: {1}",
  "brief drops of the voltage: {1}": "brevi abbassamenti della tensione: {1}",
  "brief rises of the voltage: {1}": "brevi innalzamenti della tensione: {1}",
  "The voltages moved against each other as they do when the neutral conductor is broken or has come loose. That can destroy appliances, start a fire, and put metal parts of appliances under voltage.":
    "Le tensioni si sono mosse l'una contro l'altra, come accade quando il conduttore di neutro è interrotto o si è allentato. Ciò può distruggere apparecchi, provocare un incendio e mettere in tensione parti metalliche degli apparecchi.",
  "The voltage was so high for so long that it can destroy appliances and start a fire.":
    "La tensione è stata così alta per così tanto tempo da poter distruggere apparecchi e provocare un incendio.",
  "Give this report and the unchanged log files to the network operator and ask in writing what will be done, and by when.":
    "Consegnare questo rapporto e i file di log inalterati al gestore della rete e chiedere per iscritto che cosa sarà fatto ed entro quando.",
  "The operator can check each number: the log files have fingerprints in this report, and the same files give the same result.":
    "Il gestore può verificare ogni numero: questo rapporto contiene le impronte dei file di log, e gli stessi file danno lo stesso risultato.",
  "After the cause has been mended, have the supply recorded again for at least a week.":
    "Dopo che la causa è stata eliminata, far registrare di nuovo l'alimentazione per almeno una settimana.",
  "Nothing has to be mended because of this recording.": "In base a questa registrazione non c'è nulla da riparare.",
  "If the trouble goes on, write down day and time of each occurrence, and have the supply recorded again while it happens.":
    "Se il disturbo continua, annotare giorno e ora di ogni episodio e far registrare di nuovo l'alimentazione mentre accade.",
  "Have the supply recorded again for at least a full week without gaps, at the point of supply.":
    "Far registrare di nuovo l'alimentazione per almeno una settimana intera senza lacune, nel punto di fornitura.",
  "Write down day and time of each occurrence of trouble meanwhile.":
    "Nel frattempo annotare giorno e ora di ogni episodio di disturbo.",
  "Have the supply recorded with an instrument that measures what the rules ask for, for at least a full week.":
    "Far registrare l'alimentazione con uno strumento che misuri ciò che le regole richiedono, per almeno una settimana intera.",
  "Have the supply recorded for at least a full week, at the point of supply.":
    "Far registrare l'alimentazione per almeno una settimana intera, nel punto di fornitura.",
  "Keep the log files as they are. A changed file can no longer be told from a forged one.":
    "Conservare i file di log così come sono. Un file modificato non si può più distinguere da uno falsificato.",
};
