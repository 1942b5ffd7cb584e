import { deflateSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { LogError } from "../../../src/errors.js";
import { RECORD, TAG } from "../../../src/formats/pqdif/identifiers.js";
import { openPqdif } from "../../../src/formats/pqdif/read-file.js";
import { MAX_INFLATED } from "../../../src/formats/pqdif/record-body.js";
import {
  bytesOf,
  chainOf,
  changed,
  entryPlace,
  fileOf,
  observationOf,
  plainBodies,
  readAs,
  real8,
  sourceOf,
  valueLog,
} from "./support.js";

const plain = plainBodies();
const { container, compressedContainer, source, observation } = plain;
const { container: C, dataSource: D, observation: O } = RECORD;

const opened = (bytes: Uint8Array) => openPqdif(fileOf(bytes));

async function fault(bytes: Uint8Array): Promise<string> {
  const error = await opened(bytes).then(
    () => undefined,
    (e: unknown) => e,
  );
  expect(error).toBeInstanceOf(LogError);
  return (error as LogError).message;
}

describe("a file that cannot be read at all", () => {
  it("is refused with the byte and a way out", async () => {
    expect(await fault(new TextEncoder().encode("time,voltage\r\n"))).toBe(
      "log.pqd, byte 0: it does not begin with the signature of PQDIF (IEEE 1159.3): name another file",
    );
    expect(await fault(chainOf([[C, container]]))).toBe(
      "log.pqd, byte 0: no observation can be read in it: export it from the recorder again",
    );
    expect(
      await fault(
        chainOf([
          [C, container],
          [O, observation],
        ]),
      ),
    ).toMatch(/^log\.pqd, byte \d+: no observation can be read in it \(an observation stands before any data source/);
  });

  it("is refused where it is compressed as a whole or by another algorithm", async () => {
    const withScalar = (tag: string, value: number) =>
      changed(compressedContainer, (bytes) => bytes.writeUInt32LE(value, entryPlace(bytes, tag) + 20));
    expect(
      await fault(
        chainOf([
          [C, withScalar(TAG.CompressionStyleID, 1)],
          [D, source],
        ]),
      ),
    ).toMatch(/byte 64: it is compressed as a whole file/);
    expect(
      await fault(
        chainOf([
          [C, withScalar(TAG.CompressionAlgorithmID, 64)],
          [D, source],
        ]),
      ),
    ).toMatch(/byte 64: its records are compressed by algorithm 64, which is not zlib/);
  });

  it("is refused where it becomes shorter while it is read", async () => {
    const bytes = chainOf([
      [C, container],
      [D, source],
      [O, observation],
    ]);
    const log = {
      ...fileOf(bytes),
      size: bytes.length,
      read: async (at: number, n: number) => bytes.slice(at, Math.min(at + n, 900)),
    };
    await expect(openPqdif(log)).rejects.toThrow(/the file became shorter while it was read/);
  });
});

describe("a chain of records", () => {
  const all = [
    [C, container],
    [D, source],
    [O, observation],
    [O, observation],
  ] as const;
  const third = 3 * 64 + container.length + source.length + observation.length;

  it.each([
    ["that leads back", third, /already read/],
    ["that leads out of the file", 10_000_000, /lies outside the file/],
    ["that is negative", -5, /lies outside the file/],
    ["that leads to no record", 100, /there is none/],
  ])("ends at a link %s, with a warning", async (_, link, sentence) => {
    const { observations, warnings, byte } = await readAs(chainOf(all, { 3: link }));
    expect(observations).toBe(2);
    expect(warnings).toEqual([expect.stringMatching(sentence)]);
    expect(byte).toBe(third + 40);
  });

  it("goes on behind a record whose sizes cannot be", async () => {
    for (const [place, value] of [
      [32, -64],
      [32, 1 << 30],
      [36, -1],
    ] as const) {
      const bytes = changed(chainOf(all), (b) => b.writeInt32LE(value, third - observation.length - 64 + place));
      const { observations, warnings } = await readAs(bytes);
      expect(observations).toBe(1);
      expect(warnings).toEqual([expect.stringMatching(/sizes that cannot be/)]);
    }
  });

  it("skips blank records and those of unknown type", async () => {
    const more = [
      [RECORD.blank, new Uint8Array(3)],
      ["00000000-0000-0000-0000-000000000001", new Uint8Array(9)],
    ] as const;
    const { observations, warnings } = await readAs(chainOf([...all.slice(0, 2), ...more, ...all.slice(2)]));
    expect(observations).toBe(2);
    expect(warnings).toEqual([]);
  });

  it("is read without a container, and after a damaged data source nothing is taken for another's", async () => {
    expect((await readAs(chainOf(all.slice(1)))).warnings).toEqual([
      "the file has no container record that can be read",
    ]);
    const damaged = changed(source, (bytes) => bytes.writeInt32LE(-1, 0));
    const { observations, warnings } = await readAs(chainOf([...all, [D, damaged], [O, observation]]));
    expect(observations).toBe(2);
    expect(warnings).toEqual([
      "a collection announces -1 elements, which its record cannot hold",
      "an observation stands before any data source that can be read, and is left out",
    ]);
  });
});

describe("compression", () => {
  const zlib = (body: Uint8Array) => Uint8Array.from(deflateSync(body));

  it("is taken from the body where the container is wrong about it", async () => {
    const said = chainOf([
      [C, compressedContainer],
      [D, source],
      [O, observation],
    ]);
    const unsaid = chainOf([
      [C, container],
      [D, zlib(source)],
      [O, zlib(observation)],
    ]);
    for (const bytes of [said, unsaid]) {
      expect(await readAs(bytes)).toMatchObject({ warnings: [], values: [230, 231] });
    }
  });

  it("that is damaged leaves out the record", async () => {
    const damaged = changed(zlib(observation), (bytes) => bytes.fill(0xff, 10, 60));
    const bytes = chainOf([
      [C, compressedContainer],
      [D, zlib(source)],
      [O, damaged],
      [O, zlib(observation)],
    ]);
    expect(await readAs(bytes)).toMatchObject({
      observations: 1,
      warnings: ["the compressed data of a record are damaged, so it is left out"],
      values: [230, 231],
    });
  });

  it("that inflates beyond the limit is stopped there", async () => {
    const bomb = zlib(new Uint8Array(MAX_INFLATED + 1));
    expect(bomb.length).toBeLessThan(300_000);
    const bytes = chainOf([
      [C, compressedContainer],
      [D, zlib(source)],
      [O, bomb],
      [O, zlib(observation)],
    ]);
    expect(await readAs(bytes)).toMatchObject({
      observations: 1,
      warnings: [`a record inflates to more than ${MAX_INFLATED} bytes and is left out`],
      values: [230, 231],
    });
  });
});

describe("a file that is cut off", () => {
  it("gives the records before, and of the last one what is whole", async () => {
    const long = (n: number, step = 1) => real8(...Array.from({ length: n }, (_, i) => Math.sin(step * i)));
    const records = [
      sourceOf(valueLog("U", 1)),
      observationOf(
        { definition: 0, series: [long(10), long(300)] },
        { definition: 0, series: [long(10), long(300, Math.SQRT2)] },
      ),
    ];
    for (const compressed of [false, true]) {
      const bytes = await bytesOf(records, { compressed });
      const file = await opened(bytes.slice(0, bytes.length - (compressed ? 1000 : 100)));
      expect(file.observations[0]?.channels.map(({ series }) => series.map(({ count }) => count))).toEqual([
        [10, 300],
        [10, 0],
      ]);
      expect(file.warnings.map(({ what }) => String(what))).toEqual([
        `the file ends within a record, ${compressed ? 1000 : 100} bytes before its end: copy the file again`,
        "a vector announces 300 items of 8 bytes, which its record cannot hold",
      ]);
    }
  });
});
