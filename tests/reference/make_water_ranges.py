#!/usr/bin/env python3
"""Writes water_ranges.csv: 5, 50 and 95 % points of the water of the mixes in water_mixes.json, by plain sampling.

Independent of this project's code. Run in this folder with NumPy (on Debian 12: /usr/bin/python3 make_water_ranges.py).

For each part A and the gap G = B - A are log-normal about their medians, times one log-normal factor (12 %) that all
parts share, the hand; the bag's moisture M1 is log-normal about M0, at most 0.9. In g per g as bought the marks become
A1 = (A + M0)(1 - M1)/(1 - M0) - M1 and G1 = G (1 - M1)/(1 - M0). A mix at wetness h wants
sum share (A1 min(h, 1) + G1 max(h - 1, 0)) of wetting, from the water, liquids and films; water is not below 0.
A relative standard deviation s is a log-normal's sigma = sqrt(ln(1 + s^2)).
"""
import csv
import json

import numpy

DRAWS = 1_000_000
SEED = 20261125
HAND = 0.12
FILM = 0.03
SOAKED_WATER = 0.40 * 1.0


def lognormal(random, median, spread):
    return median * numpy.exp(numpy.sqrt(numpy.log1p(spread**2)) * random.standard_normal(DRAWS))


def wanted_wetting(random, mix, total):
    hand = lognormal(random, 1.0, HAND)
    wanted = numpy.zeros(DRAWS)
    for part in mix["parts"]:
        m0 = part["moisture"]
        a = hand * lognormal(random, part["absorption"], part["absorption_spread"])
        g = hand * lognormal(random, part["slump"] - part["absorption"], part["slump_spread"])
        m1 = numpy.minimum(0.9, lognormal(random, m0, part["moisture_spread"]))
        drier = (1 - m1) / (1 - m0)
        a1 = (a + m0) * drier - m1  # a bag wetter than that lends its water to the rest
        wanted += part["weight"] / total * (a1 * min(mix["wetness"], 1) + g * drier * max(mix["wetness"] - 1, 0))
    return wanted


def water(mix, wanted, total):
    """Per g dry. Unknown: water W and wet mass T; T = fixed + b_w W + b_t T + W, wetting alike."""
    mass = sum(p["weight"] for p in mix["parts"]) / total
    films = 0.0
    for part in mix["carried"]:
        share = part["weight"] / total
        mass += share * (1 + (SOAKED_WATER + FILM if part["soaked"] else 0))
        films += share * (FILM if part["soaked"] else 0)
    wetting, by_water, by_wet, wets_by_water, wets_by_wet = films, 0.0, 0.0, 0.0, 0.0
    for liquid in mix["liquids"]:
        mass += liquid["grams_per_gram_dry"]
        wetting += liquid["grams_per_gram_dry"] * liquid["wetting_per_gram"]
    for dose in mix["doses"]:
        each = dose["grams"] / 1000
        if dose["basis"] == "per kg dry":
            mass += each
            wetting += each * dose["wetting_per_gram"]
        elif dose["basis"] == "per kg wet":
            by_wet += each
            wets_by_wet += each * dose["wetting_per_gram"]
        else:
            by_water += each
            wets_by_water += each * dose["wetting_per_gram"]
    # Rows: the wetting that is there is what is wanted; the wet mass is all that is in the tub.
    system = numpy.array([[1 + wets_by_water, wets_by_wet], [-(1 + by_water), 1 - by_wet]])
    sides = numpy.stack([wanted - wetting, numpy.full(DRAWS, mass)])
    return numpy.maximum(0.0, numpy.linalg.solve(system, sides)[0])


def main():
    random = numpy.random.default_rng(SEED)
    source = (f"NumPy {numpy.__version__}, {DRAWS:,} draws, seed {SEED}, distribution as in docs/method.md; "
              "remake with tests/reference/make_water_ranges.py")
    with open("water_mixes.json", encoding="utf-8") as file:
        mixes = json.load(file)["mixes"]
    with open("water_ranges.csv", "w", newline="") as file:
        writer = csv.writer(file, lineterminator="\n")
        writer.writerow(["mix", "water_p05_g_per_kg_dry", "water_p50_g_per_kg_dry", "water_p95_g_per_kg_dry", "source",
                         "read_or_memory"])
        for mix in mixes:
            total = sum(part["weight"] for part in mix["parts"] + mix["carried"])
            points = 1000 * numpy.quantile(water(mix, wanted_wetting(random, mix, total), total), [0.05, 0.5, 0.95])
            writer.writerow([mix["name"], *(f"{point:.3f}" for point in points), source, "COMPUTED"])


main()
