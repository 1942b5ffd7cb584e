import { Command } from "commander";
import { describe, expect, it } from "vitest";
import { registerProve } from "../../src/cli/commands/prove.js";
import { type Ending, exitCode } from "../../src/cli/exit-code.js";
import { run } from "../../src/cli/run.js";
import { PROOF_TABLES } from "../../src/prove/index.js";
import type { ProofRow, ProofTable } from "../../src/prove/proof-table.js";
import { type Proof, runTables } from "../../src/prove/run-tables.js";

const silent = () => {};
const isFlicker = ({ id }: { id: string }) => id.startsWith("flicker-");

function table(id: string, ...rows: ProofRow[]): ProofTable {
  return { id, title: `Table ${id}`, source: "closed form", confirmed: true, rows: () => rows };
}

const row = (what: string, expected: number, computed: number, tolerance: number): ProofRow => ({
  what,
  unit: "V",
  expected,
  computed,
  tolerance,
});

/** The command on other tables than those of the program. */
async function prove(tables: readonly ProofTable[], ...args: string[]): Promise<{ code: number; out: string }> {
  let out = "";
  let ending: Ending = { kind: "ran" };
  const io = {
    out: (text: string) => {
      out += text;
    },
    err: silent,
    interactive: false,
  };
  const program = new Command().exitOverride();
  registerProve(
    program,
    io,
    (how) => {
      ending = how;
    },
    tables,
  );
  await program.parseAsync(["prove", ...args], { from: "user" });
  return { code: exitCode(ending), out };
}

describe("mainswitness prove --quick", () => {
  it("finds every row within its tolerance, in a representative part of every table", {
    timeout: 120_000,
  }, async () => {
    let out = "";
    const io = {
      out: (text: string) => {
        out += text;
      },
      err: silent,
      interactive: false,
    };
    const cpu = process.cpuUsage();
    expect(await run(["prove", "--quick", "--json"], io, false)).toBe(0);
    const { user, system } = process.cpuUsage(cpu);
    // On one core; the other core may be busy with other tests.
    expect((user + system) / 1e6).toBeLessThan(20);

    const proof = JSON.parse(out) as Proof & { schema: number; tool: { name: string } };
    expect(proof).toMatchObject({ schema: 1, tool: { name: "mainswitness" }, quick: true, passed: true, out: 0 });
    expect(proof.tables.map(({ id }) => id)).toEqual(PROOF_TABLES.map(({ id }) => id));
    const rows = proof.tables.flatMap((t) => t.rows);
    expect(proof.rows).toBe(rows.length);
    expect(rows.length).toBeGreaterThan(150);
    for (const r of rows) {
      expect(r.within).toBe(true);
      expect(r.deviation).toBe(r.computed - r.expected);
      expect(Math.abs(r.deviation)).toBeLessThanOrEqual(r.tolerance);
    }
    // What was measured is never the expected number itself, but for a few that are round in both.
    expect(rows.filter((r) => r.deviation === 0).length).toBeLessThan(10);
    const flicker = proof.tables.filter(isFlicker).flatMap((t) => t.rows);
    for (const pair of ["230 V 50 Hz", "230 V 60 Hz", "120 V 50 Hz", "120 V 60 Hz"]) {
      expect(flicker.filter(({ what }) => what.startsWith(pair)).length).toBeGreaterThan(15);
    }
  });
});

it("all rows of the tables that measure waveforms are well within: a tenth of the tolerance but for events", async () => {
  // The flickermeter's are run one by one in tests/published/flicker.test.ts.
  const proof = await runTables(
    PROOF_TABLES.filter((t) => !isFlicker(t)),
    false,
    silent,
  );
  expect(proof.out).toBe(0);
  const quick = new Set([
    "events",
    "mains-signalling",
    "symmetrical-components",
    "unbalance-from-phase-to-phase",
    "plt",
  ]);
  for (const { id, rows } of proof.tables) {
    for (const { deviation, tolerance } of quick.has(id) ? [] : rows) {
      expect(Math.abs(deviation), id).toBeLessThan(0.1 * tolerance);
    }
  }
});

