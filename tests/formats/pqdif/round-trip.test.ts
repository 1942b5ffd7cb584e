import { describe, expect, it } from "vitest";
import { CHARACTERISTIC } from "../../../src/formats/pqdif/characteristics.js";
import { DISTURBANCE } from "../../../src/formats/pqdif/disturbances.js";
import { QUANTITY_TYPE, VALUE_TYPE } from "../../../src/formats/pqdif/identifiers.js";
import { openPqdif } from "../../../src/formats/pqdif/read-file.js";
import type { ValueType, WrittenSeries } from "../../../src/formats/pqdif/write-description.js";
import { SECOND } from "../../../src/recording/time.js";
import {
  bytesOf,
  fileOf,
  INCREMENT,
  observationOf,
  real8,
  reopened,
  SCALED,
  START,
  sourceOf,
  VALUES,
  valueLog,
} from "./support.js";

const FORMS = [{}, { compressed: false }, { embed: false }, { compressed: false, embed: false }];

/** Reads the second series of a channel whose first is a time series. */
async function readBack(series: WrittenSeries, storage: number, form = {}): Promise<number[]> {
  const source = sourceOf(valueLog("U", 1, VALUES, storage));
  const file = await reopened([source, observationOf({ definition: 0, series: [real8(0, 1, 2), series] })], form);
  expect(file.warnings).toEqual([]);
  const values = await (await file.observations[0]?.open())?.values(0, 1);
  expect(file.observations[0]?.channels[0]?.series[1]?.count).toBe(values?.length);
  return [...(values ?? [])];
}

describe("values written and read again", () => {
  const examples: readonly (readonly [ValueType, readonly number[]])[] = [
    ["BOOLEAN1", [0, 1, 1]],
    ["BOOLEAN2", [1, 0, 1]],
    ["BOOLEAN4", [0, 0, 1]],
    ["INTEGER1", [-128, 0, 127]],
    ["INTEGER2", [-32_768, -1, 32_767]],
    ["INTEGER4", [-2_147_483_648, 5, 2_147_483_647]],
    ["UNS_INTEGER1", [0, 128, 255]],
    ["UNS_INTEGER2", [0, 32_768, 65_535]],
    ["UNS_INTEGER4", [0, 2_147_483_648, 4_294_967_295]],
    ["REAL4", [-1.5, 0, 230.25]],
    ["REAL8", [-1e-9, Math.PI, 1e30]],
    ["TIMESTAMPPQDIF", [START, START + 1, START + 86_399_999_999]],
  ];
  it.each(examples)("keeps %s", async (type, values) => {
    for (const form of FORMS) expect(await readBack({ type, values }, VALUES, form)).toEqual(values);
  });

  it("multiplies by the scale and adds the offset in double arithmetic where the definition says so", async () => {
    const series = { type: "INTEGER2", values: [-10, 0, 312.7], scale: 0.1, offset: 2 } as const;
    const read = await readBack(series, VALUES + SCALED);
    expect(read).toEqual([-120 * 0.1 + 2, -20 * 0.1 + 2, 3107 * 0.1 + 2]);
  });

  it("ignores scale and offset without that bit", async () => {
    expect(await readBack({ type: "INTEGER2", values: [20, 30], scale: 10, offset: 10 }, VALUES)).toEqual([1, 2]);
  });

  it("takes storage method 0 for plain values", async () => {
    expect(await readBack({ type: "REAL8", values: [1, 2] }, 0)).toEqual([1, 2]);
  });

  it("unfolds steps without adding up rounding", async () => {
    const rate = 1 / 10_240;
    const read = await readBack({ type: "REAL8", steps: [[4000, rate]] }, INCREMENT, { compressed: false });
    expect(read.length).toBe(4000);
    expect(read.map((value, i) => value - i * rate).every((rest) => rest === 0)).toBe(true);
  });

  it("steps into a segment by its own rate", async () => {
    const steps = [
      [3, 1],
      [0, 99],
      [2, 10],
    ] as const;
    expect(await readBack({ type: "REAL4", steps }, INCREMENT)).toEqual([0, 1, 2, 12, 22]);
  });

  it("scales steps", async () => {
    const series = { type: "INTEGER4", steps: [[3, 5]], scale: 0.5, offset: 7 } as const;
    expect(await readBack(series, INCREMENT + SCALED)).toEqual([7, 9.5, 12]);
  });

  it("refuses to write what the type cannot hold", async () => {
    const written = bytesOf([observationOf({ definition: 0, series: [{ type: "INTEGER2", values: [32_768] }] })]);
    await expect(written).rejects.toThrow(new RangeError("32768 cannot be written as INTEGER2"));
  });
});

