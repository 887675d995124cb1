"use strict";

// When the session starts: now or by the clock, and anew on a second tap. A running one is listed for all places to watch.

sharedShapes.sessions = listShape(recordShape({
  strategy: textShape(), start: momentShape, minutes: numberShape(1, 20000), people: textShape(), quiet: wordShape([true, false], false), heard: momentShape,
}), ["strategy", "start", "minutes"]);

function sharedSession() {
  return bank.shared.sessions.find((session) => session.strategy === bank.strategy.name) || null;
}

// Feeds that were due before now are told in Feed, and do not ring any more.
function listSession(plan) {
  const kept = bank.kept.feed;
  const now = Date.now();
  const others = bank.shared.sessions.filter((session) => session.strategy !== bank.strategy.name);
  const before = sharedSession();
  const same = before && before.start === kept.start;
  const over = kept.start === null || now >= endOfSession(plan);
  const minutes = plan ? plan.length_minutes : bank.strategy.length_minutes;
  const session = { id: same ? before.id : newMark(), strategy: bank.strategy.name, start: kept.start, minutes, people: feedPeople(), quiet: kept.rings === "quiet", heard: same ? before.heard : now };
  const listed = over ? others : [...others, session];
  if (JSON.stringify(listed) === JSON.stringify(bank.shared.sessions)) return;
  bank.shared.sessions = listed;
  keepNow();
}

// What goes in a little early does not ring when it would have been due, with another strategy open either.
function hushFeed(moment) {
  const session = sharedSession();
  if (session && session.heard < moment && moment <= Date.now() + soonEnough) session.heard = moment;
}

function startPart(changed) {
  const kept = bank.kept.feed;
  const id = newId("clock");
  const clock = make("input", { type: "time", id });
  clock.value = bank.data.start || "";
  const fault = make("p", { class: "fault", hidden: true, id: newId("fault") });
  const begin = (moment) => {
    armAlarm();
    kept.start = moment;
    changed();
  };
  const atClock = () => {
    const moment = nearestMoment(clock.value, Date.now());
    fault.hidden = moment !== null;
    setText(fault, "Give the clock time of the first put-in, such as 09:30.");
    if (moment !== null) begin(moment);
  };
  const ahead = make("div", { class: "question" },
    button("Start now", () => begin(Math.floor(Date.now() / minuteMs) * minuteMs), "main"),
    make("div", { class: "field" }, make("label", { for: id }, "Or first put-in at"), make("div", { class: "joined" }, clock, button("Start at that time", atClock)), fault));
  return { node: ahead, arrange: () => { ahead.hidden = kept.start !== null; } };
}

// When it began and when it ends; after the end, what came of it.
function sinceLine() {
  const node = make("p", { class: "since" });
  function tick(plan) {
    if (bank.kept.feed.start === null) return;
    const { start } = bank.kept.feed;
    const now = Date.now();
    const end = endOfSession(plan);
    if (now >= end) setText(node, `Over since ${whenOf(end, now)}: ${resultOf(plan)}.`);
    else if (now < start) setText(node, `Starts at ${clockOf(start)}, in ${untilOf(start - now)}; ends at ${clockOf(end)}.`);
    else setText(node, `Started at ${clockOf(start)}, ${agoOf(now - start)}; ends at ${clockOf(end)}.`);
  }
  return { node, tick };
}

// One that was started by mistake is started anew, and its put-ins go.
function anotherStart(changed) {
  const kept = bank.kept.feed;
  return twiceButton("Another start", "Tap again: the put-ins so far go", () => {
    kept.puts = [];
    kept.left = {};
    kept.start = null;
    changed();
  }, "quiet");
}

// One that is over is put by among those before, with its notes; nothing of it is lost.
function nextSession() {
  return button("Another session", () => {
    putSessionAway();
    openStrategy(bank.strategy.name, "feed");
    notice("The one before is kept, with its notes.");
  });
}

// "14:30", and the date where that was another day.
function whenOf(moment, now) {
  return dateOf(moment) === dateOf(now) ? clockOf(moment) : `${clockOf(moment)} on ${dateOf(moment)}`;
}

function resultOf(plan) {
  const feeds = plan ? plan.feeds : [];
  const puts = putsOf(bank.kept.feed.puts.length);
  if (!feeds.length) return puts;
  const done = feeds.filter((_, index) => putOfFeed(feeds, index)).length;
  return `${puts}, ${done} of the ${feeds.length} planned`;
}
