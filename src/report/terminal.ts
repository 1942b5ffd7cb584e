import type { Assessment } from "../rules/assessment.js";
import { type Sentence, say, strung, type Text } from "../sentence.js";
import { cellOf, eventTables, worstFirst } from "./events.js";
import { inLanguage, type Language } from "./languages/language.js";
import { exactLocalTime, inLocalTime, instantOf, localClock } from "./local-time.js";
import { byRequirement, decidingWeek, type RequirementRows, requirementTitle } from "./rows.js";
import { besideLines } from "./terminal-beside.js";
import { limitText, paragraph, placeText, UNCONFIRMED_NOTE, verdictWord, weekText, worstText } from "./wording.js";
import { cellCounts } from "./wording-event-tables.js";
import { boundsBy, eventLength, eventsTitle, extremeText, kindText, moreEvents, percentOf } from "./wording-events.js";
import { excludedLine } from "./wording-exclusions.js";
import { DANGER_WORDS, ONLY_WORSE_NOTE, recordedText, SEVERITIES } from "./wording-page.js";
import { isTooShort, statement } from "./wording-statement.js";

const WIDTH = 100;
const HEADER = [say`requirement`, say`worst on`, say`limit`, say`outside`, say`worst`, say`verdict`];
const EVENT_HEADER = [say`event`, say`phases`, say`start`, say`duration`, say`voltage`, say`of ref.`, say`cell`];
const MOST_EVENTS = 5;
const GAP = "  ";
const ABOVE = say`see what kept values from being judged, above.`;
/** The first column gives way and breaks its lines. */
const NARROWEST = 16;

/** A paragraph, which is wrapped, or the rows of a table, which is aligned; an empty text is an empty line. */
type Block = Text | readonly (readonly Text[])[];

/** The result for a terminal: dangers, the statement, the table of requirements, what was not assessed. 100 columns. */
export function terminalText(result: Assessment, language: Language): string {
  const assessment = inLocalTime(result);
  const { sentence, further } = statement(assessment);
  const blocks: readonly Block[] = [
    ...dangerBlocks(assessment),
    paragraph(sentence, ...further),
    recordedText(assessment),
    ...weekBlocks(assessment),
    ...requirementBlocks(assessment),
    ...blockingBlocks(assessment),
    ...openBlocks(assessment),
    ...exclusionBlocks(assessment),
    ...eventBlocks(assessment),
    ...besideLines(assessment),
    ...assessment.notAssessed.map(
      ({ requirement, reason }) => say`not assessed: ${requirementTitle(assessment, requirement)}: ${reason.sentence}`,
    ),
    ...noteBlocks(assessment),
  ];
  const written = blocks.map((block) =>
    isTable(block)
      ? align(block.map((row) => row.map((cell) => inLanguage(cell, language))))
      : wrap(inLanguage(block, language)),
  );
  return `${printable(written.join("\n"))}\n`;
}

function isTable(block: Block): block is readonly (readonly Text[])[] {
  return Array.isArray(block);
}

/** Names out of a log may carry escape sequences; they must not reach the terminal. */
export function printable(text: string): string {
  return text.replace(/[^\P{Cc}\n]/gu, "�");
}

function dangerBlocks({ recording }: Assessment): Block[] {
  const found = recording.findings.filter(({ danger }) => danger !== undefined);
  if (found.length === 0) return [];
  const measured = found.map(({ sentence }) => paragraph(DANGER_WORDS.measured, sentence));
  return [say`${DANGER_WORDS.title}: ${paragraph(...DANGER_WORDS.cautions)}`, ...measured, ""];
}

function blockingBlocks({ recording }: Assessment): Block[] {
  const blocking = recording.findings.filter(({ severity }) => severity === "blocks");
  return blocking.map(({ sentence }) => say`${SEVERITIES.blocks ?? ""}: ${sentence}`);
}

/** That there is more to read: what was found or left out on reading, such as a damaged file, can matter to the reader. */
function noteBlocks({ recording: { findings, remarks } }: Assessment): Block[] {
  const notes = findings.filter(({ severity, danger }) => severity === "note" && danger === undefined).length;
  if (notes + remarks.length === 0) return [];
  return [say`in the report: notes on the recording: ${notes}; remarks on reading the log: ${remarks.length}`];
}

