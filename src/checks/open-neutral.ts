import type { Finding } from "../recording/finding.js";
import { PHASE_TO_NEUTRAL, PHASE_TO_PHASE } from "../recording/quantity.js";
import { type Duration, durationText, type Instant, isoUtc, MINUTE, SECOND } from "../recording/time.js";
import type { Check, CheckInput } from "./check.js";
import { alignedValues, loggedSeries } from "./common/series.js";
import { voltageLevels } from "./common/voltage.js";
import { figure, LICENSED } from "./common/wording.js";

/** Screening, as shares of the declared voltage: spread of the voltages to neutral while those between phases agree. */
const NEUTRAL_SPREAD = 0.08;
const BETWEEN_SPREAD = 0.02;
/** Voltages between phases are sound in this band about √3 times the declared voltage. */
const BETWEEN_BAND = 0.15;
/** Voltages to neutral that make it urgent. */
const URGENT = [0.8, 1.15] as const;
/** Without voltages between phases: one phase up and one down by this share at once, from their medians … */
const MOVE = 0.03;
/** … or one above and one below declared by this share at once. */
const APART = 0.1;
/** How long it must last in all: shorter spells come with the start of a large single-phase load. */
const LASTING: Duration = 10 * MINUTE;
const LASTING_URGENT: Duration = 10 * SECOND;

interface Screened {
  rows: number;
  urgentRows: number;
  spread: number;
  at: Instant;
  neutral: readonly [number, number, number];
  /** Zero-sequence voltage in that row, V; NaN where it cannot be told. */
  displacement: number;
}

/**
 * An interrupted or loose neutral: the star point wanders with the loads, so some phases rise while others fall,
 * and the voltages between the phases do not notice. Screened row by row in a star connection: phase-to-neutral
 * voltages more than 8 % of declared apart while phase-to-phase voltages agree within 2 %. The displacement of the star
 * point follows exactly from the six voltages: U0 = √(3·ΣU(LN)² − ΣU(LL)²) / 3. Without phase-to-phase voltages the same
 * pattern is reported as not confirmed. A danger, so it is always reported first; it blocks nothing, since the voltages
 * at the terminals are what they are unless the recorder's own neutral lead was open.
 */
export const openNeutral: Check = {
  id: "open-neutral",
  title: "Signs of an open neutral: L-N more than 8 % of declared apart while L-L agree within 2 %",
  source:
    "circuit theory (zero-sequence shift; sum of squares of three phasors); thresholds 8 %, 2 %, 80 % and 115 %: common practice, no source",
  run(input) {
    const { recording, setup } = input;
    if (setup.connection.value !== "star") return [];
    const first = loggedSeries(recording, "voltage", "L1");
    if (first === undefined) return [];
    const { axis } = first;
    const all = [...PHASE_TO_NEUTRAL, ...PHASE_TO_PHASE].map((phase) => {
      const series = loggedSeries(recording, "voltage", phase);
      return series && alignedValues(series, axis);
    });
    const neutral = all.slice(0, 3).filter((v) => v !== undefined);
    const between = all.slice(3).filter((v) => v !== undefined);
    if (neutral.length < 3) return [];
    const confirmed = between.length === 3;
    const screened = screen(neutral, confirmed ? between : undefined, axis.starts, input);
    const time = screened.rows * axis.interval;
    const urgentTime = screened.urgentRows * axis.interval;
    if (time < LASTING && urgentTime < LASTING_URGENT) return [];
    return [finding(screened, time, setup.declaredVoltage.value, confirmed)];
  },
};

function screen(
  neutral: readonly Float64Array[],
  between: readonly Float64Array[] | undefined,
  starts: Float64Array,
  input: CheckInput,
): Screened {
  const [u1, u2, u3] = neutral as [Float64Array, Float64Array, Float64Array];
  const declared = input.setup.declaredVoltage.value;
  const levels = voltageLevels(input);
  const medians = PHASE_TO_NEUTRAL.map((p) => levels.find((l) => l.phase === p)?.median ?? declared);
  const found: Screened = { rows: 0, urgentRows: 0, spread: 0, at: 0, neutral: [0, 0, 0], displacement: Number.NaN };
  for (let i = 0; i < u1.length; i++) {
    const a = u1[i] as number;
    const b = u2[i] as number;
    const c = u3[i] as number;
    const high = Math.max(a, b, c);
    const low = Math.min(a, b, c);
    // A missing value makes the spread NaN, which compares as false.
    if (!(high - low > NEUTRAL_SPREAD * declared)) continue;
    let displacement = Number.NaN;
    if (between === undefined) {
      const moves = [a - (medians[0] as number), b - (medians[1] as number), c - (medians[2] as number)];
      const together = Math.max(...moves) >= MOVE * declared && Math.min(...moves) <= -MOVE * declared;
      const apart = high > (1 + APART) * declared && low < (1 - APART) * declared;
      if (!together && !apart) continue;
    } else {
      const [x, y, z] = between.map((v) => v[i] as number) as [number, number, number];
      const mean = (x + y + z) / 3;
      if (!(Math.max(x, y, z) - Math.min(x, y, z) < BETWEEN_SPREAD * mean)) continue;
      if (!(Math.abs(mean / (declared * Math.sqrt(3)) - 1) < BETWEEN_BAND)) continue;
      displacement = Math.sqrt(Math.max(0, 3 * (a * a + b * b + c * c) - (x * x + y * y + z * z))) / 3;
    }
    found.rows++;
    if (low < URGENT[0] * declared || high > URGENT[1] * declared) found.urgentRows++;
    if (high - low > found.spread) {
      Object.assign(found, { spread: high - low, at: starts[i], neutral: [a, b, c], displacement });
    }
  }
  return found;
}

function finding(screened: Screened, time: Duration, declared: number, confirmed: boolean): Finding {
  const { rows, urgentRows, spread, at, neutral, displacement } = screened;
  const urgent = urgentRows > 0;
  const seen = `For ${durationText(time)} (${rows} rows) the voltages to neutral lie more than 8 % of ${figure(declared)} V apart, most at ${isoUtc(at)} with L1 ${figure(neutral[0])} V, L2 ${figure(neutral[1])} V and L3 ${figure(neutral[2])} V`;
  const meaning = confirmed
    ? `while the voltages between the phases agree within 2 % (the star point is displaced by ${figure(displacement)} V): the neutral of the supply is probably loose or broken, unless it was the recorder's own neutral lead or very unequal loads`
    : "some rising while others fall: this may be a loose or broken neutral of the supply, but also very unequal loads or the recorder's own neutral lead, and cannot be confirmed as no voltages between the phases were logged";
  const action = urgent
    ? "this is urgent, as voltages beyond 80 to 115 % destroy equipment and metal parts may carry voltage: switch sensitive equipment off, keep away from the installation's metal parts, call the network operator at once"
    : "have the network operator or a licensed electrician check the neutral soon, as a loose joint grows worse until it breaks";
  return {
    id: "open-neutral",
    severity: "note",
    sentence: `${seen}, ${meaning}; ${action}, and ${LICENSED}.`,
    evidence: {
      timeS: time / SECOND,
      rows,
      urgentRows,
      urgent: urgent ? "yes" : "no",
      confirmed: confirmed ? "yes" : "no",
      declared,
      spread,
      at: isoUtc(at),
      l1: neutral[0],
      l2: neutral[1],
      l3: neutral[2],
      ...(confirmed && { displacement }),
    },
    quantities: ["voltage"],
    phases: [...PHASE_TO_NEUTRAL],
    danger: "open-neutral",
  };
}
