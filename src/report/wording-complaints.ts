import { HOUR, SECOND } from "../recording/time.js";
import { TimeZone } from "../recording/time-zone.js";
import type { Assessment } from "../rules/assessment.js";
import { Numeral, type Sentence, say, strung, type Text } from "../sentence.js";
import { exactLocalTime, instantOf, type LocalClock, localParts, localTime } from "./local-time.js";
import { formatAgainstLimits, measured } from "./numbers.js";
import { limitText, paragraph, withUnit } from "./wording.js";
import { eventLength, extremeText, kindText, phasesText } from "./wording-events.js";
import { intervalText } from "./wording-interval.js";

/** What the recording says of complaints and where comments stand. */

type Complaint = Assessment["complaints"][number];
type OfPhase = Complaint["phases"][number];
type Covering = OfPhase["intervals"][number];

export const COMPLAINT_WORDS = {
  heading: say`Complaints and what was recorded then`,
  comments: say`Comments`,
  note: say`Times and words of complaints and comments were stated by whoever set up the recording. “Fixed values” are those of the intervals that it falls into; “around” is from five minutes before to five minutes after, by the shortest intervals at hand.`,
  alikeNote: say`Days of one class are Monday to Friday, Saturday, Sunday; public holidays are not known here. That a recording ought to hold such hours is derived from published complaint procedures; common practice, no source.`,
} as const;

export const COMPLAINT_COLUMNS = {
  phase: say`Phase`,
  covered: say`Valid data`,
  value: say`Fixed values`,
  limit: say`Limit`,
  lowest: say`Lowest around`,
  mean: say`Mean around`,
  highest: say`Highest around`,
  interval: say`Values of`,
} as const;

export const COMMENT_COLUMNS = { name: say`In charts`, at: say`Time`, phase: say`Phase`, text: say`Comment` } as const;

/** The clock of the recording's zone, also at times far from the recording. */
export function clockOfMarks({ recording, complaints, comments }: Assessment): LocalClock {
  const times = [...complaints, ...comments].flatMap(({ at, to = at }) => [instantOf(at), instantOf(to)]);
  const all = [...times, instantOf(recording.start), instantOf(recording.end)];
  return TimeZone.open(recording.zone, Math.min(...all), Math.max(...all));
}

/** "Mon 23 Mar 2026 12:30", "Mon 23 Mar 2026 12:30 to 13:00". */
export function markTime(
  clock: LocalClock,
  { at, to }: { readonly at: string; readonly to?: string | undefined },
): Text {
  const from = localTime(clock, instantOf(at));
  if (to === undefined) return from;
  const isSameDay = String(localParts(clock, instantOf(at)).date) === String(localParts(clock, instantOf(to)).date);
  return say`${from} to ${isSameDay ? timeOfDay(clock, to) : localTime(clock, instantOf(to))}`;
}

function timeOfDay(clock: LocalClock, iso: string): string {
  const { hour, minute } = localParts(clock, instantOf(iso));
  return `${String(hour).padStart(2, "0")}:${String(minute).padStart(2, "0")}`;
}

/** The complaint in one sentence: where it lies, what lay outside, what happened, and what stands for it where nothing was recorded. */
export function complaintText(assessment: Assessment, complaint: Complaint, clock: LocalClock): Sentence {
  const { phases } = complaint;
  const covered = phases.filter((phase) => phase.covered);
  const outside = phases.filter((phase) => worstCovering(phase).outside > 0);
  return paragraph(
    placeText(complaint),
    phases.length === 0 && say`No supply voltage was judged.`,
    complaint.within === "recording" && phases.length > 0 && coveredText(covered, phases),
    outside.length > 0 &&
      say`Outside the limit: ${strung(
        outside.map((phase) => outsideText(assessment, phase)),
        "; ",
      )}.`,
    outside.length === 0 && covered.length > 0 && say`The fixed intervals that cover it lie within the limits.`,
    complaint.events.length > 0 && eventsText(assessment, complaint, clock),
    alikeText(complaint, clock),
  );
}

function placeText({ within }: Complaint): Sentence | undefined {
  if (within === "outside") return say`This time lies outside the recording.`;
  return within === "partly" ? say`This time lies partly outside the recording.` : undefined;
}

function coveredText(covered: readonly OfPhase[], all: readonly OfPhase[]): Sentence {
  if (covered.length === all.length) return say`Covered by valid data.`;
  if (covered.length === 0) return say`Not covered by valid data.`;
  return say`Covered by valid data on ${strung(
    covered.map(({ phase }) => phase),
    ", ",
  )} only.`;
}

/** Of a phase's requirements the one with most intervals outside, the first of equals. */
function worstCovering({ intervals }: OfPhase): Covering {
  return intervals.reduce((worst, one) => (one.outside > worst.outside ? one : worst));
}

