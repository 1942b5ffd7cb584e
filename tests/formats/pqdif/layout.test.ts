import { readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bodyInMemory } from "../../../src/formats/pqdif/body.js";
import { CHARACTERISTIC } from "../../../src/formats/pqdif/characteristics.js";
import { DISTURBANCE, disturbanceName } from "../../../src/formats/pqdif/disturbances.js";
import { entryOf } from "../../../src/formats/pqdif/entry.js";
import { guidBytes, guidText } from "../../../src/formats/pqdif/guid.js";
import { QUANTITY_TYPE, RECORD, SIGNATURE, TAG, VALUE_TYPE } from "../../../src/formats/pqdif/identifiers.js";
import { incrementsOf, steppedValues } from "../../../src/formats/pqdif/increments.js";
import {
  characteristicName,
  phaseName,
  quantityMeasuredName,
  quantityTypeName,
  unitName,
  valueTypeName,
} from "../../../src/formats/pqdif/names.js";
import { isPqdif } from "../../../src/formats/pqdif/records.js";
import { instantOf, writeInstant } from "../../../src/formats/pqdif/timestamp.js";
import { vectorAt } from "../../../src/formats/pqdif/vector.js";
import { isoUtc } from "../../../src/recording/time.js";

/** Bytes written by hand after the layout of the working-group headers and of files seen by others. */
const hex = (text: string) => Uint8Array.from(text.trim().split(/\s+/), (pair) => Number.parseInt(pair, 16));
const viewOf = (text: string) => new DataView(hex(text).buffer);

describe("bytes by hand", () => {
  it("are the signature", () => {
    const signature = hex("40 14 11 4a 9f e4 cf 11 99 00 50 51 44 49 46 00");
    expect(guidText(signature, 0)).toBe(SIGNATURE);
    expect(guidBytes(SIGNATURE)).toEqual(signature);
    expect(isPqdif(signature)).toBe(true);
    expect(isPqdif(signature.subarray(0, 15))).toBe(false);
  });

  it("are times: day 25569 is 1970-01-01, seconds may be a whole day, fractions are rounded to the microsecond", () => {
    expect(instantOf(viewOf("e1 63 00 00 00 00 00 00 00 00 00 00"), 0)).toBe(0);
    // 44823 + 86400.0 s in a file whose name says 2022-09-20 00:00.
    const midnight = instantOf(viewOf("17 af 00 00 00 00 00 00 00 18 f5 40"), 0);
    expect(isoUtc(midnight)).toBe("2022-09-20T00:00:00Z");
    const stamp = new DataView(new ArrayBuffer(12));
    stamp.setUint32(0, 44_824, true);
    stamp.setFloat64(4, 77_225.00000016298, true);
    expect(isoUtc(instantOf(stamp, 0))).toBe("2022-09-20T21:27:05Z");
    expect(instantOf(viewOf("00 00 00 00 00 00 00 00 00 00 00 00"), 0)).toBe(Date.UTC(1899, 11, 30) * 1000);
    expect(instantOf(viewOf("ff ff ff ff 00 00 00 00 00 00 00 00"), 0)).toBeNaN();
    expect(instantOf(viewOf("e1 63 00 00 00 00 00 00 00 00 f8 7f"), 0)).toBeNaN();
  });

  it("are entries: an embedded number of 2 bytes, and a linked identifier", () => {
    const tag = "18 e2 0d f9 7b e6 f1 4c a2 95 b0 21 a2 d4 67 67";
    const embedded = entryOf(hex(`${tag} 02 15 01 00 07 00 00 00 00 00 00 00`), 100);
    expect(embedded).toEqual({ tag: TAG.ChannelGroupID, element: 2, type: 21, place: 120 });
    const linked = entryOf(hex(`${tag} 02 3c 00 00 40 01 00 00 10 00 00 00`), 100);
    expect(linked).toEqual({ tag: TAG.ChannelGroupID, element: 2, type: 60, place: 320 });
  });

  it("are steps as seen in files: REAL4 [1, 1536, 6.51e-5]", async () => {
    const body = bodyInMemory(hex("03 00 00 00 00 00 80 3f 00 00 c0 44 89 88 88 38"), 0);
    const vector = await vectorAt(body, { tag: "", element: 3, type: 40, place: 0 });
    const steps = await incrementsOf(body, vector);
    expect(steps.count).toBe(1536);
    const times = steppedValues(steps, 0, 1536);
    expect(times[0]).toBe(0);
    // 1/15360 in single precision.
    expect(times[1535]).toBe(1535 * Math.fround(1 / 15_360));
    expect(steppedValues(steps, 1534, 1536)).toEqual(times.slice(1534));
  });
});

