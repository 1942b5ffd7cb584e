import type { Command } from "commander";
import { UsageError } from "../../errors.js";
import type { Language } from "../../report/languages/language.js";
import { say } from "../../sentence.js";
import type { Ending } from "../exit-code.js";
import { type Io, progressBar } from "../io.js";
import { addSetupOptions, type SetupOptions } from "../setup-options.js";

/** Confirmed in public documents throughout; the 2022 edition's numbers are not (see its notes). */
export const DEFAULT_RULES = "en50160-2010-lv";

interface AssessCommandOptions extends SetupOptions {
  readonly rules?: readonly string[];
  readonly from?: string;
  readonly to?: string;
  readonly out?: string;
  readonly format: string;
  readonly language: string;
  readonly strict?: boolean;
  readonly quiet?: boolean;
  readonly json?: boolean;
}

export function registerAssess(program: Command, io: Io, end: (ending: Ending) => void): void {
  const command = program
    .command("assess")
    .argument("<log...>", "log files of one recording")
    .description("Read a recording, measure, check it against a limit set and write the report folder")
    .option(
      "--rules <id|file>",
      `limit set: an id of "mainswitness rules" or a file (default: ${DEFAULT_RULES}); given again, a further set to compare with the first, which decides`,
      (name: string, before: readonly string[] = []) => [...before, name],
    );
  addSetupOptions(command)
    .option("--from <time>", "leave out all before this time (ISO 8601; local time of the log without an offset)")
    .option("--to <time>", "leave out all after this time")
    .option(
      "--decision-rule <rule>",
      "simple (limits as they are) or guarded (moved by the uncertainty of the instrument)",
    )
    .option("--out <folder>", "report folder (default: reports/<name of the first log>)")
    .option(
      "--format <list>",
      "outputs, separated by commas: html, pdf, json, csv, svg, png; results.json is always written",
      "html,pdf,json",
    )
    .option("--language <id>", "language of the report and of the summary: en", "en")
    .option("--strict", "exit with 4 unless the verdict is that the supply conforms")
    .option("--quiet", "no progress and no summary")
    .option("--json", "print results.json instead of the summary")
    .action(async (logs: string[], options: AssessCommandOptions) => end(await assessLogs(logs, options, io)));
}

async function assessLogs(logs: readonly string[], options: AssessCommandOptions, io: Io): Promise<Ending> {
  const [{ assess }, { RENDERERS }, { LANGUAGES }, files, { readSetup }, { findRuleSets }, { spanOf }] =
    await Promise.all([
      import("../../assess.js"),
      import("../../report/index.js"),
      import("../../report/languages/index.js"),
      import("../files.js"),
      import("../read-setup.js"),
      import("../rule-sets.js"),
      import("../span.js"),
    ]);
  const wanted = new Set([
    "json",
    ...formatsOf(
      options.format,
      RENDERERS.map((r) => r.id),
    ),
  ]);
  const language = languageOf(options.language, LANGUAGES);
  const renderers = RENDERERS.filter((r) => wanted.has(r.id));
  const setup = await readSetup(options);
  const [ruleSet, ...comparedWith] = await findRuleSets(options.rules ?? [DEFAULT_RULES]);
  const bar = progressBar(io, options.quiet === true);
  const { opened, close } = await files.openLogFiles(logs);
  try {
    const { assessment, measurements } = await assess(opened, {
      tool: await files.tool(),
      setup,
      ruleSet,
      ruleSetGiven: options.rules !== undefined,
      comparedWith,
      ...((options.from !== undefined || options.to !== undefined) && {
        span: (recording) => spanOf(recording, options.from, options.to),
      }),
      progress: bar.show,
    });
    const folder = options.out ?? files.defaultReportFolder(logs[0] as string);
    const rendered = [];
    const context = { language, vega: files.vegaScript, packaged: files.packagedText };
    for (const [i, renderer] of renderers.entries()) {
      bar.show(`writing ${renderer.id}`, i / renderers.length);
      rendered.push(...(await renderer.render(assessment, measurements, context)));
    }
    await files.writeReportFolder(folder, rendered);
    bar.clear();
    if (options.json === true) {
      io.out(String(rendered.find((f) => f.path === "results.json")?.content));
    } else if (options.quiet !== true) {
      const [{ terminalText }, { inLanguage }] = await Promise.all([
        import("../../report/terminal.js"),
        import("../../report/languages/language.js"),
      ]);
      const page = rendered.find((f) => f.path.endsWith(".html"));
      const place = say`Report: ${page === undefined ? folder : `${folder}/${page.path}`}`;
      io.out(`${terminalText(assessment, language)}\n${inLanguage(place, language)}\n`);
    }
    return { kind: "verdict", verdict: assessment.verdict, strict: options.strict === true };
  } finally {
    bar.clear();
    await close();
  }
}

/** @throws UsageError for a language that there is no catalog of */
function languageOf(id: string, known: readonly Language[]): Language {
  const language = known.find((one) => one.id === id);
  if (language !== undefined) return language;
  const list = known.map((one) => `${one.id} (${one.name})`).join(", ");
  throw new UsageError(`--language ${id} is not known; it can be ${list}.`);
}

/** @throws UsageError for an output that does not exist */
function formatsOf(list: string, known: readonly string[]): string[] {
  const ids = list
    .split(",")
    .map((id) => id.trim())
    .filter((id) => id !== "");
  if (ids.length === 0) throw new UsageError(`--format needs at least one output: ${known.join(", ")}.`);
  const unknown = ids.find((id) => !known.includes(id));
  if (unknown !== undefined) throw new UsageError(`--format ${unknown} is not known; it can be ${known.join(", ")}.`);
  return ids;
}
