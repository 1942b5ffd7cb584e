import { describe, expect, it } from "vitest";
import { CHARACTERISTIC as C } from "../../../src/formats/pqdif/characteristics.js";
import { QUANTITY_TYPE, VALUE_TYPE } from "../../../src/formats/pqdif/identifiers.js";
import { mapRecording } from "../../../src/formats/pqdif/map-recording.js";
import { keyText } from "../../../src/recording/quantity.js";
import type { GivenSetup } from "../../../src/recording/setup.js";
import { HOUR, MINUTE, SECOND } from "../../../src/recording/time.js";
import { logOf, type MadeChannel, type MadeObservation, madeFile, times } from "./made-file.js";

/** Traps of real PQDIF files: what must not be taken for something else, and what must not break the reading. */

const START = Date.UTC(2027, 2, 1) * 1000;
const JUNK = "67f6af97-0000-0000-c0a8-12000000beef";
const U = [230, 231, 229, 230.5];

async function mapped(channels: readonly MadeChannel[], setup: GivenSetup = {}, unused: readonly MadeChannel[] = []) {
  return summary([{ start: START, channels }], setup, unused);
}

async function summary(
  observations: readonly MadeObservation[],
  setup: GivenSetup = {},
  unused: readonly MadeChannel[] = [],
) {
  const result = await mapRecording([madeFile(observations, { unused })], setup);
  const keys = result.series.map((s) => `${keyText(s)} [${s.unit}] ${s.values.join(" ")}`);
  return { ...result, keys, reasons: result.ledger.columns.map((c) => String(c.reason)) };
}

