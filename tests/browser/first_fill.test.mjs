// A newcomer is led through a first fill on the page as it stands, by keyboard alone; and each view says why it matters.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { test } from "node:test";
import { accessible, clashing, named, overflowing, tooSmallToPress, tooSmallToRead, unspoken } from "./checks.mjs";
import { ROOT, running } from "./harness.mjs";
import { kept } from "./log_walk.mjs";
import { choose, field, go, plain, press, settled, stageOfThisFile, write } from "./walk.mjs";

const { stage, open } = await stageOfThisFile();

const SCHEMA = Number(readFileSync(join(ROOT, "src/form/typed.rs"), "utf8").match(/SCHEMA: u32 = (\d+)/)[1]);
const DEMO = JSON.parse(readFileSync(join(ROOT, "src/site/demo.json"), "utf8"));
const STEPS = ["wear", "machine", "product", "floor", "level", "amount", "record", "shift"];

/** What has the focus: its id or name, and whether its outline or it itself is in sight. */
const focused = (page) => page.evaluate(() => {
  const one = document.activeElement;
  const { top, bottom } = one.getBoundingClientRect();
  return { at: one.getAttribute("name") ?? one.id ?? "", inSight: bottom > 0 && top < window.innerHeight, is: one.tagName };
});

/** Moves by the tab key until the focus is on what a selector finds. */
async function tabTo(page, selector, key = "Tab") {
  for (let steps = 0; steps < 120; steps += 1) {
    if (await page.evaluate((selector) => document.activeElement.matches(selector), selector)) return;
    await page.keyboard.press(key);
  }
  assert.fail(`the tab key does not reach ${selector}`);
}

/** Goes to a button by the tab key and presses it. */
async function enter(page, name, key = "Enter") {
  await tabTo(page, `[name="${name}"]`);
  await page.keyboard.press(key);
  await settled(page);
}

/** Which step is shown, and how the page says it stands. */
const at = (page) => page.locator(".guide").evaluate(({ dataset }) => [dataset.guide, dataset.standing]);

/** Waits until a step stands so. */
const stands = (page, step, standing) => page.locator(`.guide[data-guide="${step}"][data-standing="${standing}"]`).waitFor();

/** The step has the focus: its text is read out, and the next tab goes on from there. */
async function onStep(page) {
  await page.waitForFunction(() => document.activeElement.id === "first-fill-step");
  assert.ok((await focused(page)).inSight);
  const { title, bar } = await page.evaluate(() => {
    const bar = document.querySelector(".guide-bar")?.getBoundingClientRect();
    return { title: document.querySelector("#first-fill-title").getBoundingClientRect().top, bar: bar && bar.top < 1 ? bar.bottom : 0 };
  });
  assert.ok(title >= bar - 0.5, `the heading at ${title} lies under the line of the guide, which ends at ${bar}`);
}

/** Goes to the control that a step speaks of, and finds the focus there. */
async function lead(page, n, selector) {
  await enter(page, `first-fill-to-${n}`);
  await page.waitForFunction((selector) => document.activeElement.matches(selector), selector);
  const box = await page.evaluate(() => {
    const { top, bottom } = document.activeElement.getBoundingClientRect();
    const bar = document.querySelector(".guide-bar").getBoundingClientRect();
    return { top, bottom, bar: bar.bottom, stuck: bar.top < 1, height: window.innerHeight };
  });
  assert.ok(box.bottom > 0 && box.top < box.height, `${selector} is in sight`);
  if (box.stuck) assert.ok(box.top >= box.bar - 1, `${selector} at ${box.top} lies under the line of the guide, which ends at ${box.bar}`);
}

async function back(page) {
  await page.keyboard.press("Escape");
  await onStep(page);
}

/** What was typed, without what Fill was asked. */
const site = (page) => page.evaluate(() => JSON.stringify(JSON.parse(localStorage.getItem("brimline.typed")).site));

