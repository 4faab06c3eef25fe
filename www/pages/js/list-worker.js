// Works on a list of trees away from the page: the module reads, answers and plans it in slices, and a message that
// comes between two is heard. What is shown goes to the page as a row of texts, see list.js.
import init, { List, take_regional, take_words } from "./list-engine.js";

/** What a slice may take, milliseconds. */
const SLICE = 20;
/** So many rows are the first slice of any work; each slice has so many times those of the one before at the most. */
const FIRST = 50;
const MORE = 4;
/** Progress is told no more often, milliseconds. */
const TELL = 50;

/** A list that is read once nothing is asked yet: browsers compile a part of the module when it is first called, and the
    reader's own list need not wait for that. */
const ONE_TREE = "Tag,Species,DBH (in),Lat,Lon,Target\n1,Norway maple,9,42.4,-71.5,none\n";

let list = null;
// The number of the last request: the work for an earlier one goes no further.
let current = 0;

const fetched = async (name) => {
  const answer = await fetch(new URL(name, import.meta.url));
  if (!answer.ok) throw new Error(name);
  return new Uint8Array(await answer.arrayBuffer());
};

// Messages are read while this waits.
const channel = new MessageChannel();
let next = null;
channel.port1.onmessage = () => next();
const turn = () => new Promise((resolve) => { next = resolve; channel.port2.postMessage(0); });

async function start({ language, today, units }) {
  const [climate, regional, words, lists] = await Promise.all([
    fetched("./climate.bin"), fetched("./regional.bin"), fetched("./words-es.bin"), fetched("./lists-es.bin"),
    init({ module_or_path: new URL("./list-engine.wasm", import.meta.url) }),
  ]);
  // Names of trees are read in every language, whichever the page speaks.
  if (!take_regional(regional) || !take_words(words, lists)) throw new Error("files of two versions");
  list = new List(language, today, units, climate);
  const warm = new List(language, today, units, climate);
  warm.open("", new TextEncoder().encode(ONE_TREE));
  while (JSON.parse(warm.step(1)).more);
  warm.free();
}

function saved(number, file) {
  const bytes = list.file(file);
  postMessage({ number, file, bytes }, [bytes.buffer]);
}

/** Works until all is done, or another request comes. What it was for may be a file. */
async function work(number, file = "", taken = true) {
  let rows = FIRST;
  let told = performance.now();
  for (;;) {
    const began = performance.now();
    const said = JSON.parse(list.step(rows));
    const now = performance.now();
    if (!said.more) {
      if (file) return saved(number, file);
      return postMessage({ number, taken, ...said });
    }
    const fit = (rows * SLICE) / Math.max(now - began, 1);
    rows = said.anew ? FIRST : Math.max(10, Math.min(20000, Math.round(Math.min(fit, rows * MORE))));
    // What is drawn is always told.
    if (now - told > TELL || Object.keys(said.areas).length > 0) {
      told = now;
      postMessage({ number, ...said });
    }
    await turn();
    if (number !== current) return undefined;
  }
}

// The file of natives, once somebody asked for replanting. Where it does not come, the part says so and asks again next time.
let natives = false;
async function with_natives() {
  try {
    natives ||= list.take_natives(await fetched("./natives.bin"));
  } catch {
    natives = false;
  }
}

let started = null;
self.onmessage = async ({ data }) => {
  const { number, does } = data;
  try {
    if (does === "start") {
      started = start(data);
      await started;
      return;
    }
    await started;
    if (does === "page") {
      if (data.table === "replant") await with_natives();
      postMessage({ page: true, ...JSON.parse(list.page(data.table, data.from)) });
      return;
    }
    if (does === "file") {
      // What is being planned anew has no files: its work goes on.
      if (!list.want(data.kind)) return postMessage({ number, file: data.kind, bytes: new Uint8Array() });
      current = number;
      return await work(number, data.kind);
    }
    if (does === "draft") {
      postMessage({ draft: list.draft(), id: list.id() });
      return;
    }
    current = number;
    let taken = true;
    if (does === "open") taken = list.open(data.name, new Uint8Array(data.bytes));
    else if (does === "found") list.open_found(data.name, new Uint8Array(data.bytes));
    else if (does === "restore") list.restore(data.name, new Uint8Array(data.bytes), data.draft);
    else if (does === "stop") list.stop();
    else list.act(data.act);
    await work(number, "", taken);
  } catch (error) {
    postMessage({ number, failed: String(error) });
  }
};
