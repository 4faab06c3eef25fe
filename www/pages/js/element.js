// The class that customElements.define needs, once for each calculator; all else is in the WebAssembly.
// Until that is ready a host element shows its own children.
import init, * as engine from "./engine.js";

// The calculators; each is one element with the same interface.
const NAMES = ["tree-plan", "year", "ring", "reach", "effort", "checks"];
const ATTRIBUTES = [
  "lang", "units", "config", "species", "size", "size-unit", "date", "region",
  "mode", "theme", "heading-level", "share", "storage", "print",
];
// Properties that may be set on a host before this file has run.
const PROPERTIES = ["config", "inputs"];

// Filled in where these files lie in the folder of a full version: what each must be.
const DIGESTS = {};
const ask = (file) => fetch(new URL(file, import.meta.url), DIGESTS[file] && { integrity: DIGESTS[file] });

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

async function load() {
  try {
    await init({ module_or_path: ask("./engine.wasm") });
    // The page may draw and hear in between: each of these steps holds a slow phone up.
    await new Promise((go) => setTimeout(go));
    // Answers link to their sources on the site that these files come from.
    engine.locate(new URL("../", import.meta.url).href);
    engine.when_climate_is_wanted(() => { climate().catch(() => {}); });
    engine.when_regional_is_wanted(() => { regional().catch(() => {}); });
    engine.when_towns_are_wanted((country) => { towns(country); });
    loaded = true;
  } catch (error) {
    failure = describe(error);
    console.error(`Slipbark: ${failure.words} The link in its place stays. (${error})`);
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

function describe(error) {
  if (typeof WebAssembly === "undefined") {
    return { code: "wasm-blocked", words: "this browser has no WebAssembly." };
  }
  if (error instanceof WebAssembly.CompileError || error instanceof EvalError) {
    return {
      code: "wasm-blocked",
      words: "this page's Content-Security-Policy refuses WebAssembly. Add 'wasm-unsafe-eval' to its script-src. Until then a frame takes its place where frame-src allows one.",
    };
  }
  const from = new URL(import.meta.url).origin;
  return {
    code: "network",
    words: `the calculator could not be fetched from ${from}. Check that it can be reached, and that the page's connect-src names it.`,
  };
}

function tell(host, name, detail) {
  host.dispatchEvent(new CustomEvent(name, { detail: { schema: 1, ...detail }, bubbles: true, composed: true }));
}

function fail(host) {
  tell(host, "slipbark-failure", { code: failure.code });
}

class Slipbark extends HTMLElement {
  static observedAttributes = ATTRIBUTES;
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
    if (!this.#settings) this.#want();
    if (loaded) this.start();
    else if (failure) { fail(this); this.#reject(new Error(failure.words)); }
    else { waiting.add(this); ready.catch((error) => this.#reject(error)); }
  }

  disconnectedCallback() {
    waiting.delete(this);
    // A move is a removal and an insertion: only what stays out is taken down.
    queueMicrotask(() => {
      if (this.isConnected || !this.#running) return;
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
    if (this.#settings) this.#use();
    const kept = [...this.#kept];
    this.#kept.clear();
    try {
      for (const [name, value] of kept) engine.set_property(this, name, value);
    } catch (error) {
      console.error(`Slipbark: a property was set before the calculator was ready, and can't be read. ${error.message}`);
    }
    this.#resolve();
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
