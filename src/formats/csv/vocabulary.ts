import { type Sentence, say } from "../../sentence.js";

/**
 * The words that column headers are written in: English, German, French, Italian and Spanish words of the trade
 * and of the standards (IEC 61000-4-30, -4-7, -4-15, EN 50160, IEEE 1459), lower case without accents.
 * Common practice, no source: which words and short forms headers use.
 */

/** What a word says. Single-letter symbols (U, V, I, f …) are read by their place in the header, not here. */
const SENSES = {
  voltage: `voltage voltages spannung spannungen phasenspannung netzspannung versorgungsspannung tension tensions
    tensiones tensione tensioni voltaje voltajes`,
  current: `current currents strom strome stroeme phasenstrom leiterstrom courant courants intensite corrente correnti
    intensita corriente corrientes intensidad`,
  frequency: `frequency freq frequenz netzfrequenz frequence frequenza frecuencia`,
  power: `power leistung puissance potenza potencia`,
  active: `active activa attiva attivo activo real wirk`,
  reactive: `reactive reactiva reattiva reactivo reattivo blind`,
  apparent: `apparent apparente aparente schein`,
  factor: `factor faktor facteur fattore`,
  "power-factor": `pf lambda leistungsfaktor`,
  distortion: `thd thdf thdg thds distortion distorsion distorsione verzerrung verzerrungsgehalt
    oberschwingungsgehalt gesamtverzerrung gesamtoberschwingungsgehalt`,
  harmonic: `harmonic harmonics harm oberschwingung oberschwingungen oberwelle oberwellen harmonische harmonischen
    harmonique harmoniques armonica armoniche armonico armonici armonicas armonicos`,
  interharmonic: `interharmonic interharmonics zwischenharmonische zwischenharmonischen interharmonische
    interharmonischen interharmonique interharmoniques interarmonica interarmoniche interarmonico interarmonici
    interarmonicas interarmonicos`,
  fundamental: `fundamental fund grundschwingung fondamental fondamentale`,
  order: `order ordnung ordnungszahl rang ordre ordine orden`,
  pst: `pst`,
  plt: `plt`,
  flicker: `flicker papillotement parpadeo sfarfallio`,
  "short-term": `short kurz kurzzeit courte court corta corto breve`,
  "long-term": `long lang langzeit longue larga largo lunga lungo`,
  unbalance: `unbalance imbalance asymmetry unsymmetrie asymmetrie schieflast desequilibre squilibrio dissimmetria
    asimmetria desequilibrio asimetria vuf`,
  "negative-sequence": `negative neg inverse gegensystem inversa inverso negativa`,
  "zero-sequence": `zero nullsystem homopolaire omopolare homopolar`,
  "positive-sequence": `positive pos directe direct mitsystem diretta directa`,
  signalling: `signalling signaling rundsteuerung rundsteuersignal ripple telecommande signalspannung signalisation segnalazione senalizacion`,
  flag: `flag flags flagged flagging markierung markiert gekennzeichnet marque marquage contrassegno contrassegnato
    marcado marcada`,
  phase: `phase phases ph leiter aussenleiter strang fase fasi fases line lines ligne linea linee lineas`,
  neutral: `neutral neutralleiter neutre neutro`,
  earth: `earth ground gnd pe erde terre terra tierra`,
  "line-to-line": `ll verkettet verkettete leiterspannung aussenleiterspannung dreieckspannung composee concatenata
    concatenate compuesta compuestas`,
  "line-to-neutral": `ln sternspannung strangspannung simple stellata stellate`,
  total: `total totale totali totaux tot gesamt ges summe sum somme somma suma system systeme sistema three dreiphasig
    triphase triphasee trifase trifasica trifasico`,
  mean: `mean avg average mittel mittelwert mittl durchschnitt durchschnittswert moy moyen moyenne med media medio promedio prom`,
  min: `min mini minimum minimal minimalwert minimale minimo minima kleinstwert`,
  max: `max maxi maximum maximal maximalwert maximale massimo massima maximo maxima hochstwert hoechstwert grosstwert`,
  declared: `nominal nominale nominaux declared declaree rated nenn nennspannung nennwert nominell un uc udin unom vnom`,
  channel: `channel chan ch kanal voie canal canale`,
  noise: `rms trms true eff effektiv effektivwert efficace efficaci eficaz eficaces value values val wert werte valeur valeurs
    valor valores valore valori of the der des die das von vom zu zur zum de la le les du d l el los las del di dei della
    dello il lo al a to and und et y e gegen entre tra between in per en par mains supply netz reseau rete red
    versorgung alimentation alimentazione alimentacion ac ca wechsel sequence sequenz sequenza secuencia component
    komponente composante componente ratio rate level pegel niveau livello nivel taux tasso tasa gehalt grad degre
    severity severite severita severidad starke staerke term duree durata duracion termine plazo terme index indice
    interval intervall intervalle intervallo intervalo period aggregated no nr num numero electric electrical group
    subgroup control centralisee lv mv hv iec cei zwischen according selon nach norm norme`,
} as const;

