import type { Quantity } from "../recording/quantity.js";
import type { Assessment, Row, Verdict } from "../rules/assessment.js";
import { Numeral, type Sentence, say, type Text } from "../sentence.js";
import { instantOf, type LocalClock, localTime } from "./local-time.js";
import { decimalsOf, exact, formatAgainstLimits, percentOfShare } from "./numbers.js";
import { limitSides } from "./rows.js";
import { limitNumber, quantityName } from "./wording.js";

/** Sentences for people who are no engineers: no symbols, no abbreviations, every unit spelled out. */

export const PLAIN_WORDS = {
  title: say`Supply voltage report: the result in plain words`,
  promised: say`What was promised?`,
  measured: say`What was measured?`,
  sound: say`Was the measuring sound?`,
  broken: say`Was a rule broken?`,
  next: say`What happens next?`,
  rest: say`The other pages hold the same result for engineers, with every limit, count and source.`,
  notStated: say`The place was not stated.`,
  instrumentNotStated: say`Which instrument measured, and when it was last calibrated, was not stated.`,
  nothingFound: say`The program checked the recording for faults of its own and found none.`,
  noMissing: say`No missing value could turn the result.`,
  someMissing: say`Missing values could turn the result in part; the following pages say where.`,
  noEvents: say`No brief drop, brief rise or interruption was found.`,
  noEventsSought: say`Brief drops, brief rises and interruptions cannot be seen in a recording of this kind.`,
  promisedNothing: say`The recording holds nothing that these rules set a limit for.`,
} as const;

const NAMES: Partial<Readonly<Record<Quantity, Sentence>>> = {
  voltage: say`voltage`,
  frequency: say`frequency`,
  "harmonic-voltage": say`single distortions of the wave shape (harmonics)`,
  "thd-voltage": say`distortion of the wave shape as a whole`,
  plt: say`flicker of lamps`,
  pst: say`flicker of lamps over ten minutes`,
  "negative-sequence-unbalance": say`unevenness of the three phases`,
  "mains-signalling": say`control signals on the network`,
};

const UNITS: Readonly<Record<string, (number: Text) => Text>> = {
  V: (number) => say`${number} volts`,
  "%": (number) => say`${number} percent`,
  Hz: (number) => say`${number} hertz`,
};

const AVERAGES: Readonly<Record<number, Sentence>> = {
  10: say`ten-second averages`,
  600: say`ten-minute averages`,
  7200: say`two-hour values`,
};

const PERIODS = { day: say`each day`, week: say`each week`, year: say`each year` } as const;

export function plainName(quantity: Quantity): Text {
  return NAMES[quantity] ?? quantityName(quantity);
}

function amount(number: string, unit: string): Text {
  const digits = new Numeral(number);
  return UNITS[unit]?.(digits) ?? (unit === "1" ? digits : say`${digits} ${unit}`);
}

function averages({ intervalS }: Row): Text {
  return AVERAGES[intervalS] ?? say`values of ${intervalS} seconds each`;
}

/** "the voltage shall lie between 207.0 volts and 253.0 volts in at least 95 of 100 ten-minute averages of each week" */
export function promiseText(row: Row): Text {
  const { limit, unit, share, period } = row;
  const [name, time] = [plainName(row.quantity), PERIODS[period]];
  const bound = (value: number) => amount(String(limitNumber(value, unit)), unit);
  const values = averages(row);
  const percent = new Numeral(exact(percentOfShare(share), 0));
  const [min, max] = [limit.min, limit.max];
  if (min !== undefined && max !== undefined)
    return share === 1
      ? say`Of all ${values} of ${time}: ${name} from ${bound(min)} to ${bound(max)}.`
      : say`Of the ${values} of ${time} at least ${percent} percent: ${name} from ${bound(min)} to ${bound(max)}.`;
  const end = max !== undefined ? say`at most ${bound(max)}` : say`at least ${bound(min ?? 0)}`;
  return share === 1
    ? say`Of all ${values} of ${time}: ${name} ${end}.`
    : say`Of the ${values} of ${time} at least ${percent} percent: ${name} ${end}.`;
}

/** What else there are limits for, as a list of plain names. */
export function alsoPromised(names: Text): Text {
  return say`There are limits as well for: ${names}.`;
}

/** "Voltage on phase L2: 73 of 1008 ten-minute averages were above 253.0 volts; 50 may be. The worst one was 258.1 volts, on Thu 5 Mar 2026 13:10." */
export function brokenText(row: Row, summary: Assessment["summary"], clock: LocalClock): Text {
  const { limit, unit, outside, n, allowed, worst } = row;
  const { above, below } = limitSides(row, summary);
  const bound = (value: number) => amount(String(limitNumber(value, unit)), unit);
  const where =
    limit.max !== undefined && !below
      ? say`above ${bound(limit.max)}`
      : limit.min !== undefined && !above
        ? say`below ${bound(limit.min)}`
        : say`outside ${bound(limit.min ?? 0)} to ${bound(limit.max ?? 0)}`;
  const what = plainPlace(row);
  const count = say`${what}: ${outside} of ${n} ${averages(row)} were ${where}; allowed are ${allowed}.`;
  if (worst === null) return count;
  const value = amount(formatAgainstLimits(worst.value, limit, decimalsOf(unit)), unit);
  return say`${count} The worst one was ${value}, on ${localTime(clock, instantOf(worst.at))}.`;
}

