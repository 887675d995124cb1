#!/usr/bin/env python3
"""A soak to 40 % and the standing until ready and until even, against SciPy's solve_ivp on the same pellet (a cylinder 1.2
times as long as thick) at an error of 1e-6, in one run, warm, one thread.

SciPy gets the quickest form that we know: what is missing in the pellet as the product of a long cylinder and a sheet, side by side in one
system; Chebyshev points in the square of the distance from the middle, so few and a tolerance so loose that the error just stays below
1e-6; Radau with its Jacobian, and events for the three times.

Usage: soak_against_scipy.py build/benchmark/baitwright   (with what is built beside it; needs NumPy and SciPy)
Bars: under 30 us, and at least 2,000 times as fast. Exit status 1 where one is missed.
"""
import os

os.environ["OMP_NUM_THREADS"] = os.environ["OPENBLAS_NUM_THREADS"] = "1"
import numpy
from scipy.integrate import solve_ivp

from bench import by_itself
from figures import Figure, told_seconds
from timing import median_of

POINTS, TOLERANCE, UPTAKE, LONGER = 10, 1e-5, 0.4, 1.2
EXACT = (0.0209939966, 0.1061042266, 0.1916323961)  # Newman's product summed over 400 zeros of SciPy's jn_zeros, by brentq


def body(dimensions, reach):
    k = numpy.arange(POINTS + 1)
    x = numpy.cos(numpy.pi * k / POINTS)
    c = numpy.where((k == 0) | (k == POINTS), 2.0, 1.0) * (-1.0) ** k
    d = numpy.outer(c, 1 / c) / (x[:, None] - x[None, :] + numpy.eye(POINTS + 1))
    d -= numpy.diag(d.sum(axis=1))
    s, d = (x + 1) / 2, 2 * d
    inside = (4 * s[:, None] * (d @ d) + 2 * dimensions * d) / reach**2
    closed = inside[1:, 1:] - numpy.outer(inside[1:, 0], d[0, 1:]) / d[0, 0]
    nodes, w = numpy.polynomial.legendre.leggauss(POINTS + 4)
    r, w = (nodes + 1) / 2, w / 2
    basis = numpy.polynomial.chebyshev.chebvander(2 * r**2 - 1, POINTS)
    weights = (dimensions * w * r ** (dimensions - 1)) @ basis @ numpy.linalg.inv(
        numpy.polynomial.chebyshev.chebvander(2 * s - 1, POINTS))
    return inside[1:, 1:], closed, weights[1:], -d[0, 1:] / d[0, 0]


def setup():
    """For the round side and the ends: held and closed operators in one block each, weights of the mean, the surface's."""
    side, ends = body(2, 1.0), body(1, LONGER)
    blocks = []
    for i in (0, 1):
        block = numpy.zeros((2 * POINTS, 2 * POINTS))
        block[:POINTS, :POINTS], block[POINTS:, POINTS:] = side[i], ends[i]
        blocks.append(block)
    return blocks[0], blocks[1], side[2:], ends[2:]


def soak_and_stand(held_block, closed_block, side, ends):
    """All as what is missing: 1 inside at first, 0 at the surface under water."""
    mean = lambda m: (side[0] @ m[:POINTS]) * (ends[0] @ m[POINTS:])
    taken = lambda t, m: (1 - mean(m)) - UPTAKE
    taken.terminal = True
    held = solve_ivp(lambda t, m: held_block @ m, (0, 0.1), numpy.ones(2 * POINTS), method="Radau", rtol=TOLERANCE,
                     atol=TOLERANCE / 10, jac=held_block, events=taken)
    start = held.y_events[0][0]
    side_mean, ends_mean, share = side[0] @ start[:POINTS], ends[0] @ start[POINTS:], 1 / (2 * LONGER + 1)

    def uneven(m):
        core = 1 - m[POINTS - 1] * m[-1]
        # Drained, the mean takes in the surface, which is no longer 0; it is what it was.
        outside = 1 - (1 - share) * (side[1] @ m[:POINTS]) * ends_mean - share * side_mean * (ends[1] @ m[POINTS:])
        return max(abs(outside - UPTAKE), abs(core - UPTAKE)) / UPTAKE

    ready, even = (lambda t, m: uneven(m) - 0.5), (lambda t, m: uneven(m) - 0.2)
    even.terminal = True
    stood = solve_ivp(lambda t, m: closed_block @ m, (0, 1), start, method="Radau", rtol=TOLERANCE, atol=TOLERANCE / 10,
                      jac=closed_block, events=[ready, even])
    return held.t_events[0][0], stood.t_events[0][0], stood.t_events[1][0]


def figures(bench):
    matrices = setup()
    found = soak_and_stand(*matrices)
    error = max(abs(a - b) for a, b in zip(found, EXACT))
    assert error < 1e-6, error
    scipy = median_of(lambda: soak_and_stand(*matrices), bench.runs(20, 7))
    times, counters = bench.inside("mix_benchmark", "soak_and_stand")
    ours, run = times["soak_and_stand"], counters["soak_and_stand"]
    ours_error = max(abs(run[key] - value) for key, value in zip(("soaked", "ready", "even"), EXACT))
    yield Figure("a pellet soaked, and stood until even", f"{told_seconds(ours)} (error {ours_error:.0e})",
                 "under 30 us, 2,000 times as fast as SciPy, error under 1e-6", ours < 30e-6 and scipy / ours >= 2000 and ours_error < 1e-6,
                 f"1/{scipy / ours:.0f}", f"SciPy's `solve_ivp`: {told_seconds(scipy)} (error {error:.0e})")


if __name__ == "__main__":
    by_itself(figures)
