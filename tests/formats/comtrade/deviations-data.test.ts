import { describe, expect, it } from "vitest";
import {
  eachVoltage,
  field,
  LINES,
  largestDifference,
  readAs,
  record,
  reopen,
  rowHeads,
  rows,
  STEP,
  samplesOf,
  sines,
  withLine,
} from "./support.js";

/**
 * Ways in which real files differ from the standard, as seen in public files, issue reports and comments of open
 * readers. Every case must give what the sound file gives.
 */
describe("the data", () => {
  it("may number their rows from 0", async () => {
    await readAs({}, { dat: rowHeads(0, (i) => i) });
    await readAs({ kind: "ASCII" }, { dat: rows((row, i) => field(0, String(i))(row)) });
  });

  it("may hold one row more than promised", async () => {
    await readAs({}, { cfg: withLine(LINES.rate, "3200,639") }, /639 samples are promised, the data hold 640/);
  });

  it("may hold fewer rows than promised", async () => {
    await readAs({}, { cfg: withLine(LINES.rate, "3200,10000") }, /10000 samples are promised, the data hold 640/);
  });

  it("may have no time stamp at all", async () => {
    await readAs(
      {},
      { dat: rowHeads(4, () => 0xffffffff) },
      /the rows have no time stamps; the stated sampling rate is used/,
    );
    await readAs({}, { dat: rowHeads(4, () => 0) }, /the rows have no time stamps/);
    await readAs({ kind: "ASCII" }, { dat: rows(field(1, "")) }, /the rows have no time stamps/);
  });

  it("may have time stamps cut to 16 bits", async () => {
    await readAs({}, { dat: rowHeads(4, (i) => Math.round(i * 312.5) % 65_536) }, /cut to 16 bits/);
  });

  it("may have a first time stamp that is not 0", async () => {
    await readAs({}, { dat: rowHeads(4, (i) => 72_500 + Math.round(i * 312.5)) });
  });

  it("may have time stamps that speak of another rate, which is said", async () => {
    await readAs(
      {},
      { dat: rowHeads(4, (i) => i * 250) },
      /time stamps speak of 4000 samples per second, the configuration of 3200/,
    );
  });

  it("may have sample numbers that do not count", async () => {
    await readAs({}, { dat: rowHeads(0, (i) => (i < 20 ? i : 7)) }, /sample numbers do not count the rows/);
    await readAs({}, { dat: rowHeads(0, () => 0) }, /sample numbers do not count the rows/);
  });

  it("may be text with LF only, blank lines, a cut last row and an end-of-file mark", async () => {
    const lf = (dat: Uint8Array) =>
      new TextEncoder().encode(new TextDecoder().decode(dat).replaceAll("\r\n", "\n").replaceAll("\n7", "\n\n 7"));
    await readAs({ kind: "ASCII" }, { dat: lf });
    const tail = (end: string) => (dat: Uint8Array) => new Uint8Array([...dat, ...new TextEncoder().encode(end)]);
    await readAs({ kind: "ASCII" }, { dat: tail("\u001a") });
    await readAs({ kind: "ASCII" }, { dat: tail("\r\n\r\n\u001a\r\n") });
    await readAs({ kind: "ASCII" }, { dat: tail("641,200000,1,2") }, /line 641 is cut off or garbled and left out/);
  });

  it("may have a row in the middle that is cut: a gap", async () => {
    const dat = rows((row, i) => (i === 200 ? row.slice(0, 12) : row));
    const { sources, remarks } = await reopen({ kind: "ASCII" }, { dat });
    const [first] = await samplesOf(sources[0]);
    expect(first?.length).toBe(640);
    expect(Number.isNaN(first?.[200])).toBe(true);
    const truth = sines(record())[0] as Float64Array;
    truth[200] = Number.NaN;
    expect(largestDifference(first, truth)).toBeLessThan(STEP);
    expect(remarks.join()).toContain("line 201 is cut off or garbled");
  });

  it("may be text with trailing commas, blanks and real numbers", async () => {
    await readAs(
      { kind: "ASCII" },
      {
        dat: rows(
          (row) =>
            `${row
              .split(",")
              .map((f) => `   ${f}`)
              .join(",")},`,
        ),
      },
    );
    await readAs(
      { kind: "ASCII" },
      {
        dat: rows((row) =>
          row
            .split(",")
            .map((f, i) => (i > 1 ? `${f}.00` : f))
            .join(","),
        ),
      },
    );
  });

  it("may hold status channels by the dozen", async () => {
    const statusChannels = Array.from({ length: 37 }, (_, i) => `gate ${i}`);
    for (const kind of ["BINARY", "ASCII"] as const)
      await readAs({ statusChannels, kind }, {}, /37 status channels are not used/);
  });

  it("may be text although the configuration says BINARY, and the other way round", async () => {
    const text = withLine(LINES.kind, "ASCII");
    const binary = withLine(LINES.kind, "BINARY");
    await readAs({ kind: "ASCII" }, { cfg: binary }, /the data are text although the configuration says BINARY/);
    await readAs({ kind: "BINARY" }, { cfg: text }, /the data are binary although the configuration says ASCII/);
  });

  it("may hold other words of status channels than promised", async () => {
    const cfg = (text: string) =>
      text.replace("3,3A,0D", "23,3A,20D").replace("\r\n50\r\n", `\r\n${"1,x,,,0\r\n".repeat(20)}50\r\n`);
    await readAs({}, { cfg }, /the rows hold 0 words of status channels, not 2/);
  });

  it("may be two bytes wide although the configuration says BINARY32", async () => {
    await readAs(
      { edition: 2013 },
      { cfg: withLine(LINES.kind, "BINARY32") },
      /two bytes per value, so they are read as BINARY/,
    );
  });

  it("that are four bytes wide though called BINARY are refused: integers or floats?", async () => {
    await expect(reopen({ edition: 2013, kind: "BINARY32" }, { cfg: withLine(LINES.kind, "BINARY") })).rejects.toThrow(
      "mill.dat, byte 0: the rows hold four bytes per value, but the configuration says otherwise; write BINARY32 or FLOAT32 there",
    );
  });

  it("may end in the middle of a row", async () => {
    const dat = (bytes: Uint8Array) => new Uint8Array([...bytes, 1, 2, 3]);
    await readAs({}, { dat }, /3 bytes behind the last whole row are left out/);
  });

  it("may mark missing values by all the codes", async () => {
    for (const code of ["99999", "999999", "", " ", "nan"]) {
      const dat = rows((row, i) => (i === 5 ? field(3, code)(row) : row));
      const { sources } = await reopen({ kind: "ASCII" }, { dat });
      const [, second, third] = await samplesOf(sources[0]);
      expect(Number.isNaN(second?.[5])).toBe(true);
      expect(Number.isNaN(third?.[5])).toBe(false);
    }
  });

  it("hold 99999 as a value where the range of the channel reaches it", async () => {
    const cfg = eachVoltage((line) => field(9, "99999")(line));
    const dat = rows((row, i) => (i === 5 ? field(3, "99999")(row) : row));
    const { sources } = await reopen({ kind: "ASCII" }, { cfg, dat });
    expect((await samplesOf(sources[0]))[1]?.[5]).toBeCloseTo((500 * 99_999) / 99_998, 9);
  });

  it("of 1991 may be unsigned where the range says so", async () => {
    const cfg = eachVoltage((line) => field(9, "65534")(field(8, "0")(field(6, "-500")(line))));
    const dat = (bytes: Uint8Array) => {
      const changed = bytes.slice();
      const view = new DataView(changed.buffer);
      for (let at = 8; at < changed.length; at += 14) {
        for (let k = 0; k < 3; k++) view.setUint16(at + 2 * k, view.getInt16(at + 2 * k, true) + 32_767, true);
      }
      return changed;
    };
    const { sources } = await reopen({ edition: 1991 }, { cfg, dat });
    const truth = sines(record())[0];
    expect(largestDifference((await samplesOf(sources[0]))[0], truth)).toBeLessThan(STEP);
  });
});
