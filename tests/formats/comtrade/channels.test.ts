import { describe, expect, it } from "vitest";
import type { AnalogChannel } from "../../../src/formats/comtrade/channel-lines.js";
import { openComtrade } from "../../../src/formats/comtrade/index.js";
import { recogniseChannels } from "../../../src/formats/comtrade/recognise-channels.js";
import type { WrittenChannel } from "../../../src/formats/comtrade/write.js";
import { writeComtrade } from "../../../src/formats/comtrade/write.js";
import type { ChannelSetup, GivenSetup } from "../../../src/recording/setup.js";
import { largestDifference, memoryFile, record, reopen, samplesOf, sines, withLine } from "./support.js";

/** "name|phase|unit" → what it is taken for ("voltage L1", "-voltage L12" where turned) or why not. */
function recognise(texts: readonly string[], entries: Record<number, Omit<ChannelSetup, "channel">> = {}): string[] {
  const channels = texts.map((text, i): AnalogChannel => {
    const [name = "", phase = "", unit = ""] = text.split("|");
    return { ...NUMBERS, position: i + 1, name, phase, unit };
  });
  const setup = new Map(
    Object.entries(entries).map(([i, entry]) => [
      channels[Number(i)] as AnalogChannel,
      { channel: Number(i) + 1, ...entry },
    ]),
  );
  return recogniseChannels("mill.cfg", channels, setup).map(({ meaning, reason, scale }) =>
    meaning === undefined ? String(reason) : `${scale < 0 ? "-" : ""}${meaning.quantity} ${meaning.phase}`,
  );
}

const NUMBERS = { a: 1, b: 0, skew: 0, min: -1, max: 1, primary: 1, secondary: 1, side: "primary" } as const;
const PHASES = ["voltage L1", "voltage L2", "voltage L3"];
const PAIRS = ["voltage L12", "voltage L23", "voltage L31"];
const CURRENTS = ["current L1", "current L2", "current L3"];

describe("the phase of a channel", () => {
  it.each([
    [["VA||V", "VB||V", "VC||V"], PHASES],
    [["x|A|kV", "y|b|kV", "z| C |kV"], PHASES],
    [["x|R|V", "y|S|V", "z|T|V"], PHASES],
    [["x|R|V", "y|Y|V", "z|B|V"], PHASES],
    [["x|L1|V", "y|L2|V", "z|L3|V"], PHASES],
    [["x|1|V", "y|2|V", "z|3|V"], PHASES],
    [["x|A-N|V", "y|BN|V", "z|L3-N|V"], PHASES],
    [["x|Phase A|V", "y|PH B|V", "z|phase 3|V"], PHASES],
    [["UL1||V", "UL2||V", "UL3||V"], PHASES],
    [["U L1||V", "u_L2||V", "U:L3-N||V"], PHASES],
    [["U1||V", "U2||V", "U3||V"], PHASES],
    [["V 1||V", "V 2||V", "V 3||V"], PHASES],
    [["Spannung L1||V", "Tension L2||V", "L3||V"], PHASES],
    [["Phase A voltage||V", "Voltage B||V", "c||V"], PHASES],
    [["Bus 1 VA||V", "Bus 1 V-B||V", "Bus 1 V C [V]||V"], PHASES],
    [["VAN||V", "VBN||V", "VCG||V"], PHASES],
    [["VT1 VA||V", "VT1 VB||V", "VT1 VC||V"], PHASES],
    [["VR||V", "VS||V", "VT||V"], PHASES],
    [["VA 1||V", "VB 1||V", "VC 1||V"], PHASES],
    [
      ["VA||V", "VB||V", "VC||V", "VN||V"],
      [...PHASES, "voltage N"],
    ],
    [["VAB||V", "VBC||V", "VCA||V"], PAIRS],
    [["x|AB|V", "y|B-C|V", "z|CA|V"], PAIRS],
    [["U12||V", "U23||V", "U31||V"], PAIRS],
    [["UL12||V", "UL2-L3||V", "U L3 L1||V"], PAIRS],
    [["VRS||V", "VST||V", "VTR||V"], PAIRS],
    [["VBA||V", "UL3L2||V", "x|1-3|V"], PAIRS.map((p) => `-${p}`)],
    [
      ["IA||A", "IB||kA", "IC||mA", "IN||A"],
      [...CURRENTS, "current N"],
    ],
    [
      ["IL1||A", "I_L2||A", "I L3||A", "I N||A"],
      [...CURRENTS, "current N"],
    ],
    [["Ir|R|A", "Iy|Y|A", "Ib|B|A"], CURRENTS],
    [["I1||A", "I2||A", "I3||A"], CURRENTS],
    [["Current A||A", "Strom L2||A", "IC, feeder||A"], CURRENTS],
    [["current in L1||A", "current in L2||A", "current in L3||A"], CURRENTS],
    [["VAB|A|V", "VBC|B|V", "VCA|C|V"], PAIRS],
  ])("is read from %j", (texts, meanings) => {
    expect(recognise(texts as string[])).toEqual(meanings);
  });

  it.each([
    ["V1||V", '"1" may be a phase, a number or a symmetrical component'],
    ["Ch 7||V", "neither its name nor its phase field says a phase"],
    ["BUS A||V", "neither its name nor its phase field says a phase"],
    ["VAC||V", "neither its name nor its phase field says a phase"],
    ["Line A to B, VA VB||V", "its name speaks of more than one phase"],
    ["VB|A|V", 'the phase field "A" and the name "VB" contradict each other'],
    ["VA|N|V", 'the phase field "N" and the name "VA" contradict each other'],
    ["IA||V", 'its name speaks of a current, its unit "V" of a voltage'],
    ["IAB||A", "a current between phases is not used"],
    ["VA||", "no unit is stated"],
    ["VA||MV", 'the unit "MV" may be milli or mega'],
    ["VA||Vrms", "an r.m.s. value is no waveform"],
    ["VA||V DC", "direct voltage and current are not used"],
    ["VA rms|A|V", '"RMS": an r.m.s. value or mean is no waveform'],
    ["VAMAG|A|V", '"VAMAG": an r.m.s. value or mean is no waveform'],
    ["Battery + A||V", '"BATTERY": direct and auxiliary voltages are not used'],
    ["VDC||V", '"VDC": direct and auxiliary voltages are not used'],
    ["FREQ||Hz", "a frequency is no waveform"],
    ["P||MW", 'the unit "MW" is none of voltage or current'],
    ["3U0||V", '"3U0": a residual quantity (sum of the phases) is no phase quantity'],
    ["IG||A", '"IG": an earth quantity is no phase quantity'],
    ["V neg seq A||V", '"NEG": a symmetrical component is no phase quantity'],
    ["I diff A||A", '"DIFF": it is computed from other values'],
  ])("is not guessed for %j", (text, reason) => {
    expect(recognise([text])).toEqual([reason]);
  });

  it("is not told by a letter of another naming (S beside A, B, C)", () => {
    expect(recognise(["VA||V", "VB||V", "VC||V", "VS||V"])[3]).toBe('"S" is none of the phases A, B, C');
  });

  it("is not told by digits that count symmetrical components", () => {
    expect(recognise(["V0||V", "V1||V", "V2||V"]).slice(1)).toEqual([
      '"1" may be a phase, a number or a symmetrical component',
      '"2" may be a phase, a number or a symmetrical component',
    ]);
  });
});

