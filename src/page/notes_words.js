"use strict";

// A session in plain words, a few lines that anyone can read: where and when, what was mixed, fed and caught.

// "28 Nov 2026", where the phone is.
function longDayOf(moment) {
  const [year, month, day] = dateOf(moment).split("-");
  return `${Number(day)} ${monthNames[Number(month) - 1]} ${year}`;
}

// Masses in one unit are added up; others stand side by side.
function massesTogether(masses) {
  const sums = new Map();
  for (const mass of masses) {
    const parts = partsOfAmount(mass);
    const key = parts ? parts.unit : mass;
    sums.set(key, parts ? { unit: parts.unit, number: (sums.has(key) ? sums.get(key).number : 0) + Number(parts.number) } : { text: mass });
  }
  return [...sums.values()].map((sum) => sum.text || `${Number(sum.number.toFixed(3))} ${sum.unit}`).join(" and ");
}

// "14 bream, 9.5 kg; 2 roach".
function fishWords(catches) {
  const kinds = [...new Set(catches.map((one) => one.fish))];
  return kinds.map((fish) => {
    const those = catches.filter((one) => one.fish === fish);
    const weighed = those.filter((one) => one.mass);
    const mass = massesTogether(weighed.map((one) => one.mass));
    const number = those.reduce((sum, one) => sum + one.count, 0);
    return `${number} ${fish}${mass ? `, ${weighed.length < those.length ? "those weighed " : ""}${mass}` : ""}`;
  }).join("; ");
}

function fedWords(puts) {
  const counts = new Map();
  for (const { of } of puts) counts.set(of || "not said what", (counts.get(of || "not said what") || 0) + 1);
  return [...counts].map(([of, number]) => `${of} ${number === 1 ? "once" : `${number} times`}`).join(", ");
}

// `session` as `sessionOf` gives it.
function sessionWords(strategy, session) {
  const people = Number(session.people) || bank.data.people || 1;
  const water = [session.clarity && `water ${session.clarity}`, session.water_temp].filter(Boolean).join(", ");
  const lines = [
    [strategy, longDayOf(session.on), session.venue].filter(Boolean).join(", "),
    [`${people} ${people === 1 ? "angler" : "anglers"}, ${session.length || lengthText(bank.strategy.length_minutes)}${session.start === null ? "" : ` from ${clockOf(session.start)}`}`, water].filter(Boolean).join("; "),
    session.mixed.length ? `Mixed: ${session.mixed.map(wordsOfMixed).join("; ")}` : "",
    session.puts.length ? `Put in: ${fedWords(session.puts)}` : "",
    session.used.length ? `Used: ${session.used.map((one) => `${one.amount} ${one.of}`).join(", ")}` : "",
    `Caught: ${fishWords(session.catches) || "nothing"}`,
    session.note,
  ];
  return lines.filter(Boolean).join("\n");
}
