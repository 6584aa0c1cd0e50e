// Cautions: what a product can do, from what was entered; what was not entered never reassures.

import assert from "node:assert/strict";
import { test } from "node:test";
import { choose, go, press, reach, remarks, settled, stageOfThisFile, tick, write } from "./walk.mjs";

const { open } = await stageOfThisFile();

const REASSURING = /carries no hazard statement|Fits this floor|no problem in this machine/;

const pictograms = (page) => page.locator(".caution svg.ghs").evaluateAll((all) => all.map((one) => one.getAttribute("aria-label")));
const signal = (page) => page.locator(".caution .signal strong").innerText();
const answer = (page) => page.locator(".answer").innerText();

/** A product of one's own, of which nothing is known yet. */
async function ownProduct() {
  const page = await open({ view: "cautions" });
  await press(page, "product-add");
  return page;
}

test("vinegar on marble and on terrazzo does not fit, on Cautions and on Fill", async () => {
  const page = await open({ view: "cautions" });
  await choose(page, "product", "vinegar");
  for (const floor of ["marble", "terrazzo"]) {
    await choose(page, "floor", floor);
    assert.equal(await page.locator(".fits [data-verdict]").getAttribute("data-verdict"), "floor-verdict-does-not-fit");
    assert.ok((await remarks(page)).includes("remark-floor-does-not-fit"), "on Cautions");
    assert.match(await page.locator(".remark").first().innerText(), /Acid eats/);
    await go(page, "fill");
    const warning = page.locator('.answer [data-remark="remark-floor-does-not-fit"]');
    assert.ok(await warning.first().isVisible(), "on Fill");
    assert.match(await warning.first().innerText(), /Not on this floor[^]*Acid eats[^]*[Vv]inegar/);
    await go(page, "cautions");
  }
  await go(page, "shift");
  assert.match(await page.locator('[data-remark="remark-shift-floor"]').first().innerText(), /Entrance hall/);
});

test("a product of one's own with H314 gets the corrosion pictogram and Danger", async () => {
  const page = await ownProduct();
  await write(page, "product-name", "My stripper");
  await write(page, "product-codes", "h314");
  assert.deepEqual(await pictograms(page), ["Corrosion"]);
  assert.equal(await signal(page), "Danger");
  const text = await answer(page);
  assert.match(text, /H314 Causes severe skin burns and eye damage/);
  assert.match(text, /goggles/i);
  assert.match(text, /rinse with clean water at once/);
  await choose(page, "product-signal", "ghs-signal-none");
  assert.equal(await signal(page), "Danger", "a signal word that the codes deny does not soften them");
});

test("codes are read as they are pasted", async () => {
  const page = await ownProduct();
  await write(page, "product-codes", "H302+H312, h319;\nP280 EUH066 H999");
  assert.deepEqual(await pictograms(page), ["Exclamation mark"]);
  assert.equal(await signal(page), "Signal word not known", "the code that no table has may ask for Danger");
  assert.match(await page.locator(".caution.whole").innerText(), /not known here[^]*H999/);
  assert.equal(await (await reach(page, "product-codes")).inputValue(), "H302+H312, h319;\nP280 EUH066 H999");
  await write(page, "product-codes", "H302+H312, h319;\nP280");
  await choose(page, "product-signal", "ghs-signal-warning");
  assert.equal(await signal(page), "Warning");
  assert.equal(await page.locator(".caution .unknown", { hasText: "Treat it as hazardous" }).count(), 0);
});

test("what is not known never reassures", async () => {
  const page = await ownProduct();
  const wary = async (when) => {
    const text = await answer(page);
    assert.match(text, /Treat it as hazardous/, when);
    assert.doesNotMatch(text, REASSURING, when);
    assert.ok((await remarks(page)).includes("remark-hazards-unknown"), when);
  };
  await wary("nothing entered");
  assert.match(await answer(page), /Mix it with nothing/);
  await write(page, "product-codes", "none");
  await wary("a word that is no code");
  await write(page, "product-codes", "H999");
  await wary("a code that no table has");
  await write(page, "product-codes", "P280");
  await wary("precautions without hazards");
  await write(page, "product-codes", "");
  await choose(page, "product-signal", "ghs-signal-danger");
  await wary("a signal word without a hazard");
  await choose(page, "product-signal", "ghs-signal-none");
  assert.match(await answer(page), /carries no hazard statement, as entered here. Still keep it off skin/);
});

test("the same wariness stands beside the amount", async () => {
  const page = await open();
  await press(page, "product-add");
  await write(page, "product-label", "1:64");
  await press(page, "stop-read");
  assert.ok((await remarks(page)).includes("remark-hazards-unknown"));
  const text = await answer(page);
  assert.match(text, /Treat it as hazardous/);
  assert.doesNotMatch(text, REASSURING);
});

