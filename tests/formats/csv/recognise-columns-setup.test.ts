import { describe, expect, it } from "vitest";
import { LogError, UsageError } from "../../../src/errors.js";
import type { ColumnSetup } from "../../../src/recording/setup.js";
import { all, alone, type Column, recognise } from "./recognise-columns-support.js";

function withEntries(columns: readonly Column[], ...entries: readonly ColumnSetup[]): readonly string[] {
  return all(columns, { columns: [...entries] });
}

describe("entries of the setup", () => {
  it("say what a header does not say, by header or position", () => {
    const entry = { quantity: "voltage", phase: "L2", statistic: "max", unit: "kV" } as const;
    expect(withEntries(["c7"], { column: "c7", ...entry })).toEqual(["voltage L2, max, kV x 1000 = V"]);
    expect(withEntries(["c7"], { column: 1, ...entry })).toEqual(["voltage L2, max, kV x 1000 = V"]);
    expect(String(recognise(["c7"], { columns: [{ column: 1, ...entry }] })[0]?.reason)).toBe(
      'supply voltage: given in the setup; L2: given in the setup; max: given in the setup; kV: "kV" in the setup',
    );
  });

  it("override or complete single parts and leave the others to the header", () => {
    expect(withEntries(["U L1 max [V]"], { column: 1, phase: "L3" })).toEqual(["voltage L3, max, V"]);
    expect(withEntries(["U L1 max [V]"], { column: 1, statistic: "min" })).toEqual(["voltage L1, min, V"]);
    expect(withEntries(["U L1 max [V]"], { column: 1, unit: "mV" })).toEqual(["voltage L1, max, mV x 0.001 = V"]);
    expect(withEntries(["U L1 [V]", "U max [V]"], { column: 2, phase: "L1" })[1]).toBe("voltage L1, max, V");
    expect(withEntries(["U h L1 %"], { column: 1, order: 7 })).toEqual(["harmonic-voltage L1 order 7, mean, %"]);
    expect(withEntries(["U h5 L1 %"], { column: 1, order: 7 })).toEqual(["harmonic-voltage L1 order 7, mean, %"]);
    expect(withEntries(["h5 L1 %", "I L1 A"], { column: 1, quantity: "harmonic-current" })[0]).toBe(
      "harmonic-current L1 order 5, mean, %",
    );
    expect(withEntries(["Power L1 [foo]"], { column: 1, quantity: "active-power", unit: "kW" })).toEqual([
      "active-power L1, mean, kW x 1000 = W",
    ]);
  });

  it("may use a column that would be left out, or leave one out", () => {
    const peak = { column: "U peak L1", quantity: "voltage", statistic: "max", unit: "V" } as const;
    expect(withEntries(["U peak L1"], peak)).toEqual(["voltage L1, max, V"]);
    expect(withEntries(["U L1 V", "U_L1 V"], { column: 2, ignore: true })).toEqual([
      "voltage L1, mean, V",
      "unused: left out by the setup",
    ]);
  });

  it("name a flag, whose codes other than 0 then mean flagged", () => {
    const codes = { header: "Flag", samples: ["0", "16"] };
    expect(alone(codes)).toBe('unused: it is named a flag, but "16" says neither yes nor no (1 or 0)');
    expect(withEntries([codes], { column: 1, quantity: "flag" })).toEqual(["flag"]);
    expect(alone({ header: "Flag", samples: ["0", "1", "0"] })).toBe("flag");
    expect(alone({ header: "markiert", samples: ["ja", "nein"] })).toBe("flag");
  });

  it.each([
    [{ column: 9 }, "the setup names column 9 under columns:, but feeder.csv has no column of values at that position"],
    [
      { column: "U L9" },
      'the setup names the column "U L9" under columns:, but feeder.csv has no column of values with',
    ],
    [
      { column: "U", phase: "L1" },
      'the setup names the column "U" under columns:, but feeder.csv has that header at positions 2, 3; give the position instead',
    ],
    [
      { column: 1, ignore: true, phase: "L1" },
      'the setup leaves column 1 ("U L1 [V]") of feeder.csv out with ignore: true and also says what it holds; keep one of the two',
    ],
    [
      { column: 1, unit: "furlong" },
      'the setup gives column 1 ("U L1 [V]") of feeder.csv the unit "furlong", which is not known; use one of V, kV, mV,',
    ],
    [
      { column: 1, unit: "kW" },
      'for column 1 ("U L1 [V]") of feeder.csv, but it still cannot be used: the unit kW ("kW" in the setup) does not fit the quantity; complete the entry (quantity, phase, order, statistic, unit) or take it out',
    ],
    [
      { column: 4, quantity: "voltage" },
      'for column 4 ("c4") of feeder.csv, but it still cannot be used: it does not say which phase; complete the entry',
    ],
    [{ column: 4, phase: "L1" }, 'but it still cannot be used: the word "c4" is not known'],
    [
      { column: 1, phase: "system" },
      "but voltage is not used on phase system; use one of L1, L2, L3, L12, L23, L31, N",
    ],
    [{ column: 1, order: 5 }, "but voltage has no order; take the order out"],
    [{ column: 1, quantity: "harmonic-voltage", order: 0 }, "but harmonic-voltage has orders from 1"],
  ] as [ColumnSetup, string][])("%j is refused", (entry, sentence) => {
    const columns = ["U L1 [V]", "U", "U", "c4"];
    expect(() => withEntries(columns, entry)).toThrow(UsageError);
    expect(() => withEntries(columns, entry)).toThrow(sentence);
  });

  it("two for one column are refused", () => {
    expect(() => withEntries(["U L1 [V]"], { column: 1, phase: "L2" }, { column: "U L1 [V]", unit: "kV" })).toThrow(
      'the setup has two entries under columns: for column 1 ("U L1 [V]") of feeder.csv; merge them',
    );
  });
});

describe("two columns for one place", () => {
  it("are refused with both names and a way out", () => {
    const columns = ["U L1 avg [V]", "f [Hz]", "Spannung L1 [V]"];
    expect(() => recognise(columns)).toThrow(LogError);
    expect(() => recognise(columns)).toThrow(
      'feeder.csv, columns 1 ("U L1 avg [V]") and 3 ("Spannung L1 [V]"): both hold voltage L1, mean; leave one out in the setup, as in columns: [{ column: "Spannung L1 [V]", ignore: true }], or say there what it holds (quantity, phase, order, statistic, unit)',
    );
    expect(withEntries(columns, { column: 3, ignore: true })[0]).toBe("voltage L1, mean, V");
  });

  it("in two units are settled for the unit that the quantity is judged in", () => {
    expect(all(["U h5 L1 [V]", "U h5 L1 [%]", "I h5 L1 [A]", "I h5 L1 [%]"])).toEqual([
      "unused: column 2 holds the same in %, which is used",
      "harmonic-voltage L1 order 5, mean, %",
      "harmonic-current L1 order 5, mean, A",
      "unused: column 3 holds the same in A, which is used",
    ]);
  });

  it("are none where statistic, order or phase differ, and flags may be several", () => {
    const flags = ["Flag U", "Flag I"].map((header) => ({ header, samples: ["0"] }));
    const columns = ["U L1 [V]", "U L1 min [V]", "U L2 [V]", "U h3 L1 %", "U h5 L1 %", ...flags];
    expect(all(columns).filter((text) => text.startsWith("unused"))).toEqual([]);
  });
});
