import { type CellClass, cellText, type HeadRecord, width } from "./records.js";
import type { ClassifiedHead } from "./stamp-columns.js";

/** The rows above the data: names of the columns, in one or two rows, perhaps a row of units. */
export interface Header {
  /** By column, 0-based; "" where one has no name. As many as the header has cells, if there is one. */
  readonly names: readonly string[];
  readonly units: readonly (string | undefined)[];
  /** The records that make up the header, for a log that repeats them. */
  readonly records: readonly HeadRecord[];
  /** Lines above the header, cells joined by blanks. */
  readonly preamble: readonly string[];
}

const UNIT =
  /^[[(]?\s*([mkM]?(V|A|W|var|VAr|VA|Hz|Wh|varh|VAh)|volts?|amp[eè]res?|amps?|watts?|hertz|%[\w\s]*|‰|p\.?\s?u\.?|s|ms|min|h|°\s?[CF]?|deg|1|-{1,3})\s*[\])]?$/i;
const TIME_FORM =
  /^[[(]?\s*(utc|gmt|mez|mesz|cet|cest|local|lokal|[dmyjathsj]{1,4}([.:/\s-]+[dmyjathsj]{1,4}){1,6}|)\s*[\])]?$/i;

/**
 * Reads the header above the first row of data.
 * @param first index of the record with which the data begin.
 * @param columns number of cells of the data rows.
 * @param stamps columns of the stamps, 0-based.
 */
export function readHeader(head: ClassifiedHead, first: number, columns: number, stamps: readonly number[]): Header {
  const texts = (r: number) =>
    Array.from({ length: width(head.records[r] as HeadRecord) }, (_, c) =>
      cellText(head.bytes, head.records[r] as HeadRecord, c)
        .replace(/[\s\p{C}]+/gu, " ")
        .trim(),
    );
  const named = (r: number) => r >= 0 && isNames(texts(r), columns);

  let bottom = first - 1;
  let units: string[] = [];
  if (named(bottom) && named(bottom - 1) && isUnits(texts(bottom), stamps)) units = texts(bottom--);
  if (!named(bottom)) {
    return { names: Array(columns).fill(""), units: [], records: [], preamble: lines(head, first) };
  }
  let names = texts(bottom);
  let top = bottom;
  if (bottom > 0 && isGroupRow(texts(bottom - 1), names, head.classes[bottom - 1] ?? [], columns, stamps)) {
    names = joinRows(texts(--top), names, stamps);
  }
  while (names.length > columns && names.at(-1) === "") names.pop();
  return {
    names,
    units: units.map((unit) => unit.replace(/^[[(]\s*|\s*[\])]$/g, "") || undefined),
    records: head.records.slice(top, first),
    preamble: lines(head, top),
  };
}

function lines(head: ClassifiedHead, end: number): string[] {
  return head.records.slice(0, end).map((record) =>
    Array.from({ length: width(record) }, (_, c) => cellText(head.bytes, record, c))
      .filter((text) => text !== "")
      .join(" "),
  );
}

/** A row that names columns is about as wide as the data; "Site: …" above them is not. */
function isNames(texts: readonly string[], columns: number): boolean {
  const filled = texts.filter((text) => text !== "").length;
  return (
    texts.length >= Math.min(2, columns) &&
    filled >= 1 &&
    (texts.length >= columns || filled >= Math.max(2, columns / 2))
  );
}

function isUnits(texts: readonly string[], stamps: readonly number[]): boolean {
  const values = texts.filter((text, c) => !stamps.includes(c) && text !== "");
  const timesFit = stamps.every((c) => TIME_FORM.test(texts[c] ?? "") || UNIT.test(texts[c] ?? ""));
  return timesFit && values.length > 0 && values.filter((text) => UNIT.test(text)).length >= 0.6 * values.length;
}

/** The upper row of a two-row header ("Voltage;;;Current;;;" over "L1;L2;L3;…"), as opposed to a padded line of preamble. */
function isGroupRow(
  texts: readonly string[],
  names: readonly string[],
  classes: readonly CellClass[],
  columns: number,
  stamps: readonly number[],
): boolean {
  if (texts.length < columns || classes.some((c) => c !== "text" && c !== "missing")) return false;
  const filled = texts.filter((text) => text !== "").length;
  if (filled === 0 || texts[0]?.endsWith(":")) return false;
  const stampNamedOnce = stamps.some((c) => (texts[c] ?? "") === "" || (names[c] ?? "") === "");
  return filled >= 3 || stampNamedOnce;
}

/** A group's name stands over its first column and holds until the next one. */
function joinRows(groups: readonly string[], names: readonly string[], stamps: readonly number[]): string[] {
  let group = "";
  return Array.from({ length: Math.max(groups.length, names.length) }, (_, c) => {
    const [own, name] = [groups[c] ?? "", names[c] ?? ""];
    if (stamps.includes(c)) group = "";
    else if (own !== "") group = own;
    if (name === "") return own;
    const above = stamps.includes(c) ? own : group;
    return above === "" || above === name ? name : `${above} ${name}`;
  });
}
