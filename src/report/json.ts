import type { Assessment } from "../rules/assessment.js";
import type { Renderer } from "./renderer.js";

/** results.json: keys in the order of the schema, two spaces of indentation, a newline at the end. */
export function resultsText(assessment: Assessment): string {
  return `${JSON.stringify(assessment, undefined, 2)}\n`;
}

export const json: Renderer = {
  id: "json",
  title: "results.json: the whole result with every count, for programs",
  render: async (assessment) => [{ path: "results.json", content: resultsText(assessment) }],
};
