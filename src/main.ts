#!/usr/bin/env node
import { run } from "./cli/run.js";

process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  // The reader of a pipe has gone, as with `| head`.
  if (error.code === "EPIPE") return;
  process.stderr.write(`mainswitness: the result cannot be written to standard output (${error.message}).\n`);
  process.exit(1);
});

process.exitCode = await run(
  process.argv.slice(2),
  {
    out: (text) => process.stdout.write(text),
    err: (text) => process.stderr.write(text),
    interactive: process.stderr.isTTY === true,
  },
  process.env.MAINSWITNESS_DEBUG === "1",
);
