"""habits_on_terminal.py PROGRAM: the habits of a good command line that need a terminal, a row each. What is typed runs
on a terminal of its own; what it shows must hold. Ends with 1 where a habit does not hold."""
import os
import re
import shutil
import signal
import subprocess
import sys
import tempfile
import time

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "survival"))
import large_store  # noqa: E402
from terminal_run import ESC, PROGRAM, environment, in_pipe, on_terminal, read_until_end, started  # noqa: E402

MIX = ["mix", "silt bed", "--wet-volume", "3l"]
LARGE = 600000  # movements in the shed: their export lasts some seconds


def colour_on_a_terminal(home):
    shown = on_terminal(home, *MIX)
    return ESC + "[1m510 ml" in shown.text and ESC + "[1;33mTake care" in shown.text and shown.status == 0


def nothing_by_colour_alone(home):
    return on_terminal(home, *MIX).plain == in_pipe(home, *MIX).text


def no_color(home):
    return ESC not in on_terminal(home, *MIX, NO_COLOR="1").text


def empty_no_color(home):
    return ESC in on_terminal(home, *MIX, NO_COLOR="").text


def dumb_terminal(home):
    return ESC not in on_terminal(home, *MIX, TERM="dumb").text and ESC not in on_terminal(home, *MIX, TERM=None).text


def color_never(home):
    return ESC not in on_terminal(home, *MIX, "--color", "never").text


def color_beats_no_color(home):
    return ESC in on_terminal(home, *MIX, "--color", "always", NO_COLOR="1").text


def json_plain_on_terminal(home):
    return ESC not in on_terminal(home, *MIX, "--json").text and ESC not in on_terminal(home, *MIX, "--csv").text


def errors_marked(home):
    shown = on_terminal(home, "mix", "silt bd", "--wet-volume", "3l")
    return shown.text.startswith(ESC + "[1;31merror:" + ESC + "[0m no mix") and shown.status == 66


def own_width(home):
    wide, narrow = on_terminal(home, *MIX, columns=120), on_terminal(home, *MIX, columns=60)
    return 80 < wide.widest() <= 120 and 50 < narrow.widest() <= 60


def columns_say_the_width(home):
    return 50 < on_terminal(home, *MIX, columns=120, COLUMNS="60").widest() <= 60


def narrow_is_40(home):
    shown = on_terminal(home, *MIX, columns=20)
    listed = on_terminal(home, "recipe", "list", columns=20)
    return 30 < shown.widest() <= 40 and 30 < listed.widest() <= 40


def only_water_is_bold(home):
    shown = on_terminal(home, *MIX, columns=60).text
    bold = [part.split(ESC + "[0m")[0] for part in shown.split(ESC + "[1m")[1:]]
    return len(bold) == 2 and all(" ml" in part and " g" not in part for part in bold)


def wide_is_200(home):
    return 120 < on_terminal(home, *MIX, columns=500).widest() <= 200


def help_in_width(home):
    return on_terminal(home, "help", columns=50).widest() <= 52 and 80 < on_terminal(
        home, "help", "mix", columns=130).widest() <= 130


def plain_letters(home):
    shown = on_terminal(home, *MIX, LC_ALL="C")
    return shown.text.isascii() and "GBP 1.94" in shown.text and "degC" in shown.text and \
        "£1.94" in on_terminal(home, *MIX).text


def accents_in_plain_letters(home):
    in_pipe(home, "ingredient", "add", "crème", "--like", "brown crumb")
    shown = on_terminal(home, "ingredient", "list", LC_ALL="C")
    return shown.text.isascii() and "\n  creme " in shown.text


def pager_for_a_long_list(home):
    shown = on_terminal(home, "ingredient", "list", PAGER="sed s/^/paged:/")
    return shown.lines[0].startswith("paged:") and shown.status == 0


def pager_for_help(home):
    return on_terminal(home, "help", PAGER="sed s/^/paged:/").lines[0].startswith("paged:")


def no_pager_for_an_answer(home):
    return "paged:" not in on_terminal(home, *MIX, rows=10, PAGER="sed s/^/paged:/").text


def no_pager_where_it_fits(home):
    return "paged:" not in on_terminal(home, "ingredient", "list", rows=500, PAGER="sed s/^/paged:/").text


def no_pager_when_told(home):
    told = on_terminal(home, "ingredient", "list", "--no-pager", PAGER="sed s/^/paged:/")
    none = on_terminal(home, "ingredient", "list", PAGER="")
    return "paged:" not in told.text and "barley meal" in told.text and "barley meal" in none.text


def missing_pager(home):
    shown = on_terminal(home, "ingredient", "list", PAGER="no-such-pager-here 2>/dev/null")
    return "barley meal" in shown.text and shown.status == 0


def pager_left_early(home):
    return on_terminal(home, "ingredient", "list", PAGER="head -n 1 >/dev/null").status == 0


def paged_is_whole(home):
    paged = on_terminal(home, "ingredient", "list", PAGER="cat -")
    return paged.plain == in_pipe(home, "ingredient", "list").text


def sheet_is_not_for_a_terminal(home):
    shown = on_terminal(home, "card", "open carpet", "-o", "-")
    return shown.status == 64 and "terminal" in shown.plain and "%PDF" not in shown.text


