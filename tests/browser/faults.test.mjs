// What can go wrong around the page while somebody works: what was typed is kept, or the page says what happened.
//
// Beside this: storage that is denied (keep), a database that is full, denied, damaged or killed (log_keep,
// log_faults), a chunk or a script that does not come (offline).

import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { appendFileSync, cpSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, test } from "node:test";
import { DESK, PAGE, ROOT, offlineReady, openStage, running } from "./harness.mjs";
import { kept, recordMany, toLog, wrongs } from "./log_walk.mjs";
import { US_GALLON, choose, countOf, field, figures, go, near, press, settled, write } from "./walk.mjs";

const stages = [];
after(() => Promise.all(stages.map((stage) => stage.close())));
async function stageFor(options) {
  const stage = await openStage(options);
  stages.push(stage);
  return stage;
}
const stage = await stageFor();
const open = async (look = {}) => {
  const page = await stage.openPage({ path: "/#fill", serviceWorkers: "block", ...look });
  page.setDefaultTimeout(10_000);
  return page;
};
const quiet = () => assert.deepEqual(stage.errors.splice(0), []);
const total = async (page) => (await figures(page))["fill.total"];

test("a device that becomes full while somebody types is told of, and the answer goes on", async () => {
  const page = await open();
  await write(page, "machine-tank", "12");
  await page.evaluate(() => (Storage.prototype.setItem = () => { throw new DOMException("full", "QuotaExceededError"); }));
  await write(page, "machine-tank", "15");
  assert.match(await page.locator(".notices").innerText(), /does not let the page keep what you type/);
  near(await total(page), 15 * US_GALLON, "the answer");
  quiet();
});

test("storage that somebody clears meanwhile: what stands on the page is kept again with the next key", async () => {
  const page = await open();
  await page.locator('[name="record-fill"]').waitFor();
  await write(page, "machine-tank", "12");
  await write(page, "machine-name", "Own name");
  const [[first]] = await recordMany(page, 1);
  assert.equal(first, 1);
  const before = await total(page);
  const devtools = await page.context().newCDPSession(page);
  await devtools.send("Storage.clearDataForOrigin", { origin: stage.origin, storageTypes: "all" });
  await page.waitForFunction(() => localStorage.length === 0);
  near(await total(page), before, "the answer stays");
  await write(page, "machine-tank", "15");
  // The log says what it can: the next record is confirmed, or the page tells why it is not.
  await recordMany(page, 1);
  await page.reload();
  await running(page);
  assert.equal(await field(page, "machine-tank").inputValue(), "15");
  assert.equal(await field(page, "machine-name").inputValue(), "Own name");
  await page.locator('[name="record-fill"]').waitFor();
  // What was confirmed before is gone with both of its copies. The page says which record it was.
  assert.deepEqual((await kept(page)).map(({ number }) => number), [2], "what was confirmed after it is there");
  await toLog(page, "keep");
  assert.match(await page.locator(".view.log").innerText(), /Records are missing\s+d-\w+: number 1 to 1\s+They stood here once\. The browser lost them/);
  quiet();
});

test("a new version that comes in the middle of a fill waits, and what is typed goes over to it", async () => {
  const folder = mkdtempSync(join(tmpdir(), "brimline-update-"));
  try {
    cpSync(PAGE, folder, { recursive: true });
    const own = await stageFor({ folder });
    const page = await own.openPage({ path: "/#fill" });
    page.setDefaultTimeout(10_000);
    await offlineReady(page);
    await write(page, "machine-tank", "12");
    appendFileSync(join(folder, "index.html"), '<i id="new-version"></i>');
    const sealed = spawnSync(DESK, ["precache"], { cwd: ROOT, env: { ...process.env, TRUNK_STAGING_DIR: folder } });
    assert.equal(sealed.status, 0, String(sealed.stderr));
    await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
    await field(page, "update").waitFor();
    assert.match(await page.locator(".notices").innerText(), /What you typed is kept/);
    assert.equal(await field(page, "machine-tank").inputValue(), "12", "nothing changes under the hand");
    await write(page, "product-label", "1:100");
    const before = await figures(page);
    const loaded = page.waitForEvent("load");
    await field(page, "update").click();
    await loaded;
    await running(page);
    assert.equal(await page.locator("#new-version").count(), 1, "the new version");
    assert.deepEqual(await figures(page), before);
    assert.equal(await field(page, "product-label").inputValue(), "1:100");
    assert.deepEqual(own.errors, []);
  } finally {
    rmSync(folder, { recursive: true });
  }
});

