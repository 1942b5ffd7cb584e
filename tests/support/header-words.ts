import type { LoggedQuantity, Phase } from "../../src/recording/quantity.js";
import type { Language } from "./dialect.js";
import type { LogColumn } from "./log-table.js";

/**
 * Header words of the trade in five languages, as the national editions of IEC 61000-4-30 and the International
 * Electrotechnical Vocabulary (IEC 60050-161, -601) use them; from memory.
 */
interface Words {
  readonly stamp: string;
  readonly date: string;
  readonly time: string;
  readonly flag: string;
  readonly order: string;
  readonly total: string;
  readonly statistic: Readonly<Record<LogColumn["statistic"], string>>;
  readonly quantity: Readonly<Record<LoggedQuantity, string>>;
}

const WORDS: Readonly<Record<Language, Words>> = {
  en: {
    stamp: "Time",
    date: "Date",
    time: "Time",
    flag: "Flag",
    order: "order",
    total: "total",
    statistic: { mean: "mean", min: "min", max: "max" },
    quantity: {
      voltage: "Voltage",
      current: "Current",
      frequency: "Frequency",
      "thd-voltage": "THD voltage",
      "thd-current": "THD current",
      "harmonic-voltage": "Harmonic voltage",
      "harmonic-current": "Harmonic current",
      "interharmonic-voltage": "Interharmonic voltage",
      "mains-signalling": "Mains signalling voltage",
      pst: "Pst",
      plt: "Plt",
      "negative-sequence-unbalance": "Unbalance u2",
      "zero-sequence-unbalance": "Unbalance u0",
      "active-power": "Active power",
      "reactive-power": "Reactive power",
      "apparent-power": "Apparent power",
      "power-factor": "Power factor",
    },
  },
  de: {
    stamp: "Zeitstempel",
    date: "Datum",
    time: "Uhrzeit",
    flag: "Flag",
    order: "Ordnung",
    total: "gesamt",
    statistic: { mean: "Mittelwert", min: "Minimum", max: "Maximum" },
    quantity: {
      voltage: "Spannung",
      current: "Strom",
      frequency: "Frequenz",
      "thd-voltage": "THD Spannung",
      "thd-current": "THD Strom",
      "harmonic-voltage": "Oberschwingungsspannung",
      "harmonic-current": "Oberschwingungsstrom",
      "interharmonic-voltage": "Zwischenharmonische Spannung",
      "mains-signalling": "Signalspannung",
      pst: "Kurzzeitflicker Pst",
      plt: "Langzeitflicker Plt",
      "negative-sequence-unbalance": "Unsymmetrie u2",
      "zero-sequence-unbalance": "Unsymmetrie u0",
      "active-power": "Wirkleistung",
      "reactive-power": "Blindleistung",
      "apparent-power": "Scheinleistung",
      "power-factor": "Leistungsfaktor",
    },
  },
  fr: {
    stamp: "Horodatage",
    date: "Date",
    time: "Heure",
    flag: "Marquage",
    order: "rang",
    total: "total",
    statistic: { mean: "moyenne", min: "minimum", max: "maximum" },
    quantity: {
      voltage: "Tension",
      current: "Courant",
      frequency: "Fréquence",
      "thd-voltage": "THD tension",
      "thd-current": "THD courant",
      "harmonic-voltage": "Tension harmonique",
      "harmonic-current": "Courant harmonique",
      "interharmonic-voltage": "Tension interharmonique",
      "mains-signalling": "Tension de signalisation",
      pst: "Pst",
      plt: "Plt",
      "negative-sequence-unbalance": "Déséquilibre inverse u2",
      "zero-sequence-unbalance": "Déséquilibre homopolaire u0",
      "active-power": "Puissance active",
      "reactive-power": "Puissance réactive",
      "apparent-power": "Puissance apparente",
      "power-factor": "Facteur de puissance",
    },
  },
  it: {
    stamp: "Data e ora",
    date: "Data",
    time: "Ora",
    flag: "Flag",
    order: "ordine",
    total: "totale",
    statistic: { mean: "media", min: "minimo", max: "massimo" },
    quantity: {
      voltage: "Tensione",
      current: "Corrente",
      frequency: "Frequenza",
      "thd-voltage": "THD tensione",
      "thd-current": "THD corrente",
      "harmonic-voltage": "Tensione armonica",
      "harmonic-current": "Corrente armonica",
      "interharmonic-voltage": "Tensione interarmonica",
      "mains-signalling": "Tensione di segnalazione",
      pst: "Pst",
      plt: "Plt",
      "negative-sequence-unbalance": "Squilibrio inverso u2",
      "zero-sequence-unbalance": "Squilibrio omopolare u0",
      "active-power": "Potenza attiva",
      "reactive-power": "Potenza reattiva",
      "apparent-power": "Potenza apparente",
      "power-factor": "Fattore di potenza",
    },
  },
  es: {
    stamp: "Fecha y hora",
    date: "Fecha",
    time: "Hora",
    flag: "Flag",
    order: "orden",
    total: "total",
    statistic: { mean: "media", min: "mínimo", max: "máximo" },
    quantity: {
      voltage: "Tensión",
      current: "Corriente",
      frequency: "Frecuencia",
      "thd-voltage": "THD tensión",
      "thd-current": "THD corriente",
      "harmonic-voltage": "Tensión armónica",
      "harmonic-current": "Corriente armónica",
      "interharmonic-voltage": "Tensión interarmónica",
      "mains-signalling": "Tensión de señalización",
      pst: "Pst",
      plt: "Plt",
      "negative-sequence-unbalance": "Desequilibrio inverso u2",
      "zero-sequence-unbalance": "Desequilibrio homopolar u0",
      "active-power": "Potencia activa",
      "reactive-power": "Potencia reactiva",
      "apparent-power": "Potencia aparente",
      "power-factor": "Factor de potencia",
    },
  },
};

const POWERS: readonly LoggedQuantity[] = ["active-power", "reactive-power", "apparent-power"];
const SINGLE_VALUED: readonly LoggedQuantity[] = ["pst", "plt"];

/** The header of a column in two parts: what and where; statistic and order. The unit is not in it. */
export function headerOf(column: LogColumn, language: Language): { readonly upper: string; readonly lower: string } {
  const words = WORDS[language];
  const where = phaseText(column.phase) ?? (POWERS.includes(column.quantity) ? words.total : undefined);
  const lower = [
    ...(column.order === undefined ? [] : [`${words.order} ${column.order}`]),
    ...(SINGLE_VALUED.includes(column.quantity) ? [] : [words.statistic[column.statistic]]),
  ];
  return {
    upper: where === undefined ? words.quantity[column.quantity] : `${words.quantity[column.quantity]} ${where}`,
    lower: lower.join(" "),
  };
}

export function stampHeaders(language: Language, columns: 1 | 2): readonly string[] {
  const words = WORDS[language];
  return columns === 1 ? [words.stamp] : [words.date, words.time];
}

export function flagHeader(language: Language): string {
  return WORDS[language].flag;
}

/** L12 is written L1-L2; a quantity of the whole system has no phase. */
function phaseText(phase: Phase): string | undefined {
  if (phase === "system") return undefined;
  return phase.length === 3 ? `L${phase[1]}-L${phase[2]}` : phase;
}
