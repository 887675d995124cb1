#!/usr/bin/env python3
"""Writes normal_quantile.csv, sobol.csv and hazen.csv from SciPy and NumPy, not from this project's own code.

Run in this folder with SciPy 1.10 or later (on Debian 12: /usr/bin/python3 make_scipy_tables.py).
"""
import csv

import numpy
import scipy
from scipy.special import ndtri
from scipy.stats import qmc


def write(name, header, rows):
    with open(name, "w", newline="") as file:
        writer = csv.writer(file, lineterminator="\n")
        writer.writerow(header)
        writer.writerows(rows)


def normal_quantile():
    """The three ranges of the algorithm, their seams (|p - 0.5| = 0.425, sqrt(-ln p) = 5), and far tails."""
    seam = float(numpy.exp(-25.0))
    low = [1e-300, 1e-200, 1e-100, 1e-50, 1e-30, 1e-20, 1e-15, seam * 0.99, seam, seam * 1.01, 1e-8, 1e-6, 1e-5, 1e-4,
           0.001, 0.005, 0.01, 0.02275, 0.025, 0.05, 0.0749999, 0.075, 0.0750001, 0.1, 0.15, 0.2, 0.25, 0.3, 1 / 3, 0.4,
           0.45, 0.49, 0.499, 0.4999999]
    high = [0.5000001, 0.51, 0.6, 2 / 3, 0.75, 0.8, 0.9, 0.925, 0.95, 0.975, 0.99, 0.995, 0.999, 0.9999, 0.999999,
            1 - 2.0**-32, 1 - 2.0**-33]
    source = f"SciPy {scipy.__version__} scipy.special.ndtri"
    write("normal_quantile.csv", ["probability", "quantile", "source", "read_or_memory"],
          [[repr(p), repr(float(ndtri(p))), source, "COMPUTED"] for p in low + high])


def sobol():
    """Bits of points 1 to 40, each exclusive-or with point 1, so that a digital shift drops out."""
    source = f"SciPy {scipy.__version__} scipy.stats.qmc.Sobol(scramble=False), directions of Joe and Kuo 2008"
    points = qmc.Sobol(d=200, scramble=False, bits=32).random(64)
    bits = (points * 2.0**32).astype(numpy.uint64)
    rows = []
    for coordinate in [1, 2, 3, 5, 8, 20, 60, 200]:
        for point in [2, 3, 4, 7, 8, 15, 31, 32, 40]:
            rows.append([coordinate, point, int(bits[point, coordinate - 1] ^ bits[1, coordinate - 1]), source, "COMPUTED"])
    write("sobol.csv", ["coordinate", "point", "exclusive_or_with_point_1", "source", "read_or_memory"], rows)


def hazen():
    source = f"NumPy {numpy.__version__} numpy.quantile(method='hazen')"
    lists = [[7.0], [2.0, 1.0], [3.0, -1.0, 10.0], [5.0, 5.0, 5.0, 1.0], [0.1, 12.5, 3.25, 8.0, -4.0, 6.5, 7.75],
             [float(value) for value in numpy.random.default_rng(11).integers(-999, 999, 41)]]
    rows = []
    for values in lists:
        for p in [0, 0.05, 0.1, 0.25, 1 / 3, 0.5, 0.7, 0.95, 0.99, 1]:
            rows.append([" ".join(map(repr, values)), repr(p), repr(float(numpy.quantile(values, p, method="hazen"))),
                         source, "COMPUTED"])
    write("hazen.csv", ["values", "p", "quantile", "source", "read_or_memory"], rows)


normal_quantile()
sobol()
hazen()
