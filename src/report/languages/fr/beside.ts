export const beside: Readonly<Record<string, string>> = {
  "{1} of {2}": "{1} sur {2}",
  "what a shift would change: {1}": "ce qu'un décalage changerait : {1}",
  "Other limit sets": "Autres jeux de limites",
  "The verdict of this report comes from the first limit set alone. The others judge the same values by their own limits.":
    "Le verdict de ce rapport vient du premier jeu de limites seul. Les autres jugent les mêmes valeurs d'après leurs propres limites.",
  decides: "décide",
  "not judged": "non jugé",
  "Limit set": "Jeu de limites",
  Standard: "Norme",
  "Declared voltage": "Tension déclarée",
  Verdict: "Verdict",
  "Other verdicts": "Verdicts différents",
  Requirement: "Exigence",
  Where: "Où",
  "First set": "Premier jeu",
  "This set": "Ce jeu",
  Why: "Pourquoi",
  "First: outside": "Premier : hors limite",
  "First: verdict": "Premier : verdict",
  "This: outside": "Celui-ci : hors limite",
  "This: verdict": "Celui-ci : verdict",
  "{1} ({2}): {3}, with the same verdict on every requirement.":
    "{1} ({2}) : {3}, avec le même verdict sur chaque exigence.",
  "{1} ({2}): {3}; another verdict than the first set's in one place.":
    "{1} ({2}) : {3} ; verdict différent de celui du premier jeu en un point.",
  "{1} ({2}): {3}; another verdict than the first set's in {4} places.":
    "{1} ({2}) : {3} ; verdict différent de celui du premier jeu en {4} points.",
  "compared: {1}": "comparé : {1}",
  "- {1}, {2}: {3}, by the first set {4}. {5}": "- {1}, {2} : {3}, d'après le premier jeu {4}. {5}",
  "Complaints and what was recorded then": "Réclamations et ce qui a été enregistré alors",
  Comments: "Remarques",
  "Times and words of complaints and comments were stated by whoever set up the recording. “Fixed values” are those of the intervals that it falls into; “around” is from five minutes before to five minutes after, by the shortest intervals at hand.":
    "Les heures et le texte des réclamations et remarques ont été indiqués par la personne qui a préparé l'enregistrement. Les « valeurs fixes » sont celles des intervalles sur lesquels tombe le fait signalé ; « autour » va de cinq minutes avant à cinq minutes après, d'après les intervalles les plus courts disponibles.",
  "Days of one class are Monday to Friday, Saturday, Sunday; public holidays are not known here. That a recording ought to hold such hours is derived from published complaint procedures; common practice, no source.":
    "Les jours d'une même catégorie sont lundi à vendredi, samedi, dimanche ; les jours fériés ne sont pas connus ici. Qu'un enregistrement doive contenir de telles heures se déduit de procédures de réclamation publiées ; usage courant, sans source.",
  Phase: "Phase",
  "Valid data": "Données valides",
  "Fixed values": "Valeurs fixes",
  Limit: "Limite",
  "Lowest around": "La plus basse autour",
  "Mean around": "Moyenne autour",
  "Highest around": "La plus haute autour",
  "Values of": "Valeurs sur",
  "In charts": "Dans les graphiques",
  Time: "Heure",
  Comment: "Remarque",
  "No supply voltage was judged.": "Aucune tension d'alimentation n'a été jugée.",
  "Outside the limit: {1}.": "Hors limite : {1}.",
  "The fixed intervals that cover it lie within the limits.":
    "Les intervalles fixes qui couvrent ce moment se situent dans les limites.",
  "This time lies outside the recording.": "Ce moment se situe hors de l'enregistrement.",
  "This time lies partly outside the recording.": "Ce moment se situe en partie hors de l'enregistrement.",
  "Covered by valid data.": "Couvert par des données valides.",
  "Not covered by valid data.": "Non couvert par des données valides.",
  "Covered by valid data on {1} only.": "Couvert par des données valides sur {1} seulement.",
  "{1} in {2} of {3} intervals ({4})": "{1} dans {2} intervalles sur {3} ({4})",
  yes: "oui",
  no: "non",
  "{1} of {2} intervals": "{1} intervalles sur {2}",
  "within {1}": "dans la plage {1}",
  "outside {1}": "hors de la plage {1}",
  "{1} outside {2}": "{1} hors de la plage {2}",
  "{1} (inside intervals {2})": "{1} (à l'intérieur des intervalles {2})",
  "{1} on {2}, {3}, {4}, {5}": "{1} sur {2}, {3}, {4}, {5}",
  "Events around it: {1}.": "Événements autour de ce moment : {1}.",
  "Mondays to Fridays": "lundis à vendredis",
  Saturdays: "samedis",
  Sundays: "dimanches",
  "Of {1} between {2} and {3} nothing valid was recorded either: the recording cannot speak for such times.":
    "Rien de valide n'a été enregistré non plus les {1} entre {2} et {3} : l'enregistrement ne peut rien dire de tels moments.",
  "Of {1} between {2} and {3} the recording holds {4} valid intervals.":
    "Intervalles valides que l'enregistrement contient pour les {1} entre {2} et {3} : {4}.",
  "complaint, {1}: {2}": "réclamation, {1} : {2}",
  "Day by day": "Jour par jour",
  Day: "Jour",
  "in part": "en partie",
  "{1} of {2} outside": "hors limite : {1} sur {2}",
  "on no whole day did a value lie outside {1}": "aucun jour entier n'a eu de valeur hors de la plage {1}",
  "values lay outside {1} on {2} of {3} whole days, from {4} ({5}) to {6} ({7})":
    "des valeurs se situaient hors de la plage {1} pendant {2} des {3} jours entiers, de {4} ({5}) à {6} ({7})",
  "the value that {1} of a day's values do not exceed ran from {2} ({3}) to {4} ({5})":
    "la valeur que {1} des valeurs d'un jour ne dépassent pas allait de {2} ({3}) à {4} ({5})",
  "the value that {1} of a day's values do not fall below ran from {2} ({3}) to {4} ({5})":
    "la valeur en dessous de laquelle {1} des valeurs d'un jour ne descendent pas allait de {2} ({3}) à {4} ({5})",
  "Days of the local calendar ({1}); an interval belongs to the day it begins in. Counted against {2}; not judged by the day.":
    "Jours du calendrier local ({1}) ; un intervalle appartient au jour où il commence. Comptage par rapport à la limite ({2}) ; pas de jugement au jour.",
  "{1} Clock change: {2}.": "{1} Changement d'heure : {2}.",
  Exclusions: "Exclusions",
  From: "De",
  To: "À",
  Reason: "Motif",
  "Asserted by": "Affirmé par",
  Evidence: "Justificatif",
  "Intervals left out": "Intervalles écartés",
  "Turns the verdict": "Change le verdict",
  "Left out": "Écartés",
  "Outside, with": "Hors limite, avec",
  "Outside, without": "Hors limite, sans",
  "Verdict with": "Verdict avec",
  "Verdict without": "Verdict sans",
  "temporary supply during faults, maintenance or construction":
    "alimentation provisoire pendant des défauts, des travaux d'entretien ou de construction",
  "a user's installation or equipment that breaks its standards or connection rules":
    "installation ou équipement d'un utilisateur qui enfreint ses normes ou ses règles de raccordement",
  "exceptional weather or another natural disaster":
    "conditions climatiques exceptionnelles ou autre catastrophe naturelle",
  "interference by third parties": "fait de tiers",
  "acts of public authorities": "décisions des autorités publiques",
  "industrial action": "actions syndicales",
  "force majeure": "force majeure",
  "power shortage from external events": "pénurie d'énergie résultant d'événements extérieurs",
  "That a reason applied is asserted by the party named; it was not measured. An interval that overlaps an excluded span counts neither as present nor as missing. The reasons are the list in the scope of EN 50160, read in a public catalogue entry of the 2022 edition; that it is clause 1.1, and that older editions list the same, is from memory.":
    "Qu'un motif s'appliquait est affirmé par la partie nommée ; cela n'a pas été mesuré. Un intervalle qui chevauche une plage exclue ne compte ni comme présent ni comme manquant. Les motifs sont la liste du domaine d'application de l'EN 50160, lue dans une notice publique de catalogue de l'édition 2022 ; que ce soit l'article 1.1, et que les éditions plus anciennes contiennent la même liste, est donné de mémoire.",
  "Counts with and without the exclusions": "Comptes avec et sans les exclusions",
  "in an excluded span": "dans une plage exclue",
  "Without exclusions the verdict would be “{1}”.": "Sans les exclusions, le verdict serait « {1} ».",
  "One span was excluded; the verdict is the same without it.":
    "Une plage a été exclue ; le verdict est le même sans cette exclusion.",
  "{1} spans were excluded; the verdict is the same without them.":
    "{1} plages ont été exclues ; le verdict est le même sans ces exclusions.",
  "The verdict hangs on the exclusion from {1} to {2} ({3}; asserted by {4}).":
    "Le verdict dépend de l'exclusion du {1} au {2} ({3} ; affirmé par {4}).",
  "excluded: from {1} to {2}, {3}, asserted by {4}; intervals left out: {5}":
    "exclu : du {1} au {2}, {3}, affirmé par {4} ; intervalles écartés : {5}",
  "Verdict with the exclusions: {1}; without them: {2}.": "Verdict avec les exclusions : {1} ; sans elles : {2}.",
  "without exclusions: {1}": "sans exclusions : {1}",
  "If the voltage were higher or lower": "Si la tension était plus haute ou plus basse",
  "An estimate, no part of the verdict: every value is moved by the same number of volts. In truth a tap changes the voltage in proportion and all phases about alike, loads and feed-in react to it, a regulator elsewhere may act against it, and which taps there are only the operator of the transformer knows.":
    "Une estimation, qui ne fait pas partie du verdict : chaque valeur est déplacée du même nombre de volts. En réalité, une prise de transformateur modifie la tension en proportion et toutes les phases à peu près pareillement, les charges et l'injection y réagissent, un régulateur situé ailleurs peut agir en sens contraire, et seul l'exploitant du transformateur connaît les prises existantes.",
  "The steps are the usual ones of distribution transformers; common practice, no source (setup: voltageSteps names others).":
    "Les pas sont ceux, usuels, des transformateurs de distribution ; usage courant, sans source (paramétrage : voltageSteps en nomme d'autres).",
  "all phases": "toutes les phases",
  any: "quelconque",
  "too little is valid": "trop peu de données valides",
  "shift in V": "décalage en V",
  "Shifts that keep every limit of the supply voltage":
    "Décalages qui respectent toutes les limites de la tension d'alimentation",
  "as recorded": "tel qu'enregistré",
  "up to {1}": "jusqu'à {1}",
  "from {1} up": "à partir de {1}",
  "The recording is shorter than a week: this is a hint, not an answer for a week.":
    "L'enregistrement dure moins d'une semaine : ceci est un indice, non une réponse pour une semaine.",
  "It holds for each complete week by itself.": "Cela vaut pour chaque semaine complète prise séparément.",
  "Too little of the voltage from {1} is valid to say which shift would keep its limits.":
    "Période {1} : trop peu de la tension est valide pour dire quel décalage respecterait ses limites.",
  "No shift of all phases together would have kept the limits of the supply voltage from {1}.":
    "Période {1} : aucun décalage commun à toutes les phases n'aurait respecté les limites de la tension d'alimentation.",
  "From {1} the supply voltage kept its limits as recorded; it would have kept them with all phases shifted by {2}.":
    "Période {1} : la tension d'alimentation a respecté ses limites telle qu'enregistrée ; elle les aurait respectées avec toutes les phases décalées de : {2}.",
  "The limits of the supply voltage from {1} would have been kept with all phases shifted by {2}.":
    "Période {1} : les limites de la tension d'alimentation auraient été respectées avec toutes les phases décalées de : {2}.",
  "None of the steps looked at would have done.": "Aucun des pas examinés n'aurait suffi.",
  "Of the steps looked at {1} would have done.": "Des pas examinés, celui qui aurait suffi : {1}.",
  "Of the steps looked at {1} would each have done.": "Des pas examinés, ceux dont chacun aurait suffi : {1}.",
  "Each phase by itself: {1}.": "Chaque phase séparément : {1}.",
  "No shift of all phases together keeps the limits of the supply voltage":
    "Aucun décalage commun à toutes les phases ne respecte les limites de la tension d'alimentation",
  "All phases keep the limits of the supply voltage when shifted by {1}":
    "Toutes les phases respectent les limites de la tension d'alimentation avec un décalage de {1}",
  "Bars: shifts with which every limit of the supply voltage would have been kept, cut off at the edges of the picture. Dashed: the voltage as recorded and the steps looked at. An estimate.":
    "Barres : décalages avec lesquels toutes les limites de la tension d'alimentation auraient été respectées, coupées aux bords de la figure. En tirets : la tension telle qu'enregistrée et les pas examinés. Une estimation.",
  "Any ten minutes beside the fixed ones": "Dix minutes quelconques à côté des intervalles fixes",
  "Generators in low-voltage networks switch off when the mean over the last ten minutes, taken anew every few seconds, passes 110 % of the declared voltage (EN 50549-1, from memory). EN 50160 counts fixed intervals of the clock. So a plant can switch off at a voltage that no fixed value shows; no part of the verdict.":
    "Dans les réseaux à basse tension, les installations de production se déconnectent lorsque la moyenne des dix dernières minutes, recalculée toutes les quelques secondes, dépasse 110 % de la tension déclarée (EN 50549-1, de mémoire). L'EN 50160 compte des intervalles fixes de l'horloge. Une installation peut donc se déconnecter à une tension qu'aucune valeur fixe ne montre ; cela ne fait pas partie du verdict.",
  "Each time above the limit": "Chaque passage au-dessus de la limite",
  "Moves on by": "Avance de",
  "Ten minutes to": "Dix minutes jusqu'à",
  "Times above": "Passages au-dessus",
  Longest: "Le plus long",
  "Not in fixed": "Absents des fixes",
  Begins: "Début",
  Lasts: "Durée",
  "A fixed value above": "Une valeur fixe au-dessus",
  "{1}: the log holds neither shorter intervals than ten minutes nor extremes inside them, so it cannot be told how high the mean over any other ten minutes was.":
    "{1} : le journal ne contient ni intervalles plus courts que dix minutes ni extrêmes à l'intérieur de ceux-ci ; on ne peut donc dire à quel niveau était la moyenne sur dix autres minutes quelconques.",
  "{1}: the mean over any ten minutes never passed {2}; it reached {3}.":
    "{1} : la moyenne sur dix minutes quelconques n'a jamais dépassé {2} ; elle a atteint {3}.",
  "{1}: the mean over any ten minutes passed {2} once and reached {3}":
    "{1} : la moyenne sur dix minutes quelconques a dépassé {2} une fois et a atteint {3}",
  "{1}: the mean over any ten minutes passed {2} {3} times and reached {4}":
    "{1} : la moyenne sur dix minutes quelconques a dépassé {2} {3} fois et a atteint {4}",
  "{1}; a fixed value shows it each time.": "{1} ; une valeur fixe le montre chaque fois.",
  "{1}; one of these times no fixed value shows.": "{1} ; l'un de ces passages n'est montré par aucune valeur fixe.",
  "{1}; {2} of these times no fixed value shows.": "{1} ; {2} de ces passages ne sont montrés par aucune valeur fixe.",
  "{1}: by the extremes inside the fixed intervals the mean over any ten minutes was at most {2}, so it cannot have passed {3}.":
    "{1} : d'après les extrêmes à l'intérieur des intervalles fixes, la moyenne sur dix minutes quelconques était au plus de {2} et ne peut donc avoir dépassé {3}.",
  "{1}: by the extremes inside the fixed intervals the mean over any ten minutes was at most {2} (around {3})":
    "{1} : d'après les extrêmes à l'intérieur des intervalles fixes, la moyenne sur dix minutes quelconques était au plus de {2} (autour du {3})",
  "{1}; beyond what the fixed values show it cannot have passed {2}.":
    "{1} ; au-delà de ce que montrent les valeurs fixes, elle ne peut avoir dépassé {2}.",
  "{1}; once it can have passed {2} between two fixed values that did not.":
    "{1} ; une fois, elle a pu dépasser {2} entre deux valeurs fixes qui ne l'ont pas dépassé.",
  "{1}; {2} times it can have passed {3} between two fixed values that did not.":
    "{1} ; {2} fois, elle a pu dépasser {3} entre deux valeurs fixes qui ne l'ont pas dépassé.",
  "any ten minutes: {1}": "dix minutes quelconques : {1}",
};
