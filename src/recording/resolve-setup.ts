import { UsageError } from "../errors.js";
import { Numeral, Sentence, say, strung, type Text } from "../sentence.js";
import { PHASE_TO_NEUTRAL, PHASE_TO_PHASE, type Phase } from "./quantity.js";
import type { Ledger, Recording } from "./recording.js";
import type { GivenSetup, MeasurementSettings, Setup, Stated } from "./setup.js";
import { photovoltaicText } from "./setup-marks.js";
import { USUAL_MEASUREMENT as USUAL } from "./usual-measurement.js";

/** What the chosen limit set says about the supply it is for. */
export interface SupplyFacts {
  readonly id: string;
  readonly title: string;
  readonly level: "LV" | "MV" | "HV";
  readonly network: "interconnected" | "not-interconnected";
  readonly nominalFrequency: 50 | 60;
  /** Phase to neutral, V; only where the standard names one. */
  readonly nominalVoltage?: number;
}

/** About how high each voltage of the log lies, in V r.m.s.; see voltageLevels. */
type VoltageLevels = ReadonlyMap<Phase, number>;

/** How far the median may lie from the standard's nominal voltage for that to be taken as the declared one: the ±15 % that a supply may reach. */
const NOMINAL_BAND = 0.15;

/**
 * Completes the setup from the log and the limit set. Each fact says where it comes from; a fact that decides the
 * verdict and follows from neither is asked for.
 * @throws UsageError asking for `--declared`, `--connection` or what the decision rule needs
 */
export function resolveSetup(
  given: GivenSetup,
  ruleSetGiven: boolean,
  { ledger, waveforms }: Pick<Recording, "ledger" | "waveforms">,
  levels: VoltageLevels,
  facts: SupplyFacts,
): Setup {
  refuseGuardWithoutUncertainty(given);
  const { timeBase } = ledger;
  const sampled = waveforms.length > 0;
  const connection = resolveConnection(given, levels, loggedPhases(ledger), facts);
  return {
    ...(given.site !== undefined && { site: stated(given.site) }),
    ...(given.measuringPoint !== undefined && { measuringPoint: stated(given.measuringPoint) }),
    ...(given.instrument !== undefined && { instrument: stated(instrumentText(given.instrument)) }),
    ...(given.network !== undefined && { network: stated(networkText(given.network, facts)) }),
    connection,
    declaredVoltage: resolveDeclaredVoltage(given, connection.value, levels, facts),
    nominalFrequency: resolveNominalFrequency(given, facts),
    zone: {
      value: timeBase.zone,
      origin: timeBase.zoneOrigin === "stamps" ? "inferred" : timeBase.zoneOrigin,
      ...(timeBase.zoneOrigin === "stamps" && {
        reason: timeBase.zoneReason ?? say`the stamps carry their own offset from UTC`,
      }),
      ...(timeBase.zoneOrigin === "assumed" && {
        reason: say`the stamps carry no zone and none was given; they are read as UTC (--zone names another)`,
      }),
    },
    intervalLabel: {
      value: timeBase.intervalLabel,
      origin: timeBase.labelOrigin,
      ...(timeBase.labelOrigin === "inferred" && {
        reason: timeBase.labelReason ?? say`the header of the time column says so`,
      }),
      ...(timeBase.labelOrigin === "assumed" && {
        reason: say`the log does not say whether a stamp marks the start or the end of its interval (setup: intervalLabel)`,
      }),
    },
    ruleSet: ruleSetGiven
      ? stated(facts.id)
      : { value: facts.id, origin: "assumed", reason: say`no limit set was named (--rules); this is the default` },
    ...(sampled && { measurement: describeMeasurement(given.measurement) }),
    ...(given.voltageRatio !== undefined && { voltageRatio: stated(new Numeral(String(given.voltageRatio))) }),
    ...(given.currentRatio !== undefined && { currentRatio: stated(new Numeral(String(given.currentRatio))) }),
    ...(given.photovoltaic !== undefined && { photovoltaic: stated(photovoltaicText(given.photovoltaic)) }),
  };
}

function stated<T>(value: T): Stated<T> {
  return { value, origin: "given" };
}

function instrumentText(instrument: NonNullable<GivenSetup["instrument"]>): Text {
  const { type, class: accuracy, serialNumber, firmware, calibrationDate, calibrationDue, certificate } = instrument;
  const parts = [
    type,
    accuracy !== undefined && say`class ${accuracy} (IEC 61000-4-30)`,
    serialNumber !== undefined && say`serial number ${serialNumber}`,
    firmware !== undefined && say`firmware ${firmware}`,
    calibrationDate !== undefined && say`calibrated ${calibrationDate}`,
    calibrationDue !== undefined && say`calibration due ${calibrationDue}`,
    certificate !== undefined && say`certificate ${certificate}`,
  ];
  return strung(
    parts.filter((part) => part !== undefined && part !== false),
    ", ",
  );
}

