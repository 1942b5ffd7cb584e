import { constants, inflateSync } from "node:zlib";
import { say } from "../../sentence.js";
import { type Body, bodyInFile, bodyInMemory, Damage } from "./body.js";
import { ENTRY_BYTES, isElementType } from "./entry.js";
import type { PagedFile } from "./paged-file.js";
import type { PqdifRecord } from "./records.js";

/**
 * Largest body after inflating. An observation holds seconds to days of one recorder, some tens of megabytes at most (common
 * practice, no source); a stream that gives more was made to fill the memory.
 */
export const MAX_INFLATED = 256 * 1024 * 1024;

/**
 * The body of a record, inflated where it is compressed. What the container announces is not trusted blindly: a body that
 * does not look like zlib data (RFC 1950) is read as it stands, and one that does is inflated where it is no collection.
 * A stream that is cut off gives what could be inflated.
 * @throws Damage if the body is neither
 */
export async function bodyOf(file: PagedFile, record: PqdifRecord, compressed: boolean | undefined): Promise<Body> {
  const { body, bodySize } = record;
  const plain = bodyInFile(file, body, bodySize);
  const head = await plain.bytes(0, Math.min(bodySize, 4 + ENTRY_BYTES));
  const collection = looksLikeCollection(head, bodySize);
  if (!looksLikeZlib(head) || (collection && compressed !== true)) return plain;
  if (bodySize > MAX_INFLATED) throw tooLarge(body);
  const inflated = inflate(await file.bytes(body, bodySize), body, collection);
  return inflated === undefined ? plain : bodyInMemory(inflated, body);
}

function inflate(stored: Uint8Array, byte: number, mayBePlain: boolean): Uint8Array | undefined {
  try {
    return inflateSync(stored, { maxOutputLength: MAX_INFLATED, finishFlush: constants.Z_SYNC_FLUSH });
  } catch (error) {
    if (mayBePlain) return undefined;
    if ((error as NodeJS.ErrnoException).code === "ERR_BUFFER_TOO_LARGE") throw tooLarge(byte);
    throw new Damage(byte, say`the compressed data of a record are damaged, so it is left out`);
  }
}

function tooLarge(byte: number): Damage {
  return new Damage(byte, say`a record inflates to more than ${MAX_INFLATED} bytes and is left out`);
}

/** Compression method 8 with a window of at most 32 KiB, and the check bits of the first two bytes (RFC 1950, 2.2). */
function looksLikeZlib([cmf = 0, flags = 0]: Uint8Array): boolean {
  return (cmf & 15) === 8 && cmf >> 4 <= 7 && (cmf * 256 + flags) % 31 === 0;
}

function looksLikeCollection(head: Uint8Array, size: number): boolean {
  if (head.length < 4 + ENTRY_BYTES) return false;
  const count = new DataView(head.buffer, head.byteOffset).getInt32(0, true);
  return count > 0 && 4 + count * ENTRY_BYTES <= size && isElementType(head[4 + 16] as number);
}
