import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { CHECKS } from "../../src/checks/index.js";
import { setupSchema } from "../../src/recording/setup.js";
import type { Assessment, Row } from "../../src/rules/assessment.js";
import { FLAWS } from "../support/flaws.js";
import { assessLogs, rowOf } from "../support/whole-run.js";

/** What sample-logs/README.md promises of each log, as whole runs on the committed files. */

const folder = new URL("../../sample-logs/", import.meta.url);

function run(files: readonly string[], setup: string, rules = "en50160-2010-lv"): Promise<Assessment> {
  const given = setupSchema.parse(parse(readFileSync(new URL(`${setup}.setup.yaml`, folder), "utf8")));
  return assessLogs(
    files.map((name) => ({ name, bytes: readFileSync(new URL(name, folder)) })),
    given,
    rules,
  );
}

const failing = ({ weeks }: Assessment) =>
  weeks[0]?.requirements.filter((r) => r.verdict === "does-not-conform").map(place) ?? [];
const place = (r: Row) => [r.id, r.phase, r.order].filter((part) => part !== undefined).join(" ");
const findingIds = ({ recording }: Assessment) => new Set(recording.findings.map((f) => f.id));
const unused = ({ recording }: Assessment) =>
  recording.columns.filter((c) => c.takenFor === undefined).map((c) => c.header);

describe("village-feeder", () => {
  test("too high at midday on L2, the 15th and 21st harmonic too high by the 2010 edition", async () => {
    const result = await run(["village-feeder.csv.gz"], "village-feeder");
    expect(result.verdict).toBe("does-not-conform");
    const harmonics = [15, 21].flatMap((order) => ["L1", "L2", "L3"].map((p) => `harmonic-voltage ${p} ${order}`));
    expect(failing(result)).toEqual(["supply-voltage-always L2", ...harmonics]);
    expect(rowOf(result.weeks[0], "supply-voltage", "L2")).toMatchObject({
      outside: 42,
      allowed: 50,
      verdict: "conforms",
    });
    expect(findingIds(result)).toEqual(new Set(["clock-change"]));
    expect(result.recording.intervals).toMatchObject({ expected: 1032, missing: 0, flagged: 2 });
    expect(unused(result)).toEqual([]);
  });

  test("the two dips lift one Plt on each phase they touch above 1, and these are flagged", async () => {
    const result = await run(["village-feeder.csv.gz"], "village-feeder");
    const counts = (phase: Row["phase"]) => rowOf(result.weeks[0], "flicker", phase).counts;
    expect(counts("L1")).toMatchObject({ withFlagged: { n: 84, outside: 1 }, withoutFlagged: { n: 82, outside: 0 } });
    expect(counts("L3").withFlagged.outside).toBe(0);
  });

  test("by the 2022 edition the harmonics conform; the second file adds the week's frequency", async () => {
    const files = ["village-feeder.csv.gz", "village-feeder-frequency.csv.gz"];
    const result = await run(files, "village-feeder", "en50160-2022-lv");
    expect(failing(result)).toEqual(["supply-voltage-always L2"]);
    expect(rowOf(result.weeks[0], "frequency", "system")).toMatchObject({
      n: 60_480,
      outside: 0,
      verdict: "for-information",
    });
    expect(result.notAssessed.map((n) => n.requirement)).not.toContain("frequency");
  });
});

test("clean-site conforms in everything that was measured, and nothing is wrong with it", async () => {
  const result = await run(["clean-site.csv"], "clean-site");
  expect(result.verdict).toBe("conforms");
  expect(result.weeks[0]).toMatchObject({ kind: "consecutive", complete: true, coverage: 1, verdict: "conforms" });
  expect(result.weeks[0]?.requirements.every((r) => r.robust && r.outside === 0)).toBe(true);
  expect(result.recording.findings.filter((f) => f.severity !== "none")).toEqual([]);
  expect(unused(result)).toEqual([]);
});

describe("every-flaw", () => {
  test("every check finds what is there for it, except those that look at the whole of a log", async () => {
    const result = await run(["every-flaw.csv"], "every-flaw");
    expect([...findingIds(result)].sort()).toEqual([
      "clipped-maximum",
      "clock-steps",
      "conflicting-rows",
      "duplicate-rows",
      "first-flicker",
      "frequency-constant",
      "gaps",
      "highest-voltage",
      "identical-phases",
      "lost-phase",
      "mean-outside-extremes",
      "open-neutral",
      "plt-from-pst",
      "repeated-values",
      "row-order",
      "ten-minute-tick",
      "thd-from-harmonics",
    ]);
    const dangers = result.recording.findings.map((f) => f.danger).filter((danger) => danger !== undefined);
    expect(new Set(dangers)).toEqual(new Set(["open-neutral", "high-voltage"]));
    const silent = CHECKS.map((c) => c.id).filter((id) => !findingIds(result).has(id));
    // These need a log that is altogether of another kind; "lost-phase" is what dead-phase finds of a part.
    expect(silent.sort()).toEqual([
      "calibration",
      "clock-change",
      "dead-phase",
      "declared-voltage",
      "impossible-values",
      "interrupted-intervals",
      "interval-length",
      "left-out-voltages",
      "logged-events",
      "nominal-frequency",
      "recording-length",
      "time-base",
    ]);
  });

  test("the ledger counts the rows", async () => {
    const result = await run(["every-flaw.csv"], "every-flaw");
    expect(result.recording.intervals.duplicate).toBe(FLAWS.repeatedRows.length);
    const evidence = (id: string) => result.recording.findings.find((f) => f.id === id)?.evidence;
    expect(evidence("conflicting-rows")).toMatchObject({ conflicts: FLAWS.conflictingRows.length });
    // The voltage of L1 lacks the gap, the missing marks and the rows that disagree.
    const lost = [FLAWS.gap, FLAWS.missingMarks].reduce((sum, [from, to]) => sum + to - from + 1, 0);
    expect(result.recording.intervals.missing).toBe(lost + FLAWS.conflictingRows.length);
  });

  test("columns of another kind are listed with a reason, their names as they stand", async () => {
    const result = await run(["every-flaw.csv"], "every-flaw");
    expect(unused(result)).toEqual(["Cabinet humidity [%]", '<img src=x onerror="alert(1)"> door contact']);
    for (const { reason } of result.recording.columns) expect(String(reason)).not.toBe("");
  });
});

describe("market-hall", () => {
  test("the week conforms; events are what the recorder was triggered by, from its waveforms first", async () => {
    const result = await run(["market-hall.pqd"], "market-hall");
    expect(result.verdict).toBe("conforms");
    expect(result.weeks[0]?.requirements.find((r) => r.id === "supply-voltage")).toMatchObject({
      n: 1008,
      origin: "logged",
    });
    const events = result.events.map(({ kind, phases, origin, durationS, percent }) => [
      kind,
      phases.join(),
      origin,
      durationS.toFixed(2),
      percent?.toFixed(1),
    ]);
    expect(events).toEqual([
      ["dip", "L1", undefined, "0.20", "62.3"],
      ["dip", "L2", "logged", "0.12", "74.0"],
      ["swell", "L2", "logged", "1.50", "112.0"],
    ]);
    expect([...findingIds(result)].sort()).toEqual(["events-triggered", "logged-events-differ"]);
    const dips = result.notAssessed.find(({ requirement }) => requirement === "voltage-dips");
    expect(dips?.reason.id).toBe("events-triggered");
  });
});
