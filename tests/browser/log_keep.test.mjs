// The log in the browser's own database: what was confirmed is there, is chained, survives, and is found where
// somebody altered it. The chain is worked out in node, from its documentation alone.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { figure } from "./figures.mjs";
import { aside, canonical, file, give, kept, made, makeDatabase, meddle, opened, recordMany, rows, spread, take, toLog, wrongs } from "./log_walk.mjs";
import { press, settled, stageOfThisFile, write } from "./walk.mjs";

const { stage, open } = await stageOfThisFile();

/** Opens Fill of a visitor, and waits for the button. */
async function toFill(look = {}) {
  const page = await open(look);
  await page.locator('[name="record-fill"]').waitFor();
  return page;
}

const again = async (page) => {
  await page.reload();
  await page.locator('[name="record-fill"], [name="log-fills"]').first().waitFor();
};

test("a tap is a record that is confirmed, chained, and there after loading again", async () => {
  const page = await toFill();
  const confirmed = await recordMany(page, 12);
  assert.deepEqual(confirmed.map(([number]) => number), Array.from({ length: 12 }, (_, n) => n + 1));
  const records = await kept(page);
  assert.equal(records.length, 12);
  assert.deepEqual(wrongs(records), []);
  // Every line is canonical JSON, as its documentation says.
  for (const [, line] of (await rows(page)).records) assert.equal(line, canonical(JSON.parse(line)));
  await again(page);
  await toLog(page);
  assert.equal(await page.locator("[data-shown]").getAttribute("data-shown"), "12");
  const { median, p95 } = spread(confirmed.map(([, ms]) => ms));
  console.log(`A tap is confirmed as durable after ${median.toFixed(1)} ms (median), ${p95.toFixed(1)} ms (95th percentile), of 12.`);
});

test("what was corrected stays corrected after loading again, though no block has it yet", async () => {
  const page = await toFill();
  // The blocks of the empty log stand: all that follows is read record by record.
  for (let tries = 0; tries < 100 && !(await rows(page)).meta.some(([key]) => key === "view"); tries += 1) await page.waitForTimeout(100);
  assert.ok((await rows(page)).meta.some(([key]) => key === "view"), "blocks of the empty log");
  await recordMany(page, 2);
  await toLog(page, "shift");
  const done = page.locator('[name="log-drain-done"]').first();
  await done.click();
  await page.locator('[name="log-drain-done"][aria-pressed="true"]').first().waitFor();
  await page.reload();
  await toLog(page, "shift");
  assert.equal(await done.getAttribute("aria-pressed"), "true");
  await toLog(page, "fills");
  assert.equal(await page.locator("[data-shown]").getAttribute("data-shown"), "2", "each fill once");
});

test("two tabs that write at once make one chain", async () => {
  const PER_TAB = 1_000;
  const one = await toFill();
  const other = await stage.openPage({ path: "/#fill", context: one.context() });
  await other.locator('[name="record-fill"]').waitFor();
  const began = performance.now();
  const confirmed = (await Promise.all([recordMany(one, PER_TAB), recordMany(other, PER_TAB)])).flat();
  const took = performance.now() - began;
  const records = await kept(one);
  const numbers = confirmed.map(([number]) => number).sort((a, b) => a - b);
  assert.deepEqual(numbers, Array.from({ length: 2 * PER_TAB }, (_, n) => n + 1));
  assert.equal(records.length, 2 * PER_TAB);
  assert.equal(new Set(records.map(({ device }) => device)).size, 1);
  assert.deepEqual(wrongs(records), []);
  const { median, p95 } = spread(confirmed.map(([, ms]) => ms));
  console.log(`Two tabs, ${PER_TAB} records each: ${numbers.length} confirmed, ${records.length} found, 0 lost, in ${(took / 1_000).toFixed(1)} s; a confirmation ${median.toFixed(1)} ms (median), ${p95.toFixed(1)} ms (95th percentile).`);
  figure(`records lost of two tabs that write ${PER_TAB} each at once`, "0", `${2 * PER_TAB - records.length}`);
  // Each tab shows what the other wrote, without loading again.
  for (const page of [one, other]) {
    await toLog(page);
    await page.waitForFunction((all) => document.querySelector("[data-shown]")?.dataset.shown === String(all), 2 * PER_TAB);
  }
});

