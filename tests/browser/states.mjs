// What the page can look like: every view, and the states in which something else stands on it.

import { choose, press, settled, tick, write } from "./walk.mjs";

/** Unfolds everything that can be unfolded. */
export async function unfoldAll(page) {
  await page.locator("details").evaluateAll((all) => all.forEach((one) => one.setAttribute("open", "")));
  await settled(page);
}

/** [name, view, what leads there]. */
export const STATES = [
  ["fill", "fill", async () => {}],
  ["flow", "flow", async () => {}],
  ["shift", "shift", async () => {}],
  ["cautions", "cautions", async () => {}],
  ["fill, all unfolded", "fill", unfoldAll],
  ["fill, with the record below it", "fill", async (page) => {
    await page.locator('[name="record-fill"]').waitFor();
    await write(page, "log-measured", "?");
    await choose(page, "log-deviation", "other");
    await unfoldAll(page);
  }],
  ["log, a fill by hand", "log", async (page) => {
    await press(page, "log-by-hand");
    await write(page, "log-water", "?");
  }],
  ["log, its questions", "log", (page) => press(page, "log-questions")],
  ["flow, all unfolded", "flow", unfoldAll],
  ["shift, all unfolded", "shift", unfoldAll],
  ["cautions, all unfolded", "cautions", async (page) => {
    await choose(page, "product", "degreaser");
    await unfoldAll(page);
  }],
  ["site, its records", "site", async (page) => {
    await press(page, "shelf-floor");
    await write(page, "floor-target-low", "?");
  }],
  ["site, an empty one", "site", (page) => press(page, "site-empty")],
  ["fill, of an empty site", "site", async (page) => {
    await press(page, "site-empty");
    await page.locator('nav a[href="#fill"]').click();
    await page.locator(".view.fill").waitFor();
    await unfoldAll(page);
  }],
  ["site, a finish and a product", "site", async (page) => {
    await press(page, "shelf-product");
    await unfoldAll(page);
  }],
  ["site, a draft that is blocked", "site", async (page) => {
    await press(page, "site-standards");
    await press(page, "standard-add");
    await write(page, "standard-dilution", "1:2:3");
    await choose(page, "standard-floor", "marble");
    await choose(page, "standard-product", "vinegar");
  }],
  ["site, a draft that waits for reasons", "site", async (page) => {
    await press(page, "site-standards");
    await press(page, "standard-add");
    await write(page, "standard-author", "K. M.");
    await write(page, "standard-effective", "2024-02-29");
    await write(page, "standard-reason", "New finish");
  }],
  ["site, to pass on", "site", async (page) => {
    await press(page, "site-passing");
    await press(page, "key-make");
    await press(page, "key-pin-own");
    await page.locator("#site-open").setInputFiles({ name: "site.json", mimeType: "application/json", buffer: Buffer.from('{"brimline":"site","schema":1') });
    await page.locator("main .mistake").first().waitFor();
  }],
  ["site, this device", "site", async (page) => {
    await press(page, "site-device");
    await write(page, "device-code", "12");
    await press(page, "device-set");
  }],
  ["site, a new finish, all unfolded", "site", async (page) => {
    await press(page, "site-finish");
    await choose(page, "finish", "matte");
    await write(page, "coat-area", "6000");
    await choose(page, "stripper", "stripper");
    await write(page, "first-coat", "March");
    await write(page, "patch-1-slip", "0.3");
    await unfoldAll(page);
  }],
  ["fill, stopped for foam", "fill", (page) => choose(page, "product", "quat")],
  ["fill, warned", "fill", async (page) => {
    await choose(page, "machine", "self-driving");
    await choose(page, "product", "hand-soap");
    await choose(page, "floor", "marble");
    await press(page, "stop-read");
  }],
  ["fill, nothing readable", "fill", async (page) => {
    for (const name of ["machine-tank", "product-label", "fill-level", "measure-step"]) await write(page, name, "?");
  }],
  ["fill, two readings", "fill", (page) => write(page, "product-label", "2:5")],
  ["fill, every rule", "fill", async (page) => {
    await choose(page, "machine", "self-driving");
    await choose(page, "product", "quat");
    await write(page, "product-label", "1:128 to 1:256");
    await write(page, "product-standard", "1:150 to 1:230");
    await press(page, "stop-read");
    await unfoldAll(page);
  }],
  ["fill, a wall unit", "fill", async (page) => {
    await choose(page, "measure", "wall");
    await unfoldAll(page);
  }],
  ["fill, the machine's own bottle", "fill", async (page) => {
    await choose(page, "measure", "own");
    await unfoldAll(page);
  }],
  ["fill, a powder in scoops", "fill", async (page) => {
    await choose(page, "product", "powder");
    await choose(page, "measure", "scoop");
    await unfoldAll(page);
  }],
  ["top up, unknown strength", "fill", async (page) => {
    await press(page, "job-top-up");
    await choose(page, "station-rest", "unknown");
  }],
  ["put right, read wrong", "fill", async (page) => {
    await press(page, "job-rescue");
    await choose(page, "station-mishap", "reading");
    await choose(page, "reading-method", "conductivity");
  }],
  ["read strength", "fill", async (page) => {
    await press(page, "job-reading");
    await write(page, "reading-strip", "200");
    await write(page, "product-active", "10");
    await unfoldAll(page);
  }],
  ["flow, calibrated", "flow", async (page) => {
    await unfoldAll(page);
    for (const [index, ounces] of ["16", "31", "49"].entries()) {
      await press(page, "catch-add");
      await write(page, `catch-${index + 1}-setting`, String(index + 1));
      await write(page, `catch-${index + 1}-volume`, ounces);
    }
    await write(page, "floor-drop", "20");
  }],
  ["flow, a class to take", "flow", async (page) => {
    await choose(page, "floor", "tile");
    await write(page, "floor-absorption", "2");
    await choose(page, "floor-texture", "textured");
    await write(page, "floor-drop", "5");
  }],
  ["flow, too wet", "flow", async (page) => {
    await write(page, "floor-target-high", "1.2");
    await write(page, "floor-target-low", "1.05");
  }],
  ["flow, no setting serves", "flow", async (page) => {
    await write(page, "machine-speed", "9");
    await choose(page, "floor", "concrete");
  }],
  ["shift, no area left", "shift", async (page) => {
    for (const number of [1, 2, 3, 4]) await tick(page, `area-${number}-included`, false);
    await press(page, "area-5-remove");
  }],
  ["shift, a file of areas", "shift", async (page) => {
    await unfoldAll(page);
    const text = "Raumbezeichnung;Fläche in m²;Floor;Lane;Clean\nHalle;1.200;Moon;3;ja\nBar;big;Foyer marble;;x\n";
    await page.locator("#areas-open").setInputFiles({ name: "areas.csv", mimeType: "text/csv", buffer: Buffer.from(text) });
    await page.locator("#areas-columns").waitFor();
    await unfoldAll(page);
  }],
  ["shift, two products", "shift", async (page) => {
    await choose(page, "area-2-product", "vinegar");
    await choose(page, "area-2-floor", "wood");
    await unfoldAll(page);
  }],
  ["shift, a large one", "shift", async (page) => {
    await choose(page, "units", "metric");
    await write(page, "area-1-size", "123456");
  }],
  ["cautions, a sheet read", "cautions", async (page) => {
    await write(page, "sheet-text", "2. Hazards\nSignal word: Danger\nSignal word: Warning\nH314 H319\n3. Composition\nSodium hydroxide 1310-73-2 2 - 5");
    await press(page, "sheet-read");
  }],
  ["cautions, nothing known", "cautions", async (page) => {
    await press(page, "product-add");
    await write(page, "product-ph", "99");
    await write(page, "product-codes", "H999 EUH066");
  }],
  ["first fill, what to wear", "practice", (page) => press(page, "first-fill-begin")],
  ["first fill, why water goes first", "practice", async (page) => {
    await press(page, "first-fill-begin");
    for (let n = 0; n < 5; n += 1) await press(page, "first-fill-next");
    await page.locator("#first-fill-why-same").check();
  }],
  ["first fill, the end of the shift", "practice", async (page) => {
    await press(page, "first-fill-begin");
    for (let n = 0; n < 7; n += 1) await press(page, "first-fill-next");
    await page.locator(".view.log").waitFor();
  }],
  ["first fill, what was skipped", "practice", async (page) => {
    await press(page, "first-fill-begin");
    for (let n = 0; n < 8; n += 1) await press(page, "first-fill-next");
  }],
  ["practice, to choose", "practice", async (page) => {
    await press(page, "practice-begin");
  }],
  ["practice, numbers to play with", "practice", async (page) => {
    await press(page, "practice-numbers");
    await choose(page, "numbers-laid", "setting");
    await write(page, "numbers-parts", "1:128");
  }],
  ["practice, numbers that do not read", "practice", async (page) => {
    await press(page, "practice-numbers");
    await write(page, "numbers-tank", "ten");
    await write(page, "numbers-rate", "?");
  }],
  ["practice, a task answered wrongly", "practice", async (page) => {
    await tick(page, "practice-topic-dose", true);
    await write(page, "practice-seed", "3");
    await press(page, "practice-begin");
    for (const text of ["9000", "9001"]) {
      await write(page, "practice-answer", text);
      await press(page, "practice-check");
    }
    await unfoldAll(page);
  }],
  ["practice, an order", "practice", async (page) => {
    await tick(page, "practice-topic-foam", true);
    await choose(page, "practice-level", "third");
    await write(page, "practice-seed", "1");
    await press(page, "practice-begin");
    for (let n = 0; n < 9 && !(await page.locator("[data-step]").count()); n += 1) await press(page, "practice-skip");
  }],
  ["practice, its result", "practice", async (page) => {
    await tick(page, "practice-topic-units", true);
    await write(page, "practice-count", "2");
    await press(page, "practice-begin");
    await press(page, "practice-skip");
    await press(page, "practice-skip");
    await write(page, "practice-initials", "QZ");
    await page.locator('[name="practice-code"]').waitFor();
  }],
  ["practice, to hand out", "practice", async (page) => {
    await write(page, "site-name", "Alder County (invented)");
    await press(page, "practice-hand-out");
    await press(page, "practice-topics-all");
    await press(page, "practice-make");
    await unfoldAll(page);
  }],
  ["practice, a class", "practice", async (page) => {
    await press(page, "practice-hand-out");
    await tick(page, "practice-topic-units", true);
    await write(page, "practice-count", "2");
    await write(page, "practice-seed", "5");
    await press(page, "practice-make");
    await press(page, "practice-practise");
    await press(page, "practice-begin");
    await press(page, "practice-skip");
    await press(page, "practice-skip");
    await write(page, "practice-initials", "QZ");
    const code = await page.locator('[name="practice-code"]').inputValue();
    await press(page, "practice-class");
    await write(page, "class-codes", `${code}\nnothing`);
    await press(page, "class-take");
    await write(page, "class-months", "?");
  }],
].map(([name, view, lead]) => ({ name, view, lead }));