describe("identifiers that lie", () => {
  it("takes a voltage in amperes for volts, as the quantity measured says, and tells so", async () => {
    const { keys, reasons } = await mapped([logOf(U, { units: 7 })]);
    expect(keys).toEqual(["voltage L1 [V] 230 231 229 230.5"]);
    expect(reasons[0]).toContain("its unit says A, but what is measured is a voltage, so it is taken as V");
  });

  it("never lets a characteristic of leftover memory stand in for an r.m.s. value or THD, whatever its name", async () => {
    const { keys, reasons } = await mapped([
      logOf(U, { phase: 2 }),
      logOf(U, { characteristic: JUNK, name: "V1 RMS" }),
      logOf([2, 3], { characteristic: JUNK, units: 19, name: "THD V1" }),
    ]);
    expect(keys).toEqual(["voltage L2 [V] 230 231 229 230.5"]);
    expect(reasons.slice(1)).toEqual(
      Array(2).fill(
        `its characteristic ${JUNK} is none of IEEE 1159.3, so what it holds is not known; say it in the setup under columns:`,
      ),
    );
  });

  it("uses such a channel where the setup says what it is, by its name", async () => {
    const setup: GivenSetup = { columns: [{ column: "V1 RMS", quantity: "voltage" }] };
    expect((await mapped([logOf(U, { characteristic: JUNK, name: "V1 RMS" })], setup)).keys).toEqual([
      "voltage L1 [V] 230 231 229 230.5",
    ]);
  });

  it.each([
    ["average imbalance", C.AVG_IMBAL, 19, "another definition than the negative sequence u2"],
    ["THD of the r.m.s. value", C.TOTAL_THD_RMS, 19, "in relation to the whole r.m.s. value"],
    ["sliding Plt", C.FLKR_PLTSLIDE, 0, "a sliding Plt"],
    ["all harmonics together", C.HRMS, 6, "all harmonics together"],
    ["crest factor", C.CREST_FACTOR, 0, "is not used here"],
  ])("keeps %s apart from what is judged", async (_, characteristic, units, reason) => {
    const { keys, reasons } = await mapped([logOf(U, { phase: 2 }), logOf([1, 2], { characteristic, units })]);
    expect(keys).toEqual(["voltage L2 [V] 230 231 229 230.5"]);
    expect(reasons[1]).toContain(reason);
  });

  it("a share without unit below 0.2 is left out until the setup says its unit", async () => {
    const thd = logOf([0.015, 0.02, 0.025], { characteristic: C.TOTAL_THD, units: 0, name: "THD" });
    const left = await mapped([logOf(U, { phase: 2 }), thd]);
    expect(left.keys).toEqual(["voltage L2 [V] 230 231 229 230.5"]);
    expect(left.reasons[1]).toContain("(median 0.02) may be % or a fraction of 1");
    expect((await mapped([thd], { columns: [{ column: "THD", unit: "p.u." }] })).keys).toEqual([
      "thd-voltage L1 [%] 1.5 2 2.5",
    ]);
    expect((await mapped([thd], { columns: [{ column: "THD", unit: "%" }] })).keys).toEqual([
      "thd-voltage L1 [%] 0.015 0.02 0.025",
    ]);
  });

  it("order 1 shows what harmonics are of, also against their unit", async () => {
    const spectrum = (units: number, first: number, fifth: number) => [
      logOf([230, 230.5]),
      logOf([first, first], { characteristic: C.SPECTRA_HGROUP, units, order: 1 }),
      logOf([fifth, fifth], { characteristic: C.SPECTRA_HGROUP, units, order: 5 }),
    ];
    const fifth = async (units: number, first: number, value: number) =>
      (await mapped(spectrum(units, first, value))).keys.at(-1);
    expect(await fifth(19, 100, 3)).toBe("harmonic-voltage L1 order 5 [%] 3 3");
    expect(await fifth(19, 229, 7)).toBe("harmonic-voltage L1 order 5 [V] 7 7");
    expect(await fifth(6, 229, 7)).toBe("harmonic-voltage L1 order 5 [V] 7 7");
    expect(await fifth(6, 100, 3)).toBe("harmonic-voltage L1 order 5 [%] 3 3");
    expect(await fifth(0, 1, 0.03)).toBe("harmonic-voltage L1 order 5 [%] 3 3");
    const open = await mapped([logOf(U), logOf([3, 3], { characteristic: C.SPECTRA_HGROUP, units: 0, order: 5 })]);
    expect(open.reasons[1]).toContain("no order 1 shows whether it is % of the fundamental or V");
  });

  it("an order beyond 50, a direct component, and a line between the harmonics are left out", async () => {
    const parts = { characteristic: C.SPECTRA, units: 19 };
    const { keys, reasons } = await mapped([
      logOf(U),
      logOf([1], { ...parts, order: 63 }),
      logOf([1], { ...parts, order: 0 }),
      logOf([1], { ...parts, hertz: 185 }),
      logOf([1], parts),
    ]);
    expect(keys).toEqual(["voltage L1 [V] 230 231 229 230.5"]);
    expect(
      reasons
        .slice(1)
        .map((r) => r.split(";")[0])
        .sort(),
    ).toEqual([
      "185 Hz is no multiple of 50 Hz, and single lines of a spectrum are no group of interharmonics",
      "neither a group nor a frequency says its order",
      "order 0 is no harmonic",
      "order 63 lies beyond 50",
    ]);
  });

  it("a definition without characteristic (before 1.5) counts by unit and what is measured only", async () => {
    const old = (values: number[], units: number) => {
      const channel = logOf(values, { units, measured: undefined });
      return { ...channel, series: channel.series.map(({ characteristic: _, ...s }) => s) };
    };
    const { keys, reasons } = await mapped([old([230, 231], 6), old([50, 50], 15), old([2, 3], 19)]);
    expect(keys).toEqual(["voltage L1 [V] 230 231", "frequency [Hz] 50 50"]);
    expect(reasons[2]).toContain("it has no characteristic");
  });

  it("a percentile is no mean", async () => {
    const channel = logOf(U);
    const series = channel.series.map((s) => (s.valueType === VALUE_TYPE.AVG ? { ...s, percentile: 95 } : s));
    expect((await mapped([logOf(U, { phase: 2 }), { ...channel, series }])).reasons[1]).toBe(
      "it is the value that 95 % do not exceed, no mean or extreme",
    );
  });

  it("refuses two channels of one place side by side, and says how to mend it", async () => {
    const two = [logOf(U, { name: "feeder 1" }), logOf([10, 11, 12, 13], { name: "feeder 2" })];
    await expect(mapped(two)).rejects.toThrow(
      'log.pqd: "feeder 1, mean" (position 1) and "feeder 2, mean" (position 2) both hold voltage L1, mean; leave one out in the setup, as in columns: [{ column: 2, ignore: true }]',
    );
    expect((await mapped(two, { columns: [{ column: 2, ignore: true }] })).keys).toEqual([
      "voltage L1 [V] 230 231 229 230.5",
    ]);
  });
});

