// Flow: which setting this floor needs, and what to do when none serves.

import assert from "node:assert/strict";
import { test } from "node:test";
import {
  FOOT, INCH, MILE, US_GALLON, choose, countOf, field, figures, near, plain, press, remarks, stageOfThisFile, write,
} from "./walk.mjs";

const { open } = await stageOfThisFile();

const GALLON_A_MINUTE = US_GALLON / 60;
const GALLON_A_1000_FT2 = US_GALLON / (1000 * FOOT * FOOT);
/** The demo's small walk-behind: 17 in less 2 in, 2 mph, three settings, 10 gal. */
const WIDTH = 15 * INCH;
const SPEED = (2 * MILE) / 3600;
const FLOWS = [0.12, 0.2, 0.3].map((gallons) => gallons * GALLON_A_MINUTE);

test("every setting's rate, time and area follow from flow, speed and path", async () => {
  const page = await open({ view: "flow" });
  const shown = await figures(page);
  near(shown["flow.passing"], SPEED * WIDTH, "floor passed");
  FLOWS.forEach((flow, index) => {
    const row = (what) => shown[`flow.setting.${index + 1}.${what}`];
    near(row("rate"), flow / (SPEED * WIDTH), "rate");
    near(row("tank_time"), (10 * US_GALLON) / flow, "time");
    near(row("tank_area"), (10 * US_GALLON * SPEED * WIDTH) / flow, "area");
  });
  const chosen = shown["flow.setting"];
  near(shown["flow.rate"], shown[`flow.setting.${chosen}.rate`], "the chosen one");
  assert.equal(await page.locator(".answer tr.chosen th").innerText(), String(chosen));
  assert.match(await page.locator(".amount-figure").innerText(), new RegExp(`Setting ${chosen}$`));
});

test("a porous floor needs a higher setting than a sealed one", async () => {
  // Common practice, no source: bare concrete drinks, a film of finish does not.
  const page = await open({ view: "flow" });
  for (const machine of ["walk-behind", "self-driving", "ride-on"]) {
    await choose(page, "machine", machine);
    const settings = [];
    for (const floor of ["vinyl", "terrazzo", "concrete"]) {
      await choose(page, "floor", floor);
      settings.push((await figures(page))["flow.setting"]);
    }
    const [sealed, low, high] = settings;
    assert.ok(sealed < high && sealed <= low && low <= high, `${machine}: ${settings}`);
  }
});

test("the porosity class brings its usual target, and a target of one's own stays", async () => {
  const page = await open({ view: "flow" });
  const target = async () => [
    await field(page, "floor-target-low").inputValue(),
    await field(page, "floor-target-high").inputValue(),
  ];
  const seen = new Set();
  for (const porosity of ["sealed", "low", "medium", "high"]) {
    await choose(page, "floor-porosity", porosity);
    seen.add(String(await target()));
  }
  assert.equal(seen.size, 4);
  await write(page, "floor-target-low", "0.44");
  await write(page, "floor-target-high", "0.55");
  await choose(page, "floor", "marble");
  await choose(page, "floor", "vinyl");
  assert.deepEqual(await target(), ["0.44", "0.55"]);
});

test("where no setting is wet enough it says at what speed one would be", async () => {
  const page = await open({ view: "flow" });
  await write(page, "floor-target-high", "6");
  await write(page, "floor-target-low", "5");
  const shown = await figures(page);
  assert.equal(shown["flow.setting"], 3, "the wettest");
  near(shown["flow.speed"], FLOWS[2] / (5 * GALLON_A_1000_FT2 * WIDTH), "speed");
  const warning = plain(await page.locator('[data-remark="remark-flow-short"]').innerText());
  assert.match(warning, /No setting gives this floor enough[^]*Go no faster than 0\.\d+ mph[^]*setting of 1\.1 to 1\.32 gal\/min/);
});

test("where every setting is too wet it says at what speed one would not be", async () => {
  const page = await open({ view: "flow" });
  await write(page, "floor-target-low", "0.1");
  await write(page, "floor-target-high", "0.2");
  const shown = await figures(page);
  assert.equal(shown["flow.setting"], 1, "the driest");
  near(shown["flow.speed"], FLOWS[0] / (0.2 * GALLON_A_1000_FT2 * WIDTH), "speed");
  assert.ok((await remarks(page)).includes("remark-flow-too-wet"));
});

test("where no setting is wet enough it says how many passes are", async () => {
  // 2 mph × 15 in is 13,200 ft²/h; 18 gal/h on it 1.3636, 12 gal/h 0.9091 gal/1000 ft².
  const page = await open({ view: "flow" });
  const passes = async (low, high) => {
    await write(page, "floor-target-high", high);
    await write(page, "floor-target-low", low);
    const { "flow.passes": count, "flow.passes_setting": setting } = await figures(page);
    return [count, setting];
  };
  assert.deepEqual(await passes("2.5", "3"), [2, 3]);
  assert.match(plain(await page.locator('[data-remark="remark-flow-passes"]').innerText()), /2 passes with setting 3 lay down 2\.73 gal/);
  assert.deepEqual(await passes("1.7", "1.9"), [2, 2], "twice the wettest would be too much");
  assert.deepEqual(await passes("2.2", "2.3"), [undefined, undefined]);
  assert.ok((await remarks(page)).includes("remark-flow-passes-over"), "nobody is to try it");
  assert.deepEqual(await passes("1.05", "1.2"), [2, 1]);
  const lower = plain(await page.locator('[data-remark="remark-flow-lower"]').innerText());
  assert.match(lower, /Setting 2 lays down the right amount at 1\.52 to 1\.73 mph/);
});

