import { plainNumber } from "../csv/number-text.js";
import { cellText, type HeadRecord } from "../csv/records.js";
import {
  type ClassifiedHead,
  type Found,
  findTextStamps,
  type HeaderOf,
  type TextStamps,
} from "../csv/stamp-columns.js";

/** Where the times of a table of samples stand and what they count. Column indexes are 0-based. */
export type SampleTimes =
  | { readonly kind: "stamps"; readonly stamps: TextStamps }
  /** Numbers, counted from the years 1970 (`epoch`) or from anywhere else. */
  | { readonly kind: "numbers"; readonly column: number; readonly unit: TimeUnit; readonly epoch: boolean }
  /** The numbers of the samples. */
  | { readonly kind: "count"; readonly column: number }
  | { readonly kind: "none" };

export type TimeUnit = "s" | "ms" | "us" | "ns";

/** Microseconds per unit. */
export const MICROS: Readonly<Record<TimeUnit, number>> = { s: 1e6, ms: 1e3, us: 1, ns: 1e-3 };

const UNIT =
  /(?<![\p{L}\d])(?:(?<ns>ns|nanose[ck]\p{L}*)|(?<us>[uµμ]s|[uµμ]sec|[mi]+[ck]rose[ck]\p{L}*)|(?<ms>ms|msec|millise[ck]\p{L}*)|(?<s>s|secs?|seconds?|sek|sekunden?|secondes?|secondi|segundos?))(?![\p{L}\d])/giu;
const TIME_NAME = /(?<!\p{L})(?:t|[Tt]ime|TIME|[Zz]eit|ZEIT|[Tt]emps|[Tt]empo|[Tt]iempo|[Ee]lapsed)(?!\p{Ll})/u;
/** Epoch values in the years 2000 to 2099, in s. */
const [EARLIEST, LATEST] = [946_684_800, 4_102_444_800];
const EPOCH_UNITS = ["s", "ms", "us"] as const;
/** Share of rows that must bear out what a column is taken for. */
const MOST = 0.9;

/** The columns of a time and the rows of samples; undefined if there are none. */
export function findTimes(head: ClassifiedHead, header: HeaderOf): Found<SampleTimes> | undefined {
  const rows = rowsOfNumbers(head);
  const text = findTextStamps(head, header);
  if (text !== undefined && text.rows.length >= Math.max(2, rows.length / 2)) {
    return { ...text, stamps: { kind: "stamps", stamps: text.stamps } };
  }
  if (rows.length < 2) return undefined;
  const columns = Math.max(...rows.map((r) => (head.classes[r] ?? []).length));
  const times = Array.from({ length: columns }, (_, c) => numericTimes(head, rows, c, header(c, rows)));
  const found = times.find((t) => t?.kind === "numbers") ?? times.find((t) => t !== undefined);
  const others = times.flatMap((t, c) => (t !== undefined && t !== found ? [c] : []));
  return { stamps: found ?? { kind: "none" }, others, rows };
}

/** The same without looking at some columns. */
export function findTimesWithout(ignored: ReadonlySet<number>): typeof findTimes {
  return (head, header) => {
    const classes = head.classes.map((row) => row.map((own, c) => (ignored.has(c) ? "missing" : own)));
    return findTimes({ ...head, classes }, header);
  };
}

/** The columns that times stand in. */
export function timeColumns(times: SampleTimes): number[] {
  if (times.kind === "none") return [];
  if (times.kind !== "stamps") return [times.column];
  return times.stamps.kind === "text" ? [times.stamps.dateTime] : [times.stamps.date, times.stamps.time];
}

/** More than half of what stands in the row are numbers. */
function rowsOfNumbers({ classes }: ClassifiedHead): number[] {
  return classes.flatMap((row, r) => {
    const numbers = row.filter((c) => c === "number").length;
    return numbers > row.filter((c) => c !== "missing").length / 2 ? [r] : [];
  });
}

function numericTimes(
  head: ClassifiedHead,
  rows: readonly number[],
  column: number,
  name: string,
): Extract<SampleTimes, { kind: "numbers" | "count" }> | undefined {
  const values = rows.map((r) => numberAt(head, r, column)).filter((v) => !Number.isNaN(v));
  if (values.length < MOST * rows.length) return undefined;
  const steps = values.slice(1).map((v, i) => v - (values[i] as number));
  if (steps.filter((s) => s >= 0).length < MOST * steps.length) return undefined;
  const unit = unitIn(name);
  const named = unit !== undefined || TIME_NAME.test(name);
  if (!named && (column > 0 || !isEven(steps))) return undefined;
  if (!named && steps.filter((s) => s === 1).length >= MOST * steps.length) return { kind: "count", column };
  const middle = values[values.length >> 1] as number;
  const isEpoch = (u: TimeUnit) => middle >= (EARLIEST * 1e6) / MICROS[u] && middle < (LATEST * 1e6) / MICROS[u];
  const epochUnit = (unit === undefined ? EPOCH_UNITS : [unit]).find(isEpoch);
  return { kind: "numbers", column, unit: epochUnit ?? unit ?? "s", epoch: epochUnit !== undefined };
}

/** The unit of time that stands nearest to the numbers. */
function unitIn(name: string): TimeUnit | undefined {
  const groups = [...name.matchAll(UNIT)].at(-1)?.groups;
  return (["ns", "us", "ms", "s"] as const).find((unit) => groups?.[unit] !== undefined);
}

/** Steps that are alike and rise: a time, whatever its name. */
function isEven(steps: readonly number[]): boolean {
  const middle = steps.toSorted((a, b) => a - b)[steps.length >> 1] ?? 0;
  const alike = steps.filter((s) => Math.abs(s - middle) <= 0.25 * middle).length;
  return steps.length >= 2 && middle > 0 && alike >= MOST * steps.length;
}

export function numberAt(head: ClassifiedHead, row: number, column: number): number {
  if (head.classes[row]?.[column] !== "number") return Number.NaN;
  const text = cellText(head.bytes, head.records[row] as HeadRecord, column);
  return Number(plainNumber(text, ".") ?? plainNumber(text, ",") ?? Number.NaN);
}
