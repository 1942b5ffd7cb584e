import { gzipSync } from "node:zlib";
import { expect, test } from "vitest";
import { LogError, UsageError } from "../../../src/errors.js";
import { waveformCsv } from "../../../src/formats/waveform-csv/index.js";
import type { Recording } from "../../../src/recording/recording.js";
import type { GivenSetup } from "../../../src/recording/setup.js";
import { logFile } from "../csv/log.js";
import { mutate, pick, randomNumbers } from "../csv/mutate.js";
import { tableText } from "./support.js";

const MUTATIONS = 5000;
const ROWS = { rate: 2000, rows: 45 };
const german = (text: string) => text.replaceAll(",", ";").replaceAll(".", ",");

const bases: readonly { readonly text: Uint8Array; readonly setup: GivenSetup }[] = [
  { text: Buffer.from(tableText({ ...ROWS, time: (i) => (i / 2000).toFixed(4) })), setup: {} },
  {
    text: Buffer.from(german(tableText({ ...ROWS, time: (i) => ((i - 9) / 2000).toExponential(5) })), "latin1"),
    setup: { start: "2026-03-01T00:00" },
  },
  {
    text: Buffer.from(
      `\ufeff${tableText({ ...ROWS, time: (i) => `2026-10-25 02:00:00.${String(5 * i).padStart(4, "0")}` }).replaceAll(",", "\t")}`,
      "utf16le",
    ),
    setup: { zone: "Europe/Vienna" },
  },
  { text: Buffer.from(tableText(ROWS)), setup: { samplesPerSecond: 2000 } },
  {
    text: gzipSync(tableText({ ...ROWS, time: String, header: "no,u L1 [V],u L2 [V],i L1 [A]" })),
    setup: { samplesPerSecond: 2000 },
  },
];

/** What is wrong with a recording of samples; the largest allocation a block may ask for bounds its length. */
async function faultOf({ waveforms, start, end }: Recording): Promise<string | undefined> {
  if (waveforms.length === 0 || !(end > start)) return "nothing";
  for (const { channels, samplesPerSecond, length, blocks, start: from } of waveforms) {
    if (!Number.isSafeInteger(from) || !(samplesPerSecond > 0) || !(length > 0) || channels.length === 0)
      return "source";
    let next = 0;
    for await (const { first, samples } of blocks()) {
      if (first < next || samples.length !== channels.length) return "block";
      if (samples.some((s) => s.length !== samples[0]?.length || s.length === 0)) return "length";
      if (samples.some((s) => s.some((v) => Math.abs(v) === Number.POSITIVE_INFINITY))) return "infinite value";
      next = first + (samples[0]?.length ?? 0);
    }
    if (next !== length) return "end";
  }
  return undefined;
}

test(`${MUTATIONS} damaged tables each give samples or one sentence that names the file`, {
  timeout: 60_000,
}, async () => {
  const random = randomNumbers(20260302);
  let [read, refused] = [0, 0];
  for (let k = 0; k < MUTATIONS; k++) {
    const { text, setup } = pick(bases, random);
    const file = logFile(mutate(text, random));
    const begun = performance.now();
    try {
      waveformCsv.recognises(await file.read(0, 65_536), file.name);
      const fault = await faultOf(await waveformCsv.open([file], setup));
      if (fault !== undefined) throw new Error(`the recording has a wrong ${fault}`);
      read++;
    } catch (error) {
      const isPlain = error instanceof LogError || error instanceof UsageError;
      const sentence = (error as Error).message;
      if (!isPlain || sentence.length > 900 || /[\p{C}]/u.test(sentence)) {
        const bytes = Buffer.from(await file.read(0, file.size)).toString("latin1");
        throw new Error(`mutation ${k}: ${(error as Error).stack}\n${JSON.stringify(bytes)}`);
      }
      refused++;
    }
    if (performance.now() - begun > 2000) throw new Error(`mutation ${k} took too long`);
  }
  expect(read + refused).toBe(MUTATIONS);
  expect(read).toBeGreaterThan(MUTATIONS / 20);
  expect(refused).toBeGreaterThan(MUTATIONS / 20);
});
