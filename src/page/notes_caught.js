"use strict";

// What was caught. The last kind again is one tap, in reach of the thumb; its weight can be said after, or left.

function wordsOfCatch(entry) {
  return [`${entry.count} ${entry.fish}`, entry.mass, entry.at === null ? "" : clockOf(entry.at)].filter(Boolean).join(", ");
}

// The fish of this session first, then those of the sessions before.
function lastFish() {
  const sessions = [bank.kept.notes, ...[...bank.kept.past].reverse()];
  const one = sessions.find((session) => session.catches.length);
  return one ? one.catches[one.catches.length - 1].fish : "";
}

function caughtPart() {
  const weight = weightOfLast(() => list.fill());
  const big = button("", () => {
    catchAgain(lastFish(), weight);
    list.fill();
  }, "main again");
  const fish = textField({ label: "Fish" });
  const list = entryList({
    title: "Caught", entries: () => bank.kept.notes.catches, name: "catches", folded: "Add a fish",
    fields: { fish, count: amountField({ label: "How many", text: "1", least: 1, fresh: "1" }), mass: amountField({ label: "Weight together", unit: "kg", step: 0.1, fresh: "0.5 kg" }) },
    fresh: { count: "1", mass: "" },
    made: (entry) => ({ at: Date.now(), fish: entry.fish, count: Number(entry.count), mass: entry.mass }),
    faultsOf: faultsOfCatch,
    wordsOf: wordsOfCatch,
    filled: () => {
      const name = lastFish();
      big.hidden = !name;
      setText(big, `Another ${name}`);
      weight.tell();
    },
  });
  dockOf("notes").append(weight.node, big);
  list.node.querySelector("details").open = !bank.kept.notes.catches.length;
  return list;
}

function faultsOfCatch({ fish, count, mass }) {
  return {
    fish: fish ? null : { message: "Which fish", hint: "a word will do" },
    count: /^[1-9][0-9]{0,3}$/.test(count) ? null : { message: "A whole number from 1 up" },
    mass: faultOfMass(mass),
  };
}

// The same tap within a moment is a wet thumb's, and counts once.
const onceWithin = 700;  // ms

function catchAgain(name, weight) {
  const { catches } = bank.kept.notes;
  const last = catches[catches.length - 1];
  if (last && last.at !== null && Date.now() - last.at < onceWithin) return;
  const entry = { at: Date.now(), fish: name, count: 1, mass: "" };
  catches.push(entry);
  keepNow();
  weight.of(entry);
  const takeBack = () => {
    bank.kept.notes.catches = bank.kept.notes.catches.filter((one) => one.id !== entry.id);
    keepNow();
    notesView.refill();
    notesView.rewrite();
  };
  notice(`1 ${name}, ${clockOf(entry.at)}`, { action: { text: "Take back", act: takeBack } });
  notesView.rewrite();
}

// A field for the weight of the fish that was just tapped in, until the next one.
function weightOfLast(changed) {
  let entry = null;
  const field = amountField({
    label: "Its weight, if you weighed it", unit: "kg", step: 0.1, fresh: "0.5 kg",
    changed: () => {
      const fault = faultOfMass(field.text());
      field.fault(fault);
      if (fault || !entry) return;
      entry.mass = field.text();
      keepSoon();
      changed();
      notesView.rewrite();
    },
  });
  const node = make("div", { class: "weight-of-last", hidden: true }, field.node);
  const there = () => entry && bank.kept.notes.catches.find((one) => one.id === entry.id);
  return {
    node,
    of: (made) => {
      entry = made;
      field.put("");
      field.fault(null);
    },
    tell: () => {
      entry = there() || null;
      node.hidden = !entry;
    },
  };
}
