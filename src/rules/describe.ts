import { ratio, times, toNumber } from "../decimal.js";
import { QUANTITIES } from "../recording/quantity.js";
import type { Criterion, Requirement, RuleSet } from "./rule-set.js";

/** A limit set in plain words, for a terminal of 100 columns. */

const WIDTH = 100;
const LABEL_WIDTH = 10;

const LEVELS: Record<RuleSet["level"], string> = { LV: "low voltage", MV: "medium voltage", HV: "high voltage" };

const INTERVALS: Record<Requirement["interval"], string> = {
  "half-cycle": "half-cycle",
  "3s": "3-second",
  "10s": "10-second",
  "1min": "1-minute",
  "10min": "10-minute",
  "2h": "2-hour",
};

/** How many limits and indications a set holds (each harmonic order is one), and how many of them no public document confirms. */
export function countLimits(ruleSet: RuleSet): { readonly limits: number; readonly unconfirmed: number } {
  const all = ruleSet.requirements.flatMap(({ criterion, confirmed }) =>
    criterion.kind === "share-within-by-order"
      ? Object.values(criterion.orders).map((order) => order.confirmed ?? confirmed)
      : [confirmed],
  );
  return { limits: all.length, unconfirmed: all.filter((confirmed) => !confirmed).length };
}

/** The whole set as text, lines of at most 100 characters, without a final line break. */
export function describeRuleSet(ruleSet: RuleSet): string {
  const { id, title, standard, edition, level, network, nominalFrequency, nominalVoltage, requirements } = ruleSet;
  const { limits, unconfirmed } = countLimits(ruleSet);
  const facts = [
    `${standard}, edition ${edition}`,
    LEVELS[level],
    network === "interconnected" ? "interconnected network" : "network not interconnected",
    `${nominalFrequency} Hz`,
    ...(nominalVoltage === undefined ? [] : [`${nominalVoltage} V between phase and neutral`]),
  ];
  const [ownFile, ...inherited] = ruleSet.files;
  return [
    title,
    labelled("id", id),
    labelled("applies to", facts.join("; ")),
    ...(inherited.length === 0 ? [] : [labelled("inherits", inherited.map((file) => file.id).join(", "))]),
    labelled("limits", `${limits} with indications, ${unconfirmed} of them not confirmed by any document seen`),
    ...(ownFile === undefined ? [] : [labelled("SHA-256", ownFile.sha256)]),
    ...section(
      "Part of the verdict",
      requirements.filter(({ binding }) => binding),
      ruleSet,
    ),
    ...section(
      "For information, never part of the verdict",
      requirements.filter(({ binding }) => !binding),
      ruleSet,
    ),
    ...(ruleSet.notes.length === 0 ? [] : ["", "Notes", ...ruleSet.notes.map((note) => wrapped(note, "  - ", "    "))]),
  ].join("\n");
}

function section(heading: string, requirements: readonly Requirement[], ruleSet: RuleSet): string[] {
  if (requirements.length === 0) return [];
  return ["", heading, ...requirements.flatMap((requirement) => ["", ...describeRequirement(requirement, ruleSet)])];
}

function describeRequirement(requirement: Requirement, ruleSet: RuleSet): string[] {
  const { id, title, clause, criterion, source, confirmed, note } = requirement;
  return [
    `${title}${confirmed ? "" : "   NOT CONFIRMED"}`,
    labelled("limit", limitInWords(requirement, ruleSet)),
    ...("share" in criterion ? [labelled("holds for", shareInWords(requirement, criterion.share))] : []),
    labelled("clause", clause),
    labelled("source", source),
    ...(note === undefined ? [] : [labelled("note", String(note))]),
    ...orderRemarks(criterion).map((remark) => labelled("note", remark)),
    labelled("id", id),
  ];
}

