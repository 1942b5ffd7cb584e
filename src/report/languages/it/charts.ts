/** Titles, labels and notes of the charts. */
export const CHARTS: Readonly<Record<string, string>> = {
  "{1} at {2}": "{1} a {2}",
  "{1}, order {2}": "{1}, ordine {2}",
  "{1} in {2}": "{1} in {2}",
  "time, {1}": "tempo, {1}",
  "{1}: every value of the whole recording lay within the limit ({2}); found {3}":
    "{1}: tutti i valori dell'intera registrazione entro il limite ({2}); valori trovati: {3}",
  "{1}: every value lay within the limit ({2}); found {3}":
    "{1}: tutti i valori entro il limite ({2}); valori trovati: {3}",
  "The {1} was {2} in {3} of {4} intervals of the whole recording":
    "{1}: {2} in {3} su {4} intervalli dell'intera registrazione",
  "The {1} was {2} in {3} of {4} intervals": "{1}: {2} in {3} su {4} intervalli",
  "{1} was {2} in {3} of {4} intervals of the whole recording":
    "{1}: {2} in {3} su {4} intervalli dell'intera registrazione",
  "{1} was {2} in {3} of {4} intervals": "{1}: {2} in {3} su {4} intervalli",
  "{1}, mostly between {2} and {3}": "{1}, per lo più tra {2} e {3}",
  "{1} for {2} ({3})": "{1} ({2}; {3})",
  "{1} for {2} ({3}, unconfirmed)": "{1} ({2}; {3}, non confermato)",
  "No limit judged.": "Nessun limite valutato.",
  "Limits: {1}.": "Limiti: {1}.",
  "{1} for {2} ({3}), set for values of {4}": "{1} ({2}; {3}), fissato per valori di {4}",
  "Dashed, for orientation: {1}. Values of {2} are not judged by it.":
    "Tratteggio, per orientamento: {1}. I valori di {2} non sono valutati in base ad esso.",
  "Values of {1}, number of valid ones: {2}.": "Valori di {1}, numero di quelli validi: {2}.",
  "{1} to {2} ({3}).": "Da {1} a {2} ({3}).",
  "Each point of the line is the mean of {1} intervals, the pale band their extremes.":
    "Ogni punto della linea è la media di {1} intervalli, la banda chiara i loro estremi.",
  "Pale band: lowest and highest value inside each interval.":
    "Banda chiara: valore minimo e massimo all'interno di ogni intervallo.",
  "The band reaches from {1} to {2}; the picture cuts it off.": "La banda va da {1} a {2}; la figura la tronca.",
  "Triangles: intervals outside the limit.": "Triangoli: intervalli fuori limite.",
  "Grey fields: excluded spans; what lies in them is drawn but not counted.":
    "Campi grigi: periodi esclusi; ciò che vi si trova è disegnato ma non contato.",
  "The clock was changed in this time; the axis keeps {1} throughout.":
    "In questo periodo è cambiata l'ora; l'asse mantiene ovunque {1}.",
  "Dotted: complaints (C) and comments (N). {1}.": "Punteggiato: reclami (C) e commenti (N). {1}.",
  "{1} for values of {2}": "{1} per valori di {2}",
  "share of intervals at or below the value, in %": "quota di intervalli non oltre il valore, in %",
  "How often which value occurred": "Quanto spesso si è verificato ogni valore",
  "No interval of the whole recording lay outside the limit ({1})":
    "Nessun intervallo dell'intera registrazione fuori limite ({1})",
  "No interval lay outside the limit ({1})": "Nessun intervallo fuori limite ({1})",
  "On {1}, {2} of the intervals of the whole recording lay {3}":
    "{1}: {2} degli intervalli dell'intera registrazione {3}",
  "On {1}, {2} of the intervals lay {3}": "{1}: {2} degli intervalli {3}",
  "none may": "nessuno ammesso",
  "more than the {1} allowed": "oltre la quota ammessa ({1})",
  "not more than the {1} allowed": "non oltre la quota ammessa ({1})",
  "of a day {1} may": "ammesso in un giorno: {1}",
  "of a week {1} may": "ammesso in una settimana: {1}",
  "of a year {1} may": "ammesso in un anno: {1}",
  "Judged is each day by itself.": "È valutato ogni giorno singolarmente.",
  "Judged is each week by itself.": "È valutata ogni settimana singolarmente.",
  "Judged is each year by itself.": "È valutato ogni anno singolarmente.",
  "The curves must not cross the black bars: too many values would lie beyond the limit. Values too high and too low count together.":
    "Le curve non devono attraversare le barre nere: troppi valori sarebbero oltre il limite. I valori troppo alti e quelli troppo bassi contano insieme.",
  "none outside": "nessuno fuori limite",
  "together at most\n{1} outside": "insieme al massimo\n{1} fuori limite",
  "none\nabove {1}": "nessuno\nsopra {1}",
  "at most {1}\nabove {2}": "al massimo {1}\nsopra {2}",
  "none\nbelow {1}": "nessuno\nsotto {1}",
  "at most {1}\nbelow {2}": "al massimo {1}\nsotto {2}",
};

