// Works on a list of trees away from the page: the module reads, answers and plans it in slices, and a message that
// comes between two is heard. What is shown goes to the page as a row of texts, see list.js.
import init, { List, take_regional, take_words } from "./list-engine.js";

/** What a slice may take, milliseconds. */
const SLICE = 20;
/** Progress is told no more often, milliseconds. */
const TELL = 50;

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
}

/** Works until all is done, or another request comes. */
async function work(number) {
  let rows = 50;
  let told = performance.now();
  for (;;) {
    const began = performance.now();
    const said = JSON.parse(list.step(rows));
    const now = performance.now();
    if (!said.more) return postMessage({ number, ...said });
    rows = Math.max(10, Math.min(20000, Math.round((rows * SLICE) / Math.max(now - began, 1))));
    if (now - told > TELL) {
      told = now;
      postMessage({ number, ...said });
    }
    await turn();
    if (number !== current) return undefined;
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
    if (does === "file") {
      const bytes = list.file(data.kind);
      postMessage({ number, file: data.kind, bytes }, [bytes.buffer]);
      return;
    }
    if (does === "page") {
      postMessage({ page: true, ...JSON.parse(list.page(data.table, data.from)) });
      return;
    }
    current = number;
    if (does === "open") list.open(data.name, new Uint8Array(data.bytes));
    else if (does === "stop") list.stop();
    else list.act(data.act);
    await work(number);
  } catch (error) {
    postMessage({ number, failed: String(error) });
  }
};
