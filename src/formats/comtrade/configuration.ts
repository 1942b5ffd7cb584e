import type { Duration } from "../../recording/time.js";
import { say, type Text } from "../../sentence.js";
import { type AnalogChannel, readAnalogLine } from "./channel-lines.js";
import { type ConfigurationText, Lines } from "./configuration-lines.js";
import type { FileRemark } from "./file-remark.js";
import { type DateOrder, readStamp, readTimeCode, type Stamp } from "./stamp.js";
import { fieldsOf, numberOf, quoted } from "./text.js";

export type Edition = 1991 | 1999 | 2013;
export const DATA_KINDS = ["ASCII", "BINARY", "BINARY32", "FLOAT32"] as const;
export type DataKind = (typeof DATA_KINDS)[number];

export interface RateSegment {
  /** Samples per second. */
  readonly rate: number;
  /** Number of the last sample at this rate, counted from the first sample of the record. */
  readonly lastSample: number;
}

/** What a configuration says, brought into the form of the 2013 edition. */
export interface Configuration {
  readonly file: string;
  readonly edition: Edition;
  readonly station: string;
  readonly device: string;
  readonly analog: readonly AnalogChannel[];
  readonly statusCount: number;
  /** Undefined where it is not stated, or stated as 0. */
  readonly nominalFrequency: number | undefined;
  /** Empty: the time stamps in the data are the only time axis. */
  readonly rates: readonly RateSegment[];
  /** Number of the last sample that the configuration promises; 0 where it names none. */
  readonly promisedSamples: number;
  readonly firstSample: Stamp;
  /** The line that the stamp stands in. */
  readonly stampLine: number;
  readonly kind: DataKind;
  /** Factor on the time stamps in the data. */
  readonly timeFactor: number;
  /** Offset of the stamps from UTC; undefined where not stated. */
  readonly timeCode: Duration | undefined;
  readonly remarks: readonly FileRemark[];
}

const EDITIONS: Readonly<Record<string, Edition>> = {
  "": 1991,
  "1991": 1991,
  "1999": 1999,
  "2000": 1999,
  "2001": 1999,
  "2008": 1999,
  "2013": 2013,
  "2017": 2013,
};

/** Far beyond what recorders have. Common practice, no source. */
const [MOST_CHANNELS, MOST_RATES] = [10_000, 10_000];

/**
 * Reads a configuration by IEEE C37.111-1991, -1999 or -2013 (IEC 60255-24). Each line is read by its own shape; what
 * the measurement does not need (ranges, status channels, trigger) never stops it.
 * @throws LogError with the line where a needed fact is missing.
 */
export function readConfiguration(text: ConfigurationText, dateOrder: DateOrder | undefined): Configuration {
  const lines = new Lines(text);
  const remarks: FileRemark[] = [];
  const remark = (sentence: Text) => remarks.push({ file: text.file, text: sentence });

  const heading = fieldsOf(lines.take("the name of the station"));
  const counts = channelCounts(lines);
  const stated = statedEdition(heading, remark);
  const channelLines = takeChannelLines(lines, counts, remark);
  const analog = channelLines.analog.map(({ line, number }, i) => {
    const channel = readAnalogLine(line, i + 1);
    if (channel === undefined) throw lines.error(number, "the conversion factors a and b of a channel cannot be found");
    return channel;
  });
  const edition = editionOf(stated, channelLines.analog[0]?.line, remark);

  const frequency = numberOf(lines.take("the nominal frequency").trim());
  const { rates, promisedSamples } = readRates(lines);
  const stampLine = lines.number;
  const firstSample = readFirstStamp(lines, stated, edition, dateOrder, remark);
  lines.take("the time of the trigger");
  const kind = readKind(lines, text.kind);
  return {
    file: text.file,
    edition,
    station: heading[0] ?? "",
    device: heading[1] ?? "",
    analog,
    statusCount: channelLines.statusCount,
    nominalFrequency: frequency > 0 ? frequency : undefined,
    rates,
    promisedSamples,
    firstSample,
    stampLine,
    kind,
    ...readTail(lines, edition, remark),
    remarks,
  };
}

