// Field mode: the calculator of the page shows one of its questions at a time, and this puts large keys around it. Each tree
// is kept on the device as it is typed, and all of them can be saved as the file of a list at any moment.
import { answer, ready } from "./element.js";
import * as drafts from "./list-draft.js";
import { file, handOut, nextTag } from "./field-rows.js";
import { STEPS, row_of, stemsOf, steps, text, withPart } from "./field-steps.js";

/** The file's name. */
const NAME = "field-trees.csv";
/** What is typed is kept so long after the last key, milliseconds. */
const AFTER = 300;
/** So many trees of the list can be picked with one press. */
const RECENT = 4;

const page = document.getElementById("field");
const part = (name) => document.getElementById(`fm-${name}`);
const calculator = document.getElementById("calculator");
const said = (name, gaps = {}) => Object.entries(gaps).reduce((text, [gap, value]) => text.replace(`{${gap}}`, () => value), page.dataset[name]);
const names = Object.fromEntries(page.dataset.steps.split(",").map((step) => step.split(" ")));
/** In a frame on another site nothing is stored. */
const keeps = window.top === window;

/** The trees of the list, each { tag, q, where, day, name, near, line, say, done, asks, several, others }: its question as
    typed, the words that the page says of it, whether it was answered, whether it asks for the place too, and whether it has
    several stems, with the sizes of those behind the largest. */
let trees = [];
/** Which tree, and what is asked of it. */
let at = { n: 0, step: "place" };
/** Whether the list is otherwise than the file that was saved last. */
let unsaved = false;
/** What is kept on the device, from the first press of Continue on: when this tab wrote it last, whether it was asked to,
    whether it may, and whether all is kept. */
const kept = { at: null, asked: false, may: keeps, whole: false, lasts: true, why: "" };

let root;
const within = (css) => root.querySelector(css);
const set = (field, value) => {
  field.value = value;
  field.dispatchEvent(new Event("input", { bubbles: true, composed: true }));
  field.dispatchEvent(new Event("change", { bubbles: true }));
};
const now = () => trees[at.n];
const answered = () => trees.filter((tree) => tree.done);
/** The states or countries in which they stand. */
const regions = () => new Set(answered().map((tree) => tree.q.region ?? ""));

/** Puts a tree into the form, as it was typed. */
function load(tree) {
  calculator.reset();
  const { today } = calculator.inputs;
  const { today: before, ...q } = tree.q;
  // A tree that waited for its answer since another day is asked about today, unless a day was typed.
  if (!tree.done && before && q.date === before) q.date = today;
  if (Object.keys(q).length) calculator.inputs = q;
  place(tree);
  tree.q = stands(tree);
}

/** The question of a tree as it stands in the form; one that was answered stays one of its own day. */
function stands(tree) {
  const q = calculator.inputs;
  if (tree.done && tree.q.today) q.today = tree.q.today;
  return q;
}

/** What was typed as the place is no part of a question: it goes back beside what it stands for. */
function place({ where = "", q }) {
  const { latitude, longitude } = q.place ?? {};
  within("#f-town").value = where;
  within("[name='town.placed']").value = [latitude, longitude, q.region].filter(Boolean).join(" ");
}

/** Changes the question as if it had been typed. */
function change(to) {
  const { today, ...q } = calculator.inputs;
  calculator.inputs = { ...q, ...to };
  place({ ...now(), q: calculator.inputs });
}

/** Puts the other stems of a tree behind its largest, measured as that one was. */
function stems(tree) {
  const all = stemsOf(tree);
  if (JSON.stringify(all) === JSON.stringify(tree.q.stems ?? [{}])) return;
  change({ stems: all });
  tree.q = stands(tree);
  changed();
}

/** Takes over what stands in the form. */
function take() {
  const tree = now();
  if (!tree || at.step === "tag") return;
  if (at.step === "others" && tree.others !== part("others-in").value) {
    tree.others = part("others-in").value;
    changed();
  }
  const before = JSON.stringify(tree.q);
  tree.q = stands(tree);
  if (at.step === "place" || !("where" in tree)) {
    const picked = within("[name='town.at']:checked")?.closest("label");
    tree.where = row_of(picked) || within("#f-town").value.trim();
  }
  tree.day = within("#f-day").value;
  const named = within("[name=species]:checked")?.closest("label");
  if (named?.querySelector("input").value === "?") tree.name = row_of(within("[name='species.kind']:checked")?.closest("label"));
  else if (named) tree.name = row_of(named);
  else if (tree.q.species === undefined || at.step === "tree") tree.name = tree.q.species ?? "";
  const kind = within("[name='targets[0].kind']");
  const typed = within("#f-targets-0-distance").value.trim();
  const far = /^[\d\s.,/]+$/.test(typed) ? `${typed} ${text(within("#f-targets-0-distance-u"))}` : typed;
  tree.near = kind.value ? [text(kind.selectedOptions[0]), kind.value === "nothing" ? "" : far].filter(Boolean).join(", ") : "";
  tree.line = text(within("[name=line_within_reach]:checked")?.closest("label"));
  brief();
  if (JSON.stringify(tree.q) !== before) changed();
}

