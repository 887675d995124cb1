"use strict";

// What is known of one's own bag of an ingredient: how much water it drinks, what it costs. It holds for all mixes and strategies.

ownRequests.measured = () => bank.shared.measured.map(measuredQuestion);

function measuredQuestion({ ingredient, absorption, on }) {
  return { ask: "measured", ingredient, absorption, on: on || dateOf(Date.now()) };
}

function bagLine(of) {
  const line = foldedLine();
  const told = bank.shared.measured.find((one) => one.ingredient === of) || { absorption: "" };
  const priced = bank.shared.prices.find((one) => one.of === of) || { pack: "", price: "" };
  const fields = {
    absorption: amountField({ label: "Water it holds, measured", text: told.absorption, unit: "g/g", step: 0.05, fresh: "0.6 g/g", changed: tell }),
    pack: textField({ label: "A pack of", text: priced.pack, changed: tell }),
    price: textField({ label: "Costs", text: priced.price, changed: tell }),
  };
  const faults = { "--absorption": fields.absorption, "--pack": fields.pack, "--is": fields.price };
  const kept = button("Keep this of my bag", keep, "quiet");
  const wrong = make("p", { class: "fault", hidden: true });
  line.body.append(make("p", { class: "hint" }, "Grams of water that one gram just holds. Without it the usual value counts, and a wider range."),
    make("div", { class: "pair" }, ...Object.values(fields).map((field) => field.node)), wrong, kept);
  function tell() {
    const said = [fields.absorption.text(), fields.price.text() && [fields.pack.text(), fields.price.text()].filter(Boolean).join(" ")].filter(Boolean);
    line.tell(said.length ? `Your bag: ${said.join(", ")}` : "Your bag: as usual");
  }
  function keep() {
    const on = dateOf(Date.now());
    const measured = { ingredient: of, absorption: fields.absorption.text(), on };
    const price = { of, pack: fields.pack.text(), price: fields.price.text(), shop: "", on };
    const replies = [measured.absorption && measuredQuestion(measured), price.price && priceQuestion(price)].filter(Boolean).map(askEngine);
    const homeless = placeFaults(replies.flatMap((reply) => reply.errors || []), faults);
    wrong.hidden = !homeless.length;
    setText(wrong, homeless.map(wordsOfFault).join(". "));
    if (replies.some((reply) => reply.errors)) return;
    bank.shared.measured = [...bank.shared.measured.filter((one) => one.ingredient !== of), ...(measured.absorption ? [measured] : [])];
    bank.shared.prices = [...bank.shared.prices.filter((one) => one.of !== of || one.shop), ...(price.price ? [price] : [])];
    keepNow();
    line.node.open = false;
    announce(`Kept of ${of}`);
  }
  tell();
  return line.node;
}
