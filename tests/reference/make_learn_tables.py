#!/usr/bin/env python3
"""Writes learn_cases.json: invented logs of mixes, and what they teach of the water: where the unknowns are likeliest, their
covariance, and which entries lie too far from all the others.

Independent of this project's code. Run in this folder with NumPy and SciPy (on Debian 12: /usr/bin/python3
make_learn_tables.py).

Unknown are ln P (the hand in the long run), ln C (the error that defaults from memory share), of each bag what ln A and ln G
(G = B - A) lie off the library's, one normal for the bag's moisture, and the hand of each day. All are normal. A and G of
one bag have the variances stated; of two bags of one ingredient all of it is shared but the bag's own 6 %, at most half. The
moisture moves ln A by -(1 + A) s/((1 - M) A) and ln G by -s/(1 - M), s = M sigma(spread of M). A mix at wetness h says
ln(water + wetting) = ln sum m (A min(h, 1) + G max(h - 1, 0)) + day + e; the sigma of e is `within` times the slope of
ln w(h) at the library's values, and 1 %. A part whose moisture was told has its marks moved to it and is free of the
bag's normal. A measured mark says ln A, or ln B, of the latest bag, off by its spread, which holds the hand of
the day it was made on, at the least 1 %. The whole system is solved at once, the days among the unknowns, by Gauss-Newton's steps on the stacked
residuals with a QR factorisation; SciPy's least_squares must come to the same. What is set aside is found by leaving each
observation out in turn and solving anew for all the others.
"""
import json

import numpy
from scipy.optimize import least_squares
from scipy.special import jn_zeros

SEED = 20261126
HAND, DAY, MEMORY, BAG, SCALES = 0.12, 0.05, 0.09, 0.06, 0.01


def variance(spread):
    return numpy.log1p(spread**2)


def marks_at(marks, stated, actual):
    return [(mark + stated) * (1 - actual) / (1 - stated) - actual for mark in marks]


class System:
    """The unknowns of a case, in one vector: their covariance before, and for each bag its place in the vector."""

    def __init__(self, case):
        self.case = case
        self.variances = [variance(HAND) - variance(DAY), variance(MEMORY)]
        self.shared = []
        self.bags = {}
        mixes = case["log"]
        for name, one in sorted(case["ingredients"].items()):
            days = sorted({bag["on"] for bag in case["bags"] if bag["of"] == name})
            self.bags[name] = [self.bag(one, None if i == 0 else days[i - 1], i == len(days)) for i in range(len(days) + 1)]
            for key, spread in (("a", one["absorption_spread"]), ("g", one["slump_spread"])):
                own = min(variance(BAG), variance(spread) / 2) if days else variance(spread)
                places = [bag[key] for bag in self.bags[name]]
                for i in places:
                    for j in places:
                        if i != j:
                            self.shared.append((i, j, variance(spread) - own))
        self.days = {}
        for day in sorted({mix["on"] for mix in mixes}):
            self.days[day] = self.fresh(variance(DAY))
        self.prior = numpy.diag(self.variances)
        for i, j, both in self.shared:
            self.prior[i, j] = both
        self.root = numpy.linalg.cholesky(self.prior)

    def fresh(self, value):
        self.variances.append(value)
        return len(self.variances) - 1

    def bag(self, one, since, latest):
        found = one.get("measured", {})
        moisture = found.get("moisture", one["moisture"]) if latest else one["moisture"]
        a, b = marks_at([one["absorption"], one["slump"]], one["moisture"], moisture)
        sigma = moisture * numpy.sqrt(variance(one["moisture_spread"]))
        return {"since": since, "A": a, "G": b - a, "moisture": moisture, "memory": 0.0 if one["published"] else 1.0,
                "a": self.fresh(variance(one["absorption_spread"])), "g": self.fresh(variance(one["slump_spread"])),
                "u": self.fresh(1.0), "a_by_u": -(1 + a) / (1 - moisture) * sigma / a, "g_by_u": -sigma / (1 - moisture)}

    def row(self, bag, key, told=False):
        row = numpy.zeros(len(self.variances))
        row[0], row[1], row[bag[key]] = 1, bag["memory"], 1
        if not told:
            row[bag["u"]] = bag[key + "_by_u"]
        return row

    def observations(self):
        """Weights, rows, logarithm seen, sigma, index in the log (None for a measured mark), row of the day."""
        seen = []
        for i, mix in enumerate(self.case["log"]):
            weights, rows, h = [], [], mix["wetness"]
            all_a = all_g = 0.0
            for part in mix["parts"]:
                bag = [b for b in self.bags[part["of"]] if b["since"] is None or b["since"] <= mix["on"]][-1]
                a, g = bag["A"], bag["G"]
                if "moisture" in part:
                    a, b = marks_at([a, a + g], bag["moisture"], part["moisture"])
                    g = b - a
                all_a, all_g = all_a + part["mass"] * a, all_g + part["mass"] * g
                weights += [part["mass"] * a * min(h, 1), part["mass"] * g * max(h - 1, 0)]
                rows += [self.row(bag, "a", "moisture" in part), self.row(bag, "g", "moisture" in part)]
            slope = (all_g if h > 1 else all_a) / sum(weights)
            day = numpy.zeros(len(self.variances))
            day[self.days[mix["on"]]] = 1
            seen.append((numpy.array(weights), numpy.array(rows), numpy.log(mix["water"] + mix["wetting"]),
                         numpy.hypot(mix["within"] * slope, SCALES), i, day))
        for name, one in self.case["ingredients"].items():
            found = one.get("measured", {})
            if not found:
                continue
            bag = self.bags[name][-1]
            sigma = numpy.sqrt(max(variance(found["spread"]), SCALES**2))
            rows = numpy.array([self.row(bag, "a"), self.row(bag, "g")])
            none = numpy.zeros(len(self.variances))
            if "absorption" in found:
                seen.append((numpy.array([bag["A"]]), rows[:1], numpy.log(found["absorption"]), sigma, None, none))
            if "slump" in found:
                seen.append((numpy.array([bag["A"], bag["G"]]), rows, numpy.log(found["slump"]), sigma, None, none))
        return seen


