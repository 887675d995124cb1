"use strict";

// Takes the engine over from the worker that opened it aside; where a browser allows none, or the worker fails, opens it on the page itself.

function contentsOf(reply) {
  if (reply.errors) throw new Error(reply.errors.map((error) => error.message).join(". "));
  return reply;
}

async function openEngine() {
  const found = await engineAside.found;
  if (found) return { engine: await startEngine(found.module, found.state), contents: contentsOf(found.contents) };
  const { packed, carried, request } = carriedByPage();
  const engine = await startEngine(await engineModule(packed));
  return { engine, contents: contentsOf(engine.ask(await openingText(request, carried))) };
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
