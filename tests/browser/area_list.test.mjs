// The list of areas as a file: saved for a spreadsheet, and any table opened, corrected and taken.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { test } from "node:test";
import { FOOT, choose, field, figures, near, press, reach, settled, stageOfThisFile, tick, write } from "./walk.mjs";

const { open: openPage } = await stageOfThisFile();

/** Opens Shift with the list unfolded. */
async function atList(look) {
  const page = await openPage({ view: "shift", ...look });
  await reach(page, "areas-open");
  return page;
}

/** Gives the page a file; what it shows then is awaited by `shows`, a selector. */
async function give(page, content, { name = "areas.csv", shows = "#areas-columns" } = {}) {
  const buffer = Buffer.from(content);
  await field(page, "areas-open").setInputFiles({ name, mimeType: "text/csv", buffer });
  await page.locator(shows).first().waitFor();
  await settled(page);
}

const status = (page) => page.locator(".list [role=status]").innerText();
const flaws = (page) => page.locator(".list li").allInnerTexts();
const names = (page) => page.locator('li.area [name$="-name"]').evaluateAll((all) => all.map(({ value }) => value));
const DEMO = ["Reading room", "Entrance hall", "Sports hall", "Changing rooms", "Store"];

test("a list with known headers is read at once, its mistakes told by their lines, taken and undone", async () => {
  const page = await atList();
  await give(page, "room;size (m²);floor\nHall;120,5;Foyer marble\nBar;big;Moon\n");
  assert.match(await status(page), /^2 areas will be read from “areas\.csv”\. 2 things to mend:$/);
  assert.deepEqual(await flaws(page), [
    "Line 3. Size: “big” is not a number. Type digits, such as 12, 1.5 or 1/2.",
    "Line 3. Floor: this site has no “Moon”. The area will ask for one that it has.",
  ]);
  assert.deepEqual(await names(page), DEMO, "nothing changes before the button");
  await press(page, "areas-take");
  assert.match(await status(page), /^2 areas were read\. You can undo it\. 2 things to mend:$/);
  assert.equal((await flaws(page)).length, 2, "still told, to be mended");
  assert.deepEqual(await names(page), ["Hall", "Bar"]);
  assert.equal(await field(page, "area-1-size").inputValue(), "120.5", "in the marks of the page");
  assert.equal(await field(page, "area-1-size-unit").inputValue(), "m2");
  assert.equal(await field(page, "area-2-size").inputValue(), "big", "kept for correction");
  assert.match(await page.locator(".troubles").innerText(), /The floor of this area is not on this site/);
  await write(page, "area-2-size", "80");
  await choose(page, "area-2-floor", "vinyl");
  near((await figures(page))["shift.area"], 120.5 + 80, "the mended list counts");
  await press(page, "undo");
  assert.deepEqual(await names(page), DEMO);
});

test("unknown headers are mapped by hand, and what follows is shown at once", async () => {
  const page = await atList();
  await give(page, "Raumbezeichnung;Groesse;Belag\nLesesaal;557,41824;Foyer marble\nFoyer;1.200;Store, bare concrete\n");
  assert.match(await status(page), /Choose the column of the names/);
  assert.equal(await field(page, "areas-take").count(), 0, "nothing to take yet");
  await choose(page, "areas-column-name", "0");
  assert.match(await status(page), /^2 areas will be read/);
  await choose(page, "areas-column-size", "1");
  await choose(page, "areas-column-floor", "2");
  assert.match(await page.locator("#areas-column-size-hint").innerText(), /First: 557,41824 · The file does not name a unit/);
  await choose(page, "areas-column-size-unit", "m2");
  assert.deepEqual(await flaws(page), []);
  await press(page, "areas-take");
  assert.deepEqual(await names(page), ["Lesesaal", "Foyer"]);
  near((await figures(page))["shift.area"], 6000 * FOOT * FOOT + 1200, "557.41824 m² is 6000 ft²; the comma tells what 1.200 is");
});

test("a number with two readings is asked about once for the file", async () => {
  const page = await atList();
  await give(page, "name,size (ft2),floor\nHall,\"1,200\",vinyl\nBar,\"2,400\",vinyl\n");
  assert.equal((await flaws(page)).length, 2);
  const readings = await field(page, "areas-marks").locator("option").allInnerTexts();
  assert.deepEqual(readings, ["I do not know yet", "1,200", "1.2"]);
  await choose(page, "areas-marks", "grouped");
  assert.deepEqual(await flaws(page), []);
  await choose(page, "areas-marks", "");
  await press(page, "areas-take");
  assert.equal(await field(page, "area-1-size").inputValue(), "1,200 ?", "kept, and no number");
  assert.ok(await page.locator("#area-1-size-mistake").isVisible());
});

test("a file is left, or its areas come behind those that are there", async () => {
  const page = await atList();
  const before = await figures(page);
  await give(page, "name;size (ft²);floor\nAnnex;1500;Store, bare concrete\n");
  await press(page, "areas-leave");
  assert.equal(await status(page), "The file was left. Nothing was changed.");
  assert.equal(await page.locator("#areas-columns").count(), 0);
  assert.deepEqual([await names(page), await figures(page)], [DEMO, before]);
  await give(page, "name;size (ft²);floor\nAnnex;1500;Store, bare concrete\n");
  await choose(page, "areas-how", "behind");
  await press(page, "areas-take");
  assert.deepEqual(await names(page), [...DEMO, "Annex"]);
  near((await figures(page))["shift.area"] - before["shift.area"], 1500 * FOOT * FOOT, "area", 1e-9);
});