def residuals(z, system, seen):
    x = system.root @ z
    rest = [z]
    for weights, rows, log_seen, sigma, _, day in seen:
        rest.append([(numpy.log(weights @ numpy.exp(rows @ x)) + day @ x - log_seen) / sigma])
    return numpy.concatenate(rest)


def jacobian(z, system, seen):
    x = system.root @ z
    rows_of = [numpy.eye(len(z))]
    for weights, rows, _, sigma, _, day in seen:
        each = weights * numpy.exp(rows @ x)
        rows_of.append((((each @ rows) / each.sum() + day) @ system.root / sigma)[None, :])
    return numpy.concatenate(rows_of)


def solve(system, seen):
    z = numpy.zeros(len(system.variances))
    for _ in range(500):
        step = numpy.linalg.lstsq(jacobian(z, system, seen), -residuals(z, system, seen), rcond=None)[0]
        share, now = 1.0, numpy.sum(residuals(z, system, seen)**2)
        while numpy.sum(residuals(z + share * step, system, seen)**2) > now * (1 + 1e-12) and share > 1e-9:
            share /= 2
        z = z + share * step
        if numpy.max(numpy.abs(step)) < 3e-14:
            break
    triangle = numpy.linalg.qr(jacobian(z, system, seen), mode="r")
    inverse = system.root @ numpy.linalg.inv(triangle)
    return z, inverse @ inverse.T


def far_by(system, seen, heeded, i):
    """How far observation i lies from what the others heeded foretell, in its sigmas."""
    others = [seen[j] for j in heeded if j != i]
    z, covariance = solve(system, others)
    x = system.root @ z
    weights, rows, log_seen, sigma, _, day = seen[i]
    each = weights * numpy.exp(rows @ x)
    slope = (each @ rows) / each.sum() + day
    return (log_seen - numpy.log(each.sum()) - day @ x) / numpy.sqrt(sigma**2 + slope @ covariance @ slope)


def set_aside(system, seen):
    """Indices in the log, and the nearest that any came to the line of three sigma."""
    heeded, nearest, returned = list(range(len(seen))), 9.0, set()
    while True:
        far = {i: far_by(system, seen, heeded, i) for i in range(len(seen))
               if seen[i][4] is not None and not system.case["log"][seen[i][4]]["believed"]}
        nearest = min([nearest] + [abs(abs(t) - 3) for t in far.values()])
        inside = {i: t for i, t in far.items() if i in heeded and abs(t) > 3}
        if inside:
            heeded.remove(max(inside, key=lambda i: abs(inside[i])))
            continue
        back = [i for i, t in far.items() if i not in heeded and abs(t) <= 3 and i not in returned]
        if not back:
            return sorted(seen[i][4] for i in range(len(seen)) if i not in heeded), nearest, heeded
        heeded = sorted(heeded + back)
        returned |= set(back)


