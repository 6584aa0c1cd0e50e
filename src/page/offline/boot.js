// Starts the page and keeps it usable without a network.
//
// The page's own code hears of a new version by the window event "brimline-update" (or, if it
// was not listening yet, by `window.brimlineUpdate`), and answers with "brimline-accept-update".

// The files of the other languages: the build writes them (tag: address and digest) into this line.
const WORDS = {/* __WORDS__ */};

// The words of a language. They are fetched only here, and kept for offline use from then on.
async function words(language) {
  const [file, integrity] = WORDS[language];
  const answer = await fetch(file, { integrity });
  if (!answer.ok) throw new Error(answer.statusText);
  navigator.serviceWorker?.ready.then(({ active }) => active.postMessage({ keep: file }));
  return answer.text();
}

async function start() {
  const waiting = document.getElementById("boot-wait");
  showOwn(Object.keys(WORDS));
  try {
    // Not a static import: a module that fails to load would take this message with it.
    const { default: init } = await import("./brimline.js");
    await begin(Object.keys(WORDS), words);
    await init({ module_or_path: new URL("./brimline_bg.wasm", import.meta.url) });
    waiting.hidden = true;
  } catch (reason) {
    waiting.hidden = true;
    document.getElementById("boot-reason").textContent = String(reason);
    document.getElementById("boot-failed").hidden = false;
    throw reason;
  }
}

function announceUpdate() {
  window.brimlineUpdate = true;
  window.dispatchEvent(new CustomEvent("brimline-update"));
}

// `active` tells an update from the first install: the first worker has no predecessor.
function watch(registration) {
  const fresh = registration.installing;
  fresh?.addEventListener("statechange", () => {
    if (fresh.state === "installed" && registration.active) announceUpdate();
  });
}

function acceptUpdate(registration) {
  if (!registration.waiting) {
    // Another tab was quicker: the new worker already answers.
    location.reload();
    return;
  }
  navigator.serviceWorker.addEventListener("controllerchange", () => location.reload(), { once: true });
  registration.waiting.postMessage("use-new-version");
}

// Text becomes script nowhere in this page but here, and here it is always the same: the policy can be made once.
function workerAddress() {
  const policy = window.trustedTypes?.createPolicy("brimline", { createScriptURL: () => "./worker.js" });
  return policy?.createScriptURL("") ?? "./worker.js";
}

async function keepOffline() {
  // Missing where the address is neither https nor this machine: the page then needs its server.
  if (!("serviceWorker" in navigator)) return;
  const registration = await navigator.serviceWorker.register(workerAddress(), { updateViaCache: "none" });
  registration.addEventListener("updatefound", () => watch(registration));
  watch(registration);
  if (registration.waiting && registration.active) announceUpdate();
  window.addEventListener("brimline-accept-update", () => acceptUpdate(registration), { once: true });
}

await start();
try {
  await keepOffline();
} catch (reason) {
  // The page works all the same, as long as its server answers.
  console.warn(`Brimline is not kept for offline use: ${reason}`);
}
