import type { Phase, Quantity } from "../../src/recording/quantity.js";
import { SECOND } from "../../src/recording/time.js";
import { type LogColumn, type LogTable, rows } from "./log-table.js";
import { abs, polar, subtract } from "./phasors.js";

/** Row ranges of the flaws, first and last row included; rows count from the first of the recording. */
export const FLAWS = {
  firstFlicker: [0, 0],
  gap: [130, 143],
  repeatedRows: [200, 201, 202],
  conflictingRows: [230, 231],
  lateRows: [260, 265],
  missingMarks: [280, 291],
  frozenValues: [300, 323],
  meanOutsideExtremes: [340, 342],
  samePhase: [360, 503],
  openNeutral: [590, 619],
  deadPhase: [650, 661],
  clockStep: [700, 711],
} as const;

const CLOCK_STEP = 200 * SECOND;
const CURRENT_LIMIT = 16;
const STAR = [
  ["L1", 0],
  ["L2", -120],
  ["L3", 120],
] as const;

/** A sound table turned into one that shows every sort of flaw which the checks of a recording look for. */
export function withEveryFlaw(sound: LogTable): LogTable {
  const table = copy(sound);
  firstFlicker(table);
  frozenValues(table);
  meanOutsideExtremes(table);
  samePhase(table);
  openNeutral(table);
  deadPhase(table);
  clippedCurrent(table);
  constantFrequency(table);
  wrongPlt(table);
  wrongThd(table);
  missingMarks(table);
  const steppedStarts = table.starts.map((t, i) => (within(FLAWS.clockStep, i) ? t + CLOCK_STEP : t));
  return conflictingRows(
    rows({ ...table, starts: steppedStarts, extra: extraColumns(table.starts.length) }, rowOrder(table.starts.length)),
    table,
  );
}

type Range = readonly [number, number];

const within = ([first, last]: Range, i: number) => i >= first && i <= last;

function each([first, last]: Range, change: (i: number) => void): void {
  for (let i = first; i <= last; i++) change(i);
}

function copy(table: LogTable): LogTable {
  return { ...table, columns: table.columns.map((c) => ({ ...c, digits: c.digits.slice() })) };
}

function digits(table: LogTable, quantity: Quantity, phase: Phase, statistic: LogColumn["statistic"] = "mean") {
  const found = table.columns.find((c) => c.quantity === quantity && c.phase === phase && c.statistic === statistic);
  if (found === undefined) throw new RangeError(`the table has no ${quantity} ${phase} ${statistic}`);
  return found.digits;
}

/** A gap, a block of rows that stands after later ones, and rows that occur twice. */
function rowOrder(count: number): number[] {
  const [firstLate, lastLate] = FLAWS.lateRows;
  const order: number[] = [];
  for (let i = 0; i < count; i++) {
    if (within(FLAWS.gap, i) || within(FLAWS.lateRows, i)) continue;
    order.push(i);
    if ((FLAWS.repeatedRows as readonly number[]).includes(i)) order.push(i);
    if ((FLAWS.conflictingRows as readonly number[]).includes(i)) order.push(i);
    if (i === lastLate + 6) each([firstLate, lastLate], (late) => order.push(late));
  }
  return order;
}

/** The second of two rows with one stamp disagrees about the voltage of L1. */
function conflictingRows(table: LogTable, original: LogTable): LogTable {
  const u = digits(table, "voltage", "L1");
  for (const row of FLAWS.conflictingRows) {
    const second = table.starts.lastIndexOf(original.starts[row] as number);
    u[second] = (u[second] as number) + 150;
  }
  return table;
}

/** The flicker meter was still settling: one high Pst, and the Plt it goes into. */
function firstFlicker(table: LogTable): void {
  const pst = digits(table, "pst", "L1");
  const plt = digits(table, "plt", "L1");
  const [settling, usual] = [2140, pst[0] as number];
  pst[0] = settling;
  plt[11] = Math.round(Math.cbrt((plt[11] as number) ** 3 + (settling ** 3 - usual ** 3) / 12));
}

