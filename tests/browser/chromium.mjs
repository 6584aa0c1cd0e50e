// The browser that the suite found, started the same way for tests and measurements.

// The service worker's own requests belong in the record too; read when the library is loaded.
process.env.PW_EXPERIMENTAL_SERVICE_WORKER_NETWORK_EVENTS = "1";
const { chromium } = await import("playwright-core");

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
