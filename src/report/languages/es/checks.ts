/** Findings on the recording. */
export const checks: Readonly<Record<string, string>> = {
  "The calibration of the instrument was due on {1}, and the recording ran until {2}; the stated uncertainty holds only if a later calibration finds the instrument unchanged.":
    "La calibración del instrumento vencía el {1}, y el registro duró hasta el {2}; la incertidumbre declarada solo vale si una calibración posterior encuentra el instrumento sin cambios.",
  "The instrument was calibrated on {1}, after the recording began on {2}; add an earlier certificate, or that nothing was adjusted in between.":
    "El instrumento se calibró el {1}, después de que el registro comenzara el {2}; añada un certificado anterior, o que entretanto no se ajustó nada.",
  "the range of the current sensor ended there, unless an inverter or a load limits its current at just that value; true values may be higher, so repeat with a larger range":
    "allí terminaba el rango del sensor de corriente, salvo que un inversor o una carga limite su corriente justo a ese valor; los valores verdaderos pueden ser mayores, por lo que conviene repetir con un rango mayor",
  "the measuring range ended there, unless a regulator holds the voltage at just that value; true values may be higher, so check the range of the input":
    "allí terminaba el rango de medida, salvo que un regulador mantenga la tensión justo en ese valor; los valores verdaderos pueden ser mayores, por lo que conviene comprobar el rango de la entrada",
  "The highest value of {1}, {2}, stands in {3} of {4} rows ({5}), first at {6}, the next {7} lower values together in {8}; {9}.":
    "En la serie {1}, el valor más alto, {2}, figura en {3} de {4} filas ({5}), por primera vez el {6}; los {7} valores inferiores siguientes, juntos, en {8}; {9}.",
  "{1} could not be placed, as their stamps fall into the hour that the clocks of {2} repeat or leave out; they are left out and count as missing; if the recorder's clock does not follow that zone give its own with --zone, a fixed offset such as +01:00 for a clock that stays on winter time.":
    "No fue posible situar en el tiempo {1}, con marca de tiempo dentro de la hora que los relojes de {2} repiten u omiten; todo ello queda fuera y cuenta como falta de datos; si el reloj del registrador no sigue esa zona, indique la suya con --zone, un desfase fijo como +01:00 para un reloj que permanece en hora de invierno.",
  "the clocks of {1} changed by {2} at {3}": "los relojes de {1} cambiaron {2} el {3}",
  "if the recorder's clock does not follow {1}, give its own zone with --zone, a fixed offset such as +01:00 for a clock that stays on winter time":
    "si el reloj del registrador no sigue {1}, indique su propia zona con --zone, un desfase fijo como +01:00 para un reloj que permanece en hora de invierno",
  "The log has a gap of {1} at {2}, and {3}; most likely the recorder's clock did not change and times on one side are off by as much, unless it was really without supply for just that time; {4}.":
    "Los datos tienen una laguna de {1} el {2}, y {3}; lo más probable es que el reloj del registrador no cambiara y que las horas de un lado estén desplazadas en esa medida, salvo que realmente quedara sin alimentación justo durante ese tiempo; {4}.",
  "From {1} the log holds {2} twice with different values, and {3}; most likely the recorder's clock changed at another time or not at all, unless files of two recorders were mixed; {4}.":
    "Desde el {1} los datos contienen {2} dos veces con valores distintos, y {3}; lo más probable es que el reloj del registrador cambiara en otro momento o no cambiara, salvo que se mezclaran archivos de dos registradores; {4}.",
  "In the recording {1}, and the stamps follow; intervals are counted in UTC, so no hour is missing or counted twice.":
    "En el registro, {1}, y las marcas de tiempo lo siguen; los intervalos se cuentan en UTC, por lo que no falta ninguna hora ni se cuenta dos veces.",
  "In the recording {1}, but the stamps show nothing of it; the recorder's clock may not have changed, so that times on one side are off by as much, or nothing was logged just then; {2}.":
    "En el registro, {1}, pero las marcas de tiempo no lo muestran; puede que el reloj del registrador no cambiara, de modo que las horas de un lado estén desplazadas en esa medida, o que justo entonces no se registrara nada; {2}.",
  "The log has a gap of one hour at {1} and its zone was only assumed ({2}); this may be the change to summer time, after which all times are off by an hour, or the recorder was without supply for an hour; give --zone.":
    "Los datos tienen una laguna de una hora el {1} y su zona solo se supuso ({2}); puede ser el cambio a la hora de verano, tras el cual todas las horas están desplazadas una hora, o el registrador estuvo una hora sin alimentación; indique --zone.",
  "From {1} the log holds one hour twice with different values, and its zone was only assumed ({2}); this may be the change to winter time, or files of two recorders were mixed; give --zone so that the repeated hour can be placed.":
    "Desde el {1} los datos contienen una hora dos veces con valores distintos, y su zona solo se supuso ({2}); puede ser el cambio a la hora de invierno, o se mezclaron archivos de dos registradores; indique --zone para poder situar la hora repetida.",
  "The clock of the log steps {1}, first at {2}, farthest by {3} s at {4}; a recorder that restarts or whose clock is set does that; the interval at a step is not of full length and all times on one side of it may be off by as much, so compare the clock with a reference before you rely on times.":
    "El reloj de los datos salta {1}, la primera vez el {2}, el mayor salto de {3} s el {4}; así ocurre cuando un registrador se reinicia o se ajusta su reloj; el intervalo en un salto no tiene la duración completa y todas las horas de un lado pueden estar desplazadas en esa medida, por lo que conviene comparar el reloj con una referencia antes de fiarse de las horas.",
  "that is the factor of a wrong voltage transformer ratio or a misplaced decimal point, so give voltageRatio in the setup, or --declared":
    "ese es el factor de una relación errónea del transformador de tensión o de una coma decimal mal situada; indique voltageRatio en la configuración, o --declared",
  "that is the factor between V and kV or mV and V, so state the unit of the voltage columns in the setup, or give --declared in volts":
    "ese es el factor entre V y kV o entre mV y V; indique la unidad de las columnas de tensión en la configuración, o --declared en voltios",
  "that is √3 and the declared voltage seems to be phase to neutral, so give it phase to phase: --declared {1}":
    "eso es √3 y la tensión declarada parece ser fase-neutro; indíquela entre fases: --declared {1}",
  "that is √3 and the log seems to hold voltages between phases, so give --connection delta and the declared voltage between phases: --declared {1}":
    "eso es √3 y los datos parecen contener tensiones entre fases; indique --connection delta y la tensión declarada entre fases: --declared {1}",
  "that is 1/√3 and the log seems to hold voltages to neutral, so give --connection star and the declared voltage to neutral: --declared {1}":
    "eso es 1/√3 y los datos parecen contener tensiones fase-neutro; indique --connection star y la tensión declarada fase-neutro: --declared {1}",
  "that is 1/√3 and the declared voltage seems to be phase to phase, so give it to neutral: --declared {1}":
    "eso es 1/√3 y la tensión declarada parece ser entre fases; indíquela fase-neutro: --declared {1}",
  "that is near {1} V, a secondary voltage of voltage transformers, so give their ratio as voltageRatio in the setup, such as {2}/{3}":
    "eso está cerca de {1} V, una tensión secundaria de transformadores de tensión; indique su relación como voltageRatio en la configuración, por ejemplo {2}/{3}",
  "{1} s": "{1} s",
  "{1} d": "{1} d",
  "{1} h": "{1} h",
  "{1} min": "{1} min",
  "1 row": "1 fila",
  "{1} rows": "{1} filas",
  "1 interval": "1 intervalo",
  "{1} intervals": "{1} intervalos",
  "1 day": "1 día",
  "{1} days": "{1} días",
  "1 time": "1 vez",
  "{1} times": "{1} veces",
  "1 gap": "1 laguna",
  "{1} gaps": "{1} lagunas",
  "1 run": "1 tramo",
  "{1} runs": "{1} tramos",
  "{1} and {2}": "{1} y {2}",
  "leave any work on live parts to a licensed electrician or the network operator, under the local codes":
    "deje cualquier trabajo en partes en tensión en manos de un electricista autorizado o del gestor de la red, conforme a la reglamentación local",
  "{1} reads {2} V in the median, {3} of {4} V, while another phase has voltage; its lead was not connected, a fuse in it is open or the phase was not in service, so nothing measured on it is judged; check the connection and record again, and {5}.":
    "{1}: la mediana es de {2} V, {3} de {4} V, mientras otra fase tiene tensión; su cable de medida no estaba conectado, tiene un fusible abierto o la fase no estaba en servicio, por lo que no se evalúa nada de lo medido en ella; compruebe la conexión y registre de nuevo, y {5}.",
  "both its inputs carry the same phase, or a phase was out of supply":
    "sus dos entradas llevan la misma fase, o una fase estaba sin suministro",
  "this is a real outage of one phase, which counts, or a lead that came off, which should not":
    "esto es un corte real de una fase, que cuenta, o un cable de medida que se soltó, que no debería contar",
  "{1} lies below {2} V for {3} ({4} of {5} rows), first at {6}, while another phase has voltage; {7}; find out which, and {8}.":
    "{1}: valores por debajo de {2} V durante {3} ({4} de {5} filas), por primera vez el {6}, mientras otra fase tiene tensión; {7}; averigüe cuál de los dos casos es, y {8}.",
  "The median of the measured voltages is {1} V, {2} of the declared {3} V":
    "La mediana de las tensiones medidas es {1} V, {2} de los {3} V declarados",
  "that is the nominal voltage {1} V, so give it with --declared if it is the one of this supply":
    "esa es la tensión nominal {1} V; indíquela con --declared si es la de este suministro",
  "give --declared, --connection or, for voltage transformers, voltageRatio in the setup":
    "indique --declared, --connection o, para transformadores de tensión, voltageRatio en la configuración",
  "no supply in service is there; {1}": "ahí no está ningún suministro en servicio; {1}",
  "{1}; half of all values lie beyond what a supply should ever reach, so either the supply is very bad or the declared voltage is not that of this point; check it, and {2}.":
    "{1}; la mitad de todos los valores está más allá de lo que un suministro debería alcanzar jamás, de modo que o el suministro es muy malo o la tensión declarada no es la de este punto; compruébela, y {2}.",
  "{1}, which is nearer to the nominal voltage {2} V; the transformer's tap may be set high or low, but if {3} V is the declared voltage of this supply its limits are others, so give it with --declared.":
    "{1}, que está más cerca de la tensión nominal {2} V; puede que la toma del transformador esté ajustada alta o baja, pero si {3} V es la tensión declarada de este suministro, sus límites son otros; indíquela entonces con --declared.",
  "{1}; {2}; until then the voltage is not judged.": "{1}; {2}; hasta entonces la tensión no se evalúa.",
  "1 row repeats an interval already logged, with the same values; overlapping read-outs do that, and each interval was counted once.":
    "1 fila repite un intervalo ya registrado, con los mismos valores; así ocurre con descargas de datos solapadas, y cada intervalo se contó una vez.",
  "{1} rows repeat intervals already logged, with the same values; overlapping read-outs do that, and each interval was counted once.":
    "{1} filas repiten intervalos ya registrados, con los mismos valores; así ocurre con descargas de datos solapadas, y cada intervalo se contó una vez.",
  "For {1}, the first at {2}, the log holds rows with different values; the clock may have been set back, an hour of a clock change repeated, or files of two recorders mixed; the disagreeing values count as missing, so find out which rows are right and leave the others out.":
    "Para {1}, el primero el {2}, los datos contienen filas con valores distintos; puede que se atrasara el reloj, que se repitiera una hora en un cambio de hora o que se mezclaran archivos de dos registradores; los valores discrepantes cuentan como falta de datos; averigüe qué filas son correctas y deje fuera las demás.",
  "The first {1} is {2} at {3}, the median of the next {4} only {5}; a flickermeter that had not settled reads too high at its start, but switching when the recorder was connected looks the same; it counts as logged, so name it if Plt of the first two hours decides.":
    "El primer valor de la serie {1} es {2} el {3}; la mediana de los {4} siguientes, solo {5}; un medidor de flicker que no se ha estabilizado indica demasiado al principio, pero una maniobra al conectar el registrador se ve igual; cuenta tal como se registró; menciónelo si decide el Plt de las dos primeras horas.",
  "All {1} values of the power frequency are {2} Hz to the last digit ({3} Hz), where a large grid spreads by 10 to 25 mHz in a day; the recorder seems not to have measured it, unless the point is fed by an inverter of constant frequency, which is no public supply; the frequency is not judged, so switch its measurement on and record again.":
    "Los {1} valores de la frecuencia de red son todos {2} Hz hasta el último dígito ({3} Hz), cuando una red grande oscila de 10 a 25 mHz en un día; el registrador parece no haberla medido, salvo que el punto esté alimentado por un inversor de frecuencia constante, que no es un suministro público; la frecuencia no se evalúa; active su medida y registre de nuevo.",
  "The power frequency is {1} Hz to the last digit for {2} ({3} values) from {4}; a grid never stands still that long, so the recorder may have held its last value or an inverter may have fed the point; look at what else was logged then.":
    "La frecuencia de red es {1} Hz hasta el último dígito durante {2} ({3} valores) desde el {4}; una red nunca permanece tan quieta, por lo que el registrador puede haber mantenido su último valor o un inversor puede haber alimentado el punto; mire qué más se registró entonces.",
  "In {1} of {2} the power frequency spreads by less than 1 mHz, least with {3} mHz in the day from {4}, where a large grid spreads by 10 to 25 mHz; an inverter or an uninterruptible supply may feed the point, or the values were not measured; check what was connected.":
    "En {1} de {2} la frecuencia de red oscila menos de 1 mHz, lo mínimo con {3} mHz en el día desde el {4}, cuando una red grande oscila de 10 a 25 mHz; puede que alimente el punto un inversor o un sistema de alimentación ininterrumpida, o que los valores no se midieran; compruebe qué estaba conectado.",
  " ({1} of {2} series)": " ({1} de {2} series)",
  "The log has {1} in {2}{3}: {4} of {5} without values ({6}), the longest {7} from {8}; the recorder may have been without supply, switched off or read out with parts left out; nothing was filled in, so look for the missing part in the recorder or record again if the verdict is undecided.":
    "Los datos tienen {1} en {2}{3}: {4} de {5} sin valores ({6}), la más larga de {7} desde el {8}; puede que el registrador estuviera sin alimentación, apagado o que en la descarga de datos se omitieran partes; no se rellenó nada; busque la parte que falta en el registrador o registre de nuevo si el veredicto queda no decidido.",
  "The voltage of {1} lies above 115 % of the declared {2} V in {3}, at most {4} V ({5}) on {6} at {7} and for {8} on end; if the declared voltage and the connection are right this can destroy equipment and start fires, so disconnect sensitive equipment, call the network operator at once and {9}.":
    "La tensión de {1} está por encima del 115 % de los {2} V declarados en {3}, como máximo {4} V ({5}) en {6} el {7}, y durante {8} seguidos; si la tensión declarada y la conexión son correctas, esto puede destruir equipos y provocar incendios; desconecte los equipos sensibles, llame de inmediato al gestor de la red y {9}.",
  ", {1} of them in long stretches, the first from {2}": ", {1} de ellas en tramos largos, el primero desde el {2}",
  "these phases are not judged, so check the leads and the export":
    "estas fases no se evalúan; compruebe los cables de medida y la exportación",
  "check the leads and the export": "compruebe los cables de medida y la exportación",
  "The {1} agree to the last digit in {2} of {3} rows ({4}) although they change{5}; one lead was on two inputs, one column was exported twice, or the inputs were bridged on purpose in a single-phase supply; {6}, and {7}.":
    "Valores iguales hasta el último dígito ({1}) en {2} de {3} filas ({4}), aunque cambian{5}; un mismo cable estaba en dos entradas, una columna se exportó dos veces o las entradas se puentearon a propósito en un suministro monofásico; {6}, y {7}.",
  "The {1} are all but equal: correlation {2}, mean difference {3} between {4}; a well balanced medium-voltage supply or bridged inputs look like that, and so does one lead on two inputs; make sure that each input has its own phase.":
    "Valores casi iguales ({1}): correlación {2}, diferencia media {3} entre {4}; así se ve un suministro de media tensión bien equilibrado o unas entradas puenteadas, y también un mismo cable en dos entradas; asegúrese de que cada entrada tenga su propia fase.",
  "The {1}{2} is negative in {3}, at lowest {4}, which it cannot be; the logger may mark missing values so; these rows count as missing.":
    "El valor de la serie {1}{2} es negativo en {3}, con {4} como valor más bajo, lo que no es posible; puede que el registrador marque así los valores que faltan; estas filas cuentan como falta de datos.",
  " of order {1}": " de orden {1}",
  "In 1 ten-minute interval": "En 1 intervalo de diez minutos",
  "In {1} ten-minute intervals": "En {1} intervalos de diez minutos",
  "{1}, the first from {2}, all voltages lie below 5 % of the declared {3} V: the supply, or the recorder's leads, were interrupted; they count as outside the limits of the supply voltage here, although EN 50160 leaves interruptions out of the voltage variations (from memory), so take {4} off the numbers outside if the interruption is beyond doubt.":
    "{1}, el primero desde el {2}, todas las tensiones están por debajo del 5 % de los {3} V declarados: el suministro, o los cables de medida del registrador, quedaron interrumpidos; aquí cuentan como fuera de los límites de la tensión de alimentación, aunque EN 50160 deja las interrupciones fuera de las variaciones de tensión (de memoria); reste por tanto {4} de los números de valores fuera si la interrupción está fuera de duda.",
  "The log holds {1} every {2}, but the standard counts values of 10 min (Plt: 2 h), and a longer mean hides short excesses; such values are shown and not judged, so set the recorder to 10 min or less and record again.":
    "Los datos contienen {1} cada {2}, pero la norma cuenta valores de 10 min (Plt: 2 h), y una media más larga oculta excesos breves; tales valores se muestran y no se evalúan; ajuste el registrador a 10 min o menos y registre de nuevo.",
  "as the setup says": "como indica la configuración",
  "as the log suggests": "como sugieren los datos",
  "The log also holds {1} to neutral, which are not judged: the supply voltage is judged phase to phase, {2}; if the supply has a neutral that users are connected to, assess it with --connection star.":
    "Los datos contienen también {1} respecto al neutro, que no se evalúan: la tensión de alimentación se evalúa entre fases, {2}; si el suministro tiene un neutro al que hay usuarios conectados, evalúelo con --connection star.",
  "1 event that the recorder listed": "1 evento de la lista del registrador",
  "{1} events that the recorder listed": "{1} eventos de la lista del registrador",
  "{1} s of waveforms in {2}": "{1} s de formas de onda en {2}",
  "The log holds {1}: only what the recorder's own thresholds caught; that no other dip, swell or interruption occurred does not follow, so the events are shown and not counted against the standard; for a count, record without a break or with thresholds that are known.":
    "Los datos contienen {1}: solo lo que captaron los umbrales propios del registrador; de ello no se sigue que no ocurriera ningún otro hueco, sobretensión temporal o interrupción, por lo que los eventos se muestran y no se cuentan frente a la norma; para contarlos, registre sin interrupción o con umbrales conocidos.",
  "its time, duration, phase or voltage is not stated so that it can be relied on":
    "su hora, duración, fase o tensión no consta de forma fiable",
  "Left out of {1} events that the recorder listed: {2}, as nothing in the waveforms shows them and the log does not say enough of them; the first is at {3} ({4}): {5}.":
    "Se dejan fuera eventos de la lista del registrador, que tiene {1}: {2}, porque nada en las formas de onda los muestra y los datos no dicen lo suficiente de ellos; el primero es del {3} ({4}): {5}.",
  "without category": "sin categoría",
  "The one event that is both listed by the recorder and found in its waveforms is not the same in both:":
    "El único evento que figura en la lista del registrador y también se encontró en sus formas de onda no es igual en ambas:",
  "Of {1} events that are both listed by the recorder and found in its waveforms, {2} are not the same in both:":
    "De {1} eventos que figuran en la lista del registrador y también se encontraron en sus formas de onda, {2} no son iguales en ambas:",
  "they differ by up to {1} s in duration and {2} % of the declared voltage, the first at {3};":
    "difieren hasta {1} s en duración y {2} % de la tensión declarada, el primero el {3};",
  "{1} {2} what the waveforms show is used; the recorder may go by other thresholds, another nominal voltage or another definition.":
    "{1} {2} se usa lo que muestran las formas de onda; puede que el registrador se rija por otros umbrales, otra tensión nominal u otra definición.",
  "minimum {1}": "mínimo {1}",
  "maximum {1}": "máximo {1}",
  "the columns of mean, minimum and maximum seem to be mixed up, so name them in the setup (columns: statistic)":
    "las columnas de media, mínimo y máximo parecen estar confundidas; nómbrelas en la configuración (columns: statistic)",
  "so few rows may come from a fault in the recorder or from editing, so compare them with the recorder":
    "tan pocas filas pueden deberse a un fallo del registrador o a una edición posterior; compárelas con el registrador",
  "In {1} of {2} rows ({3}) the mean of {4} lies outside its own extremes, farthest at {5} with {6} against {7}; {8}.":
    "En {1} de {2} filas ({3}) la media de la serie {4} está fuera de sus propios extremos, lo más lejos el {5} con {6} frente a {7}; {8}.",
  "The median of the power frequency is {1} Hz but the nominal frequency is taken as {2} Hz; the supply seems to be one of {3} Hz; until that is settled the frequency is not judged, so give nominalFrequency in the setup and a limit set for {4} Hz.":
    "La mediana de la frecuencia de red es {1} Hz, pero como frecuencia nominal se toma {2} Hz; el suministro parece ser de {3} Hz; hasta que se aclare, la frecuencia no se evalúa; indique nominalFrequency en la configuración y un conjunto de límites para {4} Hz.",
  "For {1} ({2}) the voltages to neutral lie more than 8 % of {3} V apart, most at {4} with L1 {5} V, L2 {6} V and L3 {7} V":
    "Durante {1} ({2}) las tensiones fase-neutro difieren entre sí más del 8 % de {3} V, con la mayor diferencia el {4}: L1 {5} V, L2 {6} V y L3 {7} V",
  "while the voltages between the phases agree within 2 % (zero-sequence voltage {1} V, {2} times the negative-sequence voltage)":
    "mientras las tensiones entre fases coinciden dentro del 2 % (tensión homopolar {1} V, {2} veces la tensión de secuencia inversa)",
  "some phases rising while others fall; no voltages between the phases were logged, so the cause cannot be confirmed":
    "unas fases suben mientras otras bajan; no se registraron tensiones entre fases, por lo que la causa no puede confirmarse",
  "{1}, {2}; {3}; {4}, and {5}.": "{1}, {2}; {3}; {4}, y {5}.",
  "the neutral of the supply is probably loose or broken, unless it was the recorder's own neutral lead":
    "el neutro del suministro está probablemente flojo o cortado, salvo que fuera el propio cable de neutro del registrador",
  "the neutral of the supply may be loose or broken, unless the loads are very unequal or the recorder's own neutral lead was open":
    "el neutro del suministro puede estar flojo o cortado, salvo que las cargas sean muy desiguales o el propio cable de neutro del registrador estuviera abierto",
  "unequal loads or feed-in on a line do that, but a neutral that grows loose begins like this too":
    "así ocurre con cargas desiguales o inyección de energía en una línea, pero un neutro que se afloja también empieza así",
  "this is urgent, as voltages beyond 80 to 115 % destroy equipment and metal parts may become live: switch sensitive equipment off, keep away from metal parts of the installation, call the network operator at once":
    "esto es urgente, pues tensiones fuera del 80 al 115 % destruyen equipos y las partes metálicas pueden quedar en tensión: apague los equipos sensibles, manténgase alejado de las partes metálicas de la instalación, llame de inmediato al gestor de la red",
  "have the network operator or a licensed electrician check the neutral soon, as a loose joint grows worse until it breaks":
    "haga que el gestor de la red o un electricista autorizado compruebe pronto el neutro, pues una unión floja empeora hasta romperse",
  "compare with the currents, and have the neutral checked if they do not explain it":
    "compare con las corrientes, y haga comprobar el neutro si no lo explican",
  "The logged {1} disagrees with the cube mean of its twelve Pst in {2} of {3} cases ({4}), most in the two hours from {5} with {6} logged and {7} from Pst; a recorder that was restarted, or that averages otherwise than IEC 61000-4-15, does that; where Pst is logged the verdict rests on Pst, so leave the logged Plt out of comparisons.":
    "La serie registrada {1} no concuerda con la media cúbica de sus doce Pst en {2} de {3} casos ({4}), lo máximo en las dos horas desde el {5} con {6} registrado y {7} a partir de Pst; así ocurre con un registrador que se reinició o que promedia de otro modo que IEC 61000-4-15; donde se registra Pst el veredicto se basa en Pst; deje por tanto el Plt registrado fuera de las comparaciones.",
  "The recording is {1} long, {2} of the week over which the standard counts; the missing time may hide excesses or dilute those found, so record seven days without a break.":
    "El registro dura {1}, {2} de la semana sobre la que cuenta la norma; el tiempo que falta puede ocultar excesos o diluir los encontrados; registre siete días sin interrupción.",
  "The part of the recording that was asked for is {1} long, {2} of the week over which the standard counts; the missing time may hide excesses or dilute those found, so assess seven days without a break.":
    "La parte solicitada del registro dura {1}, {2} de la semana sobre la que cuenta la norma; el tiempo que falta puede ocultar excesos o diluir los encontrados; evalúe siete días sin interrupción.",
  "so many rows are not measured that the phase is not judged; compare with the recorder and record again":
    "tantas filas no se han medido que la fase no se evalúa; compare con el registrador y registre de nuevo",
  "these rows count as logged; compare them with the recorder":
    "estas filas cuentan tal como se registraron; compárelas con el registrador",
  "The {1} repeats one value to the last digit in {2} of rows ({3} of {4} rows, {5}), the longest {6} rows ({7}) of {8} from {9}; the recorder may have held its last value or gaps were filled, unless a regulated supply feeds the point; {10}.":
    "La serie {1} repite un valor hasta el último dígito en {2} de filas ({3} de {4} filas, {5}), el más largo de {6} filas ({7}) con {8} desde el {9}; puede que el registrador mantuviera su último valor o que se rellenaran lagunas, salvo que un suministro regulado alimente el punto; {10}.",
  "1 row does not stand in the order of time; that is harmless where a file was sorted or joined by hand, but may also mean that the recorder's clock was set back; the rows were put in order by their stamps, so check against the recorder that the stamps are right.":
    "1 fila no está en el orden temporal; es inofensivo cuando un archivo se ordenó o unió a mano, pero también puede significar que se atrasó el reloj del registrador; las filas se ordenaron por sus marcas de tiempo; compruebe en el registrador que las marcas son correctas.",
  "{1} rows do not stand in the order of time; that is harmless where a file was sorted or joined by hand, but may also mean that the recorder's clock was set back; the rows were put in order by their stamps, so check against the recorder that the stamps are right.":
    "{1} filas no están en el orden temporal; es inofensivo cuando un archivo se ordenó o unió a mano, pero también puede significar que se atrasó el reloj del registrador; las filas se ordenaron por sus marcas de tiempo; compruebe en el registrador que las marcas son correctas.",
  "{1} of {2} ten-minute intervals do not begin on a full ten minutes, the first at {3} ({4} s after the tick); the recorder counts from its own start or its clock is off, or the zone is not a multiple of ten minutes from UTC; values of two recorders then cover different times, so say so when you compare them.":
    "{1} de {2} intervalos de diez minutos no comienzan en una decena exacta de minutos, el primero el {3} ({4} s después de ella); el registrador cuenta desde su propio inicio o su reloj está desajustado, o la zona no dista de UTC un múltiplo de diez minutos; los valores de dos registradores abarcan entonces tiempos distintos; dígalo cuando los compare.",
  "one of them": "una de las dos magnitudes",
  "The median of {1} is {2} % but that of the root sum of the harmonics is {3} %, {4} times as much; {5} seems to be logged as a share of one instead of percent or the reverse; until that is settled it is not judged, so state the unit of these columns in the setup.":
    "La mediana de la serie {1} es {2} %, pero la de la raíz de la suma de los cuadrados de los armónicos es {3} %, es decir, {4} veces ese valor; parece registrada como fracción de uno en vez de en porcentaje, o al revés, la magnitud siguiente: {5}; hasta que se aclare no se evalúa; indique la unidad de estas columnas en la configuración.",
  "The logged {1} disagrees with the root sum of its harmonics{2} in {3} of {4} rows ({5}), most at {6} with {7} % logged and {8} % from the harmonics; the recorder may refer one to the declared voltage and the other to the fundamental, count other orders, or a column is not what it was taken for; check both columns in the setup before you rely on either.":
    "La serie registrada {1} no concuerda con la raíz de la suma de los cuadrados de sus armónicos{2} en {3} de {4} filas ({5}), lo máximo el {6} con {7} % registrado y {8} % a partir de los armónicos; puede que el registrador refiera uno a la tensión declarada y el otro a la fundamental, que cuente otros órdenes, o que una columna no sea aquello por lo que se tomó; compruebe ambas columnas en la configuración antes de fiarse de alguna.",
  " (not all orders are logged, so THD may only be higher)":
    " (no están registrados todos los órdenes, de modo que la THD solo puede ser mayor)",
  "The log does not say which end of its intervals the stamps mark; the {1} was assumed, so every time in this report may be off by one interval ({2}); give intervalLabel in the setup if you know it.":
    "Los datos no dicen qué extremo de sus intervalos señalan las marcas de tiempo; se supuso: {1}, por lo que todas las horas de este informe pueden estar desplazadas un intervalo ({2}); indique intervalLabel en la configuración si lo sabe.",
  start: "inicio",
  end: "final",
  "The stamps carry no offset and no zone was given; they were read as {1}, so every time in this report may be off by whole hours and a clock change would show as a gap or a repeated hour; give --zone.":
    "Las marcas de tiempo no llevan desfase y no se indicó zona; se leyeron como {1}, por lo que todas las horas de este informe pueden estar desplazadas en horas enteras y un cambio de hora se vería como una laguna o una hora repetida; indique --zone.",
};
