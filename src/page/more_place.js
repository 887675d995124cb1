"use strict";

// More: the places that are not in the bar, one line each on what is there, and how the page looks.

const placeLines = {
  drop: ["Drop", "where it breaks, lands and lies"],
  money: ["Money", "what it costs, what to buy"],
  shed: ["Shed", "what is there, bought and used"],
  day: ["Day", "which way to feed today"],
  notes: ["Notes", "what was mixed, fed and caught"],
};

function morePlace(section) {
  const lines = Object.entries(placeLines).filter(([name]) => places[name]).map(([name, [title, words]]) =>
    make("li", {}, make("button", { type: "button", class: "way", "data-place": name, click: () => goToPlace(name) }, make("b", {}, title), " ", make("span", {}, words))));
  const home = typeof homeScreenPart === "function" ? homeScreenPart() : null;
  section.append(make("ul", { class: "ways" }, ...lines), make("div", { class: "question" }, lookField()), ...(home ? [home] : []));
}
