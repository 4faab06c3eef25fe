### Methods, their levels, who may do them, why they stand where they do, and their steps.

# Nine rows.
method-methods = Methods
# Methods.
method-head-methods-method = Method
method-head-methods-how-it-stands-and = How it stands, and why
# A method's name, as a row of a table.
# $of (Method)
method-method =
    .bark-ring = bark ring
    .saw-ring = saw ring
    .frill = frill: cuts with herbicide
    .basal-bark = basal bark: herbicide on the bark
    .cut-stump = cut stump: herbicide on the stump
    .pull-or-dig = pull or dig
    .fell = fell
    .repeat-cutting = repeat cutting
    .leave-it = leave it
# What to do, in the sentence "Use another method: …".
# $of (Method)
method-act =
    .bark-ring = ring its bark
    .saw-ring = saw a ring
    .frill = frill, cuts with herbicide
    .basal-bark = herbicide on the bark at the base
    .cut-stump = cut it, with herbicide on the stump
    .pull-or-dig = pull or dig it out
    .fell = fell it
    .repeat-cutting = cut it again and again
    .leave-it = leave it as it is
# How a method stands.
# $of (Level)
method-level =
    .recommended = recommended
    .possible = possible
    .not-advised = not advised
    .ruled-out = ruled out
# When a method works, apart from law.
# $of (Method)
method-months =
    .bark-ring = while the bark slips
    .saw-ring = any month; slower to kill than a peeled ring
    .frill = most of the year, best autumn to winter; not in heavy spring sap flow
    .basal-bark = any month; not on wet, frozen or snow-covered bark
    .cut-stump = at once after the cut; not in early-spring sap flow
    .pull-or-dig = when the soil is moist
    .fell = any month
    .repeat-cutting = each time that sprouts are back
    .leave-it = any day
# Herbicide in tree-of-heaven has its own.
method-months-heaven = 15 July to 15 October, then it stands for at least 30 days
method-months-heaven-south = 15 January to 15 April, then it stands for at least 30 days
# A dead tree has nothing to ring.
method-no-ring-dead = There is nothing to ring: the bark is dead.

