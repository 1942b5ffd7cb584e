import { describe, expect, it } from "vitest";
import { starPoint } from "../../src/checks/common/star-point.js";
import { abs, add, type Complex, polar, subtract } from "../support/phasors.js";

function ofPhasors(u: readonly [Complex, Complex, Complex]) {
  return starPoint(
    [abs(u[0]), abs(u[1]), abs(u[2])],
    [abs(subtract(u[0], u[1])), abs(subtract(u[1], u[2])), abs(subtract(u[2], u[0]))],
  );
}

describe("star point", () => {
  it("gives zero and negative sequence of a worked example", () => {
    // 230∠0°, 225∠−121°, 235∠119°: U0 = 4.224785 V, U2 = 1.548778 V by the method of symmetrical components.
    const { zero, negative } = starPoint([230, 225, 235], [396.0195, 398.40306, 400.6656]);
    expect(zero).toBeCloseTo(4.224785, 4);
    expect(negative).toBeCloseTo(1.548778, 4);
  });

  it("agrees with phasors for any displacement, whichever way the phases turn", () => {
    for (const turn of [1, -1]) {
      for (const displacement of [polar(0, 0), polar(3, 40), polar(60, 200), polar(120, 290)]) {
        const star = [0, -120 * turn, 120 * turn].map((angle) => polar(230, angle));
        const u2 = [0, 120 * turn, -120 * turn].map((angle) => polar(2.5, angle + 70));
        const u = star.map((e, k) => add(add(e, u2[k] as Complex), displacement)) as [Complex, Complex, Complex];
        expect(ofPhasors(u).zero).toBeCloseTo(abs(displacement), 9);
        expect(ofPhasors(u).negative).toBeCloseTo(2.5, 9);
      }
    }
  });

  it("tells no numbers where the sides make no triangle", () => {
    expect(starPoint([230, 230, 230], [100, 100, 400]).zero).toBeNaN();
  });
});
