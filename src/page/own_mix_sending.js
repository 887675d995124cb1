"use strict";

// A mix of one's own on its way out: as plain words, and in the form that the program takes.

function wordsOfMix({ name, feel, parts, doses }) {
  const amounts = parts.map(({ of, share, mass, volume }) => (share ? `${share} ${share === "1" ? "part" : "parts"} ${of}` : `${mass || volume} ${of}`));
  const liquids = doses.map(({ of, amount }) => `${of}, ${amount}`);
  return `${name}${feel ? `, ${feel}` : ""}: ${[...amounts, ...liquids].join("; ")}.`;
}

function mixSending(mix) {
  const line = foldedLine();
  line.tell("Send it as text");
  const id = newId("sent");
  const area = make("textarea", { id, readonly: true, rows: 8, spellcheck: "false" });
  const form = stripField({ label: "As", choices: [{ value: "words", text: "Plain words" }, { value: "file", text: "For the program" }], value: "words", changed: write, plain: true });
  function write() {
    const reply = form.text() === "file" ? askEngine({ ask: "text", recipe: mix.name }) : { text: wordsOfMix(mix) };
    area.value = reply.errors ? reply.errors.map(wordsOfFault).join(". ") : reply.text;
  }
  const share = button("Share", () => navigator.share({ title: mix.name, text: area.value }).catch(() => {}));
  share.hidden = !navigator.share;
  const ending = () => (form.text() === "file" ? ["toml", "application/toml"] : ["txt", "text/plain"]);
  const save = button("Download", () => download(area.value, fileName(mix.name, ending()[0]), ending()[1]));
  line.body.append(form.node, make("label", { for: id }, "The mix"), area, make("div", { class: "buttons" }, button("Copy", () => copyText(area)), share, save));
  line.node.addEventListener("toggle", write);
  return line.node;
}
