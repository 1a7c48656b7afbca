// Keeps the app and the last answers of the service, so that a reload without a connection still
// shows the screen and what waits on this device. Nothing is ever answered from here while the
// service answers. Signing out empties what was kept.
const APP = 'ballotin-app-1';
const ANSWERS = 'ballotin-answers-1';

self.addEventListener('install', () => self.skipWaiting());
self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()));

// Requests under way by their Work-Id: not every browser tells a worker that the page hung up.
const underWay = new Map();

const fetchWatched = async (request) => {
  const id = request.headers.get('work-id');
  const hangUp = new AbortController();
  if (id !== null) underWay.set(id, hangUp);
  try {
    return await fetch(request, { signal: hangUp.signal });
  } finally {
    if (underWay.get(id) === hangUp) underWay.delete(id);
  }
};

const fromNetwork = async (request, cacheName, key) => {
  try {
    const response = await fetchWatched(request);
    if (response.ok) await (await caches.open(cacheName)).put(key, response.clone());
    if (response.status === 401) await caches.delete(ANSWERS);
    return response;
  } catch (error) {
    // Nobody waits for it any more; what was kept is for those whom the service didn't reach.
    if (error.name === 'AbortError') throw error;
    const kept = await (await caches.open(cacheName)).match(key);
    if (kept !== undefined) return kept;
    throw error;
  }
};

const fromCache = async (request) => {
  const cache = await caches.open(APP);
  const kept = await cache.match(request);
  if (kept !== undefined) return kept;
  const response = await fetch(request);
  if (response.ok) await cache.put(request, response.clone());
  return response;
};

// Papers are made when they are asked for; what goes on at this moment is never old news.
const isKept = (path) => /^\/api\/(?!work\/|changes$)/.test(path) && !/\.(pdf|csv)$/.test(path);

self.addEventListener('fetch', (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== 'GET' || url.origin !== self.location.origin) return;
  if (request.mode === 'navigate' && !url.pathname.startsWith('/api/')) {
    event.respondWith(fromNetwork(request, APP, '/'));
  } else if (url.pathname.startsWith('/assets/')) {
    event.respondWith(fromCache(request));
  } else if (isKept(url.pathname)) {
    if ((request.headers.get('accept') ?? '').includes('text/event-stream')) return;
    event.respondWith(fromNetwork(request, ANSWERS, request.url));
  }
});

// Parts of the app that the browser fetched before this worker stood behind the page.
const keep = async (paths) => {
  const cache = await caches.open(APP);
  for (const path of paths) {
    if ((await cache.match(path)) !== undefined) continue;
    const response = await fetch(path);
    if (response.ok) await cache.put(path, response);
  }
};

self.addEventListener('message', (event) => {
  if (Array.isArray(event.data?.keep)) event.waitUntil(keep(event.data.keep));
  if (event.data?.hangUp !== undefined) underWay.get(event.data.hangUp)?.abort();
  if (event.data === 'forget') event.waitUntil(caches.delete(ANSWERS));
});
