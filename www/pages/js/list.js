// The page for a list of trees: sends what is pressed and typed to the worker, and shows what it answers. Every element
// is made by createElement; nothing that came from a file is ever read as markup.
import * as drafts from "./list-draft.js";

const page = document.getElementById("property");
const area = (name) => document.getElementById(`area-${name}`) ?? document.getElementById(name);
const status = document.getElementById("l-told");
const progress = document.getElementById("l-progress");
const bar = progress.querySelector("progress");
const what = document.getElementById("l-what");

/** The most that is taken of a file, bytes. */
const LARGEST = 10_000_000;
/** Nothing is said of a wait that is shorter, milliseconds. */
const SHORT = 300;
/** A draft is written so long after the last change, milliseconds. */
const AFTER = 1000;
/** A stop that is not heard within this ends the worker, milliseconds. */
const UNHEARD = 1000;

const now = new Date();
const two = (number) => String(number).padStart(2, "0");
const start = {
  does: "start",
  language: document.documentElement.lang,
  // A day in the address is for checks: two runs on two days give the same plan by it.
  today: new URLSearchParams(location.search).get("today") ?? `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`,
  units: document.documentElement.lang === "en" ? "us" : "metric",
};

let worker = null;
let number = 0;
let waits = null;
let busy = false;
let edited = false;
/** The list that is open: id, name, bytes, and the draft that brings back what was typed since. Where the worker breaks it
    is opened again from here. */
let held = null;
/** A file that was sent to be opened: it is held once the worker took it. */
let sent = null;
/** While a draft is kept on the device: when it was written last, and what ends this tab's right to write it. */
let keeping = null;

/** Has the worker fetch and make ready what it works with. */
function begin() {
  if (worker) return;
  worker = new Worker(new URL("./list-worker.js", import.meta.url), { type: "module" });
  worker.onmessage = ({ data }) => hear(data);
  worker.onerror = () => failed();
  worker.postMessage(start);
}

function ask(message, transfer = []) {
  begin();
  // Rows of a table are had beside what is being done; a file is made once all is done.
  if (message.does === "page" || message.does === "draft") {
    worker.postMessage(message);
    return;
  }
  if (message.does === "file" && busy) return;
  busy = true;
  number += 1;
  worker.postMessage({ ...message, number }, transfer);
  clearTimeout(waits);
  waits = setTimeout(() => { progress.hidden = false; }, SHORT);
}

function done() {
  busy = false;
  clearTimeout(waits);
  progress.hidden = true;
  bar.removeAttribute("value");
  what.textContent = "";
}

/** Ends a worker that broke or does not hear, and opens the list again as it was left. */
function failed(words = page.dataset.crashed) {
  done();
  worker?.terminate();
  worker = null;
  // Where nothing was asked yet, the first press begins it anew.
  if (number === 0) return;
  const left = held;
  // A list that breaks while it is opened again is not opened a third time.
  held = null;
  if (left?.draft) restore(left);
  tell(words);
}

function restore(list) {
  sent = list;
  ask({ does: "restore", name: list.name, bytes: list.bytes, draft: list.draft });
}

function hear(told) {
  if (told.draft !== undefined) return drafted(told);
  if (told.page) return draw(told.areas);
  if (told.failed && told.number === undefined) return failed();
  if (told.number !== number) return undefined;
  if (told.failed) return failed();
  if (told.file) {
    done();
    return save(told.file, told.bytes);
  }
  if (told.more) {
    draw(told.areas);
    what.textContent = told.of ? `${told.what} ${told.done} / ${told.of}` : `${told.what} ${told.done || ""}`;
    if (told.of) bar.value = told.done / told.of;
    return undefined;
  }
  done();
  edited = told.edited;
  if (!told.taken) sent = null;
  opened(told.id);
  draw(told.areas);
  // What stands below in the same words is only spoken.
  status.classList.toggle("vh", Object.keys(told.areas).length > 0);
  if (told.said) status.textContent = told.said;
  if (told.to) lead(told.to);
  return undefined;
}

