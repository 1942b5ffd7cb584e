/** Markup made by `html`; everything else that gets into markup is text and is escaped. */
export class Html {
  readonly #markup: string;

  constructor(markup: string) {
    this.#markup = markup;
  }

  toString(): string {
    return this.#markup;
  }
}

export type Content = Html | string | number | undefined | false | readonly Content[];

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

/** Markup with the values put in: text escaped, markup as it is, lists joined, undefined and false left out. */
export function html(parts: TemplateStringsArray, ...values: readonly Content[]): Html {
  let markup = parts[0] as string;
  for (const [i, value] of values.entries()) markup += markupOf(value) + parts[i + 1];
  return new Html(markup);
}

/** Keeps a number and its unit on one line. */
export function unbroken(text: string): string {
  return text.replace(/(\d) (?=(?:V|A|W|Hz|%|h|min|ms|s)(?![\w]))/g, "$1\u00a0");
}

function markupOf(value: Content): string {
  if (value === undefined || value === false) return "";
  if (value instanceof Html) return value.toString();
  if (typeof value === "string") return escapeHtml(value);
  if (typeof value === "number") return String(value);
  return value.map(markupOf).join("");
}

/** Data for a script, as JSON that cannot end the element it stands in. */
export function jsonScript(data: unknown): Html {
  const text = JSON.stringify(data)
    .replaceAll("<", "\\u003c")
    .replaceAll("\u2028", "\\u2028")
    .replaceAll("\u2029", "\\u2029");
  return new Html(`<script type="application/json">${text}</script>`);
}

/** Script text that cannot end its own element: "</script" occurs in scripts only inside texts and patterns. */
export function inlineScript(script: string): string {
  return script.replace(/<(?=\/script|!--|script)/gi, "\\x3c");
}
