// Files of the log, out and in: nothing is lost on the way, nothing comes twice, and nothing hostile is taken.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { canonical, digest, file, give, kept, made, recordMany, take, toLog, wrongs } from "./log_walk.mjs";
import { press, stageOfThisFile } from "./walk.mjs";

const { open } = await stageOfThisFile();

/** ms without a frame after which a page seems to have stopped: a limit of ours, wide since the machine is shared. */
const STILL = 1_000;

/** Gives a file and waits for what is said of it. */
async function compared(page, text) {
  await toLog(page, "keep");
  await give(page, text);
  const said = page.locator(".view.log [data-added], .view.log .mistake").first();
  await said.waitFor({ timeout: 60_000 });
  return { said: await said.innerText(), added: await said.getAttribute("data-added") };
}

test("what is saved is the whole log, and another device takes it once", async () => {
  const page = await open();
  await page.locator('[name="record-fill"]').waitFor();
  await recordMany(page, 7);
  await toLog(page, "keep");
  const saving = page.waitForEvent("download");
  await press(page, "log-save");
  const text = readFileSync(await (await saving).path(), "utf8");
  const [first, ...lines] = text.trimEnd().split("\n");
  const records = lines.map((line) => JSON.parse(line));
  assert.deepEqual(records, await kept(page));
  assert.equal(JSON.parse(first).heads[0].own, records.at(-1).own);
  assert.equal(first, canonical(JSON.parse(first)));
  // The second copy has nothing left to do.
  assert.equal(await page.evaluate(() => Object.keys(localStorage).filter((key) => key.startsWith("brimline.log/")).length), 0);
  const other = await open({ view: "log" });
  await take(other, text);
  assert.deepEqual(await kept(other), records);
  assert.equal((await compared(other, text)).added, "0");
});

test("logs of several devices become one, whatever the order", async () => {
  const [a, b, c] = ["cart-a", "cart-b", "cart-c"].map((device) => made(device, 40));
  const page = await open({ view: "log" });
  for (const part of [b, a, [...c, ...a]]) await take(page, file(part));
  const other = await open({ view: "log" });
  await take(other, file([...c, ...b, ...a]));
  const order = (all) => all.map(canonical).sort();
  assert.deepEqual(order(await kept(page)), order([...a, ...b, ...c]));
  assert.deepEqual(order(await kept(other)), order(await kept(page)));
});

test("a file that is cut off gives its full lines, and names the one that is not", async () => {
  const text = file(made("cart-1", 50));
  const page = await open({ view: "log" });
  const { said, added } = await compared(page, text.slice(0, -300));
  assert.equal(added, "49");
  assert.match(said, /51/);
});

test("two records of one number are shown, and both stay", async () => {
  const ours = made("cart-1", 10);
  const theirs = made("cart-1", 10, { from: 1_751_000_000 });
  const page = await open({ view: "log" });
  await take(page, ours);
  const { said } = await compared(page, file(theirs));
  assert.match(said, /cart-1\/1\b/);
  await press(page, "log-take");
  await page.waitForFunction(() => !document.querySelector('[name="log-take"]'));
  const all = (await kept(page)).map(canonical).sort();
  assert.deepEqual(all, [...ours, ...theirs].map(canonical).sort());
});

test("a record that was edited in a file does not take the place of the true one", async () => {
  const page = await open();
  const records = made("station-1", 3);
  await take(page, records);
  const edited = structuredClone(records);
  edited[1].fill.measured.si *= 2;
  edited[2].words.who.text = "ZZ";
  const { added } = await compared(page, file(edited));
  assert.equal(added, "0");
  assert.equal(await page.locator("[data-altered]").getAttribute("data-altered"), "2");
  assert.match(await page.locator("[data-altered]").innerText(), /station-1\/2, station-1\/3/);
  assert.equal(await page.locator('[name="log-take"]').count(), 0, "there is nothing to take");
  await press(page, "log-leave");
  assert.deepEqual(await kept(page), records);
});

