import { say } from "../../sentence.js";
import { type Body, Damage } from "./body.js";
import type { Entry } from "./entry.js";
import { PHYSICAL_TYPES, type PhysicalType } from "./physical-types.js";

/** Where the items of a vector stand in a body. */
export interface Vector {
  readonly type: PhysicalType;
  /** Number of the physical type. */
  readonly typeNumber: number;
  /** Place of the first item. */
  readonly place: number;
  readonly count: number;
}

/** @throws Damage unless all items lie in the body, so that a false count takes no memory */
export async function vectorAt(body: Body, entry: Entry): Promise<Vector> {
  const type = physicalType(body, entry);
  const place = entry.place + 4;
  const count = viewOf(await bytesAt(body, entry.place, 4)).getInt32(0, true);
  if (count < 0 || count * type.bytes > body.size - place) {
    throw new Damage(
      body.byteOf(entry.place),
      say`a vector announces ${count} items of ${type.bytes} bytes, which its record cannot hold`,
    );
  }
  return { type, typeNumber: entry.type, place, count };
}

/** @throws Damage if the number is none of the standard's */
export function physicalType(body: Body, { type, place }: Entry): PhysicalType {
  const known = PHYSICAL_TYPES.get(type);
  if (known === undefined)
    throw new Damage(body.byteOf(inside(body, place)), say`an element has the unknown physical type ${type}`);
  return known;
}

/** Bytes of a body. @throws Damage if they do not lie in it */
export async function bytesAt(body: Body, at: number, length: number): Promise<Uint8Array> {
  if (at < 0 || at + length > body.size) {
    throw new Damage(
      body.byteOf(inside(body, at)),
      say`a link leads out of its record (to place ${at} of ${body.size})`,
    );
  }
  return body.bytes(at, length);
}

/** The nearest place in the body, to tell a byte of the file. */
function inside(body: Body, at: number): number {
  return Math.min(Math.max(at, 0), body.size);
}

export function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}

/** Items `from` to before `to` as doubles; timestamps as instants. @throws Damage for text, identifiers and complex numbers */
export async function itemsOf(body: Body, vector: Vector, from: number, to: number): Promise<Float64Array> {
  const { type, place } = vector;
  if (type.read === undefined) {
    throw new Damage(body.byteOf(place), say`${type.name} stands where numbers are expected, and is left out`);
  }
  const values = new Float64Array(to - from);
  for (let first = from; first < to; first += CHUNK) {
    const last = Math.min(to, first + CHUNK);
    const view = viewOf(await body.bytes(place + first * type.bytes, (last - first) * type.bytes));
    for (let i = first; i < last; i++) values[i - from] = type.read(view, (i - first) * type.bytes);
  }
  return values;
}

/** Items that are read at once: their bytes stand beside the doubles in memory. */
const CHUNK = 64 * 1024;

/** Text of CHAR1 as Latin-1 (in its Windows form, so that every byte is a character), of CHAR2 as UTF-16, up to the first NUL. */
export async function textOf(body: Body, { type, place, count }: Vector): Promise<string> {
  const bytes = await body.bytes(place, Math.min(count, MAX_TEXT) * type.bytes);
  const text = new TextDecoder(type.bytes === 1 ? "latin1" : "utf-16le").decode(bytes);
  return (text.split("\0", 1)[0] ?? "").trim();
}

/** Characters that are read of a text: a name or a note is shorter. */
const MAX_TEXT = 16 * 1024;
