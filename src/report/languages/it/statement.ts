/** The statement, and the words and sentences that many parts of the report share. */
export const STATEMENT: Readonly<Record<string, string>> = {
  "The recording holds nothing that {1} sets a limit for, so nothing could be judged":
    "La registrazione non contiene nulla per cui {1} fissi un limite, perciò nulla ha potuto essere valutato",
  "It shows {1}.": "Essa mostra: {1}.",
  "It also shows {1}.": "Essa mostra inoltre: {1}.",
  "Recorded as well: {1}.": "Registrato inoltre: {1}.",
  "The recording of {1} cannot show whether a week conforms to {2}":
    "La registrazione di {1} non può mostrare se una settimana sia conforme a {2}",
  "The recording of {1} cannot show whether a week keeps the limits of {2}":
    "La registrazione di {1} non può mostrare se una settimana rispetti i limiti di {2}",
  "{1}; it shows {2}.": "{1}; essa mostra: {2}.",
  "one of the {1} per phase, within {2}": "uno dei {1} per fase, entro il limite ({2})",
  "{1} {2} per phase, none outside {3}": "{1} {2} per fase, nessuno fuori limite ({3})",
  "on phase {1} {2} of {3} {4} that lay {5}": "sulla fase {1} {2} su {3} {4} {5}",
  "of the {1} of a day, {2} may": "ammessi in un giorno: {2} su {1}",
  "of the {1} of a week, {2} may": "ammessi in una settimana: {2} su {1}",
  "of the {1} of a year, {2} may": "ammessi in un anno: {2} su {1}",
  "voltages of {1} on {2} (values of {3})": "tensioni {1} su {2} (valori di {3})",
  "too much of it is missing.": "ne manca una parte troppo grande.",
  "{1}; not judged: {2}.": "{1}; non valutato: {2}.",
  "The values recorded {1} give information on {2} but hold nothing that decides conformance.":
    "I valori registrati {1} danno informazioni su {2} ma non contengono nulla che decida la conformità.",
  "The supply {1} could not be judged by {2}": "L'alimentazione {1} non ha potuto essere valutata secondo {2}",
  "The supply voltage did not conform to {1} {2}": "La tensione di alimentazione non è risultata conforme a {1} {2}",
  "Whether the supply voltage conformed to {1} {2} is undecided":
    "Se la tensione di alimentazione fosse conforme a {1} {2} resta indeterminato",
  "The supply voltage conformed to {1} {2}": "La tensione di alimentazione è risultata conforme a {1} {2}",
  "The supply did not conform to {1} {2}": "L'alimentazione non è risultata conforme a {1} {2}",
  "Whether the supply conformed to {1} {2} is undecided":
    "Se l'alimentazione fosse conforme a {1} {2} resta indeterminato",
  "The supply conformed to {1} {2}": "L'alimentazione è risultata conforme a {1} {2}",
  "In what could be judged ({1}) the supply conformed to {2} {3}":
    "Per quanto ha potuto essere valutato ({1}), l'alimentazione è risultata conforme a {2} {3}",
  "The supply voltage did not keep the limits of {1} {2}":
    "La tensione di alimentazione non ha rispettato i limiti di {1} {2}",
  "Whether the supply voltage kept the limits of {1} {2} is undecided":
    "Se la tensione di alimentazione abbia rispettato i limiti di {1} {2} resta indeterminato",
  "The supply voltage kept the limits of {1} {2}": "La tensione di alimentazione ha rispettato i limiti di {1} {2}",
  "The supply did not keep the limits of {1} {2}": "L'alimentazione non ha rispettato i limiti di {1} {2}",
  "Whether the supply kept the limits of {1} {2} is undecided":
    "Se l'alimentazione abbia rispettato i limiti di {1} {2} resta indeterminato",
  "The supply kept the limits of {1} {2}": "L'alimentazione ha rispettato i limiti di {1} {2}",
  "In what could be judged ({1}) the supply kept the limits of {2} {3}":
    "Per quanto ha potuto essere valutato ({1}), l'alimentazione ha rispettato i limiti di {2} {3}",
  "harmonic voltages": "tensioni armoniche",
  "total harmonic distortion": "distorsione armonica totale",
  "mains signalling": "trasmissione di segnali sulla rete",
  "flicker severity": "severità del flicker",
  "part of the {1}": "{1} (in parte)",
};

