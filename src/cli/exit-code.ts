import { LogError, UsageError } from "../errors.js";
import type { Verdict } from "../rules/assessment.js";

/** What a command ended with: a result, a failed check, or an error. */
export type Ending =
  | { readonly kind: "ran" }
  | { readonly kind: "check-failed" }
  | { readonly kind: "verdict"; readonly verdict: Verdict; readonly strict: boolean }
  | { readonly kind: "error"; readonly error: unknown };

/**
 * The exit code of an ending: 0 ran, 1 a check failed or the program itself did, 2 wrong usage or setup, 3 a log could
 * not be read, 4 with --strict when the verdict is not `conforms`.
 */
export function exitCode(ending: Ending): 0 | 1 | 2 | 3 | 4 {
  switch (ending.kind) {
    case "ran":
      return 0;
    case "check-failed":
      return 1;
    case "verdict":
      return ending.strict && ending.verdict !== "conforms" ? 4 : 0;
    case "error":
      if (ending.error instanceof UsageError) return 2;
      return ending.error instanceof LogError ? 3 : 1;
  }
}
