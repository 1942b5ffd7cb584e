import { describe, expect, it } from "vitest";
import { CHARACTERISTIC as C } from "../../../src/formats/pqdif/characteristics.js";
import { QUANTITY_TYPE, VALUE_TYPE } from "../../../src/formats/pqdif/identifiers.js";
import { mapRecording } from "../../../src/formats/pqdif/map-recording.js";
import { keyText } from "../../../src/recording/quantity.js";
import type { GivenSetup } from "../../../src/recording/setup.js";
import { logOf, type MadeChannel, madeFile, times } from "./made-file.js";

/**
 * What each channel is taken for: rows of IEEE 1159.3's identifiers (quantity measured, quantity type, characteristic,
 * value type, unit, phase), and the traps that real files hold.
 */

const START = Date.UTC(2027, 2, 1) * 1000;
const VOLTS = [230, 231, 229, 230.5];

async function mapped(channels: readonly MadeChannel[], setup: GivenSetup = {}, unused: readonly MadeChannel[] = []) {
  const { series, ledger } = await mapRecording([madeFile([{ start: START, channels }], { unused })], setup);
  return {
    series,
    ledger,
    keys: series.map((s) => `${keyText(s)} [${s.unit}] ${s.values.join(" ")}`),
    reasons: ledger.columns.map((c) => String(c.reason)),
  };
}