export const WORDING: Readonly<Record<string, string>> = {
  conforms: "conforme",
  "does not conform": "non conforme",
  undecided: "indeterminato",
  "not assessed": "non valutato",
  "for information": "a titolo informativo",
  "no limit": "nessun limite",
  supply: "alimentazione",
  "no values": "nessun valore",
  "{1} of {2}": "{1} su {2}",
  "{1} to {2}": "da {1} a {2}",
  "at most {1}": "al massimo {1}",
  "at least {1}": "almeno {1}",
  "above {1}": "al di sopra di {1}",
  "below {1}": "al di sotto di {1}",
  "outside {1}": "fuori limite ({1})",
  yes: "sì",
  no: "no",
  "{1} of the day": "{1} del giorno",
  "{1} of the week": "{1} della settimana",
  "{1} of the year": "{1} dell'anno",
  unconfirmed: "non confermato",
  "“unconfirmed”: no public document at hand confirms this limit. Check it in the standard itself before you rely on the verdict.":
    "«non confermato»: nessun documento pubblico disponibile conferma questo limite. Verificarlo nella norma stessa prima di fare affidamento sull'esito.",
  "three-second values": "valori di tre secondi",
  "ten-second values": "valori di dieci secondi",
  "one-minute values": "valori di un minuto",
  "ten-minute values": "valori di dieci minuti",
  "two-hour values": "valori di due ore",
  "harmonic voltage of order {1}": "tensione armonica di ordine {1}",
  "harmonic current of order {1}": "corrente armonica di ordine {1}",
  "interharmonic voltage of order {1}": "tensione interarmonica di ordine {1}",
  "interharmonic current of order {1}": "corrente interarmonica di ordine {1}",
  "{1} (order {2})": "{1} (ordine {2})",
  "of the power frequency": "della frequenza di rete",
  "of the total harmonic distortion of the voltage": "della distorsione armonica totale della tensione",
  "of the mains signalling voltage": "della tensione di trasmissione di segnali sulla rete",
  "of the short-term flicker severity": "della severità del flicker a breve termine",
  "of the long-term flicker severity": "della severità del flicker a lungo termine",
  "of the voltage unbalance": "della dissimmetria della tensione",
  "values of {1}": "valori di {1}",
  "{1} of the harmonic voltage of order {2}": "{1} della tensione armonica di ordine {2}",
  "{1} of {2} {3} lay {4}; none may.": "{1} su {2} {3} {4}; ammessi: nessuno.",
  "{1} of {2} {3} lay {4}; {5} may.": "{1} su {2} {3} {4}; ammessi: {5}.",
  "on phase {1}, {2} of {3} {4} lay {5}; none may.": "sulla fase {1}, {2} su {3} {4} {5}; ammessi: nessuno.",
  "on phase {1}, {2} of {3} {4} lay {5}; {6} may.": "sulla fase {1}, {2} su {3} {4} {5}; ammessi: {6}.",
  "the seven days from {1} to {2}": "i sette giorni da {1} a {2}",
  "the 365 days from {1} to {2}": "i 365 giorni da {1} a {2}",
  "the time from {1} to {2}, less than 365 days": "il periodo da {1} a {2}, meno di 365 giorni",
  "the week from {1} to {2}": "la settimana da {1} a {2}",
  "the time from {1} to {2}, less than a week": "il periodo da {1} a {2}, meno di una settimana",
  "in the seven days from {1} to {2}": "nei sette giorni da {1} a {2}",
  "in the 365 days from {1} to {2}": "nei 365 giorni da {1} a {2}",
  "in the time from {1} to {2}, less than 365 days": "nel periodo da {1} a {2}, meno di 365 giorni",
  "in the week from {1} to {2}": "nella settimana da {1} a {2}",
  "in the time from {1} to {2}, less than a week": "nel periodo da {1} a {2}, meno di una settimana",
  "half a cycle ({1})": "mezzo periodo ({1})",
  "10/12 cycles ({1})": "10/12 periodi ({1})",
};

