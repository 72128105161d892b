// The worker that lets the page start without signal. It keeps one whole version of the site and
// answers from that; a new version is fetched beside it, whole or not at all, and waits until a
// person takes it. Nothing else is ever kept, and nothing is fetched from elsewhere.
//
// A template: the build writes in the version and, for each file, its address and its hash.
'use strict';

const VERSION = '{{version}}';
const FILES = {{files}};

// Two copies of the site under two paths of one host share one store of caches, so the name holds
// the scope. The version hashes this worker too: no two workers ever share a cache's name.
const OURS = `ledgerboard ${self.registration.scope} `;
const CACHE = OURS + VERSION;
const PAGE = './';
const address = (name) => new URL(name, self.registration.scope).href;
const KEPT = new Map(FILES.map(([name]) => [new URL(address(name)).pathname, address(name)]));
KEPT.set(new URL(address('index.html')).pathname, address(PAGE));

self.addEventListener('install', (event) => event.waitUntil(install()));

async function install() {
  // A cache of this very version may be in use: the host went back to it while another waits.
  const ours = !(await caches.has(CACHE));
  try {
    const cache = await caches.open(CACHE);
    // One after another: a phone with one bar of signal loses less when it breaks off.
    for (const [name, integrity] of FILES) {
      const hashed = /-[0-9a-f]{16}\./.test(name);
      let response;
      try {
        // A hashed file that the page has just loaded is not loaded twice.
        response = await load(name, integrity, hashed ? 'default' : 'no-cache');
      } catch (error) {
        if (!hashed) throw error;
        // Wrong bytes that were once sent under this name would else be had from the browser's
        // own cache again and again, for as long as such a name is kept.
        response = await load(name, integrity, 'reload');
      }
      await cache.put(address(name), response);
    }
  } catch (error) {
    if (ours) await caches.delete(CACHE);
    throw error;
  }
}

async function load(name, integrity, cache) {
  const how = { integrity, cache, redirect: 'error', credentials: 'same-origin' };
  const response = await fetch(address(name), how);
  if (!response.ok || response.type !== 'basic') {
    throw new Error(`${name} was answered with ${response.status}`);
  }
  return response;
}

self.addEventListener('activate', (event) => event.waitUntil(activate()));

async function activate() {
  const names = await caches.keys();
  const old = names.filter((name) => name.startsWith(OURS) && name !== CACHE);
  await Promise.all(old.map((name) => caches.delete(name)));
  await self.clients.claim();
}

self.addEventListener('fetch', (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== 'GET' || url.origin !== self.location.origin) return;
  const kept = KEPT.get(url.pathname);
  if (kept) {
    event.respondWith(fromCache(kept, request));
  } else if (request.mode === 'navigate') {
    // No such page. Without signal, go to the one there is; the fragment goes along.
    event.respondWith(fetch(request).catch(() => Response.redirect(self.registration.scope)));
  }
});

async function fromCache(kept, request) {
  const cache = await caches.open(CACHE);
  // The network only if the browser has thrown a single file away.
  return (await cache.match(kept)) ?? fetch(request);
}

// Only a person takes a new version; the page passes it on.
self.addEventListener('message', (event) => {
  if (event.data === 'activate') self.skipWaiting();
});
