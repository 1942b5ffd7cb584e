import { describe, expect, it } from "vitest";
import { UsageError } from "../../src/errors.js";
import { loadRuleSet, loadRuleSetFile } from "../../src/rules/load-rule-set.js";

/** A sound set of two requirements; each test breaks it in one place. Line numbers below refer to this text. */
const BASE = `id: base
title: A sound set
standard: EN 50160
edition: "2010"
level: LV
network: interconnected
nominalFrequency: 50
requirements:
  - id: unbalance
    title: Voltage unbalance
    clause: "4.2.4"
    quantity: negative-sequence-unbalance
    interval: 10min
    phases: system
    period: week
    criterion: { kind: share-within, share: 0.95, max: 2, of: own-unit }
    flagged: exclude
    binding: true
    source: a document
    confirmed: true
  - id: harmonic-voltage
    title: Harmonic voltages
    clause: "4.2.5"
    quantity: harmonic-voltage
    interval: 10min
    phases: supply
    period: week
    criterion:
      kind: share-within-by-order
      share: 0.95
      orders:
        5: { max: 6 }
        7: { max: 5 }
    flagged: exclude
    binding: true
    source: a document
    confirmed: true
`;

const OVERLAY = "id: overlay\ntitle: An overlay\ninherits: base\n";

function reader(files: Record<string, string>) {
  return async (id: string) => {
    const text = files[id];
    return text === undefined ? undefined : { name: `${id}.yaml`, text };
  };
}

async function faultOf(text: string, name: string, files: Record<string, string> = { base: BASE }): Promise<string> {
  try {
    await loadRuleSetFile(text, name, reader(files));
  } catch (error) {
    expect(error).toBeInstanceOf(UsageError);
    return (error as Error).message;
  }
  throw new Error("no fault was found");
}

/** The fault in BASE after one replacement, which must have happened. */
function broken(from: string, to: string): Promise<string> {
  expect(BASE.split(from)).toHaveLength(2);
  return faultOf(BASE.replace(from, to), "base.yaml");
}

const overlay = (rest: string, files?: Record<string, string>) => faultOf(OVERLAY + rest, "overlay.yaml", files);

