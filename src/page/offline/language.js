// The language of the page: chosen at its top, kept on this device, and fetched only when somebody chooses it. The build
// puts this before what starts the page.
//
// The page draws what `window.brimlineLanguage` tells, and hears of each change by the window event
// "brimline-language". What asks for a language is heard here: the list, and the button for another try.

const KEY = "brimline.language";
const ENGLISH = "en";
// The start does not wait longer than this for words.
const PATIENCE = 2000;

// Whose words are here, and these (English is in the page); which are asked for; which did not come.
const state = (window.brimlineLanguage = { now: ENGLISH, text: "", asked: ENGLISH, failed: "" });
let give;

function change(what) {
  Object.assign(state, what);
  state.tags = `${state.now} ${state.asked} ${state.failed}`;
  document.documentElement.lang = state.now;
  window.dispatchEvent(new Event("brimline-language"));
}

async function speak(asked) {
  change({ asked, failed: "" });
  // Somebody may have asked for another one meanwhile.
  const still = () => state.asked === asked;
  try {
    const text = asked === ENGLISH ? "" : await give(asked);
    if (!still()) return;
    change({ now: asked, text });
  } catch (reason) {
    console.warn(reason);
    if (still()) change({ asked: state.now, failed: asked });
    return;
  }
  try {
    localStorage.setItem(KEY, asked);
  } catch {
    // Where the browser keeps nothing the page says so, and the language is chosen anew.
  }
}

addEventListener("change", ({ target }) => target.id === "language" && speak(target.value));
addEventListener("click", ({ target }) => target.name === "language-again" && speak(state.failed));

function chosen() {
  try {
    return localStorage.getItem(KEY);
  } catch {
    return null;
  }
}

// The one of the `languages` that was chosen here, else one that the browser's user reads, else English.
function reader(languages) {
  const read = [chosen(), ...navigator.languages].map((tag) => tag?.split("-")[0].toLowerCase());
  return read.find((one) => one === ENGLISH || languages.includes(one)) ?? ENGLISH;
}

// What the page says before it runs, in one language.
function showOwn(languages) {
  const read = reader(languages);
  for (const one of document.querySelectorAll("#boot-wait > [lang], #boot-failed > [lang]")) one.hidden = one.lang !== read;
}

// `words` gives those of one of the `languages`. Begins with the first of them.
async function begin(languages, words) {
  give = words;
  const first = reader(languages);
  if (first === ENGLISH) return;
  await Promise.race([speak(first), new Promise((done) => setTimeout(done, PATIENCE))]);
}
