// Sizes: what fits on which screen, what a gloved thumb can hit, what can be read at arm's length.

import assert from "node:assert/strict";
import { test } from "node:test";
import { lookAtAll, unfoldAll } from "./states.mjs";
import { choose, field, settled, stageOfThisFile } from "./walk.mjs";

const { open } = await stageOfThisFile();

/** Holds every state at each of these widths against `fault`. */
const atWidths = (widths, fault) =>
  lookAtAll(open, {}, async (page) => {
    const faults = [];
    for (const width of widths) {
      await page.setViewportSize({ width, height: 800 });
      await settled(page);
      faults.push(...(await fault(page)).map((one) => `${width} px: ${one}`));
    }
    return faults;
  });

/** What reaches over the edge of the screen. A table in its own scrolling box may. */
const overflowing = (page) => page.evaluate(() => {
  const { clientWidth } = document.documentElement;
  const inside = (one) => one.closest(".scroll, .unseen, .skip") && !one.matches(".scroll");
  const over = [...document.querySelectorAll("body *")].filter((one) => {
    const { left, right, width } = one.getBoundingClientRect();
    return width && !inside(one) && (right > clientWidth + 0.5 || left < -0.5 || one.matches("li, p, dd") && one.scrollWidth > one.clientWidth + 1);
  });
  const { scrollWidth } = document.scrollingElement;
  const page = scrollWidth > clientWidth ? [`the page is ${scrollWidth} wide`] : [];
  return [...page, ...over.map((one) => `${one.tagName} ${one.textContent.slice(0, 30)}`)].slice(0, 4);
});

test("nothing reaches over the edge of a phone", async () => {
  assert.deepEqual(await atWidths([320, 360], overflowing), {});
});

test("nothing reaches over the edge with text twice as large", async () => {
  const found = await atWidths([640], async (page) => {
    await page.evaluate(() => document.documentElement.style.setProperty("font-size", "36px"));
    await settled(page);
    return overflowing(page);
  });
  assert.deepEqual(found, {});
});

test("whatever can be pressed is at least 48 px high and wide", async () => {
  const small = (page) => page.evaluate(() =>
    [...document.querySelectorAll("button, input, select, textarea, summary, a")]
      .filter((one) => !one.matches(".skip") && one.checkVisibility())
      .map((one) => [one, (one.matches("[type=checkbox]") ? one.closest("label") : one).getBoundingClientRect()])
      .filter(([, { width, height }]) => height < 47.9 || width < 47.9)
      .map(([one, { width, height }]) => `${one.name || one.textContent.slice(0, 20)} ${Math.round(width)} × ${Math.round(height)}`));
  assert.deepEqual(await atWidths([360, 1280], small), {});
});

/** Every text with its height on the screen, drawings scaled as they are. */
const texts = (page) => page.evaluate(() => {
  const found = [];
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  while (walker.nextNode()) {
    const one = walker.currentNode.parentElement;
    if (!walker.currentNode.data.trim() || !one.checkVisibility() || one.closest(".unseen, .skip, script, noscript")) continue;
    const scale = one instanceof SVGGraphicsElement ? one.getScreenCTM().d : 1;
    found.push({
      text: walker.currentNode.data.trim().slice(0, 40),
      size: parseFloat(getComputedStyle(one).fontSize) * scale,
      amount: one.closest(".amount-figure") !== null,
      title: one.closest(".stop :is(h2, h3)") !== null,
    });
  }
  return found;
});

test("no text is smaller than 16 px, in drawings neither", async () => {
  const small = async (page) =>
    (await texts(page)).filter(({ size }) => size < 15.95).map(({ text, size }) => `${size.toFixed(1)} px: ${text}`);
  assert.deepEqual(await atWidths([320, 360, 1280], small), {});
});

test("a drawing's numbers stay inside it and apart from each other", async () => {
  const clashing = (page) => page.evaluate(() => {
    const faults = [];
    for (const drawing of document.querySelectorAll("svg.drawing")) {
      const frame = drawing.getBoundingClientRect();
      const labels = [...drawing.querySelectorAll("text")].map((one) => [one.textContent, one.getBoundingClientRect()]);
      labels.forEach(([text, box], index) => {
        if (box.left < frame.left - 1 || box.right > frame.right + 1 || box.top < frame.top - 4) faults.push(`outside: ${text}`);
        for (const [other, its] of labels.slice(index + 1)) {
          const apart = box.right <= its.left || its.right <= box.left || box.bottom <= its.top + 4 || its.bottom <= box.top + 4;
          if (!apart) faults.push(`${text} on ${other}`);
        }
      });
    }
    return faults;
  });
  assert.deepEqual(await atWidths([320, 1280], clashing), {});
});

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

test("a phone keeps the amount in sight, and the field that is typed in above it", async () => {
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
    assert.ok(input.y >= 0 && input.y + input.height <= bar.y + 0.5, `${name} ends at ${input.y + input.height}, the line begins at ${bar.y}`);
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
