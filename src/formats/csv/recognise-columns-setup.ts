import { UsageError } from "../../errors.js";
import type { ColumnSetup } from "../../recording/setup.js";
import type { ColumnText } from "./recognise-columns.js";
import { KNOWN_UNITS, type WrittenUnit, writtenUnit } from "./recognise-columns-units.js";

/** How a message names a column. */
export function columnName(column: Named): string {
  return `column ${column.position} ("${column.header}")`;
}

type Named = { readonly position: number; readonly header: string };

/** The line of a setup that says more of columns, for messages: `columns: [{ column: "U1", unit: V }]`. */
export function setupLine(columns: readonly Named[], says: string, all: readonly Named[]): string {
  const entries = columns.map(({ position, header }) => {
    const isUnique = header !== "" && all.filter((other) => other.header.trim() === header.trim()).length === 1;
    return `{ column: ${isUnique ? JSON.stringify(header) : position}, ${says} }`;
  });
  return `columns: [${entries.join(", ")}]`;
}

/**
 * The entry of the setup for each column it names.
 * @throws UsageError if an entry names no column or one of several, or if two entries name the same.
 */
export function entriesByColumn(
  file: string,
  columns: readonly ColumnText[],
  entries: readonly ColumnSetup[],
): ReadonlyMap<ColumnText, ColumnSetup> {
  const found = new Map<ColumnText, ColumnSetup>();
  for (const entry of entries) {
    const column = columnOf(file, columns, entry);
    const { column: _, ignore, ...parts } = entry;
    if (found.has(column)) {
      throw new UsageError(`the setup has two entries under columns: for ${columnName(column)} of ${file}; merge them`);
    }
    if (ignore && Object.values(parts).some((part) => part !== undefined)) {
      throw new UsageError(
        `the setup leaves ${columnName(column)} of ${file} out with ignore: true and also says what it holds; keep one of the two`,
      );
    }
    found.set(column, entry);
  }
  return found;
}

function columnOf(file: string, columns: readonly ColumnText[], { column: named }: ColumnSetup): ColumnText {
  if (typeof named === "number") {
    const column = columns.find(({ position }) => position === named);
    if (column) return column;
    throw new UsageError(
      `the setup names column ${named} under columns:, but ${file} has no column of values at that position; run "inspect" to see the positions`,
    );
  }
  const [column, ...others] = columns.filter(({ header }) => header.trim() === named.trim());
  if (!column) {
    throw new UsageError(
      `the setup names the column "${named}" under columns:, but ${file} has no column of values with that header; write it exactly as in the log, or give its position`,
    );
  }
  if (others.length > 0) {
    const positions = [column, ...others].map(({ position }) => position).join(", ");
    throw new UsageError(
      `the setup names the column "${named}" under columns:, but ${file} has that header at positions ${positions}; give the position instead`,
    );
  }
  return column;
}

/** @throws UsageError if the setup gives a unit that is not known. */
export function givenUnit(file: string, column: ColumnText, text: string): WrittenUnit {
  const unit = writtenUnit(text);
  if (unit === undefined || unit.kind === "unusable") {
    throw new UsageError(
      `the setup gives ${columnName(column)} of ${file} the unit "${text}", which is not known; use one of ${KNOWN_UNITS}`,
    );
  }
  return unit;
}
