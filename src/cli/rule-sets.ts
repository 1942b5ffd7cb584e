import { UsageError } from "../errors.js";
import { loadRuleSet, loadRuleSetFile } from "../rules/load-rule-set.js";
import type { RuleSet } from "../rules/rule-set.js";
import { bundledRuleIds, readBundledRule, readText } from "./files.js";

/**
 * The limit sets in the order in which they were named: the first decides, the others are compared with it.
 * @throws UsageError as `findRuleSet`, and for a set named twice or one of another voltage level or frequency
 */
export async function findRuleSets(names: readonly string[]): Promise<[RuleSet, ...RuleSet[]]> {
  const [name = "", ...further] = names;
  const sets: [RuleSet, ...RuleSet[]] = [await findRuleSet(name)];
  for (const other of further) {
    const set = await findRuleSet(other);
    const [first] = sets;
    if (sets.some(({ id }) => id === set.id)) throw new UsageError(`--rules names ${set.id} twice; leave one out.`);
    if (set.level !== first.level || set.nominalFrequency !== first.nominalFrequency) {
      throw new UsageError(
        `--rules ${set.id} is for ${set.level} and ${set.nominalFrequency} Hz, ${first.id} for ${first.level} and ${first.nominalFrequency} Hz; compare sets for the same supply.`,
      );
    }
    sets.push(set);
  }
  return sets;
}

/**
 * The limit set of an id that comes with the program, or of a file.
 * @throws UsageError listing the known ids, or with the place of a fault in the file
 */
export async function findRuleSet(idOrFile: string): Promise<RuleSet> {
  const ids = await bundledRuleIds();
  if (ids.includes(idOrFile)) return loadRuleSet(idOrFile, readBundledRule);
  if (!/[./\\]/.test(idOrFile)) {
    throw new UsageError(
      `There is no limit set "${idOrFile}". Known are ${ids.join(", ")}; a file is named by its path.`,
    );
  }
  return loadRuleSetFile(await readText(idOrFile), idOrFile, readBundledRule);
}
