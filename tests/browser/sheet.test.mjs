// A product from the pasted text of its safety data sheet: nothing is taken unseen.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { field, plain, press, settled, stageOfThisFile, write } from "./walk.mjs";

const { open } = await stageOfThisFile();

/** A sheet of our own, of the invented degreaser. */
const SHEET = readFileSync(`${process.env.BRIMLINE_ROOT}/tests/sheets/degreaser-table.txt`, "utf8");

async function pasted(text) {
  const page = await open({ view: "cautions" });
  await press(page, "product-add");
  await write(page, "product-name", "Degreaser of a sheet");
  await write(page, "sheet-text", text);
  await press(page, "sheet-read");
  return page;
}

test("what is found stands beside its line, and only what is ticked is taken", async () => {
  const page = await pasted(SHEET);
  const findings = page.locator(".findings li");
  assert.ok((await findings.count()) > 8);
  assert.match(plain(await findings.first().innerText()), /Line \d+:/);
  assert.ok(await field(page, "sheet-take").isDisabled(), "nothing is ticked at first");
  assert.equal(await page.locator(".findings input:checked").count(), 0);
  const find = (words) => findings.filter({ hasText: words }).first();
  await find("Signal word: Danger").locator("input[type=checkbox]").check();
  await find("H314").locator("input[type=checkbox]").check();
  await find("1310-73-2").locator("input[type=checkbox]").check();
  assert.equal(await field(page, "sheet-take").innerText(), "Take 3 into Degreaser of a sheet");
  await press(page, "sheet-take");
  assert.match(await page.locator("[data-taken]").innerText(), /Taken into Degreaser of a sheet[^]*what kind of product/);
  assert.equal(await field(page, "product-codes").inputValue(), "H314");
  assert.equal(await field(page, "part-1-cas").inputValue(), "1310-73-2");
  assert.equal(await field(page, "part-2-cas").count(), 0, "what was not ticked was not taken");
  assert.match(await page.locator(".caution .signal strong").first().innerText(), /Danger/);
  await press(page, "undo");
  assert.equal(await field(page, "product-codes").inputValue(), "", "and it can be taken back");
});

test("by keyboard: paste, look through, tick, take", async () => {
  const page = await pasted("2. Hazards identification\nSignal word: Warning\nH319 Causes serious eye irritation");
  await field(page, "sheet-read").focus();
  await page.keyboard.press("Tab");
  await page.keyboard.press("Space");
  // Behind each finding stands the fold in which it is corrected.
  await page.keyboard.press("Tab");
  await page.keyboard.press("Tab");
  await page.keyboard.press("Space");
  await page.keyboard.press("Tab");
  await page.keyboard.press("Tab");
  assert.equal(await page.evaluate(() => document.activeElement.name), "sheet-take");
  await page.keyboard.press("Enter");
  await settled(page);
  assert.equal(await field(page, "product-codes").inputValue(), "H319");
});

test("a finding is corrected beside its line, checked anew, and taken as corrected", async () => {
  const page = await pasted("3. Composition\nSodium hydroxide 1310-73-3 5 - 10 % H314\n9. Physical and chemical properties\npH: 1.8");
  const part = page.locator(".findings li").first();
  assert.match(await part.innerText(), /check digit/);
  await part.locator("summary").focus();
  await page.keyboard.press("Enter");
  await page.keyboard.press("Tab");
  await page.keyboard.press("Tab");
  assert.equal(await page.evaluate(() => document.activeElement.name), "sheet-1-cas");
  await page.keyboard.type("1310-73-2");
  await page.keyboard.press("Tab");
  await settled(page);
  assert.doesNotMatch(await part.innerText(), /check digit/);
  assert.match(await part.innerText(), /Corrected by you/);
  assert.match(await part.innerText(), /1310-73-3/, "its line stays as it was pasted");
  assert.ok(await field(page, "sheet-take").isDisabled(), "a correction ticks nothing");

  await write(page, "sheet-2-ph", "rather high");
  await field(page, "sheet-2-ph").blur();
  assert.match(await page.locator("#sheet-2-ph-mistake").innerText(), /11\.8/);
  assert.equal(await field(page, "sheet-2-ph").inputValue(), "rather high", "what was typed is kept");
  assert.ok(await field(page, "sheet-2").isDisabled());
  await write(page, "sheet-2-ph", "11.8 (use solution)");
  await field(page, "sheet-1").check();
  await field(page, "sheet-2").check();
  await press(page, "sheet-take");
  assert.equal(await field(page, "part-1-cas").inputValue(), "1310-73-2");
  assert.equal(await field(page, "product-ph").inputValue(), "11.8");
});

test("a dose of section 11 and an M factor fill the fields of their part, once ticked", async () => {
  const page = await pasted([
    "3. Composition/information on ingredients",
    "Didecyldimethylammonium chloride 7173-51-5 5 - 10 % Aquatic Acute 1, H400 (M=10)",
    "11. Toxicological information",
    "Didecyldimethylammonium chloride: LD50 oral rat 238 mg/kg",
  ].join("\n"));
  const findings = page.locator(".findings li");
  const find = (words) => findings.filter({ hasText: words }).first();
  assert.match(await find("Toxicity by mouth").innerText(), /238 mg\/kg[^]*Line 4/);
  await find("A part:").locator("input[type=checkbox]").check();
  await find("Toxicity by mouth").locator("input[type=checkbox]").check();
  await press(page, "sheet-take");
  assert.equal(await field(page, "part-1-oral").inputValue(), "238");
  assert.equal(await field(page, "part-1-m-acute").inputValue(), "", "what was not ticked was not taken");
  await write(page, "part-1-m-acute", "0.5");
  await field(page, "part-1-m-acute").blur();
  assert.ok(await page.locator("#part-1-m-acute-mistake").isVisible());
});

test("a sheet that contradicts itself, and a text that is none, are told so", async () => {
  const page = await pasted(readFileSync(`${process.env.BRIMLINE_ROOT}/tests/sheets/degreaser-contradicts.txt`, "utf8"));
  assert.ok((await page.locator(".mistake").count()) > 0);
  await write(page, "sheet-text", "A letter about nothing.");
  await press(page, "sheet-read");
  assert.match(await page.locator("[role=status]", { hasText: "found" }).innerText(), /0 things were found[^]*2, 3, 8, 9, 14/);
  assert.equal(await page.locator(".findings li").count(), 0);
  await write(page, "sheet-text", "H3".repeat(200_000));
  await press(page, "sheet-read");
  assert.ok(await page.locator("[role=status]", { hasText: "found" }).isVisible(), "noise neither hangs nor breaks it");
});
