"use strict";

// Opens the page: the engine first, while the plain words stand, then the places. `engine` is null where it could not be opened.

const bank = {
  engine: null, data: null, library: null, strategy: null, kept: null,
  drawn: false, whenDrawn: [], ticking: [], shared: null,
};

// Opens a strategy with what is kept of it, and shows one of its places.
function openStrategy(name, place = null) {
  keepPending();
  clearPlaces();
  bank.strategy = bank.library.strategies.find((strategy) => strategy.name === name);
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

// `strategies` are those that the page was made for and those that were opened besides; `every` one may be opened.
function useLibrary(library) {
  bank.library = library;
  library.every = library.every || library.strategies;
  const names = new Set([...bank.data.strategies, ...(bank.shared ? bank.shared.opened : [])]);
  library.strategies = [...names].map((name) => library.every.find((strategy) => strategy.name === name)).filter(Boolean);
  if (bank.strategy) bank.strategy = library.strategies.find((strategy) => strategy.name === bank.strategy.name);
}

// Any strategy of the library: from then on it is one of those at the top.
function openAnyStrategy(name, place) {
  if (!bank.library.strategies.some((strategy) => strategy.name === name)) {
    bank.shared.opened = [...bank.shared.opened, name];
    useLibrary(bank.library);
  }
  bank.shared.last = name;
  keepNow();
  openStrategy(offerStrategies(), place);
}

// The scripts run as soon as they are unpacked, while the rest of the file is still being read.
function wholeFileRead() {
  return new Promise((done) => {
    if (document.readyState === "loading") document.addEventListener("DOMContentLoaded", done);
    else done();
  });
}

async function start() {
  await wholeFileRead();
  bank.data = JSON.parse(byId("bank-data").textContent);
  try {
    const found = await openEngine();
    useLibrary(found.contents);
    bank.engine = found.engine;
  } catch (mishap) {
    beginWithout(mishap);
    return;
  }
  begin();
  afterFrame(() => {
    performance.mark("bank-ready");
    engineAside.attempt(likelyQuestions());
  });
}

// The places take over from the plain words.
function begin(place = null) {
  openKeeping();
  useLibrary(bank.library);
  wearLook(bank.shared.look);
  watchPlaces();
  openStrategy(offerStrategies(), place);
  document.documentElement.dataset.begun = "yes";
  byId("card").hidden = false;
  for (const id of ["opening", "plain"]) if (byId(id) && !byId("card").contains(byId(id))) byId(id).remove();
  afterFrame(drawTheRest);
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

// What was out of sight, and watching what comes from elsewhere.
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

start().catch((mishap) => openingFailed(mishap.message));
