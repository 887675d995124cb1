"use strict";

// The feels from the driest to the wettest: one is wanted, and below them stands which one the tub has now, and which it settles to.

function feelScale({ label, wanted, changed }) {
  const name = newId("feel");
  const cells = bank.library.feels.map((feel) => {
    const input = make("input", { type: "radio", id: newId("pick"), name, value: feel, change: () => changed() });
    input.checked = feel === wanted;
    const mark = make("span", { class: "mark" });
    return { feel, input, mark, node: make("span", {}, input, make("label", { for: input.id }, feel), mark) };
  });
  // The words of the answer say the same, so the marks are for eyes alone.
  for (const cell of cells) cell.mark.setAttribute("aria-hidden", "true");
  function markOf(feel, { now, settled }) {
    if (feel === now) return "now";
    return feel === settled ? "settled" : "";
  }
  return {
    node: make("fieldset", { class: "feels" }, make("legend", {}, label), make("div", { class: "strip" }, ...cells.map((cell) => cell.node))),
    text: () => (cells.find((cell) => cell.input.checked) || { feel: "" }).feel,
    put: (feel) => { for (const cell of cells) cell.input.checked = cell.feel === feel; },
    mark: (found) => {
      for (const cell of cells) {
        const words = markOf(cell.feel, found);
        setText(cell.mark, words);
        cell.node.classList.toggle("marked", Boolean(words));
      }
    },
    fault: () => {},
  };
}
