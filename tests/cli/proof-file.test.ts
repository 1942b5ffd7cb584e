import { expect, test } from "vitest";
import { packagedText } from "../../src/cli/files.js";
import { proofFile } from "../../src/cli/proof-file.js";

test("what the PDF report prints of `prove` is what this version measures (npm run proof)", {
  timeout: 600_000,
}, async () => {
  expect(await proofFile()).toBe(await packagedText("assets/proof.json"));
});
