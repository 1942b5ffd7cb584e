/** What reading PQDIF says of files, observations, channels and series. */
export const PQDIF: Readonly<Record<string, string>> = {
  "the file states how far its times are from local time, or UTC as its zone":
    "il file indica di quanto i suoi orari distano dall'ora locale, oppure UTC come fuso",
  'The file names the time zone "{1}", but not whether its times are in it or in UTC; they are read as UTC. If they are local times, give the zone with --zone.':
    "Il file indica il fuso orario «{1}», ma non se i suoi orari siano in tale fuso o in UTC; sono letti come UTC. Se sono ore locali, indicare il fuso con --zone.",
  "the first row of each observation lies at the start of the observation":
    "la prima riga di ogni osservazione coincide con l'inizio dell'osservazione",
  "the first row of each observation lies one interval after the start of the observation":
    "la prima riga di ogni osservazione è un intervallo dopo l'inizio dell'osservazione",
  "a collection announces {1} elements, which its record cannot hold":
    "una raccolta annuncia {1} elementi, che il suo record non può contenere",
  "the element {1} holds {2}, which it cannot be, and is left out":
    "l'elemento {1} contiene {2}, valore impossibile, ed è tralasciato",
  "the file is of version {1}, while version 1 is known here; what was found is read":
    "il file è di versione {1}, mentre qui è nota la versione 1; è letto ciò che è stato trovato",
  '"{1}": values times {2}, the transformer ratio of the setup':
    "«{1}»: valori moltiplicati per {2}, il rapporto dei trasformatori della configurazione",
  '"{1}": values times {2}/{3}, the transducer ratio that the file says to apply':
    "«{1}»: valori moltiplicati per {2}/{3}, il rapporto del trasduttore che il file dice di applicare",
  '"{1}": the transducer ratio {2}/{3} of the file cannot be applied':
    "«{1}»: il rapporto del trasduttore {2}/{3} del file non può essere applicato",
  '"{1}": calibrated as (value − {2}) × {3}, as the file says to apply; that the offset goes first is not confirmed by any document seen':
    "«{1}»: calibrato come (valore − {2}) × {3}, come il file dice di applicare; che lo scarto si sottragga per primo non è confermato da alcun documento consultato",
  "a data source defines no channel that can be read": "una sorgente di dati non definisce alcun canale leggibile",
  "no trigger": "nessun trigger",
  "triggered by a channel": "attivata da un canale",
  "by the clock": "secondo l'orologio",
  "triggered from outside": "attivata dall'esterno",
  "by the clock, for statistics": "secondo l'orologio, per statistica",
  "trigger not said": "trigger non indicato",
  "trigger method {1}": "metodo di trigger {1}",
  "its magnitude {1} ({2}) is not sure to be a voltage": "non è certo che la sua grandezza {1} ({2}) sia una tensione",
  "the log does not state its magnitude": "il log non ne indica il valore",
  "its magnitude {1} is not sure to be in percent of the declared voltage":
    "non è certo che il suo valore {1} sia in percento della tensione dichiarata",
  "a series in steps announces {1} of segments or values, which its record cannot hold":
    "una serie a passi annuncia {1} segmenti o valori, che il suo record non può contenere",
  "it cannot be read: {1}": "non è leggibile: {1}",
  '{1}: "{2}" has other numbers of times and values; the shorter one counts':
    "{1}: «{2}» ha un numero diverso di istanti e di valori; vale il minore",
  "{1}, byte {2}: {3}": "{1}, byte {2}: {3}",
  "{1}, byte {2} and {3} times more: {4}": "{1}, byte {2} e altre {3} volte: {4}",
  "logged values and waveforms": "valori registrati e forme d'onda",
  "logged values": "valori registrati",
  waveforms: "forme d'onda",
  "an event or a list of events": "un evento o un elenco di eventi",
  "nothing: none of its channels is used, see there": "nulla: nessuno dei suoi canali è usato, si veda lì",
  "magnitude or duration of events": "valore o durata di eventi",
  "it is empty in all observations": "è vuoto in tutte le osservazioni",
  "the log holds waveforms, whose samples carry the time at which they were taken":
    "il log contiene forme d'onda, i cui campioni portano l'istante in cui sono stati acquisiti",
  "it is the largest deviation from the average of the phases, another definition than the negative sequence u2":
    "è lo scostamento massimo dalla media delle fasi, una definizione diversa dalla sequenza inversa u2",
  "it is in relation to the whole r.m.s. value; total harmonic distortion is judged in relation to the fundamental":
    "è riferito all'intero valore efficace; la distorsione armonica totale è valutata rispetto alla fondamentale",
  "it is a sliding Plt, one value every Pst interval; Plt is counted in blocks of two hours":
    "è un Plt scorrevole, un valore a ogni intervallo di Pst; il Plt è contato in blocchi di due ore",
  "it is the r.m.s. value of all harmonics together": "è il valore efficace di tutte le armoniche insieme",
  "it is the r.m.s. value of all interharmonics together": "è il valore efficace di tutte le interarmoniche insieme",
  "it is the value that {1} % do not exceed, no mean or extreme":
    "è il valore non superato alla quota {1} %, non una media né un estremo",
  "it holds no mean, value, minimum or maximum": "non contiene una media, un valore, un minimo o un massimo",
  "its quantity type ({1}) is no log of values over time":
    "il suo tipo di grandezza ({1}) non è una registrazione di valori nel tempo",
  "it has no characteristic, so what it holds is not said; say it in the setup under columns:":
    "non ha una caratteristica, perciò non è detto che cosa contenga; indicarlo nella configurazione alla voce columns:",
  "its characteristic {1} is none of IEEE 1159.3, so what it holds is not known; say it in the setup under columns:":
    "la sua caratteristica {1} non è tra quelle di IEEE 1159.3, perciò non è noto che cosa contenga; indicarlo nella configurazione alla voce columns:",
  "its characteristic ({1}) is not used here": "la sua caratteristica ({1}) qui non è usata",
  "its characteristic ({1}) of a {2} in {3} is not used here":
    "la sua caratteristica ({1}; grandezza: {2}; unità: {3}) qui non è usata",
  "its phase ({1}) is no conductor that is judged; say the phase in the setup under columns:":
    "la sua fase ({1}) non è un conduttore che viene valutato; indicare la fase nella configurazione alla voce columns:",
  "a current between phases is not used": "una corrente tra le fasi non è usata",
  "{1} Hz is no multiple of {2} Hz, and single lines of a spectrum are no group of interharmonics":
    "{1} Hz non è un multiplo di {2} Hz, e singole righe di uno spettro non sono un gruppo di interarmoniche",
  "neither a group nor a frequency says its order; say it in the setup under columns: order":
    "né un gruppo né una frequenza ne indica l'ordine; indicarlo nella configurazione alla voce columns: order",
  "order {1} is no harmonic": "l'ordine {1} non è un'armonica",
  "order {1} lies beyond {2}": "l'ordine {1} è oltre {2}",
  "an observation has no start that can be read and is left out":
    "un'osservazione non ha un inizio leggibile ed è tralasciata",
  "a channel belongs to definition {1} of {2}, which there is not, and is left out":
    "un canale appartiene alla definizione {1} di {2}, che non esiste, ed è tralasciato",
  "a channel has {1} series where {2} are defined; the others are left out":
    "un canale ha {1} serie dove ne sono definite {2}; le altre sono tralasciate",
  "an observation lists more than {1} series and is left out":
    "un'osservazione elenca più di {1} serie ed è tralasciata",
  "an observation stands before any data source that can be read, and is left out":
    "un'osservazione precede ogni sorgente di dati leggibile ed è tralasciata",
  "the file has no container record that can be read": "il file non ha un record contenitore leggibile",
  "the setup leaves it out": "la configurazione lo esclude",
  "it is defined, but no observation holds it": "è definito, ma nessuna osservazione lo contiene",
  "it marks intervals as flagged": "segna gli intervalli come contrassegnati",
  "by the setup": "secondo la configurazione",
  "measured {1}, characteristic {2}, phase {3}": "misurato {1}, caratteristica {2}, fase {3}",
  "it holds no values that are numbers": "non contiene valori che siano numeri",
  "{1}: by the setup": "{1}: secondo la configurazione",
  '"{1}" holds the same in {2}, which is used': "«{1}» contiene lo stesso in {2}, e si usa quello",
  '"{1}" holds the frequency as well, and is used': "anche «{1}» contiene la frequenza, e si usa quello",
  "the compressed data of a record are damaged, so it is left out":
    "i dati compressi di un record sono danneggiati, perciò esso è tralasciato",
  "a record inflates to more than {1} bytes and is left out": "un record decompresso supera {1} byte ed è tralasciato",
  "the next record lies outside the file (at byte {1}), so the rest cannot be found":
    "il record successivo è fuori dal file (al byte {1}), perciò il resto non può essere trovato",
  "the next record is one that was already read (at byte {1}), so the rest cannot be found":
    "il record successivo è uno già letto (al byte {1}), perciò il resto non può essere trovato",
  "where the next record should begin (byte {1}) there is none, so the rest cannot be found":
    "dove dovrebbe iniziare il record successivo (byte {1}) non ce n'è alcuno, perciò il resto non può essere trovato",
  "the record gives sizes that cannot be ({1} and {2} bytes) and is left out":
    "il record indica dimensioni impossibili ({1} e {2} byte) ed è tralasciato",
  "the file ends within a record, {1} bytes before its end: copy the file again":
    "il file finisce all'interno di un record, {1} byte prima della fine di questo: copiare di nuovo il file",
  "it holds samples of neither a voltage nor a current": "non contiene campioni né di una tensione né di una corrente",
  "it holds no points on the wave": "non contiene punti della forma d'onda",
  "its phase ({1}) is no conductor that is judged": "la sua fase ({1}) non è un conduttore che viene valutato",
  "a series holds {1}, which is no real number, and is left out":
    "una serie contiene {1}, che non è un numero reale, ed è tralasciata",
  "a series shares the values of series {1} of channel {2}, which there is not":
    "una serie condivide i valori della serie {1} del canale {2}, che non esiste",
  "series share one another's values in a circle": "alcune serie condividono a vicenda i propri valori in cerchio",
  "a series has the unknown storage method {1} and is left out":
    "una serie ha il metodo di memorizzazione sconosciuto {1} ed è tralasciata",
  "its rows follow one another at no common distance, so the length of an interval cannot be told":
    "le sue righe non si susseguono a distanza comune, perciò la durata di un intervallo non può essere stabilita",
  "its values every {1} s are the course of an event, no log of intervals":
    "i suoi valori ogni {1} s sono l'andamento di un evento, non una registrazione di intervalli",
  "all its values are 0: its input was not connected": "tutti i suoi valori sono 0: il suo ingresso non era collegato",
  "it repeats the mean row by row, so it is no extreme": "ripete la media riga per riga, perciò non è un estremo",
  "Minimum and maximum repeat the mean on {1}: the recorder kept one value only, so these are not used as extremes.":
    "Minimo e massimo ripetono la media su {1}: il registratore ha conservato un solo valore, perciò questi non sono usati come estremi.",
  "it has no series of times": "non ha una serie di istanti",
  "its series of times is empty": "la sua serie di istanti è vuota",
  "its times are in cycles, and the file states no nominal frequency; give nominalFrequency in the setup":
    "i suoi istanti sono in periodi e il file non indica la frequenza nominale; indicare nominalFrequency nella configurazione",
  "its times have the unit {1}, which is no time": "i suoi istanti hanno l'unità {1}, che non è un tempo",
  "no unit": "nessuna unità",
  "unit {1}": "unità {1}",
  "the quantity has no unit": "la grandezza non ha unità",
  "the unit is {1}": "l'unità è {1}",
  "the unit is %": "l'unità è %",
  "the unit is {1}, a fraction of 1": "l'unità è {1}, una frazione di 1",
  "it holds no values": "non contiene valori",
  "the unit {1} does not fit a share in %": "l'unità {1} non è adatta a una quota in %",
  'it has no unit, and its values (median {1}) may be % or a fraction of 1; say the unit in the setup under columns:, "%" or "p.u."':
    'non ha unità e i suoi valori (mediana {1}) possono essere % o una frazione di 1; indicare l\'unità nella configurazione alla voce columns:, "%" o "p.u."',
  "it has no unit; the median {1} is one in %": "non ha unità; la mediana {1} è un valore in %",
  "per unit of {1} {2}, the base that it states": "per unità di {1} {2}, la base che esso indica",
  "per unit of the declared voltage {1} V": "per unità della tensione dichiarata {1} V",
  "it is in p.u. and states no base; give the declared voltage with --declared":
    "è in p.u. e non indica una base; indicare la tensione dichiarata con --declared",
  "it has no unit; the median {1} is one in {2}": "non ha unità; la mediana {1} è un valore in {2}",
  "it has no unit, and the median {1} does not tell it; say the unit in the setup under columns:":
    "non ha unità e la mediana {1} non la rivela; indicare l'unità nella configurazione alla voce columns:",
  "in % of the fundamental by its unit": "in % della fondamentale secondo la sua unità",
  "its unit says {1}, but order 1 has the median {2}, so it is taken as {3}":
    "l'unità indica {1}, ma l'ordine 1 ha la mediana {2}, perciò è preso come {3}",
  "order 1 is 1, so it is a fraction of the fundamental": "l'ordine 1 è 1, perciò è una frazione della fondamentale",
  "its unit is {1} and no order 1 shows whether it is % of the fundamental or {2}; say the unit in the setup under columns:":
    "l'unità è {1} e nessun ordine 1 mostra se sia % della fondamentale o {2}; indicare l'unità nella configurazione alla voce columns:",
  "a vector announces {1} items of {2} bytes, which its record cannot hold":
    "un vettore annuncia {1} elementi di {2} byte, che il suo record non può contenere",
  "an element has the unknown physical type {1}": "un elemento ha il tipo fisico sconosciuto {1}",
  "a link leads out of its record (to place {1} of {2})":
    "un rimando porta fuori dal suo record (alla posizione {1} di {2})",
  "{1} stands where numbers are expected, and is left out": "{1} si trova dove sono attesi numeri ed è tralasciato",
  '{1}: "{2}" has other numbers of times and samples; the shorter one counts':
    "{1}: «{2}» ha un numero diverso di istanti e di campioni; vale il minore",
  "all its samples are 0: its input was not connected":
    "tutti i suoi campioni sono 0: il suo ingresso non era collegato",
  "it has {1} samples per second; waveforms are measured from {2} up":
    "ha {1} campioni al secondo; le forme d'onda sono misurate a partire da {2}",
  "it is sampled apart from any voltage, and without one no cycle can be found":
    "è campionato separatamente da ogni tensione, e senza di essa nessun periodo può essere individuato",
  "{1}: the observation at {2} repeats samples of one that began before; they are counted once.":
    "{1}: l'osservazione del {2} ripete campioni di un'altra iniziata prima; sono contati una volta sola.",
};
