#!/usr/bin/env python3
"""Writes paid_model.csv: what is to be expected of a session of each way of feeding, and the chance that it brings most,
from blanks and catches; and the quantiles of a few Beta distributions.

Independent of this project's code, and finer: ln sigma and tau on a grid of 900 x 800 (there: 24 x 41), the mean m of the
chances of a blank on 20,000 steps (there: 32), and 400,000 worlds by NumPy's own random numbers (there: 2,048
quasi-random ones); Beta draws by NumPy (there: from a table). Run in this folder with NumPy and SciPy (on Debian 12:
/usr/bin/python3 make_paid_tables.py).

Model, as in docs/method.md, "What paid": a session is a blank with chance pi_k, else ln y ~ N(mu_k, sigma^2); mu_k ~
N(mu_0, tau^2), mu_0 flat; sigma^2 ~ scaled inverse chi-square(6, 0.8^2); tau = 0 for one in ten, else half normal(0.6),
cut at 2; pi_k all one ~ Beta(1, 3) for one in five, else ~ Beta(m s, (1 - m) s), m ~ Beta(1, 3), s of 4, 8, 16, 32.
"""
import csv

import numpy
from scipy import special, stats

SEED = 20261125
WORLDS = 400_000

CASES = {
    "two alike": [(1, [0.4, 0.9, 0.6, 1.3, 0.5]), (2, [0.5, 1.1, 0.7, 0.45])],
    "two apart": [(0, [1.4, 2.9, 1.6, 2.3, 1.9, 1.2]), (3, [0.5, 0.3, 0.7, 0.45, 0.35])],
    "one twice, one often": [(0, [3.0, 2.0]), (2, [0.5, 0.8, 0.7, 0.45, 0.9, 1.1, 0.3, 0.6, 0.75, 0.5])],
    "one only": [(2, [0.5, 0.8, 1.7])],
    "one session": [(0, [0.8])],
    "one all blanks": [(5, []), (1, [0.5, 0.8, 1.7, 0.9])],
    "four": [(1, [0.4, 0.9, 0.6]), (2, [1.5, 1.1, 2.7, 1.45]), (0, [0.2, 0.4, 0.5, 0.35]), (4, [0.8])],
    "long": [
        (8, list(numpy.exp(numpy.random.default_rng(1).normal(-0.5, 0.8, 32)).round(3))),
        (14, list(numpy.exp(numpy.random.default_rng(2).normal(-0.2, 0.8, 26)).round(3))),
    ],
}


def log_amounts(log_sigma, tau, ways):
    """ln of the density of the catches, mu_0 and mu_k integrated out; and the mean and precision of mu_0."""
    variance = numpy.exp(2 * log_sigma)
    log = -6 * log_sigma - 3 * 0.64 / variance
    caught = [logs for logs in ways if len(logs)]
    weights = [1 / (variance / len(logs) + tau**2) for logs in caught]
    for logs in caught:
        log = log - (len(logs) - 1) * log_sigma - ((logs - logs.mean()) ** 2).sum() / (2 * variance)
    precision = sum(weights)
    mean = sum(weight * logs.mean() for weight, logs in zip(weights, caught)) / precision
    for weight, logs in zip(weights, caught):
        log = log + 0.5 * numpy.log(weight) - 0.5 * weight * (logs.mean() - mean) ** 2
    return log - 0.5 * numpy.log(precision), mean, precision


