"""What the parts of `run` are given: the program, the programs built beside it, a folder to work in, and how thoroughly to measure."""

import json
import os
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent.parent


class Bench:
    def __init__(self, program, quick=False):
        self.program = str(Path(program).resolve())
        self.quick = quick
        self.folder = Path(tempfile.mkdtemp(prefix="baitwright-benchmark-"))
        os.environ.update(XDG_DATA_HOME=str(self.folder / "data"), BAITWRIGHT_TODAY="2026-11-25", LANG="C.UTF-8", NO_COLOR="1")

    def remove(self):
        shutil.rmtree(self.folder, ignore_errors=True)

    def runs(self, whole, quick):
        return quick if self.quick else whole

    def built(self, name):
        """A program of tests/benchmark/, as the preset `benchmark` builds it."""
        return str(Path(self.program).parent / "tests" / "benchmark" / name)

    def fresh_program(self):
        """A copy written in one go: how the file came to lie in memory is worth 8 % of a short command."""
        return shutil.copy(self.program, self.folder / "program")

    def store(self, name):
        """A new store with the shipped library."""
        path = str(self.folder / name)
        self.must(["recipe", "list", "--store", path])
        return path

    def must(self, line):
        return subprocess.run([self.program, *line], check=True, capture_output=True, text=True).stdout

    def inside(self, name, pattern="", repetitions=9):
        """Medians of what a program built on Google's benchmark library says, in seconds of the processor; and the counters."""
        asked = [self.built(name), "--benchmark_format=json", f"--benchmark_repetitions={repetitions}"]
        if pattern:
            asked.append(f"--benchmark_filter={pattern}")
        if self.quick:
            asked.append("--benchmark_min_time=0.02")
        told = json.loads(subprocess.run(asked, check=True, capture_output=True, text=True).stdout)["benchmarks"]
        scale = {"ns": 1e-9, "us": 1e-6, "ms": 1e-3, "s": 1.0}
        times = {run["run_name"]: run["cpu_time"] * scale[run["time_unit"]] for run in told if run.get("aggregate_name") == "median"}
        return times, {run["run_name"]: run for run in told if run.get("run_type") == "iteration"}

    def peak_megabytes(self, line, may_end_with=(0,)):
        """The most memory that a run of the program had, in MB; measured from a program that itself has next to none."""
        told = subprocess.run([self.built("peak_memory"), self.program, *line], stdout=subprocess.DEVNULL, stderr=subprocess.PIPE, text=True)
        if told.returncode not in may_end_with:
            raise SystemExit(f"ended with {told.returncode}: {' '.join(line)}\n{told.stderr}")
        return int(told.stderr.splitlines()[-1]) / 1024


def by_itself(figures):
    """One part, run alone: PROGRAM [RUNS]. Prints its figures; status 1 where a bar is missed."""
    bench = Bench(sys.argv[1])
    try:
        found = list(figures(bench, *map(int, sys.argv[2:3])))
    finally:
        bench.remove()
    print(*(figure.line() for figure in found), sep="\n")
    sys.exit(not all(figure.met for figure in found))
