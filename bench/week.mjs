// A week of ten-minute values in 400 columns, from text to report.html: wall-clock time of the whole command.
// Run after `npm run build`: node bench/week.mjs
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { performance } from "node:perf_hooks";

const ROWS = 1008;
const RUNS = 5;
const main = new URL("../dist/main.js", import.meta.url).pathname;

/** Header and typical value of each column. */
function columns() {
  const list = [];
  for (const phase of ["L1", "L2", "L3"]) {
    for (const [word, shift] of [
      ["", 0],
      [" min", -3],
      [" max", 3],
    ])
      list.push([`Voltage ${phase}-N${word} (V)`, 231 + shift]);
    list.push([`Current ${phase} (A)`, 40], [`Current ${phase} min (A)`, 30], [`Current ${phase} max (A)`, 50]);
    list.push(
      [`Active power ${phase} (kW)`, 8],
      [`Reactive power ${phase} (kvar)`, 2],
      [`Apparent power ${phase} (kVA)`, 8.3],
    );
    list.push(
      [`THD voltage ${phase} (%)`, 2.1],
      [`THD current ${phase} (%)`, 9],
      [`Pst ${phase}`, 0.4],
      [`Plt ${phase}`, 0.42],
    );
    for (let h = 2; h <= 50; h++) list.push([`Harmonic voltage ${phase} order ${h} (%)`, 0.2]);
    for (let h = 2; h <= 50; h++) list.push([`Harmonic current ${phase} order ${h} (A)`, 0.3]);
    for (let h = 2; h <= 14; h++) list.push([`Interharmonic voltage ${phase} order ${h} (%)`, 0.05]);
  }
  for (const pair of ["L1-L2", "L2-L3", "L3-L1"]) list.push([`Voltage ${pair} (V)`, 400]);
  list.push(
    ["Frequency (Hz)", 50],
    ["Unbalance u2 (%)", 0.6],
    ["Unbalance u0 (%)", 0.4],
    ["Current N (A)", 6],
    ["Power factor total", 0.97],
  );
  for (let spare = 1; list.length < 400; spare++) list.push([`Temperature ${spare} (°C)`, 21]);
  return list;
}

function logText() {
  const list = columns();
  const lines = [["Time", ...list.map(([name]) => name)].join(",")];
  for (let row = 0; row < ROWS; row++) {
    const stamp = new Date(Date.UTC(2026, 2, 2) + row * 600_000).toISOString();
    lines.push(
      [stamp, ...list.map(([, value], i) => (value * (1 + 0.02 * Math.sin(row / 20 + i))).toFixed(3))].join(","),
    );
  }
  return { text: `${lines.join("\n")}\n`, columns: list.length };
}

const folder = mkdtempSync(join(tmpdir(), "mainswitness-bench-"));
try {
  const log = join(folder, "week.csv");
  const { text, columns: count } = logText();
  writeFileSync(log, text);
  const time = (args) => {
    const start = performance.now();
    const { status, stderr } = spawnSync(process.execPath, args, { cwd: folder, encoding: "utf8" });
    if (status !== 0) throw new Error(stderr);
    return performance.now() - start;
  };
  const best = (args) => Math.min(...Array.from({ length: RUNS }, () => time(args)));
  console.log(
    `${count} columns, ${ROWS} rows, ${(text.length / 1e6).toFixed(1)} MB of text; best of ${RUNS} runs, whole process`,
  );
  console.log(`node alone            ${best(["-e", ""]).toFixed(0)} ms`);
  console.log(`--help                ${best([main, "--help"]).toFixed(0)} ms`);
  console.log(`assess, json only     ${best([main, "assess", log, "--format", "json", "--quiet"]).toFixed(0)} ms`);
  console.log(`assess, report.html   ${best([main, "assess", log, "--format", "html", "--quiet"]).toFixed(0)} ms`);
  console.log(`assess, HTML and PDF  ${best([main, "assess", log, "--quiet"]).toFixed(0)} ms`);
  console.log(`report.html           ${(statSync(join(folder, "reports/week/report.html")).size / 1e6).toFixed(2)} MB`);
} finally {
  rmSync(folder, { recursive: true });
}
