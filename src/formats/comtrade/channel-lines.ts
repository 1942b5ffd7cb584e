import { fieldsOf, numberOf } from "./text.js";

/** One analog channel as the configuration describes it: value = `a` × number + `b`, in `unit`, on side `side`. */
export interface AnalogChannel {
  /** 1-based place in the rows of the data. */
  readonly position: number;
  readonly name: string;
  readonly phase: string;
  readonly unit: string;
  readonly a: number;
  readonly b: number;
  /** Microseconds by which the channel was sampled after the row's time; 0 where not stated. */
  readonly skew: number;
  /** Range of the numbers in the data, for information; NaN where not stated. */
  readonly min: number;
  readonly max: number;
  /** The two sides of the transformer ratio; NaN where not stated. */
  readonly primary: number;
  readonly secondary: number;
  readonly side: "primary" | "secondary" | undefined;
}

/** Fields of an analog line from 1999 on, and in 1991. */
const FIELDS = 13;
const FIELDS_1991 = 10;
/** Three times what the standard allows. */
const LONGEST_NAME = 200;

/**
 * Reads the line of an analog channel. A comma inside the name gives surplus fields, which are put back into the name:
 * the numbers behind it show where it ends. Fields missing at the end of the line get NaN or 0 (skew).
 * @returns undefined if no place in the line has the factors a and b.
 */
export function readAnalogLine(line: string, position: number): AnalogChannel | undefined {
  const fields = fieldsOf(line);
  while (fields.length > FIELDS && fields.at(-1) === "") fields.pop();
  const surplus = surplusFields(fields);
  if (surplus === undefined) return undefined;
  const field = (index: number) => fields[index + surplus] ?? "";
  const side = field(12).toUpperCase();
  const skew = numberOf(field(7));
  return {
    position,
    name: fields
      .slice(1, 2 + surplus)
      .join(", ")
      .trim()
      .slice(0, LONGEST_NAME),
    phase: field(2),
    unit: field(4),
    a: numberOf(field(5)),
    b: numberOf(field(6)),
    skew: Number.isFinite(skew) ? skew : 0,
    min: numberOf(field(8)),
    max: numberOf(field(9)),
    primary: numberOf(field(10)),
    secondary: numberOf(field(11)),
    side: side === "P" ? "primary" : side === "S" ? "secondary" : undefined,
  };
}

function surplusFields(fields: readonly string[]): number | undefined {
  const most = Math.max(0, fields.length - (fields.length >= FIELDS ? FIELDS : FIELDS_1991));
  const places = Array.from({ length: most + 1 }, (_, surplus) => surplus);
  return (
    places.find((surplus) => hasFactors(fields, surplus) && hasUsualTail(fields, surplus)) ??
    places.find((surplus) => hasFactors(fields, surplus)) ??
    [fields.length - FIELDS_1991].find((s) => s > most && hasFactors(fields, s) && hasUsualTail(fields, s))
  );
}

function hasFactors(fields: readonly string[], surplus: number): boolean {
  return Number.isFinite(numberOf(fields[5 + surplus])) && Number.isFinite(numberOf(fields[6 + surplus]));
}

function hasUsualTail(fields: readonly string[], surplus: number): boolean {
  const tail = fields.slice(7 + surplus);
  return tail.every((text, i) => text === "" || (i === 5 ? /^[ps]$/i.test(text) : !Number.isNaN(numberOf(text))));
}
