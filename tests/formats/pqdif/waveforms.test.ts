import { describe, expect, it } from "vitest";
import { CHARACTERISTIC as C } from "../../../src/formats/pqdif/characteristics.js";
import { VALUE_TYPE } from "../../../src/formats/pqdif/identifiers.js";
import { mapRecording } from "../../../src/formats/pqdif/map-recording.js";
import { SampleRuns } from "../../../src/formats/pqdif/sample-runs.js";
import type { GivenSetup } from "../../../src/recording/setup.js";
import { SECOND } from "../../../src/recording/time.js";
import type { WaveformSource } from "../../../src/recording/waveform.js";
import { logOf, type MadeChannel, type MadeObservation, madeFile, samplesOf } from "./made-file.js";

/** Points on the wave: one source per set of channels, read observation by observation. */

const START = Date.UTC(2027, 2, 1) * 1000;
const RATE = 10_000;
const wave = (n: number, from = 0) => Float64Array.from({ length: n }, (_, i) => 1 + from + i);
const voltage = (n: number, parts: Parameters<typeof samplesOf>[2] = {}, from = 0) =>
  samplesOf(wave(n, from), RATE, parts);

async function read(source: WaveformSource | undefined) {
  const rows: [number, number[]][] = [];
  for await (const { first, samples } of source?.blocks() ?? []) {
    for (let i = 0; i < (samples[0]?.length ?? 0); i++) rows.push([first + i, samples.map((s) => s[i] as number)]);
  }
  return rows;
}

async function mapped(observations: readonly MadeObservation[], setup: GivenSetup = {}) {
  const result = await mapRecording([madeFile(observations)], setup);
  return { ...result, reasons: result.ledger.columns.map((c) => String(c.reason)) };
}

const at = (startS: number, channels: readonly MadeChannel[]): MadeObservation => ({
  start: START + startS * SECOND,
  method: 1,
  channels,
});

