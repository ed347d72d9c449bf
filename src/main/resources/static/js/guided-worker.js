/*
 * Lets guided pages open without a signal. VERSION and FILES stand above, put there by the server. Keeps nothing but the
 * files of this version, the list of guided tests and the pages of machines that were opened; the network comes first.
 */
"use strict";

const KEPT_FILES = "guided-files-" + VERSION;
const KEPT_PAGES = "guided-pages";
const PATIENCE_MS = 6000;
const PAGE = /^\/guided(\/\d+)?$/;

self.addEventListener("install", (event) => {
  event.waitUntil(caches.open(KEPT_FILES)
    .then((kept) => kept.addAll(FILES.map((file) => new Request(file, {cache: "reload"}))))
    .then(() => self.skipWaiting()));
});

self.addEventListener("activate", (event) => {
  event.waitUntil(caches.keys()
    .then((names) => Promise.all(names
      .filter((name) => name.startsWith("guided-files-") && name !== KEPT_FILES)
      .map((name) => caches.delete(name))))
    .then(() => self.clients.claim()));
});

async function file(request) {
  const kept = await (await caches.open(KEPT_FILES)).match(new URL(request.url).pathname);
  return kept || fetch(request);
}

/* A page made from a form on the server, or one that answers a form, is nobody else's and is not kept. */
async function page(request) {
  const url = new URL(request.url);
  const pages = await caches.open(KEPT_PAGES);
  const give = new AbortController();
  const timer = setTimeout(() => give.abort(), PATIENCE_MS);
  try {
    const answer = await fetch(request, {signal: give.signal});
    clearTimeout(timer);
    if (answer.ok && !answer.redirected && url.search === "") {
      await pages.put(url.pathname, answer.clone());
    }
    return answer;
  } catch (noSignal) {
    clearTimeout(timer);
    const kept = await pages.match(url.pathname) || await pages.match("/guided");
    if (kept) {
      return kept;
    }
    throw noSignal;
  }
}

self.addEventListener("fetch", (event) => {
  const url = new URL(event.request.url);
  if (event.request.method !== "GET" || url.origin !== self.location.origin) {
    return;
  }
  if (event.request.mode === "navigate" && PAGE.test(url.pathname)) {
    event.respondWith(page(event.request));
  } else if (FILES.includes(url.pathname)) {
    event.respondWith(file(event.request));
  }
});
