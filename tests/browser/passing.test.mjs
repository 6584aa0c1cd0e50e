// A site passed on: as a file, signed, compared, merged and refused; links that carry a fill.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { offlineReady } from "./harness.mjs";
import { choose, countOf, field, figures, go, near, press, settled, stageOfThisFile, write } from "./walk.mjs";

const { open, stage } = await stageOfThisFile();

const atPassing = async () => {
  const page = await open({ view: "site" });
  await press(page, "site-passing");
  return page;
};

/** The text of the file that a button offers. */
async function saved(page, name) {
  const [download] = await Promise.all([page.waitForEvent("download"), press(page, name)]);
  return readFileSync(await download.path(), "utf8");
}

/** Opens a text as a site's file. */
async function give(page, text, name = "site-open") {
  await page.locator(`#${name}`).setInputFiles({ name: "file", mimeType: "application/json", buffer: Buffer.from(text) });
  await settled(page);
}

/** The site that the device keeps. */
const site = (page) => page.evaluate(() => JSON.parse(localStorage.getItem("brimline.typed")).site);

test("a site goes out as a file and comes in elsewhere, change by change", async () => {
  const here = await atPassing();
  await press(here, "site-library");
  await write(here, "machine-tank", "12");
  await press(here, "shelf-product");
  await write(here, "product-price", "21");
  await press(here, "site-passing");
  const file = await saved(here, "site-save");

  const there = await atPassing();
  await give(there, file);
  await field(there, "site-take").waitFor();
  const lines = await there.locator(".changes li").allInnerTexts();
  assert.equal(lines.length, 2, lines.join("; "));
  assert.match(lines[0], /Machine “Small walk-behind”, Solution tank: 10\sgal → 12\sgal/);
  await field(there, "change-2").uncheck();
  await press(there, "site-take");
  const taken = await site(there);
  assert.equal(taken.machines[0].tank.text, "12");
  assert.notEqual(taken.products[0].price.text, "21", "what was unticked stays as it was");
  await press(there, "site-undo");
  assert.equal((await site(there)).machines[0].tank.text, "10");
});

test("both sides changed: what clashes is decided, the rest comes together", async () => {
  const page = await atPassing();
  const base = await saved(page, "site-save");
  const theirs = JSON.parse(base);
  theirs.site.machines[0].tank.text = "15";
  theirs.site.machines[1].name = "Robot";
  await press(page, "site-library");
  await write(page, "machine-tank", "12");
  await press(page, "shelf-measure");
  await write(page, "measure-name", "Blue jug");
  await press(page, "site-passing");
  await give(page, JSON.stringify(theirs));
  await page.locator("[data-conflict]").waitFor();
  assert.ok(await field(page, "site-take").isDisabled());
  await press(page, "conflict-theirs");
  await press(page, "site-take");
  const { machines, measures } = await site(page);
  assert.deepEqual([machines[0].tank.text, machines[1].name, measures[0].name], ["15", "Robot", "Blue jug"]);
});

test("files that are not as they should be are refused with their place, and nothing changes", async () => {
  const page = await atPassing();
  const good = await saved(page, "site-save");
  const before = JSON.stringify(await site(page));
  const broken = JSON.parse(good);
  const with_ = (change) => {
    const file = structuredClone(broken);
    change(file);
    return JSON.stringify(file);
  };
  const cases = [
    [good.slice(0, good.length / 2), /ends too early/],
    ["{}", /not a site/],
    [with_((file) => (file.schema = 99)), /later version/],
    [with_((file) => (file.site.products[2].name = 7)), /site\.products\[2\]\.name: there should be a text here, and there is a number/],
    [with_((file) => (file.site.products[1].id = file.site.products[0].id)), /two records have the id/],
    [with_((file) => (file.site.areas[0].floor = "moon")), /“moon”, and no such record/],
  ];
  for (const [text, told] of cases) {
    await give(page, text);
    await page.locator("main .mistake", { hasText: told }).waitFor();
    assert.equal(JSON.stringify(await site(page)), before);
  }
  // A name that is a script is a name.
  await give(page, with_((file) => (file.site.machines[0].name = "<img src=x onerror=alert(1)>")));
  await field(page, "site-take").click();
  await go(page, "fill");
  assert.match(await page.locator("#machine").innerText(), /<img src=x/);
  assert.equal(await page.locator("main img").count(), 0);
});