/** Why requirements are undecided, once for all that share a reason; what a finding blocks stands with the finding. */
function openBlocks(assessment: Assessment): Block[] {
  const week = decidingWeek(assessment);
  if (week === undefined || isTooShort(assessment, week)) return [];
  const groups = new Map<string, { readonly why: Text; readonly titles: Text[] }>();
  for (const { title, worst } of byRequirement(assessment, week)) {
    const { verdict, reason } = worst;
    if (verdict !== "undecided" || reason === undefined) continue;
    const why = reason.id === "recording-unsound" ? ABOVE : reason.sentence;
    const group = groups.get(String(why));
    if (group === undefined) groups.set(String(why), { why, titles: [title] });
    else group.titles.push(title);
  }
  return [...groups.values()].map(({ why, titles }) => say`undecided: ${strung(titles, "; ")}: ${why}`);
}

function exclusionBlocks({ exclusions, recording }: Assessment): Block[] {
  return exclusions.map((exclusion) => excludedLine(localClock(recording), exclusion));
}

function requirementBlocks(assessment: Assessment): Block[] {
  const week = decidingWeek(assessment);
  if (week === undefined) return [];
  const groups = byRequirement(assessment, week);
  const marked = groups.some(({ rows }) => rows.some(({ confirmed }) => !confirmed));
  return ["", [HEADER, ...groups.map(line)], "", ...(marked ? [strung(["* ", UNCONFIRMED_NOTE])] : [])];
}

function line({ title, worst, rows }: RequirementRows): Text[] {
  const mark = rows.some(({ confirmed }) => !confirmed) ? "*" : "";
  return [
    title,
    placeText(worst),
    strung([limitText(worst), mark]),
    say`${worst.outside} of ${worst.n}, ${worst.allowed} may`,
    worstText(worst),
    verdictWord(worst.verdict),
  ];
}

/** The worst events and how many there are in which cell. */
function eventBlocks(assessment: Assessment): Block[] {
  const { events, recording } = assessment;
  if (events.length === 0) return [];
  const tables = eventTables(assessment);
  const boundsOf = boundsBy(tables);
  const clock = localClock(recording);
  const rows = worstFirst(events)
    .slice(0, MOST_EVENTS)
    .map((event) => [
      kindText(event),
      event.phases.join(" "),
      exactLocalTime(clock, instantOf(event.start)),
      eventLength(event, boundsOf(event)),
      extremeText(event),
      percentOf(event, boundsOf(event)),
      cellOf(event) ?? "–",
    ]);
  const counts = tables.flatMap(({ table }) => cellCounts(table, events) ?? []);
  return [
    say`${eventsTitle(assessment)}.`,
    [EVENT_HEADER, ...rows],
    ...(events.length > MOST_EVENTS ? [moreEvents(events.length - MOST_EVENTS)] : []),
    ...counts,
    "",
  ];
}

function weekBlocks(assessment: Assessment): Block[] {
  const { weeks } = assessment;
  if (weeks.length < 2) return [];
  const lines = weeks.map((week): Sentence => say`${weekText(assessment, week)}: ${verdictWord(week.verdict)}`);
  return ["", ...lines, ...(weeks.some(({ kind }) => kind === "worst-sliding") ? [ONLY_WORSE_NOTE] : [])];
}

function align(table: readonly (readonly string[])[]): string {
  const widths = (table[0] ?? []).map((_, column) => Math.max(...table.map((row) => row[column]?.length ?? 0)));
  const rest = widths.slice(1).reduce((sum, width) => sum + width + GAP.length, 0);
  const room = Math.max(NARROWEST, Math.min(widths[0] ?? 0, WIDTH - rest));
  // A single word may be longer than the room.
  const first = Math.max(...table.map(([title = ""]) => broken(title, room)[0]?.length ?? 0));
  const lines = table.flatMap(([title = "", ...cells]) => {
    const [start = "", ...more] = broken(title, room);
    const line = [start.padEnd(first), ...cells.map((cell, i) => cell.padEnd(widths[i + 1] ?? 0))].join(GAP);
    return [line.trimEnd(), ...more.map((text) => `  ${text}`)];
  });
  return lines.join("\n");
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
