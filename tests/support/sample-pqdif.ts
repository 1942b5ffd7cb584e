import { stringify } from "yaml";
import { CHARACTERISTIC as C } from "../../src/formats/pqdif/characteristics.js";
import { DISTURBANCE } from "../../src/formats/pqdif/disturbances.js";
import { QUANTITY_TYPE, VALUE_TYPE } from "../../src/formats/pqdif/identifiers.js";
import type { WrittenObservation } from "../../src/formats/pqdif/write-description.js";
import { type Definitions, waveformObservation } from "../../src/formats/pqdif/write-recording.js";
import type { GivenSetup } from "../../src/recording/setup.js";
import { type Instant, MINUTE, SECOND } from "../../src/recording/time.js";
import { CLEAN, type SampleFile, tableOf } from "./sample-logs.js";
import { type Site, simulate } from "./sample-site.js";
import { pqdifOf } from "./write-pqdif.js";

/** A week at an invented market hall in one PQDIF file: intervals, a waveform around a dip, and a list of events. */
const MARKET: Site = {
  ...CLEAN,
  seed: 2027,
  start: Date.parse("2027-05-03T04:00Z") * 1000,
  sky: [0.8, 0.9, 0.6, 1, 0.7, 0.5, 0.9, 0.8],
};
const ORDERS = Array.from({ length: 24 }, (_, i) => i + 2);

const SETUP: GivenSetup = {
  site: "Erlenau, market hall (invented)",
  measuringPoint: "main distribution board",
  connection: "star",
  declaredVoltage: 230,
  nominalFrequency: 50,
  zone: "Europe/Vienna",
};

/** The files that `sample-logs/` holds beside those of `sampleFiles`; not compressed, so that any zlib gives the same bytes. */
export async function samplePqdif(): Promise<readonly SampleFile[]> {
  const table = tableOf(simulate(MARKET), ORDERS);
  const at = (interval: number) => MARKET.start + interval * 10 * MINUTE;
  const bytes = await pqdifOf(
    [table],
    (definitions) => [snippet(definitions, at(200) + 100 * SECOND), list(definitions, at(0))],
    {
      scaled: true,
      compressed: false,
    },
  );
  return [
    { name: "market-hall.pqd", bytes },
    { name: "market-hall.setup.yaml", bytes: new TextEncoder().encode(stringify(SETUP)) },
  ];
}

const RATE = 6400;
const DIP = { fromS: 0.3, toS: 0.5, share: 0.62 };

/** One second of the three voltages; L1 dips to 62 % for 0.2 s, and the recorder says 61 % and 0.21 s. */
function snippet(definitions: Definitions, start: Instant): WrittenObservation {
  const channels = (["L1", "L2", "L3"] as const).map((phase) => ({
    name: `u ${phase}`,
    quantity: "voltage" as const,
    phase,
  }));
  const samples = channels.map((_, c) =>
    Float64Array.from({ length: RATE }, (_, i) => {
      const t = i / RATE;
      const share = c === 0 && t >= DIP.fromS && t < DIP.toS ? DIP.share : 1;
      return share * 231 * Math.SQRT2 * Math.sin(2 * Math.PI * (50 * t - c / 3));
    }),
  );
  const observation = waveformObservation(definitions, "voltage dip", start, RATE, channels, samples, {
    voltage: 0.02,
  });
  const characteristics = { magnitude: 61, durationS: 0.21 };
  return {
    ...observation,
    triggered: start + DIP.fromS * SECOND,
    triggerMethod: 1,
    triggerChannels: [0],
    disturbance: DISTURBANCE.SHORTDUR_INSTANT_SAG,
    channels: observation.channels.map((channel, c) => (c === 0 ? { ...channel, characteristics } : channel)),
  };
}

/** Two events of L2 of which there is no waveform: a dip to 74 % of 0.12 s and a swell to 112 % of 1.5 s. */
function list(definitions: Definitions, start: Instant): WrittenObservation {
  const definition = definitions.indexOf({
    name: "events of L2",
    phase: 2,
    quantityType: QUANTITY_TYPE.MAGDURTIME,
    quantityMeasured: 1,
    series: [
      { valueType: VALUE_TYPE.TIME, units: 2, characteristic: C.NONE, storage: 1 },
      { valueType: VALUE_TYPE.VAL, units: 19, characteristic: C.RMS, storage: 1 },
      { valueType: VALUE_TYPE.DURATION, units: 2, characteristic: C.NONE, storage: 1 },
    ],
  });
  const series = [
    [250_000, 390_000],
    [74, 112],
    [0.12, 1.5],
  ].map((values) => ({ type: "REAL8" as const, values }));
  return { name: "event list", start, channels: [{ definition, series }] };
}
