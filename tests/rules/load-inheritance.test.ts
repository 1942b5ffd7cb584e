import { createHash } from "node:crypto";
import { describe, expect, it } from "vitest";
import { loadRuleSet, loadRuleSetFile } from "../../src/rules/load-rule-set.js";

const BASE = `id: base
title: Base
standard: EN 50160
edition: "2010"
level: LV
network: interconnected
nominalFrequency: 50
nominalVoltage: 230
notes: [note of the base]
requirements:
  - id: supply-voltage
    title: Supply voltage
    clause: "4.2.2"
    quantity: voltage
    interval: 10min
    phases: supply
    period: week
    criterion: { kind: share-within, share: 0.95, min: 90, max: 110, of: declared-voltage }
    flagged: include
    binding: true
    source: document one
    confirmed: true
    note: a remark
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
        3: { max: 5 }
        5: { max: 6, source: document two, confirmed: true, note: of order 5 }
    flagged: exclude
    binding: true
    source: document one
    confirmed: true
`;

const ISLAND = `id: island
title: Island
inherits: base
network: not-interconnected
remove: [supply-voltage]
change:
  harmonic-voltage:
    criterion: { orders: { 3: { max: 4, source: island rules, confirmed: true } } }
`;

function load(id: string, files: Record<string, string>) {
  return loadRuleSet(id, async (wanted) => {
    const text = files[wanted];
    return text === undefined ? undefined : { name: `${wanted}.yaml`, text };
  });
}

async function loadOverlay(rest: string) {
  const set = await load("overlay", { base: BASE, overlay: `id: overlay\ntitle: Overlay\ninherits: base\n${rest}` });
  const byId = (id: string) => {
    const found = set.requirements.find((r) => r.id === id);
    if (found === undefined) throw new Error(`no requirement ${id}`);
    return found;
  };
  return { set, byId };
}

const SOURCED = "    source: contract\n    confirmed: true\n";