test("a number that is none is told and not ticked, and inner names are told in words", async () => {
  const theirs = JSON.parse(await saved(await atPassing(), "site-save"));
  theirs.site.machines[0].tank.text = "ten";
  theirs.site.machines[0].vacuum = false;
  theirs.site.areas[0].floor = "wood";
  theirs.site.standards.push({
    id: "s9", name: "Hall", floor: "wood", product: "neutral", dilution: "1:64", version: 1, standing: "in_force",
    contact: { text: "five", unit: "min" }, proved: "0123456789abcdef", overrides: [{ finding: "finding-no-setting", reason: "Seen" }],
  });
  // Only they changed these: compared and merged both leave out what is no number.
  for (const mode of ["passing-compare", "passing-merge"]) {
    const page = await atPassing();
    await press(page, "site-library");
    if (mode === "passing-merge") await write(page, "machine-path", "18");
    await press(page, "site-passing");
    await give(page, JSON.stringify(theirs));
    await press(page, mode);
    const lines = await page.locator(".changes li").allInnerTexts();
    const whole = lines.join("\n").replaceAll("\u202f", " ");
    assert.match(whole, /Solution tank: 10 gal → ten gal No number here: Solution tank, “ten”\./);
    assert.match(whole, /It picks the solution up with a vacuum: Yes → No/i);
    assert.match(whole, /Floor: Reading room vinyl, three coats of finish → Sports hall, sealed wood/);
    assert.match(whole, /Standard “Hall, version 1”: new No number here: Keep the floor wet for, “five”\./);
    for (const inner of ["in_force", "finding-", "0123456789abcdef", "semi_", "s9"]) assert.ok(!whole.includes(inner), inner);
    for (const [part, ticked] of [["No number here: Solution tank", false], ["with a vacuum", true], ["Sports hall", true], ["“Hall, version 1”", false]]) {
      assert.equal(await page.locator(".changes li", { hasText: part }).locator("input").isChecked(), ticked, part);
    }
    await page.locator(".unknown", { hasText: "nothing is ticked" }).waitFor();
    await press(page, "site-take");
    const taken = await site(page);
    assert.deepEqual([taken.machines[0].tank.text, taken.machines[0].vacuum, taken.areas[0].floor, taken.standards.length], ["10", false, "wood", 0]);
    await page.context().close();
  }
  // Whoever ticks it takes it.
  const page = await atPassing();
  await give(page, JSON.stringify(theirs));
  await press(page, "passing-compare");
  await page.locator(".changes li", { hasText: "No number here: Solution tank" }).locator("input").check();
  await press(page, "site-take");
  assert.equal((await site(page)).machines[0].tank.text, "ten");
});

test("a pinned device takes what is signed with its key, whole, and follows to the next key", async () => {
  const page = await atPassing();
  const unsigned = await saved(page, "site-save");
  await press(page, "key-make");
  const backup = await saved(page, "key-back-up");
  assert.match(backup, /BEGIN BRIMLINE SECRET KEY/);
  const key = await page.locator("#key-public").innerText();
  const signed = await saved(page, "site-save");
  await page.locator("#site-saved", { hasText: "edition 1." }).waitFor();
  const newer = await saved(page, "site-save");
  await page.locator("#site-saved", { hasText: "edition 2." }).waitFor();
  const [first, second] = [await saved(page, "key-replace"), await saved(page, "key-replace")];
  const next = await saved(page, "site-save");
  assert.deepEqual([signed, newer, next].map((file) => JSON.parse(file).signed.edition), [1, 2, 3]);
  assert.deepEqual([first, second].map((file) => JSON.parse(file).steps.length), [1, 2]);

  const station = await atPassing();
  await write(station, "pin-key", "nonsense");
  await press(station, "pin-set");
  await station.locator("#pin-key-mistake").waitFor();
  await write(station, "pin-key", key);
  await press(station, "pin-set");
  await station.locator("#pin-told", { hasText: "only what is signed" }).waitFor();
  const refused = async (text, told) => {
    await give(station, text);
    await station.locator("main .mistake", { hasText: told }).waitFor();
    assert.equal(await field(station, "site-take").count(), 0);
  };
  await refused(unsigned, /not signed/);
  await refused(signed.replace("Small walk-behind", "Small walk-Behind"), /changed after it was signed/);
  await refused(next, /signed with the key/);
  const changed = JSON.parse(signed);
  assert.ok(changed.signed);
  await give(station, signed);
  await station.locator('[data-standing="passing-signed"]', { hasText: "Edition 1, signed" }).waitFor();
  await press(station, "site-leave");
  // What is pinned is taken whole: there is nothing to untick. What is taken is not led back.
  await press(station, "site-library");
  await write(station, "machine-tank", "12");
  await press(station, "site-passing");
  await give(station, newer);
  assert.match(await station.locator("#site-other").innerText(), /1 change, taken as it is\./);
  assert.doesNotMatch(await station.locator("#site-other").innerText(), /Untick/i);
  assert.equal(await station.locator("#site-other input").count(), 0);
  await press(station, "site-take");
  await refused(signed, /edition 1, and this device already has edition 2/);
  await give(station, newer);
  await station.locator('[data-standing="passing-signed"]', { hasText: "Edition 2" }).waitFor();
  // Two keys later: the newer file alone leads all the way, and tells each step. A broken one leads nowhere.
  const broken = JSON.parse(second);
  broken.steps.reverse();
  await refused(JSON.stringify(broken), /Step 2 of the keys/);
  const middle = JSON.parse(second);
  middle.steps.shift();
  await refused(JSON.stringify(middle), /signed with the key/);
  await give(station, second);
  await station.locator("[role=alert]", { hasText: "follows to the newest key" }).waitFor();
  assert.equal((await station.locator("[role=alert]").allInnerTexts()).join("\n").match(/From the key/g).length, 2);
  await give(station, next);
  await station.locator('[data-standing="passing-signed"]', { hasText: "Edition 3" }).waitFor();
  await press(station, "site-leave");
  await refused(newer, /signed with the key/);
  await give(station, second);
  await station.locator("[role=alert], [role=status]", { hasText: "pinned to the newest key already" }).first().waitFor();

  // The key comes back from its backup, and a typo is found.
  const other = await atPassing();
  await give(other, backup.replace(/[0-9a-f]/, (digit) => (digit === "0" ? "1" : "0")), "key-open");
  await other.locator("[role=alert]", { hasText: "A digit is wrong" }).waitFor();
  await give(other, backup, "key-open");
  await other.locator("#key-public").waitFor();
  // On a device that the key is new to, editions count on from what was opened there, and a merge from the higher.
  await give(other, newer);
  assert.equal(JSON.parse(await saved(other, "site-save")).signed.edition, 3);
  await give(other, next);
  await other.locator('[data-standing="passing-signed"]', { hasText: "Edition 3" }).waitFor();
  assert.equal(await other.locator("#key-public").innerText(), key);
});

