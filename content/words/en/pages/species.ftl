### The page with all trees.

species-page-title = Which trees
species-page-description = All trees and shrubs of the list: whether a ring suits each one, what it does after a cut, and what holds for three sizes of trunk.
# $species-count (Text)
species-page-lede = { $species-count } trees and shrubs: whether a ring suits each, and what it does after a cut.
species-page-find = Part of a name
species-page-find-hint = English, Spanish or Latin
species-page-show = Does a ring suit it?
species-page-letters = By letter
species-page-tree = Tree
species-page-after = After a cut
species-page-note = Open a tree for three sizes of trunk, worked out by the calculator's own code. It supposes that no building, road, path, power line, property line or neighbour's tree stands within two heights, and a day on which bark slips. "Zone" is one and a half heights, by the height used: what stands inside it decides before any method. The method named is the one at the head, with nothing said of herbicide: where one needs it, a licensed applicator does it. Where a state, a clone or a name is still open, it says what holds if its condition is met.
# Said by a script while a list is narrowed.
# $shown (Text)
# $all (Text)
filter-told = { $shown } of { $all } shown.
