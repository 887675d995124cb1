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
    const last = feeds.findLast((feed) => momentOfFeed(feed) <= now);
    const coming = feeds.find((feed) => momentOfFeed(feed) > now);
    const waits = last ? feeds.filter((feed, index) => feed.minute === last.minute && !putOfFeed(index)) : [];
    due.hidden = !waits.length;
    if (waits.length) setText(due, `Due ${agoOf(now - momentOfFeed(last))}: ${wordsOfFeeds(waits)}`);
    const then = coming ? feeds.filter((feed) => feed.minute === coming.minute) : [];
    setText(next, coming ? `Next feed in ${untilOf(momentOfFeed(coming) - now)}: ${wordsOfFeeds(then)}` : "No more feeds in the plan.");
  }
  return { node, tick };
}
