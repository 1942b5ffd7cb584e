import type { Wave } from "./waves.js";

/**
 * One conductor's wave as a function of the place in the cycle and of time. The harmonics are summed by Clenshaw's
 * recurrence from one sine and one cosine; its rounding stays below 10⁻¹² of the fundamental for 100 orders.
 */
export class Conductor {
  private readonly sines: Float64Array;
  private readonly cosines: Float64Array;
  private readonly interharmonics: Wave["interharmonics"];

  constructor({ orders, interharmonics }: Wave) {
    const highest = Math.max(...orders.keys());
    this.sines = new Float64Array(highest + 1);
    this.cosines = new Float64Array(highest + 1);
    for (const [order, { rms, angle }] of orders) {
      this.sines[order] = Math.SQRT2 * rms * Math.cos(angle);
      this.cosines[order] = Math.SQRT2 * rms * Math.sin(angle);
    }
    this.interharmonics = interharmonics.map((i) => ({ ...i, rms: Math.SQRT2 * i.rms }));
  }

  /** Largest magnitude that can occur. */
  get bound(): number {
    let bound = this.interharmonics.reduce((total, { rms }) => total + rms, 0);
    for (let k = 1; k < this.sines.length; k++) {
      bound += Math.hypot(this.sines[k] as number, this.cosines[k] as number);
    }
    return bound;
  }

  /** @param sin, cos of the angle in the cycle @param t s */
  at(sin: number, cos: number, t: number): number {
    const { sines, cosines, interharmonics } = this;
    const twice = 2 * cos;
    let s1 = 0;
    let s2 = 0;
    let c1 = 0;
    let c2 = 0;
    for (let k = sines.length - 1; k > 0; k--) {
      const s = (sines[k] as number) + twice * s1 - s2;
      s2 = s1;
      s1 = s;
      const c = (cosines[k] as number) + twice * c1 - c2;
      c2 = c1;
      c1 = c;
    }
    let value = s1 * sin + c1 * cos - c2;
    for (let i = 0; i < interharmonics.length; i++) {
      const { hertz, rms, angle } = interharmonics[i] as Wave["interharmonics"][number];
      const cycles = hertz * t;
      value += rms * Math.sin(2 * Math.PI * (cycles - Math.floor(cycles)) + angle);
    }
    return value;
  }
}
