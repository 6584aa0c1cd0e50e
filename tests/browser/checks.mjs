// What can be wrong with the look of a page: each check gives its faults as lines, none when all is well.

import { readdirSync, readFileSync } from "node:fs";
import { axe } from "./harness.mjs";

// Off by default: contrast of 7 to 1 (WCAG 2.2, 1.4.6) and the size of targets (2.5.8).
const RULES = { "color-contrast-enhanced": { enabled: true }, "target-size": { enabled: true } };

/**
 * What axe finds, from the head of the page: what is scrolled under the bar of a phone would count as too small to press.
 * That what has the focus comes to rest below it is held in size.test.mjs.
 */
export const accessible = async (page) => {
  await page.evaluate(() => scrollTo(0, 0));
  const found = await axe(page, { rules: RULES });
  return found.map(({ id, targets }) => `${id}: ${targets.slice(0, 3).join(" | ")}`);
};

/** Inputs without a name or a label, descriptions and ids that lead astray. */
export const named = (page) => page.evaluate(() => {
  const faults = [];
  for (const input of document.querySelectorAll("input, select, textarea, button")) {
    const what = input.outerHTML.slice(0, 80);
    const labelled = input.labels?.length || input.getAttribute("aria-label") || input.textContent.trim();
    if (!labelled) faults.push(`no label: ${what}`);
    if (!input.name && !input.classList.contains("link")) faults.push(`no name: ${what}`);
    for (const id of (input.getAttribute("aria-describedby") ?? "").split(" ").filter(Boolean)) {
      if (!document.getElementById(id)) faults.push(`${id} is nowhere: ${what}`);
    }
  }
  const ids = [...document.querySelectorAll("[id]")].map(({ id }) => id);
  faults.push(...ids.filter((id, index) => ids.indexOf(id) !== index).map((id) => `twice: ${id}`));
  return faults;
});

const FILES = new URL("../../src/words/en/", import.meta.url);
const KEYS = readdirSync(FILES).flatMap((file) =>
  [...readFileSync(new URL(file, FILES), "utf8").matchAll(/^([a-z][\w-]*-[\w-]*) =/gm)].map(([, key]) => key));

/** Keys that stand where their words should: what is said was not loaded. */
export const unspoken = async (page) => {
  const said = new Set(await page.evaluate(() => {
    const texts = [...document.querySelectorAll("body, [aria-label]")].map((one) =>
      one === document.body ? one.textContent : one.getAttribute("aria-label"));
    return texts.join(" ").split(/[^\w-]+/);
  }));
  return KEYS.filter((key) => said.has(key));
};

/** What reaches over the edge of the screen. A table in its own scrolling box may. */
export const overflowing = (page) => page.evaluate(() => {
  const { clientWidth } = document.documentElement;
  const inside = (one) => one.closest(".scroll, .unseen, .skip") && !one.matches(".scroll");
  const over = [...document.querySelectorAll("body *")].filter((one) => {
    const { left, right, width } = one.getBoundingClientRect();
    return width && !inside(one) && (right > clientWidth + 0.5 || left < -0.5 || one.matches("li, p, dd") && one.scrollWidth > one.clientWidth + 1);
  });
  const { scrollWidth } = document.scrollingElement;
  const page = scrollWidth > clientWidth ? [`the page is ${scrollWidth} wide`] : [];
  return [...page, ...over.map((one) => `${one.tagName} ${one.textContent.slice(0, 30)}`)].slice(0, 4);
});

/** Text that its box hides a part of. What scrolls in a box of its own, and what only a screen reader reads, may. */
export const cut = (page) => page.evaluate(() =>
  [...document.querySelectorAll("#app *")]
    .filter((one) => one.checkVisibility() && one.textContent.trim() && !one.closest("svg, .unseen, .skip, select, textarea"))
    .filter((one) => !["visible", "auto", "scroll"].includes(getComputedStyle(one).overflowX) && one.scrollWidth > one.clientWidth + 1)
    .map((one) => `cut: ${one.tagName} ${one.className} ${one.textContent.trim().slice(0, 40)}`)
    .slice(0, 4));

/** What a gloved thumb misses: less than 48 px high or wide. */
export const tooSmallToPress = (page) => page.evaluate(() =>
  [...document.querySelectorAll("button, input, select, textarea, summary, a")]
    .filter((one) => !one.matches(".skip") && one.checkVisibility())
    .map((one) => [one, (one.matches("[type=checkbox], [type=radio]") ? one.closest("label") : one).getBoundingClientRect()])
    .filter(([, { width, height }]) => height < 47.9 || width < 47.9)
    .map(([one, { width, height }]) => `${one.name || one.textContent.slice(0, 20)} ${Math.round(width)} × ${Math.round(height)}`));

