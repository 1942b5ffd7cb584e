import { z } from "zod";
import { isValid, type Measurements, type VoltageEvent } from "../recording/measurements.js";
import type { Complaint, Marks } from "../recording/setup-marks.js";
import type { AskedSpan } from "../recording/supply-detail.js";
import { DAY, HOUR, type Instant, isoUtc, MINUTE, SECOND } from "../recording/time.js";
import type { TimeZone } from "../recording/time-zone.js";
import { firstAtOrAfter, isOutside } from "./count.js";
import { count, phase, time } from "./result-parts.js";
import type { Test } from "./tests.js";

const voltages = { lowest: z.number(), highest: z.number() };

/** What the recording says about the times at which something was noticed. */
export const complaintsSchema = z.array(
  z.strictObject({
    at: time,
    to: time.optional(),
    what: z.string(),
    /** Where it lies: wholly in the recording, partly, or outside. */
    within: z.enum(["recording", "partly", "outside"]),
    phases: z.array(
      z.strictObject({
        phase,
        /** Every fixed interval that covers it is valid. */
        covered: z.boolean(),
        /** The fixed intervals that cover it, for each requirement on the supply voltage. */
        intervals: z.array(
          z.strictObject({
            requirement: z.string(),
            intervalS: z.number(),
            start: time,
            end: time,
            expected: count,
            valid: count,
            /** Valid ones whose value lies outside the requirement's limit. */
            outside: count,
            ...{ lowest: voltages.lowest.optional(), highest: voltages.highest.optional() },
          }),
        ),
        /** From 5 min before it to 5 min after it, by the shortest intervals at hand; `inner`: the logger's own extremes. */
        around: z
          .strictObject({
            start: time,
            end: time,
            intervalS: z.number(),
            n: count,
            ...voltages,
            /** Root of the mean square. */
            mean: z.number(),
            inner: z.strictObject(voltages).optional(),
          })
          .optional(),
      }),
    ),
    /** Events from 5 min before it to 5 min after it. */
    events: z.array(
      z.strictObject({
        kind: z.string(),
        phases: z.array(phase),
        start: time,
        durationS: z.number(),
        extreme: z.number(),
      }),
    ),
    /**
     * Of one that valid data do not cover: how many valid intervals were recorded within 1 h of its time of day on days
     * of its class. Derived from published complaint procedures; common practice, no source. Public holidays are not known here.
     */
    alike: z.strictObject({ days: z.enum(["working-day", "saturday", "sunday"]), n: count }).optional(),
  }),
);

export const commentsSchema = z.array(
  z.strictObject({ at: time, to: time.optional(), phase: phase.optional(), text: z.string() }),
);

export type Complaints = z.infer<typeof complaintsSchema>;
type OfPhase = Complaints[number]["phases"][number];

const AROUND = 5 * MINUTE;

/** The spans that are looked at closely: five minutes on either side of each complaint. */
export function spansAround({ complaints }: Pick<Marks, "complaints">): AskedSpan[] {
  return complaints.map(around);
}

function around({ at, to = at }: Complaint): AskedSpan {
  return { from: at - AROUND, to: to + AROUND };
}

/**
 * Each complaint against what was recorded.
 * @param tests of the supply voltage, with limits for each value
 */
export function answers(
  complaints: readonly Complaint[],
  tests: readonly Test[],
  measurements: Measurements,
  zone: TimeZone,
): Complaints {
  const phases = [...new Set(tests.map((test) => test.phase))];
  return complaints.map((complaint) => {
    const { at, to, what } = complaint;
    const span = around(complaint);
    const answered = phases.map((name): OfPhase => {
      const intervals = tests.filter((test) => test.phase === name).map((test) => covering(test, complaint));
      const covered = intervals.every(({ expected, valid }) => valid === expected);
      return { phase: name, covered, intervals, ...aroundOf(name, span, measurements) };
    });
    return {
      at: isoUtc(at),
      ...(to !== undefined && { to: isoUtc(to) }),
      what,
      within: placeOf(complaint, measurements),
      phases: answered,
      events: measurements.events.filter((event) => touches(event, span)).map(listed),
      ...(!answered.every(({ covered }) => covered) && { alike: alikeOf(complaint, tests, zone) }),
    };
  });
}

