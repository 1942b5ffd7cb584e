import { gunzipSync } from "node:zlib";
import { describe, expect, test } from "vitest";
import { ratio, times } from "../../src/decimal.js";
import { MINUTE } from "../../src/recording/time.js";
import { type Dialect, PLAIN, SIX_DIALECTS } from "./dialect.js";
import { column, type LogTable, rows } from "./log-table.js";
import { stampWriter } from "./stamps.js";
import { decimalText, gzip, logText, setupOf, writeLog } from "./write-log.js";

const at = (iso: string) => Date.parse(iso) * 1000;

const TABLE: LogTable = {
  interval: 10 * MINUTE,
  starts: [at("2026-01-13T12:00Z"), at("2026-01-13T12:10Z")],
  columns: [
    column({ quantity: "voltage", phase: "L12" }, 1, [401.3, Number.NaN]),
    column({ quantity: "active-power", phase: "system" }, 0, [-12_345, 7]),
    column({ quantity: "harmonic-voltage", phase: "L12", order: 5 }, 2, [3.07, 0.5]),
    column({ quantity: "pst", phase: "L12" }, 2, [0.42, 0.4]),
  ],
};

const lines = (dialect: Partial<Dialect>, table = TABLE) =>
  logText(table, { ...PLAIN, ...dialect })
    .trimEnd()
    .split("\n");

describe("numbers", () => {
  test("are written from whole digits", () => {
    const plain = { decimal: "." } as const;
    expect(decimalText(25310, 2, plain)).toBe("253.10");
    expect(decimalText(-5, 3, plain)).toBe("-0.005");
    expect(decimalText(0, 0, plain)).toBe("0");
    expect(decimalText(-1_234_567, 1, { decimal: ",", thousands: "." })).toBe("-123.456,7");
    expect(decimalText(123, 1, { decimal: ",", thousands: "." })).toBe("12,3");
    expect(() => decimalText(1.5, 0, plain)).toThrow(RangeError);
  });

  test("are the same decimal number in V, kV and per unit", () => {
    for (let digits = 38_000; digits < 42_000; digits += 7) {
      const table = { ...TABLE, columns: [column({ quantity: "voltage", phase: "L12" }, 2, [digits / 100, 0])] };
      const cell = (voltageUnit: Dialect["voltageUnit"]) =>
        ratio(lines({ voltageUnit }, table)[1]?.split(",")[1] as string);
      const equals = (a: ReturnType<typeof ratio>, b: ReturnType<typeof ratio>) => a.num * b.den === b.num * a.den;
      expect(equals(cell("V"), times(cell("kV"), ratio(1000)))).toBe(true);
      expect(equals(cell("V"), times(cell({ perUnitOf: 400 }), ratio(400)))).toBe(true);
    }
    expect(() => lines({ voltageUnit: { perUnitOf: 230 } })).toThrow("no exact decimal form");
  });
});

describe("layout", () => {
  test("one header row with units in it", () => {
    expect(lines({})).toEqual([
      "Time,Voltage L1-L2 mean [V],Active power total mean [W],Harmonic voltage L1-L2 order 5 mean [%],Pst L1-L2",
      "2026-01-13T12:00:00+00:00,401.3,-12345,3.07,0.42",
      "2026-01-13T12:10:00+00:00,,7,0.50,0.40",
    ]);
  });

  test("two header rows, a units row, decimal comma, thousands, end labels, missing marks in turn", () => {
    const dialect = {
      language: "de",
      delimiter: ";",
      decimal: ",",
      thousands: ".",
      headerRows: 2,
      unitsRow: true,
      stamp: "d.m.y in two columns",
      zone: "Europe/Vienna",
      label: "end",
      missing: ["---"],
      voltageUnit: "kV",
      preamble: ["erste Zeile"],
    } as const;
    expect(lines(dialect)).toEqual([
      "erste Zeile",
      "Datum;Uhrzeit;Spannung L1-L2;Wirkleistung gesamt;Oberschwingungsspannung L1-L2;Kurzzeitflicker Pst L1-L2",
      ";;Mittelwert;Mittelwert;Ordnung 5 Mittelwert;",
      ";;kV;W;%;",
      "13.01.2026;13:10:00;0,4013;-12.345;3,07;0,42",
      "13.01.2026;13:20:00;---;7;0,50;0,40",
    ]);
  });

  test("a cell that holds the delimiter or a quote is quoted", () => {
    const table = { ...TABLE, extra: [{ header: 'a "b"', cells: ["x,y", "z"] }] };
    expect(lines({ thousands: "," }, table)[0]).toMatch(/,"a ""b"""$/);
    expect(lines({ thousands: "," }, table)[1]).toBe('2026-01-13T12:00:00+00:00,401.3,"-12,345",3.07,0.42,"x,y"');
    expect(lines({ quoting: "text" }, table)[2]).toBe('"2026-01-13T12:10:00+00:00",,7,0.50,0.40,"z"');
    expect(lines({ quoting: "all" })[2]).toBe('"2026-01-13T12:10:00+00:00","","7","0.50","0.40"');
  });

  test("flags stand in a column of their own; rows may be left out, repeated and reordered", () => {
    const flagged = { ...TABLE, flagged: Uint8Array.of(0, 1) };
    const written = lines({ stamp: "epoch-s" }, rows(flagged, [1, 0, 1]));
    expect(written.slice(1).map((line) => [line.split(",")[0], line.slice(-1)])).toEqual([
      ["1768306200", "1"],
      ["1768305600", "0"],
      ["1768306200", "1"],
    ]);
  });
});

