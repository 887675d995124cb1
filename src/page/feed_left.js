"use strict";

// How they bite and what is left, and what that comes to: what to put in now, and how the rest is spread.

const doFirst = ["Put in", "Top up", "Then", "Spare"];

function leftPart(session, changed) {
  const kept = bank.kept.feed;
  const rows = make("div", { class: "pair" });
  const bites = stripField({
    label: "Bites", choices: ["steady", "slow", "none"].map((word) => ({ value: word, text: word })), value: kept.bites,
    changed: () => {
      kept.bites = bites.text();
      keepSoon();
      ask();
    },
  });
  const ready = make("p", { class: "buttons" });
  const line = foldedLine();
  const box = answerBox({ fields: { "--bites": bites } });
  const again = button("Reckon again, as of now", () => ask(), "quiet");
  let fields = {};
  let asked = 0;
  const ask = oncePerFrame(() => {
    tellLine();
    const faults = Object.fromEntries(Object.entries(fields).map(([of, field]) => [of, faultOfAmount(field.text())]));
    for (const [of, field] of Object.entries(fields)) field.fault(faults[of] || null);
    if (!Object.values(faults).some(Boolean)) show();
  });
  function show() {
    node.hidden = isOutside();
    if (node.hidden) return;
    asked = Date.now();
    const reply = askEngine(leftQuestion(kept, Object.keys(fields)));
    box.show(reply.told ? { ...reply, told: leadingWith(reply.told, doFirst) } : reply);
    again.hidden = true;
  }
  function isOutside() {
    return kept.start === null || !bank.engine || outsideSession(session);
  }
  function tellLine() {
    const known = Object.keys(fields).filter((of) => Object.hasOwn(kept.left, of) && kept.left[of]);
    line.tell(known.length ? known.map((of) => `${kept.left[of]} ${of} left`).join(", ") : "Say what is left");
  }
  function fill() {
    const slow = (session.plan && session.plan.when_slow) || [];
    ready.hidden = !slow.length;
    ready.replaceChildren(...slow.map((feed) => button(`Put in ${wordsOfFeed(feed)}`, onceATap(() => putIn(null, { of: feed.of, feed: null }, changed)))));
    const names = session.plan ? [...new Set([...session.plan.feeds, ...slow].map((feed) => feed.of))] : [];
    if (names.join("\n") !== Object.keys(fields).join("\n")) {
      fields = Object.fromEntries(names.map((of) => [of, leftField(kept, of, ask)]));
      rows.replaceChildren(...Object.values(fields).map((field) => field.node));
    }
    ask();
  }
  // It begins and ends by the clock, and grows old.
  function tick() {
    const outside = isOutside();
    if (node.hidden !== outside) ask();
    again.hidden = outside || Date.now() - asked < 2 * minuteMs;
  }
  line.body.append(rows);
  const node = make("div", { class: "part", hidden: true }, make("h3", {}, "How do they bite?"), make("div", { class: "question" }, bites.node, line.node), box.node, ready, again);
  return { node, fill, tick };
}

// Before the start and after the end there is nothing to spread.
function outsideSession({ plan }) {
  const now = Date.now();
  return now < bank.kept.feed.start || now >= endOfSession(plan);
}

// Pieces with these labels first, right after the title.
function leadingWith(pieces, labels) {
  const leads = pieces.filter((piece) => labels.includes(piece.label));
  const rest = pieces.filter((piece) => !labels.includes(piece.label));
  const title = rest.findIndex((piece) => piece.kind === "title") + 1;
  return [...rest.slice(0, title), ...leads, ...rest.slice(title)];
}

function leftField(kept, of, ask) {
  const field = amountField({
    label: of, text: Object.hasOwn(kept.left, of) ? kept.left[of] : "", unit: begunWithImperial() ? "pt" : "l", units: begunWithImperial() ? ["pt", "fl oz", "lb", "oz"] : ["l", "ml", "g", "kg"], fresh: "1 l",
    changed: () => {
      kept.left = { ...kept.left, [of]: field.text() };
      keepSoon();
      ask();
    },
  });
  return field;
}

// Of what the plan feeds: what may be kept besides, of another time, is not asked about.
function leftQuestion(kept, names) {
  const left = names.filter((of) => Object.hasOwn(kept.left, of) && kept.left[of]).map((of) => `${kept.left[of]} ${of}`);
  return {
    ask: "plan", words: [bank.strategy.name],
    flags: flagsOf({ "--start": clockOf(kept.start), "--now": clockOf(Date.now()), "--left": left, "--bites": kept.bites, "--people": kept.people, ...usualOfPlan() }),
  };
}
