// Loads the tree plan, or another of the calculators, into any page:
//   <script src="https://SITE/v1/embed.js" defer></script>
//   <slipbark-tree-plan><p><a href="https://SITE/">Plan one tree</a></p></slipbark-tree-plan>
(() => {
  "use strict";
  const script = document.currentScript ?? document.querySelector("script[src*='/v1/embed.js']");
  if (!script) return;
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
    for (const div of document.querySelectorAll("div[data-slipbark]")) {
      if (div.dataset.slipbarkPlaced !== undefined) continue;
      const element = make(div);
      div.dataset.slipbarkPlaced = "";
      if (element) div.replaceChildren(element);
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
  if (document.readyState === "loading") document.addEventListener("DOMContentLoaded", place, { once: true });
  else place();

  // Loaded twice it does nothing more; from two places it says so and the first stays.
  const key = Symbol.for("slipbark.embed");
  if (window[key]) {
    if (window[key] !== here) {
      console.warn(`Slipbark: this page loads it from ${window[key]} and from ${here}. The first one is used; remove one of the two lines.`);
    }
    return;
  }
  window[key] = here;
  // What could not start steps down to a frame. Its code is fetched only then.
  document.addEventListener("slipbark-failure", (event) => {
    const host = event.composedPath()[0];
    if (host.shadowRoot || !["wasm-blocked", "network"].includes(event.detail?.code)) return;
    import(new URL("../stepdown.js", here).href).then(({ stepDown }) => stepDown(host, site), () => {});
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
  }
  import(new URL("../element.js", here).href).catch((error) => {
    delete window[key];
    console.error(`Slipbark: the calculator could not be loaded from ${site}. Check that the address is right, and that the page's script-src names it. The link in its place stays. (${error})`);
  });
})();
