"use strict";

// The sessions before this one: they go home with the notes, and can be taken out.

function pastPart() {
  const { past } = bank.kept;
  const folded = foldedLine("Sessions before");
  folded.tell(`${past.length} ${past.length === 1 ? "session" : "sessions"} before`);
  folded.body.append(make("ul", { class: "entries" }, ...[...past].reverse().map(pastLine)));
  folded.node.hidden = !past.length;
  return make("div", { class: "part" }, folded.node);
}

function pastLine(session) {
  const words = [longDayOf(session.on), session.venue, fishWords(session.catches) || "no fish", session.puts.length ? putsOf(session.puts.length) : ""].filter(Boolean).join(", ");
  return make("li", {}, make("span", { class: "words" }, words), twiceButton("Take out", "Tap again", () => {
    bank.kept.past = bank.kept.past.filter((one) => one.id !== session.id);
    keepNow();
    openStrategy(bank.strategy.name, "notes");
  }, "quiet"));
}
