import { LogError } from "../../errors.js";
import type { DataKind } from "./configuration.js";

/** The lines of a configuration; `firstLine` is the number of the first one in its file. */
export interface ConfigurationText {
  readonly file: string;
  readonly lines: readonly string[];
  readonly firstLine: number;
  /** The kind of data that a single file (.cff) names beside the configuration. */
  readonly kind?: DataKind;
}

/** Takes the lines one by one; errors name the line in the file. */
export class Lines {
  #next = 0;
  constructor(private readonly text: ConfigurationText) {}

  /** Number of the next line in the file. */
  get number(): number {
    return this.#next + this.text.firstLine;
  }

  get left(): number {
    return this.text.lines.length - this.#next;
  }

  peek(ahead = 0): string | undefined {
    return this.text.lines[this.#next + ahead];
  }

  take(what: string): string {
    const line = this.peek();
    if (line === undefined) throw this.error(this.number, `the configuration ends before ${what}; the file is cut off`);
    this.#next++;
    return line;
  }

  error(number: number, what: string): LogError {
    return new LogError(this.text.file, `line ${number}`, what);
  }
}