test("a clock that went back is told, and nothing is refused", async () => {
  const page = await toFill({
    before: (page) => page.addInitScript(() => {
      const Real = Date;
      // From the third second of this page on, the clock is a day behind.
      let behind = 0;
      window.setClockBack = () => (behind = 86_400_000);
      window.Date = class extends Real {
        constructor(...given) {
          super(...(given.length ? given : [Real.now() - behind]));
        }
        static now() {
          return Real.now() - behind;
        }
      };
    }),
  });
  await recordMany(page, 3);
  await page.evaluate(() => window.setClockBack());
  await recordMany(page, 3);
  const records = await kept(page);
  assert.deepEqual(wrongs(records), []);
  assert.ok(Date.parse(records[3].when) < Date.parse(records[2].when), records[3].when);
  await toLog(page);
  assert.equal(await page.locator("[data-shown]").getAttribute("data-shown"), "6");
  // Each of the three lies before the third record.
  const ends = Object.fromEntries((await rows(page)).meta)[`end/${records[0].device}`];
  assert.deepEqual(JSON.parse(ends).back, [4, 5, 6]);
});

/** Presses Check and waits for what comes of it. */
async function checked(page) {
  await toLog(page, "keep");
  await press(page, "log-check");
  const said = page.locator('[data-check="whole"], [data-check="broken"]');
  await said.waitFor();
  return { check: await said.getAttribute("data-check"), text: await said.innerText() };
}