test("from the first offer to the recorded fill and the end of the shift, by keyboard alone", async () => {
  const page = await open({ width: 1280, height: 800 });
  await field(page, "first-fill-link").waitFor();
  await write(page, "machine-tank", "12");
  const before = await site(page);
  await enter(page, "first-fill-link");
  await onStep(page);
  assert.deepEqual(await at(page), ["wear", "open"]);
  assert.match(await page.locator("#first-fill-step").innerText(), /Gloves|Splash goggles|Follow its label/);
  await lead(page, 1, ".caution");
  await back(page);
  await enter(page, "first-fill-wear-on", "Space");
  await stands(page, "wear", "done");
  await enter(page, "first-fill-next");

  await onStep(page);
  assert.deepEqual(await at(page), ["machine", "done"]);
  assert.match(plain(await page.locator("#first-fill-step").innerText()), /Small walk-behind, with a tank of 12 gal/);
  await lead(page, 1, "#machine");
  await back(page);
  await enter(page, "first-fill-next");

  await onStep(page);
  await lead(page, 2, "#product-label");
  await page.keyboard.press("Control+A");
  await page.keyboard.type("a lot");
  await stands(page, "product", "lacks");
  await page.keyboard.press("Control+A");
  await page.keyboard.type(DEMO.products[0].label);
  await back(page);
  await stands(page, "product", "done");
  await lead(page, 1, "#product");
  await back(page);
  await enter(page, "first-fill-next");

  await onStep(page);
  assert.match(await page.locator("#first-fill-step").innerText(), /No standard is in force/);
  await lead(page, 1, "#floor");
  await back(page);
  await enter(page, "first-fill-next");

  await onStep(page);
  await lead(page, 2, "#measure");
  await back(page);
  await lead(page, 1, "#fill-level");
  await page.keyboard.press("Control+A");
  await page.keyboard.type("50");
  await back(page);
  assert.match(plain(await page.locator("#first-fill-step").innerText()), /You fill to 50 %/);
  await enter(page, "first-fill-next");

  await onStep(page);
  assert.deepEqual(await at(page), ["amount", "open"]);
  const amount = plain(await page.locator(".amount-figure").innerText());
  assert.ok(plain(await page.locator("#first-fill-step").innerText()).includes(`Your amount is ${amount}`), amount);
  await lead(page, 1, ".amount");
  await back(page);
  await tabTo(page, '[name="first-fill-why"]');
  await page.keyboard.press("Space");
  await page.locator(".guide fieldset [role=status]", { hasText: "Not quite" }).waitFor();
  assert.deepEqual(await at(page), ["amount", "open"]);
  await page.keyboard.press("ArrowDown");
  await stands(page, "amount", "done");
  await enter(page, "first-fill-next");

  await onStep(page);
  assert.deepEqual(await at(page), ["record", "open"]);
  assert.match(await page.locator("#first-fill-step").innerText(), /only training\? Then skip this step/);
  assert.deepEqual(await kept(page), [], "nothing was recorded on the way");
  await lead(page, 1, '[name="record-fill"]');
  await page.keyboard.press("Enter");
  await stands(page, "record", "done");
  await back(page);
  await enter(page, "first-fill-next");

  await onStep(page);
  await page.locator(".view.log").waitFor();
  await stands(page, "shift", "open");
  await lead(page, 1, '[name="log-shift"]');
  for (const task of ["drain", "rinse", "filters", "brush", "squeegee"]) await enter(page, `log-${task}-done`);
  await stands(page, "shift", "done");
  await back(page);
  await enter(page, "first-fill-next");

  await onStep(page);
  assert.match(await page.locator(".guide").innerText(), /You went through all steps/);
  await enter(page, "first-fill-put-away");
  await page.locator(".guide").waitFor({ state: "detached" });
  assert.equal((await focused(page)).at, "main");
  assert.equal(await site(page), before, "no record of the site was changed but what was typed");
  const records = await kept(page);
  assert.deepEqual(records.map(({ kind }) => kind), ["fill", ...Array(5).fill("correction")], "what was done on purpose, and nothing else");
});

