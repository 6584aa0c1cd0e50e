// Fill with every kind of measure, label and rule. Volumes and weights are exact by NIST SP 811,
// Appendix B: 1 gal = 128 fl oz, 1 oz = 28.349523125 g.

import assert from "node:assert/strict";
import { test } from "node:test";
import { unfoldAll } from "./states.mjs";
import {
  US_FLUID_OUNCE, US_GALLON, choose, countOf, field, figures, near, plain, press, remarks, stageOfThisFile,
  write,
} from "./walk.mjs";

const { open } = await stageOfThisFile();
const OUNCE = 0.028349523125;
const amount = async (page) => plain(await page.locator(".amount-figure").innerText());
const messageAt = (page, name) => page.locator(`#${name}-mistake`).innerText();
const windowRows = (page) => page.locator("svg.drawing[aria-label*='Dose'] text").allTextContents();

test("a wall unit: the tip whose catch test is nearest", async () => {
  const page = await open();
  await choose(page, "measure", "wall");
  assert.equal(await amount(page), "Tip 3");
  const found = await figures(page);
  near(found["fill.setting"], 3);
  // 185 of 12,000 mL a minute.
  await unfoldAll(page);
  await write(page, "measure-tip-3", "");
  // Tip 2 makes 1 to 125: no instruction until that was read.
  assert.ok((await remarks(page)).includes("remark-setting-outside"));
  assert.equal(await countOf(page, "fill.setting"), 0);
  await press(page, "stop-read");
  assert.equal(await amount(page), "Tip 2", "a tip that was not tried is left out");
  assert.match(await page.locator(".amount").innerText(), /Do not fill with this/);
  assert.equal(await page.locator(".steps").count(), 0, "no instruction");
  await press(page, "tip-add");
  await write(page, "measure-tip-4", "184");
  assert.equal(await amount(page), "Tip 4");
  await write(page, "measure-tip-4", "20,000");
  assert.match(await messageAt(page, "measure-tip-4"), /most that fits/i);
  assert.equal(await field(page, "measure-tip-4").inputValue(), "20,000", "what was typed stays");
  await write(page, "measure-tip-4", "184");
  const steps = await page.locator(".steps li").allInnerTexts();
  assert.ok(steps.length === 5 && /Tip 4/.test(steps[1]), "nothing is measured by hand");
});

test("a machine that meters from its own bottle", async () => {
  const page = await open();
  await choose(page, "machine", "ride-on");
  await choose(page, "measure", "own");
  assert.equal(await amount(page), "1 to 64");
  const found = await figures(page);
  // A gallon of concentrate, and 30/64 gal for each tank of water.
  near(found["fill.bottle_fills"], 64 / 30);
  near(found["fill.water"], 30 * US_GALLON);
  await unfoldAll(page);
  await write(page, "machine-ratios", "few");
  assert.match(await messageAt(page, "machine-ratios"), /parts of water/);
});

test("a powder: weighed, scooped, and never pumped", async () => {
  const page = await open();
  await choose(page, "product", "powder");
  await choose(page, "measure", "scale");
  near((await figures(page))["fill.mass"], 5 * OUNCE);
  assert.equal(await amount(page), "142 g", "in the scale's own unit");
  await choose(page, "measure", "scoop");
  assert.equal(await amount(page), "6 level scoops");
  await write(page, "product-density", "");
  assert.match(await messageAt(page, "product-density"), /Density/);
  await choose(page, "measure", "pump");
  assert.match(await page.locator(".troubles").innerText(), /cannot take a powder/);
});

test("packets are whole, and the water follows them", async () => {
  const page = await open();
  await choose(page, "product", "tablets");
  assert.equal(await amount(page), "5 packets or tablets");
  await write(page, "fill-level", "90");
  assert.equal(await amount(page), "4 packets or tablets");
  near((await figures(page))["fill.total"], 8 * US_GALLON);
  assert.ok((await remarks(page)).includes("remark-packets-level"));
});

test("a label in ppm asks for the active substance at once", async () => {
  const page = await open();
  await write(page, "product-label", "200 ppm");
  assert.match(await messageAt(page, "product-active"), /Active substance/);
  await write(page, "product-active", "10");
  // 200 mg/L of 100 g/L.
  near((await figures(page))["fill.dose"], 0.002 * 10 * US_GALLON);
  near((await figures(page))["fill.active"], 0.2);
});

test("the rules on one axis, and the one that governs by name", async () => {
  const page = await open();
  await choose(page, "product", "quat");
  await write(page, "product-label", "1:128 to 1:256");
  await write(page, "product-minimum", "700");
  await write(page, "product-standard", "1:150 to 1:250");
  await press(page, "stop-read");
  const rows = (await windowRows(page)).map(plain);
  for (const name of ["Label", "Minimum by law (governs)", "Your standard"]) assert.ok(rows.includes(name), name);
  // 0.7 g/L of 170 g/L in 10 gal.
  near((await figures(page))["fill.dose"], (0.7 / 170) * 10 * US_GALLON);
  assert.ok((await remarks(page)).includes("remark-contact"), "and how long it must stay wet");
  await write(page, "product-standard", "1:10");
  assert.ok(await page.locator(".stop").isVisible(), "what was read held for the rules before");
  await press(page, "stop-read");
  assert.ok((await remarks(page)).includes("remark-standard-outside"));
});

test("how sure: the dose give or take, the chance, and which mistake matters most", async () => {
  const page = await open();
  await unfoldAll(page);
  await write(page, "sure-tank", "20");
  assert.ok((await remarks(page)).includes("sure-cause-water"));
  const found = await figures(page);
  assert.ok(found["fill.sure_error"] > 2 * US_FLUID_OUNCE && found["fill.sure_error"] < 3 * US_FLUID_OUNCE);
  assert.ok(Math.abs(found["fill.sure_inside"] - found["fill.sure_drawn"]) < 0.03, "closed form and trial fills");
  await write(page, "sure-measure", "-1");
  assert.match(await messageAt(page, "sure-measure"), /off by/);
  assert.equal(await countOf(page, "fill.sure_"), 0);
  assert.ok(await countOf(page, "fill.rounded"), "the amount itself stands");
  await write(page, "sure-measure", "1/2");
  await choose(page, "sure-measure-unit", "floz_us");
  assert.ok(await countOf(page, "fill.sure_"));
});
