"use strict";

// Put a tub right: what went in, and what brings it to its feel. Mix, feel and water are those above.

placeShapes.tub = recordShape({ dry: textShape(), by: wordShape(["added", "weighs"], "added"), added: textShape(), weighs: textShape(), minutes: textShape() });

function tubPart() {
  const kept = bank.kept.tub;
  const dry = amountField({ label: "Dry mix in the tub", text: kept.dry, unit: "g", step: 50, least: 50, fresh: "1000 g", changed });
  const by = stripField({ label: "What you know", choices: [{ value: "added", text: "Water in" }, { value: "weighs", text: "Weight now" }], value: kept.by, changed: () => { aim(); changed(); } });
  const added = amountField({ label: "Water poured in", text: kept.added, unit: "ml", step: 50, least: 0, fresh: "500 ml", changed });
  const weighs = amountField({ label: "Weighs now, without the tub", text: kept.weighs, unit: "g", step: 50, least: 50, fresh: "1500 g", changed });
  const minutes = amountField({ label: "Minutes since the water", text: kept.minutes, step: 1, least: 0, fresh: "5", changed });
  const box = answerBox({ fields: { "--dry-mass": dry, "--added": added, "--weighs": weighs, "--minutes": minutes } });
  const node = make("div", { class: "part" },
    make("h3", {}, "Put a tub right"),
    make("p", { class: "hint" }, "For the mix, feel and water above."),
    make("div", { class: "question" }, dry.node, by.node, make("div", { class: "pair" }, added.node, weighs.node, minutes.node)),
    box.node);
  const ask = oncePerFrame(() => {
    const mix = bank.kept.mix;
    const known = kept.by === "added" ? { "--added": kept.added } : { "--weighs": kept.weighs };
    if (!kept.dry || !kept[kept.by]) {
      box.clear();
      return;
    }
    box.show(askEngine({
      ask: "water", words: [mix.of],
      flags: flagsOf({ "--dry-mass": kept.dry, ...known, "--minutes": kept.minutes, "--feel": mix.feel, "--water-temp": mix.water_temp }),
    }));
  });
  function changed() {
    Object.assign(kept, { dry: dry.text(), by: by.text(), added: added.text(), weighs: weighs.text(), minutes: minutes.text() });
    keepSoon();
    ask();
  }
  function aim() {
    added.node.hidden = by.text() !== "added";
    weighs.node.hidden = by.text() !== "weighs";
  }
  aim();
  if (kept.dry) ask();
  return { node, ask };
}
