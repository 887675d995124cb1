"use strict";

// Feed: what goes in now and next, the big button, the feeds by the clock, how they bite and what is left; the whole plan folds below.

placeShapes.feed = recordShape({
  start: momentShape, people: textShape(), bites: wordShape(["steady", "slow", "none"], "steady"), rings: wordShape(["ring", "quiet"], "ring"), left: namedShape(),
  puts: listShape(recordShape({ at: momentShape, of: textShape(), feed: numberShape(0, 200000) }), ["at"]),
});

function feedPlace(section) {
  const kept = bank.kept.feed;
  const session = { plan: plannedSession(bank.strategy.name, feedPeople()) };
  const start = startPart(startChanged);
  const since = sinceLine();
  const anew = make("p", { class: "buttons" }, anotherStart(startChanged));
  const next = make("p", { class: "buttons" }, nextSession());
  const counter = counterPart(session, putsChanged);
  const line = timelinePart(session, putsChanged);
  const left = leftPart(session, putsChanged);
  const whole = wholePlanPart((plan) => {
    session.plan = plan;
    refill();
  });
  let laidOver = null;
  function refill() {
    listSession(session.plan);
    line.fill();
    left.fill();
    tick();
  }
  function startChanged() {
    keepNow();
    arrange();
    whole.ask();
    refill();
  }
  function putsChanged() {
    keepNow();
    line.fill();
    tick();
  }
  function arrange() {
    start.arrange();
    for (const node of [counter.node, since.node, anew]) node.hidden = kept.start === null;
    whole.arrange();
  }
  function tick() {
    if (kept.start !== null) for (const part of [counter, line, left]) part.tick();
    since.tick(session.plan);
    layBy(kept.start !== null && Date.now() >= endOfSession(session.plan));
  }
  // A session that is over begins with what came of it.
  function layBy(over) {
    if (laidOver === over) return;
    if (!over || laidOver === null) section.append(start.node, counter.node, since.node, line.node, left.node, whole.node, anew);
    if (over) section.prepend(since.node, next);
    else next.remove();
    anew.hidden = over || kept.start === null;
    laidOver = over;
  }
  arrange();
  refill();
  whole.ask();
  bank.ticking.push(eachSecond(tick));
}

// The plan itself, open until the session has a start; and for how many, and whether its feeds ring.
function wholePlanPart(planned) {
  const kept = bank.kept.feed;
  if (!kept.people) kept.people = feedPeople();
  const people = amountField({ label: "Anglers", text: kept.people, least: 1, changed });
  const rings = stripField({ label: "When a feed is due", choices: [{ value: "ring", text: "Ring" }, { value: "quiet", text: "Quiet" }], value: kept.rings, changed });
  const line = foldedLine();
  const box = answerBox({ fields: { "--people": people } });
  const folded = make("details", {}, make("summary", {}, "The whole plan"), box.node);
  const ask = oncePerFrame(() => {
    line.tell(`${kept.people || "1"} ${kept.people === "1" || !kept.people ? "angler" : "anglers"}, feeds ${kept.rings === "quiet" ? "do not ring" : "ring"}`);
    if (!bank.engine) return;
    const clock = kept.start === null ? bank.data.start || "" : clockOf(kept.start);
    const reply = askEngine({ ask: "plan", words: [bank.strategy.name], flags: flagsOf({ "--start": clock, "--people": kept.people, ...usualOfPlan() }), give: ["told", "json"] });
    if (box.show(reply)) planned(reply.json);
  });
  function changed() {
    kept.people = people.text();
    kept.rings = rings.text();
    keepSoon();
    ask();
  }
  line.body.append(make("div", { class: "pair" }, people.node, rings.node));
  folded.hidden = !bank.engine;
  return { node: make("div", { class: "part" }, line.node, folded), ask, arrange: () => { folded.open = kept.start === null; } };
}
