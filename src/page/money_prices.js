"use strict";

// Prices of one's own: what a pack costs where one buys. They hold for all strategies, from then on.

ownRequests.prices = () => bank.shared.prices.map(priceQuestion);

function priceQuestion({ of, pack, price, shop, on }) {
  const told = Object.entries({ of, pack, price, shop, on }).filter(([, text]) => text);
  return { ask: "price", ...Object.fromEntries(told) };
}

// What the session takes, for these prices are wanted first.
function namesToPrice(kept) {
  const reply = askEngine({ ask: "cost", words: [bank.strategy.name], flags: flagsOf({ "--people": kept.people, "--length": kept.length }), give: ["json"] });
  return reply.json ? reply.json.strategies.flatMap((strategy) => strategy.ingredients.map((line) => line.name)) : [];
}

function pricesView(kept) {
  const names = make("datalist", { id: newId("names") }, ...namesToPrice(kept).map((name) => make("option", { value: name })));
  const fields = {
    of: textField({ label: "Of", list: names.id }),
    pack: textField({ label: "A pack of" }),
    price: textField({ label: "Costs" }),
    shop: textField({ label: "Where" }),
  };
  const box = answerBox({ fields: { "--pack": fields.pack, "--is": fields.price, "--shop": fields.shop } });
  const add = button("Keep this price", () => {
    const entry = { ...Object.fromEntries(Object.entries(fields).map(([name, field]) => [name, field.text()])), on: dateOf(Date.now()) };
    fields.of.fault(entry.of ? null : { message: "Which ingredient", hint: "as it stands in the weigh list" });
    if (!entry.of) return;
    const reply = askEngine(priceQuestion(entry));
    if (box.show(reply)) keepPrice(entry, spokenOf(reply.told));
  }, "main");
  const list = make("ul", { class: "entries" }, ...bank.shared.prices.map(priceLine));
  const node = make("div", {}, make("p", { class: "hint" }, "What you pay counts from then on, in all that is reckoned here."),
    make("div", { class: "question" }, names, fields.of.node, make("div", { class: "pair" }, fields.pack.node, fields.price.node, fields.shop.node)),
    make("p", { class: "after" }, add), box.node, list);
  return { node, ask: () => {} };
}

function priceLine(entry) {
  const { of, pack, price, shop } = entry;
  const words = [`${of}, ${[pack, price].filter(Boolean).join(" ")}`, shop].filter(Boolean).join(", ");
  const out = twiceButton("Take out", "Tap again", () => usePrices(bank.shared.prices.filter((one) => one !== entry), "That price is taken out."), "quiet");
  return make("li", {}, make("span", { class: "words" }, words), out);
}

// In place of an older one of the same pack at the same shop.
function keepPrice(entry, words) {
  const same = (one) => ["of", "pack", "shop"].every((name) => one[name] === entry[name]);
  usePrices([...bank.shared.prices.filter((one) => !same(one)), entry], words);
}

// All that was worked out before hangs on them, and is built anew.
function usePrices(prices, words) {
  bank.shared.prices = prices;
  keepNow();
  clearPlaces();
  showPlace("money");
  notice(words);
}
