import { describe, expect, it } from "vitest";
import { toNumber } from "../../../src/decimal.js";
import { all, alone, type Column, recognise } from "./recognise-columns-support.js";

const STAR = { declaredVoltage: 230, connection: "star" } as const;

describe("units", () => {
  it.each([
    ["U L1", "V", "V"],
    ["U L1", "kV", "kV x 1000 = V"],
    ["U L1", "KV", "kV x 1000 = V"],
    ["U L1", "mV", "mV x 0.001 = V"],
    ["U L1", "Volt", "V"],
    ["U L1", "V rms", "V"],
    ["I L1", "kA", "kA x 1000 = A"],
    ["I L1", "mA", "mA x 0.001 = A"],
    ["I L1", "Amps", "A"],
    ["f", "Hz", "Hz"],
    ["f", "mHz", "mHz x 0.001 = Hz"],
    ["P L1", "W", "W"],
    ["P L1", "MW", "MW x 1000000 = W"],
    ["P L1", "mW", "mW x 0.001 = W"],
    ["Q L1", "VAr", "var"],
    ["Q L1", "kVAr", "kvar x 1000 = var"],
    ["Q L1", "MVAr", "Mvar x 1000000 = var"],
    ["S L1", "kVA", "kVA x 1000 = VA"],
    ["S L1", "MVA", "MVA x 1000000 = VA"],
    ["PF L1", "%", "% x 0.01 = 1"],
    ["PF L1", "-", "1"],
    ["THD U L1", "p.u.", "p.u. x 100 = %"],
    ["THD U L1", "% of fundamental", "% of fundamental"],
    ["THD U L1", "percent", "%"],
    ["U h5 L1", "% h1", "% of fundamental"],
    ["Unsymmetrie", "Prozent", "%"],
    ["Pst L1", "1", "1"],
    ["Pst L1", "p.u.", "p.u. = 1"],
  ])("%s in %s", (header, unit, expected) => {
    const shown = expected.replace(" = 1", expected.startsWith("p.u.") ? "" : " = 1");
    for (const column of [{ header, unit }, `${header} [${unit}]`, `${header} (${unit})`]) {
      expect(alone(column).split(", ").at(-1)).toBe(shown);
    }
  });

  it.each([
    ["UL1N_MW", "V", "voltage L1, mean, V"],
    ["U L1 Mw", "kV", "voltage L1, mean, kV x 1000 = V"],
    ["MW U12", "V", "voltage L12, mean, V"],
    ["IL1_MW", "A", "current L1, mean, A"],
    ["Frequenz MW", "Hz", "frequency, mean, Hz"],
    ["U h5 L1 MW", "%", "harmonic-voltage L1 order 5, mean, %"],
    ["Q L1 MW", "kvar", "reactive-power L1, mean, kvar x 1000 = var"],
  ])("MW is the mean in %s, whose unit %s stands elsewhere", (header, unit, expected) => {
    expect(alone(`${header} (${unit})`)).toBe(expected);
    expect(alone({ header, unit })).toBe(expected);
  });

  it("MW is a unit where no other is stated, and the mean and the minimum do not go together", () => {
    expect(alone("P L1 MW")).toBe("active-power L1, mean, MW x 1000000 = W");
    expect(alone("P L1 MW (MW)")).toBe("active-power L1, mean, MW x 1000000 = W");
    expect(alone("P L1 MW (kW)")).toBe("unused: it names two units, kW and MW");
    expect(alone("U L1 MW min (V)")).toBe('unused: "MW" and "min" contradict each other');
  });

  it.each([
    ["U L1", "mv", 'the unit "mv" does not tell milli from mega (the case of the prefix decides)'],
    ["U L1", "MV", 'the unit "MV" does not tell milli from mega (the case of the prefix decides)'],
    ["I L1", "MA", 'the unit "MA" does not tell milli from mega (the case of the prefix decides)'],
    ["Q L1", "mvar", 'the unit "mvar" does not tell milli from mega (the case of the prefix decides)'],
    ["U L1", "°C", 'no quantity used here has the unit "°C"'],
    ["U L1", "foo", 'the unit "foo" in the units row is not known here'],
    ["U L1", "A", 'the unit A ("A" in the units row) does not fit the quantity'],
    ["Pst L1", "%", 'the unit % ("%" in the units row) does not fit the quantity'],
    ["P L1", "kvar", 'the unit kvar ("kvar" in the units row) does not fit the quantity'],
    ["I L1", "p.u.", "p.u. does not say of what; only voltages in p.u. are used"],
    ["U h5 L1", "p.u.", "p.u. does not say whether of the fundamental or of the declared voltage"],
    ["U h5 L1", "% r", "a share of the whole r.m.s. value is not a share of the fundamental"],
    ["U L1 [kV]", "V", "the header says kV, but the units row V"],
    ["U L1 [kV] mV", "", "it names two units, kV and mV"],
    ["L1 (A) [%]", "", "it names two units, A and %"],
    ["I L1", "% of declared", "the unit % of declared does not fit the quantity"],
  ])("%s in %s stays unused: %s", (header, unit, reason) => {
    expect(alone({ header, unit }, STAR)).toBe(`unused: ${reason}`);
  });

  it("of the declared voltage are exact", () => {
    const columns = ["U L1 [p.u.]", "U L2 (% Un)", "U L3 % nominal", "U L1 min pu"];
    expect(all(columns, { declaredVoltage: 230.94 })).toEqual([
      "voltage L1, mean, p.u. x 230.94 = V",
      "voltage L2, mean, % of declared x 2.3094 = V",
      "voltage L3, mean, % of declared x 2.3094 = V",
      "voltage L1, min, p.u. x 230.94 = V",
    ]);
    const scale = recognise(["U L1 [% Uc]"], STAR)[0]?.scale;
    expect([scale?.num, scale?.den]).toEqual([230n, 100n]);
  });

  it("of the declared voltage serve harmonics too", () => {
    expect(alone("U h5 L1 [% of Un]", STAR)).toBe("harmonic-voltage L1 order 5, mean, % of declared x 2.3 = V");
  });

  it("of the declared voltage fit only the voltages it is declared for", () => {
    const columns = ["U L1 [p.u.]", "U L1-L2 [p.u.]"];
    const toNeutral = "unused: it is in p.u., but the declared voltage is given phase to neutral";
    expect(all(columns, { declaredVoltage: 230 })[1]).toBe(toNeutral);
    expect(all(columns, STAR)[1]).toBe(toNeutral);
    expect(all(columns, { declaredVoltage: 400, connection: "delta" })).toEqual([
      "unused: it is in p.u., but the declared voltage is given phase to phase",
      "voltage L12, mean, p.u. x 400 = V",
    ]);
    expect(alone("U L1-L2 [p.u.]", { declaredVoltage: 20_000 })).toBe("voltage L12, mean, p.u. x 20000 = V");
  });

  it("of the declared voltage ask for it", () => {
    expect(() => recognise(["f [Hz]", "U L1 [p.u.]"])).toThrow(
      'feeder.csv, column 2 ("U L1 [p.u.]") is in p.u., which needs the declared voltage in volts; give it with --declared',
    );
  });

  it("in plain % do not say of what", () => {
    expect(() => recognise(["U L1 [%]"], STAR)).toThrow(
      'feeder.csv, column 1 ("U L1 [%]"): a voltage in % does not say of what; where it is of the declared voltage, say so in the setup: columns: [{ column: "U L1 [%]", unit: "% of declared" }]',
    );
    const setup = { ...STAR, columns: [{ column: 1, unit: "% of declared" }] };
    expect(alone("U L1 [%]", setup)).toBe("voltage L1, mean, % of declared x 2.3 = V");
  });
});

