import type { Language } from "../src/report/languages/language.js";

/** Template → the files it stands in. */
export function templates(): Map<string, string[]>;
export function templatesIn(source: string): string[];
/** One line per fault; empty for a catalog that is whole. */
export function faultsOf(language: Language, english: readonly string[]): string[];
