"use strict";

// What a person told of their own, for all strategies: the engine is told it before the next question, whenever it was opened
// anew or any of it has changed, here or in another tab. Each kind gives the questions that tell it, in this order.

const ownThings = { measured: () => [], mixes: () => [], prices: () => [], shed: () => [] };
const ownTold = { engine: null, text: "[]" };

function tellOwnThings() {
  const questions = bank.shared ? Object.values(ownThings).flatMap((questionsOf) => questionsOf()) : [];
  const text = JSON.stringify(questions);
  if (ownTold.engine !== bank.engine) Object.assign(ownTold, { engine: bank.engine, text: "[]" });
  if (ownTold.text === text) return;
  if (ownTold.text !== "[]") bank.engine.ask({ ask: "anew" });
  ownTold.text = text;
  bank.plan = undefined;
  for (const question of questions) bank.engine.ask(question);
}
