### Temperatures of one spring, as they were read.

# What is wrong with a line of temperatures.
# $of (Trouble)
spring-trouble =
    .too-few-cells = fewer than three cells
    .no-date = its date can't be read
    .no-number = a temperature is missing or no number
    .minimum-above-maximum = the lowest is above the highest
    .out-of-range = beyond what air has been measured at
    .twice = the day was there before, with other values
# What is doubtful about a table of temperatures.
# $of (Doubt)
spring-doubt =
    .nothing = No line of the temperatures could be used.
    .too-long = Only the first four years of temperatures were read.
    .no-scale = Nobody said °C or °F: °C was taken.
    .looks-like-fahrenheit = The numbers look like °F and are called °C.
    .columns-swapped = Lowest and highest seem to stand the other way round: they were read so.
    .day-or-month-first = Day or month first? No line shows it: write 2027-04-12.
    .other-season = Every day lies in another season than the day of the work.
    .gaps = Days are missing between the first and the last.

# $days (Count)
spring-days = Days of temperatures read: { $days }.
# $line (Count)
# $trouble (Phrase): spring-trouble
spring-bad-line = Line { $line } was not used: { $trouble }.
# $lines (Count)
spring-more-lines = { $lines } more lines were not used.
# $ordinary (Span)
# $after (Span)
spring-before-and-after = From ordinary years the bark would slip { $ordinary }; with what you gave of this year, { $after }.