function changed() {
  unsaved = true;
  kept.whole = false;
  clearTimeout(changed.waits);
  changed.waits = setTimeout(keep, AFTER);
}

// What is kept.

/** Keeps the list; what keeps it from being kept is said, and all stays on the page. */
async function keep() {
  clearTimeout(changed.waits);
  if (kept.writes) {
    // One at a time: what changed meanwhile goes with the next.
    kept.again = true;
    return;
  }
  if (!kept.may || !kept.asked) return say_kept();
  kept.writes = true;
  kept.whole = true;
  const record = { id: drafts.FIELD, name: NAME, bytes: await new Blob([file(answered())]).arrayBuffer(), trees, place: at, unsaved, saved_at: Math.max(Date.now(), (kept.at ?? 0) + 1), version: drafts.VERSION };
  try {
    await drafts.write(structuredClone(record), kept.at);
    const first = kept.at === null;
    kept.at = record.saved_at;
    kept.why = "";
    if (first) kept.lasts = await navigator.storage?.persist?.().catch(() => false) ?? false;
  } catch ({ why }) {
    kept.whole = false;
    kept.why = why ?? "refused";
    // What another tab or a newer page keeps is never written over. Room may come back: the next change tries again.
    if (why === "other" || why === "newer") kept.may = false;
  }
  kept.writes = false;
  say_kept();
  if (kept.again) {
    kept.again = false;
    await keep();
  }
}

function say_kept() {
  const words = !keeps ? said("keepsNothing") : kept.why ? said(kept.why)
    : kept.at === null ? said("keeps") : said("kept", { trees: answered().length }) + (kept.lasts ? "" : ` ${said("toBeSure")}`);
  if (part("kept").textContent !== words) part("kept").textContent = words;
  part("kept").classList.toggle("fm-not", !keeps || Boolean(kept.why));
  shown("save", answered().length);
  part("open").hidden = kept.at === null || Boolean(kept.why) || !answered().length;
}

/** Brings back what an earlier visit kept, and takes the right to write it; another tab may have it. */
async function recall() {
  if (!keeps) return;
  try {
    const right = await drafts.hold(drafts.FIELD);
    if (!right) Object.assign(kept, { may: false, why: "other" });
    const record = await drafts.read(drafts.FIELD);
    if (!record) return;
    ({ trees, place: at, unsaved } = record);
    kept.at = record.saved_at;
    kept.asked = true;
    kept.whole = true;
    kept.lasts = await navigator.storage?.persisted?.().catch(() => false) ?? false;
  } catch ({ why }) {
    kept.why = why ?? "refused";
    if (why === "newer") kept.may = false;
  }
}

// The screens.

const shown = (id, yes) => { part(id).hidden = !yes; };
const made = (tag, more) => Object.assign(document.createElement(tag), more);

/** Draws where somebody is. */
function tape(tree) {
  const all = steps(tree).filter((step) => names[step]);
  const here = all.indexOf({ far: "near", others: "size" }[at.step] ?? at.step);
  const done = at.step === "answer" || at.step === "tag";
  shown("tape", !done);
  part("tape").replaceChildren(...all.map((step, i) => made("li", { textContent: names[step], className: i === here ? "here" : done || i < here ? "done" : "" })));
  const asked = steps(tree).filter((step) => step !== "answer");
  const number = at.n + 1;
  part("at").textContent = done ? said("answered", { tree: number, name: tree.name || said("noName") }) : said("question", { tree: number, at: asked.indexOf(at.step) + 1, all: asked.length });
}

