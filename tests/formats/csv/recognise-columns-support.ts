import { toNumber } from "../../../src/decimal.js";
import {
  type ColumnText,
  type RecognisedColumn,
  recogniseColumns,
} from "../../../src/formats/csv/recognise-columns.js";
import { keyText, type LoggedQuantity } from "../../../src/recording/quantity.js";
import type { GivenSetup } from "../../../src/recording/setup.js";

/** A header, or a header with its units row and values. */
export type Column = string | { readonly header: string; readonly unit?: string; readonly samples?: readonly string[] };

export function logOf(columns: readonly Column[]): readonly ColumnText[] {
  return columns.map((column, index) => ({
    position: index + 1,
    samples: ["231.4", "229.8", "230.6"],
    ...(typeof column === "string" ? { header: column } : column),
  }));
}

export function recognise(columns: readonly Column[], setup: GivenSetup = {}): readonly RecognisedColumn[] {
  return recogniseColumns("feeder.csv", logOf(columns), setup);
}

/** "voltage L1, mean, kV x 1000 = V", "flag", or "unused: …" with the reason. */
export function shortly(column: RecognisedColumn | undefined): string {
  if (column?.flag) return "flag";
  if (!column?.meaning || !column.scale) return `unused: ${column?.reason}`;
  const scale = toNumber(column.scale);
  const factor = scale === 1 ? "" : ` x ${scale} = ${column.unit}`;
  return `${keyText(column.meaning)}, ${column.meaning.statistic}, ${column.meaning.writtenUnit}${factor}`;
}

/** What a log with this one column is understood as. */
export function alone(column: Column, setup: GivenSetup = {}): string {
  return shortly(recognise([column], setup)[0]);
}

export function all(columns: readonly Column[], setup: GivenSetup = {}): readonly string[] {
  return recognise(columns, setup).map(shortly);
}

/** A unit headers write for a quantity. */
export const WRITTEN_UNIT: Readonly<Record<LoggedQuantity, string>> = {
  voltage: "V",
  current: "A",
  frequency: "Hz",
  "thd-voltage": "%",
  "thd-current": "%",
  "harmonic-voltage": "%",
  "harmonic-current": "A",
  "interharmonic-voltage": "%",
  "mains-signalling": "%",
  pst: "1",
  plt: "1",
  "negative-sequence-unbalance": "%",
  "zero-sequence-unbalance": "%",
  "active-power": "W",
  "reactive-power": "var",
  "apparent-power": "VA",
  "power-factor": "1",
};
