"use strict";

// Watches all that runs, whichever strategy and place is open: rings for what has just ended or come due, tells it in the message bar,
// and keeps the screen awake. What ended while the page was away is only told.

const soonEnough = 2 * minuteMs;  // what is due so soon can be put in already
const justNow = 90 * 1000;  // a page out of sight is woken once a minute at most

function watchTimers() {
  eachSecond(() => {
    if (!bank.kept || !bank.shared) return;
    const now = Date.now();
    mendTimers(now);
    takeEndMessages(now);
    takeFeedMessages(now);
    watchEnded(now);
    watchSessions(now);
    keepAwake(somethingRuns(now));
  });
  document.addEventListener("pointerdown", () => {
    if (bank.shared && somethingRuns(Date.now())) armAlarm();
  }, true);
}

function somethingRuns(now) {
  return bank.shared.timers.some((timer) => runs(timer, now)) || bank.shared.sessions.some((session) => isCarried(session.strategy) && isLive(session, now));
}

// Another page on the same phone may have strategies that this one does not carry.
function isCarried(name) {
  return bank.library.strategies.some((strategy) => strategy.name === name);
}

function watchEnded(now) {
  const ended = bank.shared.timers.filter((timer) => !timer.rung && !runs(timer, now));
  if (!ended.length) return;
  if (ended.some((timer) => now - timer.ends < justNow)) ring(tunes.timer);
  for (const timer of ended) timer.rung = true;
  keepNow();
  for (const timer of ended) endMessages.set(timer.id, { take: notice(wordsOfEnd(timer, now), { stays: true, action: actionAtEnd(timer) }), until: now + endToldFor });
}

// What tells the end of a timer goes with the timer, or when it is old: Soak tells it on.
const endMessages = new Map();
const endToldFor = 30 * minuteMs;

function takeEndMessages(now) {
  for (const [id, { take, until }] of endMessages) {
    if (now < until && bank.shared.timers.some((timer) => timer.id === id)) continue;
    endMessages.delete(id);
    take();
  }
}

function wordsOfEnd(timer, now) {
  const since = now - timer.ends < minuteMs ? "" : `, since ${clockOf(timer.ends)}`;
  return timer.step === "soak" ? `Drain the ${timer.pellet} now${since}.` : `The ${timer.pellet} is ready${since}.`;
}

function actionAtEnd(timer) {
  if (timer.step !== "soak" || !timer.stand) return { text: "Done", act: () => stopTimer(timer) };
  return { text: "Start the stand", act: () => startStand(timer) };
}

function isLive(session, now) {
  return session.start <= now && now < session.start + session.minutes * minuteMs;
}

// Each feed is told once, when it comes due; a session that has ended is watched no longer.
function watchSessions(now) {
  const still = bank.shared.sessions.filter((session) => now < session.start + session.minutes * minuteMs);
  if (still.length < bank.shared.sessions.length) {
    bank.shared.sessions = still;
    keepNow();
  }
  for (const session of still) if (isCarried(session.strategy)) watchSession(session, now);
}

function watchSession(session, now) {
  if (session.heard === null || session.heard > now + soonEnough) session.heard = now;
  const plan = plannedSession(session.strategy, session.people);
  if (!plan) return;
  const momentOf = (feed) => session.start + feed.minute * minuteMs;
  const isOut = (index) => session.strategy !== bank.strategy.name || !putOfFeed(plan.feeds, index);
  const due = plan.feeds.filter((feed, index) => momentOf(feed) > session.heard && momentOf(feed) <= now && isOut(index));
  if (!due.length) return;
  session.heard = now;
  keepNow();
  const latest = due.filter((feed) => feed.minute === due[due.length - 1].minute);
  if (now - momentOf(latest[0]) >= justNow || session.quiet) return;
  ring(tunes.feed);
  if (!isInSight(session)) tellFeed(session, `Put in now: ${wordsOfFeeds(latest)}.`, now);
}

// A feed that is due is told for a minute, or until one is there; of each session only the last.
const feedMessages = new Map();
const feedToldFor = 60 * 1000;

function tellFeed(session, words, now) {
  takeFeedMessage(session.strategy);
  const take = notice(words, { stays: true, action: { text: "Go to Feed", act: () => goToFeed(session.strategy) } });
  feedMessages.set(session.strategy, { take, until: now + feedToldFor });
}

function takeFeedMessage(strategy) {
  const message = feedMessages.get(strategy);
  feedMessages.delete(strategy);
  if (message) message.take();
}

function takeFeedMessages(now) {
  for (const [strategy, { until }] of feedMessages) if (now >= until || isInSight({ strategy })) takeFeedMessage(strategy);
}

function goToFeed(strategy) {
  const pick = byId("strategies").querySelector("select");
  if (strategy !== bank.strategy.name && pick) {
    pick.value = strategy;
    pick.dispatchEvent(new Event("change"));
  }
  goToPlace("feed");
}

function isInSight(session) {
  return session.strategy === bank.strategy.name && bank.kept.place === "feed" && !document.hidden;
}
