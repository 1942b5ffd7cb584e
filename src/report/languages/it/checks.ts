/** Findings on the recording. */
export const CHECKS: Readonly<Record<string, string>> = {
  "The calibration of the instrument was due on {1}, and the recording ran until {2}; the stated uncertainty holds only if a later calibration finds the instrument unchanged.":
    "La taratura dello strumento scadeva il {1} e la registrazione è durata fino al {2}; l'incertezza dichiarata vale solo se una taratura successiva trova lo strumento invariato.",
  "The instrument was calibrated on {1}, after the recording began on {2}; add an earlier certificate, or that nothing was adjusted in between.":
    "Lo strumento è stato tarato il {1}, dopo l'inizio della registrazione il {2}; aggiungere un certificato anteriore, oppure che nel frattempo nulla è stato regolato.",
  "the range of the current sensor ended there, unless an inverter or a load limits its current at just that value; true values may be higher, so repeat with a larger range":
    "lì finiva la portata del sensore di corrente, a meno che un inverter o un carico limiti la propria corrente proprio a quel valore; i valori veri possono essere più alti, perciò ripetere con una portata maggiore",
  "the measuring range ended there, unless a regulator holds the voltage at just that value; true values may be higher, so check the range of the input":
    "lì finiva il campo di misura, a meno che un regolatore mantenga la tensione proprio a quel valore; i valori veri possono essere più alti, perciò verificare la portata dell'ingresso",
  "The highest value of {1}, {2}, stands in {3} of {4} rows ({5}), first at {6}, the next {7} lower values together in {8}; {9}.":
    "Il valore più alto della grandezza {1}, {2}, compare in {3} righe su {4} ({5}), la prima volta il {6}; i {7} valori immediatamente inferiori compaiono insieme in {8}; {9}.",
  "{1} could not be placed, as their stamps fall into the hour that the clocks of {2} repeat or leave out; they are left out and count as missing; if the recorder's clock does not follow that zone give its own with --zone, a fixed offset such as +01:00 for a clock that stays on winter time.":
    "{1}: collocazione nel tempo impossibile, perché le marche temporali cadono nell'ora che gli orologi di {2} ripetono o saltano; tali dati sono esclusi e contano come mancanti; se l'orologio del registratore non segue quel fuso, indicare il suo con --zone, ad esempio uno scarto fisso come +01:00 per un orologio che resta sull'ora solare.",
  "the clocks of {1} changed by {2} at {3}": "gli orologi di {1} sono cambiati di {2} il {3}",
  "if the recorder's clock does not follow {1}, give its own zone with --zone, a fixed offset such as +01:00 for a clock that stays on winter time":
    "se l'orologio del registratore non segue {1}, indicare il suo fuso con --zone, ad esempio uno scarto fisso come +01:00 per un orologio che resta sull'ora solare",
  "The log has a gap of {1} at {2}, and {3}; most likely the recorder's clock did not change and times on one side are off by as much, unless it was really without supply for just that time; {4}.":
    "Il log ha una lacuna di {1} il {2}, e {3}; molto probabilmente l'orologio del registratore non è cambiato e gli orari da un lato sono errati di altrettanto, a meno che esso sia rimasto davvero senza alimentazione proprio per quel tempo; {4}.",
  "From {1} the log holds {2} twice with different values, and {3}; most likely the recorder's clock changed at another time or not at all, unless files of two recorders were mixed; {4}.":
    "Da {1} il log contiene {2} due volte con valori diversi, e {3}; molto probabilmente l'orologio del registratore è cambiato in un altro momento o non è cambiato affatto, a meno che siano stati mescolati i file di due registratori; {4}.",
  "In the recording {1}, and the stamps follow; intervals are counted in UTC, so no hour is missing or counted twice.":
    "Durante la registrazione {1}, e le marche temporali ne tengono conto; gli intervalli sono contati in UTC, perciò nessuna ora manca o è contata due volte.",
  "In the recording {1}, but the stamps show nothing of it; the recorder's clock may not have changed, so that times on one side are off by as much, or nothing was logged just then; {2}.":
    "Durante la registrazione {1}, ma le marche temporali non lo mostrano; l'orologio del registratore può non essere cambiato, così che gli orari da un lato sono errati di altrettanto, oppure proprio allora non è stato registrato nulla; {2}.",
  "The log has a gap of one hour at {1} and its zone was only assumed ({2}); this may be the change to summer time, after which all times are off by an hour, or the recorder was without supply for an hour; give --zone.":
    "Il log ha una lacuna di un'ora il {1} e il suo fuso è stato solo ipotizzato ({2}); può trattarsi del passaggio all'ora legale, dopo il quale tutti gli orari sono errati di un'ora, oppure il registratore è rimasto un'ora senza alimentazione; indicare --zone.",
  "From {1} the log holds one hour twice with different values, and its zone was only assumed ({2}); this may be the change to winter time, or files of two recorders were mixed; give --zone so that the repeated hour can be placed.":
    "Da {1} il log contiene un'ora due volte con valori diversi, e il suo fuso è stato solo ipotizzato ({2}); può trattarsi del ritorno all'ora solare, oppure sono stati mescolati i file di due registratori; indicare --zone, affinché l'ora ripetuta possa essere collocata.",
  "The clock of the log steps {1}, first at {2}, farthest by {3} s at {4}; a recorder that restarts or whose clock is set does that; the interval at a step is not of full length and all times on one side of it may be off by as much, so compare the clock with a reference before you rely on times.":
    "L'orologio del log salta {1}, la prima il {2}, al massimo di {3} s il {4}; così si comporta un registratore che si riavvia o il cui orologio viene regolato; l'intervallo in corrispondenza di un salto non ha durata piena e tutti gli orari da un lato di esso possono essere errati di altrettanto, perciò confrontare l'orologio con un riferimento prima di fare affidamento sugli orari.",
  "that is the factor of a wrong voltage transformer ratio or a misplaced decimal point, so give voltageRatio in the setup, or --declared":
    "è il fattore di un rapporto errato dei trasformatori di tensione o di un separatore decimale fuori posto, perciò indicare voltageRatio nella configurazione, oppure --declared",
  "that is the factor between V and kV or mV and V, so state the unit of the voltage columns in the setup, or give --declared in volts":
    "è il fattore tra V e kV o tra mV e V, perciò dichiarare nella configurazione l'unità delle colonne di tensione, oppure indicare --declared in volt",
  "that is √3 and the declared voltage seems to be phase to neutral, so give it phase to phase: --declared {1}":
    "è √3 e la tensione dichiarata sembra essere verso neutro, perciò indicarla tra le fasi: --declared {1}",
  "that is √3 and the log seems to hold voltages between phases, so give --connection delta and the declared voltage between phases: --declared {1}":
    "è √3 e il log sembra contenere tensioni concatenate, perciò indicare --connection delta e la tensione dichiarata tra le fasi: --declared {1}",
  "that is 1/√3 and the log seems to hold voltages to neutral, so give --connection star and the declared voltage to neutral: --declared {1}":
    "è 1/√3 e il log sembra contenere tensioni verso neutro, perciò indicare --connection star e la tensione dichiarata verso neutro: --declared {1}",
  "that is 1/√3 and the declared voltage seems to be phase to phase, so give it to neutral: --declared {1}":
    "è 1/√3 e la tensione dichiarata sembra essere tra le fasi, perciò indicarla verso neutro: --declared {1}",
  "that is near {1} V, a secondary voltage of voltage transformers, so give their ratio as voltageRatio in the setup, such as {2}/{3}":
    "è prossima a {1} V, una tensione secondaria dei trasformatori di tensione, perciò indicarne il rapporto come voltageRatio nella configurazione, ad esempio {2}/{3}",
  "{1} s": "{1} s",
  "{1} d": "{1} d",
  "{1} h": "{1} h",
  "{1} min": "{1} min",
  "1 row": "1 riga",
  "{1} rows": "{1} righe",
  "1 interval": "1 intervallo",
  "{1} intervals": "{1} intervalli",
  "1 day": "1 giorno",
  "{1} days": "{1} giorni",
  "1 time": "1 volta",
  "{1} times": "{1} volte",
  "1 gap": "1 lacuna",
  "{1} gaps": "{1} lacune",
  "1 run": "1 serie",
  "{1} runs": "{1} serie",
  "{1} and {2}": "{1} e {2}",
  "leave any work on live parts to a licensed electrician or the network operator, under the local codes":
    "affidare ogni lavoro su parti in tensione a un elettricista abilitato o al gestore della rete, secondo le norme locali",
  "{1} reads {2} V in the median, {3} of {4} V, while another phase has voltage; its lead was not connected, a fuse in it is open or the phase was not in service, so nothing measured on it is judged; check the connection and record again, and {5}.":
    "{1}: mediana di {2} V, {3} di {4} V, mentre un'altra fase è in tensione; il suo cavo di misura non era collegato, un suo fusibile è aperto o la fase non era in servizio, perciò nulla di quanto misurato su di essa è valutato; verificare il collegamento e registrare di nuovo, e {5}.",
  "both its inputs carry the same phase, or a phase was out of supply":
    "entrambi i suoi ingressi portano la stessa fase, oppure una fase era senza alimentazione",
  "this is a real outage of one phase, which counts, or a lead that came off, which should not":
    "si tratta di una vera mancanza di una fase, che conta, oppure di un cavo di misura staccato, che non dovrebbe contare",
  "{1} lies below {2} V for {3} ({4} of {5} rows), first at {6}, while another phase has voltage; {7}; find out which, and {8}.":
    "{1}: sotto {2} V per {3} ({4} righe su {5}), la prima volta il {6}, mentre un'altra fase è in tensione; {7}; accertare quale dei due casi, e {8}.",
  "The median of the measured voltages is {1} V, {2} of the declared {3} V":
    "La mediana delle tensioni misurate è {1} V, {2} dei {3} V dichiarati",
  "that is the nominal voltage {1} V, so give it with --declared if it is the one of this supply":
    "è la tensione nominale {1} V, perciò indicarla con --declared se è quella di questa alimentazione",
  "give --declared, --connection or, for voltage transformers, voltageRatio in the setup":
    "indicare --declared, --connection oppure, per trasformatori di tensione, voltageRatio nella configurazione",
  "no supply in service is there; {1}": "nessuna alimentazione in servizio si trova a tale valore; {1}",
  "{1}; half of all values lie beyond what a supply should ever reach, so either the supply is very bad or the declared voltage is not that of this point; check it, and {2}.":
    "{1}; metà di tutti i valori va oltre ciò che un'alimentazione dovrebbe mai raggiungere, perciò o l'alimentazione è pessima o la tensione dichiarata non è quella di questo punto; verificarla, e {2}.",
  "{1}, which is nearer to the nominal voltage {2} V; the transformer's tap may be set high or low, but if {3} V is the declared voltage of this supply its limits are others, so give it with --declared.":
    "{1}, più vicina alla tensione nominale {2} V; la presa del trasformatore può essere regolata alta o bassa, ma se {3} V è la tensione dichiarata di questa alimentazione i suoi limiti sono altri, perciò indicarla con --declared.",
  "{1}; {2}; until then the voltage is not judged.": "{1}; {2}; fino ad allora la tensione non è valutata.",
  "1 row repeats an interval already logged, with the same values; overlapping read-outs do that, and each interval was counted once.":
    "1 riga ripete un intervallo già registrato, con gli stessi valori; accade con scarichi di dati sovrapposti, e ogni intervallo è stato contato una volta sola.",
  "{1} rows repeat intervals already logged, with the same values; overlapping read-outs do that, and each interval was counted once.":
    "{1} righe ripetono intervalli già registrati, con gli stessi valori; accade con scarichi di dati sovrapposti, e ogni intervallo è stato contato una volta sola.",
  "For {1}, the first at {2}, the log holds rows with different values; the clock may have been set back, an hour of a clock change repeated, or files of two recorders mixed; the disagreeing values count as missing, so find out which rows are right and leave the others out.":
    "Per {1}, a partire da {2}, il log contiene righe con valori diversi; l'orologio può essere stato portato indietro, un'ora del cambio d'ora ripetuta, o i file di due registratori mescolati; i valori discordanti contano come mancanti, perciò accertare quali righe sono giuste ed escludere le altre.",
  "The first {1} is {2} at {3}, the median of the next {4} only {5}; a flickermeter that had not settled reads too high at its start, but switching when the recorder was connected looks the same; it counts as logged, so name it if Plt of the first two hours decides.":
    "Il primo valore della grandezza {1} è {2} il {3}, la mediana dei {4} successivi solo {5}; un flickermetro non ancora assestato indica troppo all'avvio, ma una manovra al momento del collegamento del registratore appare uguale; il valore conta come registrato, perciò segnalarlo se è decisivo il Plt delle prime due ore.",
  "All {1} values of the power frequency are {2} Hz to the last digit ({3} Hz), where a large grid spreads by 10 to 25 mHz in a day; the recorder seems not to have measured it, unless the point is fed by an inverter of constant frequency, which is no public supply; the frequency is not judged, so switch its measurement on and record again.":
    "Tutti i {1} valori della frequenza di rete sono pari a {2} Hz fino all'ultima cifra ({3} Hz), mentre in una grande rete si disperdono di 10 ÷ 25 mHz in un giorno; il registratore sembra non averla misurata, a meno che il punto sia alimentato da un inverter a frequenza costante, che non è un'alimentazione pubblica; la frequenza non è valutata, perciò attivarne la misura e registrare di nuovo.",
  "The power frequency is {1} Hz to the last digit for {2} ({3} values) from {4}; a grid never stands still that long, so the recorder may have held its last value or an inverter may have fed the point; look at what else was logged then.":
    "La frequenza di rete è pari a {1} Hz fino all'ultima cifra per {2} ({3} valori) da {4}; una rete non resta mai ferma così a lungo, perciò il registratore può avere mantenuto l'ultimo valore o un inverter può avere alimentato il punto; esaminare che cos'altro è stato registrato in quel tempo.",
  "In {1} of {2} the power frequency spreads by less than 1 mHz, least with {3} mHz in the day from {4}, where a large grid spreads by 10 to 25 mHz; an inverter or an uninterruptible supply may feed the point, or the values were not measured; check what was connected.":
    "In {1} su {2} la frequenza di rete si disperde di meno di 1 mHz, al minimo di {3} mHz nel giorno da {4}, mentre in una grande rete si disperde di 10 ÷ 25 mHz; un inverter o un gruppo di continuità può alimentare il punto, oppure i valori non sono stati misurati; verificare che cosa era collegato.",
  " ({1} of {2} series)": " ({1} serie su {2})",
  "The log has {1} in {2}{3}: {4} of {5} without values ({6}), the longest {7} from {8}; the recorder may have been without supply, switched off or read out with parts left out; nothing was filled in, so look for the missing part in the recorder or record again if the verdict is undecided.":
    "Il log presenta {1} in: {2}{3}; {4} su {5} senza valori ({6}), la lacuna più lunga di {7} da {8}; il registratore può essere rimasto senza alimentazione, spento o scaricato solo in parte; nulla è stato completato, perciò cercare la parte mancante nel registratore o registrare di nuovo se l'esito è indeterminato.",
  "The voltage of {1} lies above 115 % of the declared {2} V in {3}, at most {4} V ({5}) on {6} at {7} and for {8} on end; if the declared voltage and the connection are right this can destroy equipment and start fires, so disconnect sensitive equipment, call the network operator at once and {9}.":
    "La tensione di {1} supera il 115 % dei {2} V dichiarati in {3}, al massimo {4} V ({5}) su {6} il {7} e per {8} di seguito; se la tensione dichiarata e il collegamento sono giusti, ciò può distruggere apparecchi e provocare incendi, perciò scollegare gli apparecchi sensibili, chiamare subito il gestore della rete e {9}.",
  ", {1} of them in long stretches, the first from {2}": ", di cui {1} in lunghi tratti, il primo da {2}",
  "these phases are not judged, so check the leads and the export":
    "queste fasi non sono valutate, perciò verificare i cavi di misura e l'esportazione",
  "check the leads and the export": "verificare i cavi di misura e l'esportazione",
  "The {1} agree to the last digit in {2} of {3} rows ({4}) although they change{5}; one lead was on two inputs, one column was exported twice, or the inputs were bridged on purpose in a single-phase supply; {6}, and {7}.":
    "I valori della grandezza {1} coincidono fino all'ultima cifra in {2} righe su {3} ({4}) pur variando{5}; un cavo di misura era su due ingressi, una colonna è stata esportata due volte, oppure gli ingressi erano collegati insieme di proposito in un'alimentazione monofase; {6}, e {7}.",
  "The {1} are all but equal: correlation {2}, mean difference {3} between {4}; a well balanced medium-voltage supply or bridged inputs look like that, and so does one lead on two inputs; make sure that each input has its own phase.":
    "I valori della grandezza {1} sono quasi uguali: correlazione {2}, differenza media {3} tra {4}; così appaiono un'alimentazione in media tensione ben equilibrata o ingressi collegati insieme, ma anche un solo cavo di misura su due ingressi; accertarsi che ogni ingresso abbia la propria fase.",
  "The {1}{2} is negative in {3}, at lowest {4}, which it cannot be; the logger may mark missing values so; these rows count as missing.":
    "La grandezza {1}{2} è negativa in {3}, al minimo {4}, il che è impossibile; il registratore può contrassegnare così i valori mancanti; queste righe contano come mancanti.",
  " of order {1}": " di ordine {1}",
  "In 1 ten-minute interval": "In 1 intervallo di dieci minuti",
  "In {1} ten-minute intervals": "In {1} intervalli di dieci minuti",
  "{1}, the first from {2}, all voltages lie below 5 % of the declared {3} V: the supply, or the recorder's leads, were interrupted; they count as outside the limits of the supply voltage here, although EN 50160 leaves interruptions out of the voltage variations (from memory), so take {4} off the numbers outside if the interruption is beyond doubt.":
    "{1}, a partire da {2}, tutte le tensioni sono sotto il 5 % dei {3} V dichiarati: l'alimentazione, o i cavi di misura del registratore, erano interrotti; qui contano come fuori dai limiti della tensione di alimentazione, benché EN 50160 escluda le interruzioni dalle variazioni della tensione (a memoria), perciò sottrarre {4} dai numeri fuori limite se l'interruzione è fuori di dubbio.",
  "The log holds {1} every {2}, but the standard counts values of 10 min (Plt: 2 h), and a longer mean hides short excesses; such values are shown and not judged, so set the recorder to 10 min or less and record again.":
    "Il log contiene {1} ogni {2}, ma la norma conta valori di 10 min (Plt: 2 h), e una media più lunga nasconde i superamenti brevi; tali valori sono mostrati e non valutati, perciò impostare il registratore a 10 min o meno e registrare di nuovo.",
  "as the setup says": "come indica la configurazione",
  "as the log suggests": "come suggerisce il log",
  "The log also holds {1} to neutral, which are not judged: the supply voltage is judged phase to phase, {2}; if the supply has a neutral that users are connected to, assess it with --connection star.":
    "Il log contiene anche {1} verso neutro, non valutate: la tensione di alimentazione è valutata tra le fasi, {2}; se l'alimentazione ha un neutro al quale sono collegati utenti, valutarla con --connection star.",
  "1 event that the recorder listed": "1 evento elencato dal registratore",
  "{1} events that the recorder listed": "{1} eventi elencati dal registratore",
  "{1} s of waveforms in {2}": "{1} s di forme d'onda in {2}",
  "The log holds {1}: only what the recorder's own thresholds caught; that no other dip, swell or interruption occurred does not follow, so the events are shown and not counted against the standard; for a count, record without a break or with thresholds that are known.":
    "Il log contiene {1}: solo ciò che le soglie del registratore hanno colto; non ne segue che non vi siano stati altri buchi di tensione, sovratensioni temporanee o interruzioni, perciò gli eventi sono mostrati e non contati rispetto alla norma; per un conteggio, registrare senza pause o con soglie note.",
  "its time, duration, phase or voltage is not stated so that it can be relied on":
    "il suo istante, la durata, la fase o la tensione non sono indicati in modo affidabile",
  "Left out of {1} events that the recorder listed: {2}, as nothing in the waveforms shows them and the log does not say enough of them; the first is at {3} ({4}): {5}.":
    "Eventi tralasciati su {1} elencati dal registratore: {2}, perché nulla nelle forme d'onda li mostra e il log non ne dice abbastanza; il primo è il {3} ({4}): {5}.",
  "without category": "senza categoria",
  "The one event that is both listed by the recorder and found in its waveforms is not the same in both:":
    "L'unico evento elencato dal registratore e trovato anche nelle sue forme d'onda non è lo stesso nei due casi:",
  "Of {1} events that are both listed by the recorder and found in its waveforms, {2} are not the same in both:":
    "Eventi elencati dal registratore e trovati anche nelle sue forme d'onda: {1}; diversi nei due casi: {2};",
  "they differ by up to {1} s in duration and {2} % of the declared voltage, the first at {3};":
    "le differenze arrivano fino a {1} s nella durata e a {2} % della tensione dichiarata, la prima il {3};",
  "{1} {2} what the waveforms show is used; the recorder may go by other thresholds, another nominal voltage or another definition.":
    "{1} {2} si usa ciò che mostrano le forme d'onda; il registratore può basarsi su altre soglie, un'altra tensione nominale o un'altra definizione.",
  "minimum {1}": "minimo {1}",
  "maximum {1}": "massimo {1}",
  "the columns of mean, minimum and maximum seem to be mixed up, so name them in the setup (columns: statistic)":
    "le colonne di media, minimo e massimo sembrano scambiate, perciò indicarle nella configurazione (columns: statistic)",
  "so few rows may come from a fault in the recorder or from editing, so compare them with the recorder":
    "così poche righe possono derivare da un difetto del registratore o da una modifica, perciò confrontarle con il registratore",
  "In {1} of {2} rows ({3}) the mean of {4} lies outside its own extremes, farthest at {5} with {6} against {7}; {8}.":
    "In {1} righe su {2} ({3}) la media della grandezza {4} è al di fuori dei propri estremi, al massimo il {5} con {6} rispetto a {7}; {8}.",
  "The median of the power frequency is {1} Hz but the nominal frequency is taken as {2} Hz; the supply seems to be one of {3} Hz; until that is settled the frequency is not judged, so give nominalFrequency in the setup and a limit set for {4} Hz.":
    "La mediana della frequenza di rete è {1} Hz, ma come frequenza nominale è assunto {2} Hz; l'alimentazione sembra essere a {3} Hz; finché ciò non è chiarito la frequenza non è valutata, perciò indicare nominalFrequency nella configurazione e un insieme di limiti per {4} Hz.",
  "For {1} ({2}) the voltages to neutral lie more than 8 % of {3} V apart, most at {4} with L1 {5} V, L2 {6} V and L3 {7} V":
    "Per {1} ({2}) le tensioni verso neutro differiscono tra loro di più dell'8 % di {3} V, al massimo il {4} con L1 {5} V, L2 {6} V e L3 {7} V",
  "while the voltages between the phases agree within 2 % (zero-sequence voltage {1} V, {2} times the negative-sequence voltage)":
    "mentre le tensioni concatenate concordano entro il 2 % (tensione di sequenza omopolare {1} V, {2} volte la tensione di sequenza inversa)",
  "some phases rising while others fall; no voltages between the phases were logged, so the cause cannot be confirmed":
    "con alcune fasi in salita mentre altre scendono; le tensioni concatenate non sono state registrate, perciò la causa non può essere confermata",
  "{1}, {2}; {3}; {4}, and {5}.": "{1}, {2}; {3}; {4}, e {5}.",
  "the neutral of the supply is probably loose or broken, unless it was the recorder's own neutral lead":
    "il neutro dell'alimentazione è probabilmente allentato o interrotto, a meno che si tratti del cavo di neutro del registratore stesso",
  "the neutral of the supply may be loose or broken, unless the loads are very unequal or the recorder's own neutral lead was open":
    "il neutro dell'alimentazione può essere allentato o interrotto, a meno che i carichi siano molto diversi tra loro o che il cavo di neutro del registratore fosse aperto",
  "unequal loads or feed-in on a line do that, but a neutral that grows loose begins like this too":
    "così agiscono carichi o immissioni diseguali su una linea, ma così comincia anche un neutro che si va allentando",
  "this is urgent, as voltages beyond 80 to 115 % destroy equipment and metal parts may become live: switch sensitive equipment off, keep away from metal parts of the installation, call the network operator at once":
    "è urgente, perché tensioni oltre il campo da 80 a 115 % distruggono apparecchi e parti metalliche possono andare in tensione: spegnere gli apparecchi sensibili, tenersi lontani dalle parti metalliche dell'impianto, chiamare subito il gestore della rete",
  "have the network operator or a licensed electrician check the neutral soon, as a loose joint grows worse until it breaks":
    "far verificare presto il neutro dal gestore della rete o da un elettricista abilitato, perché una connessione allentata peggiora fino a interrompersi",
  "compare with the currents, and have the neutral checked if they do not explain it":
    "confrontare con le correnti e, se queste non lo spiegano, far verificare il neutro",
  "The logged {1} disagrees with the cube mean of its twelve Pst in {2} of {3} cases ({4}), most in the two hours from {5} with {6} logged and {7} from Pst; a recorder that was restarted, or that averages otherwise than IEC 61000-4-15, does that; where Pst is logged the verdict rests on Pst, so leave the logged Plt out of comparisons.":
    "La grandezza registrata {1} non concorda con la media cubica dei suoi dodici Pst in {2} casi su {3} ({4}), al massimo nelle due ore da {5} con {6} registrato e {7} dai Pst; così si comporta un registratore riavviato o che calcola la media diversamente da IEC 61000-4-15; dove il Pst è registrato l'esito si basa sul Pst, perciò tralasciare nei confronti il Plt registrato.",
  "The recording is {1} long, {2} of the week over which the standard counts; the missing time may hide excesses or dilute those found, so record seven days without a break.":
    "La registrazione dura {1}, {2} della settimana sulla quale conta la norma; il tempo mancante può nascondere superamenti o diluire quelli trovati, perciò registrare sette giorni senza interruzioni.",
  "The part of the recording that was asked for is {1} long, {2} of the week over which the standard counts; the missing time may hide excesses or dilute those found, so assess seven days without a break.":
    "La parte richiesta della registrazione dura {1}, {2} della settimana sulla quale conta la norma; il tempo mancante può nascondere superamenti o diluire quelli trovati, perciò valutare sette giorni senza interruzioni.",
  "so many rows are not measured that the phase is not judged; compare with the recorder and record again":
    "le righe non misurate sono così tante che la fase non è valutata; confrontare con il registratore e registrare di nuovo",
  "these rows count as logged; compare them with the recorder":
    "queste righe contano come registrate; confrontarle con il registratore",
  "The {1} repeats one value to the last digit in {2} of rows ({3} of {4} rows, {5}), the longest {6} rows ({7}) of {8} from {9}; the recorder may have held its last value or gaps were filled, unless a regulated supply feeds the point; {10}.":
    "La grandezza {1} ripete uno stesso valore fino all'ultima cifra in {2} di righe ({3} righe su {4}, {5}), la più lunga di {6} righe ({7}) a {8} da {9}; il registratore può avere mantenuto l'ultimo valore o le lacune sono state riempite, a meno che un'alimentazione regolata alimenti il punto; {10}.",
  "1 row does not stand in the order of time; that is harmless where a file was sorted or joined by hand, but may also mean that the recorder's clock was set back; the rows were put in order by their stamps, so check against the recorder that the stamps are right.":
    "1 riga non è in ordine di tempo; ciò è innocuo se un file è stato ordinato o unito a mano, ma può anche significare che l'orologio del registratore è stato portato indietro; le righe sono state ordinate secondo le marche temporali, perciò verificare sul registratore che queste siano giuste.",
  "{1} rows do not stand in the order of time; that is harmless where a file was sorted or joined by hand, but may also mean that the recorder's clock was set back; the rows were put in order by their stamps, so check against the recorder that the stamps are right.":
    "{1} righe non sono in ordine di tempo; ciò è innocuo se un file è stato ordinato o unito a mano, ma può anche significare che l'orologio del registratore è stato portato indietro; le righe sono state ordinate secondo le marche temporali, perciò verificare sul registratore che queste siano giuste.",
  "{1} of {2} ten-minute intervals do not begin on a full ten minutes, the first at {3} ({4} s after the tick); the recorder counts from its own start or its clock is off, or the zone is not a multiple of ten minutes from UTC; values of two recorders then cover different times, so say so when you compare them.":
    "{1} su {2} intervalli di dieci minuti non iniziano su una decina di minuti esatta, il primo il {3} ({4} s dopo l'istante esatto); il registratore conta dal proprio avvio o il suo orologio è errato, oppure il fuso non dista da UTC un multiplo di dieci minuti; i valori di due registratori coprono allora tempi diversi, perciò dichiararlo quando si confrontano.",
  "one of them": "una delle due",
  "The median of {1} is {2} % but that of the root sum of the harmonics is {3} %, {4} times as much; {5} seems to be logged as a share of one instead of percent or the reverse; until that is settled it is not judged, so state the unit of these columns in the setup.":
    "La mediana della grandezza {1} è {2} %, ma quella della radice della somma dei quadrati delle armoniche è {3} %, {4} volte tanto; una grandezza ({5}) sembra registrata come frazione di uno invece che in percento, o viceversa; finché ciò non è chiarito non è valutata, perciò dichiarare nella configurazione l'unità di queste colonne.",
  "The logged {1} disagrees with the root sum of its harmonics{2} in {3} of {4} rows ({5}), most at {6} with {7} % logged and {8} % from the harmonics; the recorder may refer one to the declared voltage and the other to the fundamental, count other orders, or a column is not what it was taken for; check both columns in the setup before you rely on either.":
    "La grandezza registrata {1} non concorda con la radice della somma dei quadrati delle sue armoniche{2} in {3} righe su {4} ({5}), al massimo il {6} con {7} % registrato e {8} % dalle armoniche; il registratore può riferire l'una alla tensione dichiarata e le altre alla fondamentale, contare altri ordini, oppure una colonna non è ciò per cui è stata presa; verificare entrambe le colonne nella configurazione prima di fare affidamento sull'una o sull'altra.",
  " (not all orders are logged, so THD may only be higher)":
    " (non tutti gli ordini sono registrati, perciò la THD può solo essere più alta)",
  "The log does not say which end of its intervals the stamps mark; the {1} was assumed, so every time in this report may be off by one interval ({2}); give intervalLabel in the setup if you know it.":
    "Il log non dice quale estremo dei suoi intervalli indichino le marche temporali; è stato ipotizzato l'estremo «{1}», perciò ogni orario in questo rapporto può essere errato di un intervallo ({2}); indicare intervalLabel nella configurazione, se noto.",
  "The stamps carry no offset and no zone was given; they were read as {1}, so every time in this report may be off by whole hours and a clock change would show as a gap or a repeated hour; give --zone.":
    "Le marche temporali non contengono uno scarto da UTC e non è stato indicato alcun fuso; sono state lette come {1}, perciò ogni orario in questo rapporto può essere errato di ore intere e un cambio d'ora apparirebbe come una lacuna o un'ora ripetuta; indicare --zone.",
};
