import { expect, test } from "vitest";
import type { Phase } from "../../src/recording/quantity.js";
import { SIX_DIALECTS } from "../support/dialect.js";
import { column, type LogColumn, type LogTable } from "../support/log-table.js";
import { VILLAGE } from "../support/sample-logs.js";
import { simulate } from "../support/sample-site.js";
import { assessTable } from "../support/whole-run.js";

const SETUP = { connection: "delta", declaredVoltage: 400 } as const;
const BETWEEN: readonly Phase[] = ["L12", "L23", "L31"];
const PHASES: readonly Phase[] = ["L1", "L2", "L3"];

/** A village supply whose phase-to-phase voltages are judged, with some exceedances, missing values and flags. */
function recording(start: string, days: number): LogTable {
  const site = simulate({ ...VILLAGE, start: Date.parse(start) * 1000, count: 144 * days, source: 247 });
  const voltage = (statistic: LogColumn["statistic"], offset: number) =>
    BETWEEN.map((phase, p) =>
      column({ quantity: "voltage", phase, statistic }, 2, site.phaseToPhase[p]?.map((u) => u + offset) ?? []),
    );
  const columns = [
    ...voltage("mean", 0),
    ...voltage("min", -2.5),
    ...voltage("max", 1.75),
    column({ quantity: "frequency", phase: "system" }, 3, site.frequency),
    column({ quantity: "active-power", phase: "system" }, 0, site.activePower),
    ...PHASES.flatMap((phase, p) => [
      column({ quantity: "current", phase }, 2, site.current[p] as Float64Array),
      column({ quantity: "pst", phase }, 3, site.pst[p] as Float64Array),
      ...[2, 3, 5, 7, 9, 11, 13, 15, 21, 25].map((order) =>
        column({ quantity: "harmonic-voltage", phase, order }, 2, site.harmonics[p]?.[order] as Float64Array),
      ),
    ]),
  ];
  for (const [c, { digits }] of columns.entries()) for (let i = 200 + c; i < 206 + 2 * c; i++) digits[i] = Number.NaN;
  return { interval: 600e6, starts: [...site.starts], columns, flagged: site.flagged };
}

test.each([
  ["over the change to summer time in Europe", "2026-03-25T08:00Z", 8],
  ["over the changes to winter time in Europe and in America", "2026-10-24T08:00Z", 9],
])("one recording %s, written in six dialects, gives byte-identical weeks", async (_, start, days) => {
  const table = recording(start, days);
  const [reference, ...others] = await Promise.all(
    SIX_DIALECTS.map(async (dialect) => ({
      id: dialect.id,
      weeks: JSON.stringify((await assessTable(table, SETUP, dialect)).weeks),
    })),
  );
  // Enough happens in this recording for a difference to show.
  expect(reference?.weeks).toContain('"does-not-conform"');
  expect(reference?.weeks).toContain('"conforms"');
  for (const { id, weeks } of others) expect(weeks === reference?.weeks ? "identical" : weeks, id).toBe("identical");
});
