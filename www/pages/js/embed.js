// Loads the tree plan, or another of the calculators, into any page; the page "Put it on your site" has the lines.
(() => {
  "use strict";
  let script = document.currentScript;
  // What is put into one file with others, or loaded as a module, runs in no line of its own.
  if (!/\bembed\.js$/.test(script?.src.replace(/[?#].*/, "") ?? "")) {
    script = document.querySelector("script[src*='/v1/embed.js']");
    const then = script ? `It uses those beside ${script.src}.` : "Nothing is loaded.";
    console.warn(`Slipbark: embed.js runs without a script line of its own, as when it is bundled or loaded as a module, so it can't tell where its other files are. ${then} Leave it out of bundles and optimisers.`);
    if (!script) return;
  }
  const here = script.src;
  const site = new URL("../", here).href;
  // What the link in the place of the calculator says: the build puts in every language that the site has.
  const WORDS = {};
  const NAMES = ["tree-plan", "year", "ring", "reach", "effort", "checks"];

  // A page builder that removes unknown tags leaves the script, or a plain div.
  const make = (holder) => {
    const name = holder.dataset.slipbark;
    if (!NAMES.includes(name)) {
      console.warn(`Slipbark: data-slipbark="${name}" is not known. Use: ${NAMES.join(", ")}.`);
      return null;
    }
    const element = document.createElement(`slipbark-${name}`);
    for (const [name, value] of Object.entries(holder.dataset)) {
      if (name !== "slipbark") element.setAttribute(name.replace(/[A-Z]/g, (c) => `-${c.toLowerCase()}`), value);
    }
    const before = script === holder && holder.previousElementSibling;
    if (holder !== script && holder.querySelector("*")) {
      element.append(...holder.childNodes);
      return element;
    }
    // A link of the page's own that stands before the script alone.
    if (before && before.matches("p") && before.querySelector("a")?.href.startsWith(site)) {
      element.append(before);
      return element;
    }
    const link = document.createElement("a");
    const around = (holder.dataset.lang ?? (holder.closest("[lang]") ?? document.documentElement).lang).toLowerCase();
    const language = Object.keys(WORDS).find((tag) => around === tag || around.startsWith(`${tag}-`)) ?? "en";
    link.href = language === "en" ? site : `${site}${language}/`;
    link.lang = language;
    link.textContent = WORDS[language];
    const paragraph = document.createElement("p");
    paragraph.append(link);
    element.append(paragraph);
    return element;
  };
  const place = () => {
    for (const div of document.querySelectorAll("div[data-slipbark]:not([data-slipbark-placed])")) {
      const element = make(div);
      div.dataset.slipbarkPlaced = "";
      if (!element) continue;
      // As wide as the element is by itself, also where its parent shrinks to what it holds.
      Object.assign(div.style, { flexGrow: "1", alignSelf: "stretch", justifySelf: "stretch" });
      div.replaceChildren(element);
    }
  };
  if (script.dataset.slipbark && script.dataset.slipbarkPlaced === undefined) {
    const element = make(script);
    script.dataset.slipbarkPlaced = "";
    if (element) {
      // Run where it stands, before what follows is drawn, it keeps the place that the calculator will take.
      Object.assign(element.style, { display: "block", minHeight: "100vh" });
      script.after(element);
    }
  }

  // Loaded twice it does nothing more; from two places it says so and the first stays.
  const key = Symbol.for("slipbark.embed");
  if (window[key]) {
    if (window[key] !== here) {
      console.warn(`Slipbark: this page loads it from ${window[key]} and from ${here}. The first one is used; remove one of the two lines.`);
    }
    return;
  }
  window[key] = here;
  // Those that come later are filled too; while the page is being read they may not be whole yet.
  const begin = () => {
    place();
    new MutationObserver((changes) => {
      if (changes.some(({ addedNodes }) => [...addedNodes].some((node) => node.nodeType === 1))) place();
    }).observe(document.documentElement, { childList: true, subtree: true });
  };
  if (document.readyState === "loading") document.addEventListener("DOMContentLoaded", begin, { once: true });
  else begin();
  // What could not start steps down to a frame. Its code is fetched only then; a server that lets no other origin use
  // its modules still lets a script run.
  const stepDown = async (host) => {
    const address = new URL("../stepdown.js", here).href;
    await import(address).catch(() => new Promise((resolve, reject) => {
      document.head.append(Object.assign(document.createElement("script"), { src: address, onload: resolve, onerror: reject }));
    })).then(() => window[Symbol.for("slipbark.step-down")](host, site), () => {});
  };
  document.addEventListener("slipbark-failure", (event) => {
    const host = event.composedPath()[0];
    if (!host.shadowRoot && ["wasm-blocked", "network"].includes(event.detail?.code)) stepDown(host);
  });
  // Filled in for the folder of a full version: the browser runs its modules only as they were made.
  const HELD = {};
  const ahead = (rel, file, more) => document.head.append(Object.assign(document.createElement("link"),
    { rel, href: new URL(file, here).href, crossOrigin: "anonymous", ...more }));
  const held = Object.entries(HELD);
  for (const [file, integrity] of held) ahead("modulepreload", file, { integrity });
  if (!held.length) {
    // Asked for with the script below, not after it. With a digest a browser would fetch the module twice.
    ahead("modulepreload", "../engine.js");
    ahead("preload", "../engine.wasm", { as: "fetch", type: "application/wasm" });
    ahead("preload", "../calculator.css", { as: "fetch" });
  }
  const cause = "@@cause@@";
  // Why the module, or one that it names at its top, could not be loaded.
  const why = async (address) => {
    const told = await cause(address, "javascript");
    if (told) return told;
    const text = await (await fetch(address)).text();
    for (const [, named] of text.matchAll(/^import .* from "(\.[^"]+)";$/gm)) {
      const told = await cause(new URL(named, address).href, "javascript");
      if (told) return told;
    }
    return `the browser refuses ${address}. This page's script-src has to name ${new URL(address).origin}, and the file must be as it was made.`;
  };
  const element = new URL("../element.js", here).href;
  import(element).catch(async (error) => {
    delete window[key];
    console.error(`Slipbark: ${await why(element)} Until then a frame or the link stands in its place. (${error})`);
    for (const host of document.querySelectorAll(NAMES.map((name) => `slipbark-${name}`).join())) stepDown(host);
  });
})();
