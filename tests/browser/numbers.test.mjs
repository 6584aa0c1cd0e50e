// Practice, "See the numbers": a tank, a cup and a film are drawn from what is typed, pressed or slid.

import assert from "node:assert/strict";
import { test } from "node:test";
import { accessible, clashing, named, overflowing, tooSmallToPress, tooSmallToRead, unspoken } from "./checks.mjs";
import { running } from "./harness.mjs";
import { FOOT, US_FLUID_OUNCE, US_GALLON, choose, field, figures, near, plain, press, settled, stageOfThisFile, write } from "./walk.mjs";

const { open } = await stageOfThisFile();

async function numbers(look = {}) {
  const page = await open({ view: "practice", ...look });
  await press(page, "practice-numbers");
  return page;
}

/** All that is wrong with how it looks and reads. */
const faults = async (page) => [
  ...(await accessible(page)), ...(await named(page)), ...(await unspoken(page)), ...(await tooSmallToPress(page)),
  ...(await tooSmallToRead(page)), ...(await overflowing(page)), ...(await clashing(page)),
];

const sides = (page) => page.locator('svg[aria-label*="one scale"]').evaluate((svg) => {
  const of = (selector, name) => [...svg.querySelectorAll(selector)].map((one) => Number(one.getAttribute(name)));
  return { layer: of("rect.concentrate", "height")[0], mix: of("rect.solution", "height")[0], cube: of("rect.framed", "width")[0], tank: of("rect.solution", "width")[0] };
});

test("the ratio is typed, pressed and slid by keyboard, and the drawings follow", async () => {
  for (const width of [360, 1280]) {
    const page = await numbers({ width, height: 740 });
    // The demo: a tank of 10 gal, a jug with 1 fl oz marks.
    await choose(page, "numbers-machine", "walk-behind");
    await choose(page, "numbers-measure", "jug");
    const slider = field(page, "numbers-slider");
    assert.equal(await slider.inputValue(), "64");
    await slider.focus();
    await page.keyboard.press("ArrowRight");
    await settled(page);
    assert.equal(await field(page, "numbers-parts").inputValue(), "65");
    assert.equal(plain(await slider.getAttribute("aria-valuetext")), "1 to 65");
    assert.match(plain(await page.locator("output").innerText()), /1 to 65/);
    for (const [how, parts] of [["typed", 32], ["pressed", 128], ["typed", 640]]) {
      if (how === "typed") await write(page, "numbers-parts", `1:${parts}`);
      else await press(page, `numbers-parts-${parts}`);
      assert.equal(await slider.inputValue(), String(Math.min(parts, 512)));
      // V = 10 gal, x = V/(1 + n); half a mark is half a fluid ounce.
      const [total, dose, half] = [10 * US_GALLON, 10 * US_GALLON / (1 + parts), US_FLUID_OUNCE / 2];
      const shown = await figures(page);
      near(shown["numbers.total"], total);
      near(shown["numbers.dose"], dose);
      near(shown["numbers.water"], total - dose);
      near(shown["numbers.row.1.ratio"], (total - (dose - half)) / (dose - half), "half a step less");
      near(shown["numbers.row.4.ratio"], (total - (dose + half)) / (dose + half), "half a step more");
      assert.ok(Math.abs(shown["numbers.row.4.off"] - half / dose) < 1e-12);
      assert.ok(Math.abs(shown["numbers.row.1.off"] + half / dose) < 1e-12);
      const drawn = await sides(page);
      assert.ok(Math.abs(drawn.layer * (1 + parts) / drawn.mix - 1) < 1e-9, "the layer is the product's share");
      assert.ok(Math.abs((drawn.cube / drawn.tank) ** 3 * (1 + parts) - 1) < 1e-9, "two cubes to one scale");
    }
    assert.deepEqual(await faults(page), [], `${width} px`);
    await page.context().close();
  }
});

