"use strict";

// A list of entries in the notes, with the fields that add one. An amount that the engine cannot read is marked and not added.

// `folded` are words for the line that the fields are folded into; `filled` is called whenever the list was drawn.
function entryList({ title, name, entries, fields, faultsOf, wordsOf, made = (entry) => entry, fresh = {}, folded = "", filled = () => {} }) {
  const list = make("ul", { class: "entries" });
  const add = button("Add", () => {
    const entry = Object.fromEntries(Object.entries(fields).map(([key, field]) => [key, field.text()]));
    if (!markFaults(fields, faultsOf(entry))) return;
    entries().push(made(entry));
    keepNow();
    fill();
    notesView.rewrite();
    announce(`${title}: ${wordsOf(made(entry))}`);
    for (const [key, field] of Object.entries(fields)) if (field.input.tagName !== "SELECT") field.put(fresh[key] || "");
  }, "main");
  function fill() {
    list.replaceChildren(...entries().map((entry) => make("li", {}, make("span", { class: "words" }, wordsOf(entry)), takeOut(entry))));
    list.hidden = !entries().length;
    filled();
  }
  function takeOut(entry) {
    return twiceButton("Take out", "Tap again", () => {
      bank.kept.notes[name] = entries().filter((one) => one !== entry);
      keepNow();
      fill();
      notesView.rewrite();
      add.focus();
    }, "quiet");
  }
  fill();
  const nodes = Object.values(fields).map((field) => field.node);
  // What was typed and not added.
  const waiting = () => Object.entries(fields).some(([key, field]) => field.input.tagName !== "SELECT" && field.text() !== (fresh[key] || ""));
  const node = make("div", { class: "part" }, make("h3", {}, title), list, foldedFields(folded, make("div", { class: "pair" }, ...nodes), add));
  return { waiting: () => (waiting() ? `${title}: what stands in the fields is not added yet. Tap Add, or empty them` : null), node, fill };
}

function foldedFields(words, ...nodes) {
  if (!words) return make("div", { class: "question" }, ...nodes);
  const folded = foldedLine();
  folded.tell(words);
  folded.body.append(...nodes);
  return folded.node;
}

// Puts each fault beside its field, and the focus on the first. True where there is none.
function markFaults(fields, faults) {
  const wrong = Object.keys(fields).filter((key) => faults[key]);
  for (const [key, field] of Object.entries(fields)) field.fault(faults[key] || null);
  if (!wrong.length) return true;
  fields[wrong[0]].input.focus();
  announce(faults[wrong[0]].message);
  return false;
}

// What the engine says of an amount; null where it can read it, or where nothing was typed.
function faultOf(amount, flag) {
  if (!amount) return null;
  const mixes = bank.library.mixes;
  if (!mixes.length) return null;
  const reply = askEngine({ ask: "mix", words: [mixes[0].name], flags: { [flag]: [amount] }, give: ["json"] });
  const fault = (reply.errors || []).find((error) => error.field === flag || error.message.startsWith(flag));
  return fault ? { message: fault.message.replace(flag, "").replace(/^:? */, ""), hint: fault.hint } : null;
}

function faultOfMass(amount) {
  return faultOf(amount, "--dry-mass");
}

function faultOfVolume(amount) {
  return faultOf(amount, "--wet-volume");
}

function faultOfTemperature(amount) {
  return faultOf(amount, "--water-temp");
}

function faultOfLength(amount) {
  const reply = amount ? askEngine({ ask: "cost", words: [bank.strategy.name], flags: { "--length": [amount] }, give: ["json"] }) : {};
  const fault = (reply.errors || []).find((error) => error.field === "--length" || error.message.startsWith("--length"));
  return fault ? { message: fault.message.replace(/^--length:? */, ""), hint: fault.hint } : null;
}

// A mass or a volume.
function faultOfAmount(amount) {
  return faultOfMass(amount) && faultOfVolume(amount);
}
