#!/usr/bin/env python3
"""A cloud of nine classes and the fines of six ingredients, followed until all have left or landed, against SciPy's solve_ivp
with events on the same cloud, in one run, warm, one thread.

SciPy is given a tolerance as loose as keeps its landing times within 1e-6 of the closed form's.

Usage: cloud_against_scipy.py MIX_BENCHMARK   (the built tests/benchmark/mix_benchmark; needs NumPy and SciPy)
Bars: under 100 us, and at least 250 times as fast. Exit status 1 where one is missed.
"""
import json
import os
import subprocess
import sys
import time

os.environ["OMP_NUM_THREADS"] = os.environ["OPENBLAS_NUM_THREADS"] = "1"
sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "reference"))
from make_cloud_tables import STIRRING, cloud

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


def main():
    out = subprocess.run([sys.argv[1], "--benchmark_format=json", "--benchmark_repetitions=9", "--benchmark_filter=particle_cloud"],
                         capture_output=True, text=True, check=True).stdout
    runs = [run for run in json.loads(out)["benchmarks"] if run.get("run_type") == "iteration" and run["name"].startswith("particle_cloud/54")]
    ours = min(run["real_time"] for run in runs)
    ours_lands = [runs[0][f"lands{i}"] for i in (0, 20, 53)]
    for tolerance in (1e-5, 1e-6, 1e-7, 1e-8, 1e-9):
        lands = follow(tolerance)
        error = max(abs(a / b - 1) for a, b in zip(ours_lands, (lands[0], lands[20], lands[53])))
        if error < 1e-6:
            break
    best = float("inf")
    for _ in range(5):
        start = time.perf_counter()
        follow(tolerance)
        best = min(best, time.perf_counter() - start)
    print(f"cloud of 54 classes and 6 fines: SciPy {best * 1e3:.1f} ms (tolerance {tolerance:.0e}, they differ by {error:.0e}), ours {ours:.1f} us, "
          f"{best * 1e6 / ours:.0f} times as fast (bars: under 100 us, 250 times)")
    sys.exit(error > 1e-6 or ours > 100 or best * 1e6 / ours < 250)


main()
