"use strict";

// What is printed: the plan, the mix and the soak, each built and unfolded, and lines to write notes on.

const emptyNoteLines = 8;

function watchPaper() {
  let unfolded = [];
  window.addEventListener("beforeprint", () => {
    const sections = [...document.querySelectorAll("section.on-paper")];
    for (const section of sections) buildPlace(section.id.slice("place-".length));
    drawWaiting();
    unfolded = sections.flatMap((section) => [...section.querySelectorAll("details:not([open])")]).filter((fold) => fold.querySelector(".answer"));
    for (const fold of unfolded) fold.open = true;
    fillPaperNotes();
  });
  window.addEventListener("afterprint", () => {
    for (const fold of unfolded) fold.open = false;
    byId("paper-notes").replaceChildren();
  });
}

// What was noted stands above the empty lines.
function fillPaperNotes() {
  const words = (bank.kept.notes && bank.kept.notes.note) || "";
  byId("paper-notes").replaceChildren(make("h3", { class: "title" }, "Notes"), ...(words ? [make("p", {}, words)] : []),
    ...Array.from({ length: emptyNoteLines }, () => make("hr")));
}
