"use strict";

// What a person made or told on this phone, for all strategies. The engine is told it before the next question, whenever it was
// opened anew or any of it has changed, here or in another tab. Each place that keeps such things gives the requests for them:
// `ownRequests.shed = () => [...]`; they are told in this order.

const ownRequests = {
  measured: () => [],
  mixes: () => (bank.shared.mixes || []).map(({ name, feel, parts }) => ({ ask: "put", recipe: { name, feel, parts } })),
  prices: () => [],
  shed: () => [],
};
const ownTold = { engine: null, text: "" };

// Mixes may be made of each other, in whatever order they were kept: what is refused is asked again as long as others came in.
function tellInTurn(requests) {
  let waiting = requests;
  for (let before = waiting.length + 1; waiting.length && waiting.length < before;) {
    before = waiting.length;
    waiting = waiting.filter((request) => takeContents(bank.engine.ask(request)).errors);
  }
}

// What the engine then holds, as when it was opened.
function takeContents(reply) {
  if (!reply.errors && reply.mixes && reply.strategies) useLibrary(reply);
  return reply;
}

function tellOwnThings() {
  if (!bank.engine || !bank.shared) return;
  const requests = Object.values(ownRequests).map((requestsOf) => requestsOf());
  const text = requests.some((some) => some.length) ? JSON.stringify(requests) : "";
  if (ownTold.engine !== bank.engine) Object.assign(ownTold, { engine: bank.engine, text: "" });
  if (ownTold.text === text) return;
  if (ownTold.text) takeContents(bank.engine.ask({ ask: "anew" }));
  ownTold.text = text;
  for (const some of requests) tellInTurn(some);
}