def drawn_ingredient(random):
    a = round(random.uniform(0.25, 1.2), 3)
    one = {"absorption": a, "slump": round(a * random.uniform(1.4, 1.9), 3),
           "absorption_spread": round(random.uniform(0.08, 0.3), 3), "slump_spread": round(random.uniform(0.08, 0.35), 3),
           "moisture": round(random.uniform(0.05, 0.14), 3), "moisture_spread": round(random.uniform(0.05, 0.3), 3),
           "published": bool(random.random() < 0.3)}
    if random.random() < 0.25:
        found = one["measured"] = {"spread": round(random.uniform(0.04, 0.1), 3)}
        if random.random() < 0.4:
            found["moisture"] = round(one["moisture"] * random.uniform(0.8, 1.3), 3)
        factor = numpy.exp(0.2 * random.standard_normal())
        which = random.integers(3)
        if which != 1:
            found["absorption"] = round(a * factor, 3)
        if which != 0:
            found["slump"] = round(max(one["slump"] * factor, found.get("absorption", a) * 1.15), 3)
        if which == 0 and found["absorption"] >= one["slump"] * 0.95:
            found["slump"] = round(found["absorption"] * 1.6, 3)
    return one


def day_text(number):
    return f"2026-{1 + number // 28:02d}-{1 + number % 28:02d}"


def drawn_case(random, number, kind):
    count = int(random.integers(1, 6))
    names = [f"meal {chr(97 + i)}" for i in range(count)]
    case = {"name": f"{kind} {number}", "ingredients": {name: drawn_ingredient(random) for name in names}, "bags": [],
            "log": []}
    mixes = int(random.integers(1, 9 if kind == "all believed" else 14))
    last = int(random.integers(1, 3 * mixes + 2))
    for name in names:
        for _ in range(int(random.choice([0, 0, 0, 1, 2]))):
            case["bags"].append({"of": name, "on": day_text(int(random.integers(0, last + 1)))})
    for i in range(mixes):
        parts = []
        for name in random.permutation(names)[:int(random.integers(1, count + 1))]:
            part = {"of": str(name), "mass": round(float(random.uniform(50, 900)), 1)}
            if random.random() < 0.15:
                part["moisture"] = round(case["ingredients"][part["of"]]["moisture"] * random.uniform(0.8, 1.2), 3)
            parts.append(part)
        case["log"].append({"id": i + 1, "on": day_text(int(random.integers(0, last + 1))), "of": f"mix {i % 3}",
                            "wetness": round(float(random.choice([random.uniform(0.6, 1), 1, random.uniform(1, 2.2)])), 3),
                            "within": round(float(random.uniform(0.01, 0.12)), 3), "wetting": round(float(random.choice(
                                [0, random.uniform(0, 60)])), 1), "parts": parts, "believed": kind == "all believed",
                            "water": 0.0})
    pour(random, case, kind)
    return case


def pour(random, case, kind):
    """The water, by unknowns that are drawn; in some logs with absurd entries."""
    system = System(case)
    x = system.root @ random.standard_normal(len(system.variances))
    for weights, rows, _, sigma, i, day in System(case | {"log": [mix | {"water": 100.0} for mix in case["log"]]}).observations():
        if i is None:
            continue
        wetting = numpy.exp(numpy.log(weights @ numpy.exp(rows @ x)) + day @ x + sigma * random.standard_normal())
        if kind == "all believed":
            wetting *= numpy.exp(0.2 * random.standard_normal())
        if kind == "some absurd" and random.random() < 0.2:
            wetting *= random.choice([0.5, 2.0])
            case["log"][i]["believed"] = bool(random.random() < 0.15)
        case["log"][i]["water"] = round(float(max(5.0, wetting - case["log"][i]["wetting"])), 1)


def mixed_bags(system, seen, heeded):
    names = sorted({part["of"] for mix in system.case["log"] for part in mix["parts"]})
    return [(name, system.bags[name][-1],
             sum(1 for i in heeded if seen[i][4] is not None and
                 any(part["of"] == name for part in system.case["log"][seen[i][4]]["parts"]))) for name in names]


def answered(case):
    system = System(case)
    seen = system.observations()
    aside, nearest, heeded = set_aside(system, seen)
    z, covariance = solve(system, [seen[i] for i in heeded])
    check = least_squares(residuals, numpy.zeros(len(z)), jacobian, args=(system, [seen[i] for i in heeded]), xtol=1e-15,
                          ftol=1e-15, gtol=1e-15, method="lm")
    assert numpy.max(numpy.abs(check.x - z)) < 5e-6, case["name"]  # it stops where steps no longer pay
    x = system.root @ z
    rows = [numpy.eye(len(x))[0], numpy.eye(len(x))[1]]
    bags = []
    for name, bag, mixes in mixed_bags(system, seen, heeded):
        a, g = system.row(bag, "a"), system.row(bag, "g")
        rows += [a, g]
        bags.append({"name": name, "log_absorption": numpy.log(bag["A"]) + a @ x, "log_gap": numpy.log(bag["G"]) + g @ x,
                     "mixes": mixes})
    told = numpy.array(rows) @ covariance @ numpy.array(rows).T
    ids = [case["log"][i]["id"] for i in aside]
    return case | {"log_hand": x[0], "log_memory": x[1], "learnt": bags, "set_aside": ids,
                   "covariance": [told[i, j] for i in range(len(told)) for j in range(i + 1)]}, nearest