# Why a row of the table of methods lowers a method, as a clause.
# $of (Key): the row
method-rule =
    .always = the tree stays
    .always_saw = cut wood costs holding strength
    .always_cut = it takes years of coming back
    .always_fell = felling costs far more than a ring, and leaves nothing standing
    .over_6 = a stump over 6 in (15 cm) means felling first
    .no_ring_to_cut = palms and bamboo are not built like a tree, and have no bark ring
    .line = a line is within reach
    .professional = the tree could hit what stands near
    .line_open = whether a line is within reach is not known
    .inside_herbicide = nothing may be left standing near what it could hit
    .inside_heaven_over_6 = nothing may be left standing near what it could hit
    .inside_heaven = so near it is cut down dead, 30 days later, by someone trained to fell
    .inside = nothing may be left standing near what it could hit
    .inside_over_6_cut = over 6 in (15 cm) so near, it must come down at once
    .inside_over_6 = felling over 6 in (15 cm) so near is professional work
    .hollow_alone = a hollow tree is habitat already, and no place to work under
    .followup = a cut into the wood brings more sprouts or bridges
    .followup_saw_tried = a saw ring was tried with some success
    .conditional = cuts with herbicide are less sure on this kind
    .conditional_saw = a cut into the wood brings more sprouts or suckers
    .clone_not_known = it works if every stem of the clone is ringed, and that is not said
    .sprouts_below = it sprouts from below the ring, and a ring alone seldom ends it
    .clone_not_whole = part of the clone would be left, and feeds the rest
    .suitable_clone = it works if every stem of the clone is ringed
    .suitable_clone_not_whole = part of the clone would be left, and feeds the rest
    .suitable_clone_other = wounding one stem of a clone makes the rest sucker
    .not_alone = a ring alone leads to sprouts or suckers
    .not_alone_guided = sprouts must be cut 3 times a year for 3 years
    .not_alone_saw = a cut into the wood brings more sprouts
    .not_alone_saw_tried = a saw ring was tried with some success
    .suckers = felling it brings suckers from the roots
    .suckers_base = roots that stay in the ground sucker
    .suckers_cut = cutting alone brings more stems from the roots
    .crown_fell = felled, it sprouts from the crown
    .stem_spared = herbicide passes through shared roots into the stem that you keep
    .deep_cut_resprouts = a cut too deep makes it sprout from the base
    .unknown_species = its name is open, and decides most of what follows
    .unknown_species_against = its name is open, and a ring may not suit it
    .ring_doubted = trials of a ring on this kind disagree
    .hickory_saw_ring = it grows over a cut
    .oak_saw_ring = an oak is cut into the wood only from November to February, outside its oak-wilt months
    .oak_saw_ring_winter = in winter oaks are ringed by saw in thinning
    .thin_shrub = its stems are too many or too thin to ring
    .under_1 = under 1 in (2.5 cm) it is too small to ring
    .of-1_to_2_5 = up to 2½ in (6.4 cm) it is hardly worth a ring
    .of-1_to_2 = under 2 in (5 cm) it is too thin for cuts
    .conifer_under_6 = under 6 in (15 cm) it makes no snag; cut it below the lowest branch
    .sprouter_under_6_fell = under 6 in (15 cm) it sprouts from the stump
    .sprouter_under_6 = under 6 in (15 cm) it sprouts and must be cut again
    .of-10_and_over_small = at 10 in (25 cm) and over it is too large for that
    .of-10_and_over = at 10 in (25 cm) and over, felling is professional work
    .base_too_thick = its base is too thick for a lever
    .dig_shrub = a shrub this thick is dug, not pulled
    .basal_over_4 = herbicide on the bark works best up to 4 in (10 cm)
    .basal_over_6 = herbicide on the bark is not for stems over 6 in (15 cm)
    .stump_under_half = under ½ in (1.3 cm) it is unreliable
    .conifer = it does not sprout, so there is no need
    .oak_wilt_months = beetles carry oak wilt to fresh wounds in these months
    .oak_wilt_near = oak wilt is near, and these are its months: ask whether it has arrived
    .ash_borer = a ringed ash draws the ash borer
    .american_elm = a dying elm in its bark breeds the beetles of elm disease
    .pines_near = a dying pine breeds beetles that move to living pines
    .bark_not_slipping = the bark does not slip on that day
    .sap_flow = spring sap flow washes herbicide out
    .heaven_out_of_season = herbicide suits this tree from 15 July to 15 October
    .heaven_stump = cutting it first makes it sucker
    .no_herbicide = you said no herbicide
    .kill_only = you want it dead
    .group_months = this group cuts no ring in these months
    .group_size = this group leaves a tree so thick to a professional
    .dead = it is dead already
    .dead_nothing_near = it is dead, and nothing stands near that it could hit

## Steps of other methods
method-step-ask-professional-say = Ask a professional, and say what you told us here.
method-step-say-what-you = Say what you want left: a tall stump or log on the ground feeds wildlife too.
method-step-cut-every-branch = Cut every branch and green shoot below the cut.
method-step-saw-one-level = Saw one level line all the way round, through the bark and ¾ in (2 cm) into the wood; 2 in (5 cm) at most.
method-step-expect-to-die = Expect it to die a season later than a peeled ring, and to need a second ring more often.
method-step-tree-with-cut = A tree with cut wood is weaker there. Keep people out from under it.
method-step-ask-licensed-applicator = Ask a licensed applicator, unless you are one.
method-step-product-label-decides = The product label decides place, season and amount. We give no rates.
method-step-cuts-go-round = Cuts go round the stem, waist high or lower, and are treated at once.
method-step-lowest-part-stem = The lowest part of the stem is treated all the way round, on dry bark.
method-step-cut-low-level = Cut low and level.
method-step-stump-treated-once = The stump is treated at once, by a licensed applicator or as the label says. We give no rates.
method-step-keep-wood-where = Keep wood where it falls.
method-step-wait-for-moist = Wait for moist soil.
method-step-have-buried-lines = Have buried lines located before you break ground.
method-step-loosen-root-crown = Loosen the root crown, pull or lever it out with its main roots.
method-step-shake-off-soil = Shake off the soil, hang the roots up to dry, press the soil back.
method-step-walk-all-round = Walk all round, look up, and clear two ways out.
method-step-keep-everyone-two = Keep everyone two tree lengths away.
method-step-cut-below-lowest = Cut it below the lowest live branch, or low where it sprouts.
method-step-felling-needs-training = Felling needs training: if in doubt, ask a professional.
method-step-cut-low-below = Cut it low, below the lowest live branch.
method-step-cut-sprouts-each = Cut the sprouts each time that they are back: 3 times a year or more.
method-step-go-on-for = Go on for 3 years or more, until nothing comes.
method-step-leave-standing-snag = Leave it standing: it is a snag already.
method-step-keep-people-out = Keep people out from under it, and look at it once a year and after storms.
method-step-do-nothing = Do nothing to it.
method-step-do-nothing-to = Do nothing to it, and stay out from under it.
method-step-look-once-year = Look at it once a year and after storms.

