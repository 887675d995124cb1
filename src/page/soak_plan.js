"use strict";

// Which pellets are soaked, and how much of each: what the plan soaks, until the person says otherwise.

// Exact, as the plan has them, so that the answers are the plan's own; `shown` is what stands in the field.
function soakedByPlan() {
  const plan = plannedSession(bank.strategy.name, feedPeople());
  return (plan ? plan.soaks : []).map((one) => ({ name: one.name, amount: `${Number(one.dry_mass_g.toFixed(3))} g`, shown: weighedText(one.dry_mass_g) }))
    .filter((one) => pelletNames().includes(one.name));
}

function soakedPellets(kept) {
  return kept.pellets.length ? kept.pellets.map((pellet) => ({ ...pellet, shown: pellet.amount })) : soakedByPlan();
}

// As a kitchen scale shows it, in the person's units; the program rounds what it tells likewise.
function weighedText(grams) {
  const step = grams < 5 ? 0.1 : grams < 50 ? 1 : 5;
  return usualAmount(`${Number((Math.max(1, Math.round(grams / step)) * step).toFixed(1))} g`);
}

// The pellets of the plan first, then the others of the library; of both, those that soak before those that are pumped.
function pelletNames() {
  const plan = plannedSession(bank.strategy.name, feedPeople());
  const planned = new Set(plan ? [...plan.soaks, ...plan.totals].map((one) => one.name) : []);
  const names = (kind) => (bank.library.pellets || []).filter((pellet) => pellet.kind === kind).map((pellet) => pellet.name);
  const all = [...names("pellet"), ...names("expander")];
  return [...all.filter((name) => planned.has(name)), ...all.filter((name) => !planned.has(name))];
}

function kindOfPellet(name) {
  return ((bank.library.pellets || []).find((pellet) => pellet.name === name) || { kind: "pellet" }).kind;
}

function wordOfPellet({ name, amount }) {
  return `${name}=${amount}`;
}

// A row for each pellet: which, how much, and a way to take it out. `fields` learns where a fault of its amount belongs.
function pelletRows(kept, changed, fields) {
  const list = make("div", { class: "rows" });
  const choices = pelletNames().map((name) => ({ value: name, text: name }));
  let pellets = [];
  // What was touched is the person's own from here on, all of it.
  const own = () => {
    kept.pellets = pellets.map(({ name, amount }) => ({ name, amount }));
    changed();
  };
  function row(pellet) {
    const take = () => {
      delete fields[pellet.name];
      pellet.name = name.text();
      fields[pellet.name] = amount;
      pellet.amount = amount.text();
      own();
    };
    const name = selectField({ label: "Pellet", choices, value: pellet.name, changed: take });
    const amount = amountField({ label: "Dry", text: pellet.shown, unit: "g", least: 1, fresh: "500 g", changed: take });
    fields[pellet.name] = amount;
    const out = button("Leave out", () => {
      delete fields[pellet.name];
      pellets = pellets.filter((one) => one !== pellet);
      lay();
      own();
    }, "quiet");
    return make("div", { class: "entry" }, name.node, make("div", { class: "pair" }, amount.node, pellets.length > 1 ? out : null));
  }
  function lay() {
    list.replaceChildren(...pellets.map(row));
    back.hidden = !kept.pellets.length;
  }
  function fill() {
    for (const pellet of pellets) delete fields[pellet.name];
    pellets = soakedPellets(kept);
    lay();
  }
  const more = button("Another pellet", () => {
    const unused = pelletNames().find((one) => !pellets.some((pellet) => pellet.name === one));
    if (!unused) return;
    pellets.push({ name: unused, amount: "", shown: "" });
    own();
    lay();
  }, "quiet");
  const back = button("As the plan has it", () => {
    kept.pellets = [];
    fill();
    changed();
  }, "quiet");
  fill();
  return { node: make("div", {}, list, make("div", { class: "buttons" }, more, back)), tick: () => { back.hidden = !kept.pellets.length; } };
}
