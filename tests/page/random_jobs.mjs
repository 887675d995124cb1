// Random questions as a person might ask them, the same ones every time: each is a command, its words and its flags.

/** Mulberry32, a small generator with a seed (T. Ettinger, public domain; from memory): the jobs must not change from run to run. */
export function randomNumbers(seed) {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** Jobs about what a page holds: `contents` is the engine's reply to `open` and `add`. */
export function randomJobs(contents, count, seed) {
  const random = randomNumbers(seed);
  const between = (low, high, step) => Math.round((low + random() * (high - low)) / step) * step;
  const tidy = (number) => String(Number(number.toFixed(4)));
  const one = (list) => list[Math.floor(random() * list.length)];
  const maybe = (flags, flag, value, chance = 0.5) => {
    if (random() < chance) flags[flag] = [value()];
  };
  const mix = () => one(contents.mixes).name;
  const feel = () => one(contents.feels);
  const warmth = () => tidy(between(2, 28, 1)) + "degC";
  const people = () => String(between(1, 6, 1));
  const grams = (low, high) => tidy(between(low, high, 5)) + "g";

  const target = () =>
    one([
      () => ["--wet-volume", tidy(between(0.25, 12, 0.25)) + "l"],
      () => ["--wet-mass", grams(100, 8000)],
      () => ["--dry-mass", grams(50, 6000)],
      () => ["--cups", between(1, 30, 1) + "x" + one([25, 40, 100, 250, 500]) + "ml"],
      () => ["--balls", between(1, 40, 1) + "x" + between(25, 80, 1) + "mm"],
      () => ["--feeders", between(1, 60, 1) + "x" + one([20, 30, 50]) + "ml"],
    ])();

  const makers = {
    mix() {
      const [flag, value] = target();
      const flags = { [flag]: [value] };
      maybe(flags, "--feel", feel);
      maybe(flags, "--water-temp", warmth);
      maybe(flags, "--people", people, 0.3);
      maybe(flags, "--added", () => tidy(between(10, 900, 10)) + "ml", 0.2);
      maybe(flags, "--spare", () => between(0, 30, 5) + "%", 0.2);
      return { ask: "mix", words: [mix()], flags };
    },
    water() {
      const dry = between(100, 4000, 50);
      const flags = { "--dry-mass": [tidy(dry) + "g"] };
      if (random() < 0.6) flags["--added"] = [tidy(between(0, 1.6 * dry, 5)) + "ml"];
      else flags["--weighs"] = [tidy(between(1.05 * dry, 2.4 * dry, 5)) + "g"];
      maybe(flags, "--minutes", () => String(between(0, 60, 1)));
      maybe(flags, "--feel", feel);
      maybe(flags, "--water-temp", warmth);
      return { ask: "water", words: [mix()], flags };
    },
    soak() {
      const soaking = contents.pellets.filter((pellet) => pellet.kind === "pellet");
      const words = [];
      for (let i = between(1, 3, 1); i > 0; --i) {
        const name = one(soaking).name;
        if (!words.some((word) => word.startsWith(name + "="))) words.push(name + "=" + grams(50, 2000));
      }
      const flags = {};
      maybe(flags, "--water-temp", warmth);
      maybe(flags, "--method", () => one(["covered", "measured"]));
      maybe(flags, "--uptake", () => between(15, 80, 5) + "%", 0.4);
      maybe(flags, "--ready-at", () => "0" + between(5, 9, 1) + ":30", 0.3);
      return { ask: "soak", words, flags };
    },
    pump() {
      const expanders = contents.pellets.filter((pellet) => pellet.kind === "expander");
      const flags = { "--amount": [grams(20, 200)] };
      maybe(flags, "--strokes", () => String(between(1, 20, 1)));
      maybe(flags, "--water-temp", warmth);
      return { ask: "soak", words: [one(expanders).name], flags };
    },
    drop() {
      const [flag, value] = one([
        () => ["--cup", one([25, 100, 250, 500]) + "ml"],
        () => ["--ball", between(25, 80, 1) + "mm"],
        () => ["--feeder", one([20, 30, 50]) + "ml"],
        () => ["--loose", between(20, 200, 10) + "ml"],
      ])();
      const flags = { [flag]: [value], "--depth": [tidy(between(0.5, 8, 0.1)) + "m"] };
      maybe(flags, "--tow", () => tidy(between(0, 30, 0.5)) + "cm/s");
      maybe(flags, "--water", () => one(["still", "river"]));
      maybe(flags, "--feel", feel);
      maybe(flags, "--squeeze", () => one(["light", "firm", "hard"]), flag === "--ball" ? 0.5 : 0.03);  // else a slip
      maybe(flags, "--water-temp", warmth);
      return { ask: "drop", words: [mix()], flags };
    },
    cost() {
      const flags = {};
      maybe(flags, "--people", people);
      maybe(flags, "--length", () => tidy(between(2, 8, 0.5)) + "h");
      return { ask: "cost", words: [one(contents.strategies).name], flags };
    },
    plan() {
      const flags = {};
      maybe(flags, "--start", () => String(between(6, 18, 1)).padStart(2, "0") + ":" + one(["00", "15", "40"]));
      maybe(flags, "--people", people, 0.4);
      maybe(flags, "--water-temp", warmth, 0.4);
      return { ask: "plan", words: [one(contents.strategies).name], flags };
    },
    rest() {
      const strategy = one(contents.strategies);
      const flags = { "--now": [String(between(5, strategy.length_minutes - 20, 5))] };
      flags["--left"] = [tidy(between(0.2, 3, 0.1)) + " l " + one(strategy.mixes)];
      maybe(flags, "--bites", () => one(["slow", "steady", "none"]), 0.8);
      return { ask: "plan", words: [strategy.name], flags };
    },
  };
  Object.assign(makers, {
    dry() {
      const flags = { "--dry-mass": [grams(200, 5000)] };
      maybe(flags, "--hours", () => tidy(between(0.5, 8, 0.5)), 0.8);
      maybe(flags, "--tub", () => one(["40x30cm", "35cm", "60x40cm"]), 0.8);
      maybe(flags, "--air-temp", () => between(5, 35, 1) + "degC");
      maybe(flags, "--humidity", () => between(20, 95, 5) + "%");
      maybe(flags, "--wind", () => tidy(between(0, 8, 0.5)) + "m/s");
      maybe(flags, "--feel", feel);
      return { ask: "dry", words: [mix()], flags };
    },
    dose() {
      if (random() < 0.5) return { ask: "dose", words: [mix()], flags: { "--amount": [random() < 0.7 ? grams(200, 5000) : between(1, 6, 1) + "l"] } };
      const liquids = contents.ingredients.filter((one) => one.kind === "liquid");
      const flags = { "--amount": [grams(200, 3000)] };
      maybe(flags, "--rate", () => between(5, 60, 5) + " ml per kg dry", 0.8);
      maybe(flags, "--water", () => between(200, 2000, 100) + "ml", 0.3);
      return { ask: "dose", words: [one(liquids).name], flags };
    },
    sideBySide() {
      const flags = { "--depth": [tidy(between(0.8, 6, 0.1)) + "m"] };
      if (random() < 0.8) flags["--compare"] = [one(["forms", "feels", "sizes"])];
      else flags["--want"] = [one(["carpet=0.8m", "carpet=1.5m", "breaks=0.6m"])];
      maybe(flags, "--tow", () => tidy(between(0, 20, 1)) + "cm/s");
      return { ask: "drop", words: [mix()], flags };
    },
    ownLook() {
      const flags = { "--depth": [tidy(between(1, 4, 0.5)) + "m"] };
      const [flag, value] = one([["--cup", "250ml"], ["--ball", "55mm"], ["--feeder", "30ml"], ["--loose", "100ml"]]);
      flags[flag] = [value];
      const [look, seen] = one({
        "--cup": [["--hold", between(2, 200, 2) + "s"], ["--breaks-at", tidy(between(0.2, 0.8, 0.1)) + "m"], ["--cup-weighs", grams(120, 240)]],
        "--ball": [["--hold", between(2, 200, 2) + "s"]],
        "--feeder": [["--hold", between(2, 200, 2) + "s"]],
        "--loose": [["--carpet-seen", tidy(between(0.4, 3, 0.1)) + "m"]],
      }[flag]);
      flags[look] = [seen];
      maybe(flags, "--carpet-seen", () => tidy(between(0.4, 3, 0.1)) + "m", 0.3);
      return { ask: "drop", words: [mix()], flags };
    },
    temperatures() {
      const soaking = contents.pellets.filter((pellet) => pellet.kind === "pellet");
      const flags = { "--amount": [grams(100, 2000)], "--compare-temps": [""] };
      maybe(flags, "--water-temp", warmth);
      return { ask: "soak", words: [one(soaking).name], flags };
    },
    compare() {
      const first = one(contents.strategies).name, second = one(contents.strategies).name;
      const flags = {};
      maybe(flags, "--people", people, 0.3);
      maybe(flags, "--length", () => tidy(between(2, 6, 0.5)) + "h");
      maybe(flags, "--empty-shed", () => "", 0.2);
      return { ask: "compare", words: [first, first === second ? second + "=2" : second], flags };
    },
    shop() {
      const words = [one(contents.strategies).name + "=" + between(1, 4, 1)];
      const more = one(contents.strategies).name;
      if (random() < 0.5 && !words[0].startsWith(more)) words.push(more);
      const flags = {};
      maybe(flags, "--every", () => between(1, 14, 1) + "d");
      maybe(flags, "--people", people, 0.3);
      maybe(flags, "--one-shop", () => "", 0.2);
      maybe(flags, "--have", () => "brown crumb=" + grams(100, 3000), 0.3);
      return { ask: "shop", words, flags };
    },
    advise() {
      const flags = {};
      maybe(flags, "--season", () => one(["spring", "summer", "autumn", "winter"]));
      maybe(flags, "--clarity", () => one(["clear", "tinged", "coloured"]));
      maybe(flags, "--bed", () => one(["pale", "dark"]), 0.3);
      maybe(flags, "--water-temp", warmth);
      maybe(flags, "--depth", () => tidy(between(0.5, 8, 0.5)) + "m");
      maybe(flags, "--tow", () => between(0, 20, 1) + "cm/s");
      maybe(flags, "--hours", () => between(1, 8, 1) + "h");
      maybe(flags, "--fish", () => one(["bream", "roach", "carp", "tench", "no such fish"]));
      return { ask: "advise", words: [], flags };
    },
    show() {
      const [what, list] = one([["ingredient", contents.ingredients], ["recipe", contents.mixes], ["strategy", contents.strategies]]);
      return { ask: what, command: [what, "show"], words: [one(list).name], flags: {} };
    },
    find() {
      // None of these is said in a blend, which a page does not carry.
      return { ask: "find", words: one([["pellet", "small"], ["roach"], ["green"], ["nosuchword"], ["river"], ["casters"], ["gravel"], ["red"]]), flags: {} };
    },
    slip() {
      return one([
        { ask: "mix", words: [mix() + "x y"], flags: {} },
        { ask: "dose", words: [mix()], flags: { "--rate": ["5 ml per kg dry"] } },
        { ask: "compare", words: [one(contents.strategies).name], flags: {} },
        { ask: "shop", words: [one(contents.strategies).name], flags: { "--every": ["30h"] } },
        { ask: "drop", words: [mix()], flags: { "--depth": ["0 m"] } },
        { ask: "soak", words: ["brown crumb"], flags: { "--amount": ["1 kg"] } },
        { ask: "dry", words: [mix()], flags: { "--dry-mass": ["1 l"] } },
        { ask: "advise", words: [], flags: { "--season": ["monsoon"] } },
      ]);
    },
  });
  const weights = [
    "dry", "dry", "dose", "dose", "sideBySide", "ownLook", "ownLook", "temperatures", "compare", "compare", "shop", "shop", "advise", "advise", "show", "find", "slip",
    "mix", "mix", "mix", "mix", "mix", "water", "water", "soak", "soak", "pump", "drop", "drop", "cost", "plan", "plan", "rest"];
  return Array.from({ length: count }, () => makers[one(weights)]());
}

/**
 * What a person tells of their own, the same each time: how the phone tells it, and what is typed for it; `shed` are the entries of
 * the shed, whose lines are typed with the rest, and `mixes` the names of the mixes.
 */
export function ownThings(contents, seed) {
  const random = randomNumbers(seed);
  const one = (list) => list[Math.floor(random() * list.length)];
  const grams = (low, high) => 5 * Math.round((low + random() * (high - low)) / 5) + "g";
  const dry = contents.ingredients.filter(({ kind }) => kind === "base" || kind === "powder").map(({ name }) => name);
  const things = [];
  things.shed = [];
  things.mixes = [];
  const distinct = (count) => {
    const names = new Set();
    while (names.size < count) names.add(one(dry));
    return [...names];
  };
  for (const name of ["my silt", "half and half", "a third"]) {
    const byMass = random() < 0.4;
    const parts = distinct(2 + Math.floor(random() * 4)).map((of) => ({ of, ...(byMass ? { mass: grams(50, 900) } : { share: 1 + Math.floor(random() * 5) }) }));
    things.mixes.push({ name, feel: "firm" });
    things.push({ tell: { ask: "put", recipe: { name, feel: one(contents.feels), parts } }, typed: (file) => [["recipe", "add", file]] });
  }
  for (const name of distinct(4)) {
    const price = "\u00a3" + (1 + random() * 6).toFixed(2);
    things.push({ tell: { ask: "price", of: name, pack: "1.5 kg", price, shop: "the mill" }, typed: () => [["price", name, "--pack", "1.5 kg", "--is", price, "--shop", "the mill", "--new-shop"]] });
  }
  for (const name of ["brown crumb", "maize meal"]) {
    const moisture = 6 + Math.floor(random() * 6) + " %";
    things.push({ tell: { ask: "measured", ingredient: name, moisture }, typed: () => [["ingredient", "measure", name, "--moisture", moisture]] });
  }
  for (const of of distinct(6)) {
    const bought = grams(500, 3000), used = grams(50, 450);
    things.shed.push({ what: "buy", of, amount: bought }, { what: "use", of, amount: used });
    things.push({ tell: null, typed: () => [["stock", "buy", of, bought], ["stock", "use", of, used]] });
  }
  return things;
}