type Remark = (sentence: Text) => void;

/** The edition that the year in the first line stands for; undefined where there is no year. */
function statedEdition(heading: readonly string[], remark: Remark): Edition | undefined {
  const year = heading.length > 2 ? (heading.at(-1) ?? "") : "";
  if (year === "") return undefined;
  const known = EDITIONS[year];
  if (known === undefined)
    remark(say`the edition ${quoted(year)} of the standard is not known; the layout of 1999 is used.`);
  return known ?? 1999;
}

/** Without a year it is 1991, unless the channel lines have the thirteen fields of 1999. */
function editionOf(stated: Edition | undefined, analogLine: string | undefined, remark: Remark): Edition {
  if (stated !== undefined) return stated;
  if (analogLine === undefined || fieldsOf(analogLine).length < 13) return 1991;
  remark(say`the year of the standard is missing; the channel lines have the form of 1999, which is used.`);
  return 1999;
}

function channelCounts(lines: Lines): { analog: number; status: number } {
  const number = lines.number;
  const line = lines.take("the number of channels").slice(0, 100);
  const analog = /(\d+)\s*A/i.exec(line)?.[1];
  const status = /(\d+)\s*D/i.exec(line)?.[1];
  if (analog === undefined && status === undefined) {
    throw lines.error(number, 'the numbers of channels, such as "8,6A,2D", cannot be found');
  }
  return { analog: Number(analog ?? 0), status: Number(status ?? 0) };
}

interface ChannelLines {
  readonly analog: readonly { readonly line: string; readonly number: number }[];
  readonly statusCount: number;
}

/** The channel lines by the counts; where these do not lead to the nominal frequency, by the number of fields. */
function takeChannelLines(lines: Lines, counts: { analog: number; status: number }, remark: Remark): ChannelLines {
  const begin = lines.number;
  const fields = (ahead: number) => fieldsOf(lines.peek(ahead) ?? "").length;
  let { analog, status } = counts;
  const behind = lines.peek(analog + status);
  const fits = behind !== undefined && fieldsOf(behind).length < 3 && (analog === 0 || fields(analog - 1) >= 7);
  if (!fits) {
    analog = 0;
    while (analog < lines.left && fields(analog) >= 9) analog++;
    status = 0;
    while (analog + status < lines.left && fields(analog + status) >= 3 && fields(analog + status) < 9) status++;
    const stop = lines.peek(analog + status);
    if (analog === 0 || stop === undefined || Number.isNaN(numberOf(stop.trim() || "0"))) {
      throw lines.error(
        begin - 1,
        `${counts.analog} analog and ${counts.status} status channels are promised, but their lines do not follow`,
      );
    }
    remark(
      say`${counts.analog} analog and ${counts.status} status channels are promised, but ${analog} and ${status} are described; the descriptions are used.`,
    );
  }
  if (analog > MOST_CHANNELS) {
    throw lines.error(begin - 1, `${analog} analog channels are more than ${MOST_CHANNELS}`);
  }
  const taken = Array.from({ length: analog + status }, () => ({
    number: lines.number,
    line: lines.take("the last channel"),
  }));
  return { analog: taken.slice(0, analog), statusCount: status };
}

function readRates(lines: Lines): { rates: RateSegment[]; promisedSamples: number } {
  const number = lines.number;
  const count = numberOf(lines.take("the number of sampling rates").trim());
  if (!Number.isInteger(count) || count < 0) throw lines.error(number, "the number of sampling rates cannot be read");
  if (count > MOST_RATES) throw lines.error(number, `${count} sampling rates are more than ${MOST_RATES}`);
  if (count > lines.left) throw lines.error(number, `${count} sampling rates are promised, but do not follow`);
  const rates: RateSegment[] = [];
  for (let i = 0; i < Math.max(1, count); i++) {
    const line = lines.peek() ?? "";
    if (count === 0 && line.includes("/")) break;
    const at = lines.number;
    const [rate, lastSample] = fieldsOf(lines.take("the sampling rates")).map(numberOf);
    if (rate === undefined || !(rate >= 0 && rate < 1e9)) throw lines.error(at, "the sampling rate cannot be read");
    if (lastSample === undefined || !(lastSample >= 0 && Number.isSafeInteger(lastSample))) {
      throw lines.error(at, "the number of the last sample at this rate cannot be read");
    }
    if (count > 1 && lastSample <= (rates.at(-1)?.lastSample ?? 0)) {
      throw lines.error(at, "the number of the last sample does not lie above that of the rate before");
    }
    rates.push({ rate, lastSample });
  }
  const promisedSamples = rates.at(-1)?.lastSample ?? 0;
  return { rates: count === 0 || rates.some(({ rate }) => rate === 0) ? [] : rates, promisedSamples };
}