describe("the setup", () => {
  it("completes and overrides what the file says, part by part", () => {
    const texts = ["Ch 1||V", "VA|A|V", "x||", "VA rms|A|V"];
    const entries = {
      0: { phase: "L2" as const },
      1: { inverted: true },
      2: { quantity: "current" as const, phase: "N" as const },
      3: { ignore: true as const },
    };
    expect(recognise(texts, entries)).toEqual(["voltage L2", "-voltage L1", "current N", "the setup leaves it out"]);
  });

  it("turns a reversed pair back when it says inverted", () => {
    expect(recognise(["VBA||V"], { 0: { inverted: true } })).toEqual(["voltage L12"]);
  });

  it.each<[Omit<ChannelSetup, "channel">, string, RegExp]>([
    [{ quantity: "current" }, "VA||V", /its unit "V" is not one of current; complete the entry/],
    [{ inverted: true }, "Ch 1||V", /neither its name nor its phase field says a phase; complete/],
  ])("cannot use a channel by %j alone", (entry, text, message) => {
    expect(() => recognise([text], { 0: entry })).toThrow(message);
  });

  it.each<[GivenSetup["channels"], string]>([
    [
      [{ channel: "VD", phase: "L1" }],
      'the setup names the channel "VD" under channels:, but mill.cfg has no such channel of samples',
    ],
    [
      [{ channel: 4, phase: "L1" }],
      "the setup names the channel 4 under channels:, but mill.cfg has no such channel of samples",
    ],
    [[{ channel: 1, ignore: true, phase: "L1" }], "also says what it holds; keep one of the two"],
    [
      [
        { channel: 1, phase: "L1" },
        { channel: "VA", inverted: true },
      ],
      'two entries under channels: for channel 1 ("VA")',
    ],
    [
      [
        { channel: 1, phase: "L1" },
        { channel: 2, phase: "L1" },
      ],
      'takes both channel 1 ("VA") and channel 2 ("VB") of mill.cfg for voltage L1',
    ],
  ])("is refused with a sentence: %j", async (channels, message) => {
    await expect(reopen({}, { setup: { channels } })).rejects.toThrow(message);
    await expect(reopen({}, { setup: { channels } })).rejects.toMatchObject({ name: "UsageError" });
  });

  it("is refused where a name occurs twice", async () => {
    const cfg = (text: string) => withLine(4, (line) => line.replace("VB", "VA"))(text);
    const setup = { channels: [{ channel: "VA", phase: "L1" as const }] };
    await expect(reopen({}, { cfg, setup })).rejects.toThrow(
      "mill.cfg has that name at positions 1, 2; give the position",
    );
  });
});

