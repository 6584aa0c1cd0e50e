// Keeps the whole page on this device and answers from there. This file is a template: the build
// writes the version and the files (address -> digest) of the finished page into the two lines below.
const VERSION = "__VERSION__";
const FILES = {/* __FILES__ */};

const PREFIX = "brimline-";
const CACHE = PREFIX + VERSION;
const HOME = new URL("./", self.location).href;
const KEPT = new Set(Object.keys(FILES).map((file) => new URL(file, self.location).href));

// All or nothing, and each file checked: a page half old and half new is never kept.
async function install() {
  const cache = await caches.open(CACHE);
  await cache.addAll(
    Object.entries(FILES).map(([file, integrity]) => new Request(file, { cache: "no-cache", integrity })),
  );
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
  return KEPT.has(address.href) ? address.href : null;
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
});
