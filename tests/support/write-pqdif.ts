import { pqdifPieces, type WritingForm } from "../../src/formats/pqdif/write.js";
import type { WrittenObservation, WrittenRecord } from "../../src/formats/pqdif/write-description.js";
import { Definitions, logObservation, type WrittenQuantity } from "../../src/formats/pqdif/write-recording.js";
import { keyText } from "../../src/recording/quantity.js";
import type { Instant } from "../../src/recording/time.js";
import type { LogColumn, LogTable } from "./log-table.js";

/** The table as a PQDIF log, and observations beside it; values as exact decimals, so that a CSV log holds the same. */
export async function pqdifOf(
  tables: readonly LogTable[],
  more: (definitions: Definitions) => readonly WrittenObservation[] = () => [],
  { scaled = false, ...form }: WritingForm & { readonly scaled?: boolean } = {},
): Promise<Uint8Array> {
  const definitions = new Definitions();
  const observations = [
    ...tables.map((table, t) =>
      logObservation(
        definitions,
        `intervals ${t + 1}`,
        table.starts[0] as Instant,
        table.interval,
        quantitiesOf(table, scaled),
        table.flagged,
      ),
    ),
    ...more(definitions),
  ];
  const first = observations[0]?.start ?? 0;
  // The times are UTC for sure where the distance to local time is stated.
  const dataSource = { name: "recorder (invented)", effective: first, utcToStandardS: 3600, channels: definitions.all };
  return bytesOf([{ dataSource }, ...observations.map((observation) => ({ observation }))], first, form);
}

export async function bytesOf(records: readonly WrittenRecord[], creation: Instant, form: WritingForm = {}) {
  const pieces: Uint8Array[] = [];
  for await (const piece of pqdifPieces({ fileName: "log.pqd", creation }, records, form)) pieces.push(piece.slice());
  return Uint8Array.from(Buffer.concat(pieces));
}

function quantitiesOf(table: LogTable, scaled: boolean): WrittenQuantity[] {
  const found = new Map<string, LogColumn[]>();
  for (const column of table.columns) found.set(keyText(column), [...(found.get(keyText(column)) ?? []), column]);
  return [...found.values()].map((columns) => {
    const values = (statistic: LogColumn["statistic"]) => columns.find((c) => c.statistic === statistic);
    const [mean, min, max] = [values("mean") as LogColumn, values("min"), values("max")];
    const { quantity, phase, order, decimals } = mean;
    return {
      quantity,
      phase,
      ...(order !== undefined && { order }),
      mean: valuesOf(mean),
      ...(min !== undefined && { min: valuesOf(min) }),
      ...(max !== undefined && { max: valuesOf(max) }),
      ...(scaled && { step: 10 ** -decimals }),
    };
  });
}

function valuesOf({ digits, decimals }: LogColumn): Float64Array {
  return digits.map((d) => Number((d / 10 ** decimals).toFixed(decimals)));
}
