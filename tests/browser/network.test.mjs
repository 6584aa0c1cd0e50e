// After the page has loaded, using it asks nobody anything.

import assert from "node:assert/strict";
import { test } from "node:test";
import { offlineReady } from "./harness.mjs";
import { choose, go, press, stageOfThisFile, tick, write } from "./walk.mjs";

const { stage, open } = await stageOfThisFile();

/** A walk that uses all views, saves and goes back. */
async function useIt(page) {
  await write(page, "machine-tank", "12");
  await choose(page, "product", "hand-soap");
  await press(page, "stop-read");
  await page.locator("details.workings summary").click();
  await press(page, "answer-save");
  await go(page, "flow");
  await choose(page, "floor", "concrete");
  await go(page, "shift");
  await press(page, "area-add");
  await write(page, "area-6-size", "400");
  await go(page, "cautions");
  await press(page, "product-add");
  await write(page, "product-codes", "H314");
  await practise(page);
  await page.goBack();
  await page.goForward();
}

/** Plays with numbers, hands a session out, does a task and looks at the class. */
async function practise(page) {
  await go(page, "practice");
  await press(page, "practice-numbers");
  await press(page, "numbers-parts-128");
  await press(page, "practice-hand-out");
  await tick(page, "practice-topic-units", true);
  await write(page, "practice-count", "1");
  await press(page, "practice-make");
  await page.locator("[data-session]").waitFor();
  await press(page, "practice-class");
  await press(page, "practice-practise");
  await press(page, "practice-begin");
  await write(page, "practice-answer", "1");
  await press(page, "practice-check");
  await page.locator("[data-verdict]").waitFor();
  await page.locator('[name="practice-skip"], [name="practice-next"]').click();
  await write(page, "practice-initials", "QZ");
  await page.locator('[name="practice-code"]').waitFor();
}

test("no request leaves the device while the views are used", async () => {
  const page = await open({ serviceWorkers: "allow" });
  await offlineReady(page);
  const asked = [];
  page.context().on("request", (request) => asked.push(request));
  await useIt(page);
  const left = [];
  for (const request of asked.filter((one) => !one.url().startsWith("blob:"))) {
    // The browser asks for its tab's icon after each step; the page's own worker answers.
    const answer = await request.response();
    if (request.serviceWorker() || !answer?.fromServiceWorker()) left.push(request.url());
  }
  assert.deepEqual(left, []);
});

test("all views work without the server", async () => {
  const page = await open({ serviceWorkers: "allow" });
  await offlineReady(page);
  await stage.stopServer();
  try {
    await useIt(page);
    await go(page, "fill");
    await page.reload();
    await page.locator(".view.fill").waitFor();
  } finally {
    await stage.startServer();
  }
});
