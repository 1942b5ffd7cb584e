import { describe, expect, it } from "vitest";
import { figure, list, percent, span } from "../../src/checks/common/wording.js";
import { DAY, HOUR, MINUTE, SECOND } from "../../src/recording/time.js";

describe("wording of findings", () => {
  it("writes lengths of time in their two largest units", () => {
    expect(String(span(7 * DAY + 8 * HOUR))).toBe("7 d 8 h");
    expect(String(span(140 * MINUTE))).toBe("2 h 20 min");
    expect(String(span(HOUR + 5 * SECOND))).toBe("1 h 5 s");
    expect(String(span(DAY + HOUR + MINUTE))).toBe("1 d 1 h");
    expect(String(span(SECOND / 5))).toBe("0.2 s");
  });

  it("keeps five digits of a value, three of a share, and joins names", () => {
    expect(String(figure(253.04))).toBe("253.04");
    expect(String(figure(20_814.37))).toBe("20814");
    expect(String(percent(13 / 1008))).toBe("1.29 %");
    expect([list(["L1"]), list(["L1", "L2"]), list(["L1", "L2", "L3"])].map(String)).toEqual([
      "L1",
      "L1 and L2",
      "L1, L2 and L3",
    ]);
  });
});
