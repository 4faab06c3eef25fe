### What the dead tree offers, and how long it may stand.

# A durability class.
# $of (Durability)
habitat-durability =
    .a = longest-lasting wood
    .b = long-lasting wood
    .c = middling wood
    .d = short-lived wood
# What a snag does not do.
habitat-not-good-for = A dying tree can shed limbs before it looks dead. Keep paths, seats and camps away.
# Snags an acre, folded.
habitat-snag-guides = How many such trees an acre? What guidelines ask for
# Its heads.
habitat-head-guides-whose = Whose
habitat-head-guides-snags-an-acre = Snags an acre
habitat-head-guides-source = Source
# How each animal uses a tree, folded.
habitat-users-how = How each of them uses a dead tree
# Habitat.
habitat-leaves = What it leaves

## What it leaves
# $size (Length)
habitat-feeding-only = Feeding wood, no cavities: { $size } is under the 6 in (15 cm) at which the smallest cavity nesters begin.
# $size (Length)
habitat-give-the-state = Thick enough for cavities at { $size }. Give the state, and the animals that may use it stand here.
# $size (Length)
habitat-no-user = At { $size } no cavity nester of the table reaches its size here; it is still feeding wood.
# $users (Small)
habitat-users = { $users ->
    [one] { $users } cavity user of this region may use a tree of this size.
   *[other] { $users } cavity users of this region may use a tree of this size.
}
# $low (Years)
# $high (Years)
# $likely (Years)
habitat-standing = Half of such trees are down { $low } to { $high } years after death, typically { $likely }. Death comes 1 to 3 years after the ring. Our own assumption.
# In the drawing.
# $years (Years)
habitat-years-label = { $years } years
# $whose (Text): as printed
# $snags (Text): as printed
habitat-guide = { $whose }: { $snags } snags an acre.
