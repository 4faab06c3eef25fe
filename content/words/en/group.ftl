### A group's own settings: what is wrong with them, and what stands in an answer in the group's name.

# Above the form, where a group's settings could not be had or taken.
group-settings-left-out = The settings of this page's group can't be used now. What follows has none of its local contacts and rules in it.
# What somebody is asked for.
# $of (ContactKind)
group-contact-kind =
    .extension = Advice
    .utility = Line owner
    .professional = Professional
    .permit = Permission
    .emergency = Emergency
# What a local rule is about.
# $of (CodeTopic)
group-code-topic =
    .street-trees = Street trees
    .nesting = Nesting
    .burning = Burning and moving wood
    .products = Products
    .protected-species = Protected species
    .work-near-lines = Work near lines
# Who decides on a local rule stands behind this.
group-authority = Who decides:{ " " }

## What is told of one place of the settings, and what to do
group-unknown-key = This is not read. Check its spelling, or take it out.
group-no-day = Add the day that it was checked.
group-hides = No setting hides or loosens a stop or a caution. Take it out.
# $kb (Count)
group-too-large = These settings are too large: at most { $kb } kB.
# $keys (Or)
group-not-tighter = Only what makes advice more cautious stands here: { $keys }.
group-loosens = Under 1 it would loosen the distances. Give 1 or more.
group-missing = This is needed. Fill it in.
group-no-way = Add a telephone or a link.
# $kind (Text): a word of JSON
group-wrong-type = This must be of the kind “{ $kind }”.
# $most (Count)
group-too-long = At most { $most } here.
group-markup = Plain text only: no { "<" } or >, no script, no hidden signs.
group-link = A link starts with https://, http:// or tel: and has no space, hidden sign or user name (@) in it.
group-phone = A telephone has digits, spaces and + ( ) - . / alone.
group-day = Write the day as 2026-05-01.
# $words (Or)
group-not-one-of = Use { $words }.
# $low (Text)
# $high (Text)
group-out-of-range = Give a number from { $low } to { $high }.
group-version = “schema” must be 1.
group-heads = The first line names the columns: code,first,alias_en,note_en.
group-no-list = The list of species could not be had.
group-two-lists = Name a list or paste one, not both.
group-quotes = In the list of species a quote is opened and never closed.

## In an answer
# $kind (Phrase): group-contact-kind
# $name (Text)
group-contact = { $kind }: { $name }
# $day (Date)
group-last-checked = Last checked { $day }: confirm first.
# $day (Date)
group-checked = Checked { $day }.
group-not-said-when = It is not said when this was checked: confirm first.
# $group (Text)
# $day (Date)
group-age = All that stands here from { $group } was last checked { $day }: confirm first.
# $group (Text)
group-from = From { $group }
# $group (Text)
# $note (Text)
group-note = { $group }: { $note }
# $group (Text)
# $factor (Text)
group-farther = { $group } asks for more room: distances here are for a tree { $factor } times as tall.
# A clause.
# $size (Length)
# $group (Text)
# $most (Length)
group-stops = it is { $size } across, and { $group } leaves trees over { $most } to a professional
