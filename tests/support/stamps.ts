import { Temporal } from "temporal-polyfill";
import { type Instant, MINUTE, SECOND } from "../../src/recording/time.js";
import type { StampForm } from "./dialect.js";

export interface StampWriter {
  /** True where the cells are numbers rather than text. */
  readonly numeric: boolean;
  cells(instant: Instant): readonly string[];
}

/** Days from the spreadsheets' day 0 (1899-12-30) to 1970-01-01. */
const SERIAL_DAY_OF_EPOCH = 25569;

/** Writes whole-second instants as stamps of the given form, local to `zone` where the form is local. */
export function stampWriter(form: StampForm, zone: string, decimal: "." | ","): StampWriter {
  const local = localClock(zone);
  const text = (cells: (instant: Instant) => readonly string[]): StampWriter => ({ numeric: false, cells });
  const number = (cells: (instant: Instant) => readonly string[]): StampWriter => ({ numeric: true, cells });
  switch (form) {
    case "iso-offset":
      return text((t) => [`${isoLocal(local(t))}${offsetText(local(t).offsetMinutes)}`]);
    case "iso-utc":
      return text((t) => [new Date(t / 1000).toISOString().replace(".000", "")]);
    case "iso-local":
      return text((t) => [isoLocal(local(t))]);
    case "d.m.y":
      return text((t) => [dayFirst(local(t), ".").join(" ")]);
    case "d/m/y":
      return text((t) => [dayFirst(local(t), "/").join(" ")]);
    case "m/d/y 12-hour":
      return text((t) => [monthFirst(local(t))]);
    case "d.m.y in two columns":
      return text((t) => dayFirst(local(t), "."));
    case "epoch-s":
      return number((t) => [String(t / SECOND)]);
    case "epoch-ms":
      return number((t) => [String(t / 1000)]);
    case "serial-days":
      return number((t) => [serialDays(local(t)).replace(".", decimal)]);
  }
}

interface Local {
  /** Fields of the local clock, read as if they were UTC. */
  readonly clock: Date;
  readonly offsetMinutes: number;
}

/** The local clock of a zone. Offsets change on quarter hours only, so one look-up per quarter is enough. */
function localClock(zone: string): (instant: Instant) => Local {
  const quarter = 15 * MINUTE;
  const offsets = new Map<number, number>();
  return (instant) => {
    const key = Math.floor(instant / quarter);
    let offsetMinutes = offsets.get(key);
    if (offsetMinutes === undefined) {
      const at = Temporal.Instant.fromEpochMilliseconds((key * quarter) / 1000).toZonedDateTimeISO(zone);
      offsetMinutes = at.offsetNanoseconds / 60e9;
      offsets.set(key, offsetMinutes);
    }
    return { clock: new Date((instant + offsetMinutes * MINUTE) / 1000), offsetMinutes };
  };
}

const two = (n: number) => String(n).padStart(2, "0");

function timeOfDay({ clock }: Local): string {
  return [clock.getUTCHours(), clock.getUTCMinutes(), clock.getUTCSeconds()].map(two).join(":");
}

function isoLocal(local: Local): string {
  return `${local.clock.toISOString().slice(0, 10)}T${timeOfDay(local)}`;
}

function offsetText(minutes: number): string {
  const size = Math.abs(minutes);
  return `${minutes < 0 ? "-" : "+"}${two(Math.floor(size / 60))}:${two(size % 60)}`;
}

function dayFirst(local: Local, separator: string): [string, string] {
  const { clock } = local;
  const date = [two(clock.getUTCDate()), two(clock.getUTCMonth() + 1), clock.getUTCFullYear()].join(separator);
  return [date, timeOfDay(local)];
}

function monthFirst({ clock }: Local): string {
  const hour = clock.getUTCHours();
  const date = `${clock.getUTCMonth() + 1}/${clock.getUTCDate()}/${clock.getUTCFullYear()}`;
  return `${date} ${hour % 12 || 12}:${two(clock.getUTCMinutes())}:${two(clock.getUTCSeconds())} ${hour < 12 ? "AM" : "PM"}`;
}

/** Days since 1899-12-30 to ten places (9 µs), cut from whole numbers so that no binary rounding shows. */
function serialDays({ clock }: Local): string {
  const seconds = clock.getTime() / 1000;
  const day = Math.floor(seconds / 86400);
  const fraction = Math.round(((seconds - day * 86400) / 86400) * 1e10);
  return `${day + SERIAL_DAY_OF_EPOCH}.${String(fraction).padStart(10, "0")}`;
}
