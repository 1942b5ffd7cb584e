import type { Sentence } from "../../sentence.js";
import { Damage } from "./body.js";
import type { PqdifWarning } from "./model.js";

/** What was skipped or read with doubt: the first of each kind with its byte, and how often. */
export class Warnings {
  readonly #kinds = new Map<string, { byte: number; what: Sentence; times: number }>();

  add(byte: number, what: Sentence): void {
    const known = this.#kinds.get(what.template);
    if (known === undefined) this.#kinds.set(what.template, { byte, what, times: 1 });
    else known.times++;
  }

  /** What `read` gives, or undefined with a warning where it meets damage. */
  async tried<T>(read: () => Promise<T>): Promise<T | undefined> {
    try {
      return await read();
    } catch (error) {
      if (!(error instanceof Damage)) throw error;
      this.add(error.byte, error.what);
      return undefined;
    }
  }

  all(): PqdifWarning[] {
    return [...this.#kinds.values()];
  }
}