function frozenValues(table: LogTable): void {
  for (const statistic of ["mean", "min", "max"] as const) {
    const u = digits(table, "voltage", "L3", statistic);
    u.fill(u[FLAWS.frozenValues[0]] as number, FLAWS.frozenValues[0], FLAWS.frozenValues[1] + 1);
  }
}

function meanOutsideExtremes(table: LogTable): void {
  const mean = digits(table, "voltage", "L2");
  const max = digits(table, "voltage", "L2", "max");
  each(FLAWS.meanOutsideExtremes, (i) => {
    mean[i] = (max[i] as number) + 35;
  });
}

/** For a day the lead of L3 sits on L1: both read the same, and nothing is between them. */
function samePhase(table: LogTable): void {
  for (const statistic of ["mean", "min", "max"] as const) {
    const from = digits(table, "voltage", "L1", statistic);
    const to = digits(table, "voltage", "L3", statistic);
    each(FLAWS.samePhase, (i) => {
      to[i] = from[i] as number;
    });
  }
  const l12 = digits(table, "voltage", "L12");
  const l23 = digits(table, "voltage", "L23");
  const l31 = digits(table, "voltage", "L31");
  each(FLAWS.samePhase, (i) => {
    l23[i] = l12[i] as number;
    l31[i] = 4;
  });
}

/** The neutral is interrupted: the star point wanders with the loads, the phase-to-phase voltages do not notice. */
function openNeutral(table: LogTable): void {
  for (const statistic of ["mean", "min", "max"] as const) {
    for (const [phase, angle] of STAR) {
      const u = digits(table, "voltage", phase, statistic);
      each(FLAWS.openNeutral, (i) => {
        const starPoint = polar(2400 + 1100 * Math.abs((i % 8) - 4), 10);
        u[i] = Math.round(abs(subtract(polar(u[i] as number, angle), starPoint)));
      });
    }
  }
}

/** The lead of L2 has come off: L2 reads next to nothing, and what is between it and the others is their own voltage. */
function deadPhase(table: LogTable): void {
  for (const statistic of ["mean", "min", "max"] as const) {
    const u = digits(table, "voltage", "L2", statistic);
    each(FLAWS.deadPhase, (i) => {
      u[i] = { min: 11, mean: 38, max: 74 }[statistic];
    });
  }
  const [l1, l3] = [digits(table, "voltage", "L1"), digits(table, "voltage", "L3")];
  const [l12, l23] = [digits(table, "voltage", "L12"), digits(table, "voltage", "L23")];
  each(FLAWS.deadPhase, (i) => {
    l12[i] = l1[i] as number;
    l23[i] = l3[i] as number;
  });
}

/** The current clamp of L3 ends at its range. */
function clippedCurrent(table: LogTable): void {
  const i3 = digits(table, "current", "L3");
  i3.set(i3.map((v) => Math.min(v, CURRENT_LIMIT * 100)));
}

function constantFrequency(table: LogTable): void {
  digits(table, "frequency", "system").fill(50_000);
}

function wrongPlt(table: LogTable): void {
  const plt = digits(table, "plt", "L2");
  plt.set(plt.map((v) => Math.round(0.6 * v)));
}

function wrongThd(table: LogTable): void {
  const thd = digits(table, "thd-voltage", "L1");
  thd.set(thd.map((v) => Math.round(0.7 * v)));
}

function missingMarks(table: LogTable): void {
  for (const target of [digits(table, "current", "L2"), digits(table, "voltage", "L1"), digits(table, "pst", "L3")]) {
    each(FLAWS.missingMarks, (i) => {
      target[i] = Number.NaN;
    });
  }
}

/** A column that is none of ours, and one whose name would run a script in a page that trusts it. */
function extraColumns(count: number) {
  return [
    { header: "Cabinet humidity [%]", cells: Array.from({ length: count }, (_, i) => String(48 + (i % 9))) },
    {
      header: '<img src=x onerror="alert(1)"> door contact',
      cells: Array.from({ length: count }, (_, i) => (i % 97 === 0 ? "open" : "shut")),
    },
  ];
}
