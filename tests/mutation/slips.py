"""The slips that a source could have: for a line that is one whole statement, the same line with one thing changed, and both so
joined that the running program chooses."""

import random
import re
from dataclasses import dataclass

FLIPS = {" < ": [" >= ", " <= "], " > ": [" <= ", " >= "], " <= ": [" > ", " < "], " >= ": [" < ", " > "], " == ": [" != "], " != ": [" == "],
         " + ": [" - "], " - ": [" + "], " * ": [" / "], " / ": [" * "], " && ": [" || "], " || ": [" && "],
         "std::min(": ["std::max("], "std::max(": ["std::min("]}
NUMBER = re.compile(r"(?<![\w.\"])(\d+\.\d+|\d+)(?![\w.'\"])")
RETURN = re.compile(r"^(\s*(?:if \(.*\) )?return )([^{}\[\]]+)(;)$")
CONDITION = re.compile(r"^(\s*(?:\} else )?(?:if|while) \()([^;{}\[\]]+?)(\) (?:\{|return.*;|continue;|break;|throw .*))$")
LOOP = re.compile(r"^(\s*for \([^;]*; )([^;]+)(; .*)$")
VALUE = re.compile(r"^(\s*(?:const )?[\w:<>&* ]+ (?:\+|-|\*|/)?= )([^{}\[\]]+)(;)$")
STATEMENT = re.compile(r"^(\s+)((?!return|const |auto |using |throw |case |break|continue|delete|for |if |else)"
                       r"[\w.\->:]+(?:\([^{}]*\)|(?: [-+*/]?= [^{}]+)))(;)$")
WHOLE = re.compile(r"([;{}]|^\s*//.*|^\s*(?:public|private):|^\s*)$")


@dataclass
class Slip:
    file: str      # below src/
    line: int
    what: str
    before: str
    after: str     # the line as it would read
    joined: str    # with {n} for the slip's number

    def room(self):
        return self.file.split("/")[0]


def is_balanced(text):
    depth = 0
    for letter in re.sub(r'"(?:[^"\\]|\\.)*"|\'.\'', "", text):
        depth += {"(": 1, ")": -1}.get(letter, 0)
        if depth < 0:
            return False
    return depth == 0


def outside_quotes(text, at):
    return text.count('"', 0, at) % 2 == 0


def changes(text):
    """What it can be slipped into, each with the kind of the slip."""
    for was, becomes in FLIPS.items():
        for found in re.finditer(re.escape(was), text):
            if outside_quotes(text, found.start()):
                for other in becomes:
                    yield f"{was.strip(' (')} to {other.strip(' (')}", text[:found.start()] + other + text[found.end():]
    for found in NUMBER.finditer(text):
        if outside_quotes(text, found.start()) and not text[:found.start()].endswith(("'", "<")):
            number = found[1]
            other = f"{float(number) * 1.1 or 0.1:.6g}" if "." in number else str(int(number) + 1)
            yield f"{number} to {other}", text[:found.start()] + (other if "." in other or "." not in number else other + ".0") + text[found.end():]


def slips_of_line(file, number, line):
    for form in (CONDITION, LOOP, RETURN, VALUE):
        if not (found := form.match(line)) or not is_balanced(found[2]):
            continue
        head, part, tail = found.groups()
        for what, other in changes(part):
            yield Slip(file, number, what, line, f"{head}{other}{tail}", f"{head}mutant_is({{n}}) ? ({other}) : ({part}){tail}")
        if form is CONDITION:
            yield Slip(file, number, "condition negated", line, f"{head}!({part}){tail}", f"{head}mutant_is({{n}}) ? !({part}) : bool({part}){tail}")
        break
    if (found := STATEMENT.match(line)) and is_balanced(found[2]):
        yield Slip(file, number, "statement removed", line, f"{found[1]};", f"{found[1]}if (!mutant_is({{n}})) {found[2]};")


def slips_of(path, file):
    lines = path.read_text(encoding="utf-8").splitlines()
    for number, line in enumerate(lines, 1):
        before = lines[number - 2] if number > 1 else ""
        if WHOLE.search(before) and line.startswith("    ") and not re.search(r"constexpr|static|//|R\"|mutant", line):
            yield from slips_of_line(file, number, line)


def drawn(source, rooms, seed):
    """Of each room all slips in an order drawn by the seed: a file first, then a line of it, so that long files count no more."""
    chance, found = random.Random(seed), {}
    for room in rooms:
        by_file = {}
        for path in sorted((source / room).rglob("*.cpp")):
            if slips := list(slips_of(path, str(path.relative_to(source)))):
                by_file[path] = slips
        order = []
        while by_file:
            path = chance.choice(sorted(by_file))
            slips = by_file[path]
            order.append(slips.pop(chance.randrange(len(slips))))
            if not slips:
                del by_file[path]
        found[room] = order
    return found
