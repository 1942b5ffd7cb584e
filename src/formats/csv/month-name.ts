import { plain } from "./vocabulary.js";

/** January to December in English, German, French, Italian and Spanish, lower case without accents, with short forms. */
const NAMES = [
  "jan january januar janner jaenner janv janvier gen gennaio ene enero",
  "feb february februar feber fev fevr fevrier febbraio febrero",
  "mar march marz maerz mrz mars marzo",
  "apr april avr avril aprile abr abril",
  "may mai mag maggio mayo",
  "jun june juni juin giu giugno junio",
  "jul july juli juil juillet lug luglio julio",
  "aug august aout ago agosto",
  "sep sept september septembre set sett settembre septiembre setiembre",
  "oct october okt oktober octobre ott ottobre octubre",
  "nov november novembre noviembre",
  "dec december dez dezember decembre dic dicembre diciembre",
];
const months = new Map(NAMES.flatMap((names, i) => names.split(" ").map((name) => [name, i + 1] as const)));

/** 1 to 12 for the name of a month, of any case; undefined for any other word. */
export function monthNamed(word: string): number | undefined {
  return months.get(plain(word).trim().toLowerCase());
}
