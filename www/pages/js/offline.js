// The page about use with no signal: tells which pages are kept on this device, and keeps all of its language, or again
// only those that were read. The worker does it, a step at a message; page.js says when it may be asked.
const $ = (id) => document.getElementById(id);
const part = $("kept");
const { lang } = document.documentElement;
/** What the page says, by the name of its attribute, with its gaps filled. */
const say = (name, gaps = {}) => Object.entries(gaps)
  .reduce((text, [gap, value]) => text.replace(`{${gap}}`, () => value), part.getAttribute(`data-${name}`));
const megabytes = (bytes) => (bytes / 1e6).toLocaleString(lang, { minimumFractionDigits: 1, maximumFractionDigits: 1 });

// With no signal this page stands in for one that is not kept.
const absent = new URLSearchParams(location.search).get("not-kept");
if (absent !== null) {
  const base = new URL(part.dataset.base, document.baseURI).href;
  const page = new URL(absent, base).href;
  if (page.startsWith(base)) {
    $("not-kept").hidden = false;
    $("not-kept-page").href = page;
    $("not-kept-page").textContent = absent;
  }
}

let registration;
/** Asks the worker to go a step towards a wish, `all` or `read`, or with none only what is kept. */
const ask = (wish) => new Promise((resolve, reject) => {
  const channel = new MessageChannel();
  channel.port1.onmessage = ({ data }) => resolve(data);
  registration.active.postMessage({ pagesOf: lang, wish }, [channel.port2]);
  setTimeout(() => reject(new Error("the worker does not answer")), 60000);
});

let going = false;
let last;

/** Shows what is kept, and what can be done about it. */
function show(told, trouble = "") {
  last = told;
  const { pages, kept, bytes, missing, read, wish } = told;
  const whole = kept === pages;
  const gaps = { kept, pages, read: read.length, size: megabytes(bytes) };
  $("kept-said").textContent = say(whole ? "whole" : "some", gaps);
  $("kept-trouble").textContent = trouble || (wish === "room" && !whole ? say("room-before") : "");
  const [keep, only] = [$("keep-all"), $("only-read")];
  keep.hidden = whole || going;
  $("keep-size").textContent = whole || going ? "" : say("takes", { missing: pages - kept, size: megabytes(missing) });
  // While pages come, this is how it is stopped.
  only.hidden = kept === read.length && !going;
  const bar = $("kept-progress");
  bar.hidden = !going;
  bar.max = pages;
  bar.value = kept;
  const links = read.map(([address, title]) => {
    const [item, link] = [document.createElement("li"), document.createElement("a")];
    link.href = address;
    link.textContent = title;
    item.append(link);
    return item;
  });
  $("kept-list").hidden = !links.length;
  $("kept-list").querySelector("ul").replaceChildren(...links);
}

async function keepAll() {
  // Once a newer version waits, the pages of this one are no longer on the server.
  if (registration.waiting) return show(await ask(), say("first-update"));
  going = true;
  let told;
  do {
    told = await ask("all").catch((error) => { going = false; throw error; });
    if (told.notKept || told.kept === told.pages) going = false;
    else if (going) show(told);
  } while (going);
  const { notKept } = told;
  return show(notKept?.why === "room" ? await ask() : told, notKept && say(notKept.why === "room" ? "room" : "broke", { file: notKept.path }));
}

async function onlyRead() {
  going = false;
  // What is on its way comes first, or it would stay.
  await running;
  show(await ask("read"));
}

let running;
/** Does what was pressed; the button may be gone then, and its reader is left at what is said. */
async function pressed(work) {
  await work().catch(() => show({ ...last, wish: undefined }, say("broke", { file: "sw.js" })));
  if (document.activeElement === document.body) $("kept-said").focus();
}

document.addEventListener("slipbark-checked", async ({ detail }) => {
  registration = detail;
  const told = await ask();
  if (!told.pages || going) return;
  part.hidden = false;
  show(told);
});
$("keep-all").addEventListener("click", () => { running = pressed(keepAll); });
$("only-read").addEventListener("click", () => pressed(onlyRead));
