import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { faultsOf, templates, templatesIn } from "../../scripts/phrases.mjs";
import { type GivenSetup, setupSchema } from "../../src/recording/setup.js";
import { htmlReport } from "../../src/report/html/index.js";
import { resultsText } from "../../src/report/json.js";
import { LANGUAGES } from "../../src/report/languages/index.js";
import { ENGLISH, inLanguage, type Language, translated } from "../../src/report/languages/language.js";
import type { ProofSummary } from "../../src/report/pdf/annex.js";
import { reportDocument } from "../../src/report/pdf/index.js";
import { svg } from "../../src/report/pictures.js";
import { terminalText } from "../../src/report/terminal.js";
import { say, strung } from "../../src/sentence.js";
import { runLogs } from "../support/whole-run.js";
import { madeEvent, madeRecord, manyEvents, shortReport } from "./event-support.js";
import { escaped, numbersIn, PSEUDO, shownText, untranslated } from "./pseudo-language.js";
import { CONTEXT, type Report, type SampleOptions, START, sampleReport } from "./support.js";

const english = [...templates().keys()];

describe("templates", () => {
  it("are read from the sources with their places, whatever stands in these", () => {
    const lines = [
      "say`@{n} of @{list.map((a) => `@{a}}`)} lay\\nabove`; say`a @{b ? say`in @{\"}\"}` : ''}`; // say`no`",
      " * say`no`",
    ];
    const source = lines.join("\n").replaceAll("@", "$");
    expect(templatesIn(source)).toEqual(["{1} of {2} lay\nabove", "a {1}", "in {1}"]);
  });

  it("stand in report, stages and limit sets", () => {
    expect(english.length).toBeGreaterThan(500);
    for (const known of [
      "conforms",
      "The supply voltage did not conform to {1} {2}",
      "{1} Mar",
      "supply voltage",
      "at most {1}\nabove {2}",
      "Supply voltage, most of the week",
    ])
      expect(english).toContain(known);
  });

  it("are the very ones that sentences look up", () => {
    const one = say`${1} of ${2} columns used`;
    expect(english).toContain(one.template);
  });
});

describe("catalogs", () => {
  it.each(LANGUAGES.filter(({ id }) => id !== "en"))("$id is whole", (language) => {
    expect(faultsOf(language, english)).toEqual([]);
  });

  it("begin with English, and have ids and names of their own", () => {
    expect(LANGUAGES[0]).toBe(ENGLISH);
    expect(new Set(LANGUAGES.map(({ id }) => id)).size).toBe(LANGUAGES.length);
    expect(new Set(LANGUAGES.map(({ name }) => name)).size).toBe(LANGUAGES.length);
  });

  it("that lack a phrase, keep an old one or lose a place are refused", () => {
    expect(faultsOf(PSEUDO, english)).toEqual([]);
    const { conforms, ...phrases } = PSEUDO.phrases;
    expect(conforms).toBe("жжжжжжжж");
    const changed = { ...phrases, "No longer said": "ж", "{1} Mar": "ж", "{1}: {2}": "{1} : {2}" };
    expect(faultsOf({ ...PSEUDO, phrases: changed }, english)).toEqual([
      "missing: conforms",
      "stale: No longer said",
      "other places: {1} Mar",
    ]);
  });
});

const storm = async (): Promise<Report> => {
  const dip = madeEvent({ atS: 3600, durationS: 0.12, percent: 41, phases: ["L1", "L3"] });
  const cut = { complete: false, cutOff: { start: "recording", end: "gap" } } as const;
  const made = [
    { ...dip, ...madeRecord(dip) },
    madeEvent({ atS: 7200, durationS: 200, percent: 0.5, kind: "interruption", more: { ...cut } }),
    madeEvent({ atS: 9000, durationS: 0.3, percent: 4, kind: "rapid-voltage-change" }),
    madeEvent({ atS: 9900, durationS: 0.001, percent: 150, kind: "transient" }),
    madeEvent({ atS: 9950, durationS: 2, percent: 50, kind: "inrush-current", more: { unit: "A" } }),
    ...manyEvents(60),
  ];
  return sampleReport({ events: made, rules: "en50160-2022-lv", orders: 7 });
};

