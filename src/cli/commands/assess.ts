import type { Command } from "commander";
import type { Signer } from "../../evidence/signature.js";
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
  readonly sign?: string;
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
    .option("--language <id>", "language of the report and of the summary: en, de, fr, it or es", "en")
    .option("--sign <keyfile>", "sign the manifest with an Ed25519 key (PEM, PKCS#8): writes manifest.json.sig")
    .option("--strict", "exit with 4 unless the verdict is that the supply conforms")
    .option("--quiet", "no progress and no summary")
    .option("--json", "print results.json instead of the summary")
    .action(async (logs: string[], options: AssessCommandOptions) => end(await assessLogs(logs, options, io)));
}

async function assessLogs(logs: readonly string[], options: AssessCommandOptions, io: Io): Promise<Ending> {
  const [{ makeReport }, files, { readSetup }, { findRuleSets }, { sha256 }, { MANIFEST, SIGNATURE }] =
    await Promise.all([
      import("../make-report.js"),
      import("../files.js"),
      import("../read-setup.js"),
      import("../rule-sets.js"),
      import("../../evidence/sha256.js"),
      import("../../evidence/manifest.js"),
    ]);
  const signer = options.sign === undefined ? undefined : await signerOf(options.sign);
  const request = {
    tool: await files.tool(),
    setup: await readSetup(options),
    ruleSets: await findRuleSets(options.rules ?? [DEFAULT_RULES]),
    run: {
      rulesGiven: options.rules !== undefined,
      ...(options.from !== undefined && { from: options.from }),
      ...(options.to !== undefined && { to: options.to }),
      formats: listOf(options.format),
      language: options.language,
    },
    ...(signer !== undefined && { signer: signer.publicKey }),
  };
  const bar = progressBar(io, options.quiet === true);
  const { opened, close } = await files.openLogFiles(logs);
  try {
    const { assessment, language, files: made } = await makeReport(opened, request, bar.show);
    const folder = options.out ?? files.defaultReportFolder(logs[0] as string);
    const manifest = String(made.find(({ path }) => path === MANIFEST)?.content);
    const signature =
      signer === undefined ? [] : [{ path: SIGNATURE, content: signer.sign(new TextEncoder().encode(manifest)) }];
    await files.writeReportFolder(folder, [...made, ...signature]);
    bar.clear();
    if (options.json === true) {
      io.out(String(made.find((f) => f.path === "results.json")?.content));
    } else if (options.quiet !== true) {
      const [{ terminalText }, { inLanguage }] = await Promise.all([
        import("../../report/terminal.js"),
        import("../../report/languages/language.js"),
      ]);
      const page = made.find((f) => f.path.endsWith(".html"));
      const place = say`Report: ${page === undefined ? folder : `${folder}/${page.path}`}`;
      const identity = say`SHA-256 of manifest.json: ${sha256(manifest)}`;
      io.out(
        `${terminalText(assessment, language)}\n${inLanguage(identity, language)}\n${inLanguage(place, language)}\n`,
      );
    }
    return { kind: "verdict", verdict: assessment.verdict, strict: options.strict === true };
  } finally {
    bar.clear();
    await close();
  }
}

async function signerOf(path: string): Promise<Signer> {
  const [{ signerOf }, { readText }] = await Promise.all([
    import("../../evidence/signature.js"),
    import("../files.js"),
  ]);
  return signerOf(await readText(path), path);
}

function listOf(text: string): string[] {
  return text
    .split(",")
    .map((id) => id.trim())
    .filter((id) => id !== "");
}
