"use strict";

// The places: one is in sight, and each is built when it is first wanted. A place is a function of its name, `mixPlace(section)`;
// one whose script is not in this page is not offered.

const placeOrder = ["mix", "tub", "soak", "feed", "more", "drop", "money", "shed", "day", "notes"];
const placesInBar = placeOrder.slice(0, 5);
const places = Object.fromEntries(placeOrder.map((name) => [name, window[`${name}Place`]]).filter(([, build]) => typeof build === "function"));
const built = new Set();
const scrolled = {};
const shownAgain = {};

function buildPlace(name) {
  if (built.has(name)) return;
  built.add(name);
  const build = bank.engine || placesWithoutEngine.has(name) ? places[name] : plainPlace;
  settledKept(() => build(byId(`place-${name}`).querySelector(".content"), name));
}

// What a place asks or tells anew whenever it comes into sight: other places may have changed what it goes by.
function whenShown(name, work) {
  shownAgain[name] = work;
}

function placeButtons() {
  return [...document.querySelectorAll("nav button[data-place]")];
}

function showPlace(name) {
  if (bank.drawn) scrolled[bank.kept.place] = window.scrollY;
  bank.kept.place = name;
  for (const place of placeOrder) byId(`place-${place}`).hidden = place !== name;
  const inBar = placesInBar.includes(name) ? name : "more";
  for (const one of placeButtons()) {
    if (one.dataset.place === inBar) one.setAttribute("aria-current", name === inBar ? "page" : "true");
    else one.removeAttribute("aria-current");
  }
  if (built.has(name) && shownAgain[name]) shownAgain[name]();
  buildPlace(name);
  showDock(name);
  if (bank.drawn) window.scrollTo(0, scrolled[name] || 0);
  standAsBefore(name);
}

// A person goes there: what was in sight is one step back.
function goToPlace(name) {
  if (name !== bank.kept.place) stepInto(name);
  showPlace(name);
  keepSoon();
}

// Forgets what was built, for another strategy or other data.
function clearPlaces() {
  for (const stop of bank.ticking) stop();
  bank.ticking = [];
  bank.whenDrawn = [];
  built.clear();
  clearDocks();
  for (const name of placeOrder) {
    byId(`place-${name}`).querySelector(".content").replaceChildren();
    delete scrolled[name];
    delete shownAgain[name];
  }
}

function watchPlaces() {
  for (const one of placeButtons()) {
    one.hidden = !places[one.dataset.place];
    one.addEventListener("click", () => goToPlace(one.dataset.place));
  }
  watchSteps();
  watchPaper();
}
