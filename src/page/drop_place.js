"use strict";

// Drop: where a cup, a ball, a feeder or a handful breaks, lands and lies, a picture of it, and the other ways in beside it.

placeShapes.drop = recordShape({
  of: textShape(), depth: textShape(null), tow: textShape(null), water: wordShape(["still", "river", ""], ""), as: wordShape(["cup", "ball", "feeder", "loose", ""], ""),
  cup: textShape(null), ball: textShape(null), feeder: textShape(null), loose: textShape(null), feel: textShape(), squeeze: wordShape(["light", "firm", "hard", ""], ""),
  holds: textShape(), breaks_at: textShape(), carpet: textShape(), cup_weighs: textShape(),
});

// Each way in: what its size is called, and what is usual.
const dropForms = {
  cup: { label: "Cup", usual: "250 ml", field: { label: "Cup holds", unit: "ml", step: 10 }, of: (feed) => `${rounded(feed.size_ml)} ml` },
  ball: { label: "Ball", usual: "55 mm", field: { label: "Ball is", unit: "mm", step: 5 }, of: (feed) => `${rounded(feed.diameter_mm)} mm` },
  feeder: { label: "Feeder", usual: "30 ml", field: { label: "Feeder holds", unit: "ml", step: 5 }, of: (feed) => `${rounded(feed.size_ml)} ml` },
  loose: { label: "Loose", usual: "100 ml", field: { label: "Handful of", unit: "ml", step: 10 }, of: (feed) => `${rounded(feed.size_ml)} ml` },
};

function rounded(number) {
  return Number(number.toFixed(1));
}

function dropPlace(section) {
  const kept = bank.kept.drop;
  startDrop(kept);
  const fields = makeDropFields(kept, changed, () => {
    fields.feel.offer(feelChoices(fields.of.text()), planFeel(fields.of.text()));
    changed();
  });
  const looks = makeLookFields(kept, changed);
  const look = layLookFields(looks);
  const folded = foldedLine();
  folded.body.append(layDropFields(fields));
  const view = dropAnswer({ ...flaggedDropFields(fields), ...flaggedLookFields(looks) });
  const beside = besideView(kept);
  const ask = oncePerFrame(() => {
    const reply = askEngine({ ask: "drop", words: [kept.of], flags: dropFlags(kept), give: ["told", "picture"], narrow: section.clientWidth < 700 });
    view.show(reply);
    beside.soon();
    look.fold(kept);
    folded.tell(wordsOfDrop(kept));
  });
  function changed() {
    takeDrop(fields, kept);
    takeLook(looks, kept);
    aimDrop(fields, kept);
    keepSoon();
    ask();
  }
  section.append(folded.node, view.node, beside.node, look.node, view.more);
  dockOf("drop").append(fields.as.node);
  aimDrop(fields, kept);
  ask();
}

// Before anything was typed: the strategy's water, its mix, and the way in and the size as the plan feeds it first.
function startDrop(kept) {
  const strategy = bank.strategy;
  if (kept.depth === null) kept.depth = usualAmount(strategy.depth_m === null ? "2 m" : `${strategy.depth_m} m`);
  if (kept.tow === null) kept.tow = strategy.tow_cm_s === null ? "" : `${strategy.tow_cm_s} cm/s`;
  const fed = knownMix(kept.of) && kept.as ? [] : dropsOfPlan();
  if (!knownMix(kept.of)) {
    const first = fed.find((feed) => knownMix(feed.of));
    kept.of = first ? first.of : firstMix();
    kept.feel = planFeel(kept.of);
  }
  const feed = kept.as ? null : fed.find((one) => one.of === kept.of) || fed[0];
  if (feed) {
    kept.as = feed.as;
    kept[feed.as] = usualAmount(dropForms[feed.as].of(feed));
  }
  if (!kept.as) kept.as = "cup";
  for (const [name, form] of Object.entries(dropForms)) if (kept[name] === null) kept[name] = usualAmount(form.usual);
}

// What the plan feeds in a way that is known here, in its order.
function dropsOfPlan() {
  const plan = planRecord();
  return plan ? plan.feeds.filter((feed) => Object.hasOwn(dropForms, feed.as)) : [];
}

function makeDropFields(kept, changed, mixed) {
  return {
    of: selectField({ label: "Mix", choices: mixChoices(), value: kept.of, changed: mixed }),
    as: stripField({ label: "It goes in as", choices: Object.entries(dropForms).map(([value, form]) => ({ value, text: form.label })), value: kept.as, changed, plain: true }),
    size: amountField({ label: "Size", changed }),
    depth: amountField({ label: "Depth", text: kept.depth, unit: "m", step: 0.25, least: 0.25, fresh: "2 m", changed }),
    tow: amountField({ label: "Tow", text: kept.tow, unit: "cm/s", step: 1, fresh: "2 cm/s", changed }),
    water: selectField({ label: "Water is", choices: [{ value: "", text: "by its tow" }, { value: "still", text: "still" }, { value: "river", text: "flowing" }], value: kept.water, changed }),
    feel: selectField({ label: "Feel", choices: feelChoices(kept.of), value: kept.feel, changed }),
    squeeze: selectField({ label: "Squeezed", choices: [{ value: "", text: "as usual" }, ...["light", "firm", "hard"].map((word) => ({ value: word, text: word }))], value: kept.squeeze, changed }),
  };
}

function layDropFields({ of, size, depth, tow, water, feel, squeeze }) {
  return make("div", { class: "question" }, of.node, make("div", { class: "pair" }, size.node, feel.node, depth.node, tow.node, water.node, squeeze.node));
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

// What stands in the fields, in a line: "silt bed, soft, 250 ml; 2.5 m deep, tow 2 cm/s".
function wordsOfDrop(kept) {
  const what = [kept.of, kept.feel, kept[kept.as], kept.as === "ball" && kept.squeeze && `squeezed ${kept.squeeze}`];
  const water = [kept.depth && `${kept.depth} deep`, kept.tow && `tow ${kept.tow}`, kept.water === "river" ? "flowing" : kept.water];
  return [what, water].map((words) => words.filter(Boolean).join(", ")).join("; ");
}

function waterFlags(kept) {
  return { "--depth": kept.depth, "--tow": kept.tow, "--water": kept.water, "--feel": kept.feel };
}

function dropFlags(kept) {
  return flagsOf({ ...waterFlags(kept), [`--${kept.as}`]: kept[kept.as], "--squeeze": kept.as === "ball" ? kept.squeeze : "", "--full": true, ...lookFlags(kept) });
}
