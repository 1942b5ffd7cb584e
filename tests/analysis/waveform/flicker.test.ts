import { describe, expect, it, vi } from "vitest";
import { bandFor } from "../../../src/analysis/waveform/band.js";
import { FlaggedSpans } from "../../../src/analysis/waveform/flagged-spans.js";
import { flicker, slidingPlt } from "../../../src/analysis/waveform/flicker.js";
import { Flickermeter } from "../../../src/analysis/waveform/flickermeter.js";
import { phenomena } from "../../../src/analysis/waveform/index.js";
import type { ChainSetup, PhenomenonResult, PhenomenonState } from "../../../src/analysis/waveform/phenomenon.js";
import type { IntervalSeries } from "../../../src/recording/measurements.js";
import type { Phase, Quantity } from "../../../src/recording/quantity.js";
import { HOUR, MINUTE, SECOND } from "../../../src/recording/time.js";
import type { WaveformChannel } from "../../../src/recording/waveform.js";
import { SampleHistory } from "../../../src/signal/sample-history.js";
import { intervals, START } from "../../support/series.js";

const RATE = 2000;

const channel = (quantity: "voltage" | "current", phase: Phase): WaveformChannel => ({
  name: `${quantity} ${phase}`,
  quantity,
  phase,
  skewS: 0,
});

function setup(options: Partial<ChainSetup> = {}): ChainSetup {
  return {
    channels: [channel("voltage", "L1")],
    samplesPerSecond: RATE,
    start: START,
    length: 0,
    nominalFrequency: 50,
    declaredVoltage: 230,
    connection: "star",
    options: {},
    flags: new FlaggedSpans(),
    history: new SampleHistory(1, RATE),
    band: bandFor(RATE, 50, 0),
    ...options,
  };
}

/** Five seconds that may be repeated: 50 Hz with 8.8 Hz sinusoidal modulation. */
const flickering = (depth: number) =>
  Float64Array.from(
    { length: 5 * RATE },
    (_, n) =>
      325 * Math.sin((2 * Math.PI * 50 * n) / RATE) * (1 + (depth / 2) * Math.sin((2 * Math.PI * 8.8 * n) / RATE)),
  );

/** Hands over samples `from` … `to` of repeated patterns, one per channel, in blocks of `size`. */
function feed(state: PhenomenonState, patterns: readonly Float64Array[], from: number, to: number, size = 5 * RATE) {
  for (let first = from; first < to; first += size) {
    const length = Math.min(size, to - first);
    const samples = patterns.map((pattern) => {
      const at = first % pattern.length;
      if (at + length <= pattern.length) return pattern.subarray(at, at + length);
      return Float64Array.from({ length }, (_, i) => pattern[(at + i) % pattern.length] as number);
    });
    state.samples?.({ first, samples });
  }
}

function series(result: PhenomenonResult, quantity: Quantity, phase: Phase = "L1"): IntervalSeries {
  const found = result.series?.find((s) => s.quantity === quantity && s.phase === phase);
  if (found === undefined) throw new Error(`no ${quantity} on ${phase}`);
  return found;
}

const minutes = (n: number) => Math.round(n * 60 * RATE);
const offsets = (s: IntervalSeries) => [...s.starts].map((t) => (t - START) / MINUTE);

/** Pst of the 8.8 Hz row of Table 1, IEC 61000-4-15, whose Pinst is all but constant: √0.5096 less half of the 3 % ripple. */
const UNIT_PST = 0.712;

