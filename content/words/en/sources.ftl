### The page of sources: what each is used for, which part of it was read, how far it is trusted.

# What sources are used for, by their group in the table.
# $of (Key)
sources-group =
    .response = What a tree does after a ring
    .practice = How a ring is cut, and other methods
    .timing = When the bark slips
    .allometry = Height, crown and bark
    .effort = How long the work takes
    .habitat_safety = Wildlife, falling wood and distances
    .identification = Is it this tree?
    .natives = Where trees are native
    .law = Laws
    .oak_wilt = Oak wilt
    .ash_borer = Ash borers
    .disease = Other diseases and pests
    .terms = Words and names in Spanish
# Which part was read, as a sentence.
# $of (Key)
sources-read =
    .page = One page of it was read.
    .abstract = Its abstract was read.
    .opening = Its opening was read.
    .introduction = Its introduction was read.
    .title_page = Its title page was read.
    .quoted = It was read where another document quotes it.
    .whole = All of it was read.
    .part = A part of it was read.
    .data = Its data were read.
    .none = None of it was read.
    .not_noted = Which part was read is not noted.
# $grade (Phrase)
sources-best = A number from it is at best { $grade }.
# $by (Text)
sources-superseded = Superseded by { $by }.
# A group of sources in the contents of the page.
# $group (Phrase)
# $count (Count)
sources-of = { $group } ({ $count })
