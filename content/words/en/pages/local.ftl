### The page of a group.

# $local-name (Text)
local-description = { $local-name }: whom to ask, local rules, trees and months, each with the day when it was checked.
local-contacts = Whom to ask
local-rules = Rules here
local-stricter = Stricter here
# $months (Text)
local-months = No ring is cut in { $months }.
# $factor (Text)
local-farther = Distances are for a tree { $factor } times as tall.
# $size (Text)
local-size = Trees over { $size } are left to a professional.
local-trees = Trees here