const everyFlaw = async (): Promise<Report> => {
  const folder = new URL("../../sample-logs/", import.meta.url);
  const setup = setupSchema.parse(parse(readFileSync(new URL("every-flaw.setup.yaml", folder), "utf8")));
  return runLogs([{ name: "every-flaw.csv", bytes: readFileSync(new URL("every-flaw.csv", folder)) }], setup);
};

const RESULTS: readonly [string, () => Promise<Report>][] = [
  ["a week that does not conform, with a danger", () => sampleReport({ orders: 7, findings: [DANGER] })],
  [
    "a week that conforms to the limits of a country",
    () => sampleReport({ middayRise: 4, rules: "spain-lv", orders: 3 }),
  ],
  [
    "two and a half weeks with a gap and flagged values",
    () => sampleReport({ days: 18, orders: 3, gap: [300, 900], flagged: [10, 40] }),
  ],
  ["two days", () => sampleReport({ days: 2, orders: 3, zone: "UTC" })],
  ["a storm", storm],
  ["a week with complaints, other limit sets and shorter intervals", () => sampleReport(BESIDE)],
  ["twelve seconds of waveforms", shortReport],
  ["a log with every flaw", everyFlaw],
  ["a week with an exclusion and the uncertainty of a class", () => sampleReport({ orders: 3, given: CAREFUL })],
];

const BESIDE: SampleOptions = {
  orders: 5,
  events: [madeEvent({ atS: 3600, durationS: 0.12, percent: 41, phases: ["L1", "L3"] })],
  compared: ["spain-lv", "france-lv", "en50160-2022-lv"],
  given: {
    complaints: [
      { at: "2026-03-02T00:58", what: "Xxx" },
      { at: "2026-03-05T12:00", to: "2026-03-06T14:00", what: "Xxx" },
      { at: "2026-03-08T23:00", to: "2026-03-09T01:00", what: "Xxx" },
      { at: "2026-04-05T13:00", what: "Xxx" },
    ],
    comments: [{ at: "2026-03-04T13:00", phase: "L2", text: "Xxx" }],
  },
  supply: {
    sliding: [
      {
        phase: "L1",
        interval: 200_000,
        n: 600_000,
        lowest: { value: 224.1, at: START + 600_000_000 },
        highest: { value: 254.2, at: START + 1_200_000_000 },
        limit: 253,
        passed: [{ start: START + 1_100_000_100, durationS: 192.4, peak: 254.2, complete: false }],
      },
    ],
    bounds: [
      { phase: "L2", limit: 253, pairs: 1007, highest: { value: 257.6, at: START + 1_200_000_000 }, possible: 3 },
    ],
    spans: [
      {
        phase: "L1",
        asked: { from: START + 3_180_000_000, to: START + 3_780_000_000 },
        interval: 200_000,
        n: 3000,
        start: START + 3_180_000_000,
        end: START + 3_780_000_000,
        lowest: 224.1,
        highest: 241.3,
        mean: 233.2,
        inner: { lowest: 190.1, highest: 245.4 },
      },
    ],
  },
};

const CAREFUL: GivenSetup = {
  exclusions: [
    {
      from: "2026-03-02T16:00",
      to: "2026-03-02T17:30",
      reason: "exceptional-weather",
      assertedBy: "Xxx",
      reference: "Xxx",
    },
  ],
  instrument: { type: "Xxx", class: "S" },
  decisionRule: "guarded",
  report: { number: "Xxx" },
};

const DANGER = {
  id: "open-neutral",
  severity: "blocks",
  sentence: "L1 rose while L2 fell.",
  evidence: {},
  quantities: ["voltage"],
  phases: [],
  danger: "open-neutral",
} as const;

