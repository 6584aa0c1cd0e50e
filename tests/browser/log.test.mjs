// The log as a person uses it: recorded in one tap, corrected, struck, erased, asked, saved, taken over, printed.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { accessible, named, overflowing, tooSmallToPress, tooSmallToRead, unspoken } from "./checks.mjs";
import { file, give, kept, made, opened, take, toLog, wrongs } from "./log_walk.mjs";
import { readPdf, squeeze, squeezed } from "./pdf.mjs";
import {
  US_FLUID_OUNCE, choose, field, figures, go, near, plain, press, remarks, settled, stageOfThisFile, write,
} from "./walk.mjs";

const { open } = await stageOfThisFile();

/** Opens Fill and waits for the button, which comes with the later chunk. */
async function toFill(look = {}) {
  const page = await open(look);
  await field(page, "record-fill").waitFor();
  return page;
}

/** Waits until the page says that record `number` is durable; gives what it says. */
async function confirmed(page, number) {
  await page.waitForFunction((n) => document.querySelector("#log-said")?.textContent.endsWith(`number ${n}.`), number);
  return plain(await page.locator("#log-said").innerText());
}

const shownFills = async (page) => Number(await page.locator("[data-shown]").getAttribute("data-shown"));
const fillRow = (page, number) => page.locator(`tr[data-fill$="/${number}"]`);

/** Unfolds a row and waits for its history. */
async function unfold(page, number) {
  await fillRow(page, number).locator("button").click();
  await page.locator(".history li").first().waitFor();
}

test("one tap writes down what Fill shows, and says so once the browser has it", async () => {
  const page = await toFill();
  const shown = await figures(page);
  const amount = plain(await page.locator(".amount-figure").innerText());
  await press(page, "record-fill");
  assert.match(await confirmed(page, 1), /^Recorded \d\d:\d\d, number 1\.$/);
  assert.equal(await page.locator("#log-said").getAttribute("role"), "status");
  const [record] = await kept(page);
  near(record.fill.concentrate.si, Number(shown["fill.rounded"].toPrecision(12)), "concentrate");
  near(record.fill.water.si, Number(shown["fill.water"].toPrecision(12)), "water");
  near(record.fill.level.si, Number(shown["fill.total"].toPrecision(12)), "level");
  assert.ok(plain(record.fill.concentrate.text).startsWith(amount), record.fill.concentrate.text);
  assert.equal(record.fill.product.id, await field(page, "product").inputValue());
  assert.equal(record.fill.machine.id, await field(page, "machine").inputValue());
});

test("a second tap records nothing: the button rests and says so", async () => {
  const page = await toFill();
  // Three taps before the page has drawn the first, and one more after it has.
  await page.evaluate(() => {
    const button = document.querySelector('[name="record-fill"]');
    for (let tap = 0; tap < 3; tap += 1) button.click();
  });
  await page.getByRole("button", { name: "Recorded already" }).waitFor();
  // A button that rests is pressed all the same: Playwright itself would wait until it does not.
  await field(page, "record-fill").click({ force: true });
  await confirmed(page, 1);
  assert.equal((await kept(page)).length, 1);
  // Another answer is another fill.
  await press(page, "level-50");
  await press(page, "record-fill");
  await confirmed(page, 2);
});

test("a warning that stands in the way is not recorded, and the way to what was really done is there", async () => {
  const page = await toFill();
  await choose(page, "product", "quat");
  assert.equal(await field(page, "record-fill").count(), 0);
  await page.getByRole("link", { name: "Write down what you really did" }).click();
  await page.locator(".view.log").waitFor();
  await press(page, "log-by-hand");
  await write(page, "log-measured", "4");
  await press(page, "log-hand-record");
  await confirmed(page, 1);
  const [record] = await kept(page);
  assert.equal(record.fill.product.id, "quat");
  near(record.fill.measured.si, Number((4 * US_FLUID_OUNCE).toPrecision(12)));
});

