import type { Command } from "commander";
import { type Io, progressBar } from "../io.js";
import { addSetupOptions, type SetupOptions } from "../setup-options.js";
import { DEFAULT_RULES } from "./assess.js";

interface InspectOptions extends SetupOptions {
  readonly rules?: string;
  readonly writeSetup?: string;
  readonly json?: boolean;
  readonly quiet?: boolean;
}

export function registerInspect(program: Command, io: Io): void {
  const command = program
    .command("inspect")
    .argument("<log...>", "log files of one recording")
    .description("Show what is in a log, how it was understood, and whether it can carry a verdict")
    .option("--rules <id|file>", `limit set the log is held against (default: ${DEFAULT_RULES})`);
  addSetupOptions(command)
    .option("--write-setup <file>", "write a setup file with all that was recognised, to be edited")
    .option("--quiet", "no progress")
    .option("--json", "print the same as JSON")
    .action((logs: string[], options: InspectOptions) => inspectLogs(logs, options, io));
}

async function inspectLogs(logs: readonly string[], options: InspectOptions, io: Io): Promise<void> {
  const [
    { openLogs },
    files,
    { readSetup },
    { findRuleSet },
    { inspect },
    { inspectionText },
    { setupText },
    { withoutImpossibleValues },
  ] = await Promise.all([
    import("../../formats/index.js"),
    import("../files.js"),
    import("../read-setup.js"),
    import("../rule-sets.js"),
    import("../../inspect.js"),
    import("../inspection-text.js"),
    import("../setup-text.js"),
    import("../../recording/impossible-values.js"),
  ]);
  const setup = await readSetup(options);
  const ruleSet = await findRuleSet(options.rules ?? DEFAULT_RULES);
  const bar = progressBar(io, options.quiet === true);
  const { opened, close } = await files.openLogFiles(logs);
  try {
    const recording = withoutImpossibleValues(await openLogs(opened, setup, bar.show));
    bar.clear();
    const inspection = await inspect(recording, setup, ruleSet, options.rules !== undefined);
    io.out(options.json === true ? `${JSON.stringify(inspection, null, 2)}\n` : inspectionText(inspection));
    if (options.writeSetup !== undefined) {
      await files.writeNewText(options.writeSetup, setupText(inspection));
      io.err(`Setup written to ${options.writeSetup}; edit it and pass it with --setup.\n`);
    }
  } finally {
    bar.clear();
    await close();
  }
}