export const COUNTS: Readonly<Record<string, string>> = {
  "The one requirement with values could not be decided.": "L'unico requisito con valori è rimasto indeterminato.",
  "The one requirement judged was not met.": "L'unico requisito valutato non è soddisfatto.",
  "The one requirement judged was met.": "L'unico requisito valutato è soddisfatto.",
  "None of the {1} requirements with values could be decided.":
    "Tutti i requisiti con valori ({1}) sono rimasti indeterminati.",
  "All {1} requirements judged were met.": "Tutti i {1} requisiti valutati sono soddisfatti.",
  "{1} of the {2} requirements judged could not be decided.": "Requisiti valutati rimasti indeterminati: {1} su {2}.",
  "{1} of the {2} requirements judged was not met": "{1} su {2} requisiti valutati non è soddisfatto",
  "{1} of the {2} requirements judged were not met": "{1} su {2} requisiti valutati non sono soddisfatti",
  "{1} and {2} could not be decided.": "{1}; indeterminati: {2}.",
  "Of this period only what is judged by the year is counted: {1} requirement.":
    "Di questo periodo si conta solo ciò che è valutato sull'anno: {1} requisito.",
  "Of this period only what is judged by the year is counted: {1} requirements.":
    "Di questo periodo si conta solo ciò che è valutato sull'anno: {1} requisiti.",
  "Of this period only what is worse than in every consecutive week is counted: {1} requirement.":
    "Di questo periodo si conta solo ciò che è peggiore che in ogni settimana consecutiva: {1} requisito.",
  "Of this period only what is worse than in every consecutive week is counted: {1} requirements.":
    "Di questo periodo si conta solo ciò che è peggiore che in ogni settimana consecutiva: {1} requisiti.",
  "{1} requirement was not assessed; see below why.":
    "{1} requisito non è stato valutato; i motivi sono indicati sotto.",
  "{1} requirements were not assessed; see below why.":
    "{1} requisiti non sono stati valutati; i motivi sono indicati sotto.",
  "Missing intervals could change the verdict on one requirement (“robust: no”).":
    "Gli intervalli mancanti potrebbero cambiare l'esito di un requisito («robusto: no»).",
  "Missing intervals could change the verdict on {1} requirements (“robust: no”).":
    "Gli intervalli mancanti potrebbero cambiare l'esito di {1} requisiti («robusto: no»).",
  "The one requirement judged rests, at least in part, on limits that no public document at hand confirms.":
    "L'unico requisito valutato si basa, almeno in parte, su limiti che nessun documento pubblico disponibile conferma.",
  "All {1} requirements judged rest, at least in part, on limits that no public document at hand confirms.":
    "Tutti i {1} requisiti valutati si basano, almeno in parte, su limiti che nessun documento pubblico disponibile conferma.",
  "{1} of the {2} requirements judged rests, at least in part, on limits that no public document at hand confirms.":
    "{1} su {2} requisiti valutati si basa, almeno in parte, su limiti che nessun documento pubblico disponibile conferma.",
  "{1} of the {2} requirements judged rest, at least in part, on limits that no public document at hand confirms.":
    "{1} su {2} requisiti valutati si basano, almeno in parte, su limiti che nessun documento pubblico disponibile conferma.",
  "{1} finding on the recording itself kept values from being judged.":
    "{1} rilievo sulla registrazione stessa ha impedito la valutazione di valori.",
  "{1} findings on the recording itself kept values from being judged.":
    "{1} rilievi sulla registrazione stessa hanno impedito la valutazione di valori.",
  "{1} conformed": "conformi: {1}",
  "{1} did not conform": "non conformi: {1}",
  "{1} could not be decided": "indeterminate: {1}",
  "{1} could not be judged": "non valutabili: {1}",
  "Of {1} consecutive weeks {2}; see the table of weeks.":
    "Su {1} settimane consecutive, {2}; si veda la tabella delle settimane.",
};

