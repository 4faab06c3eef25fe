// Keeps one whole version of the site on the device. A version is all of its
// files, checked by digest, in a cache named after the digest of them all; of
// pages and words, those in the languages that are read. Pages that are many of a kind are kept once they were read, or
// all of a language where its reader asked for that.
const VERSION = "@@version@@";
// A path, its digest, and its language where it is of use in one alone.
const FILES = ["@@files@@"];
// One of these lists the pages that are kept once they were read: path, digest, bytes, title.
const ONCE = "@@once@@";
// What was fetched with all pages of a language, and not read yet, carries this; it is given up where all are no longer wanted.
const UNREAD = "Kept-Unread";
// So many pages are fetched at a time before it is told how many are there.
const AT_A_TIME = 8;

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
    if (await digest(bytes) === integrity) return response;
    why = response.ok ? "altered" : "missing";
  }
  throw new NotKept(path, why);
}

/** The same as an answer of its own address, a browser shows no page from a redirected one and keeps none that says
 *  `Vary: *`; and whether it was read. */
function plain(response, unread = false) {
  const varies = response.headers.get("Vary")?.includes("*");
  if (!response.redirected && response.ok && !varies && response.headers.has(UNREAD) === unread) return response;
  const headers = new Headers(response.headers);
  // What is kept is unpacked, and found by its address alone.
  for (const name of ["Content-Encoding", "Content-Length", "Vary", UNREAD]) headers.delete(name);
  if (unread) headers.set(UNREAD, "yes");
  return new Response(response.body, { headers });
}

// Only the bytes this version was made with: files of two versions are never mixed.
async function fetchAll(cache, files, unread = false) {
  const stop = new AbortController();
  let failure;
  const keep = async ([path, integrity]) => {
    const response = await fetchOne(path, integrity, stop.signal);
    await cache.put(address(path), plain(response, unread)).catch((error) => { throw new NotKept(path, "room", error); });
  };
  // With one file not to be had, the rest is not fetched for nothing; when this is over, none is on its way.
  await Promise.all(files.map((file) => keep(file).catch((error) => { failure ??= error; stop.abort(); })));
  if (failure) throw failure;
}

// ---- pages that are kept once they were read

let listed;
/** The pages that are kept once they were read, as listed, by path. */
function oncePages() {
  const load = async () => {
    const cache = await caches.open(CACHE);
    const [, integrity] = FILES.find(([path]) => path === ONCE);
    const list = await cache.match(address(ONCE)) ?? await fetchOne(ONCE, integrity);
    return new Map((await list.json()).map((page) => [page[0], page]));
  };
  listed ??= load().catch((error) => { listed = undefined; throw error; });
  return listed;
}

/** The listed page at an address, if it is one. */
async function oncePage(url) {
  const { origin, pathname } = new URL(url);
  const path = (origin + pathname).slice(BASE.length).replace(/(^|\/)index\.html$/, "$1");
  const pages = await oncePages();
  return pages.get(path) ?? pages.get(`${path}/`);
}

/** Keeps what the reader is being shown: it is listed, and its bytes are those of this version. */
async function keepShown(url, response) {
  const page = await oncePage(url);
  if (!page) return;
  const [path, integrity] = page;
  if (await digest(await response.clone().arrayBuffer()) !== integrity) return;
  const cache = await caches.open(CACHE);
  await cache.put(address(path), plain(response));
}

/** Where it stands that all pages of a language are wanted: `all`, or `room` where they found none. */
const wishOf = (language) => address(`${homeOf(language)}offline/?all`);

/** What is kept of the pages of a language. */
async function keptOf(language) {
  const cache = await caches.open(CACHE);
  const wish = await (await cache.match(wishOf(language)))?.text();
  const told = { wish, pages: 0, kept: 0, bytes: 0, missing: 0, read: [] };
  for (const [path, , bytes, title] of (await oncePages()).values()) {
    if (languageOf(path) !== language) continue;
    const kept = await cache.match(address(path));
    told.pages += 1;
    told.kept += kept ? 1 : 0;
    told[kept ? "bytes" : "missing"] += bytes;
    if (kept && !kept.headers.has(UNREAD)) told.read.push([address(path), title]);
  }
  return told;
}

/** Fetches some more pages of a language, all of which are wanted. Without room for all, what was read stays. */
async function keepMore(cache, language, most = Infinity) {
  try {
    await cache.put(wishOf(language), new Response("all")).catch((error) => { throw new NotKept("", "room", error); });
    const missing = [];
    for (const page of (await oncePages()).values()) {
      if (languageOf(page[0]) === language && !await cache.match(address(page[0]))) missing.push(page);
    }
    await fetchAll(cache, missing.slice(0, most), true);
  } catch (error) {
    if (told(error).why === "room") await keepOnlyRead(cache, language);
    throw error;
  }
}