describe("values that are none", () => {
  it("numbers that are none, infinite or absurd are missing", async () => {
    const { series } = await mapped([logOf([230, Number.NaN, Number.POSITIVE_INFINITY, 3e38, 231])]);
    expect([...(series[0]?.values ?? [])]).toEqual([230, Number.NaN, Number.NaN, Number.NaN, 231]);
  });

  it("voltages to neutral of nothing but zeros are inputs that are not connected; a single phase of zeros stays", async () => {
    const zeros = [0, 0, 0, 0];
    const delta = await mapped(
      [1, 2, 3].map((phase) => logOf(zeros, { phase })).concat([5, 6, 7].map((phase) => logOf(U, { phase }))),
    );
    expect(delta.series.map(({ phase }) => phase)).toEqual(["L12", "L23", "L31"]);
    expect(delta.reasons.slice(0, 3)).toEqual(Array(3).fill("all its values are 0: its input was not connected"));
    const star = await mapped([1, 2, 3].map((phase) => logOf(phase === 3 ? zeros : U, { phase })));
    expect(star.keys[2]).toBe("voltage L3 [V] 0 0 0 0");
  });

  it("empty vectors, and channels that are defined and never used, are listed and harmless", async () => {
    const { keys, reasons } = await mapped(
      [logOf(U), logOf([], { phase: 2, times: times(4) }), logOf(U, { phase: 3, times: times(0) })],
      {},
      [logOf([], { phase: 5 })],
    );
    expect(keys).toEqual(["voltage L1 [V] 230 231 229 230.5"]);
    expect(reasons.slice(1)).toEqual([
      "it is empty in all observations",
      "its series of times is empty",
      "it is defined, but no observation holds it",
    ]);
  });

  it("of unequal numbers of times and values the shorter counts", async () => {
    const { keys, ledger } = await mapped([logOf(U, { times: times(3), name: "V1" })]);
    expect(keys).toEqual(["voltage L1 [V] 230 231 229"]);
    expect(ledger.remarks.map(String)).toContain(
      'log.pqd: "V1, mean" has other numbers of times and values; the shorter one counts',
    );
  });

  it("extremes that repeat the mean are no extremes", async () => {
    const { series, ledger } = await mapped([logOf(U, { min: U, max: U, name: "V1" })]);
    expect([series[0]?.min, series[0]?.max]).toEqual([undefined, undefined]);
    expect(ledger.remarks.join()).toContain("Minimum and maximum repeat the mean on V1");
    const real = await mapped([logOf(U, { min: U.map((u) => u - 5), max: U })]);
    expect([...(real.series[0]?.min ?? [])]).toEqual(U.map((u) => u - 5));
  });

  it("what cannot be placed in time is left out with the reason", async () => {
    const cycles = { ...times(4), units: 3, values: [0, 30_000, 60_000, 90_000] };
    const noTimes = { ...logOf(U), series: logOf(U).series.slice(1) };
    expect((await mapped([logOf(U, { phase: 2 }), noTimes])).reasons[1]).toBe("it has no series of times");
    expect((await mapped([logOf(U, { phase: 2 }), logOf(U, { times: cycles })])).reasons[1]).toContain(
      "its times are in cycles",
    );
    const { series } = await mapped([logOf(U, { times: cycles })], { nominalFrequency: 50 });
    expect(series[0]?.axis.interval).toBe(10 * MINUTE);
  });

  it("a histogram is no log", async () => {
    expect((await mapped([logOf(U), logOf(U, { quantityType: QUANTITY_TYPE.HISTOGRAM, phase: 2 })])).reasons[1]).toBe(
      "its quantity type (histogram) is no log of values over time",
    );
  });
});