const SVG = "http://www.w3.org/2000/svg";
const made = (tag, into) => (tag === "svg" || into.namespaceURI === SVG ? document.createElementNS(SVG, tag) : document.createElement(tag));

/** Plays back what was drawn. */
function play(texts) {
  const root = document.createDocumentFragment();
  let at = root;
  for (let i = 0; i < texts.length; i += 1) {
    const text = texts[i].slice(1);
    switch (texts[i][0]) {
      case "<": at = at.appendChild(made(text, at)); break;
      case "=": i += 1; at.setAttribute(text, texts[i]); break;
      case "'": at.append(text); break;
      default: at = at.parentNode;
    }
  }
  return root;
}

/** Puts what was drawn into an area; what was typed there and not sent stays, as do open folds and the focus. */
function show(into, texts) {
  if (!into) return;
  const typed = [...into.querySelectorAll("input[type=text]")].filter((it) => it.id && it.value !== it.defaultValue)
    .map((it) => [it.id, it.value, it.defaultValue]);
  const open = [...into.querySelectorAll("details[open]")].map((it) => it.id);
  const focus = into.contains(document.activeElement) ? document.activeElement.id : "";
  into.replaceChildren(play(texts));
  for (const [id, value, before] of typed) {
    const field = document.getElementById(id);
    if (field && into.contains(field) && field.defaultValue === before) field.value = value;
  }
  for (const id of open) {
    const fold = document.getElementById(id);
    if (fold && into.contains(fold) && !fold.dataset.shut) fold.open = true;
  }
  if (focus) focusOn(document.getElementById(focus));
}

/** Puts the focus on a part. What can be reached by the keyboard stays so. */
function focusOn(part) {
  if (!part) return;
  if (part.tabIndex < 0) part.tabIndex = -1;
  part.focus();
}

/** Shows the areas that were drawn anew. */
function draw(areas) {
  for (const [name, texts] of Object.entries(areas)) show(area(name), texts);
}

/** Leads the reader to a part, and those who listen with it. */
function lead(id) {
  const part = document.getElementById(id);
  if (!part || part.contains(document.activeElement)) return;
  const to = part.matches("[tabindex], .errmsg") ? part : part.querySelector("summary, h2");
  focusOn(to);
}

function tell(words) {
  status.classList.remove("vh");
  status.textContent = words;
}

function save(name, bytes) {
  // What is being planned anew has no files.
  if (!bytes.length) return;
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([bytes]));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60000);
  if (name === "trees-plan.csv") edited = false;
  tell(page.dataset.saved.replace("{file}", () => name));
}

/** Opens a list, or with `found` a table of what was found at visits beside it. */
async function open(name, blob, does = "open") {
  if (blob.size > LARGEST) {
    tell(page.dataset.tooLarge);
    return;
  }
  const bytes = await blob.arrayBuffer();
  // A table of visits is no list to hold: the worker says so by what it did not take.
  if (does === "open") sent = { id: "", name, bytes, draft: "" };
  ask({ does, name, bytes });
}

async function picked(file, does) {
  if (!file) return;
  try {
    await open(file.name, file, does);
  } catch {
    tell(page.dataset.unreadable);
  }
}

page.addEventListener("change", async ({ target }) => {
  if (target.type !== "file") return;
  await picked(target.files[0], target.dataset.do);
  // The same file can be picked again.
  target.value = "";
});
// A file that is dropped anywhere is opened here, not by the browser in place of the page.
addEventListener("dragover", (event) => { if (event.dataTransfer?.types.includes("Files")) event.preventDefault(); });
addEventListener("drop", (event) => {
  const [file] = event.dataTransfer?.files ?? [];
  if (!file) return;
  event.preventDefault();
  picked(file, event.target.closest?.("#l-found") ? "found" : "open");
});
document.getElementById("l-sample").addEventListener("click", async () => {
  const address = new URL(page.dataset.sample, location.href);
  try {
    const answer = await fetch(address);
    if (!answer.ok) throw new Error(address);
    await open("trees.csv", await answer.blob());
  } catch {
    tell(page.dataset.unreadable);
  }
});
document.getElementById("l-stop").addEventListener("click", () => {
  ask({ does: "stop" });
  const asked = number;
  setTimeout(() => { if (number === asked && !progress.hidden) failed(page.dataset.stopped); }, UNHEARD);
});

