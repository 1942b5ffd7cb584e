import { COLLECTION, EMBEDDED_BYTES, ENTRY_BYTES, ENTRY_PLACES, SCALAR, VECTOR } from "./entry.js";
import { guidBytes } from "./guid.js";
import { PHYSICAL_TYPES, type PhysicalType } from "./physical-types.js";

/** An element to be written. Values of a timestamp are instants, of a GUID its text, of CHAR1 a string. */
export type WrittenElement = { readonly tag: string } & (
  | { readonly collection: readonly WrittenElement[] }
  | { readonly type: number; readonly scalar: number | string }
  | { readonly type: number; readonly vector: ArrayLike<number> | string }
);

/**
 * The body of a record (IEEE 1159.3): entries, then contents at multiples of 4, links counting from the body's start.
 * @param embed whether scalars of up to 8 bytes stand in their entries, as in most files, or are linked
 */
export function bodyBytes(elements: readonly WrittenElement[], embed: boolean): Uint8Array {
  const bytes = new GrowingBytes();
  writeCollection(bytes, elements, embed);
  return bytes.all();
}

function writeCollection(out: GrowingBytes, elements: readonly WrittenElement[], embed: boolean): void {
  const start = out.place(4 + elements.length * ENTRY_BYTES);
  out.view.setInt32(start, elements.length, true);
  for (const [i, element] of elements.entries()) {
    const entry = start + 4 + i * ENTRY_BYTES;
    out.bytes.set(guidBytes(element.tag), entry + ENTRY_PLACES.tag);
    const kind = "collection" in element ? COLLECTION : "scalar" in element ? SCALAR : VECTOR;
    out.view.setInt8(entry + ENTRY_PLACES.element, kind);
    if ("type" in element) out.view.setInt8(entry + ENTRY_PLACES.type, element.type);
    if ("scalar" in element && embed && bytesOf(element.type) <= EMBEDDED_BYTES) {
      out.view.setUint8(entry + ENTRY_PLACES.embedded, 1);
      writeItem(out, entry + ENTRY_PLACES.link, element.type, element.scalar);
      continue;
    }
    const link = out.size;
    writeContent(out, element, embed);
    out.view.setInt32(entry + ENTRY_PLACES.link, link, true);
    out.view.setInt32(entry + ENTRY_PLACES.size, out.size - link, true);
  }
}

function writeContent(out: GrowingBytes, element: WrittenElement, embed: boolean): void {
  if ("collection" in element) {
    writeCollection(out, element.collection, embed);
  } else if ("scalar" in element) {
    writeItem(out, out.place(bytesOf(element.type)), element.type, element.scalar);
  } else {
    const { type, vector } = element;
    const items = typeof vector === "string" ? textItems(vector) : vector;
    const step = bytesOf(type);
    const at = out.place(4 + items.length * step);
    out.view.setInt32(at, items.length, true);
    const { view } = out;
    const write = writerOf(type);
    for (let i = 0; i < items.length; i++) write(view, at + 4 + i * step, items[i] as number);
  }
}

/** Latin-1 with a NUL at the end; what it cannot write becomes a question mark. */
function textItems(text: string): number[] {
  return [...text].map((c) => ((c.codePointAt(0) as number) < 256 ? (c.codePointAt(0) as number) : 63)).concat(0);
}

function writeItem({ view, bytes }: GrowingBytes, at: number, type: number, value: number | string): void {
  if (typeof value === "string") {
    bytes.set(guidBytes(value), at);
    return;
  }
  writerOf(type)(view, at, value);
}

function writerOf(type: number): NonNullable<PhysicalType["write"]> {
  const { write, name } = PHYSICAL_TYPES.get(type) ?? {};
  if (write === undefined) throw new RangeError(`values of ${name ?? `type ${type}`} are not written`);
  return write;
}

function bytesOf(type: number): number {
  return PHYSICAL_TYPES.get(type)?.bytes ?? 0;
}

/** Bytes that double their room when it is used up. */
class GrowingBytes {
  bytes = new Uint8Array(4096);
  view = new DataView(this.bytes.buffer);
  size = 0;

  /** Room for `length` zero bytes, padded to a multiple of 4. @returns where it begins */
  place(length: number): number {
    const at = this.size;
    this.size += Math.ceil(length / 4) * 4;
    if (this.size > this.bytes.length) {
      const larger = new Uint8Array(Math.max(2 * this.bytes.length, this.size));
      larger.set(this.bytes);
      this.bytes = larger;
      this.view = new DataView(larger.buffer);
    }
    return at;
  }

  all(): Uint8Array {
    return this.bytes.subarray(0, this.size);
  }
}
