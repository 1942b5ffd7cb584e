import { LogError } from "../../errors.js";
import type { LogFile } from "../../recording/log-file.js";

const PAGE = 64 * 1024;
const PAGES_KEPT = 16;

/**
 * Reads a file in pages, of which the last few are kept: the trees of its records are scattered between the values, and
 * those are long and must not be read to list what there is.
 */
export class PagedFile {
  readonly name: string;
  readonly size: number;
  readonly #file: LogFile;
  readonly #pages = new Map<number, Uint8Array>();

  constructor(file: LogFile) {
    this.#file = file;
    this.name = file.name;
    this.size = file.size;
  }

  /**
   * Exactly `length` bytes from `at`, which must lie in the file. May be part of a page: copy before changing it.
   * @throws LogError if the file has become shorter meanwhile
   */
  async bytes(at: number, length: number): Promise<Uint8Array> {
    const number = Math.floor(at / PAGE);
    const from = at - number * PAGE;
    const bytes =
      from + length > PAGE
        ? await this.#file.read(at, length)
        : (await this.#page(number)).subarray(from, from + length);
    if (bytes.length < length) {
      throw new LogError(
        this.name,
        `byte ${at}`,
        "the file became shorter while it was read: copy it and read the copy",
      );
    }
    return bytes;
  }

  async #page(number: number): Promise<Uint8Array> {
    const kept = this.#pages.get(number);
    if (kept !== undefined) return kept;
    const page = await this.#file.read(number * PAGE, PAGE);
    const [oldest] = this.#pages.keys();
    if (this.#pages.size >= PAGES_KEPT && oldest !== undefined) this.#pages.delete(oldest);
    this.#pages.set(number, page);
    return page;
  }
}
