// The page that makes a group's settings: its fields to an object and back, and the lines for a site. What is wrong
// with the object the calculator's own reader says; nothing is judged here.
import { checkSettings, ready } from "./element.js";

/** The most that is taken of a file, bytes; the build puts the number in. */
const LARGEST = "@@largest@@";
const $ = (id) => document.getElementById(id);
const all = (css, from = document) => [...from.querySelectorAll(css)];
const builder = $("builder");
/** What the page says, by the name of its attribute, with its gaps filled. */
const say = (name, gaps = {}) => Object.entries(gaps)
  .reduce((text, [gap, value]) => text.replace(`{${gap}}`, () => value), builder.getAttribute(`data-${name}`));
const language = document.documentElement.lang;
// Pages lie in the folder of their language, scripts beside it.
const home = document.querySelector("a.brand").href;
const site = new URL(builder.dataset.site, document.baseURI).href;
// What a file had beyond the fields here is kept and written again.
let opened = {};
let shown = null;
let counter = 0;
// The lines for a site, by their form, with gaps in braces.
const snippets = JSON.parse(builder.dataset.snippets);

// ---- an object from the fields, and back

/** Sets or takes out a key; of a text in several languages the one of this page. */
function put(object, key, value) {
  const old = object[key];
  if (value === "" || value === undefined) {
    if (old && typeof old === "object" && !Array.isArray(old)) { delete old[language]; if (!Object.keys(old).length) delete object[key]; }
    else delete object[key];
  } else if (typeof value === "string" && old && typeof old === "object") old[language] = value;
  else object[key] = value;
}
const get = (value) => (value && typeof value === "object" ? value[language] ?? "" : value ?? "");
const typed = (field) => {
  const text = field.value.trim();
  if (field.dataset.kind !== "number" || text === "") return text;
  const number = Number(text.replace(",", "."));
  return Number.isFinite(number) ? number : text;
};

function read() {
  const made = structuredClone(opened);
  made.$schema ??= `${site}v1/config.schema.json`;
  made.schema ??= 1;
  for (const field of all("[data-path]")) {
    if (field.type === "radio" && !field.checked) continue;
    const keys = field.dataset.path.split(".");
    const last = keys.pop();
    let at = made;
    for (const key of keys) at = at[key] ??= {};
    put(at, last, field.type === "checkbox" ? field.checked || undefined : typed(field));
  }
  const months = all("[name=month]:checked").map((box) => Number(box.value));
  put((made.tighten ??= {}), "months_blocked", months.length ? months : undefined);
  for (const list of all("[data-list]")) {
    const entries = all(":scope > .entry", list).map((entry) => {
      const object = structuredClone(entry.kept ?? {});
      for (const field of all("[data-key]", entry)) put(object, field.dataset.key, typed(field));
      return object;
    });
    put(made, list.dataset.list, entries.length ? entries : undefined);
  }
  const species = (made.species ??= {});
  for (const key of ["first", "aliases"]) delete species[key];
  const notes = species.notes ?? {};
  delete species.notes;
  for (const entry of all("#b-species > .entry")) {
    const [first, aliases, note] = ["first", "aliases", "note"].map((key) => entry.querySelector(`[data-key=${key}]`));
    const said = entry.said;
    if (first.checked) (species.first ??= []).push(said);
    for (const alias of aliases.value.split(",").map((name) => name.trim()).filter(Boolean)) (species.aliases ??= {})[alias] = said;
    const kept = { [said]: notes[entry.noted ?? said] };
    put(kept, said, note.value.trim());
    if (kept[said] !== undefined) (species.notes ??= {})[said] = kept[said];
  }
  // What holds nothing is left out.
  for (const key of ["species", "tighten", "crew", "place"]) {
    if (made[key] && !Object.keys(made[key]).length) delete made[key];
  }
  return made;
}

