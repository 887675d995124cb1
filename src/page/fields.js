"use strict";

// Fields of a question. Each is {node, input, text(), put(text), fault(error)}; a fault stands beside its field.

function withFaults(field) {
  const line = make("p", { class: "fault", id: newId("fault"), hidden: true });
  field.node.append(line);
  field.fault = (error) => {
    line.hidden = !error;
    if (error) {
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

// A bare number is meant in the field's own unit: "3" is "3 l".
function withUnit(text, unit) {
  return unit && /^[0-9]+([.][0-9]+)?$/.test(text) ? `${text} ${unit}` : text;
}

// The same text with its number moved by a step; what does not begin with a number starts anew.
function stepped(text, { by, least, fresh }) {
  const found = /^([0-9]*[.]?[0-9]+)(.*)$/.exec(text);
  if (!found) return fresh;
  const moved = Math.max(least, Number(found[1]) + by);
  return `${Number(moved.toFixed(3))}${found[2]}`;
}

// An amount as a person writes it, with a step down and a step up for wet fingers. `adapt` gives it another unit.
function amountField({ label, text = "", unit = "", step = 1, least = 0, fresh = "", steps = true, changed = () => {} }) {
  const id = newId("amount");
  const input = make("input", { id, autocomplete: "off", autocapitalize: "off", spellcheck: "false", input: () => changed() });
  const name = make("label", { for: id }, label);
  const now = { unit, step, least, fresh };
  const move = (direction) => () => {
    input.value = stepped(field.text(), { by: direction * now.step, least: now.least, fresh: now.fresh || withUnit(String(now.least || now.step), now.unit) });
    changed();
  };
  const less = make("button", { type: "button", "aria-label": `Less: ${label}`, click: move(-1) }, "\u2212");
  const more = make("button", { type: "button", "aria-label": `More: ${label}`, click: move(1) }, "+");
  const field = {
    node: make("div", { class: "field" }, name, steps ? make("div", { class: "stepper" }, less, input, more) : input),
    input,
    text: () => withUnit(input.value.trim(), now.unit),
    put: (words) => { input.value = words; },
    adapt: (next) => {
      Object.assign(now, next);
      setText(name, next.label);
      less.setAttribute("aria-label", `Less: ${next.label}`);
      more.setAttribute("aria-label", `More: ${next.label}`);
      input.setAttribute("inputmode", now.unit ? "text" : "numeric");
    },
  };
  input.value = text;
  field.adapt({ label });
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
