import { type Ratio, ratio, times, toNumber } from "../../decimal.js";
import { LogError, UsageError } from "../../errors.js";
import type { LoggedQuantity, Unit } from "../../recording/quantity.js";
import type { GivenSetup } from "../../recording/setup.js";
import { Sentence, say, type Text } from "../../sentence.js";
import type { SeriesDraft } from "./recognise-columns-draft.js";
import type { Said } from "./recognise-columns-evidence.js";
import { columnName, setupLine } from "./recognise-columns-setup.js";
import type { WrittenUnit } from "./recognise-columns-units.js";

/** The unit of a column's stored values, and how they come from the written ones. */
export interface Scaled {
  readonly unit: Unit;
  readonly scale: Ratio;
  readonly writtenUnit: string;
  readonly why: readonly Text[];
}

const ONE = ratio(1);
const UNITS: Readonly<Record<LoggedQuantity, readonly Unit[]>> = {
  voltage: ["V"],
  current: ["A"],
  frequency: ["Hz"],
  "thd-voltage": ["%"],
  "thd-current": ["%"],
  "harmonic-voltage": ["%", "V"],
  "harmonic-current": ["A", "%"],
  "interharmonic-voltage": ["%", "V"],
  "mains-signalling": ["%", "V"],
  pst: ["1"],
  plt: ["1"],
  "negative-sequence-unbalance": ["%"],
  "zero-sequence-unbalance": ["%"],
  "active-power": ["W"],
  "reactive-power": ["var"],
  "apparent-power": ["VA"],
  "power-factor": ["1"],
};

/** What the unit of one series may depend on. */
interface Context {
  readonly file: string;
  readonly series: readonly SeriesDraft[];
  readonly setup: GivenSetup;
}

/** Unit and scale of each series; a sentence says why a column cannot be used. */
export function scaleSeries(
  file: string,
  series: readonly SeriesDraft[],
  setup: GivenSetup,
): ReadonlyMap<SeriesDraft, Scaled | Sentence> {
  const context = { file, series, setup };
  return new Map(
    series.map((draft) => {
      const unit = statedUnit(draft);
      if (unit instanceof Sentence) return [draft, unit];
      const scaled = unit === undefined ? inferredUnit(draft, context) : fromWritten(draft, unit, context);
      return [draft, scaled instanceof Sentence ? scaled : withTransformers(scaled, setup)];
    }),
  );
}

/** The unit the log or the setup states; a bare "-" or "1" states none where the quantity has one. */
function statedUnit({ unit, quantity }: SeriesDraft): SeriesDraft["unit"] | Sentence {
  if (unit?.value.kind !== "unit") return unit;
  if (UNITS[quantity].includes(unit.value.unit)) return unit;
  if (unit.value.unit === "1") return undefined;
  if (unit.value.unit === "%" && (quantity === "voltage" || quantity === "power-factor")) return unit;
  return say`the unit ${unit.value.text} (${unit.said}) does not fit the quantity`;
}

function fromWritten(draft: SeriesDraft, stated: Said<WrittenUnit>, context: Context): Scaled | Sentence {
  const written = stated.value;
  const { quantity, column } = draft;
  const units = UNITS[quantity];
  const unit = units[0] as Unit;
  const why = [say`${written.text}: ${stated.said}`];
  switch (written.kind) {
    case "unusable":
      return written.reason;
    case "of-declared":
      if (!units.includes("V")) return say`the unit ${written.text} does not fit the quantity`;
      return ofDeclared(draft, written.factor, written.text, why, context);
    case "per-unit":
      if (quantity === "voltage") return ofDeclared(draft, ONE, written.text, why, context);
      if (units.includes("V")) return say`p.u. does not say whether of the fundamental or of the declared voltage`;
      if (unit !== "%" && unit !== "1") return say`p.u. does not say of what; only voltages in p.u. are used`;
      return { unit, scale: ratio(unit === "%" ? 100 : 1), writtenUnit: written.text, why };
    case "unit":
      if (written.unit === "%" && quantity === "voltage") {
        const alike = context.series.filter((one) => one.quantity === "voltage" && one.unit?.value.text === "%");
        throw new LogError(
          context.file,
          columnName(column),
          `a voltage in % does not say of what; where it is of the declared voltage, say so in the setup: ${entries(alike, '"% of declared"', context)}`,
        );
      }
      if (written.unit === "%" && quantity === "power-factor") {
        return { unit: "1", scale: ratio("0.01"), writtenUnit: written.text, why };
      }
      return { unit: written.unit, scale: written.factor, writtenUnit: written.text, why };
  }
}