def uptake(diffused, diameter, length):
    zeros, odd = jn_zeros(0, 400), 2 * numpy.arange(400) + 1
    round_missing = numpy.sum(4 / zeros**2 * numpy.exp(-zeros**2 * diffused / (diameter / 2)**2))
    ends_missing = numpy.sum(8 / (odd * numpy.pi)**2 * numpy.exp(-(odd * numpy.pi / 2)**2 * diffused / (length / 2)**2))
    return 1 - round_missing * ends_missing


def arrhenius(energy, celsius):
    return numpy.exp(-energy / 8.314462618 * (1 / (273.15 + celsius) - 1 / 288.15))


def soak_case(random, number):
    pellet = {"diameter": round(random.uniform(2e-3, 8e-3), 5), "length": round(random.uniform(2e-3, 1.2e-2), 5),
              "diffusivity": float(f"{random.uniform(0.5e-9, 4e-9):.3g}"), "capacity": round(random.uniform(0.7, 1.3), 3),
              "energy": 25e3, "diffusivity_spread": round(random.uniform(0.2, 0.5), 2),
              "capacity_spread": round(random.uniform(0.05, 0.25), 2)}
    size = pellet["diameter"], pellet["length"]
    true = numpy.exp(0.3 * random.standard_normal()), numpy.exp(0.1 * random.standard_normal())

    def gain(logs, soak):
        diffused = (numpy.exp(logs[0]) * pellet["diffusivity"] * arrhenius(pellet["energy"], soak["celsius"]) *
                    soak["seconds"])
        return pellet["capacity"] * numpy.exp(logs[1]) * uptake(diffused, *size)

    soaks = []
    for _ in range(int(random.integers(1, 9))):
        soak = {"celsius": round(random.uniform(4, 22), 1), "seconds": round(random.uniform(0.02, 0.5) *
                pellet["diameter"]**2 / 4 / pellet["diffusivity"])}
        gained = 0.03 + gain(numpy.log(true), soak)
        soak["dry"], soak["drained"] = 100.0, round(100 * (1 + gained * (1 + 0.05 * random.standard_normal())), 1)
        soaks.append(soak)
    before = numpy.sqrt(variance(numpy.array([pellet["diffusivity_spread"], pellet["capacity_spread"]])))

    def rest(logs):
        seen = numpy.array([soak["drained"] / soak["dry"] - 1 for soak in soaks])
        model = numpy.array([gain(logs, soak) for soak in soaks])
        return numpy.concatenate([logs / before, (numpy.log(model) - numpy.log(seen - 0.03)) / (0.05 * seen / (seen - 0.03))])

    found = least_squares(rest, [0, 0], jac="3-point", xtol=1e-15, ftol=1e-15, gtol=1e-15)
    covariance = numpy.linalg.inv(found.jac.T @ found.jac)
    return {"name": f"pellet {number}", "pellet": pellet, "soaks": soaks, "mean": list(found.x),
            "sigma": list(numpy.sqrt(numpy.diag(covariance)))}


def main():
    random = numpy.random.default_rng(SEED)
    cases = []
    for kind, wanted in (("all believed", 60), ("as drawn", 20), ("some absurd", 20)):
        made = 0
        while made < wanted:
            case, nearest = answered(drawn_case(random, made + 1, kind))
            # Leverage is exact where all is linear: an entry that lies on the line may fall either way.
            if nearest < 0.2 or (kind == "some absurd") != bool(case["set_aside"]):
                continue
            cases.append(case)
            made += 1
    source = (f"NumPy {numpy.__version__} and SciPy, seed {SEED}, the system as in docs/method.md; remake with "
              "tests/reference/make_learn_tables.py")
    with open("learn_cases.json", "w", encoding="utf-8") as file:
        file.write('{"source": ' + json.dumps(source) + ', "cases": [\n')
        file.write(",\n".join(json.dumps(case, default=float) for case in cases))
        file.write('\n], "soaks": [\n')
        file.write(",\n".join(json.dumps(soak_case(random, i + 1), default=float) for i in range(20)))
        file.write("\n]}\n")


if __name__ == "__main__":
    main()
