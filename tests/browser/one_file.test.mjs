// The page in one file, copied to a folder of its own and opened there without a server, in two browsers.

import assert from "node:assert/strict";
import { copyFileSync, mkdtempSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { before, test } from "node:test";
import { pathToFileURL } from "node:url";
import puppeteer from "puppeteer-core";
import { figure } from "./figures.mjs";
import { launch, required } from "./chromium.mjs";

const FILE = required("BRIMLINE_ONE_FILE");
const stick = join(mkdtempSync(join(tmpdir(), "stick-")), "brimline.html");
const ADDRESS = pathToFileURL(stick).href;
/** A tank of 12 gal at 2 fl oz to the gallon, in each browser: typed, worked out, kept over a reload. */
const TANK = "12";

before(() => copyFileSync(FILE, stick));

/** One way to drive both browsers: only what the libraries share. */
async function walk(page, reload) {
  await page.waitForSelector("main .view");
  const shown = () => page.$eval("[data-answer='fill.rounded']", (one) => one.textContent);
  const first = await shown();
  await page.$eval(
    "#machine-tank",
    (field, text) => {
      field.value = text;
      field.dispatchEvent(new Event("input", { bubbles: true }));
    },
    TANK,
  );
  // The two libraries' own ways to wait for a condition take their arguments in another order.
  for (let tries = 0; tries < 100 && (await shown()) === first; tries += 1) await new Promise((go) => setTimeout(go, 50));
  const typed = await shown();
  for (const [view, selector] of [["flow", "[data-answer='flow.setting']"], ["shift", "[data-answer='shift.solution']"], ["cautions", "[name='tank-before']"]]) {
    await page.evaluate((hash) => (location.hash = hash), view);
    await page.waitForSelector(selector);
  }
  await page.evaluate(() => (location.hash = "site"));
  await page.waitForSelector("[name='site-library']");
  const says = await page.$eval("[data-part='from-file']", (one) => one.textContent);
  await reload();
  await page.evaluate(() => (location.hash = "fill"));
  await page.waitForSelector("[data-answer='fill.rounded']");
  return { first, typed, kept: await shown(), says };
}

function told({ first, typed, kept, says }) {
  assert.notEqual(typed, first);
  assert.equal(kept, typed);
  assert.match(says, /from a file/);
}

test("opens from a stick in Chromium, with every view, and keeps what was typed", async () => {
  const browser = await launch();
  try {
    const page = await browser.newPage();
    const errors = [];
    page.on("console", (message) => message.type() === "error" && errors.push(message.text()));
    page.on("pageerror", (error) => errors.push(String(error)));
    const asked = [];
    page.on("request", (request) => /^(http|ws)/.test(request.url()) && asked.push(request.url()));
    await page.goto(ADDRESS);
    told(await walk(page, () => page.reload()));
    assert.deepEqual([errors, asked], [[], []]);
  } finally {
    await browser.close();
  }
});

test("opens from a stick in Firefox, with every view, and keeps what was typed", async () => {
  const browser = await puppeteer.launch({ browser: "firefox", executablePath: required("BRIMLINE_FIREFOX") });
  try {
    const page = await browser.newPage();
    const errors = [];
    page.on("console", (message) => message.type() === "error" && errors.push(message.text()));
    page.on("pageerror", (error) => errors.push(String(error)));
    await page.goto(ADDRESS);
    told(await walk(page, () => page.reload()));
    assert.deepEqual(errors, []);
  } finally {
    await browser.close();
  }
});

test("has every language in it", async () => {
  const browser = await launch();
  try {
    const page = await browser.newPage();
    await page.goto(ADDRESS);
    await page.waitForSelector("main .view");
    for (const language of await page.$$eval("#language option", (all) => all.map(({ value }) => value).reverse())) {
      await page.locator("#language").selectOption(language);
      await page.waitForFunction((language) => document.documentElement.lang === language, language);
    }
    await page.locator("#language").selectOption("es");
    await page.waitForFunction(() => document.querySelector("h1").textContent === "¿Cuánto concentrado?");
    await page.reload();
    await page.waitForFunction(() => document.querySelector("h1")?.textContent === "¿Cuánto concentrado?");
  } finally {
    await browser.close();
  }
});

test("is a file that a stick has room for", () => {
  const { size } = statSync(FILE);
  console.log(`brimline.html: ${(size / 1e6).toFixed(2)} MB`);
  figure("the page in one file", "3 MB", `${(size / 1e6).toFixed(2)} MB`);
  assert.ok(size < 3e6);
});
