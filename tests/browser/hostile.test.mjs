// Text that means harm, wherever a person can type or a file can bring it: it is shown, and nothing of it runs.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { after, test } from "node:test";
import { ROOT, openStage, running } from "./harness.mjs";
import { press, settled } from "./walk.mjs";
import { unfoldAll } from "./states.mjs";

const stage = await openStage();
after(() => stage.close());

/** Markup, handlers and addresses that would run, each of which would leave a mark. */
const HARM = [
  `<img src=x onerror="window.ran=1">`,
  `"><svg onload=window.ran=1>`,
  `javascript:window.ran=1`,
  `'-window.ran++-'</script><script>window.ran=1</script>`,
  `<iframe srcdoc="<script>parent.ran=1</script>"></iframe>`,
  `<a href="javascript:window.ran=1" autofocus onfocus=window.ran=1>x</a>{{ran=1}}\${window.ran=1}`,
];

const listen = (page) => page.addInitScript(() => {
  window.refused = [];
  addEventListener("securitypolicyviolation", ({ effectiveDirective, blockedURI }) => window.refused.push(`${effectiveDirective} ${blockedURI}`));
});

/** What of the harm has come to anything, a line each. */
const come = (page) => page.evaluate(() => {
  const found = [...window.refused];
  if ("ran" in window) found.push("it ran");
  for (const one of document.querySelectorAll("body *")) {
    const [name, own] = [one.localName, one.closest("#app") !== null];
    if (own && ["script", "iframe", "img", "object", "embed", "base", "link", "style"].includes(name)) found.push(`<${name}>`);
    for (const { name: attribute, value } of one.attributes) {
      if (attribute.startsWith("on") || attribute === "srcdoc") found.push(`${name} ${attribute}`);
      if (/^\s*(javascript|data):/i.test(value) && ["href", "src", "action", "formaction", "xlink:href"].includes(attribute)) found.push(`${name} ${attribute}=${value}`);
    }
  }
  return found;
});

/** The demo with harm in every text that is no code and no number. */
function hostileSite() {
  const site = JSON.parse(readFileSync(join(ROOT, "src/site/demo.json"), "utf8"));
  let count = 0;
  const spoil = (value, key) => {
    if (Array.isArray(value)) return value.map((one) => spoil(one, key));
    if (value && typeof value === "object") {
      return Object.fromEntries(Object.entries(value).map(([name, one]) => [name, spoil(one, name)]));
    }
    return ["name", "note", "notes", "source", "by", "emergency"].includes(key) ? HARM[count++ % HARM.length] : value;
  };
  const spoilt = { ...spoil(site), emergency: HARM[2] };
  spoilt.products = spoilt.products.map((one, n) => ({ ...one, notes: HARM[n % HARM.length], codes: HARM[(n + 1) % HARM.length] }));
  assert.ok(count > 30, `${count} texts`);
  return spoilt;
}

const VIEWS = ["fill", "flow", "shift", "cautions", "log", "practice", "site"];
const go = async (page, view) => {
  await page.evaluate((view) => (location.hash = view), view);
  await page.locator(`.view.${view}`).waitFor();
  await settled(page);
};

test("a site full of harm is shown on every view and runs nothing", async () => {
  const plain = await stage.openPage({ path: "/#fill", serviceWorkers: "block" });
  await plain.locator("#machine-tank").fill("11");
  await settled(plain);
  const typed = await plain.evaluate(() => JSON.parse(localStorage.getItem("brimline.typed")));
  await plain.context().close();
  const kept = JSON.stringify({ ...typed, site: { ...typed.site, ...hostileSite() } });
  const dialogs = [];
  const page = await stage.openPage({
    path: "/#fill",
    serviceWorkers: "block",
    before: async (page) => {
      await listen(page);
      await page.addInitScript((kept) => localStorage.setItem("brimline.typed", kept), kept);
    },
  });
  page.on("dialog", (dialog) => (dialogs.push(dialog.message()), dialog.dismiss()));
  const seen = [];
  for (const view of VIEWS) {
    await go(page, view);
    await unfoldAll(page);
    assert.deepEqual(await come(page), [], view);
    seen.push(await page.locator("#app").innerText());
  }
  assert.equal(await page.locator('[name="aside"]').count(), 0, "the site was taken as it is");
  assert.ok(seen.join("").includes("onerror"), "the harm stands there as text");
  for (const part of ["site-standards", "site-finish", "site-paper", "site-passing", "site-device"]) {
    await go(page, "site");
    await press(page, part);
    await unfoldAll(page);
    assert.deepEqual(await come(page), [], part);
  }
  assert.deepEqual(dialogs, []);
  await page.context().close();
});

