// The rescue page: lists every record of ours in this browser's stores and hands it out as a file
// or as text. It needs no WebAssembly and nothing of the program: it is for the day on which that
// doesn't start. It reads; it never writes, renames or deletes, and asks nothing of the network.
//
// In the script of some years ago, on purpose, and no module: a browser that is too old for the
// program must still run it. What is in the stores is shown as text only, never as markup.
'use strict';

const PREFIX = 'ledgerboard.';
// Databases whose name starts so, each with all its stores, whatever they are called.
const DATABASE = 'ledgerboard';
// A database that has not answered by then never does.
const PATIENCE = 5000;
const FIRST_LINE = 160;

const at = (id) => document.getElementById(id);
let records = [];

// --- Reading ---

function local() {
  const found = [];
  for (let index = 0; index < localStorage.length; index += 1) {
    const key = localStorage.key(index);
    if (key.startsWith(PREFIX)) found.push({ key, text: localStorage.getItem(key) });
  }
  return found.sort((one, other) => (one.key < other.key ? -1 : 1));
}

function open(name) {
  return new Promise((done, fail) => {
    const request = indexedDB.open(name);
    // It isn't there. Left alone it would be made, empty.
    request.onupgradeneeded = () => request.transaction.abort();
    request.onsuccess = () => done(request.result);
    request.onerror = (event) => {
      event.preventDefault();
      if (request.error.name === 'AbortError') done(null);
      else fail(request.error);
    };
    setTimeout(() => fail(new Error('it does not answer')), PATIENCE);
  });
}

function base64(bytes) {
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text);
}

// Ours are texts. Anything else that may stand there is written out as well as it can be.
async function written(value) {
  if (typeof value === 'string') return { text: value };
  if (value instanceof Blob) return written(await new Response(value).arrayBuffer());
  if (value instanceof ArrayBuffer) return { text: base64(new Uint8Array(value)), as: 'base64' };
  if (ArrayBuffer.isView(value)) {
    const bytes = new Uint8Array(value.buffer, value.byteOffset, value.byteLength);
    return { text: base64(bytes), as: 'base64' };
  }
  try {
    return { text: String(JSON.stringify(value)), as: 'JSON' };
  } catch (error) {
    return { text: String(value), as: 'a description' };
  }
}

// One by one and not all at once: one value that can't be read must not take the others along.
function stored(database, store) {
  return new Promise((done, fail) => {
    const found = [];
    const transaction = database.transaction(store);
    const from = transaction.objectStore(store);
    transaction.oncomplete = () => done(found);
    transaction.onabort = () => fail(transaction.error);
    from.getAllKeys().onsuccess = (event) => {
      for (const key of event.target.result) {
        const request = from.get(key);
        request.onsuccess = () => found.push({ key: String(key), value: request.result });
        request.onerror = (failed) => {
          failed.preventDefault();
          failed.stopPropagation();
          found.push({ key: String(key), value: '', fault: String(request.error) });
        };
      }
    };
  });
}

async function databases() {
  if (!indexedDB.databases) return [DATABASE];
  const all = await indexedDB.databases();
  return all.map(({ name }) => name).filter((name) => name.startsWith(DATABASE)).sort();
}

async function inDatabase(name) {
  const database = await open(name);
  const stores = [];
  if (!database) return stores;
  try {
    for (const store of Array.from(database.objectStoreNames)) {
      const found = await stored(database, store);
      for (const record of found) Object.assign(record, await written(record.value));
      stores.push({ place: `database ${name}, ${store}`, found });
    }
  } finally {
    database.close();
  }
  return stores;
}

// Every place with what is in it, or with why it can't be read.
async function places() {
  const all = [];
  const attempt = async (place, read) => {
    try {
      all.push(...(await read()));
    } catch (error) {
      all.push({ place, found: [], fault: error.message || String(error) });
    }
  };
  await attempt('local storage', () => [{ place: 'local storage', found: local() }]);
  let names = [];
  await attempt('databases', async () => {
    names = await databases();
    return [];
  });
  for (const name of names) await attempt(`database ${name}`, () => inDatabase(name));
  return all;
}

// --- What a record is ---

const KINDS = [
  ['job.', 'Job'],
  ['draft.', 'What was typed'],
  ['waiting.', 'Edits that were not saved'],
  ['settings', 'Settings'],
  ['aside.', 'Set aside, because it could not be read'],
  ['gone.', 'Note that a job was removed'],
];

