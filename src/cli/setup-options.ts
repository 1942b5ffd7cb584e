import type { Command } from "commander";

/** The options by which a log is read, shared by `assess` and `inspect`. */
export interface SetupOptions {
  readonly setup?: string;
  readonly declared?: string;
  readonly connection?: string;
  readonly zone?: string;
  readonly dateOrder?: string;
  readonly decisionRule?: string;
}

export function addSetupOptions(command: Command): Command {
  return command
    .option("--setup <file>", "measurement setup (YAML): site, columns, ratios and all that the log does not say")
    .option("--declared <volts>", "declared or nominal voltage of the judged voltages, in V")
    .option("--connection <kind>", "star (judged phase to neutral), delta (phase to phase) or single")
    .option("--zone <zone>", "time zone of stamps without one: Europe/Vienna, UTC, +01:00")
    .option("--date-order <order>", "dmy, mdy or ymd, where the stamps leave it open");
}
