import { filled, Numeral, Sentence, type Text, upperFirst } from "../../sentence.js";

/** A language of the report and of the terminal. */
export interface Language {
  /** BCP 47: "de". */
  readonly id: string;
  /** What the language calls itself. */
  readonly name: string;
  readonly decimalMark: "." | ",";
  /** English template → template with the same numbered places, in any order. English has none. */
  readonly phrases: Readonly<Record<string, string>>;
}

export const ENGLISH: Language = { id: "en", name: "English", decimalMark: ".", phrases: {} };

/** A text in a language; what has no phrase in it stays English (a test keeps that from happening). */
export function inLanguage(text: Text, language: Language): string {
  if (text instanceof Numeral) return text.digits.replace(".", language.decimalMark);
  if (!(text instanceof Sentence)) return text;
  const template = language.phrases[text.template] ?? text.template;
  const written = filled(
    template,
    text.values.map((value) => inLanguage(value, language)),
  );
  return text.capitalised ? upperFirst(written) : written;
}

/** Plain data with every text inside it in a language: specifications of charts, words for scripts. */
export function translated<T>(data: T, language: Language): Translated<T> {
  return translate(data, language) as Translated<T>;
}

export type Translated<T> = T extends Numeral | Sentence
  ? string
  : T extends object
    ? { readonly [K in keyof T]: Translated<T[K]> }
    : T;

function translate(data: unknown, language: Language): unknown {
  if (data instanceof Numeral || data instanceof Sentence) return inLanguage(data, language);
  if (Array.isArray(data)) return data.map((one) => translate(one, language));
  if (typeof data !== "object" || data === null) return data;
  return Object.fromEntries(Object.entries(data).map(([key, value]) => [key, translate(value, language)]));
}
