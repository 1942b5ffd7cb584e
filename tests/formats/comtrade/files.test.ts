import { describe, expect, it } from "vitest";
import { companions, comtrade, openComtrade } from "../../../src/formats/comtrade/index.js";
import { type WrittenRecord, writeComtrade, writeSingleFile } from "../../../src/formats/comtrade/write.js";
import { largestDifference, memoryFile, record, START, samplesOf, sines } from "./support.js";

const encode = (text: string) => new TextEncoder().encode(text);

/** A pair under its name; by default the record follows the one before without loss. */
function pair(name: string, changes: Partial<WrittenRecord> = {}, samples?: Float64Array[]) {
  const written = record(changes);
  const { cfg, dat } = writeComtrade(written, samples ?? sines(written));
  return [memoryFile(`${name}.cfg`, cfg), memoryFile(`${name}.dat`, dat)] as const;
}

describe("pairs of files", () => {
  it("belong together by base name in any letter case; notes beside them are left aside", async () => {
    const [cfg, dat] = pair("x");
    const files = [
      { ...dat, name: "Mill.Dat" },
      { ...cfg, name: "MILL.cfg" },
      memoryFile("mill.HDR", "note"),
      memoryFile("mill.inf", "[Public]"),
    ];
    expect((await openComtrade(files, {})).sources).toHaveLength(1);
  });

  it.each([
    [["a.cfg"], "a.cfg: its data a.dat is missing; name both files"],
    [["A.CFG"], "A.CFG: its data A.DAT is missing; name both files"],
    [["a.dat"], "a.dat: its configuration a.cfg is missing; name both files"],
    [["a.cfg", "b.dat"], "a.cfg: its data a.dat is missing; name both files"],
    [
      ["a.cfg", "a.dat", "a.dat"],
      "a.dat: two files of this name were given, so pairs cannot be told apart; rename one pair",
    ],
    [["a.cfg", "a.dat", "notes.csv"], "notes.csv: it is no COMTRADE file (.cfg with .dat, or .cff); read it by itself"],
    [["a.hdr"], "a.hdr: a configuration (.cfg) is needed with it"],
  ])("that are not whole are refused: %j", async (names, message) => {
    const [cfg, dat] = pair("a");
    const files = names.map((name) => ({ ...(/dat$/i.test(name) ? dat : cfg), name }));
    await expect(openComtrade(files, {})).rejects.toThrow(message);
    await expect(openComtrade(files, {})).rejects.toMatchObject({ name: "LogError" });
  });

  it("are completed by the names that their other half may have", () => {
    expect(companions("mill.cfg")).toEqual(["mill.dat", "mill.DAT", "mill.Dat"]);
    expect(companions("MILL.DAT")).toEqual(["MILL.CFG", "MILL.cfg", "MILL.Cfg"]);
    expect(companions("a.b.Cfg")).toEqual(["a.b.dat", "a.b.DAT", "a.b.Dat"]);
    expect([...companions("mill.cff"), ...companions("mill.csv"), ...companions("mill")]).toEqual([]);
  });

  it("are recognised by content and name", () => {
    const text = ([cfg]: ReturnType<typeof pair>) => cfg.read(0, 400);
    return Promise.all([text(pair("a")), pair("a")[1].read(0, 400), pair("a", { kind: "ASCII" })[1].read(0, 400)]).then(
      ([cfg, binary, rows]) => {
        expect(comtrade.recognises(cfg, "a.CFG")).toBe(true);
        expect(comtrade.recognises(cfg, "a.csv")).toBe(false);
        expect(comtrade.recognises(encode("[section]\nkey=1\n"), "a.cfg")).toBe(false);
        expect(comtrade.recognises(binary, "a.dat")).toBe(true);
        expect(comtrade.recognises(rows, "a.dat")).toBe(true);
        expect(comtrade.recognises(encode("time,U1,U2\n2026-01-01 00:00,230,231\n"), "a.dat")).toBe(false);
        const single = record({ edition: 2013, length: 4 });
        expect(comtrade.recognises(writeSingleFile(single, sines(single)), "a.cff")).toBe(true);
        expect(comtrade.recognises(cfg, "a.cff")).toBe(false);
      },
    );
  });
});