/** "voltage on phase L2", "single distortions of the wave shape (harmonics), number 5, on phase L1" */
function plainPlace({ quantity, phase, order }: Row): Text {
  const name = plainName(quantity);
  const of = order === undefined ? name : say`${name}, number ${order}`;
  return phase === "system" ? of : say`${of} on phase ${phase}`;
}

export function verdictAnswer(verdict: Verdict, rules: Text): Text {
  switch (verdict) {
    case "does-not-conform":
      return say`Yes. The supply did not keep to the rules of “${rules}”.`;
    case "conforms":
      return say`No. In all that could be judged, the supply kept to the rules of “${rules}”.`;
    case "undecided":
      return say`That cannot be said. The recording does not decide whether the supply kept to the rules of “${rules}”.`;
    default:
      return say`That was not judged. The recording holds nothing that decides it by the rules of “${rules}”.`;
  }
}

/** What a lay reader must not miss: that the answer would be another with all that was recorded. */
export function hangsOnExclusions(without: Text): Text {
  return say`This holds only because spans of time were left out, for reasons that somebody stated and nobody measured. With all that was recorded the verdict would be: ${without}.`;
}

export function notJudgedText(count: number): Text {
  return count === 1
    ? say`One of the rules could not be judged with this recording; it is not counted as kept.`
    : say`${count} of the rules could not be judged with this recording; they are not counted as kept.`;
}

export function placeSentence(place: string): Text {
  return say`Measured was the supply at: ${place}.`;
}

export function spanSentence(start: Text, end: Text, zone: string): Text {
  return say`The recording runs from ${start} to ${end}, in the local time of ${zone}.`;
}

export function validSentence({ present, expected, excluded }: Assessment["recording"]["intervals"]): Text {
  return excluded === 0
    ? say`It has ${present} valid ten-minute intervals out of ${expected}.`
    : say`It has ${expected} ten-minute intervals: ${excluded} were left out, and of the others ${present} are valid.`;
}

export function findingsSentence(blocks: number, notes: number): Text {
  if (blocks === 0 && notes === 0) return PLAIN_WORDS.nothingFound;
  if (blocks > 0)
    return say`No, not in all parts. Findings that kept values from being judged: ${blocks}. What they touch is left open and counted neither as good nor as bad.`;
  return say`The program checked the recording for faults of its own. Findings worth knowing: ${notes}. None of them kept a value from being judged.`;
}

export function instrumentSentence(what: Text): Text {
  return say`The instrument, as stated by whoever measured: ${what}.`;
}

export function excludedSentence(count: number): Text {
  return say`Spans of time left out because somebody stated unusual conditions: ${count}. The pages on exclusions say who, why, and what they change.`;
}

const EVENT_COUNTS: Readonly<Record<string, (count: number) => Text>> = {
  interruption: (count) => say`interruptions: ${count}`,
  dip: (count) => say`brief drops of the voltage: ${count}`,
  swell: (count) => say`brief rises of the voltage: ${count}`,
};

/** "brief drops of the voltage: 7" for each kind that a lay reader knows. */
export function eventCounts(events: Assessment["events"]): Text[] {
  return Object.entries(EVENT_COUNTS).flatMap(([kind, text]) => {
    const count = events.filter((event) => event.kind === kind).length;
    return count === 0 ? [] : [text(count)];
  });
}

export function eventsSentence(counts: Text): Text {
  return say`Recorded as well: ${counts}.`;
}

/** What a danger means, by its kind; the measured numbers stand on the following pages. */
export const DANGER_SENTENCES = {
  "open-neutral": say`The voltages moved against each other as they do when the neutral conductor is broken or has come loose. That can destroy appliances, start a fire, and put metal parts of appliances under voltage.`,
  "high-voltage": say`The voltage was so high for so long that it can destroy appliances and start a fire.`,
} as const;

/** What a reader can do, by the verdict. */
export const NEXT_STEPS: Readonly<Record<Verdict, readonly Sentence[]>> = {
  "does-not-conform": [
    say`Give this report and the unchanged log files to the network operator and ask in writing what will be done, and by when.`,
    say`The operator can check each number: the log files have fingerprints in this report, and the same files give the same result.`,
    say`After the cause has been mended, have the supply recorded again for at least a week.`,
  ],
  conforms: [
    say`Nothing has to be mended because of this recording.`,
    say`If the trouble goes on, write down day and time of each occurrence, and have the supply recorded again while it happens.`,
  ],
  undecided: [
    say`Have the supply recorded again for at least a full week without gaps, at the point of supply.`,
    say`Write down day and time of each occurrence of trouble meanwhile.`,
  ],
  "not-assessed": [
    say`Have the supply recorded with an instrument that measures what the rules ask for, for at least a full week.`,
  ],
  "for-information": [say`Have the supply recorded for at least a full week, at the point of supply.`],
};

/** In place of the first of these steps where the supply conforms only without what was excluded. */
export const PROVE_EXCLUSIONS = say`Have the stated reasons for leaving out spans of time proven; the result hangs on them.`;

export const KEEP_LOGS = say`Keep the log files as they are. A changed file can no longer be told from a forged one.`;
