import { describe, expect, it } from "vitest";
import { guidBytes } from "../../../src/formats/pqdif/guid.js";
import { RECORD, TAG } from "../../../src/formats/pqdif/identifiers.js";
import { bodyBytes } from "../../../src/formats/pqdif/write-body.js";
import { dataSourceElements } from "../../../src/formats/pqdif/write-elements.js";
import { chainOf, changed, entryPlace, plainBodies, readAs, START, sourceOf, valueLog } from "./support.js";

const { container, source, observation } = plainBodies();
const { container: C, dataSource: D, observation: O } = RECORD;

describe("elements that cannot be", () => {
  const withObservation = (change: (bytes: Buffer) => void, body = observation) =>
    readAs(
      chainOf([
        [C, container],
        [D, source],
        [O, changed(body, change)],
      ]),
    );
  const intoEntry =
    (tag: string, value: number, n = 0) =>
    (bytes: Buffer) =>
      bytes.writeInt32LE(value, entryPlace(bytes, tag, n) + 20);

  it("are told by their counts before memory is taken", async () => {
    for (const count of [-1, 0x7fffffff, 1_000_000]) {
      const values = (bytes: Buffer) =>
        bytes.writeInt32LE(count, bytes.readInt32LE(entryPlace(bytes, TAG.SeriesValues, 1) + 20));
      expect(await withObservation(values)).toMatchObject({
        warnings: [`a vector announces ${count} items of 8 bytes, which its record cannot hold`],
        values: [],
      });
      const instances = (bytes: Buffer) =>
        bytes.writeInt32LE(count, bytes.readInt32LE(entryPlace(bytes, TAG.SeriesInstances) + 20));
      expect((await withObservation(instances)).warnings).toEqual([
        `a collection announces ${count} elements, which its record cannot hold`,
      ]);
    }
  });

  it("are told by their links", async () => {
    for (const link of [-4, 1 << 30, observation.length - 2]) {
      expect(await withObservation(intoEntry(TAG.SeriesValues, link, 1))).toMatchObject({
        warnings: [`a link leads out of its record (to place ${link} of ${observation.length})`],
        values: [],
      });
    }
  });

  it("do not lead in circles, nor to the same collection again and again", async () => {
    const { warnings } = await withObservation(intoEntry(TAG.ChannelInstances, 0));
    expect(warnings).toEqual([]);
    // Each of the eight entries of the root is made a list of channels that is the root itself.
    const everywhere = (bytes: Buffer) => {
      const count = bytes.readInt32LE(0);
      for (let i = 0; i < count; i++) {
        const entry = 4 + 28 * i;
        if (bytes.subarray(entry, entry + 16).equals(guidBytes(TAG.TimeStart))) continue;
        bytes.set(guidBytes(i === 0 ? TAG.ChannelInstances : TAG.OneChannelInst), entry);
        bytes.writeUInt32LE(1, entry + 16);
        bytes.writeInt32LE(0, entry + 20);
      }
    };
    expect((await withObservation(everywhere)).warnings).toEqual([
      "a collection announces 5 elements, which its record cannot hold",
      expect.stringMatching(/^a channel belongs to definition unknown of 1/),
    ]);
  });

  it("are left out with a word where their type is unknown or does not fit", async () => {
    const typed =
      (tag: string, type: number, n = 0) =>
      (bytes: Buffer) =>
        bytes.writeInt8(type, entryPlace(bytes, tag, n) + 17);
    expect(await withObservation(typed(TAG.SeriesValues, 99, 1))).toMatchObject({
      warnings: ["an element has the unknown physical type 99"],
      values: [],
    });
    expect((await withObservation(typed(TAG.ChannelDefnIdx, 10))).warnings).toEqual([
      "the element tagChannelDefnIdx holds CHAR1, which it cannot be, and is left out",
      "a channel belongs to definition unknown of 1, which there is not, and is left out",
    ]);
    const notCollection = (bytes: Buffer) => bytes.writeInt8(2, entryPlace(bytes, TAG.ChannelInstances) + 16);
    expect((await withObservation(notCollection)).warnings).toEqual([
      "the element tagChannelInstances holds no collection, which it cannot be, and is left out",
    ]);
  });

  it("leave out an observation whose start they are", async () => {
    const bad = changed(observation, (bytes) => bytes.writeInt8(99, entryPlace(bytes, TAG.TimeStart) + 17));
    const file = await readAs(
      chainOf([
        [C, container],
        [D, source],
        [O, bad],
        [O, observation],
      ]),
    );
    expect(file).toMatchObject({ observations: 1, values: [230, 231] });
    expect(file.warnings[1]).toBe("an observation has no start that can be read and is left out");
  });

  it("do not fill the memory: neither with entries nor with series of channels that are one", async () => {
    const many = new Uint8Array(4 + 28 * 1_100_000);
    new DataView(many.buffer).setInt32(0, 1_100_000, true);
    const entries = await readAs(
      chainOf([
        [C, container],
        [D, source],
        [O, many],
        [O, observation],
      ]),
    );
    expect(entries).toMatchObject({
      observations: 1,
      warnings: ["a collection announces 1100000 elements, which its record cannot hold"],
    });
    // 2000 entries lead to one channel of a definition with 501 series.
    const definition = {
      ...valueLog("U", 1),
      series: Array.from({ length: 501 }, () => valueLog("U", 1).series[1] as never),
    };
    const wide = bodyBytes(dataSourceElements(sourceOf(definition).dataSource), true);
    const one = { tag: TAG.OneChannelInst, collection: [{ tag: TAG.ChannelDefnIdx, type: 32, scalar: 0 }] };
    const channels = { tag: TAG.ChannelInstances, collection: Array.from({ length: 2000 }, () => one) };
    const start = { tag: TAG.TimeStart, type: 50, scalar: START };
    const series = await readAs(
      chainOf([
        [C, container],
        [D, wide],
        [O, bodyBytes([start, channels], true)],
        [O, observation],
      ]),
    );
    expect(series).toMatchObject({
      observations: 1,
      warnings: ["an observation lists more than 1000000 series and is left out"],
    });
  });
});
