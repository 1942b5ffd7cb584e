import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { schemaFiles } from "../../src/cli/schemas.js";

describe("the schemas in schema/", () => {
  it.each(Object.entries(schemaFiles()))("%s is what the code makes (npm run schemas)", (name, text) => {
    expect(readFileSync(new URL(`../../schema/${name}`, import.meta.url), "utf8")).toBe(text);
  });

  it("refuses unknown keys, so that a typo in a consumer's data is seen", () => {
    const schema = JSON.parse(schemaFiles()["results.schema.json"] ?? "") as {
      additionalProperties: boolean;
      required: string[];
    };
    expect(schema.additionalProperties).toBe(false);
    expect(schema.required).toEqual(
      expect.arrayContaining(["schema", "verdict", "weeks", "sources", "ruleSet", "summary"]),
    );
  });
});
