"use strict";

// Pages made before kept what they knew under a name that changed with the day and the shed. It is taken over once: the
// latest session goes on, the others become sessions before it.

const oldKey = /^bank page ([0-9a-f]{16}), (.*)$/s;

function oldKeys() {
  return keysThatBegin("bank page ");
}

function latestMoment({ feed, notes }) {
  return Math.max(0, feed.start || 0, ...feed.puts.map((put) => put.at), ...notes.catches.map((one) => one.at || 0));
}

function readOld(key) {
  const raw = readStored(key);
  const reading = readKept(raw, wholeShape());
  if (hasSession(reading.kept)) [, reading.kept.notes.session] = oldKey.exec(key);
  return { ...reading, key, raw };
}

function takeOverOld(strategy) {
  const keys = oldKeys().filter((key) => (oldKey.exec(key) || [])[2] === strategy);
  if (!keys.length || !keeping.writable) return;
  const readings = keys.map(readOld).sort((one, other) => latestMoment(other.kept) - latestMoment(one.kept));
  for (const reading of readings) {
    partSessions(bank.kept, reading.kept);
    takeIn(keeping.own, reading);
  }
  writeBox(keeping.own);
  if (keeping.held.has(keeping.own.key)) return;
  for (const { key, raw, mended } of readings) {
    removeStored(key);
    if (mended) writeStored(`${sharedKey} put by, ${key}`, raw);
  }
}
