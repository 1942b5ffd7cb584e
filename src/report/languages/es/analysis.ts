/** Sentences on measuring and deriving. */
export const analysis: Readonly<Record<string, string>> = {
  "THD on {1} is computed here from the logged harmonics 2 to {2}, where it was not logged.":
    "La THD en {1} se calcula aquí a partir de los armónicos registrados 2 a {2}, donde no se registró.",
  "THD on {1} is computed here from the logged harmonics 2 to {2}.":
    "La THD en {1} se calcula aquí a partir de los armónicos registrados 2 a {2}.",
  "THD was not logged on {1}, and it needs all harmonics from 2 to {2}; the log holds {3} of these {4}.":
    "La THD no se registró en {1}, y requiere todos los armónicos de 2 a {2}; los datos contienen {3} de estos {4}.",
  "u2 is computed here from the three phase-to-phase voltages (IEC 61000-4-30, r.m.s. formula), where it was not logged.":
    "u2 se calcula aquí a partir de las tres tensiones entre fases (IEC 61000-4-30, fórmula de valores eficaces), donde no se registró.",
  "u2 is computed here from the three phase-to-phase voltages (IEC 61000-4-30, r.m.s. formula).":
    "u2 se calcula aquí a partir de las tres tensiones entre fases (IEC 61000-4-30, fórmula de valores eficaces).",
  "Unbalance was not logged, and it cannot be computed without all three phase-to-phase voltages.":
    "El desequilibrio no se registró, y no puede calcularse sin las tres tensiones entre fases.",
  "The harmonics on {1} are in volts, and neither the fundamental (order 1) nor the voltage was logged beside them, so their share of the fundamental is not known.":
    "Los armónicos en {1} están en voltios, y junto a ellos no se registró ni la fundamental (orden 1) ni la tensión, por lo que no se conoce su proporción respecto de la fundamental.",
  "Harmonics on {1} are logged in volts; here in % of the logged fundamental.":
    "Los armónicos en {1} están registrados en voltios; aquí en % de la fundamental registrada.",
  "Harmonics on {1} are logged in volts; here in % of the fundamental that remains of the r.m.s. voltage without its harmonics.":
    "Los armónicos en {1} están registrados en voltios; aquí en % de la fundamental que queda del valor eficaz de la tensión sin sus armónicos.",
  "The waveforms of the log last {1} s of {2} d; events are taken from them, interval values only from what was logged.":
    "Las formas de onda de los datos duran {1} s de {2} d; de ellas se toman los eventos; los valores de intervalo, solo de lo registrado.",
  "Plt is computed here from the logged ten-minute Pst, over the two-hour blocks of the UTC clock.":
    "Plt se calcula aquí a partir de los Pst de diez minutos registrados, en los bloques de dos horas del reloj UTC.",
  "It was logged every {1}; the standard counts values of {2}, which cannot be made from that.":
    "Se registró cada {1}; la norma cuenta valores de {2}, que no pueden obtenerse de ello.",
  "Plt was logged every {1}; each two-hour block without ten-minute Pst takes the value of its last row.":
    "Plt se registró cada {1}; cada bloque de dos horas sin Pst de diez minutos toma el valor de su última fila.",
  "root of the mean square": "raíz de la media de los cuadrados",
  "arithmetic mean": "media aritmética",
  "{1}: values of {2} combined to {3} on the clock ({4}).":
    "{1}: valores de {2} combinados en {3} según el reloj ({4}).",
  "No unbroken stretch of the recording holds a basic window (10 cycles at 50 Hz, 12 at 60 Hz), so nothing was measured over windows.":
    "Ningún tramo sin interrupción del registro contiene una ventana básica (10 ciclos a 50 Hz, 12 a 60 Hz), por lo que no se midió nada por ventanas.",
  "Pst and Plt are for the {1} V lamp at {2} Hz. The first {3} s after the start and after each gap are left out, because the flickermeter settles.":
    "Pst y Plt valen para la lámpara de {1} V a {2} Hz. Se omiten los primeros {3} s tras el inicio y tras cada laguna, porque el medidor de flicker se estabiliza.",
  "No ten minutes of the clock were recorded without a gap after the first {1} s, in which the flickermeter settles.":
    "No se registraron diez minutos del reloj sin laguna tras los primeros {1} s, en los que el medidor de flicker se estabiliza.",
  "The highest Plt over any twelve Pst in a row is {1} on {2}, from {3}. It is for information; the two-hour blocks of the clock are judged.":
    "El mayor Plt de doce Pst consecutivos cualesquiera es {1} en {2}, desde el {3}. Es informativo; se evalúan los bloques de dos horas del reloj.",
  "Harmonics are measured to order {1} only: with {2} samples per second the recording shows nothing sound above {3} Hz. Higher orders are absent, not zero.":
    "Los armónicos se miden solo hasta el orden {1}: con {2} muestras por segundo el registro no muestra nada fiable por encima de {3} Hz. Los órdenes superiores faltan; no son cero.",
  "THD needs all harmonics from 2 to {1}; with {2} samples per second they are measured to order {3}.":
    "La THD requiere todos los armónicos de 2 a {1}; con {2} muestras por segundo se miden hasta el orden {3}.",
  "inrush currents": "corrientes de arranque",
  "Mains signalling at {1} Hz cannot be measured: with {2} samples per second the recording shows nothing sound above {3} Hz.":
    "La señal transmitida por la red a {1} Hz no puede medirse: con {2} muestras por segundo el registro no muestra nada fiable por encima de {3} Hz.",
  "Reactive power is that of the fundamental (Q1 of IEEE 1459).":
    "La potencia reactiva es la de la fundamental (Q1 de IEEE 1459).",
  "Power needs the voltage to neutral and the current of a phase, or three phase-to-phase voltages and the currents.":
    "La potencia requiere la tensión fase-neutro y la corriente de una fase, o tres tensiones entre fases y las corrientes.",
  "rapid voltage changes": "variaciones rápidas de tensión",
  "{1} more transients are not listed; the first {2} are.":
    "{1} transitorios más no figuran en la lista; figuran los primeros {2}.",
  "Unbalance needs three voltages, phase to neutral or phase to phase.":
    "El desequilibrio requiere tres tensiones, fase-neutro o entre fases.",
  "The phases follow each other in the order L1, L3, L2: two voltages are exchanged, or one is inverted. Exchange them in the setup.":
    "Las fases se suceden en el orden L1, L3, L2: dos tensiones están intercambiadas o una está invertida. Intercámbielas en la configuración.",
  "The half-cycle values around them were kept for the {1} most severe of {2} {3}.":
    "Los valores de semiciclo alrededor de ellos se conservaron para los {1} casos más severos de {2}: {3}.",
  "The waveform around them was kept for the {1} most severe of {2} {3}.":
    "La forma de onda alrededor de ellos se conservó para los {1} casos más severos de {2}: {3}.",
  "dips, swells and interruptions": "huecos de tensión, sobretensiones temporales e interrupciones",
};