function write(settings) {
  opened = settings;
  for (const field of all("[data-path]")) {
    const value = field.dataset.path.split(".").reduce((at, key) => at?.[key], settings);
    if (field.type === "radio") field.checked = field.value === (value ?? "");
    else if (field.type === "checkbox") field.checked = value === true;
    else field.value = get(value);
  }
  const months = settings.tighten?.months_blocked;
  for (const box of all("[name=month]")) box.checked = Array.isArray(months) && months.includes(Number(box.value));
  for (const list of all("[data-list]")) {
    list.replaceChildren();
    const entries = settings[list.dataset.list];
    if (Array.isArray(entries)) for (const entry of entries) add(list.dataset.list, entry);
  }
  $("b-species").replaceChildren();
  const { first, aliases, notes } = settings.species ?? {};
  const firsts = Array.isArray(first) ? first.map(String) : [];
  for (const said of firsts) tree(said).querySelector("[data-key=first]").checked = true;
  const row = (said) => {
    const found = all("#b-species > .entry").find((entry) => entry.choice === choice(said) && entry.choice || entry.said === said);
    return found ?? tree(said, false);
  };
  for (const [alias, said] of Object.entries(aliases ?? {})) {
    const field = row(String(said)).querySelector("[data-key=aliases]");
    field.value = field.value ? `${field.value}, ${alias}` : alias;
  }
  for (const [said, note] of Object.entries(notes ?? {})) {
    const entry = row(said);
    entry.noted = said;
    entry.querySelector("[data-key=note]").value = get(note);
  }
}

// ---- entries of lists, trees

function clone(name) {
  const entry = $(`t-${name}`).content.firstElementChild.cloneNode(true);
  for (const field of all("[data-key]", entry)) {
    field.id = `b-${name}-${counter++}-${field.dataset.key}`;
    const label = field.closest(".field")?.querySelector("label");
    if (!label) continue;
    label.htmlFor = field.id;
    const hint = field.parentElement.querySelector(".hint");
    if (hint) { hint.id = `${field.id}-h`; field.setAttribute("aria-describedby", hint.id); }
  }
  return entry;
}

function add(name, from) {
  const entry = clone(name);
  entry.kept = from && typeof from === "object" ? from : {};
  for (const field of all("[data-key]", entry)) {
    const value = entry.kept[field.dataset.key];
    if (field.tagName === "SELECT") { if (value !== undefined) pick(field, String(value)); }
    else field.value = get(value);
  }
  builder.querySelector(`[data-list=${name}]`).append(entry);
  return entry;
}

/** Picks a value; one that is not on the list is put there, so that what a file says is shown. */
function pick(select, value) {
  if (![...select.options].some((option) => option.value === value)) select.add(new Option(value, value));
  select.value = value;
}

const choice = (said) => all("#b-choices button").find((button) => button.dataset.names.split("|").includes(said.trim().toLowerCase()));

function tree(said, first = true) {
  const entry = clone("species");
  entry.said = said;
  entry.choice = choice(said);
  entry.querySelector("legend").textContent = entry.choice?.dataset.name ?? said;
  entry.querySelector("[data-key=first]").checked = first;
  $("b-species").append(entry);
  return entry;
}

function find() {
  const wanted = $("b-find").value.trim().toLowerCase();
  let count = 0;
  for (const button of all("#b-choices button")) {
    const fits = wanted !== "" && count < 8 && button.dataset.names.includes(wanted);
    button.hidden = !fits;
    if (fits) count++;
  }
  $("b-found").textContent = wanted ? say("found", { count }) : "";
}

// ---- what is wrong, the lines, the preview

