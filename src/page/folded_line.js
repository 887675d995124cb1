"use strict";

// Fields folded into one line that says the values standing in them, and opens. A fault in one of them opens it (fields.js).

function foldedLine(label = "") {
  const words = make("span", { class: "words" });
  const summary = make("summary", {}, label ? make("span", { class: "unseen" }, `${label}: `) : null, words);
  const body = make("div", { class: "question" });
  const node = make("details", { class: "folded" }, summary, body);
  return {
    node,
    body,
    tell: (text) => setText(words, text),
    open: () => { node.open = true; },
  };
}
