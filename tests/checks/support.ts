import { measureLogged } from "../../src/analysis/index.js";
import type { Check, CheckInput } from "../../src/checks/check.js";
import type { Finding } from "../../src/recording/finding.js";
import { PHASE_TO_NEUTRAL, type Phase, type Quantity } from "../../src/recording/quantity.js";
import type { Ledger, LoggedSeries, Recording, TimeAxis } from "../../src/recording/recording.js";
import type { Setup } from "../../src/recording/setup.js";
import { type Instant, MINUTE } from "../../src/recording/time.js";
import type { LogTable } from "../support/log-table.js";
import { CLEAN, tableOf } from "../support/sample-logs.js";
import { type Site, simulate } from "../support/sample-site.js";
import { START } from "../support/series.js";

/** Intervals of ten minutes in a week. */
export const ROWS = 1008;
export const TEN_MINUTES = 10 * MINUTE;

const LEDGER: Ledger = {
  columns: [],
  timeBase: {
    zone: "Europe/Vienna",
    zoneOrigin: "given",
    intervalLabel: "start",
    labelOrigin: "given",
    stampForm: "ISO 8601",
  },
  remarks: [],
  duplicates: 0,
  conflicts: [],
  outOfOrder: 0,
  unplaced: 0,
  clockSteps: [],
  clockChanges: [],
};

const SETUP: Setup = {
  connection: { value: "star", origin: "given" },
  declaredVoltage: { value: 230, origin: "given" },
  nominalFrequency: { value: 50, origin: "given" },
  zone: { value: "Europe/Vienna", origin: "given" },
  intervalLabel: { value: "start", origin: "given" },
  ruleSet: { value: "en50160-2010-lv", origin: "given" },
};

/** A recording of just these series, from the first start to the last end. */
export function recordingOf(series: readonly LoggedSeries[], ledger: Partial<Ledger> = {}): Recording {
  const last = ({ axis }: LoggedSeries) => (axis.starts[axis.starts.length - 1] as number) + axis.interval;
  return {
    kind: "logged-series",
    waveforms: [],
    sources: [],
    start: Math.min(...series.map((s) => s.axis.starts[0] as number)),
    end: Math.max(...series.map(last)),
    series,
    ledger: { ...LEDGER, ...ledger },
  };
}

export interface WeekOptions {
  readonly seed?: number;
  /** Written decimals of the voltages, 2 if not given. */
  readonly decimals?: number;
  readonly site?: Site;
}

/** A sound week of ten-minute values at an invented site: U (with extremes), U L-L, I, f, u2, Pst, Plt, THD, harmonics 2…40. */
export function soundWeek({ seed = CLEAN.seed, decimals = 2, site = CLEAN }: WeekOptions = {}): Recording {
  const series = simulate({ ...site, seed, start: START, count: ROWS, dips: [] });
  return recordingOf(
    seriesOf(
      tableOf(
        series,
        Array.from({ length: 39 }, (_, i) => i + 2),
      ),
      decimals,
    ),
  );
}

function seriesOf(table: LogTable, voltageDecimals: number): LoggedSeries[] {
  const axis: TimeAxis = {
    interval: table.interval,
    starts: Float64Array.from(table.starts),
    flagged: Uint8Array.from(table.flagged ?? new Uint8Array(table.starts.length)),
  };
  const found = new Map<string, LoggedSeries>();
  for (const { statistic, decimals: written, digits, quantity, phase, order } of table.columns) {
    const decimals = quantity === "voltage" ? voltageDecimals : written;
    const values = digits.map((d) => Number((d / 10 ** written).toFixed(decimals)));
    const key = `${quantity} ${phase} ${order}`;
    const known = found.get(key);
    if (known !== undefined) found.set(key, { ...known, [statistic]: values });
    else
      found.set(key, {
        quantity,
        phase,
        ...(order !== undefined && { order }),
        unit: quantity === "voltage" ? "V" : unitOf(quantity),
        axis,
        values,
        resolution: 10 ** -decimals,
      });
  }
  return [...found.values()];
}

function unitOf(quantity: Quantity): LoggedSeries["unit"] {
  if (quantity === "frequency") return "Hz";
  if (quantity === "current") return "A";
  return quantity === "pst" || quantity === "plt" ? "1" : "%";
}

export function seriesIn(recording: Recording, quantity: Quantity, phase: Phase, order?: number): LoggedSeries {
  const found = recording.series.find((s) => s.quantity === quantity && s.phase === phase && s.order === order);
  if (found === undefined) throw new RangeError(`the recording has no ${quantity} ${phase}`);
  return found;
}

/** The values of a series, to be changed in place. */
export function valuesIn(recording: Recording, quantity: Quantity, phase: Phase, order?: number): Float64Array {
  return seriesIn(recording, quantity, phase, order).values;
}

export function withLedger(recording: Recording, ledger: Partial<Ledger>): Recording {
  return { ...recording, ledger: { ...recording.ledger, ...ledger } };
}

/** Only the rows that are kept, in all series. */
export function keepRows(recording: Recording, keep: (row: number) => boolean): Recording {
  const axes = new Map<TimeAxis, TimeAxis>();
  const cutAxis = (axis: TimeAxis) => {
    const cut = axes.get(axis) ?? {
      interval: axis.interval,
      starts: axis.starts.filter((_, i) => keep(i)),
      flagged: axis.flagged.filter((_, i) => keep(i)),
    };
    axes.set(axis, cut);
    return cut;
  };
  const cut = (values: Float64Array) => values.filter((_, i) => keep(i));
  return {
    ...recording,
    series: recording.series.map((s) => ({
      ...s,
      axis: cutAxis(s.axis),
      values: cut(s.values),
      ...(s.min !== undefined && { min: cut(s.min) }),
      ...(s.max !== undefined && { max: cut(s.max) }),
    })),
  };
}

export function without(recording: Recording, leave: (series: LoggedSeries) => boolean): Recording {
  return { ...recording, series: recording.series.filter((s) => !leave(s)) };
}

export const isBetweenPhases = ({ quantity, phase }: LoggedSeries) =>
  quantity === "voltage" && !(PHASE_TO_NEUTRAL as readonly Phase[]).includes(phase);

export function inputOf(recording: Recording, setup: Partial<Setup> = {}): CheckInput {
  return {
    recording,
    measurements: {
      ...measureLogged(recording),
      start: recording.start,
      end: recording.end,
      events: [],
      eventsSought: false,
    },
    setup: { ...SETUP, ...setup },
  };
}

export function run(check: Check, recording: Recording, setup: Partial<Setup> = {}): readonly Finding[] {
  return check.run(inputOf(recording, setup));
}

/** The start of a row of the sound week. */
export function startOf(row: number): Instant {
  return START + row * TEN_MINUTES;
}

/** The single finding of a check; fails where there is none or more. */
export function only(findings: readonly Finding[]): Finding {
  const [finding, ...more] = findings;
  if (finding === undefined || more.length > 0)
    throw new Error(`expected one finding, found ${findings.map((f) => f.id).join(", ") || "none"}`);
  return finding;
}
