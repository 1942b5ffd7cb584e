import { stringify } from "yaml";
import type { Inspection } from "../inspect.js";
import type { ColumnReading } from "../recording/recording.js";
import { SETUP_HINTS } from "./setup-hints.js";

const OTHERWISE = {
  site: "name of the site",
  measuringPoint: "supply terminals, main distribution board, …",
  connection: "star, delta or single",
  declaredVoltage: "declared voltage in V",
  zone: "Europe/Vienna",
  intervalLabel: "start or end",
} as const;

/**
 * A setup file (YAML) that gives a log back as it was understood: what was given stands as it was, what was inferred or
 * assumed as a comment, to be confirmed; then each column or channel with what it was taken for.
 */
export function setupText(i: Inspection): string {
  const { columns: _columns, channels: _channels, ...given } = i.given;
  const open = Object.entries(OTHERWISE).flatMap(([key, otherwise]) => {
    if (key in given) return [];
    const stated = i.setup?.[key as keyof typeof OTHERWISE];
    if (stated === undefined) return [`# ${key}: ${otherwise}`];
    return [`# ${key}: ${JSON.stringify(stated.value)}  (${stated.origin})`];
  });
  const head = `# Measurement setup for ${i.files.map((f) => f.name).join(", ")}. Lines behind # are not in force: complete and uncover them.`;
  const facts = Object.keys(given).length > 0 ? [stringify(given).trimEnd()] : [];
  return `${[head, ...facts, ...open, ...hintLines(given), ...columnLines(i)].join("\n")}\n`;
}

function hintLines(given: object): string[] {
  const offered = Object.entries(SETUP_HINTS).filter(([key]) => !(key in given));
  return offered.flatMap(([, hint]) => hint.split("\n").map((line) => `# ${line}`));
}

/** Columns, then channels of samples; a header that stands more than once in a file is named by its position. */
function columnLines({ columns, files, sampled }: Inspection): string[] {
  const isChannel = (c: ColumnReading) => sampled || c.sampled === true;
  const channels = columns.filter(isChannel);
  return [
    ...linesOf(
      "column",
      columns.filter((c) => !isChannel(c) && c.use !== "time" && c.use !== "events"),
      columns,
      files.length,
      columnFields,
    ),
    ...linesOf("channel", channels, channels, files.length, channelFields),
  ];
}

function linesOf(
  word: "column" | "channel",
  used: readonly ColumnReading[],
  columns: readonly ColumnReading[],
  files: number,
  fields: (column: ColumnReading) => Record<string, unknown>,
): string[] {
  const written = new Set<string>();
  const lines = used.flatMap((c) => {
    const twice = columns.filter((o) => o.file === c.file && o.header === c.header).length > 1;
    const name = twice ? c.position : c.header;
    const line = `- { ${[`${word}: ${JSON.stringify(name)}`, ...Object.entries(fields(c)).map(pair)].join(", ")} }`;
    if (twice && files > 1) return `  # ${c.file}, column ${c.position}: ${line.slice(2)} (its header stands twice)`;
    if (written.has(String(name))) return [];
    written.add(String(name));
    return `  ${line}`;
  });
  return lines.some((l) => !l.startsWith("  #")) ? [`${word}s:`, ...lines] : [];
}

const pair = ([key, value]: [string, unknown]) => `${key}: ${JSON.stringify(value)}`;

function channelFields({ meaning }: ColumnReading): Record<string, unknown> {
  return meaning === undefined ? { ignore: true } : { quantity: meaning.quantity, phase: meaning.phase };
}

function columnFields({ meaning: m, use }: ColumnReading): Record<string, unknown> {
  if (use === "flag") return { quantity: "flag" };
  if (m === undefined) return { ignore: true };
  const order = m.order === undefined ? {} : { order: m.order };
  return { quantity: m.quantity, phase: m.phase, ...order, statistic: m.statistic, unit: m.writtenUnit };
}
