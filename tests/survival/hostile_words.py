"""What an attacker types and writes: command lines after the program's own help, files after the shipped ones, and
slips in both. Everything comes from one random generator, so that a case is told by its seed and number alone."""

import csv
import re
import shlex
from pathlib import Path

NAMES = ["silt bed", "dark treacle", "plain micros", "pond pellet", "open carpet", "tight balls=2", "margin", "cold water",
         "brown crumb", "fishmeal micro pellet 2 mm", "expander 4 mm", "maize meal", "sweet liquid", "long pit", "club sack",
         "winter lean", "casters", "./case.toml", "case.toml", "case.csv", "-", "silt bed, red", "case.db", "taken"]
MASSES = ["1kg", "4lb", "500g", "2.5kg", "12oz"]
VOLUMES = ["3l", "5pt", "250ml", "0.5pt", "egg", "toss pot 25", "1 USpt"]
TIMES = ["5h", "20min", "90 s", "7d", "2", "1.5h"]
VALUES = {
    "AMOUNT": MASSES + VOLUMES + ["500g of fishmeal micro pellet 2 mm", "1.5 l silt bed", "none"],
    "BED": ["pale", "dark"], "CLARITY": ["clear", "tinged", "coloured"], "CLOCK": ["09:30", "23:59", "110", "08:30"],
    "COUNTxSIZE": ["4x250ml", "12x55mm", "8xegg", "3x toss pot 25"], "DATE": ["2026-11-28", "2026-03-01", "2028-02-29"],
    "DOSE": ["15ml in 0.5pt of fishmeal micro pellet 2 mm"], "FEEL": ["soft", "firm", "slop", "dusty", "tacky"],
    "FILE": ["out.pdf", "out.svg", "out.png", "out.html", "out.toml", "case.toml", "case.db", "kept.db", "out.db", "lib"], "FISH": ["bream", "roach"],
    "FOLDER": ["lib", ".", "taken", "out"], "HOW": ["light", "firm", "hard"], "ITEM": ["cup 250", "pot 25", "feeder 30", "tub 12 l"],
    "KEY=VALUE": ["absorption=0.7 g/g", "moisture=8 %", "note=mine", "loose_density=400 g/l"],
    "KIND": ["base", "pellet", "liquid", "expander"], "LENGTH": ["2.5m", "55mm", "1.2 m", "3ft"], "MASS": MASSES,
    "METHOD": ["covered", "measured"], "NAME=AMOUNT": ["brown crumb=400g", "casters=1pt", "silt bed=1kg"],
    "NAME=DOSE": ["glycerol=20ml", "salt=20 g per l water"], "NAME=PRICE": ["brown crumb=£2.10/kg", "maggots=£3/pt"],
    "NUMBER": ["2", "1", "6", "30", "1.3"], "PRESSURE": ["101.3kPa", "950hPa"], "PRICE": ["£4.20", "340p", "3.40 EUR"],
    "RATE": ["25 ml per kg dry", "2 %", "10 g per l water"], "RATIO": ["0.6 g/g", "100g 60g"],
    "SEASON": ["winter", "summer"], "SHARE": ["10%", "0.5", "60 %"], "SHOP": ["the mill", "bait barn"],
    "SHOP=CHARGE": ["the mill=£4.50"], "SIZE": VOLUMES + ["55mm", "40x30cm"], "SPEED": ["2cm/s", "0.1 m/s"],
    "STATE": ["riddled", "cupped", "squeezed"], "TEMPERATURE": ["8degC", "50degF", "20 degC"],
    "TEST": ["100g 185g", "2pt 2.6pt"], "TEXT": ["by the kitchen scale"], "TIME": TIMES, "VOLUME": VOLUMES,
    "WHAT": ["feels", "sizes", "forms"], "WISH": ["carpet=1.2m", "breaks=0.6m"], "WORD": ["steady", "slow", "none"],
    "ENTRY": ["1", "2"], "--as": ["cup", "ball"],
}
NUMBERS = ["0", "-1", "1e300", "1e-300", "-0.0", "nan", "inf", "-inf", "1e9", "99999999999999999999", "0.0000001", "1e4",
           "100", "400", "3e38", "1/3", "1,5", "0x10", "9" * 400, "2147483648", "1e15", "5000"]
ODD = ["", " ", "=", "x", "--", "-1", "\u202e", "\u200b", "\x1b[31m", "\x7f", "a" * 300, "é" * 90, "\U0001f41f", "\n", "\t",
       "'", '"', "%s%n", "{}", "[[part]]", "#", "£", "=cmd", "@x", ";", ",", "null", "g", "%"]
NUMBER = re.compile(r"\d+(?:\.\d+)?")