describe("inheritance of limit sets", () => {
  it("gives a set that stands on its own as it is written", async () => {
    const set = await load("base", { base: BASE });
    expect(set).toMatchObject({ id: "base", title: "Base", level: "LV", nominalVoltage: 230 });
    expect(set.notes).toEqual(["note of the base"]);
    expect(set.requirements.map((r) => r.id)).toEqual(["supply-voltage", "harmonic-voltage"]);
    expect(set.requirements[0]).toEqual({
      id: "supply-voltage",
      title: "Supply voltage",
      clause: "4.2.2",
      quantity: "voltage",
      interval: "10min",
      phases: "supply",
      period: "week",
      criterion: { kind: "share-within", share: 0.95, min: 90, max: 110, of: "declared-voltage" },
      flagged: "include",
      binding: true,
      source: "document one",
      confirmed: true,
      note: "a remark",
    });
  });

  it("changes single values and keeps all others", async () => {
    const { byId, set } = await loadOverlay(`change:\n  supply-voltage:\n    criterion: { max: 107 }\n${SOURCED}`);
    const base = await load("base", { base: BASE });
    expect(byId("supply-voltage")).toEqual({
      ...base.requirements[0],
      criterion: { kind: "share-within", share: 0.95, min: 90, max: 107, of: "declared-voltage" },
      source: "contract",
    });
    expect(byId("harmonic-voltage")).toEqual(base.requirements[1]);
    expect(set).toMatchObject({ id: "overlay", title: "Overlay", standard: "EN 50160", network: "interconnected" });
  });

  it("takes an entry away where the change says null", async () => {
    const { byId, set } = await loadOverlay(
      `nominalVoltage: null\nchange:\n  supply-voltage:\n    note: null\n    criterion: { min: null }\n${SOURCED}` +
        `  harmonic-voltage:\n    criterion: { orders: { 3: null } }\n${SOURCED}`,
    );
    expect(set).not.toHaveProperty("nominalVoltage");
    expect(byId("supply-voltage")).not.toHaveProperty("note");
    expect(byId("supply-voltage").criterion).not.toHaveProperty("min");
    expect(byId("harmonic-voltage").criterion).toMatchObject({ orders: { 5: { max: 6 } } });
    expect(byId("harmonic-voltage").criterion).not.toHaveProperty("orders.3");
  });

  it("may add a remark to a harmonic order without a new source", async () => {
    const { byId } = await loadOverlay(
      "change:\n  harmonic-voltage:\n    criterion: { orders: { 3: { note: new } } }\n",
    );
    expect(byId("harmonic-voltage").criterion).toHaveProperty("orders.3", { max: 5, note: "new" });
  });

  it("adds its notes to the inherited ones and overrides facts", async () => {
    const { set } = await loadOverlay('notes: [own note]\nedition: "2022"\nnominalVoltage: 240\n');
    expect(set.notes).toEqual(["note of the base", "own note"]);
    expect(set).toMatchObject({ edition: "2022", nominalVoltage: 240 });
  });

  it("marks all that is inherited as unconfirmed, orders too, and nothing that the file itself states", async () => {
    const { byId } = await loadOverlay(
      `unconfirmed: { note: other edition }\nchange:\n  supply-voltage:\n    criterion: { max: 107 }\n${SOURCED}`,
    );
    expect(byId("harmonic-voltage")).toMatchObject({ confirmed: false, source: "document one" });
    expect(String(byId("harmonic-voltage").note)).toBe("other edition");
    expect(byId("harmonic-voltage").criterion).toHaveProperty("orders.5", {
      max: 6,
      source: "document two",
      confirmed: false,
      note: "of order 5",
    });
    expect(byId("supply-voltage")).toMatchObject({ confirmed: true });
    expect(String(byId("supply-voltage").note)).toBe("a remark other edition");
  });

  it("replaces all sources where the unconfirmed values come from somewhere else", async () => {
    const { byId } = await loadOverlay("unconfirmed: { note: other level, source: memory }\n");
    expect(byId("harmonic-voltage")).toMatchObject({ confirmed: false, source: "memory" });
    expect(byId("harmonic-voltage").criterion).not.toHaveProperty("orders.5.source");
  });

  it("carries out several sets in their order, a common ancestor once", async () => {
    const second = `id: second\ntitle: Second\ninherits: base\nedition: "2022"\nunconfirmed: { note: other edition }\nremove: [supply-voltage]\n`;
    const joined = await load("joined", {
      base: BASE,
      island: ISLAND,
      second,
      joined: "id: joined\ntitle: Joined\ninherits: [island, second]\n",
    });
    expect(joined.files.map((f) => f.id)).toEqual(["joined", "second", "island", "base"]);
    expect(joined).toMatchObject({ edition: "2022", network: "not-interconnected" });
    expect(joined.requirements.map((r) => r.id)).toEqual(["harmonic-voltage"]);
    expect(joined.requirements[0]).toMatchObject({ confirmed: false });
    expect(String(joined.requirements[0]?.note)).toBe("other edition");
    expect(joined.requirements[0]?.criterion).toHaveProperty("orders.3.max", 4);
    expect(joined.requirements[0]?.criterion).toHaveProperty("orders.3.confirmed", false);
  });
});

describe("hashes of limit sets", () => {
  const sha256 = (text: string) => createHash("sha256").update(text, "utf8").digest("hex");

  it("names every file the set was made from, itself first", async () => {
    const set = await load("island", { base: BASE, island: ISLAND });
    expect(set.files).toEqual([
      { id: "island", sha256: sha256(ISLAND) },
      { id: "base", sha256: sha256(BASE) },
    ]);
  });

  it("does not depend on the line endings of the file", async () => {
    for (const ending of ["\r\n", "\r"]) {
      const set = await loadRuleSetFile(BASE.replaceAll("\n", ending), "base.yaml", async () => undefined);
      expect(set).toEqual(await load("base", { base: BASE }));
    }
    const other = await load("base", { base: BASE.replace("max: 110", "max: 111") });
    expect(other.files[0]?.sha256).not.toBe(sha256(BASE));
  });

  it("accepts the ending .yml and a path before the name", async () => {
    const set = await loadRuleSetFile(BASE, "C:\\limits\\base.yml", async () => undefined);
    expect(set.id).toBe("base");
  });
});
