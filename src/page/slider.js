"use strict";

// A slider with a step down and a step up beside it. It stretches to what was typed.

function sliderRow({ label, moved }) {
  const id = newId("slider");
  const input = make("input", { type: "range", id, "aria-label": label, input: () => moved(Number(input.value)) });
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
    input.step = String(step);
  }
  function put(number, words) {
    if (Number.isFinite(number)) {
      if (number > Number(input.max)) input.max = String(Math.ceil(number));
      input.value = String(number);
    }
    input.setAttribute("aria-valuetext", words);
  }
  return { node, input, reach, put };
}
