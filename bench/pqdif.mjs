// Time and memory to list all heads of a PQDIF file, and to read one observation of it: plain and with compressed records.
// Usage: npm run build && node bench/pqdif.mjs [megabytes, default 500]
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, statSync } from "node:fs";
import { open, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { CHARACTERISTIC } from "../dist/formats/pqdif/characteristics.js";
import { QUANTITY_TYPE, VALUE_TYPE } from "../dist/formats/pqdif/identifiers.js";
import { openPqdif } from "../dist/formats/pqdif/read-file.js";
import { pqdifPieces } from "../dist/formats/pqdif/write.js";

const START = Date.UTC(2026, 2, 2) * 1000;
const DAY = 86_400e6;
const LOGS = 200;
const WAVES = 8;
const SAMPLES = 15_360;
const shared = { share: { channel: 0, series: 0 } };
let state = 1;
const LEVELS = Array.from({ length: 100 }, () => Float64Array.from({ length: 144 }, () => 230 + noise()));
const SHAPES = Array.from({ length: 50 }, () =>
  Float64Array.from({ length: SAMPLES }, (_, i) => 325 * Math.sin((100 * Math.PI * i) / SAMPLES) + noise()),
);
let made = 0;

const [mode, file] = process.argv.slice(2);
if (mode === "read") console.log(JSON.stringify(await read(file)));
else await compare(Number(mode ?? 500));

async function compare(megabytes) {
  const folder = mkdtempSync(join(tmpdir(), "pqdif-bench-"));
  try {
    for (const compressed of [false, true]) {
      const log = join(folder, "log.pqd");
      await writeFile(log, limited(compressed, megabytes * 1e6));
      const run = spawnSync(process.execPath, [fileURLToPath(import.meta.url), "read", log], { encoding: "utf8" });
      if (run.status !== 0) throw new Error(run.stderr);
      const { heads, observations, series, one, peak } = JSON.parse(run.stdout);
      const size = (statSync(log).size / 1e6).toFixed(0);
      console.log(
        `${size} MB ${compressed ? "compressed" : "plain"}: ${observations} observations with ${series} series listed in ` +
          `${heads.toFixed(2)} s, one read in ${one.toFixed(2)} s, peak ${(peak / 1e3).toFixed(0)} MB; Node ${process.version}`,
      );
    }
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Days of a recorder until the file is long enough: a value log of 200 channels each, and every hour a second of waveforms. */
async function* limited(compressed, bytes) {
  let written = 0;
  function* records() {
    yield { dataSource: source() };
    for (let day = 0; written < bytes; day++) {
      yield { observation: valueLog(day) };
      for (let hour = 0; hour < 24; hour++) yield { observation: capture(day, hour) };
    }
  }
  for await (const piece of pqdifPieces({ fileName: "log.pqd", creation: START }, records(), { compressed })) {
    written += piece.length;
    yield piece;
  }
}

function source() {
  const series = (valueType, units, storage) => ({ valueType, units, characteristic: CHARACTERISTIC.RMS, storage });
  const log = [VALUE_TYPE.MIN, VALUE_TYPE.MAX, VALUE_TYPE.AVG].map((type) => series(type, 6, 1));
  const logs = Array.from({ length: LOGS }, (_, i) => ({
    name: `log ${i}`,
    phase: 1 + (i % 3),
    quantityType: QUANTITY_TYPE.VALUELOG,
    quantityMeasured: 1,
    series: [series(VALUE_TYPE.TIME, 2, 4), ...log],
  }));
  const waves = Array.from({ length: WAVES }, (_, i) => ({
    name: `wave ${i}`,
    phase: 1 + (i % 3),
    quantityType: QUANTITY_TYPE.WAVEFORM,
    quantityMeasured: 1,
    series: [series(VALUE_TYPE.TIME, 2, 4), series(VALUE_TYPE.VAL, 6, 3)],
  }));
  return { name: "bench", effective: START, channels: [...logs, ...waves] };
}

function noise() {
  state = (state * 48271) % 2147483647;
  return state / 2147483647 - 0.5;
}

function valueLog(day) {
  const time = { type: "REAL8", steps: [[144, 600]] };
  const values = () => ({ type: "REAL4", values: LEVELS[made++ % LEVELS.length] });
  const channels = Array.from({ length: LOGS }, (_, definition) => ({
    definition,
    series: [definition === 0 ? time : shared, values(), values(), values()],
  }));
  return { name: "day", start: START + day * DAY, triggerMethod: 2, channels };
}

function capture(day, hour) {
  const time = { type: "REAL8", steps: [[SAMPLES, 1 / SAMPLES]] };
  const channels = Array.from({ length: WAVES }, (_, i) => ({
    definition: LOGS + i,
    series: [i === 0 ? time : shared, { type: "INTEGER2", scale: 0.02, values: SHAPES[made++ % SHAPES.length] }],
  }));
  return { name: "capture", start: START + day * DAY + hour * 3600e6, triggerMethod: 1, channels };
}

async function read(path) {
  const handle = await open(path);
  const { size } = await handle.stat();
  const log = {
    name: "log.pqd",
    size,
    async read(at, length) {
      const { buffer, bytesRead } = await handle.read(new Uint8Array(Math.min(length, size - at)), 0, undefined, at);
      return buffer.subarray(0, bytesRead);
    },
  };
  const before = performance.now();
  const { observations, warnings } = await openPqdif(log);
  const listed = performance.now();
  const values = await observations[0].open();
  for (const [c, channel] of observations[0].channels.entries()) {
    for (const s of channel.series.keys()) await values.values(c, s);
  }
  const done = performance.now();
  await handle.close();
  if (warnings.length > 0) throw new Error(String(warnings[0].what));
  return {
    heads: (listed - before) / 1e3,
    one: (done - listed) / 1e3,
    observations: observations.length,
    series: observations.reduce((sum, o) => sum + o.channels.reduce((n, c) => n + c.series.length, 0), 0),
    peak: process.resourceUsage().maxRSS,
  };
}
