import type { LoggedEvent } from "../recording/logged-event.js";
import type { ColumnReading, ObservationReading } from "../recording/recording.js";
import { isoUtc } from "../recording/time.js";
import { say, type Text } from "../sentence.js";

/** Long lists of an inspection for a terminal: what differs in one respect only is one line. `--json` has all. */

/** As many lines of one kind are told apart. */
const FEW = 3;

/** One line per column; the orders of a spectrum are put together, and so are columns left out for one reason. */
export function columnLines(columns: readonly ColumnReading[]): string[] {
  return grouped(columns, (c) =>
    c.meaning === undefined
      ? `${c.file} ${c.use} ${c.reason}`
      : c.meaning.order === undefined
        ? `${c.file} ${c.position}`
        : JSON.stringify([c.file, { ...c.meaning, order: 0 }, withoutOrder(c.reason, c.meaning.order)]),
  ).flatMap((group) => (group.length <= FEW ? group.map(columnLine) : [columnsLine(group)]));
}

/** Reasons that differ in the number of the order only are one; the digit of a phase (L2) stays. */
function withoutOrder(reason: ColumnReading["reason"], order: number): string {
  return String(reason).replaceAll(new RegExp(`(?<![\\dL])0*${order}(?!\\d)`, "g"), "#");
}

function columnLine(c: ColumnReading): string {
  return `${c.file} column ${c.position} "${c.header}" → ${takenFor(c)} (${c.reason})`;
}

function columnsLine(group: readonly ColumnReading[]): string {
  const [first, last] = [group[0] as ColumnReading, group.at(-1) as ColumnReading];
  const orders = group.flatMap(({ meaning }) => meaning?.order ?? []);
  const which =
    orders.length === 0 ? takenFor(first) : takenFor(first, `orders ${Math.min(...orders)} to ${Math.max(...orders)}`);
  const names = `"${first.header}" … "${last.header}"`;
  return `${first.file} columns ${first.position} to ${last.position} (${group.length}) ${names} → ${which} (${first.reason})`;
}

function takenFor({ meaning: m, use }: ColumnReading, orders?: string): string {
  if (m === undefined) return use ?? "not used";
  const order = m.order === undefined ? "" : ` ${orders ?? `order ${m.order}`}`;
  return `${m.quantity}${m.phase === "system" ? "" : ` ${m.phase}`}${order}, ${m.statistic}, ${m.writtenUnit}`;
}

/** One line per observation; many of one kind are one line from the first to the last. */
export function observationLines(observations: readonly ObservationReading[]): Text[] {
  const kind = (o: ObservationReading) => `${o.file} ${o.trigger} ${o.category} ${o.use} ${o.channels}`;
  return grouped(observations, kind).flatMap((group) => {
    const [first, last] = [group[0] as ObservationReading, group.at(-1) as ObservationReading];
    if (group.length <= FEW) return group.map(observationLine);
    const rows = group.reduce((sum, o) => sum + o.rows, 0);
    return [
      say`${group.length} observations in ${first.file}, "${first.name}" … "${last.name}", from ${isoUtc(first.start)} to ${isoUtc(last.start)}, ${first.trigger}${categoryText(first)}, channels: ${first.channels} each, rows: ${rows} in all → ${first.use}`,
    ];
  });
}

function observationLine(o: ObservationReading): Text {
  const at =
    o.triggered === undefined ? say`${isoUtc(o.start)}` : say`${isoUtc(o.start)} (trigger ${isoUtc(o.triggered)})`;
  return say`${o.file} "${o.name}" at ${at}, ${o.trigger}${categoryText(o)}, channels: ${o.channels}, rows: ${o.rows} → ${o.use}`;
}

function categoryText({ category }: ObservationReading): Text {
  return category === undefined ? "" : say`, category "${category}"`;
}

/** As many events of the recorder are listed. */
const EVENTS = 20;

export function eventLines(events: readonly LoggedEvent[]): Text[] {
  const rest = events.length - EVENTS;
  return [...events.slice(0, EVENTS).map(eventLine), ...(rest > 0 ? [say`and ${rest} more`] : [])];
}

function eventLine({ file, place, category, kind, phases, start, durationS, magnitude, doubt }: LoggedEvent): Text {
  const parts = [
    kind ?? "no kind",
    ...(phases.length > 0 ? [phases.join(", ")] : []),
    ...(magnitude === undefined ? [] : [`${Number(magnitude.value.toPrecision(5))} ${magnitude.unit}`]),
    ...(durationS === undefined ? [] : [`${Number(durationS.toPrecision(5))} s`]),
    ...(category === undefined ? [] : [`"${category}"`]),
  ].join(", ");
  const sure = doubt === undefined ? "" : say`: ${doubt}`;
  return say`${isoUtc(start)} ${parts} (${file}, ${place})${sure}`;
}

function grouped<T>(all: readonly T[], keyOf: (one: T) => string): T[][] {
  const groups = new Map<string, T[]>();
  for (const one of all) groups.set(keyOf(one), [...(groups.get(keyOf(one)) ?? []), one]);
  return [...groups.values()];
}
