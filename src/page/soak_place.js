"use strict";

// Soak: which pellets, how much of each, and what to do with them; timers below.

function soakPlace(section) {
  const kept = bank.kept.soak;
  if (kept.water_temp === null) kept.water_temp = temperatureText();
  if (!kept.pellets.length && bank.library.pellets.length) kept.pellets.push({ name: pelletNames()[0], amount: "500 g" });
    const method = stripField({ label: "Water on the pellets", choices: [{ value: "covered", text: "Covered" }, { value: "measured", text: "Measured" }], value: kept.method, changed });
  const temperature = amountField({ label: "Water", text: kept.water_temp, unit: "degC", fresh: "15 degC", changed });
  const uptake = amountField({ label: "To take up", text: kept.uptake, unit: "%", step: 5, least: 5, fresh: "40 %", changed });
  const strokes = amountField({ label: "Strokes of the pump", text: kept.strokes, least: 1, fresh: "10", changed });
  const fields = { "--water-temp": temperature, "--uptake": uptake, "--strokes": strokes };
  const rows = pelletRows(kept, changed, fields);
  const box = answerBox({ fields });
  const timers = timerPart();
  const ask = oncePerFrame(() => {
    strokes.node.hidden = !kept.pellets.some((pellet) => kindOfPellet(pellet.name) === "expander");
    const reply = askEngine({ ask: "soak", words: kept.pellets.map(wordOfPellet), flags: soakFlags(kept, strokes.node.hidden), give: ["told", "json"] });
    if (box.show(reply)) timers.offer(reply.json.pellets);
  });
  function changed() {
    Object.assign(kept, { method: method.text(), water_temp: temperature.text(), uptake: uptake.text(), strokes: strokes.text() });
    keepSoon();
    ask();
  }
  section.append(make("div", { class: "question" }, rows, method.node, make("div", { class: "pair" }, temperature.node, uptake.node, strokes.node)), timers.node, box.node);
  ask();
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

function soakFlags(kept, withoutStrokes) {
  return flagsOf({ "--water-temp": kept.water_temp, "--method": kept.method, "--uptake": kept.uptake, "--strokes": withoutStrokes ? "" : kept.strokes });
}

// A row for each pellet: which, how much, and a way to take it out. `fields` learns where a fault of its amount belongs.
function pelletRows(kept, changed, fields) {
  const list = make("div", { class: "rows" });
  const choices = pelletNames().map((name) => ({ value: name, text: name }));
  function row(pellet) {
    const take = () => {
      delete fields[pellet.name];
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
    kept.pellets.push({ name: unused, amount: "500 g" });
    fill();
    changed();
  }, "quiet");
  fill();
  return make("div", {}, list, more);
}
