import { GERMAN } from "./de.js";
import { SPANISH } from "./es.js";
import { FRENCH } from "./fr.js";
import { ITALIAN } from "./it.js";
import { ENGLISH, type Language } from "./language.js";

/** Every language of the report. A new one is a file and a line here. */
export const LANGUAGES: readonly Language[] = [ENGLISH, GERMAN, FRENCH, ITALIAN, SPANISH];
