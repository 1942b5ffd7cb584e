import type { MeasurementSettings } from "../../recording/setup.js";
import type { AskedSpan } from "../../recording/supply-detail.js";
import { flicker } from "./flicker.js";
import { frequency } from "./frequency.js";
import { harmonics } from "./harmonics.js";
import { inrushCurrent } from "./inrush-current.js";
import { magnitude } from "./magnitude.js";
import { mainsSignalling } from "./mains-signalling.js";
import type { Phenomenon } from "./phenomenon.js";
import { power } from "./power.js";
import { rapidVoltageChange } from "./rapid-voltage-change.js";
import { supplyDetail } from "./supply-detail.js";
import { transients } from "./transients.js";
import { unbalance } from "./unbalance.js";
import { voltageEvents } from "./voltage-events.js";

/**
 * All phenomena that are measured from waveforms, in the order in which each is handed a half cycle or window.
 * @param spans about which is asked what the voltage did
 */
export function phenomena(settings: MeasurementSettings = {}, spans: readonly AskedSpan[] = []): readonly Phenomenon[] {
  const { dip, swell, interruption, hysteresis, reference, rapidVoltageChange: change, transient, inrushA } = settings;
  return [
    // First: they mark the flags that the others read.
    voltageEvents(given({ dip, swell, interruption, hysteresis, reference })),
    rapidVoltageChange(given({ threshold: change })),
    transients(given({ threshold: transient })),
    inrushCurrent(given({ thresholdA: inrushA })),
    frequency,
    magnitude,
    supplyDetail(spans),
    harmonics,
    unbalance,
    mainsSignalling,
    flicker,
    power,
  ];
}

type Given<T> = { readonly [K in keyof T]?: Exclude<T[K], undefined> };

/** Leaves out what is undefined. */
function given<T extends object>(settings: T): Given<T> {
  return Object.fromEntries(Object.entries(settings).filter(([, v]) => v !== undefined)) as Given<T>;
}
