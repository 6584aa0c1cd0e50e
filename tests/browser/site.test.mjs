// Site: records kept, a standard written, checked, published and replaced, a device set to its standards.

import assert from "node:assert/strict";
import { test } from "node:test";
import { choose, countOf, field, figures, go, near, plain, press, remarks, settled, stageOfThisFile, US_GALLON, write } from "./walk.mjs";

const { open, stage } = await stageOfThisFile();

/** The names on the open shelf. */
const shelf = (page) => page.locator(".records button").evaluateAll((all) => all.map((one) => one.textContent.trim()));

/** Gives every warning that waits for one a reason. */
async function letPass(page) {
  for (let round = 0; round < 20; round += 1) {
    const open = page.locator('.findings li:not(.news)[data-blocks="false"] input').first();
    if (!(await open.count())) return;
    await open.fill("Seen and measured in the hall");
    await settled(page);
  }
}

/** A draft for the floor and product on Fill, with all that is asked for. */
async function draft(page) {
  await press(page, "site-standards");
  await press(page, "standard-add");
  await write(page, "standard-author", "K. M.");
  await write(page, "standard-reason", "New finish");
  await write(page, "standard-effective", "2024-02-29");
}

test("records are added, copied, found, retired and removed, and each step is undone", async () => {
  const page = await open({ view: "site" });
  assert.equal((await shelf(page)).length, 3);
  await press(page, "shelf-product");
  const products = await shelf(page);
  await page.locator('.records [data-id="neutral"]').click();
  await press(page, "record-copy");
  assert.deepEqual(await shelf(page), [...products, "Neutral cleaner 2"]);
  await write(page, "product-label", "1:100");
  assert.equal(await page.locator("#record-heading").innerText(), "Neutral cleaner 2");
  await press(page, "record-retire");
  assert.match((await shelf(page)).at(-1), /out of use/);
  // Nobody is offered what is out of use.
  await go(page, "fill");
  await choose(page, "product", "neutral");
  assert.equal(await page.locator("#product option", { hasText: "Neutral cleaner 2" }).count(), 0);
  await go(page, "site");
  await write(page, "site-search", "neutral 2");
  assert.equal((await shelf(page)).length, 1);
  await page.locator(".records button").click();
  await press(page, "record-remove");
  await write(page, "site-search", "");
  assert.deepEqual(await shelf(page), products);
  for (let step = 0; step < 4; step += 1) await press(page, "site-undo");
  assert.deepEqual(await shelf(page), products);
});

test("what is used stays, and says by whom; a wrong number says its limit", async () => {
  const page = await open({ view: "site" });
  await press(page, "shelf-floor");
  await page.locator('.records [data-id="vinyl"]').click();
  assert.equal(await field(page, "record-remove").count(), 0);
  assert.match(await page.locator("#record").innerText(), /It is used by: .*\(Area\)/s);
  await press(page, "shelf-machine");
  await write(page, "machine-tank", "1e9");
  assert.ok(await page.locator("#machine-tank-mistake").isVisible());
  assert.equal(await field(page, "machine-tank").inputValue(), "1e9");
  await press(page, "shelf-area");
  assert.equal((await shelf(page)).length, 5);
  await write(page, "area-1-size", "1234");
  await go(page, "shift");
  assert.equal(await field(page, "area-1-size").inputValue(), "1234");
});

test("a standard is blocked, let pass with reasons, published, held to on Fill, and replaced", async () => {
  const page = await open({ view: "fill" });
  await choose(page, "machine", "walk-behind");
  await write(page, "product-label", "1:64 to 1:128");
  await go(page, "site");
  await draft(page);
  const publish = field(page, "standard-publish");
  await write(page, "standard-dilution", "1:20");
  assert.ok(await publish.isDisabled());
  assert.ok((await remarks(page)).includes("remark-standard-outside"));
  await write(page, "standard-dilution", "1:100");
  assert.ok(!(await remarks(page)).includes("remark-standard-outside"));
  assert.ok(await publish.isDisabled(), "warnings wait for a reason");
  // 10 gal at 1 to 100 is 1280 fl oz / 101 = 12.67, in a jug of whole ounces 13 or 12.5 by its marks.
  const dose = plain(await page.locator('[data-dose="walk-behind"][data-measure="jug"]').innerText());
  assert.match(dose, /^1[23](\.5)? fl oz$/);
  await letPass(page);
  assert.ok(!(await publish.isDisabled()));
  await publish.click();
  await settled(page);
  assert.match(await page.locator("#site-standards").innerText(), /in force/);
  assert.equal(await field(page, "standard-dilution").count(), 0, "it is read, not written");
  await go(page, "fill");
  near((await figures(page))["fill.dose"], (10 * US_GALLON) / 101, "the standard governs");
  assert.ok((await remarks(page)).includes("remark-standard-in-force"));
  await choose(page, "product", "degreaser");
  await press(page, "stop-read");
  assert.ok((await remarks(page)).includes("remark-standard-other"));

  await go(page, "site");
  await press(page, "standard-next");
  await write(page, "standard-dilution", "1:80");
  await write(page, "standard-reason", "More soil in winter");
  await write(page, "standard-effective", "2024-11-01");
  await letPass(page);
  await press(page, "standard-publish");
  const all = await page.locator('[name="standard-open"]').allInnerTexts();
  assert.deepEqual(all.map((one) => one.match(/version (\d)[\s\S]*?(in force|replaced)/).slice(1)), [["2", "in force"], ["1", "replaced"]]);
});

