#!/usr/bin/env python3
"""Whole-process time of `baitwright mix` against `sqlite3 FILE 'select count(*) from ingredient'` on the same store, and
against an empty process.

Usage: mix_against_sqlite.py BAITWRIGHT [RUNS]
Runs all in turn (200 times each by default) and prints the medians and their ratios; the bar is 1.4 times sqlite3.
Exit status 1 where the ratio is above it.
"""
import shutil

from bench import by_itself
from figures import Figure, told_seconds
from timing import in_turn

BAR = 1.4


def figures(bench, runs=None):
    store, program = bench.store("mix.db"), bench.fresh_program()
    times = in_turn({
        "mix": [program, "mix", "silt bed", "--wet-volume", "3l", "--store", store],
        "sqlite3": [shutil.which("sqlite3"), store, "select count(*) from ingredient"],
        "version": [program, "--version"],
        "nothing": [shutil.which("true")],
    }, runs or bench.runs(200, 40))
    mix, sqlite3, version, nothing = (times[name].median() for name in ("mix", "sqlite3", "version", "nothing"))
    ratio = mix / sqlite3
    busy = {name: f"{told_seconds(times[name].median())} ({told_seconds(times[name].median_busy())} of processor)" for name in times}
    yield Figure("whole `mix`", busy["mix"], f"at most {BAR} times `sqlite3` (1.0 wanted)", ratio <= BAR, f"{ratio:.2f}",
                 f"`sqlite3` counting the rows of the same store: {busy['sqlite3']}")
    yield Figure("whole `mix` over the floor", told_seconds(mix - nothing), "", True, f"{mix / nothing:.1f}",
                 f"an empty process: {told_seconds(nothing)}")
    yield Figure("`--version`", told_seconds(version), "", True, f"{version / nothing:.1f}", "the same empty process")


if __name__ == "__main__":
    by_itself(figures)
