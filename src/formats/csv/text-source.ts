import { pipeline, Readable } from "node:stream";
import { constants, createGunzip, gunzipSync } from "node:zlib";
import { LogError } from "../../errors.js";
import type { LogFile, Progress } from "../../recording/log-file.js";

/** The text of a log as blocks of bytes in which every ASCII character is one byte: UTF-8 or a one-byte code page. */
export interface TextSource {
  readonly blocks: AsyncGenerator<Uint8Array>;
  /** About how many bytes the blocks will hold together; only for choosing array sizes. */
  readonly estimatedSize: number;
}

const UTF_8 = new TextDecoder("utf-8", { fatal: true });
const WINDOWS_1252 = new TextDecoder("windows-1252");
const BLOCK = 512 * 1024;
const HEAD = 256 * 1024;
/** A compressed log may not grow beyond this: a log of a year of seconds stays below it, a decompression bomb does not. */
const UNPACKED_LIMIT = 16 * 1024 ** 3;

/**
 * Opens a log as text: unpacks gzip, turns UTF-16 (with or without byte order mark) into UTF-8, drops the byte order
 * mark. UTF-8 and one-byte code pages pass through unchanged; `decodeText` tells them apart.
 * @throws LogError if the compressed data are damaged or grow beyond the limit (also while the blocks are read).
 */
export async function openText(file: LogFile, progress?: Progress): Promise<TextSource> {
  let bytes = fileBlocks(file, progress);
  let size = file.size;
  if (isGzip(await file.read(0, 2))) {
    bytes = unpack(file.name, bytes);
    size = await unpackedSize(file);
  }
  return decode(bytes, size);
}

/** The first part of a text. */
export interface Head {
  /** Longer than `length` by at least one byte. */
  readonly bytes: Uint8Array;
  readonly length: number;
  /** It is all of the text. */
  readonly complete: boolean;
}

/** Takes blocks until they are enough to find out from them how a log is written. */
export async function readHead({ blocks }: TextSource): Promise<Head> {
  const parts: Uint8Array[] = [];
  let length = 0;
  let complete = false;
  while (length < HEAD && !complete) {
    const { value, done } = await blocks.next();
    complete = done === true;
    if (done !== true) {
      parts.push(value);
      length += value.length;
    }
  }
  const bytes = new Uint8Array(length + 1);
  let at = 0;
  for (const part of parts) {
    bytes.set(part, at);
    at += part.length;
  }
  return { bytes, length, complete };
}

/** The text that a file begins with, in UTF-8 or a one-byte code page, by its first bytes; undefined if it is no text. */
export function textOf(head: Uint8Array): Uint8Array | undefined {
  let text = unpackedHead(head);
  if (text === undefined) return undefined;
  const kind = utf16Kind(text);
  if (kind !== undefined) text = new TextEncoder().encode(new TextDecoder(kind).decode(text));
  let control = 0;
  for (const byte of text) if (byte < 32 && (byte < 9 || byte > 13)) control++;
  return text.length > 0 && control <= text.length / 20 ? text : undefined;
}

/** What a file begins with once gzip is unpacked; undefined where the gzip data are damaged. */
export function unpackedHead(head: Uint8Array): Uint8Array | undefined {
  if (!isGzip(head)) return head;
  try {
    const options = { finishFlush: constants.Z_SYNC_FLUSH, maxOutputLength: 8 * 1024 * 1024 };
    return gunzipSync(head.subarray(0, 4096), options);
  } catch {
    return undefined;
  }
}

export function isGzip(head: Uint8Array): boolean {
  return head[0] === 0x1f && head[1] === 0x8b;
}

/** UTF-8 where the bytes are valid UTF-8, else Windows-1252, which contains all letters of Latin-1. */
export function decodeText(bytes: Uint8Array): string {
  try {
    return UTF_8.decode(bytes);
  } catch {
    return WINDOWS_1252.decode(bytes);
  }
}

/** "utf-16le" or "utf-16be" by the byte order mark or by where the zero bytes stand; undefined for anything else. */
export function utf16Kind(head: Uint8Array): "utf-16le" | "utf-16be" | undefined {
  if (head[0] === 0xff && head[1] === 0xfe) return "utf-16le";
  if (head[0] === 0xfe && head[1] === 0xff) return "utf-16be";
  const pairs = Math.min(head.length, 4096) >> 1;
  let [even, odd] = [0, 0];
  for (let i = 0; i < pairs; i++) {
    if (head[2 * i] === 0 && head[2 * i + 1] !== 0) even++;
    if (head[2 * i + 1] === 0 && head[2 * i] !== 0) odd++;
  }
  if (pairs > 0 && odd > 0.8 * pairs) return "utf-16le";
  if (pairs > 0 && even > 0.8 * pairs) return "utf-16be";
  return undefined;
}

async function* fileBlocks(file: LogFile, progress: Progress | undefined): AsyncGenerator<Uint8Array> {
  for (let offset = 0; offset < file.size; ) {
    const block = await file.read(offset, BLOCK);
    if (block.length === 0) break;
    offset += block.length;
    yield block;
    progress?.(`reading ${file.name}`, offset / file.size);
  }
}

async function* unpack(name: string, packed: AsyncGenerator<Uint8Array>): AsyncGenerator<Uint8Array> {
  const gunzip = createGunzip({ chunkSize: BLOCK });
  pipeline(Readable.from(packed), gunzip, () => {});
  let total = 0;
  try {
    for await (const block of gunzip as AsyncIterable<Uint8Array>) {
      total += block.length;
      if (total > UNPACKED_LIMIT) {
        throw new LogError(name, undefined, `unpacks to more than ${UNPACKED_LIMIT / 1024 ** 3} GiB: split the log`);
      }
      yield block;
    }
  } catch (error) {
    if (!String((error as NodeJS.ErrnoException).code).startsWith("Z_")) throw error;
    throw new LogError(
      name,
      `byte ${total} of the unpacked text`,
      "the gzip data are damaged or cut off: copy the file from the logger again",
    );
  }
}

/** The size that gzip notes in its last four bytes, modulo 2³²; a hint only, so never trusted beyond deflate's 1032 : 1. */
async function unpackedSize(file: LogFile): Promise<number> {
  const tail = await file.read(Math.max(0, file.size - 4), 4);
  if (tail.length < 4) return file.size;
  const noted = new DataView(tail.buffer, tail.byteOffset, 4).getUint32(0, true);
  return Math.min(Math.max(noted, file.size), 1032 * file.size);
}

async function decode(bytes: AsyncGenerator<Uint8Array>, size: number): Promise<TextSource> {
  const first = await bytes.next();
  const head = first.done === true ? new Uint8Array(0) : first.value;
  const utf16 = utf16Kind(head);
  const marked = head[0] === 0xef && head[1] === 0xbb && head[2] === 0xbf;
  async function* all(): AsyncGenerator<Uint8Array> {
    if (head.length > 0) yield marked ? head.subarray(3) : head;
    yield* bytes;
  }
  return utf16 === undefined
    ? { blocks: all(), estimatedSize: size }
    : { blocks: toUtf8(all(), utf16), estimatedSize: size / 2 };
}

async function* toUtf8(bytes: AsyncGenerator<Uint8Array>, from: "utf-16le" | "utf-16be"): AsyncGenerator<Uint8Array> {
  const decoder = new TextDecoder(from);
  const encoder = new TextEncoder();
  for await (const block of bytes) yield encoder.encode(decoder.decode(block, { stream: true }));
  yield encoder.encode(decoder.decode());
}
