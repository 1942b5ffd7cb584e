import type { Scenario } from "./scenario.js";

interface Stretch {
  readonly fromS: number;
  /** Whole and part cycles since the first sample. */
  readonly cycles: number;
  readonly hertz: number;
  readonly hertzPerS: number;
}

/**
 * The frequency as straight lines between points, and its integral in closed form: between two points the phase is a
 * polynomial of second degree, so no error adds up.
 */
export class FrequencyCourse {
  private readonly stretches: readonly Stretch[];

  constructor({ frequency }: Pick<Scenario, "frequency">) {
    const given = typeof frequency === "number" ? [{ atS: 0, hertz: frequency }] : frequency;
    const points = given[0]?.atS === 0 ? given : [{ atS: 0, hertz: given[0]?.hertz as number }, ...given];
    const stretches: Stretch[] = [];
    let cycles = 0;
    for (const [i, { atS, hertz }] of points.entries()) {
      const next = points[i + 1];
      const length = next === undefined ? 0 : next.atS - atS;
      const hertzPerS = next === undefined ? 0 : (next.hertz - hertz) / length;
      stretches.push({ fromS: atS, cycles, hertz, hertzPerS });
      cycles += (hertz + (hertzPerS * length) / 2) * length;
    }
    this.stretches = stretches;
  }

  /** Cycles of the fundamental from the first sample to t. */
  cyclesAt(t: number): number {
    const { fromS, cycles, hertz, hertzPerS } = this.stretchAt(t);
    const after = t - fromS;
    return cycles + (hertz + (hertzPerS * after) / 2) * after;
  }

  /** In Hz. */
  at(t: number): number {
    const { fromS, hertz, hertzPerS } = this.stretchAt(t);
    return hertz + hertzPerS * (t - fromS);
  }

  /** Mean over a stretch of time, in Hz: cycles over their duration. */
  mean(fromS: number, toS: number): number {
    return (this.cyclesAt(toS) - this.cyclesAt(fromS)) / (toS - fromS);
  }

  private stretchAt(t: number): Stretch {
    let found = this.stretches[0] as Stretch;
    for (const stretch of this.stretches) {
      if (stretch.fromS > t) break;
      found = stretch;
    }
    return found;
  }
}
