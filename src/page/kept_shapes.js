"use strict";

// What the page keeps, and how each piece is told from rubbish. A shape takes what was read and gives what can be used;
// what is wrong falls back to its start, piece by piece, and is counted by calling `mend`. A text that starts as null is one
// that nobody has typed yet: the strategy's own value stands there.

const longestText = 4000;
const longestList = 2000;

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
  return (raw, mend) => {
    const given = raw === undefined ? {} : raw;
    const whole = typeof given === "object" && given !== null && !Array.isArray(given);
    if (!whole) mend();
    const record = {};
    for (const [name, shape] of Object.entries(shapes)) record[name] = shape(whole && Object.hasOwn(given, name) ? given[name] : undefined, mend);
    return record;
  };
}

// A list, without the entries that lack what they need.
function listShape(shape, needed = []) {
  return (raw, mend) => {
    if (raw === undefined) return [];
    if (!Array.isArray(raw) || raw.length > longestList) {
      mend();
      return [];
    }
    const entries = raw.map((entry) => shape(entry, mend));
    const whole = entries.filter((entry) => needed.every((name) => entry[name] !== null && entry[name] !== ""));
    if (whole.length < entries.length) mend();
    return whole;
  };
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

function keptShape(given, mend) {
  return recordShape({ place: wordShape(Object.keys(places), "mix"), ...placeShapes })(given, mend);
}

// {kept, mended}: what can be used, and how many pieces had to be left out.
function readKept(raw) {
  let mended = 0;
  const mend = () => { mended += 1; };
  if (raw === null) return { kept: keptShape(undefined, mend), mended };
  let given;
  try {
    given = JSON.parse(raw);
  } catch {
    return { kept: keptShape(undefined, () => {}), mended: 1 };
  }
  return { kept: keptShape(given, mend), mended };
}
