import { analysis } from "./fr/analysis.js";
import { beside } from "./fr/beside.js";
import { charts } from "./fr/charts.js";
import { checks } from "./fr/checks.js";
import { commandLine } from "./fr/command-line.js";
import { events } from "./fr/events.js";
import { formats1 } from "./fr/formats-1.js";
import { formats2 } from "./fr/formats-2.js";
import { formats3 } from "./fr/formats-3.js";
import { limitSets } from "./fr/limit-sets.js";
import { page1 } from "./fr/page-1.js";
import { page2 } from "./fr/page-2.js";
import { plainAndPrint } from "./fr/plain-and-print.js";
import { rules } from "./fr/rules.js";
import { verdict } from "./fr/verdict.js";
import type { Language } from "./language.js";

// Terms of NF EN 50160 and IEC 60050 (IEV) in French. From memory, not seen in a source: "surtension temporaire" for a
// swell (the standard: surtension temporaire à fréquence industrielle), "valeur marquée" for a flagged value,
// "composante inverse / homopolaire", "courant d'appel", "acceptation avec bande de garde" for guarded acceptance,
// "conformité conditionnelle" and "non-conformité conditionnelle" (ILAC-G8), "facteur de déplacement".
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
  ...formats1,
  ...formats2,
  ...formats3,
  ...limitSets,
  ...page1,
  ...page2,
  ...plainAndPrint,
  ...rules,
  ...verdict,
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
