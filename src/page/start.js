"use strict";

// Opens the page: draws the answer that it brought along, then opens the engine. `engine` is there once that is open; `missed` says that
// something was asked before.

const bank = {
  engine: null, missed: false, rest: false, data: null, library: null, strategy: null, kept: null, plan: undefined,
  drawn: false, whenDrawn: [], whenMore: [], ticking: [], shared: null,
};

// Opens a strategy with what is kept of it, and shows one of its places.
function openStrategy(name, place = null) {
  keepPending();
  clearPlaces();
  bank.strategy = bank.library.strategies.find((strategy) => strategy.name === name);
  bank.plan = undefined;
  loadKept(name);
  setText(byId("strategy"), name);
  document.title = `${name}, bank page`;
  if (place) bank.kept.place = place;
  showPlace(bank.kept.place);
}

// More than one strategy in the file: the one that is looked at is picked at the top, and remembered.
function offerStrategies() {
  const names = bank.library.strategies.map((strategy) => strategy.name);
  const { last } = bank.shared;
  const first = names.includes(last) ? last : names[0];
  if (names.length > 1) {
    const field = selectField({
      label: "Strategy", choices: names.map((name) => ({ value: name, text: name })), value: first,
      changed: () => {
        openStrategy(field.text());
        bank.shared.last = field.text();
        keepNow();
      },
    });
    byId("strategies").replaceChildren(field.node);
    byId("strategies").hidden = false;
    byId("strategy").hidden = true;
  }
  return first;
}

function useLibrary(library) {
  bank.library = library;
  library.strategies = bank.data.strategies.map((name) => library.strategies.find((strategy) => strategy.name === name)).filter(Boolean);
  if (bank.strategy) bank.strategy = library.strategies.find((strategy) => strategy.name === bank.strategy.name);
}

function fail(mishap) {
  const words = `The page could not be opened. ${mishap.message}`;
  if (document.documentElement.dataset.begun) notice(words);
  else setText(byId("opening"), words);
}

// Run before the engine's text has been read: what is needed to see the first answer, and no more.
function start() {
  try {
    bank.data = JSON.parse(byId("bank-data").textContent);
    useLibrary(bank.data.contents);
    if (!bank.library.strategies.length) throw new Error("This page holds no strategy.");
  } catch (mishap) {
    document.addEventListener("DOMContentLoaded", () => fail(mishap));
    return;
  }
  openKeeping();
  wearLook(bank.shared.look);
  watchPlaces();
  openStrategy(offerStrategies());
  document.documentElement.dataset.begun = "yes";
  byId("card").hidden = false;
  byId("plain").remove();
  const read = new Promise((done) => document.addEventListener("DOMContentLoaded", done));
  const aside = startAside();
  afterFrame(() => read.then(() => openTheEngine(aside)));
}

async function openTheEngine(aside) {
  try {
    const opening = openEngine(aside);
    drawTheRest();
    await opening;
  } catch (mishap) {
    fail(mishap);
    return;
  }
  if (bank.missed) {
    clearPlaces();
    showPlace(bank.kept.place);
  }
  afterFrame(() => {
    performance.mark("bank-ready");
    readTheRestAside(aside);
  });
}

// Once what stands in the document has been drawn; at once where nobody looks, for then nothing is.
function afterFrame(then) {
  if (document.hidden) {
    setTimeout(then);
    return;
  }
  const frame = new MessageChannel();
  frame.port1.onmessage = () => {
    frame.port1.close();
    then();
  };
  requestAnimationFrame(() => frame.port2.postMessage(null));
}

// While the engine is opened aside: what was out of sight, and watching what comes from elsewhere.
function drawTheRest() {
  bank.drawn = true;
  watchStore(() => openStrategy(bank.strategy.name, bank.kept.place));
  watchTimers();
  for (const draw of bank.whenDrawn.splice(0)) draw();
}

// What is out of sight at first, and can wait until what is in sight has been drawn.
function whenDrawn(draw) {
  if (bank.drawn) draw();
  else bank.whenDrawn.push(draw);
}

start();
