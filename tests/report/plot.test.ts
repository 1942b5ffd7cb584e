import { describe, expect, it } from "vitest";
import { coursePlot, waveformPlot } from "../../src/report/charts/event-pictures.js";
import { drawPlot, linePath, scale, ticks } from "../../src/report/charts/plot.js";
import { isThinned } from "../../src/report/events.js";
import { ENGLISH } from "../../src/report/languages/language.js";
import { madeEvent, madeRecord } from "./event-support.js";
import { english, sampleReport } from "./support.js";

/** Points of a path in half pixels, by pieces. */
function points(path: string): [number, number][][] {
  const pieces: [number, number][][] = [];
  let [x, y] = [0, 0];
  for (const [, command, dx, dy] of path.matchAll(/([Ml])(-?\d+) (-?\d+)/g)) {
    if (command === "M") pieces.push([]);
    [x, y] = command === "M" ? [Number(dx), Number(dy)] : [x + Number(dx), y + Number(dy)];
    pieces.at(-1)?.push([x, y]);
  }
  return pieces;
}

describe("a line", () => {
  const same = (value: number) => value / 2;

  it("passes through its points, in half pixels, and breaks where a value is missing", () => {
    const path = linePath([0, 10, 20, 30, 40], [5, -3, Number.NaN, 7, 8], same, same);
    expect(points(path)).toEqual([
      [
        [0, 5],
        [10, -3],
      ],
      [
        [30, 7],
        [40, 8],
      ],
    ]);
  });

  it("of many values keeps the lowest and the highest of each column of pixels", () => {
    const x = Float64Array.from({ length: 10_000 }, (_, i) => i / 100);
    const y = Float64Array.from(x, (_, i) => (i === 5003 ? 900 : i === 7777 ? -900 : i % 7));
    const [piece = []] = points(linePath(x, y, same, same));
    expect(piece.length).toBeLessThan(420);
    expect(Math.max(...piece.map(([, py]) => py))).toBe(900);
    expect(Math.min(...piece.map(([, py]) => py))).toBe(-900);
    expect(piece[0]).toEqual([0, 0]);
    expect(piece.at(-1)).toEqual([100, 9999 % 7]);
  });
});

it.each([
  [[0, 1], 5, ["0.0", "0.2", "0.4", "0.6", "0.8", "1.0"]],
  [[-0.1, 0.32], 5, ["-0.1", "0.0", "0.1", "0.2", "0.3"]],
  [[88, 236], 4, ["100", "150", "200"]],
  [[0, 41_000], 5, ["0", "10000", "20000", "30000", "40000"]],
] as const)("marks of %j are round numbers", ([from, to], count, expected) => {
  const { values, decimals } = ticks([from, to], count);
  expect(values.map((value) => value.toFixed(decimals).replace(/^-(0\.?0*)$/, "$1"))).toEqual(expected);
});

it("a picture that stands by itself has its heading, escaped, on white; numbers carry a true minus sign", () => {
  const panel = { left: 50, top: 20, width: 400, height: 100, x: [-2, 2], y: [-5, 5], lines: [], levels: [] } as const;
  const titles = { xTitle: "time", yTitle: "voltage", field: [0, 1] } as const;
  const plot = { width: 480, height: 160, panels: [{ ...panel, ...titles }], legend: [] };
  const drawn = drawPlot(plot, ENGLISH, ["L1 < L2 & L3"]);
  expect(drawn).toContain(">L1 &lt; L2 &amp; L3</text>");
  expect(drawn).toContain('height="100%" fill="#ffffff"');
  expect(drawPlot(plot, ENGLISH)).not.toContain('fill="#ffffff"');
  expect(drawn).toContain(">−1</text>");
});

it("a scale maps its ends to the ends of the axis", () => {
  expect([0, 5, 10].map(scale([0, 10], 100, 0))).toEqual([100, 50, 0]);
});

describe("the pictures of an event", async () => {
  const made = madeEvent({ atS: 60, durationS: 0.12, percent: 41 });
  const long = madeEvent({ atS: 600, durationS: 2, percent: 41 });
  const [event, longEvent] = (await sampleReport({ days: 1, orders: 2, events: [made, long] })).assessment.events;
  if (event === undefined || longEvent === undefined) throw new RangeError("two events expected");

  it("show the course of all phases, the event as a field and the edge of the table of dips", () => {
    const { trace } = madeRecord(made);
    if (trace === undefined) throw new RangeError("no trace");
    const { panels, legend } = coursePlot(event, trace, { dip: 90, swell: 110 });
    expect(legend.map(({ name }) => name)).toEqual(["L1", "L2", "L3"]);
    expect(panels).toHaveLength(1);
    expect(panels[0]?.field).toEqual([0, 0.12]);
    expect(english(panels[0]?.levels)).toEqual([{ y: 207, name: "90 % of 230 V", isNamedBelow: true }]);
    expect(panels[0]?.x[0]).toBe(-0.1);
    expect(isThinned(trace)).toBe(false);
    expect(isThinned({ ...trace, times: Float64Array.of(0, 0.01, 0.02, 0.5, 0.51) })).toBe(true);
    expect(drawPlot(coursePlot(event, trace, {}), ENGLISH)).not.toMatch(/NaN|undefined|Infinity/);
  });

  it("show the waveform in one piece where the pieces join, else start and end side by side", () => {
    const joined = waveformPlot(event, madeRecord(made).waveform ?? []);
    expect(joined.panels).toHaveLength(1);
    expect(joined.panels[0]?.x).toEqual([-0.1, expect.closeTo(0.32, 6)]);
    const apart = waveformPlot(longEvent, madeRecord(long).waveform ?? []);
    expect(apart.panels.map(({ x }) => x)).toEqual([
      [-0.1, expect.closeTo(0.2, 6)],
      [expect.closeTo(1.9, 6), expect.closeTo(2.2, 6)],
    ]);
    const crest = Math.SQRT2 * 230;
    expect(apart.panels[0]?.y[1]).toBeGreaterThan(crest);
    expect(apart.panels[0]?.y[1]).toBeLessThan(1.15 * crest);
    expect(drawPlot(apart, ENGLISH)).not.toMatch(/NaN|undefined|Infinity/);
  });

  it("show currents below the voltages", () => {
    const pieces = (madeRecord(made).waveform ?? []).map((piece) => ({
      ...piece,
      channels: [
        ...piece.channels,
        {
          quantity: "current" as const,
          phase: "L1" as const,
          samples: piece.channels[0]?.samples ?? new Float32Array(),
        },
      ],
    }));
    const { panels } = waveformPlot(event, pieces);
    expect(panels.map(({ yTitle, lines }) => [english(yTitle), lines.length])).toEqual([
      ["voltage in V", 3],
      ["current in A", 1],
    ]);
    expect((panels[1]?.top ?? 0) > (panels[0]?.top ?? 0)).toBe(true);
  });
});
