import { z } from "zod";
import { allowedOutside, ratio, times, toNumber } from "../decimal.js";
import { DAY, type Instant, isoUtc, WEEK } from "../recording/time.js";
import { NEEDED_COVERAGE } from "./count.js";
import { count, phase, time } from "./result-parts.js";
import { decisiveValues } from "./rows.js";
import { fittingShifts, inBoth, nanovolts, outsideAfter, type ShiftRange } from "./shift-ranges.js";
import { type CountableTest, decisive } from "./test-window.js";

/** An end that is absent is unbounded. */
const range = z.strictObject({
  from: z.number().optional(),
  to: z.number().optional(),
  fromPercent: z.number().optional(),
  toPercent: z.number().optional(),
});

/** What a change of all voltages by a tap step would do to the counts: an estimate, see docs of `shiftOf`. */
export const shiftSchema = z.strictObject({
  /** In % of the declared voltage and in V, rising; with 0 for the voltage as recorded. */
  steps: z.array(z.strictObject({ percent: z.number(), volts: z.number() })),
  stepsOrigin: z.enum(["given", "assumed"]),
  periods: z.array(
    z.strictObject({
      start: time,
      end: time,
      /** week: a complete consecutive week; recording: all of it, its ranges those that fit every complete week. */
      kind: z.enum(["week", "recording"]),
      rows: z.array(
        z.strictObject({
          requirement: z.string(),
          phase,
          n: count,
          missing: count,
          /** How many may lie outside; absent where several weeks are counted together. */
          allowed: count.optional(),
          /** Values outside after each of `steps`. */
          outside: z.array(count),
        }),
      ),
      /** Shifts with which every requirement on the phase would be kept; none: `ranges` is empty. In V and % of declared. */
      phases: z.array(z.strictObject({ phase, ranges: z.array(range) })),
      /** The same with one shift for all phases. Absent, as a phase is, where too little is valid to say so. */
      all: z.array(range).optional(),
    }),
  ),
});

export type Shift = z.infer<typeof shiftSchema>;
type Period = Shift["periods"][number];

export interface ShiftSteps {
  readonly percents: readonly number[];
  readonly origin: "given" | "assumed";
}

/**
 * How many values would lie outside if every voltage were higher or lower by the same number of volts, and which shifts
 * keep all binding voltage requirements, too high and too low counted together. The counts are exact for that assumption; it
 * is an estimate of a tap change all the same: loads and feed-in react to the voltage, and a tap changes the voltage in
 * proportion. Flagged values count as each requirement counts them, excluded ones do not; missing ones are left out, and where less than 95 %
 * is valid no range is given. Undefined where no voltage is judged by the week or day.
 * @param tests the binding tests of the supply voltage
 * @param first, last the span that weeks are laid over
 */
export function shiftOf(
  tests: readonly CountableTest[],
  first: Instant,
  last: Instant,
  declared: number,
  { percents, origin }: ShiftSteps,
): Shift | undefined {
  const counted = tests.filter(({ requirement }) => requirement.period !== "year");
  if (counted.length === 0) return undefined;
  const steps = [0, ...percents]
    .sort((a, b) => a - b)
    .map((percent) => ({ percent, volts: toNumber(times(times(ratio(percent), ratio(declared)), ratio("0.01"))) }));
  const volts = steps.map((step) => step.volts);
  const weeks: Period[] = [];
  for (let start = first; start + WEEK <= last; start += WEEK) {
    weeks.push(periodOf("week", counted, start, start + WEEK, declared, volts));
  }
  const periods = weeks.length === 1 ? weeks : [...weeks, wholeOf(weeks, counted, first, last, declared, volts)];
  return { steps, stepsOrigin: origin, periods };
}

function periodOf(
  kind: Period["kind"],
  tests: readonly CountableTest[],
  start: Instant,
  end: Instant,
  declared: number,
  volts: readonly number[],
): Period {
  const results = tests.map((test) => ({ test, ...resultOf(test, start, end, volts) }));
  const phases = [...new Set(tests.map((test) => test.phase))].flatMap((phase) => {
    const of = results.filter(({ test }) => test.phase === phase).map(({ ranges }) => ranges);
    const known = of.filter((ranges) => ranges !== undefined);
    return known.length < of.length ? [] : [{ phase, ranges: known.reduce(inBoth, [{}]) }];
  });
  const isWhole = phases.length === new Set(tests.map((test) => test.phase)).size;
  return {
    start: isoUtc(start),
    end: isoUtc(end),
    kind,
    rows: results.map(({ row }) => row),
    phases: phases.map(({ phase, ranges }) => ({ phase, ranges: inPercent(ranges, declared) })),
    ...(isWhole && { all: inPercent(phases.map(({ ranges }) => ranges).reduce(inBoth, [{}]), declared) }),
  };
}

/** The counts of the whole recording; its ranges are those that fit every complete week, or its own where there is none. */
function wholeOf(
  weeks: readonly Period[],
  tests: readonly CountableTest[],
  first: Instant,
  last: Instant,
  declared: number,
  volts: readonly number[],
): Period {
  const whole = periodOf("recording", tests, first, last, declared, volts);
  if (weeks.length === 0) return whole;
  const names = weeks[0]?.phases.map(({ phase }) => phase) ?? [];
  const phases = names.flatMap((phase) => {
    const of = weeks.flatMap((week) => week.phases.filter((p) => p.phase === phase));
    return of.length < weeks.length ? [] : [{ phase, ranges: of.map(({ ranges }) => ranges).reduce(inBoth, [{}]) }];
  });
  const all = weeks.flatMap((week) => (week.all === undefined ? [] : [week.all]));
  return {
    start: whole.start,
    end: whole.end,
    kind: whole.kind,
    rows: whole.rows.map(({ allowed: _, ...row }) => row),
    phases: phases.map(({ phase, ranges }) => ({ phase, ranges: inPercent(ranges, declared) })),
    ...(all.length === weeks.length && { all: inPercent(all.reduce<ShiftRange[]>(inBoth, [{}]), declared) }),
  };
}

/** A daily requirement must be kept on each day of the period, counted from its start. */
function resultOf(
  test: CountableTest,
  start: Instant,
  end: Instant,
  volts: readonly number[],
): { row: Period["rows"][number]; ranges: ShiftRange[] | undefined } {
  const length = test.requirement.period === "day" ? DAY : end - start;
  const row = { n: 0, missing: 0, allowed: 0, outside: volts.map(() => 0) };
  let ranges: ShiftRange[] | undefined = [{}];
  for (let from = start; from < end; from += length) {
    const to = Math.min(from + length, end);
    const { window, n, expected, missing } = decisive(test, test.counts, from, to);
    const sorted = nanovolts(decisiveValues(test, window).sorted);
    const allowed = allowedOutside(test.share, n);
    row.n += n;
    row.missing += missing;
    row.allowed += allowed;
    row.outside = row.outside.map((sum, i) => sum + outsideAfter(sorted, test.limit, volts[i] as number));
    const isEnough = n > 0 && n >= NEEDED_COVERAGE * expected;
    ranges = isEnough && ranges ? inBoth(ranges, fittingShifts(sorted, { ...test.limit, allowed })) : undefined;
  }
  return { row: { requirement: test.requirement.id, phase: test.phase, ...row }, ranges };
}

function inPercent(ranges: readonly ShiftRange[], declared: number): Period["phases"][number]["ranges"] {
  return ranges.map(({ from, to }) => ({
    ...(from !== undefined && { from, fromPercent: (100 * from) / declared }),
    ...(to !== undefined && { to, toPercent: (100 * to) / declared }),
  }));
}
