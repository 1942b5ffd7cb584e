import { EVENTS_TABLE } from "./events.js";
import { flickerTables, PLT_TABLE } from "./flicker.js";
import { HARMONICS_TABLE, SIGNALLING_TABLE, THD_TABLE } from "./harmonics.js";
import { FREQUENCY_TABLE, MAGNITUDE_TABLE } from "./magnitude.js";
import { POWER_TABLE } from "./power.js";
import type { ProofTable } from "./proof-table.js";
import { SEQUENCE_TABLE, UNBALANCE_FORMULA_TABLE, UNBALANCE_TABLE } from "./unbalance.js";

/** Every published table that can be run on the user's machine. */
export const PROOF_TABLES: readonly ProofTable[] = [
  FREQUENCY_TABLE,
  MAGNITUDE_TABLE,
  HARMONICS_TABLE,
  THD_TABLE,
  SIGNALLING_TABLE,
  SEQUENCE_TABLE,
  UNBALANCE_TABLE,
  UNBALANCE_FORMULA_TABLE,
  EVENTS_TABLE,
  POWER_TABLE,
  ...flickerTables(),
  PLT_TABLE,
];
