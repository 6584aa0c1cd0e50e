// The browser that the suite found, started the same way for tests and measurements.

// The service worker's own requests belong in the record too; read when the library is loaded.
process.env.PW_EXPERIMENTAL_SERVICE_WORKER_NETWORK_EVENTS = "1";
const { chromium } = await import("playwright-core");
import { spawn } from "node:child_process";
import { once } from "node:events";
import { createInterface } from "node:readline";

const ARGUMENTS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** What the suite says by this variable. */
export function required(name) {
  const value = process.env[name];
  if (!value) throw new Error(`${name} is not set: run these tests with "cargo run -- test --only browser" (or bench).`);
  return value;
}

/** Starts the browser. */
export const launch = () => chromium.launch({ executablePath: required("BRIMLINE_CHROMIUM"), args: ARGUMENTS });

/**
 * Starts the browser on a profile of its own, as a person's browser keeps one: what the page kept is there the next
 * time. `kill` ends it as a power switch ends a program: with all its helpers, in the middle of whatever it does.
 */
export async function launchOn(profile) {
  const own = ["--headless", "--remote-debugging-port=0", `--user-data-dir=${profile}`, "about:blank"];
  const child = spawn(required("BRIMLINE_CHROMIUM"), [...ARGUMENTS, ...own], { stdio: ["ignore", "ignore", "pipe"], detached: true });
  const exited = once(child, "exit");
  const orphaned = () => child.kill("SIGKILL");
  process.on("exit", orphaned);
  let address;
  for await (const line of createInterface({ input: child.stderr })) {
    address = line.match(/DevTools listening on (ws:\S+)/)?.[1];
    if (address) break;
  }
  child.stderr.resume();
  if (!address) throw new Error("The browser did not start.");
  const browser = await chromium.connectOverCDP(address);
  const gone = async () => {
    await exited;
    process.off("exit", orphaned);
  };
  /** Sends a signal to the browser and all its helpers; tells whether one of them was there. */
  const killAll = (signal) => {
    try {
      return process.kill(-child.pid, signal);
    } catch (none) {
      if (none.code !== "ESRCH") throw none;
      return false;
    }
  };
  return {
    browser,
    context: browser.contexts()[0],
    pid: child.pid,
    async kill() {
      // All of it in one blow, and none of it may meet the next browser: one of its helpers that lives a moment longer
      // holds the files of the profile, and writes to them.
      killAll("SIGKILL");
      await gone();
      while (killAll(0)) await new Promise((done) => setTimeout(done, 10));
    },
    async close() {
      const session = await browser.newBrowserCDPSession();
      await session.send("Browser.close").catch(() => {});
      await gone();
    },
  };
}
