// What was typed stays on the device, and leaves it as a file that anyone can work out again.

import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, test } from "node:test";
import { DESK, ROOT, running } from "./harness.mjs";
import {
  US_GALLON, choose, countOf, field, figures, go, near, plain, press, reach, settled, stageOfThisFile, tick, write,
} from "./walk.mjs";

const { open, stage } = await stageOfThisFile();
const folder = mkdtempSync(join(tmpdir(), "brimline-keep-"));
after(() => rmSync(folder, { recursive: true }));

const KEY = "brimline.typed";

/** Saves a download and gives its path. */
async function downloaded(page, button) {
  const [download] = await Promise.all([page.waitForEvent("download"), field(page, button).click()]);
  const path = join(folder, download.suggestedFilename());
  await download.saveAs(path);
  return path;
}

/** A page that finds `text` in its storage. */
const openWith = (text) =>
  open({ before: (page) => page.addInitScript(([key, kept]) => {
    if (!sessionStorage.getItem("planted")) localStorage.setItem(key, kept);
    sessionStorage.setItem("planted", "yes");
  }, [KEY, text]) });

/** Opens a file and waits until the page has read it. */
async function openFile(page, path) {
  await field(page, "open-saved").setInputFiles(path);
  await page.waitForFunction(() => document.querySelector("[name=open-saved]").value === "");
  await settled(page);
}

test("everything that was typed survives a reload", async () => {
  const page = await open();
  const typed = {
    "machine-tank": "12.5", "product-label": "1:4", "fill-level": "half", "machine-name": "Näss & <Trocken> 清掃",
    "machine-least": "2", "machine-most": "", "product-name": "O'Neill \"blue\"", "measure-step": "1/4",
  };
  for (const [name, text] of Object.entries(typed)) await write(page, name, text);
  await choose(page, "units", "metric");
  await choose(page, "measure-step-unit", "ml");
  await go(page, "shift");
  await press(page, "area-add");
  await write(page, "area-6-name", "Annex");
  await write(page, "area-6-size", "77");
  await tick(page, "area-1-included", false);
  await go(page, "cautions");
  await write(page, "product-codes", "H314\nH302");
  await page.reload();
  await running(page);
  assert.ok(await page.locator(".view.cautions").isVisible(), "the same view");
  assert.equal(await (await reach(page, "product-codes")).inputValue(), "H314\nH302");
  await go(page, "shift");
  assert.equal(await field(page, "area-6-name").inputValue(), "Annex");
  assert.equal(await field(page, "area-6-size").inputValue(), "77");
  assert.equal(await field(page, "area-1-included").isChecked(), false);
  await go(page, "fill");
  for (const [name, text] of Object.entries(typed)) assert.equal(await field(page, name).inputValue(), text, name);
  assert.equal(await field(page, "units").inputValue(), "metric");
  assert.equal(await field(page, "measure-step-unit").inputValue(), "ml");
});

for (const denied of [["setItem"], ["setItem", "getItem"]]) {
  test(`a browser whose ${denied.join(" and ")} fails is told of, and the page still answers`, async () => {
    const page = await open({ before: (opening) => opening.addInitScript((names) => {
      for (const name of names) Storage.prototype[name] = () => { throw new DOMException("denied", "SecurityError"); };
    }, denied) });
    await settled(page);
    assert.match(await page.locator(".notices").innerText(), /does not let the page keep what you type/);
    await write(page, "machine-tank", "20");
    near((await figures(page))["fill.total"], 20 * US_GALLON, "the answer");
  });
}

test("a browser without storage at all is told of, and the page still answers", async () => {
  const page = await open({ before: (opening) => opening.addInitScript(() => {
    Object.defineProperty(window, "localStorage", { get() { throw new DOMException("denied", "SecurityError"); } });
  }) });
  await settled(page);
  assert.match(await page.locator(".notices").innerText(), /does not let the page keep what you type/);
  assert.ok((await countOf(page, "fill.")) > 3);
});

const UNREADABLE = ["", "garbage", "null", "[]", "{}", '{"schema":1}', '{"schema":99,"future":true}', "\u0000\ud83e\uddf9"];

test("what cannot be read is put aside, told of, and can be saved as it was", async () => {
  for (const kept of UNREADABLE) {
    const page = await openWith(kept);
    await settled(page);
    assert.match(await page.locator(".notices").innerText(), /was put aside/, kept);
    assert.ok((await countOf(page, "fill.")) > 3, "the demo site answers");
    assert.equal(await page.evaluate(() => localStorage.getItem("brimline.aside")), kept);
    assert.equal(readFileSync(await downloaded(page, "aside"), "utf8"), kept);
    await page.context().close();
  }
});