function kind(key) {
  const rest = key.slice(PREFIX.length);
  const known = KINDS.find(([start]) => rest.startsWith(start));
  const slot = /\.([ab])$/.exec(key);
  return (known ? known[1] : 'Record') + (slot ? `, copy ${slot[1]}` : '');
}

// A job's name, where it can still be made out; else what it is.
function name(record) {
  const found = /"name":("(?:[^"\\]|\\.)*")/.exec(record.text);
  try {
    return (found && JSON.parse(found[1])) || kind(record.key);
  } catch (error) {
    return kind(record.key);
  }
}

// Seconds since 1970: from the record's first line, else from the name of what was set aside.
function time(record) {
  const line = /^ledgerboard \d+ \d+ \S+ (\d+) \d+ [0-9a-f]+\n/.exec(record.text);
  const aside = /^ledgerboard\.aside\.(\d+)\./.exec(record.key);
  const found = line || aside;
  if (!found) return 'no time noted';
  const moment = new Date(Number(found[1]) * 1000);
  return Number.isNaN(moment.getTime()) ? 'no time noted' : clock(moment);
}

// `2026-11-26 19:16`, as the rest of the program writes it, in the phone's own zone.
function clock(moment) {
  const two = (number) => String(number).padStart(2, '0');
  const day = [moment.getFullYear(), two(moment.getMonth() + 1), two(moment.getDate())].join('-');
  return `${day} ${two(moment.getHours())}:${two(moment.getMinutes())}`;
}

function size(text) {
  const bytes = new Blob([text]).size;
  return bytes < 1000 ? `${bytes} bytes` : `${(bytes / 1000).toFixed(1)} KB`;
}

// --- Handing out ---

function save(file, text, type) {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = file;
  link.click();
  // Not at once: some browsers fetch it only after the tap is over.
  setTimeout(() => URL.revokeObjectURL(address), 60000);
}

// One JSON file: each record with its place, its name and its bytes as they are.
function everything() {
  const all = {
    what: 'All that Ledgerboard kept in one browser. Each text is as it was stored.',
    read: new Date().toISOString(),
    from: location.href,
    records: records.map(({ place, key, text, as, fault }) => ({ place, key, as, fault, text })),
  };
  return JSON.stringify(all, null, 1);
}

// The sum that a record's first line ends in: CRC-32 as in ISO-HDLC, eight small digits.
function sum(text) {
  let crc = -1;
  for (const byte of new TextEncoder().encode(text)) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit += 1) crc = (crc >>> 1) ^ (crc & 1 ? 0xedb88320 : 0);
  }
  return (~crc >>> 0).toString(16).padStart(8, '0');
}

// A job's record, if it is whole: its two parts, and which writing of the job it is.
function whole(record) {
  const own = /^ledgerboard\.job\.([^.]+)(\.[ab])?$/.exec(record.key);
  const line = /^(ledgerboard \d+ (\d+) \S+ \d+ \d+) ([0-9a-f]{8})\n/.exec(record.text);
  if (!own || !line) return null;
  const job = record.text.slice(line[0].length);
  try {
    if (JSON.parse(job).invented === true || sum(`${line[1]}\n${job}`) !== line[3]) return null;
  } catch (error) {
    return null;
  }
  return { id: own[1], revision: Number(line[2]), line: line[0].trim(), job, record };
}

// The last whole copy of each job.
function jobs() {
  const best = new Map();
  for (const found of records.map(whole)) {
    if (!found) continue;
    const known = best.get(found.id);
    if (!known || found.revision > known.revision) best.set(found.id, found);
  }
  return Array.from(best.values());
}

// A backup as the program makes it, so that any phone with the program can restore it.
function backup(which) {
  const made = { at: Math.floor(Date.now() / 1000), zone: -new Date().getTimezoneOffset() };
  const head = {
    kind: 'ledgerboard-backup', schema: 1, by: 'Ledgerboard, its rescue page', made,
    device: 'rescue', about: 'Jobs of Ledgerboard: restore them under All jobs.',
  };
  const parts = Object.keys(head).map((key) => `"${key}":${JSON.stringify(head[key])},\n`);
  const lines = which.map(({ line, job }) => `{"record":"${line}","job":${job}}`);
  return `{\n${parts.join('')}"jobs":[\n${lines.join(',\n')}\n]\n}\n`;
}

let shownBy = null;

function show(heading, text, button) {
  shownBy = button;
  at('shown-name').textContent = heading;
  at('shown-text').value = text;
  at('copied').textContent = '';
  at('shown').hidden = false;
  at('shown-name').focus();
  at('shown').scrollIntoView();
}

