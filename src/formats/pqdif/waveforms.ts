import { LogError } from "../../errors.js";
import type { GivenSetup } from "../../recording/setup.js";
import { type Instant, SECOND } from "../../recording/time.js";
import { LOWEST_RATE, type WaveformBlock, type WaveformChannel } from "../../recording/waveform.js";
import { say, type Text } from "../../sentence.js";
import { withoutDoubles } from "../waveform/doubles.js";
import type { Part } from "../waveform/join.js";
import { corrected, correctionOf } from "./correction.js";
import type { Field, Fields } from "./fields.js";
import type { PqdifChannel, PqdifObservation, PqdifValues } from "./model.js";
import { type SampleRun, SampleRuns } from "./sample-runs.js";
import type { SampledField } from "./sampled-fields.js";
import { timesIn, timesOf } from "./times.js";

/** A channel of an observation that is read. */
interface SampledChannel {
  readonly use: SampledField;
  readonly channel: number;
}

/** Channels of one observation that share their sample times. */
interface Snippet {
  readonly observation: PqdifObservation;
  readonly runs: readonly SampleRun[];
  readonly channels: readonly SampledChannel[];
}

/** Samples of a block. */
const BLOCK = 65_536;

/**
 * Notes where the samples of the observations of a file are, without keeping them; they are read again, one observation at
 * a time, when a source is read.
 */
export class WaveformReader {
  /** Why samples of a field are not used, in some observation at least. */
  readonly problems = new Map<Field, Text>();
  readonly used = new Set<Field>();
  readonly remarks = new Map<string, Text>();
  private readonly snippets: Snippet[] = [];
  /** Voltages that had a sample other than 0. */
  private readonly alive = new Set<Field>();

  constructor(
    private readonly file: string,
    private readonly fields: Fields,
    private readonly uses: ReadonlyMap<Field, SampledField>,
    private readonly setup: GivenSetup,
  ) {}

  /** @returns the samples of its longest channel that is used */
  async take(observation: PqdifObservation, values: PqdifValues): Promise<number> {
    const groups = new Map<string, { snippet: Snippet; channels: SampledChannel[] }>();
    for (const [c, channel] of observation.channels.entries()) {
      for (const s of channel.series.keys()) {
        const field = this.fields.of(channel, s);
        const use = field && this.uses.get(field);
        const count = channel.series[s]?.count ?? 0;
        if (field === undefined || use?.meaning === undefined || count === 0) continue;
        try {
          const runs = await this.runsOf(observation, c, values, field, count);
          await this.lookAlive(field, values, c, s, count);
          if (runs.length === 0) continue;
          const key = JSON.stringify(runs);
          const channels = groups.get(key)?.channels ?? [];
          channels.push({ use, channel: c });
          groups.set(key, { snippet: { observation, runs, channels }, channels });
        } catch (error) {
          if (!(error instanceof LogError)) throw error;
          this.problems.set(field, say`it cannot be read: ${error.message}`);
        }
      }
    }
    const own = [...groups.values()].map(({ snippet }) => snippet);
    this.snippets.push(...own);
    return Math.max(0, ...own.flatMap(({ runs }) => runs.map(({ first, length }) => first + length)));
  }

  /** Reads the times of a channel in blocks. */
  private async runsOf(observation: PqdifObservation, c: number, values: PqdifValues, field: Field, count: number) {
    const nominal = observation.settings?.nominalFrequency ?? this.setup.nominalFrequency;
    const there = timesIn(observation.channels[c] as PqdifChannel);
    if (there !== count && there > 0) {
      this.note(say`${this.file}: "${field.header}" has other numbers of times and samples; the shorter one counts`);
    }
    const runs = new SampleRuns();
    const length = Math.min(there, count);
    for (let at = 0; at < Math.max(1, length); at += BLOCK) {
      const times = await timesOf(observation, c, values, nominal, at, Math.min(length, at + BLOCK));
      if ("seconds" in times) runs.take(times.seconds);
      else this.problems.set(field, times);
    }
    return runs.runs();
  }