function readFirstStamp(
  lines: Lines,
  stated: Edition | undefined,
  edition: Edition,
  dateOrder: DateOrder | undefined,
  remark: Remark,
): Stamp {
  const number = lines.number;
  const line = lines.take("the time of the first sample");
  const shortYear = /^\s*\d+\D\d+\D\d{1,2}\s*,/.test(line.slice(0, 100));
  const expected: DateOrder = dateOrder ?? (edition === 1991 || (stated === undefined && shortYear) ? "mdy" : "dmy");
  const stamp = readStamp(line, expected, dateOrder !== undefined);
  if (stamp === undefined) {
    const hint = dateOrder === undefined ? "" : " in the date order that the setup states";
    throw lines.error(number, `the time of the first sample cannot be read${hint} (${quoted(line)})`);
  }
  if (dateOrder === undefined && stamp.order !== expected) {
    remark(say`the date is written ${stamp.order}, not in the order of the edition.`);
  } else if (dateOrder === undefined && stated === undefined && stamp.ambiguous) {
    remark(
      say`the date is read as ${stamp.order}; the configuration names no edition, so state dateOrder in the setup if that is wrong.`,
    );
  }
  return stamp;
}

function readKind(lines: Lines, named: DataKind | undefined): DataKind {
  const number = lines.number;
  const written = (lines.peek() ?? "").trim().toUpperCase();
  const kind = DATA_KINDS.find((known) => known === written) ?? (written === "" ? named : undefined);
  if (kind !== undefined) {
    if (lines.left > 0) lines.take("the kind of data");
    return kind;
  }
  if (written === "") lines.take("the kind of data");
  throw lines.error(number, `the kind of data ${quoted(written)} is none of ${DATA_KINDS.join(", ")}`);
}

/** What may stand behind the kind of data; lines of the vendor's own are passed over. */
function readTail(lines: Lines, edition: Edition, remark: Remark): Pick<Configuration, "timeFactor" | "timeCode"> {
  let timeFactor = 1;
  const next = lines.peek()?.trim();
  if (next !== undefined && !next.includes(",")) {
    lines.take("the time factor");
    const factor = numberOf(next);
    if (factor > 0 && Number.isFinite(factor)) timeFactor = factor;
    else if (edition !== 1991 && next !== "") remark(say`the time factor ${quoted(next)} cannot be used; 1 is taken.`);
  }
  if (edition !== 2013 || lines.peek() === undefined) return { timeFactor, timeCode: undefined };
  const codes = fieldsOf(lines.take("the time code"));
  const timeCode = readTimeCode(codes[0] ?? "");
  if (timeCode === undefined && !/^x?$/i.test(codes[0] ?? "")) {
    remark(say`the time code ${quoted(codes[0] ?? "")} cannot be read; the stamps are taken to name no offset.`);
  }
  const quality = (lines.peek() ?? "").split(",")[0]?.trim() ?? "";
  const poor: Readonly<Record<string, string>> = { "8": "10 ms", "9": "100 ms", A: "1 s", B: "10 s" };
  const within = poor[quality.toUpperCase()];
  if (within !== undefined) remark(say`the recorder states that its clock was right within ${within} only.`);
  if (quality.toUpperCase() === "F")
    remark(say`the recorder states that its clock had failed; the times cannot be trusted.`);
  return { timeFactor, timeCode };
}
