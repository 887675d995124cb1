#!/usr/bin/env python3
"""Writes water_ranges.csv: 5, 50 and 95 % points of the water of the mixes in water_mixes.json, by plain sampling; and
learned_hand.csv: what the measured marks in them tell of the hand, from the whole Gaussian system.

Independent of this project's code. Run in this folder with NumPy (on Debian 12: /usr/bin/python3 make_water_ranges.py).

Every A and the gap G = B - A that was not measured is log-normal about its median, times the hand of the day (5 %), the
hand in the long run (with the day's 12 %), and, for a default from memory, one error that they all share (9 %); the bag's
moisture M1 is log-normal about M0, at most 0.9. In g per g as bought the marks become
A1 = (A + M0)(1 - M1)/(1 - M0) - M1 and G1 = G (1 - M1)/(1 - M0). A measured A or B is as measured, times the hand of the
day and its own spread as far as that goes beyond 5 %. Where A alone was measured, G is the usual one. What was measured
tells of the hand in the long run and of the shared error: their normal distribution given the logarithms of
measured/usual. A mix at wetness h wants sum share (A1 min(h, 1) + G1 max(h - 1, 0)) of wetting, from the water, liquids
and films; water is not below 0. A relative standard deviation s is a log-normal's sigma = sqrt(ln(1 + s^2)).
"""
import csv
import json

import numpy

DRAWS = 1_000_000
SEED = 20261125
HAND, DAY, MEMORY = 0.12, 0.05, 0.09
FILM = 0.03
SOAKED_WATER = 0.40 * 1.0


def variance(spread):
    return numpy.log1p(spread**2)


def beyond_day(spread):
    return max(0.0, variance(spread) - variance(DAY))


def lognormal(random, median, sigma):
    return median * numpy.exp(sigma * random.standard_normal(DRAWS))


def observations(mix):
    """Rows of H, values r and names of the unknowns with their variances: r = H x, x independent normals about 0."""
    unknown = {"hand": variance(HAND) - variance(DAY), "memory": variance(MEMORY)}
    rows = []
    for i, part in enumerate(mix["parts"]):
        found = part.get("measured", {})
        if not found:
            continue
        memory = 0.0 if part.get("published") else 1.0
        a, b, m0 = part["absorption"], part["slump"], part["moisture"]
        unknown.update({f"A{i}": variance(part["absorption_spread"]), f"G{i}": variance(part["slump_spread"]),
                        f"bag{i}": variance(part["moisture_spread"]), f"a{i}": beyond_day(found["spread"]),
                        f"b{i}": beyond_day(found["spread"])})
        shared = {"hand": 1.0, "memory": memory}
        found_a, found_b = found.get("absorption"), found.get("slump")
        if found_a:
            rows.append((numpy.log(found_a / a),
                         shared | {f"A{i}": 1, f"bag{i}": m0 * (1 + found_a) / (1 - m0) / found_a, f"a{i}": 1}))
        if found_a and found_b:
            gap = found_b - found_a
            rows.append((numpy.log(gap / (b - a)),
                         shared | {f"G{i}": 1, f"bag{i}": m0 / (1 - m0), f"a{i}": -found_a / gap, f"b{i}": found_b / gap}))
        if found_b and not found_a:
            rows.append((numpy.log(found_b / b),
                         shared | {f"A{i}": a / b, f"G{i}": 1 - a / b,
                                   f"bag{i}": m0 * (1 + found_b) / (1 - m0) / found_b, f"b{i}": 1}))
    return unknown, rows


def learned(mix):
    """Mean and covariance of the long run of the hand and the shared error, as logarithms, given what was measured."""
    unknown, rows = observations(mix)
    names = list(unknown)
    prior = numpy.diag([unknown[name] for name in names])
    h = numpy.array([[row.get(name, 0.0) for name in names] for _, row in rows]).reshape(len(rows), len(names))
    r = numpy.array([value for value, _ in rows])
    gain = prior @ h.T @ numpy.linalg.inv(h @ prior @ h.T) if rows else numpy.zeros((len(names), 0))
    return (gain @ r)[:2], (prior - gain @ h @ prior)[:2, :2]


def wanted_wetting(random, mix, total):
    day = lognormal(random, 1.0, numpy.sqrt(variance(DAY)))
    mean, covariance = learned(mix)
    hand, memory = mean[:, None] + numpy.linalg.cholesky(covariance) @ random.standard_normal((2, DRAWS))
    on_a, on_g = min(mix["wetness"], 1), max(mix["wetness"] - 1, 0)
    wanted = numpy.zeros(DRAWS)
    for part in mix["parts"]:
        m0, found = part["moisture"], part.get("measured", {})
        shared = day * numpy.exp(hand + (0 if part.get("published") else memory))
        m1 = numpy.minimum(0.9, lognormal(random, m0, numpy.sqrt(variance(part["moisture_spread"]))))
        drier = (1 - m1) / (1 - m0)
        if "absorption" in found:
            a = day * lognormal(random, found["absorption"], numpy.sqrt(beyond_day(found["spread"])))
        else:  # a bag wetter than that lends its water to the rest
            a = shared * lognormal(random, part["absorption"], numpy.sqrt(variance(part["absorption_spread"])))
            a = (a + m0) * drier - m1
        if "slump" in found:
            g = day * lognormal(random, found["slump"], numpy.sqrt(beyond_day(found["spread"]))) - a
        else:
            usual = part["slump"] - part["absorption"]
            g = shared * drier * lognormal(random, usual, numpy.sqrt(variance(part["slump_spread"])))
        wanted += part["weight"] / total * (a * on_a + g * on_g)
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


def written(name, heads, rows):
    with open(name, "w", newline="") as file:
        writer = csv.writer(file, lineterminator="\n")
        writer.writerow(heads)
        writer.writerows(rows)


def main():
    random = numpy.random.default_rng(SEED)
    source = (f"NumPy {numpy.__version__}, {DRAWS:,} draws, seed {SEED}, distribution as in docs/method.md; "
              "remake with tests/reference/make_water_ranges.py")
    with open("water_mixes.json", encoding="utf-8") as file:
        mixes = json.load(file)["mixes"]
    ranges, hands = [], []
    for mix in mixes:
        total = sum(part["weight"] for part in mix["parts"] + mix["carried"])
        points = 1000 * numpy.quantile(water(mix, wanted_wetting(random, mix, total), total), [0.05, 0.5, 0.95])
        ranges.append([mix["name"], *(f"{point:.3f}" for point in points), source, "COMPUTED"])
        if observations(mix)[1]:
            mean, covariance = learned(mix)
            values = (*mean, covariance[0, 0], covariance[1, 1], covariance[0, 1])
            hands.append([mix["name"], *(f"{value:.9f}" for value in values),
                          source.replace(f"{DRAWS:,} draws, seed {SEED}, distribution", "the whole system solved, model"),
                          "COMPUTED"])
    written("water_ranges.csv", ["mix", "water_p05_g_per_kg_dry", "water_p50_g_per_kg_dry", "water_p95_g_per_kg_dry",
                                 "source", "read_or_memory"], ranges)
    written("learned_hand.csv", ["mix", "log_hand", "log_memory", "hand_variance", "memory_variance", "covariance",
                                 "source", "read_or_memory"], hands)


main()
