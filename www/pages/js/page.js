// Runs in the head of each page of the site, before it is drawn: the colours
// that were picked, then the copy for use with no signal.
(() => {
  "use strict";
  const base = document.currentScript.dataset.base;
  const KEY = "slipbark-colours";
  const PICKS = ["light", "dark", "sun"];
  const root = document.documentElement;

  // Storage may be refused; the pick then holds for this page alone.
  const recall = () => { try { return localStorage.getItem(KEY); } catch { return null; } };
  const keep = (pick) => {
    try {
      if (PICKS.includes(pick)) localStorage.setItem(KEY, pick);
      else localStorage.removeItem(KEY);
    } catch { /* as said above */ }
  };
  const show = (pick) => {
    if (PICKS.includes(pick)) root.dataset.theme = pick;
    else delete root.dataset.theme;
  };
  const kept = recall();
  show(kept);

  const colours = () => {
    const sun = document.getElementById("sun");
    const radios = [...document.querySelectorAll("input[name=theme]")];
    const tick = (pick) => {
      sun.checked = pick === "sun";
      for (const radio of radios) radio.checked = pick !== "sun" && radio.value === (PICKS.includes(pick) ? pick : "auto");
    };
    // What the browser put back into the controls after a reload gives way to what was kept.
    tick(kept);
    const pick = (value) => { show(value); tick(value); keep(value); };
    sun.addEventListener("change", () => pick(sun.checked ? "sun" : "auto"));
    for (const radio of radios) radio.addEventListener("change", () => pick(radio.value));
  };

  const origins = () => {
    for (const span of document.querySelectorAll("[data-origin]")) span.textContent = location.origin;
  };

  // Asks the worker that serves this page's address to keep every file for the language of the page, and whether it does.
  const checked = (worker) => new Promise((resolve) => {
    const channel = new MessageChannel();
    channel.port1.onmessage = (event) => resolve(event.data === true);
    worker.postMessage({ check: root.lang }, [channel.port2]);
    setTimeout(() => resolve(false), 60000);
  });

  const offline = async () => {
    if (!("serviceWorker" in navigator) || window.top !== window) return;
    const saved = document.getElementById("saved");
    const bar = document.getElementById("update");
    let agreed = false;
    navigator.serviceWorker.addEventListener("controllerchange", () => { if (agreed) location.reload(); });
    let registration;
    try {
      registration = await navigator.serviceWorker.register(`${base}sw.js`, { scope: base, updateViaCache: "none" });
    } catch {
      return; // Refused or broken: the page works, and makes no claim.
    }
    const offer = () => { bar.hidden = !registration.waiting || !registration.active; };
    const claim = async () => {
      if (registration.active && await checked(registration.active)) {
        saved.textContent = saved.dataset.said;
      }
    };
    const follow = (worker) => worker?.addEventListener("statechange", () => {
      offer();
      if (worker.state === "activated") claim();
    });
    follow(registration.installing);
    registration.addEventListener("updatefound", () => follow(registration.installing));
    document.getElementById("update-now").addEventListener("click", () => {
      agreed = true;
      registration.waiting?.postMessage("take over");
    });
    offer();
    if (registration.active?.state === "activated") claim();
    else follow(registration.active);
  };

  // A link to a question that is opened over this page begins it anew; one to a part of the page does not.
  window.addEventListener("hashchange", () => { if (location.hash.startsWith("#v=")) location.reload(); });

  // What can't start says so where it would stand: a script that did not arrive, or a module that is refused.
  const failed = () => {
    const note = document.getElementById("failed");
    if (!note) return;
    note.hidden = false;
    document.getElementById("failed-again").addEventListener("click", () => location.reload());
  };
  document.addEventListener("slipbark-failure", (event) => { if (event.detail.code !== "config") failed(); });
  window.addEventListener("error", (event) => { if (event.target.localName === "script") failed(); }, true);

  // The form stands before its module. A press on its button is kept until then, and said; without the module it gives
  // nothing, and what weighs stands under it.
  const early = () => {
    const root = document.getElementById("calculator")?.shadowRoot;
    root?.addEventListener("click", ({ target }) => {
      const built = root.querySelector("[data-built]");
      if (!built || !target.closest("button")) return;
      built.querySelector(".soon").hidden = false;
      if (!target.closest("[data-act]")) built.dataset.pressed = "";
    });
    document.addEventListener("slipbark-failure", () => {
      const built = root?.querySelector("[data-built]");
      if (!built) return;
      built.querySelector(".soon").hidden = true;
      root.append(document.createElement("slot"));
    });
  };

  // A link to a part that is folded opens it.
  document.addEventListener("click", (event) => {
    const link = event.target.closest?.("a[href^='#']");
    const part = link && document.getElementById(decodeURIComponent(link.hash.slice(1)));
    if (part?.localName === "details") part.open = true;
  });

  document.addEventListener("DOMContentLoaded", () => {
    // Programs that read pages want whole addresses here; a build knows no host.
    for (const link of document.querySelectorAll("link[hreflang]")) link.setAttribute("href", link.href);
    colours();
    origins();
    early();
    // After load, so that saving the site never delays showing it.
    if (document.readyState === "complete") offline();
    else window.addEventListener("load", offline, { once: true });
  });
})();
