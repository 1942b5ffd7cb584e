import type { Finding } from "../recording/finding.js";
import { SECOND } from "../recording/time.js";
import { say } from "../sentence.js";
import type { Check } from "./check.js";
import { span } from "./common/wording.js";

/** Facts about the stamps that neither the log nor the setup states. Counts over whole weeks hardly depend on them. */
export const timeBase: Check = {
  id: "time-base",
  title: "Whether the zone of the stamps and the end of the interval they mark are known",
  source: "common practice, no source",
  run({ recording }) {
    const { labelOrigin, intervalLabel, zoneOrigin, zone } = recording.ledger.timeBase;
    const found: Finding[] = [];
    const interval = recording.series[0]?.axis.interval;
    if (labelOrigin === "assumed" && interval !== undefined) {
      found.push({
        id: "interval-label-assumed",
        severity: "note",
        sentence: say`The log does not say which end of its intervals the stamps mark; the ${intervalLabel === "start" ? say`start` : say`end`} was assumed, so every time in this report may be off by one interval (${span(interval)}); give intervalLabel in the setup if you know it.`,
        evidence: { assumed: intervalLabel, intervalS: interval / SECOND },
        quantities: [],
        phases: [],
      });
    }
    if (zoneOrigin === "assumed") {
      found.push({
        id: "zone-assumed",
        severity: "note",
        sentence: say`The stamps carry no offset and no zone was given; they were read as ${zone}, so every time in this report may be off by whole hours and a clock change would show as a gap or a repeated hour; give --zone.`,
        evidence: { assumed: zone },
        quantities: [],
        phases: [],
      });
    }
    return found;
  },
};
