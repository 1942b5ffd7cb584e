import { describe, expect, it } from "vitest";
import { openComtrade } from "../../../src/formats/comtrade/index.js";
import { writeComtrade } from "../../../src/formats/comtrade/write.js";
import {
  eachVoltage,
  field,
  LINES,
  memoryFile,
  readAs,
  record,
  reopen,
  rowHeads,
  START,
  sines,
  withLine,
} from "./support.js";

/**
 * Ways in which real files differ from the standard, as seen in public files, issue reports and comments of open
 * readers. Every case must give what the sound file gives.
 */
describe("the configuration", () => {
  it.each(["1997", "2002", "abc"])("may name the unknown edition %s", async (year) => {
    await readAs({}, { cfg: withLine(1, `Mill Lane,Recorder 1,${year}`) }, /edition ".*" of the standard is not known/);
  });

  it.each(["2000", "2001", "2008"])("may name %s, which stands for the text of 1999", async (year) => {
    await readAs({}, { cfg: withLine(1, `Mill Lane,Recorder 1,${year}`) });
  });

  it("may name 2017, which stands for 2013", async () => {
    await readAs({ edition: 2013 }, { cfg: withLine(1, "Mill Lane,Recorder 1,2017") });
  });

  it("may lack the year before a body of 1999", async () => {
    await readAs({}, { cfg: withLine(1, "Mill Lane,Recorder 1") }, /year of the standard is missing/);
  });

  it("may have blanks in its counts", async () => {
    const cfg = (text: string) => withLine(LINES.rate, " 3200,  640 ")(withLine(LINES.counts, " 3,03A, 0D")(text));
    await readAs({}, { cfg });
  });

  it("may write the counts in lower case", async () => {
    await readAs({}, { cfg: withLine(LINES.counts, "3,3a,0d") });
  });

  it("may promise other numbers of channels than it describes", async () => {
    await readAs(
      {},
      { cfg: withLine(LINES.counts, "5,5A,0D") },
      /5 analog and 0 status channels are promised, but 3 and 0/,
    );
  });

  it("may have a wrong sum of channels", async () => {
    await readAs({}, { cfg: withLine(LINES.counts, "9,3A,0D") });
  });

  it.each(["Binary", "binary  ", " BINARY"])("may write the kind of data as %j", async (kind) => {
    await readAs({}, { cfg: withLine(LINES.kind, kind) });
  });

  it("may write p in lower case", async () => {
    await readAs({}, { cfg: eachVoltage(field(12, "p")) });
  });

  it("may write s in lower case", async () => {
    const channels = record().channels.map((c) => ({
      ...c,
      primary: 20_000,
      secondary: 100,
      side: "secondary" as const,
    }));
    await readAs({ channels }, { cfg: eachVoltage(field(12, "s")) });
  });

  it("may leave the skew empty", async () => {
    const { sources } = await readAs({}, { cfg: eachVoltage(field(7, "")) });
    expect(sources[0]?.channels[0]?.skewS).toBe(0);
  });

  it.each([
    ["-32767.00", "+3.2767E4"],
    ["n/a", "?"],
    ["", ""],
  ])("may write the range as %j to %j", async (min, max) => {
    await readAs({}, { cfg: eachVoltage((line) => field(9, max)(field(8, min)(line))) });
  });

  it.each([
    ["1.5259254737998596D-2", "0.0D0"],
    ["+.015259254737998596", "-0"],
    ["1.5259254737998596E-002", "0."],
  ])("may write the factors as %s and %s", async (a, b) => {
    await readAs({}, { cfg: eachVoltage((line) => field(6, b)(field(5, a)(line))) });
  });

  it("may have a comma in the name of a channel", async () => {
    const { columns } = await readAs({}, { cfg: withLine(LINES.voltage1, (line) => field(1, "Bay 4, VA")(line)) });
    expect(columns[0]).toMatchObject({ header: "Bay 4, VA, A", meaning: { quantity: "voltage", phase: "L1" } });
  });

  it("may have a comma in the name of a channel of 1991", async () => {
    const cfg = withLine(LINES.voltage1, (line) => field(1, "Bay 4, VA, main")(line));
    const { columns } = await readAs({ edition: 1991 }, { cfg }, /does not say whether/);
    expect(columns[0]).toMatchObject({ header: "Bay 4, VA, main, A", meaning: { quantity: "voltage", phase: "L1" } });
  });

  it("may lack ratio and side", async () => {
    await readAs(
      {},
      { cfg: eachVoltage((line) => line.split(",").slice(0, 10).join(",")) },
      /does not say whether its voltages are primary/,
    );
  });

  it("may lack the side alone", async () => {
    await readAs({}, { cfg: eachVoltage(field(12, "")) });
  });

  it("may state a nominal frequency of 0", async () => {
    await readAs({}, { cfg: withLine(LINES.frequency, "0.0") });
    await readAs({}, { cfg: withLine(LINES.frequency, "") });
  });

  it.each(["", ",", "01/01/1970,00:00:00.000000", "02/03/2026,23:59:59.9"])(
    "may have the trigger %j",
    async (trigger) => {
      await readAs({}, { cfg: withLine(LINES.trigger, trigger) });
    },
  );

  it.each([
    ["3/3/26,10:20:30.123456", 123_456],
    ["03/03/2026,10:20:30.12345", 123_450],
    [" 03/03/2026 , 10:20:30", 0],
    ["03/03/2026,10:20:30.123456789", 123_457],
  ])("may write the first stamp as %j", async (stamp, micros) => {
    const { sources } = await reopen({}, { cfg: withLine(LINES.first, stamp) });
    expect((sources[0]?.start ?? 0) - START).toBe(micros - 123_456);
  });

  it("may lack the time factor", async () => {
    await readAs({}, { cfg: withLine(LINES.factor, () => undefined) });
  });

  it("may have an odd time factor", async () => {
    const odd = 0.00756699591875076;
    const dat = rowHeads(4, (i) => Math.round((i * 312.5) / odd));
    await readAs({}, { cfg: withLine(LINES.factor, String(odd)), dat });
  });

  it("may have lines of the vendor behind the time factor", async () => {
    await readAs({}, { cfg: (text) => `${text}setting group,4\r\nchecksum 7f\r\n` });
  });

  it("may end its lines with LF only, and with an end-of-file mark", async () => {
    await readAs({}, { cfg: (text) => `${text.replaceAll("\r\n", "\n")}\u001a` });
  });

  it("may carry a byte order mark", async () => {
    await readAs({}, { cfg: (text) => `\ufeff${text}` });
  });

  it.each([
    ["windows-1251", [0xd4, 0xe0, 0xe7, 0xe0]],
    ["GBK", [0xb5, 0xe7, 0xd1, 0xb9]],
  ])("may name stations in %s", async (_, bytes) => {
    const { cfg, dat } = writeComtrade(record(), sines(record()));
    const named = new Uint8Array([...bytes, ...cfg]);
    const { sources } = await openComtrade([memoryFile("mill.cfg", named), memoryFile("mill.dat", dat)], {});
    expect(sources[0]).toMatchObject({ start: START, length: 640 });
  });

  it("may describe status channels by three, four or five fields and number them on behind the analog ones", async () => {
    const statusChannels = ["gate", "lamp", "pump"];
    const cfg = (text: string) => {
      const lines = text.split("\r\n");
      lines.splice(5, 3, "4,gate,0", "5,lamp,,0", "6,pump,,,0");
      return lines.join("\r\n");
    };
    await readAs({ statusChannels }, { cfg }, /^mill.cfg: its 3 status channels are not used\.$/);
  });
});
