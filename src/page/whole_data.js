"use strict";

// All that the page keeps, of all its strategies: out as one file, back from one, and forgotten.

function wholeData() {
  keepNow();
  const strategies = {};
  for (const { name } of bank.library.strategies) {
    const raw = readStored(keyOf(name));
    if (raw !== null) strategies[name] = readKept(raw).kept;
  }
  if (!keeping.store) strategies[bank.strategy.name] = bank.kept;
  return { baitwright_bank: 1, page: bank.data.id, strategies, put_by: Object.fromEntries(keysPutBy().map((key) => [key, readStored(key)])) };
}

// What is wrong with a file that was to be brought back; empty where nothing is.
function faultOfWhole(given) {
  if (typeof given !== "object" || given === null || given.baitwright_bank !== 1 || typeof given.strategies !== "object" || given.strategies === null) return "That file is not the data of a bank page.";
  if (given.page !== bank.data.id) return "That file is of another page, so nothing was brought back.";
  if (!bank.library.strategies.some(({ name }) => Object.hasOwn(given.strategies, name))) return "That file holds nothing of this page's strategies.";
  return "";
}

// Puts back what the file holds; what stood there before is put by.
function bringBack(text) {
  let given = null;
  try {
    given = JSON.parse(text);
  } catch {
    given = null;
  }
  const fault = faultOfWhole(given);
  if (fault) {
    notice(fault);
    return;
  }
  keepNow();
  for (const { name } of bank.library.strategies) {
    if (!Object.hasOwn(given.strategies, name)) continue;
    const before = readStored(keyOf(name));
    const next = JSON.stringify(given.strategies[name]);
    if (before !== null && before !== next) setAside(name, before);
    if (keeping.store) writeStored(keyOf(name), next);
    else if (name === bank.strategy.name) bank.unkept = next;
  }
  openStrategy(bank.strategy.name, "notes");
  notice("The data of the file is back.");
}

function wholePart() {
  const id = newId("file");
  const file = make("input", {
    type: "file", id, accept: ".json,application/json",
    change: async () => {
      if (!file.files.length) return;
      const text = await file.files[0].text();
      file.value = "";
      bringBack(text);
    },
  });
  const out = button("Export all data", () => download(JSON.stringify(wholeData(), null, 1), fileName(`bank page ${bank.data.id}`, "json"), "application/json"));
  const forget = twiceButton("Forget all of this page", "Tap again: everything goes", () => {
    forgetPage();
    openStrategy(bank.strategy.name, "notes");
    notice("All that this page had kept is gone.");
  }, "danger");
  return make("div", { class: "part whole" }, make("h3", {}, "All data of this page"),
    make("div", { class: "buttons" }, out), make("div", { class: "field" }, make("label", { for: id }, "Bring data back from a file"), file), forget);
}
