import { describe, expect, it } from "vitest";
import type { LoggedQuantity, Phase } from "../../../src/recording/quantity.js";
import { alone, WRITTEN_UNIT } from "./recognise-columns-support.js";

/**
 * Words as the national editions of IEC 61000-4-30 and EN 50160 and the International Electrotechnical Vocabulary
 * (IEC 60050-161, -601) use them, from memory, and short forms that are common practice without a source.
 */
const QUANTITY_WORDS: Readonly<Record<string, Partial<Record<LoggedQuantity, readonly string[]>>>> = {
  English: {
    voltage: ["Voltage", "U", "V", "Vrms", "r.m.s. voltage", "Supply voltage"],
    current: ["Current", "I", "Irms"],
    "thd-voltage": ["THD U", "THDV", "UTHD", "Voltage THD", "Total harmonic distortion of voltage", "THD-F voltage"],
    "thd-current": ["THD I", "ITHD", "Current THD", "Total harmonic distortion current"],
    pst: ["Pst", "Short-term flicker severity", "Flicker Pst"],
    plt: ["Plt", "Long term flicker", "Flicker severity Plt"],
    "active-power": ["Active power", "P", "Real power"],
    "reactive-power": ["Reactive power", "Q"],
    "apparent-power": ["Apparent power", "S"],
    "power-factor": ["Power factor", "PF", "True power factor", "P.F.", "λ"],
    "mains-signalling": ["Mains signalling voltage", "Ripple control signaling voltage"],
  },
  German: {
    voltage: ["Spannung", "Netzspannung", "Phasenspannung", "Spannungseffektivwert", "Versorgungsspannung"],
    current: ["Strom", "Leiterstrom", "Stromeffektivwert"],
    "thd-voltage": ["THD Spannung", "Gesamtoberschwingungsgehalt Spannung", "Gesamtverzerrung U", "THD_U"],
    "thd-current": ["THD Strom", "Oberschwingungsgehalt Strom"],
    pst: ["Kurzzeitflicker", "Kurzzeit-Flickerstärke", "Flicker kurz"],
    plt: ["Langzeitflicker", "Langzeit-Flickerstärke", "Flicker lang"],
    "active-power": ["Wirkleistung"],
    "reactive-power": ["Blindleistung"],
    "apparent-power": ["Scheinleistung"],
    "power-factor": ["Leistungsfaktor"],
    "mains-signalling": ["Rundsteuersignal", "Signalspannung"],
  },
  French: {
    voltage: ["Tension", "Tension efficace", "Tension du réseau"],
    current: ["Courant", "Intensité", "Courant efficace"],
    "thd-voltage": ["THD tension", "Taux de distorsion harmonique de tension", "Distorsion harmonique totale tension"],
    "thd-current": ["THD courant", "Taux de distorsion harmonique en courant"],
    pst: ["Flicker courte durée", "Papillotement de courte durée", "Sévérité du papillotement Pst"],
    plt: ["Flicker longue durée", "Papillotement de longue durée"],
    "active-power": ["Puissance active"],
    "reactive-power": ["Puissance réactive"],
    "apparent-power": ["Puissance apparente"],
    "power-factor": ["Facteur de puissance"],
    "mains-signalling": ["Tension de signalisation"],
  },
  Italian: {
    voltage: ["Tensione", "Tensione efficace", "Tensione di rete"],
    current: ["Corrente", "Corrente efficace", "Intensità"],
    "thd-voltage": ["THD tensione", "Distorsione armonica totale della tensione"],
    "thd-current": ["THD corrente", "Distorsione armonica totale di corrente"],
    pst: ["Flicker di breve termine", "Severità del flicker a breve termine"],
    plt: ["Flicker di lungo termine", "Severità del flicker a lungo termine"],
    "active-power": ["Potenza attiva"],
    "reactive-power": ["Potenza reattiva"],
    "apparent-power": ["Potenza apparente"],
    "power-factor": ["Fattore di potenza"],
    "mains-signalling": ["Tensione di segnalazione"],
  },
  Spanish: {
    voltage: ["Tensión", "Voltaje", "Tensión eficaz", "Tensión de red"],
    current: ["Corriente", "Intensidad", "Corriente eficaz"],
    "thd-voltage": ["THD tensión", "Tasa de distorsión armónica de tensión", "Distorsión armónica total del voltaje"],
    "thd-current": ["THD corriente", "Distorsión armónica total de corriente"],
    pst: ["Flicker de corta duración", "Parpadeo de corto plazo"],
    plt: ["Flicker de larga duración", "Parpadeo de largo plazo"],
    "active-power": ["Potencia activa"],
    "reactive-power": ["Potencia reactiva"],
    "apparent-power": ["Potencia aparente"],
    "power-factor": ["Factor de potencia"],
    "mains-signalling": ["Tensión de señalización"],
  },
};