export const HOURS: Readonly<Record<string, string>> = {
  "hour of the day ({1})": "ora del giorno ({1})",
  "the supply": "alimentazione",
  "spread over the day": "distribuiti sull'intera giornata",
  "mostly between {1} and {2}": "per lo più tra {1} e {2}",
  "Intervals of the whole recording outside the limit on {1}: {2}":
    "Intervalli dell'intera registrazione fuori limite su {1}: {2}",
  "Intervals outside the limit on {1}: {2}": "Intervalli fuori limite su {1}: {2}",
  "each hour": "ogni ora",
  "each {1} hours": "ogni {1} ore",
  "Largest deviation of {1} of the whole recording: none outside the limit":
    "Scostamento massimo per {1} dell'intera registrazione: nessuno fuori limite",
  "Largest deviation of {1}: none outside the limit": "Scostamento massimo per {1}: nessuno fuori limite",
  "Highest value of {1} of the whole recording on {2}: none outside the limit":
    "Valore massimo per {1} dell'intera registrazione su {2}: nessuno fuori limite",
  "Highest value of {1} on {2}: none outside the limit": "Valore massimo per {1} su {2}: nessuno fuori limite",
  "Each cell is {1} on {2} ({3}); the number is {4}.": "Ogni cella: {1}, {2} ({3}); il numero indica {4}.",
  "Empty cells: no valid data, or no such hour (clock change).":
    "Celle vuote: nessun dato valido, oppure ora inesistente (cambio d'ora).",
  "Empty cells: no valid data.": "Celle vuote: nessun dato valido.",
  "one hour of one day of the week": "un'ora di un giorno della settimana",
  "one hour of one day": "un'ora di un giorno",
  "{1} hours of one day of the week": "{1} ore di un giorno della settimana",
  "{1} hours of one day": "{1} ore di un giorno",
  "how many intervals lay outside the limit; darker is more":
    "quanti intervalli erano fuori limite; più scuro significa di più",
  "the largest deviation from the nominal frequency in mHz; darker is more":
    "lo scostamento massimo dalla frequenza nominale in mHz; più scuro significa di più",
  "the highest value; darker is higher": "il valore massimo; più scuro significa più alto",
  "the highest value in {1}; darker is higher": "il valore massimo in {1}; più scuro significa più alto",
  day: "giorno",
  hour: "ora",
  value: "valore",
};

