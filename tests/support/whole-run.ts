import { assess } from "../../src/assess.js";
import { readBundledRule } from "../../src/cli/files.js";
import type { LogFile } from "../../src/recording/log-file.js";
import type { GivenSetup } from "../../src/recording/setup.js";
import type { Assessment, Row, Week } from "../../src/rules/assessment.js";
import { loadRuleSet } from "../../src/rules/load-rule-set.js";
import { type Dialect, PLAIN } from "./dialect.js";
import type { LogTable } from "./log-table.js";
import { setupOf, writeLog } from "./write-log.js";

/** A log in memory. */
export interface LogBytes {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** The whole main job on logs in memory, from their bytes to the result document. */
export async function assessLogs(
  logs: readonly LogBytes[],
  setup: GivenSetup,
  rules = "en50160-2010-lv",
): Promise<Assessment> {
  return (await runLogs(logs, setup, rules)).assessment;
}

/** The same with what was measured, as renderers want it. */
export async function runLogs(
  logs: readonly LogBytes[],
  setup: GivenSetup,
  rules = "en50160-2010-lv",
): ReturnType<typeof assess> {
  return assess(logs.map(inMemory), {
    tool: { name: "mainswitness", version: "0.0.0" },
    setup,
    ruleSet: await loadRuleSet(rules, readBundledRule),
    ruleSetGiven: true,
  });
}

/** The same for a table, written in one dialect and read with what has to be said of it. */
export async function assessTable(
  table: LogTable,
  setup: GivenSetup,
  dialect: Dialect = PLAIN,
  rules?: string,
): Promise<Assessment> {
  const name = `${dialect.id}.csv${dialect.gzip ? ".gz" : ""}`;
  return assessLogs([{ name, bytes: writeLog(table, dialect) }], { ...setup, ...setupOf(dialect) }, rules);
}

export function inMemory({ name, bytes }: LogBytes): LogFile {
  return {
    name,
    size: bytes.length,
    read: async (offset, length) => bytes.subarray(offset, Math.min(bytes.length, offset + length)),
  };
}

/** The row of a requirement on a phase (and order) in a week. */
export function rowOf(week: Week | undefined, id: string, phase: Row["phase"], order?: number): Row {
  const row = week?.requirements.find((r) => r.id === id && r.phase === phase && r.order === order);
  if (row === undefined) throw new RangeError(`no row ${id} ${phase} ${order ?? ""}`);
  return row;
}
