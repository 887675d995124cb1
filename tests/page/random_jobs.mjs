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
  const weights = ["mix", "mix", "mix", "mix", "mix", "water", "water", "soak", "soak", "pump", "drop", "drop", "cost", "plan", "plan", "rest"];
  return Array.from({ length: count }, () => makers[one(weights)]());
}
