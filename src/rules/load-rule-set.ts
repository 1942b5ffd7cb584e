import { UsageError } from "../errors.js";
import { carryOut, type Draft, draftOf } from "./inherit.js";
import { parseRuleFile, type RuleFile } from "./parse-rule-file.js";
import type { RuleSet } from "./rule-set.js";

/** Finds the file of a limit set by its id; undefined where there is none. Handed in, as nothing here reads files. */
export type ReadRuleFile = (id: string) => Promise<{ readonly name: string; readonly text: string } | undefined>;

/**
 * The limit set with this id, all inheritance carried out.
 * @throws UsageError for an unknown id and for any fault in the files it is made from.
 */
export async function loadRuleSet(id: string, readRuleFile: ReadRuleFile): Promise<RuleSet> {
  const found = await readRuleFile(id);
  if (found === undefined) {
    throw new UsageError(`There is no limit set "${id}"; "mainswitness rules list" shows those there are.`);
  }
  return loadRuleSetFile(found.text, found.name, readRuleFile);
}

/**
 * The limit set of a file, all inheritance carried out; `name` is the file's name, for messages and to compare with
 * the id.
 * @throws UsageError for any fault in it or in what it inherits, with file, line, column and how to mend it.
 */
export async function loadRuleSetFile(text: string, name: string, readRuleFile: ReadRuleFile): Promise<RuleSet> {
  const file = parseRuleFile(text, name);
  const files = await inOrder(file, readRuleFile);
  let draft: Draft | undefined;
  for (const part of files) {
    const { content } = part;
    if ("inherits" in content) {
      if (draft === undefined) throw new Error(`${part.name} was read before what it inherits`);
      draft = carryOut(draft, content, part);
    } else {
      if (draft !== undefined) throw foreignBase(file, part);
      draft = draftOf(content, part);
    }
  }
  if (draft === undefined) throw new Error(`${name} was not read`);
  if (draft.requirements.size === 0) throw file.fault(["remove"], "no requirement is left; keep or add one", "key");
  return {
    ...draft.facts,
    id: file.id,
    title: file.content.title,
    notes: draft.notes,
    files: files.map(({ id, sha256 }) => ({ id, sha256 })).reverse(),
    requirements: [...draft.requirements.values()],
  };
}

/** The file and all it inherits, each once, what is inherited before what inherits it. */
async function inOrder(start: RuleFile, readRuleFile: ReadRuleFile): Promise<RuleFile[]> {
  const done = new Map<string, RuleFile>();
  const visit = async (file: RuleFile, above: readonly string[]): Promise<void> => {
    for (const [i, id] of file.inherits.entries()) {
      const fault = (what: string) => file.fault(["inherits", i], what);
      const chain = [...above, file.id];
      if (chain.includes(id)) {
        throw fault(`the inheritance runs in a circle (${[...chain, id].join(", ")}); name another set here`);
      }
      if (done.has(id)) continue;
      const found = await readRuleFile(id);
      if (found === undefined) {
        throw fault(`there is no limit set "${id}"; "mainswitness rules list" shows those there are`);
      }
      await visit(parseRuleFile(found.text, found.name), chain);
    }
    done.set(file.id, file);
  };
  await visit(start, []);
  return [...done.values()];
}

function foreignBase(file: RuleFile, base: RuleFile): UsageError {
  return file.fault(
    ["inherits"],
    `${base.id} stands on its own and cannot be joined with the sets before it; inherit sets with a common origin`,
  );
}
