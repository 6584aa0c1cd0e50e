// Flow in depth: catch tests, a tank that gravity drains, drying. Volumes are exact by NIST
// SP 811, Appendix B: 1 gal = 128 fl oz.

import assert from "node:assert/strict";
import { test } from "node:test";
import { unfoldAll } from "./states.mjs";
import {
  US_GALLON, choose, field, figures, go, near, plain, press, reach, remarks, settled, stageOfThisFile, write,
} from "./walk.mjs";

const { open } = await stageOfThisFile();

/** Types catch tests of a minute: [setting, fl oz]. */
async function caught(page, tests) {
  await unfoldAll(page);
  for (const [index, [setting, ounces]] of tests.entries()) {
    await press(page, "catch-add");
    await write(page, `catch-${index + 1}-setting`, setting);
    await write(page, `catch-${index + 1}-volume`, ounces);
  }
}
const rows = async (page) => {
  const table = page.locator("table", { has: page.locator("caption", { hasText: "What the catch tests say" }) });
  return (await table.locator("tbody tr").allInnerTexts()).map((text) => plain(text).replace(/\s+/g, " "));
};

test("catch tests on a line give every setting, and the settings take them", async () => {
  const page = await open({ view: "flow" });
  await caught(page, [["1", "16"], ["2", "32"], ["4", "64"]]);
  assert.match(await page.locator("details", { hasText: "catch tests" }).first().innerText(), /A line fits/);
  const said = await rows(page);
  assert.equal(said.length, 4, "setting 3 was not tested and is told");
  assert.match(said[2], /^3 0\.375 gal\/min/);
  await press(page, "calibrate-take");
  assert.equal(await field(page, "machine-setting-4").inputValue(), "0.5");
  // 16 fl oz a minute are 1/8 gal.
  near((await figures(page))["flow.flow"], (0.125 * US_GALLON) / 60);
  assert.ok(await page.getByRole("img", { name: /Catch tests/ }).isVisible());
});

test("one that lies far off is pointed out and stays", async () => {
  const page = await open({ view: "flow" });
  await caught(page, [["1", "10"], ["2", "20.2"], ["3", "29.9"], ["4", "40.1"], ["3", "45"]]);
  assert.match(await page.locator(".mistake").innerText(), /Catch test 5 lies far off/);
  assert.match((await rows(page))[2], /^3 .*0\.234 gal\/min; 0\.352 gal\/min/, "both stand behind it");
  await press(page, "catch-5-remove");
  assert.equal(await page.locator(".mistake").count(), 0);
  await write(page, "catch-1-time", "0");
  assert.notEqual(await page.locator("#catch-1-time-mistake").innerText(), "");
  assert.equal((await rows(page)).length, 4, "the others stay");
});

test("a catch test of nothing is asked about and changes no line", async () => {
  const page = await open({ view: "flow" });
  await caught(page, [["1", "16"], ["2", "32"], ["3", "0"], ["4", "64"]]);
  assert.match(await page.locator("#catch-3-volume-mistake").innerText(), /Nothing came out/);
  assert.match((await rows(page))[2], /^3 0\.375 gal\/min/, "as of the other three alone");
  assert.match(await page.locator("details", { hasText: "catch tests" }).first().innerText(), /A line fits/);
});

test("a catch test that is removed leaves the focus beside it and can be brought back", async () => {
  const page = await open({ view: "flow" });
  await caught(page, [["1", "16"], ["2", "33"], ["4", "64"]]);
  const focused = () => page.evaluate(() => document.activeElement.getAttribute("name"));
  await (await reach(page, "catch-2-remove")).focus();
  await page.keyboard.press("Enter");
  await page.waitForFunction(() => !document.querySelector('[name="catch-3-remove"]'));
  await settled(page);
  assert.equal(await focused(), "catch-2-remove", "the next one moved up");
  await page.keyboard.press("Enter");
  await page.waitForFunction(() => document.activeElement.getAttribute("name") === "catch-add");
  assert.equal(await field(page, "catch-1-volume").inputValue(), "16");
  await press(page, "undo");
  assert.equal(await field(page, "catch-2-volume").inputValue(), "64");
});

test("a tank that gravity drains, and a film that dries too soon", async () => {
  const page = await open({ view: "flow" });
  await write(page, "machine-head-full", "16");
  await write(page, "machine-head-low", "4");
  const found = await figures(page);
  near(found["flow.last"], found["flow.full"] / 2, "a quarter of the head");
  assert.ok((await remarks(page)).includes("remark-fades-short"));
  near(found["flow.film"], found["flow.rate"] * 0.1);
  assert.ok(found["flow.dry_from"] > 0 && found["flow.dry_from"] < found["flow.dry_to"]);
  await choose(page, "machine", "ride-on");
  await go(page, "fill");
  await write(page, "product-contact", "10");
  await go(page, "flow");
  assert.ok((await remarks(page)).includes("remark-dries-early"));
  await write(page, "air-humidity", "100");
  assert.ok((await remarks(page)).includes("remark-never-dries"));
});
