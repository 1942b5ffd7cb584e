/** What reading COMTRADE says of files and channels. */
export const COMTRADE: Readonly<Record<string, string>> = {
  "{1} of the {2} bytes of data are missing at its end.": "mancano {1} dei byte di dati ({2} in tutto) alla sua fine.",
  "{1} samples at {2} per second are left out, too few for a waveform of {3} Hz.":
    "{1} campioni a {2} al secondo sono tralasciati, troppo pochi per una forma d'onda di {3} Hz.",
  "sampled {1} times a second, so it is no waveform of {2} Hz":
    "campionato {1} volte al secondo, perciò non è una forma d'onda di {2} Hz",
  '"{1}" is brought to the primary side by {2}, unlike in the first file.':
    "«{1}» è riportato al primario con {2}, diversamente che nel primo file.",
  "an r.m.s. value or mean is no waveform": "un valore efficace o medio non è una forma d'onda",
  "direct and auxiliary voltages are not used": "le tensioni continue e ausiliarie non sono usate",
  "a frequency is no waveform": "una frequenza non è una forma d'onda",
  "an angle is no waveform": "un angolo non è una forma d'onda",
  "it is computed from other values": "è calcolato da altri valori",
  "a symmetrical component is no phase quantity": "una componente simmetrica non è una grandezza di fase",
  "a residual quantity (sum of the phases) is no phase quantity":
    "una grandezza residua (somma delle fasi) non è una grandezza di fase",
  "an earth quantity is no phase quantity": "una grandezza di terra non è una grandezza di fase",
  '"{1}{2}" may be a phase, a number or a symmetrical component':
    "«{1}{2}» può essere una fase, un numero o una componente simmetrica",
  '"{1}" is none of the phases {2}': "«{1}» non è tra le fasi {2}",
  "the edition {1} of the standard is not known; the layout of 1999 is used.":
    "l'edizione {1} della norma non è nota; si usa la struttura del 1999.",
  "the year of the standard is missing; the channel lines have the form of 1999, which is used.":
    "manca l'anno della norma; le righe dei canali hanno la forma del 1999, che è usata.",
  "{1} analog and {2} status channels are promised, but {3} and {4} are described; the descriptions are used.":
    "sono annunciati {1} canali analogici e {2} di stato, ma ne sono descritti {3} e {4}; si usano le descrizioni.",
  "the date is written {1}, not in the order of the edition.": "la data è scritta {1}, non nell'ordine dell'edizione.",
  "the date is read as {1}; the configuration names no edition, so state dateOrder in the setup if that is wrong.":
    "la data è letta come {1}; il file di configurazione non indica l'edizione, perciò dichiarare dateOrder nella configurazione se ciò è errato.",
  "the time factor {1} cannot be used; 1 is taken.": "il fattore di tempo {1} non è utilizzabile; si assume 1.",
  "the time code {1} cannot be read; the stamps are taken to name no offset.":
    "il codice di tempo {1} non è leggibile; si assume che le marche temporali non indichino uno scarto.",
  "the recorder states that its clock was right within {1} only.":
    "il registratore dichiara che il suo orologio era esatto solo entro {1}.",
  "the recorder states that its clock had failed; the times cannot be trusted.":
    "il registratore dichiara che il suo orologio era guasto; gli orari non sono affidabili.",
  "the data are text although the configuration says {1}.":
    "i dati sono testo, benché il file di configurazione indichi {1}.",
  "the data are binary although the configuration says ASCII.":
    "i dati sono binari, benché il file di configurazione indichi ASCII.",
  "the rows hold {1} words of status channels, not {2} as the configuration says.":
    "le righe contengono {1} parole di canali di stato, non {2} come indica il file di configurazione.",
  "{1} bytes behind the last whole row are left out; the file is cut off.":
    "{1} byte dopo l'ultima riga intera sono tralasciati; il file è troncato.",
  "the rows hold two bytes per value, so they are read as BINARY, not {1}.":
    "le righe contengono due byte per valore, perciò sono lette come BINARY, non {1}.",
  "{1} and 1 other file: {2}": "{1} e 1 altro file: {2}",
  "{1} and {2} other files: {3}": "{1} e altri {2} file: {3}",
  "{1} h:m:s with {2} decimals": "{1} h:m:s con {2} decimali",
  "{1}, of the first sample of each file": "{1}, del primo campione di ogni file",
  "× {1} by the setup": "× {1} secondo la configurazione",
  "{1} in the setup states another ratio": "{1} nella configurazione indica un altro rapporto",
  currents: "correnti",
  voltages: "tensioni",
  "The file does not say whether its {1} are primary or secondary values; they are taken as they stand ({2}).":
    "Il file non dice se le sue {1} siano valori primari o secondari; sono prese così come sono ({2}).",
  "The {1} are secondary values without a usable ratio; they are taken as they stand ({2}).":
    "Le {1} sono valori secondari senza un rapporto utilizzabile; sono prese così come sono ({2}).",
  "secondary value × {1}/{2}": "valore secondario × {1}/{2}",
  "The ratio {1}/{2} of the {3} is unusual; its two sides may have different units ({4}).":
    "Il rapporto {1}/{2} delle {3} è insolito; i suoi due lati possono avere unità diverse ({4}).",
  'its unit "{1}" is not one of current': "la sua unità «{1}» non è un'unità di corrente",
  'its unit "{1}" is not one of voltage': "la sua unità «{1}» non è un'unità di tensione",
  "the setup": "la configurazione",
  "phase by {1}": "fase secondo {1}",
  "no unit stated, taken as {1}": "nessuna unità indicata, presa come {1}",
  'unit "{1}"': "unità «{1}»",
  "written the other way round, so its sign is turned": "scritto al contrario, perciò il segno è invertito",
  "inverted by the setup": "invertito secondo la configurazione",
  'its name speaks of a current, its unit "{1}" of a voltage':
    "il suo nome indica una corrente, la sua unità «{1}» una tensione",
  'its name speaks of a voltage, its unit "{1}" of a current':
    "il suo nome indica una tensione, la sua unità «{1}» una corrente",
  'the phase field "{1}"': "il campo della fase «{1}»",
  'the name "{1}"': "il nome «{1}»",
  "its name speaks of more than one phase": "il suo nome indica più di una fase",
  "neither its name nor its phase field says a phase": "né il suo nome né il suo campo della fase indicano una fase",
  "{1} and {2} contradict each other": "{1} e {2} si contraddicono",
  "{1} samples are promised, the data hold {2}; all that are there are used.":
    "sono annunciati {1} campioni, i dati ne contengono {2}; si usano tutti quelli presenti.",
  "its {1} status channels are not used.": "i suoi canali di stato ({1}) non sono usati.",
  'the channel "{1}" has the factor 0, so all its values are {2}.':
    "il canale «{1}» ha il fattore 0, perciò tutti i suoi valori sono {2}.",
  "the time of the first sample occurs twice in {1} (end of summer time); the first is taken. A fixed offset as zone decides it.":
    "l'orario del primo campione ricorre due volte in {1} (fine dell'ora legale); si assume il primo. Uno scarto fisso come fuso lo decide.",
  "line {1} is cut off or garbled and left out.": "la riga {1} è troncata o illeggibile ed è tralasciata.",
  "{1} lines, the first of them line {2}, are cut off or garbled and left out.":
    "{1} righe, la prima delle quali è la riga {2}, sono troncate o illeggibili e sono tralasciate.",
  "the sample numbers do not count the rows; each row is taken to follow the one before.":
    "i numeri dei campioni non contano le righe; si assume che ogni riga segua la precedente.",
  "{1} samples are missing between the rows, by the sample numbers.":
    "secondo i numeri dei campioni, ne mancano {1} tra le righe.",
  "{1} sampling rates that differ by less than 0.1 % follow each other (a drifting clock); their mean, {2} per second, is used.":
    "si susseguono {1} frequenze di campionamento che differiscono di meno dello 0,1 % (un orologio in deriva); si usa la loro media, {2} al secondo.",
  "no sampling rate is stated; by the time stamps it is {1} per second.":
    "non è indicata alcuna frequenza di campionamento; secondo le marche temporali è {1} al secondo.",
  "the rows have no time stamps; the stated sampling rate is used.":
    "le righe non hanno marche temporali; si usa la frequenza di campionamento indicata.",
  "the time stamps are cut to 16 bits; the stated sampling rate is used.":
    "le marche temporali sono troncate a 16 bit; si usa la frequenza di campionamento indicata.",
  "the time stamps speak of {1} samples per second, the configuration of {2}; the configuration is used.":
    "le marche temporali indicano {1} campioni al secondo, il file di configurazione {2}; si usa il file di configurazione.",
  "no unit is stated": "non è indicata alcuna unità",
  'the unit "{1}" may be milli or mega': "l'unità «{1}» può essere milli o mega",
  "an r.m.s. value is no waveform": "un valore efficace non è una forma d'onda",
  "direct voltage and current are not used": "tensione e corrente continue non sono usate",
  'the unit "{1}" is none of voltage or current': "l'unità «{1}» non è un'unità di tensione né di corrente",
};