export const UNCERTAINTY: Readonly<Record<string, string>> = {
  "Uncertainty and decision rule": "Incertezza e regola decisionale",
  "Comes from": "Proviene da",
  "±, with k = 2": "±, con k = 2",
  Uncertainty: "Incertezza",
  instrument: "strumento",
  sensor: "sensore",
  "last digit": "ultima cifra",
  "from the class": "dalla classe",
  "Included is what the last digit of the log hides, half a step either way, all values in it alike: {1}.":
    "È compreso ciò che l'ultima cifra del log nasconde, mezzo passo in più o in meno, con tutti i valori ugualmente probabili: {1}.",
  "Contributions to one quantity combine as the root of the sum of their squares. With k = 2 about 95 % of errors are smaller. The class of a sensor counts for the quantity it measures only.":
    "I contributi a una stessa grandezza si combinano come radice della somma dei quadrati. Con k = 2 circa il 95 % degli errori è minore. La classe di un sensore vale solo per la grandezza che esso misura.",
  "The uncertainty of the measurement was not stated: the setup gives neither the instrument's class (A or S of IEC 61000-4-30) nor a value. Whether a verdict would hold within it is not known.":
    "L'incertezza della misura non è stata dichiarata: la configurazione non indica né la classe dello strumento (A o S di IEC 61000-4-30) né un valore. Non è noto se un esito resterebbe valido entro di essa.",
  "Decision rule: simple acceptance. Values are compared with the limits as they are, and no margin is taken off for the uncertainty; a value exactly on its limit is accepted, wrongly so with a probability of up to 50 % (ILAC-G8:09/2019).":
    "Regola decisionale: accettazione semplice. I valori sono confrontati con i limiti così come sono, senza detrarre alcun margine per l'incertezza; un valore esattamente sul limite è accettato, a torto con una probabilità fino al 50 % (ILAC-G8:09/2019).",
  "Decision rule: guarded acceptance with a guard band of the expanded uncertainty (ILAC-G8:09/2019, w = U). A requirement conforms only if it does so with every limit moved inwards by the uncertainty, and fails only if it does so with every limit moved outwards; in between it is undecided. A single value is wrongly accepted with a probability below 2.5 %.":
    "Regola decisionale: accettazione con banda di guardia pari all'incertezza estesa (ILAC-G8:09/2019, w = U). Un requisito è conforme solo se lo è con ogni limite spostato verso l'interno di un valore pari all'incertezza, e non conforme solo se lo è con ogni limite spostato di altrettanto verso l'esterno; nel mezzo è indeterminato. Un singolo valore è accettato a torto con una probabilità inferiore al 2,5 %.",
  "None was stated; EN 50160 prescribes no guard band, so the values are taken as they are.":
    "Non ne è stata dichiarata alcuna; EN 50160 non prescrive una banda di guardia, perciò i valori sono presi così come sono.",
  "“conditional pass”, “conditional fail”: within the uncertainty; with every limit moved by it, inwards or outwards, the verdict would be another. “near a limit”: values no further from a limit than the uncertainty.":
    "«conformità condizionata», «non conformità condizionata»: entro l'incertezza; spostando ogni limite di un valore pari ad essa, verso l'interno o verso l'esterno, l'esito sarebbe un altro. «vicini a un limite»: valori che non distano da un limite più dell'incertezza.",
  "of the reading": "della lettura",
  "of the declared voltage": "della tensione dichiarata",
  "{1} {2}, at least {3}": "{1} {2}, almeno {3}",
  clear: "netto",
  "conditional pass": "conformità condizionata",
  "conditional fail": "non conformità condizionata",
  "not known": "non nota",
  "{1}; near a limit: {2}": "{1}; vicini a un limite: {2}",
  "{1}; near a limit: {2}; {3}": "{1}; vicini a un limite: {2}; {3}",
  "Decision rule: simple acceptance; the uncertainty of the measurement was not stated.":
    "Regola decisionale: accettazione semplice; l'incertezza della misura non è stata dichiarata.",
  "Decision rule: simple acceptance; the uncertainty of the measurement could not turn a verdict.":
    "Regola decisionale: accettazione semplice; l'incertezza della misura non potrebbe cambiare alcun esito.",
  "Decision rule: simple acceptance; the uncertainty of the measurement could turn the verdict on one requirement.":
    "Regola decisionale: accettazione semplice; l'incertezza della misura potrebbe cambiare l'esito di un requisito.",
  "Decision rule: simple acceptance; the uncertainty of the measurement could turn the verdict on {1} requirements.":
    "Regola decisionale: accettazione semplice; l'incertezza della misura potrebbe cambiare l'esito di {1} requisiti.",
  "Decision rule: guarded acceptance; no requirement lies within the uncertainty of the measurement.":
    "Regola decisionale: accettazione con banda di guardia; nessun requisito si trova entro l'incertezza della misura.",
  "Decision rule: guarded acceptance; one requirement lies within the uncertainty of the measurement, at least in part.":
    "Regola decisionale: accettazione con banda di guardia; un requisito si trova, almeno in parte, entro l'incertezza della misura.",
  "Decision rule: guarded acceptance; {1} requirements lie within the uncertainty of the measurement, at least in part.":
    "Regola decisionale: accettazione con banda di guardia; {1} requisiti si trovano, almeno in parte, entro l'incertezza della misura.",
  "For one requirement the uncertainty is not known.": "Per un requisito l'incertezza non è nota.",
  "For {1} requirements the uncertainty is not known.": "Per {1} requisiti l'incertezza non è nota.",
};

