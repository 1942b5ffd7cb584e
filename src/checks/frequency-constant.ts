import type { Finding } from "../recording/finding.js";
import type { LoggedSeries } from "../recording/recording.js";
import { DAY, type Duration, HOUR, type Instant, isoUtc, SECOND } from "../recording/time.js";
import { say } from "../sentence.js";
import type { Check } from "./check.js";
import { resolutionOf } from "./common/series.js";
import { counted, figure, span } from "./common/wording.js";

/** Coarsest written digit with which a frequency that never changes in a day is no accident of rounding, Hz. */
const RESOLUTION_WHOLE = 0.01;
/** The same for a single hour. */
const RESOLUTION_HOUR = 0.001;
const HOUR_VALUES = 6;
/** Ten-minute means of a large grid spread by 10 to 25 mHz in a day (common practice, no source). */
const CALM = 0.001;
/** Share of a day's values that must be there to speak of its spread. */
const WHOLE_DAY = 0.9;
/** Fewer values over the whole recording show nothing. */
const FEWEST = 100;

/**
 * A frequency that does not move. In a public grid it spreads by 10 to 25 mHz a day, so a day or more without a single
 * change at 10 mHz resolution was not measured, or comes from a crystal-controlled inverter, which is no public supply:
 * blocks. One constant hour at 1 mHz resolution, or a day that spreads by less than 1 mHz, is noted. Coarser logs
 * (50.0 all day) show nothing and are left alone.
 */
export const frequencyConstant: Check = {
  id: "frequency-constant",
  title: "Frequency constant to the last digit for an hour or longer, or spreading by less than 1 mHz in a day",
  source: "common practice, no source (a large grid spreads by 10 to 25 mHz in a day)",
  run({ recording }) {
    const series = recording.series.find((s) => s.quantity === "frequency");
    if (series === undefined) return [];
    const { whole, longest } = constantRuns(series);
    if (whole !== undefined) return whole;
    const resolution = resolutionOf(series);
    if (resolution > RESOLUTION_HOUR * (1 + 1e-6)) return [];
    return [...constantHour(longest), ...calmDays(series)];
  },
};

interface Run {
  values: number;
  time: Duration;
  from: Instant;
  value: number;
}

function constantRuns(series: LoggedSeries): { whole: Finding[] | undefined; longest: Run } {
  const { axis, values } = series;
  const longest: Run = { values: 0, time: 0, from: Number.NaN, value: Number.NaN };
  let present = 0;
  let changes = 0;
  let last = Number.NaN;
  let run = 0;
  let from = 0;
  let previous = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < values.length; i++) {
    const value = values[i] as number;
    if (Number.isNaN(value)) continue;
    const at = axis.starts[i] as number;
    present++;
    if (present > 1 && value !== last) changes++;
    if (value === last && at - previous < 1.5 * axis.interval) {
      run++;
    } else {
      run = 1;
      from = at;
    }
    last = value;
    previous = at;
    if (run > longest.values) Object.assign(longest, { values: run, time: at + axis.interval - from, from, value });
  }
  if (present < FEWEST || changes > 0 || present * axis.interval < DAY) return { whole: undefined, longest };
  // A frequency that never changes leaves nothing to tell its resolution by but the written digits.
  if (series.resolution === undefined || series.resolution > RESOLUTION_WHOLE * (1 + 1e-6))
    return { whole: [], longest };
  const finding: Finding = {
    id: "frequency-constant",
    severity: "blocks",
    sentence: say`All ${present} values of the power frequency are ${figure(last)} Hz to the last digit (${figure(series.resolution)} Hz), where a large grid spreads by 10 to 25 mHz in a day; the recorder seems not to have measured it, unless the point is fed by an inverter of constant frequency, which is no public supply; the frequency is not judged, so switch its measurement on and record again.`,
    evidence: { values: present, value: last, resolution: series.resolution },
    quantities: ["frequency"],
    phases: [],
  };
  return { whole: [finding], longest };
}

function constantHour({ values, time, from, value }: Run): Finding[] {
  if (time < HOUR || values < HOUR_VALUES) return [];
  return [
    {
      id: "frequency-constant-hour",
      severity: "note",
      sentence: say`The power frequency is ${figure(value)} Hz to the last digit for ${span(time)} (${values} values) from ${isoUtc(from)}; a grid never stands still that long, so the recorder may have held its last value or an inverter may have fed the point; look at what else was logged then.`,
      evidence: { value, timeS: time / SECOND, values, from: isoUtc(from) },
      quantities: ["frequency"],
      phases: [],
    },
  ];
}

function calmDays({ axis, values }: LoggedSeries): Finding[] {
  const first = axis.starts[0];
  if (first === undefined) return [];
  let days = 0;
  let calmest = Number.POSITIVE_INFINITY;
  let calmestFrom = Number.NaN;
  let calm = 0;
  let n = 0;
  let mean = 0;
  let squares = 0;
  const endDay = (day: number) => {
    if (n >= (WHOLE_DAY * DAY) / axis.interval) {
      days++;
      const deviation = Math.sqrt(squares / n);
      if (deviation < CALM) calm++;
      if (deviation < calmest) [calmest, calmestFrom] = [deviation, first + day * DAY];
    }
    n = 0;
    mean = 0;
    squares = 0;
  };
  let day = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i] as number;
    if (Number.isNaN(value)) continue;
    const now = Math.floor(((axis.starts[i] as number) - first) / DAY);
    if (now !== day) {
      endDay(day);
      day = now;
    }
    n++;
    const off = value - mean;
    mean += off / n;
    squares += off * (value - mean);
  }
  endDay(day);
  if (calm === 0) return [];
  return [
    {
      id: "frequency-calm",
      severity: "note",
      sentence: say`In ${calm} of ${counted(days, "day")} the power frequency spreads by less than 1 mHz, least with ${figure(1000 * calmest)} mHz in the day from ${isoUtc(calmestFrom)}, where a large grid spreads by 10 to 25 mHz; an inverter or an uninterruptible supply may feed the point, or the values were not measured; check what was connected.`,
      evidence: { calmDays: calm, days, deviationMilliHz: 1000 * calmest, from: isoUtc(calmestFrom) },
      quantities: ["frequency"],
      phases: [],
    },
  ];
}
