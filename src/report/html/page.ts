import type { Text } from "../../sentence.js";
import { rowsOf, valuesOf } from "../charts/chart.js";
import type { Language } from "../languages/language.js";
import { fixed, formatAgainstLimits, minus } from "../numbers.js";
import { COMPARISON_WORDS } from "../wording-comparison.js";
import { COMPLAINT_WORDS } from "../wording-complaints.js";
import { DAY_WORDS } from "../wording-days.js";
import { chartWords, HEADINGS } from "../wording-page.js";
import { SHIFT_WORDS } from "../wording-shift.js";
import { SLIDING_WORDS } from "../wording-sliding.js";
import { UNCERTAINTY_HEADING } from "../wording-uncertainty.js";
import { type Html, html, inlineScript, raw } from "./html.js";
import { liveCharts } from "./live/live-charts.js";
import { curveReader, timeReader } from "./live/readers.js";
import { addSpan } from "./live/span.js";
import { makeTip } from "./live/tip.js";
import { STYLE } from "./style.js";

export interface PageParts {
  readonly language: Language;
  readonly title: Text;
  readonly first: Html;
  readonly hasRequirements: boolean;
  /** Where the recording could show events. */
  readonly events: Html | undefined;
  readonly summary: Html | undefined;
  /** What stands beside the verdict; each only where there is something to say. */
  readonly beside: Readonly<Record<"complaints" | "comparison" | "days" | "shift" | "sliding", Html | undefined>>;
  readonly charts: Html | undefined;
  readonly evidence: Html;
  /** For paper only. */
  readonly printed: Html | undefined;
  /** Vega for browsers. */
  readonly vega: string;
}

const LINKS = [
  ["requirements", HEADINGS.requirements],
  ["not-assessed", HEADINGS.notAssessed],
  ["complaints", COMPLAINT_WORDS.heading],
  ["comparison", COMPARISON_WORDS.heading],
  ["events", HEADINGS.events],
  ["summary", HEADINGS.summary],
  ["days", DAY_WORDS.heading],
  ["shift", SHIFT_WORDS.heading],
  ["sliding", SLIDING_WORDS.heading],
  ["charts", HEADINGS.charts],
  ["findings", HEADINGS.findings],
  ["recording", HEADINGS.recording],
  ["setup", HEADINGS.setup],
  ["uncertainty", UNCERTAINTY_HEADING],
  ["rule-set", HEADINGS.ruleSet],
  ["files", HEADINGS.files],
] as const;

/**
 * One file that opens offline. Its policy lets nothing be fetched and only its own script run, named by its hash;
 * 'unsafe-eval' is there because Vega turns the expressions of a chart into functions.
 */
export async function page({
  language,
  title,
  first,
  hasRequirements,
  events,
  summary,
  beside,
  charts,
  evidence,
  printed,
  vega,
}: PageParts): Promise<string> {
  const script = inlineScript(`${vega}\n${startScript(language)}`);
  const policy = `default-src 'none'; style-src 'unsafe-inline'; script-src 'sha256-${await sha256Base64(script)}' 'unsafe-eval'; base-uri 'none'; form-action 'none'`;
  const shown: Readonly<Record<string, Html | boolean | undefined>> = {
    requirements: hasRequirements,
    events,
    summary,
    charts,
    ...beside,
  };
  const links = LINKS.filter(([id]) => !(id in shown) || (shown[id] ?? false) !== false);
  return html`<!DOCTYPE html>
<html lang="${language.id}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${title}</title>
<style>${raw(STYLE)}</style>
</head>
<body>
<main>
${first}
<nav aria-label="${HEADINGS.contents}">${links.map(([id, text]) => html`<a href="#${id}">${text}</a> `)}</nav>
${beside.complaints}${beside.comparison}${events}${summary}${beside.days}${beside.shift}${beside.sliding}
${charts}
${evidence}
${printed}
</main>
<script>${raw(script)}</script>
</body>
</html>
`.markup(language);
}

/** The page carries the text of these functions, so that they are checked and tested like all others. */
function startScript(language: Language): string {
  const tools = [rowsOf, valuesOf, formatAgainstLimits, timeReader, curveReader, addSpan, makeTip];
  const functions = [minus, fixed, ...tools, liveCharts].map(String).join("\n");
  const names = tools.map(({ name }) => name).join(", ");
  return `(() => {\n${functions}\nliveCharts({ vega, words: ${JSON.stringify(chartWords(language))}, ${names} });\n})();`;
}

async function sha256Base64(text: string): Promise<string> {
  const digest = await crypto.subtle.digest("SHA-256", new TextEncoder().encode(text));
  return btoa(String.fromCharCode(...new Uint8Array(digest)));
}
