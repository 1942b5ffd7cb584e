/**
 * Text for people. Every stage writes its sentences in English with `say`; a sentence keeps its template and values, so
 * that report/languages can rebuild it in another language. Everywhere else it behaves like its English text: `String()`,
 * template literals and JSON give that, so results.json does not depend on the language.
 */
export type Text = string | Numeral | Sentence;

/** A number as printed, with a decimal point; other languages write their own mark. A plain string is the same in all. */
export class Numeral {
  readonly digits: string;

  constructor(digits: string) {
    this.digits = digits;
  }

  toString(): string {
    return this.digits;
  }

  toJSON(): string {
    return this.digits;
  }
}

/** An English template with numbered places, "{1} of {2} intervals are valid", and what stands in them. */
export class Sentence {
  readonly template: string;
  readonly values: readonly Text[];
  readonly capitalised: boolean;

  constructor(template: string, values: readonly Text[], capitalised = false) {
    this.template = template;
    this.values = values;
    this.capitalised = capitalised;
  }

  toString(): string {
    const text = filled(this.template, this.values.map(String));
    return this.capitalised ? upperFirst(text) : text;
  }

  toJSON(): string {
    return this.toString();
  }
}

/** say`${n} of ${all} intervals are valid`: numbers become numerals, other texts stay what they are. */
export function say(parts: TemplateStringsArray, ...values: readonly (Text | number)[]): Sentence {
  const template = parts.reduce((text, part, i) => `${text}{${i}}${part}`);
  return new Sentence(
    template,
    values.map((value) => (typeof value === "number" ? new Numeral(String(value)) : value)),
  );
}

/** A text out of a file of this program, such as the title of a limit: it stands in the catalogs as it is. */
export function stated(text: Text): Text {
  return typeof text === "string" ? new Sentence(text, []) : text;
}

/** The texts one after the other; `between` is the same in every language ("; ", " "). */
export function strung(texts: readonly Text[], between = ""): Sentence {
  return new Sentence(texts.map((_, i) => `{${i + 1}}`).join(between), texts);
}

/** The same with a capital first letter, whatever the language puts there. */
export function capital(text: Text): Text {
  if (text instanceof Sentence) return new Sentence(text.template, text.values, true);
  return text instanceof Numeral ? text : upperFirst(text);
}

/** Each text once, by its English words. */
export function distinct(texts: Iterable<Text>): Text[] {
  return [...new Map([...texts].map((text) => [String(text), text])).values()];
}

/** Each text once, in the order of their English words. */
export function sortedOnce(texts: readonly Text[]): Text[] {
  return distinct(texts).toSorted((a, b) => (String(a) < String(b) ? -1 : 1));
}

/** A template with its places filled. */
export function filled(template: string, values: readonly string[]): string {
  return template.replace(/\{(\d+)\}/g, (_, place: string) => values[Number(place) - 1] ?? "");
}

export function upperFirst(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
