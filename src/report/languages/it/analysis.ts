/** Remarks on what was measured or derived, and why something was not. */
export const ANALYSIS: Readonly<Record<string, string>> = {
  "THD on {1} is computed here from the logged harmonics 2 to {2}, where it was not logged.":
    "La THD su {1} è calcolata qui dalle armoniche registrate da 2 a {2}, dove non era stata registrata.",
  "THD on {1} is computed here from the logged harmonics 2 to {2}.":
    "La THD su {1} è calcolata qui dalle armoniche registrate da 2 a {2}.",
  "THD was not logged on {1}, and it needs all harmonics from 2 to {2}; the log holds {3} of these {4}.":
    "La THD su {1} non è stata registrata e richiede tutte le armoniche da 2 a {2}; il log ne contiene {3} su {4}.",
  "u2 is computed here from the three phase-to-phase voltages (IEC 61000-4-30, r.m.s. formula), where it was not logged.":
    "u2 è calcolata qui dalle tre tensioni concatenate (IEC 61000-4-30, formula con i valori efficaci), dove non era stata registrata.",
  "u2 is computed here from the three phase-to-phase voltages (IEC 61000-4-30, r.m.s. formula).":
    "u2 è calcolata qui dalle tre tensioni concatenate (IEC 61000-4-30, formula con i valori efficaci).",
  "Unbalance was not logged, and it cannot be computed without all three phase-to-phase voltages.":
    "La dissimmetria non è stata registrata e non può essere calcolata senza tutte e tre le tensioni concatenate.",
  "The harmonics on {1} are in volts, and neither the fundamental (order 1) nor the voltage was logged beside them, so their share of the fundamental is not known.":
    "Le armoniche su {1} sono in volt e accanto ad esse non sono state registrate né la fondamentale (ordine 1) né la tensione; il loro rapporto con la fondamentale non è quindi noto.",
  "Harmonics on {1} are logged in volts; here in % of the logged fundamental.":
    "Le armoniche su {1} sono registrate in volt; qui in % della fondamentale registrata.",
  "Harmonics on {1} are logged in volts; here in % of the fundamental that remains of the r.m.s. voltage without its harmonics.":
    "Le armoniche su {1} sono registrate in volt; qui in % della fondamentale che resta della tensione efficace tolte le sue armoniche.",
  "The waveforms of the log last {1} s of {2} d; events are taken from them, interval values only from what was logged.":
    "Le forme d'onda del log durano {1} s su {2} d; da esse sono ricavati gli eventi, mentre i valori degli intervalli provengono solo da quanto registrato.",
  "Plt is computed here from the logged ten-minute Pst, over the two-hour blocks of the UTC clock.":
    "Il Plt è calcolato qui dai Pst di dieci minuti registrati, sui blocchi di due ore dell'orologio UTC.",
  "It was logged every {1}; the standard counts values of {2}, which cannot be made from that.":
    "È stata registrata ogni {1}; la norma conta valori di {2}, che non se ne possono ricavare.",
  "Plt was logged every {1}; each two-hour block without ten-minute Pst takes the value of its last row.":
    "Il Plt è stato registrato ogni {1}; ogni blocco di due ore senza Pst di dieci minuti assume il valore della sua ultima riga.",
  "root of the mean square": "radice della media dei quadrati",
  "arithmetic mean": "media aritmetica",
  "{1}: values of {2} combined to {3} on the clock ({4}).":
    "{1}: valori di {2} aggregati a {3} secondo l'orologio ({4}).",
  "No unbroken stretch of the recording holds a basic window (10 cycles at 50 Hz, 12 at 60 Hz), so nothing was measured over windows.":
    "Nessun tratto ininterrotto della registrazione contiene una finestra di base (10 periodi a 50 Hz, 12 a 60 Hz); nulla è stato quindi misurato su finestre.",
  "Pst and Plt are for the {1} V lamp at {2} Hz. The first {3} s after the start and after each gap are left out, because the flickermeter settles.":
    "Pst e Plt valgono per la lampada da {1} V a {2} Hz. I primi {3} s dopo l'inizio e dopo ogni lacuna sono esclusi, perché il flickermetro si assesta.",
  "No ten minutes of the clock were recorded without a gap after the first {1} s, in which the flickermeter settles.":
    "Nessun intervallo di dieci minuti dell'orologio è stato registrato senza lacune dopo i primi {1} s, nei quali il flickermetro si assesta.",
  "The highest Plt over any twelve Pst in a row is {1} on {2}, from {3}. It is for information; the two-hour blocks of the clock are judged.":
    "Il Plt più alto su dodici Pst consecutivi qualsiasi è {1} su {2}, da {3}. È a titolo informativo; sono valutati i blocchi di due ore dell'orologio.",
  "Harmonics are measured to order {1} only: with {2} samples per second the recording shows nothing sound above {3} Hz. Higher orders are absent, not zero.":
    "Le armoniche sono misurate solo fino all'ordine {1}: con {2} campioni al secondo la registrazione non mostra nulla di attendibile sopra {3} Hz. Gli ordini superiori sono assenti, non nulli.",
  "THD needs all harmonics from 2 to {1}; with {2} samples per second they are measured to order {3}.":
    "La THD richiede tutte le armoniche da 2 a {1}; con {2} campioni al secondo esse sono misurate fino all'ordine {3}.",
  "inrush currents": "correnti di spunto",
  "Mains signalling at {1} Hz cannot be measured: with {2} samples per second the recording shows nothing sound above {3} Hz.":
    "La trasmissione di segnali a {1} Hz non può essere misurata: con {2} campioni al secondo la registrazione non mostra nulla di attendibile sopra {3} Hz.",
  "Reactive power is that of the fundamental (Q1 of IEEE 1459).":
    "La potenza reattiva è quella della fondamentale (Q1 di IEEE 1459).",
  "Power needs the voltage to neutral and the current of a phase, or three phase-to-phase voltages and the currents.":
    "La potenza richiede la tensione verso neutro e la corrente di una fase, oppure tre tensioni concatenate e le correnti.",
  "rapid voltage changes": "variazioni rapide della tensione",
  "{1} more transients are not listed; the first {2} are.":
    "Altri transitori non elencati: {1}; sono elencati i primi {2}.",
  "Unbalance needs three voltages, phase to neutral or phase to phase.":
    "La dissimmetria richiede tre tensioni, di fase o concatenate.",
  "The phases follow each other in the order L1, L3, L2: two voltages are exchanged, or one is inverted. Exchange them in the setup.":
    "Le fasi si susseguono nell'ordine L1, L3, L2: due tensioni sono scambiate, oppure una è invertita. Scambiarle nella configurazione.",
  "The half-cycle values around them were kept for the {1} most severe of {2} {3}.":
    "I valori di semiperiodo attorno all'evento sono stati conservati per i {1} casi più gravi su {2} ({3}).",
  "The waveform around them was kept for the {1} most severe of {2} {3}.":
    "La forma d'onda attorno all'evento è stata conservata per i {1} casi più gravi su {2} ({3}).",
  "dips, swells and interruptions": "buchi di tensione, sovratensioni temporanee e interruzioni",
};

