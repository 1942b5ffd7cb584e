import { describe, expect, it } from "vitest";
import { CHARACTERISTIC as C } from "../../../src/formats/pqdif/characteristics.js";
import { DISTURBANCE as D } from "../../../src/formats/pqdif/disturbances.js";
import { QUANTITY_TYPE, VALUE_TYPE } from "../../../src/formats/pqdif/identifiers.js";
import { mapRecording } from "../../../src/formats/pqdif/map-recording.js";
import type { GivenSetup } from "../../../src/recording/setup.js";
import { HOUR, SECOND } from "../../../src/recording/time.js";
import { logOf, type MadeChannel, type MadeObservation, madeFile, samplesOf } from "./made-file.js";

/** What a recorder says of events: lists of magnitude and duration, and classified triggers. */

const START = Date.UTC(2027, 2, 1) * 1000;
const RATE = 10_000;

async function eventsOf(observations: readonly MadeObservation[], setup: GivenSetup = {}) {
  const { events, ledger } = await mapRecording([madeFile(observations)], setup);
  return {
    events: events.map(({ doubt, category, ...e }) => ({
      ...e,
      ...(doubt !== undefined && { doubt: String(doubt) }),
      ...(category !== undefined && { category: String(category) }),
    })),
    ledger,
  };
}

interface Row {
  readonly at: number;
  readonly value: number;
  readonly duration: number;
}

function list(
  rows: readonly Row[],
  parts: { units?: number; durationUnits?: number; phase?: number; measured?: number; characteristic?: string } = {},
): MadeChannel {
  const { units = 19, durationUnits = 2, characteristic = C.RMS, ...channel } = parts;
  return {
    ...channel,
    quantityType: QUANTITY_TYPE.MAGDURTIME,
    series: [
      { valueType: VALUE_TYPE.VAL, units, characteristic, values: rows.map((r) => r.value) },
      { valueType: VALUE_TYPE.DURATION, units: durationUnits, values: rows.map((r) => r.duration) },
      { valueType: VALUE_TYPE.TIME, units: 2, values: rows.map((r) => r.at) },
    ],
  };
}

describe("lists of magnitude and duration", () => {
  it("are events with phase, time, duration and magnitude", async () => {
    const { events, ledger } = await eventsOf([
      {
        start: START,
        channels: [
          list(
            [
              { at: 60, value: 72, duration: 0.3 },
              { at: 90, value: 115, duration: 2 },
            ],
            { phase: 2 },
          ),
        ],
      },
    ]);
    expect(events).toEqual([
      {
        file: "log.pqd",
        place: '"observation 1", byte 1000',
        phases: ["L2"],
        start: START + 60 * SECOND,
        durationS: 0.3,
        magnitude: { value: 72, unit: "%" },
      },
      {
        file: "log.pqd",
        place: '"observation 1", byte 1000',
        phases: ["L2"],
        start: START + 90 * SECOND,
        durationS: 2,
        magnitude: { value: 115, unit: "%" },
      },
    ]);
    expect(ledger.observations?.map((o) => String(o.use))).toEqual(["an event or a list of events"]);
  });

  it("come in volts, per unit and cycles", async () => {
    const rows = [{ at: 60, value: 0.5, duration: 25 }];
    const perUnit = await eventsOf([{ start: START, channels: [list(rows, { units: 20, durationUnits: 3 })] }], {
      nominalFrequency: 50,
    });
    expect(perUnit.events[0]).toMatchObject({ durationS: 0.5, magnitude: { value: 50, unit: "%" } });
    const volts = await eventsOf([
      { start: START, channels: [list([{ at: 60, value: 115, duration: 1 }], { units: 6 })] },
    ]);
    expect(volts.events[0]?.magnitude).toEqual({ value: 115, unit: "V" });
  });

  it("of which the unit or the characteristic is no voltage stay in doubt", async () => {
    const row = [{ at: 60, value: 72, duration: 0.3 }];
    const bare = await eventsOf([{ start: START, channels: [list(row, { units: 0 })] }]);
    expect(bare.events[0]).toMatchObject({ doubt: "its magnitude 72 (no unit) is not sure to be a voltage" });
    const peak = await eventsOf([{ start: START, channels: [list(row, { units: 6, characteristic: C.PEAK })] }]);
    expect(peak.events[0]?.magnitude).toBeUndefined();
  });

  it("of currents are no events of the supply", async () => {
    expect(
      (await eventsOf([{ start: START, channels: [list([{ at: 1, value: 72, duration: 1 }], { measured: 2 })] }]))
        .events,
    ).toEqual([]);
  });
});

