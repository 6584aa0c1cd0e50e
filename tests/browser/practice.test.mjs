// Practice: a trainer hands a session out, a phone without a network answers it by keyboard, the trainer reads its code.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { test } from "node:test";
import jsQR from "jsqr";
import { accessible, clashing, named, overflowing, tooSmallToPress, tooSmallToRead, unspoken } from "./checks.mjs";
import { ROOT, offlineReady, running } from "./harness.mjs";
import { kept as records } from "./log_walk.mjs";
import { readPdf, squeeze, squeezed } from "./pdf.mjs";
import { choose, field, plain, press, settled, stageOfThisFile, tick, write } from "./walk.mjs";

const { stage, open } = await stageOfThisFile();

const SCHEMA = Number(readFileSync(join(ROOT, "src/form/typed.rs"), "utf8").match(/SCHEMA: u32 = (\d+)/)[1]);
const DEMO = JSON.parse(readFileSync(join(ROOT, "src/site/demo.json"), "utf8"));
/** Where phones open the page: the tests' own server is of no use to them. */
const ADDRESS = "https://floors.alder-county.example/brimline/";

/** Practice on the demo site, which knows where phones open it. */
const trainer = (look = {}) => open({
  view: "practice",
  before: (page) => page.addInitScript(([key, kept]) => localStorage.getItem(key) ?? localStorage.setItem(key, kept), [
    "brimline.typed", JSON.stringify({ schema: SCHEMA, system: "us", site: { ...DEMO, address: ADDRESS }, ask: { machine: "walk-behind", product: "neutral", floor: "vinyl", measure: "jug", level: { text: "100", unit: "percent" } } }),
  ]),
  ...look,
});

async function pick(page, { topics, count, seed, level = "first" }) {
  for (const topic of topics) await tick(page, `practice-topic-${topic}`, true);
  await choose(page, "practice-level", level);
  await write(page, "practice-count", String(count));
  await write(page, "practice-seed", String(seed));
}

/** Hands a session out and gives its link. */
async function handOut(page, what) {
  await press(page, "practice-hand-out");
  await pick(page, what);
  await press(page, "practice-make");
  return page.locator("[data-link]").getAttribute("data-link");
}

/** Reads the code that a drawing shows, with another library. */
async function scan(drawing) {
  const side = Number((await drawing.getAttribute("viewBox")).split(" ")[2]);
  const dot = 4;
  const pixels = new Uint8ClampedArray(4 * (side * dot) ** 2).fill(255);
  for (const [, x, y, wide] of (await drawing.locator("path").getAttribute("d")).matchAll(/M(\d+) (\d+)h(\d+)v1/g)) {
    for (let row = y * dot; row < (Number(y) + 1) * dot; row += 1) {
      for (let at = x * dot; at < (Number(x) + Number(wide)) * dot; at += 1) pixels.fill(0, 4 * (row * side * dot + at), 4 * (row * side * dot + at) + 3);
    }
  }
  return jsQR(pixels, side * dot, side * dot)?.data;
}

const verdict = (page) => page.locator("#practice-verdict").getAttribute("data-verdict");

/** Moves by the tab key until the focus is on what a selector finds. */
async function tabTo(page, selector) {
  for (let steps = 0; steps < 60; steps += 1) {
    if (await page.evaluate((selector) => document.activeElement.matches(selector), selector)) return;
    await page.keyboard.press("Tab");
  }
  assert.fail(`the tab key does not reach ${selector}`);
}

/** The answers that the trainer's own key gives, task by task, read from the printed key. */
async function keyOf(page) {
  await page.locator("details", { has: page.locator('[name="practice-key-print"]') }).evaluate((one) => { one.open = true; });
  return page.locator('[data-part="practice-key"] .paper-tasks > li > p:first-child').evaluateAll((all) => all.map((one) => one.textContent.trim()));
}

