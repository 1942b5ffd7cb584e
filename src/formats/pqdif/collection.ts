import type { Instant } from "../../recording/time.js";
import { say } from "../../sentence.js";
import { type Body, Damage } from "./body.js";
import { COLLECTION, ENTRY_BYTES, type Entry, entryOf, SCALAR, VECTOR } from "./entry.js";
import { guidText } from "./guid.js";
import { tagName } from "./identifiers.js";
import { CHAR1, CHAR2, GUID, TIMESTAMP } from "./physical-types.js";
import { isoInstant } from "./timestamp.js";
import { bytesAt, physicalType, textOf, type Vector, vectorAt, viewOf } from "./vector.js";
import type { Warnings } from "./warnings.js";

/** A body that is being read. */
export interface Tree {
  readonly body: Body;
  readonly warnings: Warnings;
  /** Entries that may still be read; a body holds no more than fit into it, unless links lead to the same place again. */
  entriesLeft: number;
}

/** An observation has some thousands of elements; a body that fits the memory could hold ten millions of made-up ones. */
export const MAX_ENTRIES = 1_000_000;

export function treeOf(body: Body, warnings: Warnings): Tree {
  return { body, warnings, entriesLeft: Math.min(MAX_ENTRIES, Math.floor(body.size / ENTRY_BYTES)) };
}

/**
 * A collection of elements. Only the known ones are followed, at most six levels deep, so a tree cannot be too deep or lead
 * in a circle. A getter gives undefined where the element is absent, and with a warning where it cannot be read.
 */
export class Collection {
  readonly #tree: Tree;
  readonly #entries: readonly Entry[];
  readonly byte: number;

  private constructor(tree: Tree, at: number, entries: readonly Entry[]) {
    this.#tree = tree;
    this.#entries = entries;
    this.byte = tree.body.byteOf(at);
  }

  /** @throws Damage if it does not lie in the body */
  static async at(tree: Tree, at: number): Promise<Collection> {
    const { body } = tree;
    const count = viewOf(await bytesAt(body, at, 4)).getInt32(0, true);
    if (count < 0 || count > tree.entriesLeft || at + 4 + count * ENTRY_BYTES > body.size) {
      throw new Damage(body.byteOf(at), say`a collection announces ${count} elements, which its record cannot hold`);
    }
    tree.entriesLeft -= count;
    const bytes = await body.bytes(at + 4, count * ENTRY_BYTES);
    const entries = Array.from({ length: count }, (_, i) =>
      entryOf(bytes.subarray(i * ENTRY_BYTES, (i + 1) * ENTRY_BYTES), at + 4 + i * ENTRY_BYTES),
    );
    return new Collection(tree, at, entries);
  }

  has(tag: string): boolean {
    return this.#entries.some((e) => e.tag === tag);
  }

  /** The collections with tag `one` in the collection `list`, in order; undefined in the place of one that cannot be read. */
  async children(list: string, one: string): Promise<(Collection | undefined)[]> {
    const parent = await this.#read(list, (entry) => this.#collection(entry));
    const found: (Collection | undefined)[] = [];
    for (const entry of parent === undefined ? [] : parent.#entries) {
      if (entry.tag === one) found.push(await this.#tree.warnings.tried(() => this.#collection(entry)));
    }
    return found;
  }

  /** A number of any numeric type, the first of a vector. */
  number(tag: string): Promise<number | undefined> {
    return this.#read(tag, async (entry) => {
      const { body } = this.#tree;
      const type = physicalType(body, entry);
      if (type.read === undefined || entry.type === TIMESTAMP) throw this.#unfit(entry, type.name);
      const value = type.read(viewOf(await this.#content(entry, type.bytes)), 0);
      if (!Number.isFinite(value)) throw this.#unfit(entry, String(value));
      return value;
    });
  }

  /** A time; also from text as ISO 8601 writes it, as one writer does. */
  instant(tag: string): Promise<Instant | undefined> {
    return this.#read(tag, async (entry) => {
      const { body } = this.#tree;
      const type = physicalType(body, entry);
      const instant =
        entry.type === TIMESTAMP
          ? type.read?.(viewOf(await this.#content(entry, type.bytes)), 0)
          : isText(entry)
            ? isoInstant(await textOf(body, await vectorAt(body, entry)))
            : undefined;
      if (Number.isNaN(instant)) throw this.#unfit(entry, "a time beyond all calendars");
      if (instant === undefined) throw this.#unfit(entry, type.name);
      return instant;
    });
  }

  /** Text without blanks at its ends; undefined where none is left. */
  text(tag: string): Promise<string | undefined> {
    return this.#read(tag, async (entry) => {
      const { body } = this.#tree;
      if (!isText(entry)) throw this.#unfit(entry, physicalType(body, entry).name);
      return (await textOf(body, await vectorAt(body, entry))) || undefined;
    });
  }

  /**
   * An identifier. One writer stores it 4 bytes after its link, behind a count; that is taken where it alone gives one of
   * the `known`.
   */
  guid(tag: string, known: ReadonlySet<string>): Promise<string | undefined> {
    return this.#read(tag, async (entry) => {
      const { body } = this.#tree;
      if (entry.type !== GUID) throw this.#unfit(entry, physicalType(body, entry).name);
      const stored = guidText(await this.#content(entry, 16), 0);
      if (known.has(stored) || entry.place + 20 > body.size) return stored;
      const shifted = guidText(await bytesAt(body, entry.place + 4, 16), 0);
      return known.has(shifted) ? shifted : stored;
    });
  }

  /** Where the items of a vector stand. */
  vector(tag: string): Promise<Vector | undefined> {
    return this.#read(tag, async (entry) => {
      if (entry.element !== VECTOR) throw this.#unfit(entry, "no vector");
      return vectorAt(this.#tree.body, entry);
    });
  }

  async #read<T>(tag: string, read: (entry: Entry) => Promise<T>): Promise<T | undefined> {
    const entry = this.#entries.find((e) => e.tag === tag);
    return entry === undefined ? undefined : this.#tree.warnings.tried(() => read(entry));
  }

  async #collection(entry: Entry): Promise<Collection> {
    if (entry.element !== COLLECTION) throw this.#unfit(entry, "no collection");
    return Collection.at(this.#tree, entry.place);
  }

  /** The bytes of a scalar, or of the first item of a vector. */
  async #content(entry: Entry, length: number): Promise<Uint8Array> {
    const { body } = this.#tree;
    if (entry.element === SCALAR) return bytesAt(body, entry.place, length);
    if (entry.element !== VECTOR) throw this.#unfit(entry, "a collection");
    const { count, place } = await vectorAt(body, entry);
    if (count === 0) throw this.#unfit(entry, "an empty vector");
    return bytesAt(body, place, length);
  }

  #unfit(entry: Entry, what: string): Damage {
    return new Damage(
      this.byte,
      say`the element ${tagName(entry.tag)} holds ${what}, which it cannot be, and is left out`,
    );
  }
}

function isText({ element, type }: Entry): boolean {
  return element === VECTOR && (type === CHAR1 || type === CHAR2);
}
