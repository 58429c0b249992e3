
// The worker of the patient's pages: keeps the newest copy of each for times without network, and sends what waits.
(() => {
  'use strict';
  const CACHE = 'slipway-home:' + ASSETS[0];
  const PAGES = ['/home', '/home/guide', '/home/guide.html'];
  const GUIDE = ['/home/guide', '/home/guide.html'];
  const PATIENCE_MS = 5000;
  const OLDEST_DAYS = 14;

  addEventListener('install', (event) => {
    skipWaiting();
    event.waitUntil(caches.open(CACHE).then((cache) => cache.addAll(ASSETS)).then(refresh));
  });

  addEventListener('activate', (event) => event.waitUntil((async () => {
    for (const name of await caches.keys()) {
      if (name.startsWith('slipway-home:') && name !== CACHE) await caches.delete(name);
    }
    await clients.claim();
  })()));

  /** Fetches the pages anew; whichever does not come keeps its copy. */
  const refresh = () => Promise.allSettled(PAGES.map((path) => fresh(path, new Request(path))));

  addEventListener('message', (event) => {
    if (event.data === 'refresh') event.waitUntil(refresh());
    if (event.data === 'forget') event.waitUntil(forget(PAGES));
  });

  addEventListener('sync', (event) => {
    if (event.tag === 'reports') {
      // Failing asks the browser to try again.
      event.waitUntil(outbox.flush().then(({ state }) => {
        if (state.offline) throw new Error('no network');
      }));
    }
  });

  async function forget(paths) {
    const cache = await caches.open(CACHE);
    await Promise.all(paths.map((path) => cache.delete(path)));
  }

  /** From the clinic; a copy is kept. Sent elsewhere means locked or over: then no copy may stay. */
  async function fresh(path, request) {
    const answer = await fetch(request, { cache: 'no-store' });
    if (answer.status === 200 && !answer.redirected) {
      await (await caches.open(CACHE)).put(path, answer.clone());
    } else if (answer.redirected || answer.type === 'opaqueredirect' || answer.status === 401 || answer.status === 403) {
      await forget(path === '/home' ? PAGES : GUIDE);
    }
    return answer;
  }

  /** Whether the guide may be shown from the copy on this phone. */
  async function mayShow() {
    const state = await outbox.known();
    const now = Date.now();
    return !state.locked && !state.over && now < (state.until ?? 0) && now - (state.seen ?? 0) < OLDEST_DAYS * 86400000;
  }

  async function page(path, request) {
    const late = new Promise((_, failed) => setTimeout(() => failed(new Error('late')), PATIENCE_MS));
    const coming = fresh(path, request);
    try {
      return await Promise.race([coming, late]);
    } catch (none) {
      coming.catch(() => {});
      if (path === '/home/guide.html' && !(await mayShow())) return Response.redirect('/home', 303);
      const kept = await (await caches.open(CACHE)).match(path);
      return kept ?? coming;
    }
  }

  addEventListener('fetch', (event) => {
    const { request } = event;
    const url = new URL(request.url);
    if (request.method !== 'GET' || url.origin !== location.origin) return;
    if (ASSETS.includes(url.pathname)) {
      event.respondWith(caches.match(url.pathname).then((kept) => kept ?? fetch(request)));
    } else if (PAGES.includes(url.pathname) && request.mode === 'navigate') {
      event.respondWith(page(url.pathname, request));
    }
  });
})();
