"use strict";

// What the session used, to be taken off the shed: the parts of what was noted as mixed or used; where nothing was noted,
// what the plan takes. Each is taken off once.

function grams(mass) {
  return `${Number(mass.toPrecision(3))} g`;
}

function partsOfMix(of, flags, by) {
  const reply = askEngine({ ask: "mix", words: [of], flags, give: ["json"] });
  if (reply.errors) return [];
  return reply.json.kitchen.parts.map((part) => freshEntry("use", part.name, grams(part.mass_g), { by }));
}

function partsOfMixed(entry) {
  return entry.dry ? partsOfMix(entry.of, { "--dry-mass": [entry.dry] }, entry.id) : [];
}

// A mix by what it weighed or filled wet; a pellet as it was written.
function partsOfUsed(entry) {
  if (!knownMix(entry.of)) return [freshEntry("use", entry.of, entry.amount, { by: entry.id })];
  return partsOfMix(entry.of, faultOfVolume(entry.amount) ? { "--wet-mass": [entry.amount] } : { "--wet-volume": [entry.amount] }, entry.id);
}

function partsOfPlan() {
  const { notes, feed } = bank.kept;
  const plan = feed.puts.length ? planRecord() : null;
  return plan ? plan.totals.map((part) => freshEntry("use", part.name, grams(part.mass_g), { by: `${notes.session}plan` })) : [];
}

function usedInSession() {
  const { notes } = bank.kept;
  const noted = [...notes.mixed.flatMap(partsOfMixed), ...notes.used.filter((one) => !notes.mixed.some((mixed) => mixed.of === one.of && mixed.dry)).flatMap(partsOfUsed)];
  const markOf = (entry) => `${entry.by} ${entry.of}`;
  const taken = new Set(bank.shared.shed.filter((entry) => entry.by).map(markOf));
  return (noted.length ? noted : partsOfPlan()).filter((entry) => !taken.has(markOf(entry)));
}

// True where something was noted or fed: whether it can be taken off is worked out by the tap.
function mayBeTakenOff() {
  const { notes, feed } = bank.kept;
  return notes.mixed.length + notes.used.length + feed.puts.length > 0;
}

function takeOffToday(changed) {
  const entries = usedInSession();
  if (!entries.length) {
    notice("All of it has been taken off before.");
    return;
  }
  const refused = enterInShed(entries);
  const taken = entries.filter((entry) => !refused.some((one) => one.entry === entry));
  const words = [
    taken.length ? `Taken off: ${taken.map((entry) => `${entry.amount} ${entry.of}`).join(", ")}.` : "Nothing was taken off.",
    refused.length ? `Not enough in the shed: ${refused.map(({ entry }) => entry.of).join(", ")}. Count what is there.` : "",
  ];
  const back = { text: "Put it back", act: () => { takeOutOfShed(bank.shared.shed.filter((entry) => taken.some((one) => one.of === entry.of && one.by === entry.by))); changed(); } };
  notice(words.filter(Boolean).join(" "), { action: taken.length ? back : null });
  changed();
}
