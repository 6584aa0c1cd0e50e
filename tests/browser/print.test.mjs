// Paper: A4 and Letter, nothing cut, nothing under 12 points, nothing that can only be pressed.

import assert from "node:assert/strict";
import { test } from "node:test";
import { lookAtAll, unfoldAll } from "./states.mjs";
import { stageOfThisFile } from "./walk.mjs";

const { open } = await stageOfThisFile();

/** Width inside margins of 15 mm, CSS pixels of 1/96 in. */
const PAPERS = { A4: ((210 - 30) / 25.4) * 96, Letter: (8.5 - 30 / 25.4) * 96 };
/** 12 points in CSS pixels. */
const TWELVE_POINTS = 16;

/** What is cut, too small or too pale on a sheet of this width. */
const faultsOnPaper = (page, least) => page.evaluate((smallest) => {
  const width = document.documentElement.clientWidth;
  const faults = [];
  const say = (what, one) => faults.push(`${what}: ${one.getAttribute("name") ?? one.getAttribute("class") ?? one.tagName} "${(one.value ?? one.textContent).trim().slice(0, 40)}"`);
  const pen = document.createElement("canvas").getContext("2d");
  for (const one of document.querySelectorAll("#app *")) {
    if (!one.checkVisibility() || one.closest("svg") && one.tagName !== "svg") continue;
    const box = one.getBoundingClientRect();
    const style = getComputedStyle(one);
    if (box.width && box.right > width + 1) say("over the edge", one);
    if (style.overflowX !== "visible" && one.scrollWidth > one.clientWidth + 1) say("cut", one);
    if (one.matches("select")) {
      pen.font = `${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
      const text = pen.measureText(one.selectedOptions[0]?.textContent ?? "").width;
      if (text > one.clientWidth - parseFloat(style.paddingLeft) - parseFloat(style.paddingRight) + 1) say("cut", one);
    }
  }
  const walker = document.createTreeWalker(document.querySelector("#app"), NodeFilter.SHOW_TEXT);
  while (walker.nextNode()) {
    const one = walker.currentNode.parentElement;
    if (!walker.currentNode.data.trim() || !one.checkVisibility() || one.closest("option")) continue;
    const scale = one instanceof SVGGraphicsElement ? one.getScreenCTM().d : 1;
    const style = getComputedStyle(one);
    if (parseFloat(style.fontSize) * scale < smallest - 0.05) say(`${style.fontSize} × ${scale.toFixed(2)}`, one);
    if (style.color !== "rgb(0, 0, 0)") say(style.color, one);
  }
  return [...new Set(faults)].slice(0, 8);
}, least);

for (const [paper, colorScheme] of [["A4", "light"], ["Letter", "dark"]]) {
  test(`${paper} from a ${colorScheme} page: nothing is cut, pale or under 12 points`, async () => {
    const look = { width: Math.floor(PAPERS[paper]), height: 1000, colorScheme };
    const found = await lookAtAll(open, look, async (page) => {
      await page.emulateMedia({ media: "print" });
      return faultsOnPaper(page, TWELVE_POINTS);
    });
    assert.deepEqual(found, {});
  });
}

test("every view prints on both papers", async () => {
  for (const view of ["fill", "flow", "shift", "cautions"]) {
    const page = await open({ view });
    await unfoldAll(page);
    for (const format of Object.keys(PAPERS)) {
      const sheets = (await page.pdf({ format })).toString("latin1").match(/\/Type \/Page\b/g).length;
      console.log(`${view} on ${format}: ${sheets} sheets`);
      assert.ok(sheets >= 1 && sheets <= 8, `${view} on ${format}: ${sheets} sheets`);
    }
  }
});

test("what can only be pressed stays off the paper, amount and cautions are on it", async () => {
  for (const view of ["fill", "flow", "shift"]) {
    const page = await open({ view });
    await page.emulateMedia({ media: "print" });
    const pressed = await page.locator("button:visible, nav:visible, .glance:visible, summary:visible, [type=file]:visible")
      .evaluateAll((all) => all.map((one) => one.textContent || one.name));
    assert.deepEqual(pressed.filter((text) => !text.startsWith("How this was worked out")), [], view);
    for (const part of [".amount-figure", ".caution", "h1"]) assert.ok(await page.locator(part).first().isVisible(), part);
  }
});

test("headings repeat and rows stay whole on the next sheet", async () => {
  const page = await open({ view: "shift" });
  await page.emulateMedia({ media: "print" });
  const style = (part, name) => page.locator(part).first().evaluate((one, key) => getComputedStyle(one)[key], name);
  assert.equal(await style("thead", "display"), "table-header-group");
  assert.equal(await style("tbody tr", "breakInside"), "avoid");
  assert.equal(await style(".amount", "breakInside"), "avoid");
});

test("every sheet says when and with which version it was made", async () => {
  const page = await open();
  await page.emulateMedia({ media: "print" });
  const text = await page.locator("body").innerText();
  assert.match(text, /20\d\d/, "a date");
  assert.match(text, /[Vv]ersion/, "a version");
});
