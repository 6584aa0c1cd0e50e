// A shift of several machines: who cleans what, what it costs, what a month takes, and another way beside it.

import assert from "node:assert/strict";
import { test } from "node:test";
import {
  FOOT, US_GALLON, choose, countOf, field, figures, near, plain, press, reach, remarks, settled, stageOfThisFile, tick, write,
} from "./walk.mjs";

const { open } = await stageOfThisFile();
const atShift = (look = {}) => open({ view: "shift", ...look });
const said = (page, code) => page.locator(`[data-remark="${code}"]`).innerText().then(plain);

/** Sums are a few roundings apart, no more. */
const same = (actual, expected, message) =>
  assert.ok(Math.abs(actual - expected) <= 1e-9 * Math.abs(expected), `${message}: ${actual}, ${expected}`);

test("an area takes another machine: both stand side by side", async () => {
  const page = await atShift();
  const before = await figures(page);
  assert.equal(await countOf(page, "shift.machine."), 0, "one machine needs no table of machines");
  await choose(page, "area-3-machine", "ride-on");
  const shown = await figures(page);
  near(shown["shift.machine.1.areas"], 3);
  near(shown["shift.machine.2.areas"], 1);
  same(shown["shift.machine.1.run_time"] + shown["shift.machine.2.run_time"], shown["shift.run_time"], "time at the floor");
  same(shown["shift.total_time"], Math.max(shown["shift.machine.1.total_time"], shown["shift.machine.2.total_time"]), "the last to end");
  assert.ok(shown["shift.total_time"] < before["shift.total_time"], "two machines are done sooner");
  assert.match(await page.locator(".answer").innerText(), /Fills, in order: Ride-on/);
  const timeline = page.locator("svg.drawing").first();
  assert.match(await timeline.getAttribute("aria-label"), /2 machines/);
  assert.deepEqual((await timeline.locator("text").allTextContents()).filter((text) => /^[1-4]$/.test(text)).sort(), ["1", "2", "3", "4"], "each area is a block with its number");
});

test("the steps follow each other, and the last ends with the shift", async () => {
  const page = await atShift();
  await choose(page, "area-4-product", "degreaser");
  await write(page, "area-3-way", "4");
  await tick(page, "area-1-loose", true);
  if (await page.locator(".stop").count()) await press(page, "stop-read");
  const shown = await figures(page);
  const steps = [];
  for (const [name, si] of Object.entries(shown)) {
    const [, number, what] = name.match(/^shift\.step\.(\d+)\.(\w+)$/) ?? [];
    if (number) (steps[number - 1] ??= {})[what] = si;
  }
  assert.ok(steps.length > 6);
  let clock = 0;
  for (const { from, lasts } of steps) {
    assert.ok(Math.abs(from - clock) < 1e-6, `${from} after ${clock}`);
    clock = from + lasts;
  }
  same(clock, shown["shift.total_time"], "the end");
  await page.locator("summary", { hasText: "Every step" }).click();
  const table = await page.locator("table", { hasText: "Steps, in order" }).innerText();
  for (const step of ["Dry-mop", "Clean", "Go", "Change product: dump, rinse, fill 2"]) assert.ok(table.includes(step), step);
  assert.match(await said(page, "remark-dry-mop"), /Reading room/);
});

test("where a machine does not work on its own, the area is named and its labour counted", async () => {
  const page = await atShift();
  await choose(page, "machine", "self-driving");
  assert.match(await said(page, "remark-alone-wide"), /Sports hall: wider than 30 ft/);
  const { "shift.labour": before } = await figures(page);
  await write(page, "area-3-lane", "25");
  await choose(page, "area-3-around", "there");
  assert.ok(!(await remarks(page)).includes("remark-alone-wide"));
  assert.ok((await figures(page))["shift.labour"] < before);
  await write(page, "area-1-lane", "2");
  assert.match(await said(page, "remark-alone-narrow"), /Reading room: the lanes are narrower than 3 ft/);
  await write(page, "area-2-lane", "");
  assert.match(await said(page, "remark-alone-unknown"), /Entrance hall: measure the lanes/);
  await tick(page, "machine-unattended", false);
  assert.ok(!(await remarks(page)).some((code) => code.startsWith("remark-alone")), "somebody walks with it");
});

