// After the page has loaded, using it asks nobody anything.

import assert from "node:assert/strict";
import { test } from "node:test";
import { offlineReady } from "./harness.mjs";
import { choose, go, press, stageOfThisFile, write } from "./walk.mjs";

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
  await page.goBack();
  await page.goForward();
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
