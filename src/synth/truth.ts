import { isoUtc, SECOND } from "../recording/time.js";
import { INTERVALS, wholeIntervals } from "./interval-log.js";
import { type CheckedScenario, loggedSpan } from "./parse-scenario.js";
import { declaredToNeutral } from "./phases.js";
import { type ChannelTruth, SignalTruth, type SpanTruth } from "./signal-truth.js";

const NOTES = [
  "Instants are those of the recorder's clock; seconds count from the first sample.",
  "Values are computed from the phasors of the scenario, not from its samples: before noise and quantisation, over whole cycles.",
  "The r.m.s. values of a span leave modulation out; those of ten minutes hold it. Harmonics and interharmonics are in % of the fundamental.",
  "Events are as injected, phase by phase; a standard's event of several phases lasts from the first to the last of them.",
  "Flicker has no closed form: see the modulation, whose ΔV/V is peak to peak as in the tables of IEC 61000-4-15.",
];

/** What is known of a made log, for truth.json: units are in the names. Nothing in it depends on the format of the log. */
export function truthOf(scenario: CheckedScenario) {
  const truth = new SignalTruth(scenario);
  const { start, end } = loggedSpan(scenario);
  const { durationS, samplesPerSecond, noise, quantisation, frequency } = scenario;
  const neutral = declaredToNeutral(scenario);
  return {
    title: scenario.title,
    notes: NOTES,
    recording: {
      start: isoUtc(start),
      end: isoUtc(end),
      durationS,
      clockOffsetS: scenario.clockOffsetS,
      ...(samplesPerSecond !== undefined && {
        samplesPerSecond,
        samples: Math.round(durationS * samplesPerSecond),
      }),
      connection: scenario.connection,
      nominalFrequencyHz: scenario.nominalFrequency,
      declaredVoltageV: scenario.declaredVoltage,
    },
    channels: truth.channels.map(({ channel: { name, quantity, phase }, noise: noiseRms, step }) => ({
      name,
      quantity,
      phase,
      unit: quantity === "voltage" ? "V" : "A",
      noiseRms,
      quantisationStep: step,
    })),
    frequency: {
      courseHz: typeof frequency === "number" ? [{ atS: 0, hertz: frequency }] : frequency,
      meanHz: truth.course.mean(0, durationS),
    },
    spans: truth.spans.map((span) => spanEntry(truth, span)),
    events: truth.events.map(({ kind, fromS, durationS: length, percent, phases }) => ({
      kind,
      phases,
      start: isoUtc(start + Math.round(fromS * SECOND)),
      startS: fromS,
      durationS: length,
      extremePercent: percent,
      extremeV: (percent / 100) * neutral,
      reference: scenario.connection === "delta" ? "declared voltage / √3" : "declared voltage",
    })),
    modulation: scenario.modulation.map(({ shape, hertz, percent, fromS, toS, phases }) => ({
      shape,
      hertz,
      peakToPeakPercent: percent,
      fromS,
      toS: toS ?? durationS,
      ...(phases !== undefined && { phases }),
    })),
    noise: noise ?? null,
    quantisation: quantisation ?? null,
    tenMinutes: wholeIntervals(scenario, INTERVALS["10min"]).map((at) => {
      const fromS = (at - start) / SECOND;
      const toS = fromS + INTERVALS["10min"] / SECOND;
      return {
        start: isoUtc(at),
        rms: byChannel(truth, (c) => truth.rms(c, fromS, toS)),
        frequencyHz: truth.course.mean(fromS, toS),
        flagged: truth.flagged(fromS, toS),
      };
    }),
  };
}

export type Truth = ReturnType<typeof truthOf>;

function spanEntry(truth: SignalTruth, { fromS, toS, channels, u2, u0, powers }: SpanTruth) {
  return {
    fromS,
    toS,
    channels: byChannel(truth, (c) => channelEntry(channels[c] as ChannelTruth)),
    ...(u2 !== undefined && { u2Percent: number(u2) }),
    ...(u0 !== undefined && { u0Percent: number(u0) }),
    ...(powers.length > 0 && {
      power: powers.map(({ p, q1, s }, k) => ({ phase: `L${k + 1}`, activeW: p, reactiveVar: q1, apparentVA: s })),
    }),
  };
}

function channelEntry({ rms, fundamental, harmonics, interharmonics, thd }: ChannelTruth) {
  const turns = fundamental.angle / (2 * Math.PI);
  return {
    rms,
    fundamentalRms: fundamental.rms,
    fundamentalDegrees: 360 * (turns - Math.round(turns)),
    thdPercent: number(thd),
    harmonicsPercent: percentages(harmonics),
    ...(interharmonics.size > 0 && { interharmonicsPercentByHz: percentages(interharmonics) }),
  };
}

function percentages(byKey: ReadonlyMap<number, number>): Record<string, number | null> {
  return Object.fromEntries([...byKey].map(([key, value]) => [String(key), number(value)]));
}

function byChannel<T>({ channels }: SignalTruth, of: (channel: number) => T): Record<string, T> {
  return Object.fromEntries(channels.map(({ channel }, c) => [channel.name, of(c)]));
}

/** JSON has no NaN: null where there is no value. */
function number(value: number): number | null {
  return Number.isNaN(value) ? null : value;
}
