### The line under the title of each folded part: its key number, true without opening it, 75 characters at most.

## Titles that only folds have
lines-sure = How sure, what changes it
# In a stop.
lines-for-professional = Numbers for the professional
# In a stop at a line.
lines-for-line-owner = For the owner’s people
# Do, where the answer waits.
lines-do-then = Do, on the day
# The cautions that are not in view.
lines-check-too = Check these too
# Under the plan behind an open question.
lines-only-then = Then, and only then, there is a plan. Not this tree’s answer.
# What to hold against the other outcome.
lines-otherwise = Otherwise
# The plan behind an open question.
# $conditions (Phrase): `lines-if-…`
lines-if = If { $conditions }
# $within (Length)
lines-if-nothing = nothing stands within { $within }
# $within (Length)
lines-if-no-line = no line is within { $within }
# $height (Length)
lines-if-under = it is under { $height } tall
lines-if-clone = its whole clone can be ringed
lines-if-no-wilt = oak wilt is not there
lines-if-suits = a ring suits its kind

## When
# $days (Phrase): a stretch
# $spread (Phrase)
lines-best-spread = Best { $days }, give or take { $spread }.
# $days (Phrase)
lines-best = Best { $days }.
# The stretch for a ring, where another method leads.
# $days (Phrase)
lines-ring-days = For a ring: { $days }.
# $days (Phrase)
lines-next = Next good days: { $days }.
# A sentence from a clause.
# $clause (Phrase): the start of a sentence
lines-sentence = { $clause }.
# $days (Text)
lines-days = { $days } days
# $weeks (Text)
lines-weeks = { $weeks } weeks

## Keep clear
# $out (Length)
# $zone (Length)
lines-keep = People { $out } off while you work; it can throw wood { $zone }.
# $zone (Length)
lines-throws = It can throw wood { $zone }.

## How long
# $now (Phrase): the start of a sentence
# $whole (Text): minutes
# $visits (Small)
lines-long = { $now }; about { $whole } with { $visits ->
    [one] one visit
   *[other] { $visits } visits
}.
# $now (Phrase)
# $whole (Text): hours
# $visits (Small)
lines-long-hours = { $now }; about { $whole } hours with { $visits ->
    [one] one visit
   *[other] { $visits } visits
}.
# Where nobody timed the method that leads.
# $now (Phrase): minutes
lines-ring-work = Not timed. For a ring: { $now }.
# $likely (Text)
# $range (Phrase)
lines-work = About { $likely } minutes ({ $range }).
# $range (Phrase)
lines-work-range = { $range } minutes.

## Then check
# $days (Phrase)
lines-one-look = One look, { $days }.
# $days (Phrase)
# $more (Count)
# $year (Count)
lines-looks = First look { $days }, then { $more ->
    [one] one visit
   *[other] { $more } visits
} to { $year }.

## What it leaves
# $low (Years)
# $high (Years)
lines-leaves-holes = Big enough for holes. Half such snags fall { $low } to { $high } years after death.
# $low (Years)
# $high (Years)
lines-leaves-feeding = Feeding wood, no holes. Half such snags fall { $low } to { $high } years after death.

## Stem by stem
# $stem (Count): its number
# $ring (Length)
lines-stem-ring = { $stem }: ring { $ring }
# $stem (Count)
lines-stem-keep = { $stem }: leave alone
# $stem (Count)
# $method (Phrase): method-act
lines-stem-other = { $stem }: { $method }
# $stems (Phrase): those of the first stems
lines-stems-more = { $stems } …

## Methods
# $fit (Count)
# $all (Count)
lines-fit-none = { $fit } of { $all } fit.
# $fit (Count)
# $all (Count)
# $names (Phrase)
lines-fit = { $fit } of { $all } fit: { $names }.
# $fit (Count)
# $all (Count)
# $names (Phrase)
# $more (Count)
lines-fit-more = { $fit } of { $all } fit: { $names } and { $more } more.
# $of (Method)
lines-method =
    .bark-ring = bark ring
    .saw-ring = saw ring
    .frill = frill (licensed)
    .basal-bark = basal bark (licensed)
    .cut-stump = cut stump (licensed)
    .pull-or-dig = pull or dig
    .fell = fell
    .repeat-cutting = repeat cutting
    .leave-it = leave it

## Is it this tree?
lines-name-open = Its name is open: have it named before you kill it.
# $count (Count)
lines-alike = { $count ->
    [one] One looks alike.
   *[other] { $count } look alike.
}
# $count (Count)
# $names (Phrase)
lines-alike-native = { $count ->
    [one] One looks alike and is native: { $names }.
   *[other] { $count } look alike; native: { $names }.
}
# $count (Count)
# $native (Count)
lines-alike-count = { $count ->
    [one] One looks alike, { $native } native.
   *[other] { $count } look alike, { $native } of them native.
}

## How sure
# $change (Phrase): a sentence
lines-sure-measured = Height: measured. { $change }
# $change (Phrase): a sentence
lines-sure-like-trees = Height: like trees. { $change }
# $count (Count)
lines-changes = { $count ->
    [one] One change would turn it.
   *[other] { $count } changes would turn it.
}
lines-no-change = No single change near these values turns it.

## Working
# $steps (Count)
# $sources (Count)
# $assumed (Count)
lines-working = { $steps ->
    [one] 1 step
   *[other] { $steps } steps
}, { $sources ->
    [one] 1 source
   *[other] { $sources } sources
}, { $assumed ->
    [one] 1 assumed.
   *[other] { $assumed } assumed.
}

## Do, numbers for a professional, cautions
# $width (Length)
lines-do-ring = Ring { $width }, between 3 and 4½ ft (0.9 to 1.4 m) up.
# $height (Length)
# $zone (Length)
# $trunk (Length)
lines-professional = Reach { $height } and { $zone }, trunk { $trunk }.
# $count (Count)
# $names (Phrase)
lines-cautions = { $count }: { $names }.
# $count (Count)
# $names (Phrase)
lines-cautions-more = { $count }: { $names } …
