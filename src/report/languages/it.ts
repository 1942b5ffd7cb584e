import { ANALYSIS, JUDGING } from "./it/analysis.js";
import { COMPARISON, COMPLAINTS, SAMPLING, SLIDING } from "./it/beside.js";
import { CHARTS, DAYS, HOURS, SHIFT, SPECTRA } from "./it/charts.js";
import { CHECKS } from "./it/checks.js";
import { COLUMNS } from "./it/columns.js";
import { COMMAND_LINE } from "./it/command-line.js";
import { EVENT_TABLES, EVENTS } from "./it/events.js";
import { COMTRADE, TABLES } from "./it/formats.js";
import { LIMIT_SETS } from "./it/limit-sets.js";
import { PAGE, REPORT, TERMINAL } from "./it/page.js";
import { PLAIN } from "./it/plain.js";
import { PQDIF } from "./it/pqdif.js";
import { PQDIF_NAMES } from "./it/pqdif-names.js";
import { CALENDAR, LOG, QUANTITIES, SETUP } from "./it/setup.js";
import { COUNTS, EXCLUSIONS, STATEMENT, UNCERTAINTY, WORDING } from "./it/statement.js";
import type { Language } from "./language.js";

/**
 * Terms of CEI EN 50160: buco di tensione, interruzione breve e lunga, variazione rapida della tensione, dissimmetria,
 * severità del flicker, tensione e interruzione as published by the Italian regulator. From memory, not seen in a source:
 * tensione residua, sovratensione temporanea for a swell, severità a breve and a lungo termine, trasmissione di segnali
 * sulla rete, tensione dichiarata, intervallo contrassegnato, corrente di spunto, potenza non attiva, banda di guardia,
 * conformità condizionata (ILAC-G8).
 */
export const ITALIAN: Language = {
  id: "it",
  name: "Italiano",
  decimalMark: ",",
  phrases: {
    ...ANALYSIS,
    ...CALENDAR,
    ...CHARTS,
    ...CHECKS,
    ...COLUMNS,
    ...COMMAND_LINE,
    ...COMPARISON,
    ...COMPLAINTS,
    ...COMTRADE,
    ...COUNTS,
    ...DAYS,
    ...EVENTS,
    ...EVENT_TABLES,
    ...EXCLUSIONS,
    ...HOURS,
    ...JUDGING,
    ...LIMIT_SETS,
    ...LOG,
    ...PAGE,
    ...PLAIN,
    ...PQDIF,
    ...PQDIF_NAMES,
    ...QUANTITIES,
    ...REPORT,
    ...SAMPLING,
    ...SETUP,
    ...SHIFT,
    ...SLIDING,
    ...SPECTRA,
    ...STATEMENT,
    ...TABLES,
    ...TERMINAL,
    ...UNCERTAINTY,
    ...WORDING,
  },
};