describe("flicker from waveforms", () => {
  it("is one of the phenomena that are measured", () => {
    expect(phenomena()).toContain(flicker);
  });

  it("gives Pst on the ten-minute ticks and Plt on the two-hour blocks of the clock, per voltage", () => {
    const channels = [
      channel("voltage", "L1"),
      channel("current", "L1"),
      channel("voltage", "N"),
      channel("voltage", "L2"),
    ];
    const state = flicker.start(setup({ channels, start: START + 4 * MINUTE }));
    const [one, two, none] = [flickering(0.0025), flickering(0.005), new Float64Array(5 * RATE)];
    feed(state, [one, none, none, two], 0, minutes(121));
    const result = state.finish();
    expect(result.series?.map((s) => `${s.quantity} ${s.phase}`)).toEqual(["pst L1", "plt L1", "pst L2", "plt L2"]);
    for (const [phase, factor] of [
      ["L1", 1],
      ["L2", 2],
    ] as const) {
      const pst = series(result, "pst", phase);
      expect(offsets(pst)).toEqual([0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100, 110, 120]);
      for (const value of pst.values) expect(value).toBeCloseTo(factor * UNIT_PST, 2);
      expect(pst.coverage[0]).toBeCloseTo(0.5, 3);
      expect([...pst.coverage.subarray(1, 12)]).toEqual(Array(11).fill(1));
      expect(pst.coverage[12]).toBeCloseTo(0.5, 3);
      const plt = series(result, "plt", phase);
      expect(offsets(plt)).toEqual([0]);
      expect(plt.interval).toBe(2 * HOUR);
      expect(plt.coverage[0]).toBeCloseTo(11 / 12, 9);
      expect(plt.values[0]).toBeCloseTo(factor * UNIT_PST, 2);
    }
    expect(result.unavailable).toEqual([]);
    expect(String(result.remarks?.[0])).toMatch(/230 V lamp at 50 Hz.*first 60 s/);
  });

  it("leaves out the time of a gap and of settling after it, and keeps the ticks", () => {
    const state = flicker.start(setup());
    const pattern = [flickering(0.0025)];
    feed(state, pattern, 0, minutes(15));
    feed(state, pattern, minutes(42), minutes(60));
    const pst = series(state.finish(), "pst");
    expect(offsets(pst)).toEqual([0, 10, 40, 50]);
    for (const [i, share] of [0.9, 0.5, 0.7, 1].entries()) expect(pst.coverage[i]).toBeCloseTo(share, 3);
    for (const value of pst.values) expect(value).toBeCloseTo(UNIT_PST, 2);
  });

  it("does not depend on the blocks, at a rate that has no sample on the tick", () => {
    const run = (size: number) => {
      const state = flicker.start(setup({ start: START + 8 * MINUTE + 123, samplesPerSecond: 2000.7 }));
      feed(state, [flickering(0.01)], 0, minutes(5), size);
      return series(state.finish(), "pst");
    };
    const whole = run(minutes(5));
    expect(offsets(whole)).toEqual([0, 10]);
    for (const size of [777, 5 * RATE, 123457]) expect(run(size)).toEqual(whole);
  });

  it.each([
    { offset: 0, before: 240_000 },
    { offset: 123, before: 240_000 },
    { offset: -100, before: 240_001 },
  ])("closes the interval at the first sample from the tick on, begun $offset µs past 2 min before it", (row) => {
    const push = vi.spyOn(Flickermeter.prototype, "push");
    const close = vi.spyOn(Flickermeter.prototype, "closeInterval");
    const state = flicker.start(setup({ start: START + 8 * MINUTE + row.offset }));
    feed(state, [flickering(0.0025)], 0, minutes(3), 7777);
    const closed = close.mock.invocationCallOrder[0] as number;
    const pushed = push.mock.calls.filter((_, i) => (push.mock.invocationCallOrder[i] as number) < closed);
    vi.restoreAllMocks();
    expect(pushed.reduce((sum, [, from, to]) => sum + to - from, 0)).toBe(row.before);
  });

  it("flags the interval that a dip, swell or interruption falls into", () => {
    const flags = new FlaggedSpans();
    const state = flicker.start(setup({ flags }));
    feed(state, [flickering(0.0025)], 0, minutes(30));
    flags.mark(minutes(19.999), minutes(20) - 1);
    expect([...series(state.finish(), "pst").flagged]).toEqual([0, 1, 0]);
  });

  it("says why there is no Pst of a short recording", () => {
    const state = flicker.start(setup());
    feed(state, [flickering(0.0025)], 0, minutes(0.9));
    const { series: none, unavailable } = state.finish();
    expect(none).toEqual([]);
    expect(unavailable).toMatchObject([{ quantity: "pst", phase: "L1" }]);
    expect(String(unavailable?.[0]?.reason)).toContain("60 s");
  });

  it("takes the lamp from the options", () => {
    const run = (lamp?: 230 | 120) => {
      const state = flicker.start(setup(lamp === undefined ? {} : { options: { lamp } }));
      feed(state, [flickering(0.0025)], 0, minutes(20));
      return state.finish();
    };
    expect(run(230)).toEqual(run());
    const ratio = (series(run(120), "pst").values[1] as number) / (series(run(230), "pst").values[1] as number);
    expect(ratio).toBeCloseTo(0.25 / 0.321, 2);
    expect(String(run(120).remarks?.[0])).toContain("120 V lamp");
  });
});

describe("sliding Plt", () => {
  it("covers any twelve valid Pst in a row", () => {
    const values = [...Array(12).fill(0), 2, 2, Number.NaN, ...Array(12).fill(1)] as number[];
    const sliding = slidingPlt(intervals("pst", "L1", values));
    expect(offsets(sliding)).toEqual([0, 10, 20, 150]);
    const expected = [0, Math.cbrt(8 / 12), Math.cbrt(16 / 12), 1];
    for (const [i, plt] of expected.entries()) expect(sliding.values[i]).toBeCloseTo(plt, 12);
  });

  it("carries the flag of any of the twelve and does not reach over a missing interval", () => {
    const pst = intervals("pst", "L1", Array(13).fill(1), { flagged: [1, ...Array(12).fill(0)] });
    expect([...slidingPlt(pst).flagged]).toEqual([1, 0]);
    const starts = pst.starts.map((t, i) => (i < 6 ? t : t + 10 * MINUTE));
    expect(slidingPlt({ ...pst, starts }).values).toHaveLength(0);
  });

  it("has its highest value named in a remark", () => {
    const state = flicker.start(setup({ start: START - 10 * SECOND }));
    feed(state, [flickering(0.0025)], 0, minutes(131));
    const remark = state.finish().remarks?.find((r) => String(r).startsWith("The highest Plt"));
    expect(String(remark)).toMatch(/is 0\.71\d on L1, from 2026-03-02T00:10:00Z/);
  });
});
