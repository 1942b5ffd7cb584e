// Reading speed and memory of the CSV reader beside csv-parse, on a 1-s log with 30 channels.
// Usage: npm run build && node bench/csv.mjs [megabytes, default 150]
import { spawnSync } from "node:child_process";
import { createReadStream, createWriteStream, mkdtempSync, rmSync, statSync } from "node:fs";
import { open } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const CHANNELS = [
  ...["L1", "L2", "L3"].flatMap((phase) => ["mean", "min", "max"].map((s) => [`U ${phase} ${s} [V]`, 230, 2])),
  ...["L1", "L2", "L3"].map((phase) => [`I ${phase} [A]`, 15, 2]),
  ["f [Hz]", 50, 3],
  ...["L1", "L2", "L3"].flatMap((phase) => [3, 5, 7, 11, 13].map((order) => [`U ${phase} h${order} [%]`, 1, 2])),
  ...["L1", "L2"].map((phase) => [`P ${phase} [W]`, 3000, 0]),
];

const [mode, file] = process.argv.slice(2);
if (mode === "ours") report(await ours(file));
else if (mode === "csv-parse") report(await csvParse(file, false));
else if (mode === "csv-parse-numbers") report(await csvParse(file, true));
else await compare(Number(mode ?? 150));

async function compare(megabytes) {
  const folder = mkdtempSync(join(tmpdir(), "csv-bench-"));
  try {
    const log = join(folder, "log.csv");
    await write(log, megabytes * 1e6);
    const size = statSync(log).size;
    console.log(`${(size / 1e6).toFixed(0)} MB, ${CHANNELS.length} channels; Node ${process.version}`);
    const titles = {
      ours: "this reader",
      "csv-parse": "csv-parse, text only",
      "csv-parse-numbers": "csv-parse and Number()",
    };
    for (const [name, title] of Object.entries(titles)) {
      const run = spawnSync(process.execPath, [fileURLToPath(import.meta.url), name, log], { encoding: "utf8" });
      if (run.status !== 0) throw new Error(run.stderr);
      const { seconds, rows, peak } = JSON.parse(run.stdout);
      const speed = (size / 1e6 / seconds).toFixed(1);
      console.log(`${title.padEnd(24)} ${speed.padStart(7)} MB/s   ${rows} rows   peak ${(peak / 1e3).toFixed(0)} MB`);
    }
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Seconds from 2026-03-02 on; values wander a little, always the same. */
async function write(path, bytes) {
  const out = createWriteStream(path);
  let state = 1;
  const random = () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
  let [written, t, text] = [0, Date.UTC(2026, 2, 2), `Time,${CHANNELS.map(([name]) => name).join(",")}\n`];
  while (written < bytes) {
    for (let i = 0; i < 1000; i++, t += 1000) {
      text += new Date(t).toISOString().slice(0, 19).replace("T", " ");
      for (const [, level, places] of CHANNELS) text += `,${(level * (1 + 0.05 * (random() - 0.5))).toFixed(places)}`;
      text += "\n";
    }
    written += text.length;
    if (!out.write(text)) await new Promise((done) => out.once("drain", done));
    text = "";
  }
  await new Promise((done) => out.end(done));
}

async function ours(path) {
  const { openLogs } = await import("../dist/formats/index.js");
  const handle = await open(path);
  const { size } = await handle.stat();
  const log = {
    name: "log.csv",
    size,
    async read(offset, length) {
      const bytes = new Uint8Array(Math.min(length, size - offset));
      const { bytesRead } = await handle.read(bytes, 0, bytes.length, offset);
      return bytes.subarray(0, bytesRead);
    },
  };
  const begun = performance.now();
  const recording = await openLogs([log], { zone: "Europe/Vienna" });
  const seconds = (performance.now() - begun) / 1000;
  await handle.close();
  return { seconds, rows: recording.series[0].values.length };
}

async function csvParse(path, numbers) {
  const { parse } = await import("csv-parse");
  const begun = performance.now();
  let rows = 0;
  const parser = createReadStream(path, { highWaterMark: 512 * 1024 }).pipe(parse({ from: 2 }));
  for await (const row of parser) {
    if (numbers) for (let i = 1; i < row.length; i++) row[i] = Number(row[i]);
    rows++;
  }
  return { seconds: (performance.now() - begun) / 1000, rows };
}

function report(result) {
  console.log(JSON.stringify({ ...result, peak: process.resourceUsage().maxRSS }));
}
