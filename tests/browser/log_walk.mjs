// Ways through the log that its tests share, and the chain of hashes worked out from its documentation alone
// (src/site/log.rs): SHA-256 (FIPS 180-4, node:crypto) over RFC 8785 JSON. Nothing here asks the page whether it holds.

import { createHash, randomBytes } from "node:crypto";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { settled } from "./walk.mjs";

const sha256 = (text) => createHash("sha256").update(text).digest("hex");

/** RFC 8785, section 3.2: keys by UTF-16 code units, numbers and texts as ECMAScript writes them. */
export function canonical(value) {
  if (Array.isArray(value)) return `[${value.map(canonical).join(",")}]`;
  if (value === null || typeof value !== "object") return JSON.stringify(value);
  return `{${Object.keys(value).sort().map((key) => `${JSON.stringify(key)}:${canonical(value[key])}`).join(",")}}`;
}

export function digest({ own, words, ...hashed }) {
  return sha256(`brimline log record 1\0${canonical(hashed)}`);
}

export const seal = (part, { salt, text }) => sha256(["brimline log words 1", part, salt, text].join("\0"));

/** What is wrong with the chains of these records: a line each, empty where all hold. */
export function wrongs(records) {
  const found = [];
  const erased = new Set(records.flatMap((one) => (one.erased ?? []).map((part) => `${one.of} ${part}`)));
  const chains = new Map();
  for (const one of records) {
    if (!chains.has(one.device)) chains.set(one.device, []);
    chains.get(one.device).push(one);
  }
  for (const [device, chain] of chains) {
    let before;
    for (const [place, record] of chain.sort((one, other) => one.number - other.number).entries()) {
      const id = `${device}/${record.number}`;
      if (record.number !== place + 1) found.push(`${id} stands where ${place + 1} should`);
      if ((record.before ?? "") !== (before?.own ?? "")) found.push(`${id} is not linked to the one before`);
      if (digest(record) !== record.own) found.push(`${id} is not what was hashed`);
      for (const [part, sealed] of Object.entries(record.seals ?? {})) {
        const text = record.words?.[part];
        if (text ? seal(part, text) !== sealed : !erased.has(`${id} ${part}`)) found.push(`${id}: ${part} does not hold`);
      }
      before = record;
    }
  }
  return found;
}

/** A log that some device wrote: `count` fills over months, or what `fill` says of each. */
export function made(device, count, { fill = fillOf, who = (n) => ["AB", "CD", "EF"][n % 3], from = 1_735_725_600 } = {}) {
  const records = [];
  for (let number = 1; number <= count; number += 1) {
    const words = {};
    const seals = {};
    for (const [part, text] of Object.entries({ who: who(number) })) {
      if (!text) continue;
      words[part] = { salt: randomBytes(16).toString("hex"), text };
      seals[part] = seal(part, words[part]);
    }
    const when = `${new Date((from + number * 1_700) * 1_000).toISOString().slice(0, 19)}+00:00`;
    const record = { device, fill: fill(number), kind: "fill", number, when };
    if (Object.keys(seals).length) record.seals = seals;
    if (records.length) record.before = records.at(-1).own;
    record.own = digest(record);
    if (Object.keys(words).length) record.words = words;
    records.push(record);
  }
  return records;
}

/** A fill of three months’ work of a site that was made up: eight machines, sixty areas, six products. */
export function fillOf(n) {
  const named = (kind, of) => ({ id: `${kind}-${n % of}`, name: `${kind} ${n % of}` });
  const planned = Number((0.0002 + (n % 97) * 1e-5).toPrecision(12));
  const measured = Number((planned * (0.8 + 0.004 * (n % 101))).toPrecision(12));
  const shown = (si) => ({ si, text: `${Math.round(si * 1e6)} mL` });
  return {
    areas: [named("area", 60)],
    concentrate: shown(planned),
    floor: named("floor", 9),
    level: { si: 0.04, text: "40 L" },
    machine: named("machine", 8),
    measured: shown(measured),
    product: named("product", 6),
    standard: named("standard", 9),
    version: 1,
    water: { si: 0.0394, text: "39.4 L" },
  };
}

/** Records as the file of a log. */
export function file(records, { schema = 1, heads } = {}) {
  const last = new Map(records.map(({ device, number, own }) => [device, { device, number, own }]));
  const first = { brimline: "log", heads: heads ?? [...last.values()], schema };
  return `${[first, ...records].map(canonical).join("\n")}\n`;
}

/** Gives a text to the control that opens a file, by way of the disk, as a person's file comes. */
export async function give(page, text) {
  const folder = mkdtempSync(join(tmpdir(), "brimline-log-"));
  const name = join(folder, "log.ndjson");
  writeFileSync(name, text);
  await page.locator('[name="log-open"]').setInputFiles(name);
  // The browser reads it when the page asks for it.
  await settled(page);
  process.once("exit", () => rmSync(folder, { recursive: true, force: true }));
}

/** Opens Log and waits until it is open. */
export async function toLog(page, part) {
  await page.evaluate(() => (location.hash = "log"));
  await page.locator('[name="log-fills"]').waitFor();
  await opened(page);
  if (part) {
    await page.locator(`[name="log-${part}"]`).click();
    await settled(page);
  }
}

