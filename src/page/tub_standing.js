"use strict";

// How the tub dries where it stands, asked once its line is opened.

function standingPart(kept) {
  const line = foldedLine("Where it stands");
  const fields = {
    face: textField({ label: "Its open face", text: kept.face, changed }),
    hours: amountField({ label: "Stands for", text: kept.hours, unit: "h", units: ["h", "min"], fresh: "2 h", changed }),
    air: amountField({ label: "Air", text: kept.air, unit: "\u00b0C", fresh: "18 \u00b0C", changed }),
    sun: stripField({ label: "Where", choices: [{ value: "shade", text: "Shade" }, { value: "sun", text: "Sun" }, { value: "lid", text: "Lid on" }], value: kept.sun, changed, plain: true }),
  };
  const box = answerBox({ fields: { "--tub": fields.face, "--hours": fields.hours, "--air-temp": fields.air } });
  const ask = oncePerFrame(() => {
    line.tell(`Left standing: ${kept.face}, ${kept.hours}, ${kept.air}, ${{ shade: "in the shade", sun: "in the sun", lid: "with a lid" }[kept.sun]}`);
    if (line.body.querySelector("[aria-invalid]")) line.open();
    if (!line.node.open) return;
    const where = { shade: {}, sun: { "--sun": [""] }, lid: { "--covered": [""] } }[kept.sun];
    box.ask({ ask: "dry", words: [kept.of], flags: { ...flagsOf({ "--tub": kept.face, "--hours": kept.hours, "--air-temp": kept.air, "--dry-mass": kept.dry, "--feel": kept.feel }), ...where } }, [fields.face, fields.hours]);
  });
  function changed() {
    for (const name of ["face", "hours", "air", "sun"]) kept[name] = fields[name].text();
    keepSoon();
    ask();
  }
  line.body.append(make("div", { class: "pair" }, fields.face.node, fields.hours.node, fields.air.node), fields.sun.node, box.node);
  line.node.addEventListener("toggle", ask);
  ask();
  return { node: line.node };
}