function place(path) {
  if (/^[A-Z]\d+$/.test(path)) return $("b-species.csv");
  const entry = /^(contacts|codes)\[(\d+)\](?:\.(\w+))?/.exec(path);
  if (entry) {
    const found = all(`[data-list=${entry[1]}] > .entry`)[entry[2]];
    return found?.querySelector(`[data-key=${entry[3] ?? "name"}]`);
  }
  const said = /^species\.(aliases|notes)\.(.*)$/.exec(path);
  const first = /^species\.first\[(\d+)\]$/.exec(path);
  const rows = all("#b-species > .entry");
  if (first) return rows.filter((row) => row.querySelector("[data-key=first]").checked)[first[1]]?.querySelector("[data-key=first]");
  if (said) {
    const [kind, what] = [said[1], said[2]];
    return rows.map((row) => row.querySelector(`[data-key=${kind === "notes" ? "note" : "aliases"}]`))
      .find((field, at) => (kind === "notes" ? rows[at].said === what : field.value.split(",").some((name) => name.trim() === what)));
  }
  for (let at = path; at; at = at.replace(/(\.|^|\[)[^.[]*$/, "")) if ($(`b-${at}`)) return $(`b-${at}`);
  return null;
}

function mark(told) {
  for (const message of all(".errmsg", builder)) {
    const field = message.of;
    field.removeAttribute("aria-invalid");
    const ids = (field.getAttribute("aria-describedby") ?? "").split(" ").filter((id) => id && id !== message.id);
    if (ids.length) field.setAttribute("aria-describedby", ids.join(" "));
    else field.removeAttribute("aria-describedby");
    message.remove();
  }
  const list = $("b-told");
  const items = told.map(({ path, message, refuses }, at) => {
    const item = document.createElement("li");
    const field = place(path);
    const words = refuses ? message : say("usable", { message });
    if (!field) { item.textContent = path ? `${path}: ${words}` : words; return item; }
    const link = document.createElement("a");
    link.href = `#${field.id}`;
    const label = field.closest(".field, .entry")?.querySelector("label, legend")?.textContent ?? path;
    link.textContent = `${label}: ${words}`;
    link.addEventListener("click", (event) => {
      event.preventDefault();
      for (let up = field; up; up = up.parentElement) if (up.tagName === "DETAILS") up.open = true;
      field.focus();
    });
    item.append(link);
    const line = document.createElement("p");
    line.className = "errmsg";
    line.id = `b-told-${at}`;
    line.of = field;
    line.textContent = words;
    const before = field.tagName === "FIELDSET" ? field.querySelector("legend").nextSibling : field.closest(".opt") ?? field;
    before.parentElement.insertBefore(line, before);
    if (refuses && field.tagName !== "FIELDSET") field.setAttribute("aria-invalid", "true");
    field.setAttribute("aria-describedby", `${field.getAttribute("aria-describedby") ?? ""} ${line.id}`.trim());
    return item;
  });
  // Said anew only when it has changed: each key would be told otherwise.
  const text = items.map((item) => item.textContent).join("\n");
  if (list.said === text) { list.replaceChildren(...items); return; }
  list.said = text;
  list.replaceChildren(...items);
  const refused = told.filter((it) => it.refuses).length;
  $("b-count").textContent = refused ? say("refused", { count: refused }) : say("all-well");
}

function lines() {
  const address = $("b-address").value.trim();
  const esc = (text) => text.replaceAll("&", "&amp;").replaceAll('"', "&quot;").replaceAll("<", "&lt;");
  const config = address ? ` config="${esc(address)}"` : "";
  const kind = $("b-kind").value;
  const held = $("b-full").checked;
  const data = config.replace("config", "data-config");
  const whole = /^https?:\/\//.test(address);
  const frame = address && whole ? `?config=${encodeURIComponent(address)}` : "";
  const gaps = {
    embed: `${site}${held ? builder.dataset.version : "v1"}/embed.js`, "embed-digest": builder.dataset.digest, home, kind,
    attributes: config, data, query: frame, words: esc(say("plan")), title: esc($("b-kind").selectedOptions[0].text),
  };
  const filled = (form, more) => {
    // What follows the newest version has no digest: it changes.
    const text = held ? snippets[form] : snippets[form].replace(' integrity="{embed-digest}"', "");
    return text.replace(/\{([a-z-]+)\}/g, (_, gap) => ({ ...gaps, ...more })[gap]);
  };
  const rungs = [
    [say("line-element"), say("line-element-hint"), filled("element")],
    [say("line-div"), "", filled("div")],
    [say("line-script"), say("line-script-hint"), filled("script")],
    [say("line-frame"), address && !whole ? say("line-frame-lacks") : say("line-frame-hint"), filled("frame")],
    [say("line-link"), say("line-link-hint"), filled("link", { words: esc(say("link-words")) })],
  ];
  const holder = $("b-lines");
  rungs.forEach(([name, hint, text], at) => {
    let field = holder.children[at];
    if (!field) {
      field = $("t-line").content.firstElementChild.cloneNode(true);
      holder.append(field);
      const area = field.querySelector("textarea");
      area.id = `b-line-${at}`;
      field.querySelector("label").htmlFor = area.id;
      field.querySelector(".hint").id = `b-line-${at}-h`;
      area.setAttribute("aria-describedby", `b-line-${at}-h`);
      field.querySelector("button").addEventListener("click", () => copy(area, field.querySelector("button")));
    }
    field.querySelector("label").textContent = name;
    field.querySelector(".hint").textContent = hint;
    field.querySelector("textarea").value = text;
  });
}

async function copy(area, button) {
  try {
    await navigator.clipboard.writeText(area.value);
    button.textContent = say("copied");
  } catch {
    area.select();
    button.textContent = say("marked");
  }
}

function follow(begun = true) {
  const settings = read();
  // A table that the file only names is not at hand here.
  const seen = structuredClone(settings);
  if (seen.species) delete seen.species.list;
  const told = checkSettings(seen, undefined, language);
  // Nobody is told what is missing before anything is typed.
  if (begun) mark(told);
  lines();
  const text = JSON.stringify(seen);
  const refused = told.some((it) => it.refuses);
  const kept = settings.species?.list ? ` ${say("seen-no-table")}` : "";
  $("b-seen").textContent = say(!begun && refused ? "seen-plain" : refused ? "seen-before" : "seen-yours") + kept;
  if (!refused && text !== shown) {
    shown = text;
    $("preview").config = seen;
  }
}

let timer = 0;
const soon = () => { clearTimeout(timer); timer = setTimeout(follow, 250, true); };

function save() {
  const settings = read();
  const name = String(get(settings.name) || say("file-name")).normalize("NFD").replace(/\p{M}/gu, "").toLowerCase().replace(/[^a-z0-9]+/g, "-").replace(/^-|-$/g, "") || "our-trees";
  settings.id ??= name;
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([`${JSON.stringify(settings, null, 2)}\n`], { type: "application/json" }));
  link.download = `${name}.json`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10000);
  $("b-saved").textContent = say("saved", { file: link.download });
}