describe("stamps", () => {
  const t = at("2026-03-29T00:50Z");
  const write = (form: Dialect["stamp"], zone = "Europe/Vienna", instant = t) =>
    stampWriter(form, zone, ",").cells(instant).join("|");

  test("in every form", () => {
    expect(write("iso-offset")).toBe("2026-03-29T01:50:00+01:00");
    expect(write("iso-utc")).toBe("2026-03-29T00:50:00Z");
    expect(write("iso-local")).toBe("2026-03-29T01:50:00");
    expect(write("d.m.y")).toBe("29.03.2026 01:50:00");
    expect(write("d/m/y")).toBe("29/03/2026 01:50:00");
    expect(write("m/d/y 12-hour")).toBe("3/29/2026 1:50:00 AM");
    expect(write("m/d/y 12-hour", "UTC", at("2026-03-29T12:05Z"))).toBe("3/29/2026 12:05:00 PM");
    expect(write("m/d/y 12-hour", "UTC", at("2026-03-29T00:05Z"))).toBe("3/29/2026 12:05:00 AM");
    expect(write("d.m.y in two columns")).toBe("29.03.2026|01:50:00");
    expect(write("epoch-s")).toBe("1774745400");
    expect(write("epoch-ms")).toBe("1774745400000");
    // Day 43831 is 2020-01-01, as spreadsheets print it.
    expect(write("serial-days", "UTC", at("2020-01-01T06:00Z"))).toBe("43831,2500000000");
  });

  test("follow the local clock over both of its changes, east and west of Greenwich", () => {
    const localClockAt = (iso: string, zone: string) => write("iso-offset", zone, at(iso));
    expect(localClockAt("2026-03-29T01:00Z", "Europe/Vienna")).toBe("2026-03-29T03:00:00+02:00");
    expect(localClockAt("2026-10-25T00:50Z", "Europe/Vienna")).toBe("2026-10-25T02:50:00+02:00");
    expect(localClockAt("2026-10-25T01:00Z", "Europe/Vienna")).toBe("2026-10-25T02:00:00+01:00");
    expect(localClockAt("2026-11-01T06:50Z", "America/Chicago")).toBe("2026-11-01T01:50:00-05:00");
    expect(localClockAt("2026-11-01T07:00Z", "America/Chicago")).toBe("2026-11-01T01:00:00-06:00");
    expect(localClockAt("2026-01-01T00:00Z", "Asia/Kolkata")).toBe("2026-01-01T05:30:00+05:30");
  });
});

describe("bytes", () => {
  test("in every encoding", () => {
    const hex = (encoding: Dialect["encoding"]) => {
      const table: LogTable = { interval: 10 * MINUTE, starts: [], columns: [], extra: [{ header: "é", cells: [] }] };
      return Buffer.from(writeLog(table, { ...PLAIN, encoding, stamp: "epoch-s" })).toString("hex");
    };
    expect(hex("utf-8")).toBe("54696d652cc3a90a");
    expect(hex("utf-8-bom")).toBe("efbbbf54696d652cc3a90a");
    expect(hex("latin-1")).toBe("54696d652ce90a");
    expect(hex("utf-16le-bom")).toBe("fffe540069006d0065002c00e9000a00");
  });

  test("Latin-1 refuses what it cannot hold", () => {
    expect(() => writeLog(TABLE, { ...PLAIN, encoding: "latin-1", preamble: ["Σ"] })).toThrow(RangeError);
  });

  test("packed: no time and no machine in the header", () => {
    const packed = gzip(new TextEncoder().encode("abc"));
    expect([...packed.subarray(0, 10)]).toEqual([0x1f, 0x8b, 8, 0, 0, 0, 0, 0, 2, 255]);
    expect(gunzipSync(packed).toString()).toBe("abc");
  });
});

test("the six dialects differ in everything a dialect can differ in", () => {
  const variety = <K extends keyof Dialect>(key: K) => new Set(SIX_DIALECTS.map((d) => JSON.stringify(d[key]))).size;
  expect(SIX_DIALECTS).toHaveLength(6);
  expect(variety("id")).toBe(6);
  expect(variety("language")).toBe(5);
  expect(variety("stamp")).toBe(6);
  expect(variety("delimiter")).toBe(4);
  expect(variety("encoding")).toBe(4);
  expect(variety("missing")).toBe(6);
  expect(variety("voltageUnit")).toBe(3);
  for (const key of ["decimal", "headerRows", "unitsRow", "gzip", "label", "lineEnd", "quoting"] as const) {
    expect(variety(key)).toBeGreaterThan(1);
  }
});

test("the setup names the zone only where the stamps leave it open", () => {
  expect(setupOf({ ...PLAIN, stamp: "epoch-s" })).toEqual({ intervalLabel: "start" });
  expect(setupOf({ ...PLAIN, stamp: "d/m/y", zone: "Europe/Rome", label: "end" })).toEqual({
    zone: "Europe/Rome",
    intervalLabel: "end",
  });
});
