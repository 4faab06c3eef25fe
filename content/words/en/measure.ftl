### Numbers, days, lists and units, as every sentence and drawing has them.

# $count (Count): what is counted stands behind it
measure-small = { $count ->
    [0] no
    [1] one
    [2] two
    [3] three
    [4] four
    [5] five
    [6] six
    [7] seven
    [8] eight
    [9] nine
    [10] ten
    [11] eleven
    [12] twelve
   *[other] { $count }
}

## Lists and ranges
# $first (Phrase): all but the last
# $last (Phrase)
measure-and = { $first } and { $last }
# $first (Phrase): all but the last
# $last (Phrase)
measure-or = { $first } or { $last }
# $first (Phrase): what stands so far
# $last (Phrase)
measure-comma = { $first }, { $last }
# Numbers, not days.
# $low (Text)
# $high (Text)
measure-range = { $low } to { $high }
# $number (Text): of 100
measure-about = about { $number }

## Days
# The twelve, a space between.
measure-months = January February March April May June July August September October November December
# On a tape.
measure-months-short = Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec
# Where there is hardly any room.
measure-months-initial = J F M A M J J A S O N D
# $day (Count)
# $month (Text)
measure-day = { $day } { $month }
# $day (Phrase): a day, a month, or some of them
# $year (Count)
measure-with-year = { $day } { $year }
# From one month to another, the whole of both.
# $from (Text)
# $to (Text)
measure-whole-months = { $from } to { $to }
# Days of one month.
# $from (Count)
# $to (Count)
# $month (Text)
measure-days-of-month = { $from } to { $to } { $month }
# From a day to a day, each with its month.
# $from (Phrase)
# $to (Phrase)
measure-days = { $from } to { $to }

## The same where there is little room: on the tag, and below a number
# $day (Count)
# $month (Text)
measure-day-short = { $day } { $month }
# $day (Phrase): a day and a month
# $year (Count)
measure-with-year-short = { $day } { $year }
# $from (Count)
# $to (Count)
# $month (Text)
measure-days-of-month-short = { $from } to { $to } { $month }
# $from (Phrase)
# $to (Phrase)
measure-days-short = { $from } to { $to }

## Axes of drawings
measure-minutes-label = min
measure-hours-label = h
measure-years-label = years
measure-in-100-label = in 100

## Units as they are heard
measure-inches = inches
measure-feet = feet
measure-millimetres = millimetres
measure-centimetres = centimetres
measure-metres = metres

## In front of sources and in place of a value
measure-source = Source:{ " " }
measure-sources = Sources:{ " " }
measure-not-known = not known
