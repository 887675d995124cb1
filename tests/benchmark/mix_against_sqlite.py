#!/usr/bin/env python3
"""Whole-process time of `baitwright mix` against `sqlite3 FILE 'select count(*) from ingredient'` on the same store.

Usage: mix_against_sqlite.py BAITWRIGHT [RUNS]
Runs the two alternately (200 times each by default) and prints the medians and their ratio; the bar is 1.4.
Exit status 1 where the ratio is above it.
"""
import os, statistics, subprocess, sys, tempfile, time

BAR = 1.4


def seconds(command, environment):
    start = time.perf_counter()
    pid = os.posix_spawn(command[0], command, environment, file_actions=[
        (os.POSIX_SPAWN_OPEN, 1, "/dev/null", os.O_WRONLY, 0)])
    _, status = os.waitpid(pid, 0)
    elapsed = time.perf_counter() - start
    if status != 0:
        sys.exit(f"failed: {command}")
    return elapsed


def main():
    program = os.path.abspath(sys.argv[1])
    runs = int(sys.argv[2]) if len(sys.argv) > 2 else 200
    sqlite = subprocess.run(["which", "sqlite3"], capture_output=True, text=True, check=True).stdout.strip()
    with tempfile.TemporaryDirectory() as folder:
        store = os.path.join(folder, "store.db")
        mix = [program, "mix", "silt bed", "--wet-volume", "3l", "--store", store]
        count = [sqlite, store, "select count(*) from ingredient"]
        subprocess.run(mix, stdout=subprocess.DEVNULL, check=True)
        times = {"mix": [], "sqlite3": []}
        for _ in range(runs):
            times["mix"].append(seconds(mix, os.environ))
            times["sqlite3"].append(seconds(count, os.environ))
    medians = {name: statistics.median(values) * 1e3 for name, values in times.items()}
    ratio = medians["mix"] / medians["sqlite3"]
    print(f"mix {medians['mix']:.2f} ms, sqlite3 {medians['sqlite3']:.2f} ms, ratio {ratio:.2f} (bar {BAR}), {runs} runs each")
    sys.exit(ratio > BAR)


main()
