import type { Finding } from "../recording/finding.js";
import { PHASE_TO_NEUTRAL, PHASE_TO_PHASE } from "../recording/quantity.js";
import { type Duration, HOUR, type Instant, isoUtc, MINUTE, SECOND } from "../recording/time.js";
import { say, type Text } from "../sentence.js";
import type { Check, CheckInput } from "./check.js";
import { alignedValues, loggedSeries } from "./common/series.js";
import { starPoint } from "./common/star-point.js";
import { voltageLevels } from "./common/voltage.js";
import { counted, figure, LICENSED, rough, span } from "./common/wording.js";

/** Screening, as shares of the declared voltage: spread of the voltages to neutral while those between phases agree. */
const NEUTRAL_SPREAD = 0.08;
const BETWEEN_SPREAD = 0.02;
/** Voltages between phases are sound in this band about √3 times the declared voltage. */
const BETWEEN_BAND = 0.15;
/** Voltages to neutral that make it urgent. */
const URGENT = [0.8, 1.15] as const;
/**
 * A load on one phase gives U0 / U2 = 1 + 3·Zn / Zph: 4 with a full neutral, 7 with one of half the section, 10 where the
 * neutral has three times the impedance of a phase, which no sound line has.
 */
const NEUTRAL_RATIO = 10;
/** Without voltages between phases: one phase up and one down by this share at once, from their medians … */
const MOVE = 0.03;
/** … or one above and one below declared by this share at once. */
const APART = 0.1;
/** How long it must last in all: shorter spells come with the start of a large single-phase load. */
const LASTING: Duration = 10 * MINUTE;
const LASTING_URGENT: Duration = 10 * SECOND;
const LASTING_WEAK: Duration = HOUR;

type Three = readonly [number, number, number];

interface Screened {
  rows: number;
  urgentRows: number;
  /** Sums of the squares of U0 and U2 over the screened rows, V². */
  zero: number;
  negative: number;
  /** The row of the widest spread. */
  spread: number;
  at: Instant;
  voltages: Three;
}

/**
 * An interrupted or loose neutral: the star point wanders with the loads, so some phases rise while others fall,
 * and the voltages between the phases do not notice. Screened row by row in a star connection: phase-to-neutral
 * voltages more than 8 % of declared apart while phase-to-phase voltages agree within 2 %. Unequal loads on a sound
 * line reach that too, so it is called a danger only where a voltage leaves 80…115 % of declared, or where the star
 * point is displaced (U0) ten times as far as unequal loads on the phases explain (U2). Anything less is noted as a
 * displaced star point. Without phase-to-phase voltages the same pattern is reported as not confirmed. Blocks nothing:
 * the voltages are what they are, unless the recorder's own neutral lead was open.
 */
export const openNeutral: Check = {
  id: "open-neutral",
  title: "Signs of an open neutral: L-N more than 8 % of declared apart while L-L agree within 2 %",
  source:
    "circuit theory (symmetrical components of a single-phase load); thresholds 8 %, 2 %, 80 and 115 %: common practice, no source",
  run(input) {
    const { recording, setup } = input;
    if (setup.connection.value !== "star") return [];
    const axis = loggedSeries(recording, "voltage", "L1")?.axis;
    if (axis === undefined) return [];
    const valuesOf = (phases: readonly (typeof PHASE_TO_NEUTRAL | typeof PHASE_TO_PHASE)[number][]) =>
      phases.flatMap((phase) => {
        const series = loggedSeries(recording, "voltage", phase);
        const values = series && alignedValues(series, axis);
        return values === undefined ? [] : [values];
      });
    const neutral = valuesOf(PHASE_TO_NEUTRAL);
    const between = valuesOf(PHASE_TO_PHASE);
    if (neutral.length < 3) return [];
    const confirmable = between.length === 3;
    const screened = screen(neutral, confirmable ? between : undefined, axis.starts, input);
    const urgent = screened.urgentRows * axis.interval >= LASTING_URGENT;
    const strong = confirmable && screened.zero >= NEUTRAL_RATIO ** 2 * screened.negative;
    const time = screened.rows * axis.interval;
    if (!urgent && time < (strong ? LASTING : LASTING_WEAK)) return [];
    return [finding(screened, { time, declared: setup.declaredVoltage.value, confirmable, urgent, strong })];
  },
};