/** Waits until the log says which device this is, or why it is shut. */
export const opened = (page) => page.locator(".view.log #log-said, .view.log .troubles").first().waitFor({ state: "attached", timeout: 60_000 });

/** Imports a file and waits until all of it is taken. */
export async function take(page, records, timeout = 60_000) {
  await toLog(page, "keep");
  await give(page, typeof records === "string" ? records : file(records));
  await page.locator('[name="log-take"]').click({ timeout });
  await page.locator(".view.log [role=status]", { hasText: /./ }).first().waitFor();
  await page.waitForFunction(() => !document.querySelector('[name="log-take"]'));
}

/** A page of the same origin on which no code of ours runs. */
export async function aside(page, origin) {
  // A browser asks for this one unasked.
  await page.route("**/favicon.ico", (route) => route.fulfill({ status: 204 }));
  await page.goto(`${origin}/boot.js`);
}

/** Every row of the database, read by the browser itself, with no code of the page. */
export function rows(page) {
  return page.evaluate(async () => {
    const asked = (request) => new Promise((done, failed) => {
      request.onsuccess = () => done(request.result);
      request.onerror = () => failed(request.error);
    });
    const base = await asked(indexedDB.open("brimline-log"));
    const all = {};
    for (const name of base.objectStoreNames) {
      const store = base.transaction(name).objectStore(name);
      const [keys, values] = await Promise.all([asked(store.getAllKeys()), asked(store.getAll())]);
      all[name] = keys.map((key, place) => [key, name === "packed" ? values[place].length : values[place]]);
    }
    const version = base.version;
    base.close();
    return { version, ...all };
  });
}

/** The records of the database. */
export const kept = async (page) => (await rows(page)).records.map(([, line]) => JSON.parse(line));

const ASKED = `const asked = (request) => new Promise((done, failed) => {
  request.onsuccess = () => done(request.result);
  request.onerror = () => failed(request.error);
});`;

/** Changes the database by hand: `change(stores, asked, given)` runs in one transaction over all its stores. */
export const meddle = (page, change, given) =>
  // As one text: the policy of the page forbids it to make code out of text, and not the debugger.
  page.evaluate(`(async () => {
    ${ASKED}
    const base = await asked(indexedDB.open("brimline-log"));
    const whole = base.transaction([...base.objectStoreNames], "readwrite");
    const done = new Promise((done, failed) => {
      whole.oncomplete = done;
      whole.onabort = () => failed(whole.error);
    });
    const stores = Object.fromEntries([...base.objectStoreNames].map((name) => [name, whole.objectStore(name)]));
    await (${change})(stores, asked, ${JSON.stringify(given ?? null)});
    await done;
    base.close();
  })()`);

/** Makes a database by hand before the page does, at a version, with stores and their rows. */
export const makeDatabase = (page, version, stores) =>
  page.evaluate(`(async () => {
    const opening = indexedDB.open("brimline-log", ${version});
    const stores = ${JSON.stringify(stores)};
    opening.onupgradeneeded = () => {
      for (const [name, rows] of Object.entries(stores)) {
        const store = opening.result.createObjectStore(name);
        for (const [key, value] of rows) store.put(value, key);
      }
    };
    await new Promise((done, failed) => {
      opening.onsuccess = done;
      opening.onerror = () => failed(opening.error);
    });
    opening.result.close();
  })()`);

/** Records `count` fills by the button on Fill, as fast as the page confirms them; [number, ms] of each. */
export const recordMany = (page, count) =>
  page.evaluate(async (count) => {
    const confirmed = [];
    const said = () => document.querySelector("#log-said")?.textContent ?? "";
    const changed = (is) => new Promise((done, failed) => {
      if (is()) return done();
      const late = setTimeout(() => (watch.disconnect(), failed(new Error(`still ${said()}`))), 20_000);
      const watch = new MutationObserver(() => {
        if (!is()) return;
        watch.disconnect();
        clearTimeout(late);
        done();
      });
      watch.observe(document.body, { subtree: true, childList: true, characterData: true, attributes: true });
    });
    const button = () => document.querySelector('[name="record-fill"]');
    for (let n = 0; n < count; n += 1) {
      // Another answer each time: the button rests after a fill, so that no second tap records it twice.
      document.querySelector(`[name="level-${[25, 50, 75, 100][n % 4]}"]`).click();
      await changed(() => button()?.getAttribute("aria-disabled") === "false");
      const before = said();
      const began = performance.now();
      button().click();
      await changed(() => said() !== before);
      confirmed.push([Number(said().match(/\d+(?=\D*$)/)[0]), performance.now() - began]);
      window.onconfirmed?.(confirmed.at(-1));
    }
    return confirmed;
  }, count);

/** The middle one, and the one that 95 of 100 do not exceed. */
export function spread(values) {
  const sorted = [...values].sort((one, other) => one - other);
  const at = (part) => sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))];
  return { median: at(0.5), p95: at(0.95) };
}
