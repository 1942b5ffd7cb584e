import { describe, expect, it } from "vitest";
import { all, alone } from "./recognise-columns-support.js";

const HARMONIC_HEADERS: readonly ((order: number, phase: string) => string)[] = [
  (order, phase) => `Harmonic voltage ${phase} order ${order} [%]`,
  (order, phase) => `Voltage harmonic ${order} ${phase} (%)`,
  (order, phase) => `U ${phase} h${order} %`,
  (order, phase) => `H${String(order).padStart(2, "0")}_U_${phase} [%]`,
  (order, phase) => `Uh${order} ${phase} %`,
  (order, phase) => `U${phase}_H${order} [%]`,
  (order, phase) => `${phase} voltage, ${order}th harmonic, %`,
  (order, phase) => `${order}. Oberschwingung Spannung ${phase} [%]`,
  (order, phase) => `Spannungsoberschwingung ${phase} Ordnung ${order} in %`,
  (order, phase) => `Harmonische ${order}. Ordnung U ${phase} %`,
  (order, phase) => `Tension harmonique rang ${order} ${phase} (%)`,
  (order, phase) => `Harmonique ${order} de tension ${phase} (%)`,
  (order, phase) => `${order}ème harmonique tension ${phase} (%)`,
  (order, phase) => `Armonica ${order} tensione ${phase} (%)`,
  (order, phase) => `Tensione armonica di ordine ${order} ${phase} (%)`,
  (order, phase) => `Armónico ${order} tensión ${phase} (%)`,
  (order, phase) => `${order}º armónico de tensión ${phase} [%]`,
  (order, phase) => `Tensión armónica (n=${order}) ${phase} %`,
];

