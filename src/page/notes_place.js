"use strict";

// Notes: the last fish again in one tap, what was caught, mixed and used, words of one's own; and the ways home.

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
  const head = sessionHead();
  const lists = [caughtPart(), mixedList(), usedList()];
  notesView.refill = () => {
    lists.forEach((list) => list.fill());
    head.tell();
  };
  notesView.waiting = () => lists.map((list) => list.waiting()).filter(Boolean);
  section.append(head.node, ...lists.map((list) => list.node), make("div", { class: "part" }, make("h3", {}, "In your own words"), note.node, dayPart()),
    savePart(), pastPart(), wholePart(), aboutPart());
  whenShown("notes", () => notesView.rewrite());
}

// Of which session this is; and the way to the next, which keeps this one.
function sessionHead() {
  const words = make("p", { class: "since" });
  const anew = twiceButton("A new session", "Tap again: this one is kept below", () => {
    putSessionAway();
    openStrategy(bank.strategy.name, "notes");
    notice("A new session. The one before is kept, and goes home with your notes.");
  }, "quiet");
  const node = make("div", { class: "under" }, words, anew);
  function tell() {
    anew.hidden = !hasSession(bank.kept);
    const { on, start } = sessionOf(bank.kept);
    setText(words, hasSession(bank.kept) ? `Session of ${longDayOf(on)}${start === null ? "" : `, from ${clockOf(start)}`}.` : "Nothing is noted of this session yet.");
  }
  tell();
  return { node, tell };
}

function lengthText(minutes) {
  return minutes % 60 ? `${minutes} min` : `${minutes / 60} h`;
}

function mixedList() {
  const mix = () => selectField({ label: "Mix", choices: mixChoices(), value: firstMix() });
  const feel = () => selectField({ label: "Feel", choices: [{ value: "", text: "not said" }, ...bank.library.feels.map((word) => ({ value: word, text: word }))] });
  return entryList({
    title: "Mixed", entries: () => bank.kept.notes.mixed, name: "mixed", folded: "Add what was mixed",
    fields: { of: mix(), feel: feel(), dry: amountField({ label: "Dry", unit: "g", step: 50, fresh: "1000 g" }), water: amountField({ label: "Water", unit: "ml", step: 50, fresh: "500 ml" }) },
    made: (entry) => ({ ...entry, at: Date.now() }),
    faultsOf: (entry) => ({ dry: faultOfMass(entry.dry), water: faultOfVolume(entry.water) }),
    wordsOf: wordsOfMixed,
  });
}

function wordsOfMixed(entry) {
  return [entry.of, entry.dry && `${entry.dry} dry`, entry.water && `${entry.water} water`, entry.feel].filter(Boolean).join(", ");
}

function addMixed(entry) {
  bank.kept.notes.mixed.push({ at: Date.now(), ...entry });
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
    title: "Used", entries: () => bank.kept.notes.used, name: "used", folded: "Add what was used",
    fields: { of: selectField({ label: "Of", choices: feedNames() }), amount: amountField({ label: "How much", unit: "l", units: ["l", "ml", "g", "kg"], step: 0.25, fresh: "1 l" }) },
    made: (entry) => ({ ...entry, at: Date.now() }),
    faultsOf: (entry) => ({ amount: entry.amount ? faultOfAmount(entry.amount) : { message: "How much was it", hint: "such as 1.5 l or 400 g" } }),
    wordsOf: (entry) => `${entry.of}, ${entry.amount}`,
  });
}

function aboutPart() {
  return make("p", { class: "hint" }, `baitwright ${bank.data.version}; page ${bank.data.id}, made ${bank.data.made_on}. All of it runs on this device; nothing is sent.`);
}
