import type { Measurements } from "../recording/measurements.js";
import type { Assessment } from "../rules/assessment.js";

/** Turns the result into one output. Pure: computes no statistics, does no I/O, throws nothing of its own. */
export interface Renderer {
  readonly id: string;
  readonly title: string;
  /** Files of the report folder: path inside it and content. */
  render(assessment: Assessment, measurements: Measurements): Promise<readonly RenderedFile[]>;
}

export interface RenderedFile {
  readonly path: string;
  readonly content: string | Uint8Array;
}
