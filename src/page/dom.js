"use strict";

// Elements made from plain words. Text is always text, never markup.

const handledEvents = new Set(["click", "input", "change", "submit", "toggle"]);

function make(tag, attributes = {}, ...children) {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (value === null || value === undefined || value === false) continue;
    if (handledEvents.has(name)) element.addEventListener(name, value);
    else element.setAttribute(name, value === true ? "" : value);
  }
  element.append(...children.filter((child) => child !== null && child !== undefined));
  return element;
}

function byId(id) {
  return document.getElementById(id);
}

// An element that holds one text, which changes without new nodes.
function setText(element, text) {
  const node = element.firstChild;
  if (node && node.nodeType === Node.TEXT_NODE && !node.nextSibling) {
    if (node.data !== text) node.data = text;
  } else {
    element.textContent = text;
  }
}

let idsGiven = 0;

function newId(word) {
  idsGiven += 1;
  return `${word}-${idsGiven}`;
}

const waitingForFrame = new Set();

// Runs the work once in the next frame, however often it was asked for until then.
function oncePerFrame(work) {
  return () => {
    if (waitingForFrame.has(work)) return;
    waitingForFrame.add(work);
    requestAnimationFrame(() => {
      if (waitingForFrame.delete(work)) work();
    });
  };
}

// A printer waits for no frame.
function drawWaiting() {
  for (const work of waitingForFrame) {
    waitingForFrame.delete(work);
    work();
  }
}

function button(text, click, kind = "") {
  return make("button", { type: "button", class: kind || null, click }, text);
}

// A button that loses something: it acts on a second tap within five seconds.
function twiceButton(text, again, action, kind = "") {
  let armed = 0;
  const element = button(text, () => {
    if (armed) {
      disarm();
      action();
      return;
    }
    setText(element, again);
    element.classList.add("armed");
    announce(again);
    armed = setTimeout(disarm, 5000);
  }, kind);
  function disarm() {
    clearTimeout(armed);
    armed = 0;
    setText(element, text);
    element.classList.remove("armed");
  }
  return element;
}

let announcing = 0;

// Told to a screen reader, once things have come to rest.
function announce(text) {
  clearTimeout(announcing);
  announcing = setTimeout(() => setText(byId("spoken"), text), 700);
}