export type Sense = keyof typeof SENSES;

/** Words that tell that a column is none of the quantities used here, with the reason shown to the user. */
const LEFT_OUT: readonly (readonly [reason: Sentence, words: string])[] = [
  [
    say`a peak value is not an r.m.s. value`,
    "peak crest spitze spitzenwert scheitel scheitelwert crete pico picco cresta pk",
  ],
  [say`an angle is not used`, "angle angles winkel phasenwinkel angolo angulo sfasamento dephasage desfase phi"],
  [
    say`energy is not power`,
    "energy energie energia arbeit wirkarbeit blindarbeit wirkenergie blindenergie scheinenergie wh kwh mwh varh kvarh vah kvah",
  ],
  [say`temperature is not used`, "temperature temp temperatur temperatura"],
  [say`humidity is not used`, "humidity feuchte luftfeuchte feuchtigkeit luftfeuchtigkeit humidite umidita humedad"],
  [
    say`it speaks of the instrument, not of the supply`,
    "battery batterie akku bateria batteria memory speicher memoire memoria firmware serial seriennummer uptime fan",
  ],
  [
    say`direct voltage and current are not used`,
    "dc gleich gleichspannung gleichstrom continu continue continua offset",
  ],
  [
    say`a deviation or difference is not the value itself`,
    "change changes anderung aenderung variation variations variazione variazioni variacion deviation abweichung ecart deviazione scarto desviacion difference differenz delta drift rocof",
  ],
  [
    say`a limit or setting is not a measured value`,
    "limit grenze grenzwert limite threshold schwelle schwellwert seuil soglia umbral setpoint sollwert consigne alarm alarme allarme alarma",
  ],
  [
    say`a statistic other than mean, minimum or maximum is not used`,
    "median percentile perzentil quantil quantile centile percentil percentile std stdev sigma variance cp95 p95 p99 p5",
  ],
  [
    say`counts and events are read from event logs, not from series`,
    "count counter anzahl zahler zaehler nombre compteur conteggio contatore conteo contador events event dip dips swell swells interruption einbruch einbruche uberhohung creux surtension buco huecos hueco rvc",
  ],
  [
    say`the displacement factor (cos phi) is not the power factor`,
    "cos cosphi cosfi coseno cosinus dpf verschiebungsfaktor wirkfaktor displacement",
  ],
  [say`tan phi is not used`, "tan tanphi tanfi"],
  [
    say`a momentary value does not stand for the interval`,
    "instantaneous inst momentan momentanwert instantane instantanee istantaneo istantanea instantaneo instantanea",
  ],
  [
    say`a distortion relative to the whole r.m.s. value or to the demand is not the total harmonic distortion of EN 50160`,
    "thdr klirrfaktor tdd pwhd thdn sinad",
  ],
  [say`it is not used here`, "kfactor resistance impedance widerstand impedanz impedancia impedenza"],
];

const senses = new Map<string, Sense>();
for (const [sense, words] of Object.entries(SENSES)) {
  for (const word of words.split(/\s+/)) senses.set(word, sense as Sense);
}
const leftOut = new Map<string, Sentence>();
for (const [reason, words] of LEFT_OUT) {
  for (const word of words.split(/\s+/)) leftOut.set(word, reason);
}

/** What a lower-case word without accents says; undefined if it is not in the table. */
export function senseOf(word: string): Sense | undefined {
  return senses.get(word);
}

/** Why a column with this word is left out; undefined if the word is no such word. */
export function leftOutBecause(word: string): Sentence | undefined {
  return leftOut.get(word);
}

/**
 * A word made of known words, as German writes them ("Spannungsmittelwert", "Stromoberschwingung") and as headers
 * glue them ("voltagemin"). Parts have at least three letters; one linking "s", "n" or "en" may stand between.
 * @returns the parts in order, or undefined if the word cannot be divided without remainder.
 */
export function compoundParts(word: string): readonly string[] | undefined {
  for (let end = word.length - 3; end >= 3; end--) {
    const head = word.slice(0, end);
    if (!senses.has(head) && !leftOut.has(head)) continue;
    const rest = word.slice(end);
    for (const link of ["", "s", "n", "en"]) {
      if (!rest.startsWith(link)) continue;
      const tail = rest.slice(link.length);
      if (senses.has(tail) || leftOut.has(tail)) return [head, tail];
      const parts = tail.length >= 6 ? compoundParts(tail) : undefined;
      if (parts) return [head, ...parts];
    }
  }
  return undefined;
}

/** The text with compatibility forms and accents resolved and the letters of the trade spelled out; case is kept. */
export function plain(text: string): string {
  return text
    .replace(/[Øø⌀]/g, " avg ")
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .replace(/ß/g, "ss")
    .replace(/[Σ∑]/g, " sum ")
    .replace(/[φϕΦ]/g, "phi")
    .replace(/λ/g, " lambda ")
    .replace(/[‐‑‒–—−]/g, "-");
}