/** What reading tables of logged values or of samples says. */
export const TABLES: Readonly<Record<string, string>> = {
  "{1}: its decimal mark was taken from the other files":
    "{1}: il suo separatore decimale è stato preso dagli altri file",
  "{1}: its stamps mark the start of the interval": "{1}: le sue marche temporali indicano l'inizio dell'intervallo",
  "{1}: its stamps mark the end of the interval": "{1}: le sue marche temporali indicano la fine dell'intervallo",
  "by the name of the month": "secondo il nome del mese",
  "year first": "prima l'anno",
  "as given": "come indicato",
  "by the point between the numbers": "secondo il punto tra i numeri",
  "all orders mean the same days here": "qui tutti gli ordini indicano gli stessi giorni",
  "no other order fits all dates": "nessun altro ordine è compatibile con tutte le date",
  "only so do the days follow one another": "solo così i giorni si susseguono",
  "{1}: its column holds no value and was left out": "{1}: la sua colonna non contiene valori ed è stata tralasciata",
  "{1}: logged without its mean, so it was left out":
    "{1}: grandezza registrata senza la sua media, perciò tralasciata",
  "{1}: its newest row stands first; it was read from its end":
    "{1}: la riga più recente è la prima; il file è stato letto dalla fine",
  "seconds since 1970-01-01 UTC": "secondi dal 1970-01-01 UTC",
  "milliseconds since 1970-01-01 UTC": "millisecondi dal 1970-01-01 UTC",
  "days since 1899-12-30, as spreadsheets count them": "giorni dal 1899-12-30, come li contano i fogli di calcolo",
  "day, month, year": "giorno, mese, anno",
  "12-hour clock": "orologio a 12 ore",
  "{1} {2} with offset from UTC": "{1} {2} con scarto da UTC",
  "date and time in two columns": "data e ora in due colonne",
  "in {1} by the header": "in {1} secondo l'intestazione",
  "the time of each row": "l'orario di ogni riga",
  "not used: a time beside the one that is used": "non usata: un orario accanto a quello usato",
  "not recognised": "non riconosciuta",
  "{1}, {2}: the last line is cut off and was left out": "{1}, {2}: l'ultima riga è troncata ed è stata tralasciata",
  "{1}: the header is repeated {2} among the rows": "{1}: l'intestazione è ripetuta {2} tra le righe",
  "{1}: a stamp without a time of day was read as midnight ({2})":
    "{1}: una marca temporale senza ora del giorno è stata letta come mezzanotte ({2})",
  once: "una volta",
  "{1}: the distance of rows is off its interval by up to {2}":
    "{1}: la distanza delle righe si scosta dall'intervallo fino a {2}",
  "{1}: {2} stamps beside their tick were put on it; the farthest was {3} away":
    "{1}: {2} marche temporali accanto al loro istante esatto vi sono state riportate; la più lontana distava {3}",
  "{1} ms": "{1} ms",
  "{1}: 1 sample is missing in 1 gap, by the times of the rows.":
    "{1}: secondo gli orari delle righe manca 1 campione in 1 lacuna.",
  "{1}: {2} samples are missing in 1 gap, by the times of the rows.":
    "{1}: secondo gli orari delle righe mancano {2} campioni in 1 lacuna.",
  "{1}: {2} samples are missing in {3} gaps, by the times of the rows.":
    "{1}: secondo gli orari delle righe mancano {2} campioni in {3} lacune.",
  "{1}: its first time occurs twice (end of summer time); the first is taken. A fixed offset as zone decides it.":
    "{1}: il suo primo orario ricorre due volte (fine dell'ora legale); si assume il primo. Uno scarto fisso come fuso lo decide.",
  "a time beside the one that is used": "un orario accanto a quello usato",
  "{1}: {2} samples per second are too few; waveforms are measured from {3} on.":
    "{1}: {2} campioni al secondo sono troppo pochi; le forme d'onda sono misurate a partire da {3}.",
  "between {1} and {2} per second": "tra {1} e {2} al secondo",
  "{1}: by its times the sampling rate lies {2}; {3} is used (setup: samplesPerSecond states it).":
    "{1}: secondo i suoi orari la frequenza di campionamento è {2}; si usa {3} (configurazione: samplesPerSecond la indica).",
  "{1}: its times are written in steps of {2}, so that a loss of a sample would not show and all times may be off by {3}.":
    "{1}: i suoi orari sono scritti a passi di {2}, così che la perdita di un campione non apparirebbe e tutti gli orari possono essere errati di {3}.",
  "{1}: its times are written in steps of {2}, so that a loss of up to {3} samples would not show and all times may be off by {4}.":
    "{1}: i suoi orari sono scritti a passi di {2}, così che la perdita fino a {3} campioni non apparirebbe e tutti gli orari possono essere errati di {4}.",
  "The log does not say when it was recorded: its first sample is put on {1}, so all times count from there, and ten-minute intervals do not begin on the ten minutes of a clock (setup: start states it).":
    "Il log non dice quando è stato registrato: il suo primo campione è posto al {1}, perciò tutti gli orari contano da lì e gli intervalli di dieci minuti non iniziano sulle decine di minuti di un orologio (configurazione: start lo indica).",
  "The log does not say when it was recorded; the start is that of the setup, {1}.":
    "Il log non dice quando è stato registrato; l'inizio è quello della configurazione, {1}.",
  "no times: the rows follow each other evenly": "nessun orario: le righe si susseguono a distanza uniforme",
  "the numbers of the samples": "i numeri dei campioni",
  seconds: "secondi",
  milliseconds: "millisecondi",
  microseconds: "microsecondi",
  nanoseconds: "nanosecondi",
  "{1} since 1970-01-01 UTC": "{1} dal 1970-01-01 UTC",
  "{1} from the beginning of the recording": "{1} dall'inizio della registrazione",
  "{1} hh:mm:ss in steps of {2} s with offset from UTC, {3}": "{1} hh:mm:ss a passi di {2} s con scarto da UTC, {3}",
  "{1} hh:mm:ss in steps of {2} s, {3}": "{1} hh:mm:ss a passi di {2} s, {3}",
  "{1} and others": "{1} e altri",
  "it is {1} like {2}; say in the setup, under channels:, which of them is to be used":
    "è {1} come {2}; indicare nella configurazione, alla voce channels:, quale di essi va usato",
  "the setup uses {1} as {2}": "la configurazione usa {1} come {2}",
  "The clock does not fit the sampling rate of {1} per second: {2} of {3} joined files begin up to {4} ms beside the sample that they are put on.":
    "L'orologio non concorda con la frequenza di campionamento di {1} al secondo: {2} su {3} file uniti iniziano fino a {4} ms accanto al campione sul quale sono posti.",
  "The sampling rates of joined files differ by less than 0.1 % (a drifting clock); their mean, {1} per second, is used.":
    "Le frequenze di campionamento dei file uniti differiscono di meno dello 0,1 % (un orologio in deriva); si usa la loro media, {1} al secondo.",
  "it is zero throughout": "è sempre zero",
  "it holds the same value throughout": "contiene sempre lo stesso valore",
  "its values never change sign, so they are no waveform (an r.m.s. value, direct voltage or contact)":
    "i suoi valori non cambiano mai segno, perciò non sono una forma d'onda (ma un valore efficace, una tensione continua o un contatto)",
  "it changes sign {1} times a second at most, too slowly for a supply voltage or current":
    "cambia segno al massimo {1} volte al secondo, troppo lentamente per una tensione o corrente di alimentazione",
};
