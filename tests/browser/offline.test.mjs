// The finished page loads, keeps itself for offline use, asks nobody else, and waits with updates.

import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { appendFileSync, cpSync, mkdtempSync, readFileSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, test } from "node:test";
import { gzipSync } from "node:zlib";
import { figure } from "./figures.mjs";
import { DESK, PAGE, ROOT, offlineReady, openStage, running } from "./harness.mjs";

/** Bytes of the first load: what is fetched until the first answer stands, compressed, and the files that
 * a browser fetches unasked: icons, manifest, worker. */
const FIRST_LOAD_LIMIT = 300_000;

const stages = [];
async function stageFor(options) {
  const stage = await openStage(options);
  stages.push(stage);
  return stage;
}
afterEach(async () => {
  await Promise.all(stages.splice(0).map((stage) => stage.close()));
});

const isFilled = (page) => page.evaluate(() => document.getElementById("app").childElementCount > 0);

test("the page loads without a complaint and asks only its own server", async () => {
  const stage = await stageFor();
  const page = await stage.openPage();
  await offlineReady(page);
  assert.ok(await isFilled(page));
  assert.deepEqual(stage.errors, []);
  const elsewhere = stage.requests.filter(({ url }) => !url.startsWith(`${stage.origin}/`));
  assert.deepEqual(elsewhere, []);
  assert.ok(stage.requests.some(({ by }) => by === "worker"), "the worker's requests are recorded too");
});

test("the page reloads without its server", async () => {
  const stage = await stageFor();
  const page = await stage.openPage();
  await offlineReady(page);
  await stage.stopServer();
  await page.reload();
  await running(page);
  assert.ok(await isFilled(page));
  await page.goto(`${stage.origin}/?from=the-wall`);
  await running(page);
  assert.ok(await isFilled(page));
});

test("every file of the page is kept on the device, but for languages that nobody chose", async () => {
  const stage = await stageFor();
  const page = await stage.openPage();
  await offlineReady(page);
  await stage.stopServer();
  const files = filesOf(PAGE).filter((file) => file !== "worker.js" && !file.endsWith(".ftl"));
  const missing = await page.evaluate(async (names) => {
    const fetched = await Promise.all(names.map((name) => fetch(name).then((answer) => answer.ok, () => false)));
    return names.filter((_, index) => !fetched[index]);
  }, files.map((file) => (file === "index.html" ? "./" : file)));
  assert.deepEqual(missing, []);
});

test("the first visit announces no update", async () => {
  const stage = await stageFor();
  const page = await stage.openPage();
  await offlineReady(page);
  await page.reload();
  await running(page);
  // The browser's own look for a new worker comes at a time of its choosing: here it is over.
  await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
  assert.equal(await page.evaluate(() => window.brimlineUpdate), undefined);
});

test("an update waits until it is accepted, then replaces all of the old version", async () => {
  const folder = mkdtempSync(join(tmpdir(), "brimline-page-"));
  try {
    cpSync(PAGE, folder, { recursive: true });
    const stage = await stageFor({ folder });
    const page = await stage.openPage();
    await offlineReady(page);
    const isNew = () => page.evaluate(() => document.getElementById("new-version") !== null);
    const caches = () => page.evaluate(() => window.caches.keys());
    const before = await caches();

    appendFileSync(join(folder, "index.html"), '<i id="new-version"></i>');
    seal(folder);
    await page.reload();
    await running(page);
    await page.waitForFunction(() => window.brimlineUpdate === true);
    assert.equal(await isNew(), false);
    await page.reload();
    await running(page);
    assert.equal(await isNew(), false, "a reload alone does not bring the new version");
    await page.waitForFunction(() => window.brimlineUpdate === true);

    const reloaded = page.waitForEvent("load");
    await page.evaluate(() => window.dispatchEvent(new CustomEvent("brimline-accept-update")));
    await reloaded;
    await running(page);
    assert.equal(await isNew(), true);
    await page.waitForFunction(async () => (await window.caches.keys()).length === 1);
    assert.notDeepEqual(await caches(), before);
  } finally {
    rmSync(folder, { recursive: true });
  }
});

