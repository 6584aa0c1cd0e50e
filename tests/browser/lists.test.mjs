// A list that somebody chose from by hand goes on showing what the answer is worked out with.

import assert from "node:assert/strict";
import { test } from "node:test";
import { choose, field, press, stageOfThisFile, write } from "./walk.mjs";

const { open } = await stageOfThisFile();

/** What stands in a closed list, as a person reads it. */
const shown = (page, name) => field(page, name).evaluate((list) => list.selectedOptions[0]?.textContent);

test("a tank's unit, a measure's kind and a foam class belong to their own record", async () => {
  const page = await open();
  await choose(page, "machine-tank-unit", "l");
  await choose(page, "machine", "ride-on");
  assert.equal(await shown(page, "machine-tank-unit"), "gal");
  await choose(page, "machine", "walk-behind");
  assert.equal(await shown(page, "machine-tank-unit"), "L");

  await page.locator("summary", { hasText: "More about this fill" }).click();
  await choose(page, "measure-dispenser", "pump");
  await choose(page, "measure", "cap");
  assert.match(await shown(page, "measure-dispenser"), /cap/);
  await choose(page, "measure", "jug");
  assert.match(await shown(page, "measure-dispenser"), /Pump/);

  await page.locator("summary", { hasText: "More about this product" }).click();
  await choose(page, "product-foam", "foaming");
  await choose(page, "product", "vinegar");
  assert.equal(await shown(page, "product-foam"), "Non-foaming");
  await choose(page, "product", "neutral");
  assert.equal(await shown(page, "product-foam"), "Foaming");
});

test("a new record is chosen, empty, and waits for its name", async () => {
  const page = await open();
  await page.locator("summary", { hasText: "More about this machine" }).click();
  await press(page, "machine-add");
  assert.match(await shown(page, "machine"), /^Machine \d$/);
  await page.waitForFunction(() => document.activeElement?.getAttribute("name") === "machine-name");
  assert.equal(await field(page, "machine-tank").inputValue(), "");
});

test("a flammable product stops before a machine with motors", async () => {
  const page = await open({ view: "cautions" });
  await page.locator("summary", { hasText: "Change what is known" }).click();
  await write(page, "product-codes", "H225");
  await page.goto(page.url().replace(/#.*/, "#fill"));
  assert.match(await page.locator(".stop").innerText(), /catch fire/);
  assert.equal(await page.locator("[data-answer]").count(), 0);
});
