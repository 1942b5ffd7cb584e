import type { Measurements } from "../recording/measurements.js";
import type { Assessment } from "../rules/assessment.js";

/**
 * Turns the result into one output. Pure: computes no verdict, does no I/O. Throws UsageError only where this machine
 * lacks what the output needs (no font for pictures with text).
 */
export interface Renderer {
  /** What `--format` calls it. */
  readonly id: string;
  readonly title: string;
  render(assessment: Assessment, measurements: Measurements, assets: Assets): Promise<readonly RenderedFile[]>;
}

/** A file of the report folder: path inside it and content. */
export interface RenderedFile {
  readonly path: string;
  readonly content: string | Uint8Array;
}

/** Texts that come from installed packages; read by cli/files.ts when a renderer asks, because renderers do no I/O. */
export interface Assets {
  /** Vega for browsers: `vega.min.js`, which lies beside the file that `vega` resolves to. */
  vega(): Promise<string>;
}
