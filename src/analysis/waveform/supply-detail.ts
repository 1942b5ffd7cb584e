import { supplyPhases } from "../../recording/quantity.js";
import type { AskedSpan } from "../../recording/supply-detail.js";
import { SECOND } from "../../recording/time.js";
import { SlidingMean } from "../sliding-mean.js";
import { SpanMeter } from "../span-meter.js";
import type { BasicWindow, Phenomenon, PhenomenonResult, PhenomenonState, WindowChannel } from "./phenomenon.js";

/** Length of a basic window, about; see `intervalName`. */
const WINDOW = SECOND / 5;

/**
 * The judged voltages by their basic windows (IEC 61000-4-30): over ten minutes that move on by a window, and over the
 * spans that are asked about.
 */
export function supplyDetail(spans: readonly AskedSpan[]): Phenomenon {
  return {
    id: "supply-detail",
    clause: "IEC 61000-4-30, 5.2 (basic windows); sliding mean: EN 50549-1, from memory",
    start: ({ channels, connection, declaredVoltage }) => {
      const phases = supplyPhases(connection);
      return new SupplyDetailState(
        channels.flatMap(({ quantity, phase }, channel) =>
          quantity === "voltage" && phases.includes(phase)
            ? {
                channel,
                sliding: new SlidingMean(phase, WINDOW, declaredVoltage),
                spans: spans.map((span) => new SpanMeter(phase, WINDOW, span)),
              }
            : [],
        ),
      );
    },
  };
}

interface Metered {
  readonly channel: number;
  readonly sliding: SlidingMean;
  readonly spans: readonly SpanMeter[];
}

class SupplyDetailState implements PhenomenonState {
  constructor(private readonly voltages: readonly Metered[]) {}

  window({ start, end, channels }: BasicWindow): void {
    for (const { channel, sliding, spans } of this.voltages) {
      const { rms } = channels[channel] as WindowChannel;
      sliding.add(start, end, rms);
      for (const span of spans) span.add(start, end, rms);
    }
  }

  finish(): PhenomenonResult {
    return {
      sliding: this.voltages.flatMap(({ sliding }) => sliding.finish() ?? []),
      spans: this.voltages.flatMap(({ spans }) => spans.flatMap((span) => span.finish() ?? [])),
    };
  }
}
