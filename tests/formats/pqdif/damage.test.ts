import { readFileSync } from "node:fs";
import { join } from "node:path";
import { deflateSync } from "node:zlib";
import { expect, it } from "vitest";
import { LogError } from "../../../src/errors.js";
import { RECORD } from "../../../src/formats/pqdif/identifiers.js";
import { openPqdif } from "../../../src/formats/pqdif/read-file.js";
import { type Random, random } from "../../support/random.js";
import { chainOf, fileOf, plainBodies } from "./support.js";

const fixture = (name: string) => Uint8Array.from(readFileSync(join(import.meta.dirname, "fixtures", name)));
const { container, compressedContainer, source, observation } = plainBodies();

/** Numbers that a count, a size, a link or a type may be turned into. */
const HOSTILE = [0, 1, -1, 3, 28, 64, 255, 0x7fff, 0xffff, 1 << 20, 0x7fffffff, -0x80000000, 1_234_567];

type Below = Random["below"];

/** A copy of some bytes with one to four of them, or words, changed, or cut off, or moved. */
function mutated(bytes: Uint8Array, below: Below): Uint8Array {
  let copy = Buffer.from(bytes);
  for (let n = 1 + below(4); n > 0; n--) {
    const at = below(Math.max(1, copy.length - 4));
    const kind = below(10);
    if (copy.length < 8) break;
    if (kind < 3) copy[at] = below(256);
    else if (kind < 6) copy.writeInt32LE(HOSTILE[below(HOSTILE.length)] as number, at - (at % 4));
    else if (kind < 8) copy.writeInt32LE(below(copy.length), at - (at % 4));
    else if (kind === 8) copy = copy.subarray(0, at);
    else copy.copyWithin(at, below(copy.length), below(copy.length));
  }
  return Uint8Array.from(copy);
}

/** Bodies are also changed before they are compressed, so that the trees of compressed records are damaged too. */
function mutatedRecords(below: Below): Uint8Array {
  const changed = [source, observation, observation].map((body) => (below(2) === 0 ? body : mutated(body, below)));
  const [types, bodies] = [[RECORD.dataSource, RECORD.observation, RECORD.observation], changed];
  const records = bodies.map((body, i) => [types[i] as string, Uint8Array.from(deflateSync(body))] as const);
  return chainOf([[RECORD.container, below(2) === 0 ? container : compressedContainer], ...records]);
}

/** Reads all there is. @returns how many values, or the sentence of the refusal */
async function everything(bytes: Uint8Array): Promise<number | string> {
  try {
    const { observations, warnings } = await openPqdif(fileOf(bytes));
    let count = 0;
    for (const one of observations) {
      const values = await one.open();
      for (const [c, channel] of one.channels.entries()) {
        for (const [s, { count: announced }] of channel.series.entries()) {
          const read = await values.values(c, s);
          if (read.length !== announced) throw new Error(`${read.length} values where ${announced} are announced`);
          count += read.length;
        }
      }
    }
    const outside = warnings.filter(({ byte }) => !(byte >= 0 && byte <= bytes.length));
    if (outside.length > 0) throw new Error(`warnings outside the file: ${outside.map(({ what }) => what).join("; ")}`);
    return count;
  } catch (error) {
    if (!(error instanceof LogError)) throw error;
    return error.message;
  }
}

it("reads what is left of 20 000 damaged files, or refuses them in one sentence", async () => {
  const { below } = random(1159, "damage");
  const bases = [
    fixture("plain.pqd"),
    fixture("compressed.pqd"),
    chainOf([
      [RECORD.container, container],
      [RECORD.dataSource, source],
      [RECORD.observation, observation],
    ]),
  ];
  let refused = 0;
  let read = 0;
  let most = 0;
  let slowest = 0;
  for (let i = 0; i < 20_000; i++) {
    const base = bases[i % 4];
    const bytes = base === undefined ? mutatedRecords(below) : mutated(base, below);
    const began = performance.now();
    const found = await everything(bytes);
    slowest = Math.max(slowest, performance.now() - began);
    if (typeof found === "string") {
      if (!/^log\.pqd, byte \d+: [^\n]+$/.test(found)) throw new Error(`no sentence with its byte: ${found}`);
      refused++;
    } else {
      read++;
      most = Math.max(most, found);
    }
  }
  // Most damage touches single values or elements; refused is what has lost its beginning, data source or observations.
  expect(read).toBeGreaterThan(10_000);
  expect(refused).toBe(20_000 - read);
  expect(refused).toBeGreaterThan(2000);
  expect(most).toBeLessThan(10_000_000);
  // The highest of the whole process, in kB.
  expect(process.resourceUsage().maxRSS).toBeLessThan(500_000);
  expect(slowest).toBeLessThan(10_000);
}, 300_000);
