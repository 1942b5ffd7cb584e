import type { Assessment } from "../../rules/assessment.js";
import { type Sentence, stated, strung, type Text } from "../../sentence.js";
import { columnRuns } from "../columns.js";
import { exact } from "../numbers.js";
import { withUnit } from "../wording.js";
import { columnRunText, columnsSummary, setupName, setupValue } from "../wording-log.js";
import {
  BINDING_NOTE,
  CONFIRMED,
  HEADINGS,
  INTERVALS,
  LIVE_WORK_NOTE,
  NONE,
  ORIGINS,
  ordersSummary,
  programText,
  requirementLimit,
  SEVERITIES,
  TABLE_WORDS as T,
} from "../wording-page.js";
import {
  REPORT_HEADINGS as H,
  INSTRUMENT_WORDS as I,
  NOT_STATED,
  ORDER_LIMITS,
  SENSOR_WORDS,
} from "../wording-report.js";
import { type Block, type Cell, heading, note, paragraph, table } from "./blocks.js";

/** What was read, and how: files, intervals, columns, remarks. */
export function recordingLedger({ recording: r, sources, tool }: Assessment): Block[] {
  const several = sources.length > 1;
  const unused = r.columns.filter(({ takenFor }) => takenFor === undefined);
  const runs = columnRuns(r.columns).map((run) => strung([several ? `${run.file}, ` : "", columnRunText(run)]));
  return [
    heading(1, HEADINGS.recording),
    table(
      [
        [T.intervals, 1],
        [T.count, 3],
      ],
      Object.entries(r.intervals).map(([name, count]) => [INTERVALS[name] ?? name, String(count)]),
      9,
    ),
    heading(2, HEADINGS.files),
    table(
      [
        [T.file, 1],
        [T.size, 0, "right"],
        [T.format, 0],
        [T.sha256, 3.2],
      ],
      sources.map(({ name, bytes, format, sha256 }) => [name, String(bytes), format, sha256]),
    ),
    note(programText(tool.name, tool.version)),
    ...(r.remarks.length > 0 ? [heading(2, HEADINGS.remarks), { kind: "list" as const, items: [...r.remarks] }] : []),
    ...(unused.length > 0 ? unusedColumns(unused, several) : []),
    heading(2, HEADINGS.columns),
    note(columnsSummary(r.columns.length - unused.length, r.columns.length)),
    { kind: "list", items: runs },
  ];
}

function unusedColumns(unused: Assessment["recording"]["columns"], several: boolean): Block[] {
  return [
    heading(2, HEADINGS.unusedColumns),
    table(
      [...(several ? [[T.file, 1.5] as const] : []), [T.position, 0, "right"], [T.header, 2], [T.reason, 3]],
      unused.map(({ file, position, header, reason }) => [
        ...(several ? [file] : []),
        String(position),
        header,
        reason,
      ]),
    ),
  ];
}

const ORDER = ["danger", "blocks", "note", "none"];

function severityOf({ danger, severity }: Assessment["recording"]["findings"][number]): string {
  return danger === undefined ? severity : "danger";
}

export function findings({ recording }: Assessment): Block[] {
  const list = [...recording.findings].sort((a, b) => ORDER.indexOf(severityOf(a)) - ORDER.indexOf(severityOf(b)));
  if (list.length === 0) return [heading(1, HEADINGS.findings), paragraph(NONE.findings)];
  return [
    heading(1, HEADINGS.findings),
    table(
      [
        [T.effect, 1.2],
        [T.finding, 5],
      ],
      list.map((finding) => [
        { text: SEVERITIES[severityOf(finding)] ?? severityOf(finding), bold: true },
        finding.sentence,
      ]),
      9.5,
    ),
    note(LIVE_WORK_NOTE),
  ];
}

