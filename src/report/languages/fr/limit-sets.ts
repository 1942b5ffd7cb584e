export const limitSets: Readonly<Record<string, string>> = {
  "EN 50160:2010, high voltage, network not interconnected": "EN 50160:2010, haute tension, réseau non interconnecté",
  "EN 50160:2010, high voltage": "EN 50160:2010, haute tension",
  "For high voltage the standard gives no limits for the supply voltage; those for total harmonic distortion are under consideration (both from memory). Rapid voltage changes and mains signalling are left out because no values are known here.":
    "Pour la haute tension, la norme ne donne pas de limites pour la tension d'alimentation ; celles du taux de distorsion harmonique total sont à l'étude (les deux de mémoire). Les variations rapides de tension et la transmission de signaux sur le réseau sont omises, car aucune valeur n'est connue ici.",
  "All limits for high voltage are from memory.": "Toutes les limites pour la haute tension sont données de mémoire.",
  "The value for high voltage is from memory.": "La valeur pour la haute tension est donnée de mémoire.",
  "The standard gives no value for the orders 17, 19, 23 and 25.":
    "La norme ne donne pas de valeur pour les rangs 17, 19, 23 et 25.",
  "EN 50160:2010, low voltage, network not interconnected": "EN 50160:2010, basse tension, réseau non interconnecté",
  "The same range holds for special remote users (from memory).":
    "La même plage vaut pour des utilisateurs éloignés particuliers (de mémoire).",
  "EN 50160:2010, low voltage": "EN 50160:2010, basse tension",
  "The numbers were read in public documents that quote the standard (named at each requirement as quoted second-hand); the paid text of the standard was not read. What no such document shows is marked as not confirmed.":
    "Les nombres ont été lus dans des documents publics qui citent la norme (nommés à chaque exigence comme cités de seconde main) ; le texte payant de la norme n'a pas été lu. Ce qu'aucun document de ce genre ne montre est marqué comme non confirmé.",
  "The limits hold under normal operating conditions. Excluded are temporary supply, installations that do not comply with the rules for their connection, exceptional weather, third-party action, acts of public authorities, industrial action, force majeure and shortage of power.":
    "Les limites valent dans les conditions normales d'exploitation. En sont exclus l'alimentation provisoire, les installations non conformes aux règles de leur raccordement, les conditions climatiques exceptionnelles, le fait de tiers, les décisions des autorités publiques, les actions syndicales, la force majeure et la pénurie d'énergie.",
  "Values flagged because a dip, swell or interruption fell into their interval count for supply voltage and frequency and are left out for harmonics, total harmonic distortion, unbalance, flicker and mains signalling. The standard leaves this choice open (from memory).":
    "Les valeurs marquées parce qu'un creux, une surtension temporaire ou une coupure est tombé dans leur intervalle comptent pour la tension d'alimentation et la fréquence et sont écartées pour les harmoniques, le taux de distorsion harmonique total, le déséquilibre, le papillotement et la transmission de signaux sur le réseau. La norme laisse ce choix ouvert (de mémoire).",
  "The standard gives no values for interharmonic voltages. Overvoltages between live conductors and earth, for which it gives indications only, are not part of this set.":
    "La norme ne donne pas de valeurs pour les tensions interharmoniques. Les surtensions entre conducteurs actifs et terre, pour lesquelles elle ne donne que des indications, ne font pas partie de ce jeu.",
  "Power frequency, most of the time": "Fréquence du réseau, la plupart du temps",
  "One document names a week instead of the year in an overview; its running text and the others say year.":
    "Un document nomme dans une vue d'ensemble une semaine au lieu de l'année ; son texte courant et les autres disent année.",
  "Power frequency, all of the time": "Fréquence du réseau, tout le temps",
  "Supply voltage, most of the week": "Tension d'alimentation, la plus grande partie de la semaine",
  "Supply voltage, all of the time": "Tension d'alimentation, tout le temps",
  "Rapid voltage changes": "Variations rapides de tension",
  "An indication, not a limit. The larger changes are short and occur some times a day.":
    "Une indication, non une limite. Les variations plus grandes sont brèves et se produisent quelques fois par jour.",
  "Flicker severity": "Sévérité du papillotement",
  "Voltage unbalance": "Déséquilibre de la tension",
  "Where many users are connected to one or two phases, up to about 3 % occurs at some points of supply.":
    "Là où de nombreux utilisateurs sont raccordés à une ou deux phases, on rencontre jusqu'à environ 3 % à certains points de livraison.",
  "Harmonic voltages": "Tensions harmoniques",
  "Each order is judged by itself (from memory); one of the documents counts the intervals in which any order is above its limit.":
    "Chaque rang est jugé pour lui-même (de mémoire) ; l'un des documents compte les intervalles dans lesquels un rang quelconque est au-dessus de sa limite.",
  "Total harmonic distortion of the voltage, up to order 40":
    "Taux de distorsion harmonique total de la tension, jusqu'au rang 40",
  "Mains signalling voltages": "Tensions de transmission de signaux sur le réseau",
  "The points of the curve are from memory, those above 10 kHz with little confidence. The share and the 3 s interval are quoted second-hand in an energy-monitor manual of 2019; an installation-tester manual prints 2 s.":
    "Les points de la courbe sont donnés de mémoire, ceux au-dessus de 10 kHz avec peu de certitude. La part et l'intervalle de 3 s sont cités de seconde main dans une notice de moniteur d'énergie de 2019 ; une notice de contrôleur d'installation imprime 2 s.",
  "Voltage dips by residual voltage and duration": "Creux de tension selon la tension résiduelle et la durée",
  "The standard sets no limit for the counts. A cell counts events after those of several phases at one time were made one; that close events in time are made one too is from memory.":
    "La norme ne fixe pas de limite pour les nombres. Une case compte les événements après réunion en un seul de ceux qui touchent plusieurs phases en même temps ; que des événements proches dans le temps soient aussi réunis en un seul est donné de mémoire.",
  "Voltage swells by voltage and duration": "Surtensions temporaires selon la tension et la durée",
  "The standard sets no limit for the counts. The document adds a column for swells above 60 s; the standard's own table has three columns (from memory).":
    "La norme ne fixe pas de limite pour les nombres. Le document ajoute une colonne pour les surtensions temporaires de plus de 60 s ; le tableau de la norme elle-même a trois colonnes (de mémoire).",
  "EN 50160:2010, medium voltage, network not interconnected":
    "EN 50160:2010, moyenne tension, réseau non interconnecté",
  "EN 50160:2010, medium voltage": "EN 50160:2010, moyenne tension",
  "Before the 2010 edition the share was 95 % (from memory).":
    "Avant l'édition 2010, la part était de 95 % (de mémoire).",
  "may be substantially lower, depending on the design of the network":
    "peut être nettement plus basse, selon la conception du réseau",
  "The points of the curve are from memory and with little confidence; levels from 9 kHz to 95 kHz are under consideration (from memory). The share and the 3 s interval are quoted second-hand in an energy-monitor manual of 2019.":
    "Les points de la courbe sont donnés de mémoire et avec peu de certitude ; les niveaux de 9 kHz à 95 kHz sont à l'étude (de mémoire). La part et l'intervalle de 3 s sont cités de seconde main dans une notice de moniteur d'énergie de 2019.",
  "EN 50160:2022, low voltage, network not interconnected": "EN 50160:2022, basse tension, réseau non interconnecté",
  "EN 50160:2022, low voltage": "EN 50160:2022, basse tension",
  "No public document seen prints the tables of the 2022 edition. Its values here are those of the 2010 edition, and for the harmonic orders 15 and 21 values from memory. A log with order 15 or 21 between the two may change its verdict with the edition.":
    "Aucun document public consulté n'imprime les tableaux de l'édition 2022. Ses valeurs sont ici celles de l'édition 2010 et, pour les rangs harmoniques 15 et 21, des valeurs données de mémoire. Un journal dont le rang 15 ou 21 se situe entre les deux peut changer de verdict avec l'édition.",
  "A paper of 2019 reports that amendments of the 2010 edition introduced 1-min values and 100 % of the data for the supply voltage at low voltage. No other document seen confirms it, and it is not applied here.":
    "Un article de 2019 rapporte que des amendements de l'édition 2010 ont introduit des valeurs sur 1 min et 100 % des données pour la tension d'alimentation en basse tension. Aucun autre document consulté ne le confirme, et ce n'est pas appliqué ici.",
  "This is the value of the 2010 edition; no document seen shows that of 2022.":
    "C'est la valeur de l'édition 2010 ; aucun document consulté ne montre celle de 2022.",
  "every document seen prints 0.5 %, but each of them quotes the 2010 edition or an earlier one":
    "tous les documents consultés impriment 0,5 %, mais chacun cite l'édition 2010 ou une édition antérieure",
  "The values are those of the 2010 edition, but for orders 15 and 21; no document seen shows those of 2022. Each order is judged by itself (from memory).":
    "Les valeurs sont celles de l'édition 2010, sauf pour les rangs 15 et 21 ; aucun document consulté ne montre celles de 2022. Chaque rang est jugé pour lui-même (de mémoire).",
  "EN 50160:2022, medium voltage, network not interconnected":
    "EN 50160:2022, moyenne tension, réseau non interconnecté",
  "EN 50160:2022, medium voltage": "EN 50160:2022, moyenne tension",
  "No public document seen prints the tables of the 2022 edition. Its values here are those of the 2010 edition.":
    "Aucun document public consulté n'imprime les tableaux de l'édition 2022. Ses valeurs sont ici celles de l'édition 2010.",
  "France, low voltage (EN 50160:2010 with the order of 24 December 2007)":
    "France, basse tension (EN 50160:2010 avec l'arrêté du 24 décembre 2007)",
  "For the consumer's point of connection the order also names a voltage gradient above 2 % for each further kW of single-phase load; a log of the supply voltage alone cannot show it, and it is not judged here.":
    "Pour le point de raccordement du consommateur, l'arrêté nomme aussi un gradient de tension supérieur à 2 % pour chaque kW supplémentaire de charge monophasée ; un journal de la seule tension d'alimentation ne peut le montrer, et il n'est pas jugé ici.",
  "A fault is established when at least one 10-minute value lies below 90 % or above 110 %.":
    "Un défaut est établi lorsqu'au moins une valeur sur 10 minutes se situe en dessous de 90 % ou au-dessus de 110 %.",
  "Netherlands, low voltage (EN 50160:2010 with Netcode elektriciteit)":
    "Pays-Bas, basse tension (EN 50160:2010 avec le Netcode elektriciteit)",
  "The grid code words flicker severity as a value that moves on by 10 minutes; here it is judged in the two-hour intervals of EN 50160.":
    "Le code de réseau formule la sévérité du papillotement comme une valeur qui avance de 10 minutes ; ici elle est jugée dans les intervalles de deux heures de l'EN 50160.",
  "At most 10 %; at most 3 % where no loss of generation, of large users or of lines is the cause. Not judged here.":
    "Au plus 10 % ; au plus 3 % lorsque la cause n'est pas la perte de production, de gros utilisateurs ou de lignes. Non jugé ici.",
  "Flicker severity, all of the time": "Sévérité du papillotement, tout le temps",
  "Voltage unbalance, all of the time": "Déséquilibre de la tension, tout le temps",
  "Spain, low voltage (EN 50160:2010 with Real Decreto 1955/2000)":
    "Espagne, basse tension (EN 50160:2010 avec le Real Decreto 1955/2000)",
};
