"use strict";

// Opens the page: draws the answer that it brought along, unpacks the engine, and hands it the library. `ask` is there once the engine
// is open; `missed` says that something was asked before.

const bank = { ask: null, missed: false, rest: false, data: null, library: null, strategy: null, kept: null, plan: undefined, ticking: [], whenMore: [], unkept: null };

function bytesOf(base64) {
  if (Uint8Array.fromBase64) return Uint8Array.fromBase64(base64);
  const letters = atob(base64);
  const bytes = new Uint8Array(letters.length);
  for (let at = 0; at < letters.length; at += 1) bytes[at] = letters.charCodeAt(at);
  return bytes;
}

async function unpackEngine() {
  if (!window.DecompressionStream) throw new Error("This browser cannot unpack the page. Chrome from 80, Firefox from 113 and Safari from 16.4 can.");
  if (!window.WebAssembly) throw new Error("This browser has WebAssembly switched off, which the page reckons with.");
  const packed = new Blob([bytesOf(byId("engine-wasm").textContent.trim())]).stream();
  return new Uint8Array(await new Response(packed.pipeThrough(new DecompressionStream("gzip"))).arrayBuffer());
}

// Opens a strategy with what is kept of it, and shows one of its places.
function openStrategy(name, place = null) {
  keepPending();
  clearPlaces();
  bank.strategy = bank.library.strategies.find((strategy) => strategy.name === name);
  bank.plan = undefined;
  loadKept(name);
  if (bank.unkept !== null) {
    bank.kept = readKept(bank.unkept).kept;
    bank.unkept = null;
  }
  setText(byId("strategy"), name);
  document.title = `${name}, bank page`;
  if (place) bank.kept.place = place;
  showPlace(bank.kept.place);
}

// More than one strategy in the file: the one that is looked at is picked at the top, and remembered.
function offerStrategies() {
  const names = bank.library.strategies.map((strategy) => strategy.name);
  const key = `${pageKey()}, `;
  const last = readStored(key);
  const first = names.includes(last) ? last : names[0];
  if (names.length > 1) {
    const field = selectField({
      label: "Strategy", choices: names.map((name) => ({ value: name, text: name })), value: first,
      changed: () => {
        openStrategy(field.text());
        writeStored(key, field.text());
      },
    });
    byId("strategies").replaceChildren(field.node);
    byId("strategies").hidden = false;
    byId("strategy").hidden = true;
  }
  return first;
}

// What the strategies need is read first; the other mixes and pellets when there is time, or when they are wanted.
function openLibrary(ask) {
  const library = ask({ ask: "open", library: bank.data.library, today: dateOf(Date.now()), have: bank.data.have || [] });
  if (library.errors) throw new Error(library.errors.map((error) => error.message).join(". "));
  useLibrary(library);
}

function useLibrary(library) {
  bank.library = library;
  library.strategies = bank.data.strategies.map((name) => library.strategies.find((strategy) => strategy.name === name)).filter(Boolean);
  if (bank.strategy) bank.strategy = library.strategies.find((strategy) => strategy.name === bank.strategy.name);
}

function readTheRest() {
  if (bank.rest || !bank.ask) return;
  bank.rest = true;
  const library = bank.ask({ ask: "add", library: JSON.parse(byId("bank-more").textContent) });
  if (library.errors) return;
  useLibrary(library);
  for (const told of bank.whenMore) told();
}

function fail(mishap) {
  setText(byId("opening"), `The page could not be opened. ${mishap.message}`);
  byId("opening").hidden = false;
}

// Run before the engine's text has been read: what is needed to see the first answer, and no more.
function start() {
  try {
    bank.data = JSON.parse(byId("bank-data").textContent);
    useLibrary(bank.data.contents);
    if (!bank.library.strategies.length) throw new Error("This page holds no strategy.");
  } catch (mishap) {
    fail(mishap);
    return;
  }
  keeping.store = openStore();
  if (!keeping.store) notice("This browser keeps nothing for this page: all is gone when it is closed. Save your notes before.");
  watchPlaces();
  openStrategy(offerStrategies());
  watchStore(() => openStrategy(bank.strategy.name, bank.kept.place));
  watchTimers();
  byId("opening").hidden = true;
  byId("card").hidden = false;
  afterFrame(() => performance.mark("bank-drawn"));
  document.addEventListener("DOMContentLoaded", openTheEngine);
}

async function openTheEngine() {
  try {
    const ask = await openEngine(await unpackEngine());
    openLibrary(ask);
    bank.ask = ask;
  } catch (mishap) {
    fail(mishap);
    return;
  }
  if (bank.missed) {
    clearPlaces();
    showPlace(bank.kept.place);
  }
  afterFrame(() => {
    document.documentElement.dataset.ready = "yes";
    performance.mark("bank-ready");
    readTheRest();
  });
}

// Once what stands in the document has been drawn.
function afterFrame(then) {
  requestAnimationFrame(() => setTimeout(then));
}

start();
