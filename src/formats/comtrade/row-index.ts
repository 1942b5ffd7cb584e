/** Rows that follow each other without loss. */
export interface Run {
  /** Place of the first row on the sample axis, lost rows counted. */
  readonly position: number;
  readonly rows: number;
  /** Where the first row begins, in bytes from the beginning of the file. */
  readonly offset: number;
  /** Where the last row ends. */
  readonly end: number;
  /** Line of the first row; 0 in binary data. */
  readonly line: number;
}

export interface RowIndex {
  readonly runs: readonly Run[];
  /** Samples from the first to the last row, lost ones included. */
  readonly length: number;
  /** Samples that are missing between rows, by the sample numbers. */
  readonly lost: number;
  /** The sample numbers do not count rows: they fall or jump all the time. Then every row follows the one before. */
  readonly numbersUsed: boolean;
}

/** Rows that cannot be read and losses beyond this are no losses but damage. */
const MOST_RUNS = 65_536;
/** Numbers may stand for at most this many times the rows that are there. */
const MOST_LOST = 10;

/**
 * Turns sample numbers into places on the sample axis: a number that rises by more than one shows lost rows. Rows are
 * counted by position, so that numbers may start anywhere.
 */
export class RowTracker {
  readonly #runs: { position: number; rows: number; offset: number; end: number; line: number }[] = [];
  #nextBreak = 0;
  #count = 0;
  #lost = 0;
  #jumps = 0;
  #base = Number.NaN;
  #broken = true;
  #usable = true;
  #end = 0;

  /**
   * @param useNumbers false: every row follows the one before.
   * @param breaks places on the sample axis at which a new run begins, rising.
   */
  constructor(
    private readonly useNumbers: boolean,
    private readonly breaks: readonly number[],
  ) {}

  /**
   * @param number the sample number; NaN where it cannot be read
   * @param offset, end where the row begins and ends in the file
   * @returns the place of the row on the sample axis
   */
  add(number: number, offset: number, end: number, line: number): number {
    if (this.useNumbers && !Number.isNaN(number)) this.#follow(number);
    const position = this.#count + this.#lost;
    while (position >= (this.breaks[this.#nextBreak] ?? Number.POSITIVE_INFINITY)) {
      this.#nextBreak++;
      this.#broken = true;
    }
    if (this.#broken) {
      this.#broken = false;
      if (this.#runs.length >= MOST_RUNS) this.#usable = false;
      else this.#runs.push({ position, rows: 0, offset, end, line });
    }
    const run = this.#runs[this.#runs.length - 1];
    if (run !== undefined) {
      run.rows++;
      run.end = end;
    }
    this.#count++;
    this.#end = position + 1;
    return position;
  }

  /** A row that cannot be read: its place stays empty. */
  skip(): void {
    this.#count++;
    this.#broken = true;
  }

  #follow(number: number): void {
    const base = number - this.#count;
    if (Number.isNaN(this.#base)) this.#base = base;
    const lost = base - this.#base;
    if (lost < this.#lost) this.#usable = false;
    if (lost > this.#lost) {
      this.#jumps++;
      this.#lost = lost;
      this.#broken = true;
    }
  }

  /** Undefined if the numbers are of no use (`useNumbers`), or if too many rows cannot be read. */
  finish(): RowIndex | undefined {
    const jumpy = this.#jumps > 10 && this.#jumps > this.#count / 10;
    if (!this.#usable || jumpy || this.#lost > MOST_LOST * this.#count) return undefined;
    return { runs: this.#runs, length: this.#end, lost: this.#lost, numbersUsed: this.useNumbers };
  }
}

/**
 * The runs between two places on the sample axis; positions count from `from`. Runs of text (`rowSize` undefined) must
 * have been broken at both places.
 */
export function cutRuns(runs: readonly Run[], from: number, to: number, rowSize: number | undefined): Run[] {
  return runs.flatMap((run) => {
    const skipped = Math.max(0, from - run.position);
    const rows = Math.min(run.position + run.rows, to) - run.position - skipped;
    if (rows <= 0) return [];
    const position = run.position + skipped - from;
    if (rowSize === undefined) return [{ ...run, position }];
    const offset = run.offset + skipped * rowSize;
    return [{ position, rows, offset, end: offset + rows * rowSize, line: run.line }];
  });
}
