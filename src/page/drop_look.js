"use strict";

// What a person saw of the feed in a bucket or in clear water: it takes the place of the engine's estimates.

const dropLooks = {
  holds: { flag: "--hold", label: "It held for", unit: "s", step: 5, least: 5, fresh: "20 s", of: ["ball", "feeder"] },
  breaks_at: { flag: "--breaks-at", label: "It broke at", unit: "m", step: 0.1, least: 0.1, fresh: "0.5 m", of: ["cup"] },
  carpet: { flag: "--carpet-seen", label: "It lay this wide", unit: "m", step: 0.1, least: 0.1, fresh: "1 m", of: ["cup", "ball", "feeder", "loose"] },
  cup_weighs: { flag: "--cup-weighs", label: "A level cup weighs", unit: "g", step: 5, least: 5, fresh: "250 g", of: ["cup"] },
};

function makeLookFields(kept, changed) {
  return Object.fromEntries(Object.entries(dropLooks).map(([name, look]) => [name, amountField({ ...look, text: kept[name], changed })]));
}

// Folded away until it is wanted; its line says what was seen, for that counts until it is taken out.
function layLookFields(fields) {
  const folded = foldedLine();
  folded.body.append(make("div", { class: "pair" }, ...Object.values(fields).map((field) => field.node)));
  const fold = (kept) => {
    const fitting = fittingLooks(kept);
    for (const [name, field] of Object.entries(fields)) field.node.hidden = !fitting.some(([fits]) => fits === name);
    const seen = fitting.filter(([name]) => fields[name].text()).map(([name, look]) => `${look.label.toLowerCase()} ${fields[name].text()}`);
    folded.tell(seen.length ? `You saw: ${seen.join(", ")}` : "What did you see yourself?");
  };
  return { node: folded.node, fold };
}

function flaggedLookFields(fields) {
  return Object.fromEntries(Object.entries(dropLooks).map(([name, { flag }]) => [flag, fields[name]]));
}

function takeLook(fields, kept) {
  for (const name of Object.keys(dropLooks)) kept[name] = fields[name].text();
}

// A cup that was weighed tells nothing of a ball.
function fittingLooks(kept) {
  return Object.entries(dropLooks).filter(([, look]) => look.of.includes(kept.as));
}

function lookFlags(kept) {
  return Object.fromEntries(fittingLooks(kept).map(([name, { flag }]) => [flag, kept[name]]));
}
