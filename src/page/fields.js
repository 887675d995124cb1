"use strict";

// Fields of a question. Each is {node, input, text(), put(text), fault(error)}; a fault stands beside its field.

function withFaults(field) {
  const line = make("p", { class: "fault", id: newId("fault"), hidden: true });
  field.node.append(line);
  field.fault = (error) => {
    line.hidden = !error;
    if (error) {
      for (let fold = field.node.closest("details"); fold; fold = fold.parentElement.closest("details")) fold.open = true;
      setText(line, wordsOfFault(error));
      field.input.setAttribute("aria-invalid", "true");
      field.input.setAttribute("aria-describedby", line.id);
    } else {
      field.input.removeAttribute("aria-invalid");
      field.input.removeAttribute("aria-describedby");
    }
  };
  return field;
}

// Free words.
function textField({ label, text = "", changed = () => {}, list = null, long = false }) {
  const id = newId("text");
  const input = make(long ? "textarea" : "input", { id, autocomplete: "off", autocapitalize: "off", list, rows: long ? 4 : null, maxlength: longestText, input: () => changed() });
  input.value = text;
  return withFaults({
    node: make("div", { class: "field" }, make("label", { for: id }, label), input),
    input,
    text: () => input.value.trim(),
    put: (words) => { input.value = words; },
  });
}

// The same number moved to the next whole step.
function stepped(number, { direction, step, least }) {
  const steps = number / step;
  const near = Math.abs(steps - Math.round(steps)) < 1e-6 ? Math.round(steps) + direction : direction > 0 ? Math.ceil(steps) : Math.floor(steps);
  return String(Number(Math.max(least, near * step).toFixed(3)));
}

// The units that an amount can be given in, as words to tap; one unit alone is only said.
function unitStrip(changed) {
  const node = make("div", { class: "strip units", role: "radiogroup" });
  let inputs = [];
  let alone = "";
  let offered = "";
  function offer(label, units, unit) {
    if (offered === [label, ...units].join()) return;
    offered = [label, ...units].join();
    const name = newId("unit");
    node.setAttribute("aria-label", `Unit: ${label}`);
    alone = units.length > 1 ? "" : units[0] || "";
    inputs = units.length > 1 ? units.map((one) => make("input", { type: "radio", id: newId("pick"), name, value: one, change: () => changed() })) : [];
    node.replaceChildren(...(inputs.length ? inputs.map((input) => make("span", {}, input, make("label", { for: input.id }, input.value))) : [alone]));
    node.hidden = !units.length;
    if (inputs.length) node.setAttribute("role", "radiogroup");
    else node.removeAttribute("role");
    if (!inputs.length) node.removeAttribute("aria-label");
    pick(unit);
  }
  function pick(unit) {
    for (const input of inputs) input.checked = input.value === unit;
  }
  return { node, offer, pick, unit: () => (inputs.find((input) => input.checked) || { value: alone }).value };
}

// An amount: a number, the unit it is in, and steps of that unit for wet fingers. A text such as "2 lb" is taken too; what is no
// number with a unit of the field stays as it was typed, for the engine to judge. `adapt` makes it a field of another amount.
function amountField({ label, text = "", unit = "", units = null, step = 0, least = 0, fresh = "", steps = true, changed = () => {} }) {
  const id = newId("amount");
  const input = make("input", { id, autocomplete: "off", autocapitalize: "off", spellcheck: "false", enterkeyhint: "done", input: () => { takeUnit(); changed(); }, change: () => field.put(field.text()) });
  const name = make("label", { for: id }, label);
  const now = { unit, units, step, least, fresh };
  const strip = unitStrip(() => changed());
  const stepOf = (one) => (one === now.unit && now.step) || unitSteps[one] || now.step || 1;
  const move = (direction) => () => {
    const parts = partsOfAmount(input.value);
    const one = strip.unit();
    if (parts) input.value = stepped(Number(parts.number), { direction, step: stepOf(one), least: one === now.unit ? now.least : 0 });
    else field.put(usualAmount(now.fresh) || String(now.least || stepOf(one)));
    changed();
  };
  const less = make("button", { type: "button", "aria-label": `Less: ${label}`, click: move(-1) }, "\u2212");
  const more = make("button", { type: "button", "aria-label": `More: ${label}`, click: move(1) }, "+");
  const knows = (one) => (now.units || unitsWith(now.unit)).includes(one);
  // What is typed after the number is seen at once; it leaves the number's line when the field is left.
  function takeUnit() {
    const parts = partsOfAmount(input.value);
    if (parts && knows(parts.unit)) strip.pick(parts.unit);
    return parts && (!parts.unit || knows(parts.unit)) ? parts : null;
  }
  const field = {
    node: make("div", { class: "field amount-field" }, name, make("div", { class: "amount-line" }, steps ? make("div", { class: "stepper" }, less, input, more) : input, strip.node)),
    input,
    text: () => {
      const parts = partsOfAmount(input.value);
      if (!parts) return input.value.trim();
      return `${parts.number} ${parts.unit || strip.unit()}`.trim();
    },
    unit: () => strip.unit(),
    put: (words) => {
      input.value = words;
      const parts = takeUnit();
      if (parts) input.value = parts.number;
    },
    adapt: (next) => {
      Object.assign(now, next);
      setText(name, next.label);
      less.setAttribute("aria-label", `Less: ${next.label}`);
      more.setAttribute("aria-label", `More: ${next.label}`);
      input.setAttribute("inputmode", now.unit ? "decimal" : "numeric");
      strip.offer(next.label, now.units || unitsWith(now.unit), firstUnit(now.unit));
      field.put(input.value);
    },
  };
  field.adapt({ label });
  field.put(text);
  return withFaults(field);
}

function optionsOf(choices) {
  return choices.map((choice) => choice.group
    ? make("optgroup", { label: choice.group }, ...optionsOf(choice.choices))
    : make("option", { value: choice.value }, choice.text));
}

// One of many, by the phone's own list. Choices are {value, text} or {group, choices}.
function selectField({ label, choices, value = "", changed = () => {} }) {
  const id = newId("choice");
  const input = make("select", { id, change: () => changed() });
  const field = withFaults({
    node: make("div", { class: "field" }, make("label", { for: id }, label), input),
    input,
    text: () => input.value,
    put: (words) => { input.value = words; },
    offer: (offered, kept) => {
      input.replaceChildren(...optionsOf(offered));
      input.value = kept;
      if (input.selectedIndex < 0) input.selectedIndex = 0;
    },
  });
  field.offer(choices, value);
  return field;
}

// One of a few, all in sight. A plain one speaks for itself; its label is for screen readers.
function stripField({ label, choices, value, changed = () => {}, plain = false }) {
  const name = newId("strip");
  const inputs = choices.map((choice) => make("input", { type: "radio", id: newId("pick"), name, value: choice.value, change: () => changed() }));
  const strip = make("div", { class: "strip" });
  inputs.forEach((input, at) => {
    input.checked = choices[at].value === value;
    strip.append(make("span", {}, input, make("label", { for: input.id }, choices[at].text)));
  });
  return {
    node: make("fieldset", {}, make("legend", { class: plain ? "unseen" : null }, label), strip),
    input: inputs[0],
    text: () => (inputs.find((input) => input.checked) || inputs[0]).value,
    put: (words) => inputs.forEach((input) => { input.checked = input.value === words; }),
    fault: () => {},
  };
}
