import type { Measurements } from "../../recording/measurements.js";
import type { Assessment } from "../../rules/assessment.js";
import { HARMONIC_WORDS, subjectHeading } from "../wording-charts.js";
import type { ChartSection } from "./chart.js";
import { dayHourMap } from "./day-hour-map.js";
import { harmonicsByOrder } from "./harmonics.js";
import { profile } from "./profile.js";
import { shareCurve } from "./share-curve.js";
import { harmonicRows, type Subject, subjectsOf } from "./subject.js";

/** All pictures of the report, by quantity: course over time, hours of the day, shares; of the harmonics also by order. Without a limit only the course. */
export function chartSections(assessment: Assessment, measurements: Measurements): ChartSection[] {
  const nominal = Number(assessment.setup.nominalFrequency?.value ?? 50);
  const section = (subject: Subject): ChartSection => ({
    id: subject.id,
    heading: subjectHeading(subject),
    charts:
      subject.limits.length === 0
        ? [profile(subject)]
        : [profile(subject), dayHourMap(subject, nominal), shareCurve(subject)],
  });
  const sections = subjectsOf(assessment, measurements)
    .filter(({ phases }) => phases.some(({ counted }) => counted.length > 0))
    .map(section);
  const rows = harmonicRows(assessment);
  if (rows.length === 0) return sections;
  const byOrder = {
    id: HARMONIC_WORDS.id,
    heading: HARMONIC_WORDS.heading,
    charts: [harmonicsByOrder(assessment, rows)],
  };
  const place = sections.findIndex(({ id }) => id.startsWith("harmonic-voltage"));
  return place < 0 ? [...sections, byOrder] : [...sections.slice(0, place), byOrder, ...sections.slice(place)];
}