/** A guard band is as wide as the uncertainty: without one there is none. */
function refuseGuardWithoutUncertainty({ decisionRule, instrument = {} }: GivenSetup): void {
  const { class: accuracy, uncertainty = [] } = instrument;
  if (decisionRule !== "guarded" || accuracy === "A" || accuracy === "S" || uncertainty.length > 0) return;
  throw new UsageError(
    "Guarded acceptance needs the uncertainty of the measurement; give the instrument's class (A or S) or its uncertainty in the setup, or leave the decision rule simple.",
  );
}

/** @throws UsageError where the network is of another kind than the limit set is for */
function networkText(
  { level, interconnected, earthing }: NonNullable<GivenSetup["network"]>,
  facts: SupplyFacts,
): Text {
  if (level !== undefined && level !== facts.level) {
    throw new UsageError(
      `The setup says that the network is ${level}, but ${facts.title} holds for ${facts.level}; correct "network" or give the limit set of its level with --rules.`,
    );
  }
  const isInterconnected = facts.network === "interconnected";
  if (interconnected !== undefined && interconnected !== isInterconnected) {
    throw new UsageError(
      `The setup says that the network is ${interconnected ? "" : "not "}interconnected, but ${facts.title} holds for one that is${isInterconnected ? "" : " not"}; correct "network" or give another limit set with --rules.`,
    );
  }
  const parts = [
    level,
    interconnected !== undefined && (interconnected ? say`interconnected` : say`not interconnected`),
    earthing !== undefined && say`earthing ${earthing}`,
  ];
  return strung(
    parts.filter((part) => part !== undefined && part !== false),
    ", ",
  );
}

/** All thresholds and methods in words, the usual ones included. */
function describeMeasurement(given: MeasurementSettings = {}): Stated<Text> {
  const { reference = USUAL.reference, harmonics = USUAL.harmonics, lamp = USUAL.lamp } = given;
  const { dip = USUAL.dip, swell = USUAL.swell, interruption = USUAL.interruption } = given;
  const { hysteresis = USUAL.hysteresis, transient = USUAL.transient } = given;
  const { rapidVoltageChange = USUAL.rapidVoltageChange, inrushA } = given;
  const { smoothedHarmonics = false, signallingFrequencies = [] } = given;
  const frequencies = strung(
    signallingFrequencies.map((hertz) => new Numeral(String(hertz))),
    ", ",
  );
  const groups = { subgroups: say`harmonics by subgroups`, groups: say`harmonics by groups` }[harmonics];
  const parts = [
    say`dips below ${dip} %, swells above ${swell} %, interruptions below ${interruption} %, hysteresis ${hysteresis} %`,
    reference === "declared" ? say`reference declared voltage` : say`reference sliding voltage`,
    say`rapid voltage changes from ${rapidVoltageChange} %`,
    say`transients from ${transient} % of the crest`,
    inrushA === undefined ? say`inrush currents not looked for` : say`inrush currents from ${inrushA} A`,
    smoothedHarmonics ? say`${groups}, smoothed with ${1.5} s` : groups,
    say`flicker for the ${lamp} V lamp`,
    signallingFrequencies.length === 0
      ? say`mains signalling not measured`
      : say`mains signalling at ${frequencies} Hz`,
  ];
  const value = strung(parts, "; ");
  return Object.keys(given).length > 0
    ? { value, origin: "given" }
    : { value, origin: "assumed", reason: say`the usual settings (setup: measurement)` };
}

/** Phases that any column or channel of the log was taken for, with values or without. */
function loggedPhases({ columns }: Ledger): ReadonlySet<Phase> {
  return new Set(columns.flatMap(({ meaning }) => meaning?.phase ?? []));
}

