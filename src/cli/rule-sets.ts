import { UsageError } from "../errors.js";
import { loadRuleSet, loadRuleSetFile } from "../rules/load-rule-set.js";
import type { RuleSet } from "../rules/rule-set.js";
import { bundledRuleIds, readBundledRule, readText } from "./files.js";

/** A limit set and the texts of the files it is made of, with line endings made LF. */
export interface NamedRuleSet {
  readonly ruleSet: RuleSet;
  /** The text where it is a user's own file. */
  readonly own?: string;
  /** By id, inherited ones too. */
  readonly texts: ReadonlyMap<string, string>;
}

/**
 * The limit sets in the order in which they were named: the first decides, the others are compared with it.
 * @param read reads a user's own file
 * @throws UsageError as `findRuleSet`, and for a set named twice or one of another voltage level or frequency
 */
export async function findRuleSets(
  names: readonly string[],
  read = readText,
): Promise<[NamedRuleSet, ...NamedRuleSet[]]> {
  const [name = "", ...further] = names;
  const sets: [NamedRuleSet, ...NamedRuleSet[]] = [await findNamed(name, read)];
  for (const other of further) {
    const named = await findNamed(other, read);
    const set = named.ruleSet;
    const first = sets[0].ruleSet;
    if (sets.some(({ ruleSet }) => ruleSet.id === set.id))
      throw new UsageError(`--rules names ${set.id} twice; leave one out.`);
    if (set.level !== first.level || set.nominalFrequency !== first.nominalFrequency) {
      throw new UsageError(
        `--rules ${set.id} is for ${set.level} and ${set.nominalFrequency} Hz, ${first.id} for ${first.level} and ${first.nominalFrequency} Hz; compare sets for the same supply.`,
      );
    }
    sets.push(named);
  }
  return sets;
}

/**
 * The limit set of an id that comes with the program, or of a file.
 * @throws UsageError listing the known ids, or with the place of a fault in the file
 */
export async function findRuleSet(idOrFile: string): Promise<RuleSet> {
  return (await findNamed(idOrFile, readText)).ruleSet;
}

async function findNamed(idOrFile: string, read: typeof readText): Promise<NamedRuleSet> {
  const texts = new Map<string, string>();
  const readRule = async (id: string) => {
    const found = await readBundledRule(id);
    if (found !== undefined) texts.set(id, unix(found.text));
    return found;
  };
  const ids = await bundledRuleIds();
  if (ids.includes(idOrFile)) return { ruleSet: await loadRuleSet(idOrFile, readRule), texts };
  if (!/[./\\]/.test(idOrFile)) {
    throw new UsageError(
      `There is no limit set "${idOrFile}". Known are ${ids.join(", ")}; a file is named by its path.`,
    );
  }
  const own = unix(await read(idOrFile));
  const ruleSet = await loadRuleSetFile(own, idOrFile, readRule);
  return { ruleSet, own, texts: texts.set(ruleSet.id, own) };
}

const unix = (text: string) => text.replace(/\r\n?/g, "\n");
