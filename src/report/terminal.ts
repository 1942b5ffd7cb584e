import type { Assessment } from "../rules/assessment.js";
import { cellOf, eventTables, worstFirst } from "./events.js";
import { exactLocalTime, inLocalTime, instantOf, localClock } from "./local-time.js";
import { byRequirement, decidingWeek, type RequirementRows, requirementTitle } from "./rows.js";
import { limitText, placeText, UNCONFIRMED_NOTE, verdictWord, weekText, worstText } from "./wording.js";
import {
  boundsBy,
  cellCounts,
  eventLength,
  eventsTitle,
  extremeText,
  kindText,
  moreEvents,
  percentOf,
} from "./wording-events.js";
import { DANGER_WORDS, ONLY_WORSE_NOTE, recordedText, SEVERITIES } from "./wording-page.js";
import { isTooShort, statement } from "./wording-statement.js";

const WIDTH = 100;
const HEADER = ["requirement", "worst on", "limit", "outside", "worst", "verdict"];
const EVENT_HEADER = ["event", "phases", "start", "duration", "voltage", "of ref.", "cell"];
const MOST_EVENTS = 5;
const GAP = "  ";
const ABOVE = "see what kept values from being judged, above.";
/** The first column gives way and breaks its lines. */
const NARROWEST = 16;

/** The result for a terminal: dangers, the statement, the table of requirements, what was not assessed. 100 columns. */
export function terminalText(result: Assessment): string {
  const assessment = inLocalTime(result);
  const { sentence, further } = statement(assessment);
  const blocks = [
    ...dangerLines(assessment),
    wrap([sentence, ...further].join(" ")),
    wrap(recordedText(assessment)),
    ...weekLines(assessment),
    ...requirementLines(assessment),
    ...blockLines(assessment),
    ...openLines(assessment),
    ...eventLines(assessment),
    ...assessment.notAssessed.map(({ requirement, reason }) =>
      wrap(`not assessed: ${requirementTitle(assessment, requirement)}: ${reason.sentence}`),
    ),
  ];
  return `${printable(blocks.join("\n"))}\n`;
}

/** Names out of a log may carry escape sequences; they must not reach the terminal. */
export function printable(text: string): string {
  return text.replace(/[^\P{Cc}\n]/gu, "�");
}

function dangerLines({ recording }: Assessment): string[] {
  const found = recording.findings.filter(({ danger }) => danger !== undefined);
  if (found.length === 0) return [];
  const [first = "", ...cautions] = DANGER_WORDS.cautions;
  const measured = found.map(({ sentence }) => wrap(`${DANGER_WORDS.measured} ${sentence}`));
  return [wrap([`${DANGER_WORDS.title}: ${first}`, ...cautions].join(" ")), ...measured, ""];
}

function blockLines({ recording }: Assessment): string[] {
  const blocking = recording.findings.filter(({ severity }) => severity === "blocks");
  return blocking.map(({ sentence }) => wrap(`${SEVERITIES.blocks}: ${sentence}`));
}

/** Why requirements are undecided, once for all that share a reason; what a finding blocks stands with the finding. */
function openLines(assessment: Assessment): string[] {
  const week = decidingWeek(assessment);
  if (week === undefined || isTooShort(assessment, week)) return [];
  const titles = new Map<string, string[]>();
  for (const { title, worst } of byRequirement(assessment, week)) {
    const { verdict, reason } = worst;
    if (verdict !== "undecided" || reason === undefined) continue;
    const why = reason.id === "recording-unsound" ? ABOVE : String(reason.sentence);
    titles.set(why, [...(titles.get(why) ?? []), title]);
  }
  return [...titles].map(([why, shared]) => wrap(`undecided: ${shared.join("; ")}: ${why}`));
}

function requirementLines(assessment: Assessment): string[] {
  const week = decidingWeek(assessment);
  if (week === undefined) return [];
  const groups = byRequirement(assessment, week);
  const table = [HEADER, ...groups.map(line)];
  const marked = groups.some(({ rows }) => rows.some(({ confirmed }) => !confirmed));
  return ["", ...align(table), "", ...(marked ? [wrap(`* ${UNCONFIRMED_NOTE}`)] : [])];
}

function line({ title, worst, rows }: RequirementRows): string[] {
  const mark = rows.some(({ confirmed }) => !confirmed) ? "*" : "";
  return [
    title,
    placeText(worst),
    `${limitText(worst)}${mark}`,
    `${worst.outside} of ${worst.n}, ${worst.allowed} may`,
    worstText(worst),
    verdictWord(worst.verdict),
  ];
}

/** The worst events and how many there are in which cell. */
function eventLines(assessment: Assessment): string[] {
  const { events, recording } = assessment;
  if (events.length === 0) return [];
  const tables = eventTables(assessment);
  const boundsOf = boundsBy(tables);
  const clock = localClock(recording);
  const table = worstFirst(events)
    .slice(0, MOST_EVENTS)
    .map((event) => [
      kindText(event),
      event.phases.join(" "),
      String(exactLocalTime(clock, instantOf(event.start))),
      eventLength(event, boundsOf(event)),
      extremeText(event),
      percentOf(event, boundsOf(event)),
      cellOf(event) ?? "–",
    ]);
  const counts = tables.flatMap(({ table }) => cellCounts(table, events) ?? []);
  return [
    wrap(`${eventsTitle(assessment)}.`),
    ...align([EVENT_HEADER, ...table]),
    ...(events.length > MOST_EVENTS ? [wrap(moreEvents(events.length - MOST_EVENTS))] : []),
    ...counts.map(wrap),
    "",
  ];
}

function weekLines(assessment: Assessment): string[] {
  const { weeks } = assessment;
  if (weeks.length < 2) return [];
  const lines = weeks.map((week) => wrap(`${weekText(assessment, week)}: ${verdictWord(week.verdict)}`));
  return ["", ...lines, ...(weeks.some(({ kind }) => kind === "worst-sliding") ? [wrap(ONLY_WORSE_NOTE)] : [])];
}

function align(table: readonly (readonly string[])[]): string[] {
  const widths = (table[0] ?? []).map((_, column) => Math.max(...table.map((row) => row[column]?.length ?? 0)));
  const rest = widths.slice(1).reduce((sum, width) => sum + width + GAP.length, 0);
  const first = Math.max(NARROWEST, Math.min(widths[0] ?? 0, WIDTH - rest));
  return table.flatMap(([title = "", ...cells]) => {
    const [start = "", ...more] = broken(title, first);
    const line = [start.padEnd(first), ...cells.map((cell, i) => cell.padEnd(widths[i + 1] ?? 0))].join(GAP);
    return [line.trimEnd(), ...more.map((text) => `  ${text}`)];
  });
}

function wrap(text: string): string {
  return broken(text, WIDTH).join("\n");
}

/** Lines of at most `width` characters, broken at spaces; from the second on two shorter, which leaves room for an indent. */
function broken(text: string, width: number): string[] {
  const lines: string[] = [];
  let current = "";
  for (const word of text.split(" ")) {
    const room = lines.length === 0 ? width : width - 2;
    if (current !== "" && current.length + 1 + word.length > room) {
      lines.push(current);
      current = word;
    } else current = current === "" ? word : `${current} ${word}`;
  }
  return [...lines, current];
}
