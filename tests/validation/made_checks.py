"""The checks that the tests made: run with all of their assertions told, as XML, and read again."""

import re
import subprocess
import xml.etree.ElementTree as tree
from dataclasses import dataclass

from told_sources import row_of

CAPTURED = re.compile(r'^\w+(?:\[\w+\])?\.at\("(\w+)"\) := "(.*)"$', re.S)
NUMBER = r"-?(?:\d+\.?\d*(?:e[+-]?\d+)?|inf)f?"
APPROX = re.compile(rf"^({NUMBER})\s*==\s*Approx\(\s*({NUMBER})\s*\)$")
ORDER = re.compile(rf"^({NUMBER})\s*(==|<=|>=|<|>)\s*({NUMBER})$")
WORDS = {"<": "under", "<=": "at most", ">": "over", ">=": "at least", "==": ""}
COUNTED = re.compile(r"^(tested|rows|tables)\b|\.size\(\)")  # that nothing was left out, not what a number is
USUAL = "0.0012 %"  # Catch's own where a test names none: 100 times the step of a float


@dataclass
class Check:
    case: object
    told: str       # of what: the row, or what the test says beside it
    expected: str
    got: float
    tolerance: str
    row: dict
    off: float      # from what is expected, as a share of it

    def source(self):
        return self.row.get("source", "") if self.row else ""

    def kind(self):
        return self.row.get("read_or_memory", "") if self.row else ""


def argument_of(text, name):
    """What stands in the brackets behind a name."""
    at = text.find(f".{name}(")
    if at < 0:
        return None
    begin, depth = at + len(name) + 2, 1
    for end in range(begin, len(text)):
        depth += {"(": 1, ")": -1}.get(text[end], 0)
        if depth == 0:
            return text[begin:end]
    return None


def amount(words, row, unit):
    """A tolerance as it stands in the test; of several by the row, all; where it is no number, what the row says."""
    if words is None:
        return None
    if row and (named := re.search(r'at\("(\w+)"\)', words)):
        words = row.get(named[1], words)
    numbers = re.findall(r"(?<![\w.])\d+\.?\d*(?:e-?\d+)?(?![\w.])", words)
    if not numbers:
        return (row or {}).get("tolerance") or "as the test has it"
    return " or ".join(f"{float(number) * (100 if unit == '%' else 1):.4g}{' %' if unit == '%' else ''}" for number in dict.fromkeys(numbers))


def tolerance_of(original, row):
    share, margin = amount(argument_of(original, "epsilon"), row, "%"), amount(argument_of(original, "margin"), row, "")
    told = [text for text in (share, margin) if text and text not in ("0", "0 %")]
    return " or ".join(dict.fromkeys(told)) or (USUAL if share is None else "none")


def digits_of(text):
    return min(7, max(3, len(re.sub(r"e.*|^0*\.?0*|[-.]", "", text.lstrip("-")))))


def check_of(case, original, expanded, infos):
    captured = dict(found.groups() for found in (CAPTURED.match(info) for info in infos) if found)
    row = row_of(case, captured)
    expanded, original = " ".join(expanded.split()), " ".join(original.split())
    if COUNTED.search(original):
        return None
    if found := APPROX.match(expanded):
        got, expected, tolerance, sign = float(found[1]), found[2], tolerance_of(original, row), ""
    elif found := ORDER.match(expanded):
        got, expected, sign = float(found[1].rstrip("f")), found[3], WORDS[found[2]]
        tolerance = "" if sign else "exact"
    else:
        return None
    wanted = float(expected.rstrip("f"))
    off = 0.0 if sign or got == wanted else abs(got - wanted) / (abs(wanted) or 1)
    told = told_of(captured, row, infos) or f"`{re.split(' (?:==|<=|>=|<|>) ', original)[0][:70]}`"
    return Check(case, told, f"{sign} {wanted:.{digits_of(expected)}g}".strip(), got, tolerance, row, off)


def told_of(captured, row, infos):
    if row and "inputs" in row:
        return f"{row['id']}: {row['inputs']}{', in ' + row['unit'] if row.get('unit', '-') not in ('-', '') else ''}"
    fields = [value if key == "id" else f"{key.replace('_', ' ')} {value}" for key, value in captured.items() if key != "source"]
    return ", ".join(fields or [" ".join(info.split(":=")[-1].strip().strip('"').split()) for info in infos])


def checks_of(program, room, cases):
    """All of a room's, in the order in which they were made. Ends where one of them failed."""
    files = ",".join(f"[#{file}]" for file in sorted({case.file for (of, _), case in cases.items() if of == room}))
    told = subprocess.run([program, "-s", "-r", "xml", "--order", "lex", "-#", files], capture_output=True, text=True)
    if told.returncode != 0:
        raise SystemExit(f"{program}: its tests fail; mend that first")
    for element in tree.fromstring(told.stdout).iter("TestCase"):
        case, infos = cases.get((room, element.get("name"))), []
        for part in element.iter() if case else ():
            if part.tag == "Info":
                infos.append((part.text or "").strip())
            elif part.tag == "Expression":
                if check := check_of(case, (part.findtext("Original") or "").strip(), (part.findtext("Expanded") or ""), infos):
                    yield check
                infos = []
