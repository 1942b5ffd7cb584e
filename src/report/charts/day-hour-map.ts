import { DAY, HOUR } from "../../recording/time.js";
import { Numeral, type Text } from "../../sentence.js";
import { dateText, localParts } from "../local-time.js";
import { fixed } from "../numbers.js";
import { CELL_WORDS, hourAxis, mapNote, mapTitle, printedInMap } from "../wording-hours.js";
import type { Chart } from "./chart.js";
import { INK } from "./style.js";
import { outsideOf, type Subject, worstPhase } from "./subject.js";

const CELL_WIDTH = 20;
const CELL_HEIGHT = 22;
/** More days than this share seven rows, one per day of the week. */
const MOST_DAYS = 36;

/** Day × hour of the worst phase: how many intervals lay outside, or, without any, the highest value of each hour. */
export function dayHourMap(subject: Subject, nominalFrequency: number): Chart {
  const worst = worstPhase(subject);
  const exceedances = outsideOf(worst) > 0;
  const cells = collect(subject, exceedances, nominalFrequency);
  const list = [...cells.values()];
  const strongest = Math.max(...list.map(({ value }) => value));
  const weakest = exceedances ? 0 : Math.min(...list.map(({ value }) => value));
  const days = [...new Map(list.map(({ day }) => [String(day), day])).values()];
  const hours = Math.max(1, subject.interval / HOUR);
  const x = {
    field: "hour",
    type: "ordinal",
    title: hourAxis(subject),
    scale: { domain: Array.from({ length: Math.ceil(24 / hours) }, (_, k) => k * hours), paddingInner: 0.04 },
    axis: { labelAngle: 0, ticks: false, domain: false },
  };
  const y = {
    field: "day",
    type: "ordinal",
    title: null,
    scale: { domain: days, paddingInner: 0.04 },
    axis: { ticks: false, domain: false },
  };
  return {
    id: `${subject.id}-hours`,
    title: mapTitle(subject),
    note: mapNote(subject, printedInMap(subject, exceedances), sharesDays(subject)),
    kind: "marks",
    width: CELL_WIDTH * 24 + 80,
    unit: subject.unit,
    limit: subject.limits[0]?.limit ?? {},
    data: {
      cells: {
        day: list.map(({ day }) => day),
        hour: list.map(({ hour }) => hour),
        value: list.map(({ value }) => Number(value.toPrecision(6))),
        text: list.map(({ value }) => cellText(value, subject, exceedances)),
      },
    },
    spec: {
      width: CELL_WIDTH * 24,
      height: { step: CELL_HEIGHT },
      data: { name: "cells", format: { parse: null } },
      layer: [
        {
          mark: { type: "rect", stroke: "#cccccc", strokeWidth: 0.5 },
          encoding: {
            x,
            y,
            color: {
              field: "value",
              type: "quantitative",
              legend: null,
              scale: { domain: [weakest, strongest], range: ["#ffffff", "#2b5f94"], interpolate: "rgb" },
            },
            tooltip: [
              { field: "day", title: CELL_WORDS.day },
              { field: "hour", title: CELL_WORDS.hour },
              { field: "text", title: CELL_WORDS.value },
            ],
          },
        },
        {
          mark: { type: "text", fontSize: 10, tooltip: null },
          encoding: {
            x,
            y,
            text: { field: "text" },
            color: {
              condition: { test: `datum.value > ${weakest + 0.55 * (strongest - weakest)}`, value: "#ffffff" },
              value: INK,
            },
          },
        },
      ],
    },
  };
}

/** Whether the rows are days of the week, not single days. */
function sharesDays({ start, end }: Subject): boolean {
  return (end - start) / DAY > MOST_DAYS;
}

interface Cell {
  readonly day: Text;
  readonly hour: number;
  value: number;
}

function collect(subject: Subject, exceedances: boolean, nominalFrequency: number): Map<string, Cell> {
  const { series, counted, above, below } = worstPhase(subject);
  const { clock } = subject;
  const isOut = new Set([...above, ...below]);
  const byWeekday = sharesDays(subject);
  const hours = Math.max(1, subject.interval / HOUR);
  const cells = new Map<string, Cell>();
  for (const i of counted) {
    const t = series.starts[i] as number;
    const at = clock.clockAt(t);
    const hour = Math.floor(at.hour / hours) * hours;
    const key = `${byWeekday ? at.weekday : `${at.month} ${at.day}`} ${hour}`;
    let cell = cells.get(key);
    if (cell === undefined) {
      const parts = localParts(clock, t);
      const day = byWeekday ? parts.weekday : dateText(parts);
      cell = { day, hour, value: exceedances ? 0 : Number.NEGATIVE_INFINITY };
      cells.set(key, cell);
    }
    const value = series.values[i] as number;
    if (exceedances) cell.value += isOut.has(i) ? 1 : 0;
    else
      cell.value = Math.max(
        cell.value,
        subject.quantity === "frequency" ? Math.abs(value - nominalFrequency) * 1000 : value,
      );
  }
  return cells;
}

/** At most four characters, as many digits as fit. */
function cellText(value: number, { quantity }: Subject, exceedances: boolean): Text {
  if (exceedances) return value === 0 ? "·" : String(value);
  return new Numeral(fixed(value, quantity === "frequency" || value >= 100 ? 0 : 1));
}