describe("logs in many observations", () => {
  it("joins a log that is split over observations, in whatever order, and leaves gaps as they are", async () => {
    const part = (hour: number, values: number[]): MadeObservation => ({
      start: START + hour * HOUR,
      channels: [logOf(values, { times: times(values.length) })],
    });
    const { series, ledger } = await summary([part(0, [1, 2, 3, 4, 5, 6]), part(3, [9, 10, 11]), part(1, [7, 8])]);
    expect([...(series[0]?.values ?? [])]).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11]);
    expect(series[0]?.axis.starts[8]).toBe(START + 3 * HOUR);
    expect(ledger.outOfOrder).toBe(2);
  });

  it("joins observations of a single row each", async () => {
    const { series } = await summary(
      [0, 1, 2, 3].map((i) => ({ start: START + i * 10 * MINUTE, channels: [logOf([230 + i])] })),
    );
    expect([...(series[0]?.values ?? [])]).toEqual([230, 231, 232, 233]);
    expect(series[0]?.axis.interval).toBe(10 * MINUTE);
  });

  it("puts one observation per quantity on one time axis", async () => {
    const { series } = await summary([
      { start: START, channels: [logOf(U)] },
      { start: START, channels: [logOf([50, 50.01, 50, 50], { characteristic: C.FREQUENCY, units: 15, phase: 13 })] },
    ]);
    expect(series[0]?.axis).toBe(series[1]?.axis);
  });

  it("holds intervals of different length apart", async () => {
    const { series } = await mapped([
      logOf(U),
      logOf([0.4, 0.5], { characteristic: C.FLKR_PLT, units: 0, times: times(2, 7200) }),
    ]);
    expect(series.map((s) => [s.quantity, s.axis.interval])).toEqual([
      ["voltage", 10 * MINUTE],
      ["plt", 2 * HOUR],
    ]);
  });

  it("values of one instant that differ are a conflict, equal ones a duplicate", async () => {
    const at = (values: number[]): MadeObservation => ({ start: START, channels: [logOf(values)] });
    const { series, ledger } = await summary([at([230, 231, 232]), at([230, 231.5, 232])]);
    expect([...(series[0]?.values ?? [])]).toEqual([230, Number.NaN, 232]);
    expect([ledger.conflicts, ledger.duplicates]).toEqual([[START + 10 * MINUTE], 2]);
  });

  it("the r.m.s. course of an event is no log", async () => {
    const course = {
      start: START + HOUR,
      method: 1,
      channels: [logOf([230, 100, 100, 230], { times: times(4, 0.01) })],
    };
    const { series } = await summary([{ start: START, channels: [logOf(U)] }, course]);
    expect(series.map((s) => [s.axis.interval, s.values.length])).toEqual([[10 * MINUTE, 4]]);
    const alone = await summary([{ start: START, channels: [logOf(U, { phase: 2 })] }, course]);
    expect(alone.reasons[1]).toBe("its values every 0.01 s are the course of an event, no log of intervals");
  });

  it("joins several files", async () => {
    const file = (name: string, day: number, values: number[]) =>
      madeFile([{ start: START + day * 24 * HOUR, channels: [logOf(values)] }], { name });
    const { series } = await mapRecording([file("b.pqd", 1, [3, 4]), file("a.pqd", 0, [1, 2])], {});
    expect([...(series[0]?.values ?? [])]).toEqual([1, 2, 3, 4]);
  });
});

describe("what settings say to apply", () => {
  const ratio = { definition: 0, systemSideRatio: 20_000, monitorSideRatio: 100 };
  it.each([
    ["uses the transducer ratio where the settings say so", { useTransducer: true, channels: [ratio] }, {}, 20_000, 1],
    ["leaves it where they do not", { useTransducer: false, channels: [ratio] }, {}, 100, 0],
    ["has nothing to multiply by without a ratio", { useTransducer: true, channels: [] }, {}, 100, 0],
    [
      "does not divide by a ratio of zero",
      { useTransducer: true, channels: [{ ...ratio, monitorSideRatio: 0 }] },
      {},
      100,
      1,
    ],
    ["lets the setup go first", { useTransducer: true, channels: [ratio] }, { voltageRatio: "11000/110" }, 10_000, 1],
    [
      "calibrates where the settings say so",
      { useCalibration: true, channels: [{ definition: 0, calibrationOffset: 2, calibrationRatio: 1.5 }] },
      {},
      147,
      1,
    ],
    [
      "and not where they do not",
      { useCalibration: false, channels: [{ definition: 0, calibrationOffset: 2, calibrationRatio: 1.5 }] },
      {},
      100,
      0,
    ],
  ] as const)("%s", async (_, settings, setup, value, remarks) => {
    const { series, ledger } = await summary(
      [{ start: START, settings, channels: [logOf([100, 100], { name: "V1" })] }],
      setup,
    );
    expect([...(series[0]?.values ?? [])]).toEqual([value, value]);
    expect(ledger.remarks.filter((r) => String(r).includes('"V1"'))).toHaveLength(remarks);
  });

  it("applies ratios to volts and amperes only", async () => {
    const settings = { useTransducer: true, channels: [{ ...ratio, definition: 0 }] };
    const { keys } = await summary([
      { start: START, settings, channels: [logOf([2, 3], { characteristic: C.TOTAL_THD, units: 19 })] },
    ]);
    expect(keys).toEqual(["thd-voltage L1 [%] 2 3"]);
  });
});

