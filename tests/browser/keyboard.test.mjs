// Each job by keyboard alone: the focus is seen, goes in order, and is not lost.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { file, give, made, toLog } from "./log_walk.mjs";
import { US_GALLON, countOf, field, figures, go, near, press, reach, settled, stageOfThisFile, write } from "./walk.mjs";

const { open } = await stageOfThisFile();

/** What has the focus: its name, its text, whether that is seen. */
const focused = (page) => page.evaluate(() => {
  const one = document.activeElement;
  const { outlineStyle, outlineWidth } = getComputedStyle(one);
  const { top, bottom } = one.getBoundingClientRect();
  return {
    name: one.getAttribute("name") ?? one.id,
    tag: one.tagName,
    text: one.textContent.trim(),
    seen: outlineStyle !== "none" && parseFloat(outlineWidth) >= 2 && bottom > 0 && top < window.innerHeight,
  };
});

/** Presses Tab until the focus is where `wanted` says; every stop on the way must be seen. */
async function tabTo(page, wanted, key = "Tab") {
  const is = typeof wanted === "string" ? ({ name }) => name === wanted : wanted;
  for (let step = 0; step < 120; step += 1) {
    await page.keyboard.press(key);
    const now = await focused(page);
    assert.ok(now.tag === "BODY" || now.seen, `the focus on ${now.name || now.text} is not seen`);
    if (is(now)) return;
  }
  assert.fail(`Tab does not reach ${wanted}`);
}

async function type(page, name, text) {
  await tabTo(page, name);
  await page.keyboard.type(text);
  await settled(page);
}

test("the first stop is a way past the frame", async () => {
  const page = await open();
  await page.locator(".matters").waitFor();
  await page.keyboard.press("Tab");
  const first = await focused(page);
  assert.match(first.text, /Skip/);
  const box = await page.locator(".skip").boundingBox();
  assert.ok(box.x >= 0 && box.y >= 0, "it is seen when it has the focus");
  await page.keyboard.press("Enter");
  await page.keyboard.press("Tab");
  assert.equal((await focused(page)).text, "Why?");
  await page.keyboard.press("Tab");
  assert.equal((await focused(page)).name, "job-fill");
});

test("Tab goes through each view in the order in which it is read", async () => {
  for (const view of ["fill", "flow", "shift", "cautions"]) {
    const page = await open({ view });
    const order = await page.evaluate(() => document.querySelectorAll("[tabindex]:not([tabindex='0'], [tabindex='-1'])").length);
    assert.equal(order, 0, "nothing jumps the queue");
    await page.evaluate(() => (window.last = document.body));
    for (let step = 0; step < 200; step += 1) {
      await page.keyboard.press("Tab");
      const follows = await page.evaluate(() => {
        const now = document.activeElement;
        const later = now === document.body || Boolean(window.last.compareDocumentPosition(now) & (Node.DOCUMENT_POSITION_FOLLOWING | Node.DOCUMENT_POSITION_CONTAINED_BY));
        window.last = now;
        return { later, over: now === document.body || now.name === "demo" };
      });
      assert.ok(follows.later, view);
      if (follows.over) break;
    }
  }
});

test("a fill", async () => {
  const page = await open();
  await type(page, "machine-tank", "20");
  await tabTo(page, "machine-tank-unit");
  await type(page, "product-label", "1:128");
  await tabTo(page, "level-50");
  await page.keyboard.press("Space");
  await settled(page);
  near((await figures(page))["fill.dose"], (10 * US_GALLON) / 129, "amount");
  await tabTo(page, ({ tag, text }) => tag === "SUMMARY" && text.startsWith("How this"));
  await page.keyboard.press("Enter");
  assert.ok(await page.locator(".workings li").first().isVisible());
});

test("the foam warning is read", async () => {
  const page = await open();
  await tabTo(page, "product");
  await page.keyboard.type("Foaming");
  await settled(page);
  assert.equal(await countOf(page, "fill."), 0);
  await tabTo(page, "stop-read");
  await page.keyboard.press("Enter");
  await settled(page);
  assert.ok((await countOf(page, "fill.")) > 3);
});