describe("a fault in a limit set names file, line, column and remedy", () => {
  it("has no fault in the texts that are broken below", async () => {
    expect((await loadRuleSetFile(BASE, "base.yaml", reader({}))).requirements).toHaveLength(2);
    expect((await loadRuleSetFile(OVERLAY, "overlay.yaml", reader({ base: BASE }))).requirements).toHaveLength(2);
  });

  it("unknown name in the heading", async () => {
    expect(await broken("edition:", "editoin:")).toBe(
      'base.yaml, line 4, column 1: "editoin" is not known here; the names known here are id, title, standard, ' +
        "edition, level, network, nominalFrequency, nominalVoltage, notes, requirements.",
    );
  });

  it("unknown name in a requirement", async () => {
    expect(await broken("    phases: system", "    phase: system")).toMatch(
      /^base\.yaml, line 14, column 5: "phase" is not known here; the names known here are id, title, .*confirmed\.$/,
    );
  });

  it("unknown name in a criterion", async () => {
    expect(await broken("share: 0.95, max: 2", "shar: 0.95, max: 2")).toBe(
      'base.yaml, line 16, column 38: "shar" is not known here; the names known here are kind, share, min, max, of.',
    );
  });

  it("missing entry", async () => {
    expect(await broken("    binding: true\n    source: a document\n    confirmed: true\n  - id", "  - id")).toBe(
      'base.yaml, line 9, column 5: "binding" is missing; add it.',
    );
  });

  it("missing kind of criterion", async () => {
    expect(await broken("kind: share-within, ", "")).toBe('base.yaml, line 16, column 5: "kind" is missing; add it.');
  });

  it("unknown kind of criterion", async () => {
    expect(await broken("kind: share-within,", "kind: percentile,")).toBe(
      'base.yaml, line 16, column 24: "kind" must be share-within or share-within-by-order or share-below-curve or ' +
        'event-table or indication, not the text "percentile".',
    );
  });

  it("wrong type", async () => {
    expect(await broken("max: 2,", 'max: "2",')).toBe(
      'base.yaml, line 16, column 56: "max" must be a number, not the text "2".',
    );
  });

  it("no number at all", async () => {
    expect(await broken("max: 2,", "max: .inf,")).toMatch(/^base\.yaml, line 16, column 56: "max" must be a number/);
  });

  it("a value that is none of those allowed", async () => {
    expect(await broken("    period: week\n    criterion: {", "    period: month\n    criterion: {")).toBe(
      'base.yaml, line 15, column 13: "period" must be day or week or year, not the text "month".',
    );
    expect(await broken("nominalFrequency: 50", "nominalFrequency: 55")).toBe(
      'base.yaml, line 7, column 19: "nominalFrequency" must be 50 or 60, not 55.',
    );
  });

  it("min above max", async () => {
    expect(await broken("max: 2,", "min: 3, max: 2,")).toBe(
      "base.yaml, line 16, column 56: min (3) is above max (2); exchange or correct them.",
    );
  });

  it("share outside 0 to 1", async () => {
    expect(await broken("share: 0.95, max: 2", "share: 95, max: 2")).toBe(
      'base.yaml, line 16, column 45: "share" must be at most 1, not 95.',
    );
    expect(await broken("share: 0.95, max: 2", "share: -0.1, max: 2")).toBe(
      'base.yaml, line 16, column 45: "share" must be at least 0, not -0.1.',
    );
  });

  it("a criterion without any limit", async () => {
    expect(await broken(" max: 2,", "")).toBe(
      "base.yaml, line 16, column 16: this criterion has no limit; give min, max or both.",
    );
    expect(await broken("\n        5: { max: 6 }\n        7: { max: 5 }", " {}")).toBe(
      "base.yaml, line 31, column 15: this criterion has no limit; give at least one order.",
    );
  });

  it("a harmonic order that is none", async () => {
    for (const order of ["1", "51", "05", "fifth"]) {
      expect(await broken("5: { max: 6 }", `"${order}": { max: 6 }`)).toBe(
        "base.yaml, line 32, column 9: this is no harmonic order; write a whole number from 2 to 50.",
      );
    }
  });

  it("a limit of zero for a harmonic order", async () => {
    expect(await broken("max: 6", "max: 0")).toBe('base.yaml, line 32, column 19: "max" must be above 0, not 0.');
  });

  it("a criterion for another quantity", async () => {
    expect(await broken("of: own-unit", "of: declared-voltage")).toBe(
      "base.yaml, line 12, column 15: this criterion judges voltage, not negative-sequence-unbalance; correct the " +
        "quantity or the criterion.",
    );
  });

  it("a curve whose frequencies do not rise, or of one point", async () => {
    const curve = (points: string) =>
      faultOf(
        BASE.replace("negative-sequence-unbalance", "mains-signalling").replace(
          /criterion: \{.*\}/,
          `criterion: { kind: share-below-curve, share: 0.99, points: ${points} }`,
        ),
        "base.yaml",
      );
    expect(await curve("[[100, 9], [100, 5]]")).toBe(
      "base.yaml, line 16, column 64: the frequencies of the curve do not rise; list its points from the lowest " +
        "frequency to the highest.",
    );
    expect(await curve("[[100, 9]]")).toBe('base.yaml, line 16, column 64: "points" must hold at least 2 items.');
    expect(await curve("[[100, 9], [200]]")).toMatch(/^base\.yaml, line 16, column 75: /);
  });

  it("an event table whose rows or columns run the wrong way", async () => {
    const table = (row: string, column: string) =>
      faultOf(
        BASE.replace("negative-sequence-unbalance", "voltage").replace(
          /criterion: \{.*\}/,
          `criterion: { kind: event-table, event: dip, rows: [${row}], columns: [${column}] }`,
        ),
        "base.yaml",
      );
    expect(await table("{ id: A, from: 80, to: 90 }", '{ id: "1", from: 0.01, to: 0.2 }')).toBe(
      "base.yaml, line 16, column 56: a row runs from its upper bound down to its lower one; exchange from and to.",
    );
    expect(await table("{ id: A, from: 90, to: 80 }", '{ id: "1", from: 0.2, to: 0.01 }')).toBe(
      "base.yaml, line 16, column 96: a column runs from its shortest duration to its longest; exchange from and to.",
    );
  });

  it("the same requirement id twice", async () => {
    expect(await broken("- id: harmonic-voltage", "- id: unbalance")).toBe(
      'base.yaml, line 21, column 9: there is a requirement "unbalance" already; give this one another id, or change ' +
        "the other.",
    );
  });

  it("an id with letters that no file name should have", async () => {
    expect(await broken("- id: unbalance", "- id: Unbalance u2")).toBe(
      "base.yaml, line 9, column 9: an id holds lower-case letters, digits and hyphens only.",
    );
  });

  it("the same key twice", async () => {
    expect(await broken("level: LV", "level: LV\nlevel: MV")).toBe(
      'base.yaml, line 6, column 1: "level" is given twice; keep one of them.',
    );
    expect(await broken("7: { max: 5 }", '"5": { max: 5 }')).toBe(
      'base.yaml, line 33, column 9: "5" is given twice; keep one of them.',
    );
  });

  it("broken YAML", async () => {
    expect(await broken("max: 2, of: own-unit }", "max: 2, of: own-unit")).toMatch(
      /^base\.yaml, line 17, column 5: this is not valid YAML \(.+\); correct it here\.$/,
    );
    expect(await faultOf(`${BASE}---\nid: other\n`, "base.yaml")).toMatch(/^base\.yaml, line 38, column 1: /);
  });

  it("an empty file", async () => {
    expect(await faultOf("# nothing\n", "base.yaml")).toMatch(
      /^base\.yaml, line \d+, column 1: this file must be a group/,
    );
  });

  it("aliases that multiply without end", async () => {
    const bomb = `a: &a [x, x, x, x, x, x, x, x, x, x]\nb: &b [${"*a, ".repeat(10)}]\nc: &c [${"*b, ".repeat(10)}]\n`;
    expect(await faultOf(`${bomb}d: [${"*c, ".repeat(10)}]\n`, "base.yaml")).toMatch(
      /^base\.yaml, line 1, column 1: the aliases \(\*\) of this file cannot be carried out/,
    );
  });

  it("an id that differs from the file name", async () => {
    expect(await faultOf(BASE, "rules/my-contract.yaml")).toBe(
      'rules/my-contract.yaml, line 1, column 5: the id "base" differs from the file name; write "my-contract" or ' +
        "rename the file.",
    );
  });
});

