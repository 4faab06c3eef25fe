### The card: one sentence, what stands beside it, one caution, what can be done with it. The sentence has 52 characters
### at most where names and dates allow it, the line under it 70.

# The answer's own name, for those who listen.
card-the-answer = The answer
# The word on the tag.
# $of (Outcome)
card-tag =
    .do = Do
    .wait = Wait
    .other-method = Another way
    .professional = Stop
    .cannot-tell = Can’t tell
# What is spoken: the word on the tag, then the sentence.
# $tag (Phrase)
# $sentence (Phrase)
card-spoken = { $tag }. { $sentence }
# The name of the list of parts.
card-contents = On this page
# At the end of the answer, and behind it in the form.
card-back-to-answer = Back to the answer
# In front of the form, while it is open beside its answer.
card-skip-to-answer = Skip to the answer
card-print = Print
card-share = Share
card-copy = Copy
card-calendar = Calendar
# The place, the day and the crew stay.
card-next-tree = Next tree
# A blank box on paper.
card-tag-number = Tag no.
# What is never done in a stop.
card-no-work = Do not ring, cut or climb it.
# The same beside a line.
card-no-touch = Do not touch this tree.
card-call-line = Call the line’s owner
card-call-arborist = Call a qualified arborist

## The sentence
# $stems (Phrase): which are ringed
card-ring-stems = Ring { $stems }.
# $against (Phrase): `card-but-…`
card-may-ring = You may ring it, but { $against }.
# $day (Date)
card-ring-best = Ring this tree. On { $day } its bark slips.
# $day (Date)
card-ring-test = Ring it if a test patch peels on { $day }.
card-until-it-slips = Wait until its bark slips.
# $day (Date)
# $act (Phrase): `card-act-…`
card-wait-act = Wait until { $day }, then { $act }.
# $day (Date)
# $stems (Phrase)
card-wait-stems = Wait until { $day }, then ring { $stems }.
# $day (Date)
# $why (Phrase): a sentence without its stop
card-wait-why = Wait until { $day }. { $why }.
card-hollow = Leave it. A hollow tree is a home, and weak.
card-dead = Leave it. It is dead; a ring adds nothing.
# $act (Phrase): the start of a sentence
# $size (Length)
card-too-thin = { $act }. At { $size } it is too thin to ring.
# $act (Phrase)
# $size (Length)
card-no-snag = { $act }. At { $size } it makes no snag.
# $act (Phrase)
# $why (Phrase)
card-act-why = { $act }. { $why }.
# $act (Phrase)
card-act-alone = { $act }.
# $group (Text)
card-group-stops = { $group } leaves it to a professional.
card-line-stops = A line is in reach. Go no nearer; call its owner.
# $thing (Phrase)
# $far (Length)
card-weak-near = It is weak, and { $thing } is { $far } away.
card-weak = It is weak. Leave it to a professional.
# $thing (Phrase): the start of a sentence
# $far (Length)
card-steep = { $thing } is { $far } down a steep slope.
# $zone (Length)
# $thing (Phrase): the start of a sentence
# $far (Length)
card-throws = It can throw wood { $zone }. { $thing } is { $far } away.
# $height (Length)
# $thing (Phrase): the start of a sentence
# $far (Length)
card-reaches = It can reach { $height }. { $thing } is { $far } away.
card-stop = Leave this one to a professional.
# $question (Phrase): `card-open-…`
card-open = We can’t tell yet. { $question }
card-open-hit = What could it hit?
card-open-line = Is a line in reach?
card-open-height = Measure its height first.
card-open-state = Which state is it in?
card-open-clone = Can you ring every stem?
card-open-species = Which tree is it?

## What to do, behind "then", and at the start of a sentence
card-act-ring = ring it
card-act-saw = saw a ring
card-act-frill = frill it
card-act-frill-licensed = have it frilled
card-act-basal = treat its base
card-act-basal-licensed = have its base treated
card-act-stump = cut it, the stump treated
card-act-stump-pro = have it cut, the stump treated
card-act-pull = pull it out
card-act-fell = fell it
card-act-fell-pro = have it felled
card-act-repeat = cut it again and again
card-act-repeat-pro = have it cut, again and again
card-act-leave = leave it