/** Answers the task by keyboard, rightly or wrongly. */
async function answer(page, right, isRight) {
  if (await field(page, "practice-answer").count()) {
    await tabTo(page, '[name="practice-answer"]');
    const [number] = plain(right).match(/[\d.,]+/);
    // Seven times as much is wrong by any road, and never less than any tolerance.
    await page.keyboard.press("Control+A");
    await page.keyboard.type(isRight ? number : String(7 * Number(number.replaceAll(",", "")) + 1));
    await page.keyboard.press("Enter");
  } else {
    const labels = await page.locator("fieldset label.switch").allInnerTexts();
    const place = labels.findIndex((text) => (text.trim() === right) === isRight);
    await tabTo(page, '[name="practice-choice"]');
    // Space takes the one with the focus, arrows move on.
    await page.keyboard.press("Space");
    for (let step = 0; step < place; step += 1) await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Enter");
  }
  await settled(page);
}

test("a session goes by link to a phone without a network, and its code comes back", async () => {
  const teaching = await trainer();
  const link = await handOut(teaching, { topics: ["units", "dose", "label"], count: 6, seed: 4711 });
  assert.ok(link.startsWith(`${ADDRESS}#practice=`), link);
  const session = await teaching.locator("[data-session]").first().getAttribute("data-session");
  const answers = await keyOf(teaching);
  assert.equal(answers.length, 6);

  assert.equal(await scan(teaching.locator(".handing svg.qr")), link, "the code on the screen holds the link");

  // A phone that has opened the page once before, and has no network now.
  const context = await stage.browser.newContext({ viewport: { width: 360, height: 740 } });
  const before = await stage.openPage({ context });
  await offlineReady(before);
  await before.close();
  await stage.stopServer();
  const phone = await context.newPage();
  phone.setDefaultTimeout(10_000);
  await phone.goto(`${stage.origin}/${link.slice(link.indexOf("#"))}`);
  await running(phone);
  await phone.locator("#practice-offer").waitFor();
  assert.equal(await phone.locator("[data-session]").getAttribute("data-session"), session);
  assert.deepEqual(await overflowing(phone), []);
  const site = await phone.evaluate(() => localStorage.getItem("brimline.typed"));
  await tabTo(phone, '[name="practice-offer-begin"]');
  await phone.keyboard.press("Enter");
  await phone.locator("[data-progress='1']").waitFor();

  // Right at once, right at the second try, never, then right at once to the end; all by keyboard.
  for (const [at, right] of answers.entries()) {
    await phone.locator(`[data-progress="${at + 1}"]`).waitFor();
    const tries = at === 1 ? [false, true] : at === 2 ? [false, false] : [true];
    for (const isRight of tries) {
      await answer(phone, right, isRight);
      assert.match(await verdict(phone), isRight ? /^(right|rounded)$/ : /^wrong$/, `task ${at + 1}: ${right}`);
    }
    assert.ok(await phone.locator("details.workings").count(), "the workings are there");
    if (at === 2) assert.ok(plain(await phone.locator("#practice-verdict").innerText()).includes(plain(right)), "the answer is told");
    // Leaving and coming back goes on at the same place.
    if (at === 3) {
      await phone.reload();
      await running(phone);
      await phone.locator('[data-progress="4"]').waitFor();
    }
    await tabTo(phone, '[name="practice-next"]');
    await phone.keyboard.press("Enter");
    await settled(phone);
  }
  await phone.locator("[data-tries='first']").waitFor();
  const came = await phone.locator("[data-tries]").evaluateAll((all) => all.map(({ dataset }) => [dataset.tries, Number(dataset.n)]));
  assert.deepEqual(came, [["first", 4], ["second", 1], ["never", 1]]);
  assert.equal(await phone.locator('[name="practice-code"]').count(), 0, "no code without initials");
  await tabTo(phone, '[name="practice-initials"]');
  await phone.keyboard.type("QZ");
  const code = await field(phone, "practice-code").inputValue();
  assert.match(code, /^brim 1/);
  assert.equal(await scan(phone.locator(".handing svg.qr")), code);
  assert.deepEqual(await overflowing(phone), []);
  assert.equal(await phone.evaluate(() => localStorage.getItem("brimline.typed")), site, "the site of the device is as it was");
  await context.close();
  await stage.startServer();

  // The trainer reads it, with a slip and a line that is none beside it.
  await press(teaching, "practice-class");
  const slip = code.slice(0, -1) + (code.endsWith("q") ? "p" : "q");
  await write(teaching, "class-codes", `${code}\n${slip}\n${code}\nnothing`);
  await press(teaching, "class-take");
  assert.equal(await teaching.locator("[data-taken]").getAttribute("data-taken"), "1");
  const refused = await teaching.locator("[data-refused]").evaluateAll((all) => all.map(({ dataset }) => dataset.refused));
  assert.deepEqual(refused, ["practice-code-altered", "practice-class-twice", "practice-code-altered"]);
  assert.equal(await field(teaching, "class-codes").inputValue(), `${slip}\n${code}\nnothing`, "nothing typed is lost");
  const person = await teaching.locator('tr[data-who="QZ"] td').allInnerTexts();
  assert.deepEqual(person.slice(1), ["4", "1", "1", "0"]);
  const asked = await teaching.locator("tr[data-topic]").evaluateAll((rows) => rows.map((row) => [...row.querySelectorAll("td")].slice(0, 3).map((one) => Number(one.textContent))));
  const sum = asked.reduce((all, row) => all.map((one, index) => one + row[index]), [0, 0, 0]);
  assert.deepEqual(sum, [6, 4, 5], "answers, right at once, right at all");

  // Kept on request only, and gone on request.
  const kept = () => teaching.evaluate(() => localStorage.getItem("brimline.practice-class"));
  const everything = () => teaching.evaluate(() => JSON.stringify({ ...localStorage }));
  assert.equal(await kept(), null);
  await tick(teaching, "class-keep", true);
  assert.ok((await kept()).includes(code));
  await teaching.reload();
  await running(teaching);
  await press(teaching, "practice-class");
  assert.equal(await teaching.locator('tr[data-who="QZ"]').count(), 1);
  await write(teaching, "class-months", "6");
  const [shownOn] = person;
  // Months since the year 0.
  const month = (text) => { const day = new Date(`${text} UTC`); return day.getUTCFullYear() * 12 + day.getUTCMonth(); };
  const until = await teaching.locator("[data-shown] td:last-child").allInnerTexts();
  assert.ok(until.length > 0 && until.every((text) => month(text) === month(shownOn) + 6), String(until));
  // Into the log, once: from then on it stands there, without the codes and after a reload.
  await press(teaching, "class-log");
  await teaching.locator('[data-logged="1"]').waitFor();
  assert.equal(await field(teaching, "class-log").count(), 0, "nothing is left to write");
  const [lesson] = await records(teaching);
  assert.equal(lesson.kind, "lesson");
  assert.equal(lesson.words.who.text, "QZ");
  const later = new Date(Date.UTC(Math.floor((month(shownOn) + 6) / 12), (month(shownOn) + 6) % 12)).toISOString().slice(0, 7);
  assert.ok(lesson.lesson.until.startsWith(later), `${lesson.lesson.until}: a record keeps ISO 8601`);
  const shown = await teaching.locator("[data-shown]").evaluateAll((rows) => rows.map((row) => row.dataset.shown));
  assert.deepEqual(shown, lesson.lesson.shown);
  // It is asked first; what was taken off can be put back until somebody looks elsewhere.
  await press(teaching, "class-erase");
  assert.match(await teaching.locator('[data-remark="class-erase"]').innerText(), /One result goes off this device/);
  assert.ok((await kept()).includes(code), "nothing is gone yet");
  await press(teaching, "class-erase-leave");
  assert.equal(await teaching.locator('[data-remark="class-erase"]').count(), 0);
  await press(teaching, "class-erase");
  await press(teaching, "class-erase-do");
  await teaching.waitForFunction(() => document.activeElement.id === "class-gone");
  assert.equal(await kept(), null);
  assert.deepEqual([...(await accessible(teaching)), ...(await named(teaching)), ...(await unspoken(teaching))], []);
  await press(teaching, "class-put-back");
  assert.ok((await kept()).includes(code), "it is back, and kept as before");
  assert.equal(await teaching.locator('tr[data-who="QZ"]').count(), 1);
  await press(teaching, "class-erase");
  await press(teaching, "class-erase-do");
  assert.equal(await kept(), null);
  await teaching.reload();
  await running(teaching);
  await press(teaching, "practice-class");
  await teaching.locator('[data-logged="1"]').waitFor();
  assert.deepEqual(await teaching.locator("[data-shown]").evaluateAll((rows) => rows.map((row) => row.dataset.shown)), shown);
  await press(teaching, "class-1-remove");
  assert.match(await teaching.locator('[data-remark="class-remove"]').innerText(), /for good/, "it is asked first");
  await press(teaching, "class-remove-do");
  await teaching.locator('[data-person="QZ"]').waitFor({ state: "detached" });
  await teaching.waitForFunction(() => !document.querySelector("[data-logged]")?.dataset.logged.match(/[1-9]/));
  assert.equal((await records(teaching))[0].words?.who?.text ?? "", "", "erased on request");
  assert.equal(await teaching.locator('tr[data-who="QZ"]').count(), 0);
  assert.ok(!(await everything()).includes(code), "nothing of it is left");

  // The old code brings nobody back by itself.
  await write(teaching, "class-codes", code);
  await press(teaching, "class-take");
  assert.equal(await teaching.locator("[data-refused]").getAttribute("data-refused"), "practice-class-erased");
  assert.equal(await teaching.locator('tr[data-who="QZ"], [data-person="QZ"]').count(), 0);
  await press(teaching, "class-take-sure");
  assert.equal(await teaching.locator('[data-person="QZ"]').count(), 1, "taken as a new result");
  await press(teaching, "class-log");
  await teaching.locator('[data-logged="1"]').waitFor();
  const all = (await records(teaching)).filter((one) => one.kind === "lesson");
  assert.deepEqual(all.map((one) => one.words?.who?.text ?? ""), ["", "QZ"], "a new record; the erased one stays as it is");
});

