import { z } from "zod";
import { type LocalDay, localDays } from "../recording/local-days.js";
import { HOUR, type Instant, isoUtc } from "../recording/time.js";
import type { TimeZone } from "../recording/time-zone.js";
import { firstAtOrAfter, isOutside } from "./count.js";
import { count, phase, time } from "./result-parts.js";
import { decisiveValues, percentiles } from "./rows.js";
import type { CountableTest } from "./test-window.js";

/** How typical the week was: the judged voltage day by day. */
export const daysSchema = z.array(
  z.strictObject({
    /** Day of the log's local calendar. */
    date: z.iso.date(),
    start: time,
    end: time,
    /** 24; 23 or 25 where the clock was changed. */
    hours: z.number(),
    /** false: the recording begins or ends within the day. */
    complete: z.boolean(),
    rows: z.array(
      z.strictObject({
        requirement: z.string(),
        phase,
        /** Intervals that begin in the day, valid, not excluded, and counted as the requirement counts flagged ones. */
        n: count,
        outside: count,
        lowest: z.number(),
        highest: z.number(),
        /** Nearest rank: what the requirement's share of the day's values does not exceed (high), or not undercut (low). */
        value: z.strictObject({ low: z.number().optional(), high: z.number().optional() }),
      }),
    ),
  }),
);

export type Days = z.infer<typeof daysSchema>;

/**
 * Each local day of [start, end) with the voltage tests on it: an interval belongs to the day that it begins in. A test
 * without a valid value on a day has no row there; a day without any row is left out.
 */
export function spreadByDay(tests: readonly CountableTest[], start: Instant, end: Instant, zone: TimeZone): Days {
  return localDays(zone, start, end)
    .map((day) => ({
      date: day.date,
      start: isoUtc(day.start),
      end: isoUtc(day.end),
      hours: (day.end - day.start) / HOUR,
      complete: start <= day.start && day.end <= end,
      rows: tests.flatMap((test) => rowOf(test, day)),
    }))
    .filter(({ rows }) => rows.length > 0);
}

function rowOf(test: CountableTest, day: LocalDay): Days[number]["rows"] {
  const { starts } = test.series;
  const { sorted } = decisiveValues(test, {
    from: firstAtOrAfter(starts, day.start),
    to: firstAtOrAfter(starts, day.end),
  });
  if (sorted.length === 0) return [];
  return [
    {
      requirement: test.requirement.id,
      phase: test.phase,
      n: sorted.length,
      outside: sorted.filter((value) => isOutside(value, test.limit)).length,
      lowest: sorted[0] as number,
      highest: sorted[sorted.length - 1] as number,
      value: percentiles(sorted, test.share, test.limit),
    },
  ];
}
