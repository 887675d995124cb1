#!/usr/bin/env python3
"""Writes particle_cloud.csv: clouds of grains sinking through still or drifting water, integrated with SciPy's `solve_ivp` and
its events, not with this project's own code.

The differential equations are those of docs/method.md, as they stand and without their closed form:
    dP/dt = g sum(weights inside)    dr/dt = alpha w    dx/dt = u(z)    w = P/(2 pi r^3)    z = z0 + (r - r0)/alpha
A class leaves, the fastest first, where Bush, Thurber & Blanchette 2003 saw it fall out, r = alpha 11 a (sqrt(B)/(ws a))^0.83;
or before, where the cloud, past being faster than it, is behind a grain that sinks alone from its start. It lands no later than that.
From there it falls alone, from as high as its time to the bed takes it, with the tow of each height that it passes.

Run in this folder with SciPy 1.10 or later (on Debian 12: /usr/bin/python3 make_cloud_tables.py).
"""
import csv

import numpy
import scipy
from scipy.integrate import quad, solve_ivp

ALPHA, STIRRING, GRAVITY = 0.25, 7.5e-5, 9.80665
CASES = [
    # depth, tow (profile, top, bottom), z0, r0, w0, t0, weights (ml of water), settling speeds (m/s), sizes (mm)
    ("a soft cup", 2.5, "straight", 0.0, 0.0, 0.55, 0.04, 0.55, 1.5, [8, 7, 6, 5, 4, 3], [0.09, 0.06, 0.04, 0.025, 0.014, 0.006], [4, 2, 1, 0.7, 0.4, 0.2]),
    ("the same in a tow", 2.5, "straight", 0.05, -0.015, 0.55, 0.04, 0.55, 1.5, [8, 7, 6, 5, 4, 3], [0.09, 0.06, 0.04, 0.025, 0.014, 0.006], [4, 2, 1, 0.7, 0.4, 0.2]),
    ("the same in a lake", 2.5, "lake", 0.05, 0.0, 0.55, 0.04, 0.55, 1.5, [8, 7, 6, 5, 4, 3], [0.09, 0.06, 0.04, 0.025, 0.014, 0.006], [4, 2, 1, 0.7, 0.4, 0.2]),
    ("the same in a river", 2.5, "river", 0.2, 0.0, 0.55, 0.04, 0.55, 1.5, [8, 7, 6, 5, 4, 3], [0.09, 0.06, 0.04, 0.025, 0.014, 0.006], [4, 2, 1, 0.7, 0.4, 0.2]),
    ("burst at the surface", 3.0, "straight", 0.02, 0.02, 0.0, 0.03, 0.0, 0.0, [4, 4, 4, 4], [0.05, 0.03, 0.02, 0.01], [1.5, 0.8, 0.5, 0.3]),
    ("shallow", 0.8, "straight", 0.0, 0.0, 0.5, 0.04, 0.5, 1.4, [8, 7, 6], [0.08, 0.04, 0.01], [3, 1, 0.3]),
    ("fast grains leave at once", 4.0, "straight", 0.1, 0.03, 0.3, 0.05, 0.2, 0.9, [2, 5, 5], [0.5, 0.15, 0.02], [20, 6, 0.5]),
    ("deep", 12.0, "straight", 0.03, -0.01, 1.0, 0.03, 0.6, 2.2, [12, 9, 3, 1], [0.12, 0.05, 0.02, 0.002], [5, 1.5, 0.5, 0.1]),
    ("something that rises", 3.0, "straight", 0.0, 0.0, 0.4, 0.04, 0.4, 1.0, [10, 6, -2], [0.06, 0.03, -0.05], [2, 0.8, 1]),
    ("a loose handful of maggots", 2.0, "straight", 0.0, 0.0, 0.0, 0.15, 0.0, 0.0, [2.5], [0.061], [4.8]),
]


def tow_of(profile, top, bottom, depth):
    """The speed at a depth, for a share s of the whole."""
    log = numpy.log(depth / 0.005)
    return {
        "straight": lambda z: top + (bottom - top) * z / depth,
        "lake": lambda z: top * (1 - z / depth) * (1 - 3 * z / depth),
        "river": lambda z: top * max(0.0, 1 + numpy.log(max(1 - z / depth, 1e-300)) / log),
    }[profile]


def spread(radius, time):
    """dR^2/dt = 8 K (2 R)^(4/3), integrated as it stands."""
    if time <= 0:
        return radius
    out = solve_ivp(lambda _, s: [8 * STIRRING * (2 * s[0] ** 0.5) ** (4 / 3)], (0, time), [radius**2], method="DOP853", rtol=1e-12, atol=1e-18)
    return out.y[0][-1] ** 0.5


