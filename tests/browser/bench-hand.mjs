// How soon the page answers a hand: from a keystroke to the painted answer, and from the navigation to the first
// answer, on this machine and slowed four times, as a cheap tablet is.
//
// `cargo run -- test --only bench` builds the page and runs this.

import assert from "node:assert/strict";
import { availableParallelism } from "node:os";
import { after, test } from "node:test";
import { figure } from "./figures.mjs";
import { offlineReady, openStage } from "./harness.mjs";
import { field, go } from "./walk.mjs";

/** How many times slower, and the ms within which 95 of 100 keystrokes should be answered. How long a browser without a
 * screen of its own takes to paint is this machine's: that is shown, and what the page itself does is held. */
const SLOWED = [[1, 16], [4, 50]];
/** The ms that the page's own work may take for a keystroke, on this machine: script, style and layout. */
const OWN = 16;
/** What is typed in which field: on each view the number on which most hangs. */
const TYPED = [["fill", "machine-tank", "12.5"], ["flow", "machine-speed", "2.5"], ["shift", "area-1-size", "4321"]];
/** kB by which the program's memory may grow meanwhile: one of the pages in which it is given out. */
const MEMORY = 64;
/** Keystrokes that are measured, of each field. */
const STROKES = 60;
/** How often the page is started, cold and warm. */
const STARTS = 7;

const stage = await openStage();
after(() => stage.close());

const sorted = (all) => [...all].sort((one, other) => one - other);
const at = (all, share) => sorted(all)[Math.min(all.length - 1, Math.floor(all.length * share))];
const ms = (value) => (value < 10 ? value.toFixed(1) : value.toFixed(0));

async function slow(page, rate) {
  const devtools = await page.context().newCDPSession(page);
  await devtools.send("Emulation.setCPUThrottlingRate", { rate });
}

/** ms from each keystroke's own time stamp until the frame is painted in which the page has answered it. */
async function strokes(page, name, text) {
  await field(page, name).fill(text);
  await field(page, name).focus();
  await page.keyboard.press("End");
  await page.evaluate((name) => {
    const painted = new MessageChannel();
    let stamp = 0;
    globalThis.measured = [];
    painted.port1.onmessage = () => measured.push(performance.now() - stamp);
    document.getElementById(name).addEventListener("input", (event) => {
      stamp = event.timeStamp;
      // A message that a frame sends comes when that frame is painted.
      requestAnimationFrame(() => painted.port2.postMessage(0));
    });
  }, name);
  const answered = async (count) => {
    await page.waitForFunction((count) => measured.length >= count, count);
    // Whoever types leaves the page a moment.
    await page.waitForTimeout(60);
  };
  const answers = new Set();
  for (let count = 0; count < STROKES; count += 2) {
    await page.keyboard.press(String(1 + (count / 2) % 9));
    await answered(count + 1);
    // The amount and its sentence come with the frame that is measured; what stands behind them follows once typing rests.
    answers.add(await page.locator(".answer .amount").innerText());
    await page.keyboard.press("Backspace");
    await answered(count + 2);
  }
  assert.ok(answers.size > 1, `${name}: the answer follows what is typed`);
  return page.evaluate(() => measured);
}

/** ms of script, style and layout so far. */
async function work(devtools) {
  const { metrics } = await devtools.send("Performance.getMetrics");
  const of = (name) => metrics.find((one) => one.name === name).value;
  return 1_000 * (of("ScriptDuration") + of("RecalcStyleDuration") + of("LayoutDuration"));
}

/** What the page holds once it rests: kB of the program's memory, which never shrinks, and nodes of the document. */
async function held(page, devtools) {
  await page.waitForTimeout(1_200);
  await devtools.send("HeapProfiler.collectGarbage");
  const { metrics } = await devtools.send("Performance.getMetrics");
  const kilobytes = await page.evaluate(async () => {
    // The module that runs already gives what it exports once more.
    const program = await (await import("/brimline.js")).default();
    return Object.values(program).find((one) => one instanceof WebAssembly.Memory).buffer.byteLength / 1024;
  });
  return { kilobytes, nodes: metrics.find(({ name }) => name === "Nodes").value };
}

