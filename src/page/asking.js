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
  return { ...always.plan, "--water-temp": always.water_temp, "--pump": always.pump, "--vessel": always.vessel };
}

function askEngine(question) {
  if (!bank.engine) return noEngineReply();
  try {
    tellOwnThings();
    return bank.engine.ask(question);
  } catch (mishap) {
    return { errors: [{ code: "engine", message: `this could not be worked out (${mishap.message})`, hint: "close the page and open it again" }] };
  }
}

function wordsOfFault(error) {
  return error.hint ? `${error.message}; ${error.hint}` : error.message;
}

// A fault belongs to the field that the engine names ("--depth"), or that its message begins with, and is shown there without
// the flag. `fields` are by flag, or by the name that the message begins with.
function placeFaults(errors, fields) {
  for (const field of new Set(Object.values(fields))) field.fault(null);
  const homeless = [];
  for (const error of errors) {
    const begun = Object.keys(fields).find((one) => error.message.startsWith(`${one}: `));
    const field = fields[error.field] || fields[begun];
    if (field) field.fault({ message: begun ? error.message.slice(begun.length + 2) : error.message, hint: error.hint });
    else homeless.push(error);
  }
  return homeless;
}

// The last good answer stays, greyed, while nothing new can be worked out. `ask` puts a question and shows what comes of it: the
// reply, or null; where a field of `needs` is empty it answers nothing.
function answerBox({ fields = {}, first = "", without = [] } = {}) {
  const faults = make("div", { class: "faults", hidden: true });
  const told = toldView({ first, without });
  const before = make("p", { class: "hint before", hidden: true }, "What stood before:");
  const node = make("div", { class: "answer" }, faults, before, told.node);
  function show(reply) {
    const homeless = placeFaults(reply.errors || [], fields);
    faults.hidden = !homeless.length;
    faults.replaceChildren(...homeless.map((error) => make("p", { class: "fault" }, wordsOfFault(error))));
    node.classList.toggle("stale", Boolean(reply.errors));
    before.hidden = !reply.errors || !told.node.firstChild;
    if (reply.errors) {
      announce(wordsOfFault(reply.errors[0]));
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
  function ask(question, needs = []) {
    if (needs.some((field) => !field.text())) {
      clear();
      return null;
    }
    const reply = askEngine(question);
    return show(reply) ? reply : null;
  }
  return { node, show, clear, ask };
}
