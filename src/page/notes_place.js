"use strict";

// Notes: what was caught, mixed and used, and words of one's own, to be saved; and what it costs.

// What others call once something of the notes has changed; `waiting` tells what was typed and not added.
const notesView = { refill: () => {}, rewrite: () => {}, waiting: () => [] };

function notesPlace(section) {
  const kept = bank.kept.notes;
  const note = textField({
    label: "Notes", text: kept.note, long: true,
    changed: () => {
      kept.note = note.text();
      keepSoon();
      notesView.rewrite();
    },
  });
  const lists = [catchList(), mixedList(), usedList()];
  notesView.refill = () => lists.forEach((list) => list.fill());
  notesView.waiting = () => lists.map((list) => list.waiting()).filter(Boolean);
  section.append(...lists.map((list) => list.node), make("div", { class: "part" }, make("h3", {}, "In your own words"), note.node),
    savePart(), costPart(), wholePart(), aboutPart());
}

// What a session costs, for so many anglers and so long.
function costPart() {
  const kept = bank.kept.notes;
  if (!kept.people) kept.people = String(bank.data.people || 1);
  if (!kept.length) kept.length = lengthText(bank.strategy.length_minutes);
  const people = amountField({ label: "Anglers", text: kept.people, least: 1, changed });
  const length = amountField({ label: "How long", text: kept.length, unit: "h", step: 0.5, least: 0.5, fresh: "4 h", changed });
  const box = answerBox({ fields: { "--people": people, "--length": length } });
  const ask = oncePerFrame(() => box.show(askEngine({
    ask: "cost", words: [bank.strategy.name], flags: flagsOf({ "--people": kept.people, "--length": kept.length }),
  })));
  function changed() {
    kept.people = people.text();
    kept.length = length.text();
    keepSoon();
    notesView.rewrite();
    ask();
  }
  ask();
  return make("div", { class: "part" }, make("h3", {}, "What it costs"), make("div", { class: "question" }, make("div", { class: "pair" }, people.node, length.node)), box.node);
}

function lengthText(minutes) {
  return minutes % 60 ? `${minutes} min` : `${minutes / 60} h`;
}

function mixedList() {
  const mix = () => selectField({ label: "Mix", choices: mixChoices(), value: firstMix() });
  const feel = () => selectField({ label: "Feel", choices: [{ value: "", text: "not said" }, ...bank.library.feels.map((word) => ({ value: word, text: word }))] });
  const list = entryList({
    title: "Mixed", entries: () => bank.kept.notes.mixed, name: "mixed",
    fields: { of: mix(), feel: feel(), dry: amountField({ label: "Dry", unit: "g", step: 50, fresh: "1000 g" }), water: amountField({ label: "Water", unit: "ml", step: 50, fresh: "500 ml" }) },
    faultsOf: (entry) => ({ dry: faultOfMass(entry.dry), water: faultOfVolume(entry.water) }),
    wordsOf: (entry) => [entry.of, entry.dry && `${entry.dry} dry`, entry.water && `${entry.water} water`, entry.feel].filter(Boolean).join(", "),
  });
  return list;
}

function addMixed(entry) {
  bank.kept.notes.mixed.push(entry);
  keepNow();
  notesView.refill();
}

// All that can have been fed: mixes and pellets, and what else the plan feeds.
function feedNames() {
  const plan = planRecord();
  const planned = plan ? [...plan.feeds, ...(plan.when_slow || [])].map((feed) => feed.of) : [];
  const names = [...planned, ...bank.strategy.mixes, ...bank.library.mixes.map((mix) => mix.name), ...bank.library.pellets.map((pellet) => pellet.name)];
  return [...new Set(names)].map((name) => ({ value: name, text: name }));
}

function usedList() {
  return entryList({
    title: "Used", entries: () => bank.kept.notes.used, name: "used",
    fields: { of: selectField({ label: "Of", choices: feedNames() }), amount: amountField({ label: "How much", unit: "l", step: 0.25, fresh: "1 l" }) },
    faultsOf: (entry) => ({ amount: entry.amount ? faultOfAmount(entry.amount) : { message: "How much was it", hint: "such as 1.5 l or 400 g" } }),
    wordsOf: (entry) => `${entry.of}, ${entry.amount}`,
  });
}

function catchList() {
  const fish = textField({ label: "Fish" });
  return entryList({
    title: "Caught", entries: () => bank.kept.notes.catches, name: "catches",
    fields: { fish, count: amountField({ label: "How many", text: "1", least: 1, fresh: "1" }), mass: amountField({ label: "Weight together", unit: "kg", step: 0.1, fresh: "0.5 kg" }) },
    fresh: { count: "1", mass: "" },
    made: (entry) => ({ at: Date.now(), fish: entry.fish, count: Number(entry.count), mass: entry.mass }),
    faultsOf: (entry) => ({
      fish: entry.fish ? null : { message: "Which fish", hint: "a word will do" },
      count: /^[1-9][0-9]{0,3}$/.test(entry.count) ? null : { message: "A whole number from 1 up" },
      mass: faultOfMass(entry.mass),
    }),
    wordsOf: (entry) => [`${entry.count} ${entry.fish}`, entry.mass, entry.at === null ? "" : clockOf(entry.at)].filter(Boolean).join(", "),
  });
}

function aboutPart() {
  return make("p", { class: "hint" }, `baitwright ${bank.data.version}; page ${bank.data.id}, made ${bank.data.made_on}. All of it runs on this device; nothing is sent.`);
}