test("what a file says was erased is erased here", async () => {
  const ours = made("cart-1", 3);
  const erasure = { device: "cart-1", number: 4, kind: "erasure", of: "cart-1/2", erased: ["who"], when: "2025-09-01T08:00:00+00:00", before: ours[2].own };
  erasure.own = digest(erasure);
  const theirs = structuredClone([...ours, erasure]);
  delete theirs[1].words;
  assert.deepEqual(wrongs(theirs), []);
  const page = await open({ view: "log" });
  await take(page, ours);
  await take(page, theirs);
  assert.deepEqual(await kept(page), theirs);
  // An older file does not bring it back.
  const { added } = await compared(page, file(ours));
  assert.equal(added, "0");
  assert.deepEqual(await kept(page), theirs);
});

test("hostile files: each is refused with a reason, or taken for what it is, and ours stays whole", async () => {
  const page = await open({ view: "log" });
  const ours = made("cart-1", 5);
  await take(page, ours);
  const whole = async () => assert.deepEqual(await kept(page), ours);
  const refused = {
    "a later version": file(made("cart-2", 1), { schema: 99 }),
    "another kind": '{"brimline":"site","schema":1}\n',
    "no JSON": "\u0000\u0001\u0002",
    "nothing": "",
    "a deep one": "[".repeat(100_000),
    "a field twice": '{"brimline":"log","brimline":"log","schema":1,"heads":[]}\n',
  };
  for (const [name, text] of Object.entries(refused)) {
    const { said, added } = await compared(page, text);
    assert.equal(added, null, `${name}: ${said}`);
    assert.ok(said.length > 20, `${name}: ${said}`);
    await whole();
  }
  // One that was changed and whose hash was not: shown as broken before anything is taken.
  const forged = made("cart-2", 5);
  forged[2].fill.measured.si = 0.5;
  assert.match((await compared(page, file(forged))).said, /cart-2\/3\b/);
  await whole();
  // A line of more than 64 KiB, and fields that nobody knows: named, and the others are there.
  const [good, long, strange] = [made("cart-3", 1)[0], { ...made("cart-4", 1)[0], of: "x".repeat(70_000) }, { ...made("cart-5", 1)[0], more: 1 }];
  assert.equal((await compared(page, file([good, long, strange]))).added, "1");
  await whole();
  // Markup in texts is text.
  const evil = '<img src=x onerror="document.title=1"><script>document.title=2</script>';
  const marked = made("cart-6", 1, { who: () => evil, fill: () => ({ machine: { id: evil, name: evil }, product: { id: "p", name: evil }, measured: { si: 0.001, text: evil } }) });
  const title = await page.title();
  await take(page, marked);
  await toLog(page, "fills");
  await page.locator("[data-fill]", { hasText: "<script>" }).first().waitFor();
  assert.equal(await page.locator(".view.log img, .view.log script").count(), 0);
  assert.equal(await page.title(), title);
});

test("ten thousand records from a file: the page answers all the while", async () => {
  const page = await open({ view: "log" });
  const text = file(made("cart-1", 10_000));
  await toLog(page, "keep");
  await page.evaluate(() => {
    window.frames_ = [];
    let last = performance.now();
    const tick = () => {
      const now = performance.now();
      window.frames_.push(now - last);
      last = now;
      requestAnimationFrame(tick);
    };
    requestAnimationFrame(tick);
  });
  const began = performance.now();
  await give(page, text);
  await page.locator('[name="log-take"]').click({ timeout: 120_000 });
  const read = performance.now() - began;
  await page.waitForFunction(() => document.querySelector(".view.log")?.textContent.includes("10"), undefined, { timeout: 120_000 });
  await toLog(page, "fills");
  await page.waitForFunction(() => document.querySelector("[data-shown]")?.dataset.shown === "10000", undefined, { timeout: 120_000 });
  const took = performance.now() - began;
  const longest = await page.evaluate(() => Math.max(...window.frames_));
  console.log(`10,000 records: read and compared in ${(read / 1_000).toFixed(1)} s, taken and shown after ${(took / 1_000).toFixed(1)} s; the longest time without a frame ${longest.toFixed(0)} ms.`);
  assert.ok(longest < STILL, `${longest} ms`);
  assert.deepEqual(wrongs(await kept(page)), []);
});
