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

# In two or three words.
# $of (Key): the id of the caution
cautions-short =
    .HZ1 = within one height
    .HZ2 = within one and a half
    .HZ3 = people out
    .HZ4 = downhill
    .HZ5 = falling limbs, for years
    .HZ6 = bark only, no wood
    .HZ7 = weak points
    .HZ8 = wind, ice, wet ground
    .HZ9 = several trees
    .PL1 = a line in reach
    .PL2 = near a line
    .PL4 = buried lines
    .ED1 = chain saws
    .ED2 = edged tools
    .ED4 = looking up
    .TX2 = its sap
    .TX3 = its sap and smoke
    .TX4 = manchineel
    .TX5 = its bark and leaves
    .TX6 = its sap and dust
    .TX7 = its dust
    .TH1 = thorns
    .LW1 = whose tree
    .LW4 = the label
    .LW5 = nests
    .LW6 = bats
    .LW8 = preservation orders
    .LW9 = felling licences
    .LW10 = bats and roosts
    .ST1 = too many at once
    .ST2 = slopes and banks
    .ST3 = enough snags
    .ST4 = patches
    .DZ1 = oak wilt
    .DZ2 = the ash borer
    .DZ3 = elm disease
    .DZ4 = pine beetles
    .DZ5 = laurel wilt
    .DZ6 = lanternfly eggs
    .DZ7 = livestock
    .DZ8 = spruce beetles
    .PL3 = a branch on a line
    .ED3 = working alone
    .ED5 = ladders and climbing
    .ED6 = heat
    .ED7 = ticks
    .TX1 = poison ivy and its kin
    .LW2 = town and neighbourhood rules
    .LW3 = water and wetland edges
    .LW7 = moving wood
    .LW11 = native and listed trees
    .LW12 = public land and easements
    .LW13 = woods, forests, native vegetation
