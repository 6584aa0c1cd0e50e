// A new finish, step by step: from its label to a draft of the standard that follows it.

import assert from "node:assert/strict";
import { test } from "node:test";
import { axe } from "./harness.mjs";
import {
  US_FLUID_OUNCE, US_GALLON, choose, field, figures, go, near, plain, press, reach, remarks, settled, stageOfThisFile,
  tick, write,
} from "./walk.mjs";

const { open } = await stageOfThisFile();

const atSite = async (look = {}) => {
  const page = await open({ view: "site", ...look });
  await press(page, "site-finish");
  return page;
};
const rows = (page, caption) => page.locator("table", { has: page.locator("caption", { hasText: caption }) }).locator("tbody tr");

test("a finish of one's own, from a blank label to the last coat", async () => {
  const page = await atSite();
  await press(page, "finish-add");
  assert.equal(await page.evaluate(() => document.activeElement.id), "finish-name", "its name comes first");
  await write(page, "finish-name", "Hall finish");
  assert.ok((await remarks(page)).includes("remark-finish-ph-unknown"), "nothing is cleared for it yet");
  for (const [name, text] of [
    ["finish-ph-low", "7"], ["finish-ph-high", "9"], ["finish-coats", "4"], ["finish-coverage", "2000"],
    ["finish-dry", "40"], ["finish-cure", "72"], ["coat-area", "6000"],
  ]) {
    await write(page, name, text);
  }
  const shown = await figures(page);
  // 4 × 6,000 ft² ÷ 2,000 ft²/gal.
  near(shown["finish.volume"], 12 * US_GALLON, "finish");
  near(shown["finish.coat"], 3 * US_GALLON, "one coat");
  assert.equal(shown["finish.dry_to"], 40 * 60);
  assert.deepEqual([1, 2, 3, 4].map((n) => shown[`finish.coat.${n}.to`]), [0, 40, 80, 120].map((minutes) => minutes * 60));
  await write(page, "first-coat", "2026-03-07");
  await write(page, "first-coat-at", "18:30");
  const coats = await rows(page, "When each coat").allInnerTexts();
  assert.equal(coats.length, 4);
  assert.match(coats[3], /Saturday Mar 7, 2026, 20:30/);
  // Python's datetime: 18:30 and 4 × 40 min and 72 h.
  assert.match(await page.locator(".finish-steps").innerText(), /First wet scrub, not before: Tuesday Mar 10, 2026, 21:10/);
  await write(page, "first-coat", "March");
  assert.match(await page.locator("#first-coat-mistake").innerText(), /year-month-day/);
  assert.equal(await field(page, "first-coat").inputValue(), "March", "what was typed stays");
});

test("strip solution in whole tanks, with what to wear and where not to walk", async () => {
  const page = await atSite();
  await choose(page, "stripper", "stripper");
  await write(page, "strip-dilution", "1:10");
  await write(page, "coat-area", "2500");
  const shown = await figures(page);
  near(shown["finish.strip"], 25 * US_GALLON, "strip solution");
  near(shown["finish.strip_concentrate"], (25 * 128 * US_FLUID_OUNCE) / 11, "stripper");
  assert.equal(shown["finish.strip_tanks"], 2);
  near(shown["finish.strip_last"], 5 * US_GALLON, "the last tank");
  const text = await page.locator(".finish-steps .caution").first().innerText();
  for (const word of [/goggles/, /slippery/, /wet-floor signs/, /label governs/]) assert.match(text, word);
  await choose(page, "floor", "terrazzo");
  assert.ok((await remarks(page)).includes("remark-strip-floor"), "alkali harms terrazzo");
});

test("a rinse is neutral by its reading, and nothing goes on before", async () => {
  const page = await atSite();
  const says = () => page.locator("[data-rinsed]").getAttribute("data-rinsed");
  assert.equal(await says(), "rinsed-unknown");
  await write(page, "rinse-ph", "10");
  assert.equal(await says(), "rinsed-alkaline");
  await write(page, "rinse-ph", "7.5");
  assert.equal(await says(), "rinsed-neutral");
});