async function open(file) {
  try {
    if (file.size > LARGEST) throw new Error(say("too-large", { bytes: LARGEST }));
    const settings = JSON.parse((await file.text()).replace(/^\uFEFF/, ""));
    if (typeof settings !== "object" || settings === null || Array.isArray(settings)) throw new Error(say("no-object"));
    write(settings);
    follow();
    $("b-opened").textContent = say("opened", { file: file.name });
  } catch (error) {
    $("b-opened").textContent = say("unreadable", { file: file.name, why: error.message });
  }
}

builder.addEventListener("input", (event) => {
  if (event.target.id === "b-find") find();
  else if (event.target.id !== "b-open") soon();
});
builder.addEventListener("click", ({ target }) => {
  const button = target.closest("button");
  if (!button) return;
  if (button.dataset.add) add(button.dataset.add).querySelector("select").focus();
  else if (button.dataset.names !== undefined) {
    const said = button.dataset.said;
    const there = all("#b-species > .entry").find((entry) => entry.choice === button);
    (there ?? tree(said)).querySelector("[data-key=aliases]").focus();
    $("b-find").value = "";
    find();
  } else if (button.dataset.remove !== undefined) {
    const holder = button.closest(".entry").parentElement;
    button.closest(".entry").remove();
    const next = holder.querySelector(".entry:last-child select, .entry:last-child input") ?? (holder.id === "b-species" ? $("b-find") : holder.nextElementSibling);
    next.focus();
  } else return;
  soon();
});
$("b-save").addEventListener("click", save);
$("b-open").addEventListener("change", (event) => { const [file] = event.target.files; event.target.value = ""; if (file) open(file); });
$("b-full").addEventListener("change", lines);
ready.then(() => follow(false), () => { $("b-count").textContent = say("no-start"); });
