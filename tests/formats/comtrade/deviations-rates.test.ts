import { describe, expect, it } from "vitest";
import {
  field,
  LINES,
  largestDifference,
  record,
  reopen,
  rowHeads,
  rows,
  START,
  STEP,
  samplesOf,
  sines,
  withLine,
} from "./support.js";

/**
 * Ways in which real files differ from the standard, as seen in public files, issue reports and comments of open
 * readers. Every case must give what the sound file gives.
 */
describe("sampling rates", () => {
  it("may drift over 83 segments, which become one source at the mean rate", async () => {
    const rates = Array.from({ length: 83 }, (_, i) => [
      3200 + ((i * 7) % 11) / 10 - 0.5,
      i === 82 ? 640 : (i + 1) * 7,
    ]);
    const cfg = (text: string) =>
      withLine(LINES.rate, rates.map((r) => r.join(",")).join("\r\n"))(withLine(LINES.rateCount, "83")(text));
    const { sources, remarks } = await reopen({}, { cfg });
    let [seconds, last] = [0, 0];
    for (const [rate = 0, end = 0] of rates) {
      seconds += (end - last) / rate;
      last = end;
    }
    expect(sources).toHaveLength(1);
    expect(sources[0]?.length).toBe(640);
    expect(sources[0]?.samplesPerSecond).toBeCloseTo(640 / seconds, 9);
    expect(remarks.map(String)).toEqual([expect.stringMatching(/83 sampling rates that differ by less than 0.1 %/)]);
  });

  it("that really differ become separate sources, each at its time", async () => {
    const cfg = (text: string) =>
      withLine(LINES.rate, "3200,320\r\n1600,480\r\n3200,640")(withLine(LINES.rateCount, "3")(text));
    const { sources } = await reopen({}, { cfg });
    expect(sources.map(({ start, length, samplesPerSecond }) => [start - START, length, samplesPerSecond])).toEqual([
      [0, 320, 3200],
      [100_000, 160, 1600],
      [200_000, 160, 3200],
    ]);
    const truth = sines(record());
    const parts = await Promise.all(sources.map(samplesOf));
    const joined = Float64Array.from(parts.flatMap(([first]) => [...(first ?? [])]));
    expect(largestDifference(joined, truth[0])).toBeLessThan(STEP);
  });

  it("that really differ divide text rows as well", async () => {
    const cfg = (text: string) => withLine(LINES.rate, "3200,320\r\n1600,640")(withLine(LINES.rateCount, "2")(text));
    const { sources } = await reopen({ kind: "ASCII" }, { cfg });
    const truth = sines(record());
    expect(sources.map(({ length }) => length)).toEqual([320, 320]);
    const [, second] = await Promise.all(sources.map(samplesOf));
    expect(largestDifference(second?.[1], truth[1]?.subarray(320))).toBeLessThan(STEP);
  });

  const stamped = (text: string) => withLine(LINES.rate, "0,640")(withLine(LINES.rateCount, "0")(text));
  it.each([
    ["even", 1, (i: number) => i * 312.5],
    ["beginning late", 1, (i: number) => 72_500 + i * 312.5],
    ["running over 32 bits", 1, (i: number) => (2 ** 32 - 100_000 + Math.round(i * 312.5)) % 2 ** 32],
    ["cut to 16 bits", 1, (i: number) => Math.round(i * 312.5) % 65_536],
    ["with a factor", 2.5, (i: number) => Math.round(i * 125)],
  ])("may be missing where the time stamps are even: %s", async (_, factor, stamp) => {
    const cfg = (text: string) => withLine(LINES.factor, String(factor))(stamped(text));
    for (const kind of ["BINARY", "ASCII"] as const) {
      const dat =
        kind === "BINARY"
          ? rowHeads(4, (i) => Math.round(stamp(i)))
          : rows((row, i) => field(1, String(Math.round(stamp(i))))(row));
      const { sources, remarks } = await reopen({ kind }, { cfg, dat });
      expect(sources).toHaveLength(1);
      // Stamps in whole microseconds (times the factor) over 0.2 s.
      expect(Math.abs((sources[0]?.samplesPerSecond ?? 0) / 3200 - 1)).toBeLessThan((1e-6 * factor) / 0.1996875);
      expect(remarks.map(String)).toEqual([
        expect.stringMatching(/no sampling rate is stated; by the time stamps it is 3(199.9|200)/),
      ]);
    }
  });

  it("may be 0 in the one line that follows a count of 1", async () => {
    const { sources } = await reopen({}, { cfg: withLine(LINES.rate, "0,  640") });
    expect(sources[0]?.samplesPerSecond).toBeCloseTo(3200, 0);
  });

  it("are nanoseconds where the stamp of 2013 has nine decimals", async () => {
    const cfg = (text: string) => withLine(LINES.first, "03/03/2026,10:20:30.123456000")(stamped(text));
    const dat = rowHeads(4, (i) => i * 312_500);
    const { sources } = await reopen({ edition: 2013 }, { cfg, dat });
    expect(sources[0]?.start).toBe(START);
    expect(sources[0]?.samplesPerSecond).toBeCloseTo(3200, 9);
  });

  it("cannot come from uneven or missing time stamps", async () => {
    const uneven = rowHeads(4, (i) => i * 312 + (i > 300 ? 200 : 0));
    await expect(reopen({}, { cfg: stamped, dat: uneven })).rejects.toThrow(
      "mill.dat: the configuration states no sampling rate and the time stamps are uneven (steps of 0.312 ms to 0.512 ms)",
    );
    const missing = rowHeads(4, () => 0xffffffff);
    await expect(reopen({}, { cfg: stamped, dat: missing })).rejects.toThrow("the rows have no time stamps");
  });
});