## Why not, a short sentence without its stop
card-oaks-now = Oaks must not be cut now
card-group-now = The group rings none now
card-bark-tight = Its bark is tight now
card-bark-mostly-tight = Its bark is mostly tight
card-bark-slips = Its bark slips then
card-bark-binds = Its bark binds again now
card-bark-bound = Its bark is bound now
card-no-bark-ring = It has no bark ring to cut
card-line-near = A line is near
card-nothing-standing = Nothing may be left standing
card-oak-wilt-near = Oak wilt is near
card-ash-borer = A ringed ash draws the borer
card-elm-beetles = Its bark breeds elm beetles
card-pine-beetles = Its bark breeds pine beetles
card-name-open = Its name is open
card-herbicide-then = Herbicide suits it then
card-cut-first = Cut first, it suckers
card-sap = Rising sap washes it out
card-clone-rest = The rest of its clone feeds it
card-clone = The clone feeds it
card-reaches-other = Herbicide would reach the other
card-sprouts = A ring alone makes it sprout
card-dead-already = It is dead already
card-kills-more = It kills more than a ring
card-months-closed = Its slip months are closed
card-not-suited = A ring does not suit it

## What stands against a ring that is possible
card-but-trials = trials of it disagree
card-but-thin = so thin it hardly pays
card-but-snag = it makes no snag
card-but-clone = only with its whole clone
card-but-name = its name is open
card-but-oak-wilt = ask about oak wilt first
card-but-sprouts = it often sprouts
card-but-something = something speaks against it

## The line under the sentence
# $place (Phrase)
card-native = Native in { $place }. Is it this tree, and must it go?
# $land (Phrase)
card-parts-of = parts of { $land }
# $act (Phrase)
card-more-die = More would die: { $act }.
# $act (Phrase)
card-today = Today instead: { $act }.
# $act (Phrase)
card-today-peel = Today instead: { $act }, its wood away or peeled in 3 weeks.
card-today-leave = Until then leave it as it is.
# $act (Phrase)
card-without = Without herbicide: { $act }.
card-without-leave = Without herbicide: leave it as it is.
# Of a tree that a ring alone makes sprout.
card-without-ring = Without herbicide: ring its bark, then cut its sprouts for 3 years.
# Of a tree too thin to ring, says the sentence.
card-without-thin = Without herbicide: ring its bark all the same.
# $act (Phrase)
card-by-label = { $act } (the label governs)
# $act (Phrase)
card-by-licensed = { $act } (licensed)
# $act (Phrase)
card-by-professional = { $act } (a professional)
# $act (Phrase)
card-by-trained = { $act } (trained to fell)
# $act (Phrase)
card-by-trained-licensed = { $act } (trained to fell, licensed)

## The one caution: a bold ask, and its reason
card-live = Take every line as live.
card-live-why = Only the owner’s own people work near it.
card-pieces = Once ringed it falls in pieces,
# The same of a tree that is dead already.
card-pieces-dead = Dead, it falls in pieces,
card-pieces-why = for years, on no known day.
card-do-not-start = Do not start.
card-turns-on-it = The answer turns on it.
# $height (Length)
# $zone (Length)
card-do-not-start-why = It can reach { $height }, and throw wood { $zone }.
card-close-road = Close the road as you work.
card-close-path = Close the path as you work.
# $thing (Phrase): with its article
card-keep-from = Keep people from { $thing }.
# $far (Length)
# $out (Length)
card-lies-inside = At { $far } it lies inside { $out }.
card-no-ring-now = Do not ring it now.
card-no-ring-now-why = Tight bark tears, a strip stays, the tree may live.
card-no-wound-now = Do not wound it now.
card-no-wound-now-why = Beetles carry oak wilt to fresh wounds.
card-not-before = Wait for the day.
card-not-before-why = It decides how well this works.
card-no-cut-before = Do not cut it before.
card-no-cut-before-why = Its roots answer with suckers or sprouts.
card-felling = Felling needs training.
card-felling-why = If in doubt, ask a professional.
card-buried = Have buried lines marked first.
card-buried-why = You are about to open the ground.
card-test-first = Open a test patch first.
card-test-first-why = If it tears, stop: not today.
card-few-die = Fewer than half die.
# $share (Phrase): the start of a sentence
card-few-die-why = { $share } by the end of season 3.
card-stay-out = Stay out from under it.
card-stay-out-why = It sheds limbs on no known day.
card-look-up = Look up before you stand under it.
card-look-up-why = A living tree sheds limbs too.
card-label = The label is the law.
card-label-why = It decides product, amount and season.
card-yours = Make sure that it is yours.
card-yours-why = Check the boundary on the ground.

## A thing that it could hit
# $of (TargetKind)
card-thing =
    .building = a building
    .road = a road
    .path = a path
    .line = a line
    .property-line = a boundary
    .fence = a fence
    .keep-tree = a tree to keep

