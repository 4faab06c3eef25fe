### Visits: what to look at and what to do at one.

# What is seen.
# $of (Seen)
visits-seen =
    .bridge = Bark bridging the ring
    .sprouts = Sprouts below the ring
    .suckers = Suckers from the roots
    .crown-full = A full crown
    .crown-thin = A thin crown
    .crown-bare = A bare crown in leaf season
    .decay = Fungus, or limbs on the ground
    .nothing = Nothing of all this
# What to do now.
# $of (Act)
visits-act-now =
    .keep-out = keep out from under it
    .reopen-bridge = cut the bridge out and scrape
    .take-sprouts = take the sprouts off
    .take-suckers = cut the suckers off, and go on for years
    .ring-again = ring it again, wider
    .wait = wait
# How the ring stands.
# $of (RingJudged)
visits-ring-judged =
    .too-soon = too soon to tell
    .working = it works
    .failed = it failed
    .dead = dead above the ring
    .look-at-crown = the crown tells: full, thin or bare?
# Why there is no advice.
# $of (NoAdvice)
visits-no-advice =
    .before-the-ring = The visit is before the ring. Check both days.
    .contradiction = These can't both be. Tick what you see, and only that.
    .no-such-visit = The list has no visit of that number. Pick one of it, or give a day.
    .stopped = Do nothing to it at a visit: settle first what is said here, and keep out from under it.
    .no-ring = No ring is advised here. Give the day on which it was ringed.
# At a visit, folded.
visits-at-a-visit = At a visit: what you see, and what to do
# Its heads.
visits-head-visit-you-see = You see
visits-head-visit-do-now = Do now
visits-head-visit-at-first = At first
visits-head-visit-in-season-3 = In season 3
# The choice at a visit, folded.
visits-visit-now = You are at a visit: tell what you see
# When the visit is.
visits-visit-when = Which visit is it?
# Today, as a choice.
visits-visit-today = Today
# The crown, as a choice.
visits-visit-crown = The crown
# Nothing was said of the crown.
visits-visit-no-crown = Not looked at
# The rest, as a choice.
visits-visit-seen = Tick what else you see
# Before the advice.
visits-visit-advice = At this visit:
# Visits.
visits-then-check = Then check
# At the work day of another method.
visits-work-short = work
# At the ring in the visits drawing.
visits-ring-short = ring
## What to look for at a visit, and what to do
visits-recheck-ring = Is the ring open all the way round? Bark bridging it: cut it out and scrape again.
visits-wilt = Do leaves wilt all round? None yet is no failure. Keep people out.
visits-first-look = Is anything coming back, from the stump or the roots? Take it off.
visits-look-ring = Crown full, thin or bare? New bark across: cut it out. It does not sprout.
visits-look = A look is enough: it does not sprout. Pull its seedlings while they are small.
visits-end-of-season-ring = Bark bridging: cut it out. Sprouts below the ring: take them off. A full crown is no failure yet.
visits-end-of-season = Crown full, thin or bare? Sprouts: tell who treated it.
visits-sprouts-ring = Sprouts below the ring, suckers from the roots: take them off. Crown full, thin or bare? New bark across: cut it out.
visits-sprouts-herbicide = Sprouts and suckers: tell who treated it, or cut them off.
visits-sprouts-pulled = Sprouts from roots that stayed in the ground: pull them.
visits-sprouts-cut = Sprouts from the stump, suckers from the roots: cut them again.
visits-yearly = Once a year until two clean years in a row, and after storms. Look up before you go near.

## The list and its calendar
# The title of an event.
# $tree (Text)
# $size (Length)
visits-calendar-title = Check the { $tree }, { $size }
visits-judge = Do not call it dead before the second autumn.
visits-judge-larch = Do not call it dead before it should have leafed out again.
# Inside a sentence, and behind a heading.
# $visits (Small)
# $years (Small)
visits-count = { $visits ->
    [one] { $years ->
        [one] { $visits } visit in { $years } year
       *[other] { $visits } visit in { $years } years
    }
   *[other] { $years ->
        [one] { $visits } visits in { $years } year
       *[other] { $visits } visits in { $years } years
    }
}

## The advice at a visit
# $ringed (Date)
visits-before-the-ring = The ring is of { $ringed }. The visit is before the ring. Check both days.
# $acts (Phrase): what to do now, a semicolon between
# $day (Text)
# $judged (Phrase): how the ring stands
visits-advice-said = { $acts }. On { $day }: { $judged }.
# $back (Date)
visits-come-back = Come back by { $back }.
visits-none-left = No visit is left on the list.
