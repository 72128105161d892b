// The worker that switches itself off, for the day on which the one in use does harm. A site that
// is built to retire has it under the worker's name, so that every phone that looks for a new
// version gets it. It waits for nobody, since the page that would ask may be what is broken: it
// takes over, drops what the worker had kept of this site, and signs itself off. Open pages go on
// as they are and are not reloaded; from the next load on the browser asks the host for each file.
// It leaves alone what people typed and saved, and the caches of anybody else on this host.
'use strict';

const OURS = `ledgerboard ${self.registration.scope} `;

self.addEventListener('install', () => self.skipWaiting());

self.addEventListener('activate', (event) => event.waitUntil(retire()));

async function retire() {
  const names = await caches.keys();
  const ours = names.filter((name) => name.startsWith(OURS));
  await Promise.all(ours.map((name) => caches.delete(name)));
  await self.registration.unregister();
}