def draw_amounts(random, ways):
    """mu_k and sigma^2, in worlds without and with a difference."""
    log_sigma = numpy.linspace(-2.5, 2, 900)[:, None]
    tau = numpy.concatenate([[0.0], (numpy.arange(800) + 0.5) / 400])[None, :]
    prior = numpy.where(tau > 0, stats.norm.pdf(tau, 0, 0.6), 0)
    prior = numpy.where(tau > 0, 0.9 * prior / prior.sum(), 0.1)
    log, mean, precision = log_amounts(log_sigma, tau, ways)
    weights = (numpy.exp(log - log.max()) * prior).ravel()
    place = random.choice(weights.size, size=WORLDS, p=weights / weights.sum())
    variance = numpy.exp(2 * log_sigma.ravel()[place // tau.size])
    scatter = tau.ravel()[place % tau.size]
    centre = mean.ravel()[place] + random.normal(size=WORLDS) / numpy.sqrt(precision.ravel()[place])
    columns = []
    for logs in ways:
        own = len(logs) / variance
        with numpy.errstate(divide="ignore", invalid="ignore"):
            weight = own + 1 / scatter**2
            middle = (own * (logs.mean() if len(logs) else 0) + centre / scatter**2) / weight
        apart = middle + random.normal(size=WORLDS) / numpy.sqrt(weight)
        columns.append(numpy.where(scatter > 0, apart, centre))
    return numpy.array(columns), variance


def log_blanks(mean, strength, counts):
    log = stats.beta.logpdf(mean, 1, 3)
    for blanks, caught in counts:
        log += special.betaln(mean * strength + blanks, (1 - mean) * strength + caught)
        log -= special.betaln(mean * strength, (1 - mean) * strength)
    return log


def draw_blanks(random, counts, size):
    means = (numpy.arange(20_000) + 0.5) / 20_000
    logs = numpy.array([log_blanks(means, s, counts) for s in (4, 8, 16, 32)])
    peak = logs.max()
    apart = numpy.exp(logs - peak).sum() / 20_000 / 4
    blanks, caught = (sum(each) for each in zip(*counts))
    alike = numpy.exp(special.betaln(1 + blanks, 3 + caught) - special.betaln(1, 3) - peak)
    chance_alike = 0.2 * alike / (0.2 * alike + 0.8 * apart)
    weights = numpy.exp(logs - peak).ravel()
    place = random.choice(weights.size, size=size, p=weights / weights.sum())
    strength, mean = numpy.array([4, 8, 16, 32])[place // 20_000], means[place % 20_000]
    one = random.uniform(size=size) < chance_alike
    shared = random.beta(1 + blanks, 3 + caught, size=size)
    columns = [
        numpy.where(one, shared, random.beta(mean * strength + b, (1 - mean) * strength + c)) for b, c in counts
    ]
    return numpy.array(columns)


def answer(random, case):
    ways = [numpy.log(numpy.array(rates)) if rates else numpy.array([]) for _, rates in case]
    counts = [(blanks, len(rates)) for blanks, rates in case]
    amounts, variance = draw_amounts(random, ways)
    chances = draw_blanks(random, counts, WORLDS)
    logs = numpy.log1p(-chances) + amounts + variance / 2
    most = logs >= logs.max(axis=0)
    return numpy.exp(numpy.quantile(logs, [0.05, 0.5, 0.95], axis=1)).T, (most / most.sum(axis=0)).mean(axis=1)


def main():
    random = numpy.random.default_rng(SEED)
    source = f"NumPy {numpy.__version__}, {WORLDS} worlds, seed {SEED}; remake with tests/reference/make_paid_tables.py"
    with open("paid_model.csv", "w", newline="") as file:
        rows = csv.writer(file, lineterminator="\n")
        rows.writerow(["case", "way", "blanks", "rates", "low", "middle", "high", "most", "source", "read_or_memory"])
        for name, case in CASES.items():
            expected, most = answer(random, case)
            for way, ((blanks, rates), range_, chance) in enumerate(zip(case, expected, most)):
                rows.writerow(
                    [name, way, blanks, " ".join(f"{rate:g}" for rate in rates)]
                    + [f"{value:.4f}" for value in range_]
                    + [f"{chance:.4f}", source, "COMPUTED"]
                )
    with open("beta_quantile.csv", "w", newline="") as file:
        rows = csv.writer(file, lineterminator="\n")
        rows.writerow(["a", "b", "share", "quantile", "source", "read_or_memory"])
        for a, b in [(1, 3), (0.125, 3.875), (2.5, 6), (0.4, 12), (21, 83), (9, 1.2), (201, 803)]:
            for share in (0.05, 0.3, 0.5, 0.8, 0.95):
                rows.writerow([a, b, share, f"{stats.beta.ppf(share, a, b):.6f}", "SciPy beta.ppf; remake with tests/reference/make_paid_tables.py", "COMPUTED"])


main()