/** Shows a question, or the answer. */
function show() {
  const tree = now();
  const { step } = at;
  const before = trees.slice(0, at.n).findLast((it) => it.done);
  const asks = STEPS[step];
  within(".asked").open = true;
  calculator.dataset.ask = step;
  delete calculator.dataset.more;
  tape(tree);
  const label = asks?.label && text(within(asks.label));
  const own = { tag: "tagAsks", others: "othersAsk", size: tree.several && "largest" }[step];
  part("ask").textContent = own ? said(own) : label ?? said("tree", { tree: at.n + 1, name: tree.name || said("noName") });
  part("ask").classList.toggle("vh", step === "answer");
  const same = step === "tree" && before && !tree.asks;
  shown("same", same);
  if (same) part("same").firstElementChild.textContent = said("same", { tree: trees.indexOf(before) + 1, place: tree.where || said("noPlace"), day: tree.day });
  const as = step === "near" && before && (before.near || before.line) ? before : null;
  shown("as", as);
  if (as) part("as").textContent = said("asTree", { tree: trees.indexOf(before) + 1, near: before.near || said("notSaid"), line: before.line || said("notSaid") });
  recent(step);
  mirror("near", step === "near", "targets[0].kind");
  mirror("as-measured", step === "size", "stems.as");
  part("near").firstElementChild.textContent = label ?? "";
  inches();
  shown("which", step === "tree");
  shown("tagged", step === "tag");
  shown("tag-e", false);
  if (step === "tag") part("tag-in").value = tree.tag;
  shown("stems", step === "size");
  for (const it of document.getElementsByName("fm-stems")) it.checked = (it.value === "several") === Boolean(tree.several);
  shown("others", step === "others");
  shown("others-e", false);
  if (step === "others") part("others-in").value = tree.others ?? "";
  shown("after", step === "answer");
  under();
  part("more").setAttribute("aria-expanded", "false");
  part("tag").textContent = said("tag", { tag: tree.tag });
  part("go").textContent = said(step === "answer" ? "next" : "continue");
  const back = previous();
  shown("back", back);
  if (back) part("back").textContent = back.n < at.n ? said("backTo", { tree: back.n + 1 }) : said("back");
  shown("end", true);
  list();
  say_kept();
}

/** What stands under the card: where the card asks for more itself, its replies and the way on go first. */
function under() {
  const asks = at.step === "answer" && calculator.result?.outcome === "cannot_tell" && !kept.why;
  const end = part("end");
  if (asks) end.after(part("after"), part("kept"));
  else {
    end.before(part("after"));
    end.prepend(part("kept"));
  }
}

/** Puts the focus where the next press is: into a field of a number, else on the question. */
function focus() {
  const field = ["size", "far"].includes(at.step) ? within(STEPS[at.step].field) : at.step === "tag" ? part("tag-in") : at.step === "others" ? part("others-in") : part("ask");
  field.focus({ preventScroll: true });
  scrollTo(0, 0);
}

/** While no name is typed only a few stand there, and none where the list has trees to press. */
function brief() {
  const blank = at.step === "tree" && !within("#f-find").value;
  calculator.toggleAttribute("data-blank", blank);
  calculator.toggleAttribute("data-brief", blank && part("recent").childElementCount > 0);
}

/** The trees of the list, one press each. */
function recent(step) {
  const found = new Map();
  for (const tree of trees.slice(0, at.n).reverse()) if (tree.done && tree.q.species && !found.has(tree.q.species)) found.set(tree.q.species, tree);
  const buttons = [...found.values()].slice(0, RECENT).map((tree) => {
    const button = made("button", { type: "button", className: "btn ghost", textContent: tree.name || tree.q.species });
    button.addEventListener("click", () => {
      change({ species: tree.q.species });
      take();
      now().name = tree.name;
      go_on();
    });
    return button;
  });
  part("recent").replaceChildren(...buttons);
  shown("recent", step === "tree" && buttons.length);
  brief();
}

/** Rows to press in the place of a list of the form: it is changed as they are. */
function mirror(id, yes, name) {
  shown(id, yes);
  if (!yes) return;
  const select = within(`[name='${name}']`);
  const rows = [...select.options].filter((option) => option.value).map((option) => {
    const row = made("label", { className: "fm-row" });
    const radio = made("input", { type: "radio", name: `fm-${id}`, value: option.value, checked: option.selected });
    radio.addEventListener("change", () => {
      set(select, option.value);
      take();
      inches();
      tape(now());
    });
    row.append(radio, made("span", { textContent: option.textContent }));
    return row;
  });
  part(id).replaceChildren(part(id).firstElementChild, ...rows);
}

/** Keys for a part of an inch stand there where inches are typed. */
function inches() {
  shown("keys", ["size", "others"].includes(at.step) && within("[name='stems.as']").value.startsWith("in"));
}

/** The trees that are answered, as rows. */
function list() {
  const rows = answered().map((tree) => {
    const row = made("tr");
    row.append(made("th", { scope: "row", textContent: tree.tag }), made("td", { textContent: tree.name || said("noName") }), made("td", { textContent: tree.say }));
    return row;
  });
  if (!rows.length) {
    rows.push(made("tr"));
    rows[0].append(made("td", { colSpan: 3, textContent: said("listNone") }));
  }
  part("list").querySelector("tbody").replaceChildren(...rows);
  shown("list", true);
  const [region] = regions();
  part("program").textContent = `slipbark list ${NAME}${region ? ` --region ${region}` : ""}`;
}

