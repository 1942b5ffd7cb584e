/** What no verdict rests on: complaints, other limit sets, sliding means, longer times. */
export const COMPLAINTS: Readonly<Record<string, string>> = {
  "Complaints and what was recorded then": "Reclami e dati registrati in quei momenti",
  Comments: "Commenti",
  "Times and words of complaints and comments were stated by whoever set up the recording. “Fixed values” are those of the intervals that it falls into; “around” is from five minutes before to five minutes after, by the shortest intervals at hand.":
    "Orari e parole di reclami e commenti sono stati forniti da chi ha predisposto la registrazione. I «valori fissi» sono quelli degli intervalli in cui il reclamo cade; «attorno» va da cinque minuti prima a cinque minuti dopo, con gli intervalli più brevi disponibili.",
  "Days of one class are Monday to Friday, Saturday, Sunday; public holidays are not known here. That a recording ought to hold such hours is derived from published complaint procedures; common practice, no source.":
    "I giorni di una stessa classe sono: da lunedì a venerdì, sabato, domenica; i giorni festivi qui non sono noti. Che una registrazione debba contenere tali ore è derivato da procedure di reclamo pubblicate; prassi comune, nessuna fonte.",
  Phase: "Fase",
  "Valid data": "Dati validi",
  "Fixed values": "Valori fissi",
  Limit: "Limite",
  "Lowest around": "Minimo attorno",
  "Mean around": "Media attorno",
  "Highest around": "Massimo attorno",
  "Values of": "Valori di",
  "In charts": "Nei grafici",
  Time: "Ora",
  Comment: "Commento",
  "No supply voltage was judged.": "Non è stata valutata alcuna tensione di alimentazione.",
  "Outside the limit: {1}.": "Fuori limite: {1}.",
  "The fixed intervals that cover it lie within the limits.":
    "Gli intervalli fissi che lo coprono sono entro i limiti.",
  "This time lies outside the recording.": "Questo momento è al di fuori della registrazione.",
  "This time lies partly outside the recording.": "Questo momento è in parte al di fuori della registrazione.",
  "Covered by valid data.": "Coperto da dati validi.",
  "Not covered by valid data.": "Non coperto da dati validi.",
  "Covered by valid data on {1} only.": "Coperto da dati validi solo su {1}.",
  "{1} in {2} of {3} intervals ({4})": "{1} in {2} su {3} intervalli ({4})",
  "{1} of {2} intervals": "{1} su {2} intervalli",
  "within {1}": "entro il limite ({1})",
  "{1} outside {2}": "{1} fuori limite ({2})",
  "{1} (inside intervals {2})": "{1} (dentro gli intervalli {2})",
  "{1} on {2}, {3}, {4}, {5}": "{1} su {2}, {3}, {4}, {5}",
  "Events around it: {1}.": "Eventi nei dintorni: {1}.",
  "Mondays to Fridays": "da lunedì a venerdì",
  Saturdays: "sabato",
  Sundays: "domenica",
  "Of {1} between {2} and {3} nothing valid was recorded either: the recording cannot speak for such times.":
    "Neppure nei giorni della stessa classe ({1}), tra le {2} e le {3}, è stato registrato qualcosa di valido: la registrazione non può pronunciarsi su tali ore.",
  "Of {1} between {2} and {3} the recording holds {4} valid intervals.":
    "Intervalli validi registrati nei giorni della stessa classe ({1}), tra le {2} e le {3}: {4}.",
  "complaint, {1}: {2}": "reclamo, {1}: {2}",
};

export const COMPARISON: Readonly<Record<string, string>> = {
  "Other limit sets": "Altri insiemi di limiti",
  "The verdict of this report comes from the first limit set alone. The others judge the same values by their own limits.":
    "L'esito di questo rapporto deriva solo dal primo insieme di limiti. Gli altri valutano gli stessi valori secondo i propri limiti.",
  decides: "decide",
  "not judged": "non valutato",
  "Limit set": "Insieme di limiti",
  Standard: "Norma",
  "Declared voltage": "Tensione dichiarata",
  Verdict: "Esito",
  "Other verdicts": "Altri esiti",
  Requirement: "Requisito",
  Where: "Dove",
  "First set": "Primo insieme",
  "This set": "Questo insieme",
  Why: "Perché",
  "First: outside": "Primo: fuori limite",
  "First: verdict": "Primo: esito",
  "This: outside": "Questo: fuori limite",
  "This: verdict": "Questo: esito",
  "{1} ({2}): {3}, with the same verdict on every requirement.":
    "{1} ({2}): {3}, con lo stesso esito per ogni requisito.",
  "{1} ({2}): {3}; another verdict than the first set's in one place.":
    "{1} ({2}): {3}; in un punto un esito diverso da quello del primo insieme.",
  "{1} ({2}): {3}; another verdict than the first set's in {4} places.":
    "{1} ({2}): {3}; in {4} punti un esito diverso da quello del primo insieme.",
  "compared: {1}": "confronto: {1}",
  "- {1}, {2}: {3}, by the first set {4}. {5}": "- {1}, {2}: {3}; secondo il primo insieme: {4}. {5}",
};

