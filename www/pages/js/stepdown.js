// Where a page refuses what the element needs, the same calculator in a frame
// takes its place, if the page lets frames of this site in. Its fallback stays
// until the frame has spoken, and for good where it does not.
(() => {
  "use strict";
  const PASSED = [];
  const PATIENCE = 30000;
  // The title of the frame: the build puts in every language that the site has.
  const WORDS = {};
  const framed = new WeakSet();

  // A browser that knows no states of elements does not know the selector either.
  const dark = (host) => { try { return host.matches(":state(dark)"); } catch { return false; } };

  /** Puts the frame of `site` into `host`, an element that could not start. */
  const stepDown = (host, site) => {
    if (framed.has(host)) return;
    framed.add(host);
    const name = host.localName.slice("slipbark-".length);
    const around = (host.closest("[lang]") ?? document.documentElement).lang.toLowerCase();
    const language = Object.keys(WORDS).find((tag) => around === tag || around.startsWith(`${tag}-`)) ?? "en";
    const address = new URL(`${language === "en" ? "" : `${language}/`}embed/${name}/`, site);
    for (const name of PASSED) {
      if (!host.hasAttribute(name)) continue;
      const value = host.getAttribute(name);
      // An address beside the page is one in full inside the frame.
      address.searchParams.set(name, name === "config" && value ? new URL(value, document.baseURI).href : value);
    }
    // In a page of its own it would see no ground but the reader's.
    if (!address.searchParams.has("theme") && dark(host)) address.searchParams.set("theme", "dark");
    const frame = document.createElement("iframe");
    frame.lang = language;
    frame.title = WORDS[language][name];
    frame.setAttribute("sandbox", "allow-scripts allow-same-origin allow-forms allow-downloads allow-popups allow-modals allow-top-navigation-by-user-activation");
    frame.setAttribute("width", "100%");
    // Property by property: a page's policy may refuse style attributes.
    Object.assign(frame.style, { border: "0", height: "0", display: "block", visibility: "hidden" });
    const fallback = [...host.children];
    const hear = ({ data, origin, source }) => {
      if (source !== frame.contentWindow || origin !== address.origin) return;
      if (data?.slipbark !== 1 || data.type !== "height" || !Number.isFinite(data.h)) return;
      clearTimeout(timer);
      for (const child of fallback) child.hidden = true;
      host.style.minHeight = "0";
      frame.style.visibility = "";
      frame.style.height = `${Math.max(320, data.h)}px`;
    };
    const refused = (event) => {
      if (/^(frame|child|default)-src/.test(event.effectiveDirective) && event.blockedURI.startsWith(address.origin)) giveUp();
    };
    const giveUp = () => {
      clearTimeout(timer);
      removeEventListener("message", hear);
      document.removeEventListener("securitypolicyviolation", refused);
      frame.remove();
      // The place that was kept for it is not needed.
      host.style.minHeight = "0";
    };
    const timer = setTimeout(giveUp, PATIENCE);
    addEventListener("message", hear);
    document.addEventListener("securitypolicyviolation", refused);
    frame.src = address.href;
    host.append(frame);
  };
  // By a name and not as an export: it runs as a module, or as a script where modules are refused.
  window[Symbol.for("slipbark.step-down")] ??= stepDown;
})();
