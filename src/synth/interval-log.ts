import { type LoggedQuantity, PHASE_TO_NEUTRAL, type Phase } from "../recording/quantity.js";
import { type Duration, type Instant, isoUtc, MINUTE, SECOND } from "../recording/time.js";
import { offsetText, TimeZone } from "../recording/time-zone.js";
import { noiseAt } from "./noise.js";
import { type CheckedScenario, loggedSpan } from "./parse-scenario.js";
import { SignalTruth, type SpanTruth } from "./signal-truth.js";

export const INTERVALS: Readonly<Record<"1min" | "10min", Duration>> = { "1min": MINUTE, "10min": 10 * MINUTE };

/** Starts, by the recorder's clock, of the intervals that lie wholly in the recording. */
export function wholeIntervals(scenario: CheckedScenario, interval: Duration): Instant[] {
  const { start, end } = loggedSpan(scenario);
  const first = Math.ceil(start / interval) * interval;
  return Array.from({ length: Math.max(0, Math.floor((end - first) / interval)) }, (_, i) => first + i * interval);
}

/** Noise of the columns is apart from that of the channels. */
const FIRST_STREAM = 1000;

/** A column of an interval log; `value` is that of the signal, without noise, from one time to another. */
interface Column {
  readonly header: string;
  readonly quantity: LoggedQuantity;
  readonly phase: Phase;
  readonly order?: number;
  readonly decimals: number;
  readonly value: (fromS: number, toS: number) => number;
}

/** The log of a recorder that writes interval values only. */
export interface IntervalLog {
  readonly interval: Duration;
  /** Starts by the recorder's clock, of every whole interval. */
  readonly starts: readonly Instant[];
  readonly columns: readonly Omit<Column, "value">[];
  /** Rounded to the column's decimals; NaN where there is none. */
  value(row: number, column: number): number;
  /** Whether a dip, swell or interruption falls into it. */
  flagged(row: number): boolean;
}

/**
 * One row for each whole interval of the recorder's clock. Values are those of the signal without the noise of its samples:
 * r.m.s., power and frequency over the interval, percentages as the root of the mean square while there is a fundamental.
 * Flicker has no closed form and is absent.
 */
export function intervalLog(scenario: CheckedScenario, log: keyof typeof INTERVALS): IntervalLog {
  const interval = INTERVALS[log];
  const { start } = loggedSpan(scenario);
  const truth = new SignalTruth(scenario);
  const columns = columnsOf(scenario, truth);
  const starts = wholeIntervals(scenario, interval);
  const { seed = 0, intervalPercent = 0 } = scenario.noise ?? {};
  const fromS = (row: number) => ((starts[row] as Instant) - start) / SECOND;
  const length = interval / SECOND;
  return {
    interval,
    starts,
    columns,
    value(row, c) {
      const { decimals, value } = columns[c] as Column;
      const noise = intervalPercent === 0 ? 0 : (intervalPercent / 100) * noiseAt(seed, FIRST_STREAM + c, row);
      return Number((value(fromS(row), fromS(row) + length) * (1 + noise)).toFixed(decimals));
    },
    flagged: (row) => truth.flagged(fromS(row), fromS(row) + length),
  };
}

/** The log as text: stamps are the starts in local time with its offset. */
export function* intervalLogLines(scenario: CheckedScenario, log: keyof typeof INTERVALS): Generator<string> {
  const { start, end } = loggedSpan(scenario);
  const zone = TimeZone.open(scenario.zone, start, end);
  const { starts, columns, value, flagged } = intervalLog(scenario, log);
  yield `${["Time", ...columns.map(({ header }) => header), "Flag"].join(",")}\r\n`;
  for (const [row, at] of starts.entries()) {
    const cells = columns.map(({ decimals }, c) => cell(value(row, c), decimals));
    const offset = zone.offsetAt(at);
    yield `${[`${isoUtc(at + offset).slice(0, -1)}${offsetText(offset)}`, ...cells, flagged(row) ? 1 : 0].join(",")}\r\n`;
  }
}

function cell(value: number, decimals: number): string {
  return Number.isNaN(value) ? "" : value.toFixed(decimals);
}

function columnsOf({ connection }: CheckedScenario, truth: SignalTruth): Column[] {
  const voltages = truth.channels.flatMap(({ channel }, c) => (channel.quantity === "voltage" ? [{ channel, c }] : []));
  const currents = truth.channels.flatMap(({ channel }, c) => (channel.quantity === "current" ? [{ channel, c }] : []));
  const conductors = (name: string) => name.slice(2);
  const percent = (of: (span: SpanTruth) => number | undefined) => (fromS: number, toS: number) =>
    truth.percent(fromS, toS, of);
  const columns: Column[] = [];
  const add = (header: string, decimals: number, column: Omit<Column, "header" | "decimals">) =>
    columns.push({ header, decimals, ...column });
  for (const { channel, c } of voltages) {
    const { name, phase } = channel;
    const value = (from: number, to: number) => truth.rms(c, from, to);
    add(`Voltage ${conductors(name)} mean [V]`, 3, { quantity: "voltage", phase, value });
  }
  const mean = (from: number, to: number) => truth.course.mean(from, to);
  add("Frequency mean [Hz]", 4, { quantity: "frequency", phase: "system", value: mean });
  if (connection !== "single") {
    const value = percent(({ u2 }) => u2);
    add("Unbalance u2 mean [%]", 4, { quantity: "negative-sequence-unbalance", phase: "system", value });
  }
  for (const { channel, c } of voltages) {
    const { name, phase } = channel;
    const thd = percent((span) => span.channels[c]?.thd);
    add(`THD voltage ${conductors(name)} mean [%]`, 4, { quantity: "thd-voltage", phase, value: thd });
    for (const order of truth.spans[0]?.channels[c]?.harmonics.keys() ?? []) {
      const value = percent((span) => span.channels[c]?.harmonics.get(order));
      const header = `Harmonic voltage ${conductors(name)} order ${order} mean [%]`;
      add(header, 4, { quantity: "harmonic-voltage", phase, order, value });
    }
  }
  for (const { channel, c } of currents) {
    const { name, phase } = channel;
    const value = (from: number, to: number) => truth.rms(c, from, to);
    add(`Current ${conductors(name)} mean [A]`, 4, { quantity: "current", phase, value });
  }
  for (const [k] of (truth.spans[0]?.powers ?? []).entries()) {
    const phase = PHASE_TO_NEUTRAL[k] as Phase;
    const power = (of: "p" | "q1") => (from: number, to: number) => truth.power(k, from, to, of);
    add(`Active power ${phase} mean [W]`, 3, { quantity: "active-power", phase, value: power("p") });
    add(`Reactive power ${phase} mean [var]`, 3, { quantity: "reactive-power", phase, value: power("q1") });
  }
  return columns;
}