async function copy() {
  const text = at('shown-text');
  text.select();
  let done = false;
  try {
    await navigator.clipboard.writeText(text.value);
    done = true;
  } catch (error) {
    // The older way, where the newer one is missing or refused.
    done = document.execCommand('copy');
  }
  at('copied').textContent = done
    ? 'Copied. Paste it where you keep it.'
    : 'This browser won’t copy by itself. The text is marked: hold a finger on it and choose Copy.';
}

// --- The page ---

function make(tag, text, className) {
  const element = document.createElement(tag);
  element.textContent = text;
  if (className) element.className = className;
  return element;
}

function button(words, about, act) {
  const made = make('button', words);
  made.type = 'button';
  made.setAttribute('aria-label', `${words}: ${about}`);
  made.addEventListener('click', () => act(made));
  return made;
}

function line(record) {
  const item = document.createElement('li');
  const about = `${name(record)}, ${record.key}`;
  item.append(
    make('p', name(record), 'name'),
    make('p', `${kind(record.key)} · ${size(record.text)} · ${time(record)}`, 'quiet'),
  );
  if (record.fault) item.append(make('p', `The browser could not read it: ${record.fault}`));
  const first = record.text.split('\n')[0];
  item.append(
    make('code', record.key),
    make('code', first.length > FIRST_LINE ? `${first.slice(0, FIRST_LINE)} …` : first),
    button('Save as a file', about, () => {
      save(`${record.key.replace(/[^\w.-]+/g, '-')}.txt`, record.text, 'text/plain');
    }),
    button('Show as text', about, (by) => show(about, record.text, by)),
  );
  return item;
}

// A job's last whole copy. Saved, it is a backup of that job alone.
function row(found) {
  const item = document.createElement('li');
  const { marks } = JSON.parse(found.job);
  const count = Array.isArray(marks) ? marks.length : 0;
  const about = name(found.record);
  item.append(
    make('p', about, 'name'),
    make('p', `${count} saved ${count === 1 ? 'number' : 'numbers'} · ${time(found.record)}`, 'quiet'),
    button('Save as a backup', about, () => {
      save(`ledgerboard-job-${today()}.json`, backup([found]), 'application/json');
    }),
    button('Show as text', about, (by) => show(about, backup([found]), by)),
  );
  return item;
}

function counted(count) {
  return count === 1 ? '1 record' : `${count} records`;
}

async function look() {
  at('said').textContent = 'Looking …';
  const all = await places();
  records = [];
  const list = at('records');
  list.textContent = '';
  const said = [];
  for (const { place, found, fault } of all) {
    if (fault) said.push(`What is in ${place} can’t be read: ${fault}.`);
    if (!found.length) continue;
    said.push(`${counted(found.length)} in ${place}.`);
    records.push(...found.map((record) => Object.assign(record, { place })));
    const lines = document.createElement('ul');
    lines.append(...found.map(line));
    list.append(make('h2', `In ${place}`), lines);
  }
  if (!records.length) {
    said.push(
      'This browser holds nothing of Ledgerboard’s. If you used it in another browser, or from ' +
        'the home screen, open this page there: the address is the same.',
    );
  }
  at('said').textContent = said.join(' ');
  at('acts').hidden = false;
  const last = jobs();
  const rows = document.createElement('ul');
  rows.append(...last.map(row));
  at('jobs').textContent = '';
  if (last.length) at('jobs').append(make('h2', 'Jobs, each in its last whole copy'), rows);
  at('copies').textContent = last.length
    ? `Every record and every copy: ${records.length}`
    : 'Every record';
  // Where no job is whole, what there is must be in view.
  if (!last.length) at('every').open = true;
  at('every').hidden = !records.length;
  at('save-jobs').hidden = !last.length;
  at('save-all').hidden = !records.length;
  at('show-all').hidden = !records.length;
}

function today() {
  return new Date().toISOString().slice(0, 10);
}

at('again').addEventListener('click', look);
at('save-jobs').addEventListener('click', () => {
  save(`ledgerboard-backup-${today()}.json`, backup(jobs()), 'application/json');
});
at('save-all').addEventListener('click', () => {
  save(`ledgerboard-records-${today()}.json`, everything(), 'application/json');
});
at('show-all').addEventListener('click', (event) => {
  show('All records', everything(), event.currentTarget);
});
at('copy').addEventListener('click', copy);
at('close').addEventListener('click', () => {
  at('shown').hidden = true;
  if (shownBy && shownBy.isConnected) shownBy.focus();
  else at('show-all').focus();
});
look();