def cloud(depth, profile, top, bottom, z0, r0, w0, t0, weights, speeds, sizes, tolerance=1e-12, spreading=spread):
    """The fate of each class that sinks: leaves, depth and radius then, lands, spread, drift."""
    weights = [1e-6 * w for w in weights]
    tow = tow_of(profile, top, bottom, depth)
    state, t, inside = numpy.array([2 * numpy.pi * r0**3 * w0, r0, 0.0]), t0, set(range(len(weights)))
    order = [i for i in sorted(inside, key=lambda i: -speeds[i]) if speeds[i] > 0]
    w_of = lambda s: s[0] / (2 * numpy.pi * s[1] ** 3)
    buoyancy = lambda: GRAVITY * sum(weights[i] for i in inside)
    bed = r0 + ALPHA * (depth - z0)

    def flow(events):
        """Onwards from here until an event or the bed; the time, the state and which event it was (None: the bed)."""
        at_bed = lambda _, s: s[1] - bed
        at_bed.terminal = True
        rhs = lambda _, s: [buoyancy(), ALPHA * w_of(s), tow(z0 + (s[1] - r0) / ALPHA)]
        out = solve_ivp(rhs, (t, t + 1e5), state, method="DOP853", rtol=tolerance, atol=tolerance * 1e-4, events=[at_bed, *events], first_step=1e-6)
        for k in range(len(events)):
            if len(out.t_events[k + 1]):
                return out.t_events[k + 1][0], out.y_events[k + 1][0], k
        return out.t_events[0][0], out.y_events[0][0], None

    fates, at_bed = {}, False
    for i in order:
        ws, a = speeds[i], 0.0005 * sizes[i]
        falls_out = ALPHA * 11 * a * (max(0.0, buoyancy()) ** 0.5 / (ws * a)) ** 0.83
        behind = lambda time, s: time - t0 - (s[1] - r0) / (ALPHA * ws)
        out_of_it = lambda _, s: s[1] - falls_out
        if not at_bed and state[1] < bed and falls_out > state[1]:
            # Is the cloud faster than it, now or later? Followed to where it would fall out of it.
            out_of_it.terminal, out_of_it.direction = True, 1
            slower = lambda _, s: w_of(s) - ws
            slower.terminal, slower.direction = True, -1
            time, there, which = flow(events=[out_of_it, slower])
            if which == 1:  # it has been faster, and from here on is not
                t, state = time, there
            elif w_of(there) > ws:
                t, state = time, there
            if which == 1 or w_of(there) <= ws:
                if behind(t, state) < 0:
                    catches_up = lambda time, s: behind(time, s)
                    catches_up.terminal, catches_up.direction = True, 1
                    t, state, which = flow(events=[out_of_it, catches_up])
            at_bed = state[1] >= bed * (1 - 1e-13)
        elif state[1] >= bed * (1 - 1e-13):
            at_bed = True
        r, x = state[1], state[2]
        z = depth if at_bed else z0 + (r - r0) / ALPHA
        if not at_bed:
            inside.discard(i)
        alone = t0 + (depth - z0) / ws
        left = max(0.0, min(t + (depth - z + 0.5 * r) / ws, alone) - t)
        high = min(depth, ws * left)  # above the bed, from where it goes on alone
        carried = 0.0 if high <= 0 or top == bottom == 0 else quad(tow, depth - high, depth, limit=200, epsabs=1e-13, epsrel=1e-12, points=[depth - 0.005] if profile == "river" and high > 0.005 else None)[0] / ws
        fates[i] = (t, z, r, t + left, spreading(r, left), x + carried)
    return fates


def main():
    source = f"SciPy {scipy.__version__} solve_ivp(DOP853) with events"
    rows = []
    for name, *numbers, weights, speeds, sizes in CASES:
        for i, fate in sorted(cloud(*numbers, weights, speeds, sizes).items()):
            rows.append([name, *numbers, " ".join(map(str, weights)), " ".join(map(str, speeds)), " ".join(map(str, sizes)), i, *(f"{v:.9f}" for v in fate), source, "COMPUTED"])
    with open("particle_cloud.csv", "w", newline="") as file:
        writer = csv.writer(file, lineterminator="\n")
        writer.writerow("case depth_m tow_profile tow_top_m_s tow_bottom_m_s start_depth_m start_radius_m start_speed_m_s start_s weights_ml settling_m_s sizes_mm grain leaves_s leaves_depth_m leaves_radius_m lands_s spread_m drift_m source read_or_memory".split())
        writer.writerows(rows)


if __name__ == "__main__":
    main()
