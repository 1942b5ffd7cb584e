import { checkAgainst, parseYaml } from "../checked-yaml.js";
import { UsageError } from "../errors.js";
import { type GivenSetup, setupSchema } from "../recording/setup.js";
import { readText } from "./files.js";
import type { SetupOptions } from "./setup-options.js";

/**
 * The setup file with the options laid over it.
 * @throws UsageError with file, line and column, or naming the option
 */
export async function readSetup(options: SetupOptions): Promise<GivenSetup> {
  const fromFile = options.setup === undefined ? {} : parseSetup(await readText(options.setup), options.setup);
  const given = {
    ...fromFile,
    ...(options.declared !== undefined && { declaredVoltage: volts(options.declared) }),
    ...(options.connection !== undefined && {
      connection: oneOf("--connection", options.connection, ["star", "delta", "single"]),
    }),
    ...(options.zone !== undefined && { zone: options.zone }),
    ...(options.dateOrder !== undefined && {
      dateOrder: oneOf("--date-order", options.dateOrder, ["dmy", "mdy", "ymd"]),
    }),
    ...(options.decisionRule !== undefined && {
      decisionRule: oneOf("--decision-rule", options.decisionRule, ["simple", "guarded"]),
    }),
  };
  return given;
}

export function parseSetup(text: string, name: string): GivenSetup {
  const parsed = parseYaml(text, name);
  // An empty file, or one with comments only, states nothing.
  return checkAgainst(setupSchema, parsed.value ?? {}, parsed.fault);
}

function volts(text: string): number {
  const value = Number(text);
  if (!(value > 0) || !Number.isFinite(value)) {
    throw new UsageError(`--declared ${text} is not a voltage; give volts as a number, such as 230 or 20000.`);
  }
  return value;
}

function oneOf<T extends string>(option: string, text: string, known: readonly T[]): T {
  const found = known.find((k) => k === text);
  if (found === undefined) throw new UsageError(`${option} ${text} is not known; it can be ${known.join(", ")}.`);
  return found;
}
