// Starts the page: loads the program, keeps the worker up to date, and says so in plain words when
// the program can't run. It knows nothing of what the program does; they talk by events on window:
//
//   from here   ledgerboard:offline-ready      everything is kept; the page starts without signal
//               ledgerboard:update-waiting     a new version is kept, and waits to be taken
//               ledgerboard:update-failed      a version could not be fetched whole; detail.first
//                                              tells that it was the first one
//               ledgerboard:updated-elsewhere  another tab has taken a new version; this one runs
//                                              on as it is, and is never reloaded unasked
//               ledgerboard:stopped            the program has stopped, by itself or by a trap
//               ledgerboard:looked             what came of a look that was asked for; detail.found
//                                              is newest, fetching, waiting, no-answer or no-worker
//   to here     ledgerboard:take-update        the person takes the new version: this tab reloads,
//                                              as it does where none waits
//               ledgerboard:look               the person asks for a look for a new version
//               ledgerboard:panic              the program has stopped for good
//
// A template: the build writes in the names of the glue script and the program, and that of the
// worker: none in a site whose worker switches itself off.

const HOUR = 60 * 60 * 1000;
const WORKER = '{{worker}}';

const tell = (name, detail) =>
  window.dispatchEvent(new CustomEvent(`ledgerboard:${name}`, { detail }));

let registration = null;
let followed = null;
let taking = false;

// --- The program ---

const stopped = () => {
  // What it has begun may still answer; it must not write any more.
  tell('stopped');
  const fault = document.getElementById('fault');
  // Where the program never came, this is the whole page. Else it stands before what the program
  // last showed, which can still be read, and no longer touched.
  const main = document.getElementById('shell') ?? document.createElement('main');
  main.id = 'shell';
  main.replaceChildren(fault);
  document.body.prepend(main);
  const app = document.getElementById('app');
  app.inert = true;
  document.getElementById('fault-below').hidden = !app.firstChild;
  fault.hidden = false;
  window.scrollTo(0, 0);
};

// A trap inside WebAssembly leaves its memory half-changed: nothing may run on after it.
const trapped = (reason) => {
  if (reason instanceof WebAssembly.RuntimeError) stopped();
};

async function start() {
  document.getElementById('fault-reload').addEventListener('click', takeUpdate);
  window.addEventListener('ledgerboard:panic', stopped);
  try {
    // Not a static import: if this fails, there has to be somebody left to say so.
    const program = await import('./{{glue}}');
    window.addEventListener('error', (event) => trapped(event.error));
    window.addEventListener('unhandledrejection', (event) => trapped(event.reason));
    await program.default({ module_or_path: new URL('./{{wasm}}', import.meta.url) });
  } catch (error) {
    console.error(error);
    stopped();
  }
}

// --- The worker ---

// What the page writes at the next pause in typing, it writes now, and its address too: a reload
// takes that as it finds it, and what is written while the page goes comes too late for it.
function reload() {
  window.dispatchEvent(new Event('pagehide'));
  location.reload();
}

function takeUpdate() {
  // Nothing waits if another tab has taken it already: then a reload is all that is left to do.
  if (!registration?.waiting) return reload();
  taking = true;
  registration.waiting.postMessage('activate');
}

// Follows one new worker from its first moment. A failed one is never seen otherwise.
function follow(worker) {
  // The first one is met twice: when the registration is there, and when it is announced.
  if (!worker || worker === followed) return;
  followed = worker;
  const first = !registration.active;
  worker.addEventListener('statechange', function changed() {
    if (worker.state === 'installing') return;
    worker.removeEventListener('statechange', changed);
    if (worker.state === 'redundant') tell('update-failed', { first });
    else if (!first) tell('update-waiting');
  });
}

// Phones seldom close an installed page, and don't look for a new version of an open one.
function look() {
  if (document.visibilityState === 'visible') registration.update().catch(() => {});
}

// The same, asked for by a person, who is told what came of it.
async function lookAndTell() {
  if (!registration) return tell('looked', { found: 'no-worker' });
  try {
    await registration.update();
  } catch (error) {
    console.warn(error);
    return tell('looked', { found: 'no-answer' });
  }
  // Said again: it may have been closed since.
  if (registration.waiting) tell('update-waiting');
  const { installing, waiting } = registration;
  tell('looked', { found: installing ? 'fetching' : waiting ? 'waiting' : 'newest' });
}

async function keep() {
  const workers = navigator.serviceWorker;
  let controlled = Boolean(workers.controller);
  workers.addEventListener('controllerchange', () => {
    if (taking) reload();
    else if (controlled) tell('updated-elsewhere');
    controlled = true;
  });
  try {
    registration = await workers.register(WORKER, { updateViaCache: 'none' });
  } catch (error) {
    console.warn(error);
    tell('update-failed', { first: true });
    return;
  }
  // A forced reload leaves the page without its worker, though there is one.
  controlled ||= Boolean(registration.active);
  registration.addEventListener('updatefound', () => follow(registration.installing));
  follow(registration.installing);
  if (registration.waiting && registration.active) tell('update-waiting');
  workers.ready.then(() => tell('offline-ready'));

  if (registration.active) look();
  document.addEventListener('visibilitychange', look);
  window.addEventListener('pageshow', look);
  setInterval(look, HOUR);
}

window.addEventListener('ledgerboard:take-update', takeUpdate);
window.addEventListener('ledgerboard:look', lookAndTell);
const loaded = new Promise((done) => {
  if (document.readyState === 'complete') done();
  else window.addEventListener('load', done, { once: true });
});
// The worker after the program, whether that runs or not: a version that can't start must still
// be able to fetch the one that can.
await start();
await loaded;
if (WORKER && navigator.serviceWorker) await keep();
