import { describe, expect, it } from "vitest";
import { measure } from "../../src/analysis/index.js";
import { crop } from "../../src/recording/crop.js";
import type { LoggedEvent } from "../../src/recording/logged-event.js";
import type { Recording } from "../../src/recording/recording.js";
import { areSnippets, spanOf } from "../../src/recording/snippets.js";
import { DAY, HOUR, MINUTE, SECOND } from "../../src/recording/time.js";
import type { WaveformSource } from "../../src/recording/waveform.js";
import { recordingOf, soundWeek } from "../checks/support.js";
import { axis, logged, START } from "../support/series.js";
import { sampled, voltage } from "../support/waveform.js";

/** A log of intervals with waveforms around events: the one gives the statistics, the others the events. */

const POINT = { nominalFrequency: 50, declaredVoltage: 230, connection: "star" } as const;
const DIP = { from: 0.4, to: 0.6, share: 0.5 };

/** One second of 230 V on L1 with a dip to 50 % of 0.2 s. */
function snippet(afterS: number, phase: "L1" | "L2" = "L1"): WaveformSource {
  const u = (t: number) =>
    (t >= DIP.from && t < DIP.to ? DIP.share : 1) * 230 * Math.SQRT2 * Math.sin(2 * Math.PI * 50 * t);
  return sampled([[voltage(phase), u]], { samplesPerSecond: 6400, seconds: 1, start: START + afterS * SECOND });
}

function mixed(...waveforms: WaveformSource[]): Recording {
  return { ...soundWeek(), waveforms };
}

describe("snippets beside logged series", () => {
  it("leave the logged series and the span as they are, to the bit", async () => {
    const week = soundWeek();
    const [alone, together] = await Promise.all([measure(week, POINT), measure(mixed(snippet(3600)), POINT)]);
    expect(together.series).toEqual(alone.series);
    expect([together.start, together.end]).toEqual([alone.start, alone.end]);
    expect(together.unavailable).toEqual(alone.unavailable);
  });

  it("give the events in them, and do not claim to show all", async () => {
    const { events, eventsSought, eventsTriggered, remarks } = await measure(
      mixed(snippet(3600), snippet(7200)),
      POINT,
    );
    expect(events.map((e) => [e.kind, e.origin, e.phases.join()])).toEqual([
      ["dip", "computed", "L1"],
      ["dip", "computed", "L1"],
    ]);
    expect(events[0]?.percent).toBeCloseTo(50, 1);
    expect(events[0]?.durationS).toBeCloseTo(0.2, 1);
    expect([eventsSought, eventsTriggered]).toEqual([false, true]);
    expect(remarks.map(String)).toContain(
      "The waveforms of the log last 2 s of 7 d; events are taken from them, interval values only from what was logged.",
    );
  });

  it("do not move the start of the recording where they lie before it", () => {
    const { series } = soundWeek();
    const early = snippet(-3 * 86_400);
    expect(areSnippets({ series, waveforms: [early] })).toBe(true);
    expect(spanOf(series, [early])).toEqual({ start: START, end: START + 7 * DAY });
    expect(spanOf([], [early]).start).toBe(early.start);
  });

  it("are snippets by what was sampled, not by the time from the first to the last", () => {
    const gappy: WaveformSource = { ...snippet(0), length: 6400 * 86_400, stretches: [{ first: 0, length: 6400 }] };
    const { stretches: _, ...whole } = gappy;
    const series = [logged("voltage", "L1", Array(144).fill(230))];
    expect(areSnippets({ series, waveforms: [gappy] })).toBe(true);
    expect(areSnippets({ series, waveforms: [whole] })).toBe(false);
    expect(areSnippets({ series, waveforms: [] })).toBe(false);
  });

  it("stay snippets when the recording is cropped, with the stretches that are left", () => {
    const gappy: WaveformSource = {
      ...snippet(0),
      length: 6400 * 3600,
      stretches: [
        { first: 0, length: 6400 },
        { first: 6400 * 1800, length: 6400 },
      ],
    };
    const cropped = crop(mixed(gappy), START + 30 * MINUTE, START + DAY);
    expect(cropped.waveforms[0]?.stretches).toEqual([{ first: 0, length: 6400 }]);
    expect(cropped.start).toBe(START + 30 * MINUTE);
    expect(crop(mixed(gappy), START + 12 * HOUR, undefined).waveforms).toEqual([]);
  });
});

