// The four jobs at the fill station, each walked as a person would. Volumes are exact by NIST SP 811,
// Appendix B: 1 gal = 128 fl oz.

import assert from "node:assert/strict";
import { test } from "node:test";
import {
  US_FLUID_OUNCE, US_GALLON, choose, countOf, field, figures, near, press, remarks, settled, stageOfThisFile, write,
} from "./walk.mjs";

const { open } = await stageOfThisFile();

const job = async (name, look) => {
  const page = await open(look);
  await press(page, `job-${name}`);
  return page;
};
const messageAt = (page, name) => page.locator(`#${name}-mistake`).innerText();
/** What to do, after what to wear, which comes first. */
const steps = async (page) => {
  const all = (await page.locator(".steps li").allInnerTexts()).map((text) => text.replace(/\s+/g, " ").trim());
  const wear = (text) => /^(Wear|Check the label)/.test(text);
  assert.ok(all.length === 0 || wear(all[0]), `${all[0]} is not what to wear`);
  return all.filter((text) => !wear(text));
};

test("Fill is open first, and the four jobs stand above it", async () => {
  const page = await open();
  assert.equal(await field(page, "job-fill").getAttribute("aria-pressed"), "true");
  assert.equal(await page.locator(".jobs button").count(), 4);
  near((await figures(page))["fill.total"], 10 * US_GALLON);
});

test("Top up: a quarter left as it was filled, made up to three quarters", async () => {
  const page = await job("top-up");
  await write(page, "station-left", "25");
  await press(page, "level-75");
  // Half a tank of 1 to 64 is missing: 640 / 65 fl oz.
  near((await figures(page))["station.concentrate"], (640 / 65) * US_FLUID_OUNCE);
  assert.match((await steps(page))[0], /^Add 4\.9\d? gal of water\.$/);
  assert.match((await steps(page))[1], /^Add 10 fl oz of concentrate/);
  await choose(page, "station-rest", "unknown");
  assert.match((await steps(page))[0], /^Drain all of it/);
  assert.ok((await remarks(page)).includes("remark-rest-unknown"), "and why");
  await write(page, "station-left", "130");
  assert.match(await messageAt(page, "station-left"), /most that fits is 100/);
  assert.equal(await countOf(page, "station."), 0);
  assert.equal(await field(page, "station-left").inputValue(), "130", "what was typed stays");
});

test("Put right: too much, forgotten, and the wrong product", async () => {
  const page = await job("rescue");
  await write(page, "station-left", "50");
  await write(page, "station-put-in", "12");
  // 12 fl oz are enough for 780 fl oz; 640 are there.
  near((await figures(page))["station.water"], 140 * US_FLUID_OUNCE);
  await choose(page, "station-mishap", "forgotten");
  assert.match((await steps(page))[0], /^Drain all of it/);
  await choose(page, "station-mishap", "wrong-product");
  assert.match(await page.locator(".troubles").innerText(), /Choose the product that went in/);
  await choose(page, "station-other", "vinegar");
  assert.match((await steps(page))[0], /^Drain all of it/);
  // A quat and a product of which nothing is known: the worse case.
  await choose(page, "product", "quat");
  await choose(page, "station-other", "hand-soap");
  assert.ok((await remarks(page)).includes("remark-meeting"));
  // What is in the tank is both: the cautions of both stand there.
  assert.equal(await page.locator(".caution").count(), 2);
});

test("Read strength: a strip, its doubt, and what it can decide", async () => {
  const page = await job("reading");
  await write(page, "product-label", "0.1 to 0.5 %");
  await write(page, "reading-strip", "200");
  await write(page, "product-active", "10");
  const read = await figures(page);
  near(read["station.strength"], 0.002);
  near(read["station.strength_low"], 0.001);
  near(read["station.strength_high"], 0.004);
  assert.ok((await remarks(page)).includes("remark-reading-inside"));
  await write(page, "product-label", "0.3 to 0.5 %");
  assert.ok((await remarks(page)).includes("remark-reading-undecided"), "a block reaches over the end");
  await choose(page, "reading-method", "refractometer");
  await write(page, "reading-brix", "1");
  await write(page, "reading-per-brix", "1");
  assert.ok((await remarks(page)).includes("remark-reading-strong"));
  await page.reload();
  await settled(page);
  assert.equal(await field(page, "reading-brix").inputValue(), "1", "it survives a reload");
});

test("40 fl oz in half a tank: draining stands first, also at a glance", async () => {
  const page = await job("rescue", { width: 360 });
  await write(page, "station-left", "50");
  await write(page, "station-put-in", "40");
  assert.match(await page.locator(".amount-title").innerText(), /drain/i);
  assert.match(await page.locator(".glance").innerText(), /2\.5\d/, "2.54 gal");
  assert.match((await steps(page))[0], /^Drain/);
});

test("a machine that meters gets no concentrate by hand", async () => {
  const page = await job("top-up");
  await choose(page, "measure", "own");
  assert.match(await page.locator(".troubles").innerText(), /plain water/);
  assert.equal(await countOf(page, "station.concentrate"), 0);
});

test("foam stops what is added, and not what is drained", async () => {
  const page = await job("rescue");
  await choose(page, "product", "quat");
  await choose(page, "station-mishap", "forgotten");
  assert.ok(await page.locator(".stop").isVisible());
  assert.match((await steps(page))[0], /^Drain all of it/);
  assert.equal((await steps(page)).length, 2, "what is added waits");
});

test("foam stops every job", async () => {
  const page = await job("top-up");
  await choose(page, "product", "hand-soap");
  assert.ok(await page.locator(".stop").isVisible());
  assert.equal(await countOf(page, "station."), 0);
});
