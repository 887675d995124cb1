"use strict";

// What the page keeps on the phone: a part for each strategy, by its name, and one for all of them. A page made anew finds
// them again, and two tabs write into the same.

const sharedKey = "baitwright bank";

// `held` are texts that could not be written: they count for this visit.
const keeping = { store: null, writable: false, own: null, shared: null, held: new Map(), later: 0, full: false, showAnew: () => {} };

function openStore() {
  try {
    const store = window.localStorage;
    store.getItem(sharedKey);
    return store;
  } catch {
    return null;
  }
}

function canWrite(store) {
  try {
    store.setItem("baitwright bank, trial", "1");
    store.removeItem("baitwright bank, trial");
    return true;
  } catch {
    return false;
  }
}

// Once, before anything is read.
function openKeeping() {
  keeping.store = openStore();
  keeping.writable = Boolean(keeping.store) && canWrite(keeping.store);
  if (!keeping.writable) {
    const words = keysThatBegin(sharedKey).length ? "Nothing new can be kept: the browser's room for pages is full. Save your notes to a file."
      : "This browser keeps nothing for this page: all is gone when it is closed. Save your notes before.";
    notice(words, { stays: true });
    keeping.full = true;
  }
  keeping.shared = openBox(sharedKey, sharedShape());
  bank.shared = keeping.shared.kept;
}

function keyOf(strategy) {
  return `${sharedKey}, ${strategy}`;
}

function readStored(key) {
  try {
    return keeping.store ? keeping.store.getItem(key) : null;
  } catch {
    return null;
  }
}

function writeStored(key, text) {
  try {
    if (!keeping.store) throw new Error("no store");
    keeping.store.setItem(key, text);
    keeping.held.delete(key);
    keeping.full = false;
    return true;
  } catch {
    keeping.held.set(key, text);
    if (!keeping.full) notice("This could not be kept: the browser's room for pages is full. Save your notes to a file.", { stays: true });
    keeping.full = true;
    return false;
  }
}

function removeStored(key) {
  keeping.held.delete(key);
  if (keeping.store) keeping.store.removeItem(key);
}

// Text that could not be used is moved to a key of its own, for which there is room even where there is none for a copy.
function setAside(name, raw) {
  let number = 1;
  let there = null;
  const aside = () => `${sharedKey} put by ${number}${name}`;
  for (there = readStored(aside()); there !== null && there !== raw; there = readStored(aside())) number += 1;
  if (there === raw || !keeping.writable) return;
  const key = `${sharedKey}${name}`;
  keeping.store.removeItem(key);
  if (writeStored(aside(), raw)) return;
  keeping.held.delete(aside());
  writeStored(key, raw);
}

// Reads what is kept under a key, and what could not be written of it.
function openBox(key, shape) {
  const raw = readStored(key);
  const { kept, changes, others, mended } = readKept(raw, shape);
  const box = { key, shape, kept, changes, others, raw, before: new Map() };
  if (mended) {
    setAside(key.slice(sharedKey.length), raw);
    box.raw = readStored(key);
    notice("Part of what this page had kept could not be read and was left out. The whole of it is put by, and goes out with Export all data in Notes.", { stays: true });
  }
  settle(box);
  if (keeping.held.has(key)) takeIn(box, readKept(keeping.held.get(key), shape));
  if (mended) writeBox(box);
  return box;
}

// What stands there now was not typed by anybody: it counts as no change.
function settle(box) {
  markEntries(box.shape, box.kept, box.changes.gone);
  box.before = thingsOf(box.shape, box.kept);
}

// Builds a place, which may fill in first values of its own.
function settledKept(build) {
  for (const box of [keeping.own, keeping.shared]) box.before = noteChanges(box.shape, box.kept, box.before, box.changes);
  build();
  for (const box of [keeping.own, keeping.shared]) settle(box);
}

