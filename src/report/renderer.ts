import type { Measurements } from "../recording/measurements.js";
import type { Assessment } from "../rules/assessment.js";
import type { Language } from "./languages/language.js";

/** Turns the result into one output. Pure: computes no verdict, does no I/O, depends on nothing of the machine. */
export interface Renderer {
  /** What `--format` calls it. */
  readonly id: string;
  readonly title: string;
  render(assessment: Assessment, measurements: Measurements, context: RenderContext): Promise<readonly RenderedFile[]>;
}

/** A file of the report folder: path inside it and content. */
export interface RenderedFile {
  readonly path: string;
  readonly content: string | Uint8Array;
}

/** The PDF's template, and what `prove` measured with this version. */
export type PackagedFile = "assets/report.typ" | "assets/proof.json";

/** What an output needs beside the result. */
export interface RenderContext {
  readonly language: Language;
  /** Text of setup.yaml, which lies beside the outputs; absent where they are made without a folder. */
  readonly setup?: string;
  /** SHA-256 of results.json, by which the report can be told from any other. */
  readonly resultsSha256?: string;
  /**
   * Text of Vega for browsers, `vega.min.js`, which lies beside the file that `vega` resolves to; read by cli/files.ts
   * when a renderer asks, because renderers do no I/O.
   */
  vega(): Promise<string>;
  /** Paths of the font files (regular, bold) that PDF and PNG are set with, whatever fonts the machine has. */
  readonly fontFiles: readonly string[];
  /** Text of a file that ships with the program, by its path in the package. */
  packaged(path: PackagedFile): Promise<string>;
}