describe("harmonics", () => {
  it.each(HARMONIC_HEADERS.map((header) => [header(5, "L1"), header] as const))("%s", (_, header) => {
    for (const order of [1, 2, 3, 4, 5, 11, 12, 13, 21, 23, 31, 50]) {
      for (const phase of ["L1", "L2", "L3", "L1-L2"]) {
        const expected = `harmonic-voltage ${phase.replace("-L", "")} order ${order}, mean, %`;
        expect([header(order, phase), alone(header(order, phase))]).toEqual([header(order, phase), expected]);
      }
    }
  });

  it.each([
    ["I L1 h5 [A]", "harmonic-current L1 order 5, mean, A"],
    ["Current harmonic 7 L2 (mA) max", "harmonic-current L2 order 7, max, mA x 0.001 = A"],
    ["Oberschwingungsstrom N Ordnung 3 [A]", "harmonic-current N order 3, mean, A"],
    ["Ih11 L3 %", "harmonic-current L3 order 11, mean, %"],
    ["I2 h5 %", "harmonic-current L2 order 5, mean, %"],
    ["Grundschwingung U L1 [V]", "harmonic-voltage L1 order 1, mean, V"],
    ["Tension fondamentale L2 (V)", "harmonic-voltage L2 order 1, mean, V"],
    ["V1 harmonic 5 %", "harmonic-voltage L1 order 5, mean, %"],
    ["U12 h5 %", "harmonic-voltage L12 order 5, mean, %"],
    ["H5 U1N max %", "harmonic-voltage L1 order 5, max, %"],
    ["harmonic 3 U L1 10 min mean [V]", "harmonic-voltage L1 order 3, mean, V"],
    ["Interharmonic voltage 5 L1 %", "interharmonic-voltage L1 order 5, mean, %"],
    ["Zwischenharmonische U L2 Ordnung 0 [%]", "interharmonic-voltage L2 order 0, mean, %"],
    ["Interarmonica 7 tensione L3 %", "interharmonic-voltage L3 order 7, mean, %"],
    ["Uih4 L1 %", "interharmonic-voltage L1 order 4, mean, %"],
    ["U5 L1 %", "harmonic-voltage L1 order 5, mean, %"],
    ["h7 L1 %", "harmonic-voltage L1 order 7, mean, %"],
    ["Rang 7 V1 (%)", "harmonic-voltage L1 order 7, mean, %"],
    ["U L2 Ordnung 13 %", "harmonic-voltage L2 order 13, mean, %"],
    ["I3 ordine 5 (%)", "harmonic-current L3 order 5, mean, %"],
    ["h7 L1 [A]", "harmonic-current L1 order 7, mean, A"],
    ["h7 L1 [V]", "harmonic-voltage L1 order 7, mean, V"],
    ["U h5 L1 [% Un]", "unused: it is in % of declared, but the declared voltage is given phase to phase"],
  ])("%s: %s", (header, meaning) => {
    expect(alone(header, header.includes("Un") ? { declaredVoltage: 400, connection: "delta" } : {})).toBe(meaning);
  });

  it.each([
    ["U h L1 %", "it does not say which order"],
    ["U L1 h51 %", "orders 1 to 50 are used, not 51"],
    ["U L1 h0 %", "orders 1 to 50 are used, not 0"],
    ["Rang 7 V1 (V)", '"Rang 7" names an order, but neither a harmonic nor % is named with it'],
    ["Pst L1 ordre 7", '"ordre 7" names an order, which this quantity has not'],
    ["U L1 h3 h5 %", "it names more than one order: 3, 5"],
    ["Harmonic voltage %", "it does not say which order"],
    ["Harmonics U 1 2 %", "it does not say which number is the order"],
    ["U5 %", 'the number in "U5" is not explained'],
    ["U2 harmonic %", "it does not say which number is the order"],
    ["Harmonic power L1 h5 W", '"Harmonic" and "power": powers of single harmonics are not used'],
    ["Interharmonic current 5 L1 A", '"Interharmonic" and "current": interharmonic currents are not used'],
  ])("%s stays unused: %s", (header, reason) => {
    expect(alone(header)).toBe(`unused: ${reason}`);
  });

  it("are told from phases by the numbers that count on", () => {
    const orders = Array.from({ length: 50 }, (_, i) => i + 1);
    for (const write of [
      (n: number) => `U${n} L2 [%]`,
      (n: number) => `UL2_${n} [%]`,
      (n: number) => `U_L2-${n} [%]`,
      (n: number) => `U2 ${n} %`,
      (n: number) => `Harmonics U 2 ${n} [%]`,
    ]) {
      const log = [...orders.map(write), "U L1 [V]"];
      expect(all(log).slice(0, 50)).toEqual(orders.map((n) => `harmonic-voltage L2 order ${n}, mean, %`));
    }
  });

  it("need no phase in a single-phase log", () => {
    const orders = [1, 2, 3, 4, 5, 6, 7];
    expect(all(["U [V]", ...orders.map((n) => `U${n} [%]`)], { connection: "single" })).toEqual([
      "voltage L1, mean, V",
      ...orders.map((n) => `harmonic-voltage L1 order ${n}, mean, %`),
    ]);
  });

  it("are not what numbered feeders in volts are taken for", () => {
    const feeders = [1, 2, 3, 4, 5, 6, 7, 8].map((n) => `U${n} L1 [V]`);
    expect(new Set(all(feeders).map((text) => text.slice(0, 17)))).toEqual(new Set(["unused: the numbe"]));
  });

  it("and distortion without voltage or current are the voltage's only where no column speaks of a current", () => {
    expect(all(["THD L1 %", "h5 L1 %", "U L1 V"])).toEqual([
      "thd-voltage L1, mean, %",
      "harmonic-voltage L1 order 5, mean, %",
      "voltage L1, mean, V",
    ]);
    const unclear = "unused: it does not say whether of the voltage or of the current";
    expect(all(["THD L1 %", "h5 L1 %", "I L1 A"]).slice(0, 2)).toEqual([unclear, unclear]);
  });
});