test("a code from tomorrow is asked about, and who stands in the class list alone is taken off it", async () => {
  const teaching = await trainer();
  await press(teaching, "practice-hand-out");
  assert.match(plain(await teaching.locator("#practice-count-hint").innerText()), /At most 30/, "the most is said before");
  await pick(teaching, { topics: ["units"], count: 1, seed: 8 });
  await press(teaching, "practice-make");
  const link = await teaching.locator("[data-link]").getAttribute("data-link");
  /** The code of somebody whose device is some days ahead. */
  const codeOf = async (initials, days) => {
    const page = await stage.openPage({ path: `/${link.slice(link.indexOf("#"))}`, serviceWorkers: "block", before: (page) => page.addInitScript((ahead) => {
      const Own = Date;
      globalThis.Date = class extends Own {
        constructor(...of) { if (of.length) super(...of); else super(Own.now() + ahead); }
        static now() { return Own.now() + ahead; }
      };
    }, days * 86_400_000) });
    page.setDefaultTimeout(10_000);
    await press(page, "practice-offer-begin");
    await page.locator("[data-progress='1']").waitFor();
    await write(page, "practice-answer", "0");
    await press(page, "practice-check");
    assert.equal(await verdict(page), "not-read", "nothing is no answer");
    assert.match(await page.locator("#practice-verdict").innerText(), /no try/);
    await press(page, "practice-skip");
    await write(page, "practice-initials", initials);
    const code = await field(page, "practice-code").inputValue();
    await page.context().close();
    return code;
  };
  const [now, ahead] = [await codeOf("AB", 0), await codeOf("CD", 2)];
  await press(teaching, "practice-class");
  await write(teaching, "class-codes", `${now}\n${ahead}`);
  await press(teaching, "class-take");
  const refused = () => teaching.locator("[data-refused]").evaluateAll((all) => all.map(({ dataset }) => dataset.refused));
  assert.deepEqual(await refused(), ["practice-class-ahead"]);
  assert.equal(await field(teaching, "class-codes").inputValue(), ahead);
  assert.equal(await teaching.locator('tr[data-who="CD"]').count(), 0, "it was not taken silently");
  assert.deepEqual([...(await accessible(teaching)), ...(await unspoken(teaching)), ...(await tooSmallToPress(teaching))], []);
  await press(teaching, "class-take-sure");
  assert.deepEqual(await refused(), []);
  assert.equal(await field(teaching, "class-codes").inputValue(), "");
  assert.equal(await field(teaching, "class-take-sure").count(), 0);
  assert.equal(await teaching.locator('tr[data-who="CD"]').count(), 1);

  // Neither is in the log. The one is taken off here, the other where initials are erased.
  await tick(teaching, "class-keep", true);
  await write(teaching, "class-codes", now);
  await press(teaching, "class-1-remove");
  await press(teaching, "class-remove-off");
  await teaching.locator('[data-person="AB"]').waitFor({ state: "detached" });
  assert.equal(await teaching.locator('tr[data-who="AB"]').count(), 0);
  assert.equal(await field(teaching, "class-codes").inputValue(), "", "nor is the code that was typed left");
  const kept = () => teaching.evaluate(() => localStorage.getItem("brimline.practice-class") ?? "");
  assert.ok(!(await kept()).includes(now) && (await kept()).includes(ahead));
  await teaching.evaluate(() => { location.hash = "log"; });
  await press(teaching, "log-keep");
  await write(teaching, "log-erase", "cd");
  await press(teaching, "log-erase-look");
  await teaching.locator('[data-class="1"]').waitFor();
  await press(teaching, "log-erase-do");
  await teaching.waitForFunction(() => document.querySelector('[name="log-erase-do"]') === null);
  assert.ok(!(await kept()).includes(ahead), "taken off there too");
});