/** Every entry of the setup with its origin, and the instrument as stated. */
export function setupAndInstrument({ setup, instrument }: Assessment): Block[] {
  const { sensors = [] } = instrument;
  const rows = Object.entries(I).map(([key, name]): readonly [Text, Cell] => [
    name,
    instrument[key as keyof typeof I] ?? NOT_STATED,
  ]);
  return [
    heading(1, HEADINGS.setup),
    table(
      [
        [T.item, 1.6],
        [T.value, 3],
        [T.origin, 1.3],
        [T.reason, 3],
      ],
      Object.entries(setup).map(([key, { value, origin, reason }]) => [
        setupName(key),
        setupValue(key, value),
        origin === "assumed" ? { text: ORIGINS[origin] as Text, bold: true } : (ORIGINS[origin] as Text),
        reason ?? "",
      ]),
      9,
    ),
    heading(2, H.instrument),
    { kind: "pairs", rows },
    ...(sensors.length === 0
      ? []
      : [
          table(
            Object.values(SENSOR_WORDS).map((title: Sentence) => [title, 1] as const),
            sensors.map(({ what, ratio, class: accuracy, serialNumber, certificate }) => [
              what,
              ratio ?? NOT_STATED,
              accuracy === undefined ? NOT_STATED : String(accuracy),
              serialNumber ?? NOT_STATED,
              certificate ?? NOT_STATED,
            ]),
          ),
        ]),
  ];
}

/** The limits as judged, each with its source, and which of them no public document confirms. */
export function ruleSet({ ruleSet: set, weeks }: Assessment): Block[] {
  const confirmed = (yes: boolean): Cell => (yes ? CONFIRMED.true : { text: CONFIRMED.false, bold: true });
  const orders = set.requirements.flatMap(({ title, orders: limits }) =>
    limits === undefined
      ? []
      : [
          heading(2, strung([stated(title), ordersSummary(limits.length)], ": ")),
          table(
            [
              [ORDER_LIMITS, 2.4],
              [T.source, 3],
              [T.confirmed, 1.2],
            ],
            bySource(limits).map(([first, ...more]) => [
              strung(
                [first, ...more].map(({ order, max }) => strung([String(order), withUnit(exact(max, 0), "%")], ": ")),
                ", ",
              ),
              first.note === undefined ? first.source : { text: first.source, note: stated(first.note) },
              confirmed(first.confirmed),
            ]),
          ),
        ],
  );
  return [
    heading(1, HEADINGS.ruleSet),
    paragraph(strung([strung([stated(set.title), ` (${set.id})`]), strung([set.standard, set.edition], ", ")], ": ")),
    { kind: "list", items: set.notes.map(stated) },
    table(
      [
        [T.requirement, 2.5],
        [T.limit, 1.5],
        [T.clause, 1.4],
        [T.source, 3.2],
        [T.confirmed, 1.3],
      ],
      set.requirements.map((requirement) => {
        const notes = [
          ...(requirement.binding ? [] : [BINDING_NOTE]),
          ...(requirement.note === undefined ? [] : [stated(requirement.note)]),
        ];
        return [
          notes.length === 0
            ? stated(requirement.title)
            : { text: stated(requirement.title), note: strung(notes, "; ") },
          requirementLimit(requirement, weeks),
          requirement.clause,
          requirement.source,
          confirmed(requirement.confirmed),
        ];
      }),
    ),
    ...orders,
    table(
      [
        [T.file, 1],
        [T.sha256, 2],
      ],
      [{ id: set.id, sha256: set.sha256 }, ...set.inherits].map(({ id, sha256 }) => [id, sha256]),
    ),
  ];
}

type OrderLimit = NonNullable<Assessment["ruleSet"]["requirements"][number]["orders"]>[number];

/** Limits that share their source and its standing, together. */
function bySource(limits: readonly OrderLimit[]): [OrderLimit, ...OrderLimit[]][] {
  const groups = new Map<string, [OrderLimit, ...OrderLimit[]]>();
  for (const limit of limits) {
    const key = JSON.stringify([limit.source, limit.note, limit.confirmed]);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [limit]);
    else group.push(limit);
  }
  return [...groups.values()];
}
