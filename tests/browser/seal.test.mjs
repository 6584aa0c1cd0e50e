// The sealed folder, as the desk tool writes it: given out by this repository's server and by a general one, it is the
// page, with its headers, packed files and digests, and without a network.

import assert from "node:assert/strict";
import { spawn, spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { once } from "node:events";
import { mkdtempSync, readFileSync, readdirSync, rmSync, statSync, writeFileSync } from "node:fs";
import { createServer } from "node:net";
import { homedir, tmpdir } from "node:os";
import { join } from "node:path";
import { after, test } from "node:test";
import { brotliDecompressSync, gunzipSync } from "node:zlib";
import { required } from "./chromium.mjs";
import { DESK, ROOT, offlineReady, openStage, running } from "./harness.mjs";

const OUT = join(mkdtempSync(join(tmpdir(), "brimline-sealed-")), "out");
const PAGE = join(OUT, "page");
after(() => rmSync(join(OUT, ".."), { recursive: true, force: true }));

const desk = (...words) => spawnSync(DESK, words, { cwd: ROOT, encoding: "utf8" });
const sealed = desk("seal", OUT);
assert.equal(sealed.status, 0, sealed.stdout + sealed.stderr);

/** Every file below a folder, by its name. */
const filesOf = (folder) =>
  readdirSync(folder, { recursive: true }).filter((name) => statSync(join(folder, name)).isFile()).sort();
const FILES = filesOf(PAGE).filter((name) => name !== "_headers");

const stage = await openStage({ folder: PAGE });
after(() => stage.close());

/** What this visitor's pages complain of: the browser's console and its reports on the content policy. */
async function visit(origin) {
  const context = await stage.browser.newContext();
  const complaints = [];
  context.on("console", (message) => message.type() === "error" && complaints.push(message.text()));
  context.on("weberror", (error) => complaints.push(String(error.error())));
  await context.addInitScript(() => {
    addEventListener("securitypolicyviolation", (one) => console.error(`${one.effectiveDirective} ${one.blockedURI}`));
  });
  const page = await context.newPage();
  await page.goto(origin);
  await running(page);
  await page.locator("[data-answer='fill.rounded']").waitFor();
  return { context, page, complaints };
}

/** All views, one after the other. */
async function throughAll(page) {
  for (const view of ["flow", "shift", "cautions", "log", "practice", "site", "fill"]) {
    await page.locator(`nav a[href="#${view}"]`).click();
    await page.locator(`.view.${view}`).waitFor();
  }
}

test("all views work, nothing is refused, and it works on without its server", async () => {
  const { context, page, complaints } = await visit(stage.origin);
  await offlineReady(page);
  await throughAll(page);
  // Words of another language come from beside the frame.
  await page.locator("#language").selectOption("es");
  await page.waitForFunction(() => document.documentElement.lang === "es");
  await page.locator("#language").selectOption("en");
  await page.waitForFunction(() => document.documentElement.lang === "en");
  assert.equal(await page.evaluate(() => window.crossOriginIsolated), true, "nobody else shares its process");
  await stage.stopServer();
  try {
    await page.reload();
    await running(page);
    await throughAll(page);
  } finally {
    await stage.startServer();
  }
  assert.deepEqual(complaints, []);
  await context.close();
});

/** The rules of `_headers`: [address, { name: value }]. */
const RULES = readFileSync(join(PAGE, "_headers"), "utf8").split("\n\n").slice(1).map((rule) => {
  const [address, ...lines] = rule.trim().split("\n");
  return [address, Object.fromEntries(lines.map((line) => line.trim().split(/: (.*)/)).map(([name, value]) => [name.toLowerCase(), value]))];
});
const meets = (rule, address) =>
  new RegExp(`^${rule.replace(/[.+?^${}()|[\]\\]/g, "\\$&").replace("*", ".*")}$`).test(address);

test("every file comes with the headers that the list promises, as it is and packed", async () => {
  let packed = 0;
  for (const name of FILES) {
    if (/\.(gz|br)$/.test(name)) continue;
    const content = readFileSync(join(PAGE, name));
    const promised = Object.assign({}, ...RULES.filter(([rule]) => meets(rule, `/${name}`)).map(([, headers]) => headers));
    const { origin } = stage;
    const answer = await fetch(`${origin}/${name}`, { headers: { "Accept-Encoding": "identity" } });
    for (const [header, value] of Object.entries(promised)) {
      const found = answer.headers.get(header);
      // A server may leave out that text is UTF-8; the content policy lets no other text in.
      assert.equal(header === "content-type" ? found.split(";")[0] : found, header === "content-type" ? value.split(";")[0] : value, `${name}: ${header}`);
    }
    assert.equal(Object.keys(promised).length, 9, `${name} meets each kind of rule once`);
    assert.equal(Buffer.compare(Buffer.from(await answer.arrayBuffer()), content), 0, name);
    for (const [ending, unpack] of [["gz", gunzipSync], ["br", brotliDecompressSync]]) {
      if (!FILES.includes(`${name}.${ending}`)) continue;
      const bytes = readFileSync(join(PAGE, `${name}.${ending}`));
      assert.equal(Buffer.compare(unpack(bytes), content), 0, `${name}.${ending}`);
      const sent = await fetch(`${origin}/${name}`, { headers: { "Accept-Encoding": ending === "gz" ? "gzip" : "br" } });
      assert.equal(sent.headers.get("content-encoding"), ending === "gz" ? "gzip" : "br", name);
      assert.equal(Buffer.compare(Buffer.from(await sent.arrayBuffer()), content), 0, name);
      packed += 1;
    }
  }
  assert.ok(packed >= 16, `${packed} packed files`);
});

test("the digests are right, and no file says on whose machine it was made", () => {
  const list = readFileSync(join(OUT, "SHA256SUMS"), "utf8").trim().split("\n").map((line) => line.split("  "));
  assert.deepEqual(list.map(([, name]) => name).sort(), filesOf(OUT).filter((name) => name !== "SHA256SUMS"));
  for (const [sum, name] of list) {
    const bytes = readFileSync(join(OUT, name));
    assert.equal(createHash("sha256").update(bytes).digest("hex"), sum, name);
    for (const place of [ROOT, homedir(), "registry/src"]) assert.ok(!bytes.includes(place), `${name} names ${place}`);
  }
  const whole = createHash("sha256").update(readFileSync(join(OUT, "SHA256SUMS"))).digest("hex");
  const sizes = ["", ".gz", ".br"].map((ending) => FILES.filter((name) => name.endsWith(`.wasm${ending}`)).reduce((sum, name) => sum + statSync(join(PAGE, name)).size, 0));
  console.log(`${list.length} files; wasm ${sizes.join(", ")} bytes as it is, gzip, Brotli; SHA-256 of the list ${whole}`);
});

test("it is written over nothing that this tool did not write", () => {
  const note = join(OUT, "notes.txt");
  writeFileSync(note, "mine");
  try {
    const refused = desk("seal", OUT);
    assert.equal(refused.status, 1);
    assert.match(refused.stderr, /notes\.txt was not written by this tool. Choose an empty folder/);
    assert.equal(readFileSync(note, "utf8"), "mine");
  } finally {
    rmSync(note);
  }
});

test("a general server gives it out as well, with no headers at all, also from a folder below its top", async () => {
  const port = await freePort();
  const server = spawn("python3", ["-m", "http.server", String(port), "--bind", "127.0.0.1", "--directory", OUT], { stdio: "ignore" });
  const ended = once(server, "exit");
  try {
    const origin = `http://127.0.0.1:${port}/page/`;
    for (let tries = 0; tries < 100 && !(await fetch(origin).then(({ ok }) => ok, () => false)); tries += 1) {
      await new Promise((go) => setTimeout(go, 100));
    }
    const { context, page, complaints } = await visit(origin);
    await offlineReady(page);
    await throughAll(page);
    assert.deepEqual(complaints, []);
    server.kill();
    await ended;
    await page.reload();
    await running(page);
    await page.locator("[data-answer='fill.rounded']").waitFor();
    await context.close();
  } finally {
    server.kill();
  }
});

/** A port that was free a moment ago. */
async function freePort() {
  const asked = createServer().listen(0, "127.0.0.1");
  await once(asked, "listening");
  const { port } = asked.address();
  asked.close();
  await once(asked, "close");
  return port;
}

test("the single file is the one that the build made", () => {
  assert.equal(Buffer.compare(readFileSync(join(OUT, "brimline.html")), readFileSync(required("BRIMLINE_ONE_FILE"))), 0);
});