## Who may do it
method-with-herbicide = With herbicide, by a licensed applicator
method-without-herbicide = Without herbicide
method-who-professional-applicator = a professional with a licensed applicator
method-who-professional = a professional
method-who-you-as-label = you, as the product label says
method-who-applicator = a licensed applicator
method-who-you = you
method-who-trained = someone trained to fell
method-who-trained-applicator = someone trained to fell, with a licensed applicator
# $who (Phrase)
method-by-behind = (by { $who })
method-label-governs = (the product label governs)
# $who (Phrase)
method-who-does-it = Who may do it: { $who }.

## A row of the table
# $method (Phrase): method-method, its first letter large
method-this-one = { $method } (this answer)
# $level (Phrase): method-level, its first letter large
# $who (Phrase)
method-stands-by = { $level }, by { $who }.
# Inside the table.
# $of (Method)
method-leaves =
    .bark-ring = Leaves a standing dead tree.
    .saw-ring = Leaves a standing dead tree, weaker at the cut.
    .frill = Leaves a standing dead tree.
    .basal-bark = Leaves a standing dead tree.
    .cut-stump = Leaves a stump and wood on the ground.
    .pull-or-dig = Leaves a hole, nothing standing.
    .fell = Leaves a stump and wood on the ground.
    .repeat-cutting = Leaves a low stump that weakens.
    .leave-it = Leaves the tree as it is.
# $source (Node)
method-city-cost = A city paid about 80 times as much to take a street elm down as to ring one ({ $source }).
method-no-minutes = No minutes.
method-no-number = Minutes: no number found, now or over three years.
# $now (Phrase)
# $years (Phrase)
method-work = Minutes now: { $now }; over three years: { $years }.
# $now (Phrase)
# $of (Text): as printed
# $years (Phrase)
method-work-as = Minutes now: { $now }, as timed for { $of }; over three years: { $years }.
method-nothing-comes-back = nothing comes back
method-no-number-found = no number found
# $minutes (Phrase)
# $visits (Small)
method-with-visits = { $minutes } with { $visits } visits
# $likely (Text)
# $range (Text)
method-about-range = about { $likely } ({ $range })
# $minutes (Text)
method-about = about { $minutes }

## What the work must keep to
method-peel-or-october = Take the wood away or peel it within three weeks, or wait for October: fresh pine breeds beetles that move to living pines.
method-peel-or-april = Take the wood away or peel it within three weeks, or wait for April: fresh pine breeds beetles that move to living pines.
method-bark-off = Take its bark off or have it chipped within three weeks: fresh elm breeds the beetles of elm disease.
method-trained-to-fell = Only someone trained to fell cuts it down.
method-path-closed = Close the path, and have it watched for the hour.
method-cut-down-dead = Have it cut down dead, 30 days later, by someone trained to fell: here nothing may stay standing.
method-dead-ash = Dead ash is brittle: have it felled soon, or keep everybody out from under it.
method-sprouts-three-times = Cut its sprouts three times a season.
