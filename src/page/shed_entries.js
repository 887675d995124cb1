"use strict";

// What came into the shed and went out of it, as the person says. What lies there is worked out by the engine.

sharedShapes.shed = listShape(recordShape({
  what: wordShape(["buy", "use", "waste", "count"], ""), of: textShape(), amount: textShape(), price: textShape(), shop: textShape(), on: textShape(), by: textShape(),
}), ["what", "of", "amount", "on"]);

const shedWords = { buy: "bought", use: "used", waste: "thrown out", count: "counted" };

// What the program has taken in before this page was made lies in its shed already.
function isHome(entry) {
  return (bank.data.taken_home || []).includes(entry.id);
}

function shedToTell() {
  return bank.shared.shed.filter((entry) => !isHome(entry));
}

function shedRequest(entries = shedToTell(), give = ["told", "json"]) {
  return { ask: "shed", entries: entries.map(({ what, of, amount, price, shop, on }) => ({ what, of, amount, price, shop, on })), give };
}

ownRequests.shed = () => (bank.shared.shed.length ? [shedRequest(shedToTell(), [])] : []);

function freshEntry(what, of, amount, more = {}) {
  return { what, of, amount, price: "", shop: "", on: dateOf(Date.now()), by: "", ...more };
}

// Keeps those that the shed takes. Gives what was refused: {entry, error}.
function enterInShed(entries) {
  const before = shedToTell();
  const reply = askEngine(shedRequest([...before, ...entries]));
  if (reply.errors) return entries.map((entry) => ({ entry, error: reply.errors[0] }));
  const refused = (reply.refused || []).filter((one) => one.entry >= before.length).map((error) => ({ entry: entries[error.entry - before.length], error }));
  const taken = entries.filter((entry) => !refused.some((one) => one.entry === entry));
  bank.shared.shed.push(...taken);
  keepNow();
  return refused;
}

function takeOutOfShed(entries) {
  bank.shared.shed = bank.shared.shed.filter((entry) => !entries.includes(entry));
  keepNow();
}

function wordsOfEntry(entry) {
  const price = entry.price ? ` at ${entry.price}` : "";
  return `${dayOf(entry.on)}: ${shedWords[entry.what]} ${entry.amount === "none" ? "none" : entry.amount} ${entry.of}${price}${isHome(entry) ? ", taken home" : ""}`;
}

const monthNames = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

// "28 Nov", of an ISO date.
function dayOf(date) {
  const found = /^[0-9]{4}-([0-9]{2})-([0-9]{2})$/.exec(date);
  return found && monthNames[Number(found[1]) - 1] ? `${Number(found[2])} ${monthNames[Number(found[1]) - 1]}` : date;
}
