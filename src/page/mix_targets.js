"use strict";

// How much of a mix is wanted: each way has its text, its slider, its flag, and where the engine's answer holds the amount.

const mixTargets = {
  litres: {
    label: "Litres",
    field: "How much, wet",
    slider: { least: 0.25, most: 10, step: 0.25 },
    unit: "l",
    textOf: (number) => `${number} l`,
    flags: (kept) => ({ "--wet-volume": kept.litres }),
    inAnswer: (json, people) => json.wet_volume_ml / 1000 / people,
  },
  cups: {
    label: "Cups",
    field: "How many cups",
    slider: { least: 1, most: 40, step: 1 },
    unit: "",
    textOf: (number) => String(number),
    flags: (kept) => ({ "--cups": kept.cups && kept.cup ? `${kept.cups}x${kept.cup}` : "" }),
    size: { label: "A cup holds", name: "cup", unit: "ml", step: 10 },
    inAnswer: (json, people) => json.portions.count / people,
  },
  balls: {
    label: "Balls",
    field: "How many balls",
    slider: { least: 1, most: 60, step: 1 },
    unit: "",
    textOf: (number) => String(number),
    flags: (kept) => ({ "--balls": kept.balls && kept.ball ? `${kept.balls}x${kept.ball}` : "" }),
    size: { label: "A ball is", name: "ball", unit: "mm", step: 5 },
    inAnswer: (json, people) => json.portions.count / people,
  },
  dry: {
    label: "What I have",
    field: "I have this much",
    slider: { least: 50, most: 5000, step: 50 },
    unit: "g",
    textOf: (number) => (number < 1000 ? `${number} g` : `${number / 1000} kg`),
    flags: (kept) => (kept.dry_of ? { "--have": `${kept.dry_of}=${kept.dry}` } : { "--dry-mass": kept.dry }),
    inAnswer: (json, people, kept) => {
      const part = json.parts.find((one) => one.name === kept.dry_of);
      return part ? part.mass_g : json.dry_mass_g / people;
    },
  },
};

// The mixes of the strategy first, then the others of the library.
function mixChoices() {
  const own = bank.strategy.mixes.filter(knownMix);
  const others = bank.library.mixes.map((mix) => mix.name).filter((name) => !own.includes(name));
  const choices = (names) => names.map((name) => ({ value: name, text: name }));
  const groups = [{ group: bank.strategy.name, choices: choices(own) }, { group: "other mixes", choices: choices(others) }];
  return groups.filter((group) => group.choices.length);
}

function firstMix() {
  return bank.strategy.mixes.find(knownMix) || (bank.library.mixes[0] || { name: "" }).name;
}

// The feels, from the driest to the wettest, with the mix's own at the top.
function feelChoices(mix) {
  const own = bank.library.mixes.find((one) => one.name === mix);
  const feels = bank.library.feels.map((feel) => ({ value: feel, text: feel }));
  return [{ value: "", text: own && own.feel ? `its own, ${own.feel}` : "its own" }, ...feels];
}

function temperatureText() {
  if (bank.data.always && bank.data.always.water_temp) return bank.data.always.water_temp;
  return bank.strategy.water_temp_c === null ? "15 \u00b0C" : `${bank.strategy.water_temp_c} \u00b0C`;
}
