"use strict";

// Tub: how wet it is now and how wet it will be, and what puts it right. It goes on from what was mixed last, and counts the minutes.

placeShapes.tub = recordShape({
  of: textShape(), dry: textShape(), by: wordShape(["added", "weighs"], "added"), added: textShape(), weighs: textShape(),
  at: momentShape, feel: textShape(), water_temp: textShape(null),
  face: textShape("40x30 cm"), hours: textShape("2 h"), air: textShape("18 \u00b0C"), sun: wordShape(["shade", "sun", "lid"], "shade"),
});

function tubPlace(section) {
  const kept = bank.kept.tub;
  beginTub(kept);
  const fields = tubFields(kept, { changed, mixed, timed });
  fields.scale = feelScale({ label: "How you want it", wanted: kept.feel || feelOfMix(kept.of), changed });
  const box = answerBox({ fields: flaggedTubFields(fields), first: "Do this" });
  const line = layTubFields(fields, kept);
  const hint = make("p", { class: "hint" }, "Say how much dry mix is in the tub, and how much water. Tap \u201cMixed it\u201d in Mix, and it stands here.");
  const ask = oncePerFrame(() => {
    hint.hidden = Boolean(kept.dry && kept[kept.by]);
    const reply = hint.hidden ? askEngine({ ask: "water", words: [kept.of], flags: tubFlags(kept, fields), give: ["told", "json"] }) : null;
    if (!reply) box.clear();
    fields.scale.mark(reply && box.show(reply) ? { now: reply.json.feel_now, settled: reply.json.feel_settled } : {});
    line.tell(askedOfTub(kept));
    if (line.body.querySelector("[aria-invalid]")) line.open();
  });
  function changed() {
    takeTub(fields, kept);
    keepSoon();
    ask();
  }
  function mixed() {
    fields.scale.put(feelOfMix(fields.of.text()));
    changed();
  }
  function timed() {
    const minutes = fields.minutes.text();
    kept.at = isMinutes(minutes) ? Date.now() - Number(minutes) * 60000 : null;
    changed();
  }
  watchMinutes(kept, fields, ask);
  tubView.refill = () => {
    refillTub(fields, kept);
    ask();
  };
  bank.ticking.push(() => { tubView.refill = () => {}; });
  section.append(line.node, hint, fields.scale.node, box.node, standingPart(kept).node);
  dockOf("tub").append(fields.added.node, fields.weighs.node);
  if (!kept.dry) line.open();
  ask();
}

// With nothing mixed yet: the mix that stands in Mix.
function beginTub(kept) {
  const { mix } = bank.kept;
  if (kept.water_temp === null) kept.water_temp = mix.water_temp || temperatureText();
  if (knownMix(kept.of)) return;
  if (knownMix(mix.of)) Object.assign(kept, { of: mix.of, feel: mix.feel });
  else Object.assign(kept, { of: firstMix(), feel: planFeel(firstMix()) });
}

function refillTub(fields, kept) {
  fields.of.offer(mixChoices(), kept.of);
  for (const name of ["dry", "by", "added", "weighs"]) fields[name].put(kept[name]);
  fields.temperature.put(kept.water_temp);
  fields.minutes.put(minutesIn(kept));
  fields.scale.put(kept.feel || feelOfMix(kept.of));
  fields.aim();
}

// The minutes go on while nobody types them.
function watchMinutes(kept, fields, ask) {
  let shown = minutesIn(kept);
  bank.ticking.push(eachSecond(() => {
    if (minutesIn(kept) === shown || document.activeElement === fields.minutes.input) return;
    shown = minutesIn(kept);
    fields.minutes.put(shown);
    ask();
  }));
}

const tubView = { refill: () => {} };

// It was mixed just now, and the first pour is in.
function goOnInTub(mixed) {
  Object.assign(bank.kept.tub, mixed, { by: "added", at: Date.now() });
  keepNow();
  tubView.refill();
}

function isMinutes(text) {
  return /^[0-9]+([.][0-9]+)?$/.test(text);
}

function minutesIn(kept) {
  return kept.at === null ? "" : String(Math.max(0, Math.floor((Date.now() - kept.at) / 60000)));
}

function tubFields(kept, { changed, mixed, timed }) {
  return {
    of: selectField({ label: "Mix", choices: mixChoices(), value: kept.of, changed: mixed }),
    dry: amountField({ label: "Dry mix in the tub", text: kept.dry, unit: "g", units: ["g", "kg", "oz", "lb"], fresh: "500 g", changed }),
    by: stripField({ label: "What you know", choices: [{ value: "added", text: "Water in" }, { value: "weighs", text: "Weight now" }], value: kept.by, changed }),
    added: amountField({ label: "Water in", text: kept.added, unit: "ml", units: ["ml", "l", "pt", "floz"], step: 10, fresh: "200 ml", changed }),
    weighs: amountField({ label: "Weighs now, without the tub", text: kept.weighs, unit: "g", units: ["g", "kg", "oz", "lb"], step: 10, fresh: "700 g", changed }),
    minutes: amountField({ label: "Minutes since the water", text: minutesIn(kept), step: 1, fresh: "5", changed: timed }),
    temperature: amountField({ label: "Water", text: kept.water_temp, unit: "\u00b0C", fresh: "15 \u00b0C", changed }),
  };
}

function layTubFields(fields, kept) {
  const line = foldedLine("What is in the tub");
  const wetNow = button("The water went in now", () => {
    fields.minutes.put("0");
    fields.minutes.input.dispatchEvent(new Event("input"));
  }, "quiet");
  line.body.append(fields.of.node, make("div", { class: "pair" }, fields.dry.node, fields.temperature.node), fields.by.node, fields.minutes.node, wetNow);
  fields.aim = () => {
    fields.added.node.hidden = kept.by !== "added";
    fields.weighs.node.hidden = kept.by !== "weighs";
  };
  fields.aim();
  return line;
}

function flaggedTubFields({ dry, added, weighs, minutes, temperature }) {
  return { "--dry-mass": dry, "--added": added, "--weighs": weighs, "--minutes": minutes, "--water-temp": temperature };
}

function takeTub(fields, kept) {
  const of = fields.of.text(), feel = fields.scale.text();
  Object.assign(kept, { of, feel: feel === feelOfMix(of) ? "" : feel, dry: fields.dry.text(), by: fields.by.text(), added: fields.added.text(), weighs: fields.weighs.text(), water_temp: fields.temperature.text() });
  fields.aim();
}

function askedOfTub(kept) {
  const water = kept.by === "added" ? kept.added && `${kept.added} in` : kept.weighs && `weighs ${kept.weighs}`;
  const since = kept.at === null ? "settled" : `${minutesIn(kept)} min ago`;
  return [kept.of, kept.dry ? `${kept.dry} dry` : "how much dry?", water || "how much water?", water && since, kept.water_temp].filter(Boolean).join(", ");
}

// What is no number of minutes is the engine's to refuse.
function tubFlags(kept, fields) {
  const known = kept.by === "added" ? { "--added": kept.added } : { "--weighs": kept.weighs };
  const typed = fields.minutes.text();
  return flagsOf({ "--dry-mass": kept.dry, ...known, "--minutes": typed && !isMinutes(typed) ? typed : minutesIn(kept), "--feel": kept.feel, "--water-temp": kept.water_temp });
}