test("a page that cannot start says so", async () => {
  const stage = await stageFor();
  for (const file of ["brimline_bg.wasm", "brimline.js"]) {
    const page = await stage.openPage({
      serviceWorkers: "block",
      before: (opening) => opening.route(`**/${file}`, (route) => route.fulfill({ status: 500, body: "" })),
    });
    assert.ok(await page.getByRole("alert").filter({ hasText: "did not start" }).isVisible(), file);
    assert.notEqual(await page.locator("#boot-reason").textContent(), "", file);
  }
});

test("the first load stays within its budget", async () => {
  const stage = await stageFor();
  // The chunk that Fill does not need is held back: the first answer must stand without it.
  const page = await stage.openPage({
    serviceWorkers: "block",
    before: (opening) => opening.route("**/*.wasm", (route) => (isLater(route.request().url()) ? undefined : route.continue())),
  });
  await page.locator("[data-answer='fill.rounded']").waitFor();
  const sizes = filesOf(PAGE).map((file) => [file, gzipSync(readFileSync(join(PAGE, file)), { level: 9 }).length]);
  const total = (some) => some.reduce((sum, [, size]) => sum + size, 0);
  const [languages, all] = [sizes.filter(([file]) => isLanguage(file)), sizes.filter(([file]) => !isLanguage(file))];
  const [first, later] = [all.filter(([file]) => !isLater(file)), all.filter(([file]) => isLater(file))];
  for (const [file, size] of sizes) console.log(`${String(size).padStart(8)}  ${file}${isLater(file) || isLanguage(file) ? "  (later)" : ""}`);
  console.log(`${String(total(first)).padStart(8)}  first load, gzip, of ${FIRST_LOAD_LIMIT} allowed; ${total(later)} later`);
  figure("first load, all files, gzip (aim 200 kB)", `${FIRST_LOAD_LIMIT / 1_000} kB`, `${(total(first) / 1_000).toFixed(1)} kB`);
  figure("loaded after the first answer, gzip", "", `${(total(later) / 1_000).toFixed(0)} kB`);
  figure("the largest language, gzip, where it is chosen", "", `${(Math.max(...languages.map(([, size]) => size)) / 1_000).toFixed(0)} kB`);
  assert.ok(later.length > 0, "a part is loaded later");
  assert.ok(total(first) <= FIRST_LOAD_LIMIT, `${total(first)} bytes`);
});

test("a view whose chunk does not come says so, and Fill goes on", async () => {
  const stage = await stageFor();
  let broken = true;
  const page = await stage.openPage({
    serviceWorkers: "block",
    before: (opening) =>
      opening.route("**/*.wasm", (route) => (broken && isLater(route.request().url()) ? route.abort() : route.continue())),
  });
  await page.locator("nav a[href='#flow']").click();
  await page.getByText("This part of the page could not be loaded").waitFor();
  await page.locator("nav a[href='#fill']").click();
  await page.locator("[data-answer='fill.rounded']").waitFor();
  broken = false;
  await page.locator("nav a[href='#flow']").click();
  await page.locator(".view.flow").waitFor();
  assert.ok(await page.locator("[data-answer='flow.setting']").count(), "the next try finds it");
});

test("an address leads straight to a view of the chunk", async () => {
  const stage = await stageFor();
  const page = await stage.openPage({ path: "/#shift", serviceWorkers: "block" });
  await page.locator("[data-answer='shift.fills']").first().waitFor();
  assert.deepEqual(stage.errors, []);
});

/** A wasm chunk that is loaded after the first answer. */
const isLater = (file) => file.endsWith(".wasm") && !file.endsWith("brimline_bg.wasm");

/** A language, which is loaded when it is chosen. */
const isLanguage = (file) => file.endsWith(".ftl");

function filesOf(folder, prefix = "") {
  return readdirSync(join(folder, prefix), { withFileTypes: true })
    .filter((entry) => !entry.name.startsWith("."))
    .flatMap((entry) => {
      const name = prefix + entry.name;
      return entry.isDirectory() ? filesOf(folder, `${name}/`) : [name];
    });
}

function seal(folder) {
  const sealed = spawnSync(DESK, ["precache"], { cwd: ROOT, env: { ...process.env, TRUNK_STAGING_DIR: folder } });
  assert.equal(sealed.status, 0, String(sealed.stderr));
}
