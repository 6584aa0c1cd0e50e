// The supervisor's whole job: a new finish arrives, is entered, tried, chosen, checked, published and printed; and an
// operator's device opens the code of the chart without a network and gets the same dose.

import assert from "node:assert/strict";
import { test } from "node:test";
import { offlineReady } from "./harness.mjs";
import { readPdf, scanned, squeezed } from "./pdf.mjs";
import { unfoldAll } from "./states.mjs";
import { choose, field, figures, go, near, plain, press, remarks, settled, stageOfThisFile, write } from "./walk.mjs";

const { open, stage } = await stageOfThisFile();

test("from a new finish to a printed chart, and from its code to the same dose", async () => {
  const page = await open({ view: "site" });

  // The finish, as its label has it.
  await press(page, "site-finish");
  await press(page, "finish-add");
  for (const [name, text] of [
    ["finish-name", "Hall finish"], ["finish-ph-low", "7"], ["finish-ph-high", "9"], ["finish-source", "Its label"],
    ["finish-coats", "4"], ["finish-coverage", "2000"], ["finish-dry", "40"], ["finish-cure", "72"],
    ["coat-area", "6000"], ["first-coat", "2026-03-02"], ["first-coat-at", "06:00"],
  ]) {
    await write(page, name, text);
  }
  await press(page, "choose-on-floor");
  const shown = await figures(page);
  assert.ok(shown["finish.volume"] > 0);

  // Patches, what was seen, and the choice.
  await press(page, "trial-add");
  await choose(page, "trial-product", "daily");
  await choose(page, "patch-1-film", "none");
  await choose(page, "patch-2-film", "slight");
  await press(page, "choose-patch-1");
  assert.equal(await page.evaluate(() => document.activeElement.id), "site-standards");

  // The standard: written, checked, published.
  for (const [name, text] of [
    ["standard-author", "K. M."], ["standard-reason", "New finish; the weakest patch left no film"],
    ["standard-effective", "2026-03-05"], ["standard-pad", "White pad"], ["standard-frequency", "5"],
  ]) {
    await write(page, name, text);
  }
  for (let round = 0; round < 20; round += 1) {
    const waits = page.locator('.findings li:not(.news)[data-blocks="false"] input').first();
    if (!(await waits.count())) break;
    await waits.fill("Seen on the patches");
    await settled(page);
  }
  assert.deepEqual((await remarks(page)).filter((code) => code.startsWith("finding-no-")), [], "nothing is missing");
  await press(page, "standard-publish");
  assert.match(await page.locator("#site-standards").innerText(), /in force/);

  // The chart, printed.
  await press(page, "site-paper");
  await unfoldAll(page);
  // Opened from its own device the page has no address that a phone could open: the supervisor types one.
  const address = "https://floors.alder-county.example/brimline/";
  await page.locator("[data-lacks=chart]").waitFor();
  await write(page, "site-address", address);
  const link = await page.locator("[data-part=chart] [data-link]").first().getAttribute("data-link");
  await page.evaluate(() => document.querySelector("[data-part=chart]").setAttribute("data-printed", ""));
  await page.emulateMedia({ media: "print" });
  const pages = await readPdf(await page.pdf({ format: "A4" }));
  await page.emulateMedia({ media: "screen" });
  const [code] = await scanned(pages);
  assert.equal(code.text, link, "the printed code says what the page says");
  assert.ok(code.module >= 0.5, `${code.module} mm`);
  await go(page, "fill");
  await choose(page, "product", "daily");
  const { "fill.dose": dose } = await figures(page);
  assert.ok(dose > 0);
  const amount = plain(await page.locator(".amount-figure").innerText());
  assert.ok(squeezed(pages).includes(amount.replace(/\s/g, "")), `the chart has ${amount}`);

  // A device that was only ever loaded, without a network.
  const operator = await open({ serviceWorkers: "allow" });
  await offlineReady(operator);
  await operator.evaluate(() => localStorage.clear());
  await operator.goto("about:blank");
  await stage.stopServer();
  try {
    // That address stands for the server of these tests.
    assert.ok(code.text.startsWith(`${address}#fill=`), code.text);
    await operator.goto(`${await page.evaluate(() => location.origin)}/${new URL(code.text).hash}`);
    await operator.waitForFunction(() => JSON.parse(localStorage.getItem("brimline.typed") ?? "null")?.site.standards.length === 1);
    await operator.locator('[data-answer="fill.dose"]').first().waitFor();
    near((await figures(operator))["fill.dose"], dose, "the same dose");
    assert.equal(await field(operator, "product").inputValue(), "daily");
  } finally {
    await stage.startServer();
  }
});
