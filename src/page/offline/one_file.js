// Starts the page where all of it stands in one file: opened from a memory stick, with no server behind it.
// The build puts the page's own scripts before this one, in the same module; `unpacked` gives them
// their chunks, and the words of the languages.

async function unpacked(name) {
  const packed = await (await fetch(`data:application/zlib;base64,${document.getElementById(name).textContent}`)).blob();
  const bytes = packed.stream().pipeThrough(new DecompressionStream("deflate"));
  return new Response(bytes, { headers: { "Content-Type": "application/wasm" } });
}

const waiting = document.getElementById("boot-wait");
const languages = [...document.querySelectorAll("script[id^='words-']")].map(({ id }) => id.replace("words-", ""));
showOwn(languages);
try {
  const words = async (language) => (await unpacked(`words-${language}`)).text();
  await begin(languages, words);
  await __wbg_init({ module_or_path: unpacked("brimline_bg.wasm") });
  waiting.hidden = true;
} catch (reason) {
  waiting.hidden = true;
  document.getElementById("boot-reason").textContent = String(reason);
  document.getElementById("boot-failed").hidden = false;
  throw reason;
}
