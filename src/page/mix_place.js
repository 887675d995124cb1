"use strict";

// Mix: how much of what, and the weights and the water for it while the slider moves.

placeShapes.mix = recordShape({
  of: textShape(), target: wordShape(["litres", "cups", "balls", "dry"], "litres"), litres: textShape("3 l"),
  cups: textShape("4"), cup: textShape("250 ml"), balls: textShape("12"), ball: textShape("55 mm"),
  dry: textShape("1 kg"), dry_of: textShape(), feel: textShape(), water_temp: textShape(null), people: textShape(), added: textShape(),
});

function mixPlace(section) {
  const kept = bank.kept.mix;
  startMix(kept);
  let tub = null;
  const askTub = () => { if (tub) tub.ask(); };
  const redraw = oncePerFrame(() => {
    const began = performance.now();
    draw();
    performance.measure("bank-move", { start: began, end: performance.now() });
  });
  const changed = () => {
    takeMix(fields, kept);
    keepSoon();
    redraw();
  };
  const fields = makeMixFields(kept, {
    amount: changed,
    wetness: () => {
      changed();
      askTub();
    },
    target: () => {
      kept.target = fields.target.text();
      aimMix(fields, kept);
      changed();
    },
    mix: () => {
      fields.feel.offer(feelChoices(fields.of.text()), planFeel(fields.of.text()));
      fields.dryOf.offer([theDryMix], "");
      changed();
      askTub();
    },
  });
  const box = answerBox({ fields: flaggedMixFields(fields), first: "water", without: ["share", "cost"] });
  let answer = null;
  function draw() {
    const reply = askEngine({ ask: "mix", words: [kept.of], flags: mixFlags(kept), give: ["told", "json"] });
    const good = box.show(reply);
    fields.fold();
    if (!good) return;
    answer = reply.json;
    agreeMix(fields, kept, answer);
  }
  const note = button("Note it as mixed", () => noteAsMixed(answer), "quiet");
  section.append(layMixFields(fields, kept), box.node, make("p", { class: "after" }, note));
  whenDrawn(() => {
    tub = tubPart();
    section.append(tub.node);
  });
  aimMix(fields, kept);
  draw();
}

// Before anything was picked: the strategy's first mix, as wet as the strategy feeds it.
function startMix(kept) {
  if (kept.water_temp === null) kept.water_temp = temperatureText();
  if (!kept.people) kept.people = String(bank.data.people || 1);
  if (knownMix(kept.of)) return;
  kept.of = firstMix();
  kept.feel = planFeel(kept.of);
}

function knownMix(name) {
  return bank.library.mixes.some((mix) => mix.name === name);
}

// The strategy's plan as it stands, for what else hangs on it; null where there is none. It is worked out once.
function planRecord() {
  if (bank.plan === undefined) {
    const reply = askEngine({ ask: "plan", words: [bank.strategy.name], flags: flagsOf(usualOfPlan()), give: ["json"] });
    bank.plan = reply.errors ? null : reply.json;
  }
  return bank.plan;
}

// The feel at which the strategy feeds the mix first; empty where that is the mix's own, or it feeds none of it.
function planFeel(mix) {
  const fed = bank.strategy.feels[mix];
  const own = bank.library.mixes.find((one) => one.name === mix);
  return fed && own && fed !== own.feel ? fed : "";
}

// What was weighed and poured, as the kitchen scale shows it, goes into the notes, to be put right there.
function noteAsMixed(answer) {
  if (!answer) return;
  const dry = answer.kitchen.parts.reduce((sum, part) => sum + part.mass_g, 0);
  addMixed({ of: answer.recipe, dry: `${Number(dry.toFixed(1))} g`, water: `${answer.kitchen.water_g} ml`, feel: answer.feel });
  notice("It is in the notes. Put the amounts right there, if you used others.");
}
