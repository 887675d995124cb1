"use strict";

// What is left, how they bite, and how the engine would spread it over the rest of the session.

function leftPart(session) {
  const kept = bank.kept.feed;
  const rows = make("div", { class: "rows" });
  const bites = stripField({
    label: "Bites", choices: ["steady", "slow", "none"].map((word) => ({ value: word, text: word })), value: kept.bites,
    changed: () => {
      kept.bites = bites.text();
      keepSoon();
    },
  });
  const box = answerBox({ fields: { "--bites": bites } });
  let fields = {};
  const ask = button("How to spread it", () => {
    const faults = Object.fromEntries(Object.entries(fields).map(([of, field]) => [of, faultOfAmount(field.text())]));
    if (markFaults(fields, faults)) box.show(outsideSession(session) || askEngine(leftQuestion(kept, Object.keys(fields))));
  }, "main");
  function fill() {
    const names = session.plan ? [...new Set([...session.plan.feeds, ...(session.plan.when_slow || [])].map((feed) => feed.of))] : [];
    if (names.join("\n") === Object.keys(fields).join("\n")) return;
    fields = Object.fromEntries(names.map((of) => [of, leftField(kept, of)]));
    rows.replaceChildren(...Object.values(fields).map((field) => field.node));
  }
  return { node: make("div", { class: "part" }, make("h3", {}, "What is left?"), make("div", { class: "question" }, rows, bites.node, ask), box.node), fill };
}

// Before the start and after the end there is nothing to spread.
function outsideSession({ plan }) {
  const since = Date.now() - bank.kept.feed.start;
  const words = since < 0 ? "the session has not begun" : plan && since >= plan.length_minutes * minuteMs ? "the session is over" : "";
  return words ? { errors: [{ message: words, hint: "start it at another time above if that is not so" }] } : null;
}

function leftField(kept, of) {
  const field = amountField({
    label: of, text: Object.hasOwn(kept.left, of) ? kept.left[of] : "", unit: "l", step: 0.25, fresh: "1 l",
    changed: () => {
      kept.left = { ...kept.left, [of]: field.text() };
      keepSoon();
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
