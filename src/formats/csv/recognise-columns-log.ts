import type { Evidence, OpenNumber } from "./recognise-columns-evidence.js";
import { headerText, readHeader } from "./recognise-columns-header.js";
import type { Sense } from "./vocabulary.js";

/** The headers of a whole log, for what only the neighbours of a column can tell. */
export class LogHeaders {
  readonly evidence: readonly Evidence[];
  /** Whether any column speaks of a current. */
  readonly speaksOfCurrent: boolean;
  private readonly byText = new Map<string, Evidence[]>();
  private readonly byPattern = new Map<string, Set<string>>();

  constructor(columns: readonly { readonly header: string; readonly unit?: string }[]) {
    const texts = columns.map((column) => headerText(column.header));
    const known = new Set(texts);
    this.evidence = columns.map((column, index) => {
      const text = texts[index] as string;
      return readHeader(text, column.unit, (at, length, instead) =>
        known.has(text.slice(0, at) + instead + text.slice(at + length)),
      );
    });
    for (const evidence of this.evidence) {
      this.byText.set(evidence.text, [...(this.byText.get(evidence.text) ?? []), evidence]);
      for (const number of evidence.numbers) {
        const pattern = patternOf(evidence.text, number);
        this.byPattern.set(pattern, (this.byPattern.get(pattern) ?? new Set()).add(number.digits));
      }
    }
    this.speaksOfCurrent = this.evidence.some(({ senses, unit }) => {
      return senses.has("current") || (unit?.value.kind === "unit" && unit.value.unit === "A");
    });
  }

  /** All numbers that stand in the place of this one in otherwise equal headers of the log. */
  numbersInPlaceOf(text: string, number: OpenNumber): readonly string[] {
    return [...(this.byPattern.get(patternOf(text, number)) ?? [])];
  }

  /** Whether the log has the same header with another digit at `at`, in the same unit. */
  hasTwinInUnit(evidence: Evidence, at: number, digit: string): boolean {
    const twins = this.byText.get(evidence.text.slice(0, at) + digit + evidence.text.slice(at + 1)) ?? [];
    return twins.some((twin) => twin.unit?.value.text === evidence.unit?.value.text);
  }

  /** Whether every column that says one of these (without any: every column) also has the unknown word: then it is a mere name. */
  carriedByAll(stranger: string, senses: readonly Sense[]): boolean {
    const isLike = (other: Evidence) => senses.length === 0 || senses.some((sense) => other.senses.has(sense));
    const alike = this.evidence.filter(isLike);
    const carriers = this.evidence.filter((other) => other.strangers.includes(stranger));
    return carriers.length > 1 && alike.every((other) => carriers.includes(other));
  }
}

function patternOf(text: string, number: OpenNumber): string {
  return `${text.slice(0, number.at)}#${text.slice(number.at + number.digits.length)}`;
}
