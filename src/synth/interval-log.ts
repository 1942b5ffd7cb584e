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

type Column = readonly [header: string, decimals: number, value: (fromS: number, toS: number) => number];

/**
 * The log of a recorder that writes interval values only, one row for each whole interval of its clock, stamped with the
 * start in local time with its offset. Values are those of the signal without the noise of its samples: r.m.s., power and
 * frequency over the interval, percentages as the root of the mean square while there is a fundamental. Flicker has no
 * closed form and is absent.
 */
export function* intervalLogLines(scenario: CheckedScenario, log: keyof typeof INTERVALS): Generator<string> {
  const interval = INTERVALS[log];
  const { start, end } = loggedSpan(scenario);
  const zone = TimeZone.open(scenario.zone, start, end);
  const truth = new SignalTruth(scenario);
  const columns = columnsOf(scenario, truth);
  yield `${["Time", ...columns.map(([header]) => header), "Flag"].join(",")}\r\n`;
  const { seed = 0, intervalPercent = 0 } = scenario.noise ?? {};
  for (const [row, at] of wholeIntervals(scenario, interval).entries()) {
    const fromS = (at - start) / SECOND;
    const toS = fromS + interval / SECOND;
    const cells = columns.map(([, decimals, value], c) => {
      const noise = intervalPercent === 0 ? 0 : (intervalPercent / 100) * noiseAt(seed, FIRST_STREAM + c, row);
      return cell(value(fromS, toS) * (1 + noise), decimals);
    });
    const offset = zone.offsetAt(at);
    yield `${[`${isoUtc(at + offset).slice(0, -1)}${offsetText(offset)}`, ...cells, truth.flagged(fromS, toS) ? 1 : 0].join(",")}\r\n`;
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
  for (const { channel, c } of voltages) {
    columns.push([`Voltage ${conductors(channel.name)} mean [V]`, 3, (from, to) => truth.rms(c, from, to)]);
  }
  columns.push(["Frequency mean [Hz]", 4, (from, to) => truth.course.mean(from, to)]);
  if (connection !== "single") columns.push(["Unbalance u2 mean [%]", 4, percent(({ u2 }) => u2)]);
  for (const { channel, c } of voltages) {
    columns.push([`THD voltage ${conductors(channel.name)} mean [%]`, 4, percent((span) => span.channels[c]?.thd)]);
    for (const order of truth.spans[0]?.channels[c]?.harmonics.keys() ?? []) {
      const header = `Harmonic voltage ${conductors(channel.name)} order ${order} mean [%]`;
      columns.push([header, 4, percent((span) => span.channels[c]?.harmonics.get(order))]);
    }
  }
  for (const { channel, c } of currents) {
    columns.push([`Current ${conductors(channel.name)} mean [A]`, 4, (from, to) => truth.rms(c, from, to)]);
  }
  for (const [k] of (truth.spans[0]?.powers ?? []).entries()) {
    columns.push(
      [`Active power L${k + 1} mean [W]`, 3, (from, to) => truth.power(k, from, to, "p")],
      [`Reactive power L${k + 1} mean [var]`, 3, (from, to) => truth.power(k, from, to, "q1")],
    );
  }
  return columns;
}
