"""What nobody has measured: where the shipped values are from, property by property, and which parts of the method are ours."""

import re
import tomllib
from collections import Counter

from told_sources import ROOT

FROM_MEMORY = "default: from memory"


def entries_of(folder):
    for path in sorted((ROOT / "recipes" / folder).glob("*.toml")):
        told = tomllib.loads(path.read_text(encoding="utf-8"))
        yield from told.get("ingredient", [told] if "kind" in told else [])


def kind_of(value):
    source = value.get("source", FROM_MEMORY) if isinstance(value, dict) else FROM_MEMORY
    return next((kind for kind in ("published", "measured", "derived") if source.startswith(kind)), "from memory")


def shipped_sources():
    """By property, how many shipped values are of each kind of source."""
    counts = {}
    for entry in entries_of("ingredients"):
        for key, value in entry.items():
            if (isinstance(value, dict) and "value" in value) or (isinstance(value, str) and re.match(r"^-?[\d.]+ ?[a-z%]", value)):
                counts.setdefault(key, Counter())[kind_of(value)] += 1
    return counts


def anchor(heading):
    return re.sub(r"[^\w\- ]", "", heading.lower()).replace(" ", "-")


OURS = re.compile(r"\b(is|are|all|numbers?|source) ours\b|nobody has measured|is not known", re.I)


def sentences_of(paragraph):
    return re.split(r"(?<=[.;:]) (?=[A-Z*`])", " ".join(paragraph.replace("|", " ").split()))


def ours_in_method():
    """The sentences of docs/method.md that say that something is ours, each with its heading."""
    heading, found = "", []
    for paragraph in re.split(r"\n\n|\n(?=[#|*])", (ROOT / "docs" / "method.md").read_text(encoding="utf-8")):
        if paragraph.startswith("#"):
            heading = paragraph.splitlines()[0].lstrip("# ").strip()
        found += [(heading, sentence.lstrip("* ")) for sentence in sentences_of(paragraph) if OURS.search(sentence)]
    return found


def document():
    told = ("## What nobody has measured\n\nWhere the values of the shipped ingredients are from. A value from memory is a guess with a wide spread: "
            "measure your own bag (`baitwright ingredient measure`).\n\n| property | published | measured | from memory |\n|---|---|---|---|\n")
    whole = Counter()
    for key, counts in sorted(shipped_sources().items()):
        whole.update(counts)
        told += f"| `{key}` | {counts['published']} | {counts['measured']} | {counts['from memory']} |\n"
    told += f"| all | {whole['published']} | {whole['measured']} | {whole['from memory']} |\n"
    told += "\nWhere the method is our own, sentences from [docs/method.md](method.md):\n\n"
    for heading, sentence in ours_in_method():
        told += f"* [{heading}](method.md#{anchor(heading)}): {sentence}\n"
    return told
