### How answers are made.

method-page-title = Method
method-page-description = How an answer is made, in which order, and where it stops.
method-page-lede = One question goes through nine steps, in this order. The first that says stop, stops the rest.
method-page-reach = **Reach.** How far the tree, or wood from it, can land, and what stands within. The height used is the high end of the estimate.
method-page-bark = **Bark.** Its thickness, as you measured it or as estimated from species and size, with a range.
method-page-ring = **Ring.** How wide the ring is at least and better, and where on the trunk.
method-page-timing = **Timing.** Whether the bark will peel on the day, and when it next does.
method-page-method = **Method.** Nine ways to deal with one tree, each recommended, possible, not advised or ruled out.
method-page-outlook = **Outlook.** How many such trees were dead after one, two and three seasons, and whether sprouts are likely.
method-page-effort = **Effort.** Minutes for one person: low, likely and high.
method-page-habitat = **Habitat.** Who may use the standing tree, and for how long it may stand.
method-page-cautions = **Cautions.** What to ask, and whom.
method-page-numbers = Where the numbers come from
method-page-numbers-are = Each number stands in a table with its source, the place in that source and a grade. Where nothing was published, the answer says "our own assumption". All sources are on the [sources page](sources/).
method-page-stops = Where it stops
method-page-stops-line = It never says that work may go ahead near a line, a road or people. It says who to ask.
method-page-stops-law = It does not know your law. Local codes, permits and nesting seasons stand above any answer here.
method-page-stops-product = It names no product and no dose. Where a herbicide is the way, the label and a licensed applicator decide.
method-page-stops-dead = A dead tree is weaker than it looks. No answer here says how long one will stand, only how long others stood.
method-page-same = The command line, the page and the JavaScript call run the same code and give the same numbers.
