import type { Command } from "commander";
import type { ProofTable } from "../../prove/proof-table.js";
import type { Ending } from "../exit-code.js";
import { type Io, progressBar } from "../io.js";

interface Options {
  readonly json?: true;
  readonly quick?: true;
  readonly quiet?: true;
}

/**
 * `mainswitness prove`: the published tables, run on this machine.
 * @param tables those of the program where not given
 */
export function registerProve(
  program: Command,
  io: Io,
  end: (ending: Ending) => void,
  tables?: readonly ProofTable[],
): void {
  program
    .command("prove")
    .description("Run published check tables on this machine: expected, computed, deviation, tolerance, source")
    .option("--quick", "a representative part of them")
    .option("--json", "print the answer as JSON")
    .option("--quiet", "no progress")
    .action(async (options: Options) => {
      const [{ runTables }, { PROOF_TABLES }, { proofText }, { tool }] = await Promise.all([
        import("../../prove/run-tables.js"),
        import("../../prove/index.js"),
        import("../proof-text.js"),
        import("../files.js"),
      ]);
      const bar = progressBar(io, options.quiet === true);
      const proof = await runTables(tables ?? PROOF_TABLES, options.quick === true, bar.show);
      bar.clear();
      io.out(
        options.json ? `${JSON.stringify({ schema: 1, tool: await tool(), ...proof }, null, 2)}\n` : proofText(proof),
      );
      if (!proof.passed) end({ kind: "check-failed" });
    });
}
