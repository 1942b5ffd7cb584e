import { describe, expect, it } from "vitest";
import { ENGLISH, inLanguage, type Language } from "../src/report/languages/language.js";
import { capital, Numeral, say, strung } from "../src/sentence.js";

const german: Language = {
  id: "de",
  name: "Deutsch",
  decimalMark: ",",
  phrases: { "{1} of {2} values lie {3}": "von {2} Werten liegen {1} {3}", "above {1} V": "über {1} V" },
};

describe("a sentence", () => {
  const sentence = say`${73} of ${1008} values lie ${say`above ${new Numeral("253.0")} V`}`;

  it("is its English text in strings and JSON", () => {
    expect(`${sentence}`).toBe("73 of 1008 values lie above 253.0 V");
    expect(JSON.stringify({ sentence })).toBe('{"sentence":"73 of 1008 values lie above 253.0 V"}');
    expect(inLanguage(sentence, ENGLISH)).toBe("73 of 1008 values lie above 253.0 V");
  });

  it("is rebuilt in another language, places in that language's order, numerals with its mark", () => {
    expect(inLanguage(capital(sentence), german)).toBe("Von 1008 Werten liegen 73 über 253,0 V");
  });

  it("leaves plain strings as they are: a clause 4.2 is no number", () => {
    expect(inLanguage(strung(["4.2", new Numeral("4.2"), say`no phrase`], "; "), german)).toBe("4.2; 4,2; no phrase");
  });
});
