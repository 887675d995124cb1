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

// One session, of `sessionOf`.
function sessionText(strategy, session) {
  const { start } = session;
  const people = Number(session.people);
  return [
    "[[session]]",
    ...tomlLines({
      strategy: tomlText(strategy), on: dateOf(session.on), start: start === null ? "" : tomlText(clockOf(start)),
      length: quoted(session.length || lengthOfStrategy(strategy)), anglers: Number.isInteger(people) && people > 0 ? people : bank.data.people || 1,
      page: quoted(session.session), venue: quoted(session.venue), clarity: quoted(session.clarity), water_temperature: quoted(session.water_temp), note: quoted(session.note),
    }),
    ...session.puts.flatMap((put) => tomlTable("put_in", { at: minutesAfter(put.at, start), of: quoted(put.of) })),
    ...session.mixed.flatMap((one) => tomlTable("mixed", { of: quoted(one.of), dry: quoted(one.dry), water: quoted(one.water), feel: quoted(one.feel) })),
    ...session.used.flatMap((one) => tomlTable("used", { of: quoted(one.of), amount: quoted(one.amount) })),
    ...session.catches.flatMap((one) => tomlTable("catch", { at: minutesAfter(one.at, start), fish: quoted(one.fish), count: one.count, mass: quoted(one.mass) })),
  ];
}

function lengthOfStrategy(name) {
  const strategy = bank.library.strategies.find((one) => one.name === name);
  return strategy ? lengthText(strategy.length_minutes) : "";
}

// The sessions of all strategies: those before, and the one that is noted. The open strategy's stands first.
function sessionsToTakeHome() {
  const names = [bank.strategy.name, ...keptStrategies().filter((name) => name !== bank.strategy.name)];
  return names.flatMap((name) => {
    const { kept } = keptOf(name) || {};
    if (!kept) return [];
    const own = hasSession(kept) ? [sessionOf(kept)] : [];
    return [...own, ...kept.past].map((session) => ({ strategy: name, session }));
  });
}

function stockText(entry) {
  return ["[[stock]]", ...tomlLines({
    id: tomlText(entry.id), what: tomlText(entry.what), of: tomlText(entry.of), amount: tomlText(entry.amount), price: quoted(entry.price), shop: quoted(entry.shop), on: entry.on,
  })];
}

// Each as `recipe add` reads it, in the engine's own words; what it refuses is left out, and said to be.
function mixTexts() {
  if (!bank.engine) return { texts: [], leftOut: bank.shared.mixes.map(({ name }) => `${name}: it can be written only where the page works things out`) };
  const replies = bank.shared.mixes.map(({ name }) => ({ name, reply: askEngine({ ask: "text", recipe: name }) }));
  return {
    texts: replies.filter(({ reply }) => reply.text).map(({ reply }) => reply.text.trim()),
    leftOut: replies.filter(({ reply }) => !reply.text).map(({ name, reply }) => `${name}: ${reply.errors[0].message}`),
  };
}

// One file for the program: all that was noted, moved in the shed and made on this phone.
function notesText() {
  keepNow();
  const sessions = sessionsToTakeHome();
  const lines = [
    `# Notes of a session from a bank page of baitwright ${bank.data.version}`,
    ...(sessions.length ? sessions : [{ strategy: bank.strategy.name, session: sessionOf(bank.kept) }]).flatMap(({ strategy, session }) => sessionText(strategy, session)),
    ...bank.shared.shed.flatMap(stockText),
    ...mixTexts().texts,
  ];
  return `${lines.join("\n")}\n`;
}
