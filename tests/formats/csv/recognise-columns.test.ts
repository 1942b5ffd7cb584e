import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { LogError, UsageError } from "../../../src/errors.js";
import type { LoggedQuantity, Phase } from "../../../src/recording/quantity.js";
import { headerOf } from "../../support/header-words.js";
import { all, alone, recognise, WRITTEN_UNIT } from "./recognise-columns-support.js";

describe("bare symbols", () => {
  it.each([
    [["U1", "U2", "U3", "U12", "U23", "U31", "I1 A", "I2 A", "I3 A", "IN A"], "L1 L2 L3 L12 L23 L31 L1 L2 L3 N"],
    [["UL1", "UL2", "UL3", "UL12", "UL23", "UL31"], "L1 L2 L3 L12 L23 L31"],
    [["V1N", "V2N", "V3N", "V1-V2", "V2-V3", "V3-V1"], "L1 L2 L3 L12 L23 L31"],
    [["Va", "Vb", "Vc", "Vab", "Vbc", "Vca"], "L1 L2 L3 L12 L23 L31"],
    [["Ua", "Ub", "Uc", "Uab", "Ubc", "Uca"], "L1 L2 L3 L12 L23 L31"],
    [["VA", "VB", "VC", "VAB", "VBC", "VAC"], "L1 L2 L3 L12 L23 L31"],
    [["UR", "US", "UT", "URS", "UST", "UTR"], "L1 L2 L3 L12 L23 L31"],
    [["UAN", "UBN", "UCN", "U A-B", "U B-C", "U C-A"], "L1 L2 L3 L12 L23 L31"],
    [["U A", "U B", "U C", "I A (A)", "I B (A)", "I C (A)", "I N (A)"], "L1 L2 L3 L1 L2 L3 N"],
    [["U (A)", "U (B)", "U (C)"], "L1 L2 L3"],
    [["U (1)", "U (2)", "U (3)"], "L1 L2 L3"],
    [["Ia [A]", "Ib [A]", "Ic [A]", "In [A]"], "L1 L2 L3 N"],
    [["P1 W", "P2 W", "P3 W", "Ptot W"], "L1 L2 L3 system"],
    [["Sa [VA]", "Sb [VA]", "Sc [VA]", "SΣ [VA]"], "L1 L2 L3 system"],
    [["Voltage 1", "Voltage 2", "Voltage 3", "Voltage 12", "Voltage 23", "Voltage 31"], "L1 L2 L3 L12 L23 L31"],
    [["U1 min", "U2 min", "U 3 min"], "L1 L2 L3"],
  ])("%j: %s", (headers, phases) => {
    expect(recognise(headers).map(({ meaning }) => meaning?.phase)).toEqual(phases.split(" "));
  });

  it("u2 and u0 in % are unbalances beside U1, U2, U3 in volts", () => {
    const unbalances = ["negative-sequence-unbalance, mean, %", "zero-sequence-unbalance, mean, %"];
    const volts = ["voltage L1, mean, V", "voltage L2, mean, V", "voltage L3, mean, V"];
    expect(all(["U1 [V]", "U2 [V]", "U3 [V]", "u2 [%]", "u0 [%]"])).toEqual([...volts, ...unbalances]);
    expect(all(["U1", "U2", "U3", "u2", "u0"])).toEqual([...volts, ...unbalances]);
    const unitsRow = ["U1", "U2", "U3"].map((header) => ({ header, unit: "V" }));
    const percent = ["U2", "U0"].map((header) => ({ header, unit: "%" }));
    expect(all([...unitsRow, ...percent])).toEqual([...volts, ...unbalances]);
    expect(all(["U2/U1 [%]", "U0/U1 [%]"])).toEqual(unbalances);
  });

  it.each([
    ["Voltage unbalance %", "negative-sequence-unbalance, mean, %"],
    ["Unbalance u2 max", "negative-sequence-unbalance, max, %"],
    ["Unbalance u0", "zero-sequence-unbalance, mean, %"],
    ["Unsymmetrie Gegensystem [%]", "negative-sequence-unbalance, mean, %"],
    ["Taux de déséquilibre inverse de tension (%)", "negative-sequence-unbalance, mean, %"],
    ["Déséquilibre homopolaire (%)", "zero-sequence-unbalance, mean, %"],
    ["Squilibrio di sequenza inversa (%)", "negative-sequence-unbalance, mean, %"],
    ["Desequilibrio de secuencia homopolar (%)", "zero-sequence-unbalance, mean, %"],
    ["Negative sequence voltage [%]", "negative-sequence-unbalance, mean, %"],
    ["Negative sequence voltage [V]", "unused: a sequence component is used only as unbalance in %"],
    ["Positive sequence voltage [V]", 'unused: "Positive": positive-sequence values are not used'],
    ["U0 [V]", "unused: U0 is used only as zero-sequence unbalance in %"],
    ["Unbalance U1 %", 'unused: the number in "U1" is not explained'],
    ["Current unbalance %", 'unused: "unbalance" and "Current": unbalance of the currents is not used'],
  ])("%s: %s", (header, meaning) => {
    expect(alone(header)).toBe(meaning);
  });
});

