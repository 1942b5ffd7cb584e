import { UsageError } from "../errors.js";
import { loadRuleSet, loadRuleSetFile } from "../rules/load-rule-set.js";
import type { RuleSet } from "../rules/rule-set.js";
import { bundledRuleIds, readBundledRule, readText } from "./files.js";

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