describe.each(RESULTS)("%s", async (_, make) => {
  const { assessment, measurements } = await make();
  const known = [...untranslated(assessment), "Xxx"];
  const pageIn = async (language: Language) => {
    const files = await htmlReport.render(assessment, measurements, { ...CONTEXT, language });
    return String(files[0]?.content);
  };
  const pictureTexts = async (language: Language) => {
    const files = await svg.render(assessment, measurements, { ...CONTEXT, language });
    return files.map(({ content }) => shownText(String(content))).join("\n");
  };

  it("has no word in the page that stays English, and the same numbers", async () => {
    const [page, plain] = [await pageIn(PSEUDO), await pageIn(ENGLISH)];
    expect(page).toContain('<html lang="x-pseudo">');
    expect(escaped(shownText(page), known).join(" ")).toBe("");
    expect(numbersIn(shownText(page))).toEqual(numbersIn(shownText(plain)));
  });

  it("has none in the document that becomes the PDF", async () => {
    const document = await reportDocument(assessment, measurements, { ...CONTEXT, language: PSEUDO });
    const proof = JSON.parse(await CONTEXT.packaged("assets/proof.json")) as ProofSummary;
    const hashes = assessment.sources.map(({ sha256 }) => sha256.slice(0, 16));
    const measured = proof.tables.flatMap(({ title, source, nearest }) => [source, title, nearest.what]);
    const same = [...measured, ...known, ...hashes, proof.version];
    const texts = textsIn(translated({ ...document, attached: [] }, PSEUDO));
    expect(escaped(texts.join("\n"), same).join(" ")).toBe("");
  });

  it("hands translated words to the live charts", async () => {
    const page = await pageIn(PSEUDO);
    const charts = [...page.matchAll(/<script type="application\/json">(.*?)<\/script>/g)].map((m) =>
      JSON.parse(m[1] ?? ""),
    );
    expect(charts.length).toBeGreaterThan(0);
    for (const { data, spec } of charts) {
      const names = ["phase", "day", "text", "label", "short"];
      const shown = Object.values(data as Record<string, Record<string, unknown>>).flatMap((columns) =>
        names.map((name) => JSON.stringify(columns[name] ?? "")),
      );
      expect(escaped(shown.join("\n").replace(/"runs"|\\n/g, " "), known)).toEqual([]);
      const tips = [...JSON.stringify(spec).matchAll(/\{\\"(?:[^{}])*?\}/g)].flatMap(([tip]) =>
        [...tip.matchAll(/\\"([^"\\]*)\\": /g)].map((m) => m[1] ?? ""),
      );
      expect(escaped(tips.join("\n"), known)).toEqual([]);
    }
    const words = /words: (\{.*?\}), /.exec(page)?.[1] ?? "";
    expect(JSON.parse(words)).toMatchObject({ decimalMark: ",", locale: "x-pseudo", atOrBelow: "# % жж жж жжжжж" });
  });

  it("has none in the pictures and on the terminal either", async () => {
    expect(escaped(await pictureTexts(PSEUDO), known).join(" ")).toBe("");
    expect(numbersIn(await pictureTexts(PSEUDO))).toEqual(numbersIn(await pictureTexts(ENGLISH)));
    const text = terminalText(assessment, PSEUDO);
    expect(escaped(text, known).join(" ")).toBe("");
    expect(numbersIn(text)).toEqual(numbersIn(terminalText(assessment, ENGLISH)));
  });

  it("has the same results.json in every language", () => {
    const text = resultsText(assessment);
    expect(text).not.toMatch(/[жЖ]|"template"/);
  });
});

it("numbers carry the decimal mark, times and numbers of versions do not", () => {
  const german = { ...PSEUDO, decimalMark: "," } as const;
  expect(inLanguage(say`${253.5} V at ${"12:10"}, ${"EN 50160, 4.2.2"}`, german)).toContain("253,5");
  expect(inLanguage(say`${253.5} V at ${"12:10"}, ${"EN 50160, 4.2.2"}`, german)).toContain("4.2.2");
});

/** Every text of a document's blocks; of pictures what they show. */
function textsIn(data: unknown, key = ""): string[] {
  if (["kind", "verdict", "page"].includes(key)) return [];
  if (typeof data === "string") return [key === "svg" ? shownText(data) : data];
  if (typeof data !== "object" || data === null) return [];
  return Object.entries(data).flatMap(([name, value]) => textsIn(value, name));
}

it("French stands a no-break space before the marks that want one, in lists too", () => {
  const french = LANGUAGES.find(({ id }) => id === "fr") ?? ENGLISH;
  const list = strung([say`yes`, say`no`, say`none`], "; ");
  expect(inLanguage(say`Limits: ${list}.`, french)).toBe("Limites\u00a0: oui\u00a0; non\u00a0; néant.");
  expect(inLanguage(say`“${say`supply voltage`}”`, french)).toBe("«\u00a0tension d’alimentation\u00a0»");
});