describe("stored times", () => {
  it("come back to the microsecond from 1899-12-30 to 2199", () => {
    const [least, greatest] = [Date.UTC(1899, 11, 30) * 1000, Date.UTC(2199, 0) * 1000];
    fc.assert(
      fc.property(fc.integer({ min: least, max: greatest }), (instant) => {
        const view = new DataView(new ArrayBuffer(12));
        writeInstant(view, 0, instant);
        expect(instantOf(view, 0)).toBe(instant);
      }),
      { seed: 1159 },
    );
  });
});

describe("identifiers", () => {
  const tables = { RECORD, TAG, QUANTITY_TYPE, VALUE_TYPE, CHARACTERISTIC, DISTURBANCE };

  it("are canonical and differ from one another, except where record types are tags", () => {
    for (const table of Object.values(tables)) {
      const guids = Object.values<string>(table);
      expect(guids.filter((guid) => !/^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/.test(guid))).toEqual([]);
      expect(new Set(guids).size).toBe(guids.length);
    }
    const counts = Object.values(tables).map((table) => Object.keys(table).length);
    expect(counts.slice(2)).toEqual([13, 36, 166, 35]);
  });

  it("are those that the independent encoder writes", () => {
    const python = readFileSync(join(import.meta.dirname, "make-fixture.py"), "utf8");
    const written = new Set(python.match(/[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}/g));
    const known = new Set(Object.values(tables).flatMap((table) => Object.values<string>(table)));
    const others = [...written].filter((guid) => !known.has(guid));
    // The signature, a data source type and a private tag.
    expect(others.length).toBe(3);
  });

  it("have plain names, unknown ones none", () => {
    expect(quantityTypeName(QUANTITY_TYPE.VALUELOG)).toBe("value log");
    expect(valueTypeName(VALUE_TYPE.P95)).toBe("95th percentile");
    expect(characteristicName(CHARACTERISTIC.FLKR_PST)).toBe("flicker Pst");
    expect(characteristicName(CHARACTERISTIC.S2S1)).toBe("negative over positive sequence");
    expect(String(disturbanceName(DISTURBANCE.SHORTDUR_INSTANT_SAG))).toBe("short duration instantaneous dip");
    expect(characteristicName("67f6af97-0000-11cf-9d89-0080c72e70a3")).toBeUndefined();
    expect([1, 5, 13, 19, 34, 35, 40].map((n) => phaseName(n)?.toString())).toEqual([
      "A to neutral",
      "A to B",
      "total",
      "general 1",
      "general 16",
      undefined,
      "ground",
    ]);
    expect([0, 2, 4, 6, 7, 15, 19, 20, 44, 45].map(unitName)).toEqual([
      "1",
      "s",
      undefined,
      "V",
      "A",
      "Hz",
      "%",
      "per unit",
      "sabin",
      undefined,
    ]);
    expect([0, 1, 2, 19, 20].map((n) => quantityMeasuredName(n)?.toString())).toEqual([
      "none",
      "voltage",
      "current",
      "impedance",
      undefined,
    ]);
  });

  it("have no name twice in a table, and none with an underscore", () => {
    for (const [table, name] of [
      [QUANTITY_TYPE, quantityTypeName],
      [VALUE_TYPE, valueTypeName],
      [CHARACTERISTIC, characteristicName],
      [DISTURBANCE, disturbanceName],
    ] as const) {
      const names = Object.values<string>(table).map((id) => name(id)?.toString());
      expect(new Set(names).size).toBe(names.length);
      expect(names.filter((text) => text === undefined || text.includes("_"))).toEqual([]);
    }
  });
});
