"use strict";

// The fields of Mix: one line that opens, and a slider in reach of the thumb. How they follow the engine's answer.

const theDryMix = { value: "", text: "the dry mix" };

// `on` holds what to do when the mix, the target, the amount, or something that the water hangs on has changed; `slid` tells an
// amount that the slider gave.
function makeMixFields(kept, on) {
  const fields = {
    of: selectField({ label: "Mix", choices: mixChoices(), value: kept.of, changed: on.mix }),
    target: null,
    amount: amountField({ label: "Amount", steps: false, changed: on.amount }),
    size: amountField({ label: "Size", changed: on.amount }),
    dryOf: selectField({ label: "of", choices: [theDryMix], changed: on.amount }),
    feel: selectField({ label: "Feel", choices: feelChoices(kept.of), value: kept.feel, changed: on.amount }),
    temperature: amountField({ label: "Water", text: kept.water_temp, unit: "\u00b0C", fresh: "15 \u00b0C", changed: on.amount }),
    people: amountField({ label: "Anglers", text: kept.people, least: 1, changed: on.amount }),
    added: amountField({ label: "Water in the tub already", text: kept.added, unit: "ml", units: ["ml", "l", "pt"], step: 50, fresh: "100 ml", changed: on.amount }),
  };
  fields.slider = sliderRow({
    label: "Amount",
    moved: (number) => {
      if (targetOfMix(kept) === "plan") {
        kept.target = "litres";
        fields.aim();
      }
      fields.amount.put(mixTargets[targetOfMix(kept)].textOf(number));
      on.slid();
    },
  });
  return fields;
}

// What is asked folds away into one line, which says what stands there.
function layMixFields(fields, kept, changed) {
  const line = foldedLine("What is asked");
  const place = make("div");
  fields.aim = () => aimMix(fields, kept, place, changed);
  line.body.append(make("div", { class: "mix-line" }, fields.of.node, fields.feel.node), place,
    make("div", { class: "pair" }, fields.amount.node, fields.size.node, fields.dryOf.node),
    make("div", { class: "pair" }, fields.temperature.node, fields.people.node, fields.added.node));
  fields.fold = () => {
    line.tell(askedOfMix(kept));
    if (line.body.querySelector("[aria-invalid]")) line.open();
  };
  return line.node;
}

function askedOfMix(kept) {
  const target = targetOfMix(kept);
  const much = {
    plan: "the plan's", litres: kept.litres, cups: `${kept.cups} x ${kept.cup}`, balls: `${kept.balls} x ${kept.ball}`,
    dry: `${kept.dry} of ${kept.dry_of || "dry mix"}`,
  }[target];
  const anglers = kept.people && kept.people !== "1" ? `${kept.people} anglers` : "";
  return [`${kept.of}, ${much}`, kept.feel || feelOfMix(kept.of), kept.water_temp, anglers, kept.added && `${kept.added} in`].filter(Boolean).join(", ");
}

// Faults go to the field that the flag was read from.
function flaggedMixFields({ amount, size, feel, temperature, people, added }) {
  return {
    "--wet-volume": amount, "--cups": size, "--balls": size, "--dry-mass": amount, "--have": amount,
    "--feel": feel, "--water-temp": temperature, "--people": people, "--added": added,
  };
}

function takeMix(fields, kept) {
  const target = targetOfMix(kept);
  kept.of = fields.of.text();
  kept.feel = fields.feel.text();
  kept.water_temp = fields.temperature.text();
  kept.people = fields.people.text();
  kept.added = fields.added.text();
  kept.dry_of = fields.dryOf.text();
  if (target !== "plan") kept[target] = fields.amount.text();
  const { size } = mixTargets[target];
  if (size) kept[size.name] = fields.size.text();
}

// Shows the fields of the target that is picked.
function aimMix(fields, kept, place, changed) {
  const name = targetOfMix(kept);
  const target = mixTargets[name];
  if (kept.litres === null && name === "litres") kept.litres = startingLitres(kept.of);
  fields.target = stripField({ label: "How much", choices: targetChoices(kept.of), value: name, changed, plain: true });
  place.replaceChildren(fields.target.node);
  fields.amount.node.hidden = !target.field;
  if (target.field) {
    fields.amount.adapt({ label: target.field, unit: target.unit, units: target.units });
    fields.amount.put(kept[name]);
  }
  fields.size.node.hidden = !target.size;
  if (target.size) {
    fields.size.adapt(target.size);
    fields.size.put(kept[target.size.name]);
  }
  fields.dryOf.node.hidden = name !== "dry";
  fields.slider.reach(sliderOfTarget(kept));
}

// Sets the slider by what the engine took the text to mean, and offers the mix's own parts.
function agreeMix(fields, kept, json) {
  const target = mixTargets[targetOfMix(kept)];
  fields.slider.put(target.inAnswer(json, json.people, kept), target.field ? fields.amount.text() : "the plan's amount");
  const choices = [theDryMix, ...json.parts.map((part) => ({ value: part.name, text: part.name }))];
  const offered = [...fields.dryOf.input.options].map((option) => option.value);
  if (choices.some((choice, at) => choice.value !== offered[at]) || choices.length !== offered.length) fields.dryOf.offer(choices, kept.dry_of);
}

function mixFlags(kept) {
  return flagsOf({
    ...mixTargets[targetOfMix(kept)].flags(kept),
    "--feel": kept.feel, "--water-temp": kept.water_temp, "--people": kept.people, "--added": kept.added,
  });
}
