import { LogError } from "../../errors.js";
import type { TimeBase } from "../../recording/recording.js";
import type { GivenSetup } from "../../recording/setup.js";
import { type Instant, isoUtc } from "../../recording/time.js";
import { TimeZone, type ZoneChange } from "../../recording/time-zone.js";
import { say, type Text } from "../../sentence.js";
import { JITTER } from "../csv/interval.js";
import { placeRepeatedHours, type RepeatedHours } from "../csv/repeated-hour.js";
import type { PqdifDataSource } from "./model.js";
import type { RawTable } from "./tables.js";

/** What the stored times of a recording are read in. */
export interface Clock {
  readonly zone: TimeZone;
  /** For the report. */
  readonly id: string;
  readonly origin: TimeBase["zoneOrigin"];
  readonly reason?: Text;
  readonly remarks: readonly Text[];
}

/**
 * The zone of the stored times. IEEE 1159.3 says UTC, and many recorders write local time all the same. They are UTC for
 * sure where all data sources state their distance to local time or name UTC as their zone; else they are taken to be in
 * the zone of the setup; without one they are read as UTC, and the recording says so.
 */
export function clockOf(sources: readonly PqdifDataSource[], setup: GivenSetup, from: Instant, to: Instant): Clock {
  const isUtc = ({ utcToStandardS, timeZone }: PqdifDataSource) =>
    utcToStandardS !== undefined || /^\s*(utc|gmt|z)\s*$/i.test(timeZone ?? "");
  const utc = TimeZone.open("UTC", from, to);
  const given = setup.zone === undefined ? undefined : TimeZone.open(setup.zone, from, to);
  const zones = [...new Set(sources.flatMap(({ timeZone }) => timeZone?.trim() || []))];
  if (sources.length > 0 && sources.every(isUtc)) {
    const reason = say`the file states how far its times are from local time, or UTC as its zone`;
    const zone =
      given === undefined
        ? { id: "UTC", origin: "stamps" as const, reason }
        : { id: given.id, origin: "given" as const };
    return { zone: utc, ...zone, remarks: [] };
  }
  if (given !== undefined) return { zone: given, id: given.id, origin: "given", remarks: [] };
  const named = zones.map(
    (name) =>
      say`The file names the time zone "${name}", but not whether its times are in it or in UTC; they are read as UTC. If they are local times, give the zone with --zone.`,
  );
  return { zone: utc, id: "UTC", origin: "assumed", remarks: named };
}

/** A stored time as an instant; in a repeated hour the first of the two. @throws LogError in a skipped hour */
export function instantOf({ zone }: Clock, stored: number, file: string): Instant {
  const at = zone.earlierInstant(stored);
  if (!Number.isNaN(at)) return at;
  throw new LogError(
    file,
    undefined,
    `the clock of ${zone.id} skipped ${isoUtc(stored).slice(0, -1)}: the times seem not to follow summer time; give the fixed offset, such as --zone +01:00, or --zone UTC`,
  );
}

/**
 * Turns the times of tables into instants; the rows of a repeated hour are placed by their order, as in a table of text.
 * @returns how many could not be placed
 */
export function placeRows(tables: readonly RawTable[], clock: Clock): number {
  const repeated: RepeatedHours = new Map();
  for (const table of tables) {
    const { rows, times } = table.store;
    for (let i = 0; i < rows; i++) {
      const stored = times[i] as number;
      const at = instantOf(clock, stored, table.file);
      if (clock.zone.laterInstant(stored) === at) {
        times[i] = at;
        continue;
      }
      const change = clock.zone.changes.find((c) => at < c.at && clock.zone.laterInstant(stored) >= c.at) as ZoneChange;
      const parts = repeated.get(change.at) ?? new Map();
      repeated.set(change.at, parts);
      const part = parts.get(table) ?? { table, zone: clock.zone, rows: [] };
      parts.set(table, part);
      part.rows.push(i);
    }
  }
  return [...placeRepeatedHours(repeated).values()].reduce((sum, n) => sum + n, 0);
}

export interface Label {
  readonly label: "start" | "end";
  readonly origin: TimeBase["labelOrigin"];
  readonly reason?: Text;
}

const STARTS = say`the first row of each observation lies at the start of the observation`;
const ENDS = say`the first row of each observation lies one interval after the start of the observation`;

/**
 * Whether the stamps of each table mark the start or the end of its intervals: by the setup, else by where the first row
 * of each observation lies (IEEE 1159.3 does not fix it). A table that does not show it goes with those that do; else
 * the start is assumed.
 */
export function labelsOf(tables: readonly RawTable[], setup: GivenSetup): Label[] {
  if (setup.intervalLabel !== undefined)
    return tables.map(() => ({ label: setup.intervalLabel ?? "start", origin: "given" }));
  const own = tables.map(ownLabel);
  const seen = new Set(own.filter((label) => label !== undefined));
  const [common] = seen.size === 1 ? seen : [];
  return own.map((label) => {
    const found = label ?? common;
    if (found === undefined) return { label: "start", origin: "assumed" };
    return { label: found, origin: "inferred", reason: found === "start" ? STARTS : ENDS };
  });
}

function ownLabel({ firsts, interval }: RawTable): "start" | "end" | undefined {
  const near = (distance: number) =>
    firsts.every(({ start, stamp }) => Math.abs(stamp - start - distance) <= JITTER * interval);
  if (firsts.length === 0) return undefined;
  return near(0) ? "start" : near(interval) ? "end" : undefined;
}
