// Movement and signs: what moves, and what is told without colour.

import assert from "node:assert/strict";
import { test } from "node:test";
import { stageOfThisFile } from "./walk.mjs";

const { open } = await stageOfThisFile();

test("only the liquid moves, and not when less motion is asked for", async () => {
  const moving = (page) => page.evaluate(() =>
    [...document.querySelectorAll("*")].filter((one) => {
      const { transitionDuration, animationName } = getComputedStyle(one);
      return transitionDuration !== "0s" || animationName !== "none";
    }).map((one) => one.getAttribute("class")));
  const page = await open();
  const found = await moving(page);
  assert.ok(found.length > 0);
  assert.ok(found.every((name) => name.startsWith("liquid")), String(found));
  assert.deepEqual(await moving(await open({ reducedMotion: "reduce" })), []);
});

test("the page is told apart without colour: a chosen setting, a stop and a mistake have words", async () => {
  const page = await open({ view: "flow", forcedColors: "active" });
  const row = page.locator("tr.chosen");
  assert.equal(await row.count(), 1);
  assert.match(await row.innerText(), /Right|Too/);
  assert.notEqual(await row.evaluate((one) => getComputedStyle(one).outlineStyle), "none");
});
