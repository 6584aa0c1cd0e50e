// The browser is killed while it writes, again and again, in one profile: every record that it said was kept is there,
// and the chain holds. Then the files of its database are damaged while it does not run.
//
// A kill ends the process and not the machine: what lies in the system's own cache survives it. That strict durability
// also asks the system to put it on the disk is the browser's word (W3C, Indexed Database API 3.0, durability hint).
//
// BRIMLINE_FAULT_ROUNDS shortens it while one works on it.

import assert from "node:assert/strict";
import { readdirSync, readFileSync, rmSync, statSync, writeFileSync, mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, test } from "node:test";
import { launchOn } from "./chromium.mjs";
import { figure } from "./figures.mjs";
import { startServer } from "./harness.mjs";
import { kept, opened, recordMany, spread, toLog, wrongs } from "./log_walk.mjs";

const ROUNDS = Number(process.env.BRIMLINE_FAULT_ROUNDS ?? 100);
/** The browser is killed within so many ms of the first record of a round. */
const WITHIN = 600;

const server = await startServer();
const folders = [];
const running = new Set();
after(async () => {
  // A test that failed leaves its browser behind.
  for (const browser of running) await browser.kill();
  await server.stop();
  for (const folder of folders) rmSync(folder, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
});

/** A new profile. */
function profile() {
  const folder = mkdtempSync(join(tmpdir(), "brimline-profile-"));
  folders.push(folder);
  return folder;
}

/** A browser on a profile. */
async function launched(folder) {
  const browser = await launchOn(folder);
  running.add(browser);
  const ended = (end) => async () => {
    running.delete(browser);
    await end();
  };
  return { ...browser, kill: ended(browser.kill), close: ended(browser.close) };
}

/** Fill in a new tab, ready to record. */
async function fill(context) {
  const page = await context.newPage();
  await page.goto(`${server.origin}/#fill`);
  await page.locator('[name="record-fill"]').waitFor({ timeout: 60_000 });
  return page;
}

/** How often the browser had thrown the whole database away. */
let thrown = 0;

/** What stands in the database, read with no code of the page running. Where the browser has thrown it away, which it
 * does without a word, the page brings it back from the second copy first. */
async function read(context) {
  const page = await context.newPage();
  await page.goto(`${server.origin}/boot.js`);
  // Asked first: opening a database that is not there would make an empty one.
  if (!(await page.evaluate(async () => (await indexedDB.databases()).some(({ name }) => name === "brimline-log")))) {
    thrown += 1;
    const own = await fill(context);
    await toLog(own);
    await own.close();
  }
  const records = await kept(page);
  await page.close();
  return records;
}

test(`${ROUNDS} times killed while it writes, no confirmed record is lost and the chain holds`, { timeout: 3_600_000 }, async () => {
  const folder = profile();
  const confirmed = new Map();
  const times = [];
  let found = [];
  let lost = 0;
  for (let round = 1; round <= ROUNDS; round += 1) {
    const browser = await launched(folder);
    if (round > 1) {
      found = await read(browser.context);
      lost += missing(confirmed, found);
      assert.equal(lost, 0, `round ${round}`);
      assert.deepEqual(wrongs(found), [], `round ${round}`);
    }
    const page = await fill(browser.context);
    let began;
    const first = new Promise((done) => (began = done));
    await page.exposeFunction("onconfirmed", ([number, ms]) => {
      // Only what arrived here before the kill counts as confirmed.
      confirmed.set(number, round);
      times.push(ms);
      began();
    });
    const writing = recordMany(page, 100_000).catch(() => {});
    await first;
    await new Promise((done) => setTimeout(done, Math.random() * WITHIN));
    await browser.kill();
    await writing;
  }
  const browser = await launched(folder);
  found = await read(browser.context);
  lost += missing(confirmed, found);
  const broken = wrongs(found);
  // The page itself opens it and says so.
  const page = await fill(browser.context);
  await toLog(page);
  assert.equal(await page.locator("[data-shown]").getAttribute("data-shown"), String(found.length));
  await browser.close();
  const { median, p95 } = spread(times);
  console.log(`Killed ${ROUNDS} times (process ${"by its id, SIGKILL"}): ${confirmed.size} records confirmed, ${found.length} found, ${lost} lost, ${broken.length} breaks, the whole database thrown away by the browser ${thrown} times; a confirmation took ${median.toFixed(1)} ms (median), ${p95.toFixed(1)} ms (95th percentile).`);
  figure(`confirmed records lost, browser killed ${ROUNDS} times while it wrote`, "0", `${lost} of ${confirmed.size}`);
  figure("breaks of the chain after that", "0", `${broken.length}`);
  assert.ok(confirmed.size >= ROUNDS, String(confirmed.size));
  assert.equal(lost, 0);
  assert.deepEqual(broken, []);
});

/** How many confirmed records are not there. */
function missing(confirmed, found) {
  const numbers = new Set(found.map(({ number }) => number));
  return [...confirmed.keys()].filter((number) => !numbers.has(number)).length;
}

/** The files in which the browser keeps the database. */
function files(folder) {
  const base = join(folder, "Default", "IndexedDB");
  return readdirSync(base, { recursive: true }).map((name) => join(base, name)).filter((name) => statSync(name).isFile());
}

const DAMAGES = {
  "every byte overwritten": (bytes) => bytes.fill(0x5a),
  "the second half of each file overwritten": (bytes) => bytes.fill(0x5a, bytes.length >> 1),
  "every 64th byte turned": (bytes) => bytes.map((byte, place) => (place % 64 === 63 ? byte ^ 0xff : byte)),
  "each file cut to a third": (bytes) => bytes.subarray(0, Math.floor(bytes.length / 3)),
};

for (const [name, damage] of Object.entries(DAMAGES)) {
  test(`a database with ${name} comes back`, { timeout: 300_000 }, async () => {
    const folder = profile();
    let browser = await launched(folder);
    let page = await fill(browser.context);
    const confirmed = await recordMany(page, 40);
    const before = await kept(page);
    // The second copy reaches the disk some seconds later, or when the browser is closed.
    await browser.close();
    for (const file of files(folder)) writeFileSync(file, damage(readFileSync(file)));
    browser = await launched(folder);
    page = await fill(browser.context);
    for (let loads = 1; loads <= 3; loads += 1) {
      await page.evaluate(() => (location.hash = "log"));
      await opened(page);
      if (await page.locator("[data-shown]").count()) break;
      await page.reload();
    }
    await page.locator("[data-shown]").waitFor();
    const found = await kept(page);
    console.log(`${name}: ${confirmed.length} confirmed, ${found.length} found, ${missing(new Map(confirmed), found)} lost.`);
    assert.deepEqual(found, before);
    assert.deepEqual(wrongs(found), []);
    await page.evaluate(() => (location.hash = "fill"));
    await page.locator('[name="record-fill"]').waitFor();
    await recordMany(page, 2);
    assert.deepEqual(wrongs(await kept(page)), []);
    await browser.close();
  });
}
