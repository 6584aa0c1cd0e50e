// Ways through the page that the tests share: fields by their name, figures by their stable name.
//
//   const { open, stage } = await stageOfThisFile();
//   const page = await open({ width: 360 });
//   await write(page, "machine-tank", "12.5");
//   near((await figures(page))["fill.total"], 12.5 * US_GALLON);

import assert from "node:assert/strict";
import { after } from "node:test";
import { openStage } from "./harness.mjs";

// Exact definitions, m³. US: NIST Special Publication 811 (2008), Appendix B.8 (the gallon of
// 231 in³ and its 128th part). Imperial: The Units of Measurement Regulations 1995 (UK), Schedule
// (the gallon of 4.54609 dm³, and its 160th part).
export const US_GALLON = 3.785411784e-3;
export const US_FLUID_OUNCE = 29.5735295625e-6;
export const IMPERIAL_GALLON = 4.54609e-3;
export const IMPERIAL_FLUID_OUNCE = 28.4130625e-6;
// The same publication: the international foot and mile of 1959, m.
export const FOOT = 0.3048;
export const INCH = 0.0254;
export const MILE = 1609.344;

/** One stage for all tests of a file, closed behind them; a console error fails the file. */
export async function stageOfThisFile() {
  const stage = await openStage();
  after(async () => {
    await stage.close();
    assert.deepEqual(stage.errors, []);
  });
  /**
   * Opens the page for a new visitor; `view` is the view's code. The service worker, which would
   * fetch and check every file once more, takes part only when asked for: `serviceWorkers: "allow"`.
   */
  const open = async ({ view = "fill", ...look } = {}) => {
    const page = await stage.openPage({ path: `/#${view}`, serviceWorkers: "block", ...look });
    page.setDefaultTimeout(10_000);
    return page;
  };
  return { stage, open };
}

/** The input of this name. */
export const field = (page, name) => page.locator(`[name="${name}"]`);

/** Waits until the page has drawn what was done: in the next frame, and the parts behind it. */
export const settled = (page) =>
  page.evaluate(() => {
    const frame = () => new Promise((done) => requestAnimationFrame(done));
    const drawn = () => document.querySelector("[aria-busy=true]") && frame().then(drawn);
    return frame().then(frame).then(drawn);
  });

/** Brings an input into sight, unfolding what hides it. */
export async function reach(page, name) {
  const input = field(page, name);
  const folded = page.locator("details:not([open])", { has: input });
  if (await folded.count()) await folded.locator("summary").click();
  return input;
}

/** Types into a field, over what it holds, and leaves it. */
export async function write(page, name, text) {
  const input = await reach(page, name);
  await input.fill(text);
  await input.blur();
  await settled(page);
}

/** Chooses from a list by the option's stable value. */
export async function choose(page, name, value) {
  await (await reach(page, name)).selectOption({ value });
  await settled(page);
}

/** Presses the button of this name. */
export async function press(page, name) {
  await (await reach(page, name)).click();
  await settled(page);
}

/** Ticks a box or takes the tick away. */
export async function tick(page, name, on) {
  await (await reach(page, name)).setChecked(on);
  await settled(page);
}

/** Goes to another view. */
export async function go(page, view) {
  await page.locator(`nav a[href="#${view}"]`).click();
  await page.locator(`.view.${view}`).waitFor();
  await settled(page);
}

/** Every figure on the view by its name: SI values. One shown twice must be the same twice. */
export async function figures(page) {
  const all = await page.locator("[data-answer]").evaluateAll((shown) =>
    shown.map(({ dataset }) => [dataset.answer, Number(dataset.si)]),
  );
  const found = {};
  for (const [name, si] of all) {
    assert.ok(Number.isFinite(si), `${name} is a number`);
    assert.equal(found[name] ?? si, si, `${name} stands twice`);
    found[name] = si;
  }
  return found;
}

/** How many figures whose name starts with `start` are anywhere in the document. */
export const countOf = (page, start) => page.locator(`[data-answer^="${start}"]`).count();

/** The codes of the warnings and assumptions shown. */
export const remarks = (page) =>
  page.locator("[data-remark]").evaluateAll((shown) => shown.map(({ dataset }) => dataset.remark));

/** Text without the thin and unbreakable spaces that stand between a number and its unit. */
export const plain = (text) => text.replace(/[\u00a0\u2009\u202f]/g, " ");

/** Whether two numbers agree to the digits that a 64-bit float carries through a few steps. */
export function near(actual, expected, message = "") {
  const close = Math.abs(actual - expected) <= 1e-12 * Math.abs(expected);
  assert.ok(close, `${message} is ${actual}, expected ${expected}`);
}