test("a typed answer in another unit, a slip in typing and the road that was taken", async () => {
  const page = await trainer({ width: 360, height: 740 });
  await pick(page, { topics: ["dose"], count: 3, seed: 3 });
  await press(page, "practice-begin");
  await page.locator("[data-progress='1']").waitFor();
  await write(page, "practice-answer", "a lot");
  await page.locator('[name="practice-check"]').click();
  await settled(page);
  assert.equal(await verdict(page), "not-read");
  assert.equal(await field(page, "practice-answer").inputValue(), "a lot");
  assert.equal(await page.locator("svg.drawing").count(), 0, "the picture would give it away");
  await press(page, "practice-check");
  await write(page, "practice-answer", "9000");
  await press(page, "practice-check");
  assert.equal(await verdict(page), "wrong", "what could not be read was no try");
  await write(page, "practice-answer", "9001");
  await press(page, "practice-check");
  const drawing = page.locator("svg.drawing");
  assert.match(plain(await drawing.getAttribute("aria-label")), /1 part to [\d.]+ parts of water/);
  // The layer of product in the tank is as high as its share of the tank.
  const [, inTank] = await drawing.locator("rect.concentrate").evaluateAll((all) => all.map((one) => Number(one.getAttribute("height"))));
  const tank = plain(await drawing.getAttribute("aria-label"));
  const ratio = Number(tank.match(/1 part to ([\d.]+)/)[1]);
  const filled = Number(await drawing.locator("rect.solution").getAttribute("height"));
  assert.ok(Math.abs(inTank * (1 + ratio) / filled - 1) < 0.02, `${inTank} of ${filled} at 1 to ${ratio}`);
  assert.deepEqual([...(await overflowing(page)), ...(await clashing(page)), ...(await tooSmallToRead(page))], []);
});

