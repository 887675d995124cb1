"use strict";

// Make your own: parts by share or by weight out of all ingredients, begun from a mix or from nothing; kept for all strategies.

function ownMixButton(kept, show) {
  const named = () => ownMixes().find((mix) => mix.name === kept.of);
  const node = button("Make your own", () => openOwnMix(named() ? draftOf(named()) : draftFrom(kept.of), show), "quiet");
  return { node, tell: () => setText(node, named() ? "Change this mix" : "Make your own") };
}

function draftOf(mix) {
  const parts = mix.parts.map((part) => ({ ...part }));
  return { mix, name: mix.name, feel: mix.feel, by: parts.some((part) => part.mass) ? "mass" : "share", parts, doses: mix.doses.map((dose) => ({ ...dose })) };
}

// Another mix's parts, under a name still to be given.
function draftFrom(name) {
  const reply = askEngine({ ask: "recipe", words: [name], give: ["json"] });
  if (reply.errors || reply.waiting) return { mix: null, name: "", feel: "", by: "share", parts: [], doses: [] };
  const text = (number, unit) => (number === null || number === undefined ? "" : `${Number(number.toPrecision(6))}${unit}`);
  const parts = reply.json.parts.map((part) => ({ of: part.of, share: text(part.share, ""), mass: text(part.mass_g, " g"), volume: text(part.volume_ml, " ml"), prepare: part.prepare || "" }));
  return { mix: null, name: "", feel: reply.json.feel, by: parts.some((part) => part.mass) ? "mass" : "share", parts, doses: reply.json.doses.map((dose) => ({ ...dose })) };
}

// A name of another mix cannot be taken: two of them could not be told apart.
function faultOfName({ name, mix }) {
  const own = ownMixes().some((one) => one !== mix && one.name === name);
  const shipped = bank.library.mixes.some((one) => one.name === name) && !(mix && mix.name === name) || togetherMixes().some((one) => one.name === name);
  return own || shipped ? { message: `There is a mix called \u201c${name}\u201d already`, hint: "give yours another name" } : null;
}

// A sheet over Mix. What is tried out there is put to the engine, and taken back when the sheet is left.
function openOwnMix(draft, show) {
  let then = () => {};
  const sheet = sheetOver({
    title: draft.mix ? "Your mix" : "Make your own",
    closed: () => {
      ownTold.text = "-";
      then();
    },
  });
  const leave = (work) => {
    then = work;
    sheet.close();
  };
  const form = ownMixForm(draft);
  const keep = button("Keep this mix", () => { if (form.whole()) leave(() => keepMix(draft, show)); }, "main");
  const out = twiceButton("Take this mix out", "Tap again: the mix goes", () => leave(() => takeMixOut(draft.mix, show)), "danger");
  const anew = draft.mix ? button("Make another from it", form.another, "quiet") : button("Begin with nothing", form.empty, "quiet");
  sheet.body.append(form.node, make("div", { class: "after buttons" }, keep, anew));
  if (draft.mix) sheet.body.append(mixSending(draft.mix), make("p", { class: "after" }, out));
  form.changed();
  sheet.open();
}

function ownMixFields(draft, changed, weighed) {
  return {
    name: textField({ label: "What it is called", text: draft.name, changed }),
    feel: selectField({ label: "Feel", choices: bank.library.feels.map((one) => ({ value: one, text: one })), value: draft.feel || "firm", changed }),
    by: stripField({ label: "Amounts", choices: [{ value: "share", text: "In parts" }, { value: "mass", text: "By weight" }], value: draft.by, changed: weighed, plain: true }),
  };
}

function ownMixForm(draft) {
  const { name, feel, by } = ownMixFields(draft, changed, () => weighed());
  const rows = partRows(draft, changed);
  const care = make("div");
  const wrong = make("p", { class: "fault", hidden: true });
  const adding = addingLine((of) => refill({ parts: [...draft.parts, amountedPart({ of, share: "", mass: "", prepare: "" }, draft.by)] }));
  const weighed = () => refill({ by: by.text(), parts: draft.parts.map((part) => amountedPart(part, by.text())) });
  function refill(next) {
    Object.assign(draft, next);
    rows.fill();
    changed();
  }
  // True where the engine takes the mix as it stands.
  function changed() {
    Object.assign(draft, { name: name.text(), feel: feel.text() });
    const taken = faultOfName(draft);
    const reply = askEngine(putQuestion({ ...draft, name: taken || !draft.name ? "a mix still to be named" : draft.name }));
    tellWrong(placeFaults((reply.errors || []).filter((error) => error.code !== "empty-mix"), { name, feel, ...rows.faulty() }).map(wordsOfFault));
    if (taken) name.fault(taken);
    care.replaceChildren(...caresOf(reply));
    return !reply.errors && !taken;
  }
  function tellWrong(words) {
    wrong.hidden = !words.length;
    setText(wrong, words.join(". "));
  }
  function whole() {
    const good = changed();
    if (!draft.name) name.fault({ message: "Give it a name", hint: "a few plain words" });
    if (!draft.parts.length) tellWrong(["Nothing is in it yet; add an ingredient."]);
    return good && Boolean(draft.name) && draft.parts.length > 0;
  }
  function another() {
    draft.mix = null;
    name.put("");
    name.input.focus();
    changed();
  }
  function empty() {
    by.put("share");
    refill({ by: "share", parts: [], doses: [] });
  }
  const node = make("div", {}, make("div", { class: "question" }, name.node, feel.node, by.node), rows.node, care, wrong, adding);
  return { node, changed, whole, another, empty };
}

// A way to one more ingredient, which opens a search and closes it again.
function addingLine(add) {
  const search = ingredientSearch((of) => {
    finding.hidden = true;
    add(of);
    open.focus();
  });
  const finding = make("div", { class: "question", hidden: true }, search.node);
  const open = button("Add an ingredient", () => {
    finding.hidden = !finding.hidden;
    if (!finding.hidden) search.focus();
  });
  return make("div", { class: "after" }, open, finding);
}

// What can hurt in it, and what is odd about it.
function caresOf({ care = [], odd = [] }) {
  const line = (label) => (text) => make("p", { class: "line loud" }, make("b", {}, label), " ", text);
  return [...care.map(line("Take care")), ...odd.map(line("Mind"))];
}

// The same part in the other measure: 400 g is 4 parts, and a part is 100 g.
function amountedPart(part, by) {
  const found = /^([0-9.]+) ?(g|kg)?$/.exec(part.mass || part.share);
  const grams = found ? Number(found[1]) * (found[2] === "g" ? 1 : found[2] === "kg" ? 1000 : 100) : 100;
  const said = by === "mass" ? { mass: `${Number(grams.toPrecision(4))} g`, share: "" } : { mass: "", share: String(Number((grams / 100).toPrecision(4))) };
  return { ...part, ...said, volume: "" };
}

function keepMix(draft, show) {
  const mix = { name: draft.name, feel: draft.feel, parts: draft.parts, doses: draft.doses };
  if (draft.mix) Object.assign(draft.mix, mix);
  else bank.shared.mixes.push(mix);
  keepNow();
  show(mix.name);
  notice(`${mix.name} is kept, for all strategies.`);
}

function takeMixOut(mix, show) {
  bank.shared.mixes = ownMixes().filter((one) => one !== mix);
  keepNow();
  show(firstMix());
  notice(`${mix.name} is taken out.`, { action: { text: "Put it back", act: () => {
    bank.shared.mixes.push(mix);
    keepNow();
    show(mix.name);
  } } });
}