// Puts another reading of the same together with this one. True where anything came in.
function takeIn(box, reading) {
  box.before = noteChanges(box.shape, box.kept, box.before, box.changes);
  const mine = textOfReading(box.shape, box);
  const merged = mergedReading(box.shape, box, reading);
  adopt(box.shape, box.kept, merged.kept);
  Object.assign(box, { changes: merged.changes, others: merged.others });
  settle(box);
  return textOfReading(box.shape, box) !== mine;
}

// Writes what is new in it, together with what another tab has written meanwhile.
function writeBox(box) {
  if (box.kept.notes) nameSession(box.kept);
  box.before = noteChanges(box.shape, box.kept, box.before, box.changes);
  const there = readStored(box.key);
  const came = there !== null && there !== box.raw && takeIn(box, readKept(there, box.shape));
  const text = textOfReading(box.shape, box);
  box.raw = there;
  if (text !== there && writeStored(box.key, text)) box.raw = text;
  if (came) keeping.showAnew();
}

// What is kept of a strategy, into bank.kept.
function loadKept(strategy) {
  keeping.own = openBox(keyOf(strategy), wholeShape());
  bank.kept = keeping.own.kept;
  takeOverOld(strategy);
}

// Writes at once: for what must not be lost, such as a put-in or a timer.
function keepNow() {
  clearTimeout(keeping.later);
  keeping.later = 0;
  if (!bank.kept) return;
  writeBox(keeping.own);
  writeBox(keeping.shared);
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
  return keysThatBegin(`${sharedKey} put by`);
}

// All strategies of which something is kept, by name.
function keptStrategies() {
  const words = `${sharedKey}, `;
  const keys = [...keysThatBegin(words), ...[...keeping.held.keys()].filter((key) => key.startsWith(words))];
  return [...new Set(keys)].map((key) => key.slice(words.length)).sort();
}

// What is kept of a strategy, whichever is open; null where nothing is.
function keptOf(strategy) {
  if (bank.strategy && strategy === bank.strategy.name) return keeping.own;
  const key = keyOf(strategy);
  return readStored(key) === null && !keeping.held.has(key) ? null : openBox(key, wholeShape());
}

function forgetPage() {
  clearTimeout(keeping.later);
  keeping.later = 0;
  for (const key of [...keysThatBegin(`${sharedKey}, `), ...keysPutBy(), ...oldKeys(), sharedKey]) removeStored(key);
  keeping.held.clear();
  keeping.own = openBox(keeping.own.key, wholeShape());
  keeping.shared = openBox(sharedKey, sharedShape());
  bank.kept = keeping.own.kept;
  bank.shared = keeping.shared.kept;
}

// What another tab wrote comes in; what it had not seen of this one is written again.
function hear(box, text) {
  if (!box || text === null || text === box.raw) return;
  const theirs = readKept(text, box.shape);
  const came = takeIn(box, theirs);
  box.raw = text;
  const place = box.kept.place;
  const mine = { ...box, kept: { ...box.kept, ...(place ? { place: theirs.kept.place } : {}) } };
  if (textOfReading(box.shape, mine) !== textOfReading(box.shape, theirs)) writeBox(box);
  if (came) keeping.showAnew();
}

// The fields that are being typed into are not drawn anew under the fingers.
function whenNotTyping(work) {
  const typing = document.activeElement;
  if (typing && typing.matches("input:not([type=checkbox]):not([type=radio]), textarea") && !document.hidden) typing.addEventListener("blur", () => setTimeout(work), { once: true });
  else work();
}

// The same pages open twice: what one wrote counts in the other too, and is shown.
function watchStore(reload) {
  let waiting = false;
  keeping.showAnew = () => {
    if (waiting) return;
    waiting = true;
    setTimeout(() => whenNotTyping(() => {
      waiting = false;
      reload();
    }));
  };
  const look = () => [keeping.own, keeping.shared].forEach((box) => hear(box, readStored(box.key)));
  window.addEventListener("storage", (event) => {
    hear([keeping.own, keeping.shared].find((box) => box && box.key === event.key), event.newValue);
  });
  window.addEventListener("pagehide", keepPending);
  document.addEventListener("visibilitychange", () => (document.hidden ? keepPending() : look()));
}
