"use strict";

// Opens the engine aside, in a worker, and takes it over from there; where a browser allows none, or the worker fails, on the page itself.

const longestAside = 10000;  // ms; after that the page opens the engine by itself

// A worker out of the bridge's own text. What it is sent comes back as what its engine then knows, or as null.
function startAside() {
  let worker = null, waiting = () => {}, silence = 0;
  function end() {
    if (worker) worker.terminate();
    worker = null;
    waiting(null);
  }
  try {
    const source = URL.createObjectURL(new Blob([byId("engine-script").textContent, "\nworkAside();"], { type: "text/javascript" }));
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
  function told(message, given = []) {
    return new Promise((done) => {
      waiting = done;
      if (!worker) {
        done(null);
        return;
      }
      worker.postMessage(message, given);
      silence = setTimeout(end, longestAside);
    });
  }
  return { told, end };
}

function openRequest() {
  return { ask: "open", usual: bank.data.usual, learnt: bank.data.learnt, advice: bank.data.advice, currency: bank.data.currency, units: bank.data.units || "", library: bank.data.library, today: dateOf(Date.now()), made_on: bank.data.made_on, have: bank.data.have || [] };
}

function restRequest() {
  return { ask: "add", library: JSON.parse(byId("bank-more").textContent) };
}

function likelyQuestions() {
  const { name, mixes } = bank.strategy;
  const give = ["told", "json"];
  return [
    ...bank.data.known.map((one) => one.asked),
    { ask: "plan", words: [name], flags: {}, give },
    ...bank.library.pellets.slice(0, 1).map((pellet) => ({ ask: "soak", words: [pellet.name], flags: {}, give })),
    ...mixes.slice(0, 1).map((mix) => ({ ask: "drop", words: [mix], flags: {}, give: ["told", "picture"], narrow: true })),
    { ask: "cost", words: [name], flags: {}, give: ["told"] },
  ];
}

function contentsOf(reply) {
  if (reply.errors) throw new Error(reply.errors.map((error) => error.message).join(". "));
  return reply;
}

// The bytes go to the worker as they are, without a copy, and are made anew from the text where it failed.
async function openEngine(aside) {
  const packed = () => bytesOf(byId("engine-wasm").textContent.trim());
  const sent = packed();
  const opened = await aside.told({ packed: sent, request: openRequest() }, [sent.buffer]);
  if (!opened) aside.end();
  const engine = opened ? await startEngine(opened.module, opened.state) : await startEngine(await engineModule(packed()));
  useLibrary(contentsOf(opened ? opened.contents : engine.ask(openRequest())));
  bank.engine = engine;
}

// What the strategies need is read first; the other mixes and pellets when there is time, or when they are wanted.
async function readTheRestAside(aside) {
  const told = await aside.told({ request: restRequest(), questions: likelyQuestions() });
  const engine = told && !bank.rest ? await startEngine(told.module, told.state) : null;
  if (bank.rest) return;
  if (engine) {
    bank.engine = engine;
    useTheRest(told.contents);
  } else {
    readTheRest();
  }
}

function readTheRest() {
  if (!bank.rest && bank.engine) useTheRest(bank.engine.ask(restRequest()));
}

function useTheRest(library) {
  bank.rest = true;
  if (library.errors) return;
  useLibrary(library);
  for (const tell of bank.whenMore) tell();
}