test("the kind of product decides what must never meet it", async () => {
  const page = await ownProduct();
  await tick(page, "product-family-hypochlorite-bleach", true);
  assert.match(await answer(page), /Bleach and acid make chlorine gas/);
  assert.match(await answer(page), /Bleach and ammonia make chloramine gas/);
  await tick(page, "product-family-hypochlorite-bleach", false);
  assert.doesNotMatch(await answer(page), /chlorine gas/);
});

test("notes stay in the SDS's own words, and a pH that is none says so", async () => {
  const page = await ownProduct();
  const notes = "Spill: sand.\n<b>Never</b> sawdust & rags.";
  await write(page, "product-notes", notes);
  assert.equal(await page.locator(".caution .notes").innerText(), notes);
  await write(page, "product-ph", "15");
  assert.match(await page.locator("#product-ph-mistake").innerText(), /0 to 14/);
  await write(page, "product-ph", "2");
  await choose(page, "floor", "marble");
  assert.equal(await page.locator(".fits [data-verdict]").getAttribute("data-verdict"), "floor-verdict-does-not-fit");
});

test("every view with an amount carries the cautions, the order of pouring and who governs", async () => {
  const page = await open();
  await choose(page, "product", "degreaser");
  for (const view of ["fill", "flow", "shift", "cautions"]) {
    await go(page, view);
    await settled(page);
    const text = await page.locator(".caution").innerText();
    assert.equal(await signal(page), "Danger", view);
    assert.match(text, /H314/, view);
    assert.match(text, /Water first, then concentrate/, view);
    assert.match(text, /The product label, its SDS and local codes govern/, view);
    assert.match(text, /licensed or qualified person/, view);
  }
});

test("the pH of the concentrate warns where no code explains it, unless its reserve is small", async () => {
  const page = await open({ view: "cautions" });
  await write(page, "product-ph-neat", "13.5");
  assert.ok((await remarks(page)).includes("remark-extreme-ph"));
  assert.match(await answer(page), /Treat it as hazardous/);
  await choose(page, "product-reserve", "small");
  assert.ok(!(await remarks(page)).includes("remark-extreme-ph"));
  await choose(page, "product-reserve", "unknown");
  await write(page, "product-codes", "H314");
  assert.ok(!(await remarks(page)).includes("remark-extreme-ph"), "the label says it itself");
  await write(page, "product-ph-neat", "15");
  assert.match(await page.locator("#product-ph-neat-mistake").innerText(), /0 to 14/);
});

test("in the first seconds: signal word, what to wear, then the warnings, the most serious first", async () => {
  const page = await open({ view: "cautions" });
  await choose(page, "product", "degreaser");
  const top = async (selector) => (await page.locator(selector).first().boundingBox()).y;
  const order = [await top(".at-once .signal"), await top(".at-once p:nth-child(2)"), await top(".fits .remark"), await top(".fits dl"), await top(".caution.whole")];
  assert.deepEqual(order, [...order].sort((a, b) => a - b));
  assert.match(await page.locator(".at-once").innerText(), /Danger[^]*Wear: [^]*gloves[^]*goggles/i);
  // Bleach after vinegar makes a gas: before what it does to the floor.
  await choose(page, "product", "neutral");
  await tick(page, "product-family-hypochlorite-bleach", true);
  await choose(page, "tank-before", "vinegar");
  await choose(page, "floor", "marble");
  assert.equal(await page.locator(".fits .remark").first().getAttribute("data-remark"), "remark-before-never");
});

test("what a precautionary statement asks to wear is worn", async () => {
  const page = await ownProduct();
  await write(page, "product-codes", "H319 P280 P284");
  await choose(page, "product-signal", "ghs-signal-warning");
  assert.match(await page.locator(".at-once").innerText(), /gloves[^]*goggles[^]*respirator/i);
});

test("a part that is bleach counts as bleach, and says so beside what is ticked", async () => {
  const page = await open({ view: "cautions" });
  await press(page, "part-add");
  await write(page, "part-1-name", "Sodium hypochlorite");
  assert.ok(await page.locator(".unknown", { hasText: "CAS number is missing" }).first().isVisible());
  await write(page, "part-1-cas", "7681-52-9");
  await write(page, "part-1-high", "5");
  assert.match(await answer(page), /Bleach and acid make chlorine gas/);
  assert.ok((await remarks(page)).includes("remark-not-neutral"));
  assert.match(await page.locator(".unknown", { hasText: "Found among its parts" }).innerText(), /Bleach/);
});

test("the top shows the worse of label and parts", async () => {
  const page = await open({ view: "cautions" });
  await press(page, "part-add");
  await write(page, "part-1-cas", "1310-73-2");
  await write(page, "part-1-low", "10");
  await write(page, "part-1-codes", "H314");
  assert.match(await page.locator(".at-once").innerText(), /Danger[^]*gloves[^]*By its parts it is worse/i);
});
