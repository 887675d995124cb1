"use strict";

// Shows told pieces in their order, word for word: what to do first, large; how sure, smaller. Where a new answer has the shape of the
// last one, only texts change.

const loudLabels = new Set(["Mind", "Take care", "First", "Breach", "Venue"]);
const softLabels = new Set(["How sure", "Why", "Sources"]);

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

// Of the line that leads, what says how sure it is ("(9 times in 10: 310 to 530 ml)") stands smaller behind it.
function lineView(piece) {
  const label = piece.label || "";
  const text = make("span");
  const sure = piece.leads ? make("span", { class: "how-sure" }) : null;
  const kind = loudLabels.has(label) ? "line loud" : softLabels.has(label) ? "line soft" : "line";
  const node = make("p", { class: piece.leads ? `${kind} first` : kind });
  if (label) node.append(make("b", {}, label), " ");
  node.append(...[text, sure].filter(Boolean));
  return {
    node,
    tell: (next) => {
      const words = next.text || "";
      const split = sure && words.endsWith(").") ? words.lastIndexOf(" (") : -1;
      setText(text, split > 0 ? words.slice(0, split) : words);
      if (sure) setText(sure, split > 0 ? words.slice(split) : "");
    },
  };
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
  return `${piece.kind} ${piece.cells ? piece.cells.length : 0} ${words} ${piece.leads ? "leads" : ""}`;
}

// What is labelled so goes right below the title, the rest of its words with it; all else keeps its order.
function hoisted(pieces, label) {
  const at = pieces.findIndex((piece) => piece.label && [label].flat().includes(piece.label));
  if (at < 0) return pieces;
  const titles = pieces.filter((piece) => piece.kind === "title").slice(0, 1);
  return [...titles, { ...pieces[at], leads: true }, ...pieces.filter((piece, other) => other !== at && !titles.includes(piece))];
}

// A table without the columns that have these heads; what they say stands in another place.
function withoutColumns(piece, heads) {
  if (piece.kind !== "table" || !heads.length) return piece;
  const kept = piece.columns.map((_, at) => at).filter((at) => !heads.includes((piece.rows[0][at] || "").trim()));
  return { ...piece, columns: kept.map((at) => piece.columns[at]), rows: piece.rows.map((row) => (row.length ? kept.filter((at) => at < row.length).map((at) => row[at]) : row)) };
}

// `first` is the label of the piece (or several: the first of them that there is) that says what to do; `without` the heads of columns that are left out.
function toldView({ first = "", without = [] } = {}) {
  const node = make("div", { class: "told" });
  let shown = [];
  function tell(pieces) {
    const next = hoisted(pieces, first).filter((piece) => pieceViews[piece.kind]).map((piece) => withoutColumns(piece, without));
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
