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
