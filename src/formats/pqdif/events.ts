import type { LoggedEvent } from "../../recording/logged-event.js";
import type { Phase } from "../../recording/quantity.js";
import type { GivenSetup } from "../../recording/setup.js";
import { type Instant, SECOND } from "../../recording/time.js";
import { say, type Text } from "../../sentence.js";
import { CHARACTERISTIC as C } from "./characteristics.js";
import { categoryOf } from "./event-kinds.js";
import { QUANTITY_TYPE, VALUE_TYPE } from "./identifiers.js";
import { PHASES, VOLTAGE } from "./meaning.js";
import type {
  PqdifChannel,
  PqdifChannelDefinition,
  PqdifCharacteristics,
  PqdifObservation,
  PqdifValues,
} from "./model.js";
import { timesOf } from "./times.js";
import { CYCLES, PER_UNIT, PERCENT, SECONDS, unitText, VOLTS } from "./units.js";

/**
 * The events that an observation lists: rows of magnitude and duration, and what made the recorder write it.
 * @param toInstant from a stored time
 */
export async function eventsOf(
  file: string,
  observation: PqdifObservation,
  values: PqdifValues | undefined,
  setup: GivenSetup,
  toInstant: (stored: number) => Instant,
): Promise<LoggedEvent[]> {
  const listed = values === undefined ? [] : await listedEvents(file, observation, values, setup, toInstant);
  // An observation that is a list of events is not one event more.
  return listed.length > 0 ? listed : triggeredEvent(file, observation, toInstant);
}

const MAG_DUR: ReadonlySet<string> = new Set([
  QUANTITY_TYPE.MAGDUR,
  QUANTITY_TYPE.MAGDURTIME,
  QUANTITY_TYPE.MAGDURCOUNT,
]);

/** Whether a channel lists magnitudes and durations of voltages. */
export function isListOfEvents({ definition }: { readonly definition: PqdifChannelDefinition }): boolean {
  return MAG_DUR.has(definition.quantityType) && (definition.quantityMeasured ?? VOLTAGE) === VOLTAGE;
}

async function listedEvents(
  file: string,
  observation: PqdifObservation,
  values: PqdifValues,
  setup: GivenSetup,
  toInstant: (stored: number) => Instant,
): Promise<LoggedEvent[]> {
  const listed: LoggedEvent[] = [];
  for (const [c, channel] of observation.channels.entries()) {
    if (!isListOfEvents(channel)) continue;
    listed.push(...(await rowsOf(file, observation, channel, c, values, setup, toInstant)));
  }
  return listed;
}

/** Characteristics of a magnitude that is the voltage of a dip or swell. */
const OF_VOLTAGE: ReadonlySet<string | undefined> = new Set([C.RMS, C.NONE, undefined]);

async function rowsOf(
  file: string,
  observation: PqdifObservation,
  channel: PqdifChannel,
  c: number,
  values: PqdifValues,
  setup: GivenSetup,
  toInstant: (stored: number) => Instant,
): Promise<LoggedEvent[]> {
  const { definition } = channel;
  const at = (type: string) => definition.series.findIndex(({ valueType }) => valueType === type);
  const [val, duration] = [at(VALUE_TYPE.VAL), at(VALUE_TYPE.DURATION)];
  const magnitudes = val < 0 ? new Float64Array() : await values.values(c, val);
  const durations = duration < 0 ? new Float64Array() : await values.values(c, duration);
  const nominal = observation.settings?.nominalFrequency ?? setup.nominalFrequency;
  const times = await timesOf(observation, c, values, nominal);
  const rows = Math.min(magnitudes.length, durations.length);
  const category = categoryOf(observation.disturbance);
  const phase = PHASES[definition.phase];
  const seconds = (d: number) => {
    const units = definition.series[duration]?.units;
    if (units === SECONDS) return d;
    return units === CYCLES && nominal !== undefined ? d / nominal : undefined;
  };
  // Without times only a single row has one: that of its observation.
  const startOf = (i: number) =>
    "seconds" in times
      ? times.origin + Math.round((times.seconds[i] as number) * SECOND)
      : rows === 1
        ? (observation.triggered ?? observation.start)
        : undefined;
  return Array.from({ length: rows }, (_, i) => i).flatMap((i) => {
    const stored = startOf(i);
    const [value, d] = [magnitudes[i] as number, durations[i] as number];
    if (stored === undefined || !Number.isFinite(stored) || !Number.isFinite(value)) return [];
    const units = definition.series[val]?.units ?? 0;
    const magnitude = OF_VOLTAGE.has(definition.series[val]?.characteristic) ? magnitudeIn(value, units) : undefined;
    const durationS = d > 0 ? seconds(d) : undefined;
    return [
      {
        ...event(file, observation, category, phase === undefined ? [] : [phase], toInstant(stored)),
        ...(durationS !== undefined && { durationS }),
        ...(magnitude === undefined
          ? { doubt: say`its magnitude ${value} (${unitText(units)}) is not sure to be a voltage` }
          : { magnitude }),
      },
    ];
  });
}

