import type { Progress } from "../recording/log-file.js";

/** Where a command writes: results to `out`, progress and warnings to `err`. Handed in by main.ts or a test. */
export interface Io {
  out(text: string): void;
  err(text: string): void;
  /** Whether `err` is a terminal on which a progress bar can be drawn. */
  readonly interactive: boolean;
}

const WIDTH = 24;

/** A bar on a terminal, redrawn at whole percents and wiped at the end; silent elsewhere. */
export function progressBar(io: Io, quiet: boolean): { readonly show: Progress; clear(): void } {
  if (quiet || !io.interactive) return { show: () => {}, clear: () => {} };
  let last = "";
  return {
    show(step, share) {
      const done = Math.round(share * WIDTH);
      const line = `${"#".repeat(done)}${".".repeat(WIDTH - done)} ${Math.round(share * 100)} % ${step}`;
      if (line === last) return;
      io.err(`\r\u001b[K${line}`);
      last = line;
    },
    clear() {
      if (last !== "") io.err("\r\u001b[K");
    },
  };
}
