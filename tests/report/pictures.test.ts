import { describe, expect, it } from "vitest";
import { RENDERERS } from "../../src/report/index.js";
import { resultsText } from "../../src/report/json.js";
import { png, svg } from "../../src/report/pictures.js";
import { CONTEXT, english, sampleReport } from "./support.js";

const { assessment, measurements } = await sampleReport({ orders: 4 });
const context = { ...CONTEXT, vega: () => Promise.reject(new Error("pictures need no browser script")) };

describe("pictures", () => {
  it("svg: one file per chart, with its title inside", async () => {
    const files = await svg.render(assessment, measurements, context);
    expect(files.length).toBeGreaterThan(8);
    for (const { path, content } of files) {
      expect(path).toMatch(/^charts\/[a-z0-9-]+\.svg$/);
      expect(String(content)).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg"/);
    }
    const voltage = files.find(({ path }) => path === "charts/voltage-profile.svg");
    expect(String(voltage?.content)).toMatch(/L2 was above 253\.0 V in \d+ of 1008 intervals/);
  });

  it("png: the same charts as pixels, twice as large", async () => {
    const [drawings, files] = [
      await svg.render(assessment, measurements, context),
      await png.render(assessment, measurements, context),
    ];
    expect(files.map(({ path }) => path)).toEqual(drawings.map(({ path }) => path.replace(".svg", ".png")));
    const bytes = files[0]?.content as Uint8Array;
    expect([...bytes.subarray(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10]);
    const width = Number(/width="(\d+)/.exec(String(drawings[0]?.content))?.[1]);
    expect(new DataView(bytes.buffer, bytes.byteOffset).getUint32(16)).toBe(2 * width);
  });

  it("png: its words are drawn with the fonts handed over alone", async () => {
    const [drawn] = await png.render(assessment, measurements, context);
    const [wordless] = await png.render(assessment, measurements, { ...context, fontFiles: [] });
    expect(wordless?.path).toBe(drawn?.path);
    expect((wordless?.content.length ?? 0) / (drawn?.content.length ?? 1)).toBeLessThan(0.9);
  });
});

it("the outputs have ids and titles of their own", () => {
  const ids = RENDERERS.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  expect(ids).toEqual(expect.arrayContaining(["html", "json", "svg", "png"]));
  for (const { title } of RENDERERS) expect(title).not.toBe("");
});

it("results.json reads back as the result, keys in order", () => {
  const text = resultsText(assessment);
  expect(JSON.parse(text)).toEqual(english(assessment));
  expect(text.endsWith("}\n")).toBe(true);
  expect(text.slice(0, 20)).toBe('{\n  "schema": 1,\n  "');
});
