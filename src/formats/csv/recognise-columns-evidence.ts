import type { Phase } from "../../recording/quantity.js";
import { say, type Text } from "../../sentence.js";
import type { WrittenUnit } from "./recognise-columns-units.js";
import type { Sense } from "./vocabulary.js";

/** Something the header says, with the words that say it. */
export interface Said<T> {
  readonly value: T;
  readonly said: Text;
}

/** A number whose role (phase or order) the header alone may leave open. */
export interface OpenNumber {
  readonly digits: string;
  readonly at: number;
  /** The quantity symbol it is glued to ("U5"); undefined for a number standing alone. */
  readonly symbol?: string;
}

/** What one header says, part by part. */
export interface Evidence {
  /** Header in plain letters: positions refer to it. */
  readonly text: string;
  readonly senses: Map<Sense, Text>;
  readonly phases: Said<Phase>[];
  /** Order named as such: "h5", "order 5", "5th harmonic". */
  readonly orders: Said<number>[];
  readonly numbers: OpenNumber[];
  readonly strangers: string[];
  unit?: Said<WrittenUnit>;
  leftOut?: Text;
}

/** Takes a unit that the header names; another one beside it makes both unusable. */
export function noteUnit(evidence: Evidence, unit: WrittenUnit, said: string): void {
  const other = evidence.unit?.value;
  if (other && differ(other, unit)) {
    const reason = say`it names two units, ${other.text} and ${unit.text}`;
    evidence.unit = { value: { kind: "unusable", text: unit.text, reason }, said: say`"${said}" in the header` };
  }
  evidence.unit ??= { value: unit, said: say`"${said}" in the header` };
}

/** "% of declared" in one place and plain "%" in the other do not contradict each other. */
export function differ(a: WrittenUnit, b: WrittenUnit): boolean {
  return a.text !== b.text && !(a.text.startsWith("%") && b.text.startsWith("%"));
}

/** What several words say together. */
export function both(texts: readonly Text[]): Text {
  return texts.reduce((first, second) => say`${first} and ${second}`);
}
