### Labels and values of the fields, as they stand in lists and tables.

# How a height was measured from the ground.
# $of (HeightBy)
fields-height-by =
    .shadow = by its shadow
    .angles = by a distance and two angles
    .stick = by a stick held upright
# Not given.
fields-not-given = not given
# Condition.
# $of (Condition)
fields-life =
    .alive = alive
    .declining = declining
    .dead = dead
# Herbicide.
# $of (Herbicide)
fields-herbicide =
    .not-said = not said
    .no = no
    .licensed = by a licensed applicator
    .yes = yes
# The line question.
# $of (Reply)
fields-reply =
    .yes = yes
    .no = no
    .cant-tell = can't tell
# Growth.
# $of (Vigour)
fields-vigour =
    .slow = slow
    .ordinary = ordinary
    .fast = fast
# Dry spell.
# $of (DrySpell)
fields-dry =
    .none = none
    .two-weeks = two weeks
    .month = a month or more
# Limbs below the ring.
# $of (Limbs)
fields-limbs =
    .none = none
    .some = some
    .many = many
# What was seen of the leaves.
# $of (Stage)
fields-stage =
    .buds-open = half the buds open
    .leaves-full = leaves nearly full size
    .first-leaf = the first leaf

# Labels, by the path of the field; those of a list or a group by both names, and the group alone for the rest of it.
# $of (Key)
fields-field =
    .stems-diameter = Trunk size
    .stems-girth = Trunk girth
    .stems-live_share = Live bark
    .stems-bark = Bark thickness
    .stems = Stems
    .targets-kind = What it could hit
    .targets-distance = Distance
    .targets-slope = Slope
    .targets-voltage = Voltage
    .targets = What it could hit
    .place-latitude = Latitude
    .place-longitude = Longitude
    .place-elevation = Elevation
    .place-hemisphere = Half of the world
    .place = Place
    .leafed_out-stage = What you saw of the leaves
    .leafed_out-date = Day you saw the leaves
    .leafed_out = Place where you saw the leaves
    .species = Species
    .date = Day of the work
    .today = Today
    .units = Units
    .version = Version
    .region = State or country
    .height = Tree height
    .line_within_reach = Overhead line
    .none_in_reach = Nothing in reach
    .setting = Where it grew
    .condition = Condition
    .signs = Signs on the tree
    .herbicide = Herbicide
    .goal = Goal
    .spare = Stem to keep
    .whole_clone = Every stem of the clone
    .same_genus_near = Living trees of its kind near
    .vigour = Growth
    .dry_spell = Dry spell
    .limbs = Limbs below the ring
    .walk = Walk from the last tree
    .practised = Practised crew
    .cannot_wait = Can't wait
    .rate = Your own rate
    .height_aid-tree_shadow = The tree's shadow
    .height_aid-stick = Length of the stick
    .height_aid-stick_shadow = Shadow of the stick
    .height_aid-distance = Distance to the trunk
    .height_aid-top = Angle to the top
    .height_aid-foot = Angle to the foot
    .height_aid-eye_to_stick = From the eye to the stick
    .height_aid = How you measure the height
    .timed-minutes = Minutes of your own trees
    .timed-width = Ring width of your own trees
    .timed-species = Species of your own trees
    .timed = Your own trees
    .visit-at = Day of the visit
    .visit-ringed = Day of the ring
    .visit = What you see at the visit
    .spring_scale = Unit of the temperatures
    .spring = This spring's temperatures
# $field (Phrase): its label
# $number (Count)
fields-of-stem = { $field }, stem { $number }
# $field (Phrase): its label
# $number (Count)
fields-of-thing = { $field }, thing { $number }
fields-yes = yes
fields-no = no
