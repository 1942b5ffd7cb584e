/**
 * Writes sample-logs/: `node tests/make-sample-logs.mjs`. Fixed seeds, so that a second run changes nothing.
 * Node 20 cannot run TypeScript by itself; the test runner's own server loads it here, so that the logs and the tests
 * share one writer and nothing has to be built first.
 */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { gunzipSync } from "node:zlib";
import { createViteServer } from "vitest/node";

const folder = new URL("../sample-logs/", import.meta.url);
const server = await createViteServer({
  configFile: false,
  root: new URL("..", import.meta.url).pathname,
  server: { middlewareMode: true, watch: null, ws: false },
  optimizeDeps: { noDiscovery: true, include: [] },
  appType: "custom",
  logLevel: "error",
});
try {
  const { sampleFiles } = await server.ssrLoadModule("/tests/support/sample-logs.ts");
  const { samplePqdif } = await server.ssrLoadModule("/tests/support/sample-pqdif.ts");
  for (const { name, bytes } of [...sampleFiles(), ...(await samplePqdif())]) {
    const path = new URL(name, folder);
    // Packed bytes depend on the zlib in this Node: a packed file that already holds the same text stays as it is.
    const unpacked = (packed) => (name.endsWith(".gz") ? gunzipSync(packed) : Buffer.from(packed));
    const current = existsSync(path) && unpacked(readFileSync(path)).equals(unpacked(bytes));
    if (!current) writeFileSync(path, bytes);
    console.log(`${name}: ${bytes.length} bytes${current ? ", unchanged" : ""}`);
  }
} finally {
  await server.close();
}