## The numbers that people carry: nine characters at most for a value, nineteen below it
card-n-ring = Ring, better
card-n-work = Work
card-n-days-left = Good days left
card-n-good-days = Good days
card-n-next = Next good day
card-n-people = Keep people
card-n-who = Who
card-n-best = Best when
card-n-reach = It can reach
card-n-trunk = Trunk
card-n-ask = Ask for
card-n-keep-out = Stay out
card-n-look = Look again
card-n-no-data = no data
card-n-by-nobody = nobody timed it
card-n-check = a check
card-n-in-writing = in writing
card-n-yearly = yearly
card-n-after-storms = and after storms
card-n-test = test
card-n-patch = a patch first
card-n-none = none
card-n-in-a-year = in a usual year
# $low (Text)
# $high (Text)
# $whole (Text)
card-n-in-all = { $low } to { $high }; in all { $whole }
# $day (Phrase)
card-n-until = to { $day }
# $other (Length)
# $least (Length)
card-n-least = { $other }, least { $least }
# $other (Length)
card-n-as-you-work = { $other }, at work
# $other (Length)
card-n-measured = { $other }, measured
# $other (Length)
card-n-estimated = { $other }, estimated
# $other (Length)
card-n-away = { $other } away
# $other (Length)
card-n-across = { $other } across
# $other (Length)
card-n-from-now = { $other }, from now on
# How far it reaches with the wood that it throws.
# $other (Length)
card-n-with-wood = { $other }, thrown wood
card-n-first-look = First look
# $of (Method)
card-n-best-when =
    .bark-ring = in season
    .saw-ring = any month
    .frill = autumn
    .basal-bark = dry bark
    .cut-stump = any month
    .pull-or-dig = wet soil
    .fell = any month
    .repeat-cutting = 3 a year
    .leave-it = any day
# $of (Method)
card-n-best-more =
    .bark-ring = while bark slips
    .saw-ring = slower than a peel
    .frill = not in sap flow
    .basal-bark = any month
    .cut-stump = not in sap flow
    .pull-or-dig = any month
    .fell = in still weather
    .repeat-cutting = for 3 years or more
    .leave-it = nothing to do
card-n-heaven = 15 July on
card-n-heaven-to = to 15 October
card-n-heaven-south = 15 Jan on
card-n-heaven-south-to = to 15 April
card-n-to-do = To do
card-n-nothing = nothing
card-n-lives-on = it lives on
card-n-you = You
card-n-trained = Trained
card-n-to-fell = to fell trees
card-n-arborist = Arborist
card-n-like-expert = or a like expert
card-n-by-label = as the label says
card-n-licensed = Licensed
card-n-applicator = applicator
# $of (Method)
card-n-tools =
    .bark-ring = with a bark spud
    .saw-ring = with a saw
    .frill = with a hatchet
    .basal-bark = with a sprayer
    .cut-stump = loppers or saw
    .pull-or-dig = lever or spade
    .fell = with a saw
    .repeat-cutting = loppers or saw
    .leave-it = with your eyes

## What is asked inside a card
# $within (Length)
card-ask-near = Nearest thing within { $within }?
# $within (Length)
card-ask-line = Any power or phone line within { $within }?
card-ask-height = How tall is it, measured?
card-ask-region = Which state or country?
card-ask-clone = Can you ring every stem of its clone?
card-ask-yes = Yes
card-ask-no = No
card-ask-cant-tell = Can’t tell
card-ask-finish = Finish the answer
card-ask-what = What is it?
card-ask-how-far = How far from the trunk?
card-ask-pick = Pick one
# $within (Length)
card-ask-nothing = Nothing within { $within }
card-ask-in-feet = in feet
card-ask-in-metres = in metres

## Over the card, once it is answered
# $tree (Phrase)
# $size (Length)
card-recap-tree = { $tree }, { $size }.
# $near (Phrase)
card-recap-near = { $near }.
# $near (Phrase)
card-recap-no-line = { $near }, no line near.
# $near (Phrase)
card-recap-line = { $near }, a line near.
# $near (Phrase)
card-recap-line-open = { $near }, line: can’t tell.
# $thing (Phrase)
# $far (Length)
card-recap-thing = { $thing } { $far }
# $thing (Phrase)
card-recap-thing-open = { $thing }, distance not given
card-recap-open = What it could hit: not given
# $place (Text)
card-recap-place = { $place }.
card-recap-change = Change
