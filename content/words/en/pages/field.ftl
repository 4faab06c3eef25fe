### Field mode: in the woods with a phone, one question a screen, tree by tree. Its questions are those of the form.
field-title = Tree by tree in the woods
field-description = In the woods with a phone: one question a screen, an answer for each tree, and the list of them as a file that you own.
field-without-script = This page needs scripts. Without them there is [a card to fill in by hand](paper/card/).
field-coming = The questions are on their way. [All trees](species/) and [a card to fill in by hand](paper/card/) need none of this page’s files.
field-home = Tree by tree in the woods
field-home-about = One question a screen, large keys, a list at the end.

## Where somebody is
# $tree (Text): its number
# $at (Text): the number of the question
# $all (Text): how many there are
field-question = Tree { $tree }. Question { $at } of { $all }
# $tree (Text): its number
# $name (Text): its species
field-answered = Tree { $tree }, { $name }. Answered
# $tree (Text): its number
# $name (Text): its species
field-tree = Tree { $tree }: { $name }
field-no-name = not known
# The steps in one word each, on the tape of questions.
field-step-place = place
field-step-day = day
field-step-tree = tree
field-step-size = size
field-step-near = near
field-step-line = line

## The questions
# $tree (Text): its number
# $place (Text)
# $day (Text)
field-same = Same as tree { $tree }: { $place }. { $day }.
field-no-place = no place said
field-change = Change
field-of-list = Trees of this list
field-which = I don’t know: [which tree is it?](key/)
# $tree (Text): its number
# $near (Text): a thing and its distance
# $line (Text): yes, no or can't tell
field-as-tree = As at tree { $tree }: { $near }. Power or phone line: { $line }
field-not-said = not said
field-keys = Add a part of an inch
field-quarter = and a quarter
field-half = and a half
field-three-quarters = and three quarters
field-clear = Clear
field-measured = How it was measured
field-stems = One stem or several?
field-one = One stem
field-several = Several stems
field-largest = Its largest living stem: how thick?
field-others-ask = Its other living stems: how thick?
field-others-hint = Each measured as the first, the thickest first, with ; between two: 9; 7 1/2. Leave out dead ones.
field-another = Another stem
# $typed (Text)
field-others-wrong = “{ $typed }” is no size that a stem can have. Type each as 9 or 7 1/2.
field-others-none = Type at least one, or go back and press One stem.
field-continue = Continue
field-back = Back
# $tree (Text): its number
field-back-to = Back to tree { $tree }
# $tag (Text)
field-tag = Tag { $tag }: change it
field-tag-asks = What does its tag say?
field-tag-hint = The number or name that you write on the tree. Each tree has its own.
# $tree (Text): its number
field-tag-twice = Tree { $tree } has this tag already. Type another.

## The answer
field-more = Steps, cautions, working
field-next = Next tree, same place

## What is kept
field-keeps = From your first Continue on, what you type is kept on this device. Nothing is sent.
# $trees (Text): how many
field-kept = Kept on this device. Trees answered: { $trees }.
field-to-be-sure = Save the list to be sure.
field-keeps-nothing = Inside another site’s page nothing is kept. Save the list before you leave this page.
field-list = The list so far
field-list-none = No tree is answered yet.
field-col-tag = Tag
field-col-tree = Tree
field-col-answer = Answer
field-save = Save the list
field-open = Open it in the list page
field-new = Start a new list
field-new-sure = The list changed since it was saved as a file. Press again, and it is forgotten.
field-new-again = Press again to forget the list here. The file that you saved stays.
field-forgotten = The list is forgotten here.
# $tree (Text): its number
field-open-tree = Tree { $tree } is not answered yet. It is not in the file.
field-regions = These trees stand in more than one state or country. A list has one: save a list for each.
field-program = The program answers the file too:
