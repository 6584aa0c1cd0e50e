// Every state of the page, on a desk, on a phone, with large text, in the dark and on paper.

import assert from "node:assert/strict";
import { test } from "node:test";
import { accessible, clashing, faultsOnPaper, named, overflowing, tooSmallToPress, tooSmallToRead, unspoken } from "./checks.mjs";
import { STATES } from "./states.mjs";
import { settled, stageOfThisFile } from "./walk.mjs";

const { open } = await stageOfThisFile();

/** What the content policy refused on a page. The console says it too; here it is told of the state that did it. */
const listen = (page) => page.addInitScript(() => {
  window.refused = [];
  addEventListener("securitypolicyviolation", ({ effectiveDirective, blockedURI, sample }) =>
    window.refused.push(`refused: ${effectiveDirective} ${blockedURI} ${sample}`));
});

/** Width inside margins of 15 mm, CSS pixels of 1/96 in. */
const A4 = Math.floor(((210 - 30) / 25.4) * 96);
const LETTER = Math.floor((8.5 - 30 / 25.4) * 96);

/** On each screen or paper: its width, height and media, and what is looked for. */
const LOOKS = [
  ["desk", 1280, 800, {}, [accessible, named, unspoken, tooSmallToPress, tooSmallToRead, clashing]],
  // A tall one: what lies under the line at the foot of the screen is scrolled out from under it.
  ["phone", 360, 12_000, { colorScheme: "dark" }, [accessible, overflowing, tooSmallToPress, tooSmallToRead]],
  ["small phone", 320, 640, {}, [overflowing, tooSmallToRead, clashing]],
  ["forced colours", 1024, 768, { forcedColors: "active" }, [accessible]],
  ["A4", A4, 1000, { media: "print" }, [faultsOnPaper]],
  ["Letter", LETTER, 1000, { media: "print", colorScheme: "dark" }, [faultsOnPaper]],
];

for (const { name, view, lead } of STATES) {
  test(name, async () => {
    const page = await open({ view, before: listen });
    await lead(page);
    const faults = [];
    const hold = async (where, checks) => {
      await settled(page);
      for (const check of checks) faults.push(...(await check(page)).map((fault) => `${where}: ${fault}`));
    };
    for (const [where, width, height, media, checks] of LOOKS) {
      await page.setViewportSize({ width, height });
      await page.emulateMedia({ media: "screen", colorScheme: "light", forcedColors: "none", ...media });
      await hold(where, checks);
    }
    await page.emulateMedia({ media: "screen", colorScheme: "light", forcedColors: "none" });
    await page.setViewportSize({ width: 640, height: 800 });
    await page.evaluate(() => document.documentElement.style.setProperty("font-size", "36px"));
    await hold("text twice as large", [overflowing]);
    faults.push(...(await page.evaluate(() => window.refused)));
    await page.context().close();
    assert.deepEqual(faults, []);
  });
}
