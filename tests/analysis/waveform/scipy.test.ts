import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { frequency } from "../../../src/analysis/waveform/frequency.js";
import { harmonics } from "../../../src/analysis/waveform/harmonics.js";
import { magnitude } from "../../../src/analysis/waveform/magnitude.js";
import { power } from "../../../src/analysis/waveform/power.js";
import { unbalance } from "../../../src/analysis/waveform/unbalance.js";
import type { Phase, Quantity } from "../../../src/recording/quantity.js";
import { SECOND } from "../../../src/recording/time.js";
import { START } from "../../support/series.js";
import { type Component, current, sampled, scaled, sines, voltage } from "../../support/waveform.js";
import { measured, one, seen } from "./support.js";

interface Fixture {
  readonly rate: number;
  readonly seconds: number;
  readonly dip: readonly [number, number, number];
  readonly signals: Readonly<Record<string, readonly Component[]>>;
  readonly noise: Readonly<Record<string, number>>;
  readonly windows: readonly {
    readonly from: number;
    readonly rms: readonly number[];
    readonly harmonics: Readonly<Record<string, readonly number[]>>;
    readonly interharmonics: readonly number[];
    readonly u2: number;
    readonly u0: number;
    readonly power: number;
  }[];
  readonly halfCycles: readonly { readonly from: number; readonly rms: number }[];
  readonly frequency: number;
}

/** Made by tests/fixtures/make-chain-fixture.py with NumPy and SciPy, which says how. */
const fixture = JSON.parse(readFileSync(new URL("../../fixtures/chain.json", import.meta.url), "utf8")) as Fixture;

/** The generator of the script: uniform in −1 … 1. */
function noise(seed: number, count: number): Float64Array {
  let state = seed;
  return Float64Array.from({ length: count }, () => {
    state = (Math.imul(1664525, state) + 1013904223) >>> 0;
    return state / 2 ** 31 - 1;
  });
}

const CHANNELS = Object.entries(fixture.signals).map(([name, components], i) => {
  const [quantity, phase] = name.split(" ") as ["voltage" | "current", Phase];
  const [from, to, factor] = fixture.dip;
  const clean = name === "voltage L1" ? scaled(sines(...components), from, to, factor) : sines(...components);
  const added = noise(i + 1, fixture.rate * fixture.seconds);
  const size = fixture.noise[name] as number;
  const signal = (t: number) => clean(t) + size * (added[Math.round(t * fixture.rate)] as number);
  return [quantity === "voltage" ? voltage(phase) : current(phase), signal] as const;
});

const source = sampled(CHANNELS, { samplesPerSecond: fixture.rate, seconds: fixture.seconds });
const all = await measured(source, { levels: ["window"] }, [frequency, magnitude, harmonics, unbalance, power]);

/** Value of a series in the window that begins at a sample position, to 2 ms. */
function at(from: number, quantity: Quantity, phase: Phase, order?: number): number {
  const s = one(all.series, { quantity, phase, ...(order !== undefined && { order }) }, SECOND / 5);
  const start = START + (from / fixture.rate) * SECOND;
  return s.values[s.starts.findIndex((t) => Math.abs(t - start) < 2000)] as number;
}

/** Within three cycles of an edge of the dip the tracking of cycles is a little off, and spectra with it. */
function nearDip(from: number): boolean {
  const [start, end] = fixture.dip.map((t) => t * fixture.rate) as [number, number, number];
  const cycle = fixture.rate / 49.87;
  return from - 3 * cycle < end && from + 13 * cycle > start;
}

describe("the chain and NumPy/SciPy", () => {
  it("agree on the frequency to 0.1 mHz", () => {
    const f = one(all.series, { quantity: "frequency" });
    expect(Math.abs((f.values[0] as number) - fixture.frequency)).toBeLessThan(1e-4);
  });

  it.each(fixture.windows)(
    "agree on r.m.s. to 0.02 %, P to 0.05 %, u2 and u0 to 0.02 in the window at $from",
    (window) => {
      const { from, rms } = window;
      for (const [i, [{ quantity, phase }]] of CHANNELS.entries()) {
        expect(Math.abs(at(from, quantity, phase) / (rms[i] as number) - 1)).toBeLessThan(2e-4);
      }
      expect(Math.abs(at(from, "negative-sequence-unbalance", "system") - window.u2)).toBeLessThan(0.02);
      expect(Math.abs(at(from, "zero-sequence-unbalance", "system") - window.u0)).toBeLessThan(0.02);
      expect(Math.abs(at(from, "active-power", "L1") / window.power - 1)).toBeLessThan(5e-4);
    },
  );

  it.each(fixture.windows)(
    "agree on harmonics and interharmonics to 0.01 %, near the dip 0.2 %, of U1 in the window at $from",
    (window) => {
      const { from, harmonics: spectra, interharmonics } = window;
      const u = spectra["voltage L1"] as readonly number[];
      const i = spectra["current L1"] as readonly number[];
      const percent = 100 / (u[0] as number);
      const tolerance = nearDip(from) ? 0.2 : 0.01;
      for (let n = 2; n <= 50; n++) {
        expect(Math.abs(at(from, "harmonic-voltage", "L1", n) - percent * (u[n - 1] as number))).toBeLessThan(
          tolerance,
        );
        expect(Math.abs(at(from, "harmonic-current", "L1", n) - (i[n - 1] as number))).toBeLessThan(
          12 * tolerance * 0.01,
        );
      }
      for (let n = 0; n < 50; n++) {
        const found = at(from, "interharmonic-voltage", "L1", n);
        expect(Math.abs(found - percent * (interharmonics[n] as number))).toBeLessThan(tolerance);
      }
    },
  );

  it("agree on Urms(1/2) through the dip to 0.02 % of Udin where no edge falls into it, else to 0.2 %", async () => {
    const { halves } = await seen(source);
    const [start, end] = fixture.dip.map((t) => t * fixture.rate) as [number, number, number];
    for (const { from, rms } of fixture.halfCycles) {
      const half = halves.find((h) => Math.abs(h.from - from) < fixture.rate / 500);
      const to = from + fixture.rate / 49.87;
      const onEdge = [start, end].some((edge) => from < edge && to > edge);
      expect(Math.abs((half?.oneCycle[0] ?? 0) - rms) / 230).toBeLessThan(onEdge ? 2e-3 : 2e-4);
    }
  });
});
