"use strict";

// The five places. One is in sight, and each is built when it is first wanted.

const places = { mix: mixPlace, soak: soakPlace, feed: feedPlace, drop: dropPlace, notes: notesPlace };
const built = new Set();
const scrolled = {};

function buildPlace(name) {
  if (built.has(name)) return;
  if (!bank.engine && (name !== "mix" || mixIsToCome())) {
    bank.missed = true;  // it is built as soon as the engine is open
    return;
  }
  built.add(name);
  if (name !== "mix") readTheRest();
  places[name](byId(`place-${name}`).querySelector(".content"));
}

function placeButtons() {
  return [...document.querySelectorAll("nav button[data-place]")];
}

function showPlace(name) {
  if (bank.drawn) scrolled[bank.kept.place] = window.scrollY;
  bank.kept.place = name;
  for (const place of Object.keys(places)) byId(`place-${place}`).hidden = place !== name;
  for (const one of placeButtons()) {
    if (one.dataset.place === name) one.setAttribute("aria-current", "page");
    else one.removeAttribute("aria-current");
  }
  buildPlace(name);
  if (name === "notes") notesView.rewrite();
  if (bank.drawn) window.scrollTo(0, scrolled[name] || 0);
}

// Forgets what was built, for another strategy or other data.
function clearPlaces() {
  for (const stop of bank.ticking) stop();
  bank.ticking = [];
  bank.whenMore = [];
  bank.whenDrawn = [];
  built.clear();
  for (const name of Object.keys(places)) {
    byId(`place-${name}`).querySelector(".content").replaceChildren();
    delete scrolled[name];
  }
}

function watchPlaces() {
  for (const one of placeButtons()) {
    one.addEventListener("click", () => {
      byId("notice").hidden = true;
      showPlace(one.dataset.place);
      keepSoon();
    });
  }
  // A printed page has all the places, one after the other.
  window.addEventListener("beforeprint", () => {
    Object.keys(places).forEach(buildPlace);
    drawWaiting();
  });
}
