// Cautions over the whole site: what may never meet, what fits which floor, foam, residue, container labels.

import assert from "node:assert/strict";
import { test } from "node:test";
import { choose, countOf, field, figures, go, near, plain, press, reach, remarks, settled, stageOfThisFile, tick, write } from "./walk.mjs";

const { open } = await stageOfThisFile();
const atCautions = (look = {}) => open({ view: "cautions", ...look });
const unfold = (page, key) => page.locator("summary", { hasText: key }).click();

test("bleach beside vinegar is found among all products of the site", async () => {
  const page = await atCautions();
  await unfold(page, "What may never meet");
  assert.equal(await page.locator('[data-meet="meet-gas"]').count(), 0);
  await tick(page, "product-family-hypochlorite-bleach", true);
  assert.equal(await page.locator('[data-meet="meet-gas"]').count(), 2, "each way round");
  assert.match(await page.locator("details", { has: page.locator("[data-meet]") }).innerText(), /Bleach[^]*[Cc]hlorine/);
});

test("what was in the tank before stands where the amount would stand, until it was read", async () => {
  const page = await atCautions();
  await tick(page, "product-family-hypochlorite-bleach", true);
  await choose(page, "product", "vinegar");
  await go(page, "fill");
  await choose(page, "floor", "wood");
  await choose(page, "tank-before", "neutral");
  assert.equal(await countOf(page, "fill.rounded"), 0);
  assert.match(await page.locator(".stop").innerText(), /must never meet[^]*Drain both tanks/);
  await press(page, "stop-read");
  assert.ok(await countOf(page, "fill.rounded"));
  assert.ok((await remarks(page)).includes("remark-before-never"), "it stays beside the amount");
  await choose(page, "tank-before", "-");
  assert.ok(!(await remarks(page)).includes("remark-before-never"));
  await choose(page, "tank-before", "?");
  assert.ok((await remarks(page)).includes("remark-before-not-known"));
  await choose(page, "machine", "ride-on");
  assert.equal(await field(page, "tank-before").inputValue(), "", "another tank is asked about anew");
});

test("every product on every floor has a verdict, and vinegar on marble is refused", async () => {
  const page = await atCautions();
  await unfold(page, "Which product fits which floor");
  const marble = page.locator("table", { hasText: "Foyer marble" });
  const row = marble.locator("tr", { hasText: "Vinegar" });
  assert.equal(await row.locator("[data-verdict]").getAttribute("data-verdict"), "floor-verdict-does-not-fit");
  assert.match(await row.innerText(), /4\.7[^]*estimated[^]*Acid eats[^]*too acid/);
  assert.equal(await page.locator("[data-verdict]").count(), 9 * 6 + 1, "nine products, six floors, and the one above");
  const shown = await figures(page);
  // 5 % acetic acid, 6 fl oz to 10 gal with 100 ppm of alkalinity: 4.74 by PHREEQC with Davies activities.
  assert.ok(Math.abs(shown["cautions.fits.3.3.ph_low"] - 4.74) < 0.03, `${shown["cautions.fits.3.3.ph_low"]}`);
});

test("what fits only at this dilution says so, and an unknown concentrate never reassures", async () => {
  const page = await atCautions();
  await unfold(page, "Which product fits which floor");
  const cell = page.locator("table", { hasText: "Sports hall" }).locator("tr").nth(1);
  assert.equal(await cell.locator("[data-verdict]").getAttribute("data-verdict"), "floor-verdict-only-diluted");
  assert.match(await cell.innerText(), /printed by its maker[^]*Nothing says what the concentrate does/);
  assert.match(await page.locator(".fits").innerText(), /Only at this dilution/);
  await write(page, "product-ph", "12");
  assert.equal(await cell.locator("[data-verdict]").getAttribute("data-verdict"), "floor-verdict-does-not-fit");
  assert.match(await cell.innerText(), /12[^]*too alkaline/);
});

test("a shake test is typed and its class taken", async () => {
  const page = await atCautions();
  await choose(page, "product", "quat");
  await unfold(page, "Foam: the shake test");
  await write(page, "foam-first", "1");
  await write(page, "foam-later", "0.2");
  await press(page, "foam-take");
  assert.equal(await field(page, "product-foam").inputValue(), "low");
  await write(page, "foam-later", "2");
  assert.match(await page.locator("#foam-later-mistake").innerText(), /Foam does not grow/);
});

test("residue is not known until what is dissolved is, and then told for one and for many cleanings", async () => {
  const page = await atCautions();
  await unfold(page, "What stays on the floor");
  assert.match(await page.locator(".unknown", { hasText: "expect a film" }).innerText(), /expect a film/);
  await write(page, "product-solids", "12");
  const shown = await figures(page);
  near(shown["cautions.residue_sum"] / shown["cautions.residue"], 30);
  await write(page, "residue-cleanings", "0");
  assert.ok(await page.locator("#residue-cleanings-mistake").isVisible());
});

test("a container label says what it must, and prints alone at its size", async () => {
  const page = await atCautions();
  await choose(page, "product", "degreaser");
  await unfold(page, "Label for a bottle");
  const label = page.locator(".container-label");
  const text = plain(await label.innerText());
  for (const part of ["Alkaline degreaser", "Danger", "severe skin burns", "Wear:", "1 to"]) assert.ok(text.includes(part), part);
  assert.equal(await page.locator("[data-bears]").getAttribute("data-bears"), "container-bears-instead", "not all of its parts are listed");
  await page.evaluate(() => document.querySelector("[data-part=container]").setAttribute("data-printed", ""));
  await page.emulateMedia({ media: "print" });
  const seen = await page.locator("h1:visible, h2:visible, .fits:visible, header:visible, footer:visible").count();
  assert.equal(seen, 0, "nothing but the label");
  const { width, height } = await label.boundingBox();
  assert.ok(Math.abs(width - 105 / 25.4 * 96) < 2, `${width}`);
  assert.ok(height >= 74 / 25.4 * 96 - 2, `${height}`);
  const [sheet] = [(await page.pdf({ format: "A4" })).toString("latin1").match(/\/Type \/Page\b/g).length];
  assert.equal(sheet, 1);
});

