import { phasesOf } from "./phases.js";
import type { Scenario, ScenarioPhase } from "./scenario.js";
import { endOf } from "./spans.js";

export interface ScenarioFault {
  readonly path: readonly PropertyKey[];
  readonly what: string;
}

interface Timed {
  readonly path: readonly PropertyKey[];
  readonly fromS: number;
  readonly toS: number;
  readonly phases: readonly ScenarioPhase[];
}

/** The first thing that a schema cannot see: what contradicts the connection, the length, the sampling rate or another entry. */
export function faultOf(scenario: Scenario): ScenarioFault | undefined {
  for (const check of [
    logs,
    frequency,
    voltage,
    currents,
    phaseNames,
    times,
    overlaps,
    interharmonics,
    modulation,
    band,
  ]) {
    const fault = check(scenario);
    if (fault !== undefined) return fault;
  }
  return undefined;
}

function logs({ samplesPerSecond, intervalLogs }: Scenario): ScenarioFault | undefined {
  if (samplesPerSecond !== undefined || intervalLogs.length > 0) return undefined;
  return {
    path: [],
    what: 'there is nothing to write; give "samplesPerSecond" for a log of the waveforms or "intervalLogs"',
  };
}

/** Two sines of one frequency would add up by their angles, and the truth counts them as two. */
function interharmonics({ frequency: course, voltage: u }: Scenario): ScenarioFault | undefined {
  if (typeof course !== "number") return undefined;
  const i = u.interharmonics.findIndex(({ hertz }) => Number.isInteger(hertz / course));
  return i < 0
    ? undefined
    : {
        path: ["voltage", "interharmonics", i, "hertz"],
        what: 'it is a multiple of the frequency; put it under "harmonics"',
      };
}

function frequency({ frequency: course }: Scenario): ScenarioFault | undefined {
  if (typeof course === "number") return undefined;
  const i = course.findIndex(({ atS }, k) => k > 0 && atS <= (course[k - 1]?.atS as number));
  return i < 0 ? undefined : { path: ["frequency", i, "atS"], what: "the points must come in the order of time" };
}

function voltage({ voltage: { volts, phases, unbalance }, connection }: Scenario): ScenarioFault | undefined {
  const path = ["voltage"];
  if ((volts === undefined) === (phases === undefined)) {
    return { path, what: 'give either "volts" for all phases or "phases"' };
  }
  if (phases !== undefined && connection === "delta") {
    return { path: [...path, "phases"], what: 'a log of voltages phase to phase takes "volts" and "unbalance"' };
  }
  const missing = phasesOf({ connection }).find((p) => phases !== undefined && phases[p] === undefined);
  if (missing !== undefined) return { path: [...path, "phases"], what: `${missing} is missing; add it` };
  if (unbalance === undefined) return undefined;
  if (phases !== undefined || connection === "single") {
    return { path: [...path, "unbalance"], what: 'an unbalance goes with "volts" and three phases; take it out' };
  }
  if (connection === "delta" && unbalance.zeroPercent > 0) {
    return {
      path: [...path, "unbalance", "zeroPercent"],
      what: "voltages phase to phase have no zero sequence; take it out",
    };
  }
  return undefined;
}

function currents({ currents: given, connection }: Scenario): ScenarioFault | undefined {
  if (given === undefined) return undefined;
  const { amperes, phases } = given;
  if ((amperes === undefined) === (phases === undefined)) {
    return { path: ["currents"], what: 'give either "amperes" for all phases or "phases"' };
  }
  const missing = phasesOf({ connection }).find((p) => phases !== undefined && phases[p] === undefined);
  return missing && { path: ["currents", "phases"], what: `${missing} is missing; add it` };
}

/** Every entry that names phases, with its place. */
function phaseNames({ voltage: u, currents: i, connection, ...rest }: Scenario): ScenarioFault | undefined {
  if (connection !== "single") return undefined;
  const lists = {
    voltage: { harmonics: u.harmonics, interharmonics: u.interharmonics, steps: u.steps },
    currents: { harmonics: i?.harmonics ?? [], steps: i?.steps ?? [] },
  };
  const named: [PropertyKey[], readonly string[]][] = [
    ...Object.entries(lists).flatMap(([group, byName]) =>
      Object.entries(byName).flatMap(([name, list]) => placed([group, name], list)),
    ),
    ...placed(["modulation"], rest.modulation),
    ...placed(["dips"], rest.dips),
    ...placed(["swells"], rest.swells),
    [["voltage", "phases"], Object.keys(u.phases ?? {})],
    [["currents", "phases"], Object.keys(i?.phases ?? {})],
  ];
  const wrong = named.find(([, phases]) => phases.some((p) => p !== "L1"));
  return wrong && { path: wrong[0], what: "with one phase there is L1 only" };
}