describe("channels that are no waveform of the supply", () => {
  const voltage = (name: string, phase: string, fullScale = 500): WrittenChannel => ({
    name,
    phase,
    fullScale,
    quantity: "voltage",
  });
  async function reasons(name: string, values: (i: number) => number, length = 6400) {
    const channels = [...record().channels, voltage(name, "")];
    const written = record({ channels, length });
    const samples = [...sines(written).slice(0, 3), Float64Array.from({ length }, (_, i) => values(i))];
    const { sources, columns } = await reopen({ channels, length }, { samples });
    expect(columns).toHaveLength(4);
    expect(sources[0]?.channels).toHaveLength(columns[3]?.meaning === undefined ? 3 : 4);
    return columns[3]?.meaning?.phase ?? String(columns[3]?.reason);
  }

  it("are told by their samples, with the reason", async () => {
    const still = "its values never change sign, so they are no waveform (an r.m.s. value, direct voltage or contact)";
    expect(await reasons("VN", () => 0)).toBe("it is zero throughout");
    expect(await reasons("VN", () => 12)).toBe("it holds the same value throughout");
    expect(await reasons("VN", () => Number.NaN)).toBe("it holds no values");
    expect(await reasons("VN", (i) => 230 + Math.sin(i / 10))).toBe(still);
    expect(await reasons("VN", (i) => (i % 1000 < 500 ? 0 : 24))).toBe(still);
    expect(await reasons("VN", (i) => -110 - Math.sin(i / 10))).toBe(still);
    expect(await reasons("VN", (i) => 100 * Math.sin((2 * Math.PI * 4 * i) / 3200))).toMatch(
      /it changes sign 12 times a second at most, too slowly/,
    );
    expect(await reasons("VN", (i) => 0.5 * Math.sin((2 * Math.PI * 50 * i) / 3200))).toBe("N");
  });

  it("are looked at to the end: one that wakes up late is used", async () => {
    expect(await reasons("VN", (i) => (i < 6000 ? 0 : 10 * Math.sin(i)))).toBe("N");
  });

  it("are used all the same where the setup says so", async () => {
    const samples = sines(record());
    samples[1]?.fill(0);
    const setup = { channels: [{ channel: "VB", phase: "L2" as const }] };
    const { sources } = await reopen({}, { samples, setup });
    expect(sources[0]?.channels.map(({ phase }) => phase)).toEqual(["L1", "L2", "L3"]);
    expect((await reopen({}, { samples })).sources[0]?.channels.map(({ phase }) => phase)).toEqual(["L1", "L3"]);
  });

  it("are all channels of a record that is too slow", async () => {
    const { sources, columns } = await reopen({ samplesPerSecond: 90 }, {});
    expect(sources).toEqual([]);
    expect(columns.map(({ reason }) => String(reason))).toEqual(
      Array(3).fill("sampled 90 times a second, so it is no waveform of 50 Hz"),
    );
  });

  it("are slow stretches of a record, with a remark", async () => {
    const cfg = (text: string) => withLine(8, "3200,320\r\n10,640")(withLine(7, "2")(text));
    const { sources, remarks } = await reopen({}, { cfg });
    expect(sources.map(({ length }) => length)).toEqual([320]);
    expect(remarks.map(String)).toEqual([
      "mill.cfg: 320 samples at 10 per second are left out, too few for a waveform of 50 Hz.",
    ]);
  });

  it("are two that hold the same: which one is meant is asked", async () => {
    const channels = [...record().channels, voltage("VA sync", "A")];
    const { sources, columns } = await reopen({ channels }, {});
    expect(sources[0]?.channels.map(({ phase }) => phase)).toEqual(["L2", "L3"]);
    expect(String(columns[0]?.reason)).toBe(
      'it is voltage L1 like channel 4 ("VA sync"); say in the setup, under channels:, which of them is to be used',
    );
    const named = await reopen({ channels }, { setup: { channels: [{ channel: 1, phase: "L1" }] } });
    expect(named.sources[0]?.channels.map(({ name }) => name)).toEqual(["VA", "VB", "VC"]);
    expect(String(named.columns[3]?.reason)).toBe('the setup uses channel 1 ("VA") as voltage L1');
    const ignored = await reopen({ channels }, { setup: { channels: [{ channel: 4, ignore: true }] } });
    expect(ignored.sources[0]?.channels.map(({ name }) => name)).toEqual(["VA", "VB", "VC"]);
  });
});

