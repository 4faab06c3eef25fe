### Cautions: titles, who decides, and each in two or three words for the line that it is folded under.

cautions-title = Cautions
# In a stop.
cautions-who-decides-here = Who decides here
# The same folded, with all cautions.
cautions-and-who = Cautions, and who decides
# $who (Phrase)
cautions-decides = Who decides: { $who }.
# Where the law's words are not told.
# $who (Phrase)
cautions-decides-ask = Who decides: { $who }. Ask there.
# A caution from the trade or from memory.
cautions-no-source = No source: from the trade, or from memory.

## In two or three words
cautions-hz1 = within one height
cautions-hz2 = within one and a half
cautions-hz3 = people out
cautions-hz4 = downhill
cautions-hz5 = falling limbs, for years
cautions-hz6 = bark only, no wood
cautions-hz7 = weak points
cautions-hz8 = wind, ice, wet ground
cautions-hz9 = several trees
cautions-pl1 = a line in reach
cautions-pl2 = near a line
cautions-pl4 = buried lines
cautions-ed1 = chain saws
cautions-ed2 = edged tools
cautions-ed4 = looking up
cautions-tx2 = its sap
cautions-tx3 = its sap and smoke
cautions-tx4 = manchineel
cautions-tx5 = its bark and leaves
cautions-tx6 = its sap and dust
cautions-tx7 = its dust
cautions-th1 = thorns
cautions-lw1 = whose tree
cautions-lw4 = the label
cautions-lw5 = nests
cautions-lw6 = bats
cautions-lw8 = preservation orders
cautions-lw9 = felling licences
cautions-lw10 = bats and roosts
cautions-st1 = too many at once
cautions-st2 = slopes and banks
cautions-st3 = enough snags
cautions-st4 = patches
cautions-dz1 = oak wilt
cautions-dz2 = the ash borer
cautions-dz3 = elm disease
cautions-dz4 = pine beetles
cautions-dz5 = laurel wilt
cautions-dz6 = lanternfly eggs
cautions-dz7 = livestock
cautions-dz8 = spruce beetles
cautions-pl3 = a branch on a line
cautions-ed3 = working alone
cautions-ed5 = ladders and climbing
cautions-ed6 = heat
cautions-ed7 = ticks
cautions-tx1 = poison ivy and its kin
cautions-lw2 = town and neighbourhood rules
cautions-lw3 = water and wetland edges
cautions-lw7 = moving wood
cautions-lw11 = native and listed trees
cautions-lw12 = public land and easements
cautions-lw13 = woods, forests, native vegetation
