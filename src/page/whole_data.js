"use strict";

// All that the page keeps, of all strategies: out as one file, in from one, and forgotten.

const dataForm = 2;
const longestFile = 5000000;  // bytes; more than any browser keeps for a page

function wholeData() {
  keepNow();
  const texts = [["", keeping.shared], ...keptStrategies().map((name) => [name, keptOf(name)])].map(([name, box]) => [name, JSON.parse(textOfReading(box.shape, box))]);
  const strategies = Object.fromEntries(texts.slice(1));
  return { baitwright_bank: dataForm, written: dateOf(Date.now()), shared: texts[0][1], strategies, put_by: Object.fromEntries(keysPutBy().map((key) => [key, readStored(key)])) };
}

function isRecord(given) {
  return typeof given === "object" && given !== null && !Array.isArray(given);
}

// Why a text that is no JSON cannot be brought in.
function faultOfText(text) {
  if (!text.trim()) return "That file is empty. Nothing came in.";
  if (/^\s*\{\s*"baitwright_bank"/.test(text)) return "That file is cut short: its end is missing. Nothing came in. Copy it again from where it came.";
  if (/^\s*\[\[?[a-z.]+\]/m.test(text)) return "Those are notes for the program to take in, not the data of a page. Nothing came in.";
  return "That file is not the data of a bank page. Nothing came in.";
}

// What is wrong with a file that was to be brought in; empty where nothing is.
function faultOfWhole(given) {
  if (!isRecord(given) || !Number.isInteger(given.baitwright_bank) || given.baitwright_bank < 1) return "That file is not the data of a bank page. Nothing came in.";
  if (given.baitwright_bank > dataForm) return "That file is of a newer page than this one. Nothing came in. Make this page anew, then bring it in.";
  if (!isRecord(given.strategies) || (given.shared !== undefined && !isRecord(given.shared))) return "That file is the data of a bank page, but damaged. Nothing came in.";
  if (!Object.keys(given.strategies).length && given.shared === undefined) return "That file is the data of a bank page, and holds nothing.";
  return "";
}

// In the order in which they are told.
const listWords = {
  "feed.puts": ["put-in", "put-ins"], "notes.catches": ["fish", "fish"], "notes.note": ["note", "notes"], "notes.mixed": ["tub mixed", "tubs mixed"], "notes.used": ["amount used", "amounts used"], past: ["session before", "sessions before"],
  mixes: ["mix", "mixes"], shed: ["shed entry", "shed entries"], prices: ["price", "prices"], measured: ["value measured", "values measured"], timers: ["timer", "timers"],
};

function newTally() {
  return { came: new Map(), known: 0, out: 0, changed: 0, left: 0 };
}

const mostStrategies = 200;

// True where a reading holds anything that a person did.
function holdsAnything({ shape, kept, changes }) {
  let holds = changes.when.size > 0 || (kept.notes !== undefined && hasSession(kept));
  eachThing(shape, kept, (path) => { holds = holds || path.includes("/"); });
  return holds;
}

// Counts what is new of a reading, what is known, and what was taken out here and so stays out.
function tallyThings(tally, box, theirs) {
  const mine = thingsOf(box.shape, box.kept);
  for (const [path, text] of thingsOf(box.shape, theirs.kept)) {
    const [list, id] = path.split("/");
    if (id === undefined) continue;
    if (box.changes.gone.has(id) || theirs.changes.gone.has(id)) tally.out += 1;
    else if (!mine.has(path)) addTo(tally.came, list);
    else if (mine.get(path) === text) tally.known += 1;
    else tally.changed += 1;
  }
}

function bringInto(tally, box, given, page = "") {
  const theirs = readKept(JSON.stringify(given), box.shape);
  tally.left += theirs.mended;
  if (!holdsAnything({ ...theirs, shape: box.shape })) return;
  const before = thingsOf(box.shape, box.kept);
  if (box.kept.notes) {
    // An earlier page wrote a session without a mark; the log knew it by the page.
    if (hasSession(theirs.kept) && !theirs.kept.notes.session) theirs.kept.notes.session = page || hashOf(JSON.stringify(theirs.kept.notes));
    partSessions(box.kept, theirs.kept);
  }
  tallyThings(tally, box, theirs);
  takeIn(box, theirs);
  if (box.kept.notes && box.kept.notes.note && before.get("notes.note") !== JSON.stringify(box.kept.notes.note)) addTo(tally.came, "notes.note");
  writeBox(box);
}

function addTo(counts, key) {
  counts.set(key, (counts.get(key) || 0) + 1);
}

function listed(words) {
  return words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words[words.length - 1]}`;
}

// "3 put-ins, 2 fish and 1 mix came in; 14 were known."
function wordsOfTally({ came, known, out, changed, left }) {
  const order = Object.keys(listWords);
  const all = [...came].sort(([a], [b]) => order.indexOf(a) - order.indexOf(b)).map(([list, number]) => `${number} ${(listWords[list] || ["entry", "entries"])[number === 1 ? 0 : 1]}`);
  const number = [...came.values()].reduce((sum, one) => sum + one, 0);
  const were = (count, what) => (count ? `${count} ${count === 1 ? "was" : "were"} ${what}` : "");
  const words = [number ? `${listed(all)} came in` : "No entry was new", were(known, "known"), were(changed, "changed since, and the newer counts"), were(out, `taken out before and ${out === 1 ? "stays" : "stay"} out`)];
  return `${words.filter(Boolean).join("; ")}.${left ? " Part of the file could not be read and was left out." : ""}`;
}

// Puts what the file holds together with what is here. What the file says came of it.
function bringIn(text) {
  let given = null;
  try {
    given = JSON.parse(text);
  } catch {
    return { fault: faultOfText(text) };
  }
  const fault = faultOfWhole(given);
  if (fault) return { fault };
  keepNow();
  const tally = newTally();
  if (given.shared !== undefined) bringInto(tally, keeping.shared, given.shared);
  const names = Object.keys(given.strategies).slice(0, mostStrategies);
  if (names.length < Object.keys(given.strategies).length) tally.left += 1;
  for (const name of names) bringInto(tally, keptOf(name) || openBox(keyOf(name), wholeShape()), given.strategies[name], textShape()(given.page, () => {}));
  openStrategy(bank.strategy.name, "notes");
  return { words: `${wordsOfTally(tally)}${keeping.held.size ? " It counts for this visit only: the browser's room for pages is full." : ""}` };
}

async function bringFile(file) {
  if (file.size > longestFile) return { fault: "That file is larger than 5 MB, and no bank page has written it. Nothing came in." };
  try {
    return bringIn(await file.text());
  } catch (mishap) {
    return { fault: `That file could not be read (${mishap.message}). Nothing came in.` };
  }
}

function wholePart() {
  const id = newId("file");
  const fault = make("p", { class: "fault", hidden: true, id: newId("fault") });
  const file = make("input", {
    type: "file", id, accept: ".json,application/json",
    change: async () => {
      if (!file.files.length) return;
      const came = await bringFile(file.files[0]);
      file.value = "";
      fault.hidden = !came.fault;
      setText(fault, came.fault || "");
      if (came.fault) announce(came.fault);
      else notice(came.words, { stays: true });
    },
  });
  const out = button("Export all data", () => download(JSON.stringify(wholeData(), null, 1), fileName(`bank page ${dateOf(Date.now())}`, "json"), "application/json"));
  const forget = twiceButton("Forget all of this page", "Tap again: everything goes", () => {
    forgetPage();
    openStrategy(bank.strategy.name, "notes");
    notice("All that this page had kept is gone.");
  }, "danger");
  return make("div", { class: "part whole" }, make("h3", {}, "All data of this page"),
    make("div", { class: "buttons" }, out), make("div", { class: "field" }, make("label", { for: id }, "Bring data in from a file"), file, fault), forget);
}
