import { gzipSync } from "node:zlib";
import { expect, test } from "vitest";
import { LogError, UsageError } from "../../../src/errors.js";
import { openLogs } from "../../../src/formats/index.js";
import type { Recording } from "../../../src/recording/recording.js";
import type { GivenSetup } from "../../../src/recording/setup.js";
import { logFile, tenMinutes } from "./log.js";
import { mutate, pick, randomNumbers } from "./mutate.js";

const MUTATIONS = 10_000;

const bases: readonly { readonly text: Uint8Array; readonly setup: GivenSetup }[] = [
  {
    text: Buffer.from(
      `Site: Mill Lane\n\nTime,U L1 [V],U L1 min [V],f [Hz],Flag,note\n${tenMinutes("2026-03-01T00:00", 14, ({ ymd, hm }, i) => `${ymd} ${hm},${231 + i}.4,${230 + i},49.98,0,"a ""b"", c"`)}`,
    ),
    setup: {},
  },
  {
    text: Buffer.from(
      `Zeit;Spannung L1;Spannung L2\r\n;V;kV\r\n${tenMinutes(
        "2026-10-24T23:00",
        20,
        ({ dmy, hm }, i) => `${dmy} ${hm}:00;1.231,${i};0,2305\r`,
        (t) => (t.getTime() < Date.parse("2026-10-25T01:00Z") ? 120 : 60),
      )}`,
      "latin1",
    ),
    setup: { zone: "Europe/Vienna", intervalLabel: "end" },
  },
  {
    text: Buffer.from(
      `\ufeff\tVoltage [V]\t\nDate\tTime\tL1\tL2\n${tenMinutes("2026-03-11T22:00", 14, ({ date, hm }, i) => `3/${date.getUTCDate()}/26\t${hm}\t231.${i}\t---`)}`,
      "utf16le",
    ),
    setup: {},
  },
  {
    text: Buffer.from(
      `Time|U L1 [V]|P [kW]\n${Array.from({ length: 14 }, (_, i) => `${1_772_323_200 + i}|231.4|1.5e-1\n`).join("")}`,
    ),
    setup: { zone: "UTC" },
  },
  {
    text: gzipSync(
      `Time;U L1 [V]\n${tenMinutes("2026-03-01T00:00", 14, ({ ymd, hm }) => `${ymd}T${hm}:00+01:00;231.4`)}`,
    ),
    setup: {},
  },
];

function faultOf(recording: Recording): string | undefined {
  for (const { axis, values, min, max } of recording.series) {
    const { starts, flagged, interval } = axis;
    if (!(interval > 0) || starts.length === 0 || flagged.length !== starts.length) return "axis";
    if (starts.some((t, i) => !Number.isSafeInteger(t) || (i > 0 && t <= (starts[i - 1] as number)))) return "starts";
    for (const column of [values, min, max]) {
      if (column !== undefined && column.length !== starts.length) return "length";
      if (column?.some((v) => v === Number.POSITIVE_INFINITY || v === Number.NEGATIVE_INFINITY))
        return "infinite value";
    }
  }
  return recording.series.length > 0 && recording.end > recording.start ? undefined : "nothing";
}

test(`${MUTATIONS} damaged logs each give a recording or one sentence that names the file`, {
  timeout: 60_000,
}, async () => {
  const random = randomNumbers(20260301);
  let [read, refused] = [0, 0];
  for (let k = 0; k < MUTATIONS; k++) {
    const { text, setup } = pick(bases, random);
    const damaged = mutate(text, random);
    const begun = performance.now();
    try {
      const fault = faultOf(await openLogs([logFile(damaged)], setup));
      if (fault !== undefined) throw new Error(`the recording has a wrong ${fault}`);
      read++;
    } catch (error) {
      const isPlain = error instanceof LogError || error instanceof UsageError;
      const sentence = (error as Error).message;
      if (!isPlain || sentence.length > 500 || /[\p{C}]/u.test(sentence)) {
        throw new Error(`mutation ${k}: ${(error as Error).stack}\n${JSON.stringify(damaged.toString())}`);
      }
      refused++;
    }
    if (performance.now() - begun > 2000)
      throw new Error(`mutation ${k} took too long: ${JSON.stringify(damaged.toString())}`);
  }
  expect(read + refused).toBe(MUTATIONS);
  expect(read).toBeGreaterThan(MUTATIONS / 20);
  expect(refused).toBeGreaterThan(MUTATIONS / 20);
});
