/** Why a column of a table was taken for what it was, or left out. */
export const COLUMNS: Readonly<Record<string, string>> = {
  min: "min",
  max: "max",
  minimum: "minimo",
  maximum: "massimo",
  "given in the setup": "indicato nella configurazione",
  "left out by the setup": "escluso dalla configurazione",
  '"{1}" in the setup': '"{1}" nella configurazione',
  'the word "{1}" is not known, so it is not certain what the column holds':
    'la parola "{1}" non è nota, perciò non è certo che cosa contenga la colonna',
  '"{1}" is taken for a mere name': '"{1}" è considerato un semplice nome',
  "{1}: a nominal or declared value is not a measured one":
    "{1}: un valore nominale o dichiarato non è un valore misurato",
  "order {1}: {2}": "ordine {1}: {2}",
  "marks flagged intervals: {1}": "segna gli intervalli contrassegnati: {1}",
  'it is named a flag, but "{1}" says neither yes nor no (1 or 0)':
    'il nome indica un contrassegno, ma "{1}" non dice né sì né no (1 o 0)',
  "it names two units, {1} and {2}": "indica due unità, {1} e {2}",
  '"{1}" in the header': '"{1}" nell\'intestazione',
  "a header of more than {1} characters is not read": "un'intestazione di più di {1} caratteri non è letta",
  'the unit "{1}" in the units row is not known here': 'l\'unità "{1}" nella riga delle unità qui non è nota',
  "the header says {1}, but the units row {2}": "l'intestazione indica {1}, ma la riga delle unità {2}",
  '"{1}" in the units row': '"{1}" nella riga delle unità',
  "the setup says single-phase": "la configurazione indica monofase",
  "it does not say which phase": "non indica quale fase",
  "it does not say which phase, nor does column {1}, which says the same":
    "non indica quale fase, e neppure la colonna {1}, che indica lo stesso",
  "it does not say which phase and may be a mean over the phases; say so in the setup (connection: single)":
    "non indica quale fase e può essere una media sulle fasi; dichiararlo nella configurazione (connection: single)",
  "no column of the log names a phase, and no other column holds the same":
    "nessuna colonna del log indica una fase, e nessun'altra colonna contiene lo stesso",
  "frequency is one for all phases; that of {1} in column {2} is used":
    "la frequenza è unica per tutte le fasi; si usa quella di {1} nella colonna {2}",
  "orders {1} to 50 are used, not {2}": "si usano gli ordini da {1} a 50, non {2}",
  "{1} names an order, but neither a harmonic nor % is named with it":
    "{1} indica un ordine, ma con esso non è indicata né un'armonica né %",
  "{1} names an order, which this quantity has not": "{1} indica un ordine, che questa grandezza non ha",
  "it names more than one order: {1}": "indica più di un ordine: {1}",
  "it does not say which order": "non indica quale ordine",
  "it does not say which number is the order": "non indica quale numero sia l'ordine",
  'the columns count up at "{1}"': 'le colonne sono numerate progressivamente in "{1}"',
  'the number in "{1}" is not explained': 'il numero in "{1}" non è spiegato',
  "it names more than one phase: {1}": "indica più di una fase: {1}",
  "one value for all phases, named at {1}": "un solo valore per tutte le fasi, indicato con {1}",
  "{1} is a voltage to earth, not to neutral": "{1} è una tensione verso terra, non verso neutro",
  "neutral to earth: {1}": "neutro verso terra: {1}",
  "this quantity is not used on {1} ({2})": "questa grandezza non è usata su {1} ({2})",
  "{1} asks for a pair of phases, but {2} names one": "{1} richiede una coppia di fasi, ma {2} ne indica una",
  "{1} and the pair {2} contradict each other": "{1} e la coppia {2} si contraddicono",
  "{1} and the phase {2} contradict each other": "{1} e la fase {2} si contraddicono",
  "all phases together, since none is named": "tutte le fasi insieme, poiché non ne è indicata alcuna",
  "all phases together: {1}": "tutte le fasi insieme: {1}",
  "neutral: {1}": "neutro: {1}",
  "{1}: it does not say between which conductors": "{1}: non indica tra quali conduttori",
  "{1}: it does not say between which two phases": "{1}: non indica tra quali due fasi",
  "{1}: a value over all phases is not that of one phase": "{1}: un valore su tutte le fasi non è quello di una fase",
  "no minimum or maximum is named": "non è indicato né un minimo né un massimo",
  "{1} contradict each other": "{1} si contraddicono",
  "positive-sequence values are not used": "i valori di sequenza diretta non sono usati",
  "powers of single harmonics are not used": "le potenze di singole armoniche non sono usate",
  "interharmonic currents are not used": "le correnti interarmoniche non sono usate",
  "unbalance of the currents is not used": "la dissimmetria delle correnti non è usata",
  "it does not say whether short-term (Pst) or long-term (Plt)":
    "non indica se a breve termine (Pst) o a lungo termine (Plt)",
  "by its unit {1}": "secondo la sua unità {1}",
  "its unit {1}": "la sua unità {1}",
  "it does not say whether of the voltage or of the current": "non indica se della tensione o della corrente",
  "a log in which no column speaks of a current": "un log nel quale nessuna colonna indica una corrente",
  "a sequence component is used only as unbalance in %":
    "una componente di sequenza è usata solo come dissimmetria in %",
  "the unit %": "l'unità %",
  "it does not say whether active, reactive or apparent power": "non indica se potenza attiva, reattiva o apparente",
  "it does not say which quantity it holds": "non indica quale grandezza contenga",
  "the voltage unbalance of the standards is that of the negative sequence":
    "la dissimmetria della tensione delle norme è quella della sequenza inversa",
  "the symbol {1}": "il simbolo {1}",
  "{1} beside the unit %": "{1} accanto all'unità %",
  "the columns {1} … count up like harmonic orders": "le colonne {1} … sono numerate come gli ordini armonici",
  "the number {1} beside the phase and the unit %": "il numero {1} accanto alla fase e all'unità %",
  "{1} is used only as zero-sequence unbalance in %": "{1} è usato solo come dissimmetria di sequenza omopolare in %",
  "the symbol {1} with the unit %": "il simbolo {1} con l'unità %",
  "the symbol {1} in %, and no {2} or {3} in % beside it": "il simbolo {1} in %, senza {2} o {3} in % accanto",
  "the symbol {1}, and no {2} or {3} beside it": "il simbolo {1}, senza {2} o {3} accanto",
  'what the sign "{1}" means here is not known': 'non è noto che cosa significhi qui il segno "{1}"',
  "the ordinal {1}": "l'ordinale {1}",
  "the unit {1} ({2}) does not fit the quantity": "l'unità {1} ({2}) non è adatta alla grandezza",
  "the unit {1} does not fit the quantity": "l'unità {1} non è adatta alla grandezza",
  "p.u. does not say whether of the fundamental or of the declared voltage":
    "p.u. non indica se della fondamentale o della tensione dichiarata",
  "p.u. does not say of what; only voltages in p.u. are used":
    "p.u. non indica di che cosa; in p.u. si usano solo tensioni",
  "it is in {1}, but the declared voltage is given phase to neutral":
    "è in {1}, ma la tensione dichiarata è indicata verso neutro",
  "it is in {1}, but the declared voltage is given phase to phase":
    "è in {1}, ma la tensione dichiarata è indicata tra le fasi",
  "of the declared voltage {1} V": "della tensione dichiarata {1} V",
  "times the voltage ratio {1}": "per il rapporto di tensione {1}",
  "times the current ratio {1}": "per il rapporto di corrente {1}",
  "it has neither a unit nor values": "non ha né unità né valori",
  "no unit is written, and its values (median {1}) may be % or a fraction of 1":
    "non è scritta alcuna unità e i suoi valori (mediana {1}) possono essere % o una frazione di 1",
  "no unit is written; the median {1} is one in %": "non è scritta alcuna unità; la mediana {1} è un valore in %",
  "no unit is written, and the median {1} is no power frequency in Hz":
    "non è scritta alcuna unità e la mediana {1} non è una frequenza di rete in Hz",
  "no unit is written; the median {1} is a power frequency in Hz":
    "non è scritta alcuna unità; la mediana {1} è una frequenza di rete in Hz",
  "no unit is written; the median {1} lies between 80 and 1000":
    "non è scritta alcuna unità; la mediana {1} è tra 80 e 1000",
  "no unit is written; its median is 0, that of all voltages without unit {1}":
    "non è scritta alcuna unità; la sua mediana è 0, quella di tutte le tensioni senza unità {1}",
  "no unit is written, and nothing tells % from {1}": "non è scritta alcuna unità e nulla distingue % da {1}",
  "no unit is written; say it in the setup under columns:":
    "non è scritta alcuna unità; indicarla nella configurazione alla voce columns:",
  "as column {1}, which holds the same quantity, says": "come indica la colonna {1}, che contiene la stessa grandezza",
  "no unit is written; the fundamental in column {1} has the median {2}":
    "non è scritta alcuna unità; la fondamentale nella colonna {1} ha la mediana {2}",
  "no unit is written; the fundamental in column {1} has the median {2}, like the voltage itself":
    "non è scritta alcuna unità; la fondamentale nella colonna {1} ha la mediana {2}, come la tensione stessa",
  "no unit is written; the fundamental in column {1} has the median {2}, like the current itself":
    "non è scritta alcuna unità; la fondamentale nella colonna {1} ha la mediana {2}, come la corrente stessa",
  'the unit "{1}" does not tell milli from mega (the case of the prefix decides)':
    'l\'unità "{1}" non distingue milli da mega (decide la maiuscola o minuscola del prefisso)',
  'no quantity used here has the unit "{1}"': 'nessuna grandezza usata qui ha l\'unità "{1}"',
  "a share of the whole r.m.s. value is not a share of the fundamental":
    "una quota dell'intero valore efficace non è una quota della fondamentale",
  "column {1} holds the same in {2}, which is used": "la colonna {1} contiene lo stesso in {2}, e si usa quella",
  "a peak value is not an r.m.s. value": "un valore di picco non è un valore efficace",
  "an angle is not used": "un angolo non è usato",
  "energy is not power": "l'energia non è potenza",
  "temperature is not used": "la temperatura non è usata",
  "humidity is not used": "l'umidità non è usata",
  "it speaks of the instrument, not of the supply": "riguarda lo strumento, non l'alimentazione",
  "a deviation or difference is not the value itself": "uno scostamento o una differenza non è il valore stesso",
  "a limit or setting is not a measured value": "un limite o un'impostazione non è un valore misurato",
  "a statistic other than mean, minimum or maximum is not used":
    "una statistica diversa da media, minimo o massimo non è usata",
  "counts and events are read from event logs, not from series":
    "conteggi ed eventi sono letti dagli elenchi di eventi, non dalle serie",
  "the displacement factor (cos phi) is not the power factor":
    "il fattore di sfasamento (cos phi) non è il fattore di potenza",
  "tan phi is not used": "tan phi non è usata",
  "a momentary value does not stand for the interval": "un valore istantaneo non rappresenta l'intervallo",
  "a distortion relative to the whole r.m.s. value or to the demand is not the total harmonic distortion of EN 50160":
    "una distorsione riferita all'intero valore efficace o alla potenza richiesta non è la distorsione armonica totale di EN 50160",
  "it is not used here": "qui non è usato",
  "flags are not used with samples": "i contrassegni non sono usati con i campioni",
  "{1}: no sampled voltage or current": "{1}: non è una tensione o corrente campionata",
  "{1}: a mean, minimum or maximum is no waveform": "{1}: una media, un minimo o un massimo non è una forma d'onda",
  "the unit {1} ({2}) is none of a sampled voltage": "l'unità {1} ({2}) non è quella di una tensione campionata",
  "the unit {1} ({2}) is none of a sampled current": "l'unità {1} ({2}) non è quella di una corrente campionata",
  "no unit is stated, taken as {1}": "nessuna unità indicata, presa come {1}",
  "V: no unit is written; the r.m.s. value {1} of the first samples lies between 80 and 1000":
    "V: non è scritta alcuna unità; il valore efficace {1} dei primi campioni è tra 80 e 1000",
  "no unit is stated for {1}; where it is {2}, say quantity: {3} in the setup under channels:":
    "non è indicata alcuna unità per {1}; se è {2}, indicare quantity: {3} nella configurazione alla voce channels:",
  'channel {1} ("{2}")': 'canale {1} ("{2}")',
  "voltage {1}": "tensione {1}",
  "current {1}": "corrente {1}",
};
