import { instantOf, TIMESTAMP_BYTES, writeInstant } from "./timestamp.js";

/** How one value stands in the file (little endian); `read` gives it as a double, undefined where it is no number. */
export interface PhysicalType {
  readonly name: string;
  readonly bytes: number;
  readonly read?: (view: DataView, at: number) => number;
  readonly write?: (view: DataView, at: number, value: number) => void;
}

/** Physical types by their number (IEEE 1159.3; working-group headers 1.5). A timestamp is read as an instant. */
export const PHYSICAL_TYPES: ReadonlyMap<number, PhysicalType> = new Map<number, PhysicalType>([
  [1, { name: "BOOLEAN1", bytes: 1, read: (v, at) => truth(v.getUint8(at)), write: (v, at, x) => v.setUint8(at, x) }],
  [2, { name: "BOOLEAN2", bytes: 2, read: (v, at) => truth(v.getUint16(at, true)), write: setUint16 }],
  [3, { name: "BOOLEAN4", bytes: 4, read: (v, at) => truth(v.getUint32(at, true)), write: setUint32 }],
  [10, { name: "CHAR1", bytes: 1, write: (v, at, x) => v.setUint8(at, x) }],
  [11, { name: "CHAR2", bytes: 2 }],
  [20, { name: "INTEGER1", bytes: 1, read: (v, at) => v.getInt8(at), write: (v, at, x) => v.setInt8(at, x) }],
  [
    21,
    { name: "INTEGER2", bytes: 2, read: (v, at) => v.getInt16(at, true), write: (v, at, x) => v.setInt16(at, x, true) },
  ],
  [
    22,
    { name: "INTEGER4", bytes: 4, read: (v, at) => v.getInt32(at, true), write: (v, at, x) => v.setInt32(at, x, true) },
  ],
  [30, { name: "UNS_INTEGER1", bytes: 1, read: (v, at) => v.getUint8(at), write: (v, at, x) => v.setUint8(at, x) }],
  [31, { name: "UNS_INTEGER2", bytes: 2, read: (v, at) => v.getUint16(at, true), write: setUint16 }],
  [32, { name: "UNS_INTEGER4", bytes: 4, read: (v, at) => v.getUint32(at, true), write: setUint32 }],
  [
    40,
    {
      name: "REAL4",
      bytes: 4,
      read: (v, at) => v.getFloat32(at, true),
      write: (v, at, x) => v.setFloat32(at, x, true),
    },
  ],
  [
    41,
    {
      name: "REAL8",
      bytes: 8,
      read: (v, at) => v.getFloat64(at, true),
      write: (v, at, x) => v.setFloat64(at, x, true),
    },
  ],
  [42, { name: "COMPLEX8", bytes: 8 }],
  [43, { name: "COMPLEX16", bytes: 16 }],
  [50, { name: "TIMESTAMPPQDIF", bytes: TIMESTAMP_BYTES, read: instantOf, write: writeInstant }],
  [60, { name: "GUID", bytes: 16 }],
]);

export const CHAR1 = 10;
export const CHAR2 = 11;
export const UNS_INTEGER4 = 32;
export const TIMESTAMP = 50;
export const GUID = 60;

function truth(stored: number): number {
  return stored === 0 ? 0 : 1;
}

function setUint16(view: DataView, at: number, value: number): void {
  view.setUint16(at, value, true);
}

function setUint32(view: DataView, at: number, value: number): void {
  view.setUint32(at, value, true);
}

/** The number of a physical type by its name. */
export function typeNumber(name: string): number {
  for (const [number, type] of PHYSICAL_TYPES) if (type.name === name) return number;
  throw new RangeError(`${name} is no physical type of PQDIF`);
}
