import type { JudgedRow, Proof } from "../prove/run-tables.js";

const WIDTH = 100;

/** The tables for a terminal. */
export function proofText(proof: Proof): string {
  const tables = proof.tables.flatMap(({ title, source, confirmed, rows }) => [
    title,
    ...wrapped(`${confirmed ? "confirmed" : "not confirmed"}: ${source}.`, WIDTH - 2).map((line) => `  ${line}`),
    ...tableLines(rows),
    "",
  ]);
  return `${[...tables, ...closing(proof)].join("\n")}\n`;
}

function closing({ quick, passed, rows, out, tables }: Proof): string[] {
  const part = quick ? "; --quick runs a part of the rows" : "";
  const unconfirmed = tables.filter(({ confirmed }) => !confirmed).length;
  return [
    passed
      ? `All ${rows} rows are within their tolerance${part}.`
      : `${out} of ${rows} rows are out of tolerance${part}.`,
    `Not confirmed (${unconfirmed} of ${tables.length} tables): expected values, or tolerances for signals whose true value is known, that are from memory because no public document seen prints them.`,
  ].flatMap((sentence) => wrapped(sentence, WIDTH));
}

function tableLines(rows: readonly JudgedRow[]): string[] {
  const cells = rows.map((row) => {
    const decimals = Math.max(0, 2 - Math.floor(Math.log10(row.tolerance)));
    const deviation = row.deviation.toFixed(decimals);
    const isZero = Number(deviation) === 0;
    return [
      row.what,
      `${row.expected.toFixed(decimals)}${unitText(row.unit)}`,
      row.computed.toFixed(decimals),
      isZero ? deviation.replace("-", "") : `${row.deviation > 0 ? "+" : ""}${deviation}`,
      `±${row.tolerance.toFixed(decimals)}`,
      row.within ? "" : "OUT",
    ];
  });
  const lines = [["", "expected", "computed", "deviation", "tolerance", ""], ...cells];
  const widths = lines[0]?.map((_, c) => Math.max(...lines.map((line) => (line[c] as string).length))) ?? [];
  const numbers = (line: readonly string[]) =>
    line
      .slice(1)
      .map((cell, c) => `  ${cell.padStart(widths[c + 1] as number)}`)
      .join("");
  const room = WIDTH - 2 - numbers(["", "", "", "", "", ""]).length;
  const width = Math.min(room, widths[0] as number);
  return lines.flatMap((line) => {
    const what = line[0] as string;
    // A description that is too long stands on a line of its own.
    const [above, beside] = what.length > room ? [[`  ${what}`], ""] : [[], what];
    return [...above, `  ${beside.padEnd(width)}${numbers(line)}`.trimEnd()];
  });
}

function unitText(unit: string): string {
  return unit === "1" ? "" : ` ${unit}`;
}

function wrapped(text: string, width: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines.at(-1);
    if (last === undefined || last.length + 1 + word.length > width) lines.push(word);
    else lines[lines.length - 1] = `${last} ${word}`;
  }
  return lines;
}
