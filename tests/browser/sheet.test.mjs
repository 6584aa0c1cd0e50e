// A product from the pasted text of its safety data sheet: nothing is taken unseen.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { running } from "./harness.mjs";
import { field, go, plain, press, reach, settled, stageOfThisFile, write } from "./walk.mjs";

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
  assert.match(await page.locator("#sheet-taken").innerText(), /Taken into Degreaser of a sheet[^]*what kind of product/);
  assert.equal(await field(page, "product-codes").inputValue(), "H314");
  assert.equal(await field(page, "part-1-cas").inputValue(), "1310-73-2");
  assert.equal(await field(page, "part-2-cas").count(), 0, "what was not ticked was not taken");
  assert.match(await page.locator(".caution .signal strong").first().innerText(), /Danger/);
  await press(page, "undo");
  assert.equal(await field(page, "product-codes").inputValue(), "", "and it can be taken back");
});

test("a sheet that bears another name says so beside the button, and is taken all the same", async () => {
  const of = (name) => `1. Identification\nProduct name: ${name}\n2. Hazards identification\nSignal word: Warning`;
  const page = await pasted(of("Made-up Descaler 9"));
  const warning = page.locator("#sheet-named");
  assert.equal(await warning.innerText(), "The sheet says: Made-up Descaler 9. You take it into Degreaser of a sheet.");
  assert.equal(await field(page, "sheet-take").getAttribute("aria-describedby"), "sheet-named");
  await field(page, "sheet-1").check();
  assert.ok(await field(page, "sheet-take").isEnabled(), "it blocks nothing");
  await write(page, "product-name", "made-up descaler 9");
  assert.equal(await warning.count(), 0, "the same name but for its case");
  await write(page, "product-name", "Descaler");
  assert.equal(await warning.innerText(), "The sheet says: Made-up Descaler 9. You take it into Descaler.");
  await press(page, "sheet-take");
  assert.match(await page.locator("#sheet-taken").innerText(), /Taken into Descaler/);
  await write(page, "sheet-text", "2. Hazards identification\nSignal word: Warning");
  await press(page, "sheet-read");
  assert.equal(await warning.count(), 0, "a sheet without a name");
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

/** What the device keeps of the sheet. */
const kept = (page) => page.evaluate(() => localStorage.getItem("brimline.sheet"));

/** Unfolds the sheet; what is folded inside it stays so. */
const unfold = (page) => page.locator("details", { has: field(page, "sheet-text") }).locator("> summary").click();

/** Loads the page again and unfolds the sheet. */
async function again(page) {
  await page.reload();
  await running(page);
  await unfold(page);
  await settled(page);
}

test("what was pasted, ticked and corrected is there after loading again, until it is taken", async () => {
  const text = "2. Hazards identification\nSignal word: Danger\nH314\n9. Physical and chemical properties\npH: 1.8";
  const page = await pasted(text);
  const findings = page.locator(".findings li");
  const shown = await findings.count();
  await field(page, "sheet-2").check();
  await write(page, "sheet-3-ph", "2.8");
  await again(page);
  assert.equal(await field(page, "sheet-text").inputValue(), text);
  await findings.first().waitFor();
  assert.equal(await findings.count(), shown);
  assert.deepEqual([await field(page, "sheet-1").isChecked(), await field(page, "sheet-2").isChecked()], [false, true]);
  assert.equal(await (await reach(page, "sheet-3-ph")).inputValue(), "2.8");
  // What is typed and not looked through leaves what was found as it is.
  await write(page, "sheet-text", "H315");
  await again(page);
  assert.equal(await field(page, "sheet-text").inputValue(), "H315");
  await findings.first().waitFor();
  assert.deepEqual([await findings.count(), await field(page, "sheet-2").isChecked()], [shown, true]);
  // Another view does not take it either.
  await go(page, "fill");
  await go(page, "cautions");
  await unfold(page);
  assert.equal(await field(page, "sheet-text").inputValue(), "H315");
  await findings.first().waitFor();
  await press(page, "sheet-take");
  assert.equal(await field(page, "product-codes").inputValue(), "H314");
  assert.equal(await kept(page), null, "what was taken is not kept");
  await again(page);
  assert.equal(await field(page, "sheet-text").inputValue(), "");
  assert.equal(await findings.count(), 0);
});

test("a text that is cleared is gone, and ticks are for one product", async () => {
  const page = await pasted("2. Hazards identification\nH314");
  await field(page, "sheet-1").check();
  await page.locator('[name="product"]').first().selectOption({ index: 0 });
  await settled(page);
  await again(page);
  await page.locator(".findings li").first().waitFor();
  assert.equal(await field(page, "sheet-1").isChecked(), false);
  await write(page, "sheet-text", "");
  await press(page, "sheet-read");
  await again(page);
  assert.equal(await field(page, "sheet-text").inputValue(), "");
});

test("a text that the browser has no room for is told of, stays in its field, and is read", async () => {
  const page = await open({ view: "cautions" });
  await page.evaluate(() => {
    // All but some 40,000 letters of what a browser gives.
    for (let size = 2 ** 20; size >= 20_000; size /= 2) {
      for (let n = 0; n < 8; n += 1) try { localStorage.setItem(`room-${size}-${n}`, "x".repeat(size)); } catch { break; }
    }
  });
  await write(page, "sheet-text", "H314");
  await page.locator("#sheet-text-unkept").waitFor({ state: "detached" });
  await write(page, "sheet-text", `H314\n${"Words of a long sheet. ".repeat(9_000)}`);
  await page.locator("#sheet-text-unkept", { hasText: "no room to keep this text" }).waitFor();
  assert.equal(await kept(page), null, "nothing of an earlier text comes back as if it were this one");
  await press(page, "sheet-read");
  await page.locator(".findings li", { hasText: "H314" }).first().waitFor();
  await write(page, "sheet-text", "H315");
  await press(page, "sheet-read");
  await page.locator("#sheet-text-unkept").waitFor({ state: "detached" });
  assert.match(await kept(page), /H315/);
});

test("typing into a sheet of 200,000 letters waits for no keeping", async () => {
  const page = await open({ view: "cautions" });
  await write(page, "sheet-text", "Words of a long sheet, H319. ".repeat(7_000));
  const text = field(page, "sheet-text");
  await text.focus();
  await page.evaluate(() => {
    window.times = 0;
    const put = Storage.prototype.setItem;
    Storage.prototype.setItem = function (name, ...rest) {
      if (name === "brimline.sheet") window.times += 1;
      return put.call(this, name, ...rest);
    };
  });
  await page.keyboard.type("forty keys, one after the other, no pause", { delay: 20 });
  const during = await page.evaluate(() => window.times);
  await page.waitForFunction(() => window.times > 0);
  assert.ok(during <= 2, `kept ${during} times while somebody typed`);
  assert.match(JSON.parse(await kept(page)).text, /forty keys, one after the other, no pause/);
});
