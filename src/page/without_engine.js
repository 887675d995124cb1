"use strict";

// Where the engine could not be opened: the plain words stay, in the place of Mix, with why; what needs no engine works as ever.

const placesWithoutEngine = new Set(["soak", "feed", "notes", "more"]);
const without = { why: "", plain: null };

function noEngineReply() {
  return { errors: [{ code: "no-engine", message: without.why, hint: "" }] };
}

function plainPlace(section, place) {
  section.append(make("p", { class: "fault" }, without.why));
  if (place === "mix") section.append(without.plain);
}

// Opens the page on what it knows by itself.
function beginWithout(mishap) {
  without.why = `Nothing can be worked out here: ${mishap.message}. What was planned when this page was made stands in Mix; what you count and note is kept.`;
  without.plain = byId("plain");
  useLibrary(bank.data.contents);
  begin("mix");
}
