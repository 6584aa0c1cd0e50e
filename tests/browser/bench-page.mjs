// In the page: measures the shift plan and the spreadsheet, and compares their results.

import init, { Bench, convert } from "/built/bench.js";
import { Sheet } from "/scripts/bench-sheet.mjs";

/** A sample is as many calls as take about this long, ms: two hundred ticks of the clock. */
const SAMPLE = 1;
/** Each subject runs so long before it counts, ms: the browser compiles twice, quickly and then well. */
const WARM_UP = 600;

/** The smallest step of the clock, ms. */
function tick() {
  const steps = [];
  for (let last = performance.now(); steps.length < 50; ) {
    const now = performance.now();
    if (now > last) steps.push(now - last);
    last = now;
  }
  return Math.min(...steps);
}

/** Calls take another value each, so that nobody can know the answer already. */
let calls = 0;
const another = () => 4_000 + (calls++ % 997);

function timed(call, repeat = 1) {
  const begin = performance.now();
  for (let index = 0; index < repeat; index++) call(another());
  return (performance.now() - begin) / repeat;
}

function warmed(call) {
  const first = timed(call);
  const times = [];
  for (const end = performance.now() + WARM_UP; performance.now() < end || times.length < 10; ) times.push(timed(call));
  const usual = times.sort((a, b) => a - b)[Math.floor(times.length / 2)];
  return { call, first, repeat: Math.max(1, Math.ceil(SAMPLE / Math.max(usual, 1e-3))), samples: [] };
}

const apart = (ours, theirs) => Math.abs(ours - theirs) / Math.max(Math.abs(theirs), 1e-12);

/** How far the plan and the spreadsheet are apart: each total, and the worst of the rows. */
function compared(bench, sheet) {
  const [totals, others] = [bench.totals(), sheet.totals()];
  const [rows, otherRows] = [bench.rows(), sheet.rows()];
  if (totals.length !== others.length || rows.length !== otherRows.length) throw new Error("nothing to compare");
  return {
    totals: [...totals],
    apart: Math.max(...others.map((other, index) => apart(totals[index], other))),
    rowsApart: otherRows.reduce((worst, other, index) => Math.max(worst, index % 3 < 2 ? apart(rows[index], other) : 0), 0),
    fillsApart: otherRows.filter((other, index) => index % 3 === 2 && other !== rows[index]).length,
  };
}

/** Measures a shift of so many areas. `rounds` samples of each subject, in turn: a slow moment hits all. */
function measured(count, rounds) {
  const bench = new Bench(count);
  const sheet = new Sheet(bench.tasks(), bench.means());
  const before = compared(bench, sheet);
  const squareMetres = (call) => (number) => call(number / 10);
  const changed = (task) => warmed(squareMetres((size) => sheet.plan(task, size)));
  const subjects = {
    work: warmed((size) => bench.work(size)),
    keystroke: warmed((size) => bench.keystroke(size)),
    // It works all out anew, whichever area changed; the spreadsheet what hangs on that area.
    plan: warmed(squareMetres((size) => bench.plan(0, size))),
    first: changed(0),
    middle: changed(count / 2),
    last: changed(count - 1),
  };
  for (let round = 0; round < rounds; round++) {
    for (const { samples, call, repeat } of Object.values(subjects)) samples.push(timed(call, repeat));
  }
  for (const [task, size] of [[0, 123.4], [count / 2, 234.5], [count - 1, 345.6]]) {
    bench.plan(task, size);
    sheet.plan(task, size);
  }
  const told = Object.entries(subjects).map(([name, { first, repeat, samples }]) => {
    samples.sort((a, b) => a - b);
    const share = (part) => samples[Math.ceil(part * samples.length) - 1];
    return { name, count, cold: first, repeat, rounds, median: share(0.5), p95: share(0.95) };
  });
  return { count, told, before, after: compared(bench, sheet), solution: bench.work(4_000), troubles: bench.troubles() };
}

/** Amounts that both sides convert: ours and theirs, by their codes. */
const CONVERSIONS = [["gal_us", "gallon", "l", "liter"], ["floz_us", "fluidounce", "ml", "milliliter"], ["ft2", "sqft", "m2", "m^2"], ["ft", "foot", "m", "meter"]];

/** ns a conversion, ours and those of mathjs, in turn; and how far they are apart. */
function conversions() {
  const { unit } = globalThis.math;
  const known = CONVERSIONS.filter(([from, , to]) => !Number.isNaN(convert(1, from, to)));
  const ours = (amount) => known.reduce((sum, [from, , to]) => sum + convert(amount, from, to), 0);
  const theirs = (amount) => known.reduce((sum, [, from, , to]) => sum + unit(amount, from).toNumber(to), 0);
  const samples = { ours: warmed(ours), theirs: warmed(theirs) };
  for (let round = 0; round < 60; round++) {
    for (const { samples: all, call, repeat } of Object.values(samples)) all.push(timed(call, repeat));
  }
  const median = ({ samples: all }) => (1e6 * all.sort((a, b) => a - b)[Math.floor(all.length / 2)]) / known.length;
  const gaps = known.map(([from, theirFrom, to, theirTo]) => apart(convert(12.5, from, to), unit(12.5, theirFrom).toNumber(theirTo)));
  return { count: known.length, ours: median(samples.ours), theirs: median(samples.theirs), apart: Math.max(...gaps) };
}

/** Measures each of `shifts`, as [areas, rounds]. */
export async function measure(shifts) {
  await init();
  return { isolated: crossOriginIsolated, tick: tick(), conversions: conversions(), shifts: shifts.map(([count, rounds]) => measured(count, rounds)) };
}
