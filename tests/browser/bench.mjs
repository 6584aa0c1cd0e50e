// How long the shift plan takes in the browser, and how long a spreadsheet takes for the same.
//
// `cargo run -- test --only bench` builds what is measured and runs this.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { availableParallelism } from "node:os";
import { join } from "node:path";
import { after, test } from "node:test";
import { gzipSync } from "node:zlib";
import { required } from "./chromium.mjs";
import { figure } from "./figures.mjs";
import { openBench } from "./bench-stage.mjs";

/** Areas, and samples of each subject. */
const SHIFTS = [[100, 200], [1_000, 100], [10_000, 40]];
/** Areas, and the ms within which the whole view is worked out. The median counts, and the 95th percentile is
 * shown: what else the machine does in a slow moment is not the plan's. */
const BUDGETS = [[1_000, 16], [10_000, 250]];
/** What the plan may take of the spreadsheet's time, and for which changes: of the first area, on which every row
 * hangs, and of the middle one, the mean of all. For the last one the spreadsheet works out a single row, and the
 * plan the whole shift: that is shown, and no budget. */
const SHARE = 0.1;
const CHANGES = ["first", "middle"];
/** How far results may be apart, relative. */
const SAME = 1e-9;

const bench = await openBench();
after(() => bench.close());
await bench.page.addScriptTag({ path: createRequire(import.meta.url).resolve("mathjs/lib/browser/math.js") });
const result = await bench.page.evaluate(async (shifts) => (await import("/scripts/bench-page.mjs")).measure(shifts), SHIFTS);
const rows = result.shifts.flatMap(({ told }) => told);
const row = (name, count) => rows.find((one) => one.name === name && one.count === count);
const ms = (value) => (value < 10 ? value.toPrecision(3) : value.toFixed(1));

/** The slope of the medians in a double logarithmic plot, between each two sizes: 1 is in proportion. */
const growth = (name) =>
  SHIFTS.slice(1).map(([count], index) => {
    const before = SHIFTS[index][0];
    return Math.log(row(name, count).median / row(name, before).median) / Math.log(count / before);
  });

const SUBJECTS = {
  work: "the view, all of it",
  keystroke: "and the copy that a keystroke makes",
  plan: "the plan alone",
  first: "spreadsheet, first area changed",
  middle: "spreadsheet, middle area changed",
  last: "spreadsheet, last area changed",
};

function table() {
  const lines = [["ms a change", "areas", "cold", "median", "p95", "samples", "calls each", "growth"]];
  for (const [name, title] of Object.entries(SUBJECTS)) {
    const slopes = growth(name);
    SHIFTS.forEach(([count], index) => {
      const { cold, median, p95, rounds, repeat } = row(name, count);
      const slope = index ? `n^${slopes[index - 1].toFixed(2)}` : "";
      lines.push([index ? "" : title, count, ms(cold), ms(median), ms(p95), rounds, repeat, slope]);
    });
  }
  const cell = (content, index) => (index ? String(content).padStart(11) : content.padEnd(36));
  return lines.map((line) => line.map(cell).join("").trimEnd()).join("\n");
}

/** How many times as long as `ours` the spreadsheet takes, by the area that changed. */
const times = (ours, count) =>
  ["first", "middle", "last"].map((place) => `${place} ${(row(place, count).median / row(ours, count).median).toFixed(1)}`).join(", ");

console.log(`Chromium ${bench.version}, ${availableParallelism()} cores, a clock of ${result.tick.toFixed(3)} ms (the page is cross-origin isolated); a sample is one call, or as many as fill 1 ms.`);
console.log(table());
for (const [count] of BUDGETS) {
  console.log(`${count} areas: the spreadsheet takes so many times as long as the plan: ${times("plan", count)}; as the view: ${times("work", count)}.`);
}

test("the clock is fine enough", () => {
  assert.equal(result.isolated, true);
  assert.ok(result.tick <= 0.02, `${result.tick} ms`);
});

for (const { count, solution, troubles, before, after: later } of result.shifts) {
  test(`the shift of ${count} areas is a shift`, () => {
    assert.deepEqual(troubles, []);
    assert.ok(solution > 0, String(solution));
  });

  test(`plan and spreadsheet agree on ${count} areas, before and after the changes`, () => {
    for (const { totals, apart, rowsApart, fillsApart } of [before, later]) {
      assert.equal(totals.length, 6);
      assert.ok(totals.every((total) => total > 0), String(totals));
      assert.ok(apart <= SAME && rowsApart <= SAME, `totals ${apart}, rows ${rowsApart}`);
      assert.equal(fillsApart, 0);
    }
    assert.notDeepEqual(before.totals, later.totals);
  });
}

for (const [count, budget] of BUDGETS) {
  const ours = row("plan", count).median;
  figure(`the shift of ${count} areas worked out anew, median`, `${budget} ms`, `${ms(row("work", count).median)} ms`);
  figure(
    `the plan of ${count} areas, of a spreadsheet’s time (HyperFormula; first and middle area changed)`, `${SHARE * 100} %`,
    CHANGES.map((place) => `${((100 * ours) / row(place, count).median).toFixed(1)} %`).join(" and "),
  );
  test(`the view of ${count} areas within ${budget} ms`, () => {
    const { median } = row("work", count);
    assert.ok(median <= budget, `${ms(median)} ms`);
  });

  test(`the plan of ${count} areas in a tenth of the spreadsheet's time`, () => {
    const ours = row("plan", count).median;
    for (const place of CHANGES) {
      const theirs = row(place, count).median;
      assert.ok(ours <= SHARE * theirs, `${place} area changed: ${ms(ours)} of ${ms(theirs)} ms`);
    }
  });
}

{
  const { count, ours, theirs, apart } = result.conversions;
  console.log(`${count} conversions: ${ours.toFixed(0)} ns each, mathjs ${theirs.toFixed(0)} ns; ${apart.toExponential(1)} apart.`);
  figure("a conversion of units, of mathjs’ time", "100 %", `${((100 * ours) / theirs).toFixed(0)} %`);
  test("units are converted as a general library does, and no slower", () => {
    assert.equal(count, 4);
    assert.ok(apart <= SAME, String(apart));
    assert.ok(ours <= theirs, `${ours.toFixed(0)} of ${theirs.toFixed(0)} ns`);
  });
}

// An empty page of the same tools: nothing that is made with them weighs less.
const floor = ["floor_bg.wasm", "floor.js"].map((name) => gzipSync(readFileSync(join(required("BRIMLINE_BENCH"), name)), { level: 9 }).length);
figure("an empty page of the same tools, gzip", "", `${(floor.reduce((sum, size) => sum + size) / 1_000).toFixed(1)} kB`);
test("an empty page weighs something", () => assert.ok(floor.every((size) => size > 1_000), String(floor)));
