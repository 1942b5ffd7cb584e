// Makes the example report in reports/village-feeder and its picture docs/report.png (after `npm run build`; needs Chromium).
import { execFileSync } from "node:child_process";
import { mkdirSync } from "node:fs";
import { chromium } from "playwright-core";

const root = new URL("../", import.meta.url);
execFileSync("npm", ["run", "--silent", "demo"], { cwd: root, stdio: "inherit" });
mkdirSync(new URL("docs", root), { recursive: true });
const browser = await chromium.launch({
  executablePath: process.env.MAINSWITNESS_BROWSER ?? "/usr/bin/chromium",
  args: [
    "--no-sandbox",
    "--disable-gpu",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
  ],
});
try {
  const page = await browser.newPage({ viewport: { width: 1200, height: 1180 } });
  await page.goto(new URL("reports/village-feeder/report.html", root).href);
  await page.screenshot({ path: new URL("docs/report.png", root).pathname });
} finally {
  await browser.close();
}
