import type { Command } from "commander";
import type { Ending } from "../exit-code.js";
import { type Io, progressBar } from "../io.js";

interface Options {
  readonly key?: string;
  readonly json?: true;
  readonly quiet?: true;
}

/** `mainswitness verify FOLDER [LOG…]`: is a report folder untouched, and do its logs give the same bytes again. */
export function registerVerify(program: Command, io: Io, end: (ending: Ending) => void): void {
  program
    .command("verify")
    .argument("<folder>", "report folder")
    .argument("[log...]", "its logs; without them they are looked for beside the folder, above it and here")
    .description("Check a report folder against its manifest, make the report again from the logs and compare")
    .option("--key <file>", "public key (Ed25519, PEM) that must have signed the manifest")
    .option("--json", "print the answer as JSON")
    .option("--quiet", "no progress")
    .action(async (folder: string, logs: string[], options: Options) => {
      const [{ verifyFolder }, { verificationText }, { publicKeyOf }, { readText }] = await Promise.all([
        import("../verify-folder.js"),
        import("../verification-text.js"),
        import("../../evidence/signature.js"),
        import("../files.js"),
      ]);
      const { key } = options;
      const publicKey = key === undefined ? undefined : publicKeyOf(await readText(key), key);
      const bar = progressBar(io, options.quiet === true);
      try {
        const verification = await verifyFolder(folder, logs, publicKey, bar.show);
        bar.clear();
        io.out(options.json ? `${JSON.stringify(verification, null, 2)}\n` : verificationText(verification));
        if (!verification.holds) end({ kind: "check-failed" });
      } finally {
        bar.clear();
      }
    });
}