for (const [what, view, before, name] of [
  ["the foam warning's button", "fill", "product", "stop-read"],
  ["an area", "shift", null, "area-2-remove"],
  ["a setting", "flow", null, "setting-drop"],
]) {
  test(`the focus is not lost with ${what}`, async () => {
    const page = await open({ view });
    if (before) await type(page, before, "Foaming");
    await tabTo(page, name);
    await page.keyboard.press("Enter");
    await settled(page);
    assert.notEqual((await focused(page)).tag, "BODY", "after it went");
    if (before) return;
    await tabTo(page, "undo", "Shift+Tab");
    await page.keyboard.press("Enter");
    await settled(page);
    assert.notEqual((await focused(page)).tag, "BODY", "after the step back");
  });
}

test("a flow setting", async () => {
  const page = await open({ view: "flow" });
  const before = (await figures(page))["flow.setting"];
  await tabTo(page, "floor");
  await page.keyboard.press("End");
  await settled(page);
  assert.ok((await figures(page))["flow.setting"] > before);
  await type(page, "floor-target-low", "0.2");
  await type(page, "floor-target-high", "0.7");
  assert.equal((await figures(page))["flow.setting"], before);
});

test("an area is added to a shift, and another removed and brought back", async () => {
  const page = await open({ view: "shift" });
  const before = (await figures(page))["shift.area"];
  await tabTo(page, "area-add");
  await page.keyboard.press("Enter");
  await settled(page);
  await tabTo(page, "area-6-size", "Shift+Tab");
  await page.keyboard.type("1000");
  await settled(page);
  near((await figures(page))["shift.area"] - before, 1000 * 0.3048 ** 2, "area");
  await tabTo(page, "area-5-remove", "Shift+Tab");
  await page.keyboard.press("Space");
  await settled(page);
  await tabTo(page, "undo", "Shift+Tab");
  await page.keyboard.press("Enter");
  await settled(page);
  assert.equal(await page.locator('[name="area-5-name"]').inputValue(), "Store");
});

test("a product's cautions", async () => {
  const page = await open({ view: "cautions" });
  await tabTo(page, ({ tag, text }) => tag === "SUMMARY" && text !== "Why?");
  await page.keyboard.press("Enter");
  await type(page, "product-codes", "H314");
  assert.equal(await page.locator(".caution .signal strong").innerText(), "Danger");
  await tabTo(page, "product-family-acid");
  await page.keyboard.press("Space");
  await settled(page);
  assert.match(await page.locator(".answer").innerText(), /make chlorine gas/);
});

test("a changed answer is announced once, when typing has come to rest", async () => {
  const page = await open();
  await page.waitForFunction(() => document.querySelector(".amount [role=status]")?.textContent);
  await page.evaluate(() => {
    window.announced = [];
    const watch = new MutationObserver(() => {
      const said = document.querySelector(".amount [role=status]")?.textContent;
      if (said && said !== window.announced.at(-1)) window.announced.push(said);
    });
    watch.observe(document.querySelector("main"), { subtree: true, childList: true, characterData: true });
  });
  await page.locator('[name="machine-tank"]').focus();
  await page.keyboard.press("End");
  for (const key of ["0", ".", "5", "Backspace", "2", "5"]) {
    await page.keyboard.press(key);
    await page.waitForTimeout(120);
  }
  await page.waitForTimeout(2000);
  const announced = await page.evaluate(() => window.announced);
  const sentence = await page.locator(".amount-sentence").innerText();
  assert.deepEqual(announced.slice(-1), [sentence]);
  assert.ok(announced.length <= 2, `said: ${announced.join(" | ")}`);
});

