// Fill: a label and a tank go in, an amount to measure out comes out. Every expected value is
// worked out here from the definitions, not by the page.

import assert from "node:assert/strict";
import { test } from "node:test";
import {
  IMPERIAL_FLUID_OUNCE, IMPERIAL_GALLON, US_FLUID_OUNCE, US_GALLON, choose, countOf, field, figures, near, plain,
  press, reach, remarks, settled, stageOfThisFile, write,
} from "./walk.mjs";

const { open } = await stageOfThisFile();

/** A tank of 12½ US gallons and a label of 1 to 40. */
async function ownFill() {
  const page = await open();
  await write(page, "machine-tank", "12.5");
  await write(page, "product-label", "1:40");
  return page;
}
const TANK = 12.5 * US_GALLON;

test("a label and a tank give the amount in US measures", async () => {
  const page = await ownFill();
  const shown = await figures(page);
  near(shown["fill.total"], TANK, "use solution");
  near(shown["fill.dose"], TANK / 41, "concentrate");
  near(shown["fill.water"], (TANK * 40) / 41, "water");
  near(shown["fill.ratio"], 40, "parts of water");
  const marks = Math.round(TANK / 41 / US_FLUID_OUNCE);
  assert.equal(shown["fill.count"], marks);
  near(shown["fill.rounded"], marks * US_FLUID_OUNCE, "rounded");
  assert.equal(plain(await page.locator(".amount-figure").innerText()), `${marks} fl oz`);
  const sentence = plain(await page.locator(".amount-sentence").innerText());
  for (const part of ["Neutral cleaner", `${marks} fl oz`, "mL", "gal"]) assert.ok(sentence.includes(part), sentence);
});

test("the same in metric measures", async () => {
  const page = await open();
  await choose(page, "units", "metric");
  await choose(page, "machine-tank-unit", "l");
  await write(page, "machine-tank", "55");
  await write(page, "product-label", "25 mL/L");
  await choose(page, "measure", "cup-ml");
  const strength = 0.025 / 1.025;
  const dose = 0.055 * strength;
  const shown = await figures(page);
  near(shown["fill.dose"], dose, "concentrate");
  near(shown["fill.rounded"], Math.round(dose / 10e-6) * 10e-6, "rounded to 10 mL");
  assert.equal(plain(await page.locator(".amount-figure").innerText()).replace(",", ""), "1340 mL");
});

test("the same in imperial measures, where a gallon and an ounce are others", async () => {
  const page = await open();
  await choose(page, "units", "imperial");
  await choose(page, "machine-tank-unit", "gal_imp");
  await write(page, "machine-tank", "9");
  await write(page, "product-label", "3 oz/gal");
  const share = (3 * IMPERIAL_FLUID_OUNCE) / IMPERIAL_GALLON;
  near(share, 3 / 160, "an imperial gallon holds 160 of its ounces");
  near((await figures(page))["fill.dose"], (9 * IMPERIAL_GALLON * share) / (1 + share), "concentrate");
  assert.ok((await remarks(page)).includes("note-imperial-measure"), "it says which ounces it took");
});

test("half a tank takes half", async () => {
  const page = await ownFill();
  await press(page, "level-50");
  const shown = await figures(page);
  near(shown["fill.total"], TANK / 2, "use solution");
  near(shown["fill.dose"], TANK / 2 / 41, "concentrate");
  assert.equal(await field(page, "level-50").getAttribute("aria-pressed"), "true");
  assert.equal(await field(page, "level-100").getAttribute("aria-pressed"), "false");
});

test("water first: concentrate comes on top of the level", async () => {
  const page = await ownFill();
  await choose(page, "fill-filling", "on_top");
  assert.equal(await countOf(page, "fill."), 0, "a full tank has no room on top");
  assert.match(await page.locator("#fill-level-mistake").innerText(), /no room/);
  await write(page, "fill-level", "80");
  const shown = await figures(page);
  near(shown["fill.dose"], (TANK * 0.8) / 40, "concentrate");
  near(shown["fill.total"], TANK * 0.8 * (1 + 1 / 40), "use solution");
});