const send = (control, entries = []) => {
  const { do: act, ...data } = control.dataset;
  if (act === "file") ask({ does: "file", kind: data.kind });
  else if (act === "page") ask({ does: "page", table: data.table, from: Number(data.from) });
  else ask({ does: "act", act: JSON.stringify({ do: act, data, entries }) });
};
page.addEventListener("click", ({ target }) => {
  const button = target.closest("button[data-do]");
  if (button) send(button);
});
page.addEventListener("submit", (event) => {
  event.preventDefault();
  const form = event.target;
  if (form.dataset.do) send(form, [...new FormData(form)].map(([name, value]) => [name, String(value)]));
});
// A fold with a table asks for its rows when it is opened.
page.addEventListener("toggle", ({ target }) => {
  if (target.open && target.dataset.open) send({ dataset: { do: target.dataset.open, table: target.dataset.table, from: "0" } });
}, true);
addEventListener("beforeunload", (event) => { if (edited && !keeping?.saved) event.preventDefault(); });

// What is kept on the device, only once somebody asked for it. On a site that keeps nothing, and in a frame, nothing is
// offered: the file is the only copy.
const draft = document.getElementById("l-draft");
const kept = document.getElementById("l-kept");
const keep = document.getElementById("l-keep");
const forget = document.getElementById("l-forget");
const offer = draft && window.top === window;
let saves = null;
/** When this tab wrote which list last. */
let mine = "";

/** The worker took a list, or worked on it. */
function opened(id) {
  if (sent && id && sent.id !== id) sent.id = id;
  if (sent && id === sent.id && held !== sent) {
    if (held?.id !== id) release();
    held = sent;
    // An earlier visit may have left a draft of this very list.
    if (offer) show_drafts();
  }
  sent = null;
  if (!held) return;
  if (keeping) keeping.saved = false;
  if (offer) draft.hidden = false;
  clearTimeout(saves);
  saves = setTimeout(() => ask({ does: "draft" }), AFTER);
}

/** What brings the list back came from the worker. */
async function drafted({ draft: text, id }) {
  if (!held || held.id !== id) return;
  held.draft = text;
  if (keeping) await save_draft();
}

/** Says what is kept. That nothing is stays out of the way once there is a plan. */
function say_kept(words, nothing = false) {
  kept.textContent = words;
  kept.classList.toggle("kept-not", nothing);
}

const clock = (at) => new Date(at).toLocaleTimeString(document.documentElement.lang, { hour: "2-digit", minute: "2-digit" });
const said = (name, gaps = {}) => Object.entries(gaps).reduce((text, [gap, value]) => text.replace(`{${gap}}`, () => value), draft.dataset[name]);

function release() {
  keeping?.release();
  keeping = null;
  if (!offer) return;
  keep.hidden = false;
  forget.hidden = true;
  say_kept(said("not"), true);
}

async function save_draft() {
  const record = { ...JSON.parse(held.draft), id: held.id, name: held.name, bytes: held.bytes, saved_at: Math.max(Date.now(), (keeping.at ?? 0) + 1), version: drafts.VERSION };
  try {
    await drafts.write(record, keeping.at);
    if (!keeping) return;
    keeping.at = record.saved_at;
    mine = `${record.id} ${record.saved_at}`;
    keeping.saved = true;
    const row = record.last_row;
    say_kept(said(row ? "keptRow" : "kept", { time: clock(keeping.at), row }) + (keeping.lasts ? "" : ` ${said("mayGo")}`));
  } catch ({ why }) {
    // The last one that was kept stays where it is, but for what another tab did.
    const at = keeping?.at;
    release();
    say_kept(said(why ?? "refused") + (at && why === "full" ? ` ${said("stays", { time: clock(at) })}` : ""));
  }
}