/** The limit alone: "90 % to 110 % of the declared voltage (207 V to 253 V at 230 V)". */
export function limitInWords({ quantity, criterion, confirmed }: Requirement, ruleSet: RuleSet): string {
  switch (criterion.kind) {
    case "share-within": {
      if (criterion.of === "own-unit") return range(criterion, QUANTITIES[quantity].unit);
      if (criterion.of === "nominal-frequency") {
        const hertz = range(scaled(criterion, ruleSet.nominalFrequency), "Hz");
        return `${range(criterion, "%")} of the nominal frequency (${hertz})`;
      }
      const percent = `${range(criterion, "%")} of the declared voltage`;
      if (ruleSet.nominalVoltage === undefined) return percent;
      return `${percent} (${range(scaled(criterion, ruleSet.nominalVoltage), "V")} at ${ruleSet.nominalVoltage} V)`;
    }
    case "share-within-by-order": {
      const orders = Object.entries(criterion.orders).sort(([a], [b]) => Number(a) - Number(b));
      const limits = orders.map(([order, limit]) => {
        const mark =
          (limit.confirmed ?? confirmed) === confirmed ? "" : confirmed ? " (not confirmed)" : " (confirmed)";
        return `order ${order}: ${limit.max} %${mark}`;
      });
      return `at most, in % of the fundamental: ${limits.join(", ")}`;
    }
    case "share-below-curve": {
      const points = criterion.points.map(([hertz, level]) => `${level} % at ${hertz} Hz`);
      return `at most, in % of the declared voltage: ${points.join(", ")}; straight lines between on log-log axes`;
    }
    case "event-table": {
      const rows = criterion.rows.map(({ id, from, to }) => {
        if (from === null) return `${id} from ${to} % up`;
        return to === null ? `${id} below ${from} %` : `${id} below ${from} % down to ${to} %`;
      });
      const columns = criterion.columns.map(({ id, from, to }) => `${id} from ${from} s to ${to} s`);
      const table = `rows in % of the declared voltage: ${rows.join(", ")}; columns: ${columns.join(", ")}`;
      return `none; ${criterion.event}s are counted in a table: ${table}`;
    }
    case "indication": {
      const { general, occasional } = criterion;
      const more = occasional === undefined ? "" : `, at times up to ${occasional} %`;
      return `none; generally at most ${general} % of the declared voltage${more}`;
    }
  }
}

function shareInWords({ interval, phases, period, flagged }: Requirement, share: number): string {
  const values = `${INTERVALS[interval]} values of a ${period}`;
  const percent = toNumber(times(ratio(share), ratio(100)));
  const where = phases === "supply" ? ", each phase by itself" : "";
  const flags = flagged === "include" ? "flagged values count" : "flagged values are left out";
  return `${share === 1 ? "all" : `at least ${percent} % of the`} ${values}${where}; ${flags}`;
}

function orderRemarks(criterion: Criterion): string[] {
  if (criterion.kind !== "share-within-by-order") return [];
  return Object.entries(criterion.orders).flatMap(([order, limit]) => {
    const state = limit.confirmed === undefined ? undefined : limit.confirmed ? "confirmed" : "not confirmed";
    const words = [state, limit.source, limit.note].filter((word) => word !== undefined);
    return words.length === 0 ? [] : [`order ${order}: ${words.join("; ")}`];
  });
}

interface Range {
  readonly min?: number | undefined;
  readonly max?: number | undefined;
}

function range({ min, max }: Range, unit: string): string {
  const number = (value: number | undefined) => (unit === "1" ? String(value) : `${value} ${unit}`);
  if (min === undefined) return `at most ${number(max)}`;
  return max === undefined ? `at least ${number(min)}` : `${number(min)} to ${number(max)}`;
}

/** Exact: 110 % of 230 V is 253 V. */
function scaled({ min, max }: Range, whole: number): Range {
  const scale = (percent: number) => toNumber(times(times(ratio(percent), ratio(whole)), ratio("0.01")));
  return { min: min === undefined ? undefined : scale(min), max: max === undefined ? undefined : scale(max) };
}

function labelled(label: string, text: string): string {
  return wrapped(text, `  ${label.padEnd(LABEL_WIDTH)}  `, " ".repeat(LABEL_WIDTH + 4));
}

/** Breaks between words; a space before a unit ("90 %") is no place to break. */
function wrapped(text: string, first: string, further: string): string {
  const words = text.replace(/(\d) (%|V|Hz|s)(?![A-Za-z])/g, "$1\u00a0$2").split(" ");
  const lines: string[] = [];
  let line = first;
  let empty = true;
  for (const word of words) {
    if (!empty && line.length + 1 + word.length > WIDTH) {
      lines.push(line);
      line = further;
      empty = true;
    }
    line += empty ? word : ` ${word}`;
    empty = false;
  }
  return [...lines, line].join("\n").replaceAll("\u00a0", " ");
}
