"use strict";

// What the page keeps, and how each piece is told from rubbish. A shape takes what was read and gives what can be used;
// what is wrong falls back to its start, piece by piece, and is counted by calling `mend`. A text that starts as null is one
// that nobody has typed yet: the strategy's own value stands there. A record's shape has `fields`, the shape of a list of
// records `entry`: by these two what two tabs wrote is put together (keeping_merge.js).

const longestText = 4000;
const longestList = 2000;
const longestId = 40;

function textShape(start = "") {
  return (raw, mend) => {
    if (raw === undefined || (raw === null && start === null)) return start;
    if (typeof raw === "string" && raw.length <= longestText) return raw;
    mend();
    return start;
  };
}

function wordShape(words, start) {
  return (raw, mend) => {
    if (raw === undefined) return start;
    if (words.includes(raw)) return raw;
    mend();
    return start;
  };
}

// A number within bounds, or null.
function numberShape(least, most) {
  return (raw, mend) => {
    if (raw === undefined || raw === null) return null;
    if (typeof raw === "number" && raw >= least && raw <= most) return raw;
    mend();
    return null;
  };
}

const momentShape = numberShape(Date.UTC(2000, 0, 1), Date.UTC(2200, 0, 1));

function recordShape(shapes) {
  const read = (raw, mend) => {
    const given = raw === undefined ? {} : raw;
    const whole = typeof given === "object" && given !== null && !Array.isArray(given);
    if (!whole) mend();
    const record = {};
    for (const [name, shape] of Object.entries(shapes)) record[name] = shape(whole && Object.hasOwn(given, name) ? given[name] : undefined, mend);
    return record;
  };
  read.fields = shapes;
  return read;
}

// The mark by which an entry is known again: the moment it was made, and a random tail.
function isId(text) {
  return typeof text === "string" && text.length <= longestId && /^[0-9a-z]+$/.test(text);
}

// A list, without the entries that lack what they need; of one that is too long the newest.
function listShape(shape, needed = []) {
  const readEntry = (raw, mend) => {
    const entry = shape(raw, mend);
    if (shape.fields && raw && isId(raw.id)) entry.id = raw.id;
    return entry;
  };
  const read = (raw, mend) => {
    if (raw === undefined) return [];
    if (!Array.isArray(raw)) {
      mend();
      return [];
    }
    const entries = raw.slice(-longestList).map((entry) => readEntry(entry, mend));
    const whole = entries.filter((entry) => needed.every((name) => entry[name] !== null && entry[name] !== ""));
    if (whole.length < raw.length) mend();
    return whole;
  };
  if (shape.fields) read.entry = shape;
  return read;
}

// Texts by name, such as what is left of each feed.
function namedShape() {
  const text = textShape("");
  return (raw, mend) => {
    if (raw === undefined) return {};
    if (typeof raw !== "object" || raw === null || Array.isArray(raw)) {
      mend();
      return {};
    }
    return Object.fromEntries(Object.entries(raw).slice(0, longestList).map(([name, value]) => [name, text(value, mend)]));
  };
}

// What is kept of each place: each names its own (`placeShapes.mix = ...`).
const placeShapes = {};

// What is kept for all strategies together, likewise. The packs of a price and the parts of a mix are as the engine takes them.
const sharedShapes = {
  last: textShape(), opened: listShape(textShape()), look: wordShape(["phone", "sun", "night"], "phone"),
  mixes: listShape(recordShape({ name: textShape(), feel: textShape(), parts: listShape(recordShape({ of: textShape(), share: textShape(), mass: textShape(), volume: textShape(), prepare: textShape() }), ["of"]), doses: listShape(recordShape({ of: textShape(), amount: textShape() }), ["of"]) }), ["name"]),
  measured: listShape(recordShape({ ingredient: textShape(), absorption: textShape(), on: textShape() }), ["ingredient", "absorption"]),
  prices: listShape(recordShape({ of: textShape(), pack: textShape(), price: textShape(), shop: textShape(), on: textShape() }), ["of", "price"]),
};

// When each thing was changed last, by its path, and the entries that were taken out.
function changesShape(raw, mend) {
  const { when, gone } = recordShape({ when: leafShape("object"), gone: leafShape("object") })(raw, mend);
  const moments = when && !Array.isArray(when) ? Object.entries(when).filter(([, moment]) => Number.isFinite(moment) && moment > 0) : [];
  return { when: new Map(moments.slice(0, 4 * longestList)), gone: new Set((Array.isArray(gone) ? gone : []).filter(isId).slice(-2 * longestList)) };
}

function leafShape(type) {
  return (raw, mend) => {
    if (raw === undefined || typeof raw === type) return raw;
    mend();
    return undefined;
  };
}

function wholeShape() {
  return recordShape({ place: wordShape(Object.keys(places), "mix"), ...placeShapes });
}

function sharedShape() {
  return recordShape(sharedShapes);
}

// {kept, changes, others, mended}: what can be used, when it was changed, what a newer or an older page keeps besides, and how
// many pieces had to be left out.
function readKept(raw, shape = wholeShape()) {
  let mended = 0;
  const mend = () => { mended += 1; };
  let given;
  try {
    given = raw === null ? undefined : JSON.parse(raw);
  } catch {
    mend();
  }
  const whole = typeof given === "object" && given !== null && !Array.isArray(given);
  const others = whole ? Object.entries(given).filter(([name]) => name !== "changes" && name !== "__proto__" && !Object.hasOwn(shape.fields, name)) : [];
  const changes = changesShape(whole && Object.hasOwn(given, "changes") ? given.changes : undefined, mend);
  const kept = shape(given, mend);
  markAsRead(shape, kept);
  return { kept, changes, others: Object.fromEntries(others), mended };
}
