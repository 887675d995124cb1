"use strict";

// A drop as it is shown: what to expect and how sure at the top, then the picture; all else folds away below the other ways in.

const shownOfDrop = new Set(["How sure", "Mind", "Take care"]);

function leadsDrop(piece) {
  return piece.kind === "title" || piece.kind === "say" || shownOfDrop.has(piece.label);
}

// {node, more, show(reply)}: `more` is the rest, folded.
function dropAnswer(fields) {
  const box = answerBox({ fields });
  box.node.classList.add("drop");
  const picture = pictureView();
  const rest = toldView();
  const more = make("details", { class: "more" }, make("summary", {}, "All of it, part by part"), rest.node);
  function show(reply) {
    const pieces = reply.told || [];
    const good = box.show({ ...reply, told: pieces.filter(leadsDrop) });
    picture.show(good ? reply.picture : null, good);
    rest.node.classList.toggle("stale", !good);
    if (good) rest.tell(pieces.filter((piece) => !leadsDrop(piece)));
  }
  return { node: make("div", {}, box.node, picture.node), more, show };
}

// Where it breaks, when half is down and how wide it lies, each way in on a line, in the sizes that stand in its fields.
const besideColumns = ["breaks", "half down", "patch"];

function besideView(kept) {
  const told = toldView();
  const hint = make("p", { class: "hint" });
  const node = make("div", { class: "beside", hidden: true }, make("h4", { class: "heading" }, "Side by side"), told.node, hint);
  let waiting = 0;
  function ask() {
    const sizes = Object.fromEntries(Object.keys(dropForms).map((name) => [`--${name}`, kept[name]]));
    const reply = askEngine({ ask: "drop", words: [kept.of], flags: flagsOf({ ...waterFlags(kept), ...sizes, "--squeeze": kept.squeeze, "--compare": "forms" }), give: ["told"] });
    const table = (reply.told || []).find((piece) => piece.kind === "table");
    node.hidden = !table || !table.rows[0].includes(besideColumns[0]);
    const seen = Object.values(lookFlags(kept)).some(Boolean);
    setText(hint, `${seen ? "Without what you saw yourself. " : ""}The order is surer than the numbers.`);
    if (!node.hidden) told.tell([withColumns(table, besideColumns), ...reply.told.filter((piece) => piece.label === "Mind")]);
  }
  // Several answers at once: after the one that is looked at, and once the typing has stopped.
  function soon() {
    clearTimeout(waiting);
    waiting = setTimeout(ask, 150);
  }
  bank.ticking.push(() => clearTimeout(waiting));
  return { node, soon };
}