class Grammar:
    """The commands, their words and flags, as `--help` tells them."""

    def __init__(self, help_of):
        self.commands = {}
        for line in help_of([]).splitlines():
            first = re.match(r"  ([a-z]+)  ", line)
            if first and first[1] != "help":
                self._take(help_of, first[1])
        assert len(self.commands) > 60, "the commands are not read out of the help"

    def _take(self, help_of, first):
        text = help_of(["help", first])
        if "needs a subcommand" not in text.splitlines()[0]:
            self.commands[first] = self._command(text)
        for verb in re.findall(rf"^  ({first} [a-z]+)  ", text, re.M):
            self.commands[verb] = self._command(help_of(verb.split() + ["--help"]))

    @staticmethod
    def _command(text):
        usage = text.splitlines()[0].split()[1:]
        flags = dict(re.findall(r"^  (--[a-z-]+|-o)(?: ([A-Z][A-Zx=]+))?(?= |$)", text, re.M))
        words = [re.sub(r"[\[\].]", "", word) for word in usage if word.strip("[].").isupper() and word != "[flags]"]
        example = re.search(r"^  baitwright (.*)", text.partition("\nFor example\n")[2], re.M)
        return words, flags, shlex.split(example[1]) if example else None

    def line(self, random):
        verb = random.choice(sorted(self.commands))
        words, flags, example = self.commands[verb]
        line = list(example or []) if random.random() < 0.7 else []
        line = line or verb.split() + [self.value(word, random) for word in words]
        for _ in range(random.choice((0, 0, 1, 1, 2, 4))):
            self.add_flag(line, flags, random)
        return line

    def add_flag(self, line, flags, random):
        flag = random.choice(sorted(flags))
        if flag in ("--store", "--library"):
            return
        line.append(flag)
        if flags[flag]:
            line.append(self.value(flags[flag], random))

    @staticmethod
    def value(what, random):
        return random.choice(VALUES.get(what, NAMES))


def lines_of_tests(tests):
    """What the golden cases and the table of slips type, where it is no work for a shell; each kind as often."""
    typed = [path.read_text() for path in sorted((tests / "cli/golden").glob("*/command"))] * 10
    with open(tests / "cli/bad_inputs.csv", newline="") as table:
        typed += [row["command"] for row in csv.DictReader(table)]
    for text in typed:
        try:
            line = shlex.split(text)
        except ValueError:
            continue
        if line and not re.search(r"[$`|<>&*]", text) and len(text) < 2000:
            yield line


def files_of_tests(root):
    paths = [*root.glob("recipes/**/*.toml"), *root.glob("tests/cli/golden/**/*.toml"), *root.glob("tests/cli/**/*.csv"),
             *root.glob("tests/cli/documented/*.*"), *root.glob("tests/fuzz/seeds/*/*")]
    return [path for path in sorted(paths) if path.is_file() and path.name != "bad_inputs.csv" and path.stat().st_size < 60000]


def slipped_bytes(data, random):
    """A store as a bad disk, a cut copy or a stranger leaves it; as often as not a sound one."""
    if random.random() < 0.4:
        return data
    raw = bytearray(data)
    for _ in range(random.choice((1, 1, 2, 20))):
        raw[random.randrange(random.choice((100, 4096, len(raw))))] = random.randrange(256)
    how = random.randrange(8)
    if how == 0:
        del raw[random.randrange(len(raw)):]
    elif how == 1:
        raw += bytes(random.randrange(5000))
    elif how == 2:
        at = random.randrange(len(raw))
        raw[at:at + 4096] = bytes(4096)
    return bytes(raw)


def slipped_number(word, random):
    found = list(NUMBER.finditer(word))
    if not found:
        return word + random.choice(NUMBERS)
    at = random.choice(found)
    return word[:at.start()] + random.choice(NUMBERS) + word[at.end():]


def slipped_word(word, random):
    how = random.randrange(6)
    if how < 3:
        return slipped_number(word, random)
    if how == 3:
        return random.choice(ODD)
    at = random.randrange(len(word) + 1)
    return word[:at] + random.choice(ODD) + word[at + (how == 5):]


def slipped_line(line, grammar, random):
    line = list(line)
    for _ in range(random.choice((0, 0, 1, 1, 1, 2, 3))):
        at = random.randrange(len(line))
        how = random.randrange(10)
        if how < 5 and at > 0:
            line[at] = slipped_word(line[at], random)
        elif how < 6:
            del line[at]
        elif how < 7:
            line.insert(at, line[random.randrange(len(line))])
        elif how < 8:
            line[at] = random.choice(NAMES)
        else:
            verb = " ".join(line[:2]) if " ".join(line[:2]) in grammar.commands else line[0]
            grammar.add_flag(line, grammar.commands.get(verb, ((), {"--json": ""}, None))[1], random)
        if not line:
            return [""]
    return line


def slipped_file(data, random):
    lines = data.split(b"\n")
    for _ in range(random.choice((0, 1, 1, 2, 3, 6))):
        at = random.randrange(len(lines))
        how = random.randrange(9)
        if how < 4:
            text = lines[at].decode("utf-8", "replace")
            lines[at] = slipped_number(text, random).encode("utf-8", "replace") if NUMBER.search(text) else lines[at]
        elif how == 4:
            lines[at] = slipped_word(lines[at].decode("utf-8", "replace"), random).encode("utf-8", "replace")
        elif how == 5:
            del lines[at]
            lines = lines or [b""]
        elif how == 6:
            lines.insert(at, random.choice(lines))
        elif how == 7:
            lines = lines[:at] + lines[at:] * random.choice((2, 3, 50)) + lines[at:]
            lines = lines[:20000]
        else:
            raw = bytearray(lines[at])
            raw[len(raw) // 2:len(raw) // 2 + 1] = bytes([random.randrange(256)])
            lines[at] = bytes(raw)
    return b"\n".join(lines)