test("what may clean it is ranked, and a narrower finish clears nothing more", async () => {
  const page = await atSite();
  const ranks = async () => {
    const all = await rows(page, "What may clean").locator("td[data-suits]").evaluateAll((cells) => cells.map((cell) => cell.dataset.suits));
    const order = ["floor-verdict-fits-short", "floor-verdict-unknown-short", "floor-verdict-does-not-fit-short"];
    return all.map((one) => order.indexOf(one));
  };
  const wide = await ranks();
  assert.ok(wide.length >= 8 && wide[0] === 0);
  assert.deepEqual(wide, [...wide].sort(), "what fits, what is not known, what does not");
  await write(page, "finish-ph-low", "8.2");
  const narrow = await ranks();
  assert.ok(!narrow.includes(0), "pH 7 and 7.6 lie below it");
  await write(page, "finish-ph-low", "");
  await write(page, "finish-ph-high", "");
  assert.ok(!(await ranks()).includes(0), "an unknown finish clears nothing");
});

test("three patches, what was seen, and a draft of the one that is chosen", async () => {
  const page = await atSite();
  await press(page, "trial-add");
  await choose(page, "trial-product", "daily");
  const shown = await figures(page);
  // A litre at 1 oz/gal, 1 part in 129.
  near(shown["finish.patch.1.exact"], 1e-3 / 129, "concentrate");
  near(shown["finish.patch.1.rounded"], 8e-6, "in a small cylinder");
  assert.match(plain(await rows(page, "What to mix").first().innerText()), /8 mL/);
  await choose(page, "patch-1-film", "slight");
  await choose(page, "patch-2-film", "none");
  await write(page, "patch-2-gloss", "68");
  assert.equal(await rows(page, "What to mix").nth(1).getAttribute("class"), "chosen");
  assert.ok((await remarks(page)).includes("remark-trial-suggests"));
  await press(page, "choose-patch-2");
  const standards = JSON.parse(await page.evaluate(() => Object.values(localStorage).find((text) => text.includes('"standards"')))).site.standards;
  const draft = standards.at(-1);
  // Half way between 1/129 and 3/131 is 1 part in 65.247; written as the label writes it, 2 oz/gal: 1 part in 65.
  assert.deepEqual([draft.standing, draft.floor, draft.product, draft.dilution], ["draft", "vinyl", "daily", "2 oz/gal"]);
});

test("what was seen on a patch stays in sight while nothing can be mixed", async () => {
  const page = await atSite();
  await write(page, "patch-1-gloss", "61");
  await write(page, "trial-batch", "a cup");
  assert.ok(await page.locator("#trial-batch-mistake").isVisible());
  assert.equal(await field(page, "patch-1-gloss").inputValue(), "61");
  assert.ok(await field(page, "patch-3-note").isVisible());
});

test("a finish on its floor narrows the floor everywhere", async () => {
  const page = await atSite();
  await press(page, "choose-on-floor");
  await go(page, "cautions");
  await write(page, "product-ph", "8.8");
  assert.equal(await page.locator(".fits [data-verdict]").getAttribute("data-verdict"), "floor-verdict-does-not-fit");
  await go(page, "fill");
  assert.ok((await remarks(page)).includes("remark-floor-does-not-fit"));
  await go(page, "flow");
  await choose(page, "floor-finish", "");
  assert.ok(!(await remarks(page)).includes("remark-floor-does-not-fit"), "without it the vinyl alone counts");
});

test("every step is reached by the keyboard alone, on a phone too", async () => {
  const page = await atSite({ width: 360, height: 740 });
  const finish = await reach(page, "finish-name");
  await finish.focus();
  const seen = new Set();
  for (let count = 0; count < 120; count += 1) {
    await page.keyboard.press("Tab");
    seen.add(await page.evaluate(() => document.activeElement.getAttribute("name")));
  }
  for (const name of ["finish-cure", "finish-burnish", "stripper", "strip-dilution", "first-coat-at", "rinse-ph", "trial-floor", "patch-1-film", "patch-3-note", "choose-patch-1", "choose-on-floor"]) {
    assert.ok(seen.has(name), `${name} is reached`);
  }
  assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth), "nothing runs out at the side");
  await tick(page, "finish-burnish", false);
  await settled(page);
  assert.deepEqual(await axe(page), []);
});
