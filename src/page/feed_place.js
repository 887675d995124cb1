"use strict";

// Feed: when the session starts, what goes in next, the counter of put-ins, what is left, and the plan itself.

placeShapes.feed = recordShape({
  start: momentShape, people: textShape(), bites: wordShape(["steady", "slow", "none"], "steady"), left: namedShape(),
  puts: listShape(recordShape({ at: momentShape, of: textShape(), feed: numberShape(0, 200000) }), ["at"]),
});

function feedPlace(section) {
  const kept = bank.kept.feed;
  if (!kept.people) kept.people = String(bank.data.people || 1);
  const session = { plan: null };
  const people = amountField({ label: "Anglers", text: kept.people, least: 1, changed: () => { kept.people = people.text(); keepSoon(); ask(); } });
  const start = startPart(startChanged);
  const counter = counterPart(session, putsChanged);
  const line = timelinePart(session, putsChanged);
  const left = leftPart(session);
  const plan = answerBox({ fields: { "--people": people } });
  const ask = oncePerFrame(() => {
    const clock = kept.start === null ? bank.data.start || "" : clockOf(kept.start);
    const reply = askEngine({ ask: "plan", words: [bank.strategy.name], flags: flagsOf({ "--start": clock, "--people": kept.people, ...usualOfPlan() }), give: ["told", "json"] });
    if (!plan.show(reply)) return;
    session.plan = reply.json;
    line.fill();
    left.fill();
    tick();
  });
  function startChanged() {
    keepNow();
    arrange();
    ask();
  }
  function putsChanged() {
    keepNow();
    line.fill();
    tick();
  }
  function arrange() {
    for (const part of [counter, line, left]) part.node.hidden = kept.start === null;
  }
  function tick() {
    start.tick(session.plan);
    counter.tick();
    line.tick();
  }
  section.append(start.node, counter.node, line.node, left.node,
    make("div", { class: "part" }, make("h3", {}, "The plan"), make("div", { class: "question" }, people.node), plan.node));
  arrange();
  ask();
  bank.ticking.push(eachSecond(tick));
}

// Starts the session now or by the clock, and starts it anew on a second tap.
function startPart(changed) {
  const kept = bank.kept.feed;
  const id = newId("clock");
  const clock = make("input", { type: "time", id });
  clock.value = bank.data.start || "";
  const fault = make("p", { class: "fault", hidden: true, id: newId("fault") });
  const begin = (moment) => {
    kept.start = moment;
    arrange();
    changed();
  };
  const atClock = () => {
    const moment = nearestMoment(clock.value, Date.now());
    fault.hidden = moment !== null;
    setText(fault, "Give the clock time of the first put-in, such as 09:30.");
    if (moment !== null) begin(moment);
  };
  const ahead = make("div", { class: "question" },
    make("div", { class: "field" }, make("label", { for: id }, "First put-in at"), make("div", { class: "joined" }, clock, button("Start at that time", atClock)), fault),
    button("Start now", () => begin(Math.floor(Date.now() / minuteMs) * minuteMs), "main"));
  const since = make("p", { class: "since" });
  const anew = twiceButton("Another start", "Tap again: the put-ins so far go", () => {
    kept.puts = [];
    kept.left = {};
    begin(null);
  }, "quiet");
  const under = make("div", { class: "under" }, since, anew);
  function arrange() {
    ahead.hidden = kept.start !== null;
    under.hidden = kept.start === null;
  }
  function tick(plan) {
    if (kept.start === null) return;
    const now = Date.now();
    const end = plan ? kept.start + plan.length_minutes * minuteMs : null;
    const begun = now < kept.start ? `Starts at ${clockOf(kept.start)}, in ${untilOf(kept.start - now)}` : `Started at ${clockOf(kept.start)}, ${agoOf(now - kept.start)}`;
    const ends = end === null ? "" : now < end ? `; ends at ${clockOf(end)}` : `; over since ${clockOf(end)}`;
    setText(since, `${begun}${ends}.`);
  }
  arrange();
  return { node: make("div", {}, ahead, under), tick };
}
