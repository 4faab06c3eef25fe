// The class that customElements.define needs, once for each calculator; all else is in the WebAssembly.
// Until that is ready a host element shows its own children.
import init, * as engine from "./engine.js";

// The calculators; each is one element with the same interface.
const NAMES = ["tree-plan", "year", "ring", "reach", "effort", "checks"];
// Its attributes, each with the values that it may have where they are few: the build puts them in.
const ATTRIBUTES = {};
// Properties that may be set on a host before this file has run.
const PROPERTIES = ["config", "inputs"];

// Filled in where these files lie in the folder of a full version: what each must be.
const DIGESTS = {};
const ask = (file) => fetch(new URL(file, import.meta.url), DIGESTS[file] && { integrity: DIGESTS[file] });

// What is waited for: which file is to blame where one can't be used.
const STYLE = "./calculator.css";
let awaited = "./engine.wasm";
let loaded = false;
let failure = null;
const waiting = new Set();

/** Resolves when answers can be had, or rejects with the reason. */
export const ready = load();
/** Answers a question; `{ changes: false }` leaves out the search for what would change the answer. */
export const answer = (question, options) => engine.answer(question, options);
/** What is wrong with a group's settings: `[{ path, message, refuses }]`, in a language whose words were fetched. */
export const checkSettings = (settings, list, language) => engine.check_settings(settings, list, language);
export const version = () => engine.version();
export const dataVersion = () => engine.dataVersion();

/** The style sheet of the calculators, as a text: a policy that ignores style elements does not ignore what is made of it. */
async function styleSheet() {
  const response = await ask(STYLE);
  if (!response.ok || /\bhtml\b/.test(response.headers.get("Content-Type"))) throw new Error(`${STYLE} is no style sheet`);
  return response.text();
}

function pause() {
  return new Promise((go) => setTimeout(go));
}

async function load() {
  try {
    const style = styleSheet();
    // Told below, once the module is there.
    style.catch(() => {});
    await init({ module_or_path: ask("./engine.wasm") });
    awaited = STYLE;
    const text = await style;
    // The page may draw and hear in between: each of these steps holds a slow phone up.
    await pause();
    engine.take_style(text);
    await pause();
    // The first that asks for the tables has them unpacked.
    engine.dataVersion();
    await pause();
    // A form that does not stand in the page yet is drawn for nobody first, in steps: most of that time is the browser's,
    // which compiles each piece of the module where it first runs.
    for (const drawn of [...waiting].every((host) => host.shadowRoot) ? [] : [false, true]) {
      engine.rehearse(drawn);
      await pause();
    }
    // Answers link to their sources on the site that these files come from.
    engine.locate(new URL("../", import.meta.url).href);
    engine.when_climate_is_wanted(() => { climate().catch(() => {}); });
    engine.when_regional_is_wanted(() => { regional().catch(() => {}); });
    engine.when_towns_are_wanted((country) => { towns(country); });
    loaded = true;
  } catch (error) {
    failure = await describe(error);
    console.error(`Slipbark: ${failure.words} Until then a frame takes its place where frame-src allows one, else the link stays. (${error})`);
    for (const host of waiting) fail(host);
    throw error;
  } finally {
    const hosts = [...waiting];
    waiting.clear();
    if (loaded) for (const host of hosts) host.start();
  }
}

// What is fetched only when it is asked for: the climate, what differs by country, a list of towns a country
// (ISO 3166-1), and the words of every language but English, in small letters.
const PLACES = {
  climate: "./climate.bin", regional: "./regional.bin",
  US: "./towns-US.bin", CA: "./towns-CA.bin", GB: "./towns-GB.bin", IE: "./towns-IE.bin", DE: "./towns-DE.bin",
  es: "./words-es.bin", "es-es": "./words-es-ES.bin",
  AT: "./towns-AT.bin", CH: "./towns-CH.bin", FR: "./towns-FR.bin", NZ: "./towns-NZ.bin", AU: "./towns-AU.bin",
};
const fetched = new Map();

/** Fetches one of these files and hands it over, once; what could not be had may be asked for again. */
function place(name, take) {
  if (!fetched.has(name)) fetched.set(name, (async () => {
    try {
      const response = await ask(PLACES[name]);
      if (!response.ok) throw new Error(`${response.status} ${response.statusText}`);
      if (!take(new Uint8Array(await response.arrayBuffer()))) throw new Error("it is not what it should be");
    } catch (error) {
      fetched.delete(name);
      console.error(`Slipbark: ${new URL(PLACES[name], import.meta.url)} could not be fetched. The page says what is missing. (${error})`);
      throw error;
    }
  })());
  return fetched.get(name);
}

