import { LogError } from "../../errors.js";
import { type Bounds, slack } from "./period-bounds.js";
import { rateWithin } from "./round-number.js";

/** Rows that follow each other without loss. */
export interface Run {
  /** Place of the first row on the sample axis, lost samples counted. */
  readonly position: number;
  readonly rows: number;
}

const MOST_RUNS = 65_536;

/**
 * Places rows on an even sample axis by their times, in microseconds. Every row is compared with the first: it must lie
 * a whole number of periods behind it, within what the written digits leave open. Each row narrows the bounds of the
 * period, so that neither rounding nor a rate that is no round number adds up. A period that is known, and a whole number
 * of the last written digit, leaves nothing open.
 */
export class SampleAxis {
  readonly runs: { position: number; rows: number }[] = [];
  #shortest: number;
  #longest: number;
  #last = -1;
  #first = 0;
  #firstPlace = 0;
  /** Microseconds that the written digits of the last time leave open. */
  coarsest = 0;

  constructor(
    private readonly file: string,
    { shortest, longest }: Bounds,
  ) {
    this.#shortest = shortest;
    this.#longest = longest;
  }

  get first(): number {
    return this.#first;
  }

  get bounds(): Bounds {
    return { shortest: this.#shortest, longest: this.#longest };
  }

  /** Samples from the first to the last, those lost in gaps included. */
  get length(): number {
    return this.#last + 1;
  }

  /**
   * @param place of the last written digit of the time
   * @throws LogError if the row is neither the next sample nor one behind a gap of whole samples
   */
  add(time: number, place: number, line: number): void {
    if (this.#last < 0) {
      if (Number.isNaN(time)) throw this.#uneven(time, line);
      this.#first = time;
      this.#firstPlace = place;
      this.#put(0, line);
      return;
    }
    const elapsed = time - this.#first;
    this.coarsest = Math.max(this.#leftOpen(place), this.#leftOpen(this.#firstPlace));
    const off = this.coarsest + slack(time, this.#shortest);
    let position = this.#last + 1;
    // Negated, so that a time that is missing fails.
    if (!(elapsed <= position * this.#longest + off)) {
      position = Math.max(position, Math.round((elapsed * this.#rate()) / 1e6));
    }
    if (!(elapsed <= position * this.#longest + off && elapsed >= position * this.#shortest - off)) {
      throw this.#uneven(elapsed, line);
    }
    if (this.#shortest < this.#longest) {
      this.#shortest = Math.max(this.#shortest, (elapsed - off) / position);
      this.#longest = Math.min(this.#longest, (elapsed + off) / position);
    }
    this.#put(position, line);
  }

  #leftOpen(place: number): number {
    if (this.#shortest < this.#longest) return place;
    const digits = this.#shortest / place;
    return Math.abs(digits - Math.round(digits)) <= 1e-9 * digits ? 0 : place;
  }

  /** A row of a table without times. */
  addNext(): void {
    this.#put(this.#last + 1, 0);
  }

  #put(position: number, line: number): void {
    let run = this.runs.at(-1);
    if (run === undefined || position > this.#last + 1) {
      if (this.runs.length >= MOST_RUNS) {
        throw new LogError(this.file, `line ${line}`, `more than ${MOST_RUNS} gaps stand above: these are no samples`);
      }
      run = { position, rows: 0 };
      this.runs.push(run);
    }
    run.rows++;
    this.#last = position;
  }

  #rate(): number {
    return rateWithin(this.#shortest, this.#longest);
  }

  #uneven(elapsed: number, line: number): LogError {
    if (Number.isNaN(elapsed)) return new LogError(this.file, `line ${line}`, "the row has no time");
    const rate = this.#rate();
    const samples = (elapsed * rate) / 1e6 - this.#last;
    const where = Number(samples.toPrecision(4));
    const what =
      samples <= 0
        ? "not later than the row before"
        : `${where} samples behind the row before, which is no whole number`;
    return new LogError(
      this.file,
      `line ${line}`,
      `by the spacing of most rows (${Number(rate.toPrecision(6))} per second) its time is ${what}; leave the column out (setup: channels, ignore: true) and state samplesPerSecond if the rows follow each other evenly all the same`,
    );
  }
}
