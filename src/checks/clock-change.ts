import type { Finding } from "../recording/finding.js";
import type { Ledger, Recording, TimeAxis } from "../recording/recording.js";
import { type Duration, HOUR, type Instant, isoUtc, MINUTE, SECOND } from "../recording/time.js";
import { say, strung } from "../sentence.js";
import type { Check, CheckInput } from "./check.js";
import { counted, span } from "./common/wording.js";

/** How far from the change of the clock its traces may lie: the local hour that is missing or repeated, and one more. */
const NEAR: Duration = 2 * HOUR;
/** A gap or overlap counts as the clock's hour within this margin (60 s of 3600 s; common practice, no source). */
const MARGIN: Duration = MINUTE;
const ONE_HOUR: Duration = HOUR;

/**
 * Traces of winter and summer time in the stamps: rows of the repeated hour that could not be placed, and gaps or
 * overlaps of just the length of a clock change, next to one or wherever the zone was only assumed. None of them
 * blocks: shifting rows by an hour hardly changes a count over a week, and the rows left out count as missing.
 */
export const clockChange: Check = {
  id: "clock-change",
  title: "Winter and summer time: rows that could not be placed, gaps or repeats of one hour",
  source: "common practice, no source; the zone's changes are those of the IANA time zone database",
  run(input) {
    const { ledger } = input.recording;
    return [
      ...unplacedRows(ledger),
      ...ledger.clockChanges.flatMap((change) => atChange(change, input)),
      ...(ledger.timeBase.zoneOrigin === "assumed" ? withoutZone(input) : []),
    ];
  },
};

function unplacedRows({ unplaced, timeBase }: Ledger): Finding[] {
  if (unplaced === 0) return [];
  return [
    {
      id: "unplaced-rows",
      severity: "note",
      sentence: say`${counted(unplaced, "row")} could not be placed, as their stamps fall into the hour that the clocks of ${timeBase.zone} repeat or leave out; they are left out and count as missing; if the recorder's clock does not follow that zone give its own with --zone, a fixed offset such as +01:00 for a clock that stays on winter time.`,
      evidence: { rows: unplaced, zone: timeBase.zone },
      quantities: [],
      phases: [],
    },
  ];
}

function atChange(change: Ledger["clockChanges"][number], { recording }: CheckInput): Finding[] {
  const { zone } = recording.ledger.timeBase;
  const length = Math.abs(change.by);
  const evidence = { at: isoUtc(change.at), byS: change.by / SECOND, zone };
  const what = say`the clocks of ${zone} changed by ${strung([change.by < 0 ? "−" : "+", span(length)])} at ${evidence.at}`;
  const advice = say`if the recorder's clock does not follow ${zone}, give its own zone with --zone, a fixed offset such as +01:00 for a clock that stays on winter time`;
  const near = (t: Instant) => Math.abs(t - change.at) <= NEAR;

  const gap = gapsOfLength(recording, length).find(near);
  if (gap !== undefined) {
    return [
      {
        id: "clock-change-gap",
        severity: "note",
        sentence: say`The log has a gap of ${span(length)} at ${isoUtc(gap)}, and ${what}; most likely the recorder's clock did not change and times on one side are off by as much, unless it was really without supply for just that time; ${advice}.`,
        evidence: { ...evidence, gapAt: isoUtc(gap) },
        quantities: [],
        phases: [],
      },
    ];
  }
  const overlap = overlapsOfLength(recording, length).find(near);
  if (overlap !== undefined) {
    return [
      {
        id: "clock-change-overlap",
        severity: "note",
        sentence: say`From ${isoUtc(overlap)} the log holds ${span(length)} twice with different values, and ${what}; most likely the recorder's clock changed at another time or not at all, unless files of two recorders were mixed; ${advice}.`,
        evidence: { ...evidence, overlapAt: isoUtc(overlap) },
        quantities: [],
        phases: [],
      },
    ];
  }
  const seen = change.seenInLog;
  return [
    {
      id: seen ? "clock-change" : "clock-change-not-seen",
      severity: seen ? "none" : "note",
      sentence: seen
        ? say`In the recording ${what}, and the stamps follow; intervals are counted in UTC, so no hour is missing or counted twice.`
        : say`In the recording ${what}, but the stamps show nothing of it; the recorder's clock may not have changed, so that times on one side are off by as much, or nothing was logged just then; ${advice}.`,
      evidence,
      quantities: [],
      phases: [],
    },
  ];
}

function withoutZone({ recording }: CheckInput): Finding[] {
  const { zone } = recording.ledger.timeBase;
  const found: Finding[] = [];
  const gap = gapsOfLength(recording, ONE_HOUR)[0];
  if (gap !== undefined) {
    found.push({
      id: "one-hour-gap",
      severity: "note",
      sentence: say`The log has a gap of one hour at ${isoUtc(gap)} and its zone was only assumed (${zone}); this may be the change to summer time, after which all times are off by an hour, or the recorder was without supply for an hour; give --zone.`,
      evidence: { gapAt: isoUtc(gap), zone },
      quantities: [],
      phases: [],
    });
  }
  const overlap = overlapsOfLength(recording, ONE_HOUR)[0];
  if (overlap !== undefined) {
    found.push({
      id: "one-hour-overlap",
      severity: "note",
      sentence: say`From ${isoUtc(overlap)} the log holds one hour twice with different values, and its zone was only assumed (${zone}); this may be the change to winter time, or files of two recorders were mixed; give --zone so that the repeated hour can be placed.`,
      evidence: { overlapAt: isoUtc(overlap), zone },
      quantities: [],
      phases: [],
    });
  }
  return found;
}

/** Where gaps of that length begin: rows that are not there, in any table of the log. */
function gapsOfLength({ series }: Recording, length: Duration): Instant[] {
  const found: Instant[] = [];
  for (const { interval, starts } of new Set<TimeAxis>(series.map((s) => s.axis))) {
    for (let i = 1; i < starts.length; i++) {
      const due = (starts[i - 1] as number) + interval;
      if (Math.abs((starts[i] as number) - due - length) <= MARGIN) found.push(due);
    }
  }
  return found.sort((a, b) => a - b);
}

/** Where runs of intervals with disagreeing rows begin that together are that long. */
function overlapsOfLength({ series, ledger }: Recording, length: Duration): Instant[] {
  const conflicts = [...ledger.conflicts].sort((a, b) => a - b);
  const found: Instant[] = [];
  for (const interval of new Set(series.map((s) => s.axis.interval))) {
    let from = 0;
    for (let i = 1; i <= conflicts.length; i++) {
      const [last, next] = [conflicts[i - 1] as number, conflicts[i]];
      if (next !== undefined && next - last === interval) continue;
      const begin = conflicts[from] as number;
      if (Math.abs(last + interval - begin - length) <= MARGIN) found.push(begin);
      from = i;
    }
  }
  return found.sort((a, b) => a - b);
}