function screen(
  neutral: readonly Float64Array[],
  between: readonly Float64Array[] | undefined,
  starts: Float64Array,
  input: CheckInput,
): Screened {
  const declared = input.setup.declaredVoltage.value;
  const levels = voltageLevels(input);
  const medians = PHASE_TO_NEUTRAL.map(
    (p) => levels.find((l) => l.phase === p)?.median ?? declared,
  ) as unknown as Three;
  const [u1, u2, u3] = neutral as [Float64Array, Float64Array, Float64Array];
  const [u12, u23, u31] = (between ?? neutral) as [Float64Array, Float64Array, Float64Array];
  const found: Screened = { rows: 0, urgentRows: 0, zero: 0, negative: 0, spread: 0, at: 0, voltages: [0, 0, 0] };
  for (let i = 0; i < u1.length; i++) {
    const high = Math.max(u1[i] as number, u2[i] as number, u3[i] as number);
    const low = Math.min(u1[i] as number, u2[i] as number, u3[i] as number);
    // A missing value makes the spread NaN, which compares as false.
    if (!(high - low > NEUTRAL_SPREAD * declared)) continue;
    const voltages: Three = [u1[i] as number, u2[i] as number, u3[i] as number];
    if (between === undefined) {
      if (!moveApart(voltages, medians, declared)) continue;
    } else {
      const sides: Three = [u12[i] as number, u23[i] as number, u31[i] as number];
      if (!areSound(sides, declared)) continue;
      const { zero, negative } = starPoint(voltages, sides);
      found.zero += zero * zero;
      found.negative += negative * negative;
    }
    found.rows++;
    if (low < URGENT[0] * declared || high > URGENT[1] * declared) found.urgentRows++;
    if (high - low > found.spread) Object.assign(found, { spread: high - low, at: starts[i], voltages });
  }
  return found;
}

function areSound(sides: Three, declared: number): boolean {
  const mean = (sides[0] + sides[1] + sides[2]) / 3;
  return (
    Math.max(...sides) - Math.min(...sides) < BETWEEN_SPREAD * mean &&
    Math.abs(mean / (declared * Math.sqrt(3)) - 1) < BETWEEN_BAND
  );
}

function moveApart(voltages: Three, medians: Three, declared: number): boolean {
  const moves = voltages.map((u, k) => u - (medians[k] as number));
  return (
    (Math.max(...moves) >= MOVE * declared && Math.min(...moves) <= -MOVE * declared) ||
    (Math.max(...voltages) > (1 + APART) * declared && Math.min(...voltages) < (1 - APART) * declared)
  );
}

interface Signs {
  readonly time: Duration;
  readonly declared: number;
  /** All three voltages between phases were logged. */
  readonly confirmable: boolean;
  readonly urgent: boolean;
  /** The star point lies farther off than unequal loads can put it. */
  readonly strong: boolean;
}

function finding(s: Screened, { time, declared, confirmable, urgent, strong }: Signs): Finding {
  const zero = Math.sqrt(s.zero / s.rows);
  const ratio = Math.sqrt(s.zero / s.negative);
  const danger = urgent || strong;
  const seen = say`For ${span(time)} (${counted(s.rows, "row")}) the voltages to neutral lie more than 8 % of ${figure(declared)} V apart, most at ${isoUtc(s.at)} with L1 ${figure(s.voltages[0])} V, L2 ${figure(s.voltages[1])} V and L3 ${figure(s.voltages[2])} V`;
  const meanwhile = confirmable
    ? say`while the voltages between the phases agree within 2 % (zero-sequence voltage ${rough(zero)} V, ${rough(ratio)} times the negative-sequence voltage)`
    : say`some phases rising while others fall; no voltages between the phases were logged, so the cause cannot be confirmed`;
  return {
    id: danger ? "open-neutral" : "displaced-neutral",
    severity: "note",
    sentence: say`${seen}, ${meanwhile}; ${meaning(strong, danger)}; ${action(urgent, danger)}, and ${LICENSED}.`,
    evidence: {
      timeS: time / SECOND,
      rows: s.rows,
      urgentRows: s.urgentRows,
      urgent: urgent ? "yes" : "no",
      confirmable: confirmable ? "yes" : "no",
      declared,
      spread: s.spread,
      at: isoUtc(s.at),
      l1: s.voltages[0],
      l2: s.voltages[1],
      l3: s.voltages[2],
      ...(confirmable && { zeroSequence: zero, ratio }),
    },
    quantities: ["voltage"],
    phases: [...PHASE_TO_NEUTRAL],
    ...(danger && { danger: "open-neutral" as const }),
  };
}

function meaning(strong: boolean, danger: boolean): Text {
  if (strong)
    return say`the neutral of the supply is probably loose or broken, unless it was the recorder's own neutral lead`;
  return danger
    ? say`the neutral of the supply may be loose or broken, unless the loads are very unequal or the recorder's own neutral lead was open`
    : say`unequal loads or feed-in on a line do that, but a neutral that grows loose begins like this too`;
}

function action(urgent: boolean, danger: boolean): Text {
  if (urgent) {
    return say`this is urgent, as voltages beyond 80 to 115 % destroy equipment and metal parts may become live: switch sensitive equipment off, keep away from metal parts of the installation, call the network operator at once`;
  }
  return danger
    ? say`have the network operator or a licensed electrician check the neutral soon, as a loose joint grows worse until it breaks`
    : say`compare with the currents, and have the neutral checked if they do not explain it`;
}
