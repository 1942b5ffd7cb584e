import { analysis } from "./es/analysis.js";
import { beside } from "./es/beside.js";
import { charts } from "./es/charts.js";
import { checks } from "./es/checks.js";
import { commands } from "./es/commands.js";
import { document } from "./es/document.js";
import { events } from "./es/events.js";
import { formats } from "./es/formats.js";
import { limitSets } from "./es/limit-sets.js";
import { page } from "./es/page.js";
import { pqdif } from "./es/pqdif.js";
import { recording } from "./es/recording.js";
import { rules } from "./es/rules.js";
import { statement } from "./es/statement.js";
import { tables } from "./es/tables.js";
import type { Language } from "./language.js";

/**
 * Spanish as written in Spain, with the terms of UNE-EN 50160.
 *
 * Seen in public documents: hueco de tensión, interrupción breve / larga, desequilibrio, variación de tensión, tensión nominal,
 * condiciones normales de explotación, gestor de la red. Sobretensión temporal was seen as well, for power-frequency overvoltages.
 * From memory, to be checked in the Spanish edition: tensión de alimentación, tensión declarada, punto de suministro, severidad del
 * parpadeo (flicker) de corta / larga duración, medidor de flicker, variación rápida de tensión, tensión armónica / interarmónica,
 * distorsión armónica total, señales transmitidas por la red, tensión residual, secuencia inversa / directa / homopolar, valor marcado;
 * and of ILAC-G8 aceptación simple, banda de guarda, conforme / no conforme condicionado. "Laguna" (gap) avoids "hueco", which is a dip.
 */
export const SPANISH: Language = {
  id: "es",
  name: "Español",
  decimalMark: ",",
  phrases: {
    ...analysis,
    ...checks,
    ...commands,
    ...pqdif,
    ...tables,
    ...formats,
    ...recording,
    ...rules,
    ...limitSets,
    ...charts,
    ...events,
    ...document,
    ...page,
    ...statement,
    ...beside,
  },
};