test("what does not fit is told at its field, is kept on reload, and hides its own half only", async () => {
  const page = await numbers();
  await write(page, "numbers-tank", "ten");
  assert.match(await page.locator("#numbers-tank-mistake").innerText(), /not a number/);
  assert.equal(await page.locator("[data-none]").count(), 1);
  assert.equal(await page.locator('svg[aria-label*="tile"]').count(), 1, "the film stands");
  await write(page, "numbers-parts", "1:9000");
  assert.match(plain(await page.locator("#numbers-parts-mistake").innerText()), /the most that fits is 2,000/);
  await page.reload();
  await running(page);
  assert.equal(await field(page, "numbers-tank").inputValue(), "ten");
  assert.equal(await field(page, "numbers-parts").inputValue(), "1:9000");
  await write(page, "numbers-tank", "10");
  await write(page, "numbers-parts", "2000");
  await choose(page, "numbers-step-unit", "floz_us");
  await write(page, "numbers-step", "2");
  assert.equal(await page.locator('[data-remark="remark-numbers-coarse"]').count(), 1, "1 to 2,000 of 10 gal is 0.64 fl oz");
  assert.deepEqual(await faults(page), []);
});

test("a film by its rate and by a flow setting, beside a sheet of paper", async () => {
  const page = await numbers({ width: 360, height: 740 });
  await choose(page, "numbers-rate-unit", "ml_per_m2");
  await write(page, "numbers-rate", "50");
  // 50 mL/m² is 50 µm, half a sheet of 0.1 mm, 0.0499 kg/m² of water at 20 °C.
  let shown = await figures(page);
  assert.ok(Math.abs(shown["numbers.thickness"] - 50e-6) < 1e-15);
  assert.ok(Math.abs(shown["numbers.weight"] - 0.0499) < 1e-12);
  assert.ok(Math.abs(shown["numbers.sheets"] - 0.5) < 1e-12);
  assert.ok(Math.abs(shown["numbers.tile"] - 50e-6 * FOOT ** 2) < 1e-15);
  const heights = await page.locator('svg[aria-label*="tile"]').evaluate((svg) => ["solution", "framed"].map((one) => Number(svg.querySelector(`rect.${one}`).getAttribute("height"))));
  assert.ok(Math.abs(heights[0] / heights[1] - 0.5) < 1e-9, "to one scale with the sheet");
  await choose(page, "numbers-laid", "setting");
  await choose(page, "numbers-setting", "walk-behind 2");
  assert.ok(Number(await field(page, "numbers-flow").inputValue()) > 0);
  shown = await figures(page);
  assert.ok(shown["numbers.rate"] > 0);
  await write(page, "numbers-overlap", "400");
  assert.match(await page.locator("#numbers-overlap-mistake").innerText(), /the most that fits/);
  assert.deepEqual(await faults(page), []);
});

test("a reader sees one set of units, whatever the machine’s record stands in", async () => {
  const page = await numbers({ width: 360, height: 740 });
  await choose(page, "units", "metric");
  // The demo’s tank is 10 US gal and its jug has marks of 1 fl oz: 37.85 L and 29.57 mL.
  assert.deepEqual([await field(page, "numbers-tank").inputValue(), await field(page, "numbers-tank-unit").inputValue()], ["37.85", "l"]);
  assert.deepEqual([await field(page, "numbers-step").inputValue(), await field(page, "numbers-step-unit").inputValue()], ["29.57", "ml"]);
  await choose(page, "numbers-laid", "setting");
  await choose(page, "numbers-setting", "walk-behind 2");
  const foreign = async () => {
    const text = plain(await page.locator(".view.practice .answer").evaluate((one) => {
      // Records have names of their own, and a hint tells of both tiles.
      const chosen = [...one.querySelectorAll("select.unit")].map((select) => `1 ${select.selectedOptions[0]?.textContent}`);
      const told = one.cloneNode(true);
      for (const other of told.querySelectorAll("select, .hint")) other.remove();
      return [told.textContent, ...chosen, ...[...one.querySelectorAll("[aria-label]")].map((labelled) => labelled.getAttribute("aria-label"))].join(" ");
    }));
    return text.match(/\d ?(gal|fl oz|in|ft|mph|mil)\b/g) ?? [];
  };
  assert.deepEqual(await foreign(), []);
  await choose(page, "numbers-machine", "walk-behind");
  await choose(page, "numbers-measure", "jug");
  assert.deepEqual(await foreign(), []);
  assert.deepEqual(await faults(page), []);
  // A unit that a person chooses by hand stays.
  await choose(page, "numbers-tank-unit", "gal_us");
  assert.equal(await field(page, "numbers-tank-unit").inputValue(), "gal_us");
});