describe("values", () => {
  const truth = sines(record());

  it("are brought to volts from kV and V in one file, and to the primary side from the secondary one", async () => {
    const channels: WrittenChannel[] = [
      { name: "VA", quantity: "voltage", phase: "A", fullScale: 500, unit: "kV" },
      {
        name: "VB",
        quantity: "voltage",
        phase: "B",
        fullScale: 500,
        unit: "V",
        primary: 20_000,
        secondary: 100,
        side: "secondary",
      },
      {
        name: "VC",
        quantity: "voltage",
        phase: "C",
        fullScale: 500,
        unit: "mV",
        primary: 400,
        secondary: 100,
        side: "primary",
      },
    ];
    const { sources, columns, remarks } = await reopen({ channels }, {});
    const read = await samplesOf(sources[0]);
    for (const k of [0, 1, 2]) expect(largestDifference(read[k], truth[k])).toBeLessThan(500 / 32_767);
    expect(String(columns[1]?.reason)).toBe('phase by the phase field "B", unit "V", secondary value × 20000/100');
    expect(remarks.map(String)).toEqual([]);
  });

  it("follow a ratio of the setup instead of that of the file", async () => {
    const channels = record().channels.map((c) => ({
      ...c,
      primary: 20_000,
      secondary: 100,
      side: "secondary" as const,
    }));
    const { sources } = await reopen({ channels }, { setup: { voltageRatio: "11000/110" } });
    const [first] = await samplesOf(sources[0]);
    expect(
      largestDifference(
        first?.map((v) => v * 2),
        truth[0],
      ),
    ).toBeLessThan(500 / 32_767);
  });

  it.each([
    ["0", "100", "secondary values without a usable ratio"],
    ["", "", "secondary values without a usable ratio"],
    ["x", "1", "secondary values without a usable ratio"],
    ["20", "100", "The ratio 20/100 of the voltages is unusual; its two sides may have different units"],
    ["2000000", "1", "The ratio 2000000/1 of the voltages is unusual"],
  ])("of a ratio %s/%s come with a remark", async (primary, secondary, remark) => {
    const cfg = (text: string) => withLine(3, (line) => line.replace(/,1,1,P$/, `,${primary},${secondary},S`))(text);
    const { remarks, sources } = await reopen({}, { cfg });
    expect(remarks.map(String)).toEqual([expect.stringContaining(remark)]);
    const factor = Number(primary) / Number(secondary);
    const usable = factor > 0 && Number.isFinite(factor) ? factor : 1;
    const [first] = await samplesOf(sources[0]);
    expect(
      largestDifference(
        first?.map((v) => v / usable),
        truth[0],
      ),
    ).toBeLessThan(500 / 32_767);
  });

  it("carry the skew of their channel in seconds, and the offset b", async () => {
    const channels = record().channels.map((c, k) => ({ ...c, skewS: k * 10e-6 }));
    const cfg = withLine(3, (line) => line.replace(",0,0,-32767", ",25,0,-32767"));
    const { sources } = await reopen({ channels }, { cfg });
    expect(sources[0]?.channels.map(({ skewS }) => skewS * 1e6)).toEqual([
      0,
      expect.closeTo(10, 9),
      expect.closeTo(20, 9),
    ]);
    const [first] = await samplesOf(sources[0]);
    expect(
      largestDifference(
        first?.map((v) => v - 25),
        truth[0],
      ),
    ).toBeLessThan(500 / 32_767);
  });

  it("are inverted where the setup says so", async () => {
    const { sources } = await reopen({}, { setup: { channels: [{ channel: "VA", inverted: true }] } });
    const [first] = await samplesOf(sources[0]);
    expect(
      largestDifference(
        first?.map((v) => -v),
        truth[0],
      ),
    ).toBeLessThan(500 / 32_767);
  });

  it("need no channel to be usable: the list says why, and there is no source", async () => {
    const channels = [{ name: "x", quantity: "voltage" as const, phase: "", fullScale: 500 }];
    const pair = writeComtrade(record({ channels }), sines(record({ channels })));
    const files = [memoryFile("mill.cfg", pair.cfg), memoryFile("mill.dat", pair.dat)];
    const { sources, columns } = await openComtrade(files, {});
    expect(sources).toEqual([]);
    expect(columns.map((column) => ({ ...column, reason: String(column.reason) }))).toEqual([
      { file: "mill.cfg", position: 1, header: "x", reason: "neither its name nor its phase field says a phase" },
    ]);
  });
});
