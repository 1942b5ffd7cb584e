import { LogError } from "../../errors.js";
import { SECOND } from "../../recording/time.js";
import { say } from "../../sentence.js";
import { DRIFT } from "../waveform/join.js";
import type { Configuration, RateSegment } from "./configuration.js";
import type { FileRemark } from "./file-remark.js";
import type { DataSection } from "./file-set.js";
import type { StampSteps } from "./timestamps.js";

/** Part of a record with one rate. */
export interface Stretch {
  /** From the first sample to behind the last one, on the sample axis of the record. */
  readonly from: number;
  readonly to: number;
  readonly samplesPerSecond: number;
  /** Seconds from the first sample of the record to `from`. */
  readonly startS: number;
}

/** Time stamps may differ from the stated rate by this share before it is said. */
const CONFLICT = 0.01;
/** Where the stamps are the only time axis, no step may be this far from the median. */
const UNEVEN = 0.5;

/** Places on the sample axis at which the stated rate really changes. */
export function rateBreaks(configuration: Configuration): number[] {
  return groupsOf(configuration)
    .slice(0, -1)
    .map((group) => group.at(-1)?.lastSample ?? 0);
}

/**
 * Divides a record into stretches of constant rate. With stated rates the time stamps are not used, only compared.
 * Each sample lasts one period of the rate it was taken at. Rates that follow each other and differ by less than 0.1 %
 * become one stretch with their mean rate (samples by time).
 * @throws LogError if there is neither a stated rate nor an even series of time stamps
 */
export function stretchesOf(
  configuration: Configuration,
  data: DataSection,
  length: number,
  steps: StampSteps | undefined,
): { stretches: Stretch[]; remarks: FileRemark[] } {
  if (configuration.rates.length === 0) return stampedStretch(configuration, data, length, steps);
  const remarks: FileRemark[] = [];
  const stretches: Stretch[] = [];
  let [from, startS] = [0, 0];
  const groups = groupsOf(configuration);
  for (const [g, group] of groups.entries()) {
    const isLast = g === groups.length - 1;
    const to = isLast ? length : Math.min(length, group.at(-1)?.lastSample ?? length);
    const seconds = secondsOf(group, from, to, isLast);
    if (to <= from) break;
    const samplesPerSecond = group.length === 1 ? (group[0]?.rate ?? 0) : (to - from) / seconds;
    if (group.length > 1) {
      remarks.push({
        file: configuration.file,
        text: say`${group.length} sampling rates that differ by less than 0.1 % follow each other (a drifting clock); their mean, ${samplesPerSecond} per second, is used.`,
      });
    }
    stretches.push({ from, to, samplesPerSecond, startS });
    [from, startS] = [to, startS + seconds];
  }
  return { stretches, remarks: length > 1 ? [...remarks, ...stampConflict(configuration, data, steps)] : remarks };
}

function groupsOf({ rates }: Configuration): RateSegment[][] {
  const groups: RateSegment[][] = [];
  let [lowest, highest] = [0, 0];
  for (const segment of rates) {
    [lowest, highest] = [Math.min(lowest, segment.rate), Math.max(highest, segment.rate)];
    const group = groups.at(-1);
    if (group !== undefined && highest < lowest * (1 + DRIFT)) group.push(segment);
    else {
      groups.push([segment]);
      [lowest, highest] = [segment.rate, segment.rate];
    }
  }
  return groups;
}

function secondsOf(group: readonly RateSegment[], from: number, to: number, isLast: boolean) {
  let [seconds, at] = [0, from];
  for (const [k, { rate, lastSample }] of group.entries()) {
    const end = isLast && k === group.length - 1 ? to : Math.min(to, lastSample);
    if (end > at) seconds += (end - at) / rate;
    at = Math.max(at, end);
  }
  return seconds;
}

/** Seconds per unit of the time stamps: microseconds, or nanoseconds where the edition of 2013 writes its stamps so. */
function stampUnit({ edition, firstSample, timeFactor }: Configuration): number {
  return timeFactor * (edition === 2013 && firstSample.decimals > 6 ? 1e-9 : 1e-6);
}

function stampedStretch(
  configuration: Configuration,
  data: DataSection,
  length: number,
  steps: StampSteps | undefined,
): { stretches: Stretch[]; remarks: FileRemark[] } {
  if (steps === undefined) {
    throw new LogError(
      data.file.name,
      undefined,
      "the configuration states no sampling rate and the rows have no time stamps; state the rate in the configuration",
    );
  }
  const { elapsed, samples, smallest, largest, median } = steps;
  const unit = stampUnit(configuration);
  if (!(smallest > median * (1 - UNEVEN) && largest < median * (1 + UNEVEN))) {
    throw new LogError(
      data.file.name,
      undefined,
      `the configuration states no sampling rate and the time stamps are uneven (steps of ${secondsText(smallest * unit)} to ${secondsText(largest * unit)}), so they give no constant rate`,
    );
  }
  const samplesPerSecond = samples / (elapsed * unit);
  const text = say`no sampling rate is stated; by the time stamps it is ${samplesPerSecond} per second.`;
  return {
    stretches: [{ from: 0, to: length, samplesPerSecond, startS: 0 }],
    remarks: [{ file: configuration.file, text }],
  };
}

function stampConflict(configuration: Configuration, data: DataSection, steps: StampSteps | undefined): FileRemark[] {
  const file = data.file.name;
  const stated = configuration.rates[0]?.rate;
  if (stated === undefined) return [];
  if (steps === undefined)
    return [{ file, text: say`the rows have no time stamps; the stated sampling rate is used.` }];
  const unit = stampUnit(configuration);
  const stamped = steps.samples / (steps.elapsed * unit);
  const differs = (rate: number) => !(Math.abs(rate / stated - 1) <= CONFLICT);
  const remarks: FileRemark[] = [];
  if (steps.shortCounter)
    remarks.push({ file, text: say`the time stamps are cut to 16 bits; the stated sampling rate is used.` });
  if (differs(stamped) && differs(1 / (steps.median * unit))) {
    remarks.push({
      file,
      text: say`the time stamps speak of ${Number(stamped.toPrecision(6))} samples per second, the configuration of ${stated}; the configuration is used.`,
    });
  }
  return remarks;
}

function secondsText(seconds: number): string {
  return `${Number((seconds * (SECOND / 1000)).toPrecision(4))} ms`;
}
