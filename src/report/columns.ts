import type { Assessment } from "../rules/assessment.js";

/** Used columns side by side that differ in their harmonic order only, as one. */
export interface ColumnRun {
  readonly file: string;
  /** What was found in them; where there are several orders, before and after the order. */
  readonly before: string;
  readonly after: string;
  readonly orders: readonly number[];
  readonly positions: readonly number[];
}

const WITH_ORDER = /^(.*) order (\d+)(.*)$/;

/** The columns of a log that were used, in their order, as few runs as possible: a list short enough for paper. */
export function columnRuns(columns: Assessment["recording"]["columns"]): ColumnRun[] {
  const runs: ColumnRun[] = [];
  for (const { file, position, takenFor } of columns) {
    if (takenFor === undefined) continue;
    const [, before = takenFor, order, after = ""] = WITH_ORDER.exec(takenFor) ?? [];
    const orders = order === undefined ? [] : [Number(order)];
    const last = runs.at(-1);
    const goesOn =
      last !== undefined &&
      orders.length > 0 &&
      last.orders.length > 0 &&
      last.file === file &&
      last.before === before &&
      last.after === after;
    if (goesOn)
      runs[runs.length - 1] = {
        ...last,
        orders: [...last.orders, ...orders],
        positions: [...last.positions, position],
      };
    else runs.push({ file, before, after, orders, positions: [position] });
  }
  return runs;
}

/** "2 to 40" where the numbers rise by one, else each of them: "3, 5, 7". */
export function rangeOf(numbers: readonly number[]): string {
  const isRun = numbers.length > 2 && numbers.every((n, i) => i === 0 || n === (numbers[i - 1] as number) + 1);
  return isRun ? `${numbers[0]} to ${numbers[numbers.length - 1]}` : numbers.join(", ");
}
