// What Lighthouse says of the page as a phone gets it: its own simulated slow network and CPU.
//
// `cargo run -- test --only bench` builds the page and runs this.

import assert from "node:assert/strict";
import { after, test } from "node:test";
import { launch as launchChrome } from "chrome-launcher";
import lighthouse from "lighthouse";
import { required } from "./chromium.mjs";
import { figure } from "./figures.mjs";
import { startServer } from "./harness.mjs";

/** Each category and the least score, of 100; the target of each is 100. Performance hangs on the machine: its points are
 * shown, and held below. */
const LEAST = { performance: 90, accessibility: 100, "best-practices": 100 };
/** A slow moment of a shared machine is not the page's: the best of so many runs counts for performance. */
const RUNS = 3;
const FLAGS = ["--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"];

const server = await startServer();
after(() => server.stop());

const reports = [];
for (let run = 0; run < RUNS; run += 1) {
  const chrome = await launchChrome({ chromePath: required("BRIMLINE_CHROMIUM"), chromeFlags: FLAGS });
  const { lhr } = await lighthouse(server.origin, { port: chrome.port, onlyCategories: Object.keys(LEAST), logLevel: "error" });
  chrome.kill();
  reports.push(lhr);
  const { audits, categories } = lhr;
  const shown = ["first-contentful-paint", "largest-contentful-paint", "total-blocking-time", "cumulative-layout-shift"].map((name) => `${name} ${audits[name].displayValue}`);
  console.log(`${Object.entries(categories).map(([name, { score }]) => `${name} ${Math.round(100 * score)}`).join(", ")}; ${shown.join(", ")}`);
}

for (const [name, least] of Object.entries(LEAST)) {
  const scores = reports.map(({ categories }) => Math.round(100 * categories[name].score));
  const best = Math.max(...scores);
  figure(`Lighthouse ${name}, best of ${RUNS}`, 100, Math.min(...scores) === best ? best : `${best} (${scores.join(", ")})`);
  test(`Lighthouse ${name} of at least ${least}`, () => {
    const failed = reports.flatMap(({ audits, categories }) =>
      categories[name].auditRefs.filter(({ id, weight }) => weight && audits[id].score !== null && audits[id].score < 1).map(({ id }) => `${id} ${audits[id].displayValue ?? ""}`));
    assert.ok(best >= least, `${scores.join(", ")}: ${[...new Set(failed)].join("; ")}`);
  });
}