/** How much more the page holds after as many keystrokes as were measured. */
async function grown(page, devtools) {
  const before = await held(page, devtools);
  for (let count = 0; count < STROKES; count += 1) await page.keyboard.press(count % 2 ? "Backspace" : "7");
  const after = await held(page, devtools);
  return { kilobytes: after.kilobytes - before.kilobytes, nodes: after.nodes - before.nodes };
}

/** Runs in each new document: notes when, from its navigation on, the frame was painted that has the first answer. */
function noteFirstAnswer() {
  const look = () => {
    if (!document.querySelector("[data-answer]")) return requestAnimationFrame(look);
    requestAnimationFrame(() => setTimeout(() => (globalThis.answered = performance.now())));
  };
  requestAnimationFrame(look);
}

/** What it noted, ms. */
const firstAnswer = async (page) => (await page.waitForFunction(() => globalThis.answered)).jsonValue();

const rows = [["ms", "slowed", "median", "p95", "budget of the p95", "samples"]];
const typed = [];
for (const [rate, budget] of SLOWED) {
  for (const [view, name, text] of TYPED) {
    const page = await stage.openPage({ width: 360, height: 740 });
    await go(page, view);
    await field(page, name).waitFor();
    await page.waitForTimeout(1_500);
    const devtools = await page.context().newCDPSession(page);
    await devtools.send("Performance.enable");
    await slow(page, rate);
    const before = await work(devtools);
    const all = await strokes(page, name, text);
    const own = ((await work(devtools)) - before) / all.length;
    typed.push({ view, rate, budget, own, p95: at(all, 0.95), more: rate === 1 && (await grown(page, devtools)) });
    rows.push([`keystroke on ${view}`, `${rate} times`, ms(at(all, 0.5)), ms(at(all, 0.95)), budget, all.length]);
    await page.context().close();
  }
}
for (const [rate] of SLOWED) {
  const [cold, warm] = [[], []];
  for (let start = 0; start < STARTS; start += 1) {
    const page = await stage.openPage({
      width: 360,
      height: 740,
      before: async (page) => {
        await page.addInitScript(noteFirstAnswer);
        await slow(page, rate);
      },
    });
    cold.push(await firstAnswer(page));
    await offlineReady(page);
    await page.reload();
    warm.push(await firstAnswer(page));
    await page.context().close();
  }
  for (const [how, all] of [["cold", cold], ["warm, from the device", warm]]) {
    rows.push([`first answer, ${how}`, `${rate} times`, ms(at(all, 0.5)), ms(at(all, 0.95)), "", all.length]);
    figure(`first answer ${how}, CPU slowed ${rate} times, median`, "", `${ms(at(all, 0.5))} ms`);
  }
}

const widths = [34, 10, 9, 9, 20, 9];
console.log(`${stage.browser.version()}, ${availableParallelism()} cores, the page from this machine's own server.`);
console.log(rows.map((row) => row.map((cell, index) => (index ? String(cell).padStart(widths[index]) : String(cell).padEnd(widths[0]))).join("")).join("\n"));

for (const { view, rate, budget, own, p95, more } of typed) {
  figure(`keystroke to painted answer on ${view}, CPU slowed ${rate} times, 95th percentile`, `${budget} ms`, `${ms(p95)} ms`);
  if (rate !== 1) continue;
  figure(`the page’s own work for a keystroke on ${view}, mean`, `${OWN} ms`, `${ms(own)} ms`);
  figure(`memory and nodes more after ${STROKES} keystrokes on ${view}`, `${MEMORY} kB, 0`, `${more.kilobytes} kB, ${more.nodes}`);
  test(`keystrokes on ${view} pile nothing up`, () => assert.ok(more.kilobytes <= MEMORY && more.nodes <= 0, JSON.stringify(more)));
  test(`the page works no longer than ${OWN} ms for a keystroke on ${view}`, () => assert.ok(own <= OWN, `${ms(own)} ms`));
}
