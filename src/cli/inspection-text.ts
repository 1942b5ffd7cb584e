import type { Inspection, SeriesSummary } from "../inspect.js";
import type { ColumnReading } from "../recording/recording.js";

/** The inspection for a terminal. */
export function inspectionText(i: Inspection): string {
  const used = i.columns.filter((c) => c.meaning !== undefined || c.use !== undefined);
  const unused = i.columns.filter((c) => c.meaning === undefined && c.use === undefined);
  const sections: [string, readonly string[]][] = [
    ["Files", i.files.map((f) => `${f.name}  ${f.format}  ${f.bytes} bytes`)],
    ["Time", timeLines(i)],
    [`Columns understood (${used.length})`, used.map(columnLine)],
    [`Columns not used (${unused.length})`, unused.map(columnLine)],
    ["Measured series", seriesLines(i.series)],
    ["Remarks", i.remarks],
    ["Setup", i.setup === undefined ? [] : Object.entries(i.setup).map(([key, s]) => setupLine(key, s))],
    ["Findings", i.findings.map((f) => `${f.danger === undefined ? "" : "DANGER: "}${f.severity}: ${f.sentence}`)],
    [`Can be assessed with ${i.ruleSet.title}`, i.assessable],
    ["Cannot be assessed", i.notAssessable.map((n) => `${n.requirement}: ${n.reason}`)],
    ["Needed before a verdict", i.question === undefined ? [] : [i.question]],
  ];
  const text = sections
    .filter(([, lines]) => lines.length > 0)
    .map(([title, lines]) => `${title}\n${lines.map((l) => `  ${l}`).join("\n")}\n`)
    .join("\n");
  return printable(text);
}

/** Names out of a log may carry escape sequences; they must not reach the terminal. */
function printable(text: string): string {
  return text.replace(/[^\P{Cc}\n]/gu, "�");
}

function timeLines({ start, end, weeks, timeBase: t }: Inspection): string[] {
  return [
    `from ${start} to ${end}, ${weeks.toFixed(2)} weeks`,
    `stamps: ${t.stampForm}`,
    `zone: ${t.zone} (${t.zoneOrigin})`,
    `a stamp marks the ${t.intervalLabel} of its interval (${t.labelOrigin})`,
  ];
}

function columnLine(c: ColumnReading): string {
  const m = c.meaning;
  const taken =
    m === undefined
      ? (c.use ?? "not used")
      : `${m.quantity}${m.phase === "system" ? "" : ` ${m.phase}`}${m.order === undefined ? "" : ` order ${m.order}`}, ${m.statistic}, ${m.writtenUnit}`;
  return `${c.file} column ${c.position} "${c.header}" → ${taken} (${c.reason})`;
}

/** One line per quantity, phase, interval and origin; harmonic orders are put together. */
function seriesLines(series: readonly SeriesSummary[]): string[] {
  const groups = new Map<string, SeriesSummary[]>();
  for (const s of series) {
    const key = `${s.quantity}${s.phase === "system" ? "" : ` ${s.phase}`}, every ${s.intervalS} s, ${s.origin}`;
    groups.set(key, [...(groups.get(key) ?? []), s]);
  }
  return [...groups].map(([key, all]) => {
    const orders = all.flatMap((s) => (s.order === undefined ? [] : [s.order]));
    const low = Math.min(...all.map((s) => s.min));
    const high = Math.max(...all.map((s) => s.max));
    const range = low <= high ? `, ${Number(low.toPrecision(6))} … ${Number(high.toPrecision(6))} ${all[0]?.unit}` : "";
    const valid = Math.min(...all.map((s) => s.valid));
    const which =
      orders.length === 0 ? "" : `, orders ${Math.min(...orders)} to ${Math.max(...orders)} (${orders.length})`;
    return `${key}${which}: ${valid} valid values${range}`;
  });
}

function setupLine(key: string, s: { value: unknown; origin: string; reason?: string }): string {
  return `${key}: ${s.value} (${s.origin}${s.reason === undefined ? "" : `: ${s.reason}`})`;
}

/** A setup file (YAML) that states what was recognised; what was only assumed stands there as a comment. */
export function setupText(i: Inspection): string {
  const fact = (key: string) =>
    i.setup?.[key as keyof typeof i.setup] as { value: unknown; origin: string } | undefined;
  const line = (key: string, otherwise: string) => {
    const s = fact(key);
    if (s === undefined) return `# ${key}: ${otherwise}`;
    return `${s.origin === "assumed" ? "# " : ""}${key}: ${JSON.stringify(s.value)}${s.origin === "given" ? "" : `  # ${s.origin}`}`;
  };
  const head = [
    `# Measurement setup for ${i.files.map((f) => f.name).join(", ")}. Lines behind # are not in force: complete and uncover them.`,
    line("site", "name of the site"),
    line("measuringPoint", "supply terminals, main distribution board, …"),
    line("connection", "star, delta or single"),
    line("declaredVoltage", "declared voltage in V"),
    line("zone", "Europe/Vienna"),
    line("intervalLabel", "start or end"),
  ];
  const entry = (name: string, c: ColumnReading, fields: Record<string, unknown>) => {
    const body = Object.entries({ [name]: c.header, ...fields }).map(([k, v]) => `${k}: ${JSON.stringify(v)}`);
    return `  - { ${body.join(", ")} }`;
  };
  const series = i.columns.filter((c) => c.use !== "time");
  const lines = i.sampled
    ? ["channels:", ...series.map((c) => entry("channel", c, channelFields(c)))]
    : ["columns:", ...series.map((c) => entry("column", c, columnFields(c)))];
  return `${[...head, ...lines].join("\n")}\n`;
}

function channelFields({ meaning }: ColumnReading): Record<string, unknown> {
  return meaning === undefined ? { ignore: true } : { quantity: meaning.quantity, phase: meaning.phase };
}

function columnFields({ meaning: m, use }: ColumnReading): Record<string, unknown> {
  if (use === "flag") return { quantity: "flag" };
  if (m === undefined) return { ignore: true };
  const order = m.order === undefined ? {} : { order: m.order };
  return { quantity: m.quantity, phase: m.phase, ...order, statistic: m.statistic, unit: m.writtenUnit };
}