test("tasks and key are printed on sheets of their own", async () => {
  for (const format of ["A4", "Letter"]) {
    const page = await trainer();
    await handOut(page, { topics: ["dose", "units", "ppe", "foam", "pairs"], count: 8, seed: 5, level: "second" });
    const answers = await keyOf(page);
    const texts = await page.locator('[data-part="practice-tasks"] .paper-tasks > li > p:first-child').allInnerTexts();
    const print = async (part) => {
      await page.evaluate((name) => {
        window.print = () => { window.during = [...document.querySelectorAll("[data-printed]")]; };
        document.querySelector(`[name="${name}-print"]`).click();
        for (const one of window.during) one.setAttribute("data-printed", "");
      }, part);
      const pages = await readPdf(await page.pdf({ format }));
      await page.evaluate(() => { for (const one of window.during) one.removeAttribute("data-printed"); });
      for (const [index, { items, colours, width, images }] of pages.entries()) {
        assert.ok(items.length > 0, `${part}: sheet ${index + 1} is blank`);
        assert.match(items.map(({ text }) => text).join(" "), /[A-Z][a-z]{2} \d{1,2}, 20\d\d with Brimline/, `${part}: its day`);
        for (const { text, size, x, width: wide } of items) {
          assert.ok(size >= 11.95, `${part}: ${size} pt "${text}"`);
          assert.ok(x + wide <= width - 14.5 * 72 / 25.4, `${part}: over the edge "${text}"`);
        }
        assert.deepEqual([...colours].filter((colour) => !["#000000", "#ffffff"].includes(colour)), [], part);
        assert.equal(images, 0);
      }
      return pages;
    };
    const tasks = await print("practice-tasks");
    const key = await print("practice-key");
    for (const text of texts) assert.ok(squeezed(tasks).includes(squeeze(text)), text);
    for (const text of answers) assert.ok(squeezed(key).includes(squeeze(text)), text);
    assert.ok(squeezed(tasks).includes("Initials"));
    assert.ok(!squeezed(tasks).includes("Answerkey"), "the key is no part of the tasks");
    const both = await print("practice-both");
    assert.equal(both.length, tasks.length + key.length, "the key begins a sheet");
    assert.ok(!squeezed(both.slice(0, tasks.length)).includes("Answerkey"));
    console.log(`${format}: ${tasks.length} sheets of tasks, ${key.length} of the key`);
    await page.context().close();
  }
});

