import type { Scenario, ScenarioPhase } from "./scenario.js";

const ALL: readonly ScenarioPhase[] = ["L1", "L2", "L3"];

/** The phases that an entry is about: those it names, else all that the connection has. */
export function phasesOf(
  { connection }: Pick<Scenario, "connection">,
  named?: readonly ScenarioPhase[],
): readonly ScenarioPhase[] {
  return named ?? (connection === "single" ? ALL.slice(0, 1) : ALL);
}

/** Declared voltage between a phase and the neutral point, in V. */
export function declaredToNeutral({ connection, declaredVoltage }: Pick<Scenario, "connection" | "declaredVoltage">) {
  return connection === "delta" ? declaredVoltage / Math.sqrt(3) : declaredVoltage;
}
