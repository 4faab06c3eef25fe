### What the tree could hit.

# Reach, when nothing stops.
reach-keep-clear = Keep clear
# Reach.
reach-twin-reach = The reach drawing as a table
# Reach.
reach-head-reach-what = What
reach-head-reach-us = US
reach-head-reach-metric = Metric
reach-head-reach-what-it-means = What it means
# Rows of the reach table.
reach-row-height = Height used
# The row of the first zone.
reach-row-land = Can land
# The row of the second zone.
reach-row-throw = Can throw wood
# The row of the third zone.
reach-row-people = Bystanders out while you work
# What counts, in the question of the reach.
reach-counts = building, road, path, power line, property line or neighbour's tree
# A kind of thing with its article.
# $of (TargetKind)
reach-target =
    .building = a building
    .road = a road
    .path = a path
    .line = a power or phone line
    .property-line = a property line or neighbour's tree
    .fence = a fence or field
    .keep-tree = a tree to keep
# A kind of thing on a label.
# $of (TargetKind)
reach-target-short =
    .building = building
    .road = road
    .path = path
    .line = line
    .property-line = property line
    .fence = fence
    .keep-tree = tree to keep
# A sign on the tree.
# $of (Sign)
reach-sign =
    .cavity = a cavity
    .cracks = cracks
    .conks = fungus at the base
    .hung-limbs = hung limbs
    .lean-toward = a lean toward a target
    .lean-away = a lean away
    .dead-top = a dead top
    .vines = vines into the crown
# The heading's question of a stop: why it holds.
# $of (Why)
reach-why =
    .line-within = a line is inside the reach
    .line-no-distance = a line within reach, distance not known
    .weak-tree = the tree is weak, and something is near
    .can-land = it can land on what stands there
    .too-steep = the ground is very steep
    .in-zone = it can throw wood that far
    .small-stem = a small stem: leave nothing standing
    .trail-tree = a small tree beside a path that can be closed
    .distance-unknown = a distance is not known
    .line-open = the line question is open
    .list-open = what stands near is not said
    .height-unknown = the height is not known
    .people-out = it may stand; people out while you work
    .nothing = nothing that counts is near
# Why the ground of a dead tree is wider than that of the work, and for how long.
# $zone (Length)
reach-from-today = From that day on, for years, no path, seat, camp or parking within { $zone }: a dead tree falls on no known day, breaks, and throws wood farther than its height.
# The same for a tree that is left.
reach-from-now = The zone counts now.
# In the first zone.
reach-can-land = can land here
# In the second.
reach-can-throw = can throw wood
# In the third.
reach-people-out = keep people out
# Key of the three zones.
reach-key-land = it can land here
# The key of the second zone.
reach-key-throw = it can throw wood
# The key of the third zone.
reach-key-people = keep people out while anyone works
# Ways to measure a height.
reach-height-aid = Three ways: the length of its shadow against that of a stick; two angles and a distance; a stick held upright at arm's length.
# Who works there, and how.
reach-crew = Who works there wears a helmet, stays 15 ft (4.6 m) from the next, and is alone under a crown.

# A kind of thing, known.
# $of (TargetKind)
reach-the-target =
    .building = the building
    .road = the road
    .path = the path
    .line = the line
    .property-line = the property line
    .fence = the fence
    .keep-tree = the tree to keep

## What a thing comes to, in a table
reach-judged-damage = may be damaged
reach-judged-outside = outside the reach
reach-judged-clear = beyond 2 heights
reach-judged-people-out = outside the reach; close it while working
reach-judged-not-checked = not checked
reach-judged-inside = inside: nothing may be left standing
reach-judged-professional = inside: a professional's tree
reach-judged-line = inside: call the line's owner

## What lies near, in a sentence
## $out (Length): two heights
## $zone (Length)
reach-line-open = Whether an overhead line is within { $out } is not answered yet. Until it is, do not start.
reach-not-checked = What stands within { $out } is not checked yet. Until it is, do not start.
# $target (Phrase): reach-the-target
# $distance (Length)
reach-outside = { $target } is { $distance } away, outside the { $zone } in which this tree could throw wood.
# $target (Phrase): reach-the-target
# $distance (Length)
reach-at-the-end = { $target } is { $distance } away, at the end of the { $zone } in which this tree could throw wood.
reach-close-it = Close it while you work.
reach-keep-people-away = Keep people away from it while you work.
# $target (Phrase): reach-the-target
# $distance (Length)
reach-inside = { $target } is { $distance } away, inside the { $zone } in which this tree could throw wood. Leave nothing standing.
# $target (Phrase): reach-the-target
# $distance (Length)
reach-farther = { $target } is { $distance } away, farther than that.
reach-none-said = You said that no { reach-counts } stands within { $out }. This answer relies on it.
reach-only-if-none = This holds only if no { reach-counts } stands within { $out }.
# $within (Length)
reach-bystanders = Keep bystanders { $within } away while you work.
reach-throws = It can throw wood as far as { $zone }.
# $target (Text): with the group's name for it, or reach-target
reach-may-damage = { $target } may be damaged.
# $target (Phrase): reach-target
# $distance (Length)
reach-away = { $target } is { $distance } away
# $target (Phrase): reach-target
reach-near-unknown = { $target } is near, and how far is not known
# $target (Phrase): reach-the-target
# $distance (Length)
reach-target-said = { $target }, { $distance }
# $target (Phrase): reach-the-target
reach-target-unknown = { $target }, distance not known

## The drawing
# $targets (Count)
reach-caption = { $targets ->
    [0] Side view over plan, one scale.
    [1] Side view over plan, one scale. Dotted: where it may stand.
   *[other] Side view over plan, one scale. Dotted: where each may stand.
}
reach-one-height-label = 1 height
reach-one-and-a-half-label = 1½ heights
reach-two-heights-label = 2 heights
# $height (Length)
reach-height-used-label = { $height }, the height used
# $height (Length)
reach-height-used-short-label = { $height } used
# For those who do not see it; what stands near follows.
# $used (Length)
# $zone (Length)
reach-aria = Height used { $used }, reach { $zone }
# A height that was not measured.
reach-measure-height = Measure the height from the ground: the estimate is a tall one.