function resolveConnection(
  given: GivenSetup,
  levels: VoltageLevels,
  logged: ReadonlySet<Phase>,
  facts: SupplyFacts,
): Setup["connection"] {
  const has = (phases: readonly Phase[]) => phases.filter((p) => levels.has(p));
  const neutral = has(PHASE_TO_NEUTRAL);
  const between = has(PHASE_TO_PHASE);
  if (given.connection === "single" && neutral.some((p) => p !== "L1")) {
    throw new UsageError(
      `The connection "single" judges L1 only, but the log holds ${neutral.join(", ")} to neutral; leave --connection out, or say in the setup which columns to ignore.`,
    );
  }
  if (given.connection !== undefined) return stated(given.connection);
  if (between.length > 0 && (facts.level !== "LV" || neutral.length === 0)) {
    const why =
      facts.level === "LV"
        ? say`the log holds voltages between phases only`
        : say`medium and high voltage are judged between phases`;
    return { value: "delta", origin: "inferred", reason: why };
  }
  const others = [...PHASE_TO_NEUTRAL.slice(1), ...PHASE_TO_PHASE].filter((p) => logged.has(p) || levels.has(p));
  if (neutral.length === 1 && neutral[0] === "L1" && others.length === 0) {
    const reason = say`the log holds one voltage only, L1 to neutral; a three-phase supply has two more, which were not logged`;
    return { value: "single", origin: "assumed", reason };
  }
  if (neutral.length > 0) {
    const reason = say`the log holds ${[...new Set([...neutral, ...others])].join(", ")}`;
    return { value: "star", origin: "inferred", reason };
  }
  return { value: "star", origin: "assumed", reason: say`the log holds no voltages that would show the connection` };
}

function resolveDeclaredVoltage(
  given: GivenSetup,
  connection: Setup["connection"]["value"],
  levels: VoltageLevels,
  facts: SupplyFacts,
): Stated<number> {
  if (given.declaredVoltage !== undefined) {
    refuseOtherLevel(given.declaredVoltage, connection, facts);
    return stated(given.declaredVoltage);
  }
  const phases: readonly Phase[] = connection === "delta" ? PHASE_TO_PHASE : PHASE_TO_NEUTRAL;
  const median = middleOf(levels, phases);
  if (facts.nominalVoltage === undefined) {
    const measured = median === undefined ? "" : ` The measured voltages have a median of ${voltsText(median)}.`;
    throw new UsageError(
      `${facts.title} judges against the declared voltage Uc, which the log does not state.${measured} Give it in volts with --declared (it stands in the connection contract).`,
    );
  }
  if (median === undefined) {
    return {
      value: facts.nominalVoltage,
      origin: "assumed",
      reason: say`the nominal voltage of ${titleOf(facts)}; the log holds no voltages to compare it with`,
    };
  }
  // EN 50160 names 230 V; three-wire supplies take it between phases, or 400 V where the neutral is not measured.
  const candidates = connection === "delta" ? [400, facts.nominalVoltage] : [facts.nominalVoltage];
  const nominal = candidates.find((un) => Math.abs(median - un) <= NOMINAL_BAND * un);
  if (nominal === undefined) {
    throw new UsageError(
      `The measured voltages have a median of ${voltsText(median)}, which does not fit the ${candidates.join(" or ")} V of ${facts.title}. Give the declared voltage in volts with --declared, and another limit set with --rules if this is not a low-voltage supply.`,
    );
  }
  return {
    value: nominal,
    origin: "inferred",
    reason: say`nominal voltage of a public low-voltage supply; the median of the measured voltages is ${voltsText(median)}`,
  };
}

/** EN 50160: low voltage up to 1 kV, medium voltage up to 36 kV, high voltage above; nominal voltages between phases. */
const LEVELS = { LV: [0, 1_000], MV: [1_000, 36_000], HV: [36_000, 150_000] } as const;

function refuseOtherLevel(declared: number, connection: Setup["connection"]["value"], facts: SupplyFacts): void {
  const betweenPhases = connection === "delta" ? declared : declared * Math.sqrt(3);
  const [above, upTo] = LEVELS[facts.level];
  if (betweenPhases > above && betweenPhases <= upTo) return;
  throw new UsageError(
    `A declared voltage of ${voltsText(declared)} is not one of ${facts.title}, which holds from ${above} to ${upTo} V between phases; give the limit set of its level with --rules.`,
  );
}

function resolveNominalFrequency(given: GivenSetup, facts: SupplyFacts): Stated<50 | 60> {
  if (given.nominalFrequency !== undefined) return stated(given.nominalFrequency);
  return { value: facts.nominalFrequency, origin: "inferred", reason: say`nominal frequency of ${titleOf(facts)}` };
}

function middleOf(levels: VoltageLevels, phases: readonly Phase[]): number | undefined {
  const known = phases.flatMap((p) => levels.get(p) ?? []).sort((a, b) => a - b);
  return known[known.length >> 1];
}

/** The title of a limit set stands in the catalogs as it is. */
function titleOf({ title }: SupplyFacts): Sentence {
  return new Sentence(title, []);
}

function voltsText(volts: number): Text {
  return volts >= 1000
    ? say`${new Numeral((volts / 1000).toPrecision(4))} kV`
    : say`${new Numeral(volts.toPrecision(4))} V`;
}