describe("hard headers", () => {
  it.each([
    ["Voltage_L1_Avg_V", "voltage L1, mean, V"],
    ["VoltageL1Avg[V]", "voltage L1, mean, V"],
    ["u_l1_min_v", "voltage L1, min, V"],
    ["i_l1_a", "current L1, mean, A"],
    ["thdUL1", "thd-voltage L1, mean, %"],
    ["THDUL1max(%)", "thd-voltage L1, max, %"],
    ["Urms L1 10-min avg (V)", "voltage L1, mean, V"],
    ["U L1 1 min mean [V]", "voltage L1, mean, V"],
    ["Plt 2h L1", "plt L1, mean, 1"],
    ["Pst 10min L2", "pst L2, mean, 1"],
    ["U L1 150/180 cycles [V]", "voltage L1, mean, V"],
    ["f 10 s [Hz]", "frequency, mean, Hz"],
    ["Netzfrequenz Max. [Hz]", "frequency, max, Hz"],
    ["Power frequency (mHz)", "frequency, mean, mHz x 0.001 = Hz"],
    ["Frequency L1 [Hz]", "frequency, mean, Hz"],
    ["L2 V", "voltage L2, mean, V"],
    ["L2 [A]", "current L2, mean, A"],
    ["kW L3", "active-power L3, mean, kW x 1000 = W"],
    ["kvar", "reactive-power, mean, kvar x 1000 = var"],
    ["VA L1", "apparent-power L1, mean, VA"],
    ["Leistung L1 [kW]", "active-power L1, mean, kW x 1000 = W"],
    ["Puissance [kVA]", "apparent-power, mean, kVA x 1000 = VA"],
    ["Außenleiterspannung L1-L2 [V]", "voltage L12, mean, V"],
    ["verkettete Spannung 23 (kV)", "voltage L23, mean, kV x 1000 = V"],
    ["Sternspannung L3 [V]", "voltage L3, mean, V"],
    ["Line-to-line voltage 1-2 [V]", "voltage L12, mean, V"],
    ["Phase-to-neutral voltage 2 [V]", "voltage L2, mean, V"],
    ["Tension composée U12 (V)", "voltage L12, mean, V"],
    ["Tensión de fase L2 (V)", "voltage L2, mean, V"],
    ["Tensione concatenata L3-L1 (V)", "voltage L31, mean, V"],
    ["Neutralleiterstrom max [A]", "current N, max, A"],
    ["Courant de neutre (A)", "current N, mean, A"],
    ["Voltage N-PE (V)", "voltage N, mean, V"],
    ["Ｕ Ｌ１ [V]", "voltage L1, mean, V"],
    ["U₁₂ [V]", "voltage L12, mean, V"],
    ["Ø Spannung L1 [V]", "voltage L1, mean, V"],
    ["ΣP [kW]", "active-power, mean, kW x 1000 = W"],
    ["Three-phase reactive power kvar", "reactive-power, mean, kvar x 1000 = var"],
    ["U L1 (r.m.s.) [V]", "voltage L1, mean, V"],
    ["Voltage between L1 and L2 [V]", "voltage L12, mean, V"],
    ["Tension entre phases 2 et 3 (V)", "voltage L23, mean, V"],
    ["L3 to L1 voltage [V]", "voltage L31, mean, V"],
    ["V(1-2)", "voltage L12, mean, V"],
    ["U L1 (1 min)", "voltage L1, mean, V"],
    ["VminL1", "voltage L1, min, V"],
    ["P_st L1", "pst L1, mean, 1"],
    ["P_lt_L2", "plt L2, mean, 1"],
    ["U L1 mV", "voltage L1, mean, mV x 0.001 = V"],
    ["MV voltage L1 [kV]", "voltage L1, mean, kV x 1000 = V"],
    ["Voltage L1 according to IEC 61000-4-30 [V]", "voltage L1, mean, V"],
    ["Rundsteuersignal 216.67 Hz L1 [%]", "mains-signalling L1, mean, %"],
    ["Ripple control voltage L1 [%]", "mains-signalling L1, mean, %"],
    ["A phase voltage [V]", "voltage L1, mean, V"],
    [
      '<img src=x onerror="alert(1)">',
      'unused: the word "img" is not known, so it is not certain what the column holds',
    ],
    ["Flag", "flag"],
    ["Marquage CEI 61000-4-30", "flag"],
  ])("%s: %s", (header, meaning) => {
    const samples = meaning === "flag" ? ["0", "1"] : ["231.4"];
    expect(alone({ header, samples })).toBe(meaning);
  });

  it.each([
    ["Spannung", "Strom", '"Spannung" and "Strom" contradict each other'],
    ["U L1", "kW", "the unit kW"],
    ["U L1 min", "max V", '"min" and "max" contradict each other'],
    ["U L1", "U L2 V", "it names more than one phase"],
    ["Leiterspannung", "L1 [V]", '"Leiterspannung" asks for a pair of phases, but "L1" names one'],
    ["Line voltage", "L1 [V]", '"Line voltage" asks for a pair of phases'],
    ["Phase-to-neutral", "U L1-L2 V", "contradict each other"],
    ["U total", "L1 V", '"total" and the phase "L1" contradict each other'],
    ["U L1-PE", "[V]", '"L1-PE" is a voltage to earth, not to neutral'],
    ["Neutral", "voltage [V]", "it does not say between which conductors"],
    ["Line-to-line", "voltage [V]", "it does not say between which two phases"],
    ["Mean phase", "voltage of the system [V]", "a value over all phases is not that of one phase"],
    ["Flicker", "L1", "it does not say whether short-term (Pst) or long-term (Plt)"],
    ["Power", "L1", "it does not say whether active, reactive or apparent power"],
    ["L1", "max", "it does not say which quantity it holds"],
    ["%", "", "it does not say which quantity it holds"],
    ["U4", "[V]", 'the number in "U4" is not explained'],
    ["Channel 1", "voltage L1 temperature", "temperature is not used"],
    ["Cabinet humidity", "[%]", '"humidity": humidity is not used'],
    ["Luftfeuchte", "(%)", '"Luftfeuchte": humidity is not used'],
    ["U L1", "peak V", "a peak value is not an r.m.s. value"],
    ["I crest", "L1 A", "a peak value is not an r.m.s. value"],
    ["Phase angle", "U L1", "an angle is not used"],
    ["U L1", "°", 'what the sign "°" means here is not known'],
    ["U+", "[V]", 'what the sign "+" means here is not known'],
    ["Active energy", "kWh", "energy is not power"],
    ["Wirkarbeit", "[kWh]", "energy is not power"],
    ["P", "[kWh]", 'no quantity used here has the unit "kWh"'],
    ["Batterie", "Spannung [V]", "it speaks of the instrument, not of the supply"],
    ["DC voltage", "[V]", "direct voltage and current are not used"],
    ["Voltage deviation", "L1 %", "a deviation or difference is not the value itself"],
    ["Grenzwert", "Spannung L1 V", "a limit or setting is not a measured value"],
    ["U L1", "95% [V]", "a statistic other than mean, minimum or maximum is not used"],
    ["U L1", "P95 V", "contradict each other"],
    ["Voltage dip", "count L1", "counts and events are read from event logs, not from series"],
    ["cos φ", "L1", "the displacement factor (cos phi) is not the power factor"],
    ["cosφ1", "", "the displacement factor (cos phi) is not the power factor"],
    ["tan phi", "", "tan phi is not used"],
    ["Momentanwert", "U L1 V", "a momentary value does not stand for the interval"],
    ["THD-R", "U L1 %", "a distortion relative to the whole r.m.s. value"],
    ["Klirrfaktor", "U L1 %", "a distortion relative to the whole r.m.s. value"],
    ["Nominal voltage", "[V]", "a nominal or declared value is not a measured one"],
    ["Un", "[V]", "a nominal or declared value is not a measured one"],
    ["U L1", "(mv)", 'the unit "mv" does not tell milli from mega'],
    ["Current L1", "phase 3 A", "it names more than one phase"],
    ["Us L1", "[V]", 'the word "s" is not known'],
    ["Signal", "175 Hz L1", "not known"],
    ["Voltage change", "L1 %", "a deviation or difference is not the value itself"],
    ["Active current", "L1 A", "contradict each other"],
  ])("%s %s stays unused: %s", (first, second, reason) => {
    expect(alone(`${first} ${second}`.trim())).toMatch(/^unused: /);
    expect(alone(`${first} ${second}`.trim())).toContain(reason);
  });

  it("an unknown word keeps a column out unless every column of its quantity has it", () => {
    expect(all(["U L1 Hof V", "U L2 Hof V", "f Hz"])).toEqual([
      "voltage L1, mean, V",
      "voltage L2, mean, V",
      "frequency, mean, Hz",
    ]);
    expect(all(["U L1 V", "U L2 foo V"])[1]).toBe(
      'unused: the word "foo" is not known, so it is not certain what the column holds',
    );
    expect(alone("U L1 Hof V")).toContain('the word "Hof" is not known');
    expect(String(recognise(["U L1 Hof V", "U L2 Hof V"])[0]?.reason)).toContain('"Hof" is taken for a mere name');
    expect(all(["U<sub>L1</sub> [V]", "U<sub>L2</sub> [V]"])[1]).toBe("voltage L2, mean, V");
    expect(all(["Feeder 3 U L1 V", "Feeder 3 U L2 V"])[1]).toBe("voltage L2, mean, V");
  });
});