test("a battery and a recovery tank that are too small stand in the plan", async () => {
  const page = await atShift();
  await write(page, "machine-recovery", "5");
  assert.match(await said(page, "remark-recovery"), /fill to 5 gal only/);
  for (let fill = 1; fill <= 2; fill += 1) {
    const shown = await figures(page);
    same(shown[`shift.fill.${fill}.water`] + shown[`shift.fill.${fill}.concentrate`], 5 * US_GALLON, "a fill");
  }
  await write(page, "machine-battery", "1");
  near((await figures(page))["shift.charges"], 2);
  assert.match(await said(page, "remark-battery"), /2 charges of 8 h 0 min/);
});

test("the cost is the sum of its parts, and follows the prices", async () => {
  const page = await atShift();
  const cost = async () => {
    const shown = await figures(page);
    const parts = ["concentrate", "water", "labour"].map((part) => shown[`cost.${part}`] ?? 0);
    same(parts.reduce((sum, part) => sum + part), shown["cost.total"], "the sum");
    same(shown["cost.each"] * shown["shift.area"], shown["cost.total"], "for each piece of floor");
    return shown;
  };
  const before = await cost();
  // 62 for 5 gal; an hour at 18.
  same(before["cost.concentrate"], before["shift.concentrate"] / US_GALLON * 62 / 5, "concentrate");
  same(before["cost.labour"], before["shift.labour"] / 3600 * 18, "labour");
  await write(page, "cost-wage", "36");
  same((await cost())["cost.labour"], 2 * before["cost.labour"], "twice the wage");
  await write(page, "site-currency", "€");
  const table = plain(await page.locator("table", { hasText: "Cost of this shift" }).innerText());
  assert.match(table, /€\d+\.\d\d/);
  assert.match(table, /per 1000 ft²/);
  await write(page, "cost-wage", "");
  assert.ok((await remarks(page)).includes("remark-cost-no-wage"));
  assert.equal((await cost())["cost.labour"], undefined);
  await write(page, "cost-wage", "a lot");
  assert.ok(await page.locator("#cost-wage-mistake").isVisible());
  assert.ok(await countOf(page, "shift.fills"), "the shift itself stands");
});

test("the month and the year follow how often areas are cleaned", async () => {
  const page = await atShift();
  for (const number of [1, 2, 3, 4, 5]) await write(page, `area-${number}-frequency`, "");
  assert.equal(await countOf(page, "year."), 0);
  assert.match(await page.locator(".answer").innerText(), /how often it is cleaned/);
  await write(page, "area-1-frequency", "2");
  await choose(page, "area-1-frequency-unit", "per_month");
  const shown = await figures(page);
  same(shown["month.area"], 2 * 6000 * FOOT * FOOT, "twice a month");
  same(shown["year.area"], 24 * 6000 * FOOT * FOOT, "24 times a year");
  same(shown["year.solution"], 24 * shown["shift.area.1.solution"], "solution");
  assert.match(plain(await page.locator("table", { hasText: "Stock" }).innerText()), /Neutral cleaner/);
  assert.ok(shown["stock.1.reorder"] > shown["stock.1.safety"]);
});

test("another product and another setting stand beside the plan", async () => {
  const page = await atShift();
  await choose(page, "compare-product", "hand-soap");
  const beside = async () => {
    const shown = await figures(page);
    return Object.fromEntries(Object.entries(shown).filter(([name]) => name.startsWith("compare.")));
  };
  const soap = await beside();
  // 1 oz/gal of water, 1 to 128, beside 1 to 64.
  same(soap["compare.shift.concentrate"] / (await figures(page))["shift.concentrate"], 65 / 129, "concentrate");
  assert.match(await page.locator('[data-compare="remark-foam-refuse"]').innerText(), /./, "what is wrong with it is said");
  assert.ok((await page.locator(".stop").count()) === 0, "the plan itself is not stopped");
  await choose(page, "compare-product", "");
  await write(page, "compare-setting", "3");
  const wet = await beside();
  assert.ok(wet["compare.shift.solution"] > (await figures(page))["shift.solution"]);
  assert.match(await page.locator('[data-compare="remark-forced-too-wet"]').innerText(), /Reading room/);
  await write(page, "compare-setting", "9");
  assert.match(await page.locator("#compare-setting-mistake").innerText(), /no such setting/);
  assert.equal(await countOf(page, "compare."), 0);
  await write(page, "compare-setting", "");
  assert.equal(await countOf(page, "compare."), 0);
});