describe("sources", () => {
  it("has the channels of an observation by quantity measured and phase number", async () => {
    const { waveforms, series } = await mapped([
      at(0, [
        voltage(5, { phase: 1, name: "a" }),
        voltage(5, { phase: 6, name: "b" }),
        voltage(5, { phase: 2, measured: 2, units: 7, name: "c" }),
      ]),
    ]);
    expect(series).toEqual([]);
    expect(
      waveforms.map(({ channels, samplesPerSecond, start, length }) => ({ channels, samplesPerSecond, start, length })),
    ).toEqual([
      {
        channels: [
          { name: "a", quantity: "voltage", phase: "L1", skewS: 0 },
          { name: "b", quantity: "voltage", phase: "L23", skewS: 0 },
          { name: "c", quantity: "current", phase: "L2", skewS: 0 },
        ],
        samplesPerSecond: RATE,
        start: START,
        length: 5,
      },
    ]);
    expect(await read(waveforms[0])).toEqual([0, 1, 2, 3, 4].map((i) => [i, [1 + i, 1 + i, 1 + i]]));
  });

  it("joins observations of the same channels, with the time between them as a gap", async () => {
    const { waveforms } = await mapped([at(1, [voltage(3, {}, 100)]), at(0, [voltage(4)])]);
    expect(waveforms).toHaveLength(1);
    expect(waveforms[0]?.stretches).toEqual([
      { first: 0, length: 4 },
      { first: RATE, length: 3 },
    ]);
    expect((await read(waveforms[0])).map(([i, [v]]) => [i, v])).toEqual([
      [0, 1],
      [1, 2],
      [2, 3],
      [3, 4],
      [RATE, 101],
      [RATE + 1, 102],
      [RATE + 2, 103],
    ]);
  });

  it("holds rates apart that differ in one observation; what has no voltage beside it is left out", async () => {
    const slow = samplesOf(wave(3), RATE / 2, { phase: 2, name: "U2" });
    const current = samplesOf(wave(3), RATE / 4, { measured: 2, units: 7, name: "I1" });
    const { waveforms, reasons } = await mapped([at(0, [voltage(6), slow, current])]);
    expect(waveforms.map((w) => [w.samplesPerSecond, w.channels.map((c) => c.phase).join()])).toEqual([
      [RATE, "L1"],
      [RATE / 2, "L2"],
    ]);
    expect(reasons[2]).toBe("it is sampled apart from any voltage, and without one no cycle can be found");
  });

  it("leaves out rates that are too low to be measured", async () => {
    const { waveforms, reasons } = await mapped([at(0, [samplesOf(wave(9), 960)])]);
    expect(waveforms).toEqual([]);
    expect(reasons).toEqual(["it has 960 samples per second; waveforms are measured from 2000 up"]);
  });

  it("counts samples once that two observations of one trigger repeat", async () => {
    const { waveforms, ledger } = await mapped([at(0, [voltage(100)]), at(0.006, [voltage(100, {}, 60)])]);
    expect((await read(waveforms[0])).map(([i, [v]]) => [i, v])).toEqual(
      Array.from({ length: 160 }, (_, i) => [i, 1 + i]),
    );
    expect(ledger.remarks.map(String)).toEqual([
      "log.pqd: the observation at 2027-03-01T00:00:00.006Z repeats samples of one that began before; they are counted once.",
    ]);
    const inside = await mapped([at(0, [voltage(100)]), at(0.002, [voltage(10, {}, 20)])]);
    expect(await read(inside.waveforms[0])).toHaveLength(100);
  });

  it("of two channels of one place neither is used until the setup says which", async () => {
    const both = [voltage(5, { name: "U busbar" }), voltage(5, { name: "U line" }), voltage(5, { phase: 2 })];
    const open = await mapped([at(0, both)]);
    expect(open.waveforms[0]?.channels.map((c) => c.phase)).toEqual(["L2"]);
    expect(open.reasons[0]).toContain('it is voltage L1 like channel 2 ("U line"); say in the setup, under channels:');
    const said = await mapped([at(0, both)], { channels: [{ channel: "U line", phase: "L1" }] });
    expect(said.waveforms[0]?.channels.map((c) => c.name)).toEqual(["U line", "channel"]);
  });

  it("the setup leaves channels out, names their phase and turns their sign", async () => {
    const setup: GivenSetup = {
      channels: [
        { channel: 1, inverted: true },
        { channel: "x", phase: "L3" },
        { channel: 3, ignore: true },
      ],
    };
    const { waveforms, reasons } = await mapped(
      [at(0, [voltage(2), voltage(2, { phase: 0, name: "x" }), voltage(2, { phase: 2 })])],
      setup,
    );
    expect(waveforms[0]?.channels.map((c) => c.phase)).toEqual(["L1", "L3"]);
    expect(await read(waveforms[0])).toEqual([
      [0, [-1, 1]],
      [1, [-2, 2]],
    ]);
    expect(reasons[2]).toBe("the setup leaves it out");
    await expect(mapped([at(0, [voltage(2)])], { channels: [{ channel: "none" }] })).rejects.toThrow(
      'the setup names the channel "none"',
    );
  });

  it("leaves out voltages of nothing but zeros, and says samples in another unit than theirs", async () => {
    const { waveforms, reasons } = await mapped([
      at(0, [voltage(4, { units: 7 }), samplesOf(new Float64Array(4), RATE, { phase: 2 })]),
      at(1, [voltage(4, { units: 7 }), samplesOf(new Float64Array(4), RATE, { phase: 2 })]),
    ]);
    expect(waveforms[0]?.channels.map((c) => c.phase)).toEqual(["L1"]);
    expect(reasons).toEqual([
      "samples of a voltage, phase A to neutral; its unit says A, but what is measured is a voltage, so it is taken as V",
      "all its samples are 0: its input was not connected",
    ]);
  });

  it("r.m.s. values are no points on the wave, whatever the quantity type says", async () => {
    const { waveforms, reasons } = await mapped([at(0, [voltage(4), voltage(4, { characteristic: C.RMS, phase: 2 })])]);
    expect(waveforms[0]?.channels).toHaveLength(1);
    expect(reasons[1]).toBe("it holds no points on the wave");
  });

  it("applies the transducer ratio that the settings say to apply, and the skew of a calibration", async () => {
    const settings = {
      useTransducer: true,
      useCalibration: true,
      channels: [{ definition: 0, systemSideRatio: 100, monitorSideRatio: 1, timeSkewS: 2e-5 }],
    };
    const { waveforms, ledger } = await mapped([{ ...at(0, [voltage(2, { name: "U1" })]), settings }]);
    expect(await read(waveforms[0])).toEqual([
      [0, [100]],
      [1, [200]],
    ]);
    expect(waveforms[0]?.channels[0]?.skewS).toBe(2e-5);
    expect(ledger.remarks.map(String)).toEqual([
      '"U1": values times 100/1, the transducer ratio that the file says to apply',
    ]);
  });

  it("samples whose marks say that they are missing are missing", async () => {
    const { waveforms } = await mapped([at(0, [samplesOf([1, 9e35, 3], RATE)])]);
    expect((await read(waveforms[0])).map(([, [v]]) => v)).toEqual([1, Number.NaN, 3]);
  });

  it("reads samples only when a source is read", async () => {
    const opened: string[] = [];
    const file = madeFile([at(0, [voltage(4)]), at(1, [voltage(4)])]);
    const watched = {
      ...file,
      observations: file.observations.map((o) => ({
        ...o,
        open: () => {
          opened.push(o.name);
          return o.open();
        },
      })),
    };
    const { waveforms } = await mapRecording([watched], {});
    expect(opened).toEqual(["observation 1", "observation 2"]);
    opened.length = 0;
    for await (const _ of waveforms[0]?.blocks() ?? []) if (opened.length === 1) break;
    expect(opened).toEqual(["observation 1"]);
  });

  it("holds logged series and waveforms of one log together", async () => {
    const { series, waveforms, ledger } = await mapped([
      { start: START, channels: [logOf([230, 231, 229])] },
      at(60, [voltage(4, { name: "u1(t)" })]),
    ]);
    expect([series.length, waveforms.length]).toEqual([1, 1]);
    expect(ledger.columns.map((c) => [c.position, c.header, c.meaning?.statistic, c.sampled])).toEqual([
      [1, "channel, mean", "mean", undefined],
      [2, "u1(t)", "samples", true],
    ]);
    expect(ledger.observations?.map((o) => [o.name, String(o.trigger), String(o.use), o.rows])).toEqual([
      ["observation 1", "by the clock", "logged values", 3],
      ["observation 2", "triggered by a channel", "waveforms", 4],
    ]);
  });
});

