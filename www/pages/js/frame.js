// The page inside an iframe: its address gives the element's attributes, and
// it tells the page around it how tall it is.
(() => {
  "use strict";
  // Those of the element that the address may give: the build puts them in.
  const PASSED = [];
  const asked = new URLSearchParams(location.search);
  const calculator = document.getElementById("calculator");
  const framed = window.parent !== window;
  // What can't start says so; that settings could not be used is said by the calculator itself.
  const failed = () => { document.getElementById("failed").hidden = false; };
  document.addEventListener("slipbark-failure", (event) => { if (event.detail.code !== "config") failed(); });
  window.addEventListener("error", (event) => { if (event.target.localName === "script") failed(); }, true);
  for (const name of PASSED) {
    // Opened by itself it is a page of this site: nobody else's contacts stand in it.
    if (name === "config" && !framed) continue;
    if (!asked.has(name)) continue;
    calculator.setAttribute(name, asked.get(name));
    // The form that was built into the page is that of an address that gives nothing.
    if (name !== "theme") calculator.shadowRoot?.replaceChildren();
  }
  const early = "@@early@@";
  early();
  const theme = asked.get("theme");
  if (theme === "light" || theme === "dark" || theme === "sun") document.documentElement.dataset.theme = theme;
  if (!framed) return;
  const id = asked.get("id") ?? "";
  let told = 0;
  let timer = 0;
  const tell = () => {
    timer = 0;
    const h = Math.max(320, Math.ceil(document.body.getBoundingClientRect().height));
    if (Math.abs(h - told) < 4) return;
    told = h;
    // A height is no secret, and the frame can't know who holds it.
    window.parent.postMessage({ slipbark: 1, type: "height", id, h }, "*");
  };
  // Not before the calculator is there or has given up: a frame that shrank first would grow again.
  let begun = false;
  const begin = () => {
    if (begun) return;
    begun = true;
    // Told at once: a frame of another site that is not drawn yet, as one without a height, observes nothing.
    tell();
    new ResizeObserver(() => { timer ||= setTimeout(tell, 100); }).observe(document.body);
  };
  for (const name of ["slipbark-ready", "slipbark-failure"]) document.addEventListener(name, begin);
  setTimeout(begin, 10000);
})();
