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
  const scale = feelScale({ label: "How you want it", wanted: kept.feel || feelOfMix(kept.of), changed });
  const box = answerBox({ fields: { "--dry-mass": fields.dry, "--added": fields.added, "--weighs": fields.weighs, "--minutes": fields.minutes, "--water-temp": fields.temperature }, first: "Do this" });
  const line = layTubFields(fields, kept);
  const open = standingPart(kept);
  const ask = oncePerFrame(() => {
    line.tell(askedOfTub(kept));
    if (line.body.querySelector("[aria-invalid]")) line.open();
    const empty = !kept.dry || !kept[kept.by];
    scale.mark({});
    if (empty) box.clear();
    else {
      const reply = askEngine({ ask: "water", words: [kept.of], flags: tubFlags(kept), give: ["told", "json"] });
      if (box.show(reply)) scale.mark({ now: reply.json.feel_now, settled: reply.json.feel_settled });
    }
    hint.hidden = !empty;
  });
  const hint = make("p", { class: "hint" }, "Say above how much dry mix is in the tub, and how much water. Tap \u201cMixed it\u201d in Mix, and it stands here.");
  function changed() {
    takeTub(fields, kept);
    kept.feel = scale.text() === feelOfMix(kept.of) ? "" : scale.text();
    keepSoon();
    ask();
  }
  function mixed() {
    kept.of = fields.of.text();
    scale.put(feelOfMix(kept.of));
    changed();
  }
  function timed() {
    const minutes = fields.minutes.text();
    kept.at = /^[0-9]+([.][0-9]+)?$/.test(minutes) ? Date.now() - Number(minutes) * 60000 : null;
    changed();
  }
  let shown = minutesIn(kept);
  bank.ticking.push(eachSecond(() => {
    if (minutesIn(kept) === shown || document.activeElement === fields.minutes.input) return;
    shown = minutesIn(kept);
    fields.minutes.put(shown);
    ask();
  }));
  tubView.refill = () => {
    fields.of.offer(mixChoices(), kept.of);
    for (const name of ["dry", "by", "added", "weighs"]) fields[name].put(kept[name]);
    fields.temperature.put(kept.water_temp);
    fields.minutes.put(minutesIn(kept));
    scale.put(kept.feel || feelOfMix(kept.of));
    fields.aim();
    ask();
  };
  bank.ticking.push(() => { tubView.refill = () => {}; });
  section.append(line.node, hint, scale.node, box.node, open.node);
  dockOf("tub").append(fields.added.node, fields.weighs.node);
  if (!kept.dry) line.open();
  ask();
}

// With nothing mixed yet: the mix that stands in Mix.
function beginTub(kept) {
  const { mix } = bank.kept;
  if (kept.water_temp === null) kept.water_temp = mix.water_temp || temperatureText();
  if (!knownMix(kept.of)) Object.assign(kept, { of: knownMix(mix.of) ? mix.of : firstMix(), feel: "" });
}

const tubView = { refill: () => {} };

// It was mixed just now, and the first pour is in.
function goOnInTub(mixed) {
  Object.assign(bank.kept.tub, mixed, { by: "added", at: Date.now() });
  keepNow();
  tubView.refill();
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

function takeTub(fields, kept) {
  Object.assign(kept, { dry: fields.dry.text(), by: fields.by.text(), added: fields.added.text(), weighs: fields.weighs.text(), water_temp: fields.temperature.text() });
  fields.aim();
}

function askedOfTub(kept) {
  const water = kept.by === "added" ? kept.added && `${kept.added} in` : kept.weighs && `weighs ${kept.weighs}`;
  const since = kept.at === null ? "settled" : `${minutesIn(kept)} min ago`;
  return [kept.of, kept.dry ? `${kept.dry} dry` : "how much dry?", water || "how much water?", water && since, kept.water_temp].filter(Boolean).join(", ");
}

function tubFlags(kept) {
  const known = kept.by === "added" ? { "--added": kept.added } : { "--weighs": kept.weighs };
  return flagsOf({ "--dry-mass": kept.dry, ...known, "--minutes": minutesIn(kept), "--feel": kept.feel, "--water-temp": kept.water_temp });
}