test("what the site lacks is told, and a page that leads nobody anywhere makes no link", async () => {
  const page = await open({ view: "practice", before: (page) => page.addInitScript(([key, kept]) => localStorage.setItem(key, kept), [
    "brimline.typed", JSON.stringify({ schema: SCHEMA, system: "us", site: { name: "Empty (invented)" }, ask: {} }),
  ]) });
  assert.equal(await page.locator("#practice-topic-dose-lack").getAttribute("data-lack"), "machine");
  assert.equal(await page.locator("#practice-topic-units-lack").count(), 0);
  await press(page, "practice-begin");
  assert.match(await page.getByRole("alert").filter({ hasText: "topic" }).innerText(), /Choose a topic/);
  await press(page, "practice-hand-out");
  await pick(page, { topics: ["units"], count: 2, seed: 1 });
  await write(page, "practice-seed", "x1");
  await press(page, "practice-make");
  assert.match(await page.getByRole("alert").filter({ hasText: "digits" }).innerText(), /digits/);
  assert.equal(await field(page, "practice-seed").inputValue(), "x1");
  await write(page, "practice-seed", "1");
  await press(page, "practice-make");
  assert.match(await page.locator("[data-lacks='link']").innerText(), /no other device gets here/);
});

test("a link with a slip is refused, and nothing of the device changes", async () => {
  const page = await trainer();
  const link = await handOut(page, { topics: ["units"], count: 2, seed: 9 });
  const fragment = link.slice(link.indexOf("#"));
  const before = await page.evaluate(() => localStorage.getItem("brimline.typed"));
  for (const [bad, key] of [[fragment.slice(0, -2), "link-cut-off"], [`${fragment.slice(0, -1)}!`, "link-foreign"]]) {
    await page.evaluate((hash) => { location.hash = hash; }, bad);
    await page.locator(`[data-link="${key}"]`).waitFor();
    assert.deepEqual(await unspoken(page), []);
  }
  await press(page, "practice-offer-leave");
  assert.equal(await page.evaluate(() => localStorage.getItem("brimline.typed")), before);
});

test("an order and several choices, by keyboard", async () => {
  const page = await trainer();
  await pick(page, { topics: ["foam", "ppe", "pairs"], count: 12, seed: 2, level: "third" });
  await press(page, "practice-begin");
  let [orders, several] = [0, 0];
  for (let at = 1; at <= 12; at += 1) {
    await page.locator(`[data-progress="${at}"]`).waitFor();
    const steps = page.locator("[data-step]");
    if (await steps.count()) {
      orders += 1;
      const first = await steps.first().getAttribute("data-step");
      await tabTo(page, `[name="practice-order-${first}-down"]`);
      await page.keyboard.press("Enter");
      await settled(page);
      assert.equal(await steps.nth(1).getAttribute("data-step"), first, "it moved down");
      assert.equal(await page.evaluate(() => document.activeElement.name), `practice-order-${first}-down`, "the focus went along");
    } else if (await page.locator('input[type="checkbox"][name^="practice-choice"]').count()) {
      several += 1;
      await tabTo(page, 'input[type="checkbox"][name^="practice-choice"]');
      await page.keyboard.press("Space");
      assert.ok(await page.locator('input[type="checkbox"][name^="practice-choice"]').first().isChecked());
    } else {
      await page.locator('[name="practice-choice"]').first().check();
    }
    await tabTo(page, '[name="practice-check"]');
    await page.keyboard.press("Enter");
    await settled(page);
    assert.match(await verdict(page), /right|wrong/);
    assert.deepEqual([...(await accessible(page)), ...(await named(page)), ...(await unspoken(page)), ...(await tooSmallToPress(page))], [], `task ${at}`);
    const on = (await field(page, "practice-next").count()) ? "practice-next" : "practice-skip";
    await press(page, on);
  }
  assert.ok(orders > 0 && several > 0, `${orders} orders, ${several} of several`);
});

