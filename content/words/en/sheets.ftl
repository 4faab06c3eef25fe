### Sheets on paper for a season: the cover, crew sheets, tags. Letters are ten points, so words are few.

## Every sheet
# $list (Text): the name of the list's file
# $day (Text)
sheets-made = From { $list }, planned on { $day }.
# From Monday on.
sheets-week-days = Monday Tuesday Wednesday Thursday Friday Saturday Sunday
sheets-call = Call:
# Nobody is named: lines to fill in.
sheets-call-blank = crew lead ____________ · owner ____________ · emergency ____________
sheets-call-line = a power line: its owner; go no nearer
# Waist to chest (common practice, no source).
sheets-up-us = 3 to 4½ ft
sheets-up-metric = 0.9 to 1.4 m
sheets-no-tags = No tree is ringed in this plan.
# $cautions (Text): in two or three words each
sheets-mind-too = Mind too: { $cautions }.
# $tags (Text)
# $more (Number)
sheets-and-more = { $tags } and { $more } more

## Crew sheets
sheets-crew-title = Crew sheets
# $team (Number)
# $teams (Number)
# $sheet (Number)
# $sheets (Number)
sheets-crew-of = crew { $team } of { $teams }, sheet { $sheet } of { $sheets }
# $people (Number)
# $hours (Text)
# $get_ready (Text)
# $trees (Number)
# $minutes (Text)
# $walk (Text)
sheets-people = People: { $people }, { $hours } h of work each, after { $get_ready } min to get ready. On this sheet: { $trees }, { $minutes } person-minutes, { $walk } of them walking.
sheets-first = At each tree, first:
sheets-list-says = The list says:
# $tag (Text)
# $note (Text)
sheets-note-of = { $tag }: “{ $note }”.
sheets-look = look up and all round. Any wire, path, road, building or boundary within the distance beside “Looked”? Do not ring: leave it, say so. Tick “Looked” if there is none. Others stay out to “People off”. “Patch”: a patch as big as your hand peels. “Round”: bare all round.
sheets-today = Today:
sheets-keep-out = Keep out from under trees that are dead or were ringed before:
sheets-not-here = Not on this sheet:
sheets-not-professional = a professional
sheets-not-known = not known yet
sheets-not-other = another method, or left alone
sheets-not-fixed = to fix in the list
sheets-steps = Ring:
sheets-six-steps = 1 branches and shoots off below it · 2 open a patch: if it tears, stop · 3 score two level lines, through the bark only · 4 peel all round · 5 scrape, leave bare · 6 walk round: no bark bridges it. A wider ring holds better; never narrower than printed.
# $unit (Text)
# $distance (Text)
# $by (Text)
# $day (Text)
sheets-nothing-within = { $unit }, nothing within { $distance }: said by { $by }, { $day }. Nobody checked it for each tree: look.
sheets-not-said = somebody who did not give a name
# A visit after the ring.
sheets-look-again = scrape the ring, open bridges again

## Heads of tables
sheets-head-done = Done
sheets-head-tag = Tag
sheets-head-tree = Tree
sheets-head-across = Across
sheets-head-ring = Ring
sheets-head-up = Up
sheets-head-people-off = People off
sheets-head-looked = Looked
sheets-head-patch = Patch
sheets-head-round = Round
sheets-head-minutes = Min
sheets-head-note = Note
sheets-head-look-again = Look again
sheets-head-day = Day
sheets-head-rings = Rings
sheets-head-visits = Looks again
sheets-head-hours = Person-hours

## Tags
sheets-tags-title = Tags
# $width (Text)
sheets-tag-ring = Ring { $width }
sheets-tag-ringed-on = Ringed __________ by ______
# $zone (Text)
sheets-tag-keep = Standing dead tree: keep { $zone } away

## The cover
sheets-cover-title = A season's rings
sheets-cover-days = Days
sheets-cover-call = Whom to call
sheets-cover-cautions = Cautions
# $days (Number)
# $hours (Text)
sheets-more-days = Further work days: { $days }, with { $hours } person-hours.
# $now (Text)
# $later (Text)
sheets-hours = This season: { $now } person-hours. Looks again in the two years after: { $later } person-hours, on days that nobody agreed to yet.