test("a later schema that else reads the same is put aside too", async () => {
  const page = await open();
  await write(page, "machine-tank", "33");
  const kept = JSON.parse(await page.evaluate((key) => localStorage.getItem(key), KEY));
  const later = JSON.stringify({ ...kept, schema: kept.schema + 1 });
  const next = await openWith(later);
  await settled(next);
  assert.match(await next.locator(".notices").innerText(), /was put aside/);
  assert.equal(await field(next, "machine-tank").inputValue(), "10");
});

for (const view of ["fill", "flow", "shift"]) {
  test(`a saved answer of ${view} opens again, and the desk tool works it out again`, async () => {
    const page = await open({ view });
    await write(page, "machine-tank", "12.5");
    const before = await figures(page);
    const file = await downloaded(page, "answer-save");
    assert.equal(file, join(folder, `brimline-${view}.json`));
    const saved = JSON.parse(readFileSync(file, "utf8"));
    for (const [name, si] of Object.entries(saved.figures)) if (name in before) near(before[name], si, name);

    const other = await open({ view: "cautions" });
    await openFile(other, file);
    await other.locator(`.view.${view}`).waitFor();
    assert.deepEqual(await figures(other), before);
    await press(other, "undo");
    assert.equal(await field(other, "machine-tank").inputValue(), "10");

    assert.equal(recompute(file).status, 0, recompute(file).output);
    const [name] = Object.keys(saved.figures);
    const changes = {
      figure: { ...saved, figures: { ...saved.figures, [name]: saved.figures[name] * 1.000001 } },
      input: { ...saved, input: { ...saved.input, system: "metric" } },
      remarks: { ...saved, remarks: [...saved.remarks, "remark-strong"] },
    };
    for (const [what, changed] of Object.entries(changes)) {
      const path = join(folder, `changed-${what}.json`);
      writeFileSync(path, JSON.stringify(changed));
      assert.equal(recompute(path).status, 1, `a changed ${what} is refused`);
      assert.notEqual(recompute(path).output.trim(), "");
    }
  });
}

function recompute(file) {
  const done = spawnSync(DESK, ["recompute", file], { cwd: ROOT, encoding: "utf8" });
  return { status: done.status, output: done.stdout + done.stderr };
}

test("a file that is no saved answer changes nothing and says why", async () => {
  const page = await open();
  await write(page, "machine-tank", "33");
  const file = await downloaded(page, "answer-save");
  const good = JSON.parse(readFileSync(file, "utf8"));
  const files = [
    ["not an answer saved", "hello"], ["not an answer saved", "{}"], ["not an answer saved", ""],
    ["has been changed since", JSON.stringify({ ...good, input: { ...good.input, system: "metric" } })],
    ["later version", JSON.stringify({ ...good, schema: 99 })],
  ];
  for (const [words, text] of files) {
    const path = join(folder, "bad.json");
    writeFileSync(path, text);
    await openFile(page, path);
    assert.match(await page.locator("footer [role=alert]").innerText(), new RegExp(words), text.slice(0, 40));
    assert.equal(await field(page, "machine-tank").inputValue(), "33");
  }
  await openFile(page, file);
  assert.match(await page.locator("footer [role=alert]").innerText(), /worked out again and stands/);
  const wrong = { ...good, figures: { ...good.figures, "fill.dose": 0.001 } };
  writeFileSync(join(folder, "wrong.json"), JSON.stringify(wrong));
  await openFile(page, join(folder, "wrong.json"));
  assert.match(await page.locator("footer [role=alert]").innerText(), /does not stand/);
});

/** Two tabs of one device, both open on the demo. */
async function twoTabs() {
  const one = await open();
  return [one, await beside(one)];
}

/** One more tab of the same device. */
async function beside(page) {
  const tab = await stage.openPage({ path: "/#fill", context: page.context() });
  tab.setDefaultTimeout(10_000);
  return tab;
}

const valueOf = (page, name) => field(page, name).inputValue();

/** The tank and the label of all that the device keeps, as its own first, then aside. */
const everythingKept = (page) =>
  page.evaluate((key) => {
    const said = (name) => JSON.parse(localStorage.getItem(name));
    const names = Object.keys(localStorage).filter((name) => name.startsWith("brimline.tab/"));
    return [key, ...names].map(said).filter(Boolean).map(({ site }) => [site.machines[0].tank.text, site.products[0].label]);
  }, KEY);

/** A tab that is behind, in which 41 was typed after 1:100 was in the other. */
async function behind() {
  const [one, other] = await twoTabs();
  await write(other, "product-label", "1:100");
  await field(one, "elsewhere-keep").waitFor();
  await write(one, "machine-tank", "41");
  return [one, other];
}