test("a record that was altered in the database is found and named", async () => {
  const page = await toFill();
  await recordMany(page, 8);
  assert.equal((await checked(page)).check, "whole");
  const { device } = (await kept(page))[0];
  await meddle(page, async ({ records }, asked) => {
    const keys = await asked(records.getAllKeys());
    const line = await asked(records.get(keys[4]));
    records.put(line.replace(/"kind":"fill"/, '"kind":"fill","of":""').replace(/"when":"20/, '"when":"21'), keys[4]);
  });
  const { check, text } = await checked(page);
  assert.equal(check, "broken");
  assert.ok(text.includes(`${device}/5`), text);
});

test("a record that was taken away is found and named", async () => {
  const page = await toFill();
  await recordMany(page, 8);
  const { device } = (await kept(page))[0];
  await meddle(page, async ({ records }, asked) => {
    records.delete((await asked(records.getAllKeys()))[2]);
  });
  const { check, text } = await checked(page);
  assert.equal(check, "broken");
  assert.ok(text.includes(`${device}/3`), text);
});

test("a line that is no JSON any more does not keep the others from opening", async () => {
  const page = await toFill();
  await recordMany(page, 5);
  const { device } = (await kept(page))[0];
  await meddle(page, async ({ records, packed, meta }, asked) => {
    records.put("{torn", (await asked(records.getAllKeys()))[1]);
    packed.clear();
    meta.delete("view");
  });
  await again(page);
  const { check, text } = await checked(page);
  assert.equal(check, "broken");
  assert.ok(text.includes(`${device}/2`), text);
});

test("blocks that are torn or stale are made anew from the records", async () => {
  const page = await open({ view: "log" });
  await take(page, made("cart-1", 700));
  await page.waitForFunction(() => document.querySelector('[data-check]'));
  const packed = async () => (await rows(page)).packed.length;
  for (let wait = 0; wait < 50 && !(await packed()); wait += 1) await page.waitForTimeout(200);
  assert.ok(await packed(), "no block was made");
  const count = async () => {
    await again(page);
    await toLog(page, "fills");
    return page.locator("[data-shown]").getAttribute("data-shown");
  };
  assert.equal(await count(), "700");
  await meddle(page, async ({ packed }, asked) => {
    const block = await asked(packed.get(0));
    block[block.length >> 1] ^= 1;
    packed.put(block, 0);
  });
  assert.equal(await count(), "700");
  await meddle(page, ({ packed }) => packed.clear());
  assert.equal(await count(), "700");
});

test("a database that the browser threw away comes back from the second copy", async () => {
  const page = await toFill();
  await recordMany(page, 20);
  const before = await kept(page);
  // The page holds it open: what a browser does with a damaged one is done while no page is there.
  await page.goto("about:blank");
  await aside(page, stage.origin);
  await page.evaluate(() => new Promise((done, failed) => {
    const gone = indexedDB.deleteDatabase("brimline-log");
    gone.onsuccess = done;
    gone.onerror = () => failed(gone.error);
  }));
  await page.goto(`${stage.origin}/#fill`);
  await page.locator('[name="record-fill"]').waitFor();
  await toLog(page, "fills");
  assert.equal(await page.locator("[data-shown]").getAttribute("data-shown"), "20");
  assert.deepEqual(await kept(page), before);
  // The chain goes on.
  await page.evaluate(() => (location.hash = "fill"));
  await page.locator('[name="record-fill"]').waitFor();
  await recordMany(page, 2);
  assert.deepEqual(wrongs(await kept(page)), []);
});

test("what the second copy has not is named with its numbers, and a backup brings it back", async () => {
  const page = await toFill();
  await recordMany(page, 6);
  const before = await kept(page);
  await aside(page, stage.origin);
  await page.evaluate((device) => {
    for (const number of [1, 2, 3]) localStorage.removeItem(`brimline.log/${device}/${number}`);
    return new Promise((done) => (indexedDB.deleteDatabase("brimline-log").onsuccess = done));
  }, before[0].device);
  await page.goto(`${stage.origin}/#log`);
  await opened(page);
  const lost = page.locator(".view.log [role=alert]");
  await lost.waitFor();
  assert.match(await lost.innerText(), new RegExp(`${before[0].device}\\D+1\\D+3`));
  await take(page, before);
  assert.deepEqual(await kept(page), before);
  await page.waitForFunction(() => !document.querySelector(".view.log [role=alert]"));
});

test("a database of the first version is brought up to date with every record in it", async () => {
  const records = made("cart-1", 30);
  const page = await open({
    ready: false,
    view: "log",
    before: async (page) => {
      await aside(page, stage.origin);
      await makeDatabase(page, 1, {
        records: records.map((one) => [[one.device, one.number, one.own], canonical(one)]),
        meta: [["device", "cart-1"], ["end/cart-1", JSON.stringify({ number: 30, own: records[29].own })]],
        packed: [],
      });
    },
  });
  await opened(page);
  assert.equal(await page.locator("[data-shown]").getAttribute("data-shown"), "30");
  const after = await rows(page);
  assert.equal(after.version, 2);
  assert.deepEqual(after.records.map(([, line]) => JSON.parse(line)), records);
  await page.evaluate(() => (location.hash = "fill"));
  await page.locator('[name="record-fill"]').waitFor();
  await recordMany(page, 2);
  assert.deepEqual(wrongs(await kept(page)), []);
});

test("a database of a later version is left as it is, and a fill is kept on the screen", async () => {
  const rowsBefore = { records: [[["cart-1", 1, "x"], "later"]], meta: [["device", "cart-1"]] };
  const page = await open({
    ready: false,
    before: async (page) => {
      await aside(page, stage.origin);
      await makeDatabase(page, 99, rowsBefore);
    },
  });
  await page.locator('[name="record-fill"]').click();
  await page.locator('[name="log-again"]').waitFor();
  const saved = page.waitForEvent("download");
  await press(page, "log-waiting-save");
  const [, line] = readFileSync(await (await saved).path(), "utf8").trim().split("\n");
  assert.deepEqual(wrongs([JSON.parse(line)]), []);
  const after = await rows(page);
  assert.deepEqual(after, { version: 99, ...rowsBefore });
});

test("where the browser keeps nothing, a fill stays on the screen and can be saved", async () => {
  const page = await toFill({
    before: (page) => page.addInitScript(() => {
      Object.defineProperty(window, "indexedDB", { get: () => { throw new DOMException("denied", "SecurityError"); } });
    }),
  });
  const asks = () => page.evaluate(() => !window.dispatchEvent(new Event("beforeunload", { cancelable: true })));
  assert.equal(await asks(), false, "nothing waits");
  await page.locator('[name="record-fill"]').click();
  await page.locator('[name="log-again"]').waitFor();
  assert.equal(await page.locator('[name="record-fill"]').innerText(), "Not kept yet");
  assert.equal(await asks(), true, "a record waits");
  const saved = page.waitForEvent("download");
  await press(page, "log-waiting-save");
  const [first, line] = readFileSync(await (await saved).path(), "utf8").trim().split("\n").map((one) => JSON.parse(one));
  assert.deepEqual(wrongs([line]), []);
  // Another device takes it.
  const other = await open({ view: "log" });
  await take(other, file([line], { heads: first.heads }));
  assert.deepEqual(await kept(other), [line]);
});

test("a device that is full refuses aloud, keeps the fill on the screen, and takes it once there is room", async () => {
  const page = await toFill();
  await recordMany(page, 3);
  const session = await page.context().newCDPSession(page);
  await session.send("Storage.overrideQuotaForOrigin", { origin: stage.origin, quotaSize: 1 });
  const before = await kept(page);
  // The browser goes by what room there was for half a minute before it asks anew.
  await page.waitForTimeout(35_000);
  await press(page, "level-50");
  await page.locator('[name="record-fill"]').click();
  await page.locator('[name="log-again"]').waitFor();
  assert.deepEqual(await kept(page), before);
  const saved = page.waitForEvent("download");
  await press(page, "log-waiting-save");
  const [, line] = readFileSync(await (await saved).path(), "utf8").trim().split("\n");
  await session.send("Storage.overrideQuotaForOrigin", { origin: stage.origin });
  await press(page, "log-again");
  await page.waitForFunction(() => !document.querySelector('[name="log-again"]'));
  const after = await kept(page);
  assert.deepEqual(wrongs(after), []);
  // It is the very record that was saved as a file.
  assert.deepEqual(after.at(-1), JSON.parse(line));
  assert.equal(after.length, 4);
});
