### What is kept on this device or copied from the page: the draft, the link, timed trees.

# Timed trees: kept, taken off, refused, none, in a file, opened, another file.
device-timed-kept = Kept on this device, for every tree on this page.
# Taken off the device.
device-timed-forgotten = No longer kept. What stands in the fields stays.
# Nothing can be kept or saved.
device-timed-refused = This page can keep nothing. Write them down.
# Nothing to keep.
device-timed-none = Type the sizes of your own trees and their minutes first.
# In a file.
device-timed-saved = The timed trees are in a file.
# Filled in from a file.
device-timed-opened = The timed trees of that file are filled in.
# Another file.
device-timed-other = That is no file of timed trees of this version. Open one that was downloaded here.
# A draft may be kept: lead, words, button.
device-offer-lead = No draft is kept.
device-offer-more = What you type is gone once the page is closed.
device-keep = Keep a draft on this device
# A draft is there: lead, words, button.
device-draft-lead = Draft on this device.
device-draft-more = It is sent nowhere, and stays until you forget it.
# The button that forgets the draft.
device-forget = Forget the draft
# The draft is gone.
device-forgotten-lead = Forgotten.
device-forgotten-more = No draft is on this device.
# Storage is refused.
device-no-draft-lead = No draft.
device-no-draft-more = This browser lets the page keep nothing. What you type is gone once the page is closed.
# A question that came with a link: lead, words, button.
device-shared-lead = Someone else’s tree.
device-shared-more = This question came with the link. Your own draft stays as it was.
# The button that brings the own draft back.
device-own-tree = Back to my own tree
# A link that was not read.
device-shared-long-lead = The link was not read.
device-shared-long-more = It holds more than 400 characters. Ask for the answer as text.
# It was copied.
device-link-copied = Copied. The link holds the question and the region: no position, no temperatures.
# The link would be too long.
device-link-long = This question makes a link of more than 400 characters. Copy the answer as text instead.
# What is copied where the page may not do it by itself.
device-link-label = The link
# Keys of a link that are not known.
# $keys (And)
device-shared-unknown = The link also holds what this version does not know, and leaves out: { $keys }.

## Where the device is, and files
device-looking = Looking for the position …
device-position-filled = Filled in below, to about 1 km. It can be changed there.
device-denied = The browser may not tell the position. Allow it for this page, or type a town, or latitude and longitude.
device-no-position = No position could be had here. Type a town, or latitude and longitude.
device-file-long = That file is too long to be the one asked for. Pick another.
device-file-unread = That file could not be read. Open it yourself, and type or paste what is in it.

## While the form is filled in
device-height-filled = The height is filled in. It can be changed.
device-waits = The plan waits for an answer that can be read.
# For programs.
device-no-object = The question can't be read. Give an object, such as { "{" }version: 1, species: "ash", …{ "}" }.

## Print, copy, calendar
device-no-print = This page lets nothing print. Copy the answer as text instead.
device-copied = Copied.
device-text-label = The answer as text
device-text-marked = This page may not copy by itself. The text is marked: copy it.
device-calendar = The visits are in a calendar file.
device-not-saved = This page lets nothing be saved. Copy the answer as text instead.
# A thing was picked, and its distance is not typed.
device-type-how-far = Type how far it is from the trunk.
