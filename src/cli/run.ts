import { Command, CommanderError } from "commander";
import { UsageError } from "../errors.js";
import { registerAssess } from "./commands/assess.js";
import { registerInspect } from "./commands/inspect.js";
import { registerProve } from "./commands/prove.js";
import { registerRules } from "./commands/rules.js";
import { registerSynth } from "./commands/synth.js";
import { registerVerify } from "./commands/verify.js";
import { type Ending, exitCode } from "./exit-code.js";
import type { Io } from "./io.js";

/**
 * Runs one command line and returns its exit code. A failure is one sentence on `err`; a stack trace comes only with
 * `debug`. Commands load what they need when they run, so that `--help` stays quick.
 */
export async function run(args: readonly string[], io: Io, debug: boolean): Promise<number> {
  let ending: Ending = { kind: "ran" };
  const program = new Command("mainswitness")
    .description("From a power-quality logger's file to a counted EN 50160 verdict and a report that can be checked.")
    .configureOutput({
      writeOut: io.out,
      writeErr: io.err,
      outputError: (text, write) => write(text.replace(/^error: /, "mainswitness: ")),
    })
    .exitOverride()
    .option("--version", "print the version");
  program.allowExcessArguments(true).helpCommand(true);
  program.action(async (options: { version?: boolean }, { args: [word] }: Command) => {
    if (word !== undefined) throw new UsageError(`There is no command "${word}"; "mainswitness --help" lists them.`);
    if (options.version === true) io.out(`${(await (await import("./files.js")).tool()).version}\n`);
    else program.help();
  });
  registerAssess(program, io, (end) => {
    ending = end;
  });
  registerInspect(program, io);
  registerRules(program, io);
  registerSynth(program, io);
  registerProve(program, io, (how) => {
    ending = how;
  });
  registerVerify(program, io, (how) => {
    ending = how;
  });
  try {
    await program.parseAsync(args, { from: "user" });
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : 2;
    ending = { kind: "error", error };
    const sentence = error instanceof Error ? error.message : String(error);
    io.err(`mainswitness: ${/[.!?]$/.test(sentence) ? sentence : `${sentence}.`}\n`);
    if (debug && error instanceof Error) io.err(`${error.stack}\n`);
    if (exitCode(ending) === 1 && !debug) io.err("This is a fault of the program; MAINSWITNESS_DEBUG=1 shows where.\n");
  }
  return exitCode(ending);
}