export function listComments({ comments }: Pick<Marks, "comments">): z.infer<typeof commentsSchema> {
  return comments.map(({ at, to, ...rest }) => ({
    at: isoUtc(at),
    ...(to !== undefined && { to: isoUtc(to) }),
    ...rest,
  }));
}

function placeOf({ at, to = at }: Complaint, { start, end }: Measurements): Complaints[number]["within"] {
  if (at >= start && (to === at ? at < end : to <= end)) return "recording";
  return to < start || at >= end ? "outside" : "partly";
}

/** The intervals of a test's series that a moment falls into or a span overlaps. */
function covering({ requirement, series, limit }: Test, { at, to }: Complaint): OfPhase["intervals"][number] {
  const { interval, starts, values } = series;
  const offset = (starts[0] as number) % interval;
  const start = Math.floor((at - offset) / interval) * interval + offset;
  const expected = to === undefined ? 1 : Math.ceil((to - start) / interval);
  const end = start + expected * interval;
  let [valid, outside] = [0, 0];
  let [lowest, highest] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = firstAtOrAfter(starts, start); i < starts.length && (starts[i] as number) < end; i++) {
    if (!isValid(series, i)) continue;
    const value = values[i] as number;
    valid++;
    if (isOutside(value, limit)) outside++;
    lowest = Math.min(lowest, value);
    highest = Math.max(highest, value);
  }
  return {
    requirement: requirement.id,
    intervalS: interval / SECOND,
    start: isoUtc(start),
    end: isoUtc(end),
    expected,
    valid,
    outside,
    ...(valid > 0 && { lowest, highest }),
  };
}

function aroundOf(name: OfPhase["phase"], { from, to }: AskedSpan, { supply }: Measurements): Pick<OfPhase, "around"> {
  const found = supply?.spans.find(({ phase, asked }) => phase === name && asked.from === from && asked.to === to);
  if (found === undefined) return {};
  const { start, end, interval, n, lowest, highest, mean, inner } = found;
  return {
    around: {
      start: isoUtc(start),
      end: isoUtc(end),
      intervalS: interval / SECOND,
      n,
      lowest,
      highest,
      mean,
      ...(inner !== undefined && { inner: { ...inner } }),
    },
  };
}

function touches({ start, durationS }: VoltageEvent, { from, to }: AskedSpan): boolean {
  return start < to && start + durationS * SECOND >= from;
}

function listed({ kind, phases, start, durationS, extreme }: VoltageEvent): Complaints[number]["events"][number] {
  return { kind, phases: [...phases], start: isoUtc(start), durationS, extreme };
}

type Days = NonNullable<Complaints[number]["alike"]>["days"];

/** Days of one class are alike in load; common practice, no source. */
function classOf(weekday: number): Days {
  if (weekday === 6) return "saturday";
  return weekday === 7 ? "sunday" : "working-day";
}

/** Counted on the phase that has the fewest such intervals, each wholly within an hour of the time of day. */
function alikeOf({ at, to = at }: Complaint, tests: readonly Test[], zone: TimeZone): Complaints[number]["alike"] {
  const days = classOf(zone.clockAt(at).weekday);
  const timeOfDay = zone.toLocal(at) % DAY;
  const longest = to - at + HOUR;
  const isAlike = (start: Instant, interval: number) => {
    const local = zone.toLocal(start);
    const midnight = Math.floor((local - timeOfDay + HOUR) / DAY) * DAY;
    const distance = local - midnight - timeOfDay;
    return distance + interval <= longest && classOf(((midnight / DAY + 3) % 7) + 1) === days;
  };
  const counts = tests.map(
    ({ series }) => series.starts.filter((start, i) => isValid(series, i) && isAlike(start, series.interval)).length,
  );
  return { days, n: counts.length === 0 ? 0 : Math.min(...counts) };
}
