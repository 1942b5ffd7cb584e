import { say, strung, type Text } from "../../sentence.js";

/** What is to be said of one file, without its name. */
export interface FileRemark {
  readonly file: string;
  readonly text: Text;
}

/** Remarks that differ only in the file become one; each begins with the file's name. */
export function together(remarks: readonly FileRemark[]): Text[] {
  const byText = new Map<string, [FileRemark, ...FileRemark[]]>();
  for (const remark of remarks) {
    const same = byText.get(String(remark.text));
    if (same === undefined) byText.set(String(remark.text), [remark]);
    else same.push(remark);
  }
  return [...byText.values()].map(([{ file, text }, ...others]) => {
    if (others.length === 0) return strung([file, text], ": ");
    return others.length === 1
      ? say`${file} and 1 other file: ${text}`
      : say`${file} and ${others.length} other files: ${text}`;
  });
}