describe("series that are shared", () => {
  const shared = (channel: number, series: number): WrittenSeries => ({ share: { channel, series } });
  const source = sourceOf(
    valueLog("U1", 1, INCREMENT),
    valueLog("U2", 2, INCREMENT, SCALED),
    valueLog("U3", 3, INCREMENT, SCALED),
  );

  it("have the values of the channel instance they name, over several hops", async () => {
    const file = await reopened([
      source,
      observationOf(
        { definition: 2, series: [shared(1, 0), real8(5, 6, 7)] },
        { definition: 0, series: [shared(2, 0), real8(1, 2, 3)] },
        {
          definition: 1,
          series: [
            { type: "REAL8", steps: [[3, 600]] },
            { type: "INTEGER2", values: [] },
          ],
        },
      ),
    ]);
    const values = await file.observations[0]?.open();
    expect(file.observations[0]?.channels.map(({ series }) => series.map(({ count }) => count))).toEqual([
      [3, 3],
      [3, 3],
      [3, 0],
    ]);
    expect([...((await values?.values(0, 0)) ?? [])]).toEqual([0, 600, 1200]);
    expect(await values?.values(2, 1)).toEqual(new Float64Array());
  });

  it("take scale and offset along, unless they have their own", async () => {
    const stored = { type: "INTEGER2", values: [10, 20], scale: 10, offset: 0 } as const;
    const file = await reopened([
      source,
      observationOf(
        { definition: 1, series: [real8(0, 1), stored] },
        { definition: 2, series: [real8(0, 1), shared(0, 1)] },
        { definition: 2, series: [real8(0, 1), { ...shared(0, 1), offset: 5 }] },
      ),
    ]);
    const values = await file.observations[0]?.open();
    expect([...((await values?.values(1, 1)) ?? [])]).toEqual([10, 20]);
    expect([...((await values?.values(2, 1)) ?? [])]).toEqual([6, 7]);
  });

  it("are empty, with a warning, where they share in a circle or with nothing", async () => {
    const file = await reopened([
      source,
      observationOf(
        { definition: 0, series: [shared(1, 0), real8(1)] },
        { definition: 0, series: [shared(0, 0), shared(7, 1)] },
      ),
    ]);
    expect(file.warnings.map(({ what, times }) => [String(what), times])).toEqual([
      ["series share one another's values in a circle", 2],
      ["a series shares the values of series 1 of channel 7, which there is not", 1],
    ]);
    expect(file.observations[0]?.channels.map(({ series }) => series.map(({ count }) => count))).toEqual([
      [0, 1],
      [0, 0],
    ]);
    expect(await (await file.observations[0]?.open())?.values(0, 0)).toEqual(new Float64Array());
  });
});

