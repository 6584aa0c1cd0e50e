// Shift: what a list of areas takes, as whole fills.

import assert from "node:assert/strict";
import { test } from "node:test";
import {
  FOOT, US_GALLON, choose, countOf, field, figures, near, plain, press, remarks, stageOfThisFile, tick, write,
} from "./walk.mjs";

const { open } = await stageOfThisFile();
const atShift = () => open({ view: "shift" });

/** The figures of the rows of a table: one object a row. */
async function rows(page, table) {
  const found = [];
  for (const [name, si] of Object.entries(await figures(page))) {
    const [, number, what] = name.match(new RegExp(`^shift\\.${table}\\.(\\d+)\\.(\\w+)$`)) ?? [];
    if (number) (found[number - 1] ??= {})[what] = si;
  }
  return found;
}

const sum = (all, what) => all.reduce((total, row) => total + row[what], 0);

/** Totals are the sums of the rows: a few roundings apart, no more. */
function same(actual, expected, message) {
  assert.ok(Math.abs(actual - expected) <= 1e-9 * expected, `${message}: ${actual}, ${expected}`);
}

async function totalsHold(page) {
  const [shown, fills, areas] = [await figures(page), await rows(page, "fill"), await rows(page, "area")];
  assert.equal(fills.length, shown["shift.fills"]);
  same(sum(fills, "water"), shown["shift.water"], "water");
  same(sum(fills, "concentrate"), shown["shift.concentrate"], "concentrate");
  same(shown["shift.water"] + shown["shift.concentrate"], shown["shift.solution"], "solution");
  same(sum(areas, "solution"), shown["shift.solution"], "solution of the areas");
  same(sum(areas, "run_time"), shown["shift.run_time"], "time of the areas");
  return { shown, fills, areas };
}

test("totals are the sums of the fills and of the areas", async () => {
  const page = await atShift();
  const { shown, fills } = await totalsHold(page);
  near(shown["shift.area"], (6000 + 2400 + 9000 + 1800) * FOOT * FOOT, "the ticked areas");
  assert.equal(fills.length, Math.ceil(shown["shift.solution"] / (10 * US_GALLON) - 1e-9));
  for (const fill of fills) {
    near(fill.concentrate * 64, fill.water, "1 to 64 in each fill");
    assert.ok(fill.water + fill.concentrate <= 10 * US_GALLON * (1 + 1e-9), "no fill is more than the tank");
  }
  near(shown["shift.total_time"], shown["shift.run_time"] + (fills.length - 1) * 600, "ten minutes a refill");
});

test("the same totals with a machine that uses its solution again, and without refill time", async () => {
  const page = await atShift();
  await choose(page, "machine", "self-driving");
  await totalsHold(page);
  assert.ok((await remarks(page)).includes("remark-shift-clash"), "label and machine clash there");
  await write(page, "shift-refill", "");
  const { shown } = await totalsHold(page);
  near(shown["shift.total_time"], shown["shift.run_time"], "time");
});

test("an area is added, sized, given a floor, and counts", async () => {
  const page = await atShift();
  const before = await figures(page);
  await press(page, "area-add");
  assert.equal(await countOf(page, "shift."), 0, "an area without a size gives no answer");
  await write(page, "area-6-name", "Annex");
  await choose(page, "area-6-floor", "concrete");
  await write(page, "area-6-size", "1,500");
  const { shown } = await totalsHold(page);
  near(shown["shift.area"] - before["shift.area"], 1500 * FOOT * FOOT, "area", 1e-9);
  assert.ok(shown["shift.solution"] > before["shift.solution"]);
  assert.match(await page.locator(".answer").innerText(), /Annex/);
});

test("an area moves up, and the work follows the list", async () => {
  const page = await atShift();
  const order = async () => (await page.locator(".answer table").nth(1).locator("tbody th").allInnerTexts()).map((name) => name.replace(/^\d+\s*/, ""));
  assert.deepEqual(await order(), ["Reading room", "Entrance hall", "Sports hall", "Changing rooms"]);
  await press(page, "area-3-up");
  assert.deepEqual(await order(), ["Reading room", "Sports hall", "Entrance hall", "Changing rooms"]);
  assert.equal(await field(page, "area-1-up").count(), 0, "the first has nowhere to go");
  await totalsHold(page);
});

