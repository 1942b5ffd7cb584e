import { toNumber } from "../../decimal.js";
import { UsageError } from "../../errors.js";
import { type LoggedQuantity, PHASE_TO_PHASE, type Phase, QUANTITIES, type Unit } from "../../recording/quantity.js";
import type { ColumnMeaning } from "../../recording/recording.js";
import type { ColumnSetup, GivenSetup } from "../../recording/setup.js";
import { say, type Text } from "../../sentence.js";
import { givenUnit } from "../csv/recognise-columns-setup.js";
import type { Field } from "./fields.js";
import type { LogReader } from "./log-reader.js";
import { type Guess, meaningOf, placeOf } from "./meaning.js";
import { characteristicName, phaseName, quantityMeasuredName } from "./names.js";
import { type Fundamental, harmonicScale, type Scale, scaleOf } from "./units.js";

/** What a field was taken for; without `meaning` and `flag` it is not used. */
export interface Recognised {
  readonly field: Field;
  readonly meaning?: ColumnMeaning;
  readonly unit?: Unit;
  readonly factor: number;
  readonly flag?: true;
  readonly reason: Text;
}

/** A field with what its identifiers and the setup say, before its values are looked at. */
export interface Draft extends Guess {
  readonly field: Field;
  readonly entry?: ColumnSetup;
  readonly ignored?: true;
}

/**
 * What each field of logged values is, by its identifiers and the setup, whose entries override the rest part by part. An
 * entry names a field by position or header, or by the name of its channel for all fields of it.
 * @throws UsageError where an entry names no field, or names a field twice
 */
export function draftsOf(file: string, fields: readonly Field[], setup: GivenSetup): Draft[] {
  const entries = new Map<Field, ColumnSetup>();
  for (const entry of setup.columns ?? []) {
    for (const field of named(fields, entry)) {
      const before = entries.get(field);
      // The one that names the field itself goes before one that names its channel.
      if (before === undefined || before.column === field.channel) entries.set(field, entry);
      else if (entry.column !== field.channel) {
        throw new UsageError(`the setup has two entries under columns: for "${field.header}" of ${file}; merge them`);
      }
    }
  }
  return fields.map((field) => {
    const nominalFrequency = field.nominalFrequency ?? setup.nominalFrequency ?? 50;
    const guess = meaningOf(field, nominalFrequency);
    const entry = entries.get(field);
    if (entry === undefined) return { ...guess, field };
    if (entry.ignore) return { field, entry, ignored: true };
    const { quantity } = entry;
    const place = quantity === undefined || quantity === "flag" ? {} : placeOf(field, quantity, nominalFrequency);
    return overridden(field, { ...guess, ...place }, entry);
  });
}

function named(fields: readonly Field[], { column }: ColumnSetup): readonly Field[] {
  if (typeof column === "number") return fields.filter(({ position }) => position === column);
  const byHeader = fields.filter(({ header }) => header === column.trim());
  if (byHeader.length > 1) {
    const positions = byHeader.map(({ position }) => position).join(", ");
    throw new UsageError(
      `the setup names the column "${column}" under columns:, but ${byHeader[0]?.file} has that name at positions ${positions}; give the position instead`,
    );
  }
  return byHeader.length > 0 ? byHeader : fields.filter(({ channel }) => channel === column.trim());
}

function overridden(field: Field, guess: Guess, entry: ColumnSetup): Draft {
  const quantity = entry.quantity ?? guess.quantity;
  const phase = entry.phase ?? guess.phase;
  const statistic = entry.statistic ?? guess.statistic;
  const order = entry.order ?? guess.order;
  const isSpectrum = /harmonic/.test(quantity ?? "");
  const draft = {
    field,
    entry,
    ...(quantity !== undefined && { quantity }),
    ...(phase !== undefined && { phase }),
    ...(statistic !== undefined && { statistic }),
    ...(isSpectrum && order !== undefined && { order }),
  };
  const complete =
    quantity === "flag" ||
    (quantity !== undefined && phase !== undefined && statistic !== undefined && (!isSpectrum || order !== undefined));
  if (complete) return draft;
  throw new UsageError(
    `the setup has an entry under columns: for "${field.header}" of ${field.file}, but it still cannot be used: ${guess.unclear ?? "not all of it is said"}; complete the entry (quantity, phase, order, statistic, unit) or take it out`,
  );
}

/** Whether the values of a field are needed to tell what it is, or are used. */
export function isWanted({ quantity, unclear, ignored }: Draft): boolean {
  return ignored !== true && quantity !== undefined && unclear === undefined;
}

