import type { Phase } from "../../recording/quantity.js";
import type { Assessment } from "../../rules/assessment.js";
import type { Text } from "../../sentence.js";
import { instantOf, type LocalClock } from "../local-time.js";
import type { Columns } from "./chart.js";
import { INK } from "./style.js";

/** A complaint or comment as a chart shows it: by its short name, at its time. */
export interface ChartMark {
  /** "C1" for the first complaint, "N1" for the first comment. */
  readonly name: string;
  readonly at: number;
  readonly to: number | undefined;
  /** Only on this phase's panel; undefined: on all. */
  readonly phase: Phase | undefined;
  /** In the user's own words. */
  readonly words: string;
}

export function complaintName(i: number): string {
  return `C${i + 1}`;
}

export function commentName(i: number): string {
  return `N${i + 1}`;
}

/** The complaints and comments whose time lies in the recording. */
export function chartMarks({ complaints, comments, recording }: Assessment): ChartMark[] {
  const [start, end] = [instantOf(recording.start), instantOf(recording.end)];
  const placed = (name: string, { at, to }: { at: string; to?: string | undefined }, words: string, phase?: Phase) => ({
    name,
    at: instantOf(at),
    to: to === undefined ? undefined : instantOf(to),
    phase,
    words,
  });
  return [
    ...complaints.map((complaint, i) => placed(complaintName(i), complaint, complaint.what)),
    ...comments.map((comment, i) => placed(commentName(i), comment, comment.text, comment.phase)),
  ].filter(({ at, to = at }) => to >= start && at < end);
}

/** Times on the chart's clock, in ms. */
export function markColumns(marks: readonly ChartMark[], clock: LocalClock, start: number): Columns {
  const offset = clock.offsetAt(start);
  const ms = (t: number) => (t + offset) / 1000;
  return {
    at: marks.map(({ at }) => ms(at)),
    to: marks.map(({ at, to = at }) => ms(to)),
    phase: marks.map(({ phase }): Text => phase ?? ""),
    name: marks.map(({ name }) => name),
  };
}

/** A dotted upright line with the name at its top, and a pale field over a span; told apart without colour. */
export function markLayers(x: Readonly<Record<string, unknown>>, isFaceted: boolean): Record<string, unknown>[] {
  const data = { name: "marks" };
  // The panel of a phase knows which one it is; a mark of another phase is not drawn there.
  const isElsewhere = "datum.phase !== '' && datum.phase !== item.mark.group.datum.phase";
  const shown = (value: number) => (isFaceted ? { condition: { test: isElsewhere, value: 0 }, value } : { value });
  const at = { ...x, field: "at" };
  return [
    {
      data,
      transform: [{ filter: "datum.to > datum.at" }],
      mark: { type: "rect", color: INK, clip: true },
      encoding: { x: at, x2: { field: "to" }, opacity: shown(0.12) },
    },
    {
      data,
      mark: { type: "rule", color: INK, strokeDash: [1.5, 2.5], strokeWidth: 1.4, clip: true },
      encoding: { x: at, opacity: shown(1) },
    },
    {
      data,
      mark: { type: "text", align: "left", baseline: "top", dx: 3, dy: 2, fontWeight: "bold", clip: true },
      encoding: { x: at, y: { value: 0 }, text: { field: "name" }, opacity: shown(1) },
    },
  ];
}
