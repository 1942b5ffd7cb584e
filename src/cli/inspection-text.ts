import type { Inspection, SeriesSummary } from "../inspect.js";
import { SECOND } from "../recording/time.js";
import { printable } from "../report/terminal.js";
import { lengthOf } from "../report/wording.js";
import { say } from "../sentence.js";
import { columnLines, eventLines, observationLines } from "./inspection-lists.js";

/** The inspection for a terminal. */
export function inspectionText(i: Inspection): string {
  const used = i.columns.filter((c) => c.meaning !== undefined || c.use !== undefined);
  const unused = i.columns.filter((c) => c.meaning === undefined && c.use === undefined);
  const sections: [string, readonly string[]][] = [
    ["Files", i.files.map((f) => `${f.name}  ${f.format}  ${f.bytes} bytes`)],
    ["Time", timeLines(i)],
    [String(say`Observations (${i.observations?.length ?? 0})`), observationLines(i.observations ?? []).map(String)],
    [`Columns understood (${used.length})`, columnLines(used)],
    [`Columns not used (${unused.length})`, columnLines(unused)],
    [
      String(say`Events that the recorder listed (${i.loggedEvents?.length ?? 0})`),
      eventLines(i.loggedEvents ?? []).map(String),
    ],
    ["Measured series", seriesLines(i.series)],
    ["Remarks", i.remarks.map(String)],
    ["Setup", i.setup === undefined ? [] : Object.entries(i.setup).map(([key, s]) => setupLine(key, s))],
    ["Findings", i.findings.map((f) => `${f.danger === undefined ? f.severity : "DANGER"}: ${f.sentence}`)],
    [`Can be assessed with ${i.ruleSet.title}`, i.assessable],
    ["Cannot be assessed", i.notAssessable.map((n) => `${n.requirement}: ${n.reason}`)],
    ["Needed before a verdict", i.question === undefined ? [] : [i.question]],
  ];
  const text = sections
    .filter(([, lines]) => lines.length > 0)
    .map(([title, lines]) => `${title}\n${lines.map((l) => `  ${l}`).join("\n")}\n`)
    .join("\n");
  return printable(text);
}

function timeLines({ start, end, weeks, timeBase: t }: Inspection): string[] {
  return [
    `from ${start} to ${end}, ${weeks.toFixed(2)} weeks`,
    `stamps: ${t.stampForm}`,
    `zone: ${t.zone} (${t.zoneOrigin})`,
    `a stamp marks the ${t.intervalLabel} of its interval (${t.labelOrigin})`,
  ];
}

/** One line per quantity, phase, interval and origin; harmonic orders are put together. */
function seriesLines(series: readonly SeriesSummary[]): string[] {
  const groups = new Map<string, SeriesSummary[]>();
  for (const s of series) {
    const key = `${s.quantity}${s.phase === "system" ? "" : ` ${s.phase}`}, every ${lengthOf(s.intervalS * SECOND)}, ${s.origin}`;
    groups.set(key, [...(groups.get(key) ?? []), s]);
  }
  return [...groups].map(([key, all]) => {
    const orders = all.flatMap((s) => (s.order === undefined ? [] : [s.order]));
    const low = Math.min(...all.map((s) => s.min));
    const high = Math.max(...all.map((s) => s.max));
    const range =
      low <= high ? `, ${Number(low.toPrecision(6))} … ${Number(high.toPrecision(6))}${unitText(all[0]?.unit)}` : "";
    const valid = Math.min(...all.map((s) => s.valid));
    const which =
      orders.length === 0 ? "" : `, orders ${Math.min(...orders)} to ${Math.max(...orders)} (${orders.length})`;
    return `${key}${which}: ${valid} valid values${range}`;
  });
}

/** The unit after a space; ratios have none. */
function unitText(unit: string | undefined): string {
  return unit === undefined || unit === "1" ? "" : ` ${unit}`;
}

function setupLine(key: string, s: { value: unknown; origin: string; reason?: Text }): string {
  return `${key}: ${s.value} (${s.origin}${s.reason === undefined ? "" : `: ${s.reason}`})`;
}
