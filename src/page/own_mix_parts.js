"use strict";

// The parts of a mix that is being made: each with its amount, a way out, and what is known of one's own bag of it.

function partRows(draft, changed) {
  const node = make("div", { class: "rows" });
  let faulty = {};
  function rowOf(part, at) {
    const byMass = draft.by === "mass";
    const amount = amountField({
      label: part.of, text: byMass ? part.mass || part.volume : part.share, unit: byMass ? "g" : "", units: byMass ? ["g", "kg", "oz", "lb"] : null, fresh: byMass ? "100 g" : "1",
      changed: () => {
        Object.assign(part, { share: byMass ? "" : amount.text(), mass: byMass ? amount.text() : "", volume: "" });
        changed();
      },
    });
    faulty[`part ${at + 1}`] = amount;
    const bag = bank.library.ingredients.some((one) => one.name === part.of) ? bagLine(part.of) : null;
    return make("div", { class: "entry" }, make("div", { class: "part-line" }, amount.node, wayOut(part.of, () => { draft.parts = draft.parts.filter((one) => one !== part); })), bag);
  }
  function doseRow(dose, at) {
    const amount = textField({ label: dose.of, text: dose.amount, changed: () => {
      dose.amount = amount.text();
      changed();
    } });
    faulty[`dose ${at + 1}`] = amount;
    return make("div", { class: "entry" }, make("div", { class: "part-line" }, amount.node, wayOut(dose.of, () => { draft.doses = draft.doses.filter((one) => one !== dose); })));
  }
  function wayOut(of, take) {
    return make("button", { type: "button", class: "quiet", "aria-label": `Leave out ${of}`, click: () => {
      take();
      fill();
      changed();
    } }, "\u00d7");
  }
  function fill() {
    faulty = {};
    node.replaceChildren(...draft.parts.map(rowOf), ...draft.doses.map(doseRow));
  }
  fill();
  return { node, fill, faulty: () => faulty };
}
