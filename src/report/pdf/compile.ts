import type { Instant } from "../../recording/time.js";
import type { Text } from "../../sentence.js";
import { codePoints, NO_GLYPH, shown, spelled } from "../glyphs.js";
import { keptTogether } from "../html/html.js";
import { inLanguage, type Language, translated } from "../languages/language.js";
import type { RenderContext } from "../renderer.js";
import { missingGlyphs } from "../wording-report.js";
import type { Block } from "./blocks.js";

/** A file that lies inside the PDF. */
export interface AttachedFile {
  readonly name: string;
  readonly content: string;
  /** MIME type. */
  readonly type: string;
  readonly relationship: "data" | "source" | "supplement";
  readonly description: Text;
}

/** A document: what stands on each page, what follows one another, what is attached. */
export interface Document {
  readonly title: Text;
  readonly head: { readonly left: Text; readonly right: Text };
  /** "Page {page} of {pages}", with these two places. */
  readonly page: Text;
  /** Date of the document in its metadata; the clock is never asked. */
  readonly date: Instant;
  /** What is kept to one page. */
  readonly first: readonly Block[];
  readonly blocks: readonly Block[];
  readonly attached: readonly AttachedFile[];
}

/** A folder that need not exist: all files the template asks for are handed over in memory. */
const FOLDER = "/mainswitness-report";

/** PDF/A-3 of the highest level (a): tagged, with attached files. */
const STANDARD = "a-3a";

/**
 * Sets a document. All its texts reach the template as data, so nothing in them is read as markup. The compiler also
 * looks for fonts on the machine, but takes those handed over first.
 * @param template text of assets/report.typ
 * @param standard the compiler refuses a document that breaks its rules
 * @returns the PDF; the same bytes for the same document
 */
export async function compilePdf(
  document: Document,
  template: string,
  { language, fontFiles }: Pick<RenderContext, "language" | "fontFiles">,
  standard: "a-3a" | "ua-1" = STANDARD,
): Promise<Uint8Array> {
  const { NodeCompiler } = await import("@myriaddreamin/typst-ts-node-compiler");
  const compiler = NodeCompiler.create({ workspace: FOLDER, fontArgs: [{ fontPaths: [...fontFiles] }] });
  const put = (name: string, content: string) => compiler.mapShadow(`${FOLDER}/${name}`, Buffer.from(content));
  put("data.json", JSON.stringify(dataOf(document, language)));
  for (const { name, content } of document.attached) put(name, content);
  const result = compiler.compile({ mainFileContent: template });
  const set = result.result;
  if (set === null)
    throw new Error(`The PDF template is at fault: ${JSON.stringify(result.takeError()?.shortDiagnostics)}`);
  return new Uint8Array(compiler.pdf(set, { pdfStandard: standard }));
}

/** What the template reads: strings in the language, each with only those characters that the font has. */
function dataOf({ attached, date, ...document }: Document, language: Language): unknown {
  const missing = new Set<string>();
  const files = attached.map(({ content: _, ...file }) => file);
  const texts = setTexts(translated({ ...document, attached: files }, language), missing) as object;
  return {
    ...texts,
    missing: missing.size === 0 ? "" : inLanguage(missingGlyphs(NO_GLYPH, codePoints(missing)), language),
    language: language.id,
    date: dateParts(date),
  };
}

function setTexts(data: unknown, missing: Set<string>, key = ""): unknown {
  if (typeof data === "string") {
    const line = data.replace(/\s*[\n\r\t]\s*/g, " ");
    return shown(key === "svg" ? line : keptTogether(spelled(line)), missing);
  }
  if (Array.isArray(data)) return data.map((one) => setTexts(one, missing));
  if (typeof data !== "object" || data === null) return data;
  return Object.fromEntries(Object.entries(data).map(([name, value]) => [name, setTexts(value, missing, name)]));
}

function dateParts(at: Instant): Record<string, number> {
  const date = new Date(at / 1000);
  return {
    year: date.getUTCFullYear(),
    month: date.getUTCMonth() + 1,
    day: date.getUTCDate(),
    hour: date.getUTCHours(),
    minute: date.getUTCMinutes(),
    second: date.getUTCSeconds(),
  };
}
