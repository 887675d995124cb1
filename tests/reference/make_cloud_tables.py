#!/usr/bin/env python3
"""Writes particle_cloud.csv: clouds of grains sinking through still or drifting water, integrated with SciPy's `solve_ivp` and
its events, not with this project's own code.

The differential equations are those of docs/method.md, as they stand and without their closed form:
    dP/dt = g sum(weights inside)    dr/dt = alpha w    dx/dt = u(z)    w = P/(2 pi r^3)    z = z0 + (r - r0)/alpha
A class leaves once the cloud is slowing and slower than it settles, the fastest first.

Run in this folder with SciPy 1.10 or later (on Debian 12: /usr/bin/python3 make_cloud_tables.py).
"""
import csv

import numpy
import scipy
from scipy.integrate import solve_ivp

ALPHA, SPREADING, GRAVITY = 0.25, 3e-4, 9.80665
CASES = [
    # depth, tow top, tow bottom, z0, r0, w0, t0, weights (ml of water), settling speeds (m/s)
    ("a soft cup", 2.5, 0.0, 0.0, 0.55, 0.04, 0.55, 1.5, [8, 7, 6, 5, 4, 3], [0.09, 0.06, 0.04, 0.025, 0.014, 0.006]),
    ("the same in a tow", 2.5, 0.05, -0.015, 0.55, 0.04, 0.55, 1.5, [8, 7, 6, 5, 4, 3], [0.09, 0.06, 0.04, 0.025, 0.014, 0.006]),
    ("burst at the surface", 3.0, 0.02, 0.02, 0.0, 0.03, 0.0, 0.0, [4, 4, 4, 4], [0.05, 0.03, 0.02, 0.01]),
    ("shallow", 0.8, 0.0, 0.0, 0.5, 0.04, 0.5, 1.4, [8, 7, 6], [0.08, 0.04, 0.01]),
    ("fast grains leave at once", 4.0, 0.1, 0.03, 0.3, 0.05, 0.2, 0.9, [2, 5, 5], [0.5, 0.15, 0.02]),
    ("deep", 12.0, 0.03, -0.01, 1.0, 0.03, 0.6, 2.2, [12, 9, 3, 1], [0.12, 0.05, 0.02, 0.002]),
    ("something that rises", 3.0, 0.0, 0.0, 0.4, 0.04, 0.4, 1.0, [10, 6, -2], [0.06, 0.03, -0.05]),
]


def cloud(depth, top, bottom, z0, r0, w0, t0, weights, speeds):
    weights = [1e-6 * w for w in weights]
    tow = lambda z: top + (bottom - top) * z / depth
    state, t, inside = numpy.array([2 * numpy.pi * r0**3 * w0, r0, 0.0]), t0, set(range(len(weights)))
    order = [i for i in sorted(inside, key=lambda i: -speeds[i]) if speeds[i] > 0]
    w_of = lambda s: s[0] / (2 * numpy.pi * s[1] ** 3)
    buoyancy = lambda: GRAVITY * sum(weights[i] for i in inside)
    # dw/dt has the sign of (dP/dt) r - 3 P dr/dt.
    slowing = lambda s: buoyancy() * s[1] - 3 * s[0] * ALPHA * w_of(s)
    bed = r0 + ALPHA * (depth - z0)

    def run(event):
        nonlocal state, t
        if state[1] >= bed * (1 - 1e-14):
            return "bed"
        at_bed = lambda _, s: s[1] - bed
        at_bed.terminal = True
        event.terminal, event.direction = True, -1
        rhs = lambda _, s: [buoyancy(), ALPHA * w_of(s), tow(z0 + (s[1] - r0) / ALPHA)]
        out = solve_ivp(rhs, (t, t + 1e5), state, method="DOP853", rtol=1e-12, atol=1e-16, events=[at_bed, event], first_step=1e-6)
        which = 0 if len(out.t_events[0]) else 1
        t, state = out.t_events[which][0], out.y_events[which][0]
        return "bed" if which == 0 else "event"

    fates, at_bed = {}, False
    for i in order:
        if not at_bed and slowing(state) >= 0:
            at_bed = run(lambda _, s: slowing(s)) == "bed"
        if not at_bed and w_of(state) > speeds[i]:
            at_bed = run(lambda _, s, ws=speeds[i]: w_of(s) - ws) == "bed"
        r, x = state[1], state[2]
        z = depth if at_bed else z0 + (r - r0) / ALPHA
        if not at_bed:
            inside.discard(i)
        fall, last = (depth - z) / speeds[i], 0.5 * r / speeds[i]
        mean_tow = 0.5 * (tow(z) + bottom)
        fates[i] = (t, z, r, t + fall + last, (r * r + 2 * SPREADING * (fall + last)) ** 0.5, x + fall * mean_tow + last * bottom)
    return fates


def main():
    source = f"SciPy {scipy.__version__} solve_ivp(DOP853) with events"
    rows = []
    for name, *numbers, weights, speeds in CASES:
        for i, fate in sorted(cloud(*numbers, weights, speeds).items()):
            rows.append([name, *numbers, " ".join(map(str, weights)), " ".join(map(str, speeds)), i, *(f"{v:.9f}" for v in fate), source, "COMPUTED"])
    with open("particle_cloud.csv", "w", newline="") as file:
        writer = csv.writer(file, lineterminator="\n")
        writer.writerow("case depth_m tow_top_m_s tow_bottom_m_s start_depth_m start_radius_m start_speed_m_s start_s weights_ml settling_m_s grain leaves_s leaves_depth_m leaves_radius_m lands_s spread_m drift_m source read_or_memory".split())
        writer.writerows(rows)


main()