/** Gives up the pages of a language that nobody read. */
async function keepOnlyRead(cache, language) {
  await cache.delete(wishOf(language));
  for (const [path] of (await oncePages()).values()) {
    if (languageOf(path) !== language) continue;
    if ((await cache.match(address(path)))?.headers.has(UNREAD)) await cache.delete(address(path));
  }
}

/** A new version has the pages that an older one had: those that were read, and all of a language where they are wanted. */
async function keepAsBefore(cache) {
  const pages = await oncePages();
  const read = new Set();
  const all = new Set();
  for (const name of await caches.keys()) {
    if (!name.startsWith(PREFIX) || name === CACHE) continue;
    const old = await caches.open(name);
    for (const request of await old.keys()) {
      const path = request.url.slice(BASE.length);
      if (pages.has(path) && !(await old.match(request))?.headers.has(UNREAD)) read.add(path);
    }
    for (const language of LANGUAGES) {
      if (await (await old.match(wishOf(language)))?.text() === "all") all.add(language);
    }
  }
  await fetchAll(cache, [...read].map((path) => pages.get(path)));
  for (const language of all) {
    // For pages that were never read no version is held up: the page that tells what is kept says so.
    await keepMore(cache, language).catch((error) => {
      if (told(error).why !== "room") throw error;
      return cache.put(wishOf(language), new Response("room")).catch(() => {});
    });
  }
}

// ---- versions

self.addEventListener("install", (event) => event.waitUntil(install()));

async function install() {
  const mine = await caches.has(CACHE);
  try {
    const languages = await read();
    const cache = await caches.open(CACHE);
    await fetchAll(cache, filesOf(languages));
    await keepAsBefore(cache);
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
  const { data } = event;
  if (data === "take over") self.skipWaiting();
  else if (data?.check) {
    const answer = keeps(data.check, data.page).then(() => null, told);
    event.waitUntil(answer.then((notKept) => event.ports[0]?.postMessage({ notKept })));
  } else if (data?.pagesOf) {
    const answer = pagesOf(data.pagesOf, data.wish).catch((error) => ({ notKept: told(error) }));
    event.waitUntil(answer.then((all) => event.ports[0]?.postMessage(all)));
  }
});

/** Every file of this version in a language is in its cache after this, and in those that were read before: what was lost
 *  is fetched now. So is the page that asks. */
async function keeps(language, shown) {
  const cache = await caches.open(CACHE);
  const files = filesOf([...await keptIn(cache), language]);
  const found = await Promise.all(files.map(([path]) => cache.match(address(path))));
  await fetchAll(cache, files.filter((_, at) => !found[at]));
  const page = await oncePage(shown);
  if (!page || await cache.match(address(page[0]))) return;
  await fetchAll(cache, [page]).catch((error) => { throw new NotKept(page[0], "page", error); });
}

/** Goes a step towards what is wanted of the pages of a language, `all` or `read`, and tells what is kept of them. */
async function pagesOf(language, wish) {
  const cache = await caches.open(CACHE);
  let notKept;
  if (wish === "all") await keepMore(cache, language, AT_A_TIME).catch((error) => { notKept = told(error); });
  if (wish === "read") await keepOnlyRead(cache, language);
  return { ...await keptOf(language), notKept };
}

self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method !== "GET" || !request.url.startsWith(BASE)) return;
  event.respondWith(serve(event));
});

async function serve(event) {
  const { request } = event;
  const page = request.mode === "navigate";
  const shown = (response) => event.waitUntil(keepShown(request.url, response).catch(() => {}));
  // A cache that can't be read leaves the net.
  const kept = await fromCache(request, page).catch(() => null);
  if (kept) {
    if (page && kept.headers.has(UNREAD)) shown(kept.clone());
    return kept;
  }
  try {
    const response = await fetch(request);
    if (page && response.ok && response.headers.get("Content-Type")?.startsWith("text/html")) shown(response.clone());
    return response;
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

/** With no signal a page in a language that is not kept is had in one that is, one that was not read is said not to be kept,
 *  and one that is not there so. */
async function instead(request) {
  const cache = await caches.open(CACHE);
  const url = new URL(request.url);
  const asked = (url.origin + url.pathname).slice(BASE.length);
  const rest = asked.slice(homeOf(languageOf(asked)).length);
  for (const language of await keptIn(cache)) {
    const other = address(homeOf(language) + rest);
    if (await cache.match(other)) return Response.redirect(other, 302);
  }
  const page = await oncePage(request.url).catch(() => null);
  for (const language of page ? [languageOf(page[0]), ...await keptIn(cache)] : []) {
    const tells = address(`${homeOf(language)}offline/`);
    if (await cache.match(tells)) return Response.redirect(`${tells}?not-kept=${encodeURIComponent(page[0])}`, 302);
  }
  const none = await cache.match(address("404.html"));
  return none && new Response(none.body, { status: 404, headers: none.headers });
}
