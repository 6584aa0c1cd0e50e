// In the page: the plan of a shift as somebody would write it into a spreadsheet, a row an area.

import "/spreadsheet/hyperformula.full.min.js";

const { HyperFormula } = globalThis.HyperFormula;

/** What a row works out, in columns D to I: from size A, solution on each area B and pace C. */
const ROW = (row) => [
  `=A${row}/C${row}`, // time
  `=A${row}*B${row}`, // solution
  `=E${row}*$L$2`, // concentrate
  `=E${row}-F${row}`, // water
  row > 1 ? `=H${row - 1}+E${row}` : `=E1`, // solution so far
  row > 1 ? `=ROUNDUP(H${row}/$L$1,0)-ROUNDUP(H${row - 1}/$L$1,0)` : `=ROUNDUP(H1/$L$1,0)`, // fills begun here
];

/** In L4 and below, in the order in which the plan tells its totals. */
const TOTALS = (last) => [
  `=SUM(D1:D${last})`,
  `=L4+(L9-1)*$L$3`,
  `=SUM(E1:E${last})`,
  `=SUM(G1:G${last})`,
  `=SUM(F1:F${last})`,
  `=SUM(I1:I${last})`,
];

const at = (row, col) => ({ sheet: 0, row, col });

/** A spreadsheet with the tasks (size, solution on each area, pace) and the means (tank, strength, refill). */
export class Sheet {
  constructor(tasks, means) {
    const count = tasks.length / 3;
    const rows = Array.from({ length: count }, (_, index) => [...tasks.subarray(3 * index, 3 * index + 3), ...ROW(index + 1)]);
    [...means, ...TOTALS(count)].forEach((content, row) => rows[row].push(null, null, content));
    // Rounding for the eye and a way back would only cost it time.
    this.engine = HyperFormula.buildFromArray(rows, { licenseKey: "gpl-v3", smartRounding: false, undoLimit: 0 });
    this.count = count;
  }

  /** Gives a task another size: all that hangs on it is worked out at once. Returns the solution. */
  plan(task, size) {
    this.engine.setCellContents(at(task, 0), size);
    return this.engine.getCellValue(at(5, 11));
  }

  totals() {
    return [3, 4, 5, 6, 7, 8].map((row) => this.engine.getCellValue(at(row, 11)));
  }

  /** Of each task: time, solution and fills, one after the other. */
  rows() {
    const row = (_, index) => [3, 4, 8].map((col) => this.engine.getCellValue(at(index, col)));
    return Array.from({ length: this.count }, row).flat();
  }
}