describe("a single file (.cff)", () => {
  const written = record({ edition: 2013 });
  const bytes = writeSingleFile(written, sines(written));
  const text = Buffer.from(bytes).toString("latin1");
  const change = (from: string | RegExp, to: string) => new Uint8Array(Buffer.from(text.replace(from, to), "latin1"));
  const read = async (content: Uint8Array, name = "mill.cff") => openComtrade([memoryFile(name, content)], {});
  const truth = sines(written);

  it.each([
    ["as written", bytes],
    ["with notes in its sections", change("HDR ---\r\n", "HDR ---\r\nfree text, 1,2\r\n--- not a section\r\n")],
    ["in other letters and blanks", change("--- file type: DAT BINARY:", " ---File Type : dat  binary :")],
    ["without the number of bytes", change(/DAT BINARY: \d+/, "DAT BINARY")],
    ["without the kind of data", change(/DAT BINARY: \d+/, "DAT")],
    ["with the kind in the separator only", change("\r\nBINARY\r\n", "\r\n\r\n")],
    ["with a byte order mark", new Uint8Array([0xef, 0xbb, 0xbf, ...bytes])],
    ["with bytes behind the data", new Uint8Array([...bytes, 13, 10, 26])],
  ])("is read %s", async (_, content) => {
    const { sources, remarks } = await read(content);
    expect(sources[0]).toMatchObject({ start: START, length: 640, samplesPerSecond: 3200 });
    const [first] = await samplesOf(sources[0]);
    expect(largestDifference(first, truth[0])).toBeLessThan(500 / 32_767);
    expect(remarks.map(String)).toEqual([]);
  });

  it("is read with text rows, up to a section behind them", async () => {
    const rows = record({ edition: 2013, kind: "ASCII" });
    const content = new Uint8Array([
      ...writeSingleFile(rows, sines(rows)),
      ...encode("--- file type: INF ---\r\n1,2,3,4,5\r\n"),
    ]);
    const { sources, remarks } = await read(content);
    expect(sources[0]?.length).toBe(640);
    expect(remarks.map(String)).toEqual([]);
  });

  it("is read under the name .cfg as well", async () => {
    expect((await read(bytes, "mill.cfg")).sources[0]?.length).toBe(640);
  });

  it("tells where it is cut off", async () => {
    const { remarks, sources } = await read(bytes.subarray(0, bytes.length - 20));
    expect(String(remarks[0])).toBe("mill.cff: 20 of the 8960 bytes of data are missing at its end.");
    expect(sources[0]?.length).toBe(638);
    await expect(read(bytes.subarray(0, 200))).rejects.toThrow(
      /^mill.cff, byte 200: no line such as .* the file is cut off$/,
    );
    await expect(read(change("CFG ---", "XYZ ---"))).rejects.toThrow('the line "--- file type: CFG ---" is missing');
  });

  it("counts the lines of its configuration in the file", async () => {
    await expect(read(change("2013\r\n3,3A,0D", "2013\r\nabc"))).rejects.toThrow(
      "mill.cff, line 3: the numbers of channels",
    );
  });
});

