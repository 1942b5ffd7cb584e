import { type Ratio, ratio, times, toNumber } from "../../decimal.js";
import type { WrittenNumber } from "./number-text.js";

/** No digit seen yet in a column. */
const NONE = 32767;

/** How written numbers of one column become stored ones, prepared for reading many of them. */
export interface NumberColumn {
  readonly scale: Ratio;
  /** Numerator of the scale, and the largest mantissa that times it is still an exact integer; −1: never. */
  readonly numerator: number;
  readonly largest: number;
  /** By number of decimal places: what to divide by, where that is an exact double; else NaN. */
  readonly divisors: Float64Array;
}

/** The most digits of a mantissa that is read without making a string. */
export const FAST_DIGITS = 15;

export function numberColumn(scale: Ratio): NumberColumn {
  const divisor = gcd(scale.num < 0n ? -scale.num : scale.num, scale.den);
  const [num, den] = [scale.num / divisor, scale.den / divisor];
  const size = Number(num < 0n ? -num : num);
  const exact = Number.isSafeInteger(size);
  return {
    scale: { num, den },
    numerator: Number(num),
    largest: exact ? Math.floor(Number.MAX_SAFE_INTEGER / size) : -1,
    divisors: Float64Array.from({ length: FAST_DIGITS + 1 }, (_, places) => {
      const d = den * 10n ** BigInt(places);
      return d <= BigInt(Number.MAX_SAFE_INTEGER) ? Number(d) : Number.NaN;
    }),
  };
}

function gcd(a: bigint, b: bigint): bigint {
  return b === 0n ? a : gcd(b, a % b);
}

/** What the rows of a file hold, in file order: growing typed arrays, one value per row. */
export class RowStore {
  rows = 0;
  capacity: number;
  /** Packed dates of StampReader; empty where stamps are numbers. */
  dates: Int32Array;
  /** Microseconds of the day, or instants where stamps are numbers. */
  times: Float64Array;
  /** Minutes ahead of UTC, or NO_OFFSET. */
  offsets: Int16Array;
  lines: Uint32Array;
  flagged: Uint8Array;
  readonly values: Float64Array[];
  /** Per column the smallest exponent of a last digit. */
  readonly finest: Int16Array;
  #taken = 0;

  constructor(columns: number, capacity: number) {
    this.capacity = capacity;
    this.dates = new Int32Array(capacity);
    this.times = new Float64Array(capacity);
    this.offsets = new Int16Array(capacity);
    this.lines = new Uint32Array(capacity);
    this.flagged = new Uint8Array(capacity);
    this.values = Array.from({ length: columns }, () => new Float64Array(capacity));
    this.finest = new Int16Array(columns).fill(NONE);
  }

  /** No row has ever been stored. */
  get isUnused(): boolean {
    return this.#taken + this.rows === 0;
  }

  /** Forgets the rows once they have been used, so that the memory does not grow with the log. */
  clear(): void {
    this.#taken += this.rows;
    this.rows = 0;
  }

  grow(): void {
    this.capacity = Math.ceil(this.capacity * 1.5);
    const grown = <T extends { set(from: T): void }>(array: T, larger: T): T => {
      larger.set(array);
      return larger;
    };
    this.dates = grown(this.dates, new Int32Array(this.capacity));
    this.times = grown(this.times, new Float64Array(this.capacity));
    this.offsets = grown(this.offsets, new Int16Array(this.capacity));
    this.lines = grown(this.lines, new Uint32Array(this.capacity));
    this.flagged = grown(this.flagged, new Uint8Array(this.capacity));
    for (let c = 0; c < this.values.length; c++) {
      this.values[c] = grown(this.values[c] as Float64Array, new Float64Array(this.capacity));
    }
  }

  note(column: number, { value, exponent }: WrittenNumber): void {
    (this.values[column] as Float64Array)[this.rows] = value;
    if (exponent < (this.finest[column] as number)) this.finest[column] = exponent;
  }

  /** The smallest step of the last written digit of a column, in its stored unit; undefined where it holds no number. */
  resolution(column: number, scale: Ratio): number | undefined {
    const exponent = this.finest[column] as number;
    if (exponent === NONE) return undefined;
    return Math.abs(toNumber(times(ratio(`1e${exponent}`), scale)));
  }
}
