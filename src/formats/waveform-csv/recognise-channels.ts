import { type Ratio, ratio, times } from "../../decimal.js";
import { UsageError } from "../../errors.js";
import { type Phase, QUANTITIES } from "../../recording/quantity.js";
import type { ChannelSetup, GivenSetup } from "../../recording/setup.js";
import { Sentence, say, strung, type Text } from "../../sentence.js";
import type { ColumnText } from "../csv/recognise-columns.js";
import { type Draft, draftColumn, type SeriesDraft } from "../csv/recognise-columns-draft.js";
import { LogHeaders } from "../csv/recognise-columns-log.js";
import { placeUnnamedPhases } from "../csv/recognise-columns-phases.js";
import { STATISTICS } from "../csv/recognise-columns-place.js";
import { transformerRatio } from "../csv/recognise-columns-scale.js";
import { shown } from "../csv/records.js";
import { plain } from "../csv/vocabulary.js";
import { channelText, type NamedChannel } from "../waveform/channel-entries.js";
import type { ChannelUse } from "../waveform/doubles.js";

/** A column of samples, named as its header names it. */
export interface SampleChannel extends ChannelUse {
  /** Volts or amperes at the primary side per written unit, negative where the channel is inverted. */
  readonly scale: Ratio;
  readonly writtenUnit: string;
}

/** Words for what every column of samples is. */
const SAMPLED =
  /(?<!\p{L})(?:instantaneous|inst|momentary|momentan(?:wert)?|instantanee?|istantane[ao]|instantane[ao]|samples?|sampled|waveform|wave|wellenform|abtastwerte?|forme d'onde|forma d[ei] onda|forma d'onda)(?!\p{L})/giu;
/** "rms" and its like, also behind a symbol: "Urms", "U_eff", "true r.m.s.". */
const RMS = /(?<!\p{L})[uvi]?(?:t?rms|eff)(?!\p{Ll})|effekti?v|effica(?:ce|ci|z)|r\.\s?m\.\s?s/iu;
/** A root mean square of the first samples within this is a voltage in V. */
const [LEAST_VOLTS, MOST_VOLTS] = [80, 1000];
const REVERSED: Readonly<Record<string, Phase>> = { "21": "L12", "32": "L23", "13": "L31" };

/**
 * What the columns of samples hold, by what their headers say in the words that headers of logged values have, and by
 * the setup, whose entries override the rest part by part. What is no sampled voltage or current, contradicts itself or
 * does not say enough is left out with the reason.
 * @param levels root mean square of the first numbers of each column
 * @throws UsageError where an entry of the setup is not enough to use its column
 */
export function recogniseChannels(
  file: string,
  columns: readonly ColumnText[],
  levels: readonly number[],
  entries: ReadonlyMap<NamedChannel, ChannelSetup>,
  setup: GivenSetup,
): SampleChannel[] {
  const entryOf = new Map([...entries].map(([{ position }, entry]) => [position, entry]));
  const texts = columns.map((column) => ({ ...column, header: plain(column.header).replace(SAMPLED, " ") }));
  const log = new LogHeaders(texts);
  const drafts = texts.map((column, i) => draft(file, column, i, log, entryOf.get(column.position)));
  return placeUnnamedPhases(drafts, setup).map((placed, i) => {
    const column = columns[i] as ColumnText;
    const entry = entryOf.get(column.position);
    const channel = { position: column.position, name: column.header };
    const use = { channel, ...useOf(placed, levels[i] as number, entry, setup) };
    if (entry !== undefined && !entry.ignore && use.meaning === undefined) {
      throw new UsageError(
        `the setup has an entry under channels: for ${channelText(channel)} of ${file}, but it still cannot be used: ${use.reason}; complete the entry (quantity, phase) or take it out`,
      );
    }
    return use;
  });
}

function draft(
  file: string,
  column: ColumnText,
  index: number,
  log: LogHeaders,
  entry: ChannelSetup | undefined,
): Draft {
  const unused = (reason: Text): Draft => ({ kind: "unused", column, reason });
  if (entry?.ignore) return unused(say`the setup leaves it out`);
  const isRms = RMS.test(column.header) || RMS.test(column.unit ?? "");
  if (isRms && entry?.quantity === undefined) return unused(say`an r.m.s. value is no waveform`);
  const { quantity, phase } = entry ?? {};
  if (quantity === "current" && phase?.length === 3) return unused(say`a current between phases is not used`);
  const parts = { ...(quantity !== undefined && { quantity }), ...(phase !== undefined && { phase }) };
  return draftColumn(file, column, index, log, entry && { column: column.position, ...parts });
}

