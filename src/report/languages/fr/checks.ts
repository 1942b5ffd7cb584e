export const checks: Readonly<Record<string, string>> = {
  "The calibration of the instrument was due on {1}, and the recording ran until {2}; the stated uncertainty holds only if a later calibration finds the instrument unchanged.":
    "L'étalonnage de l'instrument était à renouveler le {1} et l'enregistrement s'est prolongé jusqu'au {2} ; l'incertitude indiquée ne vaut que si un étalonnage ultérieur trouve l'instrument inchangé.",
  "The instrument was calibrated on {1}, after the recording began on {2}; add an earlier certificate, or that nothing was adjusted in between.":
    "L'instrument a été étalonné le {1}, après le début de l'enregistrement le {2} ; ajoutez un certificat antérieur, ou la mention que rien n'a été ajusté entre-temps.",
  "the range of the current sensor ended there, unless an inverter or a load limits its current at just that value; true values may be higher, so repeat with a larger range":
    "l'étendue de mesure du capteur de courant s'arrêtait là, à moins qu'un onduleur ou une charge ne limite son courant précisément à cette valeur ; les valeurs vraies peuvent être plus élevées ; recommencez donc avec une étendue plus grande",
  "the measuring range ended there, unless a regulator holds the voltage at just that value; true values may be higher, so check the range of the input":
    "l'étendue de mesure s'arrêtait là, à moins qu'un régulateur ne maintienne la tension précisément à cette valeur ; les valeurs vraies peuvent être plus élevées ; vérifiez donc l'étendue de l'entrée",
  "The highest value of {1}, {2}, stands in {3} of {4} rows ({5}), first at {6}, the next {7} lower values together in {8}; {9}.":
    "La valeur la plus élevée de la grandeur « {1} », {2}, figure dans {3} lignes sur {4} ({5}), la première fois le {6}, et les {7} valeurs inférieures suivantes prises ensemble dans {8} ; {9}.",
  "{1} could not be placed, as their stamps fall into the hour that the clocks of {2} repeat or leave out; they are left out and count as missing; if the recorder's clock does not follow that zone give its own with --zone, a fixed offset such as +01:00 for a clock that stays on winter time.":
    "Impossible à situer dans le temps : {1}, dont l'horodatage tombe dans l'heure que les horloges du fuseau {2} répètent ou sautent ; ces données sont écartées et comptées comme manquantes ; si l'horloge de l'enregistreur ne suit pas ce fuseau, indiquez le sien avec --zone, par exemple un décalage fixe comme +01:00 pour une horloge qui reste à l'heure d'hiver.",
  "the clocks of {1} changed by {2} at {3}": "les horloges du fuseau {1} ont changé de {2} le {3}",
  "if the recorder's clock does not follow {1}, give its own zone with --zone, a fixed offset such as +01:00 for a clock that stays on winter time":
    "si l'horloge de l'enregistreur ne suit pas {1}, indiquez son propre fuseau avec --zone, par exemple un décalage fixe comme +01:00 pour une horloge qui reste à l'heure d'hiver",
  "The log has a gap of {1} at {2}, and {3}; most likely the recorder's clock did not change and times on one side are off by as much, unless it was really without supply for just that time; {4}.":
    "Le journal présente une lacune de {1} le {2}, et {3} ; le plus probable est que l'horloge de l'enregistreur n'a pas changé et que les heures d'un côté sont décalées d'autant, à moins qu'il n'ait réellement été sans alimentation exactement pendant ce temps ; {4}.",
  "From {1} the log holds {2} twice with different values, and {3}; most likely the recorder's clock changed at another time or not at all, unless files of two recorders were mixed; {4}.":
    "À partir du {1}, le journal contient {2} en double avec des valeurs différentes, et {3} ; le plus probable est que l'horloge de l'enregistreur a changé à un autre moment ou pas du tout, à moins que les fichiers de deux enregistreurs n'aient été mélangés ; {4}.",
  "In the recording {1}, and the stamps follow; intervals are counted in UTC, so no hour is missing or counted twice.":
    "Pendant l'enregistrement, {1}, et l'horodatage suit ; les intervalles sont comptés en UTC, de sorte qu'aucune heure ne manque ni n'est comptée deux fois.",
  "In the recording {1}, but the stamps show nothing of it; the recorder's clock may not have changed, so that times on one side are off by as much, or nothing was logged just then; {2}.":
    "Pendant l'enregistrement, {1}, mais l'horodatage n'en montre rien ; il se peut que l'horloge de l'enregistreur n'ait pas changé, de sorte que les heures d'un côté sont décalées d'autant, ou que rien n'ait été enregistré à ce moment-là ; {2}.",
  "The log has a gap of one hour at {1} and its zone was only assumed ({2}); this may be the change to summer time, after which all times are off by an hour, or the recorder was without supply for an hour; give --zone.":
    "Le journal présente une lacune d'une heure le {1} et son fuseau n'a été que supposé ({2}) ; il peut s'agir du passage à l'heure d'été, après lequel toutes les heures sont décalées d'une heure, ou l'enregistreur a été sans alimentation pendant une heure ; indiquez --zone.",
  "From {1} the log holds one hour twice with different values, and its zone was only assumed ({2}); this may be the change to winter time, or files of two recorders were mixed; give --zone so that the repeated hour can be placed.":
    "À partir du {1}, le journal contient une heure en double avec des valeurs différentes, et son fuseau n'a été que supposé ({2}) ; il peut s'agir du passage à l'heure d'hiver, ou les fichiers de deux enregistreurs ont été mélangés ; indiquez --zone pour que l'heure répétée puisse être située.",
  "The clock of the log steps {1}, first at {2}, farthest by {3} s at {4}; a recorder that restarts or whose clock is set does that; the interval at a step is not of full length and all times on one side of it may be off by as much, so compare the clock with a reference before you rely on times.":
    "L'horloge du journal saute {1}, d'abord le {2}, au plus de {3} s le {4} ; un enregistreur qui redémarre ou dont l'horloge est réglée en produit ; l'intervalle où se produit un saut n'a pas sa pleine durée et toutes les heures d'un côté peuvent être décalées d'autant ; comparez donc l'horloge à une référence avant de vous fier aux heures.",
  "that is the factor of a wrong voltage transformer ratio or a misplaced decimal point, so give voltageRatio in the setup, or --declared":
    "c'est le facteur d'un rapport de transformateur de tension erroné ou d'une virgule mal placée ; indiquez donc voltageRatio dans le paramétrage, ou --declared",
  "that is the factor between V and kV or mV and V, so state the unit of the voltage columns in the setup, or give --declared in volts":
    "c'est le facteur entre V et kV ou entre mV et V ; indiquez donc l'unité des colonnes de tension dans le paramétrage, ou donnez --declared en volts",
  "that is √3 and the declared voltage seems to be phase to neutral, so give it phase to phase: --declared {1}":
    "c'est √3 et la tension déclarée semble être entre phase et neutre ; donnez-la donc entre phases : --declared {1}",
  "that is √3 and the log seems to hold voltages between phases, so give --connection delta and the declared voltage between phases: --declared {1}":
    "c'est √3 et le journal semble contenir des tensions entre phases ; indiquez donc --connection delta et la tension déclarée entre phases : --declared {1}",
  "that is 1/√3 and the log seems to hold voltages to neutral, so give --connection star and the declared voltage to neutral: --declared {1}":
    "c'est 1/√3 et le journal semble contenir des tensions phase-neutre ; indiquez donc --connection star et la tension déclarée phase-neutre : --declared {1}",
  "that is 1/√3 and the declared voltage seems to be phase to phase, so give it to neutral: --declared {1}":
    "c'est 1/√3 et la tension déclarée semble être entre phases ; donnez-la donc entre phase et neutre : --declared {1}",
  "that is near {1} V, a secondary voltage of voltage transformers, so give their ratio as voltageRatio in the setup, such as {2}/{3}":
    "c'est proche de {1} V, une tension secondaire de transformateurs de tension ; indiquez donc leur rapport par voltageRatio dans le paramétrage, par exemple {2}/{3}",
  "{1} s": "{1} s",
  "{1} d": "{1} d",
  "{1} h": "{1} h",
  "{1} min": "{1} min",
  "1 row": "1 ligne",
  "{1} rows": "{1} lignes",
  "1 interval": "1 intervalle",
  "{1} intervals": "{1} intervalles",
  "1 day": "1 jour",
  "{1} days": "{1} jours",
  "1 time": "1 fois",
  "{1} times": "{1} fois",
  "1 gap": "1 lacune",
  "{1} gaps": "{1} lacunes",
  "1 run": "1 suite",
  "{1} runs": "{1} suites",
  "{1} and {2}": "{1} et {2}",
  "leave any work on live parts to a licensed electrician or the network operator, under the local codes":
    "laissez toute intervention sur des parties sous tension à un électricien habilité ou au gestionnaire du réseau, selon les règles locales",
  "{1} reads {2} V in the median, {3} of {4} V, while another phase has voltage; its lead was not connected, a fuse in it is open or the phase was not in service, so nothing measured on it is judged; check the connection and record again, and {5}.":
    "{1} : médiane de {2} V, soit {3} de {4} V, alors qu'une autre phase est sous tension ; son cordon n'était pas raccordé, un fusible y est ouvert ou la phase n'était pas en service ; rien de ce qui y a été mesuré n'est donc jugé ; vérifiez le raccordement et recommencez l'enregistrement, et {5}.",
  "both its inputs carry the same phase, or a phase was out of supply":
    "ses deux entrées reçoivent la même phase, ou une phase était hors alimentation",
  "this is a real outage of one phase, which counts, or a lead that came off, which should not":
    "il s'agit d'une véritable coupure d'une phase, qui compte, ou d'un cordon qui s'est détaché, ce qui ne devrait pas compter",
  "{1} lies below {2} V for {3} ({4} of {5} rows), first at {6}, while another phase has voltage; {7}; find out which, and {8}.":
    "{1} : inférieure à {2} V pendant {3} ({4} lignes sur {5}), la première fois le {6}, alors qu'une autre phase est sous tension ; {7} ; déterminez lequel des deux, et {8}.",
  "The median of the measured voltages is {1} V, {2} of the declared {3} V":
    "La médiane des tensions mesurées est de {1} V, soit {2} de la tension déclarée de {3} V",
  "that is the nominal voltage {1} V, so give it with --declared if it is the one of this supply":
    "c'est la tension nominale de {1} V ; indiquez-la donc avec --declared si c'est celle de cette alimentation",
  "give --declared, --connection or, for voltage transformers, voltageRatio in the setup":
    "indiquez --declared, --connection ou, pour des transformateurs de tension, voltageRatio dans le paramétrage",
  "no supply in service is there; {1}": "aucune alimentation en service ne se situe là ; {1}",
  "{1}; half of all values lie beyond what a supply should ever reach, so either the supply is very bad or the declared voltage is not that of this point; check it, and {2}.":
    "{1} ; la moitié de toutes les valeurs se situe au-delà de ce qu'une alimentation devrait jamais atteindre ; ou bien l'alimentation est très mauvaise, ou bien la tension déclarée n'est pas celle de ce point ; vérifiez-la, et {2}.",
  "{1}, which is nearer to the nominal voltage {2} V; the transformer's tap may be set high or low, but if {3} V is the declared voltage of this supply its limits are others, so give it with --declared.":
    "{1}, plus proche de la tension nominale de {2} V ; la prise du transformateur peut être réglée haut ou bas, mais si {3} V est la tension déclarée de cette alimentation, ses limites sont autres ; indiquez-la alors avec --declared.",
  "{1}; {2}; until then the voltage is not judged.": "{1} ; {2} ; d'ici là, la tension n'est pas jugée.",
  "1 row repeats an interval already logged, with the same values; overlapping read-outs do that, and each interval was counted once.":
    "1 ligne répète un intervalle déjà enregistré, avec les mêmes valeurs ; des relevés qui se chevauchent produisent cela, et chaque intervalle a été compté une seule fois.",
  "{1} rows repeat intervals already logged, with the same values; overlapping read-outs do that, and each interval was counted once.":
    "{1} lignes répètent des intervalles déjà enregistrés, avec les mêmes valeurs ; des relevés qui se chevauchent produisent cela, et chaque intervalle a été compté une seule fois.",
  "For {1}, the first at {2}, the log holds rows with different values; the clock may have been set back, an hour of a clock change repeated, or files of two recorders mixed; the disagreeing values count as missing, so find out which rows are right and leave the others out.":
    "Pour {1}, la première fois le {2}, le journal contient des lignes aux valeurs différentes ; l'horloge a pu être retardée, une heure répétée lors d'un changement d'heure, ou les fichiers de deux enregistreurs mélangés ; les valeurs discordantes comptent comme manquantes ; cherchez donc quelles lignes sont justes et écartez les autres.",
  "The first {1} is {2} at {3}, the median of the next {4} only {5}; a flickermeter that had not settled reads too high at its start, but switching when the recorder was connected looks the same; it counts as logged, so name it if Plt of the first two hours decides.":
    "La première valeur de « {1} » est de {2} le {3}, la médiane des {4} suivantes de {5} seulement ; un flickermètre non stabilisé indique trop au début, mais une manœuvre lors du raccordement de l'enregistreur a le même aspect ; elle compte telle qu'enregistrée ; mentionnez-la donc si le Plt des deux premières heures est décisif.",
  "All {1} values of the power frequency are {2} Hz to the last digit ({3} Hz), where a large grid spreads by 10 to 25 mHz in a day; the recorder seems not to have measured it, unless the point is fed by an inverter of constant frequency, which is no public supply; the frequency is not judged, so switch its measurement on and record again.":
    "Les {1} valeurs de la fréquence du réseau sont toutes de {2} Hz jusqu'au dernier chiffre ({3} Hz), alors qu'un grand réseau varie de 10 à 25 mHz en un jour ; l'enregistreur semble ne pas l'avoir mesurée, à moins que le point ne soit alimenté par un onduleur à fréquence constante, ce qui n'est pas une alimentation publique ; la fréquence n'est pas jugée ; activez donc sa mesure et recommencez l'enregistrement.",
  "The power frequency is {1} Hz to the last digit for {2} ({3} values) from {4}; a grid never stands still that long, so the recorder may have held its last value or an inverter may have fed the point; look at what else was logged then.":
    "La fréquence du réseau est de {1} Hz jusqu'au dernier chiffre pendant {2} ({3} valeurs) à partir du {4} ; un réseau ne reste jamais immobile aussi longtemps ; l'enregistreur a donc pu garder sa dernière valeur, ou un onduleur alimenter le point ; examinez ce qui a été enregistré d'autre à ce moment.",
  "In {1} of {2} the power frequency spreads by less than 1 mHz, least with {3} mHz in the day from {4}, where a large grid spreads by 10 to 25 mHz; an inverter or an uninterruptible supply may feed the point, or the values were not measured; check what was connected.":
    "Sur {2} enregistrés, pour {1} la fréquence du réseau varie de moins de 1 mHz, le moins avec {3} mHz dans le jour à partir du {4}, alors qu'un grand réseau varie de 10 à 25 mHz ; un onduleur ou une alimentation sans interruption peut alimenter le point, ou les valeurs n'ont pas été mesurées ; vérifiez ce qui était raccordé.",
  " ({1} of {2} series)": " ({1} séries sur {2})",
  "The log has {1} in {2}{3}: {4} of {5} without values ({6}), the longest {7} from {8}; the recorder may have been without supply, switched off or read out with parts left out; nothing was filled in, so look for the missing part in the recorder or record again if the verdict is undecided.":
    "Le journal présente {1} (grandeurs : {2}{3}) : {4} sur {5} sans valeurs ({6}), la plus longue de {7} à partir du {8} ; l'enregistreur a pu être sans alimentation, arrêté ou relevé en partie seulement ; rien n'a été comblé ; cherchez donc la partie manquante dans l'enregistreur, ou recommencez l'enregistrement si le verdict est indéterminé.",
  "The voltage of {1} lies above 115 % of the declared {2} V in {3}, at most {4} V ({5}) on {6} at {7} and for {8} on end; if the declared voltage and the connection are right this can destroy equipment and start fires, so disconnect sensitive equipment, call the network operator at once and {9}.":
    "La tension de {1} est supérieure à 115 % de la tension déclarée de {2} V dans {3}, au plus {4} V ({5}) sur {6} le {7}, et pendant {8} d'affilée ; si la tension déclarée et le raccordement sont justes, cela peut détruire des équipements et provoquer des incendies ; débranchez donc les équipements sensibles, appelez immédiatement le gestionnaire du réseau et {9}.",
  ", {1} of them in long stretches, the first from {2}": ", dont {1} en longues suites, la première à partir du {2}",
  "these phases are not judged, so check the leads and the export":
    "ces phases ne sont pas jugées ; vérifiez donc les cordons et l'exportation",
  "check the leads and the export": "vérifiez les cordons et l'exportation",
  "The {1} agree to the last digit in {2} of {3} rows ({4}) although they change{5}; one lead was on two inputs, one column was exported twice, or the inputs were bridged on purpose in a single-phase supply; {6}, and {7}.":
    "Grandeur « {1} » : valeurs égales jusqu'au dernier chiffre dans {2} lignes sur {3} ({4}) bien qu'elles varient{5} ; un même cordon était sur deux entrées, une colonne a été exportée deux fois, ou les entrées ont été pontées volontairement sur une alimentation monophasée ; {6}, et {7}.",
  "The {1} are all but equal: correlation {2}, mean difference {3} between {4}; a well balanced medium-voltage supply or bridged inputs look like that, and so does one lead on two inputs; make sure that each input has its own phase.":
    "Grandeur « {1} » : valeurs presque égales, corrélation {2}, écart moyen {3} entre {4} ; une alimentation moyenne tension bien équilibrée ou des entrées pontées donnent cet aspect, de même qu'un seul cordon sur deux entrées ; assurez-vous que chaque entrée a sa propre phase.",
  "The {1}{2} is negative in {3}, at lowest {4}, which it cannot be; the logger may mark missing values so; these rows count as missing.":
    "Grandeur « {1} »{2} : négative dans {3}, au plus bas {4}, ce qui est impossible ; l'enregistreur marque peut-être ainsi les valeurs manquantes ; ces lignes comptent comme manquantes.",
  " of order {1}": " de rang {1}",
  "In 1 ten-minute interval": "Dans 1 intervalle de dix minutes",
  "In {1} ten-minute intervals": "Dans {1} intervalles de dix minutes",
  "{1}, the first from {2}, all voltages lie below 5 % of the declared {3} V: the supply, or the recorder's leads, were interrupted; they count as outside the limits of the supply voltage here, although EN 50160 leaves interruptions out of the voltage variations (from memory), so take {4} off the numbers outside if the interruption is beyond doubt.":
    "{1}, le premier à partir du {2}, toutes les tensions sont inférieures à 5 % de la tension déclarée de {3} V : l'alimentation, ou les cordons de l'enregistreur, ont été interrompus ; ces valeurs comptent ici comme hors des limites de la tension d'alimentation, bien que l'EN 50160 exclue les coupures des variations de la tension (de mémoire) ; retranchez donc {4} du nombre de valeurs hors limite si la coupure est hors de doute.",
  "The log holds {1} every {2}, but the standard counts values of 10 min (Plt: 2 h), and a longer mean hides short excesses; such values are shown and not judged, so set the recorder to 10 min or less and record again.":
    "Le journal contient les grandeurs suivantes toutes les {2} : {1}, mais la norme compte des valeurs sur 10 min (Plt : 2 h), et une moyenne plus longue masque de courts dépassements ; ces valeurs sont montrées et non jugées ; réglez donc l'enregistreur sur 10 min ou moins et recommencez l'enregistrement.",
  "as the setup says": "comme l'indique le paramétrage",
  "as the log suggests": "comme le suggère le journal",
  "The log also holds {1} to neutral, which are not judged: the supply voltage is judged phase to phase, {2}; if the supply has a neutral that users are connected to, assess it with --connection star.":
    "Le journal contient aussi des tensions phase-neutre ({1}), qui ne sont pas jugées : la tension d'alimentation est jugée entre phases, {2} ; si l'alimentation a un neutre auquel des utilisateurs sont raccordés, évaluez-la avec --connection star.",
  "1 event that the recorder listed": "1 événement listé par l'enregistreur",
  "{1} events that the recorder listed": "{1} événements listés par l'enregistreur",
  "{1} s of waveforms in {2}": "{1} s de formes d'onde sur {2}",
  "The log holds {1}: only what the recorder's own thresholds caught; that no other dip, swell or interruption occurred does not follow, so the events are shown and not counted against the standard; for a count, record without a break or with thresholds that are known.":
    "Le journal contient {1} : uniquement ce que les seuils propres de l'enregistreur ont retenu ; il n'en résulte pas qu'aucun autre creux, aucune autre surtension temporaire ou coupure ne s'est produit ; les événements sont donc montrés et non comptés au regard de la norme ; pour un décompte, enregistrez sans interruption ou avec des seuils connus.",
  "its time, duration, phase or voltage is not stated so that it can be relied on":
    "son heure, sa durée, sa phase ou sa tension n'est pas indiquée de façon fiable",
  "Left out of {1} events that the recorder listed: {2}, as nothing in the waveforms shows them and the log does not say enough of them; the first is at {3} ({4}): {5}.":
    "Événements écartés sur {1} listés par l'enregistreur : {2}, car rien ne les montre dans les formes d'onde et le journal n'en dit pas assez ; le premier est du {3} ({4}) : {5}.",
  "without category": "sans catégorie",
  "The one event that is both listed by the recorder and found in its waveforms is not the same in both:":
    "Le seul événement à la fois listé par l'enregistreur et trouvé dans ses formes d'onde n'y est pas le même :",
  "Of {1} events that are both listed by the recorder and found in its waveforms, {2} are not the same in both:":
    "Sur {1} événements à la fois listés par l'enregistreur et trouvés dans ses formes d'onde, nombre de ceux qui n'y sont pas les mêmes : {2} ;",
  "they differ by up to {1} s in duration and {2} % of the declared voltage, the first at {3};":
    "écart jusqu'à {1} s en durée et jusqu'à {2} % de la tension déclarée, pour la première fois le {3} ;",
  "{1} {2} what the waveforms show is used; the recorder may go by other thresholds, another nominal voltage or another definition.":
    "{1} {2} c'est ce que montrent les formes d'onde qui est retenu ; l'enregistreur applique peut-être d'autres seuils, une autre tension nominale ou une autre définition.",
  "minimum {1}": "le minimum {1}",
  "maximum {1}": "le maximum {1}",
  "the columns of mean, minimum and maximum seem to be mixed up, so name them in the setup (columns: statistic)":
    "les colonnes de moyenne, minimum et maximum semblent interverties ; désignez-les donc dans le paramétrage (columns: statistic)",
  "so few rows may come from a fault in the recorder or from editing, so compare them with the recorder":
    "un si petit nombre de lignes peut provenir d'un défaut de l'enregistreur ou d'une modification ; comparez-les donc avec l'enregistreur",
  "In {1} of {2} rows ({3}) the mean of {4} lies outside its own extremes, farthest at {5} with {6} against {7}; {8}.":
    "Dans {1} lignes sur {2} ({3}), la moyenne de la grandeur « {4} » se situe hors de ses propres extrêmes, au plus loin le {5} avec {6} contre {7} ; {8}.",
  "The median of the power frequency is {1} Hz but the nominal frequency is taken as {2} Hz; the supply seems to be one of {3} Hz; until that is settled the frequency is not judged, so give nominalFrequency in the setup and a limit set for {4} Hz.":
    "La médiane de la fréquence du réseau est de {1} Hz, mais la fréquence nominale est prise égale à {2} Hz ; l'alimentation semble être à {3} Hz ; tant que ce point n'est pas réglé, la fréquence n'est pas jugée ; indiquez donc nominalFrequency dans le paramétrage et un jeu de limites pour {4} Hz.",
  "For {1} ({2}) the voltages to neutral lie more than 8 % of {3} V apart, most at {4} with L1 {5} V, L2 {6} V and L3 {7} V":
    "Pendant {1} ({2}), les tensions phase-neutre diffèrent entre elles de plus de 8 % de {3} V, au maximum le {4} avec L1 à {5} V, L2 à {6} V et L3 à {7} V",
  "while the voltages between the phases agree within 2 % (zero-sequence voltage {1} V, {2} times the negative-sequence voltage)":
    "alors que les tensions entre phases concordent à 2 % près (tension homopolaire {1} V, soit {2} fois la tension inverse)",
  "some phases rising while others fall; no voltages between the phases were logged, so the cause cannot be confirmed":
    "certaines phases montant tandis que d'autres baissent ; aucune tension entre phases n'a été enregistrée, si bien que la cause ne peut être confirmée",
  "{1}, {2}; {3}; {4}, and {5}.": "{1}, {2} ; {3} ; {4}, et {5}.",
  "the neutral of the supply is probably loose or broken, unless it was the recorder's own neutral lead":
    "le neutre de l'alimentation est probablement desserré ou rompu, à moins qu'il ne s'agisse du cordon de neutre de l'enregistreur lui-même",
  "the neutral of the supply may be loose or broken, unless the loads are very unequal or the recorder's own neutral lead was open":
    "le neutre de l'alimentation est peut-être desserré ou rompu, à moins que les charges ne soient très inégales ou que le cordon de neutre de l'enregistreur lui-même n'ait été ouvert",
  "unequal loads or feed-in on a line do that, but a neutral that grows loose begins like this too":
    "des charges ou une injection inégales sur une ligne produisent cela, mais un neutre qui se desserre commence aussi ainsi",
  "this is urgent, as voltages beyond 80 to 115 % destroy equipment and metal parts may become live: switch sensitive equipment off, keep away from metal parts of the installation, call the network operator at once":
    "c'est urgent, car des tensions hors de la plage 80 à 115 % détruisent les équipements et des parties métalliques peuvent se trouver sous tension : mettez hors tension les équipements sensibles, tenez-vous à l'écart des parties métalliques de l'installation, appelez immédiatement le gestionnaire du réseau",
  "have the network operator or a licensed electrician check the neutral soon, as a loose joint grows worse until it breaks":
    "faites vérifier le neutre sans tarder par le gestionnaire du réseau ou un électricien habilité, car une connexion desserrée s'aggrave jusqu'à la rupture",
  "compare with the currents, and have the neutral checked if they do not explain it":
    "comparez avec les courants, et faites vérifier le neutre s'ils n'expliquent pas le constat",
  "The logged {1} disagrees with the cube mean of its twelve Pst in {2} of {3} cases ({4}), most in the two hours from {5} with {6} logged and {7} from Pst; a recorder that was restarted, or that averages otherwise than IEC 61000-4-15, does that; where Pst is logged the verdict rests on Pst, so leave the logged Plt out of comparisons.":
    "La grandeur enregistrée « {1} » ne concorde pas avec la moyenne cubique de ses douze Pst dans {2} cas sur {3} ({4}), l'écart étant le plus grand dans les deux heures à partir du {5} avec {6} enregistré et {7} d'après Pst ; un enregistreur redémarré, ou qui fait la moyenne autrement que l'IEC 61000-4-15, produit cela ; là où Pst est enregistré, le verdict repose sur Pst ; n'utilisez donc pas le Plt enregistré dans des comparaisons.",
  "The recording is {1} long, {2} of the week over which the standard counts; the missing time may hide excesses or dilute those found, so record seven days without a break.":
    "L'enregistrement dure {1}, soit {2} de la semaine sur laquelle la norme compte ; le temps manquant peut cacher des dépassements ou diluer ceux qui ont été trouvés ; enregistrez donc sept jours sans interruption.",
  "The part of the recording that was asked for is {1} long, {2} of the week over which the standard counts; the missing time may hide excesses or dilute those found, so assess seven days without a break.":
    "La partie demandée de l'enregistrement dure {1}, soit {2} de la semaine sur laquelle la norme compte ; le temps manquant peut cacher des dépassements ou diluer ceux qui ont été trouvés ; évaluez donc sept jours sans interruption.",
  "so many rows are not measured that the phase is not judged; compare with the recorder and record again":
    "tant de lignes ne sont pas mesurées que la phase n'est pas jugée ; comparez avec l'enregistreur et recommencez l'enregistrement",
  "these rows count as logged; compare them with the recorder":
    "ces lignes comptent telles qu'enregistrées ; comparez-les avec l'enregistreur",
  "The {1} repeats one value to the last digit in {2} of rows ({3} of {4} rows, {5}), the longest {6} rows ({7}) of {8} from {9}; the recorder may have held its last value or gaps were filled, unless a regulated supply feeds the point; {10}.":
    "La grandeur « {1} » répète une même valeur jusqu'au dernier chiffre dans {2} de lignes ({3} lignes sur {4}, {5}), la plus longue de {6} lignes ({7}) à {8} à partir du {9} ; l'enregistreur a pu garder sa dernière valeur, ou des lacunes ont été comblées, à moins qu'une alimentation régulée n'alimente le point ; {10}.",
  "1 row does not stand in the order of time; that is harmless where a file was sorted or joined by hand, but may also mean that the recorder's clock was set back; the rows were put in order by their stamps, so check against the recorder that the stamps are right.":
    "1 ligne n'est pas dans l'ordre du temps ; c'est sans conséquence si un fichier a été trié ou assemblé à la main, mais peut aussi signifier que l'horloge de l'enregistreur a été retardée ; les lignes ont été ordonnées d'après leur horodatage ; vérifiez donc auprès de l'enregistreur que l'horodatage est juste.",
  "{1} rows do not stand in the order of time; that is harmless where a file was sorted or joined by hand, but may also mean that the recorder's clock was set back; the rows were put in order by their stamps, so check against the recorder that the stamps are right.":
    "{1} lignes ne sont pas dans l'ordre du temps ; c'est sans conséquence si un fichier a été trié ou assemblé à la main, mais peut aussi signifier que l'horloge de l'enregistreur a été retardée ; les lignes ont été ordonnées d'après leur horodatage ; vérifiez donc auprès de l'enregistreur que l'horodatage est juste.",
  "{1} of {2} ten-minute intervals do not begin on a full ten minutes, the first at {3} ({4} s after the tick); the recorder counts from its own start or its clock is off, or the zone is not a multiple of ten minutes from UTC; values of two recorders then cover different times, so say so when you compare them.":
    "Intervalles de dix minutes qui ne commencent pas sur une dizaine de minutes ronde : {1} sur {2}, le premier le {3} ({4} s après) ; l'enregistreur compte à partir de son propre démarrage, ou son horloge est décalée, ou le fuseau n'est pas à un multiple de dix minutes de l'UTC ; les valeurs de deux enregistreurs couvrent alors des temps différents ; signalez-le donc quand vous les comparez.",
  "one of them": "l'une des deux grandeurs",
  "The median of {1} is {2} % but that of the root sum of the harmonics is {3} %, {4} times as much; {5} seems to be logged as a share of one instead of percent or the reverse; until that is settled it is not judged, so state the unit of these columns in the setup.":
    "La médiane de la grandeur « {1} » est de {2} %, mais celle de la racine de la somme des carrés des harmoniques est de {3} %, soit {4} fois plus ; {5} : enregistrement probable en fraction de un au lieu de pour cent, ou l'inverse ; tant que ce point n'est pas réglé, la grandeur n'est pas jugée ; indiquez donc l'unité de ces colonnes dans le paramétrage.",
  "The logged {1} disagrees with the root sum of its harmonics{2} in {3} of {4} rows ({5}), most at {6} with {7} % logged and {8} % from the harmonics; the recorder may refer one to the declared voltage and the other to the fundamental, count other orders, or a column is not what it was taken for; check both columns in the setup before you rely on either.":
    "La grandeur enregistrée « {1} » ne concorde pas avec la racine de la somme des carrés de ses harmoniques{2} dans {3} lignes sur {4} ({5}), l'écart étant le plus grand le {6} avec {7} % enregistré et {8} % d'après les harmoniques ; l'enregistreur rapporte peut-être l'une à la tension déclarée et l'autre au fondamental, compte d'autres rangs, ou une colonne n'est pas ce pour quoi elle a été prise ; vérifiez les deux colonnes dans le paramétrage avant de vous fier à l'une ou à l'autre.",
  " (not all orders are logged, so THD may only be higher)":
    " (tous les rangs ne sont pas enregistrés, si bien que le THD ne peut être que plus élevé)",
  "The log does not say which end of its intervals the stamps mark; the {1} was assumed, so every time in this report may be off by one interval ({2}); give intervalLabel in the setup if you know it.":
    "Le journal ne dit pas quelle extrémité de ses intervalles l'horodatage marque ; il a été supposé « {1} », de sorte que toute heure de ce rapport peut être décalée d'un intervalle ({2}) ; indiquez intervalLabel dans le paramétrage si vous le savez.",
  "The stamps carry no offset and no zone was given; they were read as {1}, so every time in this report may be off by whole hours and a clock change would show as a gap or a repeated hour; give --zone.":
    "L'horodatage ne porte aucun décalage et aucun fuseau n'a été indiqué ; il a été lu comme {1}, de sorte que toute heure de ce rapport peut être décalée d'heures entières et qu'un changement d'heure apparaîtrait comme une lacune ou une heure répétée ; indiquez --zone.",
  start: "début",
  end: "fin",
};