describe("columns that name no phase", () => {
  it("are L1 where no column names a phase and none is like them", () => {
    expect(all(["U [V]", "U min [V]", "U max [V]", "I [A]", "THD U [%]", "Pst", "f [Hz]", "P [W]"])).toEqual([
      "voltage L1, mean, V",
      "voltage L1, min, V",
      "voltage L1, max, V",
      "current L1, mean, A",
      "thd-voltage L1, mean, %",
      "pst L1, mean, 1",
      "frequency, mean, Hz",
      "active-power, mean, W",
    ]);
    expect(String(recognise(["Voltage"])[0]?.reason)).toContain("L1: no column of the log names a phase");
  });

  it("stay unused beside columns that do, or beside others like them", () => {
    expect(all(["U L1 [V]", "U [V]"])[1]).toBe("unused: it does not say which phase");
    expect(all(["U [V]", "Spannung [V]"])[0]).toBe(
      "unused: it does not say which phase, nor does column 2, which says the same",
    );
  });

  it("may be means over the phases, unless the setup says single-phase or an extreme stands beside", () => {
    expect(alone("Uavg [V]")).toBe(
      "unused: it does not say which phase and may be a mean over the phases; say so in the setup (connection: single)",
    );
    expect(alone("Uavg [V]", { connection: "single" })).toBe("voltage L1, mean, V");
    expect(all(["Umean [V]", "Umin [V]", "Umax [V]"])).toEqual([
      "voltage L1, mean, V",
      "voltage L1, min, V",
      "voltage L1, max, V",
    ]);
  });

  it("of several frequencies that of the first phase stands", () => {
    expect(all(["f L2 [Hz]", "f L1 [Hz]", "f L1 max [Hz]"])).toEqual([
      "unused: frequency is one for all phases; that of L1 in column 2 is used",
      "frequency, mean, Hz",
      "frequency, max, Hz",
    ]);
  });
});

