"use strict";

// The dock: each place's strip above the navigation, in reach of the thumb. Only that of the place in sight is shown.

const docks = {};

function dockOf(place) {
  if (!docks[place]) {
    docks[place] = make("div", { class: "dock", role: "group", "aria-label": "At hand", hidden: true });
    byId("docks").append(docks[place]);
    docks[place].hidden = !bank.kept || bank.kept.place !== place;
  }
  return docks[place];
}

function showDock(place) {
  for (const [name, dock] of Object.entries(docks)) dock.hidden = name !== place;
}

function clearDocks() {
  for (const name of Object.keys(docks)) {
    docks[name].remove();
    delete docks[name];
  }
}
