"use strict";

// Mix: what to pour and weigh, first of all for the tub that the plan makes; the weights follow while the slider moves.

placeShapes.mix = recordShape({
  of: textShape(), target: wordShape(["plan", "litres", "cups", "balls", "dry"], "plan"), litres: textShape(null),
  cups: textShape("4"), cup: textShape("250 ml"), balls: textShape("12"), ball: textShape("55 mm"),
  dry: textShape("1 kg"), dry_of: textShape(), feel: textShape(), water_temp: textShape(null), people: textShape(), added: textShape(),
});

const restOfSlider = 250;  // ms

function mixPlace(section) {
  const kept = bank.kept.mix;
  startMix(kept);
  const drawing = mixDrawing((give) => draw(give));
  const fields = makeMixFields(kept, { amount: () => changed(), slid: () => changed(drawing.slid), mix: () => showMix(fields.of.text()) });
  const box = answerBox({ fields: flaggedMixFields(fields), first: ["Pour", "Stir in"], without: ["share", "cost"] });
  const line = layMixFields(fields, kept, () => {
    kept.target = fields.target.text();
    fields.aim();
    changed();
  });
  const own = ownMixButton(kept, showMix);
  function changed(drawn = drawing.typed) {
    takeMix(fields, kept);
    keepSoon();
    drawn();
  }
  function draw(give) {
    own.tell();
    if (saysHowMuch(kept)) {
      const reply = askEngine({ ask: "mix", words: [kept.of], flags: mixFlags(kept), give });
      if (box.show(reply) && reply.json) agreeMix(fields, kept, reply.json);
    } else {
      box.clear();
    }
    fields.fold();
  }
  function showMix(name) {
    if (planBatch(name)) kept.target = "plan";
    kept.of = name;
    fields.of.offer(mixChoices(), name);
    fields.feel.offer(feelChoices(name), planFeel(name));
    fields.dryOf.offer([theDryMix], "");
    fields.aim();
    changed();
  }
  section.append(line, box.node, make("div", { class: "after buttons" }, button("Mixed it", () => noteAsMixed(kept), "main"), own.node));
  dockOf("mix").append(fields.slider.node);
  fields.aim();
  draw(["told", "json"]);
}

// While the slider moves only what is shown is asked; what the engine took the amount for, once it has come to rest.
function mixDrawing(draw) {
  let resting = 0;
  const whole = oncePerFrame(() => draw(["told", "json"]));
  const moved = oncePerFrame(() => {
    const began = performance.now();
    draw(["told"]);
    performance.measure("bank-move", { start: began, end: performance.now() });
  });
  bank.ticking.push(() => clearTimeout(resting));
  return {
    typed: whole,
    slid: () => {
      moved();
      clearTimeout(resting);
      resting = setTimeout(whole, restOfSlider);
    },
  };
}

// Before anything was picked: the first mix that the plan makes, as wet as it is fed.
function startMix(kept) {
  if (kept.water_temp === null) kept.water_temp = temperatureText();
  if (!kept.people) kept.people = String(bank.data.people || 1);
  if (knownMix(kept.of)) return;
  kept.of = firstMix();
  kept.feel = planFeel(kept.of);
}

// What was weighed and poured, as the kitchen scale shows it, goes into the notes, to be put right there; Tub goes on from it.
function noteAsMixed(kept) {
  const reply = askEngine({ ask: "mix", words: [kept.of], flags: mixFlags(kept), give: ["told", "json"] });
  if (reply.errors || reply.waiting) return;
  const { recipe, feel, kitchen } = reply.json;
  const dry = `${Number(kitchen.parts.reduce((sum, part) => sum + part.mass_g, 0).toFixed(1))} g`;
  addMixed({ of: recipe, dry, water: `${kitchen.water_g} ml`, feel });
  goOnInTub({ of: kept.of, dry, added: pouredFirst(reply), feel: kept.feel, water_temp: kept.water_temp });
  notice("It is in the notes. Put the amounts right there, if you used others.", { action: { text: "To the tub", act: () => goToPlace("tub") } });
}

// The first pour in the program's own words, "285 ml"; all of the water where there is none.
function pouredFirst({ told, json }) {
  const pour = told.find((piece) => piece.label === "Pour");
  const found = pour && /^([0-9.]+ (ml|l|pt|floz))[ ,]/.exec(pour.text.replace(" fl oz", " floz"));
  return found ? found[1] : `${json.kitchen.water_g} ml`;
}
