// Another language: chosen, kept, loaded only then, without a network, and with what does not come.

import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { appendFileSync, cpSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { test } from "node:test";
import { DESK, PAGE, ROOT, offlineReady, openStage, running } from "./harness.mjs";
import { overflowing, tooSmallToPress, tooSmallToRead, unspoken } from "./checks.mjs";
import { recordMany, toLog } from "./log_walk.mjs";
import { readPdf } from "./pdf.mjs";
import { unfoldAll } from "./states.mjs";
import { choose, figures, go, near, plain, press, settled, stageOfThisFile, US_GALLON, write } from "./walk.mjs";

const { stage, open } = await stageOfThisFile();
const FILE = "**/words-es-*.ftl";
const HEADING = {
  en: "How much concentrate?", es: "¿Cuánto concentrado?", fr: "Combien de concentré\u00a0?", ht: "Konbyen konsantre?",
  pl: "Ile koncentratu?", pt: "Quanto concentrado?",
};
/** Beside Spanish. */
const OTHERS = ["fr", "ht", "pl", "pt"];
/** Creole has no official wording of hazard and precautionary statements. */
const IN_PART = ["ht"];

const spoken = (page, language) => page.waitForFunction(
  ([language, heading]) => document.documentElement.lang === language && document.querySelector("h1")?.textContent === heading,
  [language, HEADING[language]],
);
const asked = (stage) => stage.requests.filter(({ url }) => url.endsWith(".ftl"));
const kept = (page) => page.evaluate(async () => {
  const keys = await Promise.all((await caches.keys()).map(async (name) => (await caches.open(name)).keys()));
  return keys.flat().map(({ url }) => url).filter((url) => url.endsWith(".ftl"));
});

/** Waits until the words of a language are kept. A browser lists what it is still writing, too. */
const wordsKept = (page) => page.waitForFunction(async () => {
  const keys = await Promise.all((await caches.keys()).map(async (name) => (await caches.open(name)).keys()));
  const words = keys.flat().find(({ url }) => url.endsWith(".ftl"));
  return words && (await (await caches.match(words.url))?.text())?.length > 0;
});

/** Opens a stage of its own, whose console may complain of what is kept from it. */
async function alone(use, options) {
  const stage = await openStage(options);
  try {
    await use(stage);
  } finally {
    await stage.close();
  }
}

test("nobody who reads English fetches or keeps another language", () => alone(async (stage) => {
  const page = await stage.openPage();
  await spoken(page, "en");
  await offlineReady(page);
  assert.deepEqual(asked(stage), []);
  assert.deepEqual(await kept(page), []);
  assert.equal(await page.locator("[data-part=unchecked]").count(), 0);
}));

test("Spanish is chosen, said in itself, and kept with what was typed", async () => {
  const page = await open();
  await write(page, "machine-tank", "12.5");
  const before = await figures(page);
  await choose(page, "language", "es");
  await spoken(page, "es");
  assert.equal(asked(stage).length, 1);
  assert.deepEqual(await page.locator("#language option").allTextContents(), ["English", "Español", "Français", "Kreyòl", "Polski", "Português"]);
  const face = await page.locator("[data-part=unchecked]").textContent();
  assert.match(face, /habla nativa.*No native reader/);
  assert.equal(await page.locator("#machine-tank").inputValue(), "12.5");
  assert.deepEqual(await figures(page), before, "figures are plain in every language");
  await page.reload();
  await running(page);
  await spoken(page, "es");
  assert.equal(await page.locator("#machine-tank").inputValue(), "12.5");
  await choose(page, "language", "en");
  await spoken(page, "en");
  await page.reload();
  await running(page);
  await spoken(page, "en");
});

test("the language of the browser comes first, where there is one", async () => {
  await spoken(await open({ locale: "es-419" }), "es");
  await spoken(await open({ locale: "de-AT" }), "en");
  const page = await open({ locale: "es-US" });
  await spoken(page, "es");
  await choose(page, "language", "en");
  await spoken(page, "en");
  await page.reload();
  await running(page);
  await spoken(page, "en");
});

test("a decimal comma and a decimal point are read alike", async () => {
  const page = await open({ locale: "es-US" });
  await spoken(page, "es");
  for (const typed of ["12,5", "12.5", "12 1/2"]) {
    await write(page, "machine-tank", "1");
    await write(page, "machine-tank", typed);
    near((await figures(page))["fill.total"], 12.5 * US_GALLON, typed);
  }
});

test("the decimal mark is the one that the browser's own tables have", async () => {
  const page = await open();
  for (const [language, tag] of [["es", "es-US"], ["fr", "fr"], ["pl", "pl"], ["pt", "pt-BR"]]) {
    await choose(page, "language", language);
    await spoken(page, language);
    const [theirs, ours] = await page.evaluate((tag) => [
      new Intl.NumberFormat(tag).formatToParts(1.5)[1].value,
      window.brimlineLanguage.text.match(/^number-decimal = (.)$/m)[1],
    ], tag);
    assert.equal(ours, theirs, language);
    await choose(page, "fill-level-unit", "percent");
    await write(page, "machine-tank", "12,5");
    assert.ok((await page.locator(".view.fill").innerText()).includes(`12${theirs}5`), `${language} writes it with ${theirs}`);
  }
});

test("a number with two readings is asked for, and a press writes the one that is meant", async () => {
  const page = await open({ width: 360, height: 800 });
  for (const [language, mark] of [["fr", ","], ["pl", ","], ["pt", ","], ["es", "."], ["ht", "."]]) {
    await choose(page, "language", language);
    await spoken(page, language);
    for (const typed of ["1.200", "1,200"]) {
      await write(page, "machine-tank", typed);
      assert.ok(!("fill.total" in (await figures(page))), `${language}: nothing is worked out of ${typed}`);
      const told = plain(await page.locator("#machine-tank-mistake").innerText());
      assert.ok(told.includes(typed) && told.includes(`1${mark}2 `) && told.includes("1 200"), told);
      const readings = page.locator("[name=machine-tank-reading]");
      assert.deepEqual((await readings.allInnerTexts()).map(plain), [`1${mark}2`, "1 200"]);
      assert.deepEqual([await tooSmallToPress(page), await tooSmallToRead(page), await overflowing(page)], [[], [], []]);
      await readings.nth(0).click();
      await settled(page);
      assert.equal(await page.evaluate(() => document.activeElement.id), "machine-tank");
      near((await figures(page))["fill.total"], 1.2 * US_GALLON, `${language} ${typed}`);
      assert.equal(await readings.count(), 0);
    }
    await write(page, "machine-tank", "1.200");
    await page.locator("[name=machine-tank-reading]").nth(1).press("Enter");
    await settled(page);
    assert.equal(plain(await page.locator("#machine-tank").inputValue()), "1 200");
    await page.locator("#machine-tank").blur();
    assert.ok(!(await page.locator("#machine-tank-mistake").innerText()).includes("1.200"), "it is read, and more than a tank can be");
  }
  // English has one reading of each.
  await choose(page, "language", "en");
  await spoken(page, "en");
  await write(page, "machine-tank", "1.200");
  near((await figures(page))["fill.total"], 1.2 * US_GALLON);
});

test("what a label can mean is said in French, and a press writes a label that is read without a question", async () => {
  const page = await open({ width: 360, height: 800 });
  await choose(page, "language", "fr");
  await spoken(page, "fr");
  // Its words come with the later chunk.
  await page.locator('[name="record-fill"]').waitFor();
  const [label, readings] = [page.locator("#product-label"), page.locator("[name=label-reading]")];
  const offered = async (text) => {
    await write(page, "product-label", text);
    return (await readings.allInnerTexts()).map(plain);
  };
  // The convention of the trade is read, and the other one offered: each dose is the share that its words say.
  const total = (await figures(page))["fill.total"];
  for (const [typed, said, written, asRead, asOffered] of [
    ["2.5 oz/gal", "2,5 US fl oz par US gal de solution finie", "2.5 US fl oz per US gal made up", 2.5 / 130.5, 2.5 / 128],
    ["1 in 64", "1 + 64 d’eau", "1+64", 1 / 64, 1 / 65],
  ]) {
    assert.deepEqual(await offered(typed), [said]);
    near((await figures(page))["fill.dose"] / total, asRead, typed);
    assert.deepEqual([await tooSmallToPress(page), await tooSmallToRead(page), await overflowing(page)], [[], [], []]);
    await readings.first().click();
    await settled(page);
    assert.equal(await label.inputValue(), written);
    assert.equal(await page.locator("#product-label-mistake").count(), 0);
    near((await figures(page))["fill.dose"] / total, asOffered, written);
  }
  // What is refused is asked about: neither gallon is guessed.
  await choose(page, "units", "metric");
  for (const [at, said, written] of [
    [0, "4 à 8 US fl oz par US gal", "4 to 8 US fl oz per US gal"],
    [1, "4 à 8 imp fl oz par imp gal", "4 to 8 imp fl oz per imp gal"],
  ]) {
    const both = await offered("4 to 8 oz/gal");
    assert.deepEqual([both.length, both[at]], [2, said]);
    assert.ok(!("fill.dose" in (await figures(page))), "nothing is worked out of it");
    await readings.nth(at).press("Enter");
    await settled(page);
    assert.equal(await label.inputValue(), written);
    assert.equal(await page.locator("#product-label-mistake").count(), 0);
    assert.ok((await figures(page))["fill.dose"] > 0);
  }
});

// Decimal marks: Unicode CLDR 48 (es as es-419, pt as pt-BR); it has none for ht.
test("units made of words and formulas are in the language, on the page and on paper", async () => {
  const page = await open({ view: "shift" });
  await write(page, "machine-recovery", "5");
  for (const [language, recovery, labour, often, price, wage] of [
    ["en", "T = 0.9 × R / d", "L = E − alone", "a week", "per 1000 ft²", "per h"],
    ["es", "T = 0.9 × R / d", "L = E − sola", "a la semana", "por 1000 ft²", "por h"],
    ["fr", "T = 0,9 × R / d", "L = E − seule", "par semaine", "par 1000 ft²", "par h"],
    ["ht", "T = 0.9 × R / d", "L = E − poukont", "pa semèn", "pa 1000 ft²", "pa h"],
    ["pl", "T = 0,9 × R / d", "L = E − sama", "na tydzień", "za 1000 ft²", "za h"],
    ["pt", "T = 0,9 × R / d", "L = E − sozinha", "por semana", "por 1000 ft²", "por h"],
  ]) {
    await go(page, "fill");
    await choose(page, "language", language);
    await spoken(page, language);
    await go(page, "shift");
    await unfoldAll(page);
    await settled(page);
    const formulas = (await page.locator(".workings .formula").allTextContents()).map(plain);
    assert.ok(formulas.includes(recovery) && formulas.includes(labour), `${language}: ${formulas.join("; ")}`);
    const alone = labour.split(" − ")[1];
    assert.ok((await page.locator(".workings li").allTextContents()).some((text) => plain(text).includes(`; ${alone} = `)), `${language}: ${alone} among what is given`);
    assert.equal(await page.locator("[name=area-1-frequency-unit] option[value=per_week]").textContent(), often);
    assert.equal(await page.locator(".entry:has(#cost-wage) .unit").textContent(), wage);
    assert.ok(plain(await page.locator(".view.shift").textContent()).includes(` ${price}`), `${language}: ${price}`);
    assert.deepEqual([await overflowing(page)], [[]]);
    await page.emulateMedia({ media: "print" });
    await settled(page);
    assert.ok(plain(await page.locator("body").innerText()).includes(price), `${language} on paper`);
    await page.emulateMedia({ media: "screen" });
  }
});

// As Unicode CLDR 48 has medium dates; it has none for ht, where ISO 8601 stays.
test("days are written as the language writes them, on the page and on paper; files keep ISO 8601", async () => {
  for (const [locale, language, day] of [
    ["en-US", "en", "Nov 7, 2026"], ["en-GB", "en", "7 Nov 2026"], ["es-US", "es", "7 nov 2026"], ["fr-CA", "fr", "7 nov. 2026"],
    ["pl-PL", "pl", "7 lis 2026"], ["pt-BR", "pt", "7 de nov. de 2026"], ["de-DE", "ht", "2026-11-07"],
  ]) {
    const page = await open({ locale, timezoneId: "America/Los_Angeles", before: (page) => page.clock.setFixedTime(new Date("2026-11-07T23:30:00-08:00")) });
    await page.locator('[name="record-fill"]').waitFor();
    if (language === "ht") await choose(page, "language", language);
    await spoken(page, language);
    assert.ok(plain(await page.locator(".sheet-line").textContent()).includes(` ${day} `), `${locale}: ${await page.locator(".sheet-line").textContent()}`);
    await recordMany(page, 1);
    await toLog(page, "fills");
    assert.match(plain(await page.locator("tr[data-fill] th").first().innerText()), new RegExp(`^${day.replaceAll(".", "\\.")}, 23:30`));
    await toLog(page, "keep");
    for (const button of ["log-save", "log-csv"]) {
      const saving = page.waitForEvent("download");
      await press(page, button);
      assert.match(readFileSync(await (await saving).path(), "utf8"), /2026-11-07T23:30:00-08:00/, `${locale} ${button}`);
    }
    await page.context().close();
  }
});

test("what was loaded works without the server, after an update too", async () => {
  const folder = mkdtempSync(join(tmpdir(), "brimline-page-"));
  try {
    cpSync(PAGE, folder, { recursive: true });
    await alone(async (stage) => {
      const page = await stage.openPage();
      await offlineReady(page);
      await choose(page, "language", "es");
      await spoken(page, "es");
      await wordsKept(page);
      // By the next visit it is written.
      await page.reload();
      await running(page);
      await spoken(page, "es");
      await wordsKept(page);
      await stage.stopServer();
      await page.reload();
      await running(page);
      await spoken(page, "es");

      await stage.startServer();
      appendFileSync(join(folder, "index.html"), '<i id="new-version"></i>');
      const sealed = spawnSync(DESK, ["precache"], { cwd: ROOT, env: { ...process.env, TRUNK_STAGING_DIR: folder } });
      assert.equal(sealed.status, 0, String(sealed.stderr));
      await page.reload();
      await running(page);
      await page.waitForFunction(() => window.brimlineUpdate === true);
      const loaded = page.waitForEvent("load");
      await page.locator("[name=update]").click();
      await loaded;
      await page.locator("#new-version").waitFor({ state: "attached" });
      await stage.stopServer();
      await page.reload();
      await running(page);
      await spoken(page, "es");
      assert.equal((await kept(page)).length, 1);
    }, { folder });
  } finally {
    rmSync(folder, { recursive: true });
  }
});

test("while a language is on its way the page stays in the former one", async () => {
  let go;
  const page = await open({ before: (page) => page.route(FILE, (route) => new Promise((done) => (go = () => done(route.continue())))) });
  await choose(page, "language", "es");
  await page.getByText("Español is loading. The page stays in English").waitFor();
  await write(page, "machine-tank", "11");
  await spoken(page, "en");
  go();
  await spoken(page, "es");
  assert.equal(await page.locator("#machine-tank").inputValue(), "11");
});

test("a language that does not come, or not whole, is told; what was typed stays", () => alone(async (stage) => {
  for (const broken of [
    (route) => route.abort(),
    (route) => route.fulfill({ status: 404, body: "" }),
    (route) => route.fulfill({ status: 200, body: "yes = a page that asks for a password" }),
  ]) {
    let wrong = true;
    const page = await stage.openPage({
      serviceWorkers: "block",
      before: (page) => page.route(FILE, (route) => (wrong ? broken(route) : route.continue())),
    });
    await write(page, "machine-tank", "11");
    await choose(page, "language", "es");
    await page.getByText("Español could not be loaded").waitFor();
    await spoken(page, "en");
    assert.equal(await page.locator("#language").inputValue(), "en");
    assert.equal(await page.locator("#machine-tank").inputValue(), "11");
    wrong = false;
    await press(page, "language-again");
    await spoken(page, "es");
    assert.equal(await page.locator("#machine-tank").inputValue(), "11");
    await page.context().close();
  }
}));

test("a start that waits for a language in vain goes on in English", async () => {
  const page = await open({ locale: "es-US", before: (page) => page.route(FILE, () => {}) });
  await spoken(page, "en");
  assert.equal(await page.locator("#language").inputValue(), "es");
});

test("an answer saved in Spanish is the one saved in English, and opens there", async () => {
  const saved = async (page) => {
    await write(page, "machine-tank", "12.5");
    await page.locator("[name=answer-save]:not([disabled])").waitFor();
    const download = page.waitForEvent("download");
    await press(page, "answer-save");
    return readFileSync(await (await download).path(), "utf8");
  };
  const spanish = await open({ locale: "es-US" });
  await spoken(spanish, "es");
  const english = await open();
  const [one, other] = [await saved(spanish), await saved(english)];
  assert.equal(one, other);
  await write(english, "machine-tank", "9");
  await english.locator("#open-saved").setInputFiles({ name: "answer.json", mimeType: "application/json", buffer: Buffer.from(one) });
  await english.getByText("Its answer was worked out again and stands").waitFor();
  assert.equal(await english.locator("#machine-tank").inputValue(), "12.5");
});

test("of a language that is translated in part the rest is said in English, and its face says so", async () => {
  const page = await open();
  for (const language of IN_PART) {
    await choose(page, "language", language);
    await spoken(page, language);
    const face = await page.locator("[data-part=unchecked]").textContent();
    assert.match(face, /angl.*No native reader.*the rest is in English/);
    await go(page, "cautions");
    await write(page, "product-codes", "H314");
    assert.match(await page.locator(".caution.whole").textContent(), /Causes severe skin burns and eye damage/);
    await go(page, "fill");
  }
});

test("every view speaks every language", async () => {
  const page = await open();
  for (const language of OTHERS) {
    await choose(page, "language", language);
    await spoken(page, language);
    for (const view of ["flow", "shift", "cautions", "log", "site", "practice", "fill"]) {
      await go(page, view);
      assert.deepEqual(await unspoken(page), [], `${view}, ${language}`);
    }
  }
});

test("every language is kept for offline use once it was chosen, and no other", () => alone(async (stage) => {
  const page = await stage.openPage();
  await offlineReady(page);
  for (const [index, language] of [...OTHERS, "es"].entries()) {
    await choose(page, "language", language);
    await spoken(page, language);
    await page.waitForFunction(async (count) => (await Promise.all((await caches.keys()).map(async (name) => (await caches.open(name)).keys()))).flat().filter(({ url }) => url.endsWith(".ftl")).length === count, index + 1);
  }
  await stage.stopServer();
  for (const language of OTHERS) {
    await choose(page, "language", language);
    await spoken(page, language);
    await page.reload();
    await running(page);
    await spoken(page, language);
  }
}));

/** The demo with a standard in force in every machine, as a wall chart in Spanish. */
const chart = (product, floor, dilution) => {
  const demo = JSON.parse(readFileSync(join(ROOT, "src/site/demo.json"), "utf8"));
  const [, schema] = readFileSync(join(ROOT, "src/form/typed.rs"), "utf8").match(/SCHEMA: u32 = (\d+)/);
  const standard = { id: "s", name: "Daily", floor, product, dilution, version: 1, standing: "in_force", effective: "2026-02-01", ppe: "Shoes with a grip", rinse: true };
  const site = { ...demo, standards: [standard], address: "https://floors.alder-county.example/" };
  return JSON.stringify({ schema: Number(schema), system: "us", site, ask: { machine: "walk-behind", product, floor, measure: "jug", level: { text: "100", unit: "percent" }, site: { part: "paper", standard: "s" } } });
};

test("a wall chart in Spanish takes as many sheets of paper as were reckoned, and each says that nobody checked it", async () => {
  for (const [product, floor, dilution] of [["neutral", "vinyl", "1:64"], ["degreaser", "terrazzo", "5 oz/gal"], ["quat", "tile", "1:256"]]) {
    const page = await open({
      view: "site",
      locale: "es-US",
      before: (page) => page.addInitScript((kept) => localStorage.setItem("brimline.typed", kept), chart(product, floor, dilution)),
    });
    await unfoldAll(page);
    await page.evaluate(() => {
      window.print = () => document.querySelector("[data-printed]").setAttribute("data-kept", "");
      document.querySelector("[name=chart-print]").click();
      document.querySelector("[data-kept]").setAttribute("data-printed", "");
    });
    const sheets = page.locator("[data-part=chart] .sheet");
    for (const text of await sheets.locator(".running").allTextContents()) assert.match(text, /habla nativa.*No native reader/);
    for (const format of ["A4", "Letter"]) {
      const pages = await readPdf(await page.pdf({ format }));
      assert.equal(pages.length, await sheets.count(), `${product} on ${format}`);
    }
    await page.context().close();
  }
});

test("a sheet says that its language is not checked", async () => {
  const page = await open({ locale: "es-US" });
  await spoken(page, "es");
  await page.emulateMedia({ media: "print" });
  await settled(page);
  assert.match(await page.locator(".sheet-line").innerText(), /Impreso el/);
  assert.match(await page.locator("[data-part=unchecked]").innerText(), /habla nativa.*No native reader/);
});
