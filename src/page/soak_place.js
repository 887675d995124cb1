"use strict";

// Soak: which pellets, how much of each, and what to do with them; timers below.

placeShapes.soak = recordShape({
  pellets: listShape(recordShape({ name: textShape(), amount: textShape() }), ["name"]),
  method: wordShape(["covered", "measured"], "covered"), uptake: textShape("40 %"), water_temp: textShape(null), strokes: textShape(), vessel: textShape(),
});

function soakPlace(section) {
  const kept = bank.kept.soak;
  if (kept.water_temp === null) kept.water_temp = temperatureText();
  if (!kept.vessel && bank.data.always && bank.data.always.vessel) kept.vessel = bank.data.always.vessel;
  kept.pellets = kept.pellets.filter((pellet) => pelletNames().includes(pellet.name));
  if (!kept.pellets.length && bank.library.pellets.length) kept.pellets.push(freshPellet(pelletNames()[0]));
  const fields = makeSoakFields(kept, changed);
  const flagged = { "--water-temp": fields.water_temp, "--uptake": fields.uptake, "--strokes": fields.strokes, "--vessel": fields.vessel };
  const rows = pelletRows(kept, changed, flagged);
  const box = answerBox({ fields: flagged });
  const timers = timerPart();
  const ask = oncePerFrame(() => {
    aimSoak(fields, kept);
    const reply = askEngine({ ask: "soak", words: kept.pellets.map(wordOfPellet), flags: soakFlags(kept), give: ["told", "json"] });
    if (box.show(reply)) timers.offer(reply.json.pellets);
  });
  function changed() {
    for (const name of Object.keys(fields)) kept[name] = fields[name].text();
    keepSoon();
    ask();
  }
  const { method, water_temp: temperature, uptake, strokes, vessel } = fields;
  const pair = make("div", { class: "pair" }, temperature.node, uptake.node, strokes.node, vessel.node);
  section.append(make("div", { class: "question" }, rows, method.node, pair), timers.node, box.node);
  ask();
}

function makeSoakFields(kept, changed) {
  return {
    method: stripField({ label: "Water on the pellets", choices: [{ value: "covered", text: "Covered" }, { value: "measured", text: "Measured" }], value: kept.method, changed }),
    water_temp: amountField({ label: "Water", text: kept.water_temp, unit: "\u00b0C", fresh: "15 \u00b0C", changed }),
    uptake: amountField({ label: "To take up", text: kept.uptake, unit: "%", step: 5, least: 5, fresh: "40 %", changed }),
    strokes: amountField({ label: "Strokes of the pump", text: kept.strokes, least: 1, fresh: "10", changed }),
    vessel: amountField({ label: "The pump holds", text: kept.vessel, unit: "ml", step: 100, least: 100, fresh: "500 ml", changed }),
  };
}

function hasKind(kept, kind) {
  return kept.pellets.some((pellet) => kindOfPellet(pellet.name) === kind);
}

// What a stroke of the person's pump draws; the program's own where none was told.
function usualPump() {
  return (bank.data.always && bank.data.always.pump) || "";
}

// Pellets soak, expanders are pumped; what goes with neither of those named is out of sight.
function aimSoak(fields, kept) {
  for (const one of [fields.method, fields.uptake]) one.node.hidden = !hasKind(kept, "pellet");
  for (const one of [fields.strokes, fields.vessel]) one.node.hidden = !hasKind(kept, "expander");
}

function soakFlags(kept) {
  const soaked = hasKind(kept, "pellet") ? { "--method": kept.method, "--uptake": kept.uptake } : {};
  const pumped = hasKind(kept, "expander") ? { "--strokes": kept.strokes, "--vessel": kept.vessel, "--pump": usualPump() } : {};
  return flagsOf({ "--water-temp": kept.water_temp, ...soaked, ...pumped });
}

function freshPellet(name) {
  return { name, amount: freshAmount(name) };
}

// Expanders are for the hook, a pump full at a time.
function freshAmount(name) {
  return kindOfPellet(name) === "expander" ? "50 g" : "500 g";
}

// The pellets of the strategy first, then the others of the library; of both, those that soak before those that are pumped.
function pelletNames() {
  const plan = planRecord();
  const planned = new Set(plan ? [...plan.soaks, ...plan.totals].map((one) => one.name) : []);
  const names = (kind) => bank.library.pellets.filter((pellet) => pellet.kind === kind).map((pellet) => pellet.name);
  const all = [...names("pellet"), ...names("expander")];
  return [...all.filter((name) => planned.has(name)), ...all.filter((name) => !planned.has(name))];
}

function kindOfPellet(name) {
  return (bank.library.pellets.find((pellet) => pellet.name === name) || { kind: "pellet" }).kind;
}

function wordOfPellet({ name, amount }) {
  return amount ? `${name}=${amount}` : name;
}

// A row for each pellet: which, how much, and a way to take it out. `fields` learns where a fault of its amount belongs.
function pelletRows(kept, changed, fields) {
  const list = make("div", { class: "rows" });
  const choices = pelletNames().map((name) => ({ value: name, text: name }));
  function row(pellet) {
    const take = () => {
      delete fields[pellet.name];
      if (name.text() !== pellet.name && pellet.amount === freshAmount(pellet.name)) amount.put(freshAmount(name.text()));
      pellet.name = name.text();
      fields[pellet.name] = amount;
      pellet.amount = amount.text();
      changed();
    };
    const name = selectField({ label: "Pellet", choices, value: pellet.name, changed: take });
    const amount = amountField({ label: "Dry", text: pellet.amount, unit: "g", step: 50, least: 50, fresh: "500 g", changed: take });
    fields[pellet.name] = amount;
    const out = button("Leave out", () => {
      kept.pellets.splice(kept.pellets.indexOf(pellet), 1);
      delete fields[pellet.name];
      fill();
      changed();
    }, "quiet");
    const several = kept.pellets.length > 1;
    return make("div", { class: "entry" }, name.node, make("div", { class: "pair" }, amount.node, several ? out : null));
  }
  function fill() {
    list.replaceChildren(...kept.pellets.map(row));
  }
  const more = button("Another pellet", () => {
    const unused = pelletNames().find((one) => !kept.pellets.some((pellet) => pellet.name === one));
    if (!unused) return;
    kept.pellets.push(freshPellet(unused));
    fill();
    changed();
  }, "quiet");
  fill();
  return make("div", {}, list, more);
}
