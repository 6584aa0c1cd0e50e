// Sizes: the amount before all else, and in sight; lines that can be read.

import assert from "node:assert/strict";
import { test } from "node:test";
import { texts } from "./checks.mjs";
import { unfoldAll } from "./states.mjs";
import { choose, field, settled, stageOfThisFile } from "./walk.mjs";

const { open } = await stageOfThisFile();

test("the amount is by far the largest text on its view", async () => {
  for (const view of ["fill", "flow", "shift"]) {
    for (const width of [360, 1280]) {
      const all = await texts(await open({ view, width, height: 800 }));
      const amount = Math.max(...all.filter((one) => one.amount).map(({ size }) => size));
      const others = Math.max(...all.filter((one) => !one.amount).map(({ size }) => size));
      assert.ok(amount > 2 * others, `${view} at ${width}: ${amount} and ${others}`);
      // Four times the text of the page, 18 px, on a desk.
      if (width === 1280) assert.ok(amount >= 72, `${view}: ${amount}`);
    }
  }
});

test("where a warning stands in the amount's place, nothing is larger", async () => {
  const page = await open({ width: 360, height: 640 });
  await choose(page, "product", "hand-soap");
  const all = await texts(page);
  const title = Math.max(...all.filter((one) => one.title).map(({ size }) => size));
  assert.ok(all.every(({ size }) => size <= title), String(title));
});

test("a desk shows the question and the amount without scrolling", async () => {
  const page = await open({ width: 1280, height: 800 });
  for (const part of ["h1", '[name="floor"]', ".amount-figure", ".amount-sentence"]) {
    const { y, height } = await page.locator(part).first().boundingBox();
    assert.ok(y >= 0 && y + height <= 800, `${part} ends at ${y + height}`);
  }
});

test("a phone keeps the amount in sight, and the field that is typed in below it", async () => {
  const page = await open({ width: 360, height: 640 });
  const amount = await page.locator(".amount-figure").innerText();
  const names = ["machine", "machine-tank", "product", "product-label", "fill-level", "level-50", "measure", "floor"];
  for (const name of names) {
    await field(page, name).focus();
    await settled(page);
    const glance = page.locator(".glance");
    assert.ok((await glance.innerText()).includes(amount));
    const [bar, input] = [await glance.boundingBox(), await field(page, name).boundingBox()];
    assert.ok(bar.y >= 0 && bar.y + bar.height <= 640.5, `${name}: the line is at ${bar.y}`);
    const end = bar.y + bar.height;
    assert.ok(input.y >= end - 0.5 && input.y + input.height <= 640.5, `${name} begins at ${input.y}, the line ends at ${end}`);
  }
});

test("lines stay readable: none is much longer than 70 characters", async () => {
  const page = await open({ width: 1280, height: 800 });
  await unfoldAll(page);
  const long = await page.evaluate(() => {
    const lengths = (one) => {
      const lines = new Map();
      const range = document.createRange();
      const walker = document.createTreeWalker(one, NodeFilter.SHOW_TEXT);
      while (walker.nextNode()) {
        for (let at = 0; at < walker.currentNode.length; at += 1) {
          range.setStart(walker.currentNode, at);
          range.setEnd(walker.currentNode, at + 1);
          const top = Math.round(range.getBoundingClientRect().bottom / 8);
          lines.set(top, (lines.get(top) ?? 0) + 1);
        }
      }
      return Math.max(0, ...lines.values());
    };
    return [...document.querySelectorAll("p, li")].filter((one) => one.checkVisibility() && !one.querySelector("p, li, input"))
      .map((one) => [lengths(one), one.textContent.slice(0, 40)]).filter(([length]) => length > 75);
  });
  assert.deepEqual(long, []);
});
