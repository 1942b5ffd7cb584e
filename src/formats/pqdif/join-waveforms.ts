import { isoUtc, SECOND } from "../../recording/time.js";
import type { WaveformBlock, WaveformSource } from "../../recording/waveform.js";
import { say, type Text } from "../../sentence.js";
import { joinParts, type Part } from "../waveform/join.js";

/**
 * Parts as sources, one for each set of channels and rate. Of observations that hold the same channel at the same time
 * (two that one trigger started) the first with the most channels stays whole, and of the other what goes beyond its end.
 */
export function sourcesOf(parts: readonly Part[]): { sources: WaveformSource[]; remarks: Text[] } {
  const { kept, remarks } = withoutOverlaps(parts);
  const groups = new Map<string, Part[]>();
  for (const part of kept) {
    const key = JSON.stringify(part.channels);
    groups.set(key, [...(groups.get(key) ?? []), part]);
  }
  const joined = [...groups.values()].map(joinParts);
  return {
    sources: joined.flatMap((j) => j.sources).sort((a, b) => a.start - b.start),
    remarks: [...remarks, ...joined.flatMap((j) => j.remarks)],
  };
}

function withoutOverlaps(parts: readonly Part[]): { kept: Part[]; remarks: Text[] } {
  const kept: Part[] = [];
  const remarks: Text[] = [];
  const endOf = ({ start, length, samplesPerSecond }: Part) => start + (length / samplesPerSecond) * SECOND;
  const places = ({ channels }: Part) => channels.map(({ quantity, phase }) => `${quantity} ${phase}`);
  for (const part of parts.toSorted((a, b) => a.start - b.start || b.channels.length - a.channels.length)) {
    const own = new Set(places(part));
    const half = (0.5 / part.samplesPerSecond) * SECOND;
    const rivals = kept.filter((other) => endOf(other) > part.start + half && places(other).some((p) => own.has(p)));
    const until = Math.max(part.start, ...rivals.map(endOf));
    const skip = Math.ceil(((until - part.start) / SECOND) * part.samplesPerSecond - 0.5);
    if (rivals.length === 0) kept.push(part);
    else {
      remarks.push(
        say`${part.file}: the observation at ${isoUtc(part.start)} repeats samples of one that began before; they are counted once.`,
      );
      if (skip < part.length) kept.push(later(part, skip));
    }
  }
  return { kept, remarks };
}

/** A part without its first samples. */
function later(part: Part, skip: number): Part {
  async function* blocks(): AsyncGenerator<WaveformBlock> {
    for await (const { first, samples } of part.blocks()) {
      const cut = Math.max(0, skip - first);
      if (cut >= (samples[0]?.length ?? 0)) continue;
      yield { first: first + cut - skip, samples: samples.map((s) => s.subarray(cut)) };
    }
  }
  const start = part.start + Math.round((skip / part.samplesPerSecond) * SECOND);
  return { ...part, start, length: part.length - skip, blocks };
}
