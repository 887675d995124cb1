"use strict";

// Buy: what to get for the next session or more of them, shop by shop, with ticks that stay.

function buyView(kept) {
  const fields = {
    sessions: amountField({ label: "Sessions", text: kept.sessions, least: 1, fresh: "1", changed: take }),
    people: amountField({ label: "Anglers", text: kept.people, least: 1, changed: take }),
    every: amountField({ label: "One every", text: kept.every, unit: "d", step: 1, least: 1, fresh: "7 d", changed: take }),
    oneShop: selectField({ label: "Shops", choices: [{ value: "", text: "as many as it takes" }, { value: "yes", text: "one for all" }], value: kept.one_shop, changed: take }),
  };
  const folded = foldedLine();
  folded.body.append(make("div", { class: "pair" }, ...Object.values(fields).map((field) => field.node)));
  const box = shoppingBox(kept, { "--people": fields.people, "--every": fields.every, "--one-shop": fields.oneShop });
  const ask = oncePerFrame(() => {
    if (fields.people.text() !== kept.people) fields.people.put(kept.people);
    const times = wholeSessions(kept.sessions);
    fields.sessions.fault(times ? null : { message: "A whole number from 1 to 400" });
    if (times) box.show(askEngine({ ask: "shop", words: [`${bank.strategy.name}=${times}`], flags: buyFlags(kept, times) }));
    const [one, many] = ["session", "sessions"];
    folded.tell([countWords(kept.sessions, one, many), times > 1 && `one every ${kept.every}`, countWords(kept.people, "angler", "anglers"), kept.one_shop && "one shop"].filter(Boolean).join(", "));
  });
  function take() {
    kept.sessions = fields.sessions.text();
    kept.people = fields.people.text();
    kept.every = fields.every.text();
    kept.one_shop = fields.oneShop.text();
    keepSoon();
    ask();
  }
  return { node: make("div", {}, folded.node, box.node), ask };
}

function buyFlags(kept, times) {
  return flagsOf({ "--people": kept.people, "--every": times > 1 ? kept.every : "", "--one-shop": kept.one_shop ? true : "" });
}

// 0 where it is none. The times go into the strategy's word, where a slip could not be told from its name.
function wholeSessions(text) {
  const times = /^[0-9]{1,3}$/.test(text) ? Number(text) : 0;
  return times <= 400 ? times : 0;
}

const boxToTick = "[ ] ";

function isShoppingList(piece) {
  return piece.kind === "table" && piece.rows.length > 0 && piece.rows[0][0].startsWith(boxToTick);
}

// The told pieces in their order, but that what is to be bought can be ticked off.
function shoppingBox(kept, fields) {
  const box = answerBox({ fields });
  const lists = make("div", { class: "lists" });
  const rest = toldView();
  const clear = button("Take all ticks off", () => {
    kept.ticked = [];
    keepNow();
    lists.querySelectorAll("input").forEach((one) => { one.checked = false; });
  }, "quiet");
  function show(reply) {
    const pieces = reply.told || [];
    const from = pieces.findIndex((piece) => piece.kind === "heading");
    const to = pieces.findLastIndex(isShoppingList) + 1;
    const listed = to > 0 ? pieces.slice(from, to) : [];
    const good = box.show({ ...reply, told: pieces.slice(0, to > 0 ? from : 1) });
    lists.classList.toggle("stale", !good);
    rest.node.classList.toggle("stale", !good);
    if (!good) return;
    lists.replaceChildren(...listed.map((piece) => (isShoppingList(piece) ? tickedList(kept, piece) : make("h4", { class: "heading" }, piece.text))));
    if (listed.length) lists.append(make("p", { class: "after" }, clear));
    rest.tell(pieces.slice(to > 0 ? to : 1));
  }
  return { node: make("div", {}, box.node, lists, rest.node), show };
}

// Ticked stays ticked as long as it is the same packs of the same thing.
function tickedList(kept, piece) {
  const items = piece.rows.filter((row) => row.length).map(([name, packs, ...more]) => {
    const bare = name.slice(boxToTick.length);
    return { key: `${bare}, ${packs}`, words: [bare, packs, ...more] };
  });
  return tickList(items, {
    ticked: (key) => kept.ticked.includes(key),
    changed: (key, on) => {
      kept.ticked = on ? [...kept.ticked, key] : kept.ticked.filter((one) => one !== key);
      keepNow();
    },
  });
}