test("each step can be skipped, and all of them: the site and the log stay as they were", async () => {
  const page = await open({ view: "practice", width: 360, height: 740 });
  const typed = () => page.evaluate(() => localStorage.getItem("brimline.typed"));
  const before = await typed();
  await press(page, "first-fill-begin");
  for (const step of STEPS) {
    assert.equal((await at(page))[0], step);
    await onStep(page);
    await press(page, "first-fill-next");
  }
  assert.match(await page.locator(".guide").innerText(), /You skipped these steps/);
  const left = await page.locator('.guide [name^="first-fill-"]').evaluateAll((all) => all.map(({ name }) => name));
  assert.deepEqual(left, ["first-fill-wear", "first-fill-amount", "first-fill-record", "first-fill-shift", "first-fill-put-away"]);
  assert.equal(await typed(), before);
  assert.deepEqual(await kept(page), []);
  await press(page, "first-fill-amount");
  assert.equal((await at(page))[0], "amount");
  await press(page, "first-fill-back");
  assert.equal((await at(page))[0], "level");

  await press(page, "first-fill-close");
  await page.locator(".guide").waitFor({ state: "detached" });
  await go(page, "fill");
  await field(page, "record-fill").waitFor();
  assert.equal(await field(page, "first-fill-link").count(), 0, "who put it away is not asked again");
  await go(page, "practice");
  assert.equal(await field(page, "first-fill-begin").count(), 1, "and finds it where it belongs");
});

test("it comes back where it was after a reload, takes no focus then, and is announced once", async () => {
  const page = await open();
  await press(page, "first-fill-link");
  for (const _ of [1, 2, 3]) await press(page, "first-fill-next");
  assert.equal((await at(page))[0], "floor");
  await page.addInitScript(() => {
    window.heard = [];
    document.addEventListener("DOMContentLoaded", () => new MutationObserver(() => {
      const now = document.querySelector(".guide > [role=status]")?.textContent ?? "";
      if (now && window.heard.at(-1) !== now) window.heard.push(now);
    }).observe(document.body, { subtree: true, childList: true, characterData: true }));
  });
  await page.reload();
  await running(page);
  await page.locator('.guide[data-guide="floor"]').waitFor();
  assert.equal((await focused(page)).is, "BODY");
  await page.waitForFunction(() => window.heard.length > 0);
  await write(page, "machine-tank", "11");
  await page.waitForTimeout(1_500);
  const heard = await page.evaluate(() => window.heard);
  assert.equal(heard.length, 1, heard.join(" | "));
  assert.match(heard[0], /^First fill, step 4 of 8: Choose the floor and see its rule/);

  await press(page, "first-fill-pause");
  await page.locator(".guide").waitFor({ state: "detached" });
  await page.reload();
  await running(page);
  await field(page, "first-fill-link").waitFor();
  assert.equal(await page.locator(".guide").count(), 0, "left for now");
  assert.match(await field(page, "first-fill-link").innerText(), /Go on with your first fill, step 4/);
  await go(page, "practice");
  await press(page, "first-fill-resume");
  await onStep(page);
  assert.deepEqual(await at(page), ["floor", "done"]);
  await page.locator(".view.fill").waitFor();
});

test("another product asks to look at what to wear again, and a warning stands in the amount's place", async () => {
  const page = await open();
  await press(page, "first-fill-link");
  await page.locator("#first-fill-wear-on").check();
  await stands(page, "wear", "done");
  await press(page, "first-fill-next");
  await press(page, "first-fill-next");
  assert.equal(await page.locator('[data-again="wear"]').count(), 0);
  await choose(page, "product", "degreaser");
  await page.locator('[data-again="wear"]').waitFor();
  await press(page, "first-fill-wear-again-go");
  await stands(page, "wear", "open");
  await choose(page, "product", "hand-soap");
  for (const _ of STEPS.slice(0, 5)) await press(page, "first-fill-next");
  await stands(page, "amount", "stopped");
  await press(page, "first-fill-to-1");
  await page.waitForFunction(() => document.activeElement.matches(".stop"));
  await press(page, "first-fill-next");
  await stands(page, "record", "stopped");
  await press(page, "first-fill-next");
  await stands(page, "shift", "lacks");
});

