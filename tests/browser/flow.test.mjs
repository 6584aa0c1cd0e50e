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
  assert.match(warning, /No setting gives this floor enough[^]*Go no faster than 0\.\d+ mph/);
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