function placed(path: PropertyKey[], list: readonly { readonly phases?: readonly string[] | undefined }[]) {
  return list.map(({ phases }, i): [PropertyKey[], readonly string[]] => [[...path, i, "phases"], phases ?? []]);
}

/** A difference of two phases that are modulated apart has no simple envelope. */
function modulation({ connection, modulation: list }: Scenario): ScenarioFault | undefined {
  const i = list.findIndex(({ phases }) => connection === "delta" && phases !== undefined);
  return i < 0
    ? undefined
    : {
        path: ["modulation", i, "phases"],
        what: "in a log of voltages phase to phase all phases are modulated; take it out",
      };
}

function times(scenario: Scenario): ScenarioFault | undefined {
  const late = [...eventsOf(scenario), ...modulationsOf(scenario)].find(({ toS }) => toS > scenario.durationS);
  if (late !== undefined) {
    return { path: late.path, what: `it ends after the recording, which is ${scenario.durationS} s long` };
  }
  const backward = modulationsOf(scenario).find(({ fromS, toS }) => toS <= fromS);
  if (backward !== undefined) return { path: backward.path, what: "it must end after its begin" };
  const lists = { voltage: scenario.voltage.steps, currents: scenario.currents?.steps ?? [] };
  for (const [group, steps] of Object.entries(lists)) {
    const i = steps.findIndex(({ atS }) => atS >= scenario.durationS);
    if (i >= 0) return { path: [group, "steps", i, "atS"], what: "it lies beyond the end of the recording" };
  }
  return undefined;
}

function overlaps(scenario: Scenario): ScenarioFault | undefined {
  for (const [list, what] of [
    [eventsOf(scenario), "another dip, swell or interruption lasts on the same phase"],
    [modulationsOf(scenario), "another modulation lasts on the same phase"],
  ] as const) {
    const later = list.find((b, k) =>
      list
        .slice(0, k)
        .some((a) => a.fromS < b.toS && b.fromS < a.toS && a.phases.some((phase) => b.phases.includes(phase))),
    );
    if (later !== undefined) return { path: later.path, what: `${what} at the same time; move one of them` };
  }
  return undefined;
}

function band({ samplesPerSecond, frequency: course, voltage: u, currents: i }: Scenario): ScenarioFault | undefined {
  if (samplesPerSecond === undefined) return undefined;
  const half = samplesPerSecond / 2;
  const highest = typeof course === "number" ? course : Math.max(...course.map(({ hertz }) => hertz));
  const what = `it lies above half the sampling rate, ${half} Hz, and would show as another frequency`;
  if (highest >= half) return { path: ["samplesPerSecond"], what: "half of it must be above the fundamental" };
  for (const [group, list] of [
    ["voltage", u.harmonics],
    ["currents", i?.harmonics ?? []],
  ] as const) {
    const k = list.findIndex(({ order }) => order * highest >= half);
    if (k >= 0) return { path: [group, "harmonics", k, "order"], what };
  }
  const k = u.interharmonics.findIndex(({ hertz }) => hertz >= half);
  return k < 0 ? undefined : { path: ["voltage", "interharmonics", k, "hertz"], what };
}

function eventsOf(scenario: Scenario): Timed[] {
  return (["dips", "swells", "interruptions"] as const).flatMap((list) =>
    scenario[list].map((event, i) => ({
      path: [list, i],
      fromS: event.atS,
      toS: endOf(event.atS, event.durationS),
      phases: phasesOf(scenario, "phases" in event ? event.phases : undefined),
    })),
  );
}

function modulationsOf(scenario: Scenario): Timed[] {
  return scenario.modulation.map(({ fromS, toS = scenario.durationS, phases }, i) => ({
    path: ["modulation", i],
    fromS,
    toS,
    phases: phasesOf(scenario, phases),
  }));
}
