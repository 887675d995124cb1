"""Tests that are part of the attack and stand in the rooms' own test programs, beside the program that is attacked."""

import csv
import os
import re
import subprocess
from pathlib import Path


def tests_of(bench, room):
    path = Path(bench.program).parent / "tests" / room / f"{room}_tests"
    return path if path.exists() else None


def run_tests(bench, room, names, more=None):
    """What went wrong, and how many checks there were."""
    program = tests_of(bench, room)
    if not program:
        return [f"there is no {room}_tests beside the program: build the tests"], 0
    ran = subprocess.run([str(program), names], env={**os.environ, **(more or {})}, capture_output=True, text=True)
    checks = re.search(r"(\d+) assertions? in", ran.stdout) or re.search(r"assertions: *(\d+)", ran.stdout)
    wrong = [ran.stdout[-2000:]] if ran.returncode or not checks else []
    return wrong, int(checks[1]) if checks else 0


def bad_inputs(bench, seed, _):
    wrong, checks = run_tests(bench, "cli", "whatever is typed wrongly*")
    table = Path(__file__).resolve().parent.parent / "cli/bad_inputs.csv"
    with open(table, newline="") as rows:
        count = sum(1 for _ in csv.DictReader(rows))
    if count < 500:
        wrong.append(f"the table has {count} rows")
    return wrong, f"{count} bad inputs, each as text and as JSON: {checks} checks"


def merges(bench, seed, count):
    if not bench.has("merge"):
        return ["the program cannot bring stores together"], "not tried"
    wrong, checks = run_tests(bench, "library", "three stores that were changed apart*", {"BAITWRIGHT_MERGE_RUNS": str(count), "BAITWRIGHT_MERGE_SEED": str(seed)})
    return wrong, f"{count} sequences of changes between three stores: {checks} checks"