test("a range offers its low end, its middle and its high end", async () => {
  const page = await ownFill();
  assert.equal(await field(page, "fill-aim").count(), 0, "one number leaves nothing to choose");
  await write(page, "product-label", "4 to 8 oz/gal");
  const amount = (ounces) => (TANK * (ounces / 128)) / (1 + ounces / 128);
  const [low, high] = [amount(4), amount(8)];
  for (const [aim, dose] of [["low", low], ["middle", (low + high) / 2], ["high", high]]) {
    await choose(page, "fill-aim", aim);
    const shown = await figures(page);
    near(shown["fill.dose"], dose, aim);
    near(shown["fill.label_low"], low, "least");
    near(shown["fill.label_high"], high, "most");
  }
});

test("a pump is counted in strokes and a cap in caps", async () => {
  const page = await ownFill();
  for (const [measure, step, word] of [["pump", 30e-6, "strokes"], ["cap", US_FLUID_OUNCE / 2, "caps"]]) {
    await choose(page, "measure", measure);
    const count = Math.round(TANK / 41 / step);
    const shown = await figures(page);
    assert.equal(shown["fill.count"], count);
    near(shown["fill.rounded"], count * step, word);
    assert.equal(plain(await page.locator(".amount-figure").innerText()), `${count} ${word}`);
  }
});

test("a label with two readings is not guessed: both are offered, and one can be taken", async () => {
  const page = await ownFill();
  await write(page, "product-label", "2:5");
  assert.equal(await countOf(page, "fill."), 0);
  const readings = field(page, "label-reading");
  const texts = await readings.allInnerTexts();
  assert.equal(new Set(texts).size, 2, String(texts));
  const doses = [];
  for (const text of texts) {
    await write(page, "product-label", "2:5");
    await readings.filter({ hasText: text }).first().click();
    await settled(page);
    assert.equal(await field(page, "product-label").inputValue(), text);
    doses.push((await figures(page))["fill.dose"]);
  }
  const expected = [(TANK * 2) / 7, (TANK * 5) / 7];
  doses.sort((a, b) => a - b).forEach((dose, index) => near(dose, expected[index], texts.join(", ")));
});

test("a label of 1 to 64 and a machine that takes 3 to 6 fl oz: both are shown, one governs", async () => {
  // Common practice, no source: the tighter rule wins, and the other stands beside it.
  const page = await open();
  await choose(page, "machine", "self-driving");
  const shown = await figures(page);
  const label = (10 * US_GALLON) / 65;
  near(shown["fill.label_low"], label, "label");
  near(shown["fill.machine_low"], 3 * US_FLUID_OUNCE, "machine, least");
  near(shown["fill.machine_high"], 6 * US_FLUID_OUNCE, "machine, most");
  near(shown["fill.dose"], 6 * US_FLUID_OUNCE, "the machine's limit");
  const warning = plain(await page.locator('[data-remark="remark-clash-machine"]').innerText());
  for (const part of [(label / US_FLUID_OUNCE).toFixed(1), "3", "6 fl oz", "governs", "weaker"]) {
    assert.ok(warning.includes(part), `${part} in: ${warning}`);
  }
  await press(page, "level-50");
  near((await figures(page))["fill.dose"], 3 * US_FLUID_OUNCE, "half a tank takes half of the window");
});

test("the workings show formula, numbers and source", async () => {
  const page = await ownFill();
  const workings = page.locator("details.workings");
  await workings.locator("summary").click();
  const steps = await workings.locator("li").allInnerTexts();
  assert.ok(steps.length >= 3, `${steps.length} steps`);
  for (const step of steps) assert.match(step, /=/);
  for (const source of await workings.locator(".source").allInnerTexts()) assert.notEqual(source.trim(), "");
});

test("what was typed stays when another record is looked at", async () => {
  const page = await ownFill();
  await choose(page, "product", "degreaser");
  await choose(page, "machine", "ride-on");
  await choose(page, "product", "neutral");
  await choose(page, "machine", "walk-behind");
  assert.equal(await (await reach(page, "machine-tank")).inputValue(), "12.5");
  assert.equal(await field(page, "product-label").inputValue(), "1:40");
});
