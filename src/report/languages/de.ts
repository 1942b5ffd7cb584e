import { ANALYSIS } from "./de/analysis.js";
import { BESIDE } from "./de/beside.js";
import { CHARTS } from "./de/charts.js";
import { CHECKS } from "./de/checks.js";
import { CLI } from "./de/cli.js";
import { COLUMNS } from "./de/columns.js";
import { EVENTS } from "./de/events.js";
import { FORMATS } from "./de/formats.js";
import { LIMIT_SETS } from "./de/limit-sets.js";
import { PAGE } from "./de/page.js";
import { PLAIN } from "./de/plain.js";
import { PQDIF } from "./de/pqdif.js";
import { REASONS } from "./de/reasons.js";
import { STATEMENT } from "./de/statement.js";
import type { Language } from "./language.js";

/**
 * German. Conformity: "eingehalten", "nicht eingehalten", "nicht entschieden". Names of values ("Zehnminutenwerten")
 * stand in the dative, because every sentence puts them after "von".
 *
 * Terms are those of DIN EN 50160 and DIN EN 61000-4-30. From memory, not confirmed in the German edition:
 * Spannungsüberhöhung (swell), Netz-Signalübertragungsspannung (mains signalling voltage), gekennzeichnet (flagged),
 * Gesamtoberschwingungsgehalt (THD), Nullsystem-Unsymmetrie, Unter- and Überabweichung der Spannung, Nichtwirkleistung
 * and the other powers of IEEE 1459, Schutzband and einfache Akzeptanz (guard band and simple acceptance of ILAC-G8),
 * bedingt eingehalten (conditional pass), Netz ohne Verbindung zum Verbundnetz (not interconnected), besonders abgelegene
 * Netznutzer (special remote users), and the German wording of the exclusions in the scope.
 */
export const GERMAN: Language = {
  id: "de",
  name: "Deutsch",
  decimalMark: ",",
  phrases: {
    // Weekday, date, year and time of day, see local-time.ts.
    "{4} {3} {2} {1}": "{4}, {3} {2}, {1}",
    "{3} {2} {1}": "{3}, {2}, {1}",
    "{2} {1}": "{2}, {1}",
    ...ANALYSIS,
    ...BESIDE,
    ...CHARTS,
    ...CHECKS,
    ...CLI,
    ...COLUMNS,
    ...EVENTS,
    ...FORMATS,
    ...LIMIT_SETS,
    ...PAGE,
    ...PLAIN,
    ...PQDIF,
    ...REASONS,
    ...STATEMENT,
  },
};
