// Every state of the page in the longest complete language, and in a pseudo-language 40 % longer than English: nothing is
// cut, nothing reaches over the edge. Spanish on paper, too. Of a language that is translated in part, the operator's part.

import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { test } from "node:test";
import { accessible, clashing, cut, faultsOnPaper, named, overflowing, tooSmallToPress, tooSmallToRead } from "./checks.mjs";
import { STATES } from "./states.mjs";
import { settled, stageOfThisFile } from "./walk.mjs";

const { open } = await stageOfThisFile();

/** Width inside margins of 15 mm, CSS pixels of 1/96 in. */
const A4 = Math.floor(((210 - 30) / 25.4) * 96);

const ENGLISH = new URL("../../src/words/en/", import.meta.url);

/** Letters that stand for a text of this length, in words of at most seven. */
const filler = (length) => "ñandúes ".repeat(Math.ceil(length / 8)).slice(0, length).trim();

/** A text 40 % longer; placeholders stay. */
const longer = (text) => `${text} ${filler(Math.max(2, Math.round(text.replace(/\{[^}]*\}/g, "").length * 0.4)))}`;

/** English, longer, as a language file. */
const PSEUDO = readdirSync(ENGLISH)
  .flatMap((file) => readFileSync(new URL(file, ENGLISH), "utf8").split("\n"))
  .filter((line) => line && !line.startsWith("#"))
  .map((line) => {
    const [, start, text] = line.match(/^(number-[\w-]+ = .*|[a-z][\w-]* = (?=.*->$)|[a-z][\w-]* = | *\*?\[\w+\] |)(.*)$/);
    return text && !text.endsWith("->") && text !== "}" && text !== " }" ? start + longer(text) : line;
  })
  .join("\n");

/** Puts the pseudo-language in the place of Spanish; the digest in the page's starter is not its own. */
async function pseudo(page) {
  await page.route("**/words-es-*.ftl", (route) => route.fulfill({ status: 200, body: PSEUDO, contentType: "text/plain; charset=utf-8" }));
  await page.route("**/boot.js", async (route) => {
    const answer = await route.fetch();
    await route.fulfill({ response: answer, body: (await answer.text()).replace(/sha256-[^"]+/g, "") });
  });
}

const SCREEN = [overflowing, cut, tooSmallToPress, tooSmallToRead, clashing];

for (const { name, view, lead } of STATES) {
  for (const [language, locale, before, checks, onPaper] of [
    ["Spanish", "es-US", undefined, [accessible, named], [faultsOnPaper]],
    ["40 % longer", "es-US", pseudo, [], []],
    ["French", "fr-CA", undefined, [named], [faultsOnPaper]],
    ["Haitian Creole", "ht", undefined, [named], [faultsOnPaper]],
    ["Polish", "pl-PL", undefined, [named], [faultsOnPaper]],
    ["Portuguese", "pt-BR", undefined, [named], [faultsOnPaper]],
  ]) {
    test(`${name}, ${language}`, async () => {
      const page = await open({ view, locale, before });
      assert.equal(await page.evaluate(() => document.documentElement.lang), locale.split("-")[0]);
      await lead(page);
      const faults = [];
      const hold = async (where, checks) => {
        await settled(page);
        for (const check of checks) faults.push(...(await check(page)).map((fault) => `${where}: ${fault}`));
      };
      await page.setViewportSize({ width: 1280, height: 800 });
      await hold("desk", [...checks, overflowing, cut, clashing]);
      await page.setViewportSize({ width: 360, height: 12_000 });
      await hold("phone", SCREEN);
      await page.setViewportSize({ width: A4, height: 1000 });
      await page.emulateMedia({ media: "print" });
      await hold("A4", onPaper);
      await page.context().close();
      assert.deepEqual(faults, []);
    });
  }
}