/** Fetches the climate places, once; without them a point is answered by its hemisphere, and says so. */
export const climate = () => place("climate", engine.take_climate);

/** Fetches what differs by country, once: who decides, laws, trees that are not on the list. */
export const regional = () => place("regional", engine.take_regional);

/** The language around a host that has words of its own to fetch, and has not tried to: that of `es-MX` is `es`. */
function languageOf(host) {
  let tag = (host.closest("[lang]") ?? document.documentElement).lang.toLowerCase();
  while (tag && !(tag in PLACES)) tag = tag.slice(0, Math.max(tag.lastIndexOf("-"), 0));
  return tried.has(tag) ? "" : tag;
}
const tried = new Set();

/** Fetches the words of a language, once; without them English stands there, and says so by its `lang`. */
const words = (language) => ready.then(() => place(language, engine.take_words))
  .catch(() => {}).then(() => { tried.add(language); });

/** Fetches the towns of a country, once; the form says where they could not be had. */
const towns = (country) => place(country, (bytes) => engine.take_towns(country, bytes))
  .catch(() => engine.towns_failed(country));

// An unanswered promise is told once, above, and not again as an unhandled one.
ready.catch(() => {});

const cause = "@@cause@@";

async function describe(error) {
  if (typeof WebAssembly === "undefined") {
    return { code: "wasm-blocked", words: "this browser has no WebAssembly." };
  }
  const address = new URL(awaited, import.meta.url).href;
  try {
    // The empty module: a magic number and a version.
    new WebAssembly.Module(Uint8Array.of(0, 97, 115, 109, 1, 0, 0, 0));
  } catch (refused) {
    // A policy that names neither is mended in one go.
    const also = error instanceof refused.constructor ? "" : await cause(address, "wasm");
    return {
      code: "wasm-blocked",
      words: `this page's Content-Security-Policy refuses WebAssembly. Add 'wasm-unsafe-eval' to its script-src.${also && ` And ${also}`}`,
    };
  }
  const words = await cause(address, awaited === STYLE ? "css" : "wasm");
  return { code: "network", words: words || `${address} is not as it was made: it was changed on its way, or is part of another version.` };
}

// What was said of attributes: each thing once a page.
const told = new Set();
function tellOnce(words) {
  if (told.has(words)) return;
  told.add(words);
  console.warn(`Slipbark: ${words}`);
}

/** Says what is wrong with the attributes of a host, in words. */
async function judge(host) {
  const bare = (name) => name.replace(/[-_]/g, "");
  // One letter left out, too many, another, or two in the other order.
  const near = (a, b) => {
    let at = 0;
    while (at < a.length && a[at] === b[at]) at += 1;
    const [rest, other] = [a.slice(at), b.slice(at)];
    return rest.slice(1) === other || rest === other.slice(1) || rest.slice(1) === other.slice(1)
      || (rest[0] === other[1] && rest[1] === other[0] && rest.slice(2) === other.slice(2));
  };
  for (const { name, value } of host.attributes) {
    const known = Object.hasOwn(ATTRIBUTES, name);
    const meant = !known && Object.keys(ATTRIBUTES).find((it) => bare(it) === bare(name) || near(name, it));
    if (meant) tellOnce(`the attribute ${name} of <${host.localName}> is not known. Write ${meant}.`);
    if (!known || !ATTRIBUTES[name] || ATTRIBUTES[name].includes(value.trim())) continue;
    tellOnce(`${name}="${value}" of <${host.localName}> is not known and is left out. Use: ${ATTRIBUTES[name].join(", ")}.`);
  }
  // The rest is read as the question that the form begins with, with the same words for what is wrong.
  const given = (name) => host.getAttribute(name)?.trim() || undefined;
  if (!["species", "size", "date", "region"].some(given)) return;
  const question = engine.preset(host);
  const wrong = () => (engine.answer(question, { changes: false }).problems ?? []).map(({ field, message }) => {
    const name = field === "stems[0].diameter" ? "size" : field;
    return given(name) === undefined ? "" : `${name}="${given(name)}" of <${host.localName}>: ${message}`;
  }).filter(Boolean);
  let found = wrong();
  if (found.length) {
    // A name may be one of a tree that is known only by its name: those come by themselves.
    await regional().catch(() => {});
    found = wrong();
  }
  found.forEach(tellOnce);
}