test("what is wrong with the machine of an area stands at the area", async () => {
  const page = await atShift();
  await choose(page, "machine", "ride-on");
  await write(page, "machine-path", "");
  await choose(page, "machine", "walk-behind");
  await choose(page, "area-2-machine", "ride-on");
  assert.equal(await countOf(page, "shift.solution"), 0);
  assert.match(await page.locator(".troubles").innerText(), /Choose that machine above and mend it/);
  await page.locator(".troubles a", { hasText: /Choose that machine/ }).or(page.locator(".troubles li").first()).first().click();
  await choose(page, "area-2-machine", "");
  assert.ok(await countOf(page, "shift.solution"));
});

test("a thousand areas: typed page by page, told in part, and quick", async () => {
  const page = await atShift();
  await write(page, "area-1-size", "6001");
  await page.evaluate(() => {
    const typed = JSON.parse(localStorage.getItem("brimline.typed"));
    const [first] = typed.site.areas;
    typed.site.areas = Array.from({ length: 1000 }, (_, index) => ({
      ...first, id: `n${index + 1}`, name: `Room ${index + 1}`, size: { text: String(500 + (index * 37) % 4000), unit: "ft2" },
    }));
    localStorage.setItem("brimline.typed", JSON.stringify(typed));
  });
  await page.reload();
  await page.locator(".view.shift").waitFor();
  assert.equal(await page.locator("li.area").count(), 25);
  assert.match(await page.locator(".areas").innerText(), /Areas 1 to 25 of 1,000/);
  await press(page, "areas-after");
  assert.equal(await field(page, "area-26-name").inputValue(), "Room 26");
  await write(page, "area-30-size", "?");
  await press(page, "areas-before");
  assert.equal(await page.locator("li.area").count(), 26, "what is to be mended stays in sight");
  await write(page, "area-30-size", "700");
  assert.equal(await page.locator("li.area").count(), 26, "nor does it go while it is typed in");
  await press(page, "areas-after");
  await press(page, "areas-before");
  assert.equal(await page.locator("li.area").count(), 25);
  const areas = page.locator("table", { hasText: "Areas, in order" });
  assert.equal(await areas.locator("tbody tr").count(), 100);
  await page.locator('[name="rows-all"]').first().click();
  await settled(page);
  assert.equal(await areas.locator("tbody tr").count(), 1000);
  await press(page, "area-add");
  await write(page, "area-1001-size", "800");
  assert.ok(await countOf(page, "shift.solution"));
});

test("an area that is moved up keeps the focus, and can be moved on", async () => {
  const page = await atShift();
  await field(page, "area-3-up").focus();
  await page.keyboard.press("Enter");
  await settled(page);
  assert.equal(await page.evaluate(() => document.activeElement.name), "area-2-up");
  assert.equal(await field(page, "area-2-name").inputValue(), "Sports hall");
  await page.keyboard.press("Enter");
  await settled(page);
  assert.equal(await field(page, "area-1-name").inputValue(), "Sports hall");
  assert.equal(await page.evaluate(() => document.activeElement.name), "area-1-name");
});

test("by keyboard: an area's machine, its lanes and a price", async () => {
  const page = await atShift();
  const summary = page.locator("li.area").nth(1).locator("summary");
  await summary.focus();
  await page.keyboard.press("Enter");
  await page.keyboard.press("Tab");
  assert.equal(await page.evaluate(() => document.activeElement.name), "area-2-machine");
  await page.keyboard.type("Self");
  await settled(page);
  assert.equal(await field(page, "area-2-machine").inputValue(), "self-driving");
  await page.keyboard.press("Tab");
  assert.equal(await page.evaluate(() => document.activeElement.name), "area-2-frequency");
  assert.ok(await (await reach(page, "area-2-lane")).isVisible(), "a machine that works alone asks for the lanes");
});