describe("what the stamps mark, and in which zone", () => {
  const base = async (observations: readonly MadeObservation[], setup: GivenSetup = {}, source = {}) =>
    mapRecording([madeFile(observations, { source })], setup);
  const first = (firstS: number): MadeObservation => ({
    start: START,
    channels: [logOf(U, { times: times(4, 600, firstS) })],
  });

  it.each([
    [0, "start", "inferred", START],
    [600, "end", "inferred", START],
    [300, "start", "assumed", START + 5 * MINUTE],
  ])("a first row %d s after the start of the observation: the %s, %s", async (firstS, label, origin, start) => {
    const { series, ledger } = await base([first(firstS)]);
    expect([ledger.timeBase.intervalLabel, ledger.timeBase.labelOrigin]).toEqual([label, origin]);
    expect(series[0]?.axis.starts[0]).toBe(start);
  });

  it("the setup's label goes first", async () => {
    const { series, ledger } = await base([first(0)], { intervalLabel: "end" });
    expect([ledger.timeBase.intervalLabel, ledger.timeBase.labelOrigin]).toEqual(["end", "given"]);
    expect(series[0]?.axis.starts[0]).toBe(START - 10 * MINUTE);
  });

  it("observations that contradict each other leave the label open", async () => {
    const later = { ...first(600), start: START + 24 * HOUR };
    expect((await base([first(0), later])).ledger.timeBase.labelOrigin).toBe("assumed");
  });

  it("without a zone the times are read as UTC, and that is assumed", async () => {
    const { series, ledger } = await base([first(0)]);
    expect([ledger.timeBase.zone, ledger.timeBase.zoneOrigin]).toEqual(["UTC", "assumed"]);
    expect(series[0]?.axis.starts[0]).toBe(START);
  });

  it("a given zone is that of the stored times", async () => {
    const { series, ledger } = await base([first(0)], { zone: "Europe/Vienna" });
    expect([ledger.timeBase.zone, ledger.timeBase.zoneOrigin]).toEqual(["Europe/Vienna", "given"]);
    expect(series[0]?.axis.starts[0]).toBe(START - HOUR);
  });

  it.each([
    ["a stated distance to local time", { utcToStandardS: 3600 }],
    ["UTC as the zone", { timeZone: "UTC" }],
  ])("%s shows that they are UTC; a given zone is then only shown", async (_, source) => {
    const own = await base([first(0)], {}, source);
    expect([own.ledger.timeBase.zone, own.ledger.timeBase.zoneOrigin]).toEqual(["UTC", "stamps"]);
    const given = await base([first(0)], { zone: "Europe/Vienna" }, source);
    expect(given.ledger.timeBase.zone).toBe("Europe/Vienna");
    expect(given.series[0]?.axis.starts[0]).toBe(START);
  });

  it("another zone that the file names is not proof of either, and is told", async () => {
    const { ledger } = await base([first(0)], {}, { timeZone: "W. Europe" });
    expect(ledger.timeBase.zoneOrigin).toBe("assumed");
    expect(String(ledger.remarks[0])).toContain('names the time zone "W. Europe", but not whether its times are in it');
  });

  it("rows of a repeated hour of local time are placed by their order", async () => {
    // 31 October 2027, 03:00 back to 02:00 in Vienna: six rows of the first pass and six of the second.
    const night = Date.UTC(2027, 9, 31, 1) * 1000;
    const hours = [0, 1, 1, 2].flatMap((h) => [0, 1, 2, 3, 4, 5].map((ten) => h * 3600 + ten * 600));
    const channel = logOf(
      hours.map((_, i) => i),
      { times: { ...times(1), values: hours } },
    );
    const { series, ledger } = await base([{ start: night, channels: [channel] }], { zone: "Europe/Vienna" });
    const starts = [...(series[0]?.axis.starts ?? [])];
    expect(starts.map((t) => (t - (night - 2 * HOUR)) / (600 * SECOND))).toEqual(hours.map((_, i) => i));
    expect(ledger.clockChanges.map(({ seenInLog }) => seenInLog)).toEqual([true]);
  });

  it("a time in a skipped hour is refused with what to do", async () => {
    const start = Date.UTC(2027, 2, 28, 2, 30) * 1000;
    await expect(base([{ start, channels: [logOf(U)] }], { zone: "Europe/Vienna" })).rejects.toThrow(
      "log.pqd: the clock of Europe/Vienna skipped 2027-03-28T02:30:00",
    );
  });
});
