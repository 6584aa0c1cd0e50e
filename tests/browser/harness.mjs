// The stage for tests of the finished page: this repository's own server and a headless browser.
//
//   const stage = await openStage();
//   const page = await stage.openPage({ width: 360, height: 640 });
//   ...
//   await stage.close();
//
// `cargo run -- test --only browser` builds the page, copies this folder to where its packages
// are, and says by BRIMLINE_* variables where everything is.

import { spawn } from "node:child_process";
import { once } from "node:events";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { createInterface } from "node:readline";
import { launch, required } from "./chromium.mjs";

/** The folder of the finished page. */
export const PAGE = required("BRIMLINE_PAGE");
/** The checkout. */
export const ROOT = required("BRIMLINE_ROOT");
/** The desk tool, for tests that call it. */
export const DESK = required("BRIMLINE_DESK");

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** Serves `folder`; port 0 takes any free one. */
export async function startServer(folder = PAGE, port = 0) {
  const child = spawn(DESK, ["serve", String(port), "--page", folder], { stdio: ["ignore", "pipe", "pipe"] });
  const exited = once(child, "exit");
  const orphaned = () => child.kill();
  process.on("exit", orphaned);
  let complaint = "";
  child.stderr.on("data", (text) => (complaint += text));
  for await (const line of createInterface({ input: child.stdout })) {
    const address = line.match(/http:\/\/[\d.]+:(\d+)/);
    if (!address) continue;
    return {
      origin: address[0],
      port: Number(address[1]),
      async stop() {
        process.off("exit", orphaned);
        child.kill();
        await exited;
      },
    };
  }
  throw new Error(`The server did not start: ${complaint}`);
}

/** Opens a server for the page (or a copy of it in `folder`) and a browser. */
export async function openStage({ folder = PAGE } = {}) {
  let server = await startServer(folder, 0);
  const { origin, port } = server;
  const browser = await launch();
  /** Every request of every page and service worker: { url, method, by }. */
  const requests = [];
  /** Every error in the console, and every uncaught one. */
  const errors = [];

  async function newContext({ width = 1024, height = 768, colorScheme = "light", forcedColors = "none", ...others }) {
    const viewport = { width, height };
    const context = await browser.newContext({ viewport, colorScheme, forcedColors, ...others });
    context.on("request", (request) => {
      const by = request.serviceWorker() ? "worker" : "page";
      requests.push({ url: request.url(), method: request.method(), by });
    });
    context.on("console", (message) => {
      if (message.type() === "error") errors.push(message.text());
    });
    context.on("weberror", (error) => errors.push(String(error.error())));
    return context;
  }

  return {
    origin,
    browser,
    requests,
    errors,

    /**
     * Opens the page as a new visitor, or as the visitor of `context`, and waits until it runs.
     *
     * `path` may carry a query; `before` is called with the page before it loads (for routes);
     * `ready: false` does not wait; other options go to the browser context (`locale`,
     * `reducedMotion`, `serviceWorkers: "block"`, ...).
     */
    async openPage({ path = "/", before, ready = true, context, ...look } = {}) {
      const page = await (context ?? (await newContext(look))).newPage();
      await before?.(page);
      await page.goto(origin + path);
      if (ready) await running(page);
      return page;
    },

    /** Takes the network away: what still works then works offline. */
    stopServer: () => server.stop(),

    /** Brings the server back at the same address. */
    async startServer() {
      server = await startServer(folder, port);
    },

    async close() {
      await browser.close();
      await server.stop();
    },
  };
}

/** Waits until the page has taken over from its opening line and shows a view, with all parts of it. */
export async function running(page) {
  await page.locator("#boot-wait").waitFor({ state: "hidden" });
  await page.locator("main .view, #boot-failed:not([hidden])").first().waitFor();
  await page.locator("main[aria-busy=true]").waitFor({ state: "detached" });
}

/** Waits until everything is kept on the device and the service worker answers for the server. */
export async function offlineReady(page) {
  await page.waitForFunction(() => navigator.serviceWorker.controller?.state === "activated");
}

/** What axe finds wrong: [{ id, impact, help, targets }], empty when all is well. */
export async function axe(page, options = {}) {
  // Evaluated by the debugger: the page's content policy forbids an added script.
  await page.evaluate(AXE);
  const { violations } = await page.evaluate((given) => window.axe.run(document, given), options);
  return violations.map(({ id, impact, help, nodes }) => ({
    id,
    impact,
    help,
    targets: nodes.map((node) => node.target.join(" ")),
  }));
}