describe("waveforms that stand for all of the recording", () => {
  it("measure what was not logged and give way to what was, at its interval", async () => {
    const seconds = 20 * 60;
    const u = (t: number) => 231 * Math.SQRT2 * Math.sin(2 * Math.PI * 50 * t);
    const source = sampled([[voltage("L1"), u]], { samplesPerSecond: 2000, seconds, start: START });
    const log = recordingOf([logged("voltage", "L1", [230, 230], { axis: axis(2, 10 * MINUTE) })]);
    const { series, eventsSought, eventsTriggered } = await measure({ ...log, waveforms: [source] }, POINT);
    const of = (quantity: string) => series.filter((s) => s.quantity === quantity && s.interval === 10 * MINUTE);
    expect(of("voltage").map((s) => [s.origin, [...s.values]])).toEqual([["logged", [230, 230]]]);
    expect(series.filter((s) => s.quantity === "frequency").map((s) => [s.origin, s.values.length])).toEqual([
      ["computed", 120],
    ]);
    expect([eventsSought, eventsTriggered]).toEqual([true, undefined]);
  });
});

describe("events that the recorder listed", () => {
  const listed = (parts: Partial<LoggedEvent>): LoggedEvent => ({
    file: "log.pqd",
    place: "byte 1",
    kind: "dip",
    phases: ["L1"],
    start: START + HOUR,
    durationS: 0.1,
    magnitude: { value: 70, unit: "%" },
    ...parts,
  });
  const events = async (own: readonly LoggedEvent[], ...waveforms: WaveformSource[]) =>
    (await measure({ ...mixed(...waveforms), events: own }, POINT)).events;

  it("are events with their percent of the declared voltage, or their volts", async () => {
    const [percent, volts] = await events([
      listed({}),
      listed({ start: START + 2 * HOUR, magnitude: { value: 115, unit: "V" } }),
    ]);
    expect(percent).toMatchObject({
      kind: "dip",
      origin: "logged",
      extreme: 161,
      reference: 230,
      percent: 70,
      durationS: 0.1,
    });
    expect(volts).toMatchObject({ extreme: 115, percent: 50 });
  });

  it("are of the voltage between phases where these are listed", async () => {
    const [event] = await events([listed({ phases: ["L12"], magnitude: { value: 199.2, unit: "V" } })]);
    expect(event?.percent).toBeCloseTo(50, 1);
  });

  it.each<[string, Partial<LoggedEvent>]>([
    ["its doubt is stated", { doubt: "not sure" }],
    ["its duration is not known", { durationS: undefined as unknown as number }],
    ["its magnitude is not known", { magnitude: undefined as unknown as { value: number; unit: "V" } }],
    ["its phases are not known", { phases: [] }],
    ["its magnitude contradicts its kind", { magnitude: { value: 120, unit: "%" } }],
    ["its magnitude is that of no event", { magnitude: { value: 97, unit: "%" } }],
    ["it is a transient", { kind: "transient" }],
  ])("are left out where %s", async (_, parts) => {
    const whole = Object.fromEntries(Object.entries(listed(parts)).filter(([, v]) => v !== undefined));
    expect(await events([whole as unknown as LoggedEvent])).toEqual([]);
  });

  it("without a category are what their voltage makes them", async () => {
    const of = async (value: number) => {
      const { kind: _, ...open } = listed({ magnitude: { value, unit: "%" } });
      return (await events([open]))[0]?.kind;
    };
    expect([await of(3), await of(80), await of(112), await of(95)]).toEqual([
      "interruption",
      "dip",
      "swell",
      undefined,
    ]);
  });

  it("on several phases at a time are one event, from the first to begin to the last to end", async () => {
    const [one, ...others] = await events([
      listed({}),
      listed({
        phases: ["L2"],
        start: START + HOUR + 0.05 * SECOND,
        durationS: 0.2,
        magnitude: { value: 40, unit: "%" },
      }),
      listed({ phases: ["L3"], start: START + HOUR + 5 * SECOND }),
    ]);
    expect(one).toMatchObject({ phases: ["L1", "L2"], durationS: 0.25, percent: 40, start: START + HOUR });
    expect(others).toHaveLength(1);
  });

  it("that are found in samples as well are counted once, as they were found", async () => {
    const same = listed({ start: START + 3600.41 * SECOND });
    const found = await events([same, listed({ start: START + 2 * HOUR })], snippet(3600));
    expect(found.map((e) => e.origin)).toEqual(["computed", "logged"]);
    const other = await events([same], snippet(3600, "L2"));
    expect(other).toHaveLength(2);
  });
});
