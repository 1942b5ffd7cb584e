import type { EventTrace, WaveformPiece } from "../../recording/measurements.js";
import { SECOND } from "../../recording/time.js";
import { Numeral, say } from "../../sentence.js";
import { type EventRecord, isVoltageEvent, type ReportEvent } from "../events.js";
import { instantOf } from "../local-time.js";
import { exact } from "../numbers.js";
import { phaseName, withUnit } from "../wording.js";
import { EVENT_WORDS as W } from "../wording-events.js";
import type { Panel, Plot, PlotLine } from "./plot.js";
import { phaseStyle } from "./style.js";

const WIDTH = 520;
const LEFT = 58;
const TOP = 22;
const BOTTOM = 40;
const COURSE_HEIGHT = 200;
const WAVEFORM_HEIGHT = 150;
/** Between panels side by side, and one above the other. */
const GAP = 8;
/** Parts of the range of values left free at either end. */
const MARGIN = 0.06;
/** Pieces this close, in samples, are one. */
const JOINED = 1.5;

/** Where the tables of dips and swells begin, in % of the reference; absent where they are not known. */
export interface TableEdges {
  readonly dip?: number;
  readonly swell?: number;
}

/** R.m.s. value of each half cycle of all phases, with the edge of the table that the event is counted in. */
export function coursePlot(event: ReportEvent, trace: EventTrace, edges: TableEdges): Plot {
  const lines = trace.channels.map(({ phase, values }) => ({ style: phaseStyle(phase), x: trace.times, y: values }));
  const levels = levelsOf(event, edges);
  const panel: Panel = {
    left: LEFT,
    top: TOP,
    width: WIDTH - LEFT - 10,
    height: COURSE_HEIGHT,
    x: [trace.times[0] ?? 0, trace.times[trace.times.length - 1] ?? 1],
    y: valueRange(lines, levels),
    xTitle: W.timeAxis,
    yTitle: event.unit === "A" ? W.current : W.voltage,
    lines,
    levels,
    field: [0, event.durationS],
  };
  return {
    width: WIDTH,
    height: TOP + COURSE_HEIGHT + BOTTOM,
    panels: [panel],
    legend: trace.channels.map(({ phase }) => ({ name: phaseName(phase), style: phaseStyle(phase) })),
  };
}

function levelsOf(event: ReportEvent, { dip, swell }: TableEdges): Panel["levels"] {
  const { reference, kind, unit } = event;
  if (reference === undefined) return [];
  if (kind === "inrush-current") return [{ y: reference, name: W.threshold, isNamedBelow: false }];
  if (!isVoltageEvent(event)) return [];
  const percent = kind === "swell" ? swell : dip;
  if (percent === undefined) return [];
  const name = say`${new Numeral(exact(percent, 0))} % of ${withUnit(exact(reference, 0), unit)}`;
  return [{ y: (percent * reference) / 100, name, isNamedBelow: kind !== "swell" }];
}

/**
 * The samples around the start and the end, each piece beside the other, voltages above currents; pieces that follow
 * one another without a break are one.
 */
export function waveformPlot(event: ReportEvent, waveform: readonly WaveformPiece[]): Plot {
  const start = instantOf(event.start);
  const pieces = join(waveform);
  const rows = (["voltage", "current"] as const).filter((quantity) =>
    pieces.some(({ channels }) => channels.some((channel) => channel.quantity === quantity)),
  );
  const length = (piece: WaveformPiece) => (piece.channels[0]?.samples.length ?? 0) / piece.samplesPerSecond;
  const whole = pieces.reduce((sum, piece) => sum + length(piece), 0);
  const room = WIDTH - LEFT - 10 - GAP * (pieces.length - 1);
  const panels: Panel[] = [];
  rows.forEach((quantity, r) => {
    const ofPieces = pieces.map((piece) => linesOf(piece, quantity, (piece.start - start) / SECOND));
    const y = valueRange(ofPieces.flat(), []);
    let left = LEFT;
    pieces.forEach((piece, p) => {
      const width = (room * length(piece)) / whole;
      const from = (piece.start - start) / SECOND;
      const isLast = r === rows.length - 1;
      panels.push({
        left,
        top: TOP + r * (WAVEFORM_HEIGHT + GAP),
        width,
        height: WAVEFORM_HEIGHT,
        x: [from, from + length(piece)],
        y,
        ...(isLast && { xTitle: p === 0 ? W.timeAxis : "" }),
        ...(p === 0 && { yTitle: W[quantity] }),
        lines: ofPieces[p] as PlotLine[],
        levels: [],
        field: [0, event.durationS],
      });
      left += width + GAP;
    });
  });
  const phases = [...new Set(pieces.flatMap(({ channels }) => channels.map(({ phase }) => phase)))];
  return {
    width: WIDTH,
    height: TOP + rows.length * (WAVEFORM_HEIGHT + GAP) - GAP + BOTTOM,
    panels,
    legend: phases.map((phase) => ({ name: phaseName(phase), style: phaseStyle(phase) })),
  };
}

/** The course, and the waveform, as far as they were kept. */
export function eventPlots(
  event: ReportEvent,
  { trace, waveform }: EventRecord,
  edges: TableEdges,
): { readonly course?: Plot; readonly waveform?: Plot } {
  return {
    ...(trace !== undefined && trace.times.length > 1 && { course: coursePlot(event, trace, edges) }),
    ...(waveform !== undefined && waveform.length > 0 && { waveform: waveformPlot(event, waveform) }),
  };
}

function linesOf({ channels, samplesPerSecond }: WaveformPiece, quantity: string, from: number): PlotLine[] {
  return channels
    .filter((channel) => channel.quantity === quantity)
    .map(({ phase, samples }) => ({
      style: phaseStyle(phase),
      x: Float64Array.from(samples, (_, i) => from + i / samplesPerSecond),
      y: samples,
    }));
}

function join(pieces: readonly WaveformPiece[]): WaveformPiece[] {
  const joined: WaveformPiece[] = [];
  for (const piece of pieces) {
    const before = joined[joined.length - 1];
    const samples = before?.channels[0]?.samples.length ?? 0;
    const late = before === undefined ? 0 : ((piece.start - before.start) / SECOND) * piece.samplesPerSecond - samples;
    if (before === undefined || Math.abs(late) > JOINED) joined.push(piece);
    else
      joined[joined.length - 1] = {
        ...before,
        channels: before.channels.map((channel, c) => ({
          ...channel,
          samples: Float32Array.of(...channel.samples, ...(piece.channels[c]?.samples ?? [])),
        })),
      };
  }
  return joined;
}

function valueRange(lines: readonly PlotLine[], levels: Panel["levels"]): readonly [number, number] {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  const take = (value: number) => {
    if (value < low) low = value;
    if (value > high) high = value;
  };
  for (const { y } of lines) for (let i = 0; i < y.length; i++) take(y[i] as number);
  for (const { y } of levels) take(y);
  if (low > high) return [0, 1];
  const margin = MARGIN * (high - low || Math.abs(high) || 1);
  return [low - margin, high + margin];
}
