import { say } from "../../sentence.js";
import { guidText } from "./guid.js";
import { RECORD, SIGNATURE } from "./identifiers.js";
import type { PagedFile } from "./paged-file.js";
import type { Warnings } from "./warnings.js";

/** A record as its header announces it. */
export interface PqdifRecord {
  /** Of the header. */
  readonly byte: number;
  /** Identifier of the record type. */
  readonly type: string;
  readonly body: number;
  /** As stored, cut at the end of the file. */
  readonly bodySize: number;
}

/**
 * Signature, type, header size, body size, next record, checksum and 16 reserved bytes (IEEE 1159.3, working-group headers).
 * The checksum is not looked at: writers put Adler-32 of the stored body, CRC-32 of the plain one, or 0 there.
 */
export const HEADER_BYTES = 64;
export const HEADER_PLACES = { type: 16, headerSize: 32, bodySize: 36, next: 40, checksum: 44 } as const;

/** Whether a file begins with the signature that every record begins with. */
export function isPqdif(head: Uint8Array): boolean {
  return head.length >= 16 && guidText(head, 0) === SIGNATURE;
}

/**
 * The chain of records in the order of their links. It ends at the link 0; at one that leads back, out of the file or to
 * something that is no record it ends with a warning, because what follows cannot be found.
 */
export async function* recordsOf(file: PagedFile, warnings: Warnings): AsyncGenerator<PqdifRecord> {
  const seen = new Set<number>();
  let linkedAt = 0;
  for (let at = 0; ; ) {
    if (at + HEADER_BYTES > file.size || at < 0) {
      return warnings.add(
        linkedAt,
        say`the next record lies outside the file (at byte ${at}), so the rest cannot be found`,
      );
    }
    if (seen.has(at)) {
      return warnings.add(
        linkedAt,
        say`the next record is one that was already read (at byte ${at}), so the rest cannot be found`,
      );
    }
    seen.add(at);
    const header = await file.bytes(at, HEADER_BYTES);
    if (!isPqdif(header)) {
      return warnings.add(
        linkedAt,
        say`where the next record should begin (byte ${at}) there is none, so the rest cannot be found`,
      );
    }
    const view = new DataView(header.buffer, header.byteOffset, HEADER_BYTES);
    const next = view.getInt32(HEADER_PLACES.next, true);
    const record = recordAt(at, header, view, file.size, warnings);
    if (record !== undefined) yield record;
    if (next === 0) return;
    linkedAt = at + HEADER_PLACES.next;
    at = next;
  }
}

function recordAt(at: number, header: Uint8Array, view: DataView, fileSize: number, warnings: Warnings) {
  const type = guidText(header, HEADER_PLACES.type);
  if (type === RECORD.blank) return undefined;
  const headerSize = view.getInt32(HEADER_PLACES.headerSize, true);
  const bodySize = view.getInt32(HEADER_PLACES.bodySize, true);
  const body = at + headerSize;
  const there = fileSize - body;
  if (headerSize < HEADER_BYTES || bodySize < 0 || there < 0) {
    warnings.add(at, say`the record gives sizes that cannot be (${headerSize} and ${bodySize} bytes) and is left out`);
    return undefined;
  }
  if (bodySize > there) {
    warnings.add(at, say`the file ends within a record, ${bodySize - there} bytes before its end: copy the file again`);
  }
  return { byte: at, type, body, bodySize: Math.min(bodySize, there) };
}