test("what is added goes with the record; what is far from the plan is told, not refused", async () => {
  const page = await toFill();
  await write(page, "log-who", "AB");
  await write(page, "log-measured", "30");
  await choose(page, "log-measured-unit", "floz_us");
  assert.ok((await remarks(page)).includes("remark-log-over-label"), String(await remarks(page)));
  await choose(page, "log-deviation", "more");
  await press(page, "record-fill");
  assert.equal(await page.evaluate(() => document.activeElement.id), "log-reason", "it asks why");
  assert.equal(plain(await page.locator("#log-said").innerText()), "Not recorded: Say why you did it otherwise.");
  assert.ok(await page.locator('label[for="log-reason"]').evaluate((label) => label.getBoundingClientRect().top >= 0), "its label is in sight");
  await write(page, "log-reason", "Grease on the floor");
  await write(page, "log-notes", "=1+1");
  await press(page, "record-fill");
  await confirmed(page, 1);
  const [record] = await kept(page);
  assert.equal(record.words.who.text, "AB");
  assert.equal(record.words.reason.text, "Grease on the floor");
  assert.equal(record.fill.deviation, "more");
  assert.equal(await field(page, "log-who").inputValue(), "AB", "initials stay");
  assert.equal(await field(page, "log-notes").inputValue(), "", "the rest is for one fill");
});

test("what is added after a record does not go with a fill of another machine", async () => {
  const page = await toFill();
  await press(page, "record-fill");
  await confirmed(page, 1);
  const machine = await field(page, "machine").inputValue();
  await write(page, "log-measured", "62");
  const others = await field(page, "machine").locator("option").evaluateAll((all) => all.map(({ value }) => value));
  await choose(page, "machine", others.find((one) => one && one !== machine));
  assert.match(plain(await page.locator("#log-said").innerText()), /, [A-Z][a-z]{2} \d+, \d{4}: recorded \d\d:\d\d, number 1\.$/, "it names the machine");
  assert.equal(await field(page, "log-measured").inputValue(), "");
});