test("the saved list comes back with the same figures, with headers or without", async () => {
  const page = await atList();
  await choose(page, "area-2-size-unit", "m2");
  await write(page, "area-2-size", "222.9");
  await choose(page, "area-3-product", "vinegar");
  await write(page, "area-1-closes", "7.125");
  await tick(page, "area-4-included", false);
  const before = await figures(page);
  await reach(page, "areas-save");
  const [saved] = await Promise.all([page.waitForEvent("download"), press(page, "areas-save")]);
  assert.equal(saved.suggestedFilename(), "brimline-areas.csv");
  const text = await readFile(await saved.path(), "utf8");
  assert.match(text, /^\ufeffname,size \(ft²\),floor,product,machine,clean,place,not before \(h\),done by \(h\),/);
  await give(page, text);
  assert.deepEqual(await flaws(page), []);
  await press(page, "areas-take");
  const after = await figures(page);
  assert.deepEqual(Object.keys(after), Object.keys(before));
  for (const [name, si] of Object.entries(after)) {
    assert.ok(Math.abs(si - before[name]) <= 1e-9 * Math.abs(before[name]), `${name}: ${si}, ${before[name]}`);
  }
  await give(page, text.split("\n").slice(1).join("\n"));
  assert.equal(await field(page, "areas-headed").isChecked(), false, "there are numbers in its first line");
  await choose(page, "areas-column-name", "0");
  assert.match(await status(page), /^5 areas will be read/);
  await tick(page, "areas-headed", true);
  assert.match(await status(page), /^4 areas will be read/);
});

test("what is no list is refused in plain words, and what was open stays open", async () => {
  const page = await atList();
  await give(page, "name;size\nHall;12\n");
  const alert = page.locator(".list [role=alert]");
  for (const [content, message] of [
    [Buffer.from("PK\x03\x04\x14\x00\x08\x00", "latin1"), /not a table saved as text/],
    ["\n\n", /Nothing stands in this file/],
    [`name;size\n${"Hall;12\n".repeat(5001)}`, /more than 5,000 lines/],
    [";".repeat(10_000), /more than 200 columns/],
    ["x".repeat(5_000_001), /larger than 5 MB/],
    ["\0\0\0", /not a table saved as text/],
  ]) {
    await give(page, content, { shows: ".list [role=alert]" });
    await page.waitForFunction((source) => new RegExp(source).test(document.querySelector(".list [role=alert]")?.textContent), message.source);
    assert.match(await alert.innerText(), /Nothing was changed\.$/);
    assert.match(await status(page), /^1 area will be read/);
  }
  await give(page, "name;size\nBar;12\n");
  assert.equal(await alert.count(), 0, "the next good file takes the message away");
  assert.deepEqual(await names(page), DEMO);
});

// The outside opinion is the browser's own decoder: WHATWG Encoding Standard, index windows-1252.
test("a file of an old spreadsheet is read in its encoding", async () => {
  const page = await atList();
  const bytes = Uint8Array.from({ length: 128 }, (_, index) => index + 128);
  const rows = [...bytes].flatMap((byte) => [120, byte, 120, 59, 49, 48, 10]);
  await give(page, Uint8Array.from([...Buffer.from("name;size (m\xb2)\n", "latin1"), ...rows]));
  assert.equal(await field(page, "areas-column-size-unit").inputValue(), "m2");
  await press(page, "areas-take");
  const decoded = await page.evaluate((all) => new TextDecoder("windows-1252").decode(Uint8Array.from(all)), [...bytes]);
  assert.equal(decoded[0], "€");
  const kept = await page.evaluate(() => JSON.parse(localStorage.getItem("brimline.typed")).site.areas.map(({ name }) => name));
  assert.deepEqual(kept, [...decoded].map((one) => `x${one}x`));
});

test("a list is opened, corrected and taken by keyboard alone", async () => {
  const page = await atList({ width: 360, height: 640 });
  const focused = () => page.evaluate(() => document.activeElement.name ?? document.activeElement.tagName);
  await field(page, "areas-open").focus();
  await give(page, "Zimmer;size (m²);floor;Weg\nHall;120;Foyer marble;3\n");
  assert.equal(await focused(), "areas-open", "the focus stays, and what follows is next");
  const way = [];
  for (let step = 0; step < 30 && way.at(-1) !== "areas-take"; step += 1) {
    await page.keyboard.press("Tab");
    way.push(await focused());
    if (way.at(-1) === "areas-column-name") await page.keyboard.type("Zimmer");
    const { outlineStyle } = await page.evaluate(() => ({ outlineStyle: getComputedStyle(document.activeElement).outlineStyle }));
    assert.notEqual(outlineStyle, "none", `the focus on ${way.at(-1)} is seen`);
  }
  assert.deepEqual(way.filter((name) => name?.startsWith("areas-")), [
    "areas-headed", "areas-column-name", "areas-column-size", "areas-column-size-unit", "areas-column-floor",
    "areas-column-product", "areas-column-machine", "areas-how", "areas-take",
  ]);
  await page.keyboard.press("Enter");
  await settled(page);
  assert.deepEqual(await names(page), ["Hall"]);
  assert.equal(await focused(), "areas-open", "the button is gone, and the focus is not lost");
});
