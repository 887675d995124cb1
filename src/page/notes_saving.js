"use strict";

// Ways out of the phone for the notes: to look at, copy, share and download; and for all data, there and back.

// Letters, digits and hyphens only, for a file name.
function fileName(words, ending) {
  const plain = words.normalize("NFD").replace(/[^A-Za-z0-9]+/g, "-").replace(/^-|-$/g, "").toLowerCase();
  return `${plain || "notes"}.${ending}`;
}

function download(text, name, type) {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = make("a", { href: address, download: name });
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(address), 60000);
}

async function copyText(area) {
  try {
    await navigator.clipboard.writeText(area.value);
  } catch {
    area.focus();
    area.select();
    if (!document.execCommand("copy")) {
      notice("The browser would not copy. The text is marked: copy it by hand.");
      return;
    }
  }
  notice("The notes are copied.");
}

// True where what stands in the notes can be read by the engine.
function notesFaults() {
  const { notes } = bank.kept;
  const words = (of, fault) => (fault ? `${of}: ${fault.message}` : null);
  return [
    ...notes.mixed.flatMap((one) => [words(`mixed, ${one.of}`, faultOfMass(one.dry)), words(`mixed, ${one.of}`, faultOfVolume(one.water))]),
    ...notes.used.map((one) => words(`used, ${one.of}`, faultOfAmount(one.amount))),
    ...notes.catches.map((one) => words(`caught, ${one.fish}`, faultOfMass(one.mass))),
  ].filter(Boolean);
}

function savePart() {
  const id = newId("saved");
  const area = make("textarea", { id, readonly: true, rows: 10, spellcheck: "false" });
  const fault = make("p", { class: "fault", hidden: true });
  const name = () => fileName(`notes ${bank.strategy.name} ${dateOf(bank.kept.feed.start === null ? Date.now() : bank.kept.feed.start)}`, "toml");
  const share = button("Share", () => navigator.share({ title: `Notes, ${bank.strategy.name}`, text: area.value }).catch(() => {}));
  share.hidden = !navigator.share;
  const ways = make("div", { class: "saved", hidden: true }, make("label", { for: id }, "Your notes as they are saved"), area,
    make("div", { class: "buttons" }, button("Copy", () => copyText(area)), share, button("Download", () => download(area.value, name(), "application/toml"))));
  const write = () => { area.value = notesText(bank.data, bank.strategy, bank.kept, Date.now()); };
  const save = button("Save notes", () => {
    const faults = [...notesView.waiting(), ...notesFaults()];
    fault.hidden = !faults.length;
    setText(fault, `${faults.join(". ")}.`);
    ways.hidden = Boolean(faults.length);
    announce(faults.length ? faults[0] : "The notes are below, to copy, share or download.");
    if (!faults.length) write();
  }, "main");
  notesView.rewrite = write;
  return make("div", { class: "part" }, make("h3", {}, "Save"), save, fault, ways);
}
