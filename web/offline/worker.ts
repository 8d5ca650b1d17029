/// <reference lib="webworker" />
/**
 * Keeps the page's own files, so that it opens without a network. The build puts FILES and VERSION before this text:
 * the emitted files and a hash over them. What the server answers (/api, /report) is never kept here.
 */
declare const FILES: string[];
declare const VERSION: string;
const worker = self as unknown as ServiceWorkerGlobalScope;
const PREFIX = "handsfull-";
const STORE = PREFIX + VERSION;

worker.addEventListener("install", (event) => {
  event.waitUntil(fill());
});

/** A store holds one build, whole: all of it or the install fails and the older page stays. */
async function fill(): Promise<void> {
  const store = await caches.open(STORE);
  const wanted: Request[] = [];
  for (const file of FILES) {
    // a file named by its content is the same in every build: what an older store has is not fetched again
    const had = /^\/assets\/.+-[\w-]{8,}\.\w+$/.test(file) ? await caches.match(file) : undefined;
    if (had) await store.put(file, had);
    // past the browser's own cache, which may hold an older page under the same name
    else wanted.push(new Request(file, { cache: "reload" }));
  }
  await store.addAll(wanted);
}

worker.addEventListener("activate", (event) => {
  const clear = caches.keys().then((names) => {
    const old = names.filter((name) => name.startsWith(PREFIX) && name !== STORE);
    return Promise.all(old.map((name) => caches.delete(name)));
  });
  event.waitUntil(clear.then(() => worker.clients.claim()));
});

worker.addEventListener("message", (event) => {
  if (event.data === "take over") void worker.skipWaiting();
});

worker.addEventListener("fetch", (event) => {
  const { method, url } = event.request;
  const { origin, pathname } = new URL(url);
  if (method !== "GET" || origin !== location.origin || !FILES.includes(pathname)) return;
  const kept = caches.open(STORE).then((store) => store.match(pathname));
  event.respondWith(kept.then((reply) => reply ?? fetch(event.request)));
});
