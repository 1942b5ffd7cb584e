import { UsageError } from "../errors.js";
import { loadRuleSet, loadRuleSetFile } from "../rules/load-rule-set.js";
import { parseRuleFile } from "../rules/parse-rule-file.js";
import type { RuleSet } from "../rules/rule-set.js";
import { say } from "../sentence.js";
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
  for (const id of ids) {
    const bundled = await readBundledRule(id);
    if (bundled === undefined) continue;
    const text = unix(bundled.text);
    if (text === own) return findNamed(id, read);
    refuseBorrowed(ruleSet, id, parseRuleFile(text, bundled.name).content.title, idOrFile);
  }
  const notes = [String(OWN_SET), ...ruleSet.notes];
  return { ruleSet: { ...ruleSet, notes }, own, texts: texts.set(ruleSet.id, own) };
}

const OWN_SET = say`This limit set is a file of its own, which does not come with the program.`;

/** A verdict by a user's own limits must not read as one by the standard's. */
function refuseBorrowed(own: RuleSet, id: string, title: string, path: string): void {
  const bare = (text: string) => text.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, "");
  if (own.id === id)
    throw new UsageError(
      `${path}: the id "${id}" is that of a set that comes with the program, and this file differs from it; give it an id of its own.`,
    );
  if (bare(own.title) === bare(title))
    throw new UsageError(
      `${path}: the title "${own.title}" is that of the set ${id}, which comes with the program; give this one a title of its own.`,
    );
}

const unix = (text: string) => text.replace(/\r\n?/g, "\n");
