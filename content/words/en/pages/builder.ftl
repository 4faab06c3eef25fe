### The form that makes a group's settings.

builder-title = Make it your group's own
builder-description = A form that makes the lines for your site and the file of your group's settings.
builder-lede = Your names for trees, whom to ask, local rules, and what you want done more carefully. It makes one file and the lines for your page. What you type stays in this page.
builder-without-script = This form needs scripts. Without them, write the file by hand: its [schema](v1/config.schema.json) tells every key.
builder-open = Open a file of settings
builder-or-begin = Or begin here.
builder-group = Your group
builder-name = Name of the group
builder-checked = Day you last checked all of this
builder-checked-hint = Written as 2026-05-01. After 18 months the page says how old it is.
builder-units = Units of a new form
builder-units-page = As the page has them
builder-units-us = Inches and feet
builder-units-metric = Centimetres and metres
builder-region = State or country
builder-region-hint = A code such as US-MD or GB. It picks the months of law and pests.
builder-point = A point that stands for your land
builder-latitude = Latitude
builder-latitude-hint = Degrees, such as 38.97; north is positive.
builder-longitude = Longitude
builder-longitude-hint = Degrees, such as -76.49; east is positive.
builder-elevation = Height above the sea
builder-elevation-hint = With its unit, such as 15 m.
builder-trees = Your trees
builder-find = Add a tree
builder-find-hint = Type part of its name, then pick it.
# $tree (Text)
builder-add-tree = Add { $tree }
builder-only = Show only the trees at the head of the list, and “not on this list”
builder-table-or = Or paste a table
builder-table = Table of trees
builder-table-hint = First line: `code,first,alias_en,note_en`
builder-contacts = Whom to ask
builder-contacts-where = A professional and the owner of a line stand in the answer where it stops. The others stand with the cautions.
builder-contacts-add = Add someone to ask
builder-codes = Local rules
builder-codes-where = In your own plain words. Each stands beside the caution that it belongs to.
builder-codes-add = Add a local rule
builder-tighten = More careful
builder-tighten-only = These can only make an answer more cautious. Nothing hides a caution or a stop.
builder-factor = Distances, times
builder-factor-hint = 1 is as the models have them; 1.25 is a quarter more.
builder-thickest = Thickest trunk for volunteers, cm across
builder-thickest-hint = A thicker tree is left to a professional. Empty: no limit.
builder-months = Months without a ring
builder-crew = Work days and links
builder-crew-size = People on a work day
builder-crew-hours = Hours of work on such a day
builder-share = Links that carry a question
builder-share-page = As the page has it
builder-share-none = None
builder-share-fragment = People may copy one
builder-to-put-right = To put right
builder-nothing-typed = Nothing is typed yet.
builder-take = Take it along
builder-download = Download the file
builder-address = Address where you put the file
builder-address-hint = Beside your page, or in full for the frame.
builder-which = Which calculator
# $version (Text)
builder-hold = Hold the page to version { $version }: its files never change, and the browser checks them
builder-origin = Its server must let other pages read it for the frame: `Access-Control-Allow-Origin: *`. On your own server beside your own page that is not needed.
builder-see = See it

## One of the people to ask
builder-contact = Someone to ask
builder-contact-kind = What for
builder-contact-extension = Advice on trees
builder-contact-utility = Owner of the power line
builder-contact-professional = Arborist or other professional
builder-contact-permit = Permission
builder-contact-emergency = Emergency
builder-contact-name = Name
builder-contact-phone = Telephone
builder-page = Page
builder-page-hint = Starts with https://
builder-day = Day you checked it
builder-day-hint = Written as 2026-05-01.
builder-remove = Take it away

## One of the local rules
builder-code = A local rule
builder-code-topic = What it is about
builder-code-street-trees = Street trees
builder-code-nesting = Nesting
builder-code-burning = Burning and moving wood
builder-code-products = Products
builder-code-protected = Protected species
builder-code-lines = Work near lines
builder-code-text = The rule, in plain words
builder-code-authority = Who decides

## One of the trees
builder-tree-first = At the head of the list
builder-tree-names = Local names
builder-tree-names-hint = With commas between them.
builder-tree-note = What you want said of it

## Said by its script
builder-copy = Copy
builder-copied = Copied
builder-marked = Marked: copy it
# $count (Text)
builder-found = { $count } shown
# $message (Text)
builder-usable = { $message } (The file can be used as it is.)
# $count (Text)
builder-refused = { $count } to put right before the file can be used.
builder-all-well = Nothing keeps the file from being used.
builder-line-element = The element
builder-line-element-hint = Two lines where the plan should stand.
builder-line-div = If your site removes unknown tags
builder-line-script = The script alone
builder-line-script-hint = It puts the plan where it stands, and keeps its place.
builder-line-frame = If your site allows no outside script
builder-line-frame-hint = A frame of fixed height.
builder-line-frame-lacks = The frame can't find this file: give its address in full, with https://.
builder-line-link = If your site allows neither
builder-line-link-hint = A link. Your settings do not come along.
builder-seen-plain = This is the calculator as it comes.
builder-seen-before = As it was before what is to be put right.
builder-seen-yours = This is the calculator with your settings.
builder-seen-no-table = The table of trees that the file names is not in it.
builder-file-name = our trees
# $file (Text)
builder-saved = Saved as { $file }.
# $file (Text)
builder-opened = { $file } is open. Fields follow it.
# $file (Text)
# $why (Text)
builder-unreadable = { $file } can't be read as JSON, so nothing was changed. ({ $why })
# $bytes (Text)
builder-too-large = it is larger than { $bytes } bytes
builder-no-object = it is no object
builder-no-start = The calculator could not start here, so nothing can be checked.
