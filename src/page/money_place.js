"use strict";

// Money: what a session costs, strategies side by side, what to buy, and prices of one's own. One of them is in sight.

placeShapes.money = recordShape({
  view: wordShape(["cost", "compare", "buy", "prices"], "cost"), people: textShape(null), length: textShape(),
  sessions: textShape("1"), every: textShape("7 d"), one_shop: wordShape(["", "yes"], ""), compared: listShape(textShape()), ticked: listShape(textShape()),
});

const moneyViews = {
  cost: { label: "Cost", make: costView },
  compare: { label: "Compare", make: compareView },
  buy: { label: "Buy", make: buyView },
  prices: { label: "Prices", make: pricesView },
};

function moneyPlace(section) {
  const kept = bank.kept.money;
  if (kept.people === null) kept.people = String(bank.data.people || 1);
  const made = {};
  const strip = stripField({
    label: "What about money", choices: Object.entries(moneyViews).map(([value, one]) => ({ value, text: one.label })), value: kept.view, plain: true,
    changed: () => {
      kept.view = strip.text();
      keepSoon();
      show();
    },
  });
  // Asked anew whenever it comes into sight: a price may have changed meanwhile.
  function show() {
    if (!made[kept.view]) made[kept.view] = moneyViews[kept.view].make(kept);
    section.replaceChildren(made[kept.view].node);
    made[kept.view].ask();
  }
  dockOf("money").append(strip.node);
  show();
  whenShown("money", show);
}

function countWords(text, one, many) {
  return `${text || "1"} ${text === "1" || !text ? one : many}`;
}

// How many anglers, for how long: in a line that opens. Left as it is, a session is as long as its strategy says (`own`).
function costFields(kept, changed, own = "") {
  const people = amountField({ label: "Anglers", text: kept.people, least: 1, changed: take });
  const length = amountField({ label: own ? "How long" : "How long, if not as each says", unit: "h", step: 0.5, least: 0.5, fresh: "4 h", changed: take });
  const folded = foldedLine();
  folded.body.append(make("div", { class: "pair" }, people.node, length.node));
  function take() {
    kept.people = people.text();
    kept.length = length.text() === own ? "" : length.text();
    keepSoon();
    changed();
  }
  function tell(before = "") {
    const long = kept.length || own;
    if (people.text() !== kept.people) people.put(kept.people);
    if (length.text() !== long && document.activeElement !== length.input) length.put(long);
    folded.tell([before, countWords(kept.people, "angler", "anglers"), long].filter(Boolean).join(", "));
  }
  return { node: folded.node, body: folded.body, fields: { "--people": people, "--length": length }, tell, flags: () => ({ "--people": kept.people, "--length": kept.length }) };
}

// What is used stands first, for it is what a session costs; then what there is to pay, thing by thing.
function costView(kept) {
  const session = costFields(kept, () => ask(), lengthText(bank.strategy.length_minutes));
  const box = answerBox({ fields: session.fields });
  const ask = oncePerFrame(() => {
    const reply = askEngine({ ask: "cost", words: [bank.strategy.name], flags: flagsOf(session.flags()) });
    box.show(withFirst(reply, (piece) => piece.label === "Used"));
    session.tell();
  });
  return { node: make("div", {}, session.node, box.node), ask };
}

// A reply with these pieces right after its title.
function withFirst(reply, wanted) {
  if (!reply.told) return reply;
  const titles = reply.told.filter((piece) => piece.kind === "title");
  const rest = reply.told.filter((piece) => piece.kind !== "title");
  return { ...reply, told: [...titles, ...rest.filter(wanted), ...rest.filter((piece) => !wanted(piece))] };
}

// What counts of each strategy, and what may be looked up.
const comparedColumns = { first: ["used", "9 in 10", "to pay"], more: ["an hour", "dry", "water", "grains"] };

function comparedPieces(pieces, columns) {
  return pieces.map((piece) => (piece.kind === "table" ? withColumns(piece, columns) : piece));
}

// Two strategies or more, ticked: those of the page first, then all others.
function compareView(kept) {
  const names = [...new Set([...bank.library.strategies, ...bank.library.every].map((strategy) => strategy.name))];
  if (!kept.compared.length) kept.compared = [bank.strategy.name];
  const session = costFields(kept, () => ask());
  const box = answerBox({ fields: session.fields });
  const rest = toldView();
  const more = make("details", { class: "more", hidden: true }, make("summary", {}, "More of each"), rest.node);
  const hint = make("p", { class: "line" }, "Tick two or more in the line above.");
  const chosen = () => names.filter((name) => kept.compared.includes(name));
  session.body.prepend(tickList(names, {
    ticked: (name) => kept.compared.includes(name),
    changed: (name, on) => {
      kept.compared = on ? [...kept.compared, name] : kept.compared.filter((one) => one !== name);
      keepSoon();
      ask();
    },
  }));
  const ask = oncePerFrame(() => {
    const picked = chosen();
    session.tell(picked.join(", "));
    hint.hidden = picked.length > 1;
    if (picked.length < 2) {
      box.clear();
      more.hidden = true;
      rest.tell([]);
      return;
    }
    const reply = withFirst(askEngine({ ask: "compare", words: picked, flags: flagsOf(session.flags()) }), (piece) => piece.label === "Cheapest");
    const pieces = reply.told || [];
    const good = box.show({ ...reply, told: comparedPieces(pieces, comparedColumns.first) });
    more.hidden = !good;
    if (good) rest.tell(comparedPieces(pieces.filter((piece) => piece.kind === "table"), comparedColumns.more));
  });
  return { node: make("div", { class: "chosen" }, session.node, hint, box.node, more), ask };
}

// Each {key, words} on a line with a box to tick; a plain text is both.
function tickList(items, { ticked, changed }) {
  const rows = items.map((item) => {
    const { key, words } = typeof item === "string" ? { key: item, words: [item] } : item;
    const id = newId("tick");
    const box = make("input", { type: "checkbox", id, change: () => changed(key, box.checked) });
    box.checked = ticked(key);
    const [name, ...more] = words.filter(Boolean);
    return make("li", {}, box, make("label", { for: id }, make("span", { class: "words" }, name), ...more.map((word) => make("span", { class: "cell" }, word))));
  });
  return make("ul", { class: "ticks" }, ...rows);
}