export const SPECTRA: Readonly<Record<string, string>> = {
  "Harmonic voltages by order": "Tensioni armoniche per ordine",
  "harmonic order": "ordine armonico",
  order: "ordine",
  phase: "fase",
  "limit in {1}": "limite in {1}",
  "Harmonic order {1} above the limit on {2}": "Ordine armonico {1} sopra il limite su {2}",
  "Harmonic orders {1} above the limit on {2}": "Ordini armonici {1} sopra il limite su {2}",
  "Order {1} on {2} reached {3} of its limit, but no harmonic order could be judged to fail; the table says why":
    "L'ordine {1} su {2} ha raggiunto {3} del suo limite, ma nessun ordine armonico ha potuto essere giudicato non conforme; la tabella dice perché",
  "No harmonic order was judged above its limit; the nearest, order {1} on {2}, reached {3} of its limit":
    "Nessun ordine armonico è risultato sopra il proprio limite; il più vicino, ordine {1} su {2}, ha raggiunto {3} del suo limite",
  "{1} values per order and phase, {2} each, {3}.": "Valori per ordine e fase: {1}, di {2} ciascuno, {3}.",
  "Shown is the value that {1} do not exceed; the verdict comes from counting. Short bars: the limit of each order ({2}).":
    "È mostrato il valore non superato alla quota richiesta ({1}); l'esito deriva dal conteggio. Barre corte: il limite di ogni ordine ({2}).",
  "Limits unconfirmed for order {1}.": "Limiti non confermati per l'ordine {1}.",
  "Limits unconfirmed for orders {1}.": "Limiti non confermati per gli ordini {1}.",
  "Harmonic voltages by order, as measured": "Tensioni armoniche per ordine, come misurate",
  "Interharmonic voltages by order, as measured": "Tensioni interarmoniche per ordine, come misurate",
  "harmonic order below the interharmonic group": "ordine armonico sotto il gruppo interarmonico",
  "Harmonic currents by order, as measured": "Correnti armoniche per ordine, come misurate",
  "harmonic order (the fundamental is left out)": "ordine armonico (senza la fondamentale)",
  "The mean harmonic voltage nearest to its limit was that of order {1} on {2}: {3}, with a limit of {4}; no verdict on a week is meant":
    "La tensione armonica media più vicina al suo limite era quella di ordine {1} su {2}: {3}, con un limite di {4}; ciò non costituisce un esito su una settimana",
  "The highest mean harmonic voltage was that of order {1} on {2}: {3}":
    "La tensione armonica media più alta era quella di ordine {1} su {2}: {3}",
  "The highest mean harmonic current was that of order {1} on {2}: {3}":
    "La corrente armonica media più alta era quella di ordine {1} su {2}: {3}",
  "The highest mean interharmonic voltage was that below the fundamental on {1}: {2}":
    "La tensione interarmonica media più alta era quella sotto la fondamentale su {1}: {2}",
  "The highest mean interharmonic voltage was that between orders {1} and {2} on {3}: {4}":
    "La tensione interarmonica media più alta era quella tra gli ordini {1} e {2} su {3}: {4}",
  "Values per order and phase: {1}, {2}, from the {3} recorded.":
    "Valori per ordine e fase: {1}, di {2}, da una registrazione di {3}.",
  "Symbol: mean; thin line: up to the highest value, also during events.":
    "Simbolo: media; linea sottile: fino al valore massimo, anche durante gli eventi.",
  "No limit is judged.": "Non è valutato alcun limite.",
  "Short bars: the limits ({1}), which hold for {2} and values of {3}; they are drawn for orientation, and nothing is counted by them here.":
    "Barre corte: i limiti ({1}), che valgono per una quota ({2}) e valori di {3}; sono disegnati per orientamento e qui nulla è contato in base ad essi.",
};

export const DAYS: Readonly<Record<string, string>> = {
  "Day by day": "Giorno per giorno",
  Day: "Giorno",
  "in part": "in parte",
  "{1} of {2} outside": "{1} su {2} fuori limite",
  "on no whole day did a value lie outside {1}": "in nessun giorno intero un valore era fuori limite ({1})",
  "values lay outside {1} on {2} of {3} whole days, from {4} ({5}) to {6} ({7})":
    "valori fuori limite ({1}) in {2} su {3} giorni interi, da {4} ({5}) a {6} ({7})",
  "the value that {1} of a day's values do not exceed ran from {2} ({3}) to {4} ({5})":
    "valore giornaliero non superato (quota {1}): da {2} ({3}) a {4} ({5})",
  "the value that {1} of a day's values do not fall below ran from {2} ({3}) to {4} ({5})":
    "valore giornaliero al di sotto del quale non si scende (quota {1}): da {2} ({3}) a {4} ({5})",
  "Days of the local calendar ({1}); an interval belongs to the day it begins in. Counted against {2}; not judged by the day.":
    "Giorni del calendario locale ({1}); un intervallo appartiene al giorno in cui inizia. Contati rispetto al limite ({2}); la valutazione non è per giorno.",
  "{1} Clock change: {2}.": "{1} Cambio d'ora: {2}.",
};