test("harm typed into every field of every view runs nothing", async () => {
  const page = await stage.openPage({ path: "/#fill", serviceWorkers: "block", before: listen });
  page.setDefaultTimeout(10_000);
  let fields = 0;
  for (const view of VIEWS) {
    await go(page, view);
    await unfoldAll(page);
    fields += await page.evaluate((harm) => {
      let count = 0;
      for (const field of document.querySelectorAll("#app input, #app textarea")) {
        if (!["text", "search", "url", "tel", "textarea"].includes(field.type)) continue;
        field.value = harm[count++ % harm.length];
        field.dispatchEvent(new Event("input", { bubbles: true }));
        field.dispatchEvent(new Event("change", { bubbles: true }));
      }
      return count;
    }, HARM);
    await settled(page);
    assert.deepEqual(await come(page), [], view);
  }
  console.log(`${fields} fields were typed into.`);
  assert.ok(fields > 80, `${fields} fields`);
  for (const view of VIEWS) {
    await go(page, view);
    assert.deepEqual(await come(page), [], `${view}, once more`);
  }
  await page.reload();
  await running(page);
  assert.deepEqual(await come(page), [], "after loading again");
  await page.context().close();
});

test("harm in the address runs nothing", async () => {
  const ways = [(one) => `/#${one}`, (one) => `/?${one}#fill`, (one) => `/#fill=${encodeURIComponent(one)}`, (one) => `/#practice=${one}`];
  for (const [n, one] of HARM.entries()) {
    const page = await stage.openPage({ path: ways[n % ways.length](one), serviceWorkers: "block", before: listen });
    for (const way of ways) {
      await page.evaluate((hash) => (location.hash = hash), way(one).replace(/^[^#]*#/, ""));
      await settled(page);
      assert.deepEqual(await come(page), [], way(one));
    }
    await page.context().close();
  }
  assert.deepEqual(stage.errors, []);
});

test("the policy refuses what would make script out of text, and a second way to allow it", async () => {
  const page = await stage.openPage({ path: "/#fill", serviceWorkers: "allow", before: listen });
  const refused = await page.evaluate(async () => {
    const tries = {
      markup: () => (document.createElement("div").innerHTML = "<b>x</b>"),
      script: () => (document.createElement("script").textContent = "window.ran=1"),
      address: () => (document.createElement("script").src = "./boot.js"),
      worker: () => navigator.serviceWorker.register("./boot.js"),
      policy: () => trustedTypes.createPolicy("other", { createHTML: (text) => text }),
      evaluated: () => new Function("window.ran=1")(),
      timer: () => setTimeout("window.ran=1", 0),
      frame: () => document.body.appendChild(Object.assign(document.createElement("iframe"), { src: "./boot.js" })),
      elsewhere: () => fetch("http://127.0.0.1:1/"),
    };
    const outcomes = {};
    for (const [name, attempt] of Object.entries(tries)) {
      const before = window.refused.length;
      try {
        await attempt();
      } catch {
        // What is told of it counts.
      }
      await new Promise((done) => setTimeout(done, 50));
      outcomes[name] = window.refused.length > before;
    }
    return { ...outcomes, ran: "ran" in window };
  });
  const { ran, ...all } = refused;
  assert.equal(ran, false);
  for (const [name, was] of Object.entries(all)) assert.ok(was, `${name} was refused`);
  await page.context().close();
});