// Key by key, with what a person's hand takes: the first result of a field appears below it while it is typed into.
test("no key is lost where a first result appears beside the field", async () => {
  const keys = async (page, name, text) => {
    await (await reach(page, name)).click();
    for (const key of text) {
      await page.keyboard.press(key);
      await settled(page);
    }
    assert.equal(await page.locator(`[name="${name}"]`).inputValue(), text, name);
    assert.equal(await page.evaluate(() => document.activeElement.id), name);
  };
  let page = await open({ view: "cautions" });
  await press(page, "part-add");
  await keys(page, "part-1-name", "Sodium hydroxide");
  await keys(page, "part-1-cas", "1310-73-2");
  await keys(page, "foam-first", "2.5");
  await keys(page, "foam-later", "1.25");
  // A site whose product has no doubtful part.
  page = await open({ view: "shift" });
  await keys(page, "efficiency-area", "4300");
  await keys(page, "efficiency-time", "37.5");
  await keys(page, "compare-setting", "12");
  await go(page, "flow");
  await keys(page, "floor-drop", "12.5");
  await keys(page, "floor-absorption", "3.5");
});

// The browser tells in a later task that a section was unfolded; the keys may come before.
test("no key is lost in a section that was unfolded this moment", async () => {
  const page = await open({ view: "cautions" });
  await page.evaluate(async () => {
    const input = document.querySelector("[name=product-codes]");
    const drawn = async () => { for (let turn = 0; turn < 50; turn += 1) await null; };
    input.closest("details").querySelector("summary").click();
    input.focus();
    await drawn();
    for (const key of "H314") {
      document.execCommand("insertText", false, key);
      await drawn();
    }
  });
  assert.equal(await field(page, "product-codes").inputValue(), "H314");
  await settled(page);
  assert.equal(await field(page, "product-codes").inputValue(), "H314");
});

/** Presses a button with Enter and waits until the focus, seen, is on `wanted`. */
async function enter(page, name, wanted) {
  await (await reach(page, name)).focus();
  await page.keyboard.press("Enter");
  await settled(page);
  await page.waitForFunction((id) => document.activeElement.id === id, wanted).catch(() => {});
  const now = await focused(page);
  assert.equal(now.name, wanted, `after ${name}`);
  assert.ok(now.seen, `the focus on ${wanted} is not seen`);
}

test("the focus stays on the job that was pressed, whatever view it draws", async () => {
  const page = await open();
  await page.locator(".matters").waitFor();
  for (const job of ["job-top-up", "job-rescue", "job-fill", "job-reading", "job-top-up", "job-fill"]) {
    await enter(page, job, job);
    assert.equal(await field(page, job).getAttribute("aria-pressed"), "true", job);
  }
});

test("after a sheet is taken the focus is on what was taken", async () => {
  const page = await open({ view: "cautions" });
  await press(page, "product-add");
  await write(page, "sheet-text", "2. Hazards identification\nSignal word: Warning");
  await press(page, "sheet-read");
  await field(page, "sheet-1").check();
  await settled(page);
  await enter(page, "sheet-take", "sheet-taken");
});

test("after a site is taken, left or decided the focus is on its heading", async () => {
  const page = await open({ view: "site" });
  await press(page, "site-passing");
  const [download] = await Promise.all([page.waitForEvent("download"), press(page, "site-save")]);
  const theirs = JSON.parse(readFileSync(await download.path(), "utf8"));
  theirs.site.machines[0].tank.text = "15";
  const brought = async () => {
    await page.locator("#site-open").setInputFiles({ name: "file", mimeType: "application/json", buffer: Buffer.from(JSON.stringify(theirs)) });
    await settled(page);
    await field(page, "site-leave").waitFor();
  };
  await brought();
  await enter(page, "site-leave", "passing-take");
  await press(page, "site-library");
  await write(page, "machine-tank", "12");
  await press(page, "site-passing");
  await brought();
  await page.locator("[data-conflict]").waitFor();
  await enter(page, "conflict-theirs", "site-other-heading");
  await enter(page, "site-take", "passing-take");
});

test("after a file of the log is taken or left the focus is on the heading of that part", async () => {
  const page = await open({ view: "log" });
  await toLog(page, "keep");
  const records = made("cart-1", 3);
  await give(page, file(records));
  await enter(page, "log-leave", "log-in");
  await give(page, file(records));
  await enter(page, "log-take", "log-in");
  await page.locator(".view.log", { hasText: "3 records were taken." }).waitFor();
});
