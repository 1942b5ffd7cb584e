import type { Finding } from "../recording/finding.js";
import type { Phase } from "../recording/quantity.js";
import type { LoggedSeries } from "../recording/recording.js";
import { type Duration, type Instant, isoUtc, SECOND } from "../recording/time.js";
import { say } from "../sentence.js";
import type { Check } from "./check.js";
import { loggedSeries } from "./common/series.js";
import { judgedPhases } from "./common/voltage.js";
import { counted, figure, LICENSED, list, percent, span } from "./common/wording.js";

/** Share of the declared voltage above which equipment is in danger (common practice, no source). */
const DANGEROUS = 1.15;
/** How long it must last without a break: a swell of some cycles is an event, not a danger of this kind. */
const LASTING = SECOND;
/** Above this the declared voltage is wrong, which has its own check, and no danger can be told. */
const IMPLAUSIBLE = 1.5;

/**
 * Mean voltages above 115 % of the declared voltage for a second or longer on a phase that is judged. It is a danger
 * to equipment whatever its cause and changes no verdict: the limits do that. Not told where the declared voltage
 * itself cannot be right (median above one and a half of it).
 */
export const highestVoltage: Check = {
  id: "highest-voltage",
  title: "Dangerously high voltage: above 115 % of declared for a second or longer",
  source:
    "common practice, no source (the ITI curve of 2000 for 120 V equipment allows 120 % for 0.5 s and 110 % for good)",
  run({ recording, setup }) {
    const declared = setup.declaredVoltage.value;
    const found = judgedPhases(setup).flatMap((phase): High[] => {
      const series = loggedSeries(recording, "voltage", phase);
      const high = series && highRuns(series, declared);
      return high === undefined || high.rows === 0 ? [] : [high];
    });
    return found.length === 0 ? [] : [finding(found, declared)];
  },
};

interface High {
  readonly phase: Phase;
  /** Rows in lasting runs above the limit, the longest run and the highest value in them. */
  readonly rows: number;
  readonly longest: Duration;
  readonly highest: number;
  readonly at: Instant;
}

/** Undefined where more than half of the values are implausible. */
function highRuns({ phase, values, axis }: LoggedSeries, declared: number): High | undefined {
  const limit = DANGEROUS * declared;
  let present = 0;
  let implausible = 0;
  let rows = 0;
  let longest = 0;
  let row = -1;
  let run = 0;
  let runRow = 0;
  for (let i = 0; i <= values.length; i++) {
    const value = values[i] ?? Number.NaN;
    if (!Number.isNaN(value)) present++;
    if (value > IMPLAUSIBLE * declared) implausible++;
    if (value > limit) {
      if (run === 0 || value > (values[runRow] as number)) runRow = i;
      run++;
      continue;
    }
    if (run * axis.interval >= LASTING) {
      rows += run;
      longest = Math.max(longest, run * axis.interval);
      if (row < 0 || (values[runRow] as number) > (values[row] as number)) row = runRow;
    }
    run = 0;
  }
  if (2 * implausible > present) return undefined;
  return { phase, rows, longest, highest: values[row] ?? Number.NaN, at: axis.starts[row] ?? Number.NaN };
}

function finding(found: readonly High[], declared: number): Finding {
  const phases = found.map((f) => f.phase);
  const rows = found.reduce((sum, f) => sum + f.rows, 0);
  const longest = Math.max(...found.map((f) => f.longest));
  const { highest, at, phase } = found.reduce((a, b) => (b.highest > a.highest ? b : a));
  return {
    id: "highest-voltage",
    severity: "note",
    sentence: say`The voltage of ${list(phases)} lies above 115 % of the declared ${figure(declared)} V in ${counted(rows, "row")}, at most ${figure(highest)} V (${percent(highest / declared)}) on ${phase} at ${isoUtc(at)} and for ${span(longest)} on end; if the declared voltage and the connection are right this can destroy equipment and start fires, so disconnect sensitive equipment, call the network operator at once and ${LICENSED}.`,
    evidence: {
      phases,
      rows,
      declared,
      thresholdShare: DANGEROUS,
      highest,
      share: highest / declared,
      phase,
      at: isoUtc(at),
      longestS: longest / SECOND,
    },
    quantities: ["voltage"],
    phases,
    danger: "high-voltage",
  };
}