test("each topic shows its picture when the task is over, and not before", async () => {
  for (const [level, language] of [["first", "en"], ["third", "en"], ["third", "es"]]) {
    const page = await trainer({ width: 360, height: 740 });
    await choose(page, "language", language);
    await page.waitForFunction((language) => document.documentElement.lang === language, language);
    await press(page, "practice-topics-all");
    await choose(page, "practice-level", level);
    await write(page, "practice-count", "11");
    await write(page, "practice-seed", "12");
    await press(page, "practice-begin");
    for (let at = 1; at <= 11; at += 1) {
      await page.locator(`[data-progress="${at}"]`).waitFor();
      const topic = await page.locator("#practice-task").innerText();
      for (let tries = 0; tries < 2 && await field(page, "practice-check").count(); tries += 1) {
        assert.equal(await page.locator("[data-picture]").count(), 0, `${topic}: it would give the answer away`);
        if (await field(page, "practice-answer").count()) await write(page, "practice-answer", "98765");
        const choices = page.locator('input[name^="practice-choice"]');
        if (await choices.count()) await choices.nth(tries).check();
        await press(page, "practice-check");
      }
      const picture = page.locator("[data-picture]");
      assert.equal(await picture.count(), 1, topic);
      const told = await picture.locator("[role='img']").evaluateAll((all) => all.map((one) => one.getAttribute("aria-label")));
      assert.ok(told.every((text) => text.length > 3), `${topic}: ${told}`);
      assert.ok((await picture.locator("figcaption").innerText()).length > 10, `${topic} has words beside its picture`);
      const faults = [...(await accessible(page)), ...(await unspoken(page)), ...(await overflowing(page)), ...(await clashing(page)), ...(await tooSmallToRead(page))];
      assert.deepEqual(faults, [], `${level}, ${language}: ${topic}`);
      await press(page, "practice-next");
    }
    await page.context().close();
  }
});

test("a person whose results are in no log is taken off the device only when asked, and can be put back", async () => {
  const page = await trainer();
  const session = await handOut(page, { topics: ["units"], count: 1, seed: 8 }).then(() => page.locator("[data-session]").first().getAttribute("data-session"));
  const [right] = await keyOf(page);
  await press(page, "practice-practise");
  await pick(page, { topics: [], count: 1, seed: 8 });
  await press(page, "practice-begin");
  await page.locator("[data-progress='1']").waitFor();
  assert.ok(session);
  await answer(page, right, true);
  assert.deepEqual(await clashing(page), [], "a scale from 0 to 1,200 is whole");
  await press(page, "practice-next");
  await write(page, "practice-initials", "AB");
  const code = await field(page, "practice-code").inputValue();
  await press(page, "practice-class");
  await write(page, "class-codes", code);
  await press(page, "class-take");
  const person = page.locator('[data-person="AB"]');
  await person.waitFor();
  await press(page, "class-1-remove");
  assert.equal(await person.count(), 1, "it is asked first");
  await press(page, "class-remove-leave");
  assert.equal(await person.count(), 1);
  await press(page, "class-1-remove");
  await press(page, "class-remove-off");
  await person.waitFor({ state: "detached" });
  await press(page, "class-put-back");
  await person.waitFor();
  await press(page, "class-1-remove");
  await press(page, "class-remove-off");
  await page.locator("#class-gone").waitFor();
  await press(page, "practice-practise");
  await press(page, "practice-class");
  assert.equal(await field(page, "class-put-back").count(), 0, "until somebody looks elsewhere");
  assert.equal(await person.count(), 0);
});

