// The way out, should a version of the worker ever do harm: `build --no-offline`
// writes this one in its place. It takes over at once, removes all that was
// kept, and unregisters itself; from the next load on, pages come from the server.
const PREFIX = `slipbark ${new URL("./", self.location).href} `;

self.addEventListener("install", () => self.skipWaiting());
self.addEventListener("activate", (event) => event.waitUntil(off()));

async function off() {
  for (const name of await caches.keys()) {
    if (name.startsWith(PREFIX)) await caches.delete(name);
  }
  await self.registration.unregister();
}
