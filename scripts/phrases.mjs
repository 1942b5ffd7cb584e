// Every English template that a language needs a phrase for: those of the sentences in src/, and the titles and notes of
// the limit sets. `npm run phrases` prints them as JSON, each with the files it stands in, for translators.
import { readdirSync, readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { fileURLToPath } from "node:url";
import { parse } from "yaml";

const root = fileURLToPath(new URL("..", import.meta.url));

export function templates() {
  const found = new Map();
  const add = (template, file) => {
    if (!/\p{L}/u.test(template.replace(/\{\d+\}/g, ""))) return;
    const files = found.get(template) ?? [];
    found.set(template, files.includes(file) ? files : [...files, file]);
  };
  for (const file of readdirSync(join(root, "src"), { recursive: true, encoding: "utf8" }).sort())
    if (file.endsWith(".ts"))
      for (const template of templatesIn(readFileSync(join(root, "src", file), "utf8"))) add(template, `src/${file}`);
  for (const file of readdirSync(join(root, "rules")).sort())
    for (const text of ruleTexts(parse(readFileSync(join(root, "rules", file), "utf8")))) add(text, `rules/${file}`);
  return found;
}

/** The templates of all say`…` in a source text, in the form of `Sentence.template`. */
export function templatesIn(source) {
  const starts = [...source.matchAll(/\bsay`/g)].filter(({ index }) => {
    const before = source.slice(source.lastIndexOf("\n", index) + 1, index);
    return !/^\s*(\*|\/\*|\/\/)/.test(before) && !/\s\/\/ /.test(before);
  });
  return starts.map(({ index }) => templateAt(source, index + "say`".length));
}

function templateAt(source, start) {
  let template = "";
  let places = 0;
  for (let at = start; at < source.length; at++) {
    if (source[at] === "`") return template;
    if (source[at] === "\\") {
      template += source[at + 1] === "n" ? "\n" : source[at + 1];
      at++;
    } else if (source.startsWith("${", at)) {
      template += `{${++places}}`;
      at = endOfExpression(source, at + 2);
    } else template += source[at];
  }
  throw new SyntaxError(`A template has no end: ${source.slice(start, start + 60)}`);
}

/** Where the brace stands that closes an expression; braces inside texts do not count. */
function endOfExpression(source, start) {
  let depth = 0;
  for (let at = start; at < source.length; at++) {
    const character = source[at];
    if (character === "{") depth++;
    else if (character === "}" && depth-- === 0) return at;
    else if (character === '"' || character === "'") at = source.indexOf(character, at + 1);
    else if (character === "`") at = endOfTemplate(source, at + 1);
  }
  throw new SyntaxError(`An expression has no end: ${source.slice(start, start + 60)}`);
}

function endOfTemplate(source, start) {
  for (let at = start; at < source.length; at++) {
    if (source[at] === "`") return at;
    if (source[at] === "\\") at++;
    else if (source.startsWith("${", at)) at = endOfExpression(source, at + 2);
  }
  throw new SyntaxError(`A template has no end: ${source.slice(start, start + 60)}`);
}

/** Titles and notes, wherever they stand in a limit set. */
function ruleTexts(node) {
  if (Array.isArray(node)) return node.flatMap(ruleTexts);
  if (typeof node !== "object" || node === null) return [];
  return Object.entries(node).flatMap(([key, value]) => {
    if ((key === "title" || key === "note") && typeof value === "string") return [value];
    if (key === "notes" && Array.isArray(value)) return value.filter((note) => typeof note === "string");
    return ruleTexts(value);
  });
}

/** What a catalog lacks, holds in vain, or says with other places than the English. */
export function faultsOf(language, english) {
  const places = (text) => [...new Set(text.match(/\{\d+\}/g))].sort().join();
  const { phrases } = language;
  return [
    ...english.filter((template) => phrases[template] === undefined).map((template) => `missing: ${template}`),
    ...Object.keys(phrases)
      .filter((key) => /\p{L}/u.test(key.replace(/\{\d+\}/g, "")) && !english.includes(key))
      .map((key) => `stale: ${key}`),
    ...Object.entries(phrases)
      .filter(([key, phrase]) => places(key) !== places(phrase))
      .map(([key]) => `other places: ${key}`),
  ];
}

if (basename(process.argv[1] ?? "") === "phrases.mjs")
  console.log(JSON.stringify(Object.fromEntries(templates()), undefined, 2));
