import type { Verdict } from "../../rules/assessment.js";
import type { Text } from "../../sentence.js";

/** What assets/report.typ can set, one after the other. Data only: the template decides how it looks. */
export type Block =
  | { readonly kind: "title" | "question" | "text" | "intro" | "note" | "contents" | "end"; readonly text: Text }
  | { readonly kind: "heading"; readonly level: 1 | 2 | 3; readonly text: Text }
  | { readonly kind: "lead"; readonly verdict: Verdict; readonly word: Text; readonly text: Text }
  | { readonly kind: "list"; readonly items: readonly Cell[] }
  | {
      readonly kind: "danger";
      readonly title: Text;
      readonly cautions: readonly Text[];
      readonly found: readonly Text[];
    }
  | Table
  | { readonly kind: "pairs"; readonly rows: readonly (readonly [Text, Cell])[] }
  | PictureBlock
  | { readonly kind: "beside"; readonly pictures: readonly PictureBlock[] }
  | { readonly kind: "wide"; readonly blocks: readonly Block[] }
  | { readonly kind: "page" };

export interface Table {
  readonly kind: "table";
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly Cell[])[];
  /** Size of the letters in points. */
  readonly size: number;
  /** Whether a row may go on over the end of a page. */
  readonly breakable: boolean;
  /** Short enough to stay on one page, whatever the page. */
  readonly whole: boolean;
}

export interface Column {
  readonly title: Text;
  /** Share of the room that the columns of width 0 leave; those are as wide as what stands in them. */
  readonly width: number;
  readonly right: boolean;
}

export type Cell =
  | Text
  | { readonly text: Text; readonly note?: Text; readonly bold?: true }
  | { readonly text: Text; readonly verdict: Verdict; readonly note?: Text };

export interface PictureBlock {
  readonly kind: "picture";
  readonly svg: string;
  readonly title: Text;
  readonly alt: Text;
  readonly note: Text;
  /** Share of the width of the text, up to 1. */
  readonly width: number;
}

export const heading = (level: 1 | 2 | 3, text: Text): Block => ({ kind: "heading", level, text });
export const paragraph = (text: Text): Block => ({ kind: "text", text });
export const note = (text: Text): Block => ({ kind: "note", text });

/** Opens a table and stays with it. */
export const intro = (text: Text): Block => ({ kind: "intro", text });

/** A row with more letters than this in one cell could be higher than a page. */
const LONG = 800;
/** A table with no more rows and letters than this surely fits on a page. */
const WHOLE = { rows: 12, letters: 2500 };

function lengthOf(cell: Cell): number {
  return typeof cell === "object" && "text" in cell ? `${cell.text}${cell.note ?? ""}`.length : String(cell).length;
}

/** Columns as [title, width], `right` for numbers that stand under one another. */
export function table(
  columns: readonly (readonly [title: Text, width: number, right?: "right"])[],
  rows: Table["rows"],
  size = 8.5,
): Block {
  const lengths = rows.flat().map(lengthOf);
  return {
    kind: "table",
    columns: columns.map(([title, width, side]) => ({ title, width, right: side === "right" })),
    rows,
    size,
    breakable: lengths.some((length) => length > LONG),
    whole: rows.length <= WHOLE.rows && lengths.reduce((sum, length) => sum + length, 0) <= WHOLE.letters,
  };
}
