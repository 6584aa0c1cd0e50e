// An empty page for measurements. It is cross-origin isolated: elsewhere the browser's clock ticks in
// steps of 0.1 ms.

import { once } from "node:events";
import { readFile } from "node:fs/promises";
import { createServer } from "node:http";
import { extname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { launch, required } from "./chromium.mjs";

const TYPES = { "": "text/html", ".js": "text/javascript", ".mjs": "text/javascript", ".wasm": "application/wasm" };
const ISOLATED = {
  "Cross-Origin-Opener-Policy": "same-origin",
  "Cross-Origin-Embedder-Policy": "require-corp",
};

const HERE = fileURLToPath(new URL(".", import.meta.url));

/** Where each file of the page comes from. */
const FOLDERS = {
  built: required("BRIMLINE_BENCH"),
  spreadsheet: join(HERE, "node_modules/hyperformula/dist"),
  scripts: HERE,
};

async function answer({ url }, response) {
  const [, folder, name = ""] = new URL(url, "http://here").pathname.split("/");
  const content = folder ? readFile(join(FOLDERS[folder] ?? "", name)) : "<!doctype html><title>bench</title>";
  try {
    const body = await content;
    response.writeHead(200, { "Content-Type": TYPES[extname(name)], ...ISOLATED }).end(body);
  } catch {
    response.writeHead(404).end();
  }
}

/** Opens the page: { page, version, close }. */
export async function openBench() {
  const server = createServer(answer).listen(0, "127.0.0.1");
  await once(server, "listening");
  const browser = await launch();
  const page = await browser.newPage();
  await page.goto(`http://127.0.0.1:${server.address().port}/`);
  return {
    page,
    version: browser.version(),
    async close() {
      await browser.close();
      server.close();
    },
  };
}
