import type { SlidingVoltage, SpanVoltage } from "../recording/supply-detail.js";

/** Sliding means of several sources as one for each phase; no window reaches from one source into another. */
export function joinSliding(parts: readonly SlidingVoltage[]): SlidingVoltage[] {
  return joined(parts, ({ phase, interval }) => `${phase} ${interval}`, bothSliding);
}

/** What several sources hold of one span as one for each phase. */
export function joinSpans(parts: readonly SpanVoltage[]): SpanVoltage[] {
  return joined(parts, ({ phase, asked }) => `${phase} ${asked.from} ${asked.to}`, bothSpans);
}

function bothSliding(a: SlidingVoltage, b: SlidingVoltage): SlidingVoltage {
  return {
    ...a,
    n: a.n + b.n,
    lowest: b.lowest.value < a.lowest.value ? b.lowest : a.lowest,
    highest: b.highest.value > a.highest.value ? b.highest : a.highest,
    passed: [...a.passed, ...b.passed].sort((p, q) => p.start - q.start),
  };
}

function bothSpans(a: SpanVoltage, b: SpanVoltage): SpanVoltage {
  return {
    ...a,
    n: a.n + b.n,
    start: Math.min(a.start, b.start),
    end: Math.max(a.end, b.end),
    lowest: Math.min(a.lowest, b.lowest),
    highest: Math.max(a.highest, b.highest),
    mean: Math.sqrt((a.n * a.mean ** 2 + b.n * b.mean ** 2) / (a.n + b.n)),
  };
}

function joined<T>(parts: readonly T[], keyOf: (part: T) => string, both: (a: T, b: T) => T): T[] {
  const groups = new Map<string, T>();
  for (const part of parts) {
    const known = groups.get(keyOf(part));
    groups.set(keyOf(part), known === undefined ? part : both(known, part));
  }
  return [...groups.values()];
}
