import { checkAgainst, parseYaml } from "../checked-yaml.js";
import { DAY, type Instant, SECOND } from "../recording/time.js";
import { TimeZone } from "../recording/time-zone.js";
import { faultOf } from "./check-scenario.js";
import { type GivenScenario, type Scenario, scenarioSchema } from "./scenario.js";

/** A scenario that holds together, with the instant of its first sample. */
export interface CheckedScenario extends Scenario {
  readonly startInstant: Instant;
}

const START = /^(\d{4}-\d\d-\d\d)[T ](\d\d:\d\d)(?::(\d\d)(?:\.(\d{1,6}))?)?(Z|[+-]\d\d:?\d\d)?$/;

/**
 * Reads a scenario file. `name` is the file name for messages.
 * @throws UsageError with file, line and column for broken YAML, an unknown entry or one that contradicts another
 */
export function parseScenario(text: string, name: string): CheckedScenario {
  const { value, fault } = parseYaml(text, name);
  const scenario = checkAgainst(scenarioSchema, value, fault);
  return completed(scenario, (path, what) => fault(path, what));
}

/** A scenario made by the program itself. @throws RangeError if it does not hold together */
export function scenarioOf(given: GivenScenario): CheckedScenario {
  return completed(
    scenarioSchema.parse(given),
    (path, what) => new RangeError(`${path.map(String).join(".")}: ${what}`),
  );
}

function completed(scenario: Scenario, fault: (path: readonly PropertyKey[], what: string) => Error): CheckedScenario {
  const found = faultOf(scenario);
  if (found !== undefined) throw fault(found.path, found.what);
  return { ...scenario, startInstant: startOf(scenario, fault) };
}

function startOf({ start, zone: id }: Scenario, fault: (path: readonly PropertyKey[], what: string) => Error): Instant {
  const match = START.exec(start);
  const [, date, minutes, seconds = "00", fraction = "", offset] = match ?? [];
  const wall = Date.parse(`${date}T${minutes}:${seconds}Z`) * 1000;
  // The parser takes the 31st of February for the 3rd of March.
  if (!Number.isFinite(wall) || new Date(wall / 1000).toISOString().slice(0, 10) !== date) {
    throw fault(["start"], `"${start}" is not a date and time such as 2027-03-04T11:55:00`);
  }
  const local = wall + Number(fraction.padEnd(6, "0"));
  const zone = opened(id, local, fault);
  if (offset !== undefined) return local - (opened(offset, local, fault).offsetAt(local) as number);
  const earlier = zone.earlierInstant(local);
  if (Number.isNaN(earlier)) throw fault(["start"], `the clock of ${id} skips ${start}; name another time`);
  if (zone.laterInstant(local) !== earlier) {
    throw fault(["start"], `the clock of ${id} shows ${start} twice; add the offset, such as +01:00`);
  }
  return earlier;
}

function opened(id: string, around: Instant, fault: (path: readonly PropertyKey[], what: string) => Error): TimeZone {
  try {
    return TimeZone.open(id, around - DAY, around + DAY);
  } catch (error) {
    throw fault(["zone"], (error as Error).message);
  }
}

/** Instants of the first sample and of the end as the recorder's clock shows them, in UTC. */
export function loggedSpan({ startInstant, durationS, clockOffsetS }: CheckedScenario): {
  start: Instant;
  end: Instant;
} {
  const start = startInstant + Math.round(clockOffsetS * SECOND);
  return { start, end: start + Math.round(durationS * SECOND) };
}
