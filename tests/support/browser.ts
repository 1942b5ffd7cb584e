import { existsSync } from "node:fs";
import { type Browser, chromium } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";

/** Where systems put a Chromium; MAINSWITNESS_BROWSER names another one. Nothing is ever downloaded. */
const PLACES = [
  process.env.MAINSWITNESS_BROWSER,
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
];

/** Nothing but the page under test may make a request. */
const QUIET = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

export function browserPath(): string | undefined {
  return PLACES.find((path) => path !== undefined && existsSync(path));
}

/**
 * A suite that needs a real browser. Where there is none, the suite is one test that says so in a line, and that fails
 * where CI=true.
 */
export function describeInBrowser(title: string, suite: (browser: () => Browser) => void): void {
  const executablePath = browserPath();
  describe(title, () => {
    if (executablePath === undefined) {
      it("needs a browser", () => {
        console.warn(`${title}: not tested, as no Chromium was found; install one or name it in MAINSWITNESS_BROWSER.`);
        expect(process.env.CI, "with CI=true a missing browser is a failure").not.toBe("true");
      });
      return;
    }
    let browser: Browser | undefined;
    beforeAll(async () => {
      browser = await chromium.launch({ executablePath, args: QUIET });
    });
    afterAll(async () => {
      await browser?.close();
    });
    suite(() => browser as Browser);
  });
}
