#!/usr/bin/env python3
"""Writes soaked_body.csv, soaked_grain.csv and crank_series.csv from SciPy and NumPy, not from this project's own code.

soaked_body.csv: a sheet, a long cylinder and a sphere soaked with their surface at capacity, then drained with it closed,
by the method of lines: with s the square of the distance from the middle, c_t = 4 s c_ss + 2 d c_s in d dimensions, at
Chebyshev points in s, integrated by `solve_ivp` (Radau). No series of eigenfunctions is used.

soaked_grain.csv: a finite cylinder likewise, in both directions at once: C_t = 4 s C_ss + 4 C_s + (1/h^2) (4 u C_uu + 2 C_u), with s and
u the squares of the distance from the axis and from the middle plane, in units of the radius and of half the length, and h half the
length over the radius. By the exponential of that operator, on a grid; no product of two bodies is
used.

crank_series.csv: Crank's own series for the share taken up under water, summed in extended precision; for the sphere the
one for short times (in erfc's integral) stands beside it and must agree.

Run in this folder with SciPy 1.10 or later (on Debian 12: /usr/bin/python3 make_soak_tables.py).
"""
import csv

import numpy
import scipy
from scipy.integrate import solve_ivp
from scipy.linalg import expm
from scipy.special import erfc, jn_zeros

POINTS = 96
DIMENSIONS = {"sheet": 1, "cylinder": 2, "sphere": 3}


def write(name, header, rows):
    with open(name, "w", newline="") as file:
        writer = csv.writer(file, lineterminator="\n")
        writer.writerow(header)
        writer.writerows(rows)


def chebyshev(count):
    """Points from 1 down to -1 and the differentiation matrix (Trefethen 2000, cheb.m, from memory)."""
    k = numpy.arange(count + 1)
    x = numpy.cos(numpy.pi * k / count)
    c = numpy.where((k == 0) | (k == count), 2.0, 1.0) * (-1.0) ** k
    difference = x[:, None] - x[None, :]
    d = numpy.outer(c, 1 / c) / (difference + numpy.eye(count + 1))
    return x, d - numpy.diag(d.sum(axis=1))


def mean_weights(s, dimensions):
    """Weights of the mean over the body: exact for the polynomials through the points."""
    nodes, weights = numpy.polynomial.legendre.leggauss(200)
    r, w = (nodes + 1) / 2, weights / 2
    basis = numpy.polynomial.chebyshev.chebvander(2 * r**2 - 1, len(s) - 1)
    at_points = numpy.polynomial.chebyshev.chebvander(2 * s - 1, len(s) - 1)
    return (dimensions * w * r ** (dimensions - 1)) @ basis @ numpy.linalg.inv(at_points)


def soak_and_drain(shape, fourier, drained):
    dimensions = DIMENSIONS[shape]
    x, d = chebyshev(POINTS)
    s, d = (x + 1) / 2, 2 * d  # s[0] = 1 is the surface, s[-1] = 0 the core
    inside = 4 * s[:, None] * (d @ d) + 2 * dimensions * d
    # Soak: c[0] is held at 1.
    held = solve_ivp(lambda t, c: inside[1:, 1:] @ c + inside[1:, 0], (0, fourier), numpy.zeros(POINTS), method="Radau",
                     rtol=1e-10, atol=1e-12, jac=inside[1:, 1:])
    profile = numpy.concatenate([[1.0], held.y[:, -1]])
    # Drain: c[0] is what makes the slope at the surface vanish.
    closed = inside[1:, 1:] - numpy.outer(inside[1:, 0], d[0, 1:]) / d[0, 0]
    even = solve_ivp(lambda t, c: closed @ c, (0, max(drained)), profile[1:], method="Radau", rtol=1e-10, atol=1e-12,
                     jac=closed, t_eval=drained)
    weights = mean_weights(s, dimensions)
    for i, tau in enumerate(drained):
        c = even.y[:, i]
        c = numpy.concatenate([[-(d[0, 1:] @ c) / d[0, 0]], c])
        yield tau, weights @ profile, weights @ c, c[-1], c[0]


def soaked_body():
    rows = []
    source = f"SciPy {scipy.__version__} solve_ivp(Radau), Chebyshev collocation with {POINTS + 1} points"
    for shape in DIMENSIONS:
        for fourier in [0.005, 0.0181, 0.06, 0.2]:
            for tau, soaked, mean, core, surface in soak_and_drain(shape, fourier, [0.002, 0.02, 0.075, 0.125, 0.3]):
                assert abs(soaked - mean) < 1e-8, (shape, fourier, tau, soaked, mean)
                rows.append([shape, fourier, tau, f"{mean:.9f}", f"{core:.9f}", f"{surface:.9f}", source, "COMPUTED"])
    write("soaked_body.csv", ["shape", "fourier", "drained", "mean", "core", "surface", "source", "read_or_memory"], rows)


