// Keeps one whole version of the site on the device. A version is all of its
// files, checked by digest, in a cache named after the digest of them all.
const VERSION = "@@version@@";
const FILES = ["@@files@@"];

const BASE = new URL("./", self.location).href;
const PREFIX = `slipbark ${BASE} `;
const CACHE = PREFIX + VERSION;
const address = (path) => new URL(path, BASE).href;

self.addEventListener("install", (event) => event.waitUntil(install()));

async function install() {
  const mine = await caches.has(CACHE);
  try {
    const cache = await caches.open(CACHE);
    // All or nothing, past the browser's own cache, and only the bytes this
    // version was made with: files of two versions are never mixed.
    await cache.addAll(FILES.map(([path, integrity]) =>
      new Request(address(path), { cache: "reload", integrity, credentials: "same-origin" })));
  } catch (error) {
    if (!mine) await caches.delete(CACHE);
    throw error;
  }
  // No skipWaiting: the page asks for it once its reader has agreed.
}

self.addEventListener("activate", (event) => event.waitUntil(tidy()));

async function tidy() {
  for (const name of await caches.keys()) {
    if (name.startsWith(PREFIX) && name !== CACHE) await caches.delete(name);
  }
}

self.addEventListener("message", (event) => {
  if (event.data === "take over") self.skipWaiting();
  else if (event.data === "check") event.waitUntil(check().then((whole) => event.ports[0]?.postMessage(whole)));
});

/** Whether every file of this version is in its cache. */
async function check() {
  const cache = await caches.open(CACHE);
  const found = await Promise.all(FILES.map(([path]) => cache.match(address(path))));
  return found.every(Boolean);
}

self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method !== "GET" || !request.url.startsWith(BASE)) return;
  event.respondWith(serve(request));
});

async function serve(request) {
  const url = new URL(request.url);
  let path = url.origin + url.pathname;
  if (path.endsWith("/index.html")) path = path.slice(0, -"index.html".length);
  const cache = await caches.open(CACHE);
  const kept = await cache.match(path);
  if (kept) return kept;
  const page = request.mode === "navigate";
  if (page && !path.endsWith("/")) {
    if (await cache.match(`${path}/`)) return Response.redirect(`${path}/${url.search}`, 302);
  }
  try {
    return await fetch(request);
  } catch (error) {
    const none = page && await cache.match(address("404.html"));
    if (!none) throw error;
    return new Response(none.body, { status: 404, headers: none.headers });
  }
}