describe("triggers", () => {
  const snippet = (parts: Partial<MadeObservation> = {}, channel: Partial<MadeChannel> = {}): MadeObservation => ({
    start: START,
    triggered: START + 0.05 * SECOND,
    method: 1,
    channels: [
      {
        ...samplesOf(
          Float64Array.from({ length: 50 }, (_, i) => 1 + i),
          RATE,
        ),
        ...channel,
      },
    ],
    ...parts,
  });

  it("with a category are events of its kind; phases are those that bear the characteristics", async () => {
    const { events, ledger } = await eventsOf([
      snippet({ disturbance: D.SHORTDUR_MOMENT_SAG }, { characteristics: { magnitude: 62, durationS: 1.2 } }),
    ]);
    expect(events).toEqual([
      {
        file: "log.pqd",
        place: '"observation 1", byte 1000',
        category: "short duration momentary dip",
        kind: "dip",
        phases: ["L1"],
        start: START + 0.05 * SECOND,
        durationS: 1.2,
        magnitude: { value: 62, unit: "%" },
      },
    ]);
    const [observation] = ledger.observations ?? [];
    expect(observation?.triggered).toBe(START + 0.05 * SECOND);
    expect(String(observation?.category)).toBe("short duration momentary dip");
  });

  it.each([
    [D.SHORTDUR_INSTANT_SWELL, "swell"],
    [D.SHORTDUR_TEMP_INTERRUPT, "interruption"],
    [D.LONGDUR_SAG, "dip"],
    [D.TRANSIENT_IMPULSIVE_MICRO, "transient"],
    [D.SHORTDUR_MOMENT, undefined],
    [D.WAVEDISTORT_NOTCHING, undefined],
    ["00000000-0000-0000-0000-000000000001", undefined],
  ])("of category %s are of kind %s", async (disturbance, kind) => {
    expect((await eventsOf([snippet({ disturbance })])).events.map((e) => e.kind)).toEqual([kind]);
  });

  it("take phases from the triggering channels where none bears characteristics, and those of the observation", async () => {
    const { events } = await eventsOf([
      snippet(
        {
          disturbance: D.SHORTDUR_INSTANT_SAG,
          triggerChannels: [0],
          characteristics: { magnitude: 80, durationS: 0.2 },
        },
        { phase: 3 },
      ),
    ]);
    expect(events[0]).toMatchObject({ phases: ["L3"], durationS: 0.2, magnitude: { value: 80, unit: "%" } });
  });

  it.each([
    [30_318, D.SHORTDUR_INSTANT_SAG],
    [0.62, D.SHORTDUR_INSTANT_SAG],
    [95, D.SHORTDUR_INSTANT_SAG],
    [62, D.SHORTDUR_INSTANT_SWELL],
    [62, D.SHORTDUR_MOMENT],
  ])("leave a magnitude of %d that is no percentage of its category in doubt", async (magnitude, disturbance) => {
    const { events } = await eventsOf([snippet({ disturbance, characteristics: { magnitude } })]);
    expect(events[0]?.magnitude).toBeUndefined();
    expect(events[0]?.doubt).toBe(`its magnitude ${magnitude} is not sure to be in percent of the declared voltage`);
  });

  it("of which nothing is said, and observations by the clock, are no events", async () => {
    expect(
      (await eventsOf([snippet(), snippet({ disturbance: D.NONE }), { start: START, channels: [logOf([230, 231])] }]))
        .events,
    ).toEqual([]);
  });

  it("that two observations tell alike are one, the surer of them", async () => {
    const parts = { disturbance: D.SHORTDUR_INSTANT_SAG, triggered: START + HOUR };
    const { events } = await eventsOf([
      snippet(parts, { characteristics: { durationS: 0.2 } }),
      snippet({ ...parts, start: START + HOUR }, { characteristics: { magnitude: 62, durationS: 0.2 } }),
    ]);
    expect(events.map((e) => e.magnitude)).toEqual([{ value: 62, unit: "%" }]);
  });
});