export const SHIFT: Readonly<Record<string, string>> = {
  "If the voltage were higher or lower": "Se la tensione fosse più alta o più bassa",
  "An estimate, no part of the verdict: every value is moved by the same number of volts. In truth a tap changes the voltage in proportion and all phases about alike, loads and feed-in react to it, a regulator elsewhere may act against it, and which taps there are only the operator of the transformer knows.":
    "Una stima, non parte dell'esito: ogni valore è spostato dello stesso numero di volt. In realtà una presa modifica la tensione in proporzione e tutte le fasi all'incirca allo stesso modo, carichi e immissioni vi reagiscono, un regolatore altrove può agire in senso contrario, e quali prese vi siano lo sa solo il gestore del trasformatore.",
  "The steps are the usual ones of distribution transformers; common practice, no source (setup: voltageSteps names others).":
    "I gradini sono quelli usuali dei trasformatori di distribuzione; prassi comune, nessuna fonte (configurazione: voltageSteps ne indica altri).",
  "all phases": "tutte le fasi",
  any: "qualsiasi",
  "too little is valid": "troppo pochi dati validi",
  "shift in V": "spostamento in V",
  "Shifts that keep every limit of the supply voltage":
    "Spostamenti che rispettano ogni limite della tensione di alimentazione",
  "as recorded": "come registrato",
  "up to {1}": "fino a {1}",
  "from {1} up": "da {1} in su",
  "The recording is shorter than a week: this is a hint, not an answer for a week.":
    "La registrazione è più corta di una settimana: questa è un'indicazione, non una risposta per una settimana.",
  "It holds for each complete week by itself.": "Ciò vale per ogni settimana completa presa singolarmente.",
  "Too little of the voltage from {1} is valid to say which shift would keep its limits.":
    "Periodo {1}: della tensione è valido troppo poco per dire quale spostamento ne rispetterebbe i limiti.",
  "No shift of all phases together would have kept the limits of the supply voltage from {1}.":
    "Periodo {1}: nessuno spostamento di tutte le fasi insieme avrebbe rispettato i limiti della tensione di alimentazione.",
  "From {1} the supply voltage kept its limits as recorded; it would have kept them with all phases shifted by {2}.":
    "Periodo {1}: la tensione di alimentazione, come registrata, ha rispettato i propri limiti; li avrebbe rispettati con il seguente spostamento di tutte le fasi: {2}.",
  "The limits of the supply voltage from {1} would have been kept with all phases shifted by {2}.":
    "Periodo {1}: i limiti della tensione di alimentazione sarebbero stati rispettati con il seguente spostamento di tutte le fasi: {2}.",
  "None of the steps looked at would have done.": "Nessuno dei gradini considerati sarebbe bastato.",
  "Of the steps looked at {1} would have done.": "Dei gradini considerati sarebbe bastato {1}.",
  "Of the steps looked at {1} would each have done.":
    "Dei gradini considerati sarebbero bastati, ciascuno da solo, {1}.",
  "Each phase by itself: {1}.": "Ogni fase singolarmente: {1}.",
  "No shift of all phases together keeps the limits of the supply voltage":
    "Nessuno spostamento di tutte le fasi insieme rispetta i limiti della tensione di alimentazione",
  "All phases keep the limits of the supply voltage when shifted by {1}":
    "Tutte le fasi rispettano i limiti della tensione di alimentazione con questo spostamento: {1}",
  "Bars: shifts with which every limit of the supply voltage would have been kept, cut off at the edges of the picture. Dashed: the voltage as recorded and the steps looked at. An estimate.":
    "Barre: spostamenti con i quali ogni limite della tensione di alimentazione sarebbe stato rispettato, troncate ai bordi della figura. Tratteggio: la tensione come registrata e i gradini considerati. Una stima.",
};