describe("what identifiers say", () => {
  const rows: [string, MadeChannel, string][] = [
    ["r.m.s. voltage A to neutral", logOf(VOLTS), "voltage L1 [V] 230 231 229 230.5"],
    ["r.m.s. voltage neutral to ground", logOf([1, 2], { phase: 4 }), "voltage N [V] 1 2"],
    ["r.m.s. voltage C to A", logOf([400, 401], { phase: 7 }), "voltage L31 [V] 400 401"],
    ["r.m.s. current B", logOf([10, 11], { phase: 2, measured: 2, units: 7 }), "current L2 [A] 10 11"],
    [
      "frequency, total",
      logOf([50, 50.01], { phase: 13, characteristic: C.FREQUENCY, units: 15 }),
      "frequency [Hz] 50 50.01",
    ],
    [
      "frequency on A, nothing measured",
      logOf([50, 50.01], { measured: 0, characteristic: C.FREQUENCY, units: 15 }),
      "frequency [Hz] 50 50.01",
    ],
    ["THD in %", logOf([1.5, 2], { characteristic: C.TOTAL_THD, units: 19 }), "thd-voltage L1 [%] 1.5 2"],
    [
      "THD without unit, of a size in %",
      logOf([1.5, 2], { characteristic: C.TOTAL_THD, units: 0 }),
      "thd-voltage L1 [%] 1.5 2",
    ],
    ["THD per unit", logOf([0.015, 0.07], { characteristic: C.TOTAL_THD, units: 20 }), "thd-voltage L1 [%] 1.5 7"],
    [
      "THD of the current",
      logOf([9, 8], { characteristic: C.TOTAL_THD, units: 19, measured: 2 }),
      "thd-current L1 [%] 9 8",
    ],
    [
      "a harmonic by its group",
      logOf([3, 4], { characteristic: C.SPECTRA_HGROUP, units: 19, order: 5 }),
      "harmonic-voltage L1 order 5 [%] 3 4",
    ],
    [
      "a harmonic by its frequency",
      logOf([3, 4], { characteristic: C.SPECTRA, units: 19, hertz: 350 }),
      "harmonic-voltage L1 order 7 [%] 3 4",
    ],
    [
      "a harmonic in volts",
      logOf([3, 4], { characteristic: C.SPECTRA_HGROUP, units: 6, order: 5 }),
      "harmonic-voltage L1 order 5 [V] 3 4",
    ],
    [
      "a harmonic current",
      logOf([3, 4], { characteristic: C.SPECTRA_HGROUP, units: 7, order: 5, measured: 2 }),
      "harmonic-current L1 order 5 [A] 3 4",
    ],
    [
      "interharmonics by their group",
      logOf([0.1, 0.2], { characteristic: C.SPECTRA_IGROUP, units: 19, order: 3 }),
      "interharmonic-voltage L1 order 3 [%] 0.1 0.2",
    ],
    [
      "interharmonics by their frequency",
      logOf([0.1, 0.2], { characteristic: C.SPECTRA_IGROUP, units: 19, hertz: 175 }),
      "interharmonic-voltage L1 order 3 [%] 0.1 0.2",
    ],
    [
      "negative over positive sequence",
      logOf([0.5, 0.6], { characteristic: C.S2S1, units: 19, phase: 0 }),
      "negative-sequence-unbalance [%] 0.5 0.6",
    ],
    [
      "zero over positive sequence",
      logOf([0.5, 0.6], { characteristic: C.S0S1, units: 19, phase: 13 }),
      "zero-sequence-unbalance [%] 0.5 0.6",
    ],
    ["Pst without unit", logOf([0.4, 0.1], { characteristic: C.FLKR_PST, units: 0 }), "pst L1 [1] 0.4 0.1"],
    ["Pst per unit", logOf([0.4, 0.1], { characteristic: C.FLKR_PST, units: 20 }), "pst L1 [1] 0.4 0.1"],
    ["Plt", logOf([0.4, 0.1], { characteristic: C.FLKR_PLT, units: 0, times: times(2, 7200) }), "plt L1 [1] 0.4 0.1"],
    [
      "active power of a phase",
      logOf([900, 901], { characteristic: C.P, units: 9, measured: 3 }),
      "active-power L1 [W] 900 901",
    ],
    [
      "reactive power, total",
      logOf([-90, 91], { characteristic: C.Q, units: 10, measured: 3, phase: 13 }),
      "reactive-power [var] -90 91",
    ],
    [
      "apparent power, net",
      logOf([90, 91], { characteristic: C.S, units: 8, measured: 3, phase: 9 }),
      "apparent-power [VA] 90 91",
    ],
    [
      "power factor",
      logOf([0.9, 0.95], { characteristic: C.PF, units: 0, measured: 3 }),
      "power-factor L1 [1] 0.9 0.95",
    ],
    ["a phasor's magnitude", logOf(VOLTS, { quantityType: QUANTITY_TYPE.PHASOR }), "voltage L1 [V] 230 231 229 230.5"],
  ];
  it.each(rows)("%s", async (_, channel, key) => {
    expect((await mapped([channel])).keys).toEqual([key]);
  });

  it("mean, minimum and maximum of one channel are one series, in whatever order they stand", async () => {
    const own = { units: 6, characteristic: C.RMS };
    const channel: MadeChannel = {
      series: [
        { ...own, valueType: VALUE_TYPE.MAX, values: [240, 241] },
        { ...own, valueType: VALUE_TYPE.AVG, values: [230, 231] },
        times(2),
        { ...own, valueType: VALUE_TYPE.MIN, values: [220, 221] },
      ],
    };
    const [series, ...others] = (await mapped([channel])).series;
    expect(others).toEqual([]);
    expect([series?.min, series?.values, series?.max].map((v) => [...(v ?? [])])).toEqual([
      [220, 221],
      [230, 231],
      [240, 241],
    ]);
  });

  it("a value stands for the mean where there is no mean, and is left out beside one", async () => {
    const own = { units: 6, characteristic: C.RMS };
    const value = { ...own, valueType: VALUE_TYPE.VAL, values: [230, 231] };
    expect((await mapped([{ series: [times(2), value] }])).keys).toEqual(["voltage L1 [V] 230 231"]);
    const both = await mapped([
      { series: [times(2), value, { ...own, valueType: VALUE_TYPE.AVG, values: [229, 230] }] },
    ]);
    expect(both.keys).toEqual(["voltage L1 [V] 229 230"]);
    expect(both.reasons[0]).toBe("it holds no mean, value, minimum or maximum");
  });

  it("per unit values count times the base that they state, and nothing else does", async () => {
    const perUnit = logOf([1, 1.01], { units: 20 });
    const series = perUnit.series.map((s) => (s.valueType === VALUE_TYPE.AVG ? { ...s, base: 230 } : s));
    expect((await mapped([{ ...perUnit, series }])).keys).toEqual(["voltage L1 [V] 230 232.3"]);
    const plain = logOf([230, 231]);
    const based = plain.series.map((s) => ({ ...s, base: 63510, nominal: 63510 }));
    expect((await mapped([{ ...plain, series: based }])).keys).toEqual(["voltage L1 [V] 230 231"]);
    expect(
      (await mapped([logOf(VOLTS), perUnit], { declaredVoltage: 230, columns: [{ column: 1, ignore: true }] })).keys,
    ).toEqual(["voltage L1 [V] 230 232.3"]);
  });

  it("flags mark the rows of their own table", async () => {
    const shared = times(3);
    const flags = logOf([0, 1, 0], { characteristic: C.FLAGGING_IEC_61000_4_30, units: 0, times: shared });
    const { series } = await mapped([logOf([230, 231, 232], { times: shared }), flags]);
    expect([...(series[0]?.axis.flagged ?? [])]).toEqual([0, 1, 0]);
  });
});
