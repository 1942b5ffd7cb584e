export { randomNumbers } from "./log.js";

type Random = (n: number) => number;

/** One to four small injuries. */
export function mutate(bytes: Uint8Array, random: Random): Uint8Array {
  let result = Buffer.from(bytes);
  for (let k = 1 + random(4); k > 0; k--) {
    const at = random(result.length + 1);
    const length = 1 + random(random(4) === 0 ? 60 : 4);
    const [before, after] = [result.subarray(0, at), result.subarray(at)];
    const kind = random(7);
    if (kind === 0 && at < result.length) result[at] = (result[at] as number) ^ (1 << random(8));
    else if (kind === 1) result = Buffer.concat([before, after.subarray(length)]);
    else if (kind === 2)
      result = Buffer.concat([before, Buffer.from(Array.from({ length }, () => random(256))), after]);
    else if (kind === 3) result = Buffer.concat([before, Buffer.from(pick(TOKENS, random)), after]);
    else if (kind === 4) result = Buffer.from(before);
    else if (kind === 5) result = Buffer.concat([before, result.subarray(random(at + 1), at), after]);
    else result = shuffleLines(result, random);
  }
  return result;
}

const TOKENS = [
  '"',
  ";",
  ",",
  "\n",
  "\r",
  "\t",
  "|",
  "-",
  ".",
  "1e308",
  "9".repeat(30),
  "NaN",
  "\u0000",
  "24:00",
  "31.02.2026",
  "2026-03-01 00:10",
  " ",
  "+",
  "é",
  "\ufeff",
  "0",
  "%",
];

export function pick<T>(items: readonly T[], random: Random): T {
  return items[random(items.length)] as T;
}

function shuffleLines(bytes: Buffer, random: Random): Buffer<ArrayBuffer> {
  const lines = bytes.toString("latin1").split("\n");
  const [i, j] = [random(lines.length), random(lines.length)];
  [lines[i], lines[j]] = [lines[j] as string, lines[i] as string];
  return Buffer.from(lines.join("\n"), "latin1");
}
