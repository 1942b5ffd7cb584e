import { createHash } from "node:crypto";
import type { LogFile } from "../recording/log-file.js";

const BLOCK = 1 << 20;

/** SHA-256 of a whole file as lower-case hex, read in blocks. */
export async function sha256OfFile(file: LogFile): Promise<string> {
  const hash = createHash("sha256");
  for (let offset = 0; offset < file.size; ) {
    const block = await file.read(offset, BLOCK);
    if (block.length === 0) break;
    hash.update(block);
    offset += block.length;
  }
  return hash.digest("hex");
}

/** SHA-256 as lower-case hex; a text as UTF-8. */
export function sha256(content: string | Uint8Array): string {
  return createHash("sha256").update(content).digest("hex");
}
