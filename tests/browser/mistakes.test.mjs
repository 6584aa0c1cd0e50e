// What cannot be read: it stays as typed, and says at its field and in the list what to do.

import assert from "node:assert/strict";
import { test } from "node:test";
import { US_GALLON, countOf, field, figures, near, press, settled, stageOfThisFile, write } from "./walk.mjs";

const { open } = await stageOfThisFile();

/** The message at a field, as a screen reader finds it; empty when there is none. */
async function messageAt(page, name) {
  const input = field(page, name);
  const ids = ((await input.getAttribute("aria-describedby")) ?? "").split(" ").filter((id) => id.endsWith("-mistake"));
  const invalid = await input.getAttribute("aria-invalid");
  assert.equal(invalid, ids.length ? "true" : null, "aria-invalid goes with the message");
  return ids.length ? page.locator(`#${ids[0]}`).innerText() : "";
}

/** The lines of the list of what to mend. */
const list = (page) => page.locator(".troubles li").allInnerTexts();

const BAD_TANKS = ["", " ", "0", "-5", "1e9", "999999999", "ten", "12 firkins", "1.2.3", "½½", "1/0", "٣", "<b>5</b>"];

test("a tank that is no tank keeps its text and says what to do", async () => {
  const page = await open();
  const label = await field(page, "product-label").inputValue();
  for (const typed of BAD_TANKS) {
    await write(page, "machine-tank", typed);
    const message = await messageAt(page, "machine-tank");
    assert.match(message, /^Solution tank: /, `message for "${typed}"`);
    assert.doesNotMatch(message, /invalid|oops|please|!/i);
    assert.deepEqual(await list(page), [message], `the list for "${typed}"`);
    assert.equal(await countOf(page, "fill."), 0, `no amount from "${typed}"`);
    assert.equal(await field(page, "machine-tank").inputValue(), typed);
  }
  assert.equal(await field(page, "product-label").inputValue(), label, "the other fields are as they were");
  await write(page, "machine-tank", "10");
  assert.equal(await messageAt(page, "machine-tank"), "");
  near((await figures(page))["fill.total"], 10 * US_GALLON, "the amount is back");
});

test("numbers are read as people write them", async () => {
  const page = await open();
  const readings = [["1,5", 1.5], ["½", 0.5], ["1½", 1.5], ["1 1/2", 1.5], [" 12.5 ", 12.5], ["+7", 7], [".5", 0.5]];
  for (const [typed, gallons] of readings) {
    await write(page, "machine-tank", typed);
    assert.equal(await messageAt(page, "machine-tank"), "", typed);
    near((await figures(page))["fill.total"], gallons * US_GALLON, typed);
  }
});

test("a label that is no dilution keeps its text and says what to do", async () => {
  const page = await open();
  const labels = ["", "64", "1:0", "abc", "2 oz", "5 % w/w", "30 g", "1:9999999", "1:64 or 1:128", "Dilute well. ".repeat(40)];
  for (const typed of labels) {
    await write(page, "product-label", typed);
    const message = await messageAt(page, "product-label");
    assert.notEqual(message, "", `message for "${typed}"`);
    assert.ok((await list(page)).includes(message), `the list for "${typed}"`);
    assert.equal(await countOf(page, "fill."), 0, `no amount from "${typed}"`);
    assert.equal(await field(page, "product-label").inputValue(), typed);
  }
});

test("a half-typed number is no mistake until its field is left", async () => {
  const page = await open();
  const tank = field(page, "machine-tank");
  await tank.click();
  await tank.press("ControlOrMeta+a");
  for (const key of ["-", "Backspace", "1", "."]) {
    await tank.press(key);
    await settled(page);
    assert.equal(await messageAt(page, "machine-tank"), "", `after ${key}`);
  }
  await tank.press("Backspace");
  await tank.press("Backspace");
  await settled(page);
  assert.equal(await messageAt(page, "machine-tank"), "");
  await tank.press("Tab");
  await settled(page);
  assert.match(await messageAt(page, "machine-tank"), /type a number/);
});

test("pasted text is taken as it is", async () => {
  const page = await open();
  const tank = field(page, "machine-tank");
  await tank.click();
  await tank.press("ControlOrMeta+a");
  await page.keyboard.insertText("about 10 gallons (see manual)");
  await tank.blur();
  await settled(page);
  assert.equal(await tank.inputValue(), "about 10 gallons (see manual)");
  assert.match(await messageAt(page, "machine-tank"), /is not a number/);
});

test("a line of the list leads to its field", async () => {
  const page = await open();
  for (const name of ["machine-tank", "product-label"]) {
    await write(page, name, "");
    await page.locator(".troubles button").first().click();
    await settled(page);
    assert.equal(await page.evaluate(() => document.activeElement.getAttribute("name")), name);
    await write(page, name, name === "machine-tank" ? "10" : "1:64");
  }
  await write(page, "measure-step", "0");
  await page.locator("details.more", { has: field(page, "measure-step") }).locator("summary").click();
  await page.locator(".troubles button").first().click();
  await settled(page);
  assert.ok(await field(page, "measure-step").isVisible(), "what hid the field is unfolded");
  assert.equal(await page.evaluate(() => document.activeElement.getAttribute("name")), "measure-step");
});

test("one step back brings the demo site's replacement back", async () => {
  const page = await open();
  await write(page, "machine-tank", "33");
  await press(page, "demo");
  assert.equal(await field(page, "machine-tank").inputValue(), "10");
  await press(page, "undo");
  assert.equal(await field(page, "machine-tank").inputValue(), "33");
  assert.equal(await field(page, "undo").count(), 0);
});
