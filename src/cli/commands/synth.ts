import { type Command, Option } from "commander";
import { UsageError } from "../../errors.js";
import { type Io, progressBar } from "../io.js";
import type { LogForm } from "../made-log.js";

interface Options {
  readonly out?: string;
  readonly format: LogForm["format"];
  readonly kind: "ascii" | "binary" | "binary32" | "float32";
  readonly edition: "1991" | "1999" | "2013";
  readonly quiet?: true;
}

/** `mainswitness synth SCENARIO`: a log with known disturbances, and beside it what is known of it. */
export function registerSynth(program: Command, io: Io): void {
  program
    .command("synth")
    .argument("<scenario>", "scenario (YAML): what the log is to hold, see scenarios/")
    .description("Make a log with known disturbances, its truth (truth.json) and the setup to read it with")
    .option("--out <folder>", "folder of the log (default: made-logs/<name of the scenario>)")
    .addOption(
      new Option(
        "--format <format>",
        "of the waveforms: COMTRADE as a pair or in one file (cff), or text; pqdif: of all logs",
      )
        .choices(["comtrade", "cff", "csv", "pqdif"])
        .default("comtrade"),
    )
    .addOption(
      new Option("--kind <kind>", "of COMTRADE data")
        .choices(["ascii", "binary", "binary32", "float32"])
        .default("binary"),
    )
    .addOption(new Option("--edition <year>", "of COMTRADE").choices(["1991", "1999", "2013"]).default("2013"))
    .option("--quiet", "no progress and no list of the files")
    .action((scenario: string, options: Options) => make(scenario, options, io));
}

async function make(path: string, options: Options, io: Io): Promise<void> {
  const [files, { parseScenario }, { madeLog }] = await Promise.all([
    import("../files.js"),
    import("../../synth/parse-scenario.js"),
    import("../made-log.js"),
  ]);
  const form = formOf(options);
  const scenario = parseScenario(await files.readText(path), path);
  const name = files.nameOf(path);
  const folder = options.out ?? `made-logs/${name}`;
  const bar = progressBar(io, options.quiet === true);
  const made = madeLog(scenario, name, form, await files.tool(), bar.show);
  try {
    await files.writeMadeLogFolder(folder, made);
  } finally {
    bar.clear();
  }
  if (options.quiet !== true)
    io.out(
      summary(
        folder,
        made.map((f) => f.path),
      ),
    );
}

function summary(folder: string, paths: readonly string[]): string {
  const log = paths.find((path) => !/\.(yaml|json)$/.test(path));
  const setup = paths.find((path) => path.endsWith(".yaml"));
  return [
    `${folder} holds ${paths.join(", ")}.`,
    "truth.json says what the log holds. To assess it:",
    `  mainswitness assess ${folder}/${log} --setup ${folder}/${setup}`,
    "",
  ].join("\n");
}

function formOf({ format, kind, edition }: Options): LogForm {
  const year = Number(edition) as LogForm["edition"];
  if (year !== 2013 && (kind === "binary32" || kind === "float32")) {
    throw new UsageError(`--kind ${kind} exists from the edition of 2013 on; leave --edition ${edition} out.`);
  }
  if (year !== 2013 && format === "cff") {
    throw new UsageError(`--format cff exists from the edition of 2013 on; leave --edition ${edition} out.`);
  }
  return { format, kind: kind.toUpperCase() as LogForm["kind"], edition: year };
}