test("a bottle of use solution bears its own hazards where all is known, and says that they are an estimate", async () => {
  const page = await atCautions();
  await choose(page, "product", "degreaser");
  await unfold(page, "Label for a bottle");
  const bears = () => page.locator("[data-bears]").getAttribute("data-bears");
  const label = page.locator(".container-label");
  await write(page, "product-codes", "H314");
  await write(page, "part-1-codes", "H314");
  await write(page, "part-2-codes", "H314");
  await write(page, "product-density", "1.1");
  await tick(page, "parts-listed", true);
  assert.equal(await bears(), "container-bears-screened");
  assert.match(await label.innerText(), /severe skin burns[^]*estimate by the mixture rules/);
  assert.match(await page.locator("details", { has: label }).innerText(), /pH of 2 or less|11.5 or more/);
  await choose(page, "container-holds", "concentrate");
  assert.equal(await bears(), "container-bears-concentrate");
  assert.doesNotMatch(await label.innerText(), /estimate/);
  await choose(page, "container-holds", "use_solution");
  await tick(page, "parts-listed", false);
  assert.equal(await bears(), "container-bears-instead");
  assert.match(await label.innerText(), /severe skin burns/);
});

test("the emergency number of the site stands with first aid", async () => {
  const page = await atCautions();
  assert.equal(await page.locator(".emergency").count(), 0);
  await write(page, "site-emergency", "555 0100, invented");
  assert.equal(await page.locator(".emergency").count(), 2, "at the top and with first aid");
  assert.match(await page.locator(".emergency").first().innerText(), /call: 555 0100/);
  assert.equal(await page.locator(".emergency a").first().getAttribute("href"), "tel:5550100");
  await press(page, "first-aid-jump");
  assert.equal(await page.evaluate(() => document.activeElement.id), "first-aid");
});

test("the parts of a product are added, kept and removed", async () => {
  const page = await atCautions();
  await press(page, "part-add");
  assert.equal(await page.evaluate(() => document.activeElement.name), "part-1-name");
  await write(page, "part-1-name", "Sodium hydroxide");
  await write(page, "part-1-cas", "1310-73-2");
  await write(page, "part-1-low", "2");
  await write(page, "part-1-high", "200");
  assert.ok(await (await reach(page, "part-1-high")).isVisible());
  await page.reload();
  await page.locator(".view.cautions").waitFor();
  await settled(page);
  assert.equal(await field(page, "part-1-cas").inputValue(), "1310-73-2");
  await press(page, "part-1-remove");
  assert.equal(await page.evaluate(() => document.activeElement.name), "part-add");
  assert.equal(await field(page, "part-1-name").count(), 0);
});

test("the pH of vinegar is estimated from its acid, and marble is refused by it", async () => {
  const page = await atCautions();
  await choose(page, "product", "vinegar");
  await choose(page, "floor", "marble");
  await unfold(page, "How acid or alkaline");
  const shown = await figures(page);
  // 5 % acetic acid, 6 fl oz to 10 gal with 100 ppm of alkalinity: 4.74 by PHREEQC with Davies activities.
  assert.ok(Math.abs(shown["cautions.ph_low"] - 4.74) < 0.03, `${shown["cautions.ph_low"]}`);
  assert.match(await page.locator("svg.drawing", { has: page.locator(".pointer") }).first().getAttribute("aria-label"), /pH against the dose/);
  assert.equal(await page.locator(".fits [data-verdict]").getAttribute("data-verdict"), "floor-verdict-does-not-fit");
  assert.equal(await page.locator("[data-neat]").count(), 0, "it does not fit at any dilution");
  await write(page, "water-alkalinity", "0");
  assert.ok((await figures(page))["cautions.ph_low"] < 3.7, "soft water takes up no acid");
  await press(page, "part-add");
  await write(page, "part-2-name", "A secret");
  await write(page, "part-2-high", "10");
  assert.equal(await countOf(page, "cautions.ph"), 0);
  assert.match(await page.locator(".unknown", { hasText: "A secret" }).innerText(), /Test the use solution/);
  await write(page, "part-2-cas", "64-19-8");
  await write(page, "part-2-low", "5");
  await press(page, "part-2-remove");
  await choose(page, "product", "neutral");
  assert.match(await page.locator(".unknown", { hasText: "its pH is estimated here" }).innerText(), /Not known/);
});

test("the use solution is screened, rule by rule, and is not known without its parts", async () => {
  const page = await atCautions();
  await unfold(page, "Hazards of the use solution");
  assert.match(await page.locator(".unknown", { hasText: "counts as the concentrate" }).innerText(), /Not known/);
  await choose(page, "product", "degreaser");
  const skin = page.locator('[data-endpoint="mixture-for-skin"]');
  assert.match(plain(await skin.innerText()), /Category 1[^]*11.5 or more[^]*CLP/);
  assert.equal(await page.locator("[data-endpoint]").count(), 6);
  const details = page.locator("details", { has: skin });
  assert.match(await details.innerText(), /Danger[^]*severe skin burns/);
  await press(page, "part-2-remove");
  await press(page, "part-1-remove");
  assert.equal(await page.locator("[data-endpoint]").count(), 0);
});
