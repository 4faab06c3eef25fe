### The list of all trees: whether a ring suits each, and what it does after a cut.

# Whether a ring alone suits it.
# $of (Suitability)
species-suits =
    .suitable = yes
    .followup = with visits: expect sprouts or bridges
    .conditional = on a condition: a clone, a disease or its growth decides
    .not-alone = not by a ring alone
    .not-applicable = no: there is no bark ring to cut
    .unknown = its name decides
# Where every stem of the clone must be ringed for a yes.
species-suits-clone = yes, if every stem of the clone is ringed
# From the base of a cut stem.
# $of (SproutVigor)
species-basal =
    .none = no sprouts
    .weak = few sprouts when cut
    .moderate = sprouts when cut
    .strong = many sprouts when cut
# From the roots.
# $of (SproutVigor)
species-suckering =
    .none = no suckers
    .weak = few suckers from the roots
    .moderate = suckers from the roots
    .strong = many suckers from the roots
species-neither = no sprouts, no suckers
# Over the entries for a tree whose name is open.
species-nameless = No name yet
# $names (Text)
species-also = Also found as: { $names }.
# A language, before a name in it.
# $of (Key)
species-in-language =
    .en = In English:
    .es = In Spanish:
# A trunk's size, before what holds for it.
# $size (Text)
species-across = { $size } across
# $method (Phrase)
# $zone (Length)
species-cell = { $method }. Zone { $zone }.
# $width (Length)
# $zone (Length)
species-cell-ring = bark ring, { $width } wide. Zone { $zone }.
# $cell (Phrase): one of the two above
species-cell-if = If its condition holds: { $cell }
species-ask = Ask about this tree
# The first line of the list to pick from.
species-all = All
