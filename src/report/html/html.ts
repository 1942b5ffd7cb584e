import type { Text } from "../../sentence.js";
import { inLanguage, type Language } from "../languages/language.js";

/** Markup, written out when the language of its texts is known. */
export class Html {
  readonly #write: (language: Language) => string;

  constructor(write: (language: Language) => string) {
    this.#write = write;
  }

  markup(language: Language): string {
    return this.#write(language);
  }
}

/** Numbers here are whole ones, such as counts; others are Numerals. */
export type Content = Html | Text | number | undefined | false | readonly Content[];

const ENTITIES: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

export function escapeHtml(text: string): string {
  return text.replace(/[&<>"']/g, (character) => ENTITIES[character] as string);
}

/** Markup with the values put in: texts translated and escaped, markup as it is, lists joined, undefined and false left out. */
export function html(parts: TemplateStringsArray, ...values: readonly Content[]): Html {
  return new Html((language) => parts.reduce((markup, part, i) => markup + markupOf(values[i - 1], language) + part));
}

/** Markup that is the same in every language and is not escaped: pictures, styles, scripts. */
export function raw(markup: string): Html {
  return new Html(() => markup);
}

/** Text that keeps a number and its unit on one line. */
export function unbroken(text: Text): Html {
  return new Html((language) => escapeHtml(keptTogether(inLanguage(text, language))));
}

export function keptTogether(text: string): string {
  return text.replace(/(\d) (?=(?:V|A|W|Hz|%|h|min|ms|s)(?![\w]))/g, "$1\u00a0");
}

function markupOf(value: Content, language: Language): string {
  if (value === undefined || value === false) return "";
  if (value instanceof Html) return value.markup(language);
  if (typeof value === "number") return String(value);
  if (isList(value)) return value.map((one) => markupOf(one, language)).join("");
  return escapeHtml(inLanguage(value, language));
}

function isList(value: Content): value is readonly Content[] {
  return Array.isArray(value);
}

/** Data for a script, as JSON that cannot end the element it stands in. */
export function jsonScript(data: unknown): Html {
  const text = JSON.stringify(data)
    .replaceAll("<", "\\u003c")
    .replaceAll("\u2028", "\\u2028")
    .replaceAll("\u2029", "\\u2029");
  return raw(`<script type="application/json">${text}</script>`);
}

/** Script text that cannot end its own element: "</script" occurs in scripts only inside texts and patterns. */
export function inlineScript(script: string): string {
  return script.replace(/<(?=\/script|!--|script)/gi, "\\x3c");
}