describe("several records", () => {
  const seconds = (s: number) => START + Math.round(s * 1e6);

  it("with gaps between them become one source whose samples stand where their stamps say", async () => {
    const files = [...pair("c", { start: seconds(5) }), ...pair("a"), ...pair("b", { start: seconds(0.2) })];
    const { sources, remarks } = await openComtrade(files, {});
    expect(sources).toHaveLength(1);
    expect(sources[0]).toMatchObject({ start: START, length: 16_640, samplesPerSecond: 3200 });
    const firsts: number[] = [];
    for await (const { first } of sources[0]?.blocks() ?? []) firsts.push(first);
    expect(firsts).toEqual([0, 640, 16_000]);
    expect(remarks.map(String)).toEqual([]);
  });

  it("beside the grid are put on the nearest sample, with a remark", async () => {
    const { sources, remarks } = await openComtrade([...pair("a"), ...pair("b", { start: seconds(1) + 100 })], {});
    expect(sources[0]?.length).toBe(3200 + 640);
    expect(remarks.map(String)).toEqual([
      "The clock does not fit the sampling rate of 3200 per second: 1 of 2 joined files begin up to 0.1 ms beside the sample that they are put on.",
    ]);
  });

  it("that begin a little before the last one ended (a slow clock) follow it directly, with a remark", async () => {
    const long = { length: 6400 };
    const { sources, remarks } = await openComtrade(
      [
        ...pair("a", long),
        ...pair("b", { ...long, start: seconds(2) - 1500 }),
        ...pair("c", { ...long, start: seconds(5) }),
      ],
      {},
    );
    expect(sources[0]?.length).toBe(16_000 + 6400);
    const firsts: number[] = [];
    for await (const { first } of sources[0]?.blocks() ?? []) firsts.push(first);
    expect(firsts).toEqual([0, 6400, 16_000]);
    expect(String(remarks[0])).toContain("begin up to 1.5 ms beside the sample");
  });

  it("that overlap are refused", async () => {
    await expect(openComtrade([...pair("b", { start: seconds(0.1) }), ...pair("a")], {})).rejects.toThrow(
      "b.cfg, line 9: it begins at 2026-03-03T10:20:30.223456Z, 0.1 s before a.cfg ends; files of one recording must not overlap",
    );
    await expect(openComtrade([...pair("a"), ...pair("b")], {})).rejects.toThrow("must not overlap");
  });

  it("whose rates drift become one source at the mean rate", async () => {
    const { sources, remarks } = await openComtrade(
      [...pair("a", { samplesPerSecond: 3199 }), ...pair("b", { samplesPerSecond: 3201, start: seconds(640 / 3199) })],
      {},
    );
    expect(sources[0]?.length).toBe(1280);
    expect(sources[0]?.samplesPerSecond).toBeCloseTo(1280 / (640 / 3199 + 640 / 3201), 9);
    expect(remarks.join()).toContain("differ by less than 0.1 % (a drifting clock)");
  });

  it("of other rates or channels are sources of their own", async () => {
    const currents = ["A", "B", "C"].map((phase) => ({
      name: `I${phase}`,
      phase,
      quantity: "current" as const,
      fullScale: 500,
    }));
    const { sources, columns } = await openComtrade(
      [...pair("a"), ...pair("i", { channels: currents }), ...pair("b", { samplesPerSecond: 6400, start: seconds(1) })],
      {},
    );
    expect(sources.map((s) => [s.channels[0]?.quantity, s.samplesPerSecond])).toEqual([
      ["voltage", 3200],
      ["current", 3200],
      ["voltage", 6400],
    ]);
    expect(columns.map(({ file, position }) => `${file} ${position}`)).toEqual([
      "a.cfg 1",
      "a.cfg 2",
      "a.cfg 3",
      "i.cfg 1",
      "i.cfg 2",
      "i.cfg 3",
    ]);
  });

  it("of other channels may not hold the same quantity at the same time", async () => {
    const renamed = record().channels.map((c) => ({ ...c, name: `Bus ${c.name}` }));
    await expect(
      openComtrade([...pair("a"), ...pair("b", { channels: renamed, start: seconds(0.1) })], {}),
    ).rejects.toThrow("b.cfg: it holds voltage L1 from 2026-03-03T10:20:30.223456Z on, as does a.cfg at that time");
    const later = await openComtrade([...pair("a"), ...pair("b", { channels: renamed, start: seconds(0.2) })], {});
    expect(later.sources).toHaveLength(2);
  });

  it("share their remarks", async () => {
    const files = [0, 1, 2].flatMap((i) => pair(`r${i}`, { statusChannels: ["gate"], start: seconds(i) }));
    expect((await openComtrade(files, {})).remarks.map(String)).toEqual([
      "r0.cfg and 2 other files: its 1 status channels are not used.",
    ]);
  });
});

