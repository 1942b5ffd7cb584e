import type { Assessment } from "../rules/assessment.js";
import { Numeral, Sentence, type Text } from "../sentence.js";

/** Used columns of a file that differ in one number only, such as their harmonic order, as one. */
export interface ColumnRun {
  readonly file: string;
  /** What was found in the first of them. */
  readonly takenFor: Text;
  /** The number in `takenFor` of each. */
  readonly numbers: readonly number[];
  readonly positions: readonly number[];
}

/** The columns of a log that were used, in the order in which each first appears: a list short enough for paper. */
export function columnRuns(columns: Assessment["recording"]["columns"]): ColumnRun[] {
  const runs = new Map<string, ColumnRun>();
  for (const { file, position, takenFor } of columns) {
    if (takenFor === undefined) continue;
    const numbers = numeralsOf(takenFor);
    const [number] = numbers.length === 1 ? numbers : [];
    const key = number === undefined ? `${file} ${position}` : JSON.stringify([file, shapeOf(takenFor)]);
    const known = runs.get(key) ?? { file, takenFor, numbers: [], positions: [] };
    runs.set(key, {
      ...known,
      numbers: number === undefined ? [] : [...known.numbers, number],
      positions: [...known.positions, position],
    });
  }
  return [...runs.values()];
}

function numeralsOf(text: Text): number[] {
  if (text instanceof Numeral) return [Number(text.digits)];
  return text instanceof Sentence ? text.values.flatMap(numeralsOf) : [];
}

/** The same for texts that differ in their numbers only. */
function shapeOf(text: Text): unknown {
  if (text instanceof Numeral) return null;
  return text instanceof Sentence ? [text.template, ...text.values.map(shapeOf)] : text;
}

/** First, last and step of numbers that rise evenly; undefined for others and for one or two, which are as short by themselves. */
export function rangeOf(
  numbers: readonly number[],
): { readonly first: number; readonly last: number; readonly step: number } | undefined {
  const [first = 0, second = 0] = numbers;
  const step = second - first;
  const isEven = numbers.every((n, i) => n === first + i * step);
  if (numbers.length < 3 || step < 1 || !isEven) return undefined;
  return { first, last: numbers[numbers.length - 1] as number, step };
}