export const EXCLUSIONS: Readonly<Record<string, string>> = {
  Exclusions: "Esclusioni",
  From: "Da",
  To: "A",
  Reason: "Motivo",
  "Asserted by": "Dichiarato da",
  Evidence: "Prova",
  "Intervals left out": "Intervalli esclusi",
  "Turns the verdict": "Cambia l'esito",
  "Left out": "Esclusi",
  "Outside, with": "Fuori limite, con",
  "Outside, without": "Fuori limite, senza",
  "Verdict with": "Esito con",
  "Verdict without": "Esito senza",
  "temporary supply during faults, maintenance or construction":
    "alimentazione provvisoria durante guasti, manutenzione o lavori",
  "a user's installation or equipment that breaks its standards or connection rules":
    "impianto o apparecchi di un utente non conformi alle relative norme o alle regole di connessione",
  "exceptional weather or another natural disaster": "condizioni meteorologiche eccezionali o altre calamità naturali",
  "interference by third parties": "azioni di terzi",
  "acts of public authorities": "atti di autorità pubbliche",
  "industrial action": "agitazioni sindacali",
  "force majeure": "forza maggiore",
  "power shortage from external events": "carenza di potenza dovuta a eventi esterni",
  "That a reason applied is asserted by the party named; it was not measured. An interval that overlaps an excluded span counts neither as present nor as missing. The reasons are the list in the scope of EN 50160, read in a public catalogue entry of the 2022 edition; that it is clause 1.1, and that older editions list the same, is from memory.":
    "Che un motivo sussistesse è dichiarato dalla parte indicata; non è stato misurato. Un intervallo che si sovrappone a un periodo escluso non conta né come presente né come mancante. I motivi sono l'elenco del campo di applicazione di EN 50160, letto in una voce di catalogo pubblica dell'edizione 2022; che si tratti del punto 1.1 e che edizioni anteriori elenchino gli stessi è a memoria.",
  "Counts with and without the exclusions": "Conteggi con e senza le esclusioni",
  "in an excluded span": "in un periodo escluso",
  "Without exclusions the verdict would be “{1}”.": "Senza esclusioni l'esito sarebbe «{1}».",
  "One span was excluded; the verdict is the same without it.":
    "È stato escluso un periodo; senza l'esclusione l'esito è lo stesso.",
  "{1} spans were excluded; the verdict is the same without them.":
    "Sono stati esclusi {1} periodi; senza le esclusioni l'esito è lo stesso.",
  "The verdict hangs on the exclusion from {1} to {2} ({3}; asserted by {4}).":
    "L'esito dipende dall'esclusione da {1} a {2} ({3}; dichiarato da {4}).",
  "excluded: from {1} to {2}, {3}, asserted by {4}; intervals left out: {5}":
    "escluso: da {1} a {2}, {3}, dichiarato da {4}; intervalli esclusi: {5}",
  "Verdict with the exclusions: {1}; without them: {2}.": "Esito con le esclusioni: {1}; senza: {2}.",
  "without exclusions: {1}": "senza esclusioni: {1}",
};
