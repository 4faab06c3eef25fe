### Minutes of the work, and rates from trees that somebody timed.

# Several stems have several widths.
effort-each-better = each stem's own
# What is not known of minutes.
effort-no-table = No published table of minutes by diameter exists. These are put together from rates of like work.
# Names of the tasks, and of the rest.
effort-tasks-find-a-stand-tools = Find a stand, tools, look up
effort-tasks-clear-limbs-below-the = Clear limbs below the ring
effort-tasks-score-two-lines = Score two lines
effort-tasks-peel = Peel
effort-tasks-scrape-and-check = Scrape and check
# The walk, as a row.
effort-task-walk = Walk from the last tree
# The sum with rest and delays, as a row.
effort-task-all = All, with rest and delays
# Why trees give no rate.
# $of (NoRate)
effort-no-rate-said =
    .too-few-trees = Time at least two trees: one says more about the tree than about you.
    .no-minutes = Type how many minutes they took together.
    .far-off = That is far from any crew. Check minutes and diameters.
# Minutes.
effort-how-long = How long
# Minutes.
effort-twin-minutes = The minutes as a table
# Minutes.
effort-head-minutes-step = Step
effort-head-minutes-likely-minutes = Likely minutes
# Minutes of a ring that is not the headline.
effort-if-ringed = If you ring it:

## How long
# $likely (Number)
# $low (Number)
# $high (Number)
effort-minutes = { $likely ->
    [one] about { $likely } minute ({ $low } to { $high })
   *[other] about { $likely } minutes ({ $low } to { $high })
}
# $likely (Number)
# $low (Number)
# $high (Number)
effort-hours = { $likely ->
    [one] about { $likely } hour ({ $low } to { $high })
   *[other] about { $likely } hours ({ $low } to { $high })
}
# $minutes (Text)
effort-minutes-label = { $minutes } min
# $hours (Text)
effort-hours-label = { $hours } h
# $width (Phrase): of the better ring
effort-for = For the better width, { $width }. Tight bark, thick bark and poor footing make it slower.
# $minutes (Minutes)
effort-walk = Walking from the last tree in it: { $minutes } min.
effort-practised = A practised crew.
# $likely (Minutes)
# $low (Minutes)
# $high (Minutes)
effort-visit = { $likely ->
    [one] Each visit to take sprouts off: about { $likely } minute ({ $low } to { $high }).
   *[other] Each visit to take sprouts off: about { $likely } minutes ({ $low } to { $high }).
}
# $visits (Small): of three years
# $minutes (Phrase): as effort-minutes
# $all-visits (Small): of the whole list
# $all-minutes (Phrase)
effort-long = With the { $visits } visits of the three years it comes to { $minutes }; with all { $all-visits } on the list, { $all-minutes }. The first look is not counted: nobody timed one.

## Rates of one's own
# $trees (Small)
# $minutes (Number)
effort-trees-in = { $trees ->
    [one] { $minutes ->
        [one] { $trees } tree in { $minutes } minute
       *[other] { $trees } tree in { $minutes } minutes
    }
   *[other] { $minutes ->
        [one] { $trees } trees in { $minutes } minute
       *[other] { $trees } trees in { $minutes } minutes
    }
}
# $trees (Phrase): as effort-trees-in
# $times (Phrase): as effort-times
effort-timed = From your own trees: { $trees }. That is { $times } our minutes, and used here.
# $trees (Phrase): as effort-trees-in
# $why (Phrase): as effort-no-rate-said
effort-not-timed = Can't tell yet from { $trees }. { $why } Our own rate is used.
# $likely (Text)
# $range (Text)
effort-times = { $likely } times ({ $range })
# $times (Phrase)
effort-own-rate = With your own rate, from trees that you timed: ours { $times }.
# $people (Text)
# $hours (Text)
# $trees (Count)
effort-crew-day = { $trees ->
    [one] A crew of { $people } with { $hours } hours: about { $trees } tree like this in a day.
   *[other] A crew of { $people } with { $hours } hours: about { $trees } trees like this in a day.
}

## Told back, as given
# $minutes (Number)
effort-walk-given = { $minutes ->
    [one] { $minutes } minute
   *[other] { $minutes } minutes
}
# $trees (Small)
# $minutes (Number)
effort-timed-given = { $minutes ->
    [one] { $trees }, { $minutes } minute in all
   *[other] { $trees }, { $minutes } minutes in all
}
