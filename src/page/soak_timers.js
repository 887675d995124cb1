"use strict";

// A timer for each pellet, which soaks and then stands. It keeps the moment at which it ends, not a count, so a dark screen does it no
// harm; and it is kept for all strategies together, so that it rings whichever is open.

sharedShapes.timers = listShape(recordShape({
  strategy: textShape(), pellet: textShape(), step: wordShape(["soak", "stand"], ""), seconds: numberShape(1, 400000),
  stand: numberShape(0, 400000), ends: momentShape, rung: wordShape([true, false], false),
}), ["pellet", "step", "seconds", "ends"]);

const oldTimer = 12 * 60 * minuteMs;

// The pellets of the engine's answer with what they wait for; an expander that is pumped waits for nothing.
function waitsOf(pellets) {
  return pellets.filter((one) => one.kitchen).map((one) => ({
    strategy: bank.strategy.name, pellet: one.pellet,
    soak: Math.round((one.kitchen.soak_minutes || 0) * 60), stand: Math.round((one.kitchen.stand_ready_minutes || 0) * 60),
  })).filter((one) => one.soak > 0 || one.stand > 0);
}

function samePellets(one, other) {
  return one.pellet === other.pellet && one.strategy === other.strategy;
}

function timerOf(wait) {
  return bank.shared.timers.find((timer) => samePellets(timer, wait)) || null;
}

// Of the same pellets only one runs.
function startTimer(wait, step) {
  armAlarm();
  const now = Date.now();
  const seconds = wait[step];
  const others = bank.shared.timers.filter((timer) => !samePellets(timer, wait));
  bank.shared.timers = [...others, { id: newMark(), strategy: wait.strategy, pellet: wait.pellet, step, seconds, stand: wait.stand, ends: now + seconds * 1000, rung: false }];
  timersChanged();
}

// Drained: the stand that was reckoned for these pellets begins.
function startStand(timer) {
  startTimer({ strategy: timer.strategy, pellet: timer.pellet, stand: timer.stand }, "stand");
}

function stopTimer(timer) {
  bank.shared.timers = bank.shared.timers.filter((one) => one !== timer && one.id !== timer.id);
  timersChanged();
}

// What shows the timers is told; there is one such place at most.
const timersView = { fill: () => {} };

function timersChanged() {
  takeEndMessages(Date.now());
  keepNow();
  timersView.fill();
}

function runs(timer, now) {
  return timer.ends > now;
}

// A clock that was put back does not make a timer longer than it was.
function mendTimers(now) {
  for (const timer of bank.shared.timers) timer.ends = Math.min(timer.ends, now + timer.seconds * 1000);
  const fresh = bank.shared.timers.filter((timer) => now - timer.ends < oldTimer);
  if (fresh.length < bank.shared.timers.length) bank.shared.timers = fresh;
}

// "1.5 min", "35 min", "1 h 5 min".
function lengthOf(seconds) {
  return seconds < 600 ? `${Number((seconds / 60).toFixed(1))} min` : spanOf(seconds * 1000);
}

function timerPart() {
  const node = make("div", { class: "timers" });
  let offered = [];
  let views = [];
  // Timers that run stay in sight, whatever the fields say now, those of other strategies too.
  function fill(tapped = null) {
    const running = bank.shared.timers.filter((timer) => !offered.some((wait) => samePellets(wait, timer)));
    const waits = [...offered, ...running.map((timer) => ({ strategy: timer.strategy, pellet: timer.pellet, soak: 0, stand: timer.stand }))];
    const focused = tapped || (views.find((view) => view.node.contains(document.activeElement)) || {}).wait;
    views = waits.map(timerView);
    node.replaceChildren(...views.map((view) => view.node));
    node.hidden = !views.length;
    const again = focused && views.find((view) => samePellets(view.wait, focused));
    if (again) again.node.querySelector("button").focus();
  }
  timersView.fill = fill;
  fill();
  bank.ticking.push(eachSecond(() => {
    if (views.some((view) => view.isOther())) fill();
    else views.forEach((view) => view.tick());
  }));
  return {
    node,
    offer: (pellets) => {
      const waits = waitsOf(pellets);
      const same = JSON.stringify(waits) === JSON.stringify(offered);
      offered = waits;
      if (!same) fill();
    },
  };
}

// Three standings: nothing runs, something runs, something has ended.
function timerView(wait) {
  const timer = timerOf(wait);
  const over = Boolean(timer) && !runs(timer, Date.now());
  const count = make("span", { class: "count" });
  const state = make("span", { class: "state" });
  const where = wait.strategy === bank.strategy.name ? "" : ` (${wait.strategy})`;
  const node = make("div", { class: `timer ${timer ? over ? "over" : "running" : "idle"}`, role: "group", "aria-label": wait.pellet },
    make("div", {}, make("p", { class: "what" }, `${wait.pellet}${where}`), timer ? make("p", { class: "when" }, count, " ", state) : null),
    make("p", { class: "does" }, ...timerButtons(wait, timer, over)));
  function tick() {
    if (!timer) return;
    const left = timer.ends - Date.now();
    const soaking = timer.step === "soak";
    setText(count, left > 0 ? countdownOf(left) : soaking ? "Drain now" : "Ready");
    setText(state, left > 0 ? `${soaking ? "under water, drain at" : "covered, ready at"} ${clockOf(timer.ends)}` : `since ${clockOf(timer.ends)}, ${agoOf(-left)}`);
  }
  tick();
  return { node, wait, tick, isOther: () => timerOf(wait) !== timer || (Boolean(timer) && over === runs(timer, Date.now())) };
}

function timerButtons(wait, timer, over) {
  if (!timer) {
    const begin = (step, text, kind) => (wait[step] > 0 ? button(`${text} ${lengthOf(wait[step])}`, () => startTimer(wait, step), kind) : null);
    return [begin("soak", "Soak", "main"), begin("stand", "Stand", wait.soak > 0 ? "quiet" : "main")];
  }
  if (!over) return [twiceButton("Stop", "Tap again to stop", () => stopTimer(timer), "quiet")];
  const stands = timer.step === "soak" && timer.stand > 0;
  return [stands ? button("Start the stand", () => startStand(timer), "main") : null, button("Done", () => stopTimer(timer), stands ? "quiet" : "main")];
}
