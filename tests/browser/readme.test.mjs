// The worked example of the README, typed into the page.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { ROOT, openStage } from "./harness.mjs";

let stage;
before(async () => {
  stage = await openStage();
});
after(() => stage.close());

test("the page says what the README says it says", async () => {
  const [typed, said] = readFileSync(join(ROOT, "README.md"), "utf8")
    .split("## A worked example")[1]
    .match(/```text\n[\s\S]*?```/g)
    .map((block) => block.split("\n").slice(1, -1));
  const page = await stage.openPage();
  for (const line of typed) {
    const [, name, text, unit] = line.match(/^([\w-]+): (\S+) ?(.*)$/);
    const units = page.locator(`select[name="${name}-unit"]`);
    if (await units.count()) await units.selectOption({ label: unit });
    await page.locator(`[name="${name}"]`).fill((await units.count()) ? text : `${text}${unit && ` ${unit}`}`);
  }
  const shown = await page.locator(".amount > p:not([role])").allInnerTexts();
  assert.deepEqual(shown.map((text) => text.replaceAll("\u202f", " ").trim()), said);
});
