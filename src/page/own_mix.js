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

function openOwnMix(draft, show) {
  let then = () => {};
  const sheet = sheetOver({
    title: draft.mix ? "Your mix" : "Make your own",
    closed: () => {
      ownTold.text = "-";  // what was tried out is taken back
      then();
    },
  });
  const name = textField({ label: "What it is called", text: draft.name, changed });
  const feel = selectField({ label: "Feel", choices: bank.library.feels.map((one) => ({ value: one, text: one })), value: draft.feel || "firm", changed });
  const by = stripField({ label: "Amounts", choices: [{ value: "share", text: "In parts" }, { value: "mass", text: "By weight" }], value: draft.by, changed: weighed, plain: true });
  const rows = partRows(draft, changed);
  const care = make("div", {});
  const wrong = make("p", { class: "fault", hidden: true });
  const search = ingredientSearch(add);
  const finding = make("div", { class: "question", hidden: true }, search.node);
  const adding = button("Add an ingredient", () => {
    finding.hidden = !finding.hidden;
    if (!finding.hidden) search.focus();
  });
  function add(of) {
    draft.parts.push({ of, share: draft.by === "share" ? "1" : "", mass: draft.by === "mass" ? "100 g" : "", volume: "", prepare: "" });
    finding.hidden = true;
    rows.fill();
    changed();
    adding.focus();
  }
  // Other amounts are to be said anew: a weight is no share.
  function weighed() {
    draft.by = by.text();
    for (const part of draft.parts) Object.assign(part, draft.by === "mass" ? { mass: part.mass || "100 g", share: "", volume: "" } : { share: part.share || shareOf(part), mass: "", volume: "" });
    rows.fill();
    changed();
  }
  function put(named) {
    return askEngine(putQuestion({ ...draft, name: named }));
  }
  function changed() {
    Object.assign(draft, { name: name.text(), feel: feel.text() });
    const fault = faultOfName(draft);
    const reply = put(draft.name && !fault ? draft.name : "a mix still to be named");
    const fields = { name, feel, ...rows.faulty() };
    const homeless = placeFaults((reply.errors || []).filter((error) => error.code !== "empty-mix"), fields);
    if (fault) name.fault(fault);
    wrong.hidden = !homeless.length;
    setText(wrong, homeless.map(wordsOfFault).join(". "));
    if (!reply.errors) care.replaceChildren(...reply.care.map((text) => carefully("Take care", text)), ...reply.odd.map((text) => carefully("Mind", text)));
    return !reply.errors && !fault;
  }
  function keep() {
    const good = changed();
    if (!draft.name) name.fault({ message: "Give it a name", hint: "a few plain words" });
    if (!draft.parts.length) {
      wrong.hidden = false;
      setText(wrong, "Nothing is in it yet; add an ingredient.");
    }
    if (!good || !draft.name || !draft.parts.length) return;
    then = () => keepMix(draft, show);
    sheet.close();
  }
  sheet.body.append(make("div", { class: "question" }, name.node, feel.node, by.node), rows.node, care, wrong, make("p", { class: "after" }, adding), finding,
    make("div", { class: "after buttons" }, button("Keep this mix", keep, "main"), draft.mix ? another() : emptied()), draft.mix ? mixSending(draft.mix) : "", draft.mix ? takenOut() : "");
  function emptied() {
    return button("Begin with nothing", () => {
      Object.assign(draft, { parts: [], doses: [] });
      rows.fill();
      changed();
    }, "quiet");
  }
  function another() {
    return button("Make another from it", () => {
      draft.mix = null;
      name.put("");
      name.input.focus();
      changed();
    }, "quiet");
  }
  function takenOut() {
    return make("p", { class: "after" }, twiceButton("Take this mix out", "Tap again: the mix goes", () => {
      then = () => takeMixOut(draft.mix, show);
      sheet.close();
    }, "danger"));
  }
  changed();
  sheet.open();
}

function carefully(label, text) {
  return make("p", { class: "line loud" }, make("b", {}, label), " ", text);
}

// 400 g is 4 parts: what was weighed is a share as it stands.
function shareOf(part) {
  const found = /^([0-9.]+) (g|kg)$/.exec(part.mass);
  if (!found) return "1";
  return String(Number((Number(found[1]) * (found[2] === "kg" ? 10 : 0.01)).toPrecision(4)));
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