/** A tablet of a fill station, with these standards. */
const station = (standards, look = {}) => open({
  view: "practice",
  before: (page) => page.addInitScript(([typed, lock]) => {
    if (!localStorage.getItem("brimline.lock")) {
      localStorage.setItem("brimline.typed", typed);
      localStorage.setItem("brimline.lock", lock);
    }
  }, [
    JSON.stringify({ schema: SCHEMA, system: "us", site: { ...DEMO, standards }, ask: { machine: "walk-behind", product: "degreaser", floor: "vinyl", measure: "jug", level: { text: "100", unit: "percent" } } }),
    JSON.stringify({ salt: "", rounds: 1, made: "" }),
  ]),
  ...look,
});

const STANDARD = { id: "s1", name: "Reading room, daily", floor: "vinyl", product: "neutral", dilution: "1:64", system: "us", version: 1, standing: "in_force", effective: "2024-01-01", author: "K. M." };

test("a tablet that is set to its standards is led through, too, and by words of its own", async () => {
  const page = await station([STANDARD]);
  await field(page, "first-fill-begin").waitFor();
  await press(page, "first-fill-begin");
  for (const step of STEPS) {
    assert.equal((await at(page))[0], step);
    const text = await page.locator("#first-fill-step").innerText();
    if (step === "product") assert.match(text, /The floor and its standard decide the product here/);
    if (step === "floor") assert.match(text, /Its standard is Reading room, daily/);
    for (const button of await page.locator('[name^="first-fill-to-"]').all()) {
      await button.click();
      await page.waitForFunction(() => document.activeElement !== document.body && !document.activeElement.closest(".guide"));
      assert.ok(!(await page.evaluate(() => document.activeElement.disabled ?? false)), `${step} leads to what can be used`);
      await back(page);
    }
    if (step === "record") {
      await field(page, "record-fill").click();
      await stands(page, "record", "done");
    }
    await press(page, "first-fill-next");
  }
  assert.match(await page.locator(".guide").innerText(), /That was your first fill/);
  const bare = await station([]);
  await press(bare, "first-fill-begin");
  for (const _ of STEPS) await press(bare, "first-fill-next");
  assert.match(await bare.locator(".guide").innerText(), /That was your first fill/);
});

test("each step can be used on a phone, in the dark and in forced colours", async () => {
  const faults = [];
  for (const look of [{ width: 360, height: 12_000, colorScheme: "dark" }, { width: 1280, height: 900 }, { width: 1024, height: 900, forcedColors: "active" }]) {
    const page = await open({ view: "practice", ...look });
    await press(page, "first-fill-begin");
    for (const step of [...STEPS, "ended"]) {
      assert.equal((await at(page))[0], step);
      if (step === "shift") await page.locator(".view.log").waitFor();
      const checks = look.forcedColors ? [accessible] : [accessible, named, unspoken, overflowing, tooSmallToPress, tooSmallToRead];
      for (const check of checks) faults.push(...(await check(page)).map((fault) => `${step} at ${look.width}: ${fault}`));
      if (step !== "ended") await press(page, "first-fill-next");
    }
  }
  assert.deepEqual(faults, []);
});

test("nothing of the guide is printed", async () => {
  const page = await open();
  await field(page, "first-fill-link").waitFor();
  await page.emulateMedia({ media: "print" });
  assert.ok(!(await page.locator(".first-fill-link").isVisible()));
  await page.emulateMedia({ media: "screen" });
  await press(page, "first-fill-link");
  await page.emulateMedia({ media: "print" });
  assert.equal(await page.locator(".guide *:visible").count(), 0);
  assert.ok(await page.locator(".amount-figure").isVisible());
});

