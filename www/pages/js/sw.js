// Keeps one whole version of the site on the device. A version is all of its
// files, checked by digest, in a cache named after the digest of them all; of
// pages and words, those in the languages that are read.
const VERSION = "@@version@@";
// A path, its digest, and its language where it is of use in one alone.
const FILES = ["@@files@@"];

const BASE = new URL("./", self.location).href;
const PREFIX = `slipbark ${BASE} `;
const CACHE = PREFIX + VERSION;
const address = (path) => new URL(path, BASE).href;

// The pages of the first language lie at the base, those of each other in a folder of its name.
const FIRST = "en";
const LANGUAGES = [...new Set(FILES.flatMap(([, , language]) => language ?? []))];
const homeOf = (language) => (language === FIRST ? "" : `${language}/`);
const languageOf = (path) => LANGUAGES.find((language) => language !== FIRST && path.startsWith(homeOf(language))) ?? FIRST;
const filesOf = (languages) => FILES.filter(([, , language]) => !language || languages.includes(language));

/** The languages whose pages stand in a cache. */
async function keptIn(cache) {
  const found = await Promise.all(LANGUAGES.map((language) => cache.match(address(homeOf(language)))));
  return LANGUAGES.filter((_, at) => found[at]);
}

/** The languages of the pages that are open, and of those that an older version kept. */
async function read() {
  const open = await self.clients.matchAll({ includeUncontrolled: true, type: "window" });
  const languages = open.filter(({ url }) => url.startsWith(BASE)).map(({ url }) => languageOf(url.slice(BASE.length)));
  for (const name of await caches.keys()) {
    if (name.startsWith(PREFIX)) languages.push(...await keptIn(await caches.open(name)));
  }
  return languages.length ? languages : [FIRST];
}

// All or nothing, past the browser's own cache, and only the bytes this
// version was made with: files of two versions are never mixed.
const fetchAll = (cache, files) => cache.addAll(files.map(([path, integrity]) =>
  new Request(address(path), { cache: "reload", integrity, credentials: "same-origin" })));

self.addEventListener("install", (event) => event.waitUntil(install()));

async function install() {
  const mine = await caches.has(CACHE);
  try {
    const languages = await read();
    await fetchAll(await caches.open(CACHE), filesOf(languages));
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
  else if (event.data?.check) {
    const { check } = event.data;
    event.waitUntil(keeps(check).catch(() => false).then((whole) => event.ports[0]?.postMessage(whole)));
  }
});

/** Whether every file of this version in a language is in its cache, and in those that were read before; what is not is
 *  fetched now. */
async function keeps(language) {
  const cache = await caches.open(CACHE);
  const files = filesOf([...await keptIn(cache), language]);
  const found = await Promise.all(files.map(([path]) => cache.match(address(path))));
  await fetchAll(cache, files.filter((_, at) => !found[at]));
  return true;
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
    // With no signal a page in a language that is not kept is had in one that is.
    const asked = path.slice(BASE.length);
    const rest = asked.slice(homeOf(languageOf(asked)).length);
    for (const language of page ? await keptIn(cache) : []) {
      const other = address(homeOf(language) + rest);
      if (await cache.match(other)) return Response.redirect(other, 302);
    }
    const none = page && await cache.match(address("404.html"));
    if (!none) throw error;
    return new Response(none.body, { status: 404, headers: none.headers });
  }
}
