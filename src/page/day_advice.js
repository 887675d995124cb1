"use strict";

// Advice as it is told; below each strategy, a tap that opens it.

const placeInOrder = /^[1-9]$/;

function adviceView(fields) {
  const box = answerBox({ fields });
  const list = make("div", { class: "advised" });
  const rest = toldView();
  function show(reply) {
    const pieces = reply.told || [];
    const from = pieces.findIndex((piece) => piece.kind === "heading");
    const to = pieces.findIndex((piece, at) => at > from && piece.kind === "heading");
    const good = box.show({ ...reply, told: pieces.slice(0, from) });
    list.classList.toggle("stale", !good);
    rest.node.classList.toggle("stale", !good);
    if (!good) return;
    list.replaceChildren(make("h4", { class: "heading" }, pieces[from].text), ...strategyBlocks(pieces.slice(from + 1, to), reply.json.strategies));
    rest.tell(pieces.slice(to));
  }
  return { node: make("div", {}, box.node, list, rest.node), show };
}

// One block a strategy: its first entry begins with its place in the order.
function strategyBlocks(entries, strategies) {
  const blocks = [];
  for (const entry of entries) {
    if (placeInOrder.test(entry.label)) blocks.push([]);
    if (blocks.length) blocks[blocks.length - 1].push(entry);
  }
  return blocks.map((block, at) => {
    const told = toldView();
    told.tell(block);
    return make("div", { class: "block" }, told.node, openingOf(strategies[at].name));
  });
}

function openingOf(name) {
  if (name === bank.strategy.name) return make("p", { class: "hint" }, "It is open now.");
  return make("p", {}, button(`Open ${name}`, () => openAnyStrategy(name, "mix"), "quiet"));
}