const ADDRESS = "https://floors.alder-county.example/brimline/";

/** A site with a standard in force, and the link that its wall chart carries. */
async function linked(page) {
  await press(page, "site-standards");
  await press(page, "standard-add");
  for (const [name, text] of [["standard-author", "K. M."], ["standard-reason", "The daily round"], ["standard-effective", "2024-02-29"]]) {
    await write(page, name, text);
  }
  for (let round = 0; round < 20; round += 1) {
    const waits = page.locator('.findings li:not(.news)[data-blocks="false"] input').first();
    if (!(await waits.count())) break;
    await waits.fill("Seen and measured");
    await settled(page);
  }
  await press(page, "standard-publish");
  await press(page, "site-paper");
  // The tests' own server is of no use to a phone.
  await page.locator(".qr-none", { hasText: "No code is printed" }).first().waitFor({ state: "attached" });
  await write(page, "site-address", ADDRESS);
  return page.locator("[data-link]").first().getAttribute("data-link");
}

test("a link opens its fill at once on an empty device, offline, and asks on any other", async () => {
  const supervisor = await open({ view: "site" });
  const printed = await linked(supervisor);
  assert.ok(printed.startsWith(`${ADDRESS}#fill=`), printed);
  const link = `${await supervisor.evaluate(() => location.origin)}/${new URL(printed).hash}`;
  await go(supervisor, "fill");
  await choose(supervisor, "machine", "walk-behind");
  const dose = (await figures(supervisor))["fill.dose"];

  const operator = await open({ serviceWorkers: "allow" });
  await offlineReady(operator);
  await operator.evaluate(() => localStorage.clear());
  await operator.goto("about:blank");
  await stage.stopServer();
  try {
    await operator.goto(link);
    await operator.locator('[data-answer="fill.dose"]').first().waitFor();
    await operator.waitForFunction(() => JSON.parse(localStorage.getItem("brimline.typed")).site.machines.length === 1);
    near((await figures(operator))["fill.dose"], dose, "the same dose");
    assert.equal(new URL(operator.url()).hash, "#fill", "loaded again it asks for nothing");
  } finally {
    await stage.startServer();
  }

  const busy = await open();
  await write(busy, "machine-tank", "33");
  const fragment = new URL(link).hash;
  await busy.evaluate((hash) => (location.hash = hash), fragment);
  await press(busy, "link-leave");
  assert.equal(await field(busy, "machine-tank").inputValue(), "33");
  await busy.evaluate((hash) => (location.hash = hash), fragment);
  await field(busy, "link-take").click();
  await busy.waitForFunction(() => document.querySelector('[name="machine-tank"]').value === "10");
  await busy.reload();
  await field(busy, "link-back").click();
  await busy.waitForFunction(() => document.querySelector('[name="machine-tank"]').value === "33");
});

test("a link that was changed, or that nobody signed for a pinned device, is refused", async () => {
  const supervisor = await open({ view: "site" });
  const fragment = new URL(await linked(supervisor)).hash;
  const page = await open();
  const refused = async (hash, told) => {
    await page.evaluate((hash) => (location.hash = hash), hash);
    await page.locator("[role=alert][data-link]", { hasText: told }).waitFor();
    await press(page, "link-leave");
  };
  await refused(`${fragment.slice(0, 40)}${fragment[40] === "A" ? "B" : "A"}${fragment.slice(41)}`, /not as it was made/);
  await refused(fragment.slice(0, -9), /end is missing/);
  await refused("#fill=<script>", /character/);
  assert.equal(await countOf(page, "fill.dose"), 1);
  await page.evaluate(() => localStorage.setItem("brimline.pin", "x"));
  await refused(fragment, /cannot be read/);
});
