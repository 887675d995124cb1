"""Parts of the program inside one process, warm, one thread: what stands in the C++ programs beside this file."""

from figures import Figure, told_seconds, under


def figures(bench):
    times, _ = bench.inside("mix_benchmark", "scaling|whole_doubt")
    yield under("one mix scaled", times["scaling"], 10e-6)
    yield Figure("all the ranges of a mix", told_seconds(times["whole_doubt"]))

    times, _ = bench.inside("plan_benchmark")
    ten = times.pop("ten feeds")
    slowest = max(times, key=times.get)
    yield under(f"a whole plan of the slowest shipped strategy ({slowest})", times[slowest], 5e-3)
    yield under("a whole plan of ten feeds", ten, 5e-3)

    times, _ = bench.inside("blend_benchmark", repetitions=bench.runs(9, 3))
    blend, alone = times["blend/1000/50"], times["clp_alone/1000/50"]
    yield under("a blend of 1,000 candidates within 50 limits", blend, 20e-3, f"{blend / alone:.2f}",
                f"Clp alone on the same programmes: {told_seconds(alone)}")
    for name in ("blend/30/10", "blend/100/20", "blend/300/50"):
        _, candidates, limits = name.split("/")
        yield Figure(f"a blend of {candidates} candidates within {limits} limits", told_seconds(times[name]))
    yield under("packs for 40 sessions of 60 ingredients", times["season/40/60"], 50e-3)

    times, _ = bench.inside("learn_benchmark", "10000$", repetitions=bench.runs(5, 3))
    yield under("10,000 logged mixes of 200 ingredients learnt, over 4,000 days",
                times["learn/each_on_one_of_4000_days/10000"], 1.0)
    yield under("the same, all on one day", times["learn/all_on_one_day/10000"], 1.0)
