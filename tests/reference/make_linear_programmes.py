#!/usr/bin/env python3
"""Writes linear_programmes.csv: published linear programmes as plain numbers, read by glpsol from the examples that come
with it, so that the tests need neither its formats nor its files.

A line with a row alone gives that row's bounds; with a column alone that column's cost and bounds; with both the number
that stands there. An empty bound is none.

Sources of the numbers: Stigler, J. Farm Econ. 27 (1945) 303; Dantzig, Linear Programming and Extensions (1963), ch. 27-1;
IBM Data Processing Application, Linear Programming: Ice Cream Blending, and Aluminium Alloy Blending; plan.lp of GLPK.

Run in this folder with glpk-utils and its examples (on Debian 12: /usr/share/doc/glpk-utils/examples).
"""
import csv
import pathlib
import subprocess
import tempfile

EXAMPLES = pathlib.Path("/usr/share/doc/glpk-utils/examples")
PROGRAMMES = [("stigler", "--math", "stigler.mod"), ("diet", "--math", "diet.mod"), ("icecream", "--mps", "icecream.mps"),
              ("alloy", "--mps", "alloy.mps"), ("plan", "--lp", "plan.lp")]
BOUNDS_OF = {"G": lambda b: (b, ""), "L": lambda b: ("", b), "E": lambda b: (b, b)}


def as_free_mps(form, file):
    with tempfile.TemporaryDirectory() as folder:
        out = pathlib.Path(folder) / "programme"
        subprocess.run(["glpsol", "--check", form, str(EXAMPLES / file), "--wfreemps", str(out)], check=True,
                       stdout=subprocess.DEVNULL)
        return out.read_text()


def read(text):
    kinds, costs, entries, right, lowest, highest, section = {}, {}, [], {}, {}, {}, ""
    for line in text.splitlines():
        if not line.startswith(" "):
            section = line.split()[0]
            continue
        words = line.split()
        if section == "ROWS":
            kinds[words[1]] = words[0]
        elif section == "COLUMNS":
            costs.setdefault(words[0], "0")
            for row, value in zip(words[1::2], words[2::2]):
                if kinds[row] == "N":
                    costs[words[0]] = value
                else:
                    entries.append((words[0], row, value))
        elif section == "RHS":
            right.update(zip(words[1::2], words[2::2]))
        elif section == "BOUNDS":
            {"LO": lowest, "UP": highest}[words[0]][words[2]] = words[3]
        elif section == "RANGES":
            raise SystemExit("ranges are not read here")
    return kinds, costs, entries, right, lowest, highest


def main():
    with open("linear_programmes.csv", "w", newline="") as file:
        writer = csv.writer(file, lineterminator="\n")
        writer.writerow(["programme", "column", "row", "value", "lowest", "highest"])
        for name, form, source in PROGRAMMES:
            kinds, costs, entries, right, lowest, highest = read(as_free_mps(form, source))
            for row, kind in kinds.items():
                if kind != "N":
                    writer.writerow([name, "", row, "", *BOUNDS_OF[kind](right.get(row, "0"))])
            for column, cost in costs.items():
                writer.writerow([name, column, "", cost, lowest.get(column, "0"), highest.get(column, "")])
            for column, row, value in entries:
                writer.writerow([name, column, row, value, "", ""])


main()
