// Keeps a copy of the page's files, so that an installed page opens where its server is out of
// reach and can still talk to a broker. The server is always asked first: a mended page must not
// wait for a cache. Values of the coach never come this way, so none can grow old in here.

const SHELF = "pitchwatch-page";

self.addEventListener("install", () => self.skipWaiting());
self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));

self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method === "GET" && new URL(request.url).origin === self.location.origin) {
    event.respondWith(fromServerOrShelf(request));
  }
});

async function fromServerOrShelf(request) {
  const shelf = await caches.open(SHELF);
  try {
    const answer = await fetch(request);
    if (answer.ok) {
      await shelf.put(request, answer.clone());
    }
    return answer;
  } catch (unreachable) {
    const kept = await shelf.match(request, { ignoreSearch: true });
    if (kept) {
      return kept;
    }
    throw unreachable;
  }
}
