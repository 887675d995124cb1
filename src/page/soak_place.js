"use strict";

// Soak: what the plan soaks, and what to do with it now; the timers are in reach of the thumb.

placeShapes.soak = recordShape({
  pellets: listShape(recordShape({ name: textShape(), amount: textShape() }), ["name"]),
  method: wordShape(["covered", "measured"], "covered"), uptake: textShape("40 %"), water_temp: textShape(null), strokes: textShape(), vessel: textShape(), pump: textShape(),
});

// What to do comes first; the rest can be read when there is time.
const soakLeads = ["Pour on", "Soak", "Drain", "Result", "Stand", "Pump"];

function soakPlace(section) {
  const kept = bank.kept.soak;
  startSoak(kept);
  const fields = makeSoakFields(kept, changed);
  const flagged = { "--water-temp": fields.water_temp, "--uptake": fields.uptake, "--strokes": fields.strokes, "--vessel": fields.vessel, "--pump": fields.pump };
  const rows = pelletRows(kept, changed, flagged);
  const line = foldedLine();
  const box = answerBox({ fields: flagged });
  const rest = toldView();
  const more = make("details", {}, make("summary", {}, "Portions, keeping, and how sure"), rest.node);
  const nothing = make("p", { class: "hint" }, bank.engine ? "This plan soaks nothing. Open the line above to soak some all the same." : without.why);
  const byHand = timerByHand();
  const timers = timerPart();
  const ask = oncePerFrame(() => {
    const pellets = soakedPellets(kept);
    const asked = pellets.filter((pellet) => pellet.amount);
    aimSoak(fields, pellets);
    rows.tick();
    line.tell(lineOfSoak(kept, pellets));
    for (const node of [nothing, byHand]) node.hidden = pellets.length > 0 && Boolean(bank.engine);
    more.hidden = !asked.length || !bank.engine;
    if (asked.length && bank.engine) show(askEngine({ ask: "soak", words: asked.map(wordOfPellet), flags: soakFlags(kept, asked), give: ["told", "json"] }));
    else box.clear();
  });
  function show(reply) {
    const { lead, rest: others } = reply.told ? partedSoak(reply.told) : { lead: [], rest: [] };
    if (!box.show({ ...reply, told: lead })) return;
    rest.tell(others);
    timers.offer(reply.json.pellets);
  }
  function changed() {
    for (const name of Object.keys(fields)) kept[name] = fields[name].text();
    keepSoon();
    ask();
  }
  const { method, water_temp: temperature, uptake, strokes, vessel, pump } = fields;
  line.body.append(make("div", { class: "question" }, rows.node, method.node, make("div", { class: "pair" }, temperature.node, uptake.node, strokes.node, vessel.node, pump.node)));
  section.append(line.node, nothing, box.node, more, byHand);
  line.node.hidden = !bank.engine;
  dockOf("soak").replaceChildren(timers.node);
  ask();
}

function startSoak(kept) {
  const always = bank.data.always || {};
  if (kept.water_temp === null) kept.water_temp = temperatureText();
  if (!kept.vessel && always.vessel) kept.vessel = always.vessel;
  if (!kept.pump && always.pump) kept.pump = always.pump;
  kept.pellets = kept.pellets.filter((pellet) => pelletNames().includes(pellet.name));
}

function makeSoakFields(kept, changed) {
  return {
    method: stripField({ label: "Water on the pellets", choices: [{ value: "covered", text: "Covered" }, { value: "measured", text: "Measured" }], value: kept.method, changed }),
    water_temp: amountField({ label: "Water", text: kept.water_temp, unit: "\u00b0C", fresh: "15 \u00b0C", changed }),
    uptake: amountField({ label: "To take up", text: kept.uptake, unit: "%", step: 5, least: 5, fresh: "40 %", changed }),
    strokes: amountField({ label: "Strokes of the pump", text: kept.strokes, least: 1, fresh: "10", changed }),
    vessel: amountField({ label: "The pump holds", text: kept.vessel, unit: "ml", step: 100, least: 100, fresh: "500 ml", changed }),
    pump: amountField({ label: "A stroke draws", text: kept.pump, unit: "ml", step: 10, least: 10, fresh: "100 ml", changed }),
  };
}

function hasKind(pellets, kind) {
  return pellets.some((pellet) => kindOfPellet(pellet.name) === kind);
}

// Pellets soak, expanders are pumped; what goes with neither of those named is out of sight.
function aimSoak(fields, pellets) {
  for (const one of [fields.method, fields.uptake]) one.node.hidden = !hasKind(pellets, "pellet");
  for (const one of [fields.strokes, fields.vessel, fields.pump]) one.node.hidden = !hasKind(pellets, "expander");
}

function soakFlags(kept, pellets) {
  const soaked = hasKind(pellets, "pellet") ? { "--method": kept.method, "--uptake": kept.uptake } : {};
  const pumped = hasKind(pellets, "expander") ? { "--strokes": kept.strokes, "--vessel": kept.vessel, "--pump": kept.pump } : {};
  return flagsOf({ "--water-temp": kept.water_temp, ...soaked, ...pumped });
}

// "260 g fishmeal micro pellet 2 mm, 4.1 g expander 4 mm; water 14 degrees".
function lineOfSoak(kept, pellets) {
  const words = pellets.map((pellet) => `${pellet.shown || "how much"} ${pellet.name}`).join(", ") || "Nothing to soak";
  return kept.water_temp ? `${words}; water ${kept.water_temp}` : words;
}

// What to do with each pellet, with its pump's table, when several are ready together, and what to take care of; and the rest.
function partedSoak(pieces) {
  const lead = [], rest = [];
  let label = "", together = false, pumped = false, title = null;
  for (const piece of pieces) {
    if (piece.kind === "title") {
      pumped = false;
      title = piece;
    }
    if (piece.kind === "heading") together = true;
    if (piece.label) {
      label = piece.label;
      together = false;
    }
    pumped = pumped || label === "Pump";
    const leads = piece.kind === "title" || together || loudLabels.has(label) || (piece.kind === "table" ? pumped : soakLeads.includes(label));
    if (leads) {
      lead.push(piece.kind === "table" && pumped && !together ? pumpTable(piece) : piece);
    } else {
      if (title && pieces.filter((one) => one.kind === "title").length > 1) rest.push({ kind: "heading", text: title.text });
      title = null;
      rest.push(piece);
    }
  }
  return { lead, rest };
}

// Of the pump's table, for a narrow screen: the strokes, how full the pores are, and whether a pellet sinks.
function pumpTable(table) {
  const wanted = table.columns.length === 5 ? [0, 2, 4] : table.columns.map((_, at) => at);
  const picked = (row) => wanted.filter((at) => at < row.length).map((at) => row[at]);
  return { ...table, columns: picked(table.columns), rows: table.rows.map(picked) };
}
