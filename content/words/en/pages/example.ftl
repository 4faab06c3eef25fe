### A worked example.

example-title = A worked example
example-description = One invented tree and its whole answer, with drawings, cautions and working, as the calculator gives it.
example-lede = The tree and its hedgerow are invented. The answer is the calculator's own, written into this page when the site was built; it needs no script.
example-asked = Asked: Norway maple, 14 1/2 inches across, on 12 June 2027; a path 200 feet away, no overhead line near.