// Keys that are typed into a field are not for the page around: "/" in `14 1/2` would open its search. Those that leave
// or close pass, and those with Ctrl or Command.
const FIELDS = "input:not([type=radio], [type=checkbox], [type=range], [type=file]), select, textarea";
function hold(event) {
  const passes = event.key === "Escape" || event.key === "Tab" || event.metaKey || (event.ctrlKey && !event.altKey);
  if (!passes && event.composedPath()[0].matches?.(FIELDS)) event.stopPropagation();
}

/** How light a computed colour looks, 0 to 1; NaN where it is see-through or not known. */
function lightness(colour) {
  const [name, ...rest] = colour.split(/[\s,()/]+/).filter(Boolean);
  // `color()` names its space first.
  const [a, b, c, alpha = 1] = (name === "color" ? rest.slice(1) : rest).map(Number);
  if (!(alpha >= 0.5)) return NaN;
  if (name.startsWith("ok")) return a;
  if (name === "lab" || name === "lch") return a / 100;
  return (0.299 * a + 0.587 * b + 0.114 * c) / (name === "color" ? 1 : 255);
}

/** Whether a host stands on dark ground: on its own surface, else on the nearest that is painted, else as its text says. */
function onDark(host) {
  const own = getComputedStyle(host);
  const set = own.getPropertyValue("--slipbark-surface") ? lightness(own.backgroundColor) : NaN;
  if (!Number.isNaN(set)) return set < 0.5;
  const around = (node) => node.assignedSlot ?? node.parentElement ?? node.getRootNode().host;
  for (let node = around(host); node; node = around(node)) {
    const light = lightness(getComputedStyle(node).backgroundColor);
    if (!Number.isNaN(light)) return light < 0.5;
  }
  // Grey text is as likely on white.
  return lightness(getComputedStyle(around(host) ?? host).color) > 0.6;
}

function tell(host, name, detail) {
  host.dispatchEvent(new CustomEvent(name, { detail: { schema: 1, ...detail }, bubbles: true, composed: true }));
}

function fail(host) {
  tell(host, "slipbark-failure", { code: failure.code });
}

class Slipbark extends HTMLElement {
  static observedAttributes = Object.keys(ATTRIBUTES);
  // Those that stand in the page, and follow its ground.
  static #standing = new Set();
  static #follows = false;
  #states = this.attachInternals?.().states;
  #running = false;
  #kept = new Map();
  #config;
  // What the group's settings come to: { value, list, failed }, a promise of that, or null.
  #settings = null;
  #resolve;
  #reject;
  #ready = new Promise((resolve, reject) => { this.#resolve = resolve; this.#reject = reject; });

  constructor() {
    super();
    this.#ready.catch(() => {});
    for (const name of PROPERTIES) {
      if (Object.hasOwn(this, name)) {
        const value = this[name];
        delete this[name];
        if (name === "config") this.#config = value ?? undefined;
        else this.#kept.set(name, value);
      }
    }
  }

