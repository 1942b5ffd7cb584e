import { stringify } from "yaml";
import { UsageError } from "../errors.js";
import {
  comtradeRows,
  configurationBytes,
  rowBytes,
  singleFileHead,
  type WrittenChannel,
  type WrittenRecord,
} from "../formats/comtrade/write.js";
import type { Progress } from "../recording/log-file.js";
import type { GivenSetup } from "../recording/setup.js";
import { isoUtc } from "../recording/time.js";
import { offsetText, TimeZone } from "../recording/time-zone.js";
import { intervalLogLines } from "../synth/interval-log.js";
import { type CheckedScenario, loggedSpan } from "../synth/parse-scenario.js";
import { type SynthesisedSource, synthesise } from "../synth/synthesise.js";
import { truthOf } from "../synth/truth.js";
import { waveformCsv } from "../synth/waveform-csv.js";
import type { FolderFile } from "./files.js";
import { pqdifBlock, pqdifIntervals, pqdifWaveforms } from "./made-pqdif.js";

export interface LogForm {
  /** Waveforms as a pair of files (.cfg, .dat), one file (.cff) or text, with interval logs as text; or all as PQDIF. */
  readonly format: "comtrade" | "cff" | "csv" | "pqdif";
  readonly kind: WrittenRecord["kind"];
  readonly edition: WrittenRecord["edition"];
}

/** Rounding in the file may lift the largest value by half a step. */
const HEADROOM = 1.001;

/**
 * The files of a made log: the log itself, made while it is written, with `truth.json` and a setup that states all that
 * the log does not say.
 * @param name of the log without extension
 * @throws UsageError for a form that cannot hold the scenario
 */
export function madeLog(
  scenario: CheckedScenario,
  name: string,
  form: LogForm,
  tool: { readonly name: string; readonly version: string },
  progress: Progress,
): FolderFile[] {
  const setup = stringify(setupOf(scenario, form));
  return [
    ...(scenario.samplesPerSecond === undefined ? [] : waveformFiles(scenario, name, form, progress)),
    ...scenario.intervalLogs.map((log) =>
      form.format === "pqdif"
        ? { path: `${name}-${log}.pqd`, content: pqdifIntervals(scenario, log, `${name}-${log}.pqd`) }
        : { path: `${name}-${log}.csv`, content: intervalLogLines(scenario, log) },
    ),
    { path: `${name}.setup.yaml`, content: setup },
    { path: "truth.json", content: `${JSON.stringify({ schema: 1, tool, ...truthOf(scenario) }, null, 2)}\n` },
  ];
}

function waveformFiles(scenario: CheckedScenario, name: string, form: LogForm, progress: Progress): FolderFile[] {
  if (form.format === "pqdif") {
    const source = watched(synthesise(scenario, pqdifBlock(scenario)), progress);
    return [{ path: `${name}.pqd`, content: pqdifWaveforms(scenario, source, `${name}.pqd`) }];
  }
  const source = watched(synthesise(scenario), progress);
  if (form.format === "csv") return [{ path: `${name}.csv`, content: waveformCsv(source) }];
  const record = recordOf(scenario, source, form);
  const rows = comtradeRows(record);
  const data = async function* (head: Uint8Array) {
    yield head;
    for await (const { first, samples } of source.blocks()) yield rows(first, samples);
  };
  if (form.format === "cff") {
    return [{ path: `${name}.cff`, content: data(singleFileHead(record, rowBytes(record) * record.length)) }];
  }
  return [
    { path: `${name}.cfg`, content: configurationBytes(record) },
    { path: `${name}.dat`, content: data(new Uint8Array()) },
  ];
}

function watched(source: SynthesisedSource, progress: Progress): SynthesisedSource {
  return {
    ...source,
    async *blocks() {
      for await (const block of source.blocks()) {
        progress("writing samples", block.first / source.length);
        yield block;
      }
    },
  };
}

const LARGEST_NUMBER = { ASCII: 99_998, BINARY: 0x7fff, BINARY32: 0x7fffffff, FLOAT32: 1 } as const;

function recordOf(scenario: CheckedScenario, source: SynthesisedSource, { kind, edition }: LogForm): WrittenRecord {
  const { nominalFrequency, quantisation, title } = scenario;
  const { start } = loggedSpan(scenario);
  const steps = { voltage: quantisation?.volts, current: quantisation?.amperes };
  const bounds = (of: "voltage" | "current") => source.bounds.filter((_, c) => source.channels[c]?.quantity === of);
  const channels = source.channels.map(({ name, quantity, phase }): WrittenChannel => {
    const needed = HEADROOM * Math.max(...bounds(quantity));
    const step = kind === "FLOAT32" ? undefined : steps[quantity];
    // A step of the scenario becomes the step of the file, so that it holds the very values.
    const fullScale = step === undefined ? needed : step * LARGEST_NUMBER[kind];
    if (fullScale < needed) {
      const unit = quantity === "voltage" ? "V" : "A";
      throw new UsageError(
        `With steps of ${step} ${unit} ${kind} data reach ${fullScale} ${unit}, and ${name} needs ${Math.ceil(needed)} ${unit}; take another --kind or a larger step.`,
      );
    }
    return { name, quantity, phase: phase.replace(/^L(\d)(\d)$/, "L$1-L$2"), fullScale };
  });
  const plain = title.replaceAll(/[,\s]+/g, " ");
  return {
    station: plain,
    device: "synthesised",
    edition,
    kind,
    channels,
    samplesPerSecond: source.samplesPerSecond,
    length: source.length,
    start,
    nominalFrequency,
    utcOffset: zoneOf(scenario).offsetAt(start),
  };
}

function zoneOf(scenario: CheckedScenario): TimeZone {
  const { start, end } = loggedSpan(scenario);
  return TimeZone.open(scenario.zone, start, end);
}

function setupOf(scenario: CheckedScenario, { format, edition }: LogForm): GivenSetup {
  const { title, connection, declaredVoltage, nominalFrequency } = scenario;
  const zone = zoneOf(scenario);
  const { start } = loggedSpan(scenario);
  const local = zone.toLocal(start);
  // In the hour that the clock shows twice only an offset tells which.
  const shownTwice = zone.earlierInstant(local) !== zone.laterInstant(local);
  return {
    site: title,
    connection,
    declaredVoltage,
    nominalFrequency,
    zone: shownTwice ? offsetText(zone.offsetAt(start)) : scenario.zone,
    ...(scenario.intervalLogs.length > 0 && { intervalLabel: "start" }),
    ...(scenario.samplesPerSecond !== undefined && format === "csv" && { start: isoUtc(start) }),
    ...(scenario.samplesPerSecond !== undefined &&
      (format === "comtrade" || format === "cff") && { dateOrder: edition === 1991 ? "mdy" : "dmy" }),
  };
}
