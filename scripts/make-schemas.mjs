// Writes the JSON Schemas of results.json and of the setup file from the schemas in src/ (after `npm run build`).
import { writeFileSync } from "node:fs";
import { schemaFiles } from "../dist/cli/schemas.js";

for (const [name, text] of Object.entries(schemaFiles()))
  writeFileSync(new URL(`../schema/${name}`, import.meta.url), text);
