"use strict";

// How much of a mix is wanted: each way has its text, its slider, its flag, and where the engine's answer holds the amount.

const fineLitres = { least: 0.02, most: 1, step: 0.02 };

const mixTargets = {
  plan: {
    label: "The plan's",
    slider: { least: 0.1, most: 6, step: 0.1 },
    flags: (kept) => ({ "--dry-mass": `${planBatch(kept.of).dry_mass_g / batchPeople()} g`, "--state": planState(kept.of, kept.feel) }),
    inAnswer: (json, people) => json.wet_volume_ml / 1000 / people,
  },
  litres: {
    label: "Litres",
    field: "How much, wet",
    slider: { least: 0.1, most: 6, step: 0.1 },
    unit: "l",
    units: ["l", "ml", "pt"],
    textOf: (number) => `${number} l`,
    flags: (kept) => ({ "--wet-volume": kept.litres, "--state": planState(kept.of, kept.feel) }),
    inAnswer: (json, people) => json.wet_volume_ml / 1000 / people,
  },
  cups: {
    label: "Cups",
    field: "How many cups",
    slider: { least: 1, most: 40, step: 1 },
    unit: "",
    textOf: (number) => String(number),
    flags: (kept) => ({ "--cups": kept.cups && kept.cup ? `${kept.cups}x${kept.cup}` : "" }),
    size: { label: "A cup holds", name: "cup", unit: "ml", units: ["ml", "floz"], step: 10 },
    inAnswer: (json, people) => json.portions.count / people,
  },
  balls: {
    label: "Balls",
    field: "How many balls",
    slider: { least: 1, most: 60, step: 1 },
    unit: "",
    textOf: (number) => String(number),
    flags: (kept) => ({ "--balls": kept.balls && kept.ball ? `${kept.balls}x${kept.ball}` : "" }),
    size: { label: "A ball is", name: "ball", unit: "mm", units: ["mm", "in"], step: 5 },
    inAnswer: (json, people) => json.portions.count / people,
  },
  dry: {
    label: "What I have",
    field: "I have this much",
    slider: { least: 50, most: 5000, step: 50 },
    unit: "g",
    units: ["g", "kg", "oz", "lb"],
    textOf: (number) => (number < 1000 ? `${number} g` : `${number / 1000} kg`),
    flags: (kept) => (kept.dry_of ? { "--have": kept.dry && `${kept.dry_of}=${kept.dry}` } : { "--dry-mass": kept.dry }),
    inAnswer: (json, people, kept) => {
      const part = json.parts.find((one) => one.name === kept.dry_of);
      return part ? part.mass_g : json.dry_mass_g / people;
    },
  },
};

// The plan's amount is one only of a mix that the plan makes.
function targetOfMix(kept) {
  return kept.target === "plan" && !planBatch(kept.of) ? "litres" : kept.target;
}

function targetChoices(mix) {
  const offered = Object.entries(mixTargets).filter(([name]) => name !== "plan" || planBatch(mix));
  return offered.map(([value, one]) => ({ value, text: one.label }));
}

// Litres begin with the plan's.
function startingLitres(mix) {
  const batch = planBatch(mix);
  return usualAmount(batch ? `${Number((batch.wet_volume_ml / 1000 / batchPeople()).toPrecision(2))} l` : "1 l");
}

// Small tubs are set finer.
function sliderOfTarget(kept) {
  const target = targetOfMix(kept);
  const batch = planBatch(kept.of);
  const small = ["plan", "litres"].includes(target) && batch && batch.wet_volume_ml / batchPeople() < 500;
  return small ? fineLitres : mixTargets[target].slider;
}

// No amount was told: then there is no answer either.
function saysHowMuch(kept) {
  return Object.entries(mixTargets[targetOfMix(kept)].flags(kept)).some(([flag, value]) => flag !== "--state" && value);
}
