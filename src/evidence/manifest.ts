import { z } from "zod";
import { sha256 } from "./sha256.js";

/**
 * manifest.json: what a report folder holds, what it was made from and how, so that anybody can make it again. Nothing in
 * it depends on the clock, the machine or the path.
 */

export const MANIFEST = "manifest.json";
export const SIGNATURE = "manifest.json.sig";
export const SETUP = "setup.yaml";

/** A name without folders: who checks a folder must not be led to other places of the machine by it. */
const fileName = z.string().regex(/^(?!\.{1,2}$)[^/\\\0]+$/);
const identified = { bytes: z.int().min(0), sha256: z.string().regex(/^[0-9a-f]{64}$/) };

const contentSchema = z.strictObject({
  schema: z.literal(1),
  tool: z.strictObject({ name: z.string(), version: z.string() }),
  /** Sorted by name and hash. */
  logs: z.array(z.strictObject({ name: fileName, ...identified })),
  /** Options of `assess` beside those that setup.yaml holds. */
  run: z.strictObject({
    /** Ids of the program's limit sets, or paths of a user's own in this folder; the first decides. */
    rules: z.array(z.string()).min(1),
    /** false: the program's default was taken. */
    rulesGiven: z.boolean(),
    /** As written by the user. */
    from: z.string().optional(),
    to: z.string().optional(),
    formats: z.array(z.string()),
    language: z.string(),
  }),
  /** Each limit-set file in use, inherited ones too: of its text with line endings made LF. */
  limitSets: z.array(
    z.strictObject({
      id: z.string(),
      ...identified,
      /** Copy of a user's own file; absent for those that come with the program. */
      file: z.string().optional(),
    }),
  ),
  /** Every file of the folder except the manifest and its signature, sorted by path. */
  files: z.array(z.strictObject({ path: z.string(), ...identified })),
  /** Public key (Ed25519, SubjectPublicKeyInfo in base64) that signed this manifest. */
  signer: z.string().optional(),
});

const manifestSchema = z.strictObject({ ...contentSchema.shape, sha256: identified.sha256 });

export type Manifest = z.infer<typeof contentSchema>;

export interface FolderContent {
  readonly path: string;
  readonly content: string | Uint8Array;
}

/** Size and hash of a content; a text as UTF-8. */
export function identify(content: string | Uint8Array): { bytes: number; sha256: string } {
  return { bytes: Buffer.byteLength(content), sha256: sha256(content) };
}

/** Entry `sha256` is the hash of the same text without that entry, so that a slip in the manifest is seen as one. */
export function manifestText(content: Manifest): string {
  const text = (value: unknown) => `${JSON.stringify(value, undefined, 2)}\n`;
  const whole = contentSchema.parse(content);
  return text({ ...whole, sha256: sha256(text(whole)) });
}

/** The manifest of a text; undefined unless it is byte for byte one that `manifestText` writes. */
export function readManifest(text: string): Manifest | undefined {
  try {
    const { sha256: _, ...content } = manifestSchema.parse(JSON.parse(text));
    return manifestText(content) === text ? content : undefined;
  } catch {
    return undefined;
  }
}
