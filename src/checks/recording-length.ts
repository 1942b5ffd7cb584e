import { SECOND, WEEK } from "../recording/time.js";
import { say } from "../sentence.js";
import type { Check } from "./check.js";
import { percent, span } from "./common/wording.js";

/** A recording shorter than the week over which EN 50160 counts. */
export const recordingLength: Check = {
  id: "recording-length",
  title: "Recordings shorter than a week",
  source: "EN 50160:2010, 4.2 and 5.2: requirements count over a week",
  run({ recording: { start, end, cropped } }) {
    const length = end - start;
    if (length >= WEEK) return [];
    return [
      {
        id: "recording-length",
        severity: "note",
        sentence:
          cropped === undefined
            ? say`The recording is ${span(length)} long, ${percent(length / WEEK)} of the week over which the standard counts; the missing time may hide excesses or dilute those found, so record seven days without a break.`
            : say`The part of the recording that was asked for is ${span(length)} long, ${percent(length / WEEK)} of the week over which the standard counts; the missing time may hide excesses or dilute those found, so assess seven days without a break.`,
        evidence: { lengthS: length / SECOND, weekS: WEEK / SECOND, share: length / WEEK },
        quantities: [],
        phases: [],
      },
    ];
  },
};
