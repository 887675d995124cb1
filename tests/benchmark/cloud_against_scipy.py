#!/usr/bin/env python3
"""A cloud of nine classes and the fines of six ingredients, followed until all have left or landed, against SciPy's solve_ivp
with events on the same cloud, in one run, warm, one thread.

SciPy is given a tolerance as loose as keeps its landing times within 1e-6 of the closed form's.

Usage: cloud_against_scipy.py build/benchmark/baitwright   (with what is built beside it; needs NumPy and SciPy)
Bars: under 100 us, and at least 250 times as fast. Exit status 1 where one is missed.
"""
import os
import sys

os.environ["OMP_NUM_THREADS"] = os.environ["OPENBLAS_NUM_THREADS"] = "1"
sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "reference"))
from make_cloud_tables import STIRRING, cloud

from bench import by_itself
from figures import Figure, told_seconds
from timing import median_of

# As `the_cloud` in mix_benchmark.cpp: 54 classes and six fines.
CLASSES = 54
SPEEDS = [0.002 * 1.08**i for i in range(CLASSES)] + [0.0005] * 6
WEIGHTS_ML = [0.6] * CLASSES + [0.3] * 6
SIZES_MM = [0.1 * 1.05**i for i in range(CLASSES)] + [0.05] * 6


def spread_in_closed_form(radius, time):
    """Not what is measured: the integrator is spared it."""
    return (radius ** (2 / 3) + 8 / 3 * 2 ** (4 / 3) * STIRRING * time) ** 1.5


def follow(tolerance):
    """Landing times, the slowest class first."""
    fates = cloud(2.5, "straight", 0.0, 0.0, 0.55, 0.04, 0.55, 0.0, WEIGHTS_ML, SPEEDS, SIZES_MM, tolerance, spread_in_closed_form)
    return [fates[i][3] for i in range(CLASSES)]


def figures(bench):
    times, counters = bench.inside("mix_benchmark", "particle_cloud")
    ours = times["particle_cloud/54"]
    ours_lands = [counters["particle_cloud/54"][f"lands{i}"] for i in (0, 20, 53)]
    for tolerance in (1e-5, 1e-6, 1e-7, 1e-8, 1e-9):
        lands = follow(tolerance)
        error = max(abs(a / b - 1) for a, b in zip(ours_lands, (lands[0], lands[20], lands[53])))
        if error < 1e-6:
            break
    scipy = median_of(lambda: follow(tolerance), bench.runs(5, 3))
    yield Figure("a cloud of 54 classes and 6 fines", told_seconds(ours), "under 100 us, 250 times as fast as SciPy at an error under 1e-6",
                 error < 1e-6 and ours < 100e-6 and scipy / ours >= 250, f"1/{scipy / ours:.0f}",
                 f"SciPy's `solve_ivp`: {told_seconds(scipy)} (they differ by {error:.0e})")
    twice = times["particle_cloud/216"] / times["particle_cloud/54"]
    yield Figure("a cloud of four times as many classes", told_seconds(times["particle_cloud/216"]), "in proportion: at most 5 times",
                 twice <= 5, f"{twice:.1f}", "54 classes")


if __name__ == "__main__":
    by_itself(figures)
