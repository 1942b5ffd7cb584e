import { LogError, UsageError } from "../../errors.js";
import { say, type Text } from "../../sentence.js";
import { NAMED_MONTH } from "./stamp-reader.js";

/** Deciding which number of a date is the day, the month and the year. */

export type DateOrder = "dmy" | "mdy" | "ymd";

/** The dates of one file, or of several files that write them alike: `form` and packed numbers of StampReader. */
export interface DatesSeen {
  readonly file: string;
  readonly form: number;
  readonly dates: ReadonlySet<number>;
}

export interface DecidedOrder {
  readonly order: DateOrder;
  /** Plain words: "year first", "by the point between the numbers" … */
  readonly reason: Text;
}

const POINT = 46;
export const MS_PER_DAY = 86_400_000;

/** Milliseconds since 1970-01-01 of the date at midnight; NaN if there is no such day (or no plausible year). */
export function dayOf(packed: number, form: number, order: DateOrder): number {
  let year = Math.floor(packed / 10000);
  let [a, b] = [Math.floor(packed / 100) % 100, packed % 100];
  const yearPlace = form % 4;
  if (yearPlace === 3) {
    const written = [year, a, b] as const;
    [year, a, b] = order === "ymd" ? written : [written[2], written[0], written[1]];
    year += year < 80 ? 2000 : 1900;
  }
  const [month, day] = order === "dmy" ? [b, a] : [a, b];
  if (year < 1970 || year > 2199 || month < 1 || month > 12 || day < 1) return Number.NaN;
  const ms = Date.UTC(year, month - 1, day);
  return new Date(ms).getUTCDate() === day ? ms : Number.NaN;
}

/**
 * Decides by evidence: the place of a four-digit year, a number above 12, the point that only d.m.y uses, and that
 * only one order makes the days of the log follow one another. Row order plays no part.
 * @param given wins, unless only another order makes the days follow one another.
 * @throws LogError asking for the order where nothing decides.
 * @throws UsageError for a given order that the dates contradict.
 */
export function decideDateOrder({ file, form, dates }: DatesSeen, given: DateOrder | undefined): DecidedOrder {
  const yearPlace = form % 4;
  const byPoint = Math.floor(form / 4) === POINT;
  if (form === NAMED_MONTH) return { order: "ymd", reason: say`by the name of the month` };
  if (yearPlace === 0) return { order: "ymd", reason: say`year first` };
  if (given !== undefined) {
    if (given === "ymd" && yearPlace === 2) {
      throw new LogError(file, undefined, "the date order is given as ymd, but the year stands last in this log");
    }
    refuseContradicted({ file, form, dates }, given);
    return { order: given, reason: say`as given` };
  }
  if (yearPlace === 2 && byPoint) return { order: "dmy", reason: say`by the point between the numbers` };

  const candidates: DateOrder[] = yearPlace === 2 ? ["dmy", "mdy"] : byPoint ? ["dmy", "ymd"] : ["dmy", "mdy", "ymd"];
  const readings = candidates.map((order) => ({ order, ...read(dates, form, order) }));
  const fewestFaults = Math.min(...readings.map((r) => r.faults));
  // One damaged stamp (13/01 among 03/01 … 03/07) must not turn the order of all the others round.
  const mended = readings.filter((r) => r.faults > fewestFaults && r.faults <= 1 + dates.size / 10);
  const possible = readings.filter((r) => r.faults === fewestFaults);
  const first = possible[0] as (typeof readings)[number];
  const contradicted = mended.some((r) => possible.every((p) => r.following >= 0.5 && p.following <= r.following / 2));
  if (!contradicted && possible.every((r) => sameDays(r.days, first.days))) {
    const reason = possible.length > 1 ? say`all orders mean the same days here` : say`no other order fits all dates`;
    return { order: first.order, reason };
  }
  const ranked = possible.toSorted((a, b) => b.following - a.following);
  const [best, second] = ranked as [(typeof readings)[number], (typeof readings)[number] | undefined];
  if (!contradicted && second !== undefined && best.following >= 0.5 && second.following <= best.following / 2) {
    return { order: best.order, reason: say`only so do the days follow one another` };
  }
  if (byPoint) return { order: "dmy", reason: say`by the point between the numbers` };
  const asked = candidates.map((order) => `--date-order ${order}`).join(" or ");
  const example = firstReadings(dates, form, candidates);
  throw new LogError(
    file,
    undefined,
    `its dates can be read in more than one order${example}: say which with ${asked} (in the setup dateOrder: ${candidates[0]})`,
  );
}

/** " (the first as 2026-02-01 or 2026-01-02)". */
function firstReadings(dates: ReadonlySet<number>, form: number, orders: readonly DateOrder[]): string {
  const [first] = dates;
  const days = orders.map((order) => dayOf(first as number, form, order)).filter((day) => !Number.isNaN(day));
  return ` (the first is ${days.map((day) => new Date(day).toISOString().slice(0, 10)).join(" or ")})`;
}

function refuseContradicted({ file, form, dates }: DatesSeen, given: DateOrder): void {
  const own = read(dates, form, given);
  const others: DateOrder[] = form % 4 === 2 ? ["dmy", "mdy"] : ["dmy", "mdy", "ymd"];
  const better = others.find((order) => {
    const other = read(dates, form, order);
    return other.faults <= own.faults && other.following >= 0.5 && own.following <= other.following / 2;
  });
  if (better === undefined) return;
  throw new UsageError(
    `the date order is given as ${given}, but the days of ${file} follow one another only as ${better}: give ${better}, or leave the date order out`,
  );
}

/** The days in this order, sorted; how many dates are none; the share of days that follow the one before at once. */
function read(dates: ReadonlySet<number>, form: number, order: DateOrder) {
  const all = [...dates].map((packed) => dayOf(packed, form, order));
  const days = all.filter((day) => !Number.isNaN(day)).sort((a, b) => a - b);
  const steps = days.slice(1).filter((day, i) => day - (days[i] as number) === MS_PER_DAY).length;
  return { days, faults: all.length - days.length, following: days.length > 1 ? steps / (days.length - 1) : 0 };
}

function sameDays(a: readonly number[], b: readonly number[]): boolean {
  return a.length === b.length && a.every((day, i) => day === b[i]);
}
