// The page for a list of trees: sends what is pressed and typed to the worker, and shows what it answers. Every element
// is made by createElement; nothing that came from a file is ever read as markup.
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

function ask(message, transfer = []) {
  if (!worker) {
    worker = new Worker(new URL("./list-worker.js", import.meta.url), { type: "module" });
    worker.onmessage = ({ data }) => hear(data);
    worker.onerror = failed;
    worker.postMessage(start);
  }
  // Rows of a table are had beside what is being done; a file is made once all is done.
  if (message.does === "page") {
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

function failed() {
  done();
  worker?.terminate();
  worker = null;
  tell(page.dataset.crashed);
}

function hear(told) {
  if (told.page) {
    for (const [name, texts] of Object.entries(told.areas)) show(area(name), texts);
    return undefined;
  }
  if (told.failed && told.number === undefined) return failed();
  if (told.number !== number) return undefined;
  if (told.failed) return failed();
  if (told.file) {
    done();
    return save(told.file, told.bytes);
  }
  if (told.more) {
    for (const [name, texts] of Object.entries(told.areas)) show(area(name), texts);
    what.textContent = told.of ? `${told.what} ${told.done} / ${told.of}` : `${told.what} ${told.done || ""}`;
    if (told.of) bar.value = told.done / told.of;
    return undefined;
  }
  done();
  edited = told.edited;
  for (const [name, texts] of Object.entries(told.areas)) show(area(name), texts);
  // What stands below in the same words is only spoken.
  status.classList.toggle("vh", Object.keys(told.areas).length > 0);
  if (told.said) status.textContent = told.said;
  if (told.to) lead(told.to);
  return undefined;
}

/** Plays back what was drawn. */
function play(texts) {
  const root = document.createDocumentFragment();
  let at = root;
  for (let i = 0; i < texts.length; i += 1) {
    const text = texts[i].slice(1);
    switch (texts[i][0]) {
      case "<": at = at.appendChild(document.createElement(text)); break;
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
  if (focus) document.getElementById(focus)?.focus();
}

/** Leads the reader to a part, and those who listen with it. */
function lead(id) {
  const part = document.getElementById(id);
  if (!part || part.contains(document.activeElement)) return;
  const to = part.matches("[tabindex], .errmsg") ? part : part.querySelector("h2");
  if (!to) return;
  to.tabIndex = -1;
  to.focus();
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

async function open(name, blob) {
  if (blob.size > LARGEST) {
    tell(page.dataset.tooLarge);
    return;
  }
  const bytes = await blob.arrayBuffer();
  ask({ does: "open", name, bytes }, [bytes]);
}

const file = document.getElementById("l-open");
file.addEventListener("change", async () => {
  const [picked] = file.files;
  if (!picked) return;
  try {
    await open(picked.name, picked);
  } catch {
    tell(page.dataset.unreadable);
  }
  // The same file can be picked again.
  file.value = "";
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
  setTimeout(() => { if (number === asked && !progress.hidden) failed(); }, UNHEARD);
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
addEventListener("beforeunload", (event) => { if (edited) event.preventDefault(); });
