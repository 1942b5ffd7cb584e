// Three voltages at 10.24 kHz as int16 COMTRADE, all phenomena on, one process: seconds of signal per second, and peak
// memory for ten minutes and six hours side by side. Run after `npm run build`: node bench/waveform.mjs [hours]
// The data file is made as it is read (one second of samples, numbered on), so that six hours need no disk.
import { spawnSync } from "node:child_process";
import { performance } from "node:perf_hooks";
import { resourceUsage } from "node:process";

const RATE = 10240;
const ROW_BYTES = 8 + 3 * 2;

function configuration(rows) {
  const channel = (n) => `${n},U L${n},L${n},,V,0.015,0,0,-32767,32767,1,1,P`;
  const stamp = "02/03/2026,00:00:00.000000";
  return [
    "bench,recorder,1999",
    "3,3A,0D",
    channel(1),
    channel(2),
    channel(3),
    "50",
    "1",
    `${RATE},${rows}`,
    stamp,
    stamp,
    "BINARY",
    "1",
  ]
    .join("\r\n")
    .concat("\r\n");
}

/** One second with harmonics and a little flicker; every 90 s a dip on L1. */
function template(dip) {
  const bytes = Buffer.alloc(RATE * ROW_BYTES);
  for (let i = 0; i < RATE; i++) {
    const t = i / RATE;
    for (let c = 0; c < 3; c++) {
      const a = 2 * Math.PI * (50 * t - c / 3);
      const depth = dip && c === 0 && t > 0.3 && t < 0.42 ? 0.6 : 1;
      const u =
        325 *
        depth *
        (1 + 0.002 * Math.sin(2 * Math.PI * 9 * t)) *
        (Math.sin(a) + 0.04 * Math.sin(5 * a) + 0.02 * Math.sin(7 * a));
      bytes.writeInt16LE(Math.round(u / 0.015), i * ROW_BYTES + 8 + 2 * c);
    }
  }
  return bytes;
}

function dataFile(rows) {
  const plain = template(false);
  const dip = template(true);
  const size = rows * ROW_BYTES;
  return {
    name: "bench.dat",
    size,
    async read(offset, length) {
      const end = Math.min(size, offset + length);
      const first = Math.floor(offset / ROW_BYTES);
      const last = Math.ceil(end / ROW_BYTES);
      const rowsOut = Buffer.allocUnsafe((last - first) * ROW_BYTES);
      for (let row = first; row < last; ) {
        const second = Math.floor(row / RATE);
        const within = row - second * RATE;
        const n = Math.min(RATE - within, last - row);
        const from = second % 90 === 45 ? dip : plain;
        from.copy(rowsOut, (row - first) * ROW_BYTES, within * ROW_BYTES, (within + n) * ROW_BYTES);
        row += n;
      }
      for (let row = first; row < last; row++) {
        const at = (row - first) * ROW_BYTES;
        rowsOut.writeUInt32LE(row + 1, at);
        rowsOut.writeUInt32LE(Math.floor((row * 1e6) / RATE) >>> 0, at + 4);
      }
      return rowsOut.subarray(offset - first * ROW_BYTES, end - first * ROW_BYTES);
    },
  };
}

async function measure(seconds) {
  const { openLogs } = await import("../dist/formats/index.js");
  const { measure } = await import("../dist/analysis/index.js");
  const rows = seconds * RATE;
  const text = Buffer.from(configuration(rows));
  const cfg = { name: "bench.cfg", size: text.length, read: async (o, n) => text.subarray(o, o + n) };
  const recording = await openLogs([cfg, dataFile(rows)], { zone: "UTC" });
  const cpu = process.cpuUsage();
  const start = performance.now();
  const { series, events } = await measure(recording, {
    connection: "star",
    declaredVoltage: 230,
    nominalFrequency: 50,
  });
  const wall = (performance.now() - start) / 1000;
  const { user, system } = process.cpuUsage(cpu);
  const busy = (user + system) / 1e6;
  console.log(
    `${seconds} s of signal: ${(seconds / wall).toFixed(0)} times real time by the clock, ${(seconds / busy).toFixed(0)} by processor time; ` +
      `${series.length} series, ${events.length} events; peak memory ${(resourceUsage().maxRSS / 1024).toFixed(0)} MB`,
  );
}

const [first, second] = process.argv.slice(2);
if (first === "--one") {
  await measure(Number(second));
} else {
  const hours = first === undefined ? 6 : Number(first);
  for (const length of [600, hours * 3600]) {
    spawnSync(process.execPath, [new URL(import.meta.url).pathname, "--one", String(length)], { stdio: "inherit" });
  }
}
