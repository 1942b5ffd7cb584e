import { PHASE_TO_NEUTRAL, type Phase } from "../recording/quantity.js";
import { say } from "../sentence.js";
import type { Check } from "./check.js";
import { list } from "./common/wording.js";

/** Voltages to neutral that were logged but are not judged, because the connection says phase to phase. */
export const leftOutVoltages: Check = {
  id: "left-out-voltages",
  title: "Voltages to neutral beside a connection that is judged phase to phase",
  source: "EN 50160: Un lies between phase and neutral for four-wire supplies, between phases for three-wire ones",
  run({ measurements, setup }) {
    if (setup.connection.value !== "delta") return [];
    const phases = PHASE_TO_NEUTRAL.filter((phase: Phase) =>
      measurements.series.some((s) => s.quantity === "voltage" && s.phase === phase),
    );
    if (phases.length === 0) return [];
    const how = setup.connection.origin === "given" ? say`as the setup says` : say`as the log suggests`;
    return [
      {
        id: "left-out-voltages",
        severity: "note",
        sentence: say`The log also holds ${list(phases)} to neutral, which are not judged: the supply voltage is judged phase to phase, ${how}; if the supply has a neutral that users are connected to, assess it with --connection star.`,
        evidence: { phases },
        quantities: ["voltage"],
        phases,
      },
    ];
  },
};
