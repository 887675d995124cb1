"use strict";

// The counter: one big button for a wet thumb, how many have gone in, and how long ago the last did.

function counterPart(session, changed) {
  const kept = bank.kept.feed;
  const count = make("span", { class: "count" });
  const since = make("span", { class: "state" });
  const big = make("button", { type: "button", class: "put-in", click: () => putIn("", null) }, make("span", { class: "what" }, "Put in"), count, since);
  const undo = button("Undo the last", () => {
    kept.puts.pop();
    changed();
    announce(putsOf(kept.puts.length));
  }, "quiet");
  function putIn(of, feed) {
    kept.puts.push({ at: Date.now(), of, feed });
    changed();
    announce(putsOf(kept.puts.length));
  }
  const coming = nextFeedLine(session);
  function tick() {
    coming.tick();
    const last = kept.puts[kept.puts.length - 1];
    setText(count, String(kept.puts.length));
    setText(since, last ? `last ${agoOf(Date.now() - last.at)}, at ${clockOf(last.at)}` : "none yet");
    undo.disabled = !last;
  }
  return { node: make("div", { class: "part counter" }, coming.node, big, undo), tick };
}

function putsOf(count) {
  return count === 1 ? "1 put-in" : `${count} put-ins`;
}

// "3 cups of silt bed": how a feed of the plan is called.
function wordsOfFeed(feed) {
  if (feed.as === "loose") return `${feed.of}, loose`;
  return `${feed.count} ${feed.count === 1 ? feed.as : `${feed.as}s`} of ${feed.of}`;
}

function momentOfFeed(feed) {
  return bank.kept.feed.start + feed.minute * minuteMs;
}

function putOfFeed(index) {
  return bank.kept.feed.puts.find((put) => put.feed === index);
}

// What goes in next by the plan, and what is due and not ticked off.
function nextFeedLine(session) {
  const due = make("p", { class: "due" });
  const next = make("p", { class: "next" });
  const node = make("div", { class: "coming" }, due, next);
  function tick() {
    if (!session.plan || bank.kept.feed.start === null) return;
    const feeds = session.plan.feeds;
    const now = Date.now();
    const last = feeds.findLastIndex((feed) => momentOfFeed(feed) <= now);
    const coming = feeds.find((feed) => momentOfFeed(feed) > now);
    const waits = last >= 0 && !putOfFeed(last);
    due.hidden = !waits;
    if (waits) setText(due, `Due ${agoOf(now - momentOfFeed(feeds[last]))}: ${wordsOfFeed(feeds[last])}`);
    setText(next, coming ? `Next feed in ${spanOf(momentOfFeed(coming) - now)}: ${wordsOfFeed(coming)}` : "No more feeds in the plan.");
  }
  return { node, tick };
}
