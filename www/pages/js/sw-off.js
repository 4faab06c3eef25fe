// The way out, should a version of the worker ever do harm: `build --no-offline`
// writes this one in its place. It takes over at once, removes all that was
// kept, unregisters itself, and tells the pages that came from there: they are loaded anew, from the server.
const BASE = new URL("./", self.location).href;
const PREFIX = `slipbark ${BASE} `;

self.addEventListener("install", () => self.skipWaiting());
self.addEventListener("activate", (event) => event.waitUntil(off()));

async function off() {
  for (const name of await caches.keys()) {
    if (name.startsWith(PREFIX)) await caches.delete(name);
  }
  await self.registration.unregister();
  const open = await self.clients.matchAll({ includeUncontrolled: true, type: "window" });
  for (const client of open) if (client.url.startsWith(BASE)) client.postMessage({ off: true });
}
