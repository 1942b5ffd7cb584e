import { describe, expect, it } from "vitest";
import { statedInstant, statedTimeSchema } from "../../src/recording/stated-time.js";

const VIENNA = "Europe/Vienna";

describe("times that people write", () => {
  it("reads a stamp without offset in the log's zone, and one with an offset as it stands", () => {
    expect(statedInstant("at", "2026-07-01T12:00", VIENNA)).toBe(Date.UTC(2026, 6, 1, 10) * 1000);
    expect(statedInstant("at", "2026-07-01 12:00:30+05:30", VIENNA)).toBe(Date.UTC(2026, 6, 1, 6, 30, 30) * 1000);
    expect(statedInstant("at", "2026-07-01", VIENNA)).toBe(Date.UTC(2026, 5, 30, 22) * 1000);
  });

  it("asks for an offset in the hours that the clock skipped or showed twice (EU rules: 29 March, 25 October 2026)", () => {
    expect(() => statedInstant("at", "2026-03-29T02:30", VIENNA)).toThrow(/at 2026-03-29T02:30 .*skipped/);
    expect(() => statedInstant("at", "2026-10-25T02:30", VIENNA)).toThrow(/showed twice/);
    expect(statedInstant("at", "2026-10-25T02:30+01:00", VIENNA)).toBe(Date.UTC(2026, 9, 25, 1, 30) * 1000);
  });

  it.each(["2026-02-29T10:00", "2026-03-02T25:00", "2. 3. 2026 10:00", "2026-03-02"])(
    "has no time of day in %s",
    (t) => {
      expect(statedTimeSchema.safeParse(t).success).toBe(false);
    },
  );
});
