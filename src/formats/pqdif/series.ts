import { say } from "../../sentence.js";
import { type Body, Damage } from "./body.js";
import { type Increments, incrementsOf, steppedValues } from "./increments.js";
import type { PqdifChannel, PqdifChannelDefinition } from "./model.js";
import { TIMESTAMP } from "./physical-types.js";
import { itemsOf, type Vector } from "./vector.js";

/** A channel instance as it stands in its record. */
export interface StoredChannel {
  readonly byte: number;
  readonly definition: { readonly index: number; readonly is: PqdifChannelDefinition } | undefined;
  readonly series: readonly StoredSeries[];
  readonly details?: Pick<PqdifChannel, "group" | "frequency" | "characteristics">;
}

/** A series instance as it stands there: its own vector or a share of another's, or nothing that can be read. */
export interface StoredSeries {
  readonly byte: number;
  readonly vector?: Vector;
  /** Indices of the channel instance and of the series in it. */
  readonly share?: { readonly channel: number; readonly series: number };
  readonly scale?: number;
  readonly offset?: number;
  readonly base?: number;
}

/** A series whose values can be read. */
export interface ReadableSeries {
  readonly count: number;
  read(from: number, to: number): Promise<Float64Array>;
}

/** Bits of tagStorageMethodID. */
export const STORAGE = { values: 1, scaled: 2, increment: 4 } as const;
const STORAGE_BITS = 7;

/** A shared series may itself be shared; writers seen need one hop. */
const MAX_HOPS = 8;

/**
 * What a series holds: its own vector or, where it is shared, that of the series it names. The vector stands as the
 * definition of its own place says; scale and offset are those of the sharing series where it has any. Without the bit
 * for scaled values both are ignored, as most readers do.
 * @returns undefined where there is no vector
 * @throws Damage
 */
export async function readableSeries(
  body: Body,
  channels: readonly StoredChannel[],
  channel: number,
  index: number,
): Promise<ReadableSeries | undefined> {
  const own = placeOf(channels, channel, index);
  const { vector, place } = sourceOf(channels, own);
  if (vector === undefined) return undefined;
  const storage = storageOf(place.storage ?? own.storage ?? STORAGE.values, body, vector);
  const hasOwn = own.series.scale !== undefined || own.series.offset !== undefined;
  const scaling = hasOwn ? own : place;
  const scaled =
    storageOf(scaling.storage ?? storage, body, vector) & STORAGE.scaled && vector.typeNumber !== TIMESTAMP;
  const { scale = 1, offset = 0 } = scaled ? scaling.series : {};
  const scaledBy = (values: Float64Array) => {
    if (scale === 1 && offset === 0) return values;
    for (let i = 0; i < values.length; i++) values[i] = (values[i] as number) * scale + offset;
    return values;
  };
  if (vector.type.read === undefined) {
    throw new Damage(
      body.byteOf(vector.place),
      say`a series holds ${vector.type.name}, which is no real number, and is left out`,
    );
  }
  if ((storage & STORAGE.increment) === 0) {
    return { count: vector.count, read: async (from, to) => scaledBy(await itemsOf(body, vector, from, to)) };
  }
  const steps = await cachedIncrements(body, vector);
  return { count: steps.count, read: async (from, to) => scaledBy(steppedValues(steps, from, to)) };
}

/** A time series is shared by all channels of an observation: its steps are read once. */
const increments = new WeakMap<Vector, Increments>();

async function cachedIncrements(body: Body, vector: Vector): Promise<Increments> {
  const known = increments.get(vector) ?? (await incrementsOf(body, vector));
  increments.set(vector, known);
  return known;
}

interface Place {
  readonly series: StoredSeries;
  /** Storage method by the definition; undefined where none belongs to it. */
  readonly storage: number | undefined;
}

const NOTHING: StoredSeries = { byte: 0 };

function placeOf(channels: readonly StoredChannel[], channel: number, index: number): Place {
  const there = channels[channel];
  return { series: there?.series[index] ?? NOTHING, storage: there?.definition?.is.series[index]?.storage };
}

function sourceOf(channels: readonly StoredChannel[], own: Place): { vector: Vector | undefined; place: Place } {
  let place = own;
  for (let hops = 0; hops < MAX_HOPS; hops++) {
    const { share, vector, byte } = place.series;
    if (share === undefined) return { vector, place };
    place = placeOf(channels, share.channel, share.series);
    if (place.series === NOTHING) {
      throw new Damage(
        byte,
        say`a series shares the values of series ${share.series} of channel ${share.channel}, which there is not`,
      );
    }
  }
  throw new Damage(own.series.byte, say`series share one another's values in a circle`);
}

/** 0 is what one writer has for plain values. @throws Damage for bits that are not defined */
function storageOf(stored: number, body: Body, vector: Vector): number {
  if (!Number.isInteger(stored) || (stored & STORAGE_BITS) !== stored) {
    throw new Damage(body.byteOf(vector.place), say`a series has the unknown storage method ${stored} and is left out`);
  }
  return stored === 0 ? STORAGE.values : stored;
}
