"use strict";

// The units of the fields: which go together, what a tap on - or + moves, and which a person begins with. Nothing of bait.

const unitFamilies = [["g", "kg", "oz", "lb"], ["ml", "l", "fl oz", "pt"], ["mm", "in"], ["m", "ft"], ["\u00b0C", "\u00b0F"], ["min", "h"]];

const unitSteps = {
  g: 50, kg: 0.25, oz: 1, lb: 0.25, ml: 50, l: 0.25, "fl oz": 1, pt: 0.5, mm: 5, in: 0.25, m: 0.25, ft: 0.5, "\u00b0C": 1, "\u00b0F": 1,
  min: 5, h: 0.5, "%": 5, "cm/s": 1,
};

const typedUnits = {
  gram: "g", grams: "g", kilo: "kg", kilos: "kg", ozs: "oz", ounce: "oz", ounces: "oz", lbs: "lb", pound: "lb", pounds: "lb",
  litre: "l", litres: "l", floz: "fl oz", pts: "pt", pint: "pt", pints: "pt", inch: "in", inches: "in", feet: "ft", foot: "ft",
  c: "\u00b0C", "\u00b0": "\u00b0C", degc: "\u00b0C", f: "\u00b0F", degf: "\u00b0F", mins: "min", minutes: "min", hours: "h", hour: "h",
};

// The pound of 1959 and the pint of the Weights and Measures Act 1985 (from memory), in the metric unit that they take the place of.
const imperialPlaces = {
  g: { small: ["oz", 28.349523125], large: ["lb", 453.59237] }, ml: { small: ["fl oz", 28.4130625], large: ["pt", 568.26125] },
  mm: { small: ["in", 25.4], large: ["in", 25.4] }, m: { small: ["ft", 0.3048], large: ["ft", 0.3048] },
};

const thousandfold = { kg: "g", l: "ml" };

function unitsWith(unit) {
  return unitFamilies.find((family) => family.includes(unit)) || (unit ? [unit] : []);
}

// "1.5 l" in its number and its unit; null where it is not one number with one unit, or none. "1,5" is "1.5"; "1,000" may be either,
// and is left for the engine to refuse.
function partsOfAmount(text) {
  const found = /^([0-9]+(?:[.,][0-9]*)?|[.,][0-9]+)\s*([^0-9]*)$/.exec(text.trim());
  if (!found || /^[1-9][0-9]{0,2},[0-9]{3}$/.test(found[1])) return null;
  const word = found[2].trim();
  return { number: found[1].replace(",", ".").replace(/^[.]/, "0.").replace(/[.]$/, ""), unit: typedUnits[word.toLowerCase()] || word };
}

function begunWithImperial() {
  return Boolean(bank.data) && bank.data.units === "imperial";
}

// The unit that a field begins with.
function firstUnit(unit) {
  const places = imperialPlaces[thousandfold[unit] || unit];
  return begunWithImperial() && places ? places[thousandfold[unit] ? "large" : "small"][0] : unit;
}

// An amount of the page's own, in the units that the person always uses: "500 g", or "1.1 lb".
function usualAmount(text) {
  const parts = partsOfAmount(text || "");
  const metric = parts && (thousandfold[parts.unit] || parts.unit);
  if (!parts || !begunWithImperial() || !imperialPlaces[metric]) return text;
  const number = Number(parts.number) * (thousandfold[parts.unit] ? 1000 : 1);
  const { small, large } = imperialPlaces[metric];
  const [unit, size] = number < large[1] ? small : large;
  return `${Number((number / size).toPrecision(2))} ${unit}`;
}
