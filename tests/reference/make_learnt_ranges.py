#!/usr/bin/env python3
"""Writes learnt_mixes.json: mixes of bags of which something was learnt, with the joint normal distribution of it; and
learnt_ranges.csv: 5, 50 and 95 % points of their water, by plain sampling.

Independent of this project's code. Run in this folder with NumPy (on Debian 12: /usr/bin/python3 make_learnt_ranges.py).

What was learnt is ln P (hand), ln C (error of memory) and of each learnt bag ln A and ln G (G = B - A), jointly normal:
means and a square root of the covariance. A learnt bag's marks are drawn from it; those of another bag are its own medians
times exp(ln P), and of a default from memory times exp(ln C), drawn from it, times a spread of its own, moved to the
moisture of a drawn bag as in make_water_ranges.py; a bag measured since has its own. The hand of the day (5 %) is on all.
A mix at wetness h wants sum share (A min(h, 1) + G max(h - 1, 0)) grams of water per gram dry.
"""
import csv
import json

import numpy

DRAWS = 1_000_000
SEED = 20261125
DAY = 0.05


def variance(spread):
    return numpy.log1p(spread**2)


def learnt(random, bags, rank, tight):
    """Means and rows of a joint distribution such as a log leaves: a hand that is sure, bags that lean on each other."""
    rows = random.normal(0, 1, (2 + 2 * len(bags), rank))
    rows *= (tight * random.uniform(0.3, 1.0, 2 + 2 * len(bags)) / numpy.linalg.norm(rows, axis=1))[:, None]
    rows[2:] -= 0.5 * rows[0] * random.uniform(0, 1, 2 * len(bags))[:, None]
    return {"log_hand": random.normal(0, 0.08), "log_memory": random.normal(0, 0.05),
            "bags": [{"name": bag, "log_absorption": numpy.log(a) + random.normal(0, 0.1),
                      "log_gap": numpy.log(g) + random.normal(0, 0.1), "mixes": int(random.integers(1, 12))}
                     for bag, a, g in bags],
            "rank": rank, "factor": rows.ravel().tolist()}


def part(random, name, kind):
    a = random.uniform(0.3, 0.9)
    one = {"name": name, "kind": kind, "weight": round(random.uniform(0.1, 1), 3), "absorption": round(a, 3),
           "slump": round(a + random.uniform(0.2, 0.6), 3), "absorption_spread": 0.15, "slump_spread": 0.15,
           "moisture": 0.1, "moisture_spread": 0.15}
    if kind == "measured":
        one |= {"absorption_spread": 0.08, "slump_spread": 0.08}
    return one


def mix(random, name, kinds, wetness, rank, tight):
    parts = [part(random, f"{name} {i}", kind) for i, kind in enumerate(kinds)]
    bags = [(p["name"], p["absorption"], p["slump"] - p["absorption"]) for p in parts if p["kind"] == "learnt"]
    return {"name": name, "wetness": wetness, "parts": parts, "learnt": learnt(random, bags, rank, tight)}


def lognormal(random, median, spread, beyond=0.0):
    sigma = numpy.sqrt(max(0.0, variance(spread) - beyond))
    return median * numpy.exp(sigma * random.standard_normal(DRAWS))


def marks(random, one, drawn, places):
    """A and G of a part, but for the hand of the day."""
    a0, g0 = one["absorption"], one["slump"] - one["absorption"]
    if one["kind"] == "learnt":
        k = places[one["name"]]
        return numpy.exp(drawn[2 + 2 * k]), numpy.exp(drawn[3 + 2 * k])
    if one["kind"] == "measured":
        beyond = variance(DAY)
        a = lognormal(random, a0, one["absorption_spread"], beyond)
        return a, lognormal(random, one["slump"], one["slump_spread"], beyond) - a
    shared = numpy.exp(drawn[0] + (drawn[1] if one["kind"] == "memory" else 0))
    m0 = one["moisture"]
    m1 = numpy.minimum(0.9, lognormal(random, m0, one["moisture_spread"]))
    return ((shared * lognormal(random, a0, one["absorption_spread"]), m0, m1),
            shared * lognormal(random, g0, one["slump_spread"]) * (1 - m1) / (1 - m0))


def water(random, mix):
    """Grams per kilogram dry."""
    known = mix["learnt"]
    mean = [known["log_hand"], known["log_memory"]]
    for bag in known["bags"]:
        mean += [bag["log_absorption"], bag["log_gap"]]
    rows = numpy.array(known["factor"]).reshape(len(mean), known["rank"])
    drawn = numpy.array(mean)[:, None] + rows @ random.standard_normal((known["rank"], DRAWS))
    places = {bag["name"]: i for i, bag in enumerate(known["bags"])}
    day = numpy.exp(numpy.sqrt(variance(DAY)) * random.standard_normal(DRAWS))
    total, h = sum(p["weight"] for p in mix["parts"]), mix["wetness"]
    wanted = numpy.zeros(DRAWS)
    for one in mix["parts"]:
        a, g = marks(random, one, drawn, places)
        if isinstance(a, tuple):  # the day's hand wets the grain, not the water that is in the bag
            grain, m0, m1 = a
            a = (day * grain + m0) * (1 - m1) / (1 - m0) - m1
        else:
            a = day * a
        wanted += one["weight"] / total * (a * min(h, 1) + day * g * max(h - 1, 0))
    return 1000 * numpy.maximum(0, wanted)


def main():
    random = numpy.random.default_rng(SEED)
    six = ["learnt"] * 6
    mixes = [mix(random, "one learnt bag, just holding", ["learnt"], 1.0, 4, 0.08),
             mix(random, "six learnt bags, firm", six, 1.2, 14, 0.08),
             mix(random, "six learnt bags of many, soft", six, 1.6, 60, 0.15),
             mix(random, "three learnt of rank two, firm", ["learnt"] * 3, 1.2, 2, 0.10),
             mix(random, "learnt among defaults, firm", ["learnt", "memory", "learnt", "published"], 1.3, 9, 0.07),
             mix(random, "a learnt hand alone", ["memory", "published", "memory"], 1.2, 2, 0.06),
             mix(random, "learnt, and measured since", ["learnt", "measured", "memory"], 1.4, 6, 0.06),
             mix(random, "drier than it holds", ["learnt", "learnt", "memory"], 0.7, 6, 0.12)]
    source = (f"NumPy {numpy.__version__}, {DRAWS:,} draws, seed {SEED}, distribution as in docs/method.md; "
              "remake with tests/reference/make_learnt_ranges.py")
    with open("learnt_mixes.json", "w", encoding="utf-8") as file:
        json.dump({"mixes": mixes}, file, indent=1)
        file.write("\n")
    with open("learnt_ranges.csv", "w", newline="") as file:
        writer = csv.writer(file, lineterminator="\n")
        writer.writerow(["mix", "water_p05_g_per_kg_dry", "water_p50_g_per_kg_dry", "water_p95_g_per_kg_dry", "source",
                         "read_or_memory"])
        for one in mixes:
            points = numpy.quantile(water(random, one), [0.05, 0.5, 0.95])
            writer.writerow([one["name"], *(f"{point:.3f}" for point in points), source, "COMPUTED"])


main()