test("after an answer the next tab leads on: to the answer once more, or to the next task", async () => {
  const page = await trainer({ width: 360, height: 740 });
  const focused = () => page.evaluate(() => document.activeElement.name ?? document.activeElement.id);
  await pick(page, { topics: ["dose"], count: 2, seed: 3 });
  await press(page, "practice-begin");
  await page.locator("[data-progress='1']").waitFor();
  await write(page, "practice-answer", "9000");
  await field(page, "practice-check").click();
  await page.waitForFunction(() => document.activeElement.name === "practice-answer");
  assert.equal(await verdict(page), "wrong");
  const told = await page.locator("#practice-verdict").evaluate((one) => one.getBoundingClientRect());
  assert.ok(told.top >= 0 && told.top < 740, `what is told is in sight, at ${told.top}`);
  await page.keyboard.press("Control+A");
  await page.keyboard.type("9001");
  await page.keyboard.press("Enter");
  await page.waitForFunction(() => document.activeElement.id === "practice-verdict");
  await page.keyboard.press("Tab");
  assert.equal(await focused(), "practice-next");
  await page.keyboard.press("Enter");
  await page.locator("[data-progress='2']").waitFor();

  const choices = await trainer({ width: 360, height: 740 });
  await pick(choices, { topics: ["foam"], count: 1, seed: 2 });
  await press(choices, "practice-begin");
  await choices.locator("[data-progress='1']").waitFor();
  const all = choices.locator('[name="practice-choice"]');
  for (let one = 0; one < await all.count(); one += 1) {
    await all.nth(one).check();
    await choices.locator('[name="practice-check"]').click();
    await settled(choices);
    if (await field(choices, "practice-next").count()) break;
    await choices.waitForFunction((id) => document.activeElement.id === id, `practice-choice-${one}`);
  }
  await choices.waitForFunction(() => document.activeElement.id === "practice-verdict");
  await choices.keyboard.press("Tab");
  assert.equal(await choices.evaluate(() => document.activeElement.name), "practice-next");
});

test("the link is printed whole, beside a code that is scanned off the paper", async () => {
  const page = await trainer();
  const link = await handOut(page, { topics: ["dose", "units", "ppe"], count: 6, seed: 5 });
  for (const format of ["A4", "Letter"]) {
    const sheets = await readPdf(await page.pdf({ format }));
    assert.ok(squeezed(sheets).includes(squeeze(link)), `${format}: all ${link.length} characters of the link`);
    for (const { items, width } of sheets) {
      for (const { text, x, width: wide } of items) assert.ok(x + wide <= width - 14.5 * 72 / 25.4, `over the edge "${text}"`);
    }
  }
  await page.emulateMedia({ media: "print" });
  const [side, dots] = await page.locator(".handing svg.qr").evaluate((one) => [one.getBoundingClientRect().width, Number(one.getAttribute("viewBox").split(" ")[2])]);
  assert.ok(side / dots * 25.4 / 96 >= 0.5, `a module of ${side / dots * 25.4 / 96} mm`);
});

test("a session that a link brought comes first, and then the rest is there", async () => {
  const page = await trainer();
  const link = await handOut(page, { topics: ["units"], count: 2, seed: 9 });
  await page.evaluate((hash) => { location.hash = hash; }, link.slice(link.indexOf("#")));
  await page.locator("#practice-offer").waitFor();
  assert.equal(await field(page, "practice-class").count(), 0, "no button that does nothing");
  assert.match(await page.locator(".view.practice").innerText(), /Begin it or leave it first/);
  await press(page, "practice-offer-leave");
  await press(page, "practice-class");
  await page.locator("#class-heading").waitFor();
});

test("a tablet that is set to its standards practises and shows the numbers, and no class", async () => {
  const page = await open({ view: "practice", before: (page) => page.addInitScript(([typed, lock]) => {
    localStorage.setItem("brimline.typed", typed);
    localStorage.setItem("brimline.lock", lock);
  }, [JSON.stringify({ schema: SCHEMA, system: "us", site: DEMO, ask: { machine: "walk-behind", product: "neutral", floor: "vinyl", measure: "jug" } }), JSON.stringify({ salt: "", rounds: 1, made: "" })]) });
  await press(page, "practice-numbers");
  await page.locator("#numbers-mix").waitFor();
  await press(page, "numbers-parts-128");
  assert.equal(await field(page, "numbers-parts").inputValue(), "128");
  const parts = await page.locator(".jobs button").evaluateAll((all) => all.map(({ name }) => name));
  assert.deepEqual(parts, ["practice-practise", "practice-numbers"]);
  await press(page, "practice-practise");
  await field(page, "practice-begin").waitFor();
});
