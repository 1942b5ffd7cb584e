import { stringify } from "yaml";
import type { LoggedQuantity, Phase } from "../../src/recording/quantity.js";
import type { GivenSetup } from "../../src/recording/setup.js";
import { HOUR, MINUTE, SECOND } from "../../src/recording/time.js";
import { type Dialect, PLAIN } from "./dialect.js";
import { withEveryFlaw } from "./flaws.js";
import { column, type LogColumn, type LogTable, ticks } from "./log-table.js";
import { distortion, type Site, type SiteSeries, simulate } from "./sample-site.js";
import { setupOf, writeLog } from "./write-log.js";

/** The three sample logs of invented sites, as they stand in sample-logs/. */

export interface SampleFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

const PHASES: readonly Phase[] = ["L1", "L2", "L3"];
const BETWEEN: readonly Phase[] = ["L12", "L23", "L31"];
const at = (iso: string) => Date.parse(iso) * 1000;
const hours = (n: number) => (n * HOUR) / (10 * MINUTE);

/** End of a village line with much photovoltaics, over the change to summer time in March 2026. */
export const VILLAGE: Site = {
  seed: 4711,
  start: at("2026-03-23T08:00Z"),
  count: hours(172),
  clockHours: 1,
  source: 239,
  impedance: { re: 0.24, im: 0.09 },
  neutralImpedance: { re: 0.16, im: 0.05 },
  photovoltaic: [8000, 13400, 7000],
  sky: [0.9, 1, 0.35, 0.96, 1, 0.98, 0.55, 0.9],
  load: [4200, 3300, 5200],
  distortion: 1,
  flicker: 1,
  dips: [
    { at: 247, residual: [141.6, 149.2, undefined], pst: 2.914 },
    { at: 690, residual: [undefined, 188.3, undefined], pst: 1.873 },
  ],
};

/** A stiff busbar with little photovoltaics, over the change to winter time in October 2026. */
export const CLEAN: Site = {
  seed: 815,
  start: at("2026-10-21T06:00Z"),
  count: hours(170),
  clockHours: 2,
  source: 234,
  impedance: { re: 0.05, im: 0.04 },
  neutralImpedance: { re: 0.03, im: 0.02 },
  photovoltaic: [5200, 4800, 5100],
  sky: [0.7, 0.5, 0.9, 0.8, 0.4, 0.6, 0.9, 0.7],
  load: [8100, 7600, 8600],
  distortion: 0.55,
  flicker: 0.7,
  dips: [],
};

const FLAWED: Site = {
  ...VILLAGE,
  seed: 1234,
  start: at("2026-02-02T10:00Z"),
  count: hours(176),
  photovoltaic: [2600, 3100, 2400],
  source: 233,
  dips: [],
};

const VILLAGE_DIALECT: Dialect = {
  ...PLAIN,
  language: "de",
  delimiter: ";",
  decimal: ",",
  encoding: "latin-1",
  lineEnd: "\r\n",
  stamp: "d.m.y",
  zone: "Europe/Vienna",
  preamble: ["Messstelle: Finkelried, Abgang 4, Leitungsende", "Größen: Zehnminutenwerte", ""],
  gzip: true,
};
const CLEAN_DIALECT: Dialect = { ...PLAIN, zone: "Europe/Vienna" };
const FLAWED_DIALECT: Dialect = {
  ...PLAIN,
  delimiter: ";",
  encoding: "utf-8-bom",
  stamp: "d.m.y in two columns",
  zone: "Europe/Vienna",
  label: "end",
  missing: ["---", "", "NaN", "OL"],
};

