"use strict";

// Which mixes there are: those that the strategy feeds, a person's own, and the others of the library.

// A person's own mixes of this phone.
function ownMixes() {
  return bank.shared.mixes;
}

// What the strategy makes of several things for one feed, which is no mix of the library.
function togetherMixes() {
  return bank.strategy.together || [];
}

// The engine is told both. A mix of one's own goes before one of that name that the strategy makes.
ownRequests.mixes = () => [...togetherMixes(), ...ownMixes()].map(putQuestion);

// Texts that are empty were not said.
function putQuestion({ name, feel, parts, doses = [] }) {
  const said = (entry) => Object.fromEntries(Object.entries(entry).filter(([key, value]) => key !== "id" && value !== "" && value !== null));
  return { ask: "put", recipe: { name, feel, parts: parts.map(said), doses: doses.map(said) } };
}

function namedMix(name) {
  return [...ownMixes(), ...togetherMixes(), ...bank.library.mixes].find((mix) => mix.name === name);
}

function knownMix(name) {
  return Boolean(namedMix(name));
}

function feelOfMix(name) {
  const mix = namedMix(name);
  return (mix && mix.feel) || "firm";
}

// It is in the engine for a strategy that makes it, and is no entry of the library.
function madeTogether(name) {
  return bank.library.strategies.some((strategy) => (strategy.together || []).some((mix) => mix.name === name));
}

// The mixes of the strategy first, then a person's own, then the others of the library.
function mixChoices() {
  const fed = bank.strategy.mixes.filter(knownMix);
  const own = ownMixes().map((mix) => mix.name).filter((name) => !fed.includes(name));
  const others = bank.library.mixes.map((mix) => mix.name).filter((name) => !fed.includes(name) && !own.includes(name) && !madeTogether(name));
  const choices = (names) => names.map((name) => ({ value: name, text: name }));
  const groups = [{ group: bank.strategy.name, choices: choices(fed) }, { group: "your own", choices: choices(own) }, { group: "other mixes", choices: choices(others) }];
  return groups.filter((group) => group.choices.length);
}

function firstMix() {
  return bank.strategy.mixes.find(knownMix) || (bank.library.mixes[0] || { name: "" }).name;
}

// The feels, from the driest to the wettest, with the mix's own at the top.
function feelChoices(mix) {
  const feels = bank.library.feels.map((feel) => ({ value: feel, text: feel }));
  return [{ value: "", text: `its own, ${feelOfMix(mix)}` }, ...feels];
}
