import { stringify } from "yaml";
import { assess } from "../assess.js";
import { UsageError } from "../errors.js";
import { type FolderContent, identify, MANIFEST, type Manifest, manifestText, SETUP } from "../evidence/manifest.js";
import { sha256 } from "../evidence/sha256.js";
import type { LogFile, Progress } from "../recording/log-file.js";
import { type GivenSetup, setupSchema } from "../recording/setup.js";
import { RENDERERS } from "../report/index.js";
import { resultsText } from "../report/json.js";
import { LANGUAGES } from "../report/languages/index.js";
import type { Language } from "../report/languages/language.js";
import type { Assessment } from "../rules/assessment.js";
import { say } from "../sentence.js";
import { fontFiles, packagedText, vegaScript } from "./files.js";
import type { NamedRuleSet } from "./rule-sets.js";
import { spanOf } from "./span.js";

/** All that a report is made from, beside the logs: the same for `assess` and for the re-run of `verify`. */
export interface ReportRequest {
  readonly tool: Manifest["tool"];
  readonly setup: GivenSetup;
  readonly ruleSets: readonly [NamedRuleSet, ...NamedRuleSet[]];
  readonly run: Pick<Manifest["run"], "rulesGiven" | "from" | "to" | "formats" | "language">;
  readonly signer?: string;
}

export interface MadeReport {
  readonly assessment: Assessment;
  readonly language: Language;
  /** Every file of the folder; the manifest is the last one. */
  readonly files: readonly FolderContent[];
}

const SETUP_HEAD =
  "# Measurement setup of this report: the setup file with the options of the command line laid over it.\n";

/**
 * From opened logs to the files of the report folder. Same logs, same request: same bytes.
 * @throws LogError, UsageError as `assess`
 */
export async function makeReport(
  logs: readonly LogFile[],
  request: ReportRequest,
  progress: Progress,
): Promise<MadeReport> {
  const { tool, setup, ruleSets, run } = request;
  const [{ ruleSet }, ...comparedWith] = ruleSets;
  const language = languageOf(run.language);
  const wanted = formatsOf(run.formats);
  const renderers = RENDERERS.filter(({ id }) => wanted.has(id));
  const { assessment, measurements } = await assess(logs, {
    tool,
    setup,
    ruleSet,
    ruleSetGiven: run.rulesGiven,
    comparedWith: comparedWith.map((named) => named.ruleSet),
    ...((run.from !== undefined || run.to !== undefined) && {
      span: (recording) => spanOf(recording, run.from, run.to),
    }),
    progress,
  });
  const setupText = setupFile(setup);
  const context = {
    language,
    vega: vegaScript,
    packaged: packagedText,
    fontFiles: fontFiles(),
    setup: setupText,
    resultsSha256: sha256(resultsText(assessment)),
  };
  const copies = ruleSets.flatMap(({ own, ruleSet: { id } }) =>
    own === undefined ? [] : [{ path: copyPath(id), content: own }],
  );
  const files: FolderContent[] = [{ path: SETUP, content: setupText }, ...copies];
  for (const [i, renderer] of renderers.entries()) {
    progress(`writing ${renderer.id}`, i / renderers.length);
    files.push(...(await renderer.render(assessment, measurements, context)));
  }
  const manifest: Manifest = {
    schema: 1,
    tool,
    logs: assessment.sources.map(({ name, bytes, sha256 }) => ({ name, bytes, sha256 })),
    run: { rules: ruleSets.map(({ own, ruleSet: { id } }) => (own === undefined ? id : copyPath(id))), ...run },
    limitSets: limitSets(ruleSets),
    files: files
      .map(({ path, content }) => ({ path, ...identify(content) }))
      .sort((a, b) => (a.path < b.path ? -1 : 1)),
    ...(request.signer !== undefined && { signer: request.signer }),
  };
  return { assessment, language, files: [...files, { path: MANIFEST, content: manifestText(manifest) }] };
}

/** Text of setup.yaml, its entries in the order of the schema; read again it gives the same setup and text. */
export function setupFile(setup: GivenSetup): string {
  return `${SETUP_HEAD}${stringify(setupSchema.parse(setup), { lineWidth: 0 })}`;
}

/** Where a user's own limit set lies in the report folder. */
const copyPath = (id: string) => `rules/${id}.yaml`;

function limitSets(ruleSets: readonly NamedRuleSet[]): Manifest["limitSets"] {
  const all = ruleSets.flatMap(({ own, texts, ruleSet }) =>
    ruleSet.files.map(({ id }, i) => ({
      id,
      ...identify(texts.get(id) ?? ""),
      ...(own !== undefined && i === 0 && { file: copyPath(id) }),
    })),
  );
  return all.filter((one, i) => all.findIndex(({ id, sha256 }) => id === one.id && sha256 === one.sha256) === i);
}

/** @throws UsageError for a language that there is no catalog of */
export function languageOf(id: string): Language {
  const language = LANGUAGES.find((one) => one.id === id);
  if (language !== undefined) return language;
  const list = LANGUAGES.map((one) => `${one.id} (${one.name})`).join(", ");
  throw new UsageError(String(say`--language ${id} is not known; it can be ${list}.`));
}

/** The outputs asked for and results.json. @throws UsageError for an output that does not exist */
function formatsOf(ids: readonly string[]): ReadonlySet<string> {
  const known = RENDERERS.map(({ id }) => id);
  const list = known.join(", ");
  if (ids.length === 0) throw new UsageError(String(say`--format needs at least one output: ${list}.`));
  const unknown = ids.find((id) => !known.includes(id));
  if (unknown !== undefined) throw new UsageError(String(say`--format ${unknown} is not known; it can be ${list}.`));
  return new Set(["json", ...ids]);
}
