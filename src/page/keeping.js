"use strict";

// What the page keeps on the phone: under one key for each page and strategy, so that none sees another's.

const keeping = { store: null, key: "", written: null, later: 0 };

function openStore() {
  try {
    const store = window.localStorage;
    store.setItem("bank page, trial", "1");
    store.removeItem("bank page, trial");
    return store;
  } catch {
    return null;
  }
}

function pageKey() {
  return `bank page ${bank.data.id}`;
}

function keyOf(strategy) {
  return `${pageKey()}, ${strategy}`;
}

function readStored(key) {
  try {
    return keeping.store ? keeping.store.getItem(key) : null;
  } catch {
    return null;
  }
}

function writeStored(key, text) {
  if (!keeping.store) return false;
  try {
    keeping.store.setItem(key, text);
    return true;
  } catch {
    notice("This could not be kept: the browser's room for pages is full. Save your notes to a file.");
    return false;
  }
}

// Text that could not be used is moved to a key of its own, for which there is room even where there is none for a copy.
function setAside(strategy, raw) {
  if (!keeping.store) return;
  let number = 1;
  let there = null;
  const aside = () => `${pageKey()} put by ${number}, ${strategy}`;
  for (there = readStored(aside()); there !== null && there !== raw; there = readStored(aside())) number += 1;
  if (there === raw) return;
  keeping.store.removeItem(keyOf(strategy));
  if (!writeStored(aside(), raw)) writeStored(keyOf(strategy), raw);
}

// Reads what is kept of a strategy into bank.kept.
function loadKept(strategy) {
  keeping.key = keyOf(strategy);
  const raw = readStored(keeping.key);
  const { kept, mended } = readKept(raw);
  if (mended) {
    setAside(strategy, raw);
    notice("Part of what this page had kept could not be read and was left out. The whole of it is put by, and goes out with Export all data in Notes.");
  }
  keeping.written = raw;
  bank.kept = kept;
  if (mended) keepNow();
}

// Writes at once: for what must not be lost, such as a put-in or a timer.
function keepNow() {
  clearTimeout(keeping.later);
  keeping.later = 0;
  if (!bank.kept) return;
  const text = JSON.stringify(bank.kept);
  if (text !== keeping.written && writeStored(keeping.key, text)) keeping.written = text;
}

// Writes what waits to be written.
function keepPending() {
  if (keeping.later) keepNow();
}

// Writes soon: for what changes many times a second.
function keepSoon() {
  if (!keeping.later) keeping.later = setTimeout(keepNow, 400);
}

function keysThatBegin(words) {
  const keys = [];
  for (let at = 0; keeping.store && at < keeping.store.length; at += 1) {
    const key = keeping.store.key(at);
    if (key.startsWith(words)) keys.push(key);
  }
  return keys;
}

function keysPutBy() {
  return keysThatBegin(`${pageKey()} put by `);
}

function forgetPage() {
  clearTimeout(keeping.later);
  keeping.later = 0;
  for (const key of [...keysThatBegin(`${pageKey()}, `), ...keysPutBy()]) keeping.store.removeItem(key);
  bank.kept = readKept(null).kept;
}

// The same page open twice: what the other one wrote counts, and is shown.
function watchStore(reload) {
  const look = () => {
    const raw = readStored(keeping.key);
    if (raw !== null && raw !== keeping.written && !keeping.later) reload();
  };
  window.addEventListener("storage", (event) => { if (event.key === keeping.key) look(); });
  window.addEventListener("pagehide", keepPending);
  document.addEventListener("visibilitychange", () => (document.hidden ? keepPending() : look()));
}
