"use strict";

// The feeds of the plan by the clock, to tick off. A tick counts as a put-in.

// A plan with a few more than are in sight is shown whole.
const feedsInSight = 6, shortPlan = 8;

function timelinePart(session, changed) {
  const list = make("ul", { class: "timeline" });
  const all = button("", () => {
    whole = !whole;
    fill();
  }, "quiet");
  const slow = make("p", { hidden: true });
  const node = make("div", { class: "part" }, make("h3", {}, "By the plan"), list, all, slow);
  let whole = false;
  let views = [];
  function fill() {
    const feeds = session.plan ? session.plan.feeds : [];
    const short = feeds.length <= shortPlan;
    const window = whole || short ? { from: 0, to: feeds.length } : sightOf(feeds);
    const at = views.findIndex((view) => view.node.contains(document.activeElement));
    const index = at < 0 ? -1 : views[at].index;
    views = feeds.slice(window.from, window.to).map((feed, offset) => feedView(feed, window.from + offset, changed));
    list.replaceChildren(...views.map((view) => view.node));
    const again = views.find((view) => view.index === index);
    if (again) again.box.focus();
    all.hidden = short;
    const kept = (session.plan && session.plan.when_slow) || [];
    slow.hidden = kept.length === 0;
    setText(slow, kept.map(wordsWhenSlow).join(" "));
    setText(all, whole ? "Only those about now" : `All ${feeds.length} feeds`);
  }
  return { node, fill, tick: () => views.forEach((view) => view.tick()) };
}

// "When bites slow: 1 ball of 45 mm, silt bed (reckoned 3 times)."
function wordsWhenSlow(feed) {
  return `When bites slow: ${wordsOfFeed(feed)} (reckoned ${feed.expected === 1 ? "once" : `${feed.expected} times`}).`;
}

// The last one before now, and the next few.
function sightOf(feeds) {
  const now = Date.now();
  const start = bank.kept.feed.start;
  const coming = start === null ? 0 : feeds.findIndex((feed) => momentOfFeed(feed) > now);
  const first = coming < 0 ? feeds.length - feedsInSight : coming - 2;
  const from = Math.max(0, Math.min(first, feeds.length - feedsInSight));
  return { from, to: from + feedsInSight };
}

function feedView(feed, index, changed) {
  const put = putOfFeed(index);
  const id = newId("feed");
  const box = make("input", { type: "checkbox", id, change: () => tickOff(feed, index, box.checked, changed) });
  const state = make("span", { class: "state" });
  box.checked = Boolean(put);
  const node = make("li", {}, box, make("label", { for: id },
    make("span", { class: "clock" }, bank.kept.feed.start === null ? "" : clockOf(momentOfFeed(feed))), " ", make("span", { class: "words" }, wordsOfFeed(feed)), " ", state));
  function tick() {
    const now = Date.now();
    const late = !put && momentOfFeed(feed) <= now;
    node.classList.toggle("late", late);
    setText(state, put ? `in at ${clockOf(put.at)}` : late ? "due" : "");
  }
  tick();
  return { node, box, index, tick };
}

function tickOff(feed, index, done, changed) {
  const kept = bank.kept.feed;
  kept.puts = kept.puts.filter((put) => put.feed !== index);
  if (done) kept.puts.push({ at: Date.now(), of: feed.of, feed: index });
  changed();
}
