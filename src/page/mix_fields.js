"use strict";

// The fields of Mix, what they keep, and how they follow the engine's answer.

const theDryMix = { value: "", text: "the dry mix" };

// `on` holds what to do when the mix, the target, the amount, or something that the water hangs on has changed.
function makeMixFields(kept, on) {
  const fields = {
    of: selectField({ label: "Mix", choices: mixChoices(), value: kept.of, changed: on.mix }),
    target: stripField({ label: "How much", choices: Object.entries(mixTargets).map(([value, one]) => ({ value, text: one.label })), value: kept.target, changed: on.target, plain: true }),
    amount: amountField({ label: "Amount", steps: false, changed: on.amount }),
    size: amountField({ label: "Size", changed: on.amount }),
    dryOf: selectField({ label: "of", choices: [theDryMix], changed: on.amount }),
    feel: selectField({ label: "Feel", choices: feelChoices(kept.of), value: kept.feel, changed: on.wetness }),
    temperature: amountField({ label: "Water", text: kept.water_temp, unit: "\u00b0C", fresh: "15 \u00b0C", changed: on.wetness }),
    people: amountField({ label: "Anglers", text: kept.people, least: 1, changed: on.amount }),
    added: amountField({ label: "Water in the tub already", text: kept.added, unit: "ml", step: 50, fresh: "100 ml", changed: on.amount }),
  };
  fields.slider = sliderRow({
    label: "Amount",
    moved: (number) => {
      fields.amount.put(mixTargets[kept.target].textOf(number));
      on.amount();
    },
  });
  return fields;
}

// What is seldom changed folds away, and says in its line what stands there.
function layMixFields(fields, kept) {
  const summary = make("summary");
  const folded = make("details", {}, summary, make("div", { class: "pair" }, fields.temperature.node, fields.people.node, fields.added.node));
  fields.fold = () => {
    const anglers = `${kept.people || "1"} ${kept.people === "1" || !kept.people ? "angler" : "anglers"}`;
    setText(summary, [kept.water_temp && `Water ${kept.water_temp}`, anglers, kept.added && `${kept.added} in the tub`].filter(Boolean).join(", "));
    if (folded.querySelector("[aria-invalid]")) folded.open = true;
  };
  return make("div", { class: "question" },
    make("div", { class: "mix-line" }, fields.of.node, fields.feel.node), fields.target.node,
    make("div", { class: "pair" }, fields.amount.node, fields.size.node, fields.dryOf.node),
    fields.slider.node, folded);
}

// Faults go to the field that the flag was read from.
function flaggedMixFields({ amount, feel, temperature, people, added }) {
  return {
    "--wet-volume": amount, "--cups": amount, "--balls": amount, "--dry-mass": amount, "--have": amount,
    "--feel": feel, "--water-temp": temperature, "--people": people, "--added": added,
  };
}

function takeMix(fields, kept) {
  kept.of = fields.of.text();
  kept.feel = fields.feel.text();
  kept.water_temp = fields.temperature.text();
  kept.people = fields.people.text();
  kept.added = fields.added.text();
  kept.dry_of = fields.dryOf.text();
  kept[kept.target] = fields.amount.text();
  const size = mixTargets[kept.target].size;
  if (size) kept[size.name] = fields.size.text();
}

// Shows the fields of the target that is picked.
function aimMix(fields, kept) {
  const target = mixTargets[kept.target];
  fields.amount.adapt({ label: target.field, unit: target.unit });
  fields.amount.put(kept[kept.target]);
  fields.size.node.hidden = !target.size;
  if (target.size) {
    fields.size.adapt(target.size);
    fields.size.put(kept[target.size.name]);
  }
  fields.dryOf.node.hidden = kept.target !== "dry";
  fields.slider.reach(target.slider);
}

// Sets the slider by what the engine took the text to mean, and offers the mix's own parts.
function agreeMix(fields, kept, json) {
  fields.slider.put(mixTargets[kept.target].inAnswer(json, json.people, kept), fields.amount.text());
  const choices = [theDryMix, ...json.parts.map((part) => ({ value: part.name, text: part.name }))];
  const offered = [...fields.dryOf.input.options].map((option) => option.value);
  if (choices.some((choice, at) => choice.value !== offered[at]) || choices.length !== offered.length) fields.dryOf.offer(choices, kept.dry_of);
}

function mixFlags(kept) {
  return flagsOf({
    ...mixTargets[kept.target].flags(kept),
    "--feel": kept.feel, "--water-temp": kept.water_temp, "--people": kept.people, "--added": kept.added,
  });
}