test("another product is asked for, and the record is of that one", async () => {
  const page = await toFill();
  const planned = await field(page, "product").inputValue();
  await choose(page, "log-deviation", "other_product");
  await write(page, "log-reason", "None left");
  await press(page, "record-fill");
  assert.equal(plain(await page.locator("#log-said").innerText()), "Not recorded: Choose the product.");
  const offered = await field(page, "log-other-product").locator("option").evaluateAll((all) => all.map(({ value }) => value));
  assert.ok(!offered.includes(planned));
  assert.ok((await remarks(page)).includes("log-other-rest"));
  await choose(page, "log-other-product", offered.find((one) => one));
  await press(page, "record-fill");
  await confirmed(page, 1);
  const [record] = await kept(page);
  assert.equal(record.fill.product.id, offered.find((one) => one));
  assert.equal(record.fill.concentrate, undefined);
  assert.match(record.words.reason.text, /^None left \(planned: /);
});

test("by keyboard alone: recorded, found on Log, unfolded", async () => {
  const page = await toFill();
  await field(page, "record-fill").focus();
  await page.keyboard.press("Enter");
  await confirmed(page, 1);
  assert.equal(await page.evaluate(() => document.activeElement.name), "record-fill", "the focus stays");
  // On to the fold below it: the way to correct the record, then what may be added to the next.
  const tabbed = [];
  for (let step = 0; step < 4 && !tabbed.includes("log-details"); step += 1) {
    await page.keyboard.press("Tab");
    tabbed.push(await page.evaluate(() => document.activeElement.id || document.activeElement.name));
  }
  assert.ok(tabbed.includes("log-details"), `Tab went to ${tabbed}`);
  await page.keyboard.press("Enter");
  assert.ok(await field(page, "log-who").isVisible(), "the fold is open");
  await page.keyboard.press("Tab");
  assert.equal(await page.evaluate(() => document.activeElement.name), "log-who", "its first field");
  await press(page, "level-75");
  await field(page, "record-fill").focus();
  await page.keyboard.press("Space");
  await confirmed(page, 2);
  await toLog(page);
  await fillRow(page, 2).locator("button").focus();
  await page.keyboard.press("ArrowDown");
  await page.waitForFunction(() => document.activeElement.closest("tr")?.dataset.fill.endsWith("/1"));
  await page.keyboard.press("Enter");
  await page.locator(".history li").first().waitFor();
  assert.equal(await page.evaluate(() => document.activeElement.getAttribute("aria-expanded")), "true");
});

test("corrected, struck and unfolded: the first record stays as it was", async () => {
  const page = await toFill();
  await write(page, "log-who", "AB");
  await press(page, "record-fill");
  await confirmed(page, 1);
  await press(page, "log-correct-it");
  await page.locator("#log-form").waitFor();
  await write(page, "log-measured", "21");
  await press(page, "log-correct-save");
  assert.equal(await page.evaluate(() => document.activeElement.id), "log-why", "it asks why");
  await write(page, "log-why", "Read the jug wrong");
  await press(page, "log-correct-save");
  await confirmed(page, 2);
  const [first, second] = await kept(page);
  assert.equal(first.fill.measured, undefined);
  assert.deepEqual(Object.keys(second.changes), ["measured"]);
  near(second.changes.measured.si, Number((21 * US_FLUID_OUNCE).toPrecision(12)));
  assert.match(plain(await fillRow(page, 1).innerText()), /21 fl oz/);
  await unfold(page, 1);
  const history = plain(await page.locator(".history").innerText());
  assert.match(history, /Read the jug wrong/);
  await press(page, "log-correct");
  await write(page, "log-why", "Tapped by mistake");
  await press(page, "log-strike");
  await confirmed(page, 3);
  assert.match(await fillRow(page, 1).getAttribute("class"), /struck/);
  await press(page, "log-questions");
  assert.ok((await remarks(page)).includes("remark-log-use-none"), "it is counted nowhere");
  assert.deepEqual(wrongs(await kept(page)), []);
});

test("it is there after loading again, and so is what was typed and not yet recorded", async () => {
  const page = await toFill();
  await press(page, "record-fill");
  await confirmed(page, 1);
  await write(page, "log-notes", "half a sentence");
  await page.reload();
  await field(page, "record-fill").waitFor();
  assert.equal(await field(page, "log-notes").inputValue(), "half a sentence");
  await toLog(page);
  assert.equal(await shownFills(page), 1);
});

test("initials are erased on request, and the chain still holds", async () => {
  const page = await open({ view: "log" });
  await opened(page);
  await take(page, made("d-11111111", 9));
  await toLog(page, "keep");
  await write(page, "log-erase", "ab");
  await press(page, "log-erase-look");
  const found = page.locator('[data-remark="log-erase"]');
  await found.waitFor();
  assert.match(await found.innerText(), /3 records name ab/, "AB wrote every third of nine");
  await press(page, "log-erase-do");
  await page.waitForFunction(() => document.querySelector('[name="log-erase-do"]') === null);
  await page.waitForTimeout(500);
  const records = await kept(page);
  assert.equal(records.filter((one) => one.words?.who?.text === "AB").length, 0);
  assert.equal(records.filter((one) => one.words?.who?.text === "CD").length, 3);
  assert.deepEqual(wrongs(records), []);
  await press(page, "log-check");
  await page.locator('[data-check="whole"]').waitFor();
});

test("the end of the shift is ticked off machine by machine", async () => {
  const page = await toFill();
  await press(page, "record-fill");
  await confirmed(page, 1);
  await toLog(page, "shift");
  const tasks = await page.locator(".task p").allInnerTexts();
  assert.deepEqual(tasks, ["Tanks drained", "Tanks rinsed", "Filters cleaned", "Debris bag or brush cleaned", "Squeegee wiped"]);
  await press(page, "log-drain-done");
  await confirmed(page, 2);
  await press(page, "log-squeegee-not-done");
  await confirmed(page, 3);
  assert.equal(await field(page, "log-drain-done").getAttribute("aria-pressed"), "true");
  const records = await kept(page);
  assert.deepEqual(records[2].changes, { checklist: { drain: "done", squeegee: "not_done" } });
  await press(page, "log-questions");
  assert.ok((await remarks(page)).includes("remark-log-undone"));
});

test("ticks that come faster than the browser keeps them all count", async () => {
  const page = await toFill();
  await press(page, "record-fill");
  await confirmed(page, 1);
  await toLog(page, "shift");
  const tasks = ["drain", "rinse", "filters", "brush", "squeegee"];
  await page.evaluate((names) => {
    for (const name of names) document.getElementsByName(name)[0].click();
  }, tasks.map((task) => `log-${task}-done`));
  await confirmed(page, 6);
  for (const task of tasks) assert.equal(await field(page, `log-${task}-done`).getAttribute("aria-pressed"), "true", task);
  const last = (await kept(page)).at(-1);
  assert.deepEqual(last.changes, { checklist: Object.fromEntries(tasks.map((task) => [task, "done"])) });
});

test("the filter, and the questions against sums worked out here", async () => {
  const fills = made("d-22222222", 60);
  const page = await open({ view: "log" });
  await opened(page);
  await take(page, fills);
  await toLog(page, "fills");
  assert.equal(await shownFills(page), 60);
  await choose(page, "seek-product", "product-1");
  const own = fills.filter((one) => one.fill.product.id === "product-1");
  assert.equal(await shownFills(page), own.length);
  await press(page, "log-questions");
  const shown = await figures(page);
  const sum = (all, of) => all.reduce((total, one) => total + of(one), 0);
  const close = (name, expected) => {
    assert.ok(Math.abs(shown[name] - expected) <= 1e-9 * expected, `${name} is ${shown[name]}, expected ${expected}`);
  };
  close("log.used", sum(own, (one) => one.fill.measured.si));
  close("log.planned", sum(own, (one) => one.fill.concentrate.si));
  // Individuals and moving range, e-Handbook 6.3.2.2: mean ± 3 mean ranges over 1.128; 3.267 mean ranges.
  const ratios = own.map((one) => one.fill.measured.si / one.fill.concentrate.si);
  const mean = sum(ratios, (one) => one) / ratios.length;
  const ranges = ratios.slice(1).map((one, at) => Math.abs(one - ratios[at]));
  const range = sum(ranges, (one) => one) / ranges.length;
  close("log.centre", mean);
  close("log.upper", mean + (3 * range) / 1.128);
  close("log.range_upper", 3.267 * range);
  assert.ok(await page.locator('[data-asked="doses"] svg[role="img"]').isVisible());
  await press(page, "seek-all");
  assert.equal(await shownFills(page), 60);
  await choose(page, "log-by", "machine");
  assert.equal(await page.locator('[data-answer^="log.use."][data-answer$=".used"]').count(), 8);
});

test("days of stock left", async () => {
  const page = await toFill();
  await press(page, "record-fill");
  await confirmed(page, 1);
  const [{ fill }] = await kept(page);
  const container = await page.evaluate(() => JSON.parse(localStorage.getItem("brimline.typed")).site.products[0].container);
  assert.equal(container.unit, "gal_us", "of the demo");
  await toLog(page, "questions");
  const row = page.locator(`[data-stock="${fill.product.id}"]`);
  await row.locator("input").first().fill("2");
  await settled(page);
  const left = 2 * Number(container.text) * 3.785411784e-3 - fill.concentrate.si;
  const days = (await figures(page))["log.stock.1.days"];
  assert.ok(Math.abs(days - left / fill.concentrate.si) < 1e-9 * days, "all of it was used today");
});

test("a backup opens elsewhere, and once more without anything twice", async () => {
  const page = await toFill();
  await write(page, "log-notes", "=1+1");
  await press(page, "record-fill");
  await confirmed(page, 1);
  await press(page, "level-50");
  await press(page, "record-fill");
  await confirmed(page, 2);
  await toLog(page, "keep");
  const save = async (name) => {
    const [download] = await Promise.all([page.waitForEvent("download"), press(page, name)]);
    return readFileSync(await download.path(), "utf8");
  };
  const backup = await save("log-save");
  assert.equal(backup.trim().split("\n").length, 3);
  const table = await save("log-csv");
  assert.match(table, /'=1\+1/, "no cell is a formula");
  const other = await open({ view: "log" });
  await toLog(other, "keep");
  await give(other, backup);
  await other.locator('[data-added="2"]').waitFor();
  assert.equal((await kept(other)).length, 0, "nothing is taken unseen");
  await press(other, "log-leave");
  await give(other, backup);
  await press(other, "log-take");
  await other.waitForFunction(() => document.querySelector('[name="log-take"]') === null);
  await toLog(other, "fills");
  await other.waitForFunction(() => document.querySelector("[data-shown]")?.dataset.shown === "2");
  await toLog(other, "keep");
  await give(other, backup);
  await other.locator('[data-added="0"]').waitFor();
  assert.equal(await field(other, "log-take").count(), 0, "there is nothing to take");
  assert.deepEqual(wrongs(await kept(other)), []);
});

test("a file that is none is refused, and one with flaws says which lines", async () => {
  const page = await open({ view: "log" });
  await toLog(page, "keep");
  await give(page, '{"brimline":"site","schema":1}');
  await page.locator(".view.log .mistake", { hasText: "Nothing was taken" }).waitFor();
  const records = made("d-33333333", 3);
  const lines = file(records).trim().split("\n");
  lines.splice(2, 0, '{"device":"<img src=x onerror=alert(1)>","number":1}');
  await give(page, lines.join("\n") + "\n");
  await page.locator('[data-added="3"]').waitFor();
  assert.match(await page.locator("[data-added]").innerText(), /Line 3:/);
  assert.equal(await page.locator("[data-added] img").count(), 0);
});

test("ten thousand fills: only what is in sight is drawn, and the keyboard reaches the last", async () => {
  const page = await open({ view: "log" });
  await opened(page);
  await take(page, made("d-44444444", 10_000), 120_000);
  await toLog(page, "fills");
  await page.waitForFunction(() => document.querySelector("[data-shown]")?.dataset.shown === "10000", null, { timeout: 60_000 });
  const table = page.locator(".log-table");
  assert.equal(await table.getAttribute("aria-rowcount"), "10001");
  assert.ok((await table.locator("tr[data-fill]").count()) < 80);
  const first = table.locator("tr[data-fill] button").first();
  await first.focus();
  await page.keyboard.press("End");
  await page.waitForFunction(() => document.activeElement.closest("tr")?.dataset.fill?.endsWith("/1"));
  const last = fillRow(page, 1);
  assert.equal(await last.getAttribute("aria-rowindex"), "10001");
  await page.keyboard.press("Enter");
  await page.locator(".history li").first().waitFor();
  await page.keyboard.press("Home");
  await page.waitForFunction(() => document.activeElement.closest("tr")?.dataset.fill?.endsWith("/10000"));
});

test("a device that is set to its standards records and corrects, and neither erases nor takes", async () => {
  const page = await toFill();
  await press(page, "record-fill");
  await confirmed(page, 1);
  await go(page, "site");
  await press(page, "site-device");
  await write(page, "device-code", "1234");
  await Promise.all([page.waitForEvent("load"), field(page, "device-set").click()]);
  await page.locator('nav a[href="#log"]').click();
  await toLog(page, "keep");
  assert.equal(await field(page, "log-open").count(), 0);
  assert.equal(await field(page, "log-erase").count(), 0);
  assert.equal(await field(page, "log-save").count(), 1);
  await toLog(page, "fills");
  await unfold(page, 1);
  await press(page, "log-correct");
  await write(page, "log-measured", "22");
  await write(page, "log-why", "Measured after all");
  await press(page, "log-correct-save");
  await confirmed(page, 2);
});

test("the log of a month on paper has totals, and the pieces of a long one repeat their head", async () => {
  const page = await open({ view: "log" });
  await opened(page);
  await take(page, made("d-55555555", 100));
  await toLog(page, "fills");
  const month = await field(page, "seek-month").locator("option").nth(1).getAttribute("value");
  await choose(page, "seek-month", month);
  await page.locator("#log-paper summary").click();
  await page.evaluate(() => (window.print = () => {
    window.printed = [...document.querySelectorAll("[data-printed]")].map(({ dataset }) => dataset.part);
  }));
  await press(page, "log-print");
  assert.deepEqual(await page.evaluate(() => window.printed), ["log"]);
  const sheet = plain(await page.locator('[data-part="log"]').innerText());
  // Unicode CLDR, by the browser’s own tables: the value stays ISO 8601, the reader sees the month in words.
  const inWords = new Intl.DateTimeFormat("en-US", { month: "long", year: "numeric", timeZone: "UTC" }).format(new Date(`${month}-01`));
  assert.match(month, /^\d{4}-\d\d$/);
  assert.equal(await field(page, "seek-month").locator("option").nth(1).innerText(), inWords);
  assert.match(sheet, new RegExp(`Log of ${inWords}`));
  const fills = made("d-55555555", 100);
  const own = fills.filter(({ when, fill }) => when.startsWith(month) && fill.product.id === "product-0");
  const row = page.locator('[data-part="log"] tbody tr', { hasText: "product 0" }).first();
  assert.match(await row.innerText(), new RegExp(`\\s${own.length}\\s`));
});

test("on a desk, on a phone, in the dark, in forced colours: named, spoken, large enough, nothing over the edge", async () => {
  const page = await open({ view: "log", width: 1280, height: 900 });
  await opened(page);
  await take(page, made("d-66666666", 40));
  const faults = [];
  for (const part of ["fills", "shift", "questions", "keep"]) {
    await toLog(page, part);
    if (part === "fills") {
      await unfold(page, 40);
      await page.locator(".history").scrollIntoViewIfNeeded();
    }
    const hold = async (where, checks) => {
      await settled(page);
      for (const check of checks) faults.push(...(await check(page)).map((fault) => `${part}, ${where}: ${fault}`));
    };
    const look = async (width, height, media) => {
      await page.setViewportSize({ width, height });
      await page.emulateMedia({ colorScheme: "light", forcedColors: "none", ...media });
    };
    await look(1280, 900, {});
    await hold("desk", [accessible, named, unspoken, tooSmallToPress, tooSmallToRead]);
    await look(360, 12_000, { colorScheme: "dark" });
    await hold("phone", [accessible, overflowing, tooSmallToPress, tooSmallToRead]);
    await look(1024, 768, { forcedColors: "active" });
    await hold("forced colours", [accessible]);
  }
  assert.deepEqual(faults, []);
});

test("a fill by hand says when it was done, a correction moves it, and the device has its name", async () => {
  const page = await toFill();
  await press(page, "record-fill");
  await confirmed(page, 1);
  await toLog(page);
  await press(page, "log-keep");
  await write(page, "log-station", "Fill station, sports hall");
  await press(page, "log-fills");
  await press(page, "log-by-hand");
  const product = await field(page, "log-product").locator("option").nth(1).getAttribute("value");
  await choose(page, "log-product", product);
  await press(page, "log-hand-record");
  assert.equal((await kept(page)).length, 1, "nothing but a choice is not recorded");
  await write(page, "log-measured", "5");
  await field(page, "log-day").fill("2020-02-29");
  await press(page, "log-hand-record");
  assert.equal((await kept(page)).length, 1, "a day without a time is not recorded");
  assert.match(await page.locator("#log-time-mistake").innerText(), /time/);
  await field(page, "log-time").fill("06:15");
  await press(page, "log-hand-record");
  await fillRow(page, 2).waitFor();
  const [, record] = await kept(page);
  assert.match(record.fill.at, /^2020-02-29T06:15:00[+-]\d\d:\d\d$/);
  assert.equal(record.station, "Fill station, sports hall");
  const order = () => page.locator("tr[data-fill]").evaluateAll((rows) => rows.map((row) => Number(row.dataset.fill.split("/")[1])));
  assert.deepEqual(await order(), [1, 2], "the newest first, by when it was done");
  assert.match(await fillRow(page, 2).innerText(), /^Feb 29, 2020, 06:15/);
  await unfold(page, 2);
  await press(page, "log-correct");
  await field(page, "log-day").fill("2099-01-01");
  await write(page, "log-why", "Wrong day");
  await press(page, "log-correct-save");
  assert.match(await page.locator("#log-time-mistake").innerText(), /not come/);
  await field(page, "log-day").fill("2021-03-01");
  await press(page, "log-correct-save");
  await page.waitForFunction(() => document.querySelector('tr[data-fill$="/2"]')?.textContent.includes("Mar 1, 2021, 06:15"));
  assert.equal(await page.locator("tr[data-fill]").count(), 2, "it stands once");
  await page.reload();
  await page.locator("tr[data-fill]").first().waitFor();
  assert.deepEqual(await order(), [1, 2]);
  assert.match(await fillRow(page, 2).innerText(), /corrected/);
  assert.match(plain(await page.locator("main").innerText()), /writes as Fill station, sports hall/);
});

test("the place of the record button is kept while its code is loaded, and says what it waits for", async () => {
  for (const [width, product] of [[360], [1280], [360, "quat"]]) {
    let give;
    const held = new Promise((done) => { give = done; });
    const page = await open({ width, height: 900, before: async (page) => {
      if (product) await page.addInitScript((product) => {
        const kept = JSON.parse(localStorage.getItem("brimline.typed") ?? "null");
        if (kept) localStorage.setItem("brimline.typed", JSON.stringify({ ...kept, ask: { ...kept.ask, product } }));
      }, product);
      // The chunks come when the test lets them.
      await page.route(/\.wasm/, async (route) => {
        if (!/_bg\.wasm/.test(route.request().url())) await held;
        await route.continue();
      });
    } });
    if (product) {
      await choose(page, "product", product);
      await page.locator(".stop").waitFor();
    }
    await page.locator(".waits").waitFor();
    assert.match(await page.locator(".waits").innerText(), /is loading/);
    const place = () => page.locator(".answer .caution, .answer .drawing").first().evaluate((one) => one.getBoundingClientRect().top + window.scrollY);
    const before = await place();
    give();
    await page.locator(product ? '.answer a[href="#log"]' : '[name="record-fill"]').waitFor();
    if (!product) await field(page, "first-fill-link").waitFor();
    await settled(page);
    const after = await place();
    assert.ok(Math.abs(after - before) < (product ? 30 : 1.5), `${width} px: what stands below went from ${before} to ${after}`);
  }
});

test("a click on Save reaches the button while a number that does not read is half typed, and nothing is lost", async () => {
  const page = await toFill({ width: 360, height: 740 });
  await toLog(page);
  await press(page, "log-by-hand");
  for (const wait of [0, 1_500]) {
    await field(page, "log-measured").click();
    await page.keyboard.press("Control+A");
    await page.keyboard.type("4 cups or so");
    if (wait) {
      await page.locator("#log-measured-mistake").waitFor();
      assert.equal(await page.evaluate(() => document.activeElement.name), "log-measured", "it is told while the field has the focus");
    }
    const box = await field(page, "log-hand-record").evaluate((one) => {
      one.scrollIntoView({ block: "center" });
      const { left, top, width, height } = one.getBoundingClientRect();
      return { x: left + width / 2, y: top + height / 2 };
    });
    // As a hand does: down, a moment, up.
    await page.mouse.move(box.x, box.y);
    await page.mouse.down();
    await page.waitForTimeout(150);
    await page.mouse.up();
    await page.locator("#log-measured-mistake").waitFor();
    assert.equal(await page.evaluate(() => document.activeElement.name), "log-measured", "it leads to the number");
    assert.equal(await field(page, "log-measured").inputValue(), "4 cups or so");
    assert.equal((await kept(page)).length, 0);
    await write(page, "log-measured", "");
  }
  await field(page, "log-measured").click();
  await page.keyboard.type("4");
  await field(page, "log-hand-record").click();
  await fillRow(page, 1).waitFor();
});

test("on another day the initials are asked anew, and offered for one tap", async () => {
  const page = await open();
  await page.clock.install({ time: new Date("2026-03-07T21:00:00") });
  await page.reload();
  await field(page, "record-fill").waitFor();
  await write(page, "log-who", "AB");
  await press(page, "record-fill");
  await confirmed(page, 1);
  assert.equal((await kept(page))[0].words.who.text, "AB");
  // The page stays open over night.
  await page.clock.pauseAt(new Date("2026-03-08T05:59:00"));
  await page.clock.resume();
  await page.clock.fastForward(60_000);
  await field(page, "log-still").waitFor();
  assert.match(await page.locator('[data-asked="log-new-day"]').innerText(), /Who are you/);
  assert.equal(await field(page, "log-who").inputValue(), "");
  assert.deepEqual([...(await named(page)), ...(await unspoken(page)), ...(await tooSmallToPress(page))], []);
  await press(page, "record-fill");
  await confirmed(page, 2);
  assert.equal((await kept(page))[1].words?.who, undefined, "yesterday’s initials go with no record of today");
  await press(page, "log-still");
  assert.equal(await field(page, "log-who").inputValue(), "AB");
  await press(page, "level-50");
  await press(page, "record-fill");
  await confirmed(page, 3);
  assert.equal((await kept(page))[2].words.who.text, "AB");
  await page.reload();
  await field(page, "record-fill").waitFor();
  assert.equal(await field(page, "log-still").count(), 0, "once a day");
  await page.clock.pauseAt(new Date("2026-03-09T06:00:00"));
  await page.clock.resume();
  await page.reload();
  await field(page, "log-still").waitFor();
  await press(page, "log-other-person");
  assert.equal(await page.evaluate(() => document.activeElement.name), "log-who");
});

test("the printed month says who struck a fill and why, breaks no day, and has nothing of the screen around it", async () => {
  const page = await toFill();
  await write(page, "log-who", "AB");
  await press(page, "record-fill");
  await confirmed(page, 1);
  await press(page, "level-50");
  await press(page, "record-fill");
  await confirmed(page, 2);
  await press(page, "log-correct-it");
  await write(page, "log-measured", "9");
  await write(page, "log-who", "CD");
  await write(page, "log-why", "Read the jug wrong");
  await press(page, "log-correct-save");
  await confirmed(page, 3);
  await unfold(page, 1);
  await press(page, "log-correct");
  await write(page, "log-why", "Tapped by mistake");
  await press(page, "log-strike");
  await confirmed(page, 4);
  const month = await field(page, "seek-month").locator("option").nth(1).getAttribute("value");
  await choose(page, "seek-month", month);
  await page.locator("#log-paper summary").click();
  const row = (number) => page.locator(`[data-part="log"] tr[data-fill$="/${number}"]`);
  await row(1).locator(".corrected").waitFor();
  assert.match(plain(await row(1).innerText()), /Struck [A-Z][a-z]{2} \d+, \d{4}, \d\d:\d\d by CD: Tapped by mistake/);
  assert.match(plain(await row(2).innerText()), /Corrected [A-Z][a-z]{2} \d+, \d{4}, \d\d:\d\d by CD: Read the jug wrong/);
  const sheets = await readPdf(await page.pdf({ format: "A4" }));
  const texts = sheets.flatMap(({ items }) => items.map(({ text }) => text.trim())).filter(Boolean);
  const whole = squeezed(sheets);
  assert.ok(!whole.includes(squeeze("What was filled?")), "the question is of the screen");
  assert.ok(!whole.includes(squeeze("Save a backup")), "so is the reminder of a backup");
  assert.ok(!whole.includes(squeeze("The log of this month on paper")), "so is the fold");
  assert.equal(sheets.length, 1, "no sheet is left blank");
  assert.ok(whole.includes(squeeze("by CD: Tapped by mistake")));
  const day = new Intl.DateTimeFormat("en-US", { dateStyle: "medium", timeZone: "UTC" });
  const days = (await kept(page)).map(({ when }) => day.format(new Date(when.slice(0, 10))));
  for (const one of days) assert.ok(texts.some((text) => plain(text).includes(one)), `${one} stands whole in one line`);
});

test("a phone shows what was planned and what was measured", async () => {
  const page = await open({ view: "log", width: 360, height: 740 });
  await opened(page);
  await take(page, made("d-77777777", 3));
  await toLog(page, "fills");
  const cell = page.locator("tr[data-fill]").first().locator("td").nth(1);
  const [{ fill }] = made("d-77777777", 3).slice(-1);
  const told = plain(await cell.innerText());
  assert.ok(told.includes(fill.concentrate.text), told);
  assert.match(told, new RegExp(`Measured:\\s+${fill.measured.text}`));
  const head = await page.locator(".log-table thead th").nth(2).innerText();
  assert.match(head, /Planned\s+Measured/);
  const product = await page.locator("tr[data-fill] td:nth-child(2)").evaluateAll((all) => all.filter((one) => one.scrollWidth > one.clientWidth + 1).length);
  assert.equal(product, 0, "the product has its room");
  const cut = await page.locator("tr[data-fill] td:nth-child(3)").evaluateAll((all) => all.filter((one) => one.scrollWidth > one.clientWidth + 1 || one.scrollHeight > one.clientHeight + 1).length);
  assert.equal(cut, 0, "both are whole");
  assert.deepEqual([...(await overflowing(page)), ...(await tooSmallToRead(page))], []);
  await page.setViewportSize({ width: 1280, height: 740 });
  assert.ok(!plain(await cell.innerText()).includes("Measured"), "where it has a column it stands there alone");
});