describe("time", () => {
  const start = async (changes: Partial<WrittenRecord>, zone?: string) => {
    const { sources, timeBase, remarks } = await openComtrade(pair("a", changes), zone === undefined ? {} : { zone });
    return { start: sources[0]?.start, ...timeBase, remarks };
  };
  const hour = 3600e6;

  it("is that of the zone in the setup, or UTC as an assumption", async () => {
    expect(await start({})).toMatchObject({ start: START, zone: "UTC", zoneOrigin: "assumed" });
    expect(await start({}, "+01:00")).toMatchObject({ start: START - hour, zone: "+01:00", zoneOrigin: "given" });
    const summer = Date.UTC(2026, 6, 1) * 1000;
    expect(await start({ start: summer }, "Europe/Vienna")).toMatchObject({
      start: summer - 2 * hour,
      zone: "Europe/Vienna",
    });
  });

  it("is that of the time code where the file states one", async () => {
    for (const utcOffset of [0, 5.5 * hour, -7.25 * hour]) {
      const changes = { edition: 2013, utcOffset } as const;
      expect(await start(changes)).toMatchObject({ start: START, zone: "UTC", zoneOrigin: "stamps" });
      // A given zone only says in which local time to show it.
      expect(await start(changes, "+01:00")).toMatchObject({ start: START, zone: "+01:00", zoneOrigin: "given" });
    }
  });

  it("is that of the setup where the time code says that it does not apply", async () => {
    const written = record({ edition: 2013 });
    const { cfg, dat } = writeComtrade(written, sines(written));
    const text = new TextDecoder().decode(cfg).replace("\r\n0,0\r\n", "\r\nx,x\r\n");
    const { sources, timeBase } = await openComtrade([memoryFile("a.cfg", text), memoryFile("a.dat", dat)], {
      zone: "-03:00",
    });
    expect(sources[0]?.start).toBe(START + 3 * hour);
    expect(timeBase.zoneOrigin).toBe("given");
    expect(String(timeBase.labelReason)).toContain("samples carry the time at which they were taken");
  });

  it("tells of a bad clock that the file states", async () => {
    const written = record({ edition: 2013 });
    const { cfg, dat } = writeComtrade(written, sines(written));
    for (const [code, sentence] of [
      ["A", "right within 1 s only"],
      ["f", "its clock had failed"],
    ] as const) {
      const text = new TextDecoder().decode(cfg).replace(/0,0\r\n$/, `${code},0\r\n`);
      const { remarks } = await openComtrade([memoryFile("a.cfg", text), memoryFile("a.dat", dat)], {});
      expect(remarks.map(String)).toEqual([expect.stringContaining(sentence)]);
    }
  });

  it("is the first of two in the repeated hour of autumn, with a remark, and refused in the skipped hour of spring", async () => {
    const autumn = Date.UTC(2026, 9, 25, 2, 30) * 1000;
    const { start: at, remarks } = await start({ start: autumn }, "Europe/Vienna");
    expect(at).toBe(autumn - 2 * hour);
    expect(remarks.map(String)).toEqual([expect.stringContaining("occurs twice in Europe/Vienna")]);
    await expect(start({ start: Date.UTC(2026, 2, 29, 2, 30) * 1000 }, "Europe/Vienna")).rejects.toThrow(
      "a.cfg, line 9: the time of the first sample falls into the hour that Europe/Vienna skips in spring",
    );
  });

  it("is month first in 1991, day first later, unless the numbers or the setup say otherwise", async () => {
    const read = async (stamp: string, edition: 1991 | 1999, dateOrder?: "dmy" | "mdy" | "ymd") => {
      const written = record({ edition });
      const { cfg, dat } = writeComtrade(written, sines(written));
      const text = new TextDecoder().decode(cfg).replaceAll(/\d\d\/\d\d\/\d+,/g, `${stamp},`);
      const files = [memoryFile("a.cfg", text), memoryFile("a.dat", dat)];
      const { sources, remarks } = await openComtrade(files, dateOrder === undefined ? {} : { dateOrder });
      const iso = new Date((sources[0]?.start ?? 0) / 1000).toISOString().slice(0, 10);
      return `${iso}${remarks.some((r) => String(r).includes("not in the order of the edition")) ? " remarked" : ""}`;
    };
    expect(await read("04/05/98", 1991)).toBe("1998-04-05");
    expect(await read("04/05/2026", 1999)).toBe("2026-05-04");
    expect(await read("04/25/2026", 1999)).toBe("2026-04-25 remarked");
    expect(await read("25/04/98", 1991)).toBe("1998-04-25 remarked");
    expect(await read("04/05/2026", 1999, "mdy")).toBe("2026-04-05");
    expect(await read("2026-05-04", 1999)).toBe("2026-05-04 remarked");
    await expect(read("25/04/2026", 1999, "mdy")).rejects.toThrow(/line 9: .* in the date order that the setup states/);
    await expect(read("31/02/2026", 1999)).rejects.toThrow('cannot be read ("31/02/2026,10:20:30.123456")');
  });
});
