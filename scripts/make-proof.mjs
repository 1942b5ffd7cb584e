// Writes assets/proof.json, which the PDF report prints: all tables of `prove`, measured by this build (after `npm run build`).
import { writeFileSync } from "node:fs";
import { proofFile } from "../dist/cli/proof-file.js";

writeFileSync(new URL("../assets/proof.json", import.meta.url), await proofFile());