describe("a fault in inheritance names file, line, column and remedy", () => {
  it("a limit set that does not exist", async () => {
    await expect(loadRuleSet("none", reader({}))).rejects.toThrow(
      new UsageError('There is no limit set "none"; "mainswitness rules list" shows those there are.'),
    );
  });

  it("an unknown parent, alone or in a list", async () => {
    const end = 'there is no limit set "base"; "mainswitness rules list" shows those there are.';
    expect(await overlay("", {})).toBe(`overlay.yaml, line 3, column 11: ${end}`);
    const list = OVERLAY.replace("inherits: base", "inherits: [other, base]");
    const other = BASE.replace("id: base", "id: other");
    expect(await faultOf(list, "overlay.yaml", { other })).toBe(`overlay.yaml, line 3, column 19: ${end}`);
  });

  it("a circle of one and of two sets", async () => {
    expect(await faultOf(OVERLAY.replace("base", "overlay"), "overlay.yaml")).toBe(
      "overlay.yaml, line 3, column 11: the inheritance runs in a circle (overlay, overlay); name another set here.",
    );
    const base = "id: base\ntitle: x\ninherits: overlay\n";
    expect(await overlay("", { base })).toBe(
      "base.yaml, line 3, column 11: the inheritance runs in a circle (overlay, base, overlay); name another set here.",
    );
  });

  it("two sets without a common origin", async () => {
    const other = BASE.replace("id: base", "id: other");
    const list = OVERLAY.replace("inherits: base", "inherits: [base, other]");
    expect(await faultOf(list, "overlay.yaml", { base: BASE, other })).toBe(
      "overlay.yaml, line 3, column 11: other stands on its own and cannot be joined with the sets before it; " +
        "inherit sets with a common origin.",
    );
  });

  it("a fault in the parent is placed in the parent", async () => {
    expect(await overlay("", { base: BASE.replace("level: LV", "level: low") })).toBe(
      'base.yaml, line 5, column 8: "level" must be LV or MV or HV, not the text "low".',
    );
  });

  it("a change or removal of an id that is not there", async () => {
    const end = 'there is no requirement "balance" in what is inherited; there are unbalance, harmonic-voltage.';
    expect(await overlay("change:\n  balance: { note: x }\n")).toBe(`overlay.yaml, line 5, column 3: ${end}`);
    expect(await overlay("remove: [balance]\n")).toBe(`overlay.yaml, line 4, column 10: ${end}`);
  });

  it("a change of what was removed", async () => {
    expect(await overlay("remove: [unbalance]\nchange:\n  unbalance: { note: x }\n")).toBe(
      'overlay.yaml, line 6, column 3: "unbalance" was removed by overlay; leave this change out.',
    );
  });

  it("the removal of everything", async () => {
    expect(await overlay("remove: [unbalance, harmonic-voltage]\n")).toBe(
      "overlay.yaml, line 4, column 1: no requirement is left; keep or add one.",
    );
  });

  it("an addition under an id that is taken", async () => {
    const added = BASE.slice(BASE.indexOf("  - id: unbalance"), BASE.indexOf("  - id: harmonic"));
    expect(await overlay(`add:\n${added}`)).toBe(
      'overlay.yaml, line 5, column 9: there is a requirement "unbalance" already; give this one another id, or ' +
        "change the other.",
    );
  });

  it("a change of the id", async () => {
    expect(await overlay("change:\n  unbalance:\n    id: other\n")).toBe(
      "overlay.yaml, line 6, column 5: an id cannot be changed; remove the requirement and add another.",
    );
  });

  it("a removal of an entry that is not there", async () => {
    expect(await overlay("change:\n  unbalance:\n    notes: null\n")).toBe(
      'overlay.yaml, line 6, column 5: there is no "notes" here that could be taken away; correct the name.',
    );
    expect(await overlay("change:\n  harmonic-voltage:\n    criterion: { orders: { 5: { nota: null } } }\n")).toBe(
      'overlay.yaml, line 6, column 33: there is no "nota" here that could be taken away; correct the name.',
    );
  });

  it("a changed limit that keeps the source of the old one", async () => {
    const end = 'this limit is changed, but not where it comes from; add "source" and "confirmed" beside it.';
    expect(await overlay("change:\n  unbalance:\n    criterion: { max: 3 }\n")).toBe(
      `overlay.yaml, line 6, column 18: ${end}`,
    );
    expect(await overlay("change:\n  harmonic-voltage:\n    criterion:\n      orders:\n        5: { max: 7 }\n")).toBe(
      `overlay.yaml, line 8, column 9: ${end}`,
    );
    expect(await overlay("change:\n  harmonic-voltage:\n    criterion: { orders: { 5: null } }\n")).toBe(
      `overlay.yaml, line 6, column 28: ${end}`,
    );
  });

  it("a change that leaves the requirement unsound is placed where it was changed", async () => {
    const change = (criterion: string) =>
      overlay(`change:\n  unbalance:\n    source: contract\n    confirmed: true\n    criterion: ${criterion}\n`);
    expect(await change("{ min: 5 }")).toBe(
      "overlay.yaml, line 8, column 23: min (5) is above max (2); exchange or correct them.",
    );
    expect(await change("{ max: null }")).toBe(
      "overlay.yaml, line 8, column 16: this criterion has no limit; give min, max or both.",
    );
    expect(await change("{ maximum: 5 }")).toBe(
      'overlay.yaml, line 8, column 18: "maximum" is not known here; the names known here are kind, share, min, max, of.',
    );
    expect(await change("{ share: 1.5 }")).toBe('overlay.yaml, line 8, column 25: "share" must be at most 1, not 1.5.');
    expect(await change("{ share: null }")).toBe('overlay.yaml, line 8, column 25: "share" is missing; add it.');
  });

  it("changes without a set that they change", async () => {
    expect(await faultOf("id: overlay\ntitle: x\nchange: {}\n", "overlay.yaml")).toBe(
      'overlay.yaml, line 3, column 1: "change" needs a set that it changes; add "inherits: ID" with the id of that set.',
    );
  });

  it("requirements of its own kind beside inherited ones", async () => {
    expect(await overlay("requirements: []\n")).toMatch(
      /^overlay\.yaml, line 4, column 1: "requirements" is not known here; the names known here are .*, change, add\.$/,
    );
  });
});
