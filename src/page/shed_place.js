"use strict";

// Shed: what is there, a line each, which opens to say what was bought, used or counted; what else came; and all that was said.

function shedPlace(section) {
  const list = make("div", { class: "shed" });
  const more = somethingElse(draw);
  const faults = make("p", { class: "fault", hidden: true });
  const empty = make("p", { class: "line" }, "Nothing is in the shed yet. Say below what you have.");
  const entries = make("ul", { class: "entries" });
  const said = foldedLine("What was said");
  const off = button("Take off what was fed today", () => takeOffToday(draw), "main");
  said.body.append(entries);
  section.append(empty, faults, list, more.node, said.node);
  dockOf("shed").append(off);
  function draw(open = "") {
    const reply = askEngine(shedRequest());
    faults.hidden = !reply.errors;
    setText(faults, reply.errors ? wordsOfFault(reply.errors[0]) : "");
    const items = reply.errors ? [] : itemsOfShed(reply);
    empty.hidden = Boolean(reply.errors) || items.length > 0;
    if (!empty.hidden) more.node.open = true;
    list.replaceChildren(...items.map((item) => shedLine(item, draw, item.name === open)));
    more.offer(items.map((item) => item.name));
    off.hidden = !mayBeTakenOff();
    said.tell(entriesWords());
    said.node.hidden = !bank.shared.shed.length;
    entries.replaceChildren(...entriesNewestFirst(reply.refused || [], draw));
  }
  draw();
  whenShown("shed", () => draw());
}

// The engine's rows, under the thing they are of: one for each lot, below one for all of them where there are several.
function itemsOfShed({ json, told }) {
  const table = told.find((piece) => piece.kind === "table");
  const rows = table ? table.rows.slice(1).filter((row) => row.length) : [];
  const [, ...heads] = table ? table.rows[0] : [""];
  let at = 0;
  return json.items.map((item) => {
    const number = item.lots.length > 1 ? item.lots.length + 1 : item.lots.length;
    const those = rows.slice(at, at + number);
    at += number;
    const lots = those.slice(-item.lots.length).map(([, , ...cells]) => cells.map((cell, column) => [heads[column + 1], cell.trim()]));
    return { name: item.name, mix: item.kind === "mix", left: those.length ? those[0][1].trim() : "", lots };
  });
}

function wordsOfLot(lot) {
  return lot.filter(([head, words]) => words && ["kept", "best before"].includes(head)).map(([head, words]) => (head === "kept" ? words : `${head} ${words}`)).join(", ");
}

// One thing: how much is left, and what can be said of it in a tap more.
function shedLine(item, changed, open) {
  const summary = make("summary", {}, make("b", {}, item.name), " ", make("span", { class: "left" }, item.left),
    make("span", { class: "hint lots" }, [...new Set(item.lots.map(wordsOfLot))].join("; ")));
  const node = make("details", { class: "thing", open }, summary);
  // The fields are made when they are first wanted.
  const fill = () => { if (node.childElementCount === 1) node.append(shedFields(item.name, !item.mix, changed)); };
  node.addEventListener("toggle", () => { if (node.open) fill(); });
  if (open) fill();
  return node;
}

function lastAmount(of) {
  const before = bank.shared.shed.filter((entry) => entry.of === of && entry.amount !== "none");
  return before.length ? before[before.length - 1].amount : usualAmount("500 g");
}

function shedFields(of, canBuy, changed) {
  const amount = amountField({ label: "How much", text: lastAmount(of), unit: "g" });
  const price = textField({ label: "What a pack cost, if bought" });
  const enter = (what, text = amount.text()) => enterOne(freshEntry(what, of, text, what === "buy" ? { price: price.text() } : {}), { amount, price }, changed);
  const buttons = [canBuy ? button("Bought", () => enter("buy")) : null, button("Used", () => enter("use")), button("Counted", () => enter("count")), button("None left", () => enter("count", "none"))];
  return make("div", { class: "question" }, amount.node, make("div", { class: "buttons" }, ...buttons.filter(Boolean)), ...(canBuy ? [price.node] : []));
}

function enterOne(entry, fields, changed) {
  for (const field of Object.values(fields)) field.fault(null);
  if (!entry.amount) {
    fields.amount.fault({ message: "How much is it", hint: "such as 1 kg, 2x1 kg or 2 pt" });
    return;
  }
  const [refused] = enterInShed([entry]);
  if (refused) {
    const { field = "", message, hint } = refused.error;
    const at = field === "--price" ? fields.price : (["of", "--of"].includes(field) || /called|unknown/.test(refused.error.code)) && fields.of ? fields.of : fields.amount;
    at.fault({ message: message.replace(/^[A-Za-z-]+: /, ""), hint });
    announce(message);
    return;
  }
  const kept = bank.shared.shed[bank.shared.shed.length - 1];
  notice(wordsOfEntry(kept).replace(/^[^:]*: (.)/, (_, first) => first.toUpperCase()), { action: { text: "Take back", act: () => { takeOutOfShed([kept]); changed(); } } });
  changed(entry.of);
}

// What is not in the shed yet: found by its name among all that the page knows.
function somethingElse(changed) {
  const listId = newId("names");
  const names = make("datalist", { id: listId });
  const of = textField({ label: "What is it", list: listId });
  const amount = amountField({ label: "How much", text: usualAmount("1 kg"), unit: "g" });
  const price = textField({ label: "What a pack cost, if bought" });
  const folded = foldedLine();
  const enter = (what) => {
    if (!of.text()) {
      of.fault({ message: "What is it", hint: "begin to type its name" });
      return;
    }
    enterOne(freshEntry(what, of.text(), amount.text(), what === "buy" ? { price: price.text() } : {}), { of, amount, price }, (open) => {
      of.put("");
      folded.node.open = false;
      changed(open);
    });
  };
  folded.body.append(of.node, names, amount.node, make("div", { class: "buttons" }, button("Bought", () => enter("buy"), "main"), button("Counted", () => enter("count"))), price.node);
  return {
    node: folded.node,
    offer: (there) => {
      folded.tell(there.length ? "Something else" : "What you have");
      names.replaceChildren(...(bank.library.ingredients || []).map((one) => one.name).filter((name) => !there.includes(name)).map((name) => make("option", { value: name })));
    },
  };
}

function entriesWords() {
  const number = bank.shared.shed.length;
  return `${number} ${number === 1 ? "entry" : "entries"}: what was bought, used and counted`;
}

function entriesNewestFirst(refused, changed) {
  const told = shedToTell();
  return [...bank.shared.shed].reverse().map((entry) => {
    const fault = refused.find((one) => told[one.entry] === entry);
    return make("li", {}, make("span", { class: "words" }, wordsOfEntry(entry), fault ? make("span", { class: "fault" }, ` (${wordsOfFault(fault)})`) : null),
      twiceButton("Take out", "Tap again", () => { takeOutOfShed([entry]); changed(); }, "quiet"));
  });
}