async function begin_to_keep(at) {
  const right = await drafts.hold(held.id);
  if (!right) {
    say_kept(said("other"));
    return false;
  }
  keeping = { at, saved: at !== null, lasts: true, release: right };
  keep.hidden = true;
  forget.hidden = false;
  return true;
}

if (offer) {
  keep.addEventListener("click", async () => {
    let there;
    try {
      there = await drafts.read(held.id);
    } catch ({ why }) {
      say_kept(said(why ?? "refused"));
      return;
    }
    // What an earlier visit or another tab kept of this list is never written over: it is gone on with, or forgotten first.
    if (there && mine !== `${there.id} ${there.saved_at}`) {
      say_kept(said("draft", { file: there.name, time: clock(there.saved_at) }));
      await show_drafts();
      document.querySelector("#l-drafts button")?.focus();
      return;
    }
    if (!await begin_to_keep(there?.saved_at ?? null)) return;
    forget.focus();
    try {
      keeping.lasts = await navigator.storage?.persist?.() ?? false;
    } catch {
      keeping.lasts = false;
    }
    if (keeping) ask({ does: "draft" });
  });
  forget.addEventListener("click", async () => {
    const { id } = held;
    release();
    keep.focus();
    try {
      await drafts.forget(id);
    } catch ({ why }) {
      say_kept(said(why ?? "refused"));
    }
    await show_drafts();
  });
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "hidden" && keeping) ask({ does: "draft" });
  });
  show_drafts();
  if (location.hash === "#field") go_on(drafts.FIELD);
}

/** The drafts of earlier visits, each with a press to go on and one to forget it. */
async function show_drafts() {
  const into = document.getElementById("l-drafts");
  let all = [];
  try {
    all = await drafts.kept();
  } catch {
    // Nobody asked for one yet: what keeps the device from it is told at the press.
  }
  const part = (tag, text, press) => {
    const it = document.createElement(tag);
    it.textContent = text;
    if (press) {
      Object.assign(it, { type: "button", className: "btn ghost" });
      it.addEventListener("click", press);
    }
    return it;
  };
  const shown = all.filter((it) => !held || (it.id === held.id && !keeping));
  into.replaceChildren(...shown.map((it) => {
    const line = part("p", "");
    line.className = "picks";
    line.append(
      part("span", said("draft", { file: it.name, time: new Date(it.at).toLocaleString(document.documentElement.lang, { dateStyle: "medium", timeStyle: "short" }) })),
      part("button", said("goOn"), () => go_on(it.id)),
    );
    // The trees of field mode are forgotten on their own page, which asks twice.
    if (it.id !== drafts.FIELD) {
      line.append(part("button", said("forget"), async () => {
        await drafts.forget(it.id).catch(({ why }) => tell(said(why ?? "refused")));
        await show_drafts();
      }));
    }
    return line;
  }));
}

async function go_on(id) {
  let record;
  try {
    record = await drafts.read(id);
  } catch ({ why }) {
    tell(said(why ?? "refused"));
    return;
  }
  if (!record) {
    await show_drafts();
    return;
  }
  const { name, bytes, saved_at: at } = record;
  // The trees of field mode stay with their page: they are opened here as a file is.
  if (id === drafts.FIELD) {
    await open(name, new Blob([bytes]));
    return;
  }
  delete record.bytes;
  held = { id, name, bytes, draft: JSON.stringify(record) };
  document.getElementById("l-drafts").replaceChildren();
  draft.hidden = false;
  // Where another tab has the right to write it, this one only reads.
  const writes = await begin_to_keep(at);
  restore(held);
  if (writes) say_kept(said(record.last_row ? "keptRow" : "kept", { time: clock(at), row: record.last_row }));
}

// Who comes to this page has a list: what works on it is fetched once the page is there, before the first press, unless the
// device is set to save data.
addEventListener("load", () => { if (!navigator.connection?.saveData) begin(); });
