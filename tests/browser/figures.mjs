// The table of figures that a run of the suite closes with: what was measured, its target, the result.
//
// Each is a line of JSON in the file that BRIMLINE_FIGURES names; `cargo run -- test` prints them all as one table.

import { appendFileSync } from "node:fs";

/** Notes a figure. `target` is empty where there is none. */
export function figure(what, target, result) {
  const file = process.env.BRIMLINE_FIGURES;
  if (file) appendFileSync(file, `${JSON.stringify({ what, target: String(target), result: String(result) })}\n`);
}
