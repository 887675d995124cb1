"""The whole command `blend` out of a store, 1,000 candidates within 50 limits, against CBC and GLPK reading and solving
the same programme, written here and not by us."""

import json
import random
import shutil
import subprocess

from figures import Figure, told_seconds
from timing import in_turn

CANDIDATES, LIMITS = 1000, 50


def invented():
    """Of each candidate protein, fibre and salt in %, and pence a kilo; and of each limit on shares who is in it."""
    random.seed(1)
    made = [(random.randint(0, 70), random.randint(0, 25), random.randint(0, 8), random.randint(50, 400)) for _ in range(CANDIDATES)]
    groups = [sorted(random.sample(range(CANDIDATES), CANDIDATES // 10)) for _ in range(LIMITS - 3)]
    return made, groups


def library_text(made):
    return "".join(f'[[ingredient]]\nname = "made {i}"\nkind = "base"\nloose_density = "420 g/l"\nabsorption = "0.65 g/g"\n'
                   f'composition = {{ protein = "{protein} %", fibre = "{fibre} %", salt = "{salt} %" }}\n'
                   for i, (protein, fibre, salt, _) in enumerate(made))


def spec_text(made, groups):
    candidates = "".join(f'[[candidate]]\nof = "made {i}"\nprice = "£{pence / 100:.2f} per kg"\n' for i, (*_, pence) in enumerate(made))
    limits = ('[[limit]]\non = "protein"\nmin = "30 %"\n[[limit]]\non = "fibre"\nmax = "8 %"\n[[limit]]\non = "salt"\nmin = "1 %"\nmax = "3 %"\n'
              + "".join(f'[[limit]]\nof = {json.dumps([f"made {i}" for i in group])}\nmax = "15 %"\n' for group in groups))
    return f'name = "of many"\ngoal = "cost per kg"\n{candidates}{limits}'


def programme_text(made, groups):
    def terms(pairs):
        return "\n ".join(f"+ {factor} x{i}" for i, factor in pairs if factor)
    def column(which):
        return terms((i, one[which]) for i, one in enumerate(made))
    rows = (f" whole: {terms((i, 1) for i in range(CANDIDATES))} = 1\n protein: {column(0)} >= 30\n fibre: {column(1)} <= 8\n"
            f" least_salt: {column(2)} >= 1\n most_salt: {column(2)} <= 3\n"
            + "".join(f" group{g}: {terms((i, 1) for i in group)} <= 0.15\n" for g, group in enumerate(groups)))
    return f"Minimize\n cost: {column(3)}\nSubject To\n{rows}End\n"


def figures(bench):
    made, groups = invented()
    paths = {name: bench.folder / name for name in ("many.toml", "spec.toml", "programme.lp", "solved.txt")}
    paths["many.toml"].write_text(library_text(made))
    paths["spec.toml"].write_text(spec_text(made, groups))
    paths["programme.lp"].write_text(programme_text(made, groups))
    store = bench.store("blend.db")
    bench.must(["ingredient", "import", str(paths["many.toml"]), "--store", store])
    line = ["blend", str(paths["spec.toml"]), "--store", store]
    commands = {"blend": [bench.program, *line], "nothing": [shutil.which("true")]}
    if cbc := shutil.which("cbc"):
        commands["cbc"] = [cbc, str(paths["programme.lp"]), "solve", "solution", str(paths["solved.txt"])]
    if glpsol := shutil.which("glpsol"):
        commands["glpsol"] = [glpsol, "--lp", str(paths["programme.lp"])]
    times = in_turn(commands, bench.runs(21, 5))
    ours = times["blend"].median()
    peers = [f"{name}: {told_seconds(times[name].median())}" for name in ("cbc", "glpsol", "nothing") if name in times]
    peer = "cbc" if cbc else "glpsol" if glpsol else "nothing"
    yield Figure(f"whole `blend` of {CANDIDATES} candidates within {LIMITS} limits", told_seconds(ours), "under 60 ms", ours < 0.060,
                 f"{ours / times[peer].median():.2f}", "; ".join(peers).replace("nothing:", "an empty process:"))
    if cbc:
        subprocess.run(commands["cbc"], check=True, stdout=subprocess.DEVNULL)
        theirs = float(paths["solved.txt"].read_text().split("objective value")[1].split()[0])
        found = json.loads(bench.must([*line, "--json"]))["cost_per_kg_minor"]
        yield Figure("what that blend costs a kilo", f"{found:.6g} p", "as CBC finds, to 1e-6", abs(found / theirs - 1) < 1e-6,
                     "", f"CBC: {theirs:.6g} p")
