import { z } from "zod";
import { setupSchema } from "../recording/setup.js";
import { assessmentSchema, RESULT_SCHEMA_VERSION } from "../rules/assessment.js";

/** The JSON Schemas that ship in schema/, by file name; generated, so that code and schema cannot differ. */
export function schemaFiles(): Record<string, string> {
  const text = (schema: z.ZodType, title: string) =>
    `${JSON.stringify({ title, ...z.toJSONSchema(schema) }, null, 2)}\n`;
  return {
    "results.schema.json": text(
      assessmentSchema,
      `results.json of mainswitness, schema version ${RESULT_SCHEMA_VERSION}`,
    ),
    "setup.schema.json": text(setupSchema, "measurement setup of mainswitness"),
  };
}
