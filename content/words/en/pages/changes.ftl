### What changed.

changes-description = What changed in the answers and the site, version by version.
# Over the list where the page is in another language.
changes-in-english = This list is in English.
changes-none = No release yet: this is the first.