// From one to the next.

/** Where Back leads when this page was just opened. */
function previous() {
  if (at.step === "tag") return { n: at.n, step: "answer" };
  const all = steps(now());
  const here = all.indexOf(at.step);
  if (here > 0) return { n: at.n, step: all[here - 1] };
  return at.n > 0 ? { n: at.n - 1, step: "answer" } : null;
}

/** Goes somewhere; the browser's own Back leads here again. */
function go(n, step, { push = true } = {}) {
  const other = n !== at.n;
  part("told").textContent = "";
  at = { n, step };
  if (push) history.pushState({ ...at, depth: (history.state?.depth ?? 0) + 1 }, "");
  if (other) load(now());
  if (step === "answer" && !work_out()) return;
  show();
  focus();
  keep();
}

/** Works the answer out. What can't be read leads to its question. */
function work_out() {
  const tree = now();
  const { problems } = calculator.compute();
  if (problems) {
    const field = problems[0].field;
    const step = steps(tree).find((it) => STEPS[it]?.of.test(field)) ?? "tree";
    tree.done = false;
    go(at.n, step, { push: false });
    history.replaceState({ ...at, depth: history.state?.depth ?? 0 }, "");
    wrong();
    return false;
  }
  tree.q = stands(tree);
  tree.say = text(within(".card .say"));
  if (!tree.done) unsaved = true;
  tree.done = true;
  return true;
}

/** Marks what is wrong with the question, in the form's own words. */
function wrong() {
  calculator.compute();
  const { field } = STEPS[at.step];
  (field ? within(field) : part("others-in"))?.focus();
}

function go_on() {
  const tree = now();
  kept.asked = true;
  if (at.step === "tag") {
    const tag = part("tag-in").value.trim() || tree.tag;
    const twice = trees.findIndex((it) => it !== tree && it.tag === tag);
    if (twice >= 0) {
      part("tag-e").textContent = said("tagTwice", { tree: twice + 1 });
      shown("tag-e", true);
      part("tag-in").focus();
      return;
    }
    if (tree.tag !== tag) {
      tree.tag = tag;
      changed();
    }
    back();
    return;
  }
  if (at.step === "answer") {
    next();
    return;
  }
  take();
  if (["size", "others"].includes(at.step)) stems(tree);
  const { problems = [] } = answer({ ...tree.q, species: tree.q.species ?? "unknown broadleaf" }, { changes: false });
  const mine = problems.find(({ field }) => STEPS[at.step].of.test(field));
  if (at.step === "others" && (mine || tree.q.stems.length < 2)) {
    part("others-e").textContent = mine ? said("othersWrong", { typed: Object.values(tree.q.stems[mine.field.match(/\d+/)[0]])[0] }) : said("othersNone");
    shown("others-e", true);
    part("others-in").focus();
    return;
  }
  if (mine) {
    wrong();
    return;
  }
  // What was marked for other questions is asked for there.
  if (within("[aria-invalid]")) change({});
  const all = steps(tree);
  go(at.n, all[all.indexOf(at.step) + 1]);
}

/** The next tree: place, day, units and crew stay. */
function next() {
  const last = trees.at(-1);
  if (!last.done) {
    // An earlier tree was looked at: the one that waits goes on.
    go(trees.length - 1, steps(last)[0]);
    return;
  }
  if (at.n !== trees.length - 1) load(last);
  // From here on what the form tells is of the new tree.
  const { where, day } = last;
  trees.push({ tag: nextTag(last.tag, trees.map((tree) => tree.tag)), q: {}, where, day, name: "", near: "", line: "", say: "", done: false, asks: false });
  at = { n: trees.length - 1, step: "tree" };
  within("[data-act=next]").click();
  take();
  go(at.n, "tree");
}

function back() {
  if (history.state?.depth > 0) history.back();
  else {
    const to = previous();
    if (to) go(to.n, to.step, { push: false });
  }
}

function begin() {
  trees = [{ tag: "T001", q: {}, name: "", near: "", line: "", say: "", done: false, asks: true }];
  at = { n: 0, step: "place" };
}

// What is pressed.

