import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { LogError, UsageError } from "../../../src/errors.js";
import { openLogs } from "../../../src/formats/index.js";
import { random } from "../../support/random.js";
import { inMemory } from "../../support/whole-run.js";

/** Damaged files each give a recording or one sentence that names the file; nothing else is thrown and nothing hangs. */

const bytes = new Uint8Array(readFileSync(new URL("../../../sample-logs/market-hall.pqd", import.meta.url)));
const NAME = "damaged.pqd";

async function outcome(damaged: Uint8Array): Promise<"read" | "refused"> {
  try {
    const { waveforms } = await openLogs([inMemory({ name: NAME, bytes: damaged })], {});
    for (const source of waveforms) for await (const _ of source.blocks());
    return "read";
  } catch (error) {
    if (!(error instanceof LogError || error instanceof UsageError)) throw error;
    expect(error.message).toContain(NAME);
    return "refused";
  }
}

describe("a damaged file", () => {
  it("of which bytes are changed, in the trees of its records most", async () => {
    const { uniform: draw } = random(11, "damage");
    const outcomes = new Map<string, number>();
    // Data source and the heads of observations: the beginning, and around each record.
    for (let n = 0; n < 45; n++) {
      const damaged = bytes.slice();
      const from = n % 3 === 0 ? 0 : n % 3 === 1 ? 100_000 : bytes.length - 41_000;
      const span = n % 3 === 2 ? 41_000 : 80_000;
      for (let k = 0; k < 1 + (n % 5); k++)
        damaged[64 + from + Math.floor(draw() * (span - 64))] = Math.floor(draw() * 256);
      const result = await outcome(damaged);
      outcomes.set(result, (outcomes.get(result) ?? 0) + 1);
    }
    expect(outcomes.get("read")).toBeGreaterThan(25);
  }, 120_000);

  it("that is cut off anywhere", async () => {
    for (const share of [0.0001, 0.01, 0.2, 0.5, 0.9, 0.999]) {
      await outcome(bytes.subarray(0, Math.floor(share * bytes.length)));
    }
    expect(await outcome(bytes.subarray(0, bytes.length - 100))).toBe("read");
  }, 60_000);
});