/** Every view, and the jobs of the fill station. */
const VIEWS = ["fill", "flow", "shift", "cautions", "log", "site", "practice", "top-up", "rescue", "reading"];

for (const view of VIEWS) {
  test(`why it matters, on ${view}`, async () => {
    const isJob = ["top-up", "rescue", "reading"].includes(view);
    const page = await open({ view: isJob ? "fill" : view, width: 360, height: 12_000 });
    if (isJob) await press(page, `job-${view}`);
    const panel = page.locator("details.matters");
    await panel.waitFor();
    await page.emulateMedia({ media: "print" });
    assert.ok(!(await panel.isVisible()), "folded it stays off the paper");
    await page.emulateMedia({ media: "screen" });
    await tabTo(page, ".matters summary");
    await page.keyboard.press("Enter");
    await panel.locator("svg").waitFor();
    const said = await panel.locator("p").innerText();
    const sentences = said.split(/(?<=[.?]) /).length;
    assert.ok(sentences >= 2 && sentences <= 4, said);
    const picture = panel.getByRole("img");
    assert.ok((await picture.getAttribute("aria-label")).length > 30, "the picture is told in words");
    assert.equal(await panel.locator("details").count(), 0);
    const faults = [];
    for (const check of [accessible, overflowing, tooSmallToPress, tooSmallToRead, clashing, unspoken]) faults.push(...(await check(page)));
    await choose(page, "language", "es");
    await page.waitForFunction(() => document.documentElement.lang === "es");
    await settled(page);
    for (const check of [overflowing, tooSmallToRead, clashing]) faults.push(...(await check(page)).map((fault) => `es: ${fault}`));
    await choose(page, "language", "en");
    await page.emulateMedia({ colorScheme: "dark" });
    faults.push(...(await accessible(page)));
    await page.emulateMedia({ colorScheme: "light", forcedColors: "active" });
    faults.push(...(await accessible(page)));
    assert.deepEqual(faults, []);
    await page.emulateMedia({ media: "print", forcedColors: "none" });
    assert.ok(await picture.isVisible() && (await panel.locator("p").isVisible()), "unfolded it is printed");
    assert.ok(!(await panel.locator("summary").isVisible()));
  });
}

test("two tabs follow one guide: neither writes over where the other went", async () => {
  const context = await stage.browser.newContext({ serviceWorkers: "block" });
  const [one, other] = [await stage.openPage({ context, path: "/#fill" }), await stage.openPage({ context, path: "/#fill" })];
  await press(one, "first-fill-link");
  await other.locator('.guide[data-guide="wear"]').waitFor();
  await one.locator("#first-fill-wear-on").check();
  await press(one, "first-fill-next");
  await other.locator('.guide[data-guide="machine"]').waitFor();
  await press(other, "first-fill-next");
  await one.locator('.guide[data-guide="product"]').waitFor();
  assert.deepEqual(await one.evaluate(() => JSON.parse(localStorage.getItem("brimline.first-fill")).passed), [{ step: "wear", done: true }, { step: "machine", done: true }]);
  await context.close();
});

test("“Why?” is unfolded on its own view alone, and still there when one comes back", async () => {
  const page = await open({ view: "flow" });
  const panel = (view) => page.locator(`details.matters[data-why="${view}"]`);
  const isOpen = (view) => panel(view).evaluate((one) => one.open);
  await panel("flow").locator("summary").click();
  await panel("flow").locator("svg").waitFor();
  await go(page, "shift");
  assert.equal(await isOpen("shift"), false);
  await go(page, "cautions");
  assert.equal(await isOpen("cautions"), false);
  await go(page, "flow");
  assert.equal(await isOpen("flow"), true);
  await panel("flow").locator("summary").click();
  await go(page, "fill");
  assert.equal(await isOpen("fill"), false);
  await go(page, "flow");
  assert.equal(await isOpen("flow"), false);
});