test("a device set to its standards shows nothing else, and a passcode sets it free", async () => {
  const page = await open({ view: "site" });
  await draft(page);
  await letPass(page);
  await press(page, "standard-publish");
  await press(page, "site-device");
  await write(page, "device-code", "123");
  await press(page, "device-set");
  assert.match(await page.locator("#device-told").innerText(), /four characters/);
  await write(page, "device-code", "alder 7");
  const again = page.waitForEvent("load");
  await press(page, "device-set");
  await again;
  await page.locator(".view.site").waitFor();

  await page.locator('nav a[href="#fill"]').click();
  await page.locator(".view.fill").waitFor();
  assert.deepEqual(await page.locator("#floor option").evaluateAll((all) => all.map(({ value }) => value)), ["vinyl"]);
  assert.ok(await field(page, "product").isDisabled());
  assert.notEqual(await field(page, "product-label").getAttribute("readonly"), null);
  assert.notEqual(await field(page, "machine-tank").getAttribute("readonly"), null);
  assert.equal(await field(page, "product-add").count() + (await field(page, "machine-remove").count()), 0);
  assert.equal(await page.locator('nav a[href="#shift"]').count(), 0);
  await write(page, "fill-level", "50");
  assert.equal(await countOf(page, "fill.dose"), 1);

  const kept = await page.evaluate(() => localStorage.getItem("brimline.lock"));
  assert.ok(!kept.includes("alder"), "never in clear");
  await page.locator('nav a[href="#site"]').click();
  await write(page, "device-code", "alder 8");
  await press(page, "device-set");
  await page.locator("#device-told", { hasText: "not the passcode" }).waitFor();
  await write(page, "device-code", "alder 7");
  const free = page.waitForEvent("load");
  await press(page, "device-set");
  await free;
  await field(page, "site-library").waitFor();
});

test("a device without a standard in force gives no amount", async () => {
  const page = await open({ view: "site" });
  await press(page, "site-device");
  await write(page, "device-code", "0000");
  const again = page.waitForEvent("load");
  await press(page, "device-set");
  await again;
  await page.locator('nav a[href="#fill"]').click();
  await page.locator("main", { hasText: "No standard is in force" }).waitFor();
  assert.equal(await countOf(page, "fill."), 0);
});

test("what another tab changed is not overwritten, and a lock reaches every tab", async () => {
  const page = await open();
  const other = await stage.openPage({ path: "/#fill", context: page.context() });
  await write(other, "machine-tank", "13");
  await field(page, "elsewhere-load").waitFor();
  await write(page, "fill-level", "50");
  const again = page.waitForEvent("load");
  await press(page, "elsewhere-load");
  await again;
  await page.locator(".view.fill").waitFor();
  assert.equal(await field(page, "machine-tank").inputValue(), "13");

  await other.goto(`${stage.origin}/#site`);
  await press(other, "site-device");
  await write(other, "device-code", "1234");
  const locked = page.waitForEvent("load");
  await press(other, "device-set");
  await locked;
  await page.locator("main", { hasText: "No standard is in force" }).waitFor();
});

test("the demo takes no site away for good", async () => {
  const page = await open();
  await write(page, "machine-tank", "33");
  await press(page, "demo");
  assert.equal(await field(page, "machine-tank").inputValue(), "10");
  await page.reload();
  await field(page, "link-back").click();
  await page.waitForFunction(() => document.querySelector('[name="machine-tank"]').value === "33");
});

test("an empty site is filled from nothing to an amount", async () => {
  const page = await open({ view: "site" });
  await press(page, "site-empty");
  assert.deepEqual(await shelf(page), []);
  for (const [kind, fields] of [
    ["machine", [["machine-name", "Our machine"], ["machine-tank", "10"]]],
    ["product", [["product-name", "Our cleaner"], ["product-label", "1:64"]]],
    ["floor", [["floor-name", "Our floor"]]],
    ["measure", [["measure-name", "Our jug"], ["measure-step", "1"]]],
  ]) {
    await press(page, `shelf-${kind}`);
    await press(page, `${kind}-add`);
    for (const [name, text] of fields) await write(page, name, text);
  }
  await go(page, "fill");
  await press(page, "stop-read");
  near((await figures(page))["fill.dose"], (10 * US_GALLON) / 65, "10 gal at 1 to 64");
  await page.reload();
  await page.locator(".view.fill").waitFor();
  assert.equal(await field(page, "machine").locator("option").count(), 1);
  await field(page, "link-back").click();
  await page.waitForFunction(() => document.querySelectorAll('[name="machine"] option').length === 3);
});