test("an area is removed, and comes back with one step", async () => {
  const page = await atShift();
  const before = await figures(page);
  await press(page, "area-2-remove");
  assert.equal(await field(page, "area-2-name").inputValue(), "Sports hall");
  near((await figures(page))["shift.area"], (6000 + 9000 + 1800) * FOOT * FOOT, "area");
  await press(page, "undo");
  assert.equal(await field(page, "area-2-name").inputValue(), "Entrance hall");
  assert.deepEqual(await figures(page), before);
});

test("an area left out is not counted, and stays in the list", async () => {
  const page = await atShift();
  await tick(page, "area-3-included", false);
  const { shown } = await totalsHold(page);
  near(shown["shift.area"], (6000 + 2400 + 1800) * FOOT * FOOT, "area");
  assert.equal(await field(page, "area-3-name").inputValue(), "Sports hall");
  for (const number of [1, 2, 4]) await tick(page, `area-${number}-included`, false);
  assert.equal(await countOf(page, "shift."), 0);
  assert.match(await page.locator(".troubles").innerText(), /Tick an area, or add one/);
});

test("a floor that areas use stays, and says who uses it", async () => {
  const page = await open({ view: "flow" });
  await choose(page, "floor", "terrazzo");
  assert.equal(await field(page, "floor-remove").count(), 0);
  assert.match(await page.locator("details", { has: field(page, "floor-name") }).textContent(), /used by: .*\(Area\)/s);
});

test("an area whose floor is not on the site says so at its field", async () => {
  const page = await open({ view: "shift" });
  // A site from elsewhere may lack it.
  await page.evaluate(() => {
    const typed = JSON.parse(localStorage.getItem("brimline.typed"));
    typed.site.floors = typed.site.floors.filter(({ id }) => id !== "terrazzo");
    localStorage.setItem("brimline.typed", JSON.stringify(typed));
  });
  await page.reload();
  await page.locator(".view.shift").waitFor();
  assert.equal(await countOf(page, "shift."), 0);
  assert.match(await page.locator(".troubles").innerText(), /Choose its floor/);
  await choose(page, "area-2-floor", "vinyl");
  await totalsHold(page);
});

test("a mistyped size stands at its area, and names it", async () => {
  const page = await atShift();
  await write(page, "area-1-size", "0");
  assert.ok(await page.locator("#area-1-size-mistake").isVisible());
  await write(page, "area-3-size", "big");
  assert.equal(await page.locator(".troubles li").count(), 2, "each has its line");
  assert.equal(await field(page, "area-3-size").inputValue(), "big");
});

test("floors that the settings cannot serve are named", async () => {
  const page = await atShift();
  await write(page, "machine-speed", "4");
  const short = page.locator('[data-remark="remark-shift-short"]');
  assert.ok((await short.count()) > 0);
  assert.match(plain(await short.first().innerText()), /Entrance hall|Changing rooms/);
});

test("areas with another product are put together, and the change is counted", async () => {
  const page = await open({ view: "shift" });
  await choose(page, "area-2-product", "vinegar");
  await choose(page, "area-4-product", "vinegar");
  await choose(page, "area-2-floor", "wood");
  if (await page.locator(".stop").count()) await press(page, "stop-read");
  near((await figures(page))["shift.changes"], 3);
  assert.match(await page.locator(".areas").innerText(), /better order: 1\./);
  await press(page, "areas-order");
  if (await page.locator(".stop").count()) await press(page, "stop-read");
  near((await figures(page))["shift.changes"], 1);
  assert.match(await page.locator(".areas").innerText(), /No order has fewer/);
  assert.equal(await page.locator("li.area").count(), 5, "no area is lost");
  assert.match(await page.locator("caption", { hasText: "fill" }).first().locator("..").innerText(), /Vinegar/);
  await write(page, "area-1-closes", "0.01");
  assert.match(await page.locator(".areas .mistake").innerText(), /cannot all be done/);
});

test("a time of an area that is none is said at its field and in the list", async () => {
  const page = await open({ view: "shift" });
  await write(page, "area-2-closes", "-1");
  assert.notEqual(await page.locator("#area-2-closes-mistake").innerText(), "");
  assert.match(await page.locator(".troubles").innerText(), /Done by 2/);
  assert.ok(await countOf(page, "shift.fills"), "the shift itself stands");
});
