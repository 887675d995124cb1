"use strict";

// The plan of a session, what of it is due, and how a feed is called.

// By strategy and anglers: feeds and what is soaked. Null while the engine is not open, or where it has no plan. Asked anew
// where the engine is another, or was told something of the person's own.
const plannedSessions = { engine: null, told: "", plans: new Map() };

function plannedSession(strategy, people) {
  if (!bank.engine) return null;
  if (plannedSessions.engine !== bank.engine || plannedSessions.told !== ownTold.text) Object.assign(plannedSessions, { engine: bank.engine, told: ownTold.text, plans: new Map() });
  const key = JSON.stringify([strategy, people]);
  if (!plannedSessions.plans.has(key)) {
    tellOwnThings();
    plannedSessions.told = ownTold.text;
    const reply = askEngine({ ask: "plan", words: [strategy], flags: flagsOf({ "--people": people, ...usualOfPlan() }), give: ["json"] });
    plannedSessions.plans.set(key, reply.errors || !reply.json ? null : reply.json);
  }
  return plannedSessions.plans.get(key);
}

function feedPeople() {
  return bank.kept.feed.people || String(bank.data.people || 1);
}

// "3 cups of 250 ml, silt bed": how a feed of the plan is called. Its size is the strategy's own.
function wordsOfFeed(feed) {
  const size = feed.diameter_mm === null ? `${Number(feed.size_ml.toPrecision(3))} ml` : `${Number(feed.diameter_mm.toPrecision(3))} mm`;
  if (feed.as === "loose") return `${feed.count === 1 ? "" : `${feed.count} times `}${size} loose, ${feed.of}`;
  return `${feed.count} ${feed.count === 1 ? feed.as : `${feed.as}s`} of ${size}, ${feed.of}`;
}

// All that goes in at the same minute.
function wordsOfFeeds(feeds) {
  return feeds.map(wordsOfFeed).join("; and ");
}

function momentOfFeed(feed) {
  return bank.kept.feed.start + feed.minute * minuteMs;
}

function endOfSession(plan) {
  return bank.kept.feed.start + (plan ? plan.length_minutes : bank.strategy.length_minutes) * minuteMs;
}

// By its number in the plan; where the plan is another by now, what was put in must be the same.
function putOfFeed(feeds, index) {
  return bank.kept.feed.puts.find((put) => put.feed === index && put.of === feeds[index].of);
}

const minutesDueOf = new WeakMap();

function minutesDue(feeds, index) {
  if (!minutesDueOf.has(feeds)) minutesDueOf.set(feeds, feeds.map((_, at) => minutesUntilNext(feeds, at)));
  return minutesDueOf.get(feeds)[index];
}

// How long a feed stays due: until the next of its kind, else until whatever comes next, else as long as the one before it did.
function minutesUntilNext(feeds, index) {
  const feed = feeds[index];
  const isKin = (other) => other.of === feed.of && other.as === feed.as;
  const later = feeds.filter((other) => other.minute > feed.minute);
  const next = later.find(isKin) || later[0];
  if (next) return next.minute - feed.minute;
  const before = feeds.filter((other) => other.minute < feed.minute && isKin(other)).pop();
  return before ? feed.minute - before.minute : 60;
}

// {due, missed, next, over}, by their numbers in the plan. After the end nothing is due or missed any more.
function standingOf(plan, now) {
  const feeds = plan ? plan.feeds : [];
  const standing = { due: [], missed: [], next: -1, over: now >= endOfSession(plan) };
  if (standing.over) return standing;
  feeds.forEach((feed, index) => {
    const since = now - momentOfFeed(feed);
    if (putOfFeed(feeds, index)) return;
    if (since < 0) {
      if (standing.next < 0) standing.next = index;
    } else {
      standing[since >= minutesDue(feeds, index) * minuteMs ? "missed" : "due"].push(index);
    }
  });
  return standing;
}

// What a press puts in: what has been due longest, else what is due within two minutes, else once more of what went in last.
function feedAtHand(plan, now) {
  const feeds = plan ? plan.feeds : [];
  const { due, next } = standingOf(plan, now);
  const index = due.length ? due[0] : next >= 0 && momentOfFeed(feeds[next]) - now <= soonEnough ? next : -1;
  if (index >= 0) return { feed: index, of: feeds[index].of, words: wordsOfFeed(feeds[index]) };
  const last = [...bank.kept.feed.puts].reverse().find((put) => put.of);
  const of = last ? last.of : feeds.length ? feeds[0].of : "";
  return { feed: null, of, words: of ? `once more, ${of}` : "" };
}