describe("transformer ratios", () => {
  const setup = { voltageRatio: "20000/100", currentRatio: 40 };

  it("apply to voltages, currents and powers", () => {
    const columns = ["U L1 V", "U h5 L1 [V]", "I N [A]", "I h5 L1 A", "P [kW]", "Q [var]", "S L1 [VA]"];
    expect(all(columns, setup)).toEqual([
      "voltage L1, mean, V x 200 = V",
      "harmonic-voltage L1 order 5, mean, V x 200 = V",
      "current N, mean, A x 40 = A",
      "harmonic-current L1 order 5, mean, A x 40 = A",
      "active-power, mean, kW x 8000000 = W",
      "reactive-power, mean, var x 8000 = var",
      "apparent-power L1, mean, VA x 8000 = VA",
    ]);
    expect(String(recognise(["U L1 V"], setup)[0]?.reason)).toContain("times the voltage ratio 20000/100");
  });

  it("leave alone what is relative", () => {
    const columns = ["U L1 [p.u.]", "U h5 L1 [%]", "I h5 L1 [%]", "THD U L1 [%]", "PF", "f [Hz]", "Pst L1"];
    expect(all(columns, { ...setup, declaredVoltage: 11_547 })).toEqual([
      "voltage L1, mean, p.u. x 11547 = V",
      "harmonic-voltage L1 order 5, mean, %",
      "harmonic-current L1 order 5, mean, %",
      "thd-voltage L1, mean, %",
      "power-factor, mean, 1",
      "frequency, mean, Hz",
      "pst L1, mean, 1",
    ]);
  });

  it.each(["100/0", "0/100"])("%s is refused", (voltageRatio) => {
    expect(() => recognise(["U L1 V"], { voltageRatio })).toThrow(
      `the transformer ratio ${voltageRatio} in the setup has a zero; write primary/secondary, as in 20000/100`,
    );
  });

  it("are exact where they do not divide", () => {
    const scale = recognise(["U L1 V"], { voltageRatio: "20000/110" })[0]?.scale;
    expect(scale && scale.num * 11n === scale.den * 2000n).toBe(true);
    expect(scale && toNumber(scale)).toBe(20_000 / 110);
  });
});

