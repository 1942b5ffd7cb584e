import { LogError } from "../../errors.js";
import type { TimeBase } from "../../recording/recording.js";
import type { GivenSetup } from "../../recording/setup.js";
import { MINUTE } from "../../recording/time.js";
import { TimeZone, type ZoneChange } from "../../recording/time-zone.js";
import { say, strung, type Text } from "../../sentence.js";
import { type DateOrder, dayOf, decideDateOrder } from "./date-order.js";
import type { Table } from "./read-table.js";
import { placeRepeatedHours, type RepeatedHours } from "./repeated-hour.js";
import { NAMED_MONTH, NO_OFFSET } from "./stamp-reader.js";

/** A table whose `store.times` have become instants: NaN for a row that could not be placed. */
export interface PlacedTable {
  readonly table: Table;
  /** What the stamps were read in. */
  readonly clock: TimeZone;
  /** Id of the zone for the report: the given one, also where the stamps or their header state their offset. */
  readonly zone: string;
  readonly zoneOrigin: TimeBase["zoneOrigin"];
  readonly label: "start" | "end";
  readonly labelOrigin: TimeBase["labelOrigin"];
  readonly stampForm: Text;
  readonly unplaced: number;
  readonly remarks: readonly Text[];
}

/**
 * Turns the stamps of all files of a recording into instants. Files that write their dates alike share the evidence
 * for the order of day and month, and files with the same columns share the evidence for a repeated hour.
 * A file whose newest row stands first is turned round.
 * @throws LogError for a date that does not exist, a stamp in the hour skipped in spring, an undecidable date order.
 * @throws UsageError for an unknown zone.
 */
export function placeStamps(tables: readonly Table[], setup: GivenSetup): PlacedTable[] {
  const orders = dateOrders(tables, setup);
  const repeated: RepeatedHours = new Map();
  const placed: PlacedTable[] = [];
  for (const table of tables) {
    const order = orders.get(table.dateForm);
    if (!isNumeric(table) && order !== undefined) addDates(table, order.order);
    const remarks = turnRound(table) ? [say`${table.file}: its newest row stands first; it was read from its end`] : [];
    const { clock, zone, zoneOrigin } = zonesOf(table, setup);
    const label = setup.intervalLabel ?? table.layout.label ?? "start";
    if (clock.changes.length > 0) toInstants(table, clock, label, repeated);
    else subtractOffsets(table, clock);
    placed.push({
      table,
      clock,
      zone,
      zoneOrigin,
      label,
      labelOrigin:
        setup.intervalLabel !== undefined ? "given" : table.layout.label !== undefined ? "inferred" : "assumed",
      stampForm: stampForm(table, order),
      unplaced: 0,
      remarks,
    });
  }
  const unplaced = placeRepeatedHours(repeated);
  return placed.map((p) => ({ ...p, unplaced: unplaced.get(p.table) ?? 0 }));
}

function isNumeric({ layout }: Table): boolean {
  return layout.stamps.kind === "number";
}

function isAbsolute({ layout, hasOffset }: Table): boolean {
  return hasOffset || (layout.stamps.kind === "number" && layout.stamps.scale !== "serial-days");
}

type Orders = ReadonlyMap<number, { readonly order: DateOrder; readonly reason: Text }>;

function dateOrders(tables: readonly Table[], setup: GivenSetup): Orders {
  const byForm = new Map<number, { file: string; form: number; dates: Set<number> }>();
  for (const table of tables) {
    if (isNumeric(table)) continue;
    const { file, store, dateForm: form } = table;
    const seen = byForm.get(form) ?? { file, form, dates: new Set() };
    byForm.set(form, seen);
    let last = -1;
    for (let i = 0; i < store.rows; i++) {
      const date = store.dates[i] as number;
      if (date !== last) seen.dates.add(date);
      last = date;
    }
  }
  return new Map([...byForm].map(([form, seen]) => [form, decideDateOrder(seen, setup.dateOrder)]));
}

/** Times of the day become local times: microseconds since 1970 as the clock showed them. */
function addDates({ file, store, dateForm }: Table, order: DateOrder): void {
  let [last, day] = [-1, 0];
  for (let i = 0; i < store.rows; i++) {
    const date = store.dates[i] as number;
    if (date !== last) {
      day = dayOf(date, dateForm, order) * 1000;
      last = date;
      if (Number.isNaN(day)) {
        const words = { dmy: "day, month, year", mdy: "month, day, year", ymd: "year, month, day" }[order];
        throw new LogError(
          file,
          `line ${store.lines[i]}`,
          `there is no such date, read as ${words}; correct it or delete the row`,
        );
      }
    }
    store.times[i] = (store.times[i] as number) + day;
  }
}

