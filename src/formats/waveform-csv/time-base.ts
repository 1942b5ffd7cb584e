import { LogError, UsageError } from "../../errors.js";
import type { TimeBase } from "../../recording/recording.js";
import type { GivenSetup } from "../../recording/setup.js";
import { isoUtc } from "../../recording/time.js";
import { TimeZone } from "../../recording/time-zone.js";
import { say, sortedOnce, strung, type Text } from "../../sentence.js";
import { type DecidedOrder, dayOf, decideDateOrder } from "../csv/date-order.js";
import { SAMPLE_TIMES } from "../waveform/sample-times.js";
import { MICROS } from "./find-times.js";
import type { SampleTable } from "./sample-table.js";
import type { ScannedTable } from "./scan.js";
import { givenInstant, StampClock } from "./stamp-clock.js";

/** How the times of all files of a recording are read. */
export interface Clocks {
  /** By table; undefined where its times are no stamps. */
  readonly clocks: readonly (StampClock | undefined)[];
  readonly timeBase: TimeBase;
  /** In which the stamps are read. */
  readonly zone: TimeZone | undefined;
  /** The files say when they were recorded. */
  readonly absolute: boolean;
}

/**
 * @throws LogError where the order of day and month cannot be told, or only some of the files carry dates
 * @throws UsageError for an unknown zone, or a stated start beside dates
 */
export function clocksOf(tables: readonly SampleTable[], setup: GivenSetup): Clocks {
  const [first] = tables as [SampleTable];
  const absolute = isAbsolute(first);
  const odd = tables.find((table) => isAbsolute(table) !== absolute);
  if (odd !== undefined) {
    const [own, other] = absolute ? ["no dates", "has"] : ["dates", "has none"];
    throw new LogError(odd.file.name, undefined, `it has ${own} while ${first.file.name} ${other}: assess them apart`);
  }
  if (absolute && setup.start !== undefined) {
    throw new UsageError(`the setup states start, but ${first.file.name} carries dates of its own; take start out`);
  }
  const orders = ordersOf(tables, setup);
  const zones = tables.map((table) => zoneOf(table, setup, orders));
  const clocks = tables.map(({ file, stamps }, i) => {
    const order = stamps && orders.get(stamps.dates.form);
    return order && new StampClock(file.name, stamps.dates.form, order.order, zones[i] as TimeZone);
  });
  const given = setup.zone === undefined ? undefined : TimeZone.open(setup.zone, 0, 0).id;
  const carried = absolute && tables.every((table) => ownZone(table) !== undefined);
  const stated = given !== undefined || /(Z|[+-]\d\d:?\d\d)$/.test(setup.start ?? "");
  return {
    clocks,
    zone: zones.find((zone) => zone !== undefined),
    absolute,
    timeBase: {
      zone: given ?? zones.find((zone) => zone !== undefined)?.id ?? "UTC",
      zoneOrigin: stated ? "given" : carried ? "stamps" : "assumed",
      intervalLabel: "start",
      labelOrigin: "inferred",
      labelReason: SAMPLE_TIMES,
      stampForm: strung(sortedOnce(tables.map((table) => formOf(table, orders))), "; "),
    },
  };
}

/**
 * Instant of the first sample of each file. Where the files do not say it, the first of all samples was taken at the
 * start that the setup states, or else is put on 1970-01-01T00:00Z, which the remark says.
 */
export function startsOf(scans: readonly ScannedTable[], absolute: boolean, setup: GivenSetup) {
  if (absolute) return { starts: scans.map(({ first }) => Math.round(first)), remarks: [] };
  const begin = Math.min(...scans.map(({ first }) => first));
  const base = setup.start === undefined ? 0 : givenInstant(setup.start, setup.zone ?? "UTC");
  const remarks = [
    setup.start === undefined
      ? say`The log does not say when it was recorded: its first sample is put on ${isoUtc(0)}, so all times count from there, and ten-minute intervals do not begin on the ten minutes of a clock (setup: start states it).`
      : say`The log does not say when it was recorded; the start is that of the setup, ${setup.start}.`,
  ];
  return { starts: scans.map(({ first }) => base + Math.round(first - begin)), remarks };
}

function isAbsolute({ layout: { stamps } }: SampleTable): boolean {
  return stamps.kind === "stamps" || (stamps.kind === "numbers" && stamps.epoch);
}

type Orders = ReadonlyMap<number, DecidedOrder>;

/** Files that write their dates alike share the evidence. */
function ordersOf(tables: readonly SampleTable[], setup: GivenSetup): Orders {
  const seen = new Map<number, { file: string; form: number; dates: Set<number> }>();
  for (const { stamps } of tables) {
    if (stamps === undefined) continue;
    const { file, form, dates } = stamps.dates;
    const own = seen.get(form) ?? { file, form, dates: new Set() };
    seen.set(form, own);
    for (const date of dates) own.dates.add(date);
  }
  return new Map([...seen].map(([form, dates]) => [form, decideDateOrder(dates, setup.dateOrder)]));
}

/** The zone that the stamps or their header name. */
function ownZone({ layout, stamps }: SampleTable): string | undefined {
  return stamps === undefined || stamps.hasOffset ? "UTC" : layout.zone;
}

function zoneOf(table: SampleTable, setup: GivenSetup, orders: Orders): TimeZone | undefined {
  const { stamps } = table;
  if (stamps === undefined) return undefined;
  const order = orders.get(stamps.dates.form) as DecidedOrder;
  const days = [...stamps.dates.dates].map((date) => dayOf(date, stamps.dates.form, order.order) * 1000);
  const real = days.filter((day) => !Number.isNaN(day));
  if (real.length === 0) {
    throw new LogError(table.file.name, `line ${table.layout.dataLine}`, "there is no such date");
  }
  return TimeZone.open(ownZone(table) ?? setup.zone ?? "UTC", Math.min(...real), Math.max(...real));
}

function formOf({ layout, stamps }: SampleTable, orders: Orders): Text {
  const times = layout.stamps;
  if (times.kind === "none") return say`no times: the rows follow each other evenly`;
  if (times.kind === "count") return say`the numbers of the samples`;
  if (times.kind === "numbers") {
    const unit = { s: say`seconds`, ms: say`milliseconds`, us: say`microseconds`, ns: say`nanoseconds` }[times.unit];
    return times.epoch ? say`${unit} since 1970-01-01 UTC` : say`${unit} from the beginning of the recording`;
  }
  const order = stamps && orders.get(stamps.dates.form);
  const mark = Math.floor((stamps?.dates.form ?? 0) / 4);
  const date = [...(order?.order ?? "ymd")].join(mark === 0 ? "" : String.fromCharCode(mark));
  const steps = Number(((stamps?.place ?? 0) / MICROS.s).toPrecision(6));
  const reason = order?.reason ?? "";
  return stamps?.hasOffset
    ? say`${date} hh:mm:ss in steps of ${steps} s with offset from UTC, ${reason}`
    : say`${date} hh:mm:ss in steps of ${steps} s, ${reason}`;
}