test("a tab that is behind says so, and what is typed there outlives it", async () => {
  const [one, other] = await behind();
  assert.match(await one.locator(".notices").innerText(), /has changed something\. What you change here is kept aside until you choose/);
  await one.close();
  await other.reload();
  await running(other);
  assert.deepEqual([await valueOf(other, "machine-tank"), await valueOf(other, "product-label")], ["10", "1:100"]);
  await press(other, "aside-remove");
  await press(other, "aside-back");
  await field(other, "aside-show").waitFor();
  await settled(other);
  assert.match(plain(await other.locator(".notices").innerText()), /What is different there:[^]*10 gal[^]*41 gal/);
  // It is shown, and what was shown waits in its place: each can be had as often as somebody looks.
  for (const [tank, label] of [["41", "1:64"], ["10", "1:100"], ["41", "1:64"]]) {
    await press(other, "aside-show");
    assert.deepEqual([await valueOf(other, "machine-tank"), await valueOf(other, "product-label")], [tank, label]);
  }
  await press(other, "undo");
  assert.deepEqual([await valueOf(other, "machine-tank"), await valueOf(other, "product-label")], ["10", "1:100"]);
  await press(other, "aside-show");
  assert.equal(await valueOf(other, "machine-tank"), "41", "a step back takes nothing from what waits");
});

test("what several tabs left aside is shown in turn, and nothing of it is lost", async () => {
  const [one, other] = await twoTabs();
  const third = await beside(other);
  await write(one, "product-label", "1:100");
  for (const [tab, tank] of [[other, "41"], [third, "42"]]) {
    await field(tab, "elsewhere-keep").waitFor();
    await write(tab, "machine-tank", tank);
    await tab.close();
  }
  await one.reload();
  await running(one);
  const seen = new Set();
  for (let turn = 0; turn < 3; turn += 1) {
    await press(one, "aside-show");
    seen.add(await valueOf(one, "machine-tank"));
  }
  assert.deepEqual([...seen].toSorted(), ["10", "41", "42"]);
});

test("what the other tab has is taken, and what was typed here waits aside", async () => {
  const [one] = await behind();
  const again = one.waitForEvent("load");
  await press(one, "elsewhere-load");
  await again;
  await running(one);
  assert.equal(await valueOf(one, "product-label"), "1:100");
  await press(one, "aside-show");
  assert.equal(await valueOf(one, "machine-tank"), "41");
});

test("what is here is kept, what the other tab had waits aside, and that tab hears of it", async () => {
  const [one, other] = await behind();
  await press(one, "elsewhere-keep");
  assert.equal(await field(one, "elsewhere-keep").count(), 0);
  assert.equal(await field(one, "aside-show").count(), 1, "what the other tab had");
  await field(other, "elsewhere-load").waitFor();
  await write(one, "machine-tank", "42");
  await one.reload();
  await running(one);
  assert.equal(await valueOf(one, "machine-tank"), "42");
  await one.locator(".notices", { hasText: "What is different there" }).waitFor();
  await press(one, "aside-show");
  assert.deepEqual([await valueOf(one, "machine-tank"), await valueOf(one, "product-label")], ["10", "1:100"]);
});

test("a tab that is behind and changes nothing leaves nothing aside", async () => {
  const [one, other] = await twoTabs();
  await write(other, "product-label", "1:100");
  await field(one, "elsewhere-keep").waitFor();
  await write(one, "machine-tank", "41");
  await write(one, "machine-tank", "10");
  await write(other, "product-label", "1:90");
  assert.deepEqual(await everythingKept(one), [["10", "1:90"]]);
});

test("two tabs typed into in the same moment lose nothing of either", async () => {
  const [one, other] = await twoTabs();
  const type = (page, name, text) => page.evaluate(([name, text]) => {
    const input = document.querySelector(`[name="${name}"]`);
    input.value = text;
    input.dispatchEvent(new InputEvent("input", { bubbles: true }));
  }, [name, text]);
  for (let round = 0; round < 8; round += 1) {
    const [tank, label] = [String(20 + round), `1:${100 + round}`];
    const both = [type(one, "machine-tank", tank), type(other, "product-label", label)];
    await Promise.all(round % 2 ? both : both.toReversed());
    // The one in the background draws when it likes, and keeps what it has drawn.
    const has = (kept) => kept.some(([one]) => one === tank) && kept.some(([, other]) => other === label);
    let kept = await everythingKept(one);
    for (let tries = 0; tries < 50 && !has(kept); tries += 1) {
      await one.waitForTimeout(100);
      kept = await everythingKept(one);
    }
    assert.ok(has(kept), `${tank} and ${label} in ${JSON.stringify(kept)}`);
    await Promise.any([one, other].map((tab) => field(tab, "elsewhere-keep").waitFor()));
  }
});

test("a tab that was frozen in the background writes over nothing", async () => {
  const [one, other] = await twoTabs();
  const browser = await one.context().newCDPSession(one);
  await browser.send("Page.setWebLifecycleState", { state: "frozen" });
  await write(other, "product-label", "1:100");
  await browser.send("Page.setWebLifecycleState", { state: "active" });
  await write(one, "machine-tank", "41");
  await field(one, "elsewhere-keep").waitFor();
  assert.deepEqual(await everythingKept(one), [["10", "1:100"], ["41", "1:64"]]);
});
