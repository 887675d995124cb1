"use strict";

// The session that is noted now, and those before it. A session has a mark of its own, by which the log knows it again.

const mixedShape = recordShape({ of: textShape(), dry: textShape(), water: textShape(), feel: textShape(), at: momentShape });
const usedShape = recordShape({ of: textShape(), amount: textShape(), at: momentShape });
const catchShape = recordShape({ at: momentShape, fish: textShape(), count: numberShape(1, 10000), mass: textShape() });

const sessionFields = {
  session: textShape(), note: textShape(), people: textShape(), length: textShape(), venue: textShape(), clarity: wordShape(["", "clear", "tinged", "coloured"], ""), water_temp: textShape(),
  mixed: listShape(mixedShape, ["of"]), used: listShape(usedShape, ["of", "amount"]), catches: listShape(catchShape, ["fish", "count"]),
};

placeShapes.notes = recordShape(sessionFields);
placeShapes.past = listShape(recordShape({
  ...sessionFields, on: momentShape, start: momentShape, puts: listShape(recordShape({ at: momentShape, of: textShape(), feed: numberShape(0, 200000) }), ["at"]),
}), ["on"]);

const sessionLists = ["mixed", "used", "catches"];

function hasSession({ feed, notes }) {
  return feed.start !== null || feed.puts.length > 0 || notes.note !== "" || sessionLists.some((name) => notes[name].length > 0);
}

// As it is kept among those before: a copy.
function sessionOf({ feed, notes }) {
  const moments = [feed.start, ...[...feed.puts, ...notes.mixed, ...notes.used, ...notes.catches].map((one) => one.at)].filter((moment) => moment !== null);
  return JSON.parse(JSON.stringify({ ...notes, on: moments.length ? Math.min(...moments) : Date.now(), start: feed.start, puts: feed.puts }));
}

// A session that holds something gets its mark before it is written.
function nameSession({ feed, notes }) {
  if (notes.session || !hasSession({ feed, notes })) return;
  notes.session = Array.from({ length: 16 }, () => Math.floor(Math.random() * 16).toString(16)).join("");
}

function emptySession({ feed, notes }) {
  Object.assign(feed, { start: null, puts: [], left: {} });
  Object.assign(notes, { session: "", note: "", mixed: [], used: [], catches: [] });
}

// The session that is noted goes to those before it, and a new one may begin.
function putSessionAway() {
  nameSession(bank.kept);
  bank.kept.past.push(sessionOf(bank.kept));
  emptySession(bank.kept);
  keepNow();
}

// A session from elsewhere among those before, where it is not known already. Its mark is the session's own, so that the
// same one from two places is one.
function pastOf(kept) {
  return { ...sessionOf(kept), id: `0000${kept.notes.session || hashOf(JSON.stringify(kept.notes))}` };
}

// Where nothing is noted yet, another's session goes on: its words count, whatever was emptied here last.
function goOnWith(mine, theirs) {
  mine.feed.start = theirs.feed.start;
  for (const [name, value] of Object.entries(theirs.notes)) if (!sessionLists.includes(name) && value !== "") mine.notes[name] = value;
}

// Another phone's session is not mixed with the one that is noted here: where they are two, it goes to those before.
function partSessions(mine, theirs) {
  if (!hasSession(theirs)) return;
  const { session } = theirs.notes;
  const known = session !== "" && mine.past.some((one) => one.session === session);
  if (!known && !hasSession(mine)) {
    goOnWith(mine, theirs);
    return;
  }
  if (!known && session !== "" && session === mine.notes.session) return;
  if (!known) theirs.past.push(pastOf(theirs));
  emptySession(theirs);
}