function listen() {
  part("go").addEventListener("click", go_on);
  part("back").addEventListener("click", back);
  part("change").addEventListener("click", () => {
    now().asks = true;
    go(at.n, "place");
  });
  part("as").addEventListener("click", () => {
    const before = trees.slice(0, at.n).findLast((it) => it.done);
    const { targets = [], none_in_reach = false, line_within_reach } = before.q;
    change({ targets, none_in_reach, line_within_reach });
    take();
    go(at.n, "answer");
  });
  part("keys").addEventListener("click", ({ target }) => {
    const button = target.closest("button");
    if (!button) return;
    const field = at.step === "others" ? part("others-in") : within(STEPS.size.field);
    set(field, withPart(field.value, button.value));
    field.focus();
  });
  part("another").addEventListener("click", () => {
    const field = part("others-in");
    if (/[^;\s]\s*$/.test(field.value)) field.value = `${field.value.trim()}; `;
    take();
    field.focus();
  });
  part("stems").addEventListener("change", ({ target }) => {
    now().several = target.value === "several";
    stems(now());
    changed();
    show();
  });
  part("more").addEventListener("click", () => {
    const more = calculator.toggleAttribute("data-more");
    part("more").setAttribute("aria-expanded", String(more));
  });
  part("tag").addEventListener("click", () => go(at.n, "tag"));
  for (const own of ["tag-in", "others-in"]) part(own).addEventListener("keydown", (event) => { if (event.key === "Enter") go_on(); });
  part("others-in").addEventListener("input", take);
  part("save").addEventListener("click", save);
  part("new").addEventListener("click", forget);
  // Enter in a field goes on: it does not ask for the answer yet.
  root.addEventListener("submit", (event) => {
    event.preventDefault();
    event.stopImmediatePropagation();
    go_on();
  }, true);
  calculator.addEventListener("input", () => { take(); });
  calculator.addEventListener("slipbark-input", () => { take(); });
  // A link of the card leads to a part that is folded here.
  root.addEventListener("click", ({ target }) => {
    if (target.closest(".card a[href^='#']") && !("more" in calculator.dataset)) part("more").click();
  }, true);
  calculator.addEventListener("slipbark-invalid", () => { if (at.step === "answer") work_out(); });
  // A question that the card itself asked was answered.
  calculator.addEventListener("slipbark-result", () => {
    if (at.step !== "answer") return;
    take();
    now().say = text(within(".card .say"));
    under();
    list();
  });
  addEventListener("popstate", ({ state }) => {
    if (!trees[state?.n]) return;
    take();
    go(state.n, state.step, { push: false });
  });
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState !== "hidden") return;
    take();
    keep();
  });
  addEventListener("beforeunload", (event) => {
    take();
    if (!kept.whole && unsaved) event.preventDefault();
  });
}

function save() {
  handOut(NAME, file(answered()));
  unsaved = false;
  const open = trees.findIndex((tree) => !tree.done);
  // Each row says its state or province; a country alone the list can't have from its rows.
  const many = regions().size > 1 && [...regions()].some((region) => !region.includes("-"));
  part("told").textContent = [said("saved", { file: NAME }), open < 0 ? "" : said("openTree", { tree: open + 1 }), many ? said("regions") : ""].filter(Boolean).join(" ");
  keep();
}

/** Forgets the list, at the second press. */
async function forget() {
  if (!forget.sure) {
    forget.sure = true;
    part("told").textContent = said(unsaved ? "newSure" : "newAgain");
    setTimeout(() => { forget.sure = false; }, 8000);
    return;
  }
  forget.sure = false;
  begin();
  unsaved = false;
  kept.asked = false;
  if (kept.may && kept.at !== null) {
    try {
      await drafts.forget(drafts.FIELD);
      kept.at = null;
    } catch ({ why }) {
      kept.why = why ?? "refused";
    }
  }
  load(now());
  go(0, "place");
  part("told").textContent = said("forgotten");
}

/** Begins once the calculator stands there with the sheet that lets it show one question. */
async function start() {
  await ready;
  // Its whole form is never seen here.
  calculator.hidden = true;
  await calculator.ready;
  root = calculator.shadowRoot;
  const sheet = made("link", { rel: "stylesheet", href: page.dataset.css });
  const dressed = new Promise((done) => { sheet.onload = sheet.onerror = done; });
  root.append(sheet);
  begin();
  await Promise.all([dressed, recall()]);
  if (!trees[at.n]) begin();
  listen();
  load(now());
  const { state } = history;
  const depth = state?.n === at.n && state?.step === at.step ? state.depth : 0;
  history.replaceState({ ...at, depth }, "");
  if (at.step !== "answer" || work_out()) show();
  calculator.hidden = false;
}

// What can't start is told by the page around it.
start().catch((error) => console.error(`Slipbark: field mode could not start. (${error})`));
