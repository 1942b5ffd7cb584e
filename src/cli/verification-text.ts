import type { Fault } from "../evidence/check-folder.js";
import { printable } from "../report/terminal.js";
import { say, type Text } from "../sentence.js";
import type { Verification } from "./verify-folder.js";

/** What was checked, what holds and what differs, for a terminal: the answer first, one line per difference. */
export function verificationText(v: Verification): string {
  const { faults } = v;
  const lines: readonly (Text | "")[] = [
    answer(v),
    "",
    ...faults.map((fault) => say`  ${faultText(fault)}`),
    ...(faults.length > 0 ? [""] : []),
    say`What was checked`,
    ...checked(v).map((line) => say`  ${line}`),
    "",
    say`To compare with what the other side holds`,
    say`  SHA-256 of manifest.json  ${v.manifest.sha256}`,
    ...(v.results === undefined
      ? []
      : [say`  SHA-256 of results.json   ${v.results} (report.html prints the one it was made with)`]),
  ];
  return printable(`${lines.join("\n")}\n`);
}

function answer({ holds, rerun, faults, signature }: Verification): Text {
  const isProven = signature === "given-key";
  if (holds && rerun.state === "same")
    return say`The report is untouched, and made again from the logs it is the same byte for byte.`;
  if (holds)
    return isProven
      ? say`The report folder is untouched since it was signed. It was not made again from the logs, so its result was not checked.`
      : say`The report folder fits its manifest. It was not made again from the logs, so neither its result nor the manifest itself was checked.`;
  if (faults.length === 0) return say`The report could not be made again from the logs.`;
  const files = new Set(faults.map(({ file }) => file)).size;
  return files === 1 ? say`1 file does not hold.` : say`${files} files do not hold.`;
}

function checked(v: Verification): Text[] {
  return [...(v.writtenBy === undefined ? [] : [folderText(v)]), signatureText(v), rerunText(v), ...versionText(v)];
}

function folderText({ manifest, faults }: Verification): Text {
  const off = faults.filter(({ kind }) => kind === "changed" || kind === "missing").length;
  return say`Folder: of the ${manifest.files} files that manifest.json lists, ${manifest.files - off} have the SHA-256 that it gives.`;
}

function signatureText({ signature }: Verification): Text {
  switch (signature) {
    case "none":
      return say`Signature: none. Whoever changes a file and the manifest alike is found only by making the report again, or by the hash below.`;
    case "own-key":
      return say`Signature: fits the key that the manifest names. Whose key that is shows only --key with the signer's public key.`;
    case "given-key":
      return say`Signature: fits the public key given.`;
    case "faulty":
      return say`Signature: does not hold or could not be checked.`;
  }
}

function rerunText({ rerun }: Verification): Text {
  switch (rerun.state) {
    case "same":
      return say`Re-run: made again from the logs, setup and limit sets; all ${rerun.files} files are the same byte for byte.`;
    case "different":
      return say`Re-run: made again from the logs, setup and limit sets; of ${rerun.files} files ${rerun.same} are the same byte for byte.`;
    case "failed":
      return say`Re-run: stopped: ${rerun.why}`;
    case "not-run":
      if (rerun.why === "manifest") return say`Folder and re-run: not checked, because the manifest does not hold.`;
      if (rerun.why === "inputs")
        return say`Re-run: not done, because the setup or a limit set in the folder does not hold.`;
      return say`Re-run: not done, because these logs were not found unchanged: ${rerun.logs.join(", ")}. Name them after the folder.`;
  }
}

function versionText({ tool, writtenBy: by }: Verification): Text[] {
  if (by === undefined || (by.name === tool.name && by.version === tool.version)) return [];
  return [
    say`Program: the report was written by ${by.name} ${by.version}, this is ${tool.name} ${tool.version}. A re-run that differs may come from that alone.`,
  ];
}

const RERUN: Record<string, Text> = {
  "not made": say`is in the folder, but the re-run does not make it`,
  "not there": say`is made by the re-run, but is not in the folder`,
  "other entries": say`tells otherwise of logs, options, limit sets or files than the re-run`,
};
const SIGNATURE: Record<string, Text> = {
  "not announced": say`a signature is there, but the manifest names no signer`,
  unsigned: say`--key was given, but the report is not signed`,
  missing: say`the manifest names a signer, but the signature is missing`,
  wrong: say`the signature does not fit the manifest`,
  "other key": say`the signature does not fit the manifest and the key given; the manifest names another key`,
};
const INCONSISTENT: Record<string, Text> = {
  unreadable: say`cannot be read as a result`,
  program: say`names another program or version than the manifest`,
  logs: say`names other logs than the manifest`,
  "limit sets": say`names other limit sets than the manifest`,
};

function faultText({ kind, file, expected = "", found, byte, detail = "" }: Fault): Text {
  switch (kind) {
    case "changed":
      return say`changed: ${file}: expected SHA-256 ${expected}, found ${found ?? ""}`;
    case "missing":
      return say`missing: ${file}: expected SHA-256 ${expected}, found no file`;
    case "extra":
      return say`extra: ${file}: expected no such file, found SHA-256 ${found ?? ""}`;
    case "manifest":
      return say`changed: ${file}: it is not as the program wrote it (its own check sum does not fit); found SHA-256 ${found ?? ""}`;
    case "inconsistent":
      return say`contradiction: ${file} ${INCONSISTENT[detail] ?? detail}`;
    case "signature":
      return say`signature: ${file}: ${SIGNATURE[detail] ?? detail}`;
    case "log":
      return expected === ""
        ? say`log: ${file} is not one of the report's logs: found SHA-256 ${found ?? ""}`
        : say`log changed: ${file}: expected SHA-256 ${expected}, found ${found ?? ""}`;
    case "limit-set":
      return found === undefined
        ? say`limit set: ${file}: expected SHA-256 ${expected}, this program has no such set`
        : say`limit set: ${file} of this program: expected SHA-256 ${expected}, found ${found}`;
    case "rerun":
      if (byte === undefined) return say`re-run: ${file} ${RERUN[detail] ?? detail}`;
      return say`re-run: ${file} differs from byte ${byte} on`;
  }
}
