// Paper: sheets that stand alone. That nothing on them is cut or small is held in states.test.mjs.

import assert from "node:assert/strict";
import { test } from "node:test";
import { unfoldAll } from "./states.mjs";
import { readPdf } from "./pdf.mjs";
import { field, settled, stageOfThisFile } from "./walk.mjs";

const { open } = await stageOfThisFile();

test("every view prints on both papers", async () => {
  for (const view of ["fill", "flow", "shift", "cautions"]) {
    const page = await open({ view });
    await unfoldAll(page);
    for (const format of ["A4", "Letter"]) {
      const sheets = (await page.pdf({ format })).toString("latin1").match(/\/Type \/Page\b/g).length;
      console.log(`${view} on ${format}: ${sheets} sheets`);
      assert.ok(sheets >= 1 && sheets <= 14, `${view} on ${format}: ${sheets} sheets`);
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

// Letter is the shorter one, A4 the narrower one: 1/96 in within margins of 15 mm. Common practice, no source: two columns
// read as one where the gap between them is hardly wider than the space between two words (3 to 4 px at 12 pt).
test("the columns of a shift's tables stand visibly apart, in English and in a longer language", async () => {
  for (const locale of ["en-US", "fr-CA"]) {
    const page = await open({ view: "shift", locale });
    await unfoldAll(page);
    await page.emulateMedia({ media: "print" });
    for (const [format, width] of [["A4", (210 - 30) / 25.4], ["Letter", 8.5 - 30 / 25.4]]) {
      await page.setViewportSize({ width: Math.floor(width * 96), height: 1000 });
      await settled(page);
      const found = await page.evaluate(() => {
        const ends = (cell) => {
          const range = document.createRange();
          range.selectNodeContents(cell);
          const boxes = [...range.getClientRects()].filter((box) => box.width > 0);
          return boxes.length && { left: Math.min(...boxes.map((box) => box.left)), right: Math.max(...boxes.map((box) => box.right)) };
        };
        const rows = [...document.querySelectorAll(".view.shift tr")].filter((row) => row.checkVisibility());
        const gaps = rows.flatMap((row) => [...row.cells].slice(1).map((cell) => {
          const [before, own] = [ends(cell.previousElementSibling), ends(cell)];
          return { gap: before && own ? own.left - before.right : Infinity, text: `${cell.previousElementSibling.textContent}|${cell.textContent}` };
        }));
        return { count: gaps.length, close: gaps.filter(({ gap }) => gap < 7.5) };
      });
      assert.ok(found.count > 100, `${found.count} columns`);
      assert.deepEqual(found.close, [], `${locale} on ${format}`);
    }
    await page.context().close();
  }
});

test("a print says when and with which version it was made", async () => {
  const page = await open();
  // Days are written in words once the later chunk is there.
  await page.locator('[name="record-fill"]').waitFor();
  await page.emulateMedia({ media: "print" });
  const text = await page.locator("body").innerText();
  assert.match(text, /[A-Z][a-z]{2} \d{1,2}, 20\d\d/, "a date");
  assert.match(text, /Brimline \d+\.\d+\.\d+/, "a version");
});

test("what is printed right behind a key is up to date, down to the last table", async () => {
  for (const [view, name] of [["fill", "machine-tank"], ["shift", "area-1-size"]]) {
    const page = await open({ view });
    await field(page, name).fill("44");
    const hasty = await readPdf(await page.pdf({ format: "A4" }));
    await settled(page);
    const calm = await readPdf(await page.pdf({ format: "A4" }));
    const text = (pdf) => JSON.stringify(pdf);
    assert.ok(text(calm).length > 1_000, view);
    assert.equal(text(hasty), text(calm), view);
  }
});