  connectedCallback() {
    Slipbark.#standing.add(this);
    Slipbark.#follow();
    this.#look();
    if (!this.#settings) this.#want();
    if (loaded) this.start();
    else if (failure) { fail(this); this.#reject(new Error(failure.words)); }
    else { waiting.add(this); ready.catch((error) => this.#reject(error)); }
  }

  disconnectedCallback() {
    waiting.delete(this);
    // A move is a removal and an insertion: only what stays out is taken down.
    queueMicrotask(() => {
      if (this.isConnected) return;
      Slipbark.#standing.delete(this);
      if (!this.#running) return;
      this.#running = false;
      engine.disconnect(this);
    });
  }

  attributeChangedCallback(name, before, after) {
    if (name === "config") {
      if (before === after || this.#config !== undefined) return;
      if (this.isConnected) this.#want();
      else this.#settings = null;
      return;
    }
    if (!this.#running || before === after) return;
    const language = name === "lang" && languageOf(this);
    const change = () => { if (this.#running) engine.attribute_changed(this, name, before, after); };
    judge(this);
    if (language) words(language).then(change);
    else change();
  }

  // No answer goes without the settings that were asked for: the calculator starts when they are there, or can't be had.
  #want() {
    const address = this.getAttribute("config");
    const value = this.#config;
    const fetches = value === undefined ? address : typeof value?.species?.list === "string";
    if (!fetches) {
      this.#settings = value === undefined ? null : { value };
      if (this.#running) this.#use();
      return;
    }
    // Its code is fetched only where there is something to fetch.
    const code = import("./config.js");
    const coming = code.then((it) => it.settingsOf(value, address)).catch((failed) => ({ failed })).then((settings) => {
      // Set anew meanwhile: the last one counts.
      if (this.#settings !== coming) return;
      this.#settings = settings;
      if (this.#running) this.#use();
      else if (loaded) this.start();
    });
    this.#settings = coming;
  }

  #look() {
    if (!this.#states || !this.isConnected) return;
    if (onDark(this)) this.#states.add("dark");
    else this.#states.delete("dark");
  }

  // Pages change their ground by a class or an attribute of their root, as the reader's system does, or with a sheet that
  // comes late; colours that fade have arrived a little later.
  static #follow() {
    if (Slipbark.#follows) return;
    Slipbark.#follows = true;
    let later = 0;
    const look = () => { for (const host of Slipbark.#standing) host.#look(); };
    const soon = () => { look(); clearTimeout(later); later = setTimeout(look, 700); };
    const watch = new MutationObserver(soon);
    for (const element of [document.documentElement, document.body]) {
      if (element) watch.observe(element, { attributes: true });
    }
    matchMedia("(prefers-color-scheme: dark)").addEventListener("change", soon);
    window.addEventListener("load", soon, { once: true });
  }

  #use() {
    const { value, list, failed } = this.#settings ?? {};
    const told = engine.take_settings(this, value, list, failed !== undefined);
    if (failed) console.error(`Slipbark: the settings could not be had, and the page says so. (${failed})`);
    for (const { path, message, refuses } of told) {
      console[refuses ? "error" : "warn"](`Slipbark: settings, ${path || "the whole"}: ${message}`);
    }
  }

  start() {
    if (this.#running || !this.isConnected || this.#settings instanceof Promise) return;
    const language = languageOf(this);
    if (language) {
      words(language).then(() => this.start());
      return;
    }
    try {
      engine.connect(this);
    } catch (error) {
      console.error(`Slipbark: the calculator stopped while starting. Please report this line. (${error})`);
      failure ??= { code: "data", words: String(error) };
      fail(this);
      this.#reject(error);
      return;
    }
    this.#running = true;
    for (const name of ["keydown", "keypress", "keyup"]) this.shadowRoot.addEventListener(name, hold);
    if (this.#settings) this.#use();
    const kept = [...this.#kept];
    this.#kept.clear();
    try {
      for (const [name, value] of kept) engine.set_property(this, name, value);
    } catch (error) {
      console.error(`Slipbark: a property was set before the calculator was ready, and can't be read. ${error.message}`);
    }
    this.#resolve();
    judge(this);
    tell(this, "slipbark-ready", { version: engine.version(), dataVersion: engine.dataVersion() });
  }

  #set(name, value) {
    if (this.#running) engine.set_property(this, name, value);
    else this.#kept.set(name, value);
  }

  #get(name) {
    return this.#running ? engine.get_property(this, name) : this.#kept.get(name);
  }

  get ready() { return this.#ready; }
  get version() { return loaded ? engine.version() : undefined; }
  get config() { return this.#config; }
  set config(value) { this.#config = value ?? undefined; if (this.isConnected) this.#want(); else this.#settings = null; }
  get inputs() { return this.#get("inputs"); }
  set inputs(value) { this.#set("inputs", value); }
  get result() { return this.#get("result"); }
  get dataVersion() { return loaded ? engine.dataVersion() : undefined; }

  /** Shows the answer, as the button does; gives the answer, or the problems. */
  compute() { return this.#running ? engine.compute(this) : undefined; }
  /** Empties the form down to what the attributes say. */
  reset() { if (this.#running) engine.reset(this); }
  /** The visits of the last answer as the text of a calendar file (RFC 5545); undefined without an answer. */
  exportIcs() { return this.#running ? engine.export_ics(this) : undefined; }
  /** Puts the focus into the first field. */
  focusFirst() { if (this.#running) engine.focus_first(this); }
}

for (const name of NAMES) {
  const tag = `slipbark-${name}`;
  if (!customElements.get(tag)) customElements.define(tag, class extends Slipbark {});
}