function ofDeclared(
  draft: SeriesDraft,
  factor: Ratio,
  text: string,
  why: readonly Text[],
  context: Context,
): Scaled | Sentence {
  const { connection, declaredVoltage } = context.setup;
  if (declaredVoltage === undefined) {
    throw new UsageError(
      `${context.file}, ${columnName(draft.column)} is in ${text}, which needs the declared voltage in volts; give it with --declared`,
    );
  }
  const isToNeutral = ({ phase }: SeriesDraft) => phase === "L1" || phase === "L2" || phase === "L3";
  const toNeutral =
    connection === undefined
      ? context.series.some((one) => one.quantity === "voltage" && isToNeutral(one))
      : connection !== "delta";
  if (toNeutral !== isToNeutral(draft)) {
    return toNeutral
      ? say`it is in ${text}, but the declared voltage is given phase to neutral`
      : say`it is in ${text}, but the declared voltage is given phase to phase`;
  }
  const scale = times(ratio(declaredVoltage), factor);
  return { unit: "V", scale, writtenUnit: text, why: [...why, say`of the declared voltage ${declaredVoltage} V`] };
}

function withTransformers(scaled: Scaled, setup: GivenSetup): Scaled {
  const power = scaled.unit === "W" || scaled.unit === "var" || scaled.unit === "VA";
  const ofDeclaredVoltage = scaled.writtenUnit.includes("declared") || scaled.writtenUnit === "p.u.";
  const { voltageRatio, currentRatio } = setup;
  let { scale } = scaled;
  const why = [...scaled.why];
  if (voltageRatio !== undefined && (power || (scaled.unit === "V" && !ofDeclaredVoltage))) {
    scale = times(scale, transformerRatio(voltageRatio));
    why.push(say`times the voltage ratio ${voltageRatio}`);
  }
  if (currentRatio !== undefined && (power || scaled.unit === "A")) {
    scale = times(scale, transformerRatio(currentRatio));
    why.push(say`times the current ratio ${currentRatio}`);
  }
  return { ...scaled, scale, why };
}

/** Primary over secondary, as the setup states it. @throws UsageError for a zero */
export function transformerRatio(value: number | string): Ratio {
  const [primary, secondary] = String(value).split("/");
  const { num, den } = ratio(secondary ?? "1");
  const result = times(ratio(primary ?? "1"), { num: den, den: num });
  if (result.num === 0n || result.den === 0n) {
    throw new UsageError(
      `the transformer ratio ${value} in the setup has a zero; write primary/secondary, as in 20000/100`,
    );
  }
  return result;
}

/** The line of the setup that gives columns their unit, for messages. */
function entries(drafts: readonly SeriesDraft[], unit: string, { series }: Context): string {
  const columnsOf = (some: readonly SeriesDraft[]) => some.map(({ column }) => column);
  return setupLine(columnsOf(drafts), `unit: ${unit}`, columnsOf(series));
}

