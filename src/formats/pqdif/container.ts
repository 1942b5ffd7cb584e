import { LogError } from "../../errors.js";
import { say } from "../../sentence.js";
import { Collection, type Tree } from "./collection.js";
import { TAG } from "./identifiers.js";
import type { PqdifContainer } from "./model.js";
import { itemsOf } from "./vector.js";

const TOTAL_FILE = 1;
const RECORD_LEVEL = 2;
const ZLIB = 1;

/**
 * The container record. Its file name is not read: it may hold folders of the writer's computer.
 * @throws LogError for a compression that cannot be read here
 * @throws Damage if the body is no collection
 */
export async function containerOf(tree: Tree, file: string): Promise<PqdifContainer> {
  const root = await Collection.at(tree, 0);
  const style = (await root.number(TAG.CompressionStyleID)) ?? 0;
  const algorithm = (await root.number(TAG.CompressionAlgorithmID)) ?? (style === 0 ? 0 : ZLIB);
  if (style === TOTAL_FILE) {
    throw new LogError(
      file,
      `byte ${root.byte}`,
      "it is compressed as a whole file, a style that the standard has given up: export it with compressed records or without compression",
    );
  }
  if (style === RECORD_LEVEL && algorithm > ZLIB) {
    throw new LogError(
      file,
      `byte ${root.byte}`,
      `its records are compressed by algorithm ${algorithm}, which is not zlib: export it with zlib or without compression`,
    );
  }
  const creation = await root.instant(TAG.Creation);
  const notes = await root.text(TAG.Notes);
  return {
    version: await versionOf(root, tree),
    compression: style === RECORD_LEVEL && algorithm === ZLIB ? "record" : "none",
    ...(creation !== undefined && { creation }),
    ...(notes !== undefined && { notes }),
  };
}

async function versionOf(root: Collection, { body, warnings }: Tree): Promise<number[]> {
  const vector = await root.vector(TAG.VersionInfo);
  const items = vector && (await warnings.tried(() => itemsOf(body, vector, 0, Math.min(4, vector.count))));
  const version = [...(items ?? [])];
  const [major = 1, , compatible = 1] = version;
  if (major !== 1 || compatible !== 1) {
    warnings.add(
      root.byte,
      say`the file is of version ${version.join(".")}, while version 1 is known here; what was found is read`,
    );
  }
  return version;
}
