import type { Ratio } from "../../decimal.js";
import { LogError, UsageError } from "../../errors.js";
import { keyText, QUANTITIES, type Unit } from "../../recording/quantity.js";
import type { ColumnMeaning } from "../../recording/recording.js";
import type { GivenSetup } from "../../recording/setup.js";
import { Sentence, say, strung, type Text } from "../../sentence.js";
import { type Draft, draftColumn, type SeriesDraft } from "./recognise-columns-draft.js";
import { LogHeaders } from "./recognise-columns-log.js";
import { placeUnnamedPhases } from "./recognise-columns-phases.js";
import { type Scaled, scaleSeries } from "./recognise-columns-scale.js";
import { columnName, entriesByColumn, setupLine } from "./recognise-columns-setup.js";

/** What the log says about one column. */
export interface ColumnText {
  /** 1-based. */
  readonly position: number;
  /** Cells of two-row headers joined by a space. */
  readonly header: string;
  /** From a units row. */
  readonly unit?: string;
  /** Some cell texts that are not missing, decimal point ".", without thousands separators. */
  readonly samples: readonly string[];
}

export interface RecognisedColumn {
  readonly position: number;
  readonly header: string;
  /** Undefined: the column is not used, `reason` says why. */
  readonly meaning?: ColumnMeaning;
  /** The column marks intervals as flagged. */
  readonly flag?: true;
  readonly reason: Text;
  /** Stored value = written value × scale, in `unit`. Given with `meaning`. */
  readonly scale?: Ratio;
  readonly unit?: Unit;
}

/**
 * What the columns of a log hold, by what their headers say (in English, German, French, Italian or Spanish words of
 * the trade, or symbols of IEC 61000-4-30 and EN 50160), by what their neighbours and units say, and by the setup,
 * whose entries override or complete the rest part by part. A column whose header contradicts itself or does not say
 * enough is not used, and its `reason` says what was missing. Harmonic voltages and currents may come out in % of the
 * fundamental or in V and A (`unit`).
 * @throws UsageError where an entry of the setup names no column, is incomplete or does not fit, and where the declared
 * voltage is needed but not given.
 * @throws LogError where the unit of a voltage cannot be told, and where two columns hold the same thing.
 */
export function recogniseColumns(
  file: string,
  columns: readonly ColumnText[],
  setup: GivenSetup,
): readonly RecognisedColumn[] {
  const log = new LogHeaders(columns);
  const entries = entriesByColumn(file, columns, setup.columns ?? []);
  const own = columns.map((column, index) => draftColumn(file, column, index, log, entries.get(column)));
  const drafts = placeUnnamedPhases(own, setup);
  const series = drafts.filter((draft) => draft.kind === "series");
  const scales = scaleSeries(file, series, setup);
  const recognised = oneColumnPerPlace(
    file,
    drafts.map((draft) => finished(draft, scales)),
  );
  const entered = [...entries].filter(([, entry]) => !entry.ignore).map(([column]) => column.position);
  refuseUselessEntries(file, recognised, new Set(entered));
  return recognised;
}

function finished(draft: Draft, scales: ReadonlyMap<SeriesDraft, Scaled | Sentence>): RecognisedColumn {
  const { position, header } = draft.column;
  if (draft.kind === "unused") return { position, header, reason: draft.reason };
  if (draft.kind === "flag") return { position, header, flag: true, reason: draft.reason };
  const scaled = scales.get(draft);
  const { quantity, phase, order, statistic } = draft;
  if (scaled instanceof Sentence) return { position, header, reason: scaled };
  if (scaled === undefined || phase === undefined) throw new Error(`${columnName(draft.column)} was left open`);
  return {
    position,
    header,
    meaning: { quantity, phase, ...(order === undefined ? {} : { order }), statistic, writtenUnit: scaled.writtenUnit },
    reason: strung([...draft.why, draft.whyStatistic, ...scaled.why], "; "),
    scale: scaled.scale,
    unit: scaled.unit,
  };
}

/** Of harmonics written both in % and in V or A the quantity's own unit is used; any other double is refused. */
function oneColumnPerPlace(file: string, columns: readonly RecognisedColumn[]): readonly RecognisedColumn[] {
  const places = new Map<string, RecognisedColumn>();
  const placeOf = ({ meaning }: RecognisedColumn) => meaning && `${keyText(meaning)}, ${meaning.statistic}`;
  for (const column of columns) {
    const place = placeOf(column);
    if (place === undefined || !column.meaning) continue;
    const other = places.get(place);
    if (other && other.unit === column.unit) {
      throw new LogError(
        file,
        `columns ${other.position} ("${other.header}") and ${column.position} ("${column.header}")`,
        `both hold ${place}; leave one out in the setup, as in ${setupLine([column], "ignore: true", columns)}, or say there what it holds (quantity, phase, order, statistic, unit)`,
      );
    }
    if (!other || column.unit === QUANTITIES[column.meaning.quantity].unit) places.set(place, column);
  }
  return columns.map((column) => {
    const used = places.get(placeOf(column) ?? "");
    if (!used || used === column) return column;
    const { position, header } = column;
    return {
      position,
      header,
      reason: say`column ${used.position} holds the same in ${used.unit ?? ""}, which is used`,
    };
  });
}

function refuseUselessEntries(file: string, columns: readonly RecognisedColumn[], given: ReadonlySet<number>): void {
  const useless = columns.find(({ position, meaning, flag }) => given.has(position) && !meaning && !flag);
  if (!useless) return;
  throw new UsageError(
    `the setup has an entry under columns: for ${columnName(useless)} of ${file}, but it still cannot be used: ${useless.reason}; complete the entry (quantity, phase, order, statistic, unit) or take it out`,
  );
}