def short_cylinder(points, slenderness):
    """The operator on C[i, j] (i in s, j in u; 0 the surface) as a matrix, the weights of the mean, and both differentiations."""
    x, d = chebyshev(points)
    s, d = (x + 1) / 2, 2 * d
    radial = 4 * s[:, None] * (d @ d) + 4 * d
    axial = (4 * s[:, None] * (d @ d) + 2 * d) / slenderness**2
    one = numpy.eye(points + 1)
    return numpy.kron(radial, one) + numpy.kron(one, axial), mean_weights(s, 2), mean_weights(s, 1), d


def soak_and_drain_grain(slenderness, fouriers, points=18):
    n = points + 1
    operator, across, along, d = short_cylinder(points, slenderness)
    inside = numpy.array([i * n + j for i in range(1, n) for j in range(1, n)])
    # Drained, the surface values are those that make the slope there vanish.
    close = numpy.zeros((n, points))
    close[0] = -d[0, 1:] / d[0, 0]
    close[1:] = numpy.eye(points)
    spread = numpy.kron(close, close)
    step = 0.025
    stand = expm(operator[inside] @ spread * step)
    for fourier in fouriers:
        # Soaked, what is missing is 1 inside at first and 0 all over the surface.
        missing = expm(operator[numpy.ix_(inside, inside)] * fourier) @ numpy.ones(len(inside))
        soaked = numpy.zeros((n, n))
        soaked[1:, 1:] = missing.reshape(points, points)
        for k in range(1, 9):
            missing = stand @ missing
            if k not in (1, 2, 4, 8):
                continue
            m = (spread @ missing).reshape(n, n)
            outside = (2 * slenderness * (m[0] @ along) + across @ m[:, 0]) / (2 * slenderness + 1)
            yield fourier, k * step, 1 - across @ soaked @ along, 1 - across @ m @ along, 1 - m[-1, -1], 1 - outside


def soaked_grain():
    rows = []
    source = f"SciPy {scipy.__version__} expm of the finite cylinder's diffusion operator, 19 x 19 Chebyshev points"
    for slenderness, fouriers in [(0.5, [0.012]), (1.0, [0.0188, 0.18]), (1.2, [0.012, 0.021, 0.15]), (3.0, [0.03])]:
        for fourier, tau, soaked, mean, core, surface in soak_and_drain_grain(slenderness, fouriers):
            assert abs(mean - soaked) < 2e-6, (slenderness, fourier, tau, soaked, mean)
            rows.append([slenderness, fourier, tau, f"{mean:.7f}", f"{core:.7f}", f"{surface:.7f}", source, "COMPUTED"])
    write("soaked_grain.csv", ["length_over_diameter", "fourier", "drained", "mean", "core", "surface", "source", "read_or_memory"],
          rows)


def series(shape, fourier):
    n = numpy.arange(1, 4000, dtype=numpy.longdouble)
    pi = numpy.longdouble("3.14159265358979323846264338327950288")
    if shape == "sphere":
        return 1 - 6 / pi**2 * numpy.sum(numpy.exp(-(n * pi) ** 2 * fourier) / n**2)
    if shape == "sheet":
        odd = 2 * n - 1
        return 1 - 8 / pi**2 * numpy.sum(numpy.exp(-(odd * pi) ** 2 * fourier / 4) / odd**2)
    zeros = jn_zeros(0, 3999).astype(numpy.longdouble)
    return 1 - 4 * numpy.sum(numpy.exp(-(zeros**2) * fourier) / zeros**2)


def short_time_sphere(fourier):
    root = numpy.sqrt(fourier)
    ierfc = lambda z: numpy.exp(-z * z) / numpy.sqrt(numpy.pi) - z * erfc(z)
    return 6 * root * (1 / numpy.sqrt(numpy.pi) + 2 * sum(ierfc(n / root) for n in range(1, 30))) - 3 * fourier


def crank_series():
    equation = {"sphere": "6.20", "sheet": "4.18", "cylinder": "5.23"}
    rows = []
    for shape in ["sphere", "cylinder", "sheet"]:
        for fourier in [1e-5, 1e-4, 0.001, 0.0025, 0.005, 0.01, 0.02, 0.03, 0.06, 0.1, 0.15, 0.2, 0.25, 0.4, 0.7, 1.2]:
            value = series(shape, fourier)
            if shape == "sphere":
                assert abs(float(value) - short_time_sphere(fourier)) < 1e-13, fourier
            rows.append([shape, fourier, f"{value:.13f}", f"Crank 1975 eq. {equation[shape]} (from memory) summed with NumPy "
                         f"{numpy.__version__} longdouble", "MEMORY+COMPUTED"])
    write("crank_series.csv", ["shape", "fourier", "taken_up", "source", "read_or_memory"], rows)


if __name__ == "__main__":
    soaked_body()
    soaked_grain()
    crank_series()
