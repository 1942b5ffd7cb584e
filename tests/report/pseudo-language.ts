import { templates } from "../../scripts/phrases.mjs";
import { QUANTITIES } from "../../src/recording/quantity.js";
import type { Language } from "../../src/report/languages/language.js";
import type { Assessment } from "../../src/rules/assessment.js";

/** No language, to find what escapes translation: every letter of a template becomes Ж, its places stand in reverse. */
export const PSEUDO: Language = {
  id: "x-pseudo",
  name: "Pseudo",
  decimalMark: ",",
  phrases: Object.fromEntries([...templates().keys()].map((template) => [template, pseudo(template)])),
};

function pseudo(template: string): string {
  const count = new Set(template.match(/\{\d+\}/g)).size;
  return template
    .split(/(\{\d+\})/)
    .map((part, i) =>
      i % 2 === 0
        ? part.replace(/\p{L}/gu, "ж").replace(/(?<=\d)\.(?=\d)/g, ",")
        : `{${count + 1 - Number(part.slice(1, -1))}}`,
    )
    .join("");
}

/** Symbols that are the same in every language. */
const UNITS = ["V", "A", "W", "var", "VA", "Wh", "Hz", "s", "ms", "min", "h", "d", "u", "t", "UTC", "SHA"];
const PHASES = ["L1", "L2", "L3", "N", "L12", "L23", "L31"];
const SYMBOLS = Object.values(QUANTITIES).map(({ symbol }) => symbol);

/** Texts of the result that no language changes: what the user and the log said, names, clauses and sources. */
export function untranslated({
  setup,
  recording,
  ruleSet,
  sources,
  tool,
  weeks,
  notAssessed,
  comparison,
}: Assessment): string[] {
  const requirements = ruleSet.requirements.flatMap(({ clause, source, orders = [] }) => [
    clause,
    source,
    ...orders.map((order) => order.source),
  ]);
  const said = [
    ...[setup.site, setup.measuringPoint, setup.instrument, setup.zone, setup.ruleSet].map((entry) => entry?.value),
    ...Object.values(setup).map(({ reason }) => reason),
    ...sources.flatMap(({ name, format, sha256 }) => [name, format, sha256]),
    ...recording.columns.flatMap(({ file, header, reason }) => [file, header, ...quoted(String(reason))]),
    ...recording.findings.map(({ sentence }) => sentence),
    ...recording.remarks,
    ...notAssessed.map(({ reason }) => reason.sentence),
    ...weeks.flatMap(({ requirements: rows }) => rows.map(({ reason }) => reason?.sentence)),
    recording.zone,
    tool.name,
    tool.version,
    ruleSet.id,
    ruleSet.sha256,
    ...ruleSet.inherits.flatMap(({ id, sha256 }) => [id, sha256]),
    ruleSet.standard,
    ruleSet.edition,
    ...requirements,
    ...comparison.flatMap(({ ruleSet: set }) => [set.id, set.standard, set.edition, set.sha256]),
  ];
  const texts = said.filter((text) => typeof text === "string").filter((text) => text !== "");
  return texts.map(spaced).sort((a, b) => b.length - a.length);
}

/** What a reason quotes from the log. */
const quoted = (text: string) => text.match(/"[^"]*"/g) ?? [];

const spaced = (text: string) => text.replace(/\s+/g, " ").trim();

/** Words that are neither Ж nor known to be the same in every language, and numbers with a decimal point. */
export function escaped(text: string, known: readonly string[]): string[] {
  let rest = spaced(text);
  for (const one of known) rest = rest.replaceAll(one, " ");
  // Charts cut long labels off.
  rest = rest.replace(/[^,;:…]+…/g, (cut) =>
    known.some((one) => one.startsWith(cut.trim().slice(0, -1))) ? " " : cut,
  );
  const same = new Set([...UNITS, ...PHASES, ...SYMBOLS]);
  const words = rest.match(/\p{L}[\p{L}\d+−-]*|\d+\.\d+/gu) ?? [];
  return [
    ...new Set(
      words.filter((word) => !/^[жЖ\d-]+$/u.test(word) && !same.has(word) && !/^(?:[A-Z]\d|UTC[+−]\d\d)$/.test(word)),
    ),
  ];
}

/** Every number in a text, sorted; decimal commas as points. */
export function numbersIn(text: string): string[] {
  return [...text.replace(/(?<=\d),(?=\d)/g, ".").matchAll(/\d+(?:\.\d+)?/g)].map(([number]) => number).sort();
}

/** What a page shows: its texts, and the attributes that are read out or shown; without styles, scripts and markup. */
export function shownText(page: string): string {
  const markup = page.replace(/<(script|style)[\s\S]*?<\/\1>/g, " ");
  const attributes = [...markup.matchAll(/ (?:title|aria-label|data-title|alt)="([^"]*)"/g)].map((m) => m[1]);
  const texts = markup.replace(/<[^>]*>/g, " \n");
  return [texts, ...attributes]
    .join("\n")
    .replaceAll("&quot;", '"')
    .replaceAll("&#39;", "'")
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&amp;", "&");
}
