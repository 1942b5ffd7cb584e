import { stated, type Text } from "../../sentence.js";
import { fixed } from "../numbers.js";
import { withUnit } from "../wording.js";
import { GLOSSARY, REPORT_HEADINGS as H, PROOF_WORDS as P, proofIntro } from "../wording-report.js";
import { type Block, heading, paragraph, table } from "./blocks.js";

/** Content of assets/proof.json: what `prove` measured with this version, one row of each table. */
export interface ProofSummary {
  readonly version: string;
  readonly rows: number;
  readonly out: number;
  readonly tables: readonly {
    readonly title: string;
    readonly source: string;
    readonly confirmed: boolean;
    readonly rows: number;
    /** The row that came nearest to its tolerance, or lies farthest out. */
    readonly nearest: {
      readonly what: string;
      readonly unit: string;
      readonly expected: number;
      readonly computed: number;
      readonly tolerance: number;
    };
  }[];
}

export function proof({ version, rows, out, tables }: ProofSummary): Block[] {
  return [
    heading(1, H.proof),
    paragraph(proofIntro(rows, out, version)),
    table(
      [
        [P.table, 3.6],
        [P.rows, 0, "right"],
        [P.largest, 2.2],
        [P.expected, 1],
        [P.computed, 1],
        [P.tolerance, 1],
        [P.confirmed, 0.9],
      ],
      tables.map(({ title, source, confirmed, rows: count, nearest }) => {
        const { what, unit, expected, computed, tolerance } = nearest;
        const decimals = Math.max(0, 2 - Math.floor(Math.log10(tolerance)));
        const number = (value: number): Text => withUnit(fixed(value, decimals), unit);
        return [
          { text: stated(title), note: stated(source) },
          String(count),
          stated(what),
          number(expected),
          number(computed),
          number(tolerance),
          confirmed ? P.yes : P.no,
        ];
      }),
      8,
    ),
  ];
}

export function glossary(): Block[] {
  return [heading(1, H.glossary), { kind: "pairs", rows: GLOSSARY.map(([word, meaning]) => [word, meaning]) }];
}
