import { describe, expect, it } from "vitest";
import { bodyInMemory } from "../../../src/formats/pqdif/body.js";
import { CHARACTERISTIC } from "../../../src/formats/pqdif/characteristics.js";
import { VECTOR } from "../../../src/formats/pqdif/entry.js";
import { guidBytes } from "../../../src/formats/pqdif/guid.js";
import { QUANTITY_TYPE, RECORD, TAG } from "../../../src/formats/pqdif/identifiers.js";
import { openPqdif } from "../../../src/formats/pqdif/read-file.js";
import { itemsOf, vectorAt } from "../../../src/formats/pqdif/vector.js";
import { bodyBytes, type WrittenElement } from "../../../src/formats/pqdif/write-body.js";
import { chainOf, changed, entryPlace, fileOf, plainBodies, readAs, START } from "./support.js";

/** Deviations of real files (seen by those who describe the format), each made by hand. */
const { container, source, observation } = plainBodies();
const { container: C, dataSource: D, observation: O } = RECORD;

const opened = async (...records: readonly (readonly [string, Uint8Array])[]) =>
  openPqdif(fileOf(chainOf([[C, container], ...records])));

const CHAR1 = 10;
const UINT4 = 32;
const series = (...elements: WrittenElement[]): WrittenElement => ({
  tag: TAG.OneSeriesInstance,
  collection: elements,
});
const vector = (type: number, values: ArrayLike<number> | string): WrittenElement => ({
  tag: TAG.SeriesValues,
  type,
  vector: values,
});
const index = (tag: string, scalar: number): WrittenElement => ({ tag, type: UINT4, scalar });
const channel = (definition: number, ...instances: WrittenElement[]): WrittenElement => ({
  tag: TAG.OneChannelInst,
  collection: [index(TAG.ChannelDefnIdx, definition), { tag: TAG.SeriesInstances, collection: instances }],
});
const start: WrittenElement = { tag: TAG.TimeStart, type: 50, scalar: START };
const body = (first: WrittenElement, channels: WrittenElement[], ...more: WrittenElement[]) =>
  bodyBytes([first, { tag: TAG.ChannelInstances, collection: channels }, ...more], true);

