// Runs in the head of each page of the site, before it is drawn: the colours
// that were picked, then the copy for use with no signal.
(() => {
  "use strict";
  const { base, keeps } = document.currentScript.dataset;
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

  // Addresses that are shown to be copied are whole ones; in the kit a page tells its steps to where the site begins.
  const origins = () => {
    for (const span of document.querySelectorAll("[data-origin]")) {
      const steps = span.dataset.origin;
      span.textContent = steps ? new URL(steps, document.baseURI).href : location.origin;
    }
  };

  // The kit can't hold itself: where nobody put it beside the pages, its link is plain text.
  const kit = async () => {
    const link = document.querySelector("a[href$='slipbark-kit.zip']");
    if (!link) return;
    const answer = await fetch(link.href, { method: "HEAD" }).catch(() => null);
    if (answer && !answer.ok) link.replaceWith(...link.childNodes);
  };

  // Asks the worker that serves this page's address to keep every file for the language of the page, and the page. It answers with the
  // file that could not be kept, or with none.
  const checked = (worker) => new Promise((resolve) => {
    const channel = new MessageChannel();
    channel.port1.onmessage = (event) => resolve(event.data);
    worker.postMessage({ check: root.lang, page: location.href }, [channel.port2]);
    setTimeout(() => resolve(null), 60000);
  });

  // Resolves when a worker has been installed, or given up.
  const settled = (worker) => new Promise((resolve) => {
    const look = () => { if (worker.state !== "installing") resolve(); };
    worker.addEventListener("statechange", look);
    look();
  });

  let touched = false;
  for (const event of ["input", "pointerdown", "keydown"]) window.addEventListener(event, () => { touched = true; }, { once: true, capture: true });

  // What the worker tells may come before this page has anything to do with it.
  const heard = [];
  let hear = (data) => heard.push(data);
  navigator.serviceWorker?.addEventListener("message", ({ data }) => {
    // The site was built anew to keep nothing. What nobody has touched yet is loaded from there at once.
    if (data?.off && !touched) location.reload();
    else hear(data);
  });

  // The copies that are kept of the site, by name: those of other sites on the same host are none of ours.
  const copies = async (scope) => (await caches.keys()).filter((name) => name.startsWith(`slipbark ${scope} `));

  const offline = async () => {
    const workers = navigator.serviceWorker;
    if (!workers || window.top !== window) return;
    const served = workers.controller;
    const saved = document.getElementById("saved");
    const bar = document.getElementById("update");
    let agreed = false;
    let registration;
    const unsaved = document.getElementById("unsaved");
    const failed = ({ path, why }, of) => { unsaved.textContent = unsaved.dataset[of ?? why].replace("{file}", () => path); };
    hear = (data) => {
      // A version that could not be kept; one that was kept before goes on.
      if (data?.notKept) failed(data.notKept, registration?.active && "update");
      if (data?.off) saved.textContent = unsaved.textContent = "";
    };
    heard.splice(0).forEach(hear);
    workers.addEventListener("controllerchange", () => { if (agreed) location.reload(); });
    try {
      registration = await workers.register(`${base}sw.js`, { scope: base, updateViaCache: "none" });
    } catch {
      return; // Refused or broken: the page works, and makes no claim.
    }
    const offer = () => { bar.hidden = !registration.waiting || !registration.active; };
    const claim = async () => {
      const answer = registration.active && await checked(registration.active);
      if (!answer) return;
      // A file that is of no use to the version on the server is none to tell of: that version is offered.
      saved.textContent = answer.notKept ? "" : saved.dataset.said;
      // That this page alone could not be kept is the least that there is to say.
      if (answer.notKept && !registration.waiting && !(answer.notKept.why === "page" && unsaved.textContent)) failed(answer.notKept);
      // Nothing else is asked of a worker before this.
      document.dispatchEvent(new CustomEvent("slipbark-checked", { detail: registration }));
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
    if (registration.active?.state === "activated") {
      // Nothing is claimed for a version that the server has taken back.
      await Promise.race([registration.update().catch(() => {}), new Promise((resolve) => setTimeout(resolve, 5000))]);
      if (registration.installing) {
        await settled(registration.installing);
        // A worker that takes over without asking waits until this page's own has nothing to do: it is left alone.
        await new Promise((go) => setTimeout(go, 2000));
      }
      claim();
    } else follow(registration.active);
    // A worker that served this page and took itself away keeps nothing more; what it told may have come before anybody
    // heard it.
    setTimeout(async () => {
      if (!served || touched) return;
      const now = await workers.getRegistration(base);
      // This page may have registered the one anew that was on its way out: another than served it, and nothing is kept.
      if (!now || now.active !== served && !(await copies(registration.scope)).length) location.reload();
    }, 3000);
  };

  // A site that keeps nothing removes what an earlier build of it kept, worker and files.
  const forget = async () => {
    if (!("serviceWorker" in navigator)) return;
    const scope = new URL(base, document.baseURI).href;
    for (const registration of await navigator.serviceWorker.getRegistrations()) {
      if (registration.scope === scope) await registration.unregister();
    }
    for (const name of await copies(scope)) await caches.delete(name);
  };

  // When nothing that this page shows is still on its way: saving the site takes neither the net nor the processor from
  // it. A page with a calculator waits until that is there, or can't be had.
  const shown = async () => {
    const loaded = document.readyState === "complete" ? null : new Promise((go) => window.addEventListener("load", go, { once: true }));
    await Promise.all([loaded, document.getElementById("calculator") && calculator]);
    await new Promise((go) => { if (window.requestIdleCallback) requestIdleCallback(go, { timeout: 2000 }); else setTimeout(go, 200); });
  };

  // A link to a question that is opened over this page begins it anew; one to a part of the page does not.
  window.addEventListener("hashchange", () => { if (location.hash.startsWith("#v=")) location.reload(); });

  let begun;
  const calculator = new Promise((go) => { begun = go; });
  document.addEventListener("slipbark-ready", begun, { once: true });

  // What can't start says so where it would stand: a script that did not arrive, or a module that is refused.
  const failed = () => {
    begun();
    const note = document.getElementById("failed");
    if (!note) return;
    note.hidden = false;
    document.getElementById("failed-again").addEventListener("click", () => location.reload());
  };
  document.addEventListener("slipbark-failure", (event) => { if (event.detail.code !== "config") failed(); });
  window.addEventListener("error", (event) => { if (event.target.localName === "script") failed(); }, true);

  const early = "@@early@@";

  // A link to a part that is folded opens it.
  document.addEventListener("click", (event) => {
    const link = event.target.closest?.("a[href^='#']");
    const part = link && document.getElementById(decodeURIComponent(link.hash.slice(1)));
    if (part?.localName === "details") part.open = true;
  });

  document.addEventListener("DOMContentLoaded", () => {
    // Programs that read pages want whole addresses here; a build knows no host.
    for (const link of document.querySelectorAll("link[hreflang], link[rel=canonical]")) link.setAttribute("href", link.href);
    colours();
    origins();
    kit();
    early();
    // A page that comes from the device asks at once whether the site has changed: that is one small file.
    const begin = navigator.serviceWorker?.controller ? Promise.resolve() : shown();
    begin.then(keeps === undefined ? forget : offline).catch(() => {});
  });
})();
