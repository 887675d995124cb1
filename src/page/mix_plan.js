"use strict";

// What the strategy's plan says of a mix: how much of it is made, how wet, and how it sits in the water.

// The strategy's plan as the page was made for it; null where there is none.
function planRecord() {
  return plannedSession(bank.strategy.name, String(bank.data.people || 1));
}

// The tub that the plan makes of the mix afresh; null where it makes none.
function planBatch(mix) {
  const plan = planRecord();
  return (plan && plan.batches.find((batch) => batch.name === mix && batch.dry_mass_g > 0)) || null;
}

function batchPeople() {
  return planRecord().people;
}

// The feel at which the plan makes the mix, else at which the strategy feeds it first; empty where that is the mix's own.
function planFeel(mix) {
  const batch = planBatch(mix);
  const fed = batch ? batch.feel : bank.strategy.feels[mix];
  return fed && fed !== feelOfMix(mix) ? fed : "";
}

const statesOfForms = { ball: "squeezed", cup: "cupped", pot: "cupped", feeder: "cupped" };

// How the plan feeds it, so that litres are its litres; empty at another feel, for which that may be impossible.
function planState(mix, feel) {
  const batch = planBatch(mix);
  if (!batch || !batch.feel || batch.feel !== (feel || feelOfMix(mix))) return "";
  const plan = planRecord();
  const feed = [...plan.feeds, ...plan.when_slow].find((one) => one.of === mix);
  return (feed && statesOfForms[feed.as]) || "";
}

function temperatureText() {
  if (bank.data.always && bank.data.always.water_temp) return bank.data.always.water_temp;
  return bank.strategy.water_temp_c === null ? "15 \u00b0C" : `${bank.strategy.water_temp_c} \u00b0C`;
}