/** Puts a file whose rows mostly step back in time into the other order. */
function turnRound({ store }: Table): boolean {
  const { rows, times, lines, flagged, offsets, values } = store;
  let balance = 0;
  for (let i = 1; i < rows; i++) balance += Math.sign((times[i] as number) - (times[i - 1] as number));
  if (balance >= -rows / 2) return false;
  for (const array of [times, lines, flagged, offsets, ...values]) array.subarray(0, rows).reverse();
  return true;
}

function zonesOf(table: Table, setup: GivenSetup): Pick<PlacedTable, "clock" | "zone" | "zoneOrigin"> {
  const { store, layout } = table;
  const stated = isAbsolute(table) ? "UTC" : layout.zone;
  const times = store.times.subarray(0, store.rows);
  const [from, to] = [times.reduce((a, b) => Math.min(a, b)), times.reduce((a, b) => Math.max(a, b))];
  const given = setup.zone === undefined ? undefined : TimeZone.open(setup.zone, from, to);
  const clock = stated === undefined && given !== undefined ? given : TimeZone.open(stated ?? "UTC", from, to);
  const zoneOrigin = given !== undefined ? "given" : stated !== undefined ? "stamps" : "assumed";
  return { clock, zone: (given ?? clock).id, zoneOrigin };
}

function subtractOffsets(table: Table, zone: TimeZone): void {
  const { file, store, hasOffset } = table;
  const fixed = zone.offsetAt(store.times[0] as number);
  for (let i = 0; i < store.rows; i++) {
    if (hasOffset && store.offsets[i] === NO_OFFSET) {
      throw new LogError(file, `line ${store.lines[i]}`, "the stamp names no offset from UTC, unlike those above it");
    }
    const offset = hasOffset ? (store.offsets[i] as number) * MINUTE : fixed;
    store.times[i] = (store.times[i] as number) - offset;
  }
}

/** Local times become instants; rows in a repeated hour stay local and are noted for later. */
function toInstants(table: Table, zone: TimeZone, label: "start" | "end", repeated: RepeatedHours): void {
  const { file, store } = table;
  for (let i = 0; i < store.rows; i++) {
    const local = store.times[i] as number;
    const [earlier, later] = [zone.earlierInstant(local), zone.laterInstant(local)];
    if (earlier === later) store.times[i] = earlier;
    else if (Number.isNaN(earlier)) {
      // The end of the last interval before the clock goes forward may be written as the time it would have been.
      const change = zone.changes.find(({ at, before }) => at + before === local);
      if (label !== "end" || change === undefined) {
        const hint = "the log's clock seems not to follow summer time; give its fixed offset, such as --zone +01:00";
        const what = `in ${zone.id} the clock skipped this hour: ${hint}`;
        throw new LogError(file, `line ${store.lines[i]}`, what);
      }
      store.times[i] = change.at;
    } else {
      const change = zone.changes.find(({ at }) => earlier < at && later >= at) as ZoneChange;
      const parts = repeated.get(change.at) ?? new Map();
      repeated.set(change.at, parts);
      const part = parts.get(table) ?? { table, zone, rows: [] };
      parts.set(table, part);
      part.rows.push(i);
    }
  }
}

function stampForm(
  { layout, twelveHour, hasOffset, dateForm }: Table,
  order: { order: DateOrder; reason: Text } | undefined,
): Text {
  if (layout.stamps.kind === "number") {
    return {
      "epoch-s": say`seconds since 1970-01-01 UTC`,
      "epoch-ms": say`milliseconds since 1970-01-01 UTC`,
      "serial-days": say`days since 1899-12-30, as spreadsheets count them`,
    }[layout.stamps.scale];
  }
  const mark = Math.floor(dateForm / 4);
  const numbers = [...(order?.order ?? "ymd")].join(mark === 0 ? "" : String.fromCharCode(mark));
  const date = dateForm === NAMED_MONTH ? say`day, month, year` : numbers;
  const clock = twelveHour ? say`12-hour clock` : "hh:mm";
  const parts = [
    hasOffset ? say`${date} ${clock} with offset from UTC` : strung([date, clock], " "),
    ...(layout.stamps.kind === "text" ? [] : [say`date and time in two columns`]),
    ...(order === undefined ? [] : [order.reason]),
    ...(!hasOffset && layout.zone !== undefined ? [say`in ${layout.zone} by the header`] : []),
  ];
  return strung(parts, ", ");
}