def stopped_cleanly(home, words, after):
    before = set(os.listdir(home)) | {"kept"}
    process, ours = started(home, words, 80, 24, {})
    time.sleep(after)
    still = process.poll() is None
    if still:
        os.write(ours, b"\x03")
    shown = read_until_end(process, ours)
    left = [name for name in os.listdir(home) if name not in before]
    left += [name for name in os.listdir(home + "/data/baitwright") if name.endswith(".new")]
    return still, shown.status, left


def make_large(home, movements):
    """A store with so many movements in its shed."""
    in_pipe(home, "recipe", "list")
    in_pipe(home, "stock", "buy", "brown crumb", "1kg")
    large_store.fill(home + "/data/baitwright/baitwright.db", movements)


def stopped_on_the_way(home):
    """Ctrl-C at many moments of a long export: it ends by the signal, which a shell calls 130, and nothing is left."""
    make_large(home, 60000)
    caught = 0
    for after in (0.02, 0.05, 0.08, 0.12, 0.16, 0.2, 0.3):
        still, status, left = stopped_cleanly(home, ["export", "--all", "kept"], after)
        if left:
            return f"left behind: {left}"
        if still and status == -signal.SIGINT:
            caught += 1
        elif status == 0:
            shutil.rmtree(home + "/kept")
        else:
            return f"ended with {status}"
    sound = in_pipe(home, "doctor").status
    return True if caught > 0 and sound == 0 else f"{caught} caught, doctor {sound}"


def as_a_shell_tells_it(home):
    """It waits for what nobody types."""
    process, ours = started(home, ["mix", "-", "--wet-volume", "3l"], 80, 24, {})
    time.sleep(0.3)
    os.write(ours, b"\x03")
    status = read_until_end(process, ours).status
    return 128 - status == 130


def progress_is_shown_and_wiped(home):
    make_large(home, LARGE)
    shown = on_terminal(home, "export", "--all", "kept", output=subprocess.DEVNULL)
    told = re.findall(r"\r\x1b\[Kwriting all of it: \d+ %, about \d+ (?:s|min) left", shown.text)
    return True if told and shown.text.endswith("\r\x1b[K") and shown.status == 0 else f"shown: {shown.text[-200:]!r}"


def no_progress_off_a_terminal(home):
    make_large(home, LARGE)
    run = subprocess.run([PROGRAM, "export", "--all", "kept"], cwd=home, env=environment(home, {}),
                         stdin=subprocess.DEVNULL, stdout=subprocess.DEVNULL, stderr=subprocess.PIPE, check=False)
    dumb = on_terminal(home, "export", "--all", "kept2", output=subprocess.DEVNULL, TERM="dumb")
    return run.stderr == b"" and dumb.text == "" and run.returncode == dumb.status == 0


def nothing_asked(home):
    """No command asks anything of its own accord, not even on a terminal."""
    started_at = time.monotonic()
    shown = on_terminal(home, "stock", "buy")
    return shown.status == 64 and time.monotonic() - started_at < 20


HABITS = [
    ("on a terminal the water is bold and warnings are marked", colour_on_a_terminal),
    ("nothing is said by colour alone", nothing_by_colour_alone),
    ("NO_COLOR takes colour away", no_color),
    ("an empty NO_COLOR does not", empty_no_color),
    ("a dumb terminal gets no colour", dumb_terminal),
    ("--color never takes colour away", color_never),
    ("--color always is heeded before NO_COLOR", color_beats_no_color),
    ("JSON and CSV are plain on a terminal too", json_plain_on_terminal),
    ("an error is marked on a terminal", errors_marked),
    ("lines are as wide as the terminal", own_width),
    ("COLUMNS is heeded before the terminal", columns_say_the_width),
    ("no terminal is taken to be narrower than 40", narrow_is_40),
    ("where a table is narrow, the water alone is bold", only_water_is_bold),
    ("no terminal is taken to be wider than 200", wide_is_200),
    ("help is as wide as the terminal", help_in_width),
    ("a terminal without UTF-8 gets plain letters", plain_letters),
    ("accents are left away there", accents_in_plain_letters),
    ("a long list goes through the pager", pager_for_a_long_list),
    ("so does help", pager_for_help),
    ("an answer does not", no_pager_for_an_answer),
    ("nor what fits the screen", no_pager_where_it_fits),
    ("--no-pager and an empty PAGER are heeded", no_pager_when_told),
    ("where the pager is missing all is printed", missing_pager),
    ("a pager that is left early ends well", pager_left_early),
    ("what is paged is whole", paged_is_whole),
    ("Ctrl-C leaves nothing half-written", stopped_on_the_way),
    ("Ctrl-C is 130 to a shell", as_a_shell_tells_it),
    ("what lasts shows how far it is, and wipes it", progress_is_shown_and_wiped),
    ("but on a terminal that can, alone", no_progress_off_a_terminal),
    ("nothing is asked", nothing_asked),
    ("a sheet is not poured out on a terminal", sheet_is_not_for_a_terminal),
]


def main():
    failed = 0
    for name, habit in HABITS:
        home = tempfile.mkdtemp(prefix="baitwright-")
        try:
            held = habit(home)
        finally:
            shutil.rmtree(home, ignore_errors=True)
        if held is not True:
            failed += 1
            print(f"does not hold: {name}: {held}")
    print(f"{len(HABITS) - failed} of {len(HABITS)} habits hold")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
