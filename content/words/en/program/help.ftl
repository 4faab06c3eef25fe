### What the program says of its commands and options, and of a command line that it does not understand.

help-program = Slipbark: one tree, one answer.
help-after = With no command it serves. In the project’s folder `cargo run --release` builds the program and runs it; what follows `--` goes to it, as in: cargo run --release -- answer question.json --text
help-codes = Exit codes: 0 done; 1 failed, and the message says what to do; 2 the command line or the question was not understood.
# Headings.
help-usage = Usage:
help-options = Options
help-arguments = Arguments
help-commands = Commands
help-help = Print this
help-help-of = Print this, or the same of a command
help-version = Print the version
# What an option is when it is left out.
# $value (Text)
help-unless-said = { $value } unless said

## Commands, and the options of each by their long names; `file` is what follows the command.
# $of (Key)
help-about =
    .serve = Build the site and serve it on this machine
    .build = Write the static site into a folder
    .answer = Answer the question in FILE (JSON), or - for standard input
    .list = Answer every row of the list of trees in FILE (CSV), or - for standard input
    .plan = Plan a season's work for the list of trees in FILE (CSV): which trees on which day, and their visits
    .settings = Say in words what is wrong with a group's settings in FILE (JSON)
    .year = Say when the bark slips at a place, for every species or for one

# $of (Key)
help-serve =
    .port = The port on 127.0.0.1, which nothing outside this machine can reach; 0 picks a free one
    .dir = Serve a folder that was built before, as it is
    .base = The path that the site will live under
    .quiet = Print only the address
    .lang = The language of words: en, es, or a tag such as es-MX

# $of (Key)
help-build =
    .out = The folder for the site: an empty or a new one, or one that was built before
    .npm = The folder for a package for npm: for programs in Node, and for pages that a bundler makes
    .crate = The folder for a Rust crate with the tables in it, for other programs
    .base = The path that the site will live under
    .origin = The origin that it will live at, as https://trees.example.org: then pages tell their whole addresses, a sitemap lists them, and answers of a package for npm link to the sources there
    .own = The folder of a group with articles and sources of its own: articles/en/NAME.md, sources.csv
    .contact = Where readers report a mistake: mailto: or https:
    .no-offline = A site that keeps nothing on the device, and removes what an earlier one kept
    .wordpress = A plugin for WordPress with the site in it, to be put into wp-content/plugins
    .quiet = Print only the folder
    .lang = The language of words: en, es, or a tag such as es-MX

# $of (Key)
help-answer =
    .file = The file with the question, or - for standard input
    .text = Words for people instead of JSON: in short, as the page shows it before anything is unfolded
    .full = With --text: all of the answer, with its tables, working and sources
    .ics = The visits as a calendar file
    .settings = A file of a group's own settings to answer under
    .lang = The language of words and problems: en, es, or a tag such as es-MX

# $of (Key)
help-reading =
    .columns = A file of decisions (JSON): what the columns of the list hold, where it asks, also --decisions
    .place = Where the list is, for rows without a place: 42.36,-71.06,15 m, or a town, as "Madison, WI"
    .region = The state or country of the list, as US-MA or GB
    .units = Units of sizes for which the list says none: us or metric
    .settings = A file of a group's own settings to answer under
    .today = The day from which days are reckoned, as 2027-05-01: today unless said
    .lang = The language of words and problems: en, es, or a tag such as es-MX

# $of (Key)
help-list =
    .file = The list, or - for standard input
    .csv = The list as it came, with plan_ columns, instead of a line of JSON a row
    .whole = With each line of JSON the whole answer: 31 kB a row, 620 MB for 20,000
    .text = Words for people: how many rows of each kind, and what to mend
    .first-row = The number of the first row, for a piece of a longer file

# $of (Key)
help-plan =
    .file = The list
    .out = The folder for the files of the plan
    .from = The first day of the season, as 2027-05-01
    .to = Its last day
    .on = Days of the week on which the crew works: sat, or sat,sun
    .days = Work days, with a comma between them
    .closed = Days that are closed, with a comma between them
    .crew = People on each work day; 4 unless said
    .teams = Crews that they work in
    .hours = Hours of a work day, from arriving to leaving; 3 unless said
    .ready = Minutes of a work day to arrive, talk and fetch tools; 45 unless said, which is our own assumption
    .pairs = Two people at each tree
    .slip = Ring only where the bark slips with at least this probability, 0.4 to 0.95; 0.4 unless said
    .share = At most this share of the basal area of each unit in the season, as 20%
    .area = How much land a part of the property is: "North wood=12 acres", "North wood=5 ha"
    .closure = How much of that land lies under crowns now, of all trees: "North wood=85%"; the crowns of the list unless said
    .floor = Leave at least this share of that land under crowns, and two fifths of its basal area; 60% where no share is named
    .spacing = Between two trees that are planted where others died: 8 ft, 2.5 m; 10 ft or 3 m unless said
    .wage = What an hour of work costs: it is written into the plan
    .nothing-within = Nothing that counts stands within a distance of any tree of a part of the property: "Old field=230 ft"
    .said-by = Who said so
    .whole-clone = Whether every stem of a species' clones can be ringed: "Black locust=yes", or "Black locust@Old field=no"
    .same-genus-near = Whether others of a species' genus stand near: "Scots pine=no"
    .keep = The plan.json of an earlier plan: its days stay unless something forces them
    .found = What was found at visits (CSV: tree_id, visited_on, found, minutes, people, ringed_on, ring_width, note): the plan moves on by it, and shares of dead trees are told
    .own-rate = Plan with the crew's own rate, from the rings in --found that were timed
    .whole = With the plan what each tree adds to its bound

# $of (Key)
help-settings =
    .file = The file of settings
    .lang = The language of what is said: en, es, or a tag such as es-MX

# $of (Key)
help-year =
    .place = Latitude, longitude and elevation, as 42.36,-71.06,15 m, or a town, as "Madison, WI"
    .species = One species; all unless said
    .year = Which year, from 1990 to 2100; this one unless said
    .csv = A table instead of text
    .lang = The language of words: en, es, or a tag such as es-MX

## What was not understood
# $argument (Text)
help-unknown-option = There is no option { $argument } here.
# $command (Text)
help-unknown-command = There is no command { $command }.
# $argument (Text)
# $value (Text)
help-wrong-value = { $argument } takes no { $value }.
# $argument (Text)
# $value (Text)
# $why (Text)
help-refused-value = { $argument } takes no { $value }: { $why }
# $arguments (Text)
help-missing-option = These are missing: { $arguments }
# $argument (Text)
# $other (Text)
help-conflict = { $argument } does not go together with { $other }.
# $argument (Text)
help-no-value = { $argument } needs a value.
# $argument (Text)
help-twice = { $argument } stands twice.
# $names (Text)
help-did-you-mean = Did you mean { $names }?
help-more = For more, type --help.
# $known (Text): languages, with commas
help-no-such-language = no words of it are here: use { $known }
help-us-or-metric = it is us or metric
help-contact-like = write it like mailto:trees@example.org or https://example.org/mistakes
help-origin-like = write it like https://trees.example.org; the path goes into --base
help-path-like = it begins and ends with a slash and has only letters, digits, . _ ~ - between slashes, as in /trees/
