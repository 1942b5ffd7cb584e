import { describe, expect, it } from "vitest";
import { GERMAN } from "../../src/report/languages/de.js";
import { inLanguage } from "../../src/report/languages/language.js";
import {
  dateText,
  exactLocalTime,
  instantOf,
  localClock,
  localParts,
  localTime,
  offsetText,
  shortLocalTime,
  withLocalTimes,
} from "../../src/report/local-time.js";

const at = (iso: string) => instantOf(iso);
const clock = (zone: string) => localClock({ zone, start: "2026-01-01T00:00:00Z", end: "2026-12-31T00:00:00Z" });

describe("local time", () => {
  it("follows the zone through both changes of the clock (EU rules: last Sundays of March and October, 01:00 UTC)", () => {
    const vienna = clock("Europe/Vienna");
    expect(String(localTime(vienna, at("2026-03-29T00:50:00Z")))).toBe("Sun 29 Mar 2026 01:50");
    expect(String(localTime(vienna, at("2026-03-29T01:00:00Z")))).toBe("Sun 29 Mar 2026 03:00");
    expect(offsetText(vienna, at("2026-10-25T00:50:00Z"))).toBe("UTC+02:00");
    expect(String(localTime(vienna, at("2026-10-25T00:50:00Z")))).toBe("Sun 25 Oct 2026 02:50");
    expect(String(localTime(vienna, at("2026-10-25T01:50:00Z")))).toBe("Sun 25 Oct 2026 02:50");
    expect(offsetText(vienna, at("2026-10-25T01:50:00Z"))).toBe("UTC+01:00");
  });

  it("knows fixed offsets and UTC", () => {
    expect(String(localTime(clock("-03:30"), at("2026-01-01T00:00:00Z")))).toBe("Wed 31 Dec 2025 20:30");
    expect(offsetText(clock("-03:30"), 0)).toBe("UTC−03:30");
    expect(String(shortLocalTime(clock("UTC"), at("2026-01-01T00:00:05Z")))).toBe("Thu 1 Jan 00:00");
    expect(String(localTime(clock("UTC"), at("2026-01-01T00:00:05Z")))).toBe("Thu 1 Jan 2026 00:00:05");
  });

  it("leaves a language its marks between weekday, date, year and time of day", () => {
    const [vienna, start] = [clock("Europe/Vienna"), at("2026-03-01T23:00:00.25Z")];
    const german = [localTime, exactLocalTime, shortLocalTime].map((text) => inLanguage(text(vienna, start), GERMAN));
    expect(german).toEqual(["Mo., 2. März 2026, 00:00", "Mo., 2. März 2026, 00:00:00,250", "Mo., 2. März, 00:00"]);
    expect(inLanguage(dateText(localParts(vienna, start)), GERMAN)).toBe("Mo., 2. März");
  });

  it("reads the result's instants to the microsecond", () => {
    expect(instantOf("2026-01-01T00:00:00.000250Z") - instantOf("2026-01-01T00:00:00Z")).toBe(250);
    expect(instantOf("2026-01-01T00:00:00.25Z") - instantOf("2026-01-01T00:00:00Z")).toBe(250_000);
  });
});

describe("instants inside sentences", () => {
  it("are told in local time, with the zone's name after the last", () => {
    const told = withLocalTimes(
      clock("Europe/Vienna"),
      "From 2026-07-01T10:00:00Z to 2026-07-01T10:00:02.500Z, twice.",
    );
    expect(String(told)).toBe("From Wed 1 Jul 2026 12:00 to Wed 1 Jul 2026 12:00:02.500 (Europe/Vienna), twice.");
    expect(String(withLocalTimes(clock("UTC"), "Nothing here."))).toBe("Nothing here.");
  });

  it("have a clock over the whole log where only part of it was assessed", () => {
    const part = { zone: "UTC", start: "2026-01-01T00:00:00Z", end: "2026-01-02T00:00:00Z" };
    const cropped = { start: "2022-01-01T00:00:00Z", end: "2026-01-02T00:00:00Z" };
    expect(String(localTime(localClock({ ...part, cropped }), at(cropped.start)))).toBe("Sat 1 Jan 2022 00:00");
  });
});
