import { Numeral, Sentence, say, strung, type Text } from "../sentence.js";
import { type ColumnRun, rangeOf } from "./columns.js";

/** Words on the setup and on the columns of the log. */

const SETUP_NAMES: Readonly<Record<string, Sentence>> = {
  site: say`Site`,
  measuringPoint: say`Measuring point`,
  instrument: say`Instrument`,
  connection: say`Connection`,
  declaredVoltage: say`Declared voltage`,
  nominalFrequency: say`Nominal frequency`,
  zone: say`Time zone of the log`,
  intervalLabel: say`A stamp marks the interval's`,
  ruleSet: say`Limit set`,
  network: say`Network`,
  measurement: say`Measured with`,
  voltageRatio: say`Voltage transformer ratio`,
  currentRatio: say`Current transformer ratio`,
};

const SETUP_UNITS: Readonly<Record<string, string>> = { declaredVoltage: "V", nominalFrequency: "Hz" };

/** Values that are words of this program; all others are numbers or texts of whoever set up the recording. */
const SETUP_VALUES: Readonly<Record<string, Readonly<Record<string, Sentence>>>> = {
  connection: { star: say`star`, delta: say`delta`, single: say`single phase` },
  intervalLabel: { start: say`start`, end: say`end` },
};

/** "Declared voltage": the name of a setup entry; one unknown here keeps its key. */
export function setupName(key: string): Text {
  return SETUP_NAMES[key] ?? key;
}

/** "230 V", "star". */
export function setupValue(key: string, value: Text | number): Text {
  if (typeof value === "string") return SETUP_VALUES[key]?.[value] ?? value;
  if (typeof value !== "number") return value;
  const unit = SETUP_UNITS[key];
  const number = new Numeral(String(value));
  return unit === undefined ? number : strung([number, unit], " ");
}

export function columnsSummary(used: number, total: number): Sentence {
  return say`${used} of ${total} columns used`;
}

/** "harmonic voltage L1, order 2 to 40, mean, %: columns 60 to 98". */
export function columnRunText({ takenFor, numbers, positions }: ColumnRun): Sentence {
  const what = numbers.length < 2 ? takenFor : withNumbers(takenFor, rangeText(numbers));
  const columns = rangeText(positions);
  return positions.length === 1 ? say`${what}: column ${columns}` : say`${what}: columns ${columns}`;
}

/** The text with something else in the place of its one number. */
function withNumbers(text: Text, numbers: Text): Text {
  if (text instanceof Numeral) return numbers;
  if (!(text instanceof Sentence)) return text;
  return new Sentence(
    text.template,
    text.values.map((value) => withNumbers(value, numbers)),
    text.capitalised,
  );
}

/** "2 to 40", "28 to 97 in steps of 3", "3, 5, 9". */
function rangeText(numbers: readonly number[]): Text {
  const range = rangeOf(numbers);
  if (range === undefined) return strung(numbers.map(String), ", ");
  const { first, last, step } = range;
  return step === 1 ? say`${first} to ${last}` : say`${first} to ${last} in steps of ${step}`;
}