type Use = Omit<SampleChannel, "channel">;

function useOf(draft: Draft, level: number, entry: ChannelSetup | undefined, setup: GivenSetup): Use {
  const unused = (reason: Text): Use => ({ stated: false, reason, scale: ratio(1), writtenUnit: "" });
  if (draft.kind === "unused") return unused(draft.reason);
  if (draft.kind === "flag") return unused(say`flags are not used with samples`);
  const { quantity, phase, evidence, statistic } = draft;
  if (quantity !== "voltage" && quantity !== "current") {
    return unused(say`${QUANTITIES[quantity].name}: no sampled voltage or current`);
  }
  if (statistic !== "mean" || evidence.senses.has("mean")) {
    return unused(
      say`${evidence.senses.get(statistic) ?? STATISTICS[statistic]}: a mean, minimum or maximum is no waveform`,
    );
  }
  if (phase === undefined || phase === "system") return unused(say`it does not say which phase`);
  const stated = entry?.quantity !== undefined || entry?.phase !== undefined;
  const unit = unitOf(draft, quantity, level, entry?.quantity !== undefined);
  if (unit instanceof Sentence) return unused(unit);
  const turned = entry?.inverted === undefined && isReversed(draft, phase);
  const given = quantity === "voltage" ? setup.voltageRatio : setup.currentRatio;
  const inverted = (entry?.inverted ?? false) !== turned;
  const why: Text[] = [...draft.why, unit.why];
  if (turned) why.push(say`written the other way round, so its sign is turned`);
  if (entry?.inverted) why.push(say`inverted by the setup`);
  if (given !== undefined) {
    why.push(quantity === "voltage" ? say`times the voltage ratio ${given}` : say`times the current ratio ${given}`);
  }
  const scale = given === undefined ? unit.factor : times(unit.factor, transformerRatio(given));
  return {
    meaning: { quantity, phase },
    stated,
    reason: strung(why, "; "),
    scale: inverted ? times(scale, ratio(-1)) : scale,
    writtenUnit: unit.written,
  };
}

function unitOf(
  { unit, column }: SeriesDraft,
  quantity: "voltage" | "current",
  level: number,
  stated: boolean,
): { factor: Ratio; written: string; why: Text } | Sentence {
  const own = quantity === "voltage" ? "V" : "A";
  const value = unit?.value;
  if (unit !== undefined && value?.kind === "unit" && value.unit === own) {
    return { factor: value.factor, written: value.text, why: say`${value.text}: ${unit.said}` };
  }
  if (unit !== undefined) {
    return quantity === "voltage"
      ? say`the unit ${unit.value.text} (${unit.said}) is none of a sampled voltage`
      : say`the unit ${unit.value.text} (${unit.said}) is none of a sampled current`;
  }
  const one = { factor: ratio(1), written: own };
  if (stated) return { ...one, why: say`no unit is stated, taken as ${own}` };
  if (quantity === "voltage" && level >= LEAST_VOLTS && level <= MOST_VOLTS) {
    const rms = Number(level.toPrecision(3));
    return {
      ...one,
      why: say`V: no unit is written; the r.m.s. value ${rms} of the first samples lies between 80 and 1000`,
    };
  }
  return say`no unit is stated for ${shown(column.header)}; where it is ${own}, say quantity: ${quantity} in the setup under channels:`;
}

/** The header names this pair of phases the other way round: 2-1, 3-2 or 1-3. */
function isReversed({ evidence }: SeriesDraft, phase: Phase): boolean {
  const said = [...evidence.phases.map((p) => String(p.said)), ...evidence.numbers.map((n) => n.digits)];
  return said.some((text) => {
    const conductors = text.match(/[123]|[ABCRST]/gi) ?? [];
    const order = conductors.slice(-2).map((c) => (/\d/.test(c) ? c : 1 + ("ABCRST".indexOf(c.toUpperCase()) % 3)));
    return REVERSED[order.join("")] === phase;
  });
}
