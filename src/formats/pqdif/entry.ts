import { guidText } from "./guid.js";
import { knownTag } from "./identifiers.js";
import { PHYSICAL_TYPES } from "./physical-types.js";

/** An entry of a collection (IEEE 1159.3, working-group headers): what an element is and where its content stands. */
export interface Entry {
  /** Empty for a tag that is not read here. */
  readonly tag: string;
  readonly element: number;
  /** Number of the physical type. */
  readonly type: number;
  /** Place of the content in the body: in the entry itself where it is embedded, else where the link leads. */
  readonly place: number;
}

export const ENTRY_BYTES = 28;
export const ENTRY_PLACES = { tag: 0, element: 16, type: 17, embedded: 18, link: 20, size: 24 } as const;

/** A scalar of at most so many bytes may stand in its entry. */
export const EMBEDDED_BYTES = 8;

export const COLLECTION = 1;
export const SCALAR = 2;
export const VECTOR = 3;

export function isElementType(element: number): boolean {
  return element >= COLLECTION && element <= VECTOR;
}

/**
 * @param bytes of the entry
 * @param at place of the entry in the body
 */
export function entryOf(bytes: Uint8Array, at: number): Entry {
  const view = new DataView(bytes.buffer, bytes.byteOffset, ENTRY_BYTES);
  const element = view.getInt8(ENTRY_PLACES.element);
  const type = view.getInt8(ENTRY_PLACES.type);
  const fits = (PHYSICAL_TYPES.get(type)?.bytes ?? 0) <= EMBEDDED_BYTES;
  const embedded = element === SCALAR && fits && view.getUint8(ENTRY_PLACES.embedded) === 1;
  return {
    tag: knownTag(guidText(bytes, ENTRY_PLACES.tag)),
    element,
    type,
    // The size beside the link is not needed, and some writers state it wrongly.
    place: embedded ? at + ENTRY_PLACES.link : view.getInt32(ENTRY_PLACES.link, true),
  };
}