export const SLIDING: Readonly<Record<string, string>> = {
  "Any ten minutes beside the fixed ones": "Dieci minuti qualsiasi accanto a quelli fissi",
  "Generators in low-voltage networks switch off when the mean over the last ten minutes, taken anew every few seconds, passes 110 % of the declared voltage (EN 50549-1, from memory). EN 50160 counts fixed intervals of the clock. So a plant can switch off at a voltage that no fixed value shows; no part of the verdict.":
    "I generatori nelle reti in bassa tensione si disconnettono quando la media degli ultimi dieci minuti, ricalcolata ogni pochi secondi, supera il 110 % della tensione dichiarata (EN 50549-1, a memoria). EN 50160 conta intervalli fissi dell'orologio. Un impianto può quindi disconnettersi a una tensione che nessun valore fisso mostra; non è parte dell'esito.",
  "Each time above the limit": "Ogni volta sopra il limite",
  "Moves on by": "Avanza di",
  "Ten minutes to": "Dieci minuti fino a",
  "Times above": "Volte sopra",
  Longest: "Più lunga",
  "Not in fixed": "Non nei fissi",
  Begins: "Inizia",
  Lasts: "Dura",
  "A fixed value above": "Un valore fisso sopra",
  "{1}: the log holds neither shorter intervals than ten minutes nor extremes inside them, so it cannot be told how high the mean over any other ten minutes was.":
    "{1}: il log non contiene né intervalli più brevi di dieci minuti né estremi al loro interno, perciò non si può dire quanto fosse alta la media su altri dieci minuti qualsiasi.",
  "{1}: the mean over any ten minutes never passed {2}; it reached {3}.":
    "{1}: la media su dieci minuti qualsiasi non ha mai superato {2}; ha raggiunto {3}.",
  "{1}: the mean over any ten minutes passed {2} once and reached {3}":
    "{1}: la media su dieci minuti qualsiasi ha superato {2} una volta e ha raggiunto {3}",
  "{1}: the mean over any ten minutes passed {2} {3} times and reached {4}":
    "{1}: la media su dieci minuti qualsiasi ha superato {2} {3} volte e ha raggiunto {4}",
  "{1}; a fixed value shows it each time.": "{1}; ogni volta un valore fisso lo mostra.",
  "{1}; one of these times no fixed value shows.": "{1}; una di queste volte non è mostrata da alcun valore fisso.",
  "{1}; {2} of these times no fixed value shows.": "{1}; {2} di queste volte non sono mostrate da alcun valore fisso.",
  "{1}: by the extremes inside the fixed intervals the mean over any ten minutes was at most {2}, so it cannot have passed {3}.":
    "{1}: in base agli estremi all'interno degli intervalli fissi, la media su dieci minuti qualsiasi era al massimo {2}, perciò non può avere superato {3}.",
  "{1}: by the extremes inside the fixed intervals the mean over any ten minutes was at most {2} (around {3})":
    "{1}: in base agli estremi all'interno degli intervalli fissi, la media su dieci minuti qualsiasi era al massimo {2} (attorno a {3})",
  "{1}; beyond what the fixed values show it cannot have passed {2}.":
    "{1}; oltre a quanto mostrano i valori fissi, non può avere superato {2}.",
  "{1}; once it can have passed {2} between two fixed values that did not.":
    "{1}; una volta può avere superato {2} tra due valori fissi che non lo hanno superato.",
  "{1}; {2} times it can have passed {3} between two fixed values that did not.":
    "{1}; {2} volte può avere superato {3} tra due valori fissi che non lo hanno superato.",
  "any ten minutes: {1}": "dieci minuti qualsiasi: {1}",
};

export const SAMPLING: Readonly<Record<string, string>> = {
  "What the week says about a longer time": "Che cosa dice la settimana su un tempo più lungo",
  "Intervals of 95 % confidence, for information": "Intervalli di confidenza al 95 %, a titolo informativo",
  "Of the values at the required share and of the share outside, as if the values were independent of one another. Successive intervals are not, so the truth spreads wider. The standard's verdict is about the measured week itself and rests on none of this; whether missing intervals could turn that verdict is said by “robust”. The worst phase of each requirement; results.json holds all.":
    "Dei valori alla quota richiesta e della quota fuori limite, come se i valori fossero indipendenti l'uno dall'altro. Intervalli successivi non lo sono, perciò la realtà è più dispersa. L'esito secondo la norma riguarda la settimana misurata e non si basa su nulla di ciò; se intervalli mancanti potrebbero cambiarlo lo dice «robusto». La fase peggiore di ogni requisito; results.json contiene tutto.",
  "Low value": "Valore basso",
  "High value": "Valore alto",
  "Share outside": "Quota fuori limite",
  "from {1}, open above": "da {1}, aperto in alto",
  open: "aperto",
  "up to {1}, open below": "fino a {1}, aperto in basso",
  "{1} to {2} %": "da {1} a {2} %",
};
