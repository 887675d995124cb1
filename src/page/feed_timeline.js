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
  const node = make("div", { class: "part" }, make("h3", {}, "By the plan"), list, all);
  let whole = false;
  let views = [];
  let from = 0;
  function fill() {
    const feeds = session.plan ? session.plan.feeds : [];
    const short = feeds.length <= shortPlan;
    from = sightOf(feeds);
    const window = whole || short ? { from: 0, to: feeds.length } : { from, to: from + feedsInSight };
    const at = views.findIndex((view) => view.node.contains(document.activeElement));
    const index = at < 0 ? -1 : views[at].index;
    views = feeds.slice(window.from, window.to).map((_, offset) => feedView(session.plan, window.from + offset, changed));
    list.replaceChildren(...views.map((view) => view.node));
    const again = views.find((view) => view.index === index);
    if (again) again.box.focus();
    node.hidden = bank.kept.feed.start === null || !feeds.length;
    all.hidden = short;
    setText(all, whole ? "Only those about now" : `All ${feeds.length} feeds`);
  }
  function tick() {
    if (session.plan && !whole && sightOf(session.plan.feeds) !== from) fill();
    const standing = session.plan && bank.kept.feed.start !== null ? standingOf(session.plan, Date.now()) : null;
    if (standing) views.forEach((view) => view.tick(standing));
  }
  return { node, fill, tick };
}

// The number of the first in sight: two before the next one, or as near to it as there are.
function sightOf(feeds) {
  const now = Date.now();
  const start = bank.kept.feed.start;
  const coming = start === null ? 0 : feeds.findIndex((feed) => momentOfFeed(feed) > now);
  const first = coming < 0 ? feeds.length - feedsInSight : coming - 2;
  return Math.max(0, Math.min(first, feeds.length - feedsInSight));
}

function feedView(plan, index, changed) {
  const feed = plan.feeds[index];
  const put = putOfFeed(plan.feeds, index);
  const id = newId("feed");
  const box = make("input", { type: "checkbox", id, change: () => tickOff(plan, index, box.checked, changed) });
  const state = make("span", { class: "state" });
  box.checked = Boolean(put);
  const node = make("li", {}, box, make("label", { for: id },
    make("span", { class: "clock" }, bank.kept.feed.start === null ? "" : clockOf(momentOfFeed(feed))), " ", make("span", { class: "words" }, wordsOfFeed(feed)), " ", state));
  function tick({ due, missed }) {
    const late = due.includes(index);
    node.classList.toggle("late", late);
    setText(state, put ? `in at ${clockOf(put.at)}` : late ? "due" : missed.includes(index) ? "missed" : "");
  }
  return { node, box, index, tick };
}

function tickOff(plan, index, done, changed) {
  if (done) putIn(plan, { of: plan.feeds[index].of, feed: index }, changed);
  else takeBack(putOfFeed(plan.feeds, index), changed);
}
