import type { Command } from "commander";
import { UsageError } from "../../errors.js";
import type { Difference } from "../../rules/compare.js";

interface Options {
  readonly json?: true;
}

interface Io {
  out(text: string): void;
}

/** `mainswitness rules [list | show ID | check FILE]`: the limit sets in plain words, and a check of a user's own. */
export function registerRules(program: Command, io: Io): void {
  const rules = program.command("rules").description("list, show and check the limit sets a log can be judged by");
  const json = ["--json", "print the answer as JSON"] as const;
  rules
    .command("list", { isDefault: true })
    .description("the limit sets that come with this program")
    .option(...json)
    .allowExcessArguments(true)
    .action(async (options: Options, { args: [word] }: Command) => {
      if (word !== undefined) throw notASubcommand(word);
      io.out(await list(options));
    });
  rules
    .command("show")
    .description("one limit set in plain words, with clauses and sources")
    .argument("<set>", "id of a limit set, or path of a limit-set file (.yaml)")
    .option(...json)
    .action(async (set: string, options: Options) => io.out(await show(set, options)));
  rules
    .command("check")
    .description("whether a limit-set file is sound, and what it changes")
    .argument("<file>", "path of a limit-set file (.yaml)")
    .option(...json)
    .action(async (file: string, options: Options) => io.out(await check(file, options)));
}

function notASubcommand(word: string): UsageError {
  return new UsageError(
    `"${word}" is not known after "mainswitness rules"; for one limit set write "mainswitness rules show ${word}", ` +
      'for all of them "mainswitness rules list".',
  );
}

async function list(options: Options): Promise<string> {
  const { bundledRuleIds, readBundledRule } = await import("../files.js");
  const { loadRuleSet } = await import("../../rules/load-rule-set.js");
  const { parseRuleFile } = await import("../../rules/parse-rule-file.js");
  const { countLimits } = await import("../../rules/describe.js");
  const sets = [];
  for (const id of await bundledRuleIds()) {
    const ruleSet = await loadRuleSet(id, readBundledRule);
    const file = await readBundledRule(id);
    const inherits = file === undefined ? [] : parseRuleFile(file.text, file.name).inherits;
    sets.push({ id, title: ruleSet.title, inherits, ...countLimits(ruleSet) });
  }
  if (options.json) return asJson(sets);
  const lines = sets.flatMap(({ id, title, inherits, limits, unconfirmed }) => [
    "",
    id,
    `  ${title}`,
    ...(inherits.length === 0 ? [] : [`  inherits ${inherits.join(" and ")}`]),
    `  ${limits} limits and indications, ${unconfirmed === 0 ? "all confirmed" : `${unconfirmed} of them not confirmed`}`,
  ]);
  return [
    'Limit sets; "mainswitness rules show ID" prints one in full.',
    "Not confirmed: no public document seen shows the value for this set; it is from memory or from",
    "another edition.",
    ...lines,
    "",
  ].join("\n");
}

async function show(set: string, options: Options): Promise<string> {
  const { findRuleSet } = await import("../rule-sets.js");
  const { describeRuleSet } = await import("../../rules/describe.js");
  const ruleSet = await findRuleSet(set);
  return options.json ? asJson(ruleSet) : `${describeRuleSet(ruleSet)}\n`;
}

async function check(path: string, options: Options): Promise<string> {
  const { readBundledRule, readText } = await import("../files.js");
  const { loadRuleSet, loadRuleSetFile } = await import("../../rules/load-rule-set.js");
  const { parseRuleFile } = await import("../../rules/parse-rule-file.js");
  const { differences } = await import("../../rules/compare.js");
  const { countLimits } = await import("../../rules/describe.js");
  const text = await readText(path);
  const ruleSet = await loadRuleSetFile(text, path, readBundledRule);
  const parent = parseRuleFile(text, path).inherits[0];
  const changes = parent === undefined ? [] : differences(await loadRuleSet(parent, readBundledRule), ruleSet);
  const { limits, unconfirmed } = countLimits(ruleSet);
  const { id, title } = ruleSet;
  if (options.json) return asJson({ sound: true, id, title, limits, unconfirmed, parent: parent ?? null, changes });
  return [
    `${path} is sound: ${title} (${id}), ${limits} limits and indications, ${unconfirmed} of them not confirmed.`,
    parent === undefined
      ? "It inherits nothing."
      : changes.length === 0
        ? `It is no different from ${parent}.`
        : `Compared with ${parent}:`,
    ...changes.flatMap(changeLines),
    "",
  ].join("\n");
}

function changeLines({ of, kind, entries }: Difference): string[] {
  if (kind !== "changed") return [`  ${of}: ${kind}`];
  const value = (v: unknown) => (v === undefined ? "nothing" : typeof v === "string" ? `"${v}"` : JSON.stringify(v));
  return [`  ${of}:`, ...entries.map(({ entry, from, to }) => `    ${entry}: ${value(from)} becomes ${value(to)}`)];
}

function asJson(value: unknown): string {
  return `${JSON.stringify(value, null, 2)}\n`;
}