const STATISTIC_WORDS: Readonly<Record<string, Readonly<Record<"mean" | "min" | "max", readonly string[]>>>> = {
  English: { mean: ["", "avg", "mean", "Average"], min: ["min", "minimum"], max: ["max", "Maximum"] },
  German: {
    mean: ["Mittelwert", "Mittel", "Durchschnitt"],
    min: ["Min", "Minimalwert", "Kleinstwert"],
    max: ["Max.", "Maximalwert", "Höchstwert"],
  },
  French: { mean: ["moy", "moyenne", "val. moyen"], min: ["min", "minimale"], max: ["max", "maximale"] },
  Italian: { mean: ["media", "medio", "valore medio"], min: ["minima", "min"], max: ["massima", "massimo"] },
  Spanish: { mean: ["media", "promedio", "valor medio"], min: ["mínima", "mín"], max: ["máxima", "máx"] },
};

const SINGLE: Readonly<Partial<Record<Phase, readonly string[]>>> = {
  L1: ["L1", "L1-N", "L1N", "AN", "phase 1", "fase 1", "Leiter 1", "Ph. A", "(L1)"],
  L2: ["L2", "L2/N", "phase B", "fase S", "L 2"],
  L3: ["L3", "L-3", "CN", "Phase T", "phase #3", "L03"],
};
const PAIR: Readonly<Partial<Record<Phase, readonly string[]>>> = {
  L12: ["L1-L2", "L1L2", "L12", "AB", "A-B", "RS", "L1 L2", "phase 1-2", "L2-L1"],
  L23: ["L2-L3", "BC", "ST", "S-T", "L2/L3", "Phase B-C"],
  L31: ["L3-L1", "L31", "TR", "T-R", "L1-L3"],
};
const TOTAL: Readonly<Partial<Record<Phase, readonly string[]>>> = { system: ["", "total", "Σ", "gesamt", "totale"] };

function phasesOf(quantity: LoggedQuantity): Readonly<Partial<Record<Phase, readonly string[]>>> {
  if (quantity.endsWith("-power") || quantity === "power-factor") return { ...SINGLE, ...TOTAL };
  return quantity.endsWith("current") ? SINGLE : { ...SINGLE, ...PAIR };
}

const ORDERS_OF_WORDS: readonly ((quantity: string, phase: string, statistic: string, unit: string) => string)[] = [
  (quantity, phase, statistic, unit) => `${quantity} ${phase} ${statistic} [${unit}]`,
  (quantity, phase, statistic, unit) => `${statistic} ${quantity} ${phase} (${unit})`,
  (quantity, phase, statistic, unit) => `${phase} ${quantity} ${statistic} in ${unit}`,
  (quantity, phase, statistic, unit) => `${quantity}_${phase}_${statistic} / ${unit}`,
];

describe.each(Object.keys(QUANTITY_WORDS))("headers in %s words", (language) => {
  const quantities = Object.entries(QUANTITY_WORDS[language] ?? {}) as [LoggedQuantity, readonly string[]][];
  const statistics = Object.entries(STATISTIC_WORDS[language] ?? {});

  /** Every word with every phase form, statistic words and word orders in turn. */
  const cases = quantities.flatMap(([quantity, words]) =>
    words.flatMap((word) =>
      Object.entries(phasesOf(quantity)).flatMap(([phase, forms]) =>
        forms.flatMap((form, which) =>
          statistics.map(([statistic, said]) => {
            const turn = which + word.length;
            const write = ORDERS_OF_WORDS[turn % ORDERS_OF_WORDS.length] as (typeof ORDERS_OF_WORDS)[number];
            const unit = WRITTEN_UNIT[quantity];
            const header = write(word, form, said[turn % said.length] ?? "", unit)
              .replace(/\s+/g, " ")
              .trim();
            const where = phase === "system" ? "" : ` ${phase}`;
            return { header, meaning: `${quantity}${where}, ${statistic}, ${unit}` };
          }),
        ),
      ),
    ),
  );

  it(`are understood (${cases.length} headers)`, () => {
    const wrong = cases
      .map(({ header, meaning }) => ({ header, meaning, found: alone(header) }))
      .filter(({ meaning, found }) => found !== meaning);
    expect(cases.length).toBeGreaterThan(200);
    expect(wrong).toEqual([]);
  });
});
