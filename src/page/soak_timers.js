"use strict";

// A timer for each step of each pellet. It keeps the moment at which it ends, not a count, so a dark screen does it no harm.

placeShapes.timers = listShape(recordShape({ pellet: textShape(), step: wordShape(["soak", "stand"], ""), seconds: numberShape(1, 400000), ends: momentShape, rung: wordShape([true, false], false) }),
  ["pellet", "step", "seconds", "ends"]);

const stepWords = { soak: "Soak", stand: "Stand, covered" };

// The steps that the engine's answer has for its pellets, as long as it tells them; an expander that is pumped has none.
function stepsOf(pellets) {
  return pellets.filter((one) => one.kitchen).flatMap((one) => [["soak", one.kitchen.soak_minutes], ["stand", one.kitchen.stand_ready_minutes]]
    .filter(([, minutes]) => minutes > 0)
    .map(([step, minutes]) => ({ pellet: one.pellet, step, seconds: Math.round(minutes * 60) })));
}

function sameStep(one, other) {
  return one.pellet === other.pellet && one.step === other.step;
}

function timerPart() {
  const list = make("div", { class: "timers" });
  const node = make("div", { class: "part" }, make("h3", {}, "Timers"), list);
  let offered = [];
  let views = [];
  // Timers that run stay in sight, whatever the fields say now.
  // The one that was tapped keeps the focus.
  function fill(tapped = null) {
    const running = bank.kept.timers.filter((timer) => !offered.some((step) => sameStep(step, timer)));
    const steps = [...offered, ...running];
    views = steps.map((step) => timerView(step, fill));
    list.replaceChildren(...views.map((view) => view.node));
    node.hidden = !views.length;
    const at = tapped ? steps.findIndex((step) => sameStep(step, tapped)) : -1;
    if (at >= 0) views[at].node.querySelector("button").focus();
  }
  fill();
  bank.ticking.push(eachSecond(() => [...views].forEach((view) => view.tick())));
  return {
    node,
    offer: (pellets) => {
      const steps = stepsOf(pellets);
      const same = steps.length === offered.length && steps.every((step, at) => sameStep(step, offered[at]) && step.seconds === offered[at].seconds);
      offered = steps;
      if (!same) fill();
    },
  };
}

function keptTimer(step) {
  return bank.kept.timers.find((timer) => sameStep(timer, step));
}

function startTimer(step) {
  armAlarm();
  stopTimer(step);
  bank.kept.timers.push({ pellet: step.pellet, step: step.step, seconds: step.seconds, ends: Date.now() + step.seconds * 1000, rung: false });
  keepNow();
}

function stopTimer(step) {
  bank.kept.timers = bank.kept.timers.filter((timer) => !sameStep(timer, step));
  keepNow();
}

function timerView(step, fill) {
  const timer = keptTimer(step);
  const over = Boolean(timer) && timer.ends <= Date.now();
  const count = make("span", { class: "count" });
  const state = make("span", { class: "state" });
  const node = make("div", { class: `timer ${timer ? over ? "over" : "running" : "idle"}`, role: "group", "aria-label": `${step.pellet}, ${stepWords[step.step]}` },
    make("div", {}, make("p", { class: "what" }, make("b", {}, stepWords[step.step]), ` ${step.pellet}`), make("p", { class: "when" }, count, " ", state)),
    make("p", { class: "does" }, ...timerButtons(step, timer, over, fill)));
  function tell() {
    const left = timer ? timer.ends - Date.now() : step.seconds * 1000;
    setText(count, left > 0 ? countdownOf(left) : "ended");
    setText(state, !timer ? "" : left > 0 ? `ends ${clockOf(timer.ends)}` : agoOf(-left));
  }
  tell();
  return {
    node,
    tick: () => {
      if (timer && !over && timer.ends <= Date.now()) fill();
      else tell();
    },
  };
}

function timerButtons(step, timer, over, fill) {
  const begin = (text) => button(text, () => {
    startTimer(step);
    fill(step);
  });
  const end = () => {
    stopTimer(step);
    fill(step);
  };
  if (!timer) return [begin("Start")];
  return over ? [begin("Again"), button("Done", end)] : [twiceButton("Stop", "Tap again to stop", end)];
}

// Rings for what has just ended, wherever on the page one is. What ended while the page was away is only told.
function watchTimers() {
  eachSecond(() => {
    const ended = (bank.kept ? bank.kept.timers : []).filter((timer) => !timer.rung && timer.ends <= Date.now());
    if (!ended.length) return;
    if (ended.some((timer) => Date.now() - timer.ends < 15000)) ring();
    for (const timer of ended) timer.rung = true;
    const words = ended.map((timer) => `${timer.pellet}: ${timer.step} ended ${agoOf(Date.now() - timer.ends)}`).join("; ");
    notice(words);
    keepNow();
  });
}