/** Everything in sample-logs/ that the script makes. */
export function sampleFiles(): readonly SampleFile[] {
  const village = simulate(VILLAGE);
  const clean = simulate(CLEAN);
  const text = new TextEncoder();
  const setup = (name: string, given: GivenSetup): SampleFile => ({ name, bytes: text.encode(stringify(given)) });
  return [
    { name: "village-feeder.csv.gz", bytes: writeLog(tableOf(village, orders(2, 40)), VILLAGE_DIALECT) },
    {
      name: "village-feeder-frequency.csv.gz",
      bytes: writeLog(frequencyTable(village), {
        ...VILLAGE_DIALECT,
        preamble: ["Messstelle: Finkelried, Abgang 4, Leitungsende", "Größen: Zehnsekundenwerte", ""],
      }),
    },
    setup("village-feeder.setup.yaml", {
      site: "Finkelried, feeder 4 (invented)",
      measuringPoint: "end of line, cable cabinet 7",
      report: {
        number: "F4-2026-01",
        customer: "the household behind cabinet 7 (invented)",
        laboratory: { name: "measuring service of the valley (invented)" },
        issued: "2026-04-02",
      },
      instrument: {
        class: "A",
        serialNumber: "0417 (invented)",
        calibrationDate: "2025-09-10",
        calibrationDue: "2027-09-10",
        synchronisation: "by satellite time, lock held throughout",
      },
      ...STAR_230,
      ...setupOf(VILLAGE_DIALECT),
      complaints: [
        { at: "2026-03-10T12:40", what: "inverter switched itself off" },
        { at: "2026-03-24T13:15", what: "inverter switched itself off" },
        { at: "2026-03-28T11:50", to: "2026-03-28T12:20", what: "inverter switched off and on again" },
      ],
      comments: [{ at: "2026-03-25T02:15", text: "network operator: fault cleared on the medium-voltage line" }],
    }),
    { name: "clean-site.csv", bytes: writeLog(tableOf(clean, orders(2, 25)), CLEAN_DIALECT) },
    setup("clean-site.setup.yaml", {
      site: "Ulmenstett (invented)",
      measuringPoint: "low-voltage busbar of the substation",
      ...STAR_230,
      zone: CLEAN_DIALECT.zone,
      ...setupOf(CLEAN_DIALECT),
    }),
    {
      name: "every-flaw.csv",
      bytes: writeLog(withEveryFlaw(tableOf(simulate(FLAWED), orders(2, 40))), FLAWED_DIALECT),
    },
    setup("every-flaw.setup.yaml", {
      site: "Zirbelmoos (invented)",
      measuringPoint: "house connection box",
      ...STAR_230,
      ...setupOf(FLAWED_DIALECT),
    }),
  ];
}

const STAR_230: GivenSetup = { connection: "star", declaredVoltage: 230, nominalFrequency: 50 };

const orders = (first: number, last: number) => Array.from({ length: last - first + 1 }, (_, i) => first + i);

/** The table of a logger at this site, with the harmonics of the given orders and a THD over just these. */
export function tableOf(series: SiteSeries, harmonicOrders: readonly number[]): LogTable {
  const perPhase = (
    quantity: LoggedQuantity,
    decimals: number,
    values: readonly Float64Array[],
    phases: readonly Phase[] = PHASES,
    rest: Partial<LogColumn> = {},
  ) => phases.map((phase, p) => column({ quantity, phase, ...rest }, decimals, values[p] as Float64Array));
  const harmonic = (order: number) => series.harmonics.map((ofPhase) => ofPhase[order] as Float64Array);
  const thd = series.harmonics.map((ofPhase) => distortion(harmonicOrders.map((h) => ofPhase[h] as Float64Array)));
  const system = (quantity: LoggedQuantity, decimals: number, values: Float64Array) =>
    column({ quantity, phase: "system" }, decimals, values);
  return {
    interval: 10 * MINUTE,
    starts: [...series.starts],
    columns: [
      ...perPhase("voltage", 2, series.voltage),
      ...perPhase("voltage", 2, series.voltageMin, PHASES, { statistic: "min" }),
      ...perPhase("voltage", 2, series.voltageMax, PHASES, { statistic: "max" }),
      ...perPhase("voltage", 2, series.phaseToPhase, BETWEEN),
      ...perPhase("current", 2, series.current),
      system("active-power", 0, series.activePower),
      system("reactive-power", 0, series.reactivePower),
      system("frequency", 3, series.frequency),
      system("negative-sequence-unbalance", 2, series.unbalance),
      ...perPhase("pst", 3, series.pst),
      ...perPhase("plt", 3, series.plt),
      ...perPhase("thd-voltage", 2, thd),
      ...harmonicOrders.flatMap((order) => perPhase("harmonic-voltage", 2, harmonic(order), PHASES, { order })),
    ],
    flagged: series.flagged,
  };
}

function frequencyTable(series: SiteSeries): LogTable {
  const { frequency10s } = series;
  return {
    interval: 10 * SECOND,
    starts: ticks(series.starts[0] as number, 10 * SECOND, frequency10s.length),
    columns: [column({ quantity: "frequency", phase: "system" }, 3, frequency10s)],
  };
}
