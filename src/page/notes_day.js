"use strict";

// What else the log can learn from: the water, how clear, how warm, how many fished, how long. In a line that opens.

const clarities = [["", "not said"], ["clear", "clear"], ["tinged", "tinged"], ["coloured", "coloured"]];

function dayPart() {
  const kept = bank.kept.notes;
  const folded = foldedLine("The day");
  const fields = {
    venue: textField({ label: "Which water", text: kept.venue, changed }),
    clarity: selectField({ label: "How clear it was", choices: clarities.map(([value, text]) => ({ value, text })), value: kept.clarity, changed }),
    water_temp: amountField({ label: "How warm it was", text: kept.water_temp, unit: "\u00b0C", step: 1, fresh: "12 \u00b0C", changed }),
    people: amountField({ label: "Anglers", text: kept.people || String(bank.data.people || 1), least: 1, changed }),
    length: amountField({ label: "How long", text: kept.length || lengthText(bank.strategy.length_minutes), unit: "h", step: 0.5, least: 0.5, fresh: "4 h", changed }),
  };
  const { venue, clarity, ...amounts } = fields;
  folded.body.append(venue.node, clarity.node, make("div", { class: "pair" }, ...Object.values(amounts).map((field) => field.node)));
  function changed() {
    for (const [name, field] of Object.entries(fields)) kept[name] = field.text();
    for (const [name, fault] of Object.entries(dayFaults(kept))) fields[name].fault(fault);
    keepSoon();
    tell();
    notesView.rewrite();
  }
  function tell() {
    const anglers = fields.people.text();
    folded.tell([kept.venue || "which water", kept.clarity || "how clear", kept.water_temp || "how warm", `${anglers} ${anglers === "1" ? "angler" : "anglers"}`, fields.length.text()].join(", "));
  }
  tell();
  return folded.node;
}

// By the field.
function dayFaults({ water_temp: warmth, people, length }) {
  return {
    water_temp: faultOfTemperature(warmth),
    people: !people || /^([1-9][0-9]{0,2}|1000)$/.test(people) ? null : { message: "A whole number from 1 to 1000" },
    length: faultOfLength(length),
  };
}