describe("records written and read again", () => {
  const settings = (effective: number | undefined, systemSideRatio: number) => ({
    settings: {
      ...(effective !== undefined && { effective }),
      nominalFrequency: 50,
      connection: 4,
      useTransducer: true,
      useCalibration: false,
      channels: [{ definition: 0, systemSideRatio, monitorSideRatio: 1, timeSkewS: 0, triggerLow: 207 }],
    },
  });

  it("keep what an event says of itself", async () => {
    const event = {
      name: "Dip",
      start: START,
      triggered: START + SECOND / 8,
      triggerMethod: 1,
      triggerChannels: [1],
      disturbance: DISTURBANCE.SHORTDUR_INSTANT_SAG,
      characteristics: { magnitude: 70, durationS: 0.1, frequency: 50 },
    };
    const channels = [
      { definition: 0, series: [real8(0), real8(1)] },
      { definition: 0, group: 7, frequency: 350, characteristics: { magnitude: 71 }, series: [real8(0), real8(1)] },
    ];
    for (const form of FORMS) {
      const file = await reopened([sourceOf(valueLog("U", 1)), { observation: { ...event, channels } }], form);
      expect(file.observations[0]).toMatchObject(event);
      expect(file.observations[0]?.channels[1]).toMatchObject({
        definitionIndex: 0,
        group: 7,
        frequency: 350,
        characteristics: { magnitude: 71 },
      });
    }
  });

  it("keep the definitions, and harmonic groups of one definition", async () => {
    const definition = {
      name: "Harmonics",
      phase: 3,
      quantityType: QUANTITY_TYPE.VALUELOG,
      quantityMeasured: 1,
      group: "spectrum",
      series: [
        {
          valueType: VALUE_TYPE.AVG,
          units: 19,
          characteristic: CHARACTERISTIC.SPECTRA_HGROUP,
          storage: VALUES,
          nominal: 100,
          percentile: 95,
          probabilityIntervalS: 600,
          resolution: 0.01,
        },
      ],
    };
    const details = { serialNumber: "A 17", timeZone: "Europe/Vienna", utcToStandardS: 3600, standardToLocalS: 0 };
    const dataSource = { name: "Feeder box", effective: START, channels: [definition], ...details };
    const groups = [1, 3, 5].map((group) => ({ definition: 0, group, series: [real8(group)] }));
    const file = await reopened([{ dataSource }, observationOf(...groups)]);
    expect(file.observations[0]?.source).toMatchObject({ name: "Feeder box", channels: [definition], ...details });
    expect(file.observations[0]?.channels.map(({ group }) => group)).toEqual([1, 3, 5]);
    const values = await file.observations[0]?.open();
    expect([...((await values?.values(2, 0)) ?? [])]).toEqual([5]);
  });

  it("give an observation the latest settings that are effective, else the latest before it", async () => {
    const source = sourceOf(valueLog("U", 1));
    const observation = observationOf({ definition: 0, series: [real8(0), real8(1)] });
    const file = await reopened([
      source,
      observation,
      settings(START + SECOND, 10),
      observation,
      settings(START - SECOND, 20),
      settings(START + 2 * SECOND, 30),
      observation,
      settings(undefined, 40),
      observation,
      source,
      observation,
    ]);
    const ratios = file.observations.map(({ settings }) => settings?.channels[0]?.systemSideRatio);
    expect(ratios).toEqual([undefined, 10, 20, 40, undefined]);
    expect(file.observations[1]?.settings).toMatchObject(settings(START + SECOND, 10).settings);
  });

  it("never tell the name of the file that the writer gave, which may hold folders", async () => {
    const file = await reopened([sourceOf(valueLog("U", 1)), observationOf({ definition: 0, series: [] })]);
    expect(JSON.stringify({ ...file, file: "" })).not.toContain("log.pqd");
  });
});

describe("reading on demand", () => {
  it("reads heads without values, and of values only the part that is asked for", async () => {
    const values = Float64Array.from({ length: 1_000_000 }, (_, i) => i);
    const long = observationOf({
      definition: 0,
      series: [
        { type: "REAL8", steps: [[1_000_000, 1]] },
        { type: "REAL8", values },
      ],
    });
    const bytes = await bytesOf([sourceOf(valueLog("U", 1, INCREMENT)), long], { compressed: false });
    const log = fileOf(bytes);
    const file = await openPqdif(log);
    expect(file.observations[0]?.channels[0]?.series.map(({ count }) => count)).toEqual([1_000_000, 1_000_000]);
    expect(log.bytesRead).toBeLessThan(400_000);
    const part = await (await file.observations[0]?.open())?.values(0, 1, 500_000, 500_003);
    expect([...(part ?? [])]).toEqual([500_000, 500_001, 500_002]);
    expect(log.bytesRead).toBeLessThan(800_000);
    const whole = await (await file.observations[0]?.open())?.values(0, 1);
    expect(whole?.length).toBe(values.length);
    expect(whole?.every((value, i) => value === i)).toBe(true);
  });
});
