import type { Measurements } from "../../recording/measurements.js";
import { HOUR } from "../../recording/time.js";
import type { Assessment } from "../../rules/assessment.js";
import type { Text } from "../../sentence.js";
import { oncePer } from "../once.js";
import { isUndecided } from "../rows.js";
import { subjectHeading } from "../wording-charts.js";
import { HARMONIC_WORDS } from "../wording-harmonics.js";
import { SPECTRUM_WORDS } from "../wording-spectrum.js";
import type { Chart, ChartSection } from "./chart.js";
import { dayHourMap } from "./day-hour-map.js";
import { harmonicsByOrder } from "./harmonics.js";
import { profile } from "./profile.js";
import { shareCurve } from "./share-curve.js";
import { type SpectrumQuantity, spectrum } from "./spectrum.js";
import { harmonicRows, type Subject, subjectsOf } from "./subject.js";

/** Below these a map of hours, or a curve of shares, shows nothing that the course does not. */
const SHORTEST_MAP = 6 * HOUR;
const FEWEST_SHARES = 12;

/** All pictures of the report, by quantity: course over time, hours of the day, shares; of the harmonics also by order. Without a limit only the course. */
export const chartSections = oncePer((assessment: Assessment, measurements: Measurements): ChartSection[] => {
  const nominal = Number(assessment.setup.nominalFrequency?.value ?? 50);
  const section = (subject: Subject): ChartSection => ({
    id: subject.id,
    heading: subjectHeading(subject),
    charts: [
      profile(subject),
      ...(hasHours(subject) ? [dayHourMap(subject, nominal)] : []),
      ...(hasShares(subject) ? [shareCurve(subject)] : []),
    ],
  });
  const sections = subjectsOf(assessment, measurements)
    .filter(({ phases }) => phases.some(({ counted }) => counted.length > 0))
    .map(section);
  const place = sections.findIndex(({ id }) => id.startsWith("harmonic-voltage"));
  const byOrder = orderSections(assessment);
  return place < 0 ? [...sections, ...byOrder] : [...sections.slice(0, place), ...byOrder, ...sections.slice(place)];
});

/** Harmonics by order: what was judged, or, of a recording too short for that, what was measured; then what has no limits. */
function orderSections(assessment: Assessment): ChartSection[] {
  const rows = harmonicRows(assessment);
  const isShort = assessment.weeks.every(({ complete }) => !complete) && isUndecided(rows);
  const measured: SpectrumQuantity[] = [
    ...(isShort ? (["harmonic-voltage"] as const) : []),
    ...(assessment.recording.kind === "waveforms" ? (["interharmonic-voltage", "harmonic-current"] as const) : []),
  ];
  const sections: ChartSection[] = [];
  const add = (heading: Text, chart: Chart) => sections.push({ id: chart.id, heading, charts: [chart] });
  if (!isShort && rows.length > 0) add(HARMONIC_WORDS.heading, harmonicsByOrder(assessment, rows));
  for (const quantity of measured) {
    const chart = spectrum(assessment, quantity, quantity === "harmonic-voltage" ? rows : []);
    if (chart !== undefined) add(SPECTRUM_WORDS[quantity].heading, chart);
  }
  return sections;
}

function hasHours({ limits, start, end }: Subject): boolean {
  return limits.length > 0 && end - start >= SHORTEST_MAP;
}

function hasShares({ limits, phases }: Subject): boolean {
  return limits.length > 0 && phases.some(({ counted }) => counted.length >= FEWEST_SHARES);
}
