"use strict";

// A question put to the engine, and its answer on the screen.

// Flags without a value are left out, so that the engine's own defaults hold.
function flagsOf(values) {
  const flags = {};
  for (const [flag, value] of Object.entries(values)) {
    const texts = (Array.isArray(value) ? value : [value]).filter((text) => text !== "" && text !== null && text !== undefined);
    if (texts.length) flags[flag] = texts.map(String);
  }
  return flags;
}

// What the person always uses, for a plan: the page was made with it.
function usualOfPlan() {
  const always = bank.data.always || {};
  return { "--water-temp": always.water_temp, "--pump": always.pump, "--vessel": always.vessel };
}

function askEngine(question) {
  if (!bank.engine) return knownReply(question);
  try {
    return bank.engine.ask(question);
  } catch (mishap) {
    return { errors: [{ code: "engine", message: `this could not be worked out (${mishap.message})`, hint: "close the page and open it again" }] };
  }
}

function wordsOfFault(error) {
  return error.hint ? `${error.message}; ${error.hint}` : error.message;
}

// "--depth: no number" belongs to the field that gave --depth, and is shown there without the flag. `fields` are by flag, or
// by the name that the message begins with.
function placeFaults(errors, fields) {
  for (const field of new Set(Object.values(fields))) field.fault(null);
  const homeless = [];
  for (const error of errors) {
    const name = Object.keys(fields).find((one) => error.message.startsWith(`${one}: `));
    if (name) fields[name].fault({ message: error.message.slice(name.length + 2), hint: error.hint });
    else homeless.push(error);
  }
  return homeless;
}

// The last good answer stays, greyed, while the question has faults.
function answerBox({ fields = {}, first = "" } = {}) {
  const faults = make("div", { class: "faults", hidden: true });
  const told = toldView(first);
  const before = make("p", { class: "hint", hidden: true }, "From before the mistake:");
  const node = make("div", { class: "answer" }, faults, before, told.node);
  function show(reply) {
    if (reply.waiting) return false;
    const homeless = placeFaults(reply.errors || [], fields);
    faults.hidden = !homeless.length;
    faults.replaceChildren(...homeless.map((error) => make("p", { class: "fault" }, wordsOfFault(error))));
    node.classList.toggle("stale", Boolean(reply.errors));
    before.hidden = !reply.errors || !told.node.firstChild;
    if (reply.errors) {
      announce(reply.errors[0].message);
      return false;
    }
    told.tell(reply.told);
    announce(spokenOf(reply.told));
    return true;
  }
  function clear() {
    placeFaults([], fields);
    faults.hidden = true;
    node.classList.remove("stale");
    before.hidden = true;
    told.tell([]);
  }
  return { node, show, clear };
}
