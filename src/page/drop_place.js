"use strict";

// Drop: where a cup, a ball, a feeder or a handful breaks, lands and lies, and a picture of it.

placeShapes.drop = recordShape({
  of: textShape(), depth: textShape(null), tow: textShape(null), water: wordShape(["still", "river", ""], ""), as: wordShape(["cup", "ball", "feeder", "loose"], "cup"), cup: textShape("250 ml"), ball: textShape("50 mm"),
  feeder: textShape("30 ml"), loose: textShape("50 ml"), feel: textShape(), squeeze: wordShape(["light", "firm", "hard", ""], ""),
  holds: textShape(), breaks_at: textShape(), carpet: textShape(), cup_weighs: textShape(),
});

const dropForms = {
  cup: { label: "A cup", field: { label: "Cup holds", unit: "ml", step: 10 } },
  ball: { label: "A ball", field: { label: "Ball is", unit: "mm", step: 5 } },
  feeder: { label: "A feeder", field: { label: "Feeder holds", unit: "ml", step: 5 } },
  loose: { label: "Loose", field: { label: "Handful of", unit: "ml", step: 10 } },
};

function dropPlace(section) {
  const kept = bank.kept.drop;
  startDrop(kept);
  const fields = makeDropFields(kept, changed, () => {
    fields.feel.offer(feelChoices(fields.of.text()), "");
    changed();
  });
  const looks = makeLookFields(kept, changed);
  const look = layLookFields(looks);
  const box = answerBox({ fields: { ...flaggedDropFields(fields), ...flaggedLookFields(looks) } });
  const picture = pictureView();
  const ask = oncePerFrame(() => {
    const reply = askEngine({ ask: "drop", words: [kept.of], flags: dropFlags(kept), give: ["told", "picture"], narrow: section.clientWidth < 700 });
    const good = box.show(reply);
    picture.show(good ? reply.picture : null, good);
    look.fold(kept);
  });
  function changed() {
    takeDrop(fields, kept);
    takeLook(looks, kept);
    aimDrop(fields, kept);
    keepSoon();
    ask();
  }
  section.append(layDropFields(fields), look.node, picture.node, box.node);
  aimDrop(fields, kept);
  ask();
}

// Before anything was typed: the strategy's water.
function startDrop(kept) {
  const strategy = bank.strategy;
  if (kept.depth === null) kept.depth = strategy.depth_m === null ? "2 m" : `${strategy.depth_m} m`;
  if (kept.tow === null) kept.tow = strategy.tow_cm_s === null ? "" : `${strategy.tow_cm_s} cm/s`;
  if (knownMix(kept.of)) return;
  kept.of = firstMix();
  kept.feel = planFeel(kept.of);
}

function makeDropFields(kept, changed, mixed) {
  return {
    of: selectField({ label: "Mix", choices: mixChoices(), value: kept.of, changed: mixed }),
    as: stripField({ label: "It goes in as", choices: Object.entries(dropForms).map(([value, form]) => ({ value, text: form.label })), value: kept.as, changed }),
    size: amountField({ label: "Size", changed }),
    depth: amountField({ label: "Depth", text: kept.depth, unit: "m", step: 0.25, least: 0.25, fresh: "2 m", changed }),
    tow: amountField({ label: "Tow", text: kept.tow, unit: "cm/s", step: 1, fresh: "2 cm/s", changed }),
    water: selectField({ label: "Water is", choices: [{ value: "", text: "by its tow" }, { value: "still", text: "still" }, { value: "river", text: "flowing" }], value: kept.water, changed }),
    feel: selectField({ label: "Feel", choices: feelChoices(kept.of), value: kept.feel, changed }),
    squeeze: selectField({ label: "Squeezed", choices: [{ value: "", text: "as usual" }, ...["light", "firm", "hard"].map((word) => ({ value: word, text: word }))], value: kept.squeeze, changed }),
  };
}

function layDropFields({ of, as, size, depth, tow, water, feel, squeeze }) {
  return make("div", { class: "question" }, of.node, as.node, make("div", { class: "pair" }, size.node, feel.node, depth.node, tow.node, water.node, squeeze.node));
}

function flaggedDropFields({ size, depth, tow, water, feel, squeeze }) {
  return { "--cup": size, "--ball": size, "--feeder": size, "--loose": size, "--depth": depth, "--tow": tow, "--water": water, "--feel": feel, "--squeeze": squeeze };
}

function takeDrop(fields, kept) {
  if (kept.as === fields.as.text()) kept[kept.as] = fields.size.text();
  kept.as = fields.as.text();
  for (const name of ["of", "depth", "tow", "water", "feel", "squeeze"]) kept[name] = fields[name].text();
}

function aimDrop(fields, kept) {
  const form = dropForms[kept.as];
  fields.size.adapt(form.field);
  if (fields.size.text() !== kept[kept.as]) fields.size.put(kept[kept.as]);
  fields.squeeze.node.hidden = kept.as !== "ball";
}

function dropFlags(kept) {
  return flagsOf({
    "--depth": kept.depth, "--tow": kept.tow, "--water": kept.water, [`--${kept.as}`]: kept[kept.as], "--feel": kept.feel,
    "--squeeze": kept.as === "ball" ? kept.squeeze : "", "--full": true, ...lookFlags(kept),
  });
}
