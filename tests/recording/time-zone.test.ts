import { describe, expect, test } from "vitest";
import { UsageError } from "../../src/errors.js";
import { DAY, HOUR, MINUTE } from "../../src/recording/time.js";
import { TimeZone } from "../../src/recording/time-zone.js";

const utc = (iso: string) => Date.parse(`${iso}Z`) * 1000;
const [from, to] = [utc("2026-01-01T00:00"), utc("2026-12-31T00:00")];

describe("an IANA zone", () => {
  // Directive 2000/84/EC: summer time in the Union from the last Sunday of March to the last Sunday of October, 01:00 UTC.
  test("changes its offset where the law says", () => {
    const vienna = TimeZone.open("Europe/Vienna", from, to);
    const inYear = vienna.changes.filter((c) => c.at >= from && c.at < to);
    expect(inYear).toEqual([
      { at: utc("2026-03-29T01:00"), before: HOUR, after: 2 * HOUR },
      { at: utc("2026-10-25T01:00"), before: 2 * HOUR, after: HOUR },
    ]);
  });

  test("turns local times into instants: once, twice or never shown", () => {
    const vienna = TimeZone.open("Europe/Vienna", from, to);
    expect(vienna.earlierInstant(utc("2026-07-01T12:00"))).toBe(utc("2026-07-01T10:00"));
    expect(vienna.laterInstant(utc("2026-07-01T12:00"))).toBe(utc("2026-07-01T10:00"));
    expect(vienna.earlierInstant(utc("2026-10-25T02:30"))).toBe(utc("2026-10-25T00:30"));
    expect(vienna.laterInstant(utc("2026-10-25T02:30"))).toBe(utc("2026-10-25T01:30"));
    expect(vienna.laterInstant(utc("2026-10-25T02:00"))).toBe(utc("2026-10-25T01:00"));
    expect(vienna.earlierInstant(utc("2026-10-25T03:00"))).toBe(utc("2026-10-25T02:00"));
    expect(vienna.earlierInstant(utc("2026-03-29T02:30"))).toBeNaN();
    expect(vienna.laterInstant(utc("2026-03-29T02:00"))).toBeNaN();
    expect(vienna.earlierInstant(utc("2026-03-29T01:59"))).toBe(utc("2026-03-29T00:59"));
    expect(vienna.earlierInstant(utc("2026-03-29T03:00"))).toBe(utc("2026-03-29T01:00"));
  });

  test("agrees with itself both ways at every half hour of a year, whatever the step of the search", () => {
    for (const id of ["Europe/Vienna", "Australia/Lord_Howe", "America/St_Johns", "Asia/Kolkata"]) {
      const zone = TimeZone.open(id, from, to);
      let skipped = 0;
      for (let k = 0; k < 17520; k++) {
        const t = from + ((k * 7919) % 17520) * 30 * MINUTE;
        const local = zone.toLocal(t);
        expect([zone.earlierInstant(local), zone.laterInstant(local)]).toContain(t);
        if (Number.isNaN(zone.earlierInstant(t))) skipped++;
      }
      expect(skipped).toBe({ "Europe/Vienna": 2, "Australia/Lord_Howe": 1, "America/St_Johns": 2 }[id] ?? 0);
    }
  });

  test("tells what its clock shows", () => {
    const vienna = TimeZone.open("Europe/Vienna", from, to);
    expect(vienna.localText(utc("2026-03-29T01:10"))).toBe("2026-03-29 03:10 +02:00");
    expect(vienna.localText(utc("2026-03-29T00:50:07"))).toBe("2026-03-29 01:50:07 +01:00");
    expect(vienna.clockAt(utc("2026-03-29T22:30"))).toEqual({
      year: 2026,
      month: 3,
      day: 30,
      weekday: 1,
      hour: 0,
      minute: 30,
      second: 0,
    });
    expect(vienna.clockAt(utc("2026-03-29T10:00")).weekday).toBe(7);
  });

  test("answers 400 days beyond its span and refuses more", () => {
    const vienna = TimeZone.open("Europe/Vienna", from, from);
    expect(vienna.localText(from + 399 * DAY)).toContain("+01:00");
    expect(() => vienna.offsetAt(from + 401 * DAY)).toThrow(RangeError);
    expect(() => vienna.offsetAt(Number.NaN)).toThrow(RangeError);
  });
});

test.each([
  ["UTC", "UTC", 0],
  ["utc", "UTC", 0],
  ["+01:00", "+01:00", HOUR],
  ["-0330", "-03:30", -3.5 * HOUR],
])("%s is a fixed offset", (id, shown, offset) => {
  const zone = TimeZone.open(id, from, to);
  expect(zone.id).toBe(shown);
  expect(zone.offsetAt(to + 5000 * DAY)).toBe(offset);
  expect(zone.earlierInstant(from)).toBe(from - offset);
  expect(zone.laterInstant(from)).toBe(from - offset);
});

test.each(["Europe/Atlantis", "", "+1", "+25:00", "CEST+2"])("%s is refused with a hint", (id) => {
  expect(() => TimeZone.open(id, from, to)).toThrow(UsageError);
  expect(() => TimeZone.open(id, from, to)).toThrow(/Europe\/Vienna, UTC, or a fixed offset such as \+01:00/);
});
