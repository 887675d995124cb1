"use strict";

// Shows told pieces in their order, word for word. Where a new answer has the shape of the last one, only texts change.

const loudLabels = new Set(["Mind", "Take care", "First"]);

// Each kind of piece: made once, then given its words.
const pieceViews = {
  title: () => plainView("h3", "title"),
  heading: () => plainView("h4", "heading"),
  say: () => plainView("p", "line"),
  line: lineView,
  entry: lineView,
  amounts: amountsView,
  row: rowView,
  step: stepView,
  table: tableView,
  as_written: () => plainView("pre", "as-written"),
};

function plainView(tag, kind) {
  const node = make(tag, { class: kind });
  return { node, tell: (piece) => setText(node, piece.text) };
}

function lineView(piece) {
  const label = piece.label || "";
  const text = make("span");
  const node = make("p", { class: loudLabels.has(label) ? "line loud" : "line" });
  if (label) node.append(make("b", {}, label), " ");
  node.append(text);
  return { node, tell: (next) => setText(text, next.text || "") };
}

function amountsView(piece) {
  const cells = piece.cells.map((_, at) => make("span", { class: at === 0 && piece.cells.length > 1 ? "amount big" : "amount" }));
  const node = make("p", { class: "amounts" }, make("b", {}, piece.label || ""));
  for (const cell of cells) node.append(" ", cell);
  return { node, tell: (next) => next.cells.forEach((words, at) => setText(cells[at], words)) };
}

function rowView(piece) {
  const cells = (piece.cells || []).map(() => make("span", { class: "cell" }));
  const text = make("span", { class: "words" });
  const node = make("p", { class: "row" });
  for (const cell of cells) node.append(cell, " ");
  node.append(text);
  return {
    node,
    tell: (next) => {
      cells.forEach((cell, at) => setText(cell, next.cells[at]));
      setText(text, next.text || "");
    },
  };
}

function stepView() {
  const number = make("b");
  const text = make("span", { class: "words" });
  return {
    node: make("p", { class: "step" }, number, " ", text),
    tell: (piece) => {
      setText(number, `${piece.label}.`);
      setText(text, piece.text);
    },
  };
}

// Pieces of the same shape can take each other's words.
function shapeOf(piece) {
  if (piece.kind === "table") return `table ${piece.columns.join()} ${piece.rows.map((row) => row.length).join()}`;
  const words = ["line", "entry", "amounts"].includes(piece.kind) ? piece.label || "" : "";
  return `${piece.kind} ${piece.cells ? piece.cells.length : 0} ${words}`;
}

// The amounts with this label go right below the title; all else keeps its order.
function hoisted(pieces, label) {
  if (!label) return pieces;
  const wanted = (piece) => piece.kind === "amounts" && piece.label === label;
  const titles = pieces.filter((piece) => piece.kind === "title").slice(0, 1);
  return [...titles, ...pieces.filter(wanted), ...pieces.filter((piece) => !wanted(piece) && !titles.includes(piece))];
}

function toldView(first = "") {
  const node = make("div", { class: "told" });
  let shown = [];
  function tell(pieces) {
    const next = hoisted(pieces, first).filter((piece) => pieceViews[piece.kind]);
    const views = next.map((piece, at) => {
      const shape = shapeOf(piece);
      const view = shown[at] && shown[at].shape === shape ? shown[at] : { shape, ...pieceViews[piece.kind](piece) };
      view.tell(piece);
      return view;
    });
    const kept = views.length === shown.length && views.every((view, at) => view === shown[at]);
    if (!kept) node.replaceChildren(...views.map((view) => view.node));
    shown = views;
  }
  return { node, tell };
}

// What a screen reader is told of an answer: its title and its first amounts, or its first line.
function spokenOf(pieces) {
  const title = pieces.find((piece) => piece.kind === "title");
  const gist = pieces.find((piece) => piece.kind === "amounts") || pieces.find((piece) => piece.kind === "line");
  const words = gist ? [gist.label, ...(gist.cells || []), gist.text] : [];
  return [title && title.text, words.filter(Boolean).join(" ")].filter(Boolean).join(". ");
}
