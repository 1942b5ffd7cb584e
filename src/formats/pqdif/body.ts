import type { Sentence } from "../../sentence.js";
import type { PagedFile } from "./paged-file.js";

/** Something that cannot be read; what it belongs to is left out with a warning. */
export class Damage extends Error {
  readonly byte: number;
  readonly what: Sentence;

  constructor(byte: number, what: Sentence) {
    super(String(what));
    this.byte = byte;
    this.what = what;
  }
}

/** The body of a record: one tree of elements, whose links count from the body's start. */
export interface Body {
  readonly size: number;
  /** Where a place in the body stands in the file; all of an inflated body stands at its first byte. */
  byteOf(at: number): number;
  /** Exactly `length` bytes from `at`, which must lie in the body; not to be changed. */
  bytes(at: number, length: number): Promise<Uint8Array>;
}

export function bodyInMemory(bytes: Uint8Array, byteInFile: number): Body {
  return {
    size: bytes.length,
    byteOf: () => byteInFile,
    bytes: async (at, length) => bytes.subarray(at, at + length),
  };
}

export function bodyInFile(file: PagedFile, start: number, size: number): Body {
  return { size, byteOf: (at) => start + at, bytes: (at, length) => file.bytes(start + at, length) };
}