/** Every text with its height on the screen, drawings scaled as they are. */
export const texts = (page) => page.evaluate(() => {
  const found = [];
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  while (walker.nextNode()) {
    const one = walker.currentNode.parentElement;
    if (!walker.currentNode.data.trim() || !one.checkVisibility() || one.closest(".unseen, .skip, script, noscript")) continue;
    const scale = one instanceof SVGGraphicsElement ? one.getScreenCTM().d : 1;
    found.push({
      text: walker.currentNode.data.trim().slice(0, 40),
      size: parseFloat(getComputedStyle(one).fontSize) * scale,
      amount: one.closest(".amount-figure") !== null,
      title: one.closest(".stop :is(h2, h3)") !== null,
    });
  }
  return found;
});

/** Text under 16 px, in drawings too. */
export const tooSmallToRead = async (page) =>
  (await texts(page)).filter(({ size }) => size < 15.95).map(({ text, size }) => `${size.toFixed(1)} px: ${text}`);

/** Numbers in a drawing that lie outside it or on each other, and words of a thought that touch a dot. */
export const clashing = (page) => page.evaluate(() => {
  const faults = [];
  for (const drawing of document.querySelectorAll("svg.drawing, svg.thought")) {
    const frame = drawing.getBoundingClientRect();
    const labels = [...drawing.querySelectorAll("text")].map((one) => [one.textContent, one.getBoundingClientRect()]);
    labels.forEach(([text, box], index) => {
      if (box.left < frame.left - 1 || box.right > frame.right + 1 || box.top < frame.top - 4) faults.push(`outside: ${text}`);
      for (const [other, its] of labels.slice(index + 1)) {
        const apart = box.right <= its.left || its.right <= box.left || box.bottom <= its.top + 4 || its.bottom <= box.top + 4;
        if (!apart) faults.push(`${text} on ${other}`);
      }
      for (const dot of drawing.matches(".thought") ? drawing.querySelectorAll("circle") : []) {
        const its = dot.getBoundingClientRect();
        const ring = parseFloat(getComputedStyle(dot).strokeWidth) || 0;
        const apart = box.right + ring <= its.left || its.right + ring <= box.left || box.bottom <= its.top + 4 || its.bottom <= box.top + 4;
        if (!apart) faults.push(`${text} on a dot`);
      }
    });
  }
  return faults;
});

/** 12 points in CSS pixels. */
const TWELVE_POINTS = 16;

/** What is cut, too small or too pale on a sheet of this width. */
export const faultsOnPaper = (page) => page.evaluate((smallest) => {
  const width = document.documentElement.clientWidth;
  const faults = [];
  const say = (what, one) => faults.push(`${what}: ${one.getAttribute("name") ?? one.getAttribute("class") ?? one.tagName} "${String(one.value || one.textContent).trim().slice(0, 40)}"`);
  const pen = document.createElement("canvas").getContext("2d");
  for (const one of document.querySelectorAll("#app *")) {
    if (!one.checkVisibility() || one.closest("svg") && one.tagName !== "svg") continue;
    const box = one.getBoundingClientRect();
    const style = getComputedStyle(one);
    if (box.width && box.right > width + 1) say("over the edge", one);
    if (style.overflowX !== "visible" && one.scrollWidth > one.clientWidth + 1) say("cut", one);
    if (one.matches("select")) {
      pen.font = `${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
      const text = pen.measureText(one.selectedOptions[0]?.textContent ?? "").width;
      if (text > one.clientWidth - parseFloat(style.paddingLeft) - parseFloat(style.paddingRight) + 1) say("cut", one);
    }
  }
  const walker = document.createTreeWalker(document.querySelector("#app"), NodeFilter.SHOW_TEXT);
  while (walker.nextNode()) {
    const one = walker.currentNode.parentElement;
    if (!walker.currentNode.data.trim() || !one.checkVisibility() || one.closest("option")) continue;
    const scale = one instanceof SVGGraphicsElement ? one.getScreenCTM().d : 1;
    const style = getComputedStyle(one);
    if (parseFloat(style.fontSize) * scale < smallest - 0.05) say(`${style.fontSize} × ${scale.toFixed(2)}`, one);
    if (style.color !== "rgb(0, 0, 0)") say(style.color, one);
  }
  return [...new Set(faults)].slice(0, 8);
}, TWELVE_POINTS);
