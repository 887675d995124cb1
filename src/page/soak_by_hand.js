"use strict";

// Where nothing can be worked out, or nothing is soaked by the plan: a timer of minutes that a person gives.

function timerByHand() {
  const names = (bank.library.pellets || []).map((pellet) => pellet.name);
  const what = textField({ label: "What soaks or stands", text: names[0] || "pellets" });
  const minutes = amountField({ label: "For how long", unit: "min", units: ["min", "h"], least: 1, fresh: "10 min" });
  const begin = (step) => () => {
    const seconds = secondsOf(minutes.text());
    const fault = seconds ? null : { message: "Say how many minutes", hint: "such as 10 min" };
    if (!markFaults({ minutes }, { minutes: fault })) return;
    startTimer({ strategy: bank.strategy.name, pellet: what.text() || "pellets", [step]: seconds, stand: step === "stand" ? seconds : 0 }, step);
  };
  return make("div", { class: "part" }, make("h3", {}, "A timer by hand"),
    make("div", { class: "question" }, what.node, minutes.node, make("div", { class: "buttons" }, button("Soak", begin("soak"), "main"), button("Stand", begin("stand")))));
}

// Null where it is no length of time up to four days.
function secondsOf(text) {
  const parts = partsOfAmount(text);
  const seconds = parts && (parts.unit === "h" ? 3600 : parts.unit === "min" ? 60 : NaN) * Number(parts.number);
  return seconds >= 1 && seconds <= 345600 ? Math.round(seconds) : null;
}
