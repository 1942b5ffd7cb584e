/** Everything in which two loggers may write the same table differently. */
export interface Dialect {
  readonly id: string;
  readonly language: Language;
  readonly delimiter: "," | ";" | "\t" | "|";
  readonly decimal: "." | ",";
  /** Between groups of three digits; absent: none. A cell that would hold the delimiter is quoted. */
  readonly thousands?: "." | "," | " " | "'";
  readonly encoding: "utf-8" | "utf-8-bom" | "utf-16le-bom" | "latin-1";
  readonly quoting: "where-needed" | "text" | "all";
  readonly lineEnd: "\n" | "\r\n";
  /** Lines before the header, as they stand. */
  readonly preamble: readonly string[];
  /** Two rows: quantity and phase above, statistic or order below. */
  readonly headerRows: 1 | 2;
  /** A row of units of its own under the header; else the unit stands in brackets in the header. */
  readonly unitsRow: boolean;
  readonly gzip: boolean;
  readonly stamp: StampForm;
  /** IANA zone of stamps that are local time. */
  readonly zone: string;
  readonly label: "start" | "end";
  /** What a missing value looks like; taken in turn where there are several. */
  readonly missing: readonly [string, ...string[]];
  readonly voltageUnit: VoltageUnit;
}

export type Language = "en" | "de" | "fr" | "it" | "es";

/** Per unit of a declared voltage in whole volts, whose only prime factors may be 2 and 5: else no exact decimal exists. */
export type VoltageUnit = "V" | "kV" | { readonly perUnitOf: number };

export type StampForm =
  | "iso-offset"
  | "iso-utc"
  | "iso-local"
  | "d.m.y"
  | "d/m/y"
  | "m/d/y 12-hour"
  | "d.m.y in two columns"
  | "epoch-s"
  | "epoch-ms"
  | "serial-days";

/** What most loggers write; dialects are told by what differs. */
export const PLAIN: Dialect = {
  id: "plain",
  language: "en",
  delimiter: ",",
  decimal: ".",
  encoding: "utf-8",
  quoting: "where-needed",
  lineEnd: "\n",
  preamble: [],
  headerRows: 1,
  unitsRow: false,
  gzip: false,
  stamp: "iso-offset",
  zone: "UTC",
  label: "start",
  missing: [""],
  voltageUnit: "V",
};

/** Six loggers that agree on nothing but the measured values. Declared voltage for the per-unit one: 400 V. */
export const SIX_DIALECTS: readonly Dialect[] = [
  { ...PLAIN, id: "english-iso-offset", zone: "Europe/Vienna" },
  {
    ...PLAIN,
    id: "german-decimal-comma",
    language: "de",
    delimiter: ";",
    decimal: ",",
    thousands: ".",
    encoding: "latin-1",
    lineEnd: "\r\n",
    preamble: ["Messstelle: Ortsnetz, Kabelverteiler 7", "Prüfer: (ohne Angabe)", ""],
    stamp: "d.m.y in two columns",
    zone: "Europe/Vienna",
    label: "end",
    missing: ["---"],
  },
  {
    ...PLAIN,
    id: "french-kilovolt",
    language: "fr",
    delimiter: "\t",
    decimal: ",",
    thousands: " ",
    encoding: "utf-16le-bom",
    lineEnd: "\r\n",
    headerRows: 2,
    unitsRow: true,
    stamp: "d/m/y",
    zone: "Europe/Paris",
    missing: ["NaN"],
    voltageUnit: "kV",
  },
  {
    ...PLAIN,
    id: "italian-epoch",
    language: "it",
    delimiter: "|",
    encoding: "utf-8-bom",
    quoting: "text",
    unitsRow: true,
    gzip: true,
    stamp: "epoch-ms",
    label: "end",
    missing: ["n/a", ""],
  },
  {
    ...PLAIN,
    id: "spanish-per-unit",
    language: "es",
    delimiter: ";",
    decimal: ",",
    quoting: "all",
    stamp: "serial-days",
    zone: "Europe/Madrid",
    missing: ["-"],
    voltageUnit: { perUnitOf: 400 },
  },
  {
    ...PLAIN,
    id: "english-12-hour",
    thousands: ",",
    quoting: "text",
    preamble: ["# interval log", '"site, in words","end of line"'],
    headerRows: 2,
    stamp: "m/d/y 12-hour",
    zone: "America/Chicago",
    label: "end",
    missing: ["OL"],
    voltageUnit: "kV",
  },
];
