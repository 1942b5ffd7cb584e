import { describe, expect, it } from "vitest";
import { mainsSignalling } from "../../../src/analysis/waveform/mains-signalling.js";
import { SECOND } from "../../../src/recording/time.js";
import { sampled, sines, voltage } from "../../support/waveform.js";
import { farthest, measured, one } from "./support.js";

/** A carrier of 4.6 V, 2 % of Udin, on a supply with harmonics 3, 5 and 7. */
async function level(carrier: number, asked = carrier, f = 50) {
  const signal = sines([230, f], [8, 3 * f], [11, 5 * f, 70], [5, 7 * f], [4.6, carrier, 20]);
  const source = sampled([[voltage("L1"), signal]], { samplesPerSecond: 10240, seconds: 7 });
  const { series } = await measured(source, { signallingFrequencies: [asked] }, [mainsSignalling]);
  return one(series, { quantity: "mains-signalling", hertz: asked }, 3 * SECOND).values.subarray(0, 2);
}

/** IEC 61000-4-30, class A, from memory: 5 % of the reading between 3 and 15 % of Udin, 0.15 % of Udin below. */
describe("mains signalling over 3 s", () => {
  it("is right for a carrier on a spectral line", async () => {
    expect(farthest(await level(175), 2)).toBeLessThan(0.002);
    expect(farthest(await level(1060), 2)).toBeLessThan(0.002);
  });

  it.each([183.3, 216.7, 316.67, 1047.5, 2997.5])(
    "for a carrier at %d Hz, between lines, is within 0.15 % of Udin",
    async (hertz) => {
      expect(farthest(await level(hertz), 2)).toBeLessThan(0.15);
    },
  );

  it("leaves harmonics beside the carrier out", async () => {
    // Of the lines at 235, 240, 245 and 250 Hz the last is the fifth harmonic's, 4.8 % here.
    const values = await level(242.5);
    expect(farthest(values, 2)).toBeLessThan(0.15);
  });

  it("shows nothing where there is no carrier", async () => {
    expect(farthest(await level(183.3, 425), 0)).toBeLessThan(0.02);
  });

  it("is not measured beyond the recorder's band, and not at all unless asked for", async () => {
    const source = sampled([[voltage("L1"), sines([230, 50])]], { samplesPerSecond: 2000, seconds: 4 });
    const far = await measured(source, { signallingFrequencies: [1350] }, [mainsSignalling]);
    expect(far.series).toEqual([]);
    expect(far.remarks.join()).toContain("1350 Hz");
    expect(await measured(source, {}, [mainsSignalling])).toMatchObject({
      series: [],
      events: [],
      unavailable: [],
      remarks: [],
    });
  });
});
