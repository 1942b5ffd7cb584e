import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { BrowserContextOptions, Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { vegaScript } from "../../src/cli/files.js";
import { htmlReport } from "../../src/report/html/index.js";
import { ENGLISH } from "../../src/report/languages/language.js";
import { instantOf } from "../../src/report/local-time.js";
import { describeInBrowser } from "../support/browser.js";
import { madeEvent, madeRecord, shortReport } from "./event-support.js";
import { CONTEXT, type Report, type SampleOptions, sampleReport } from "./support.js";

const HOSTILE = `<img src="x" onerror="document.title='run'"></script><script>document.title='run'</script>`;
const PROFILE = "#chart-voltage-profile";

describeInBrowser("report.html in a browser", (browser) => {
  let folder = "";
  let sample: Report;
  const url = (name: string) => pathToFileURL(join(folder, name)).href;

  const writePage = async (name: string, { assessment, measurements }: Report) => {
    const [file] = await htmlReport.render(assessment, measurements, { ...CONTEXT, vega: vegaScript });
    await writeFile(join(folder, name), file?.content ?? "");
  };
  const write = async (name: string, options: SampleOptions): Promise<Report> => {
    const report = await sampleReport(options);
    await writePage(name, report);
    return report;
  };

  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), "report-"));
    sample = await write("report.html", {});
    await writePage("short.html", await shortReport());
    const events = [madeEvent({ atS: 60, durationS: 0.12, percent: 41 })].map((e) => ({ ...e, ...madeRecord(e) }));
    await write("hostile.html", {
      events,
      site: HOSTILE,
      unknownHeader: HOSTILE,
      findings: [{ id: "x", severity: "note", sentence: HOSTILE, evidence: {}, quantities: [], phases: [] }],
    });
  });
  afterAll(() => rm(folder, { recursive: true }));

  /** Opens a page and gathers what it must not do: ask for anything, complain, or open a dialog. */
  const open = async (name: string, options: BrowserContextOptions = {}) => {
    const context = await browser().newContext({ viewport: { width: 1280, height: 900 }, ...options });
    const page = await context.newPage();
    const faults: string[] = [];
    page.on("request", (request) => {
      if (request.url() !== url(name)) faults.push(`request ${request.url()}`);
    });
    page.on("console", (message) => faults.push(`console ${message.type()}: ${message.text()}`));
    page.on("pageerror", (error) => faults.push(`error ${error.message}`));
    page.on("dialog", (dialog) => faults.push(`dialog ${dialog.message()}`));
    await page.goto(url(name));
    return { page, faults, close: () => context.close() };
  };

  const goLive = async (page: Page, figure: string) => {
    await page.locator(figure).scrollIntoViewIfNeeded();
    await page.locator(`${figure}[data-live]`).waitFor();
  };
  const axisLabels = async (page: Page) =>
    (await page.locator(`${PROFILE} .column_footer .role-axis-label text`).allTextContents()).sort();
  /** The middle of the plot of phase L2, its left edge and its width, in page coordinates. */
  const plot = (page: Page) =>
    page
      .locator(`${PROFILE} .mark-group.role-scope.cell > g`)
      .nth(1)
      .locator("path.background")
      .first()
      .evaluate((path) => {
        const { left, top, width, height } = path.getBoundingClientRect();
        return { x: left + width / 2, y: top + height / 2, left, width };
      });

  it("asks for nothing and complains of nothing while every chart comes alive", async () => {
    const { page, faults, close } = await open("report.html");
    const figures = await page.locator("figure.chart").count();
    expect(figures).toBeGreaterThan(12);
    for (let i = 0; i < figures; i++) {
      const figure = page.locator("figure.chart").nth(i);
      await figure.scrollIntoViewIfNeeded();
      await page.locator(`figure.chart >> nth=${i} >> xpath=self::*[@data-live]`).waitFor();
      expect(await figure.locator(".picture svg").count()).toBe(1);
    }
    expect(faults).toEqual([]);
    await close();
  });

  it("zooms by wheel, pans by drag and keys, and goes back", async () => {
    const { page, faults, close } = await open("report.html");
    await goLive(page, PROFILE);
    const whole = await axisLabels(page);
    expect(whole).toContain("Wed 4 Mar");
    const { x, y } = await plot(page);
    await page.mouse.move(x, y);
    await page.keyboard.down("Control");
    for (let k = 0; k < 8; k++) await page.mouse.wheel(0, -100);
    await page.keyboard.up("Control");
    await expect.poll(() => axisLabels(page)).toContainEqual(expect.stringMatching(/^\d\d:\d\d$/));
    const zoomed = await page.getAttribute(PROFILE, "data-span");
    await page.mouse.down();
    await page.mouse.move(x + 120, y, { steps: 4 });
    await page.mouse.up();
    const [from = 0, to = 0] = (zoomed ?? "").split(" ").map(Number);
    const [panned = 0, end = 0] = ((await page.getAttribute(PROFILE, "data-span")) ?? "").split(" ").map(Number);
    expect(panned).toBeLessThan(from);
    expect(end - panned).toBeCloseTo(to - from, -1);
    await page.focus(`${PROFILE} .picture`);
    await page.keyboard.press("ArrowRight");
    expect(Number((await page.getAttribute(PROFILE, "data-span"))?.split(" ")[0])).toBeGreaterThan(panned);
    await page.click(`${PROFILE} button:has-text("Whole recording")`);
    await expect.poll(() => axisLabels(page)).toEqual(whole);
    await page.focus(`${PROFILE} .picture`);
    await page.keyboard.press("+");
    await expect.poll(() => axisLabels(page)).not.toEqual(whole);
    await page.keyboard.press("0");
    await expect.poll(() => axisLabels(page)).toEqual(whole);
    expect(faults).toEqual([]);
    await close();
  });

  it("leaves the wheel to the page until a chart is clicked", async () => {
    const { page, close } = await open("report.html");
    await goLive(page, PROFILE);
    const { x, y } = await plot(page);
    const before = await page.evaluate(() => scrollY);
    await page.mouse.move(x, y);
    await page.mouse.wheel(0, 200);
    await expect.poll(() => page.evaluate(() => scrollY)).toBeGreaterThan(before);
    expect(await page.getAttribute(PROFILE, "data-span")).toBeNull();
    await close();
  });

  it("shows the logged value under the pointer, and says where it lies outside", async () => {
    const { page, close } = await open("report.html");
    await goLive(page, PROFILE);
    const { y, left, width } = await plot(page);
    const l2 = sample.measurements.series.find((s) => s.quantity === "voltage" && s.phase === "L2");
    const row = sample.assessment.weeks[0]?.requirements.find((r) => r.id === "supply-voltage" && r.phase === "L2");
    const at = l2?.starts.indexOf(instantOf(row?.worst?.at ?? "")) ?? -1;
    expect(at).toBeGreaterThan(0);
    await page.mouse.move(left + (at / 1008) * width, y);
    const [when = "", ...lines] = await page.locator(".tip > div").allTextContents();
    // An interval is less than a pixel wide, so the neighbour may answer; the value must be that of the time shown.
    const [, hour, minute] = /^Sat 7 Mar, (\d\d):(\d\d) \(UTC\+01:00\)$/.exec(when) ?? [];
    const shown = 5 * 144 + Number(hour) * 6 + Number(minute) / 10;
    expect(Math.abs(shown - at)).toBeLessThanOrEqual(1);
    const text = (values: Float64Array | undefined) => values?.[shown]?.toFixed(1);
    expect(lines[1]).toBe(`L2 ${text(l2?.values)} V (${text(l2?.min)} to ${text(l2?.max)}), outside`);
    await page.mouse.move(left - 200, 5);
    expect(await page.locator(".tip").isHidden()).toBe(true);

    await goLive(page, "#chart-harmonics-by-order");
    await page.locator("#chart-harmonics-by-order .mark-symbol.role-mark path").nth(0).hover({ force: true });
    expect((await page.locator(".tip > div").allTextContents()).slice(0, 2)).toEqual(["order: 2", "phase: L1"]);
    await close();
  });

  it("shows every chart where scripts are off", async () => {
    const { page, faults, close } = await open("report.html", { javaScriptEnabled: false });
    const figures = await page.locator("figure.chart").all();
    expect(figures.length).toBeGreaterThan(12);
    for (const figure of figures) {
      const box = await figure.locator(".picture svg").boundingBox();
      expect(box?.width).toBeGreaterThan(300);
      expect(box?.height).toBeGreaterThan(120);
    }
    expect(await page.locator("h1").textContent()).toMatch(/did not conform/);
    expect(faults).toEqual([]);
    await close();
  });

  it.each([true, false])("needs no sideways scrolling at 390 px (scripts: %s)", async (javaScriptEnabled) => {
    const { page, close } = await open("hostile.html", { viewport: { width: 390, height: 800 }, javaScriptEnabled });
    if (javaScriptEnabled) await goLive(page, PROFILE);
    for (const details of await page.locator("details > summary").all()) await details.click();
    const width = await page.locator("html").evaluate((html) => html.scrollWidth);
    expect(width).toBeLessThanOrEqual(390);
    const verdict = await page.locator("tr.requirement .verdict").first().boundingBox();
    expect((verdict?.x ?? 999) + (verdict?.width ?? 0)).toBeLessThanOrEqual(390);
    const confirmed = await page.locator('#rule-set td[data-title="Confirmed"]').first().boundingBox();
    expect((confirmed?.x ?? 999) + (confirmed?.width ?? 0)).toBeLessThanOrEqual(390);
    const hint = (figure: string) => page.locator(`${figure} .sideways`).isVisible();
    expect(await hint("#chart-voltage-hours")).toBe(true);
    if (javaScriptEnabled) expect(await hint(PROFILE)).toBe(false);
    if (javaScriptEnabled) {
      const picture = await page.locator(`${PROFILE} .picture svg`).boundingBox();
      expect((picture?.x ?? 999) + (picture?.width ?? 0)).toBeLessThanOrEqual(390);
    }
    await close();
  });

  it("opens an event to its course and waveform, which fit the screen", async () => {
    const { page, faults, close } = await open("hostile.html", { viewport: { width: 390, height: 800 } });
    const course = page.locator("#events figure.event svg").first();
    expect(await course.isVisible()).toBe(false);
    await page.locator("#events summary").first().click();
    for (const picture of await page.locator("#events figure.event svg").all()) {
      const box = await picture.boundingBox();
      expect(box?.width).toBeGreaterThan(250);
      expect((box?.x ?? 999) + (box?.width ?? 0)).toBeLessThanOrEqual(390);
    }
    expect(faults).toEqual([]);
    await close();
  });

  it("of a recording of seconds zooms to tenths, reads values at 0.2 s and names events under the pointer", async () => {
    const { page, faults, close } = await open("short.html");
    await goLive(page, PROFILE);
    const { x, y } = await plot(page);
    await page.mouse.move(x, y);
    expect((await page.locator(".tip > div").allTextContents())[0]).toMatch(
      /^Mon 2 Mar, 00:00:06\.\d\d \(UTC\+01:00\)$/,
    );
    for (let k = 0; k < 8; k++) await page.click(`${PROFILE} button:has-text("Zoom in")`);
    const [from = 0, to = 0] = ((await page.getAttribute(PROFILE, "data-span")) ?? "").split(" ").map(Number);
    expect(to - from).toBeCloseTo(1200, 0);
    await expect.poll(() => axisLabels(page)).toContainEqual(expect.stringMatching(/^00:00:0\d\.\d00$/));
    await goLive(page, "#chart-events");
    await page.locator("#chart-events .mark-symbol.role-mark path").first().hover({ force: true });
    expect((await page.locator(".tip > div").allTextContents())[0]).toMatch(
      /^event: voltage dip: 4[01]\.\d %, 12\d ms, L1 and L3$/,
    );
    expect(faults).toEqual([]);
    await close();
  });

  it("writes numbers and words under the pointer in the language of the page", async () => {
    const german = { ...ENGLISH, id: "de", decimalMark: ",", phrases: { "Zoom in": "Näher" } } as const;
    const [file] = await htmlReport.render(sample.assessment, sample.measurements, {
      ...CONTEXT,
      language: german,
      vega: vegaScript,
    });
    await writeFile(join(folder, "german.html"), file?.content ?? "");
    const { page, faults, close } = await open("german.html");
    await goLive(page, PROFILE);
    const { x, y } = await plot(page);
    await page.mouse.move(x, y);
    const [time, ...values] = await page.locator(".tip > div").allTextContents();
    expect(time).toMatch(/^\p{L}+\., \d+\. \p{L}+\.?, \d\d:\d\d \(UTC/u);
    expect(values).toHaveLength(3);
    for (const value of values) expect(value).toMatch(/^L\d \d{3},\d V \(\d{3},\d to \d{3},\d\)/);
    expect(await page.locator(`${PROFILE} button`).first().textContent()).toBe("Näher");
    expect(faults).toEqual([]);
    await close();
  });

  it("shows names that carry HTML as text", async () => {
    const { page, faults, close } = await open("hostile.html");
    await goLive(page, PROFILE);
    const text = await page.locator("main").textContent();
    expect((text ?? "").split(HOSTILE).length - 1).toBeGreaterThanOrEqual(3);
    expect(await page.locator("img").count()).toBe(0);
    expect(await page.title()).toContain("<img");
    expect(faults).toEqual([]);
    await close();
  });

  it("opens what is folded away for the printer, but for other weeks", async () => {
    const { page, close } = await open("report.html");
    expect(await page.locator("details[open]").count()).toBe(0);
    await page.evaluate(() => dispatchEvent(new Event("beforeprint")));
    expect(await page.locator("details:not([open])").count()).toBe(0);
    await close();
  });
});
