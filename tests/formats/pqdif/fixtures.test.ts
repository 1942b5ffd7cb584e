import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { PqdifObservation } from "../../../src/formats/pqdif/model.js";
import { openPqdif } from "../../../src/formats/pqdif/read-file.js";
import { isoUtc } from "../../../src/recording/time.js";
import { fileOf } from "./support.js";

const open = (name: string) => openPqdif(fileOf(readFileSync(join(import.meta.dirname, "fixtures", name)), name));

async function allValues(observation: PqdifObservation | undefined): Promise<number[][][]> {
  const values = await observation?.open();
  const all: number[][][] = [];
  for (const [c, channel] of observation?.channels.entries() ?? []) {
    all.push([]);
    for (const s of channel.series.keys()) all[c]?.push([...((await values?.values(c, s)) ?? [])]);
  }
  return all;
}

/** What make-fixture.py, which shares no code with the reader, puts into the files. */
describe.each([
  ["compressed.pqd", "record"],
  ["plain.pqd", "none"],
])("%s", (name, compression) => {
  it("has the container, without the folders of the writer's computer", async () => {
    const file = await open(name);
    expect(file.container).toEqual({
      version: [1, 5, 1, 5],
      compression,
      creation: Date.UTC(2022, 8, 21, 1) * 1000,
      notes: "Ω and μ",
    });
    expect(JSON.stringify(file)).not.toContain("Users");
  });

  it("has the data source and the settings", async () => {
    const { source, settings } = (await open(name)).observations[0] ?? {};
    expect(source?.name).toBe("Feeder box, 3°");
    expect(source?.channels.map((c) => [c.name, c.phase, c.quantityMeasured, c.series.length])).toEqual([
      ["U1", 1, 1, 3],
      ["U2", 2, 1, 3],
      ["u1", 1, 1, 2],
      ["f", 13, 1, 2],
    ]);
    expect(source?.channels[0]?.quantityType).toBe("67f6af82-f753-11cf-9d89-0080c72e70a3");
    expect(source?.channels[0]?.series[1]).toEqual({
      valueType: "67f6af9a-f753-11cf-9d89-0080c72e70a3",
      units: 6,
      characteristic: "a6b31ae5-b451-11d1-ae17-0060083a2628",
      storage: 3,
    });
    expect(settings).toMatchObject({
      useTransducer: true,
      useCalibration: false,
      nominalFrequency: 50,
      channels: [{ definition: 0, systemSideRatio: 200, monitorSideRatio: 1 }],
    });
  });

  it("has the value log: steps, scaled, plain, shared, absolute, empty and whole numbers of every kind", async () => {
    const [log] = (await open(name)).observations;
    expect(log && isoUtc(log.start)).toBe("2022-09-20T00:00:00Z");
    expect(log?.channels.map(({ group }) => group)).toEqual([undefined, undefined, undefined, 5]);
    const times = [0, 600, 1200, 1800];
    const midnight = Date.UTC(2022, 8, 20) * 1000;
    expect(await allValues(log)).toEqual([
      [times, [2301, 2299, -1, 2305].map((n) => n * 0.1 + 0.5), [230.5, 230.25, 0.5, 231]],
      [times, [235, 236, 237, 65_535], []],
      [
        [midnight, midnight + 600_000_001, midnight + 1_200_000_000, midnight + 1_800_000_000],
        [50, 51, -2147483648, 49],
      ],
      [times, [0, 255, 1, 2], [-128, 127, 0, 1]],
    ]);
  });

  it("has the waveform: times rounded to the microsecond, scaled steps, steps in two segments", async () => {
    const [, wave] = (await open(name)).observations;
    expect(wave && isoUtc(wave.start)).toBe("2022-09-20T21:27:05Z");
    expect(wave?.triggered).toBe((wave?.start ?? 0) + 500_000);
    expect(wave?.triggerChannels).toEqual([1]);
    expect(await allValues(wave)).toEqual([
      [[0, 1, 2, 3, 4, 5].map((n) => n * 0.00015625 - 0.25), [0, 10, 20, 30, -20, -10]],
      [
        [0, 1, 11, 21, 31],
        [0, 1, 1, 0, 1],
      ],
    ]);
  });

  it("leaves out what is no real number, and says so", async () => {
    const file = await open(name);
    expect(await allValues(file.observations[2])).toEqual([
      [[], [], []],
      [[], [1, 0, 1], [0, 1]],
    ]);
    expect(file.warnings.map(({ what, times }) => [String(what), times])).toEqual([
      ["a series holds COMPLEX8, which is no real number, and is left out", 4],
    ]);
  });
});
