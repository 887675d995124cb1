"use strict";

// What to do now and next, and one big button for a wet thumb that puts it in, with how many have gone in and how long ago the last did.

const sameTap = 1500;  // ms; a second tap within it is the same one

function counterPart(session, changed) {
  const kept = bank.kept.feed;
  const what = make("span", { class: "what" }, "Put in");
  const words = make("span", { class: "words" });
  const count = make("span", { class: "count" });
  const since = make("span", { class: "state" });
  const big = make("button", { type: "button", class: "put-in", click: onceATap(() => putIn(session.plan, feedAtHand(session.plan, Date.now()), changed)) }, what, words, count, since);
  const undo = button("Take back the last", () => takeBack(kept.puts[kept.puts.length - 1], changed), "quiet");
  const coming = nextFeedLine(session);
  function tick() {
    coming.tick();
    const now = Date.now();
    const last = kept.puts[kept.puts.length - 1];
    setText(words, feedAtHand(session.plan, now).words);
    setText(count, String(kept.puts.length));
    setText(since, last ? `last ${agoOf(now - last.at)}, at ${clockOf(last.at)}` : "none yet");
    big.hidden = now >= endOfSession(session.plan) + fishedOn;
    undo.hidden = !last || big.hidden;
  }
  return { node: make("div", { class: "counter" }, coming.node, big, undo), tick };
}

// A button that takes two quick taps for one.
function onceATap(action) {
  let tapped = 0;
  return () => {
    const now = Date.now();
    if (Math.abs(now - tapped) < sameTap) return;
    tapped = now;
    action();
  };
}

const fishedOn = 60 * minuteMs;  // the button stays for who fishes on past the end

// Keeps what goes in, says so, and offers to take it back for as long as the message stands.
function putIn(plan, { of, feed }, changed) {
  const put = { id: newMark(), at: Date.now(), of, feed };
  armAlarm();
  bank.kept.feed.puts.push(put);
  if (feed !== null && plan) hushFeed(momentOfFeed(plan.feeds[feed]));
  changed();
  notice(`In at ${clockOf(put.at)}: ${feed === null || !plan ? of || "a put-in" : wordsOfFeed(plan.feeds[feed])}.`, { action: { text: "Take back", act: () => takeBack(put, changed) } });
}

function takeBack(put, changed) {
  if (!put) return;
  const kept = bank.kept.feed;
  if (!kept.puts.some((one) => one.id === put.id)) return;
  kept.puts = kept.puts.filter((one) => one.id !== put.id);
  changed();
  notice(`Taken back: ${putsOf(kept.puts.length)} now.`);
}

function putsOf(count) {
  return count === 1 ? "1 put-in" : `${count} put-ins`;
}

// What is due, what goes in next, and what was missed, quietly and in one line.
function nextFeedLine(session) {
  const due = make("p", { class: "due" });
  const next = make("p", { class: "next" });
  const missed = make("p", { class: "hint" });
  const node = make("div", { class: "coming" }, due, next, missed);
  function tick() {
    if (!session.plan || bank.kept.feed.start === null) return;
    const feeds = session.plan.feeds;
    const now = Date.now();
    const standing = standingOf(session.plan, now);
    node.hidden = standing.over;
    due.hidden = !standing.due.length;
    if (standing.due.length) setText(due, `${dueSince(now - momentOfFeed(feeds[standing.due[0]]))}: ${wordsOfFeeds(standing.due.map((index) => feeds[index]))}`);
    const coming = feeds[standing.next];
    const then = coming ? feeds.filter((feed, index) => feed.minute === coming.minute && !putOfFeed(feeds, index)) : [];
    setText(next, coming ? `${standing.due.length ? "Then" : "Next"} in ${untilOf(momentOfFeed(coming) - now)}: ${wordsOfFeeds(then)}` : "No more feeds in the plan.");
    missed.hidden = !standing.missed.length;
    if (standing.missed.length) setText(missed, wordsOfMissed(feeds, standing.missed));
  }
  return { node, tick };
}

function dueSince(span) {
  return span < minuteMs ? "Now" : `Now, due ${agoOf(span)}`;
}

// "Missed: 10:30, 11:10." and of many, how many from when to when.
function wordsOfMissed(feeds, missed) {
  const clocks = [...new Set(missed.map((index) => clockOf(momentOfFeed(feeds[index]))))];
  return clocks.length <= 3 ? `Missed: ${clocks.join(", ")}.` : `Missed: ${missed.length} feeds, from ${clocks[0]} to ${clocks[clocks.length - 1]}.`;
}
