import type { Assessment } from "../rules/assessment.js";

/** Used columns of a file that differ in their harmonic order only, as one. */
export interface ColumnRun {
  readonly file: string;
  /** What was found in them; where there are several orders, before and after the order. */
  readonly before: string;
  readonly after: string;
  readonly orders: readonly number[];
  readonly positions: readonly number[];
}

const WITH_ORDER = /^(.*) order (\d+)(.*)$/;

/** The columns of a log that were used, in the order in which each first appears: a list short enough for paper. */
export function columnRuns(columns: Assessment["recording"]["columns"]): ColumnRun[] {
  const runs = new Map<string, ColumnRun>();
  for (const { file, position, takenFor } of columns) {
    if (takenFor === undefined) continue;
    const [, before = String(takenFor), order, after = ""] = WITH_ORDER.exec(String(takenFor)) ?? [];
    const key = order === undefined ? `${file} ${position}` : JSON.stringify([file, before, after]);
    const known = runs.get(key) ?? { file, before, after, orders: [], positions: [] };
    runs.set(key, {
      ...known,
      orders: order === undefined ? [] : [...known.orders, Number(order)],
      positions: [...known.positions, position],
    });
  }
  return [...runs.values()];
}

/** "2 to 40" where the numbers rise by one, "28 to 97 in steps of 3" by more, else each of them: "3, 5, 9". */
export function rangeOf(numbers: readonly number[]): string {
  const [first = 0, second = 0] = numbers;
  const step = second - first;
  const isEven = numbers.every((n, i) => n === first + i * step);
  if (numbers.length < 3 || step < 1 || !isEven) return numbers.join(", ");
  return `${first} to ${numbers[numbers.length - 1]}${step === 1 ? "" : ` in steps of ${step}`}`;
}
