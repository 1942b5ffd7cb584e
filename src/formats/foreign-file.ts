import { unpackedHead } from "./csv/text-source.js";

/** First bytes by which files that are often taken for logs are known (the formats' own specifications). */
const PDF = "%PDF-";
const ZIP = "PK\u0003\u0004";
const COMPOUND_FILE = "\u00d0\u00cf\u0011\u00e0\u00a1\u00b1\u001a\u00e1";

const SAVE_AS_CSV = "open it, save the table as CSV (text) and read that";

/** Says what a file is that is no log, and what to do; undefined where its first bytes do not tell. */
export function foreignFile(head: Uint8Array): string | undefined {
  const unpacked = unpackedHead(head);
  if (unpacked === undefined) return "the gzip data are damaged or cut off: copy the file from the logger again";
  const begin = String.fromCharCode(...unpacked.subarray(0, 4096));
  if (begin.startsWith(PDF)) return "is a PDF document, which holds no table to read: export the log as CSV (text)";
  if (begin.startsWith(COMPOUND_FILE)) return `is a spreadsheet workbook or another office document: ${SAVE_AS_CSV}`;
  if (!begin.startsWith(ZIP)) return undefined;
  if (/\[Content_Types\]\.xml|_rels\/|\bxl\/|opendocument/.test(begin)) {
    return `is a spreadsheet workbook or another office document: ${SAVE_AS_CSV}`;
  }
  return "is a ZIP archive: unpack it and read the logs in it";
}
