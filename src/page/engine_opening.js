"use strict";

// Opens the engine aside, in a worker, and takes it over from there; where a browser allows none, or the worker fails, on the page itself.

const longestAside = 10000;  // ms; after that the page opens the engine by itself

// A worker out of the bridge's own text. `opened` gives what its engine then knows, or null.
function startAside() {
  let worker = null, waiting = () => {}, silence = 0;
  function end() {
    clearTimeout(silence);
    if (worker) worker.terminate();
    worker = null;
    waiting(null);
  }
  try {
    const source = URL.createObjectURL(new Blob([window.aside, "\nworkAside();"], { type: "text/javascript" }));
    worker = new Worker(source);
    worker.onmessage = ({ data }) => {
      URL.revokeObjectURL(source);
      clearTimeout(silence);
      waiting(data);
    };
    worker.onmessageerror = end;
    worker.onerror = (event) => {
      event.preventDefault();
      end();
    };
  } catch {
    worker = null;
  }
  function opened(message) {
    return new Promise((done) => {
      waiting = done;
      if (!worker) {
        done(null);
        return;
      }
      worker.postMessage(message);
      silence = setTimeout(end, longestAside);
    });
  }
  return { opened, end, attempt: (questions) => worker && worker.postMessage({ questions }) };
}

function openRequest() {
  return { ask: "open", currency: bank.data.currency, units: bank.data.units || "", today: dateOf(Date.now()), made_on: bank.data.made_on, have: bank.data.have || [] };
}

function contentsOf(reply) {
  if (reply.errors) throw new Error(reply.errors.map((error) => error.message).join(". "));
  return reply;
}

// What stands in the page is sent to the worker as it is, and read here only where that failed.
async function openEngine() {
  const aside = startAside();
  const packed = byId("packed-engine").textContent, carried = byId("packed-library").textContent;
  const found = await aside.opened({ packed, carried, request: openRequest() });
  if (!found) aside.end();
  const engine = found ? await startEngine(found.module, found.state) : await startEngine(await engineModule(packed));
  const contents = contentsOf(found ? found.contents : engine.ask(await openingText(openRequest(), carried)));
  return { engine, contents, aside };
}

// What a person is likely to ask first, for the worker to try.
function likelyQuestions() {
  const { name, mixes } = bank.strategy;
  const give = ["told", "json"];
  const ofMix = (ask, flags, more = {}) => mixes.slice(0, 1).map((mix) => ({ ask, words: [mix], flags, give, ...more }));
  return [
    ...ofMix("mix", { "--wet-volume": ["1 l"] }),
    { ask: "plan", words: [name], flags: {}, give },
    ...bank.library.pellets.slice(0, 1).map((pellet) => ({ ask: "soak", words: [pellet.name], flags: {}, give })),
    ...ofMix("water", { "--dry-mass": ["1 kg"], "--water": ["0.5 l"] }),
    ...ofMix("drop", {}, { give: ["told", "picture"], narrow: true }),
    { ask: "cost", words: [name], flags: {}, give: ["told"] },
  ];
}
