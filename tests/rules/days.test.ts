import { describe, expect, it } from "vitest";
import { localDays } from "../../src/recording/local-days.js";
import { HOUR, isoUtc, MINUTE } from "../../src/recording/time.js";
import { TimeZone } from "../../src/recording/time-zone.js";
import { intervals, START } from "../support/series.js";
import { judgeSeries, ruleSet, setup, VOLTAGE_95, week } from "./support.js";

describe("days of a local calendar", () => {
  it("last 23 h and 25 h where the clock is changed", () => {
    const from = Date.UTC(2026, 2, 28, 12) * 1000;
    const zone = TimeZone.open("Europe/Vienna", from, from);
    const days = localDays(zone, from, from + 48 * HOUR);
    expect(days.map(({ date, start, end }) => [date, isoUtc(start), (end - start) / HOUR])).toEqual([
      ["2026-03-28", "2026-03-27T23:00:00Z", 24],
      ["2026-03-29", "2026-03-28T23:00:00Z", 23],
      ["2026-03-30", "2026-03-29T22:00:00Z", 24],
    ]);
    const autumn = Date.UTC(2026, 9, 25, 12) * 1000;
    const [day] = localDays(TimeZone.open("Europe/Vienna", autumn, autumn), autumn, autumn + HOUR);
    expect(day === undefined ? 0 : (day.end - day.start) / HOUR).toBe(25);
  });

  it("begin at the change where the clock skips midnight", () => {
    // Beirut: on 29 March 2026 the clock goes from 00:00 to 01:00, at 22:00 UTC of the day before.
    const from = Date.UTC(2026, 2, 28, 12) * 1000;
    const days = localDays(TimeZone.open("Asia/Beirut", from, from), from, from + 24 * HOUR);
    expect(days.map(({ date, start, end }) => [date, isoUtc(start), (end - start) / HOUR])).toEqual([
      ["2026-03-28", "2026-03-27T22:00:00Z", 24],
      ["2026-03-29", "2026-03-28T22:00:00Z", 23],
    ]);
  });

  it("are none of an empty span, and end with one that just touches", () => {
    const zone = TimeZone.open("UTC", START, START);
    expect(localDays(zone, START, START)).toEqual([]);
    expect(localDays(zone, START, START + 1).map(({ date }) => date)).toEqual(["2026-03-02"]);
    expect(localDays(zone, START, START + 24 * HOUR)).toHaveLength(1);
  });
});

describe("the judged voltage day by day", () => {
  it("counts each day's own values, those outside, their ends and the value at the share", () => {
    // The second day holds 1, 2, … 144 tenths above 240 V: 95 % may not lie above the 137th, 5 % not below the 8th.
    const values = week((i) => (i >= 144 && i < 288 ? 240 + (i - 143) / 10 : 230));
    const { days } = judgeSeries([intervals("voltage", "L1", values)], ruleSet(VOLTAGE_95));
    expect(days).toHaveLength(7);
    expect(days.every(({ complete, hours }) => complete && hours === 24)).toBe(true);
    expect(days[1]).toMatchObject({ date: "2026-03-03", start: "2026-03-03T00:00:00Z", end: "2026-03-04T00:00:00Z" });
    expect(days[1]?.rows).toEqual([
      {
        requirement: "voltage-95",
        phase: "L1",
        n: 144,
        outside: 14,
        lowest: 240.1,
        highest: 254.4,
        value: { low: 240.8, high: 253.7 },
      },
    ]);
    expect(days[0]?.rows[0]).toMatchObject({ n: 144, outside: 0, lowest: 230, highest: 230 });
  });

  it("says of the first and last day of a recording that they are not complete, and leaves out a day without values", () => {
    const vienna = { ...setup(), zone: { value: "Europe/Vienna", origin: "given" as const } };
    const values = week((i) => (i >= 200 && i < 500 ? Number.NaN : 230));
    const { days } = judgeSeries([intervals("voltage", "L1", values)], ruleSet(VOLTAGE_95), { setup: vienna });
    // From 01:00 on 2 March to 01:00 on 9 March in Vienna; nothing from 10:20 on the 3rd to 12:20 on the 5th.
    expect(days.map(({ date, complete, rows }) => [date.slice(8), complete, rows[0]?.n])).toEqual([
      ["02", false, 138],
      ["03", true, 62],
      ["05", true, 70],
      ["06", true, 144],
      ["07", true, 144],
      ["08", true, 144],
      ["09", false, 6],
    ]);
  });

  it("leaves excluded intervals out", () => {
    const given = {
      exclusions: [
        {
          from: "2026-03-02T00:00",
          to: "2026-03-02T02:00",
          reason: "temporary-supply" as const,
          assertedBy: "operator",
        },
      ],
    };
    const { days, weeks, shift } = judgeSeries([intervals("voltage", "L1", week({ 3: 260 }))], ruleSet(VOLTAGE_95), {
      given,
    });
    expect(days[0]?.rows[0]).toMatchObject({ n: 132, outside: 0, highest: 230 });
    expect(shift?.periods[0]?.rows[0]).toMatchObject({ n: 996, missing: 0, outside: [0, 0, 0, 0, 0] });
    expect(weeks[0]?.requirements[0]?.worst?.value).toBe(230);
  });

  it("counts flagged intervals as the requirement does", () => {
    const flagged = week((i) => (i < 10 ? 1 : 0)).map((v) => (v === 1 ? 1 : 0));
    const series = [intervals("voltage", "L1", week({}), { flagged, interval: 10 * MINUTE })];
    const first = (flags: "include" | "exclude") =>
      judgeSeries(series, ruleSet({ ...VOLTAGE_95, flagged: flags })).days[0]?.rows[0]?.n;
    expect(first("include")).toBe(144);
    expect(first("exclude")).toBe(134);
  });
});
