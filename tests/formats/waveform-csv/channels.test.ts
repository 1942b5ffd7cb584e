import { describe, expect, test } from "vitest";
import type { GivenSetup } from "../../../src/recording/setup.js";
import { failure, onlySource, open, samplesOf } from "./support.js";

/** A table with these columns, all of them sines of 50 Hz of the given peaks, in whole numbers. */
function table(headers: readonly string[], peaks: readonly number[] = headers.map(() => 325)): string {
  const rows = Array.from({ length: 900 }, (_, i) =>
    [(i / 10_000).toFixed(4), ...peaks.map((p) => Math.round(p * Math.sin((i * Math.PI) / 100)))].join(","),
  );
  return `${[`Time [s]`, ...headers].join(",")}\n${rows.join("\n")}\n`;
}

async function read(headers: readonly string[], setup: GivenSetup = {}, peaks?: readonly number[]) {
  const recording = await open(table(headers, peaks), setup);
  const source = onlySource(recording);
  const samples = await samplesOf(source);
  const columns = recording.ledger.columns.slice(1);
  return {
    channels: source.channels.map(({ quantity, phase }) => `${quantity} ${phase}`),
    /** At the first crest. */
    crests: samples.map((s) => s[50]),
    reasons: columns.map(({ reason, meaning }) => (meaning === undefined ? String(reason) : undefined)),
    columns,
  };
}

describe("channels are told by the words of their headers", () => {
  test.each([
    [
      ["U1 [V]", "U2 [V]", "U3 [V]"],
      ["voltage L1", "voltage L2", "voltage L3"],
    ],
    [
      ["Spannung L1 (V)", "Strom L1 (A)", "Strom N (A)"],
      ["voltage L1", "current L1", "current N"],
    ],
    [
      ["Va [V]", "Vb [V]", "Vc [V]"],
      ["voltage L1", "voltage L2", "voltage L3"],
    ],
    [
      ["u12 [V]", "u23 [V]", "u31 [V]"],
      ["voltage L12", "voltage L23", "voltage L31"],
    ],
    [
      ["instantaneous voltage L1 [V]", "sampled current L1 [A]"],
      ["voltage L1", "current L1"],
    ],
    [
      ["u [V]", "i [A]"],
      ["voltage L1", "current L1"],
    ],
  ])("%j", async (headers, channels) => {
    expect((await read(headers)).channels).toEqual(channels);
  });

  test("their units are brought to V and A, exactly", async () => {
    const headers = ["u L1 [kV]", "u L2 [mV]", "i L1 [kA]", "i L2 [mA]", "i L3 [A]"];
    const { crests, columns } = await read(headers, {}, [3, 325, 2, 7, 5]);
    expect(crests).toEqual([3000, 0.325, 2000, 0.007, 5]);
    expect(columns.map(({ meaning }) => meaning?.writtenUnit)).toEqual(["kV", "mV", "kA", "mA", "A"]);
    expect(columns[0]?.meaning).toMatchObject({ statistic: "samples", quantity: "voltage", phase: "L1" });
  });

  test("what says a pair the other way round is turned", async () => {
    const { channels, crests } = await read(["U12 [V]", "U32 [V]", "U L1-L3 [V]"]);
    expect(channels).toEqual(["voltage L12", "voltage L23", "voltage L31"]);
    expect(crests).toEqual([325, -325, -325]);
    const named: GivenSetup = { channels: [{ channel: "U32 [V]", quantity: "voltage", phase: "L23" }] };
    expect((await read(["U32 [V]"], named)).crests).toEqual([-325]);
    const [entry] = named.channels ?? [];
    const straight: GivenSetup = { channels: [{ ...entry, channel: 2, inverted: false }] };
    expect((await read(["U32 [V]"], straight)).crests).toEqual([325]);
  });

  test("a voltage without a unit is in V if its size shows it", async () => {
    expect((await read(["u L1"], {}, [325])).crests).toEqual([325]);
    expect(await failure(table(["u L1"], [20]))).toMatch(
      /no unit is stated for "u L1"; where it is V, say quantity: voltage in the setup under channels:/,
    );
    const setup: GivenSetup = { channels: [{ channel: "u L1", quantity: "voltage" }] };
    expect((await read(["u L1"], setup, [20])).crests).toEqual([20]);
  });
});

