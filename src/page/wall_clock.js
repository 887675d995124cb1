"use strict";

// Moments are kept as wall-clock times in milliseconds, so that they survive a dark screen, a reload and midnight.

const minuteMs = 60000;
const dayMs = 24 * 60 * minuteMs;
const ticking = new Set();
let nextTick = 0;

// Calls the work now and once a second, while the page is in sight. Gives what ends it.
function eachSecond(work) {
  ticking.add(work);
  work();
  if (!nextTick) tickLater();
  return () => ticking.delete(work);
}

function tickLater() {
  nextTick = setTimeout(() => {
    nextTick = 0;
    tick();
  }, 1000 - Date.now() % 1000);
}

function tick() {
  for (const work of ticking) work();
  if (ticking.size && !nextTick) tickLater();
}

document.addEventListener("visibilitychange", () => {
  if (!document.hidden) tick();
});

function twoDigits(number) {
  return String(number).padStart(2, "0");
}

// "09:30", where the phone is.
function clockOf(moment) {
  const date = new Date(moment);
  return `${twoDigits(date.getHours())}:${twoDigits(date.getMinutes())}`;
}

// The moment nearest to now at which the clock shows "23:30": after midnight that was yesterday.
function nearestMoment(clock, now) {
  const found = /^([01]?[0-9]|2[0-3])[:.]([0-5][0-9])$/.exec(clock.trim());
  if (!found) return null;
  const moments = [-1, 0, 1].map((days) => {
    const date = new Date(now);
    date.setDate(date.getDate() + days);
    date.setHours(Number(found[1]), Number(found[2]), 0, 0);
    return date.getTime();
  });
  return moments.reduce((best, moment) => (Math.abs(moment - now) < Math.abs(best - now) ? moment : best));
}

// A length of time in words: "40 s", "12 min", "2 h 5 min".
function spanOf(span) {
  const seconds = Math.max(0, Math.round(span / 1000));
  if (seconds < 60) return `${seconds} s`;
  const minutes = Math.floor(seconds / 60);
  if (minutes < 60) return `${minutes} min`;
  const rest = minutes % 60;
  return rest ? `${Math.floor(minutes / 60)} h ${rest} min` : `${Math.floor(minutes / 60)} h`;
}

function agoOf(span) {
  return span < 60000 ? "just now" : `${spanOf(span)} ago`;
}

// How long until then: to the nearest minute, and to the second within the last.
function untilOf(span) {
  return spanOf(span < minuteMs ? span : Math.round(span / minuteMs) * minuteMs);
}

// What is left on a timer: "7:05", "1:02:30".
function countdownOf(span) {
  const seconds = Math.max(0, Math.ceil(span / 1000));
  const hours = Math.floor(seconds / 3600);
  const minutes = Math.floor(seconds / 60) % 60;
  const tail = `${hours ? twoDigits(minutes) : minutes}:${twoDigits(seconds % 60)}`;
  return hours ? `${hours}:${tail}` : tail;
}
