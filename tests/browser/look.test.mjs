// What every state of the page looks like to a checker of accessibility, in each light.

import assert from "node:assert/strict";
import { test } from "node:test";
import { axe } from "./harness.mjs";
import { STATES, lookAtAll } from "./states.mjs";
import { stageOfThisFile } from "./walk.mjs";

const { open } = await stageOfThisFile();

// Off by default: contrast of 7 to 1 (WCAG 2.2, 1.4.6) and the size of targets (2.5.8).
const RULES = { "color-contrast-enhanced": { enabled: true }, "target-size": { enabled: true } };

const check = async (page) =>
  (await axe(page, { rules: RULES })).map(({ id, targets }) => `${id}: ${targets.slice(0, 4).join(" | ")}`);

test("axe finds nothing in the light on a desk", async () => {
  assert.deepEqual(await lookAtAll(open, { width: 1280, height: 800 }, check), {});
});

test("axe finds nothing in the dark on a phone", async () => {
  // A tall one: what lies under the line at the foot of the screen is scrolled out from under it.
  assert.deepEqual(await lookAtAll(open, { width: 360, height: 6000, colorScheme: "dark" }, check), {});
});

test("axe finds nothing in forced colours", async () => {
  for (const colorScheme of ["light", "dark"]) {
    const look = { width: 1024, height: 768, colorScheme, forcedColors: "active" };
    assert.deepEqual(await lookAtAll(open, look, check, STATES.slice(0, 4)), {});
  }
});

test("every input has a name and a label, and no id stands twice", async () => {
  const found = await lookAtAll(open, {}, (page) => page.evaluate(() => {
    const faults = [];
    for (const input of document.querySelectorAll("input, select, textarea, button")) {
      const what = input.outerHTML.slice(0, 80);
      const labelled = input.labels?.length || input.getAttribute("aria-label") || input.textContent.trim();
      if (!labelled) faults.push(`no label: ${what}`);
      if (!input.name && !input.classList.contains("link")) faults.push(`no name: ${what}`);
      for (const id of (input.getAttribute("aria-describedby") ?? "").split(" ").filter(Boolean)) {
        if (!document.getElementById(id)) faults.push(`${id} is nowhere: ${what}`);
      }
    }
    const ids = [...document.querySelectorAll("[id]")].map(({ id }) => id);
    faults.push(...ids.filter((id, index) => ids.indexOf(id) !== index).map((id) => `twice: ${id}`));
    return faults;
  }));
  assert.deepEqual(found, {});
});

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
  assert.match(await row.innerText(), /Fits|Too/);
  assert.notEqual(await row.evaluate((one) => getComputedStyle(one).outlineStyle), "none");
});