function limitOf({ weeks }: Assessment, requirement: string, name: OfPhase["phase"]): { min?: number; max?: number } {
  const rows = weeks.flatMap(({ requirements }) => requirements);
  const { min, max } = rows.find(({ id, phase }) => id === requirement && phase === name)?.limit ?? {};
  return { ...(min !== undefined && { min }), ...(max !== undefined && { max }) };
}

function outsideText(assessment: Assessment, phase: OfPhase): Text {
  const { outside, expected } = worstCovering(phase);
  const value = coveringText(assessment, phase);
  return expected === 1
    ? strung([phase.phase, value], " ")
    : say`${phase.phase} in ${outside} of ${expected} intervals (${value})`;
}

/** "254.1 V", "249.0 to 254.6 V"; a dash where nothing is valid. */
export function coveringText(assessment: Assessment, phase: OfPhase): Text {
  const { requirement, lowest, highest } = worstCovering(phase);
  if (lowest === undefined || highest === undefined) return "–";
  const limit = limitOf(assessment, requirement, phase.phase);
  const printed = (value: number) => new Numeral(formatAgainstLimits(value, limit, 1));
  const [low, high] = [printed(lowest), printed(highest)];
  return withUnit(low.digits === high.digits ? high : say`${low} to ${high}`, "V");
}

/** "yes", "no", "4 of 6 intervals". */
export function validText({ covered, intervals }: OfPhase): Text {
  const [first] = intervals;
  if (covered || first === undefined || first.valid === 0) return covered ? say`yes` : say`no`;
  return say`${first.valid} of ${first.expected} intervals`;
}

/** "outside 207.0 to 253.0 V", "within 207.0 to 253.0 V". */
export function againstLimitText(assessment: Assessment, phase: OfPhase): Text {
  const { requirement, valid, outside, expected } = worstCovering(phase);
  if (valid === 0) return "–";
  const limit = limitText({ limit: limitOf(assessment, requirement, phase.phase), unit: "V" });
  if (outside === 0) return say`within ${limit}`;
  return expected === 1 ? say`outside ${limit}` : say`${outside} outside ${limit}`;
}

/** Lowest, mean and highest voltage around a complaint, and the length of the intervals they are of; dashes where none. */
export function aroundTexts({ around }: OfPhase): readonly [Text, Text, Text, Text] {
  if (around === undefined) return ["–", "–", "–", "–"];
  const { lowest, mean, highest, inner, intervalS } = around;
  const volts = (value: number) => withUnit(measured(value, "V"), "V");
  const withInner = (value: number, extreme: number | undefined) =>
    extreme === undefined || extreme === value
      ? volts(value)
      : say`${volts(value)} (inside intervals ${volts(extreme)})`;
  return [
    withInner(lowest, inner?.lowest),
    volts(mean),
    withInner(highest, inner?.highest),
    intervalText(Math.round(intervalS * SECOND)),
  ];
}

function eventsText(assessment: Assessment, { events }: Complaint, clock: LocalClock): Sentence {
  const texts = assessment.events
    .filter((event) => events.some(({ kind, start }) => kind === event.kind && start === event.start))
    .map((event) => {
      const [length, time] = [eventLength(event, NO_BOUNDS), exactLocalTime(clock, instantOf(event.start))];
      return say`${kindText(event)} on ${phasesText(event)}, ${time}, ${length}, ${extremeText(event)}`;
    });
  return say`Events around it: ${strung(texts, "; ")}.`;
}

const NO_BOUNDS = { percent: {}, seconds: {} };

/** What is still taken for the same time of day. */
const NEAR = HOUR;

/** Whether such times were recorded at all, of a complaint that valid data do not cover. */
function alikeText({ at, to = at, alike }: Complaint, clock: LocalClock): Sentence | undefined {
  if (alike === undefined) return undefined;
  const local = (iso: string, by: number) => {
    const { hour, minute } = localParts(clock, instantOf(iso) + by);
    return `${String(hour).padStart(2, "0")}:${String(minute).padStart(2, "0")}`;
  };
  const days = { "working-day": say`Mondays to Fridays`, saturday: say`Saturdays`, sunday: say`Sundays` }[alike.days];
  const [from, until] = [local(at, -NEAR), local(to, NEAR)];
  if (alike.n === 0)
    return say`Of ${days} between ${from} and ${until} nothing valid was recorded either: the recording cannot speak for such times.`;
  return say`Of ${days} between ${from} and ${until} the recording holds ${alike.n} valid intervals.`;
}

/** One line for a terminal. */
export function complaintLine(assessment: Assessment, complaint: Complaint, clock: LocalClock): Text {
  const what = strung([markTime(clock, complaint), complaint.what], ", ");
  return say`complaint, ${what}: ${complaintText(assessment, complaint, clock)}`;
}
