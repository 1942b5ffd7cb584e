import { describe, expect, it } from "vitest";
import { measure } from "../../src/analysis/index.js";
import type { LoggedSeries, Recording } from "../../src/recording/recording.js";
import { MINUTE, SECOND } from "../../src/recording/time.js";
import type { WaveformSource } from "../../src/recording/waveform.js";
import { logged, START } from "../support/series.js";
import { sampled, scaled, sines, voltage } from "../support/waveform.js";

const POINT = { connection: "star", declaredVoltage: 230, nominalFrequency: 50 } as const;

function recording(series: readonly LoggedSeries[], waveforms: readonly WaveformSource[] = []): Recording {
  return {
    kind: waveforms.length > 0 ? "waveforms" : "logged-series",
    sources: [],
    start: START,
    end: START + 60 * MINUTE,
    series,
    waveforms,
    ledger: {
      columns: [],
      timeBase: { zone: "UTC", zoneOrigin: "given", intervalLabel: "start", labelOrigin: "given", stampForm: "test" },
      remarks: [],
      duplicates: 0,
      conflicts: [],
      outOfOrder: 0,
      unplaced: 0,
      clockSteps: [],
      clockChanges: [],
    },
  };
}

const asked = { from: START + 15 * MINUTE, to: START + 25 * MINUTE };
const supplyOf = async (...parts: Parameters<typeof recording>) =>
  (await measure(recording(...parts), POINT, [], {}, [asked])).supply;

describe("the judged voltages by the shortest intervals at hand", () => {
  it("slides over what was logged at less than ten minutes, and answers a span by it", async () => {
    const minutes = Array.from({ length: 60 }, (_, i) => 230 + (i % 4));
    const found = await supplyOf([
      logged("voltage", "L1", minutes.slice(0, 12), { interval: 5 * MINUTE }),
      logged("voltage", "L1", minutes, { interval: MINUTE }),
    ]);
    expect(found?.sliding).toHaveLength(1);
    expect(found?.sliding[0]).toMatchObject({ phase: "L1", interval: MINUTE, n: 51, passed: [] });
    // Windows that begin at 230 or 231 V hold three of them and two of the others: Σ of ten = 3·(a² + b²) + 2·(c² + d²).
    const square = (...w: readonly number[]) =>
      [230, 231, 232, 233].reduce((sum, v, i) => sum + (w[i] ?? 0) * v * v, 0);
    expect(found?.sliding[0]?.lowest.value).toBeCloseTo(Math.sqrt(square(3, 3, 2, 2) / 10), 9);
    expect(found?.sliding[0]?.highest.value).toBeCloseTo(Math.sqrt(square(2, 2, 3, 3) / 10), 9);
    expect(found?.bounds).toEqual([]);
    expect(found?.spans).toHaveLength(1);
    expect(found?.spans[0]).toMatchObject({
      asked,
      interval: MINUTE,
      n: 10,
      lowest: 230,
      highest: 233,
      ...{ start: asked.from, end: asked.to },
    });
    // Minutes 15 to 24: 233 | 230 … 233 | 230 … 233 | 230.
    expect(found?.spans[0]?.mean).toBeCloseTo(Math.sqrt(square(3, 2, 2, 3) / 10), 9);
    expect(found?.spans[0]).not.toHaveProperty("inner");
  });

  it("gives the bound of a ten-minute log with extremes, and its own values for the span", async () => {
    const series = logged("voltage", "L2", [230, 231, 232, 233]);
    const low = series.values.map((v) => v - 5);
    const high = series.values.map((v) => v + 5);
    const found = await supplyOf([{ ...series, min: low, max: high }]);
    expect(found?.sliding).toEqual([]);
    expect(found?.bounds).toHaveLength(1);
    expect(found?.bounds[0]).toMatchObject({ phase: "L2", limit: 253, pairs: 3, possible: 0 });
    // The span overlaps the second and third interval.
    expect(found?.spans[0]).toMatchObject({
      n: 2,
      start: START + 10 * MINUTE,
      end: START + 30 * MINUTE,
      lowest: 231,
      highest: 232,
      inner: { lowest: 226, highest: 237 },
    });
    expect((await supplyOf([series]))?.bounds).toEqual([]);
  });

  it("leaves out what is not judged, and a span that nothing was logged in", async () => {
    const values = Array.from({ length: 12 }, () => 400);
    const found = await supplyOf([
      logged("voltage", "L12", values, { interval: MINUTE }),
      logged("current", "L1", values, { interval: MINUTE }),
    ]);
    expect(found).toEqual({ sliding: [], bounds: [], spans: [] });
    const early = await supplyOf([logged("voltage", "L1", values, { interval: MINUTE })]);
    expect(early?.sliding).toHaveLength(1);
    expect(early?.spans).toEqual([]);
  });

  it("takes the longer series where the shorter one has no full window", async () => {
    const found = await supplyOf([
      logged("voltage", "L1", [230, 230, 230], { interval: MINUTE }),
      logged(
        "voltage",
        "L1",
        Array.from({ length: 6 }, () => 235),
        { interval: 5 * MINUTE },
      ),
    ]);
    expect(found?.sliding[0]).toMatchObject({ interval: 5 * MINUTE, n: 5 });
    expect(found?.spans[0]).toMatchObject({ interval: 5 * MINUTE, n: 2, lowest: 235 });
  });

  it("measures both from samples, window by window", async () => {
    // 22 min at 240 V with 256 V from minute 2 to 14; over 10/12-cycle intervals, at a rate that keeps the test quick.
    const signal = scaled(sines([240, 50]), 120, 840, 256 / 240);
    const source = sampled([[voltage("L1"), signal]], { samplesPerSecond: 2000, seconds: 1320 });
    const found = await supplyOf([], [source]);
    const [sliding] = found?.sliding ?? [];
    expect(sliding?.interval).toBe(SECOND / 5);
    expect(sliding?.highest.value).toBeCloseTo(256, 3);
    expect(sliding?.passed).toHaveLength(1);
    const [passing] = sliding?.passed ?? [];
    // The mean passes 253 V when 600·(253² − 240²)/(256² − 240²) = 484.65 s of the window are at 256 V.
    expect(Math.abs((passing?.start ?? 0) - (START + (120 + 484.65) * SECOND))).toBeLessThan(0.5 * SECOND);
    expect(passing?.complete).toBe(true);
    expect(passing?.peak).toBeCloseTo(256, 3);
    // Below again when less than 484.65 s of 256 V are left in the window: 115.35 s after minute 14.
    const end = (passing?.start ?? 0) + (passing?.durationS ?? 0) * SECOND;
    expect(Math.abs(end - (START + (840 + 115.35) * SECOND))).toBeLessThan(0.5 * SECOND);
    const [span] = found?.spans ?? [];
    expect(span?.n).toBeGreaterThan(2000);
    expect(span?.lowest).toBeCloseTo(240, 2);
    expect(span?.highest).toBeCloseTo(240, 2);
  }, 60_000);
});
