import { analysis } from "./fr/analysis.js";
import { beside } from "./fr/beside.js";
import { charts } from "./fr/charts.js";
import { checks } from "./fr/checks.js";
import { commandLine } from "./fr/command-line.js";
import { events } from "./fr/events.js";
import { limitSets } from "./fr/limit-sets.js";
import { page } from "./fr/page.js";
import { plainAndPrint } from "./fr/plain-and-print.js";
import { pqdif } from "./fr/pqdif.js";
import { rules } from "./fr/rules.js";
import { tables } from "./fr/tables.js";
import { terminalAndLog } from "./fr/terminal-and-log.js";
import { verdict } from "./fr/verdict.js";
import { waveforms } from "./fr/waveforms.js";
import type { Language } from "./language.js";

// Terms of NF EN 50160 and of the IEV in French. From memory, not seen in a source: "surtension temporaire" for a swell
// (the standard: surtension temporaire à fréquence industrielle), "transmission de signaux sur le réseau", "valeur
// marquée" (flagged), "composante directe, inverse, homopolaire", "courant d'appel", "facteur de déplacement" and the
// powers of IEEE 1459, "acceptation avec bande de garde", "conformité conditionnelle" and "non-conformité
// conditionnelle" (ILAC-G8), "réseau non interconnecté", and the French wording of the exclusions in the scope.
// The words of a verdict: conforme, non conforme, indéterminé, non évalué, à titre indicatif.

const NO_BREAK = "\u00a0";

/** How many texts a list has at most whose semicolons are spaced. */
const LONGEST_LIST = 60;

/** French typography: a no-break space before : ; ? ! » % and after «, and the curved apostrophe. */
function spaced(phrase: string): string {
  return phrase
    .replace(/ (?=[:;?!»%])/g, NO_BREAK)
    .replaceAll("« ", `«${NO_BREAK}`)
    .replaceAll("'", "’");
}

/** "{1} ; {2} ; {3}": lists of two and more. */
function lists(): Record<string, string> {
  const places = Array.from({ length: LONGEST_LIST }, (_, i) => `{${i + 1}}`);
  return Object.fromEntries(
    places.slice(1).map((_, i) => [places.slice(0, i + 2).join("; "), places.slice(0, i + 2).join(" ; ")]),
  );
}

const PHRASES: Readonly<Record<string, string>> = {
  ...analysis,
  ...beside,
  ...charts,
  ...checks,
  ...commandLine,
  ...events,
  ...limitSets,
  ...plainAndPrint,
  ...rules,
  ...verdict,
  ...tables,
  ...waveforms,
  ...pqdif,
  ...page,
  ...terminalAndLog,
  ...lists(),
  ": {1}": " : {1}",
  "{1}: {2}": "{1} : {2}",
  "{1}: {2}; {3}.": "{1} : {2} ; {3}.",
  "{1}: {2}, {3}": "{1} : {2}, {3}",
  "{1}; {2}.": "{1} ; {2}.",
  " ({1}): {2}, {3}.": " ({1}) : {2}, {3}.",
  "{1}:": "{1} :",
  "{1} %": "{1} %",
  "“{1}”": "« {1} »",
};

export const FRENCH: Language = {
  id: "fr",
  name: "Français",
  decimalMark: ",",
  phrases: Object.fromEntries(Object.entries(PHRASES).map(([english, french]) => [english, spaced(french)])),
};
