"""Reads every list of these checks with Python's csv module and writes its cells: python3 tests/lists/vectors/records.py

A list whose name is in SEP has another sign between its cells; a first line `sep=;` is no row. Rows without a cell are
left out, as the reader of lists counts them apart.
"""

import csv
import io
import json
from pathlib import Path

SEP = {"semicolon": ";", "tab": "\t", "sep_line": ";"}
# One column only, or a file made in the check.
LEFT_OUT = {"one_column", "workbook", "long_cell"}

here = Path(__file__).resolve().parent.parent
found = {}
for folder in ["dirty", "demands"]:
    for path in sorted((here / folder).glob("*.csv")):
        if path.stem in LEFT_OUT:
            continue
        text = path.read_text(encoding="utf-8")
        if text.startswith("sep="):
            text = text.split("\n", 1)[1]
        reader = csv.reader(io.StringIO(text, newline=""), delimiter=SEP.get(path.stem, ","))
        found[f"{folder}/{path.stem}"] = [row for row in reader if row]
(here / "vectors" / "records.json").write_text(json.dumps(found, ensure_ascii=False, indent=0) + "\n", encoding="utf-8")