function inferredUnit(draft: SeriesDraft, context: Context): Scaled | Sentence {
  const { file, series } = context;
  const { quantity, column } = draft;
  const as = (unit: Unit, why: Text): Scaled => ({ unit, scale: ONE, writtenUnit: unit, why: [say`${unit}: ${why}`] });
  const middle = median(column.samples);
  const ask = (what: string, columns: readonly SeriesDraft[], units: readonly string[]): LogError => {
    const lines = units.map((unit) => entries(columns, unit, context)).join(" or ");
    return new LogError(file, columnName(column), `${what}; say the unit in the setup, such as ${lines}`);
  };
  switch (quantity) {
    case "pst":
    case "plt":
    case "power-factor":
      return as("1", say`the quantity has no unit`);
    case "negative-sequence-unbalance":
    case "zero-sequence-unbalance":
    case "thd-voltage":
    case "thd-current":
      if (middle === undefined) return say`it has neither a unit nor values`;
      if (middle < 0.2) return say`no unit is written, and its values (median ${middle}) may be % or a fraction of 1`;
      return as("%", say`no unit is written; the median ${middle} is one in %`);
    case "frequency":
      if (middle === undefined) return say`it has neither a unit nor values`;
      if (middle < 40 || middle > 70)
        return say`no unit is written, and the median ${middle} is no power frequency in Hz`;
      return as("Hz", say`no unit is written; the median ${middle} is a power frequency in Hz`);
    case "voltage": {
      if (middle === undefined) return say`it has neither a unit nor values`;
      if (middle >= 80 && middle <= 1000)
        return as("V", say`no unit is written; the median ${middle} lies between 80 and 1000`);
      const alike = series.filter((one) => one.quantity === "voltage" && !one.unit);
      const others = median(alike.flatMap((one) => one.column.samples));
      if (middle === 0 && others !== undefined && others >= 80 && others <= 1000) {
        return as("V", say`no unit is written; its median is 0, that of all voltages without unit ${others}`);
      }
      throw ask(`no unit is written, and the median ${middle} does not tell V from kV or p.u.`, alike, ["kV"]);
    }
    case "harmonic-voltage":
    case "harmonic-current": {
      const like = unitOfHarmonics(draft, series);
      if (like) return as(like.unit, like.why);
      const what = say`no unit is written, and nothing tells % from ${quantity === "harmonic-voltage" ? "V" : "A"}`;
      if (quantity === "harmonic-voltage") throw ask(String(what), [draft], ['"%"', "V"]);
      return what;
    }
    default:
      return say`no unit is written; say it in the setup under columns:`;
  }
}

/** The unit of harmonics written without one: a column like it says it, or the fundamental shows it. */
function unitOfHarmonics(draft: SeriesDraft, series: readonly SeriesDraft[]): { unit: Unit; why: Text } | undefined {
  const like = series.filter((one) => one.quantity === draft.quantity);
  const stated = like.flatMap((one) => (one.unit?.value.kind === "unit" ? [{ unit: one.unit.value.unit, one }] : []));
  const [first] = stated;
  if (first && stated.every(({ unit }) => unit === first.unit)) {
    return { unit: first.unit, why: say`as column ${first.one.column.position}, which holds the same quantity, says` };
  }
  const fundamentals = like.filter((one) => one.order === 1);
  const fundamental = fundamentals.find((one) => one.phase === draft.phase) ?? fundamentals[0];
  const middle = fundamental && median(fundamental.column.samples);
  if (!fundamental || middle === undefined) return undefined;
  const whole = draft.quantity === "harmonic-voltage" ? "voltage" : "current";
  const rms = series.find(
    (one) => one.quantity === whole && one.phase === fundamental.phase && one.statistic === fundamental.statistic,
  );
  const factor = rms?.unit?.value.kind === "unit" ? toNumber(rms.unit.value.factor) : 1;
  const rmsMiddle = rms && median(rms.column.samples);
  const nearRms = rmsMiddle !== undefined && Math.abs(middle - rmsMiddle * factor) <= 0.05 * rmsMiddle * factor;
  const nearHundred = Math.abs(middle - 100) <= 2;
  if (nearRms === nearHundred) return undefined;
  const { position } = fundamental.column;
  if (nearHundred) {
    const why = say`no unit is written; the fundamental in column ${position} has the median ${middle}`;
    return { unit: "%", why };
  }
  return whole === "voltage"
    ? {
        unit: "V",
        why: say`no unit is written; the fundamental in column ${position} has the median ${middle}, like the voltage itself`,
      }
    : {
        unit: "A",
        why: say`no unit is written; the fundamental in column ${position} has the median ${middle}, like the current itself`,
      };
}

function median(samples: readonly string[]): number | undefined {
  const values = samples
    .map(Number)
    .filter(Number.isFinite)
    .sort((a, b) => a - b);
  return values[Math.floor(values.length / 2)];
}
