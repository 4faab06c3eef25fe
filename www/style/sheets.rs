// Names of the calculators' sheets under `www/style/parts`, in the order in which they are joined. Included by whatever
// shows a calculator: the module, the pages, the examples and their checks.
[
    "host", "ground", "form", "card", "answer", "drawing", "another", "forced", "print",
]