describe("units that are not written", () => {
  const values = (header: string, ...samples: readonly string[]): Column => ({ header, samples });

  it("of dimensionless quantities, unbalance, distortion and frequency are inferred, and the reason says so", () => {
    const columns = [
      values("Pst L1", "0.4"),
      values("PF", "0.97"),
      values("u2", "0.3"),
      values("THD U L1", "2.1"),
      values("f", "49.98"),
    ];
    expect(recognise(columns).map(({ reason }) => String(reason).split("; ").at(-1))).toEqual([
      "1: the quantity has no unit",
      "1: the quantity has no unit",
      "the median 0.3 is one in %",
      "the median 2.1 is one in %",
      "the median 49.98 is a power frequency in Hz",
    ]);
  });

  it.each([
    ["f", "0.02", "no unit is written, and the median 0.02 is no power frequency in Hz"],
    ["THD U L1", "0.021", "no unit is written, and its values (median 0.021) may be % or a fraction of 1"],
    ["u2", "0.021", "no unit is written, and its values (median 0.021) may be % or a fraction of 1"],
    ["I L1", "12", "no unit is written; say it in the setup under columns:"],
    ["P", "12", "no unit is written; say it in the setup under columns:"],
    ["Interharmonic voltage 3 L1", "0.1", "no unit is written; say it in the setup under columns:"],
    ["I h5 L1", "0.1", "no unit is written, and nothing tells % from A"],
  ])("%s with %s stays unused: %s", (header, sample, reason) => {
    expect(alone(values(header, sample))).toBe(`unused: ${reason}`);
  });

  it.each(["U L1", "THD U L1", "f"])("%s without a value stays unused", (header) => {
    expect(alone(values(header))).toBe("unused: it has neither a unit nor values");
  });

  it("of voltages are V where the median lies between 80 and 1000", () => {
    const columns = [values("U L1", "230.1", "0", "231"), values("U L2", "80"), values("U L3", "1000")];
    expect(all(columns)).toEqual(["voltage L1, mean, V", "voltage L2, mean, V", "voltage L3, mean, V"]);
    expect(String(recognise(columns)[0]?.reason)).toContain(
      "V: no unit is written; the median 230.1 lies between 80 and 1000",
    );
  });

  it("of a dead phase are those of the others", () => {
    const columns = [values("U L1", "230.1"), values("U L2", "229"), values("U L3", "0")];
    expect(String(recognise(columns)[2]?.reason)).toContain("its median is 0, that of all voltages without unit 229");
  });

  it("of all voltages are asked for at once, by position where headers are alike", () => {
    const columns = [values("U L1", "20.1"), values("U L2", "20.2"), values("U L2", "20.2"), "I L1 [A]"];
    expect(() => recognise(columns)).toThrow(
      'columns: [{ column: "U L1", unit: kV }, { column: 2, unit: kV }, { column: 3, unit: kV }]',
    );
  });

  it.each(["0.23", "79.9", "1001", "20100", "0"])("of a voltage of %s are asked for", (sample) => {
    expect(() => recognise([values("U L1", sample)])).toThrow(
      `feeder.csv, column 1 ("U L1"): no unit is written, and the median ${sample} does not tell V from kV or p.u.; say the unit in the setup, such as columns: [{ column: "U L1", unit: kV }]`,
    );
  });

  describe("of harmonic voltages", () => {
    const harmonic = values("U h5 L1", "3.1");

    it("are those of a column that says it", () => {
      expect(all([harmonic, "U h7 L1 [V]"])[0]).toBe("harmonic-voltage L1 order 5, mean, V");
      expect(all([harmonic, "U h7 L1 [%]"])[0]).toBe("harmonic-voltage L1 order 5, mean, %");
      expect(String(recognise([harmonic, "U h7 L1 [%]"])[0]?.reason)).toContain(
        "%: as column 2, which holds the same quantity, says",
      );
    });

    it("show in the fundamental", () => {
      expect(all([harmonic, values("U h1 L1", "100.0")])[0]).toBe("harmonic-voltage L1 order 5, mean, %");
      const volts = [harmonic, values("U h1 L1", "229.6"), values("U L1 [kV]", "0.2301")];
      expect(all(volts)[0]).toBe("harmonic-voltage L1 order 5, mean, V");
      expect(String(recognise(volts)[0]?.reason)).toContain(
        "V: no unit is written; the fundamental in column 2 has the median 229.6, like the voltage itself",
      );
    });

    it.each([
      ["nothing shows them", [harmonic]],
      ["columns disagree", [harmonic, "U h7 L1 [%]", "U h9 L1 [V]"]],
      ["the fundamental is near neither", [harmonic, values("U h1 L1", "57"), "U L1 [V]"]],
      ["the fundamental is near both", [harmonic, values("U h1 L1", "100"), values("U L1 [V]", "100.1")]],
    ] as const)("are asked for where %s", (_, columns) => {
      expect(() => recognise(columns)).toThrow(
        'feeder.csv, column 1 ("U h5 L1"): no unit is written, and nothing tells % from V; say the unit in the setup, such as columns: [{ column: "U h5 L1", unit: "%" }] or columns: [{ column: "U h5 L1", unit: V }]',
      );
    });
  });
});
