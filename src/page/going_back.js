"use strict";

// Back goes back: to the place before, and out of a sheet that is open. Each step is an entry of the browser's history, which
// holds the place, how far it was scrolled, and the sheet.

const sheets = {};

function stateNow() {
  return { place: bank.kept.place, scroll: Math.round(window.scrollY) };
}

// An address is left as it is: a file has none that could change.
function stepInto(place) {
  history.replaceState({ ...history.state, ...stateNow() }, "");
  history.pushState({ place, scroll: 0 }, "");
}

function showStep(state) {
  for (const [name, sheet] of Object.entries(sheets)) if (!state || state.sheet !== name) sheet.hide();
  if (!state || !places[state.place]) return;
  if (state.place !== bank.kept.place) {
    scrolled[state.place] = state.scroll;
    showPlace(state.place);
    keepSoon();
  }
  if (state.sheet && sheets[state.sheet]) sheets[state.sheet].show();
}

let cameBack = null;  // where a reloaded page stood

function watchSteps() {
  history.scrollRestoration = "manual";
  cameBack = history.state;
  history.replaceState({ ...cameBack, sheet: undefined }, "");
  window.addEventListener("popstate", (event) => showStep(event.state));
  // Once a scroll has come to rest: what is noted while a page goes away is lost.
  let resting = 0;
  window.addEventListener("scroll", () => {
    clearTimeout(resting);
    resting = setTimeout(() => {
      if (bank.kept && bank.drawn) history.replaceState({ ...history.state, ...stateNow() }, "");
    }, 150);
  }, { passive: true });
}

// A reloaded page stands where it stood, once its place has been drawn.
function standAsBefore(place) {
  if (!cameBack || !bank.engine) return;
  const { scroll } = cameBack.place === place ? cameBack : { scroll: 0 };
  cameBack = null;
  if (scroll) afterFrame(() => window.scrollTo(0, scroll));
}

// A sheet over the place, for one thing to be chosen or made: {body, open(), close()}. Back closes it, and so does its own way out.
function sheetOver({ title, closed = () => {} }) {
  const name = newId("sheet");
  const head = newId("head");
  const body = make("div", { class: "content" });
  const node = make("dialog", { class: "sheet", "aria-labelledby": head }, make("div", { class: "sheet-head" }, make("h2", { id: head, class: "plain-head" }, title), button("Back", () => close(), "quiet")), body);
  node.addEventListener("cancel", (event) => {
    event.preventDefault();
    close();
  });
  let opener = null;
  function show() {
    if (!node.isConnected) byId("card").append(node);
    if (!node.open) node.showModal();
  }
  function hide() {
    if (!node.open) return;
    node.close();
    node.remove();
    delete sheets[name];
    if (opener && opener.isConnected) opener.focus();
    closed();
  }
  function open() {
    opener = document.activeElement;
    sheets[name] = { show, hide };
    history.replaceState({ ...history.state, ...stateNow() }, "");
    history.pushState({ ...stateNow(), sheet: name }, "");
    show();
  }
  function close() {
    if (history.state && history.state.sheet === name) history.back();
    else hide();
  }
  return { node, body, open, close };
}
