import { say } from "../../sentence.js";
import { type Body, Damage } from "./body.js";
import { itemsOf, type Vector } from "./vector.js";

/** A stretch of equal steps: `count` values, of which the i-th is base + i × rate. */
interface Segment {
  readonly first: number;
  readonly count: number;
  readonly base: number;
  readonly rate: number;
  /** Values start one step after `base`, except in the first segment. */
  readonly steps: 0 | 1;
}

export interface Increments {
  readonly count: number;
  readonly segments: readonly Segment[];
}

/**
 * Storage by increments (IEEE 1159.3, working-group headers): the vector is the number of segments, then of each a count and
 * a rate. The first value is 0, and each next one is greater by the rate of its own segment; readers differ in whether the
 * step into a segment has its rate or the one before, and this is how the standard body's library has it. Values are computed
 * from the start of their segment, so that rounding does not add up.
 * @throws Damage for counts that cannot be: steps for more values than the body has bytes belong to no stored series
 */
export async function incrementsOf(body: Body, vector: Vector): Promise<Increments> {
  const fault = (what: number) =>
    new Damage(
      body.byteOf(vector.place),
      say`a series in steps announces ${what} of segments or values, which its record cannot hold`,
    );
  if (vector.count === 0) return { count: 0, segments: [] };
  const [announced = 0] = await itemsOf(body, vector, 0, 1);
  const n = Math.round(announced);
  if (!(n >= 0 && 1 + 2 * n <= vector.count)) throw fault(announced);
  const most = Math.max(body.size, FEW_VALUES);
  const pairs = await itemsOf(body, vector, 1, 1 + 2 * n);
  const segments: Segment[] = [];
  let first = 0;
  let last = 0;
  for (let i = 0; i < n; i++) {
    const count = Math.round(pairs[2 * i] as number);
    const rate = pairs[2 * i + 1] as number;
    if (!(count >= 0 && first + count <= most && Number.isFinite(rate))) throw fault(count);
    if (count === 0) continue;
    const steps = first === 0 ? 0 : 1;
    segments.push({ first, count, base: last, rate, steps });
    first += count;
    last += (count - 1 + steps) * rate;
  }
  return { count: first, segments };
}

/** Steps alone may stand for so many values in any body: they take little memory. */
const FEW_VALUES = 1_000_000;

/** Values `from` to before `to`. */
export function steppedValues({ segments }: Increments, from: number, to: number): Float64Array {
  const values = new Float64Array(to - from);
  for (const { first, count, base, rate, steps } of segments) {
    const end = Math.min(to, first + count);
    for (let i = Math.max(from, first); i < end; i++) values[i - from] = base + (i - first + steps) * rate;
  }
  return values;
}
