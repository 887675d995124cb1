#!/usr/bin/env python3
"""Throughput of the water range against SciPy's Sobol points, `ndtri` and NumPy doing the same, in one run, warm, one
thread; and against our own Sobol points with inverse normal alone.

Usage: draws_against_scipy.py build/benchmark/baitwright   (with what is built beside it; needs NumPy and SciPy)
Bars: at least 2 times SciPy; at most 1.6 times Sobol and inverse normal alone. Exit status 1 where one is missed.
"""
import os

os.environ["OMP_NUM_THREADS"] = os.environ["OPENBLAS_NUM_THREADS"] = "1"
import numpy
from scipy.special import ndtri
from scipy.stats import qmc

from bench import by_itself
from figures import Figure, told_seconds
from timing import median_of

POINTS, PARTS, WETNESS = 1024, 6, 1.2


def scipy_range(share, absorption, gap, moisture, sigma, seed):
    points = qmc.Sobol(1 + 3 * PARTS, scramble=True, seed=seed).random(POINTS)
    z = ndtri(numpy.clip(points, 1e-16, 1 - 1e-16))
    hand = numpy.exp(0.1196 * z[:, :1])
    a = hand * absorption * numpy.exp(sigma * z[:, 1:1 + PARTS])
    g = hand * gap * numpy.exp(sigma * z[:, 1 + PARTS:1 + 2 * PARTS])
    bag = numpy.minimum(0.9, moisture * numpy.exp(sigma * z[:, 1 + 2 * PARTS:]))
    drier = (1 - bag) / (1 - moisture)
    wanted = ((a + moisture) * drier - bag + (WETNESS - 1) * g * drier) @ share
    return numpy.quantile(wanted, [0.05, 0.5, 0.95])


def figures(bench):
    share = numpy.full(PARTS, 1 / PARTS)
    column = lambda value: numpy.full(PARTS, value)
    seeds = iter(range(10**6))
    scipy = median_of(lambda: scipy_range(share, column(0.55), column(0.4), column(0.1), 0.15, next(seeds)), bench.runs(40, 15))
    times, _ = bench.inside("mix_benchmark", "water_range|sobol_and_inverse_normal")
    ours, alone = times["water_range"], times["sobol_and_inverse_normal"]
    yield Figure(f"the range of the water: {POINTS} points, {PARTS} parts", told_seconds(ours), "at least 2 times as fast as SciPy",
                 scipy / ours >= 2, f"1/{scipy / ours:.1f}", f"SciPy and NumPy: {told_seconds(scipy)}")
    yield Figure("the same over its floor", told_seconds(ours), "at most 1.6 times the floor", ours / alone <= 1.6, f"{ours / alone:.2f}",
                 f"Sobol points and the inverse normal alone: {told_seconds(alone)}")


if __name__ == "__main__":
    by_itself(figures)