test("the water absorption of a tile names its groups, and the class that it points to is taken", async () => {
  // ISO 13006: over 0.5 to 3 % is group Ib. ASTM C373, ANSI A137.1: vitreous.
  const page = await open({ view: "flow" });
  await choose(page, "floor", "tile");
  const found = () => page.locator("details", { has: page.locator('[name="floor-absorption"]') }).innerText();
  await choose(page, "floor-joints", "sealed");
  await write(page, "floor-absorption", "3");
  assert.match(await found(), /ISO 13006: group Ib[^]*ANSI A137\.1: vitreous/);
  assert.match(await found(), /points to the class low/);
  assert.equal(await field(page, "floor-porosity").inputValue(), "medium", "nothing is taken by itself");
  const before = await figures(page);
  await press(page, "floor-class-take");
  assert.equal(await field(page, "floor-porosity").inputValue(), "low");
  assert.equal(await field(page, "floor-target-low").inputValue(), "0.5");
  assert.ok((await figures(page))["flow.setting"] < before["flow.setting"]);
  assert.equal(await field(page, "floor-class-take").count(), 0, "there is nothing left to take");
  await page.waitForFunction(() => document.activeElement.getAttribute("name") === "floor-porosity");
  await write(page, "floor-absorption", "6.5");
  assert.match(await found(), /group IIb[^]*semi-vitreous/, "the two standards cut at 6 and at 7 %");
  await write(page, "floor-absorption", "a little");
  assert.ok(await page.locator("#floor-absorption-mistake").isVisible());
  assert.ok((await countOf(page, "flow.")) > 3, "the answer stands without it");
});

test("a drop of water counts before the data sheet, on its own floor alone", async () => {
  const page = await open({ view: "flow" });
  await write(page, "floor-drop", "5");
  assert.match(await page.locator(".fields", { hasText: "Drop test" }).first().innerText(), /Drop test: high[^]*worn or missing/);
  await write(page, "floor-target-low", "0.35");
  await press(page, "floor-class-take");
  assert.equal(await field(page, "floor-porosity").inputValue(), "high");
  assert.equal(await field(page, "floor-target-low").inputValue(), "1.2");
  await press(page, "undo");
  assert.equal(await field(page, "floor-target-low").inputValue(), "0.35", "a target of one's own comes back");
  await choose(page, "floor", "wood");
  assert.equal(await field(page, "floor-drop").inputValue(), "");
});

test("a film is told as a thickness", async () => {
  // 1 mL/m² lies 1 µm thick.
  const page = await open({ view: "flow" });
  const shown = await figures(page);
  near(shown["flow.thickness"], shown["flow.rate"], "1 m³ on 1 m² is 1 m");
  near(shown["flow.film_thickness"], shown["flow.film"]);
  await choose(page, "units", "metric");
  const text = async (name) => plain(await page.locator(`[data-answer="${name}"]`).innerText());
  assert.equal(await text("flow.thickness"), "22.2 µm");
  await choose(page, "units", "us");
  assert.equal(await text("flow.thickness"), "0.875 mil");
});

test("a machine that uses its solution again goes further with a tank", async () => {
  const page = await open({ view: "flow" });
  const before = await figures(page);
  await write(page, "machine-reuse", "75");
  const after = await figures(page);
  near(after["flow.tank_time"], before["flow.tank_time"] * 4, "time");
  near(after["flow.tank_area"], before["flow.tank_area"] * 4, "area");
  near(after["flow.rate"], before["flow.rate"], "the floor gets the same");
  assert.ok((await remarks(page)).includes("remark-reuse"), "and it says what was taken for granted");
});

test("settings are added, typed and dropped", async () => {
  const page = await open({ view: "flow" });
  await press(page, "setting-add");
  assert.equal(await countOf(page, "flow."), 0, "a setting without a flow gives no answer");
  await write(page, "machine-setting-4", "0.5");
  near((await figures(page))["flow.setting.4.rate"], (0.5 * GALLON_A_MINUTE) / (SPEED * WIDTH), "rate");
  await press(page, "setting-drop");
  assert.equal(await field(page, "machine-setting-4").count(), 0);
  await press(page, "undo");
  assert.equal(await field(page, "machine-setting-4").inputValue(), "0.5");
});

test("a mistake on Flow stands at its field", async () => {
  const page = await open({ view: "flow" });
  for (const [name, typed] of [["machine-overlap", "17"], ["machine-speed", "0"], ["machine-setting-2", "fast"]]) {
    const before = await field(page, name).inputValue();
    await write(page, name, typed);
    assert.ok(await page.locator(`#${name}-mistake`).isVisible(), name);
    assert.equal(await countOf(page, "flow."), 0, name);
    await write(page, name, before);
  }
  await write(page, "floor-target-low", "3");
  assert.match(await page.locator("#floor-target-low-mistake").innerText(), /more than the most/);
});
