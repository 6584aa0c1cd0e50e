// Keeps the whole page on this device and answers from there. This file is a template: the build
// writes the version and the files (address -> digest) of the finished page into the two lines below. Those of its other
// languages, which are kept only where somebody reads them, stand in what starts the page, and nowhere else.
const VERSION = "__VERSION__";
const FILES = {/* __FILES__ */};

const PREFIX = "brimline-";
const CACHE = PREFIX + VERSION;
const HOME = new URL("./", self.location).href;
const KEPT = new Set(Object.keys(FILES).map((file) => new URL(file, self.location).href));
const STARTER = Object.keys(FILES).find((file) => file.endsWith("boot.js"));

// All or nothing, and each file checked: a page half old and half new never answers.
async function install() {
  const cache = await caches.open(CACHE);
  await cache.addAll(Object.entries(FILES).map(checked));
  await cache.addAll((await read(cache)).map(checked));
}

const checked = ([file, integrity]) => new Request(file, { cache: "no-cache", integrity });
const language = (address) => address.match(/words-(\w+)-\w+\.ftl$/)?.[1];

// All other languages, address and digest.
async function later(cache) {
  const starter = await cache.match(STARTER);
  return [...(await starter.text()).matchAll(/"(words-[^"]+)", "([^"]+)"/g)].map(([, ...entry]) => entry);
}

// Those that are read here, by what earlier versions kept.
async function read(cache) {
  const names = (await caches.keys()).filter((name) => name.startsWith(PREFIX));
  const kept = await Promise.all(names.map(async (name) => (await caches.open(name)).keys()));
  const languages = new Set(kept.flat().map(({ url }) => language(url)));
  return (await later(cache)).filter(([file]) => languages.has(language(file)));
}

async function keep(file) {
  const cache = await caches.open(CACHE);
  const entry = (await later(cache)).find(([one]) => one === file);
  if (entry && !(await cache.match(file))) await cache.add(checked(entry));
}

async function activate() {
  const names = await caches.keys();
  const old = names.filter((name) => name.startsWith(PREFIX) && name !== CACHE);
  await Promise.all(old.map((name) => caches.delete(name)));
  await self.clients.claim();
}

function keptAddress(request) {
  const address = new URL(request.url);
  if (request.method !== "GET" || address.origin !== self.location.origin) return null;
  if (request.mode === "navigate") return HOME;
  address.search = "";
  address.hash = "";
  return KEPT.has(address.href) || language(address.href) ? address.href : null;
}

async function answer(request, address) {
  const cache = await caches.open(CACHE);
  // A browser short of room may have dropped the cache: the server is then the only source.
  return (await cache.match(address)) ?? fetch(request);
}

self.addEventListener("install", (event) => event.waitUntil(install()));
self.addEventListener("activate", (event) => event.waitUntil(activate()));
self.addEventListener("fetch", (event) => {
  const address = keptAddress(event.request);
  if (address) event.respondWith(answer(event.request, address));
});
// A new version waits until the person says so: nothing changes under half-typed figures.
self.addEventListener("message", (event) => {
  if (event.data === "use-new-version") self.skipWaiting();
  if (event.data?.keep) event.waitUntil(keep(event.data.keep));
});
