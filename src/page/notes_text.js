"use strict";

// The notes as TOML 1.0, in the format of docs/files.md, "Session notes".

// A basic string: quotes, backslashes and control characters escaped. Half a surrogate pair is no character in UTF-8.
function tomlText(text) {
  const whole = text.replace(/[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g, "\uFFFD");
  const escaped = whole.replace(/["\\\u0000-\u001F\u007F]/g, (sign) => {
    if (sign === "\n") return "\\n";
    if (sign === "\t") return "\\t";
    if (sign === "\"" || sign === "\\") return `\\${sign}`;
    return `\\u${sign.charCodeAt(0).toString(16).padStart(4, "0").toUpperCase()}`;
  });
  return `"${escaped}"`;
}

// Lines of `key = value`; what was not said is left out.
function tomlLines(pairs) {
  return Object.entries(pairs).filter(([, value]) => value !== null && value !== "").map(([key, value]) => `${key} = ${value}`);
}

function quoted(text) {
  return text ? tomlText(text) : "";
}

// "12 min" after the start.
function minutesAfter(moment, start) {
  if (start === null || moment === null) return "";
  return tomlText(`${Math.round((moment - start) / minuteMs)} min`);
}

function tomlTable(name, pairs) {
  return [`[[session.${name}]]`, ...tomlLines(pairs)];
}

function notesText(data, strategy, kept, today) {
  const { feed, notes } = kept;
  const start = feed.start;
  const people = Number(notes.people);
  const lines = [
    `# Notes of a session from a bank page of baitwright ${data.version}`,
    "[[session]]",
    ...tomlLines({
      strategy: tomlText(strategy.name), on: dateOf(start === null ? today : start), start: start === null ? "" : tomlText(clockOf(start)),
      length: quoted(notes.length || lengthText(strategy.length_minutes)), anglers: Number.isInteger(people) && people > 0 ? people : 1,
      page: quoted(notes.session), note: quoted(notes.note),
    }),
    ...feed.puts.flatMap((put) => tomlTable("put_in", { at: minutesAfter(put.at, start), of: quoted(put.of) })),
    ...notes.mixed.flatMap((one) => tomlTable("mixed", { of: quoted(one.of), dry: quoted(one.dry), water: quoted(one.water), feel: quoted(one.feel) })),
    ...notes.used.flatMap((one) => tomlTable("used", { of: quoted(one.of), amount: quoted(one.amount) })),
    ...notes.catches.flatMap((one) => tomlTable("catch", { at: minutesAfter(one.at, start), fish: quoted(one.fish), count: one.count, mass: quoted(one.mass) })),
  ];
  return `${lines.join("\n")}\n`;
}
