import { LogError } from "../../errors.js";
import type { GivenSetup } from "../../recording/setup.js";
import type { Duration, Instant } from "../../recording/time.js";
import { say, type Text } from "../../sentence.js";
import { intervalOf } from "../csv/interval.js";
import { corrected, correctionOf } from "./correction.js";
import type { Field, Fields } from "./fields.js";
import { QUANTITY_TYPE } from "./identifiers.js";
import type { PqdifObservation, PqdifValues } from "./model.js";
import { stampsOf, timesOf } from "./times.js";

/** Rows of one observation that several fields share, as stored: no zone is applied yet. */
export interface Rows {
  readonly stamps: Float64Array;
  readonly start: Instant;
  readonly interval: Duration | undefined;
}

/** What a field holds in one observation. */
export interface Piece {
  readonly rows: Rows;
  readonly values: Float64Array;
}

/** Reads the value logs of the observations of a file, as far as they are wanted. */
export class LogReader {
  readonly pieces = new Map<Field, Piece[]>();
  /** Bases of per unit values, as instances state them. */
  readonly bases = new Map<Field, Set<number>>();
  /** Why a field could not be read somewhere. */
  readonly problems = new Map<Field, Text>();
  readonly remarks = new Map<string, Text>();

  constructor(
    private readonly fields: Fields,
    private readonly wanted: (field: Field) => boolean,
    private readonly setup: GivenSetup,
  ) {}

  /** @returns the rows of its longest channel that is read */
  async take(observation: PqdifObservation, values: PqdifValues): Promise<number> {
    const known: Rows[] = [];
    let longest = 0;
    for (const [c, channel] of observation.channels.entries()) {
      const { quantityType, series } = channel.definition;
      if (quantityType !== QUANTITY_TYPE.VALUELOG && quantityType !== QUANTITY_TYPE.PHASOR) continue;
      const fields = series.flatMap((_, s) => {
        const field = this.fields.of(channel, s);
        return field === undefined || (channel.series[s]?.count ?? 0) === 0 || !this.wanted(field) ? [] : [field];
      });
      if (fields.length === 0) continue;
      try {
        longest = Math.max(longest, await this.takeChannel(observation, c, fields, values, known));
      } catch (error) {
        if (!(error instanceof LogError)) throw error;
        for (const field of fields) this.problems.set(field, say`it cannot be read: ${error.message}`);
      }
    }
    return longest;
  }

  private async takeChannel(
    observation: PqdifObservation,
    c: number,
    fields: readonly Field[],
    values: PqdifValues,
    known: Rows[],
  ): Promise<number> {
    const channel = observation.channels[c] as PqdifObservation["channels"][number];
    const nominal = observation.settings?.nominalFrequency ?? this.setup.nominalFrequency;
    const times = await timesOf(observation, c, values, nominal);
    if (!("seconds" in times)) {
      for (const field of fields) this.problems.set(field, times);
      return 0;
    }
    const stamps = stampsOf(times);
    for (const field of fields) {
      const { seriesIndex, series, definition } = field;
      const { factor, offset, skewS, applied } = correctionOf(
        observation.settings,
        channel.definitionIndex,
        definition,
        series.units,
        this.setup,
      );
      for (const text of applied) this.remarks.set(String(text), text);
      const stored = corrected(await values.values(c, seriesIndex), { factor, offset, skewS, applied });
      const length = Math.min(stamps.length, stored.length);
      if (stamps.length !== stored.length) {
        const text = say`${field.file}: "${field.header}" has other numbers of times and values; the shorter one counts`;
        this.remarks.set(String(text), text);
      }
      const rows = rowsOf(known, stamps.subarray(0, length), observation.start);
      this.pieces.set(field, [...(this.pieces.get(field) ?? []), { rows, values: stored.subarray(0, length) }]);
      const base = channel.series[seriesIndex]?.base;
      this.bases.set(field, (this.bases.get(field) ?? new Set()).add(base ?? Number.NaN));
    }
    return stamps.length;
  }
}

/** Rows with these stamps that the observation has already, else new ones. */
function rowsOf(known: Rows[], stamps: Float64Array, start: Instant): Rows {
  const same = known.find(
    (rows) => rows.stamps.length === stamps.length && rows.stamps.every((t, i) => t === stamps[i]),
  );
  if (same !== undefined) return same;
  const increasing = stamps.every((t, i) => i === 0 || t > (stamps[i - 1] as number));
  const rows = { stamps, start, interval: intervalOf(increasing ? stamps : new Float64Array(new Set(stamps)).sort()) };
  known.push(rows);
  return rows;
}