/** Gives each draft its unit by its values. @throws UsageError for a unit in the setup that does not fit */
export function recognise(drafts: readonly Draft[], read: LogReader, setup: GivenSetup): Recognised[] {
  const medians = new Map(drafts.filter(isWanted).map((d) => [d.field, medianOf(read, d.field)]));
  return drafts.map((draft) => {
    const { field, quantity, phase, statistic, order } = draft;
    const unused = (reason: Text): Recognised => ({ field, factor: 1, reason });
    if (draft.ignored) return unused(say`the setup leaves it out`);
    if (!field.present) return unused(say`it is defined, but no observation holds it`);
    if (draft.unclear !== undefined) return unused(draft.unclear);
    const problem = read.problems.get(field);
    if (!read.pieces.has(field)) return unused(problem ?? say`it is empty in all observations`);
    if (quantity === "flag") return { field, factor: 1, flag: true, reason: say`it marks intervals as flagged` };
    if (quantity === undefined || phase === undefined || statistic === undefined) throw new Error(field.header);
    const median = medians.get(field);
    const scale = scaled(draft, quantity, phase, median, drafts, medians, read, setup);
    if (!("factor" in scale)) return unused(scale);
    return {
      field,
      meaning: {
        quantity,
        phase,
        ...(order !== undefined && { order }),
        statistic,
        writtenUnit: draft.entry?.unit ?? writtenUnit(scale),
      },
      unit: scale.unit,
      factor: scale.factor,
      reason: say`${whatItSays(draft)}; ${scale.why}`,
    };
  });
}

const NOT_SAID = say`not said`;

/** What the file says of a field, in words, or that the setup says it. */
function whatItSays({ field: { definition, series }, entry }: Draft): Text {
  if (entry?.quantity !== undefined) return say`by the setup`;
  const { quantityMeasured, phase } = definition;
  const measured = quantityMeasured === undefined ? undefined : quantityMeasuredName(quantityMeasured);
  const characteristic = series.characteristic === undefined ? undefined : characteristicName(series.characteristic);
  return say`measured ${measured ?? NOT_SAID}, characteristic ${characteristic ?? NOT_SAID}, phase ${phaseName(phase) ?? phase}`;
}

/** The unit as a setup would have to give it to say the same. */
function writtenUnit({ unit, factor }: Scale): string {
  if (factor === 1) return unit;
  return factor === 0.01 ? "%" : "p.u.";
}

function scaled(
  draft: Draft,
  quantity: LoggedQuantity,
  phase: Phase,
  median: number | undefined,
  drafts: readonly Draft[],
  medians: ReadonlyMap<Field, number | undefined>,
  read: LogReader,
  setup: GivenSetup,
): Scale | (Text & object) {
  const { field, entry, statistic } = draft;
  if (median === undefined) return say`it holds no values that are numbers`;
  const bases = [...(read.bases.get(field) ?? [])];
  const base = bases.length === 1 && (bases[0] as number) > 0 ? bases[0] : undefined;
  const declared = declaredOn(phase, setup);
  if (entry?.unit !== undefined) return byEntry(draft, quantity, entry.unit, base, declared);
  const { units } = field.series;
  if (/harmonic/.test(quantity)) {
    const medianOfOther = (fits: (other: Draft) => boolean) => {
      const other = drafts.find((d) => d.statistic === statistic && d.phase === phase && fits(d));
      return other && medians.get(other.field);
    };
    const isVoltage = quantity.endsWith("voltage");
    const fundamental: Fundamental = {
      first: medianOfOther((d) => d.order === 1 && d.quantity === quantity),
      rms: medianOfOther((d) => d.quantity === (isVoltage ? "voltage" : "current")),
    };
    return harmonicScale(isVoltage ? "V" : "A", units, fundamental) as Scale | (Text & object);
  }
  return scaleOf(quantity, units, { median, base, declared }) as Scale | (Text & object);
}

function byEntry(
  { field }: Draft,
  quantity: LoggedQuantity,
  text: string,
  base: number | undefined,
  declared: number | undefined,
): Scale | (Text & object) {
  const unit = givenUnit(field.file, { position: field.position, header: field.header, samples: [] }, text);
  const why = say`${text}: by the setup`;
  if (quantity === "power-factor" && text === "%") return { unit: "1", factor: 0.01, why };
  if (unit.kind === "unit") return { unit: unit.unit, factor: toNumber(unit.factor), why };
  const isAbsolute = QUANTITIES[quantity].unit !== "%";
  if (unit.kind === "per-unit" && !isAbsolute) return { unit: "%", factor: 100, why };
  if (unit.kind === "per-unit" && base !== undefined) return { unit: QUANTITIES[quantity].unit, factor: base, why };
  if (quantity === "voltage" && declared !== undefined) {
    return { unit: "V", factor: declared * (unit.kind === "of-declared" ? toNumber(unit.factor) : 1), why };
  }
  throw new UsageError(
    `${field.file}, "${field.header}" is in ${text}, which needs the declared voltage in volts; give it with --declared`,
  );
}

/** The declared voltage of the setup, where it is one of this phase: to neutral, or between phases for a delta supply. */
function declaredOn(phase: Phase, { declaredVoltage, connection }: GivenSetup): number | undefined {
  const between = (PHASE_TO_PHASE as readonly Phase[]).includes(phase);
  return between === (connection === "delta") ? declaredVoltage : undefined;
}

function medianOf(read: LogReader, field: Field): number | undefined {
  const all = (read.pieces.get(field) ?? []).flatMap(({ values }) => [...values.filter((v) => !Number.isNaN(v))]);
  const sorted = Float64Array.from(all).sort();
  return sorted[sorted.length >> 1];
}