describe("runs of constant rate", () => {
  const runsOf = (seconds: ArrayLike<number>, block = 1000) => {
    const runs = new SampleRuns();
    const all = Float64Array.from(seconds);
    for (let at = 0; at < all.length; at += block) runs.take(all.subarray(at, at + block));
    return runs
      .runs()
      .map(({ first, length, samplesPerSecond }) => [first, length, Number(samplesPerSecond.toPrecision(6))]);
  };
  const even = (n: number, rate: number, from = 0) => Array.from({ length: n }, (_, i) => from + i / rate);

  it.each([1, 7, 64, 1000])("is one run in blocks of %d", (block) => {
    expect(runsOf(even(500, 6400), block)).toEqual(block === 1 ? [] : [[0, 500, 6400]]);
  });

  it("survives times rounded to single precision and to a tenth of a millisecond", () => {
    expect(runsOf(Float32Array.from(even(4000, 15_360, 100)))[0]?.slice(0, 2)).toEqual([0, 4000]);
    expect(runsOf(Float32Array.from(even(1536, 15_360)))[0]?.slice(0, 2)).toEqual([0, 1536]);
    expect(runsOf(even(900, 6400).map((t) => Math.round(t * 1e4) / 1e4))[0]?.slice(0, 2)).toEqual([0, 900]);
  });

  it("divides at a gap and at a change of rate", () => {
    expect(runsOf([...even(100, 10_000), ...even(50, 10_000, 1)])).toEqual([
      [0, 100, 10_000],
      [100, 50, 10_000],
    ]);
    expect(runsOf([...even(100, 10_000), ...even(50, 2000, 0.01)])).toEqual([
      [0, 101, 10_000],
      [101, 49, 2000],
    ]);
  });

  it("a lost sample is a gap", () => {
    expect(runsOf([...even(40, 10_000), ...even(40, 10_000, 0.0041)]).map(([first, n]) => [first, n])).toEqual([
      [0, 40],
      [40, 40],
    ]);
  });
});

it("the value type of times is the only mark of times", async () => {
  const swapped = voltage(3);
  const series = swapped.series
    .map((s) => (s.valueType === VALUE_TYPE.TIME ? { ...s, characteristic: C.RMS } : s))
    .toReversed();
  expect((await mapped([at(0, [{ ...swapped, series }])])).waveforms[0]?.length).toBe(3);
});
