import type { Finding } from "../recording/finding.js";
import { type LoggedEvent, pairs } from "../recording/logged-event.js";
import type { VoltageEvent } from "../recording/measurements.js";
import { PHASE_TO_PHASE, type Phase } from "../recording/quantity.js";
import type { Setup } from "../recording/setup.js";
import { areSnippets, sampledTime } from "../recording/snippets.js";
import { isoUtc, SECOND } from "../recording/time.js";
import { say } from "../sentence.js";
import type { Check, CheckInput } from "./check.js";
import { declaredOn } from "./common/voltage.js";
import { figure, rough, span } from "./common/wording.js";

/** Durations that differ by no more than this, s, are the same: one cycle of 50 Hz. Common practice, no source. */
const SAME_DURATION_S = 0.02;
/** Voltages that differ by no more, in % of the declared one, are the same. Common practice, no source. */
const SAME_VOLTAGE = 1;

/**
 * What the recorder's own list of events and snippets of waveforms can show: what its thresholds caught, and nothing of
 * what they did not. Events that are both listed and found in samples are compared; listed ones that cannot be relied on
 * are counted.
 */
export const loggedEvents: Check = {
  id: "logged-events",
  title: "Events that the recorder listed, against those found in its waveforms, and whether all can be there",
  source: "common practice, no source",
  run(input) {
    return [...triggered(input), ...unsound(input), ...differing(input)];
  },
};

function triggered({ recording, measurements }: CheckInput): Finding[] {
  const listed = recording.events?.length ?? 0;
  const snippets = areSnippets(recording);
  if (measurements.eventsTriggered !== true) return [];
  const sampledS = sampledTime(recording.waveforms) / SECOND;
  const length = recording.end - recording.start;
  const list = listed === 1 ? say`1 event that the recorder listed` : say`${listed} events that the recorder listed`;
  const waves = say`${figure(sampledS)} s of waveforms in ${span(length)}`;
  const what = !snippets ? list : listed === 0 ? waves : say`${waves} and ${list}`;
  return [
    {
      id: "events-triggered",
      severity: "note",
      sentence: say`The log holds ${what}: only what the recorder's own thresholds caught; that no other dip, swell or interruption occurred does not follow, so the events are shown and not counted against the standard; for a count, record without a break or with thresholds that are known.`,
      evidence: { listed, sampledS, lengthS: length / SECOND },
      quantities: [],
      phases: [],
    },
  ];
}

function unsound({ recording, measurements }: CheckInput): Finding[] {
  const { events: logged = [] } = recording;
  const shown = (event: LoggedEvent) =>
    measurements.events.some(
      ({ origin, start, durationS }) =>
        origin === "logged" && event.start >= start && event.start <= start + durationS * SECOND,
    );
  const left = pairs(logged, measurements.events).filter(
    ({ logged: event, found }) => found === undefined && !shown(event),
  );
  const [first] = left;
  if (first === undefined) return [];
  const why = first.logged.doubt ?? say`its time, duration, phase or voltage is not stated so that it can be relied on`;
  return [
    {
      id: "logged-events-unsure",
      severity: "note",
      sentence: say`Left out of ${logged.length} events that the recorder listed: ${left.length}, as nothing in the waveforms shows them and the log does not say enough of them; the first is at ${isoUtc(first.logged.start)} (${first.logged.category ?? say`without category`}): ${why}.`,
      evidence: { left: left.length, listed: logged.length, first: isoUtc(first.logged.start) },
      quantities: [],
      phases: [],
    },
  ];
}

interface Difference {
  readonly event: VoltageEvent;
  readonly durationS: number;
  readonly percent: number;
}

function differing({ recording, measurements, setup }: CheckInput): Finding[] {
  const compared = pairs(recording.events ?? [], measurements.events).flatMap(({ logged, found }) =>
    found === undefined || found.complete === false ? [] : [differenceOf(logged, found, setup)],
  );
  const differ = compared.filter((d) => d.durationS > SAME_DURATION_S || d.percent > SAME_VOLTAGE);
  const [first] = differ;
  if (first === undefined) return [];
  const durationS = Math.max(...differ.map((d) => d.durationS));
  const percent = Math.max(...differ.map((d) => d.percent));
  const which =
    compared.length === 1
      ? say`The one event that is both listed by the recorder and found in its waveforms is not the same in both:`
      : say`Of ${compared.length} events that are both listed by the recorder and found in its waveforms, ${differ.length} are not the same in both:`;
  const by = say`they differ by up to ${rough(durationS)} s in duration and ${rough(percent)} % of the declared voltage, the first at ${isoUtc(first.event.start)};`;
  return [
    {
      id: "logged-events-differ",
      severity: "note",
      sentence: say`${which} ${by} what the waveforms show is used; the recorder may go by other thresholds, another nominal voltage or another definition.`,
      evidence: {
        differing: differ.length,
        compared: compared.length,
        durationS,
        percent,
        first: isoUtc(first.event.start),
      },
      quantities: [],
      phases: [],
    },
  ];
}

/** What the log does not say differs by nothing. */
function differenceOf(logged: LoggedEvent, found: VoltageEvent, setup: Setup): Difference {
  const { durationS, magnitude } = logged;
  const declared = declaredOn(found.phases[0] ?? "L1", setup) ?? Number.NaN;
  const listed = magnitude?.unit === "V" ? (magnitude.value / declared) * 100 : magnitude?.value;
  const isVoltage = found.kind === "dip" || found.kind === "swell" || found.kind === "interruption";
  const alike = sameKindOfPhase(logged, found);
  return {
    event: found,
    durationS: durationS === undefined || !isVoltage ? 0 : Math.abs(durationS - found.durationS),
    percent:
      listed === undefined || found.percent === undefined || !isVoltage || !alike
        ? 0
        : Math.abs(listed - found.percent),
  };
}

function sameKindOfPhase(logged: LoggedEvent, found: VoltageEvent): boolean {
  const isBetween = (phase: Phase) => (PHASE_TO_PHASE as readonly Phase[]).includes(phase);
  return logged.phases.length === 0 || logged.phases.some(isBetween) === found.phases.some(isBetween);
}
