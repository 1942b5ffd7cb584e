/**
 * The kinds of failure a user can meet. Each carries one sentence: what, where, and how to mend it.
 * The exit code that belongs to each kind is decided in cli/exit-code.ts, nowhere else.
 */

/** Wrong options, setup or rule set (exit 2). */
export class UsageError extends Error {
  override readonly name = "UsageError";
}

/** A log that cannot be read (exit 3). `place` is "line 12", "line 12, column 3" or "byte 4096". */
export class LogError extends Error {
  override readonly name = "LogError";
  readonly file: string;
  readonly place: string | undefined;

  constructor(file: string, place: string | undefined, what: string) {
    super(place === undefined ? `${file}: ${what}` : `${file}, ${place}: ${what}`);
    this.file = file;
    this.place = place;
  }
}