/** Reasons of the stages that judge. */
export const JUDGING: Readonly<Record<string, string>> = {
  "Declared voltage: {1} V for {2}, {3} V for {4}.": "Tensione dichiarata: {1} V per {2}, {3} V per {4}.",
  "Limit: {1} in {2}, {3} in {4}.": "Limite: {1} in {2}, {3} in {4}.",
  "Share that must lie within: {1} % in {2}, {3} % in {4}.":
    "Quota che deve rientrare nei limiti: {1} % in {2}, {3} % in {4}.",
  "Values of {1} in {2}, of {3} in {4}.": "Valori di {1} in {2}, di {3} in {4}.",
  "Period that is counted: {1} in {2}, {3} in {4}.": "Periodo sul quale si conta: {1} in {2}, {3} in {4}.",
  "Flagged intervals count in {1} and are left out in {2}.":
    "Gli intervalli contrassegnati contano in {1} e sono esclusi in {2}.",
  "Flagged intervals are left out in {1} and count in {2}.":
    "Gli intervalli contrassegnati sono esclusi in {1} e contano in {2}.",
  "For information only in {1}.": "Solo a titolo informativo in {1}.",
  "Only {1} asks for it.": "Richiesto solo da {1}.",
  "{1} sets no limit here.": "{1} non fissa qui alcun limite.",
  "Not assessed by {1}: {2}": "Non valutato secondo {1}: {2}",
  year: "anno",
  "{1} to {2}{3}": "da {1} a {2}{3}",
  "at most {1}{2}": "al massimo {1}{2}",
  "at least {1}{2}": "almeno {1}{2}",
  "All intervals are flagged by a dip, swell or interruption and left out, so none remains to be counted.":
    "Tutti gli intervalli sono contrassegnati per un buco di tensione, una sovratensione temporanea o un'interruzione e sono esclusi; non ne resta quindi alcuno da contare.",
  "{1} of {2} intervals are valid; {3} lie outside and {4} may, so the {5} missing ones could turn the verdict either way.":
    "{1} su {2} intervalli validi; fuori limite: {3}, ammessi: {4}; quelli mancanti ({5}) potrebbero quindi volgere l'esito in un senso o nell'altro.",
  "{1} of {2} intervals overlap an excluded span; what remains is too little of the period to be judged.":
    "{1} su {2} intervalli si sovrappongono a un periodo escluso; ciò che resta del periodo è troppo poco per una valutazione.",
  "Guarded acceptance needs the uncertainty of the values, which neither the setup states nor the instrument's class gives.":
    "L'accettazione con banda di guardia richiede l'incertezza dei valori, che non è dichiarata nella configurazione né risulta dalla classe dello strumento.",
  "Guarded acceptance: it conforms with the limits as they are ({1} outside), but not with the limits moved inwards by the uncertainty ({2} outside): a conditional pass.":
    "Accettazione con banda di guardia: risulta conforme con i limiti così come sono (fuori limite: {1}), ma non lo risulta con i limiti ristretti di un valore pari all'incertezza (fuori limite: {2}): conformità condizionata.",
  "Guarded acceptance: it fails with the limits as they are ({1} outside), but not with the limits moved outwards by the uncertainty ({2} outside): a conditional fail.":
    "Accettazione con banda di guardia: risulta non conforme con i limiti così come sono (fuori limite: {1}), ma non lo risulta con i limiti allargati di un valore pari all'incertezza (fuori limite: {2}): non conformità condizionata.",
  time: "tempo",
  flag: "contrassegno",
  events: "eventi",
  mean: "media",
  "lowest value": "valore minimo",
  "highest value": "valore massimo",
  samples: "campioni",
  "order {1}": "ordine {1}",
  "The rule counts over a year, in which {1} intervals may lie outside; this period alone cannot show that it is kept.":
    "La regola conta su un anno, nel quale possono trovarsi fuori limite {1} intervalli; questo periodo da solo non può dimostrare che essa sia rispettata.",
  "The log holds mains signalling voltages, but not every 3 s or not at a frequency that is known and on the curve.":
    "Il log contiene tensioni di trasmissione di segnali, ma non ogni 3 s oppure non a una frequenza nota e compresa nella curva.",
  "The log holds no values of the {1}.": "Il log non contiene valori della grandezza: {1}.",
  dips: "buchi di tensione",
  swells: "sovratensioni temporanee",
  "The log holds only those {1} that the recorder was triggered by, at its own thresholds; there may be others, so they are listed but not counted against the standard.":
    "Il log contiene solo gli eventi che hanno attivato il registratore secondo le proprie soglie ({1}); possono essercene altri, perciò sono elencati ma non contati rispetto alla norma.",
  "The log holds interval values only; {1} need recorded events or waveforms.":
    "Il log contiene solo valori di intervallo; per i fenomeni richiesti ({1}) servono eventi registrati o forme d'onda.",
  "Not in the log: {1}.": "Non presente nel log: {1}.",
  "the standard gives none for the total; derived: as for one harmonic, all of them off by the same share":
    "la norma non ne indica per il totale; valore derivato: come per una singola armonica, con tutte errate della stessa quota",
  "class {1} of {2}: its largest error in % of the reading, taken as the expanded uncertainty":
    "classe {1} di {2}: il suo errore massimo in % della lettura, assunto come incertezza estesa",
  "stated in the setup": "dichiarata nella configurazione",
  "{1}; stated as {2} with k = {3}, here converted to k = {4}":
    "{1}; dichiarata come {2} con k = {3}, qui convertita a k = {4}",
  "class {1} of IEC 61000-4-30, as quoted in a public article":
    "classe {1} di IEC 61000-4-30, come citata in un articolo pubblico",
  "class {1} of IEC 61000-4-30, from memory; check it in the standard":
    "classe {1} di IEC 61000-4-30, a memoria; verificare nella norma",
  "the log writes steps of {1}: half a step either way, all values in it alike":
    "il log scrive a passi di {1}: mezzo passo in più o in meno, tutti i valori ugualmente probabili",
};