function magnitudeIn(value: number, units: number): LoggedEvent["magnitude"] {
  if (units === VOLTS) return { value, unit: "V" };
  if (units === PERCENT) return { value, unit: "%" };
  return units === PER_UNIT ? { value: 100 * value, unit: "%" } : undefined;
}

function event(
  file: string,
  { name, byte }: PqdifObservation,
  category: ReturnType<typeof categoryOf>,
  phases: readonly Phase[],
  start: Instant,
) {
  return {
    file,
    place: name.trim() === "" ? `byte ${byte}` : `"${name.trim()}", byte ${byte}`,
    ...(category !== undefined && { category: category.name }),
    ...(category?.kind !== undefined && { kind: category.kind }),
    phases,
    start,
  };
}

const TRIGGERED_BY_CHANNEL = 1;

function triggeredEvent(
  file: string,
  observation: PqdifObservation,
  toInstant: (stored: number) => Instant,
): LoggedEvent[] {
  const category = categoryOf(observation.disturbance);
  const { channels, triggerChannels, triggerMethod } = observation;
  if (category === undefined && triggerMethod !== TRIGGERED_BY_CHANNEL) return [];
  const voltages = channels.filter(({ definition }) => definition.quantityMeasured === VOLTAGE);
  const marked = voltages.filter(
    ({ characteristics: { magnitude, durationS } }) => (magnitude ?? durationS) !== undefined,
  );
  const triggers = triggerChannels.flatMap((i) => channels[i] ?? []).filter((channel) => voltages.includes(channel));
  const all = [observation.characteristics, ...marked.map(({ characteristics }) => characteristics)];
  // A trigger that nothing is said of is no event yet.
  if (category === undefined && all.every(({ magnitude, durationS }) => (magnitude ?? durationS) === undefined))
    return [];
  const of = marked.length > 0 ? marked : triggers;
  const phases = [...new Set(of.flatMap(({ definition }) => PHASES[definition.phase] ?? []))];
  const durations = all.flatMap(({ durationS }) => (durationS !== undefined && durationS > 0 ? [durationS] : []));
  const stored = observation.triggered ?? observation.start;
  const made = event(file, observation, category, phases, toInstant(stored));
  return [
    {
      ...made,
      ...(durations.length > 0 && { durationS: Math.max(...durations) }),
      ...sureMagnitude(all, made.kind),
    },
  ];
}

/**
 * The magnitude of a trigger is in percent of nominal (IEEE 1159.3), but real files hold volts, or percent of another
 * nominal voltage. It is relied on only where it fits its category as percent: 1 to 90 for a dip, 110 to 200 for a swell,
 * below 10 for an interruption (the ranges of IEEE 1159 as recalled, not confirmed by any document seen).
 */
function sureMagnitude(
  all: readonly PqdifCharacteristics[],
  kind: LoggedEvent["kind"],
): { magnitude?: NonNullable<LoggedEvent["magnitude"]>; doubt?: Text } {
  const magnitudes = all.flatMap(({ magnitude }) => magnitude ?? []);
  if (magnitudes.length === 0) return { doubt: say`the log does not state its magnitude` };
  const worst = kind === "swell" ? Math.max(...magnitudes) : Math.min(...magnitudes);
  const fits =
    kind === "dip"
      ? worst >= 1 && worst <= 90
      : kind === "swell"
        ? worst >= 110 && worst <= 200
        : kind === "interruption" && worst >= 0 && worst < 10;
  if (fits) return { magnitude: { value: worst, unit: "%" } };
  return { doubt: say`its magnitude ${worst} is not sure to be in percent of the declared voltage` };
}

/** Events in time order; what several observations say alike of one trigger is one event. */
export function uniqueEvents(events: readonly LoggedEvent[]): LoggedEvent[] {
  const found = new Map<string, LoggedEvent>();
  for (const one of events) {
    const key = `${one.start} ${one.kind} ${one.phases.join()}`;
    const before = found.get(key);
    if (before === undefined || (before.doubt !== undefined && one.doubt === undefined)) found.set(key, one);
  }
  return [...found.values()].sort((a, b) => a.start - b.start);
}