test("a browser without WebAssembly says so, and leaves what is kept as it is", async () => {
  const page = await open();
  await write(page, "machine-tank", "33");
  const before = await page.evaluate(() => localStorage.getItem("brimline.typed"));
  quiet();
  const refused = await stage.openPage({
    context: page.context(),
    ready: false,
    before: (page) => page.addInitScript(() => delete window.WebAssembly),
  });
  const alert = refused.getByRole("alert").filter({ hasText: "did not start" });
  await alert.waitFor();
  assert.match(await alert.innerText(), /blocks WebAssembly/);
  assert.match(await alert.innerText(), /What you saved is kept/);
  assert.notEqual(await refused.locator("#boot-reason").textContent(), "");
  assert.equal(await refused.locator("#boot-wait").isVisible(), false);
  assert.equal(await refused.evaluate(() => localStorage.getItem("brimline.typed")), before);
  stage.errors.splice(0);
});

test("where JavaScript is off the page says what to do, in every language", async () => {
  const page = await open({ javaScriptEnabled: false, ready: false });
  const said = await page.locator("body").innerText();
  assert.doesNotMatch(said, /is opening/);
  for (const way of [
    /needs JavaScript\. Allow JavaScript for this page, then reload/, /Permita JavaScript para esta página/,
    /Autorisez JavaScript pour cette page/, /Pèmèt JavaScript pou paj sa a/, /Zezwól na JavaScript dla tej strony/,
    /Permita o JavaScript para esta página/,
  ]) assert.match(said, way);
});

test("a page that cannot start says so in the reader’s language alone", async () => {
  quiet();
  const refused = await stage.openPage({
    locale: "pl-PL",
    ready: false,
    before: (page) => page.addInitScript(() => delete window.WebAssembly),
  });
  const alert = refused.getByRole("alert").filter({ hasText: "nie uruchomiło" });
  await alert.waitFor();
  assert.doesNotMatch(await alert.innerText(), /did not start|no arrancó/);
  stage.errors.splice(0);
});

test("where what starts the page does not come, every language says what to do", async () => {
  quiet();
  const refused = await stage.openPage({ ready: false, before: (page) => page.route("**/boot.js", (route) => route.abort()) });
  assert.equal(await refused.getByText("Brimline se está abriendo").isVisible(), false, "not at once");
  for (const said of ["is opening", "se está abriendo", "s’ouvre", "ap louvri", "się otwiera", "está abrindo"]) {
    await refused.locator("#boot-wait").getByText(said).waitFor();
  }
  stage.errors.splice(0);
});

for (const [name, now] of [["1970", 0], ["2099", Date.UTC(2099, 11, 31, 23, 59, 59)]]) {
  test(`a device whose clock says ${name}: fills are worked out and recorded, and the day on the record is the clock’s`, async () => {
    const page = await open({ before: (page) => page.addInitScript((now) => {
      const Real = Date;
      const gap = now - Real.now();
      window.Date = class extends Real {
        constructor(...given) {
          super(...(given.length ? given : [Real.now() + gap]));
        }
        static now() {
          return Real.now() + gap;
        }
      };
    }, now) });
    await write(page, "machine-tank", "12");
    near(await total(page), 12 * US_GALLON, "the answer");
    await page.locator('[name="record-fill"]').waitFor();
    await recordMany(page, 1);
    const [record] = await kept(page);
    assert.deepEqual(wrongs([record]), []);
    assert.ok(Math.abs(Date.parse(record.when) - now) < 120_000, record.when);
    await toLog(page);
    assert.equal(await page.locator("[data-shown]").getAttribute("data-shown"), "1");
    await go(page, "site");
    await press(page, "site-standards");
    await page.reload();
    await running(page);
    await go(page, "fill");
    assert.equal(await field(page, "machine-tank").inputValue(), "12");
    quiet();
  });
}