  /** Notes a voltage that has a sample other than 0; reads on until there is one. */
  private async lookAlive(field: Field, values: PqdifValues, c: number, s: number, count: number): Promise<void> {
    if (this.uses.get(field)?.meaning?.quantity !== "voltage") return;
    for (let at = 0; at < count && !this.alive.has(field); at += BLOCK) {
      if ((await values.values(c, s, at, Math.min(count, at + BLOCK))).some((v) => v !== 0)) this.alive.add(field);
    }
  }

  /**
   * What was noted as parts at one rate each. Channels without a voltage beside them, and rates too low to be measured,
   * are left out with a reason.
   * @param toInstant from a stored time
   */
  parts(toInstant: (stored: number) => Instant): Part[] {
    for (const [field, { meaning }] of this.uses) {
      const isDead = meaning?.quantity === "voltage" && !this.alive.has(field) && !this.problems.has(field);
      if (isDead) this.problems.set(field, say`all its samples are 0: its input was not connected`);
    }
    return this.snippets.flatMap((snippet) => {
      const channels = this.usable(snippet.channels);
      if (channels.length === 0) return [];
      return snippet.runs.flatMap((run) => {
        if (run.samplesPerSecond < LOWEST_RATE) {
          const rate = Number(run.samplesPerSecond.toPrecision(4));
          for (const { use } of channels) {
            this.problems.set(
              use.field,
              say`it has ${rate} samples per second; waveforms are measured from ${LOWEST_RATE} up`,
            );
          }
          return [];
        }
        return [this.part(snippet, channels, run, toInstant)];
      });
    });
  }

  private usable(all: readonly SampledChannel[]): SampledChannel[] {
    const open = all.filter(({ use: { field, meaning } }) => meaning?.quantity !== "voltage" || this.alive.has(field));
    const named = open.map(({ use, channel }) => ({
      channel: { position: use.field.position, name: use.field.header },
      ...(use.meaning !== undefined && { meaning: use.meaning }),
      stated: use.stated,
      reason: "",
      own: { use, channel },
    }));
    const single = withoutDoubles(this.file, named);
    for (const { meaning, reason, own } of single) if (meaning === undefined) this.problems.set(own.use.field, reason);
    const kept = single.flatMap(({ meaning, own }) => (meaning === undefined ? [] : [own]));
    if (kept.some(({ use }) => use.meaning?.quantity === "voltage")) return kept;
    for (const { use } of kept) {
      this.problems.set(use.field, say`it is sampled apart from any voltage, and without one no cycle can be found`);
    }
    return [];
  }

  private part(
    { observation }: Snippet,
    channels: readonly SampledChannel[],
    run: SampleRun,
    toInstant: (stored: number) => Instant,
  ): Part {
    const { file, setup } = this;
    const corrections = channels.map(({ use: { field, inverted }, channel }) => {
      const { definitionIndex } = observation.channels[channel] as PqdifObservation["channels"][number];
      const found = correctionOf(observation.settings, definitionIndex, field.definition, field.series.units, setup);
      for (const text of found.applied) this.note(text);
      this.used.add(field);
      return { ...found, factor: inverted ? -found.factor : found.factor };
    });
    async function* blocks(): AsyncGenerator<WaveformBlock> {
      const values = await observation.open();
      for (let at = 0; at < run.length; at += BLOCK) {
        const [from, to] = [run.first + at, run.first + Math.min(run.length, at + BLOCK)];
        const samples: Float64Array[] = [];
        for (const [k, { use, channel }] of channels.entries()) {
          const stored = await values.values(channel, use.field.seriesIndex, from, to);
          samples.push(corrected(stored, corrections[k] as (typeof corrections)[number]));
        }
        yield { first: at, samples };
      }
    }
    return {
      file,
      place: `byte ${observation.byte}`,
      start: toInstant(observation.start + Math.round(run.startS * SECOND)),
      length: run.length,
      samplesPerSecond: run.samplesPerSecond,
      channels: channels.map(
        ({ use: { field, meaning } }, k): WaveformChannel => ({
          name: field.header,
          quantity: meaning?.quantity ?? "voltage",
          phase: meaning?.phase ?? "L1",
          skewS: corrections[k]?.skewS ?? 0,
        }),
      ),
      blocks,
    };
  }

  private note(text: Text): void {
    this.remarks.set(String(text), text);
  }
}
