import type { Assessment, Row, Week } from "../rules/assessment.js";
import { cellOf } from "./events.js";
import { inLocalTime, instantOf, localClock } from "./local-time.js";
import type { Renderer } from "./renderer.js";

/**
 * Tables for spreadsheets, after RFC 4180: comma, CRLF, UTF-8, decimal point, times in ISO 8601 UTC and local. Numbers
 * carry full precision, names are those of results.json, and all stand in English whatever the language.
 */
export const csv: Renderer = {
  id: "csv",
  title: "events.csv, requirements.csv: every event and every counted row for spreadsheets",
  render: async (assessment) => [
    { path: "events.csv", content: text(EVENTS, eventLines(assessment)) },
    { path: "requirements.csv", content: text(REQUIREMENTS, requirementLines(inLocalTime(assessment))) },
  ],
};

type Field = string | number | boolean | undefined;

const EVENTS = [
  "kind",
  "phases",
  "start_utc",
  "start_local",
  "duration_s",
  "extreme",
  "unit",
  "reference",
  "percent",
  "cell",
  "whole",
  "cut_off_start",
  "cut_off_end",
  "steady_change",
  "peak",
  "origin",
  "excluded",
] as const;

function eventLines({ events, recording }: Assessment): Field[][] {
  const local = localStamps(recording);
  return events.map((event) => [
    event.kind,
    event.phases.join(" "),
    event.start,
    local(event.start),
    event.durationS,
    event.extreme,
    event.unit,
    event.reference,
    event.percent,
    cellOf(event),
    event.complete,
    event.cutOff?.start,
    event.cutOff?.end,
    event.steadyChange,
    event.peak,
    event.origin ?? "computed",
    event.excluded ?? false,
  ]);
}

const REQUIREMENTS = [
  "period_start_utc",
  "period_end_utc",
  "period_kind",
  "requirement",
  "clause",
  "quantity",
  "phase",
  "order",
  "hertz",
  "unit",
  "limit_min",
  "limit_max",
  "share",
  "interval_s",
  "valid",
  "outside",
  "allowed",
  "missing",
  "excluded",
  "worst",
  "worst_at_utc",
  "at_share_low",
  "at_share_high",
  "uncertainty",
  "zone",
  "verdict",
  "verdict_without_exclusions",
  "robust",
  "binding",
  "confirmed",
  "reason",
] as const;

function requirementLines({ weeks }: Assessment): Field[][] {
  return weeks.flatMap((week) => week.requirements.map((row) => requirementLine(week, row)));
}

function requirementLine(week: Week, row: Row): Field[] {
  return [
    week.start,
    week.end,
    week.kind,
    row.id,
    row.clause,
    row.quantity,
    row.phase,
    row.order,
    row.hertz,
    row.unit,
    row.limit.min,
    row.limit.max,
    row.share,
    row.intervalS,
    row.n,
    row.outside,
    row.allowed,
    row.missing,
    row.excluded,
    row.worst?.value,
    row.worst?.at,
    row.percentile.low,
    row.percentile.high,
    row.uncertainty,
    row.zone,
    row.verdict,
    row.verdictWithoutExclusions,
    row.robust,
    row.binding,
    row.confirmed,
    row.reason === undefined ? undefined : String(row.reason.sentence),
  ];
}

/** "2026-03-02T13:10:05.120000" on the clock of the log; beside the UTC stamp, so that a repeated hour stays clear. */
function localStamps(recording: Assessment["recording"]): (iso: string) => string {
  const clock = localClock(recording);
  return (iso) => {
    const at = instantOf(iso);
    const shifted = new Date((at + clock.offsetAt(at)) / 1000).toISOString();
    return shifted.slice(0, -1);
  };
}

function text(header: readonly string[], lines: readonly (readonly Field[])[]): string {
  return [header, ...lines].map((line) => `${line.map(field).join(",")}\r\n`).join("");
}

/** Texts that a spreadsheet would run as a formula get an apostrophe in front; those with commas or quotes are quoted. */
function field(value: Field): string {
  if (value === undefined) return "";
  if (typeof value !== "string") return String(value);
  const safe = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
