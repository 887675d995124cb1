"use strict";

// A slider with a step down and a step up beside it. It stretches to what was typed, and back. It is moved by its thumb alone, so
// that a swipe over it scrolls (the style sheet lets only the thumb be touched); a swipe that begins on the thumb and turns out to
// scroll moves it back.

function sliderRow({ label, moved }) {
  const id = newId("slider");
  const input = make("input", { type: "range", id, "aria-label": label, input: () => moved(Number(input.value)) });
  let held = null;  // where it stood when the thumb was taken
  input.addEventListener("pointerdown", () => { held = input.value; });
  input.addEventListener("pointerup", () => { held = null; });
  input.addEventListener("pointercancel", () => {
    if (held === null || input.value === held) return;
    input.value = held;
    moved(Number(held));
  });
  let reachesTo = 0;
  const move = (by) => () => {
    input.value = String(Number(input.value) + by * Number(input.step));
    moved(Number(input.value));
  };
  const node = make("div", { class: "slider" },
    make("button", { type: "button", "aria-label": "A step less", click: move(-1) }, "\u2212"),
    input,
    make("button", { type: "button", "aria-label": "A step more", click: move(1) }, "+"));
  function reach({ least, most, step }) {
    input.min = String(least);
    input.max = String(most);
    reachesTo = most;
    input.step = String(step);
  }
  function put(number, words) {
    if (Number.isFinite(number)) {
      if (held === null) input.max = String(Math.max(reachesTo, Math.ceil(number)));
      input.value = String(number);
    }
    input.setAttribute("aria-valuetext", words);
  }
  return { node, input, reach, put };
}
