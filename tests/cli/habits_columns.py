"""habits_columns.py FILE WORDS COUNT: so many lines of the file hold the words, and all at the same column of a
terminal. Widths by Unicode's East Asian Width (UAX 11), from Python's own tables."""
import sys
import unicodedata


def width(text):
    return sum(0 if unicodedata.combining(letter) else 2 if unicodedata.east_asian_width(letter) in "WF" else 1
               for letter in text)


path, words, count = sys.argv[1:]
columns = [width(line.split(words)[0]) for line in open(path, encoding="utf-8") if words in line]
sys.exit(0 if len(columns) == int(count) and len(set(columns)) == 1 else f"{path}: '{words}' at columns {columns}")
