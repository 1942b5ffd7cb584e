import { deflateSync } from "node:zlib";
import { guidBytes } from "./guid.js";
import { RECORD, SIGNATURE } from "./identifiers.js";
import { HEADER_BYTES, HEADER_PLACES } from "./records.js";
import { bodyBytes, type WrittenElement } from "./write-body.js";
import type { WrittenContainer, WrittenRecord } from "./write-description.js";
import { containerElements, dataSourceElements, observationElements, settingsElements } from "./write-elements.js";

export interface WritingForm {
  /** Whether the records after the container are compressed with zlib. Default true. */
  readonly compressed?: boolean;
  /** Whether scalars of up to 8 bytes stand in their entries. Default true. */
  readonly embed?: boolean;
}

/** Links are signed 32-bit numbers. */
const LARGEST_FILE = 0x7fffffff;

/**
 * A PQDIF file (IEEE 1159.3, definition version 1.5), piece by piece: only one record is in memory at a time, so a long
 * recording is given as many observations.
 * @param records in file order; each observation belongs to the data source and the settings before it
 * @throws RangeError for a value that its type cannot hold and for a file beyond 2 GiB, the end of its links
 */
export async function* pqdifPieces(
  container: WrittenContainer,
  records: Iterable<WrittenRecord> | AsyncIterable<WrittenRecord>,
  { compressed = true, embed = true }: WritingForm = {},
): AsyncGenerator<Uint8Array> {
  // A record names the place of the next one, so each waits until it is known whether there is one.
  let waiting = { type: RECORD.container as string, body: bodyBytes(containerElements(container, compressed), embed) };
  let at = 0;
  for await (const record of records) {
    const next = at + HEADER_BYTES + waiting.body.length;
    if (next > LARGEST_FILE) throw new RangeError("a PQDIF file cannot be longer than 2 GiB");
    yield* recordBytes(waiting, next);
    at = next;
    const [type, elements] = contentOf(record);
    const plain = bodyBytes(elements, embed);
    waiting = { type, body: compressed ? deflateSync(plain) : plain };
  }
  yield* recordBytes(waiting, 0);
}

function contentOf(record: WrittenRecord): [type: string, elements: WrittenElement[]] {
  if ("dataSource" in record) return [RECORD.dataSource, dataSourceElements(record.dataSource)];
  if ("settings" in record) return [RECORD.monitorSettings, settingsElements(record.settings)];
  return [RECORD.observation, observationElements(record.observation)];
}

function* recordBytes({ type, body }: { type: string; body: Uint8Array }, next: number): Generator<Uint8Array> {
  const header = new Uint8Array(HEADER_BYTES);
  const view = new DataView(header.buffer);
  header.set(guidBytes(SIGNATURE));
  header.set(guidBytes(type), HEADER_PLACES.type);
  view.setInt32(HEADER_PLACES.headerSize, HEADER_BYTES, true);
  view.setInt32(HEADER_PLACES.bodySize, body.length, true);
  view.setInt32(HEADER_PLACES.next, next, true);
  view.setUint32(HEADER_PLACES.checksum, adler32(body), true);
  yield header;
  yield body;
}

/** Checksum of the stored body (RFC 1950, 9). */
function adler32(bytes: Uint8Array): number {
  const MODULUS = 65_521;
  /** Additions before the sums must be reduced to stay below 2³². */
  const BATCH = 5552;
  let a = 1;
  let b = 0;
  for (let from = 0; from < bytes.length; from += BATCH) {
    const to = Math.min(bytes.length, from + BATCH);
    for (let i = from; i < to; i++) {
      a += bytes[i] as number;
      b += a;
    }
    a %= MODULUS;
    b %= MODULUS;
  }
  return ((b << 16) | a) >>> 0;
}
