"use strict";

// What two tabs, or a page and a file, have written of the same thing put together, so that neither loses anything and both
// come to the same. A thing is one value, known by its path ("mix.litres"), or one entry of a list, known by its mark
// ("feed.puts/mhz3k0v2001a7c4"). Of a thing that both have, what was changed last counts; an entry that was taken out is out.

let idsMade = 0;

// Later marks are greater, so that entries sort by when they were made.
function newMark() {
  idsMade = (idsMade + 1) % 46656;
  const tail = Math.floor(Math.random() * 1679616);
  return [Date.now().toString(36).padStart(8, "0"), idsMade.toString(36).padStart(3, "0"), tail.toString(36).padStart(4, "0")].join("");
}

// Calls `tell` with the path, the value and the shape of each thing.
function eachThing(shape, value, tell, path = "") {
  for (const [name, inner] of Object.entries(shape.fields)) {
    const here = path ? `${path}.${name}` : name;
    if (inner.fields) eachThing(inner, value[name], tell, here);
    else if (inner.entry) value[name].forEach((entry) => tell(`${here}/${entry.id}`, entry));
    else if (here !== "place") tell(here, value[name]);
  }
}

// Gives each entry a mark of its own; one that was taken out and put in again is a new one.
function markEntries(shape, value, gone) {
  for (const [name, inner] of Object.entries(shape.fields)) {
    if (inner.fields) markEntries(inner, value[name], gone);
    if (!inner.entry) continue;
    const seen = new Set();
    for (const entry of value[name]) {
      if (!entry.id || gone.has(entry.id) || seen.has(entry.id)) entry.id = newMark();
      putInOrder(inner.entry, entry);
      seen.add(entry.id);
    }
  }
}

// FNV-1a, 32 bits, over UTF-16 units: a mark by what is in the entry.
function hashOf(text) {
  let hash = 0x811c9dc5;
  for (let at = 0; at < text.length; at += 1) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
  return (hash >>> 0).toString(36).padStart(7, "0");
}

// Entries that were written without marks get them by what they hold and where they stand, so that the same text read twice
// is the same; they sort before all others.
function markAsRead(shape, value) {
  for (const [name, inner] of Object.entries(shape.fields)) {
    if (inner.fields) markAsRead(inner, value[name]);
    if (inner.entry) value[name].forEach((entry, at) => { entry.id = entry.id || `00${at.toString(36).padStart(4, "0")}${hashOf(JSON.stringify(entry))}`; });
  }
}

// Entries are compared as texts: each is made as it is read, with all its fields in order and its mark last.
function putInOrder(shape, entry) {
  const names = [...Object.keys(shape.fields), "id"];
  const own = Object.keys(entry);
  if (own.length === names.length && own.every((name, at) => name === names[at])) return;
  const whole = { ...shape(entry, () => {}), id: entry.id };
  for (const name of own) delete entry[name];
  Object.assign(entry, whole);
}

function thingsOf(shape, value) {
  const things = new Map();
  eachThing(shape, value, (path, thing) => things.set(path, JSON.stringify(thing)));
  return things;
}

// Notes in `changes` what is other than before. `before` are the things as they were read or written last.
function noteChanges(shape, value, before, changes) {
  markEntries(shape, value, changes.gone);
  const now = thingsOf(shape, value);
  for (const [path, text] of now) {
    if (before.get(path) === text || (path.includes("/") && !before.has(path))) continue;
    changes.when.set(path, Math.max(Date.now(), (changes.when.get(path) || 0) + 1));
  }
  for (const path of before.keys()) {
    if (now.has(path) || !path.includes("/")) continue;
    changes.gone.add(path.slice(path.lastIndexOf("/") + 1));
    changes.when.delete(path);
  }
  return now;
}

// The value of the two that counts; where both were changed at once, the same one wherever that is asked.
function newerOf(one, other, path, start) {
  const first = JSON.stringify(one.value);
  const second = JSON.stringify(other.value);
  if (first === second) return one.value;
  const lead = (one.when.get(path) || 0) - (other.when.get(path) || 0);
  if (lead) return lead > 0 ? one.value : other.value;
  if (first === start || second === start) return first === start ? other.value : one.value;
  return first > second ? one.value : other.value;
}

function mergedList(one, other, path, gone) {
  const theirs = new Map(other.value.map((entry) => [entry.id, entry]));
  const entries = one.value.map((mine) => (theirs.has(mine.id) ? newerOf({ ...one, value: mine }, { ...other, value: theirs.get(mine.id) }, `${path}/${mine.id}`) : mine));
  const mine = new Set(one.value.map((entry) => entry.id));
  const all = [...entries, ...other.value.filter((entry) => !mine.has(entry.id))].filter((entry) => !gone.has(entry.id));
  return all.sort((a, b) => (a.id < b.id ? -1 : 1)).slice(-longestList);
}

function mergedRecord(shape, one, other, gone, path = "") {
  const record = {};
  for (const [name, inner] of Object.entries(shape.fields)) {
    const here = path ? `${path}.${name}` : name;
    const mine = { value: one.value[name], when: one.when };
    const theirs = { value: other.value[name], when: other.when };
    if (inner.fields) record[name] = mergedRecord(inner, mine, theirs, gone, here);
    else if (inner.entry) record[name] = mergedList(mine, theirs, here, gone);
    else if (here === "place") record[name] = mine.value;
    else record[name] = newerOf(mine, theirs, here, JSON.stringify(inner(undefined, () => {})));
  }
  return record;
}

// Of two readings ({kept, changes, others}), every entry of which has its mark.
function mergedReading(shape, mine, theirs) {
  const gone = new Set([...mine.changes.gone, ...theirs.changes.gone].sort().slice(-2 * longestList));
  const when = new Map(mine.changes.when);
  for (const [path, moment] of theirs.changes.when) when.set(path, Math.max(moment, when.get(path) || 0));
  const kept = mergedRecord(shape, { value: mine.kept, when: mine.changes.when }, { value: theirs.kept, when: theirs.changes.when }, gone);
  return { kept, changes: { when, gone }, others: { ...mine.others, ...theirs.others } };
}

// Puts what was merged into the records that the places already hold.
function adopt(shape, target, source) {
  for (const [name, inner] of Object.entries(shape.fields)) {
    if (inner.fields) {
      adopt(inner, target[name], source[name]);
    } else if (inner.entry) {
      const known = new Map(target[name].map((entry) => [entry.id, entry]));
      target[name].splice(0, target[name].length, ...source[name].map((entry) => (known.has(entry.id) ? Object.assign(known.get(entry.id), entry) : entry)));
    } else {
      target[name] = source[name];
    }
  }
}

// One text for one state, in whatever order it came about.
function textOfReading(shape, { kept, changes, others }) {
  const moments = [...changes.when].sort(([a], [b]) => (a < b ? -1 : 1));
  return JSON.stringify({ ...others, ...kept, changes: { when: Object.fromEntries(moments), gone: [...changes.gone].sort() } });
}
