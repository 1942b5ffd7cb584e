import type { Assessment } from "../rules/assessment.js";
import { type Sentence, say, type Text } from "../sentence.js";
import { HEADINGS } from "./wording-page.js";

/** Headings and sentences of the paginated report, as far as it has more than the page for screens. */

export const NOT_STATED = say`not stated`;

export const REPORT_HEADINGS = {
  contents: say`Contents`,
  statement: say`Statement of conformity`,
  everyRow: say`Annex A: every phase and order`,
  proof: say`Annex B: check of the measuring chain`,
  glossary: say`Glossary`,
  instrument: say`Instrument`,
  weeks: say`Weeks`,
  otherEvents: say`The other events`,
} as const;

export const NO_EXCLUSIONS = say`No span of time was excluded.`;

export const ORDER_LIMITS = say`Order: limit`;

export const PAGE_OF = say`Page ${"{page}"} of ${"{pages}"}`;

export function headNumber(number: string | undefined): Text {
  return number === undefined ? say`Report number: not stated` : say`Report number: ${number}`;
}

/** As many digits of a SHA-256 as tell files apart on paper. */
const SHORT_HASH = 16;

export function headHash(sources: Assessment["sources"]): Text {
  const hash = (sources[0]?.sha256 ?? "").slice(0, SHORT_HASH);
  return sources.length === 1
    ? say`SHA-256 of the log begins ${hash}`
    : say`SHA-256 of the first of ${sources.length} log files begins ${hash}`;
}

/** Beside what wording-identity.ts names. */
export const ABOUT = {
  place: say`Where it was measured`,
  item: say`What was measured`,
  method: say`Method`,
  recorded: say`Recorded`,
  external: say`Provided by others`,
} as const;

export function methodText({ standard, edition }: Assessment["ruleSet"]): Text {
  return say`Counting of intervals by the limits of ${standard}, ${edition}; see “${HEADINGS.counting}”`;
}

export function itemText(connection: Text, voltage: Text): Text {
  return say`Voltage of the supply; connection: ${connection}; declared voltage: ${voltage}`;
}

export const EXTERNAL_TEXT = say`The log files and all entries marked “given” were provided by whoever set up the recording; they were not checked here beyond what this report says.`;

export const COPY_NOTE = say`The results relate only to the supply at the place and in the time recorded. This report may be passed on only as a whole, unless whoever authorised it agrees in writing.`;

export const OPINION_NOTE = say`Findings that name a cause are interpretations of the recorded pattern, not measured results.`;

export const SETUP_NOTE = say`Measurement setup of this report, with which it can be made again.`;

export const MACHINE_NOTE = say`The whole result for programs, results.json, is attached to this file.`;

export function endText(number: string | undefined): Text {
  return number === undefined ? say`End of the report` : say`End of report ${number}`;
}

export const INSTRUMENT_WORDS = {
  type: say`Type`,
  class: say`Class (IEC 61000-4-30)`,
  serialNumber: say`Serial number`,
  firmware: say`Firmware`,
  calibrationDate: say`Calibrated on`,
  calibrationDue: say`Calibration due on`,
  certificate: say`Certificate`,
  synchronisation: say`Clock`,
} as const;

export const SENSOR_WORDS = {
  what: say`Sensor`,
  ratio: say`Ratio`,
  class: say`Class`,
  serialNumber: say`Serial number`,
  certificate: say`Certificate`,
} as const;

export function shownEvents(shown: number, all: number): Text {
  return say`${shown} of ${all} events, worst first; results.json (attached) and events.csv hold all.`;
}

export const PROOF_WORDS = {
  table: say`Table`,
  rows: say`Rows`,
  largest: say`Row with the largest deviation`,
  expected: say`Expected`,
  computed: say`Computed`,
  tolerance: say`Tolerance`,
  confirmed: say`Confirmed`,
  yes: say`yes`,
  no: say`no, from memory`,
} as const;

export function proofIntro(rows: number, out: number, version: string): Text {
  return say`Version ${version} of the program measured made signals with known values: ${rows} rows of published tables, of which ${out} were out of tolerance. “prove” runs them on any machine. Of each table the row that came nearest to its tolerance is shown.`;
}

export function missingGlyphs(box: string, codes: string): Text {
  return say`${box} stands for a character that the font of this document lacks (${codes}). report.html and results.json show it.`;
}

export const GLOSSARY: readonly (readonly [Sentence, Sentence])[] = [
  [say`aggregation`, say`combining short measured values into one for a longer interval, for instance ten minutes`],
  [
    say`declared voltage`,
    say`the voltage that the supply is meant to have; usually the nominal voltage of the network`,
  ],
  [say`flagged`, say`marked because a dip, swell or interruption fell into the interval (IEC 61000-4-30)`],
  [say`flicker severity`, say`how strongly changes of the voltage make lamps flicker, as people see it`],
  [say`harmonic`, say`part of the voltage at a multiple of the power frequency; the order says which multiple`],
  [say`interval`, say`the stretch of time that one value stands for`],
  [say`robust`, say`no filling of the missing intervals could change the verdict`],
  [say`SHA-256`, say`a fingerprint of a file: change one letter and it is another one`],
  [say`total harmonic distortion`, say`all harmonics together, in percent of the fundamental`],
  [say`voltage dip`, say`short drop of the voltage below a threshold`],
  [say`voltage swell`, say`short rise of the voltage above a threshold`],
  [
    say`voltage unbalance`,
    say`how unlike the three phases are, as negative-sequence part in percent of the positive-sequence part`,
  ],
];
