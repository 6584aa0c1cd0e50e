// Foam in a vacuum machine: no amount anywhere in the document before the warning was read.

import assert from "node:assert/strict";
import { test } from "node:test";
import { choose, countOf, field, go, press, remarks, settled, stageOfThisFile, tick } from "./walk.mjs";

const { open } = await stageOfThisFile();

const REFUSE = "remark-foam-refuse";
const TEST_FIRST = "remark-foam-test-first";

/** The warning stands where the amount would, and no amount is in the document. */
async function stopped(page, code, start = "fill.") {
  assert.equal(await countOf(page, start), 0, "no figure");
  assert.equal(await page.locator(".amount, .drawing, details.workings, [role=status].unseen").count(), 0);
  assert.equal(await field(page, "answer-save").count(), 0, "nothing to save");
  const stop = page.locator(".answer .stop[role=alert]");
  assert.ok(await stop.locator(`[data-remark="${code}"]`).isVisible(), code);
  assert.match(await stop.innerText(), /vacuum motor/);
  assert.equal(await page.locator(".glance span").last().textContent(), "Read the warning");
}

/** The amount is there, and the warning still beside it. */
async function read(page, code, start = "fill.") {
  assert.ok((await countOf(page, start)) > 3, "figures");
  assert.ok(await page.locator(".amount").isVisible());
  assert.ok(await page.locator(`.remark[data-remark="${code}"]`).isVisible(), "the warning stays");
  assert.equal(await field(page, "stop-read").count(), 0);
}

for (const [product, code] of [["hand-soap", REFUSE], ["quat", TEST_FIRST]]) {
  test(`${product} shows no amount before its warning was read, and both after`, async () => {
    const page = await open();
    await choose(page, "product", product);
    await stopped(page, code);
    await press(page, "stop-read");
    await read(page, code);
  });
}

test("an unknown product asks for the shake test", async () => {
  const page = await open();
  await choose(page, "product", "quat");
  assert.match(await page.locator(".stop").innerText(), /Shake test/);
  await press(page, "product-add");
  assert.equal(await countOf(page, "fill."), 0, "a product nobody described gives no amount");
  await page.locator('[name="product-label"]').fill("1:64");
  await settled(page);
  await stopped(page, TEST_FIRST);
});

test("another product, machine or foam class asks again", async () => {
  const page = await open();
  await choose(page, "product", "hand-soap");
  await press(page, "stop-read");
  await read(page, REFUSE);
  await choose(page, "product", "quat");
  await stopped(page, TEST_FIRST);
  await press(page, "stop-read");
  await choose(page, "machine", "ride-on");
  await stopped(page, TEST_FIRST);
  await press(page, "stop-read");
  await choose(page, "product-foam", "foaming");
  await stopped(page, REFUSE);
  await choose(page, "product", "neutral");
  assert.ok((await countOf(page, "fill.")) > 0);
  await choose(page, "product", "hand-soap");
  await stopped(page, REFUSE);
});

test("the demo site, and a step back to before it, ask again", async () => {
  const page = await open();
  await choose(page, "product", "hand-soap");
  await press(page, "stop-read");
  await press(page, "demo");
  await press(page, "undo");
  await stopped(page, REFUSE);
});

test("a machine without a vacuum has no foam warning", async () => {
  const page = await open();
  await choose(page, "product", "hand-soap");
  await tick(page, "machine-vacuum", false);
  assert.ok((await countOf(page, "fill.")) > 0);
  assert.deepEqual((await remarks(page)).filter((code) => code.startsWith("remark-foam")), []);
  await tick(page, "machine-vacuum", true);
  await stopped(page, REFUSE);
});

test("Shift shows no amount before the warning was read either", async () => {
  const page = await open({ view: "shift" });
  for (const [product, code] of [["hand-soap", REFUSE], ["quat", TEST_FIRST]]) {
    await choose(page, "product", product);
    await stopped(page, code, "shift.");
    assert.equal(await page.locator(".answer table").count(), 0, "no table of fills");
    await press(page, "stop-read");
    await read(page, code, "shift.");
  }
});

test("Cautions shows the warning without a button: nothing stands behind it", async () => {
  const page = await open();
  await choose(page, "product", "hand-soap");
  await go(page, "cautions");
  assert.ok((await remarks(page)).includes(REFUSE));
  assert.equal(await field(page, "stop-read").count(), 0);
});

test("a new visit asks again, since another person may stand there", async () => {
  const page = await open();
  await choose(page, "product", "hand-soap");
  await press(page, "stop-read");
  await page.reload();
  await page.locator(".view.fill").waitFor();
  await settled(page);
  await stopped(page, REFUSE);
});
