import { describe, expect, it } from "vitest";
import { openNeutral } from "../../src/checks/open-neutral.js";
import type { Recording } from "../../src/recording/recording.js";
import { MINUTE, SECOND } from "../../src/recording/time.js";
import { abs, type Complex, polar, subtract } from "../support/phasors.js";
import { VILLAGE } from "../support/sample-logs.js";
import { logged } from "../support/series.js";
import { isBetweenPhases, only, recordingOf, run, soundWeek, without } from "./support.js";

/**
 * A 230 V source behind an impedance of 1 Ω per phase and `neutral` Ω in the neutral, all real; in the rows given a load
 * draws `amperes` on L1. Written to 0.01 V.
 */
function line({ neutral, amperes, rows, of = 50, interval = 10 * MINUTE }: Load): Recording {
  const source = [0, -120, 120].map((angle) => polar(230, angle));
  const quiet = voltages(source, 0, 0);
  const loaded = voltages(source, amperes * (1 + neutral), amperes * neutral);
  const series = (["L1", "L2", "L3", "L12", "L23", "L31"] as const).map((phase, k) =>
    logged(
      "voltage",
      phase,
      Array.from({ length: of }, (_, i) => (i >= 10 && i < 10 + rows ? loaded : quiet)[k] as number),
      { interval },
    ),
  );
  return recordingOf(series);
}
interface Load {
  readonly neutral: number;
  readonly amperes: number;
  readonly rows: number;
  readonly of?: number;
  readonly interval?: number;
}

/** L1, L2, L3, L12, L23, L31 with the drops in L1 and in both other phases. */
function voltages(source: readonly Complex[], drop: number, shift: number): number[] {
  const [a, b, c] = source.map((e, k) => subtract(e, { re: k === 0 ? drop : shift, im: 0 })) as [
    Complex,
    Complex,
    Complex,
  ];
  return [a, b, c, subtract(a, b), subtract(b, c), subtract(c, a)].map((u) => Number(abs(u).toFixed(2)));
}

describe("open neutral", () => {
  it("warns of danger where voltages to neutral leave 80 to 115 % while those between phases hold", () => {
    // 230 V − 1·(1 + 60) V = 169 V; the other two rise by half the displacement and more.
    const finding = only(run(openNeutral, line({ neutral: 60, amperes: 1, rows: 3 })));
    expect(finding).toMatchObject({
      id: "open-neutral",
      severity: "note",
      danger: "open-neutral",
      phases: ["L1", "L2", "L3"],
      evidence: {
        timeS: 1800,
        rows: 3,
        urgentRows: 3,
        urgent: "yes",
        confirmable: "yes",
        at: "2026-03-02T01:40:00Z",
        l1: 169,
        l2: 265.14,
        l3: 265.14,
      },
    });
    expect(finding.evidence.spread).toBeCloseTo(96.14, 9);
    // Closed form: U0 = (1 + 3·60) / 3 V, U2 = 1/3 V.
    expect(finding.evidence.zeroSequence).toBeCloseTo(181 / 3, 1);
    expect(finding.evidence.ratio as number).toBeGreaterThan(100);
    expect(String(finding.sentence)).toContain("For 30 min (3 rows)");
    expect(String(finding.sentence)).toContain("this is urgent");
    expect(String(finding.sentence)).toContain("licensed electrician or the network operator, under the local codes");
  });

  it("tells a neutral of three times the phase impedance from unequal loads on a sound line", () => {
    const loose = only(run(openNeutral, line({ neutral: 3.3, amperes: 4, rows: 6 })));
    expect(loose).toMatchObject({ id: "open-neutral", danger: "open-neutral", evidence: { urgent: "no" } });
    expect(loose.evidence.ratio as number).toBeCloseTo(1 + 3 * 3.3, 0);
    expect(String(loose.sentence)).toContain("check the neutral soon");

    const sound = only(run(openNeutral, line({ neutral: 2.7, amperes: 4.5, rows: 6 })));
    expect(sound).toMatchObject({ id: "displaced-neutral", severity: "note" });
    expect(sound).not.toHaveProperty("danger");
    expect(sound.evidence.ratio as number).toBeCloseTo(1 + 3 * 2.7, 0);
  });

  it("needs ten minutes of it, ten seconds where it is urgent, an hour where loads explain it", () => {
    const seconds = { of: 900, interval: SECOND };
    expect(run(openNeutral, line({ neutral: 3.3, amperes: 4, rows: 599, ...seconds }))).toEqual([]);
    expect(run(openNeutral, line({ neutral: 3.3, amperes: 4, rows: 600, ...seconds }))).toHaveLength(1);
    expect(run(openNeutral, line({ neutral: 60, amperes: 1, rows: 9, ...seconds }))).toEqual([]);
    expect(run(openNeutral, line({ neutral: 60, amperes: 1, rows: 10, ...seconds }))).toHaveLength(1);
    expect(run(openNeutral, line({ neutral: 2.7, amperes: 4.5, rows: 5 }))).toEqual([]);
  });

  it("passes a spread of just less than 8 %, and a load that pulls the voltages between phases along", () => {
    expect(run(openNeutral, line({ neutral: 60, amperes: 0.19, rows: 20 }))).toEqual([]);
    expect(run(openNeutral, line({ neutral: 60, amperes: 0.21, rows: 20 }))).toHaveLength(1);
    // A neutral of 1 Ω like each phase: at 8 % the voltages between phases are more than 2 % apart.
    expect(run(openNeutral, line({ neutral: 1, amperes: 15, rows: 20 }))).toEqual([]);
  });

  it("says without voltages between phases that it cannot be confirmed; a danger only where urgent", () => {
    const alone = (load: Load) => run(openNeutral, without(line(load), isBetweenPhases));
    const urgent = only(alone({ neutral: 60, amperes: 1, rows: 3 }));
    expect(urgent).toMatchObject({
      id: "open-neutral",
      danger: "open-neutral",
      evidence: { confirmable: "no", urgent: "yes" },
    });
    expect(urgent.evidence).not.toHaveProperty("zeroSequence");
    expect(String(urgent.sentence)).toContain("cannot be confirmed");
    const weak = only(alone({ neutral: 60, amperes: 0.3, rows: 6 }));
    expect(weak.id).toBe("displaced-neutral");
    expect(weak).not.toHaveProperty("danger");
    // One phase sags under its own load while the others hardly move.
    expect(alone({ neutral: 0.5, amperes: 20, rows: 6 })).toEqual([]);
  });

  it("calls the unequal feed-in of a village line no danger", () => {
    for (const seed of [5, 7, 14]) {
      const dangers = run(openNeutral, soundWeek({ site: VILLAGE, seed })).filter((f) => f.danger !== undefined);
      expect(dangers).toEqual([]);
    }
  });

  it("is silent in a delta connection, and in a sound week", () => {
    const delta = { connection: { value: "delta", origin: "given" } } as const;
    expect(run(openNeutral, line({ neutral: 60, amperes: 1, rows: 3 }), delta)).toEqual([]);
    expect(run(openNeutral, soundWeek())).toEqual([]);
    expect(run(openNeutral, without(soundWeek({ decimals: 0 }), isBetweenPhases))).toEqual([]);
  });
});
