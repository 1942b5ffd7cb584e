import type { Finding } from "../recording/finding.js";
import { isoUtc } from "../recording/time.js";
import { say } from "../sentence.js";
import type { Check } from "./check.js";

/** An instrument that was not within its calibration interval during the whole recording, by the dates stated; days of UTC. */
export const calibration: Check = {
  id: "calibration",
  title: "Recordings outside the stated calibration interval of the instrument",
  source: "ISO/IEC 17025:2017, 6.4 (from memory); common practice, no source for the dates compared",
  run({ recording, instrument: { calibrationDate, calibrationDue } = {} }) {
    const day = (t: number) => isoUtc(t).slice(0, 10);
    const [first, last] = [day(recording.start), day(recording.end)];
    const note = { id: "calibration", severity: "note", quantities: [], phases: [] } as const;
    const findings: Finding[] = [];
    if (calibrationDue !== undefined && calibrationDue < last) {
      const sentence = say`The calibration of the instrument was due on ${calibrationDue}, and the recording ran until ${last}; the stated uncertainty holds only if a later calibration finds the instrument unchanged.`;
      findings.push({ ...note, sentence, evidence: { due: calibrationDue, end: last } });
    }
    if (calibrationDate !== undefined && calibrationDate > first) {
      const sentence = say`The instrument was calibrated on ${calibrationDate}, after the recording began on ${first}; add an earlier certificate, or that nothing was adjusted in between.`;
      findings.push({ ...note, sentence, evidence: { calibrated: calibrationDate, start: first } });
    }
    return findings;
  },
};
