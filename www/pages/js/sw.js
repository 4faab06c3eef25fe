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

/** The languages of which a cache holds a file. */
async function keptIn(cache) {
  const kept = new Set((await cache.keys()).map(({ url }) => url));
  return LANGUAGES.filter((language) => FILES.some(([path, , own]) => own === language && kept.has(address(path))));
}

/** The site's pages that are open. */
async function pages() {
  const open = await self.clients.matchAll({ includeUncontrolled: true, type: "window" });
  return open.filter(({ url }) => url.startsWith(BASE));
}

/** The languages of the pages that are open, and of those that an older version kept. */
async function read() {
  const languages = (await pages()).map(({ url }) => languageOf(url.slice(BASE.length)));
  for (const name of await caches.keys()) {
    if (name.startsWith(PREFIX)) languages.push(...await keptIn(await caches.open(name)));
  }
  return languages.length ? languages : [FIRST];
}

/** A file that could not be kept, and why: `missing`, `altered` or `room`. */
class NotKept extends Error {
  constructor(path, why, cause) {
    super(`${path}: ${why}`, { cause });
    this.told = { path: path.replace(/(^|\/)$/, "$1index.html"), why };
  }
}

const digest = async (bytes) =>
  `sha256-${btoa(String.fromCharCode(...new Uint8Array(await crypto.subtle.digest("SHA-256", bytes))))}`;

/** The file as this version was made with it. Its bytes decide, not where they come from: what the browser has already
 *  will do, what it has of another version will not. */
async function fetchOne(path, integrity, signal) {
  let why = "missing";
  for (const cache of ["default", "reload"]) {
    let response, bytes;
    try {
      response = await fetch(address(path), { cache, signal, credentials: "same-origin" });
      bytes = await response.clone().arrayBuffer();
    } catch (error) {
      throw new NotKept(path, "missing", error);
    }
    if (await digest(bytes) === integrity) return plain(response);
    why = response.ok ? "altered" : "missing";
  }
  throw new NotKept(path, why);
}

/** The same as an answer of its own address: a browser shows no page from a redirected one. */
function plain(response) {
  if (!response.redirected && response.ok) return response;
  const headers = new Headers(response.headers);
  // What is kept is unpacked.
  for (const name of ["Content-Encoding", "Content-Length"]) headers.delete(name);
  return new Response(response.body, { headers });
}

// Only the bytes this version was made with: files of two versions are never mixed.
async function fetchAll(cache, files) {
  const stop = new AbortController();
  const keep = async ([path, integrity]) => {
    const response = await fetchOne(path, integrity, stop.signal);
    await cache.put(address(path), response).catch((error) => { throw new NotKept(path, "room", error); });
  };
  try {
    await Promise.all(files.map(keep));
  } catch (error) {
    // With one file not to be had, the rest is not fetched for nothing.
    stop.abort();
    throw error;
  }
}

self.addEventListener("install", (event) => event.waitUntil(install()));

async function install() {
  const mine = await caches.has(CACHE);
  try {
    const languages = await read();
    await fetchAll(await caches.open(CACHE), filesOf(languages));
  } catch (error) {
    if (!mine) await caches.delete(CACHE);
    for (const client of await pages()) client.postMessage({ notKept: told(error) });
    throw error;
  }
  // No skipWaiting: the page asks for it once its reader has agreed.
}

/** What a page says of a failure; a cache that can't be opened has no file's name. */
const told = (error) => error.told ?? { path: "sw.js", why: "room" };

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
    event.waitUntil(keeps(check).then(() => null, told).then((notKept) => event.ports[0]?.postMessage({ notKept })));
  }
});

/** Every file of this version in a language is in its cache after this, and in those that were read before: what was lost
 *  is fetched now. */
async function keeps(language) {
  const cache = await caches.open(CACHE);
  const files = filesOf([...await keptIn(cache), language]);
  const found = await Promise.all(files.map(([path]) => cache.match(address(path))));
  await fetchAll(cache, files.filter((_, at) => !found[at]));
}

self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method !== "GET" || !request.url.startsWith(BASE)) return;
  event.respondWith(serve(request));
});

async function serve(request) {
  const page = request.mode === "navigate";
  // A cache that can't be read leaves the net.
  const kept = await fromCache(request, page).catch(() => null);
  if (kept) return kept;
  try {
    return await fetch(request);
  } catch (error) {
    const other = page && await instead(request).catch(() => null);
    if (!other) throw error;
    return other;
  }
}

async function fromCache(request, page) {
  const url = new URL(request.url);
  let path = url.origin + url.pathname;
  if (path.endsWith("/index.html")) path = path.slice(0, -"index.html".length);
  const cache = await caches.open(CACHE);
  const kept = await cache.match(path);
  if (kept) return kept;
  if (page && !path.endsWith("/") && await cache.match(`${path}/`)) return Response.redirect(`${path}/${url.search}`, 302);
  return null;
}

/** With no signal a page in a language that is not kept is had in one that is, and one that is not there is said so. */
async function instead(request) {
  const cache = await caches.open(CACHE);
  const url = new URL(request.url);
  const asked = (url.origin + url.pathname).slice(BASE.length);
  const rest = asked.slice(homeOf(languageOf(asked)).length);
  for (const language of await keptIn(cache)) {
    const other = address(homeOf(language) + rest);
    if (await cache.match(other)) return Response.redirect(other, 302);
  }
  const none = await cache.match(address("404.html"));
  return none && new Response(none.body, { status: 404, headers: none.headers });
}
