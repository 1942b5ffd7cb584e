import { describe, expect, it } from "vitest";
import { unbalanceFromPhaseToPhase } from "../../src/analysis/unbalance.js";

/**
 * β formula of IEC 61000-4-30 for u2 from three phase-to-phase r.m.s. values. Rows: voltages and u2 computed from the
 * formula with 8 digits outside this project; the row 200/205/220 V is the example of a public voltage-unbalance
 * calculator. The last row is a phasor example: 230∠0°, 225∠−121°, 235∠119°, whose negative over positive sequence is
 * 0.67340 %, found by symmetrical components and not by this formula.
 */
const ROWS = [
  { u: [400, 400, 400], u2: 0 },
  { u: [400, 390, 410], u2: 2.88803 },
  { u: [400, 380, 400], u2: 3.36297 },
  { u: [230, 240, 220], u2: 5.02719 },
  { u: [200, 205, 220], u2: 5.84145 },
  { u: [396.0195, 398.40306, 400.6656], u2: 0.6734 },
] as const;

describe("unbalance from three phase-to-phase voltages", () => {
  it.each(ROWS)("$u V give u2 = $u2 %", ({ u, u2 }) => {
    const [u12, u23, u31] = u;
    expect(unbalanceFromPhaseToPhase(u12, u23, u31)).toBeCloseTo(u2, 4);
  });

  /**
   * Public worked example of symmetrical components (textbook-companion notebook, Example 21_1): 100∠90°, 116∠0°,
   * 71∠224.8° V; positive sequence 93.222 V, negative 7.260 V, so u2 = 7.788 %. The phase-to-phase voltages follow from
   * the phasors.
   */
  it("agrees with the symmetrical components of a worked example", () => {
    const phasor = (u: number, degrees: number) => [
      u * Math.cos((degrees * Math.PI) / 180),
      u * Math.sin((degrees * Math.PI) / 180),
    ];
    const [a, b, c] = [phasor(100, 90), phasor(116, 0), phasor(71, 224.8)] as [number[], number[], number[]];
    const between = (p: number[], q: number[]) => Math.hypot((p[0] ?? 0) - (q[0] ?? 0), (p[1] ?? 0) - (q[1] ?? 0));
    expect(unbalanceFromPhaseToPhase(between(a, b), between(b, c), between(c, a))).toBeCloseTo(7.788, 3);
  });

  it("is 100 % where three voltages form no triangle, 0 in exact balance, and has no value for a dead supply", () => {
    expect(unbalanceFromPhaseToPhase(100, 100, 300)).toBe(100);
    expect(unbalanceFromPhaseToPhase(400, 199.4, 199.4)).toBe(100);
    for (const u of [230.1, 398.37, 399.99]) expect(unbalanceFromPhaseToPhase(u, u, u)).toBe(0);
    expect(unbalanceFromPhaseToPhase(0, 0, 0)).toBeNaN();
  });
});
