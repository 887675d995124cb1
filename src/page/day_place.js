"use strict";

// Day: the season, the water and the fish, and which strategies suit them, with why; one tap opens one.

placeShapes.day = recordShape({
  season: wordShape(["spring", "summer", "autumn", "winter", "", null], null), clarity: wordShape(["clear", "tinged", "coloured", ""], ""), bed: wordShape(["pale", "dark", ""], ""),
  water_temp: textShape(), depth: textShape(null), tow: textShape(null), hours: textShape(null), fish: textShape(),
});

function dayPlace(section) {
  const kept = bank.kept.day;
  startDay(kept);
  const fields = makeDayFields(kept, changed);
  const folded = foldedLine();
  folded.body.append(layDayFields(fields));
  const view = adviceView({ "--water-temp": fields.water_temp, "--depth": fields.depth, "--tow": fields.tow, "--hours": fields.hours, "--fish": fields.fish });
  const ask = oncePerFrame(() => {
    view.show(askEngine({ ask: "advise", words: [], flags: dayFlags(kept), give: ["told", "json"] }));
    folded.tell(wordsOfDay(kept));
  });
  function changed() {
    for (const [name, field] of Object.entries(fields)) kept[name] = field.text();
    keepSoon();
    ask();
  }
  section.append(folded.node, view.node);
  ask();
  whenShown("day", ask);
}

// Before anything was said: the day's season, and the water of the strategy that is open.
function startDay(kept) {
  const strategy = bank.strategy;
  if (kept.season === null) kept.season = seasonOf(new Date().getMonth());
  if (kept.depth === null) kept.depth = strategy.depth_m === null ? "" : usualAmount(`${strategy.depth_m} m`);
  if (kept.tow === null) kept.tow = strategy.tow_cm_s === null ? "" : `${strategy.tow_cm_s} cm/s`;
  if (kept.hours === null) kept.hours = lengthText(strategy.length_minutes);
}

// Of a month of the northern year, by the weather's seasons: from March, June, September and December.
function seasonOf(month) {
  return ["winter", "spring", "summer", "autumn"][Math.floor(((month + 1) % 12) / 3)];
}

function wordChoices(words, none) {
  return [{ value: "", text: none }, ...words.map((word) => ({ value: word, text: word }))];
}

function makeDayFields(kept, changed) {
  return {
    season: selectField({ label: "Season", choices: wordChoices(["spring", "summer", "autumn", "winter"], "any"), value: kept.season, changed }),
    clarity: selectField({ label: "Water is", choices: wordChoices(["clear", "tinged", "coloured"], "not said"), value: kept.clarity, changed }),
    bed: selectField({ label: "Bed", choices: [{ value: "", text: "not said" }, { value: "pale", text: "pale: sand, chalk" }, { value: "dark", text: "dark: silt, leaves" }], value: kept.bed, changed }),
    water_temp: amountField({ label: "Water's warmth", text: kept.water_temp, unit: "\u00b0C", fresh: "15 \u00b0C", changed }),
    depth: amountField({ label: "Depth", text: kept.depth, unit: "m", step: 0.25, least: 0.25, fresh: "2 m", changed }),
    tow: amountField({ label: "Tow", text: kept.tow, unit: "cm/s", step: 1, fresh: "2 cm/s", changed }),
    hours: amountField({ label: "How long", text: kept.hours, unit: "h", step: 0.5, least: 0.5, fresh: "5 h", changed }),
    fish: textField({ label: "After which fish", text: kept.fish, changed }),
  };
}

function layDayFields({ season, clarity, bed, water_temp: warmth, depth, tow, hours, fish }) {
  return make("div", { class: "question" }, fish.node, make("div", { class: "pair" }, season.node, clarity.node, warmth.node, depth.node, tow.node, bed.node, hours.node));
}

function fishOf(text) {
  return text.split(",").map((word) => word.trim()).filter(Boolean);
}

function dayFlags(kept) {
  return flagsOf({
    "--season": kept.season, "--clarity": kept.clarity, "--bed": kept.bed, "--water-temp": kept.water_temp, "--depth": kept.depth, "--tow": kept.tow,
    "--hours": kept.hours, "--fish": fishOf(kept.fish),
  });
}

function wordsOfDay(kept) {
  const words = [...fishOf(kept.fish), kept.season, kept.clarity && `${kept.clarity} water`, kept.water_temp, kept.depth && `${kept.depth} deep`, kept.tow && `tow ${kept.tow}`, kept.bed && `${kept.bed} bed`, kept.hours];
  return words.filter(Boolean).join(", ") || "Any day: say the fish, the season or the water";
}