it("runs the same rows to the last digit each time", async () => {
  const ids = ["frequency", "unbalance", "plt", "flicker-bursts-of-28-hz"];
  const tables = PROOF_TABLES.filter(({ id }) => ids.includes(id));
  expect(tables).toHaveLength(ids.length);
  const [one, two] = [await runTables(tables, true, silent), await runTables(tables, true, silent)];
  expect(JSON.stringify(one)).toBe(JSON.stringify(two));
});

describe("a row out of tolerance", () => {
  it("makes the exit code 1, is marked and counted", async () => {
    const wrong = table("wrong", row("right", 230, 230.1, 0.2), row("wrong", 230, 229.7, 0.2));
    const { code, out } = await prove([table("good", row("fine", 1, 1, 0.01)), wrong]);
    expect(code).toBe(1);
    expect(out.split("\n").filter((line) => line.endsWith("OUT"))).toEqual([
      "  wrong  230.000 V   229.700     -0.300     ±0.200  OUT",
    ]);
    expect(out).toContain("\n1 of 3 rows are out of tolerance.\n");
    const json = JSON.parse((await prove([wrong], "--json")).out);
    expect(json).toMatchObject({ passed: false, rows: 2, out: 1 });
  });

  it("is found with a published value that is deliberately wrong", async () => {
    const [unbalance] = PROOF_TABLES.filter(({ id }) => id === "unbalance");
    const shifted: ProofTable = {
      ...(unbalance as ProofTable),
      async *rows(quick) {
        for await (const r of (unbalance as ProofTable).rows(quick)) yield { ...r, expected: r.expected + 0.16 };
      },
    };
    expect((await prove([shifted])).code).toBe(1);
    expect((await prove([unbalance as ProofTable])).code).toBe(0);
  });

  it("is also one that is no number; one at the tolerance passes", async () => {
    expect((await prove([table("nan", row("nothing measured", 1, Number.NaN, 0.5))])).code).toBe(1);
    expect((await prove([table("edge", row("at the edge", 1, 1.5, 0.5))])).code).toBe(0);
  });

  it("a table without rows is no proof", async () => {
    await expect(runTables([table("empty")], false, silent)).rejects.toThrow('the table "empty" has no rows');
  });
});

describe("the tables", () => {
  it("have an id and a title of their own, a source, and say where it is from memory", () => {
    expect(new Set(PROOF_TABLES.map(({ id }) => id)).size).toBe(PROOF_TABLES.length);
    expect(new Set(PROOF_TABLES.map(({ title }) => title)).size).toBe(PROOF_TABLES.length);
    for (const { source, confirmed } of PROOF_TABLES) {
      expect(source.length).toBeGreaterThan(30);
      expect(source).not.toMatch(/\.$/);
      if (!confirmed) expect(source).toContain("memory");
    }
  });

  it("are printed with source and numbers in lines of 100 characters at most", async () => {
    const { code, out } = await prove(
      PROOF_TABLES.filter(({ id }) => ["plt", "unbalance", "flicker-bursts-of-28-hz"].includes(id)),
      "--quick",
    );
    expect(code).toBe(0);
    expect(Math.max(...out.split("\n").map((line) => line.length))).toBeLessThanOrEqual(100);
    expect(out).toContain("  one Pst of 2, eleven of 0  0.8736000  0.8735805  -0.0000195  ±0.0000500\n");
    expect(out).toMatch(/^ {2}not confirmed: Pattern: IEC 61000-4-15:2010/m);
    expect(out).toMatch(/^ {2}230 V 50 Hz: 28 Hz rectangular.*1\.418 %\n {40,}1\.0000 /m);
    expect(out).toMatch(/^ {2}confirmed: \(ΣPst³\/12\)/m);
    expect(out).toContain("--quick runs a part of the rows");
  });
});
