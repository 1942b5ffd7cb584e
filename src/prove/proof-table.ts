/** One published value and what this program makes of it. All numbers in the unit of the row. */
export interface ProofRow {
  readonly what: string;
  /** "1" for numbers without a unit. */
  readonly unit: string;
  readonly expected: number;
  readonly computed: number;
  /** Largest deviation that passes. */
  readonly tolerance: number;
}

/** A published table, or a set of values with one source. */
export interface ProofTable {
  readonly id: string;
  readonly title: string;
  /** Where the expected values and the tolerance come from, and how the values were computed. */
  readonly source: string;
  /**
   * A public document seen prints the expected values, or the definition they follow from; of signals whose true value is
   * known it prints the tolerance. Else they are from memory.
   */
  readonly confirmed: boolean;
  /** Computes the rows one after the other; `quick`: a representative part of them. The same rows each time. */
  rows(quick: boolean): AsyncIterable<ProofRow> | Iterable<ProofRow>;
}