describe("left out with the reason are", () => {
  test.each([
    ["Urms L2 [V]", /r\.m\.s\. value is no waveform/],
    ["u L2 [Vrms]", /r\.m\.s\. value is no waveform/],
    ["u L2 RMS [V]", /r\.m\.s\. value is no waveform/],
    ["u L2 max [V]", /"max": a mean, minimum or maximum is no waveform/],
    ["u L2 avg [V]", /a mean, minimum or maximum is no waveform/],
    ["P L1 [W]", /active power: no sampled voltage or current/],
    ["f [Hz]", /power frequency: no sampled voltage or current/],
    ["u L2 [%]", /the unit % \("\[%\]" in the header\) is none of a sampled voltage/],
    ["i L2", /no unit is stated/],
    ["u dc [V]", /direct voltage/],
    ["ambience", /the word "ambience" is not known/],
  ])("%s", async (header, reason) => {
    const { channels, reasons } = await read(["u L1 [V]", header]);
    expect(channels).toEqual(["voltage L1"]);
    expect(reasons[1]).toMatch(reason);
  });

  test("columns that do not alternate", async () => {
    const { channels, reasons } = await read(["u L1 [V]", "u L2 [V]"], {}, [325, 0]);
    expect([channels, reasons]).toEqual([["voltage L1"], [undefined, "it is zero throughout"]]);
  });

  test("two columns of the same phase, unless the setup names one", async () => {
    expect(await failure(table(["u L1 feeder 1 [V]", "u L1 feeder 2 [V]"]))).toMatch(/LogError|none of its columns/);
    const setup: GivenSetup = { channels: [{ channel: 3, phase: "L1", quantity: "voltage" }] };
    const { channels, reasons } = await read(["u L1 [V]", "U 1 [V]"], setup);
    expect(channels).toEqual(["voltage L1"]);
    expect(reasons).toEqual(['the setup uses channel 3 ("U 1 [V]") as voltage L1', undefined]);
  });
});

describe("the setup", () => {
  test("says what columns hold, by name or position", async () => {
    const setup: GivenSetup = {
      channels: [
        { channel: "CH1 [V]", phase: "L3" },
        { channel: 3, quantity: "current", phase: "L3", inverted: true },
        { channel: "CH3", ignore: true },
      ],
    };
    const { channels, crests, columns } = await read(["CH1 [V]", "CH2", "CH3"], setup, [325, 14, 1]);
    expect([channels, crests]).toEqual([
      ["voltage L3", "current L3"],
      [325, -14],
    ]);
    expect(columns.map(({ reason }) => String(reason)).slice(1)).toEqual([
      "current: given in the setup; L3: given in the setup; no unit is stated, taken as A; inverted by the setup",
      "the setup leaves it out",
    ]);
  });

  test("gives the ratios of transformers", async () => {
    const setup: GivenSetup = { voltageRatio: "20000/100", currentRatio: 40 };
    expect((await read(["u L1 [V]", "i L1 [A]"], setup, [100, 5])).crests).toEqual([20_000, 200]);
  });

  test.each([
    [{ channel: "u L9" }, /^UsageError: the setup names the channel "u L9" under channels:, but log\.csv has no such/],
    [
      { channel: 2, phase: "L12", quantity: "current" },
      /it still cannot be used: a current between phases is not used/,
    ],
    [{ channel: 2, ignore: true, phase: "L1" }, /out with ignore: true and also says what it holds/],
    [{ channel: 3 }, /channel 3 \("x"\) of log\.csv, but it still cannot be used/],
  ] as const)("is refused where it does not fit: %j", async (entry, message) => {
    expect(await failure(table(["u L1 [V]", "x"]), { channels: [entry] })).toMatch(message);
  });
});

test("a table without any channel says what its columns lack", async () => {
  expect(await failure(table(["speed", "u L1 max [V]"]))).toBe(
    'LogError: log.csv: none of its columns is a sampled phase voltage or current ("speed": the word "speed" is not known, so it is not certain what the column holds; "u L1 max [V]": "max": a mean, minimum or maximum is no waveform); say what they are in the setup under channels:',
  );
});
