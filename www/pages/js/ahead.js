// Stands inside the head of a page that begins with its calculator, in front of the style sheets. Where the page itself
// took long to come, its module is asked for before the script that wants it is there. Where it came at once there is
// nothing to win, and the module would only share line and processor with the first paint.
(() => {
  // Milliseconds from when the page was asked for: one round trip of slow 4G.
  const LONG = 150;
  const { module } = document.currentScript.dataset;
  if (performance.now() < LONG) return;
  const link = document.createElement("link");
  document.head.append(Object.assign(link, { rel: "preload", href: module, as: "fetch", type: "application/wasm", crossOrigin: "" }));
})();
