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
  notice("It is copied.");
}

// What stands in the notes and cannot be read by the engine.
function notesFaults() {
  const { notes } = bank.kept;
  const words = (of, fault) => (fault ? `${of}: ${fault.message}` : null);
  const day = dayFaults(notes);
  return [
    ...notes.mixed.flatMap((one) => [words(`mixed, ${one.of}`, faultOfMass(one.dry)), words(`mixed, ${one.of}`, faultOfVolume(one.water))]),
    ...notes.used.map((one) => words(`used, ${one.of}`, faultOfAmount(one.amount))),
    ...notes.catches.map((one) => words(`caught, ${one.fish}`, faultOfMass(one.mass))),
    words("how warm it was", day.water_temp), words("anglers", day.people), words("how long", day.length),
  ].filter(Boolean);
}

// A text to look at, with the ways out for it.
function wayOut({ label, title, rows, more = [] }) {
  const id = newId("saved");
  const area = make("textarea", { id, readonly: true, rows, spellcheck: "false" });
  const share = button("Share", () => navigator.share({ title: title(), text: area.value }).catch(() => {}));
  share.hidden = !navigator.share;
  const node = make("div", { class: "saved", hidden: true }, make("label", { for: id }, label), area,
    make("div", { class: "buttons" }, share, button("Copy", () => copyText(area)), ...more.map(({ text, act }) => button(text, () => act(area.value)))));
  return { node, area };
}

function savePart() {
  const fault = make("p", { class: "fault", hidden: true });
  const title = () => `Notes, ${bank.strategy.name}`;
  const day = () => dateOf(sessionOf(bank.kept).on);
  const words = wayOut({ label: "The session in words", title, rows: 7 });
  const file = wayOut({
    label: "Your notes as they are saved", title, rows: 10,
    more: [{ text: "Download", act: (text) => download(text, fileName(`notes ${bank.strategy.name} ${day()}`, "toml"), "application/toml") }],
  });
  const write = {
    words: () => { words.area.value = sessionWords(bank.strategy.name, sessionOf(bank.kept)); },
    file: () => { file.area.value = notesText(); },
  };
  const open = (name, way, said) => () => {
    const faults = [...notesView.waiting(), ...notesFaults()];
    const leftOut = name === "file" ? mixTexts().leftOut.map((one) => `Left out of the file: ${one}`) : [];
    fault.hidden = !faults.length && !leftOut.length;
    setText(fault, `${[...faults, ...leftOut].join(". ")}.`);
    for (const one of [words, file]) one.node.hidden = one !== way || faults.length > 0;
    announce(faults.length ? faults[0] : said);
    if (!faults.length) write[name]();
  };
  notesView.rewrite = () => {
    if (!words.node.hidden) write.words();
    if (!file.node.hidden) write.file();
  };
  return make("div", { class: "part" }, make("h3", {}, "Take it home"),
    make("div", { class: "buttons" }, button("Say it in words", open("words", words, "The session is below in words, to share or copy.")), button("Save notes", open("file", file, "The notes are below, to share, copy or download."), "main")),
    make("p", { class: "hint" }, "Saved notes are one file for baitwright at home: all sessions of this phone, what the shed gave and got, and your own mixes."), fault, words.node, file.node);
}
