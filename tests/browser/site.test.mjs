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

/** Sets the device to its standards, and goes to Fill. */
async function atStation(page) {
  await press(page, "site-device");
  await write(page, "device-code", "alder 7");
  const again = page.waitForEvent("load");
  await press(page, "device-set");
  await again;
  await page.locator('nav a[href="#fill"]').click();
  await page.locator(".view.fill").waitFor();
}

/** Goes to a field with the keyboard, and presses or types there. */
async function keys(page, name, { press: key, type }) {
  await field(page, name).focus();
  if (key) await page.keyboard.press(key);
  if (type) await page.keyboard.type(type);
  await settled(page);
}

const WHY = "It leaves streaks at the doors";

test("a standard leaves a machine out: no proof, no chart, and no amount at the station", async () => {
  const page = await open({ view: "fill" });
  await choose(page, "machine", "self-driving");
  await go(page, "site");
  await draft(page);
  assert.ok((await remarks(page)).includes("remark-clash-machine"));
  await keys(page, "leave-2", { press: "Space" });
  assert.ok((await remarks(page)).includes("finding-left-out-why"));
  assert.ok(!(await remarks(page)).includes("remark-clash-machine"), "it is not checked there");
  await keys(page, "leave-2-reason", { type: "x" });
  await field(page, "standard-author").focus();
  assert.match(await page.locator("#leave-2-reason-mistake").innerText(), /two words/);
  await keys(page, "leave-2-reason", { press: "Backspace", type: WHY });
  assert.ok(!(await remarks(page)).includes("finding-left-out-why"));
  assert.equal(await page.locator('[data-dose="self-driving"]').count(), 0);
  await letPass(page);
  await keys(page, "standard-publish", { press: "Enter" });
  assert.match(await page.locator('[data-left-out="self-driving"]').innerText(), new RegExp(WHY));

  await press(page, "site-paper");
  const row = page.locator('[data-part="chart"] [data-machine="self-driving"]');
  assert.match(await row.textContent(), new RegExp(`Not for this standard: ${WHY}`));
  assert.equal(await row.locator("[data-answer]").count(), 0);
  await page.locator("details", { has: row }).locator("summary").click();
  const size = (one) => one.first().evaluate((shown) => getComputedStyle(shown).fontSize);
  assert.equal(await size(row.locator(".why")), await size(page.locator('[data-part="chart"] div.dose')), "as large as a dose");

  await go(page, "fill");
  assert.ok((await remarks(page)).includes("remark-standard-leaves-out"));
  assert.equal(await countOf(page, "fill.dose"), 1, "a warning where anything may be asked");
  await go(page, "site");
  await atStation(page);
  assert.match(await page.locator(".stop").innerText(), new RegExp(WHY));
  assert.equal(await countOf(page, "fill.dose") + (await field(page, "stop-read").count()), 0, "and reading makes no amount");
  await choose(page, "machine", "ride-on");
  assert.equal(await countOf(page, "fill.dose"), 1);
});

test("what a standard let pass is one line on Fill, and a station offers what can be measured with", async () => {
  const page = await open({ view: "fill" });
  await choose(page, "machine", "self-driving");
  await go(page, "site");
  await draft(page);
  await letPass(page);
  await press(page, "standard-publish");
  await go(page, "fill");
  const line = page.locator('.assumptions [data-remark="remark-clash-machine"]');
  assert.match(await line.innerText(), / – let pass by K\. M\., version 1: Seen and measured in the hall$/);
  assert.equal(await page.locator('.remark[data-remark="remark-clash-machine"]').count(), 0);

  await go(page, "site");
  await atStation(page);
  const offered = () => page.locator("#measure option").evaluateAll((all) => all.map(({ value }) => value));
  assert.ok(!(await offered()).includes("own"));
  assert.match(await page.locator("#measure-hint").innerText(), /The machine’s own bottle \(Ratios that the machine can set\)/);
  await choose(page, "machine", "ride-on");
  assert.ok((await offered()).includes("own"));
  await choose(page, "measure", "own");
  assert.ok("fill.rounded_ratio" in (await figures(page)), "a ratio to set");
  await choose(page, "machine", "self-driving");
  assert.equal(await countOf(page, "fill.dose"), 1, "another measure in its place");
});

test("a standard waits for its first day, and the earlier one holds until then", async () => {
  const day = (page, text) => page.clock.setFixedTime(new Date(`${text}T09:00:00`));
  const page = await open({ view: "fill", before: (opening) => day(opening, "2026-02-28") });
  await choose(page, "machine", "walk-behind");
  await write(page, "product-label", "1:64 to 1:128");
  await go(page, "site");
  await draft(page);
  await write(page, "standard-dilution", "1:100");
  await letPass(page);
  await press(page, "standard-publish");
  await press(page, "standard-next");
  await write(page, "standard-dilution", "1:80");
  await write(page, "standard-reason", "More soil in winter");
  await write(page, "standard-effective", "2026-3-1");
  await letPass(page);
  assert.match(await field(page, "standard-publish").innerText(), /Mar 1, 2026/);
  await press(page, "standard-publish");
  const list = async () => (await page.locator('[name="standard-open"]').allInnerTexts()).map((one) => one.replace(/\s+/g, " "));
  assert.deepEqual((await list()).map((one) => one.match(/version .*/)[0]), ["version 1 in force", "version 2 in force from Mar 1, 2026"]);
  await press(page, "site-paper");
  assert.match(await page.locator('[data-part="chart"] .standing').textContent(), /Not in force before Mar 1, 2026/);
  assert.equal(await page.locator('[data-part="chart"] .qr-code').count(), 0);
  await go(page, "fill");
  near((await figures(page))["fill.dose"], (10 * US_GALLON) / 101, "the earlier one governs");

  await day(page, "2026-03-01");
  await press(page, "level-50");
  near((await figures(page))["fill.dose"], (5 * US_GALLON) / 81, "its day has come");
  await go(page, "site");
  await press(page, "site-standards");
  assert.deepEqual((await list()).map((one) => one.match(/version .*/)[0]), ["version 2 in force", "version 1 replaced"]);
});

test("two records of one name and reasons that say nothing are told where they are typed", async () => {
  const page = await open({ view: "site" });
  await page.locator('.records [data-id="ride-on"]').click();
  await write(page, "machine-name", "small Walk-behind");
  assert.match(await page.locator("#machine-name-mistake").innerText(), /same name/);
  assert.match(await page.locator("#record .troubles h2").innerText(), /before anybody uses this record/);
  await draft(page);
  assert.ok((await remarks(page)).includes("finding-same-name"));
  await write(page, "standard-reason", "x");
  assert.match(await page.locator("#standard-reason-mistake").innerText(), /two words/);
  assert.ok((await remarks(page)).includes("finding-short-reason"));
  const override = page.locator('.findings [data-blocks="false"] input').first();
  await override.fill("ok");
  await override.blur();
  assert.match(await page.locator('.findings [data-blocks="false"] .mistake').first().innerText(), /two words/);
  assert.equal(await page.locator(".findings li.news").count(), 0, "it still waits");
});
