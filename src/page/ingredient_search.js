"use strict";

// Finds an ingredient, or a mix to put into another, by any words of its name or kind. Rows for a wet thumb.

const mostFound = 40;

function ingredientSearch(chosen) {
  const field = textField({ label: "Find by words", changed: find });
  const list = make("ul", { class: "ways" });
  const more = make("p", { class: "hint" });
  const all = [...bank.library.ingredients, ...bank.library.mixes.map(({ name }) => ({ name, kind: "mix" }))];
  function find() {
    const words = field.text().toLowerCase().split(/\s+/).filter(Boolean);
    const found = all.filter(({ name, kind }) => words.every((word) => `${name} ${kind}`.toLowerCase().includes(word)));
    if (words.length) found.sort((one, other) => one.name.length - other.name.length);  // the nearest first
    list.replaceChildren(...found.slice(0, mostFound).map(rowOf));
    setText(more, found.length ? (found.length > mostFound ? `${found.length - mostFound} more: say another word.` : "") : "Nothing has all of these words in its name.");
  }
  function rowOf({ name, kind }) {
    return make("li", {}, make("button", { type: "button", class: "way", click: () => chosen(name) }, name, make("span", { class: "state" }, ` ${kind}`)));
  }
  find();
  return { node: make("div", {}, field.node, list, more), focus: () => field.input.focus() };
}