test("a first visit that loses its network goes on, and finds what was typed when the network is back", async () => {
  const own = await stageFor();
  // The worker’s own file does not come: nothing is kept for use without a network.
  const context = await own.browser.newContext();
  await context.route("**/worker.js", (route) => route.abort());
  const page = await own.openPage({ path: "/#fill", context });
  page.setDefaultTimeout(10_000);
  await page.locator('[name="record-fill"]').waitFor();
  await own.stopServer();
  await write(page, "machine-tank", "12");
  for (const view of ["flow", "shift", "cautions", "log", "site", "fill"]) await go(page, view);
  near(await total(page), 12 * US_GALLON, "the answer");
  // No page can show without a network what was never kept: the browser says so itself.
  await assert.rejects(page.reload());
  // The browser’s own error page loads when it likes, and would break into a second call of this tab.
  await page.close();
  await own.startServer();
  const again = await own.openPage({ path: "/#fill", context });
  assert.equal(await field(again, "machine-tank").inputValue(), "12");
});

test("back and forward lead through the views, out of the page and in again, with everything in its place", async () => {
  const page = await open();
  await write(page, "machine-tank", "12");
  await go(page, "flow");
  await choose(page, "floor", "concrete");
  await go(page, "shift");
  await press(page, "area-add");
  await write(page, "area-6-size", "400");
  for (const view of ["flow", "fill"]) {
    await page.goBack();
    await page.locator(`.view.${view}`).waitFor();
  }
  assert.equal(await field(page, "machine-tank").inputValue(), "12");
  assert.equal(await field(page, "floor").inputValue(), "concrete");
  for (const view of ["flow", "shift"]) {
    await page.goForward();
    await page.locator(`.view.${view}`).waitFor();
  }
  assert.equal(await field(page, "area-6-size").inputValue(), "400");
  await page.goto("about:blank");
  await page.goBack();
  await page.locator(".view.shift").waitFor();
  assert.equal(await field(page, "area-6-size").inputValue(), "400");
  quiet();
});

test("fifty tabs at once: each answers, none overwrites another unseen, and their records make one chain", async () => {
  const TABS = 50;
  const first = await open();
  const context = first.context();
  const tabs = [first];
  while (tabs.length < TABS) {
    const more = Array.from({ length: Math.min(7, TABS - tabs.length) }, () => stage.openPage({ path: "/#fill", context }));
    tabs.push(...(await Promise.all(more)));
  }
  await write(tabs[17], "machine-tank", "12");
  const told = await Promise.all(tabs.map(async (tab, n) => n === 17 || (await tab.locator('[name="elsewhere-load"]').waitFor(), true)));
  assert.equal(told.filter(Boolean).length, TABS, "every other tab says that one has changed something");
  assert.equal(await field(tabs[3], "machine-tank").inputValue(), "10", "and goes on with what it shows");
  await field(tabs[3], "elsewhere-load").click();
  await running(tabs[3]);
  assert.equal(await field(tabs[3], "machine-tank").inputValue(), "12");
  const numbers = [];
  // A tab in the background draws when it likes: these record when they are in front.
  const some = tabs.filter((_, n) => n % 5 === 0);
  for (const tab of some) {
    await tab.bringToFront();
    await tab.locator('[name="record-fill"]').waitFor();
    numbers.push((await recordMany(tab, 1))[0][0]);
  }
  assert.deepEqual(numbers, some.map((_, n) => n + 1));
  const records = await kept(first);
  assert.equal(records.length, some.length);
  assert.deepEqual(wrongs(records), []);
  assert.ok((await countOf(first, "fill.")) > 3);
  await context.close();
  quiet();
});