describe("whole logs", () => {
  it("headers of the demo logs are understood in all five languages", () => {
    const quantities = Object.keys(WRITTEN_UNIT) as LoggedQuantity[];
    for (const language of ["en", "de", "fr", "it", "es"] as const) {
      for (const quantity of quantities) {
        const isSystem = quantity === "frequency" || quantity.endsWith("unbalance");
        const order = /^(inter)?harmonic/.test(quantity) ? 5 : undefined;
        const phase: Phase = isSystem ? "system" : "L2";
        const parts = headerOf({ quantity, phase, order, statistic: "max", values: [] } as never, language);
        const found = alone({ header: `${parts.upper} ${parts.lower}`.trim(), unit: WRITTEN_UNIT[quantity] });
        const statistic = quantity === "pst" || quantity === "plt" ? "mean" : "max";
        const where = `${isSystem ? "" : " L2"}${order === undefined ? "" : ` order ${order}`}`;
        expect([language, found]).toEqual([language, `${quantity}${where}, ${statistic}, ${WRITTEN_UNIT[quantity]}`]);
      }
    }
  });

  it("a log of 418 columns is understood without remainder", () => {
    const phases = ["L1", "L2", "L3"];
    const pairs = ["L1-L2", "L2-L3", "L3-L1"];
    const statistics = ["mean", "min", "max"];
    const orders = Array.from({ length: 50 }, (_, i) => i + 1);
    const headers = [
      ...[...phases, ...pairs].flatMap((phase) => statistics.map((s) => `U ${phase} ${s} [V]`)),
      ...[...phases, "N"].map((phase) => `I ${phase} [A]`),
      ...[...phases, "total"].flatMap((phase) => [
        `P ${phase} [kW]`,
        `Q ${phase} [kvar]`,
        `S ${phase} [kVA]`,
        `PF ${phase}`,
      ]),
      ...["u2 [%]", "u0 [%]"],
      ...statistics.map((s) => `f ${s} [Hz]`),
      ...phases.flatMap((phase) => [`THD U ${phase} [%]`, `THD I ${phase} [%]`, `Pst ${phase}`, `Plt ${phase}`]),
      ...[...phases, ...pairs].flatMap((phase) => orders.map((order) => `U ${phase} h${order} [%]`)),
      ...[...phases, "N"].flatMap((phase) => orders.slice(0, 15).map((order) => `I ${phase} h${order} [A]`)),
      ...["U flag", "Temperature [°C]", "Record"],
    ];
    const found = recognise(headers.map((header) => (header === "U flag" ? { header, samples: ["0"] } : header)));
    expect(headers).toHaveLength(418);
    expect(found.filter(({ meaning }) => meaning)).toHaveLength(415);
    expect(
      found.filter(({ meaning, flag }) => !meaning && !flag).map(({ header, reason }) => [header, String(reason)]),
    ).toEqual([
      ["Temperature [°C]", '"Temperature": temperature is not used'],
      ["Record", 'the word "Record" is not known, so it is not certain what the column holds'],
    ]);
  });

  it("any text in a header ends in a reading, a reason or one sentence", () => {
    const part = fc.constantFrom(
      ..."U V I P Q S f L1 L2 1 2 3 12 5 h THD avg min [V] (%) (A) kW % - / _ + ° N A B u2 Pst x".split(" "),
    );
    const header = fc.oneof(
      fc.array(part, { maxLength: 8 }).map((parts) => parts.join("")),
      fc.string({ unit: "binary" }),
    );
    fc.assert(
      fc.property(fc.array(header, { maxLength: 4 }), (headers) => {
        try {
          for (const { meaning, flag, reason } of recognise(headers)) {
            expect(String(reason)).not.toBe("");
            expect(meaning !== undefined && flag === true).toBe(false);
          }
        } catch (error) {
          expect(error instanceof LogError || error instanceof UsageError, String(error)).toBe(true);
        }
      }),
      { numRuns: 2000, seed: 1 },
    );
  });

  it("a header of absurd length is left out", () => {
    expect(alone(`U L1 ${"x".repeat(300)}`)).toBe("unused: a header of more than 300 characters is not read");
  });

  it("every reason says what decided the quantity, the phase, the statistic, the order and the unit", () => {
    expect(String(recognise(["Oberschwingung Spannung L1 Ordnung 5 Mittelwert [%]"])[0]?.reason)).toBe(
      'harmonic voltage: "Oberschwingung" and "Spannung"; order 5: "Ordnung 5"; L1: "L1"; mean: "Mittelwert"; %: "[%]" in the header',
    );
  });
});