describe("files of odd writers", () => {
  it("with times as text are read where the text is ISO 8601", async () => {
    const text = (vector: string): WrittenElement => ({ tag: TAG.TimeStart, type: CHAR1, vector });
    const { observations, warnings } = await opened(
      [D, source],
      [O, body(text("2022-09-20 00:10:00.25"), [])],
      [O, body(text("20.09.2022 00:10"), [])],
    );
    expect(observations.map((o) => o.start)).toEqual([Date.UTC(2022, 8, 20, 0, 10, 0, 250) * 1000]);
    expect(warnings.map(({ what }) => String(what))).toEqual([
      "the element tagTimeStart holds CHAR1, which it cannot be, and is left out",
      "an observation has no start that can be read and is left out",
    ]);
  });

  it("with the version as text or of another major version are read with a warning", async () => {
    const versioned = (type: number, vector: ArrayLike<number> | string) =>
      chainOf([
        [C, bodyBytes([{ tag: TAG.VersionInfo, type, vector }], true)],
        [D, source],
        [O, observation],
      ]);
    expect((await readAs(versioned(CHAR1, "1.5.1.5"))).warnings).toEqual([
      "CHAR1 stands where numbers are expected, and is left out",
    ]);
    expect((await readAs(versioned(UINT4, [2, 0, 1, 5]))).warnings).toEqual([
      "the file is of version 2.0.1.5, while version 1 is known here; what was found is read",
    ]);
    expect((await readAs(versioned(UINT4, [1, 7, 1, 5]))).warnings).toEqual([]);
  });

  it("with a linked identifier 4 bytes after its link are understood", async () => {
    const linked = plainBodies({ embed: false }).source;
    const shifted = changed(linked, (bytes) => {
      const entry = entryPlace(bytes, TAG.QuantityTypeID);
      bytes.writeInt32LE(bytes.readInt32LE(entry + 20) - 4, entry + 20);
    });
    const { observations } = await opened([D, shifted], [O, observation]);
    expect(observations[0]?.source.channels[0]?.quantityType).toBe(QUANTITY_TYPE.VALUELOG);
  });

  it("with leftover memory as characteristic keep it as it stands, also where it begins like a known one", async () => {
    const leftover = "67f6af97-0000-11cf-9d89-0080c72e70a3";
    const junk = changed(source, (bytes) => {
      const link = bytes.readInt32LE(entryPlace(bytes, TAG.QuantityCharacteristicID) + 20);
      bytes.set(guidBytes(leftover), link);
    });
    const { observations, warnings } = await opened([D, junk], [O, observation]);
    const characteristics = observations[0]?.source.channels[0]?.series.map((s) => s.characteristic);
    expect(characteristics).toEqual([leftover, CHARACTERISTIC.RMS]);
    expect(warnings).toEqual([]);
  });

  it("with a definition index out of range lose that channel, and keep the others' places", async () => {
    const { observations, warnings } = await opened(
      [D, source],
      [
        O,
        body(
          start,
          [
            channel(106, series(vector(41, [7, 8]))),
            channel(
              0,
              series(index(TAG.SeriesShareChannelIdx, 0), index(TAG.SeriesShareSeriesIdx, 0)),
              series(vector(41, [1, 2])),
            ),
          ],
          { tag: TAG.ChannelTriggerIdx, type: UINT4, vector: [0, 1, 9] },
        ),
      ],
    );
    expect(observations[0]?.channels.map(({ definitionIndex }) => definitionIndex)).toEqual([0]);
    expect(observations[0]?.triggerChannels).toEqual([0]);
    expect([...((await (await observations[0]?.open())?.values(0, 0)) ?? [])]).toEqual([7, 8]);
    expect(warnings.map(({ what }) => String(what))).toEqual([
      "a channel belongs to definition 106 of 1, which there is not, and is left out",
    ]);
  });

  it("with more series than are defined, or fewer, have those that are defined", async () => {
    const { observations, warnings } = await opened(
      [D, source],
      [O, body(start, [channel(0, ...[1, 2, 3].map((n) => series(vector(41, [n])))), channel(0)])],
    );
    expect(observations[0]?.channels.map((c) => c.series.map(({ count }) => count))).toEqual([
      [1, 1],
      [0, 0],
    ]);
    expect(warnings.map(({ what }) => String(what))).toEqual([
      "a channel has 3 series where 2 are defined; the others are left out",
    ]);
  });

  it("with a scale that cannot be read have no values there: they would be wrong without it", async () => {
    const scale: WrittenElement = { tag: TAG.SeriesScale, type: CHAR1, vector: "0.1" };
    const nan: WrittenElement = { tag: TAG.SeriesOffset, type: 41, scalar: Number.NaN };
    const { observations, warnings } = await opened(
      [D, source],
      [O, body(start, [channel(0, series(scale, vector(41, [1])), series(nan, vector(41, [1])))])],
    );
    expect(observations[0]?.channels[0]?.series.map(({ count }) => count)).toEqual([0, 0]);
    expect(warnings.map(({ what }) => String(what))).toEqual([
      "the element tagSeriesScale holds CHAR1, which it cannot be, and is left out",
    ]);
  });

  it("with an unknown storage method have no values there", async () => {
    const strange = changed(source, (bytes) => bytes.writeUInt32LE(8, entryPlace(bytes, TAG.StorageMethodID, 1) + 20));
    expect(
      await readAs(
        chainOf([
          [C, container],
          [D, strange],
          [O, observation],
        ]),
      ),
    ).toMatchObject({
      warnings: ["a series has the unknown storage method 8 and is left out"],
      values: [],
    });
  });

  it("with steps for more values than there can be have none there", async () => {
    const stepped = changed(source, (bytes) => bytes.writeUInt32LE(4, entryPlace(bytes, TAG.StorageMethodID, 1) + 20));
    for (const [steps, told] of [
      [[1, 1e12, 1], 1e12],
      [[2, 5, 1], 2],
      [[-1], -1],
      [[1, Number.NaN, 1], Number.NaN],
      [[1, 5, Number.POSITIVE_INFINITY], 5],
    ] as const) {
      const observed = body(start, [channel(0, series(vector(41, [0])), series(vector(41, steps)))]);
      expect(
        await readAs(
          chainOf([
            [C, container],
            [D, stepped],
            [O, observed],
          ]),
        ),
      ).toMatchObject({
        warnings: [`a series in steps announces ${told} of segments or values, which its record cannot hold`],
        values: [],
      });
    }
  });

  it("with elements that are not padded are read where they stand", async () => {
    const bytes = Uint8Array.from([9, 9, 9, 2, 0, 0, 0, 0xff, 0xff, 2, 0]);
    const unpadded = bodyInMemory(bytes, 0);
    const found = await vectorAt(unpadded, { tag: "", element: VECTOR, type: 21, place: 3 });
    expect(await itemsOf(unpadded, found, 0, 2)).toEqual(Float64Array.of(-1, 2));
  });

  it("with private collections nested without end are read, since only known elements are followed", async () => {
    const PRIVATE = "00000000-1111-2222-3333-444444444444";
    let nested: WrittenElement = { tag: PRIVATE, collection: [] };
    for (let depth = 0; depth < 300; depth++) nested = { tag: PRIVATE, collection: [nested] };
    const { observations, warnings } = await opened([D, source], [O, body(start, [], nested)]);
    expect(observations.length).toBe(1);
    expect(warnings).toEqual([]);
  });
});
