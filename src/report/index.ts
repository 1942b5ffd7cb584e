import { csv } from "./csv.js";
import { htmlReport } from "./html/index.js";
import { json } from "./json.js";
import { pdfReport } from "./pdf/index.js";
import { png, svg } from "./pictures.js";
import type { Renderer } from "./renderer.js";

/** Every output, by what `--format` calls it. A new one is a file and a line here. */
export const RENDERERS: readonly Renderer[] = [htmlReport, pdfReport, json, csv, svg, png];
