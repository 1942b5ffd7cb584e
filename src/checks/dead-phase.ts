import type { Finding } from "../recording/finding.js";
import { PHASE_TO_NEUTRAL, PHASE_TO_PHASE, type Phase } from "../recording/quantity.js";
import { HOUR, isoUtc, SECOND } from "../recording/time.js";
import { capital, say } from "../sentence.js";
import type { Check, CheckInput } from "./check.js";
import { alignedValues, loggedSeries } from "./common/series.js";
import { declaredOn, VOLTAGE_QUANTITIES, voltageLevels } from "./common/voltage.js";
import { figure, LICENSED, nameOf, percent, span } from "./common/wording.js";

/** Below this share of the declared voltage a phase is dead: EN 50160 calls a supply below 5 % interrupted. */
const DEAD = 0.05;
/** Another phase above this share shows that the supply and the recorder were there. */
const ALIVE = 0.5;
/** Time without one phase from which it is reported (common practice, no source). */
const LOST = HOUR;

/**
 * A phase without voltage while another has it. Where that is so for more than half of the recording (median below 5 %
 * of declared) the input was not connected or the phase not in service, so nothing measured on it can be judged, nor
 * the unbalance: blocks. An hour or more of it is noted only, as it may be a real outage of one phase, which counts.
 */
export const deadPhase: Check = {
  id: "dead-phase",
  title: "Phases without voltage (below 5 % of declared) while another has it",
  source:
    "EN 50160:2010, 3.14: supply interruption below 5 % of the reference voltage; blocking by the median is common practice, no source",
  run(input) {
    const levels = voltageLevels(input);
    return [PHASE_TO_NEUTRAL, PHASE_TO_PHASE].flatMap((group: readonly Phase[]) => {
      const inGroup = levels.filter((l) => group.includes(l.phase));
      const alive = inGroup.some((l) => l.median >= ALIVE * l.declared);
      return inGroup.flatMap(({ phase, median, declared }) =>
        alive && median < DEAD * declared ? [dead(phase, median, declared)] : lost(phase, group, input),
      );
    });
  },
};

function dead(phase: Phase, median: number, declared: number): Finding {
  return {
    id: "dead-phase",
    severity: "blocks",
    sentence: capital(
      say`${nameOf("voltage", phase)} reads ${figure(median)} V in the median, ${percent(median / declared)} of ${figure(declared)} V, while another phase has voltage; its lead was not connected, a fuse in it is open or the phase was not in service, so nothing measured on it is judged; check the connection and record again, and ${LICENSED}.`,
    ),
    evidence: { phase, median, declared, share: median / declared },
    quantities: [...VOLTAGE_QUANTITIES, "negative-sequence-unbalance", "zero-sequence-unbalance"],
    phases: [phase, "system"],
  };
}

function lost(phase: Phase, group: readonly Phase[], { recording, setup }: CheckInput): Finding[] {
  const series = loggedSeries(recording, "voltage", phase);
  const declared = declaredOn(phase, setup);
  if (series === undefined || declared === undefined) return [];
  const others = group.flatMap((p) => {
    const other = p === phase ? undefined : loggedSeries(recording, "voltage", p);
    const values = other && alignedValues(other, series.axis);
    return values === undefined ? [] : [values];
  });
  const { values, axis } = series;
  let rows = 0;
  let first = Number.NaN;
  for (let i = 0; i < values.length; i++) {
    // A missing value compares as false.
    if (!((values[i] as number) < DEAD * declared)) continue;
    if (!others.some((o) => (o[i] as number) >= ALIVE * declared)) continue;
    if (rows === 0) first = axis.starts[i] as number;
    rows++;
  }
  const time = rows * axis.interval;
  if (time < LOST) return [];
  const cause = (PHASE_TO_PHASE as readonly Phase[]).includes(phase)
    ? say`both its inputs carry the same phase, or a phase was out of supply`
    : say`this is a real outage of one phase, which counts, or a lead that came off, which should not`;
  return [
    {
      id: "lost-phase",
      severity: "note",
      sentence: capital(
        say`${nameOf("voltage", phase)} lies below ${figure(DEAD * declared)} V for ${span(time)} (${rows} of ${values.length} rows), first at ${isoUtc(first)}, while another phase has voltage; ${cause}; find out which, and ${LICENSED}.`,
      ),
      evidence: {
        phase,
        threshold: DEAD * declared,
        timeS: time / SECOND,
        rows,
        of: values.length,
        first: isoUtc(first),
      },
      quantities: VOLTAGE_QUANTITIES,
      phases: [phase],
    },
  ];
}
