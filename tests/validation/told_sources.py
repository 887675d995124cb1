"""What the tests say of where their numbers are from: the comment above a case, and the rows of `tests/reference/`."""

import csv
import re
from dataclasses import dataclass, field
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent.parent
TESTS = ROOT / "tests"
CASE = re.compile(r'^TEST_CASE\(\s*"((?:[^"\\]|\\.)*)"', re.M)
TABLE = re.compile(r'"(\w+\.csv)"')
NAMED = re.compile(r"\bSources?:|common practice|from memory", re.I)


@dataclass
class Case:
    room: str
    file: str
    name: str
    comment: str
    tables: list = field(default_factory=list)

    def is_wanted(self):
        """Whether it holds something that others have said, or that is said to come from nobody."""
        return bool(self.tables or NAMED.search(self.comment) or "common practice" in self.name)


def comment_above(lines, at):
    """The comment that stands right above a line."""
    told = []
    while at > 0 and lines[at - 1].startswith("//"):
        at -= 1
        told.insert(0, lines[at].lstrip("/ ").rstrip())
    return " ".join(told)


def cases_of(path):
    text = path.read_text()
    lines, found = text.splitlines(), list(CASE.finditer(text))
    held = set(TABLE.findall(text))
    for case, following in zip(found, [*found[1:], None]):
        body = text[case.start():following.start() if following else len(text)]
        comment = comment_above(lines, text.count("\n", 0, case.start()))
        tables = TABLE.findall(body) + [name for name in re.findall(r"(\w+\.csv)", comment) if name in held]
        tables = [name for name in dict.fromkeys(tables) if (TESTS / "reference" / name).exists()]
        yield Case(path.parent.name, path.stem, case[1].replace('\\"', '"'), comment, tables)


def wanted_cases(rooms):
    """By room and name, all cases that are to be told of."""
    cases = {}
    for room in rooms:
        for path in sorted((TESTS / room).glob("*_test.cpp")):
            for case in cases_of(path):
                if case.is_wanted():
                    cases[(room, case.name)] = case
    return cases


def rows_of(table):
    with open(TESTS / "reference" / table, newline="", encoding="utf-8") as stream:
        return list(csv.DictReader(stream))


def row_of(case, captured):
    """The row that a check was made for, by the fields that the test tells of it; None where that is no one row."""
    if not captured:
        return None
    for table in case.tables:
        rows = [row for row in rows_of(table) if all(row.get(key) == value for key, value in captured.items())]
        if len(rows) == 1 or (rows and "id" not in rows[0]):
            return rows[0]
    return None
